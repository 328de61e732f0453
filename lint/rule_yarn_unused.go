package lint

import (
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
	for _, uses := range yarnsUsed.in(p) {
		for _, use := range uses {
			used[use.name] = true
		}
	}
	if len(used) == 0 {
		return // the rows leave it to the maker which yarn is where
	}
	if p.saysOfYarns(anyYarn, func(text string) bool { return anyYarn.MatchString(strings.ToLower(text)) }) {
		return // it names some, and means the others as well
	}
	first := true // a piece may begin in its first yarn without a word
	for _, y := range p.Materials.Yarns {
		if y.Name == "" {
			continue
		}
		if !first && !used[strings.ToLower(y.Name)] && !p.saysOfYarns(y.Name+": "+y.Text, speaksOf(y)) {
			p.Report(Finding{Span: y.Span, Message: "yarn " + y.Name + " is listed, and no row uses it"})
		}
		first = false
	}
}

// anyYarn speaks of yarns without a name: `three rows of each color in turn`.
var anyYarn = phrase.MustCompile(`\b(?:each|every|all|any|both|next|new|other|remaining) (?:of the )?(?:colou?rs?|yarns?)\b|\b(?:colou?rs?|yarns?) (?:in turn|in order|in sequence|of your choice|as (?:desired|you like|wished))\b|\balternat(?:e|es|ing) (?:the )?(?:colou?rs|yarns)\b|\bchang(?:e|ing) colou?rs? (?:every|each|at|after|in|as)\b|\bcolou?r (?:sequence|order)\b`)

// ofBranch are letters that name a branch and no yarn.
var ofBranch = phrase.MustCompile(`(?i)\b(?:branch(?:es)?|return to|ch of|chain of) [A-Z](?:(?:,? and|,| &) [A-Z]\b)*\b`)

// saysOfYarns tells whether some section says what a function looks for, outside of the list
// of materials and the names of branches; key stands for it.
func (p *Pass) saysOfYarns(key any, in func(text string) bool) bool {
	type ofYarns struct{ key any }
	return p.sections.anywhere(ofYarns{key}, func(s section) bool {
		return remembered(s.memory, ofYarns{key}, func() bool { return in(saidOfYarns(p, s)) })
	})
}

// saidOfYarns is everything that a section says where yarns are spoken of.
func saidOfYarns(p *Pass, s section) string {
	var b strings.Builder
	add := func(at source.Span) { b.WriteString(p.File.Text.Slice(at) + "\n") }
	for _, row := range s.rows() {
		add(row.Tree.Written())
	}
	for _, d := range p.File.Definitions {
		if s.at.Contains(d.Span.Start) {
			add(d.Span)
		}
	}
	for _, f := range p.File.Header {
		if f.Key == "notes" && s.at.Contains(f.ValueSpan.Start) {
			add(f.ValueSpan)
		}
	}
	for _, span := range s.those(p.File.Prose) {
		if s.piece != nil || !slices.Contains(p.Materials.Lines, span) {
			add(span)
		}
	}
	if !says(s.told, "branch ", "branches ", "return to ", " ch of ", "\nch of ", "(ch of ", "chain of ") {
		return b.String()
	}
	return ofBranch.ReplaceAllString(b.String(), "")
}

// speaksOf tells whether a text speaks of a yarn by its letter or by the last word of its
// colour.
func speaksOf(y materials.Yarn) func(text string) bool {
	return func(text string) bool {
		if standsAlone(text, y.Name) {
			return true
		}
		color, _, _ := strings.Cut(strings.ToLower(y.Text), ",")
		words := strings.Fields(color)
		return len(words) > 0 && strings.Contains(strings.ToLower(text), words[len(words)-1])
	}
}

// standsAlone tells whether a name stands in a text with no letter beside it.
func standsAlone(text, name string) bool {
	letter := func(b byte) bool { return b|0x20 >= 'a' && b|0x20 <= 'z' }
	for from := 0; ; {
		i := strings.Index(text[from:], name)
		if i < 0 {
			return false
		}
		start, end := from+i, from+i+len(name)
		if (start == 0 || !letter(text[start-1])) && (end == len(text) || !letter(text[end])) {
			return true
		}
		from = start + 1
	}
}
