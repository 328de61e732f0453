package lint

import (
	"strings"

	"stitchproof/lang/materials"
	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
)

var sleepLoose = &Rule{
	Name:     "sleep-loose",
	Family:   "caution",
	Severity: Caution,
	Summary:  "Blankets, cushions and soft toys for a baby or a cot are told of, with the advice on safe sleep, where the pattern does not give it.",
	Why:      "A baby cannot push away what lies over its face. Whoever makes a blanket for a cot ought to know what doctors say of it before she chooses the yarn.",
	Bad: `Pattern: Baby blanket
Terms: US

Piece: Blanket
With A, ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (12 sc)
Fasten off.
`,
	Good: `Pattern: Sofa blanket
Terms: US

Piece: Blanket
With A, ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (12 sc)
Fasten off.
`,
	Sources: []string{
		"American Academy of Pediatrics, Pediatrics, July 2022, summary (read): under 12 months nothing soft or loose in the sleep space",
		"Advice differs from country to country (memory of that of the United Kingdom)",
	},
	Check: checkSleepLoose,
}

var (
	// inCot names the place of sleep itself.
	inCot = phrase.MustCompile(`\b(?:cots?|cribs?|cradles?|prams?|moses baskets?|bassinets?|nursery|stroller|carriage (?:cover|robe|blanket))\b`)
	// loose is what lies loose in a bed. Nothing is one by its name alone.
	loose = phrase.MustCompile(`\b(?:blankets?(?:[- ]stitch\w*)?|afghans?|coverlets?|quilts?|pillows?|cushions?|bumpers?|lovey|loveys|lovies|comforters?|carriage robe|sleeping bags?)\b`)
)

func checkSleepLoose(p *Pass) {
	who := p.wearer()
	small := who == materials.Preemie || who == materials.Newborn || who == materials.Baby
	_, bed := p.firstOf(inCot)
	if !small && !bed || p.advisesOnSleep() {
		return
	}
	at, found := p.firstBut(loose, func(_ source.Span, words string) bool { return strings.Contains(words, "stitch") }) // of a hem
	if !found {
		if at, found = p.firstOf(playful); !found {
			return
		}
	}
	p.caution(at, " for a baby lies loose where it sleeps; advice differs from country to country", "sleep")
}
