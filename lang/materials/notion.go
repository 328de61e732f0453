package materials

import (
	_ "embed"
	"regexp"
	"slices"
	"strings"

	"stitchproof/lang/phrase"
	"stitchproof/lang/table"
)

//go:embed notions.tsv
var notionTable string

// Notion is a thing besides yarn and hook that instructions may ask for.
type Notion struct {
	Name string
	// Handy is set for a tool that a maker may do without, or that every house has.
	Handy  bool
	told   *phrase.Phrase
	words  []string // those of told, in lower case
	listed []string
	// lasting are the words by which a list names what becomes part of the piece, used
	// those that show elsewhere that it does.
	lasting, used []string
}

var notions = table.Once(func() ([]Notion, error) {
	records, err := table.Read("notions.tsv", notionTable, "notion", "level", "told", "listed", "lasting", "used")
	if err != nil {
		return nil, err
	}
	out := make([]Notion, len(records))
	for i, r := range records {
		words := r.List("told", "|")
		for i, w := range words {
			words[i] = strings.ToLower(w)
		}
		out[i] = Notion{
			Name: r.Text("notion"), Handy: r.Text("level") == "handy", words: words,
			told:   phrase.Of(`(?i)\b(?:` + strings.ReplaceAll(regexp.QuoteMeta(r.Text("told")), `\|`, "|") + `)`),
			listed: r.List("listed", "|"), lasting: r.List("lasting", "|"), used: r.List("used", "|"),
		}
		if level := r.Text("level"); level != "needed" && level != "handy" {
			return nil, r.Errorf("no level is called %q", level)
		}
	}
	return out, nil
})

// Notions is every notion that can be told from instructions.
func Notions() []Notion { return notions() }

// May tells quickly whether a text in lower case may ask for the notion: none of which
// this is false does.
func (n *Notion) May(text string) bool {
	return slices.ContainsFunc(n.words, func(word string) bool { return strings.Contains(text, word) })
}

// ToldIn is where a text asks for the notion, as the bounds of the words; nil
// for nowhere. A sentence that says it is not needed asks for nothing.
func (n *Notion) ToldIn(text string) []int {
	at := 0
	for sentence := range strings.SplitAfterSeq(text, ".") {
		if m := n.told.FindStringIndex(sentence); m != nil && !needless.MatchString(sentence) && !inItsStead.MatchString(sentence[:m[0]]) && !strings.HasPrefix(sentence[m[1]:], " of ") { // a bead of filling
			end := m[1] + len(sentence[m[1]:]) - len(strings.TrimLeftFunc(sentence[m[1]:], isLetter))
			return []int{at + m[0], at + end}
		}
		at += len(sentence)
	}
	return nil
}

// LastsIn is where a list names the notion as something that becomes part of the piece,
// as the bounds of the word; nil for nowhere, or where the list leaves it to the maker.
func (n *Notion) LastsIn(list string) []int {
	lower := strings.ToLower(list)
	if len(lower) != len(list) || needless.MatchString(lower) {
		return nil
	}
	for _, word := range n.lasting {
		if i := strings.Index(lower, word); i >= 0 {
			end := i + len(word)
			end += len(lower[end:]) - len(strings.TrimLeftFunc(lower[end:], isLetter))
			return []int{i, end}
		}
	}
	return nil
}

// UsedIn tells whether a text, in lower case, shows that the notion is used.
func (n *Notion) UsedIn(text string) bool {
	return slices.ContainsFunc(n.used, func(word string) bool { return strings.Contains(text, word) })
}

// needless tells a sentence that leaves a notion out, or to the maker, or warns of it.
var needless = phrase.MustCompile(`(?i)\b(?:no|not|none|never|without|instead|optional|optionally|if you|if desired|if wished|you can|may|chok(?:e|es|ing)|swallow(?:s|ed|ing)?|` +
	`(?:do|does|did|is|are|was|wo|would|ca|could|should|must)n['’]t|stuff(?:ed)? (?:it )?with (?:an? |some |the )?(?:clean |dry |old |rolled )?(?:towels?|tissue|paper|newspaper))\b`)

// inItsStead stands before a notion that something else serves as: `tuck the tail in as stuffing`.
var inItsStead = phrase.MustCompile(`(?i)\b(?:as|(?:tails?|yarn ends?|scraps?) (?:up |right )?inside for) (?:an? |the |some |your )?$`)

func isLetter(r rune) bool { return r >= 'a' && r <= 'z' || r >= 'A' && r <= 'Z' }

// ListsNotions tells whether the list names something besides yarn and hook.
func (l *List) ListsNotions() bool {
	return slices.ContainsFunc(Notions(), func(n Notion) bool { return l.Has(&n) })
}

// Has tells whether the list has a notion.
func (l *List) Has(n *Notion) bool {
	for _, word := range n.listed {
		if strings.Contains(l.Text, word) {
			return true
		}
	}
	return false
}
