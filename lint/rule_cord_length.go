package lint

import (
	"math"
	"strconv"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/materials"
	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
	"stitchproof/lang/units"
)

var cordLength = &Rule{
	Name:     "cord-length",
	Family:   "caution",
	Severity: Caution,
	Summary:  "Ties, cords and loops on things for children are told of, with the published limits.",
	Why:      "Cords catch in playground gear, doors and cots, and children have been strangled. The published limits are short and differ from place to place; at a young child's neck they leave no cord at all.",
	Bad: `Pattern: Child's bonnet
Terms: US
Hook: 3.5 mm (US E-4)
Gauge: 20 sc and 22 rows = 10 cm (4 in)

Piece: Tie
With A, ch 81.
Row 1: Sl st in 2nd ch from hook and in each ch across. (80 sl sts)
Fasten off.
`,
	Good: `Pattern: Woman's bonnet
Terms: US
Hook: 3.5 mm (US E-4)
Gauge: 20 sc and 22 rows = 10 cm (4 in)

Piece: Tie
With A, ch 81.
Row 1: Sl st in 2nd ch from hook and in each ch across. (80 sl sts)
Fasten off.
`,
	Sources: []string{
		"US 16 CFR 1120.3 and ASTM F1816 for outerwear (CPSC pages and scope, read); EN 14682:2014 (Tukes, read; further limits from memory), which leaves hats, gloves and scarves to other law",
		"EN 71-1, 5.4, cords on toys (reproduced text, read); EN 12586 and US 16 CFR 1511.6, soother holders (memory)",
		"A chain is taken to be as long as as many single crochets are wide (common practice)",
	},
	Check: checkCordLength,
}

var (
	// cordWord is what is tied or pulled. `Tie off` is no tie.
	cordWord  = phrase.MustCompile(`\b(?:ties|tie cords?|drawstrings?|cords?|lanyards?|neck ?straps?|necklaces?|leading strings|reins)\b`)
	cordPiece = phrase.MustCompile(`\b(?:ties?|cords?|strings?|straps?|drawstrings?|lanyards?|necklaces?|leads?|reins)\b`)
	// neckSaid is the caution itself.
	neckSaid = phrase.MustCompile(`\bround (?:an? |the |any |its |your )?(?:small |young |little )?(?:child|children|baby|babies|toddler)(?:['’]s?)? necks?\b|\bstrang(?:le|les|led|ulation)\b`)
	soother  = phrase.MustCompile(`\b(?:pacifiers?|soothers?|dumm(?:y|ies)) ?(?:clips?|holders?|straps?|chains?|cords?|leads?)\b`)
)

func checkCordLength(p *Pass) {
	if at, found := p.firstOf(soother); found {
		p.caution(at, " can go round a baby's neck", "soother", "soother-us")
		return
	}
	who := p.wearer()
	if p.tells(neckSaid) {
		return
	}
	toy := p.isToy() && (who == materials.Nobody || who.Young()) && !p.tells(agesSaid)
	if !who.Young() && !toy {
		return
	}
	for _, piece := range p.Fabric.Pieces {
		if !cordPiece.MatchString(strings.ToLower(piece.Tree.Name)) {
			continue
		}
		p.reportCord(piece.Tree.NameSpan, p.chainLength(piece), toy)
		return
	}
	if at, found := p.firstOf(cordWord); found {
		p.reportCord(at, 0, toy)
	}
}

// reportCord tells of a cord, whose length in millimetres is 0 where it is not
// known. A short cord is told of as well: at hood and neck none is short enough.
func (p *Pass) reportCord(at source.Span, length float64, toy bool) {
	words := ""
	if length > 0 {
		words = ", about " + strconv.Itoa(int(math.Round(length/10))) + " cm (" + units.Inches(length) + " in) long,"
	}
	if toy {
		p.caution(at, words+" on a toy can go round a child's neck", "toy-cord", "toy-loop")
		return
	}
	p.caution(at, words+" on something for a child can catch and strangle", "hood-neck", "waist-string", "belt")
}

// chainLength is how long the chain is that a piece begins with, in the largest
// size and in millimetres, 0 where no gauge tells.
func (p *Pass) chainLength(piece *fabric.Piece) float64 {
	if len(p.Materials.Gauges) == 0 || p.Materials.Gauges[0].Stitches == 0 {
		return 0
	}
	most := 0
	for _, row := range piece.Rows {
		for _, c := range row.Tree.Clauses {
			if n, ok := c.Node.(*syntax.Chain); ok && n.Number.At(p.Fabric.Sizes()-1) > syntax.MostRising {
				most = max(most, n.Number.At(p.Fabric.Sizes()-1))
			}
		}
	}
	g := p.Materials.Gauges[0]
	return float64(most) * g.Length / g.Stitches
}
