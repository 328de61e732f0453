package lint

import (
	"regexp"
	"slices"
	"strconv"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

var placeAbsent = &Rule{
	Name:     "place-absent",
	Family:   "counts",
	Severity: Error,
	Summary:  "Every stitch, chain, space or marker that is worked into is there.",
	Why: "`In next ch-3 sp` over a row of ch-2 spaces, or `in marked st` where no marker was placed, stops the maker at once. " +
		"What the row below really holds shows which of the two rows has the slip.",
	Bad: `Pattern: Frost edging
Terms: US

Piece: Edging
With A, ch 4, sl st in first ch to form ring.
Rnd 1: Ch 1, [sc in ring, ch 2] 6 times; sl st in first sc to join. (6 sc, 6 ch-2 sps)
Rnd 2: Ch 1, [3 sc in next ch-3 sp] 6 times; sl st in first sc to join. (18 sc)
Fasten off.
`,
	Good: `Pattern: Frost edging
Terms: US

Piece: Edging
With A, ch 4, sl st in first ch to form ring.
Rnd 1: Ch 1, [sc in ring, ch 2] 6 times; sl st in first sc to join. (6 sc, 6 ch-2 sps)
Rnd 2: Ch 1, [3 sc in next ch-2 sp] 6 times; sl st in first sc to join. (18 sc)
Fasten off.
`,
	Check: checkPlaceAbsent,
}

func checkPlaceAbsent(p *Pass) {
	for _, f := range p.faults(fabric.PlaceAbsent) {
		p.reportMisfit(f, Finding{Message: "asks for " + quoted(f.Name) + " here, and " + there(f.There)})
	}
	p.checkChainMade()
}

// checkChainMade finds stitches that are worked into a chain, counted from the
// hook, where nothing so much as speaks of one since the yarn was last cut.
func (p *Pass) checkChainMade() {
	since := source.Span{}
	for _, piece := range p.Fabric.Pieces {
		if piece.Tree.NameSpan.Len() > 0 && since.Start == 0 {
			since.Start = piece.Tree.Span.Start // not the header, which may explain the word
		}
		for _, row := range piece.Rows {
			goesOn := alongChain(row.Tree)
			syntax.Walk(row.Tree.Clauses, func(c syntax.Clause) {
				at := row.Tree.Abs(c.Span)
				switch n := c.Node.(type) {
				case *syntax.Finish:
					since.Start = at.End
				case *syntax.Work:
					since.End = at.Start
					if goesOn && fromHook(n) && !aChain.MatchString(p.File.Text.Slice(since)) {
						p.Report(Finding{Span: at, Message: "asks for a chain to work into, and none is made"})
						since.Start = at.Start
					}
				}
			})
		}
	}
}

// alongChain tells whether a row goes on along a chain. One that works a single
// chain, `6 sc in 2nd ch from hook`, may take it that the maker makes that.
func alongChain(r *syntax.Row) bool {
	found := false
	syntax.Walk(r.Clauses, func(c syntax.Clause) {
		if w, ok := c.Node.(*syntax.Work); ok {
			found = found || slices.ContainsFunc(w.Places, func(p syntax.Place) bool {
				return p.Noun.Kind == syntax.NounChain && p.From != syntax.FromHook
			})
		}
	})
	return found
}

// aChain finds a word for chains, or for their multiple.
var aChain = regexp.MustCompile(`(?i)\b(ch(ain)?s?|multiples?)\b`)

// there words what is in the stead of a place: the next stitch, what the row
// below is made of, or a number of places named.
func there(found string) string {
	_, err := strconv.Atoi(found)
	switch {
	case found == "":
		return "there is none"
	case err == nil:
		return found + " are named"
	case found[0] >= '0' && found[0] <= '9':
		return "the row below has " + found
	}
	return "the next is " + quoted(found)
}
