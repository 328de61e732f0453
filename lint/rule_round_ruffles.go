package lint

import "stitchproof/lang/syntax"

var roundRuffles = &Rule{
	Name:     "round-ruffles",
	Family:   "shape",
	Severity: Info,
	OfPiece:  true,
	Moot:     shapeMeant,
	Summary:  "A flat piece worked round grows by no more stitches than its stitch needs to lie flat.",
	Why:      "Too many stitches have no room: the edge stands up in waves, and no blocking lays it down.",
	Bad: `Pattern: Moss coaster
Terms: US

Piece: Coaster
With A, 6 sc in magic ring, sl st in first sc to join. (6 sc)
Rnd 2: Ch 1, 3 sc in each st around; join. (18 sc)
Rnd 3: Ch 1, 2 sc in each st around; join. (36 sc)
Rnd 4: Ch 1, [sc in next 2 sts, 2 sc in next st] 12 times; join. (48 sc)
Fasten off.
`,
	Good: `Pattern: Moss coaster
Terms: US

Piece: Coaster
With A, 6 sc in magic ring, sl st in first sc to join. (6 sc)
Rnd 2: Ch 1, 2 sc in each st around; join. (12 sc)
Rnd 3: Ch 1, [sc in next st, 2 sc in next st] 6 times; join. (18 sc)
Rnd 4: Ch 1, [sc in next 2 sts, 2 sc in next st] 6 times; join. (24 sc)
Fasten off.
`,
	Sources: []string{
		"Flat growth is 2 pi times the height of a round by the width of a stitch: 6.3 sc, 9.4 hdc, 12.6 dc (derived); 6, 8 and 12 in Simply Crochet, 2020, and craftymaria, 2009 (read)",
		"Told from one and a half times that on: a square of sc grows by 8 a round and lies flat (derived)",
	},
	Check: checkRoundRuffles,
}

// ruffling is from how many times the flat growth on an edge stands up.
const ruffling = 1.5

func checkRoundRuffles(p *Pass) {
	p.shapes(func(d disc) (string, bool) {
		return d.from() + " to " + d.to() + " grow by " + d.perRound(d.grown) + " sts each where about " + d.perRound(d.flat) +
			" lie flat: the edge will stand up in waves", d.grown > ruffling*d.flat && !d.cornered()
	})
}

// cornered tells whether the rounds grow at corners, by three stitches in one:
// handbooks count polygons so whatever the stitch needs.
func (d disc) cornered() bool {
	for _, row := range d.rounds[1:] {
		corner := false
		syntax.Walk(row.Tree.Clauses, func(c syntax.Clause) {
			w, ok := c.Node.(*syntax.Work)
			corner = corner || ok && w.Number.At(0) == 3 && len(w.Places) == 1 && !w.Places[0].Each
		})
		if !corner {
			return false
		}
	}
	return true
}
