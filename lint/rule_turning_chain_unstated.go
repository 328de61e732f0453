package lint

import (
	"fmt"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
)

var turningChainUnstated = &Rule{
	Name:     "turning-chain-unstated",
	Family:   "order",
	Severity: Info,
	OfPiece:  true,
	Summary:  "Where custom does not settle whether a beginning chain counts as a stitch, the pattern says it.",
	Why: "Half the makers take the chain for the first stitch and half do not. Those who guess wrong gain or lose a stitch in " +
		"every row.",
	Bad: `Pattern: Mist scarf
Terms: US

Piece: Scarf
With A, ch 14.
Row 1: Hdc in 3rd ch from hook and in each ch across; turn. (12 hdc)
Row 2: Ch 2, hdc in each st across; turn. (12 hdc)
Row 3: Ch 2, hdc in each st across. (12 hdc)
Fasten off.
`,
	Good: `Pattern: Mist scarf
Terms: US

Piece: Scarf
With A, ch 14.
Row 1: Hdc in 3rd ch from hook and in each ch across; turn. (12 hdc)
Row 2: Ch 2 (does not count as a st), hdc in each st across; turn. (12 hdc)
Row 3: Ch 2, hdc in each st across. (12 hdc)
Fasten off.
`,
	Sources: []string{
		"ch 2 before hdc: Spinrite leaflets do both, `does not count as hdc` in CAC0129-010202M and `counts as stitch " +
			"throughout` in CAC0129-027942M (read)",
	},
	Check: checkTurningChainUnstated,
}

func checkTurningChainUnstated(p *Pass) {
	if p.around.turningSaid {
		return
	}
	for _, piece := range p.Pieces {
		for _, row := range piece.Rows {
			b, ok := p.beginningOf(row)
			if !ok || !unsettled(row, b) {
				continue
			}
			f := Finding{
				Span:    row.Tree.Abs(b.clause.Span),
				Message: fmt.Sprintf("nothing says whether the ch %d counts as a st", b.chain.Number.At(0)),
			}
			if words := p.countsShow(row, b); words != "" {
				end := source.At(b.clause.Span.End)
				f.Message += "; by the count it " + words
				f.Fix = &Fix{Title: "write that it " + words, Safe: true, Edits: []source.Edit{{Span: row.Tree.Abs(end), New: " (" + words + ")"}}}
			}
			p.Report(f)
			break // said once, it holds for the piece
		}
	}
}

// unsettled tells whether custom leaves open if a row's beginning chain
// counts, or the counts show that it is not as custom has it.
func unsettled(row *fabric.Row, b beginning) bool {
	for i := range row.Tallies {
		if row.Tallies[i].Readings&fabric.ReadTurningCounts != 0 {
			return true
		}
	}
	return b.first.TurningCounts == stitch.Varies && b.chain.Number.At(0) >= b.first.Turning
}

// countsShow words what the stated count shows of the chain, "" where the row
// states none that bears it out.
func (p *Pass) countsShow(row *fabric.Row, b beginning) string {
	for i := range row.Tallies {
		if row.Tallies[i].Agrees() != fabric.Agrees {
			return ""
		}
	}
	for _, s := range row.Made(0) {
		if s.Turning {
			return "counts as " + b.first.Abbreviation(p.Fabric.Dialect)
		}
	}
	return countsNot
}

const countsNot = "does not count as a st"
