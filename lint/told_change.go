package lint

import (
	"fmt"
	"slices"

	"stitchproof/lang/fabric"
	"stitchproof/lang/syntax"
)

// A row may say by how many stitches it changes: `30 sts (+6)`, `4 sts more than before`.

// changeOff is by how much a row changes, and by how much it says that it does.
type changeOff struct{ made, said int }

// holdChanges holds what a row says of its change against the row below.
func (p *Pass) holdChanges(row *fabric.Row) {
	if row.Continued || row.Branched() || row.Tree.Label.Step {
		return
	}
	for _, c := range row.Tree.Clauses {
		total, ok := c.Node.(*syntax.Total)
		if !ok || total.Change == 0 || len(total.Parts) != 1 || total.Parts[0].On != "" || !total.Parts[0].Noun.OfAll() {
			continue
		}
		var off sized[changeOff]
		for size := range row.Tallies {
			said := total.Change * total.Parts[0].Number.At(size)
			if made, known := p.changeOf(row, size, said); known && made != said {
				off.add(size, changeOff{made, said})
			}
		}
		if len(off.sizes) == 0 {
			continue
		}
		p.inSizes(off.sizes, Finding{
			Span:    row.Tree.Abs(c.Span),
			Message: changeSaid(&off, total.Change),
			Related: []Related{{headSpan(row.Below(off.sizes[0]).Tree), fmt.Sprintf("the row below makes %s", madeText(row.Below(off.sizes[0])))}},
		})
	}
}

// changeOf is by how many stitches a row changes from the one below in a size, where both are sure; its chains count where
// they come nearer to what is said.
func (p *Pass) changeOf(row *fabric.Row, size, said int) (by int, known bool) {
	below := row.Below(size)
	if below == nil || below.Piece != row.Piece || row.Repeats[size] != 1 || !p.doubts.counts(row, size) {
		return 0, false
	}
	t, was := &row.Tallies[size], &below.Tallies[size]
	if !t.Known || !t.Works || !was.Known || !was.Works || t.Agrees() == fabric.Disagrees || was.Agrees() == fabric.Disagrees || len(t.Faults) > 0 || below.Continued || below.Branched() {
		return 0, false
	}
	by = t.Made - was.Made
	if withChains := by + t.Chains - was.Chains; withChains == said {
		by = said
	}
	return by, true
}

// changeSaid says both changes in the direction of the one that is told, more or fewer.
func changeSaid(off *sized[changeOff], way int) string {
	word := "more"
	if way < 0 {
		word = "fewer"
	}
	said := off.num(func(o changeOff) int { return way * o.said })
	if slices.ContainsFunc(off.facts, func(o changeOff) bool { return way*o.made < 0 }) {
		return "changes by " + off.num(func(o changeOff) int { return o.made }) + " from the row below, says " + said + " " + word
	}
	return "makes " + off.num(func(o changeOff) int { return way * o.made }) + " " + word + " than the row below, says " + said
}
