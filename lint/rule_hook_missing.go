package lint

import (
	"strings"

	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
)

var hookMissing = &Rule{
	Name:     "hook-missing",
	Family:   "materials",
	Severity: Warning,
	Summary:  "A pattern that gives a gauge, or lists yarn and notions, says which hook.",
	Why: "The hook is the first thing that a maker takes out, and the gauge means nothing without it. Where all else is " +
		"listed, its line was lost.",
	Bad: `Pattern: Oak leaf mat
Terms: US
Yarn: moss green, fingering (1), 30 m (33 yd)
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
	Check: checkHookMissing,
}

// hookInUse is the hook while it is worked with, of which nothing is said.
var hookInUse = phrase.MustCompile(`\b(?:from|on|off|over|onto|in|through|with|insert|remove|drop|swing|yarn over|turn|lps?|loops?|sts?) (?:the |your )?hooks?\b|\bhooks? (?:in|into|through|under|from|around|behind|and draw|is|out)\b`)

// hookNamed tells whether a section speaks of a hook by itself, as of a size of it. What is said of it in use may run on
// into the next line.
var hookNamed = &fact[bool]{func(_ *Pass, s section) bool {
	return strings.Contains(s.told, "hook") && strings.Contains(hookInUse.ReplaceAllString(strings.Join(strings.Fields(s.told), " "), ""), "hook")
}}

func checkHookMissing(p *Pass) {
	if !p.works() || len(p.Materials.Hooks) > 0 || anywhere(p, hookNamed) {
		return
	}
	switch l := p.Materials; {
	case len(l.Gauges) > 0:
		f := Finding{Span: l.Gauges[0].Span, Message: "a gauge is given, and no hook to reach it with"}
		if l.Given {
			p.Report(f)
		} else {
			p.Note(f) // the list may stand elsewhere
		}
	case len(l.Yarns) > 0 && l.ListsNotions():
		p.Report(Finding{Span: p.firstSupply(), Message: "yarn and notions are listed, and no hook"})
	}
}

// firstSupply is where the materials begin.
func (p *Pass) firstSupply() source.Span {
	first := p.Materials.Yarns[0].Span
	for _, f := range p.File.Header {
		if f.Key == "notions" && f.KeySpan.Start < first.Start {
			first = f.KeySpan
		}
	}
	return first
}
