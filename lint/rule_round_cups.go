package lint

var roundCups = &Rule{
	Name:     "round-cups",
	Family:   "shape",
	Severity: Info,
	OfPiece:  true,
	Moot:     shapeMeant,
	Summary:  "A flat piece worked round grows by as many stitches as its stitch needs to lie flat.",
	Why:      "Too few stitches draw the edge in: a coaster becomes a bowl, and the maker thinks that she works too tightly.",
	Bad: `Pattern: Moss coaster
Terms: US
Turning chains: ch 3 counts as dc.

Piece: Coaster
Rnd 1: Ch 3, 5 dc in magic ring; sl st in top of beg ch-3 to join. (6 dc)
Rnd 2: Ch 3, dc in same st, 2 dc in each st around; join. (12 dc)
Rnd 3: Ch 3, 2 dc in next st, [dc in next st, 2 dc in next st] 5 times; join. (18 dc)
Rnd 4: Ch 3, dc in next st, 2 dc in next st, [dc in next 2 sts, 2 dc in next st] 5 times; join. (24 dc)
Fasten off.
`,
	Good: `Pattern: Moss coaster
Terms: US
Turning chains: ch 3 counts as dc.

Piece: Coaster
Rnd 1: Ch 3, 11 dc in magic ring; sl st in top of beg ch-3 to join. (12 dc)
Rnd 2: Ch 3, dc in same st, 2 dc in each st around; join. (24 dc)
Rnd 3: Ch 3, 2 dc in next st, [dc in next st, 2 dc in next st] 11 times; join. (36 dc)
Rnd 4: Ch 3, dc in next st, 2 dc in next st, [dc in next 2 sts, 2 dc in next st] 11 times; join. (48 dc)
Fasten off.
`,
	Sources: []string{
		"Flat growth is 2 pi times the height of a round by the width of a stitch: 6.3 sc, 9.4 hdc, 12.6 dc (derived)",
		"Told below six tenths of that: 8 dc a round are used for flat pieces (boocoos, 2012, read)",
	},
	Check: checkRoundCups,
}

// cupping is below which part of the flat growth an edge is drawn in.
const cupping = 0.6

// A piece that turns upright was meant to.
func checkRoundCups(p *Pass) {
	p.shapes(func(d disc) (string, bool) {
		return d.from() + " to " + d.to() + " grow by " + d.perRound(d.grown) + " sts each where about " + d.perRound(d.flat) +
			" lie flat: the edge will draw in to a bowl", !d.turnsUpright && d.grown < cupping*d.flat
	})
}
