package lint

import (
	"slices"
	"strconv"
	"strings"
	"sync"

	"stitchproof/lang/fabric"
	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

const stitchWord = `(?:sts?|stitch(?:es)?|scs?|hdcs?|dcs?|trs?|htrs?)`

var (
	// stitchesOf takes `the 24 sts of the cuff`, `all 12 sts along Row 8`.
	stitchesOf = phrase.MustCompile(`\b(?:the|all|its|their) (\d{1,3}) ` + stitchWord + ` (?:of|on|around|across|along) (?:the |each |your |both )*([a-z]\S*(?: \S+){0,4})`)
	// stitchesFree takes `the 8 free sts`, those that a row passed over or left.
	stitchesFree = phrase.MustCompile(`\b(?:the|your) (\d{1,3}) (?:free|unworked|unused|skipped|missed|sk|left-?over) ` + stitchWord + `\b`)
	// stitchesLeft takes `the remaining 6 sts`, with which a piece ends.
	stitchesLeft = phrase.MustCompile(`\b(?:weave|thread|draw|gather|pull|close|sew|run)\b[^.]*\b(?:remaining (\d{1,3})|(\d{1,3}) remaining) (?:sts|stitches|sc)\b(?: of (.*))?`)
	// lastRow and rowNumber are the rows of a piece by their words.
	lastRow   = phrase.MustCompile(`^(?:last|final) (?:row|rnd|round)\b(?: of (.*))?`)
	rowNumber = phrase.MustCompile(`^(?:row|rnd|round|r) ?(\d{1,3})\b(?: of (.*))?`)
)

// numbers are those that may be meant, none where that is not known, and what there is in
// words.
type numbers struct {
	values []int
	said   string
}

// stitchCount is where a section counts stitches that are there.
type stitchCount struct {
	at   source.Span // in the section
	n    int
	kind stitchesThat
	of   string // the words for what they are of, "" where it is the piece itself
}

// stitchesThat is which stitches are counted.
type stitchesThat uint8

const (
	stitchesOfPiece stitchesThat = iota
	stitchesLeftFree
	stitchesAtEnd
)

// stitchCountsIn are those places of a section.
var stitchCountsIn = &fact[[]stitchCount]{func(p *Pass, s section) []stitchCount {
	var out []stitchCount
	for _, a := range assembliesIn.of(p, s) {
		add := func(kind stitchesThat, start, end, of int) {
			c := stitchCount{at: source.Span{Start: start, End: end}.Shift(a.at.Start), kind: kind}
			c.n, _ = strconv.Atoi(a.text[start:end])
			if of >= 0 {
				c.of = strings.Clone(a.text[of:])
			}
			out = append(out, c)
		}
		for _, m := range stitchesFree.FindAllStringSubmatchIndex(a.text, -1) {
			add(stitchesLeftFree, m[2], m[3], -1)
		}
		if a.labelled {
			continue
		}
		for _, m := range stitchesOf.FindAllStringSubmatchIndex(a.text, -1) {
			add(stitchesOfPiece, m[2], m[3], m[4])
		}
		for _, m := range stitchesLeft.FindAllStringSubmatchIndex(a.text, -1) {
			add(stitchesAtEnd, max(m[2], m[4]), max(m[3], m[5]), m[6])
		}
	}
	return out
}}

// stitchesThere tells of stitches that are counted where pieces are put together, and that
// are another number.
func (p *Pass) stitchesThere() {
	if p.Fabric.Sizes() > 1 {
		return // the numbers of a list are not told apart here
	}
	free := sync.OnceValue(p.leftFree)
	for s, all := range stitchCountsIn.in(p) {
		for _, c := range all {
			var there numbers
			switch piece := p.sections.pieceOf(s); c.kind {
			case stitchesLeftFree:
				there = free()
			case stitchesOfPiece:
				there = p.along(piece, c.of)
			case stitchesAtEnd:
				if c.of != "" {
					piece = p.pieceAt(c.of)
				}
				there = p.endsWith(piece, s.abs(c.at))
			}
			if len(there.values) > 0 && !slices.Contains(there.values, c.n) {
				p.Report(Finding{Span: s.abs(c.at), Message: "speaks of " + counted(strconv.Itoa(c.n), "st") + ", and " + there.said})
			}
		}
	}
}

// leftFree are the stitches that rows pass over or leave, each time and twice.
func (p *Pass) leftFree() numbers {
	var free []int
	for row := range p.Fabric.Rows() {
		t := row.Work()
		if t.Works && !t.Known {
			return numbers{}
		}
		if t.Works && row.Tree.Label.Kind != syntax.Unlabelled {
			free = append(free, t.Left)
		}
		syntax.Walk(row.Tree.Clauses, func(c syntax.Clause) {
			switch n := c.Node.(type) {
			case *syntax.Skip:
				free = append(free, n.Place.Number.Or(0, 1))
			case *syntax.Leave:
				free = append(free, n.Place.Number.At(0))
			}
		})
	}
	free = slices.DeleteFunc(free, func(n int) bool { return n < 2 })
	slices.Sort(free)
	free = slices.Compact(free)
	out := numbers{values: slices.Clone(free), said: "rows leave " + either(itoas(free))}
	for _, n := range free {
		out.values = append(out.values, 2*n)
	}
	return out
}

// along are the stitches of what some words, in the lines of a piece, begin with: of a row,
// or of any row of a piece.
func (p *Pass) along(within int, words string) numbers {
	if m := rowNumber.FindStringSubmatch(words); m != nil {
		if m[2] != "" {
			within = p.pieceAt(m[2])
		}
		n, _ := strconv.Atoi(m[1])
		return p.countsOf(within, func(r *fabric.Row) bool { return slices.Contains(r.Tree.Label.Each(0), n) })
	}
	if m := lastRow.FindStringSubmatch(words); m != nil {
		if m[1] != "" {
			within = p.pieceAt(m[1])
		}
		last := p.lastWorked(within)
		return p.countsOf(within, func(r *fabric.Row) bool { return r == last })
	}
	i := p.pieceAt(words)
	out := p.countsOf(i, func(*fabric.Row) bool { return true })
	if last := p.lastWorked(i); last != nil {
		out.said = "no row of " + quoted(p.Fabric.Pieces[i].Tree.Name) + " has as many: the last has " + strconv.Itoa(last.Work().Made)
	}
	return out
}

// countsOf are what some rows of a piece, -1 for none, may be said to have: their stitches,
// with the chains of their spaces, one kind of them; and where all rows are meant the chain
// that they begin with. They are not known where one of the rows is not.
func (p *Pass) countsOf(piece int, is func(*fabric.Row) bool) numbers {
	if piece < 0 {
		return numbers{}
	}
	var out numbers
	for _, row := range p.Fabric.Pieces[piece].Rows {
		t := row.Work()
		switch {
		case !is(row):
		case !t.Works:
			syntax.Walk(row.Tree.Clauses, func(c syntax.Clause) {
				if chain, ok := c.Node.(*syntax.Chain); ok {
					out.values = append(out.values, chain.Number.Vals...)
				}
			})
		case !t.Known || t.Agrees() == fabric.Disagrees || row.Likeness() != "":
			return numbers{}
		default:
			out.values = append(out.values, t.Made, t.Made+t.Chains, t.Left)
			for _, part := range t.Parts {
				out.values = append(out.values, part.N)
			}
			out.said = "there are " + strconv.Itoa(t.Made)
		}
	}
	if out.said == "" {
		return numbers{}
	}
	return out
}

// lastWorked is the last row of a piece, -1 for none, that works stitches; nil for none.
func (p *Pass) lastWorked(piece int) *fabric.Row {
	if piece < 0 {
		return nil
	}
	for _, row := range slices.Backward(p.Fabric.Pieces[piece].Rows) {
		if row.Works() {
			return row
		}
	}
	return nil
}

// endsWith are the stitches that a piece ends with before a place of the file: those of its
// last row, with no words between them that may have been meant as rows.
func (p *Pass) endsWith(piece int, at source.Span) numbers {
	last := p.lastWorked(piece)
	if last == nil || last.Tree.At > at.Start {
		return numbers{}
	}
	end := min(at.Start, p.sections.list[piece+1].at.End)
	if slices.ContainsFunc(p.File.Prose, func(s source.Span) bool { return s.Start > last.Tree.At && s.End < end }) {
		return numbers{}
	}
	out := p.countsOf(piece, func(r *fabric.Row) bool { return r == last })
	out.said = "the last row has " + strconv.Itoa(last.Work().Made)
	return out
}
