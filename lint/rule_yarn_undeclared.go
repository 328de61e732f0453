package lint

import (
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"stitchproof/lang/fabric"
	"stitchproof/lang/numeral"
	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
)

var yarnUndeclared = &Rule{
	Name:     "yarn-undeclared",
	Family:   "materials",
	Severity: Warning,
	Summary:  "Every yarn that the rows name is in the materials.",
	Why:      "A maker buys what is listed. A yarn that first appears in row 12 sends her back to the shop, or to guess which of hers is meant.",
	Bad: `Pattern: Oak leaf mat
Terms: US
Yarn A: bark brown, worsted (4), 20 m (22 yd)
Yarn B: leaf green, worsted (4), 10 m (11 yd)

Piece: Mat
With A, ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (12 sc)
Row 2: With B, ch 1, sc in each st across; turn. (12 sc)
Row 3: With C, ch 1, sc in each st across. (12 sc)
Fasten off.
`,
	Good: `Pattern: Oak leaf mat
Terms: US
Yarn A: bark brown, worsted (4), 20 m (22 yd)
Yarn B: leaf green, worsted (4), 10 m (11 yd)
Yarn C: haw red, worsted (4), 10 m (11 yd)

Piece: Mat
With A, ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (12 sc)
Row 2: With B, ch 1, sc in each st across; turn. (12 sc)
Row 3: With C, ch 1, sc in each st across. (12 sc)
Fasten off.
`,
	Check: checkYarnUndeclared,
}

// Only a list that calls its yarns by letters, or by names of their own, can lack one: words for colours vary too much
// between list and rows to be held against each other.
func checkYarnUndeclared(p *Pass) {
	checkNamesUndeclared(p)
	checkHeadingsUndeclared(p)
	listed := codesListed(p)
	if len(listed) == 0 {
		return
	}
	seen := map[string]bool{}
	for s, uses := range yarnsUsed.in(p) {
		for _, use := range uses {
			if seen[use.name] || !yarnCode.MatchString(use.name) || p.Materials.Named(use.name) {
				continue
			}
			seen[use.name] = true
			p.Report(Finding{
				Span:    s.abs(use.at),
				Message: "yarn " + use.written + " is used, and the materials list only " + both(listed),
			})
		}
	}
}

// checkNamesUndeclared holds the names with a capital letter by which rows call yarns against those that the lines of the
// list begin with, where one of them stands there: `Bark: dark brown 4-ply wool`, `With Bark, ch 52`.
func checkNamesUndeclared(p *Pass) {
	listed := p.Materials.Names()
	var missing []Finding
	known := false
	seen := map[string]bool{}
	for s, uses := range yarnsUsed.in(p) {
		for _, use := range uses {
			first, _ := utf8.DecodeRuneInString(use.written)
			switch {
			case seen[use.name] || len(use.name) < leastYarnName || !unicode.IsUpper(first):
				continue
			case slices.Contains(listed, use.name):
				known = true
			case !p.Materials.HasWords(use.name) && !p.namesPiece(use.name):
				missing = append(missing, Finding{Span: s.abs(use.at), Message: "yarn " + use.written + " is used, and the materials do not list it"})
			}
			seen[use.name] = true
		}
	}
	if known {
		for _, f := range missing {
			p.Report(f)
		}
	}
}

// yarnInHeading is the yarn that a heading names beside how many are made: `Leaves (Leaf, make 5)`, `Scarf (make 1, holly red)`.
var yarnInHeading = phrase.MustCompile(`\((?:(\pL[\pL]+(?: [\pL]+)?), (?i:make) (?:\d+|` + numeral.Expression(1, 20) + `)|(?i:make) (?:\d+|` + numeral.Expression(1, 20) + `), (\pL[\pL]+(?: [\pL]+)?))[),]`)

// noYarn are words beside how many are made that name no yarn.
var noYarn = phrase.MustCompile(`(?i)\b(?:yarn|colou?r|shade|sizes?|rows?|rounds?|rnds?|flat|both|each|all|from|with|work|worked|hook|mm|left|right|mirror\w*|optional|alike|small|large|double|one|two|per|for|in|as|stuff\w*)\b`)

// yarnsInHeadings are those names.
var yarnsInHeadings = &fact[[]yarnUse]{func(_ *Pass, s section) []yarnUse {
	line, _, _ := strings.Cut(s.text, "\n")
	m := yarnInHeading.FindStringSubmatchIndex(line)
	if s.piece == nil || m == nil {
		return nil
	}
	group := 2
	if m[group] < 0 {
		group = 4
	}
	at := source.Span{Start: m[group], End: m[group+1]}
	if name := line[at.Start:at.End]; !noYarn.MatchString(name) {
		return []yarnUse{{strings.ToLower(name), name, at}}
	}
	return nil
}}

// checkHeadingsUndeclared holds them against the list, where it has one of them.
func checkHeadingsUndeclared(p *Pass) {
	var missing []Finding
	known := false
	for s, uses := range yarnsInHeadings.in(p) {
		for _, use := range uses {
			if p.Materials.HasWords(use.name) {
				known = true
			} else {
				missing = append(missing, Finding{Span: s.abs(use.at), Message: "yarn " + use.written + " is used, and the materials do not list it"})
			}
		}
	}
	if known {
		for _, f := range missing {
			p.Report(f)
		}
	}
}

// leastYarnName is how many letters the name of a yarn has at least that is no code.
const leastYarnName = 3

// namesPiece tells whether a piece of the pattern is called by a word.
func (p *Pass) namesPiece(word string) bool {
	return slices.ContainsFunc(p.Fabric.Pieces, func(piece *fabric.Piece) bool {
		return slices.ContainsFunc(strings.Fields(strings.ToLower(piece.Tree.Name)), func(of string) bool { return of == word })
	})
}

// codesListed are the letters that the materials call yarns by, with the names of the others.
// What stands in running text is taken for one where the rows use a yarn that is called so.
func codesListed(p *Pass) []string {
	named := namedYarns(p.Materials)
	firm := slices.ContainsFunc(named, yarnCode.MatchString)
	for _, code := range p.Materials.Codes {
		if !slices.ContainsFunc(named, func(name string) bool { return strings.EqualFold(name, code) }) {
			named = append(named, code)
		}
	}
	if firm || len(named) == 0 {
		return named
	}
	for _, uses := range yarnsUsed.in(p) {
		if slices.ContainsFunc(uses, func(u yarnUse) bool {
			return slices.ContainsFunc(p.Materials.Codes, func(code string) bool { return strings.EqualFold(code, u.name) })
		}) {
			return named
		}
	}
	return nil
}
