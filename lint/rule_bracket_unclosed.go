package lint

import (
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

var bracketUnclosed = &Rule{
	Name:     "bracket-unclosed",
	Family:   "order",
	Severity: Error,
	OfPiece:  true,
	Summary:  "Every bracket that is opened is closed, and every one that is closed was opened.",
	Why:      "A bracket says what is repeated, or what goes in one place. With one end missing, `6 times` may mean any part of the row.",
	Bad: `Pattern: Acorn
Terms: US

Piece: Acorn
Rnd 1: 6 sc in magic ring; sl st in first sc to join. (6 sc)
Rnd 2: Ch 1, [sc in next st, 2 sc in next st 3 times; sl st in first sc to join. (9 sc)
Fasten off.
`,
	Good: `Pattern: Acorn
Terms: US

Piece: Acorn
Rnd 1: 6 sc in magic ring; sl st in first sc to join. (6 sc)
Rnd 2: Ch 1, [sc in next st, 2 sc in next st] 3 times; sl st in first sc to join. (9 sc)
Fasten off.
`,
	Check: checkBracketUnclosed,
}

// maxUnclosed bounds the brackets told of one row: a row with more of them is
// wrong in another way than by slips of the pen.
const maxUnclosed = 10

func checkBracketUnclosed(p *Pass) {
	p.checkShapes()
	told := map[*syntax.Row]int{}
	for _, s := range p.problems(syntax.BracketUnclosed, syntax.BracketUnopened, syntax.TooDeep) {
		if told[s.row]++; told[s.row] > maxUnclosed {
			continue
		}
		f := Finding{Span: s.row.Abs(s.Span)}
		bracket := quoted(s.row.Source(s.Span))
		switch s.Kind {
		case syntax.BracketUnclosed:
			f.Message, f.Fix = bracket+" is opened and never closed", closeBracket(s)
		case syntax.BracketUnopened:
			f.Message = bracket + " closes a bracket that was never opened"
		default:
			f.Message = "brackets within brackets, too deep to be read"
		}
		p.Report(f)
	}
}

// checkShapes finds brackets that are closed by one of another shape: they pair, and nobody
// knows which of the two is the slip.
func (p *Pass) checkShapes() {
	for row := range p.rows() {
		if miswritten(row.Tree) {
			continue // nobody knows which belong together
		}
		var open []syntax.Token
		for _, t := range row.Tree.Tokens {
			switch t.Kind {
			case syntax.Open:
				open = append(open, t)
			case syntax.Close:
				if len(open) == 0 {
					continue
				}
				begun, closing := row.Tree.Source(open[len(open)-1].Span), row.Tree.Source(t.Span)
				open = open[:len(open)-1]
				if wanted := closers[begun]; wanted != "" && wanted != closing {
					p.Report(Finding{
						Span:    row.Tree.Abs(t.Span),
						Message: quoted(begun) + " is closed by " + quoted(closing),
						Fix:     &Fix{Title: "close it with " + quoted(wanted), Edits: []source.Edit{{Span: row.Tree.Abs(t.Span), New: wanted}}},
					})
				}
			}
		}
	}
}

// closers gives the bracket that closes each one that opens.
var closers = map[string]string{"(": ")", "[": "]", "{": "}", "（": "）", "［": "］"}

// closeBracket is the fix that closes a bracket where it can only have ended:
// before the one `N times` that follows it, else, round a count, at the row's end.
func closeBracket(s slipOfPen) *Fix {
	shut := closers[s.row.Source(s.Span)]
	at, found := -1, 0
	for i, t := range s.row.Tokens {
		if t.Span.Start <= s.Span.Start || i == 0 {
			continue
		}
		if often := s.row.Tokens[i-1]; t.Kind == syntax.Word && t.Canon == "times" && often.Kind == syntax.Number {
			at, found = often.Span.Start, found+1
		}
	}
	if found == 0 && countFollows(s) {
		at, found = s.row.Written().End-s.row.At, 1
	}
	if found != 1 || shut == "" {
		return nil
	}
	for at > 0 && s.row.Text[at-1] == ' ' {
		at--
	}
	place := source.At(at)
	return &Fix{Title: "close it with " + quoted(shut), Edits: []source.Edit{{Span: s.row.Abs(place), New: shut}}}
}

// countFollows tells whether all that stands after a bracket is a number, or
// numbers of things: the row's count.
func countFollows(s slipOfPen) bool {
	numbers := 0
	for _, t := range s.row.Tokens {
		if t.Span.Start <= s.Span.Start {
			continue
		}
		switch t.Kind {
		case syntax.Number:
			numbers++
		case syntax.Stitch, syntax.Comma, syntax.Hyphen:
		case syntax.Word:
			if t.Canon != "st" && t.Canon != "sp" && t.Canon != "ch" && t.Canon != "loop" && t.Canon != "and" {
				return false
			}
		default:
			return false
		}
	}
	return numbers > 0
}
