package lint

import (
	"regexp"
	"slices"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

var referenceUnknown = &Rule{
	Name:     "reference-unknown",
	Family:   "order",
	Severity: Error,
	OfPiece:  true,
	Summary:  "Every row, mark or piece that is referred to stands above, and no row refers to itself.",
	Why: "`Rep Row 9` before there is a Row 9 stops the maker; rows that refer to each other in a circle never say what to " +
		"work at all.",
	Bad: `Pattern: Oak leaf mat
Terms: US

Piece: Mat
With A, ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (12 sc)
Row 2: Ch 1, sc in each st across; turn. (12 sc)
Row 3: Rep Row 12. (12 sc)
Fasten off.
`,
	Good: `Pattern: Oak leaf mat
Terms: US

Piece: Mat
With A, ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (12 sc)
Row 2: Ch 1, sc in each st across; turn. (12 sc)
Row 3: Rep Row 2. (12 sc)
Fasten off.
`,
	Check: checkReferenceUnknown,
}

func checkReferenceUnknown(p *Pass) {
	for _, f := range p.faults(fabric.RowUnknown) {
		// `same side facing` says how the work is held
		if f.Name == "" && impliedRow(f.row, f.N) || f.Name != "" && (p.headedAbove(f.Name, f.row.Tree) || strings.HasPrefix(f.Name, "side ")) {
			continue
		}
		var message string
		switch {
		case f.Name == "" && slices.Contains(f.row.Tree.Label.Each(f.Size), f.N):
			message = "refers to itself: the rows named include this one"
		case f.Name == "last":
			message = "there are no " + f.num(func(f fabric.Fault) int { return f.N }) + " rows above to repeat"
		case f.Name != "":
			message = "there is no `" + f.Name + "` above"
		default:
			message = "there is no row or round " + f.num(func(f fabric.Fault) int { return f.N }) + " above"
		}
		p.reportFault(f, Finding{Message: message})
	}
}

// headedAbove tells whether some words above a row stand as a heading, within a
// line as well, though no piece has that name: `EDGE—Sc around. 2nd square: rep Edge`.
func (p *Pass) headedAbove(name string, row *syntax.Row) bool {
	called := regexp.QuoteMeta(name)
	if at := strings.LastIndexByte(name, ' '); at > 0 && isDigit(name[at+1]) {
		called = regexp.QuoteMeta(name[:at]) + ` \w+` // the number may stand there as a word
	}
	heading := regexp.MustCompile(`(?i)(?:^|[.\n>])\W*` + called + `\s*(?:--|[—–:])`)
	return heading.MatchString(p.File.Text.Slice(source.Span{End: row.At}))
}

// impliedRow tells whether a row is there although none has its number: it
// has a wrong one, which is told, or it is among those that are listed by kind.
func impliedRow(row *fabric.Row, number int) bool {
	if interleaved(row.Piece) {
		return slices.ContainsFunc(row.Piece.Rows[:row.Index], func(above *fabric.Row) bool {
			return slices.ContainsFunc(above.Tree.Label.Numbers, func(s syntax.RowSpan) bool { return s.To.At(0) > number })
		})
	}
	return slices.ContainsFunc(slips(row.Piece), func(s slip) bool {
		first, last := ends(s.row.Tree.Label, 0)
		return number >= s.due && number <= s.due+last-first
	})
}
