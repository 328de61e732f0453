package lint

import (
	"fmt"
	"slices"
	"sort"
	"strings"
	"sync"

	"stitchproof/lang/inflect"
	"stitchproof/lang/nearest"
	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

var abbreviationUnknown = &Rule{
	Name:     "abbreviation-unknown",
	Family:   "terms",
	Severity: Warning,
	Summary:  "Every word that stands where a stitch is named is one: of the trade, or of the pattern's own.",
	Why: "A maker who meets cs in place of sc has to guess, and the row cannot be counted. Two letters changed over are the commonest " +
		"slip of the pen there is; a stitch of the pattern's own that nobody explained is another.",
	Bad: `Pattern: Wren's nest
Terms: US

Piece: Nest
With A, ch 11.
Row 1: Sc in 2nd ch from hook, cs in next 9 ch. (10 sc)
Fasten off.
`,
	Good: `Pattern: Wren's nest
Terms: US

Piece: Nest
With A, ch 11.
Row 1: Sc in 2nd ch from hook, sc in next 9 ch. (10 sc)
Fasten off.
`,
	Check: checkAbbreviationUnknown,
}

// unknownIn are the places of a section where a stitch is named that nothing knows.
var unknownIn = &fact[[]source.Span]{func(p *Pass, s section) []source.Span {
	var out []source.Span
	for _, row := range s.rows() {
		for _, t := range p.unknownNames(row.Tree) {
			out = append(out, s.place(row.Tree.Abs(t.Span)))
		}
	}
	return out
}}

// checkAbbreviationUnknown tells of each word once, where it stands first.
func checkAbbreviationUnknown(p *Pass) {
	places := map[string][]source.Span{}
	var order []string
	unknown := func(at source.Span) {
		word := strings.ToLower(p.File.Text.Slice(at))
		if places[word] == nil {
			order = append(order, word)
		}
		places[word] = append(places[word], at)
	}
	for _, d := range p.Definitions {
		if d.Row == nil {
			continue
		}
		for _, t := range p.unknownNames(d.Row) {
			unknown(d.Row.Abs(t.Span))
		}
	}
	for s, places := range unknownIn.in(p) {
		for _, at := range places {
			unknown(s.abs(at))
		}
	}
	if len(order) == 0 {
		return
	}
	near, explained := neighbours(p), listOf(p.File).known
	for _, word := range order {
		if explained[word] || explained[strings.TrimSuffix(word, "s")] {
			continue // though what it says is not understood
		}
		at := places[word]
		f := Finding{Span: at[0], Message: fmt.Sprintf("no stitch is called %s, and the pattern does not explain it", quoted(p.File.Text.Slice(at[0])))}
		for _, again := range at[1:] {
			f.Related = append(f.Related, Related{Span: again, Message: "here again"})
		}
		if meant := near.to(word); len(meant) > 0 {
			f.Message = fmt.Sprintf("no stitch is called %s; the nearest is %s", quoted(p.File.Text.Slice(at[0])), quoted(meant[0]))
			f.Fix = p.writing(at, meant[0])
			for _, other := range meant[1:min(len(meant), fewShown)] {
				f.Alternatives = append(f.Alternatives, *p.writing(at, other))
			}
		}
		p.Report(f)
	}
}

// writing is the fix that writes another word in some places. It is not safe: only
// the writer knows what was meant.
func (p *Pass) writing(places []source.Span, word string) *Fix {
	f := &Fix{Title: "write " + word}
	for _, at := range places {
		f.Edits = append(f.Edits, source.Edit{Span: at, New: inflect.Like(word, p.File.Text.Slice(at))})
	}
	return f
}

// unknownNames are the words of a row that stand where a stitch is named, and that
// nothing knows. Where the words around them are understood they are yarns or
// branches; where they can be spoken and are like no stitch's name they are
// English that is not understood.
func (p *Pass) unknownNames(r *syntax.Row) []syntax.Token {
	unread := r.Unread()
	if len(unread) == 0 {
		return nil
	}
	slices.SortFunc(unread, func(a, b source.Span) int { return a.Start - b.Start })
	covers := func(s source.Span) bool {
		i := sort.Search(len(unread), func(i int) bool { return unread[i].End >= s.End })
		return i < len(unread) && unread[i].Covers(s)
	}
	var out []syntax.Token
	for i, t := range r.Tokens {
		if t.Kind == syntax.Name && covers(t.Span) && (namesStitch(r, i) && misspelled(r.Source(t.Span)) || standsApart(r, i) && p.slipOfStitch(r.Source(t.Span))) {
			out = append(out, t)
		}
		if word, ok := glued(r, i); ok && covers(source.Span{Start: word.Span.End - 1, End: word.Span.End}) && misspelled(r.Source(word.Span)) {
			out = append(out, word)
		}
	}
	return out
}

// standsApart tells whether a word is all that stands between two marks: the `dce` of
// `(sc 1, dce)`.
func standsApart(r *syntax.Row, i int) bool {
	mark := func(k syntax.Kind) bool {
		switch k {
		case syntax.Open, syntax.Comma, syntax.Semi, syntax.Close, syntax.Period, syntax.Star:
			return true
		}
		return false
	}
	return i > 0 && i+1 < len(r.Tokens) && mark(r.Tokens[i-1].Kind) && mark(r.Tokens[i+1].Kind)
}

// shortest is how many letters a word has at least that is told by itself from another.
const shortest = 3

// slipOfStitch tells whether a word is a stitch of the pattern's own with one slip, or an
// abbreviation of the trade with two letters changed over. English words are one letter
// away from too many of the others.
func (p *Pass) slipOfStitch(word string) bool {
	word = strings.ToLower(word)
	slip := func(name string) bool {
		return len(name) >= shortest && len(word) >= shortest && nearest.Slips(word, strings.ToLower(name)) == 1
	}
	for _, d := range p.File.Definitions {
		if d.Special && slices.ContainsFunc(d.Names, slip) {
			return true
		}
	}
	return slices.ContainsFunc(stitch.All(), func(s *stitch.Stitch) bool {
		abbr := s.Term(p.Fabric.Dialect).Abbr
		return slip(abbr) && inOrder(abbr) == inOrder(word)
	})
}

// longestWord is the longest run of letters and digits that is taken for one word.
const longestWord = 60

// glued is the word without a space of which token i, a stitch, is only the
// beginning: `hdc2tgo`.
func glued(r *syntax.Row, i int) (syntax.Token, bool) {
	t := r.Tokens[i]
	if t.Kind != syntax.Stitch || i+1 == len(r.Tokens) || r.Tokens[i+1].Span.Start != t.Span.End {
		return t, false
	}
	word := syntax.Token{Kind: syntax.Name, Span: t.Span}
	for _, next := range r.Tokens[i+1:] {
		if next.Span.Start != word.Span.End || next.Kind != syntax.Name && next.Kind != syntax.Number && next.Kind != syntax.Stitch || word.Span.Len() > longestWord {
			break
		}
		word.Span.End = next.Span.End
	}
	return word, word.Span.End > t.Span.End
}

// namesStitch tells whether the word at i stands where a stitch is named: where a
// clause begins or a number counts it, and before a place, a number, or the end
// of what is counted.
func namesStitch(r *syntax.Row, i int) bool {
	begins, counted := i == 0, false
	if i > 0 {
		switch r.Tokens[i-1].Kind {
		case syntax.Number:
			counted = true
		case syntax.Open, syntax.Comma, syntax.Semi, syntax.Colon, syntax.Period, syntax.Star, syntax.Dash:
			begins = true
		}
	}
	if !begins && !counted {
		return false
	}
	if i+1 == len(r.Tokens) {
		return counted
	}
	next := r.Tokens[i+1]
	switch next.Kind {
	case syntax.Word:
		return beginsPlace[next.Canon]
	case syntax.Number:
		return begins
	case syntax.Comma, syntax.Close, syntax.Semi, syntax.Period, syntax.Star:
		return counted
	case syntax.Sign:
		return counted || strings.ContainsAny(next.Canon, "x×*")
	}
	return false
}

// beginsPlace are the words that the place of a stitch begins with.
var beginsPlace = map[string]bool{"in": true, "next": true, "each": true, "around": true, "across": true, "first": true, "last": true, "over": true}

// misspelled tells a word that looks like an abbreviation, or is one letter away from
// a stitch's name.
func misspelled(word string) bool {
	if strings.ContainsFunc(word, func(r rune) bool { return !(r >= 'a' && r <= 'z' || r >= 'A' && r <= 'Z' || r >= '0' && r <= '9') }) || len(word) < 2 {
		return false
	}
	lower := strings.ToLower(word)
	if len(word) <= 5 && !strings.ContainsAny(lower, "aeiouy") {
		return true
	}
	return len(word) > 5 && slices.ContainsFunc(stitchWords(), func(name string) bool { return nearest.Slips(lower, name) == 1 })
}

// stitchWords are the single words that name stitches in full: treble, crochet.
var stitchWords = sync.OnceValue(func() []string {
	var words []string
	for _, s := range stitch.Spellings() {
		for word := range strings.FieldsSeq(s.Words) {
			if len(word) > 4 && !slices.Contains(words, word) {
				words = append(words, word)
			}
		}
	}
	slices.Sort(words)
	return words
})

// neighbourhood is the words that a slip of the pen may stand for, those that the
// pattern uses first.
type neighbourhood struct{ used, known []string }

// neighbours gathers the words that a pattern may have meant: its own, and the
// stitches of its dialect.
func neighbours(p *Pass) neighbourhood {
	var n neighbourhood
	for _, d := range p.File.Definitions {
		for _, name := range d.Names {
			if d.Special {
				n.used = append(n.used, strings.ToLower(name))
			}
		}
	}
	for _, r := range p.instructions() {
		for _, t := range r.Tokens {
			if word := strings.ToLower(r.Source(t.Span)); (t.Kind == syntax.Stitch || t.Canon == "ch") && !slices.Contains(n.used, word) {
				n.used = append(n.used, word)
			}
		}
	}
	for _, k := range stitch.All() {
		if k.Class != stitch.Tunisian {
			n.known = append(n.known, k.Term(p.Fabric.Dialect).Abbr)
		}
	}
	n.known = append(n.known, stitchWords()...)
	return n
}

// to lists the words nearest to one, a slip away: of those that the pattern uses, else
// of all; those with the same letters in another order first.
func (n neighbourhood) to(word string) []string {
	var out []string
	for _, list := range [...][]string{n.used, n.known} {
		for _, candidate := range list {
			if nearest.Slips(strings.ToLower(word), strings.ToLower(candidate)) == 1 && !slices.Contains(out, candidate) {
				out = append(out, candidate)
			}
		}
		if len(out) > 0 {
			sameLetters := func(candidate string) bool { return inOrder(candidate) == inOrder(word) }
			slices.SortStableFunc(out, func(a, b string) int {
				switch same := sameLetters(a); {
				case same == sameLetters(b):
					return 0
				case same:
					return -1
				}
				return 1
			})
			return out
		}
	}
	return nil
}

// inOrder is the letters of a word in the order of the alphabet.
func inOrder(word string) string {
	sorted := []byte(strings.ToLower(word))
	slices.Sort(sorted)
	return string(sorted)
}
