package lint

import (
	"regexp"
	"slices"
	"strings"

	"stitchproof/lang/materials"
	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
)

var yarnUnused = &Rule{
	Name:     "yarn-unused",
	Family:   "materials",
	Severity: Warning,
	Summary:  "Every yarn of the materials is used.",
	Why:      "A maker who has bought a yarn and never meets it wonders which row she has missed.",
	Bad: `Pattern: Oak leaf mat
Terms: US
Yarn A: bark brown, worsted (4), 20 m (22 yd)
Yarn B: leaf green, worsted (4), 10 m (11 yd)

Piece: Mat
With A, ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (12 sc)
Row 2: Ch 1, sc in each st across. (12 sc)
Fasten off.
`,
	Good: `Pattern: Oak leaf mat
Terms: US
Yarn A: bark brown, worsted (4), 20 m (22 yd)
Yarn B: leaf green, worsted (4), 10 m (11 yd)

Piece: Mat
With A, ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (12 sc)
Row 2: With B, ch 1, sc in each st across. (12 sc)
Fasten off.
`,
	Check: checkYarnUnused,
}

func checkYarnUnused(p *Pass) {
	used := map[string]bool{}
	for _, use := range p.yarnsUsed() {
		used[use.name] = true
	}
	if len(used) == 0 {
		return // the rows leave it to the maker which yarn is where
	}
	said := p.saidOfYarns()
	if anyYarn.MatchString(said) {
		return // it names some, and means the others as well
	}
	first := true // a piece may begin in its first yarn without a word
	for _, y := range p.Materials.Yarns {
		if y.Name == "" {
			continue
		}
		if !first && !used[strings.ToLower(y.Name)] && !speaksOfYarn(said, y) {
			p.Report(Finding{Span: y.Span, Message: "yarn " + y.Name + " is listed, and no row uses it"})
		}
		first = false
	}
}

// anyYarn speaks of yarns without a name: `three rows of each color in turn`.
var anyYarn = phrase.MustCompile(`(?i)\b(?:each|every|all|any|both|next|new|other|remaining) (?:of the )?(?:colou?rs?|yarns?)\b|\b(?:colou?rs?|yarns?) (?:in turn|in order|in sequence|of your choice|as (?:desired|you like|wished))\b|\balternat(?:e|es|ing) (?:the )?(?:colou?rs|yarns)\b|\bchang(?:e|ing) colou?rs? (?:every|each|at|after|in|as)\b|\bcolou?r (?:sequence|order)\b`)

// ofBranch are letters that name a branch and no yarn.
var ofBranch = phrase.MustCompile(`(?i)\b(?:branch|return to|ch of|chain of) [A-Z]\b`)

// saidOfYarns is everything but the header and the names of branches.
func (p *Pass) saidOfYarns() string {
	var b strings.Builder
	spans := p.directions()
	for _, d := range p.File.Definitions {
		spans = append(spans, d.Span)
	}
	for _, f := range p.File.Header {
		if f.Key == "notes" {
			spans = append(spans, f.ValueSpan)
		}
	}
	spans = append(spans, p.unlistedProse()...)
	for _, span := range spans {
		b.WriteString(p.File.Text.Slice(span) + "\n")
	}
	if !p.says("branch ", "return to ", " ch of ", "\nch of ", "(ch of ", "chain of ") {
		return b.String()
	}
	return ofBranch.ReplaceAllString(b.String(), "")
}

// unlistedProse is the prose outside the list of materials.
func (p *Pass) unlistedProse() []source.Span {
	return slices.DeleteFunc(slices.Clone(p.File.Prose), func(s source.Span) bool { return slices.Contains(p.Materials.Lines, s) })
}

// speaksOfYarn tells whether a text speaks of a yarn by its letter or by the
// words of its colour.
func speaksOfYarn(text string, y materials.Yarn) bool {
	if regexp.MustCompile(`(^|[^A-Za-z])` + regexp.QuoteMeta(y.Name) + `([^A-Za-z]|$)`).MatchString(text) {
		return true
	}
	color, _, _ := strings.Cut(strings.ToLower(y.Text), ",")
	words := strings.Fields(color)
	if len(words) == 0 {
		return false
	}
	return strings.Contains(strings.ToLower(text), words[len(words)-1])
}
