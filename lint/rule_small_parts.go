package lint

import (
	"slices"

	"stitchproof/lang/materials"
	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

var smallParts = &Rule{
	Name:     "small-parts",
	Family:   "caution",
	Severity: Caution,
	Summary:  "Beads, buttons, hard eyes and wire in a toy or in something for a young child are told of, with the rules on small parts, where the pattern does not tell of them, or is itself for a child under three.",
	Why: "What comes off is swallowed or breathed in. Children under three put everything in their mouths, and a soft toy " +
		"goes to bed with any age; that an eye is sold as a safety eye changes none of this.",
	Bad: `Pattern: Dormouse toy
Terms: US
Yarn: oak brown, DK (3), 10 m (11 yd)
Hook: 3.25 mm (US D-3)
Notions: stitch marker, toy filling, tapestry needle, 2 safety eyes of 6 mm (1/4 in)

Piece: Head
Rnd 1: 6 sc in magic ring, place marker in first st; do not join. (6 sc)
Rnd 2: 2 sc in each st around, move marker up. (12 sc)
Rnds 3-4: Sc in each st around. (12 sc)
Attach the safety eyes. Stuff the head.
Rnd 5: [Sc2tog] 6 times. (6 sc)
Fasten off.
`,
	Good: `Pattern: Dormouse toy
Terms: US
Yarn: oak brown, DK (3), 10 m (11 yd)
Hook: 3.25 mm (US D-3)
Notions: stitch marker, toy filling, tapestry needle
Note: The eyes are embroidered.

Piece: Head
Rnd 1: 6 sc in magic ring, place marker in first st; do not join. (6 sc)
Rnd 2: 2 sc in each st around, move marker up. (12 sc)
Rnds 3-4: Sc in each st around. (12 sc)
Stuff the head.
Rnd 5: [Sc2tog] 6 times. (6 sc)
Fasten off.
`,
	Sources: []string{
		"US 16 CFR 1500.18(a)(9) and Part 1501: under 36 months, cylinder of 1.25 in (31.7 mm) (read); eyes, beads and buttons count",
		"EN 71-1 as told in slides on mechanical safety of toys (read): a soft toy meant to be held is for under 36 months, whatever age is written on it",
	},
	Check: checkSmallParts,
}

// hardParts are things that come off a piece and are not yarn. An eye of a hook
// or of a needle is none, and a button band only where buttons are named.
var hardParts = phrase.MustCompile(`\b(?:safety eyes?|plastic eyes?|toy eyes?|glass eyes?|goo?gl[ey]+ eyes?|safety noses?|plastic noses?|beads?|buttons?|sequins?|bells?|wires?|pipe cleaners?|rattle inserts?)\b`)

func checkSmallParts(p *Pass) {
	heading := func(passage source.Span) bool { // buttons that are a piece are crocheted
		return slices.ContainsFunc(p.File.Pieces, func(piece *syntax.Piece) bool { return piece.Span == passage })
	}
	who := p.wearer()
	at, found := p.firstBut(hardParts, func(passage source.Span, words string) bool {
		return heading(passage) || !who.UnderThree() && p.advisesOnPart(words) // what is for a baby has them against its own advice
	})
	if !found {
		return
	}
	switch aged := p.tells(agesSaid); {
	case p.isToy() && (who.Young() || !aged):
		p.caution(at, " in a toy can come off and be swallowed", "small-parts", "small-cylinder", "soft-toy")
	case p.isToy():
		p.caution(at, " in a toy can come off and be swallowed, whatever age is written on it", "soft-toy")
	case who.Young() && !(who == materials.Child && aged):
		p.caution(at, " in something for a "+string(who)+" can come off and be swallowed", "small-parts", "small-cylinder")
	}
}
