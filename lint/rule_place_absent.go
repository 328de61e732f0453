package lint

import (
	"slices"
	"strconv"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

var placeAbsent = &Rule{
	Name:     "place-absent",
	Family:   "counts",
	Severity: Error,
	OfPiece:  true,
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
		finding := Finding{Message: absent(f), Related: f.related(f.ground() + " leaves here")}
		if names := p.namesMeant(f); len(names) > 0 {
			finding.Fix, finding.Alternatives = &names[0], names[1:]
			p.reportFault(f, finding)
			continue
		}
		p.reportMisfit(f, finding)
	}
	p.checkChainMade()
	p.checkChainsNamed()
}

// namesMeant are the fixes that speak of a branch that is done, where none is called
// what the row says: of those with which it comes out right the latest first.
func (p *Pass) namesMeant(f *fault) []Fix {
	if f.Name != "" || f.Branch == "" {
		return nil
	}
	swatch, at := p.Fabric.Swatch(f.row), namings(f.row.Tree, f.Branch, f.Span)
	if swatch == nil || len(at) == 0 {
		return nil
	}
	var made []string
	open := branchesAt(f.row.Tree, f.Span.Start)
	syntax.Walk(f.row.Tree.Clauses, func(c syntax.Clause) {
		if b, ok := c.Node.(*syntax.Branch); ok && b.Name != "" && c.Span.Start < f.Span.Start && !slices.Contains(open, b.Name) {
			made = append(made, f.row.Tree.AsWritten(b.Name))
		}
	})
	var out []outcome
	for _, name := range slices.Backward(made) {
		c := change{row: f.row, edits: []source.Edit{{Span: at[0], New: name}}}
		if o := p.tried(swatch, "speak of branch "+name, c); o.row.Misfit() == 0 && len(out) < maxNamed {
			out = append(out, o)
		}
	}
	return likeliest(out)
}

// absent words what is asked for and what there is.
func absent(f *fault) string {
	switch {
	case f.Name != "" && f.OnBranch && listed(f.There):
		return "asks for " + quoted(f.Name) + " of " + f.ground() + " here, and it has " + f.There
	case f.Name != "":
		return "asks for " + quoted(f.Name) + " here, and " + there(f)
	case f.Branch == "":
		return "speaks of branches here, and the row below has none"
	}
	return "speaks of branch " + f.row.Tree.AsWritten(f.Branch) + " here, and no branch of that name is made before"
}

// checkChainMade finds stitches that are worked into a chain, counted from the
// hook, where nothing so much as speaks of one since the yarn was last cut.
func (p *Pass) checkChainMade() {
	since := source.Span{}
	for _, piece := range p.Pieces {
		if piece.Tree.NameSpan.Len() > 0 && since.Start == 0 {
			since.Start = piece.Tree.Span.Start // not the header, which may explain the word
		}
		if piece.From != nil {
			since.Start = min(since.Start, piece.From.Tree.Span.Start) // it goes on where that one stopped
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
var aChain = phrase.MustCompile(`(?i)(\b|\d)(ch(ain)?s?|multiples?)\b`)

// listed tells what a ground is made of, such as `15 sts`, from a number of places
// and from the stitch that comes next.
func listed(found string) bool {
	number, noun, _ := strings.Cut(found, " ")
	_, err := strconv.Atoi(number)
	return err == nil && noun != ""
}

// there words what is in the stead of a place: the next stitch, what the ground is
// made of, or a number of places named.
func there(f *fault) string {
	found := f.There
	_, err := strconv.Atoi(found)
	switch {
	case found == "":
		return "there is none"
	case err == nil:
		return found + " are named"
	case listed(found):
		return f.ground() + " has " + found
	}
	return "the next is " + quoted(found)
}
