package lint

import (
	"strings"

	"stitchproof/lang/phrase"
)

var yarnMissing = &Rule{
	Name:     "yarn-missing",
	Family:   "materials",
	Severity: Warning,
	Summary:  "A pattern that lists hook and notions says which yarn.",
	Why: "Yarn is what a maker buys first, and hook and gauge go with its weight. Where all else is listed, its line was " +
		"lost.",
	Bad: `Pattern: Oak leaf mat
Terms: US
Hook: 3 mm (US D-3)
Notions: tapestry needle

Piece: Mat
Ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across. (12 sc)
Fasten off.
`,
	Good: `Pattern: Oak leaf mat
Terms: US
Yarn: moss green, fingering (1), 30 m (33 yd)
Hook: 3 mm (US D-3)
Notions: tapestry needle

Piece: Mat
Ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across. (12 sc)
Fasten off.
`,
	Check: checkYarnMissing,
}

var (
	// inOtherWords are words that say yarn, or what it is spun of, and speak of none that the piece is made of: what is sewn
	// and stuffed with, a needle, a movement of the hook.
	inOtherWords = phrase.MustCompile(`\b(?:yarn|wool)[- ](?:needles?|over|round|ends?|tails?)\b|\b(?:sewing|embroidery|button|matching|contrasting|quilting) (?:threads?|cotton|silk|wool)\b|\b(?:cotton|wool|wadding) (?:wool|stuffing|filling|wadding|batting)\b|\bblanket\b`)
	// spun are words for yarn by what it is or weighs.
	spun = phrase.MustCompile(`\b(?:\d+[- ]?ply|dk|aran|worsted|chunky|bulky|sport|fingering|sock|lace|weight|skeins?|balls?|hanks?|cones?|wool|cotton|acrylic|alpaca|mohair|linen|silk|bamboo|merino|thread|floss|string|twine|raffia|jute|(?:any|scraps? of|left-?over|of your|some|same|this|that|other|thicker|thinner|fine|thick|strands? of|oddments? of) (?:\pL+ )?yarns?)\b`)
)

// yarnNamed tells whether a section speaks of a yarn to make something of.
var yarnNamed = &fact[bool]{func(_ *Pass, s section) bool { return spun.MatchString(inOtherWords.ReplaceAllString(s.told, "")) }}

func checkYarnMissing(p *Pass) {
	l := p.Materials
	if !p.works() || !l.Given || len(l.Yarns) > 0 || len(l.Hooks) == 0 || !l.ListsNotions() {
		return
	}
	if listed := inOtherWords.ReplaceAllString(l.Text, ""); spun.MatchString(listed) || strings.Contains(listed, "yarn") || anywhere(p, yarnNamed) {
		return
	}
	p.Report(Finding{Span: l.Hooks[0].Span, Message: "hook and notions are listed, and no yarn"})
}
