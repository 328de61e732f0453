package terms

import (
	"slices"
	"strings"
	"sync"
	"unicode/utf8"

	"stitchproof/lang/numeral"
	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// sort is how the words of a passage are to be taken.
type sort uint8

const (
	prose       sort = iota // notes, comments, titles, what the header says: an ordinary word is no stitch
	label                   // the key of a header's field
	spelled                 // a line of a list of abbreviations
	instruction             // a row, or a stitch of the pattern's own
	named                   // yarns, people: searched for habits of spelling, never rewritten
)

// passage is a stretch of the file whose words are taken alike. Positions in it
// count from at.
type passage struct {
	text string
	at   int
	sort sort
	row  *syntax.Row // of an instruction
	// defined is set where the row says what a stitch of the pattern's own is.
	defined bool
	// asides are its brackets that begin with a dialect: `(UK tr)`.
	asides []source.Span
}

// withAsides is the passage with its asides found.
func (p passage) withAsides() passage {
	for _, found := range bracketed.FindAllStringIndex(p.text, -1) {
		p.asides = append(p.asides, source.Span{Start: found[0], End: found[1]})
	}
	return p
}

// bracketed is a bracket that begins with a dialect.
var bracketed = phrase.MustCompile(`[(\[]\s*=?\s*` + stitch.NationExpr + `\b[^()\[\]]*[)\]]`)

// instructs tells whether a name in the passage is a stitch's for certain.
func (p passage) instructs() bool { return p.sort == instruction || p.sort == spelled }

// tells tells whether the passage can say something of the whole pattern: not a comment,
// which no maker sees.
func (p passage) tells() bool {
	return (p.sort == prose || p.sort == named) && !strings.HasPrefix(p.text, "//")
}

// names are the header's fields whose values are names, not words of the trade.
var names = map[string]bool{
	"yarn": true, "hook": true, "designer": true, "version": true, "sizes": true, "skill level": true, "materials": true,
}

// ofRow is the passage that a row is.
func ofRow(r *syntax.Row) passage {
	return passage{text: r.Text, at: r.At, sort: instruction, row: r}
}

// passagesBeside cuts what a file says beside its rows into passages.
func passagesBeside(f *syntax.File) []passage {
	out := make([]passage, 0, 2*len(f.Header)+2*len(f.Definitions)+len(f.Comments)+len(f.Prose)+len(f.Pieces))
	entries := slices.DeleteFunc(slices.Clone(f.Definitions), func(d *syntax.Definition) bool { return !d.Listed })
	add := func(s source.Span, as sort) {
		if s.Len() > 0 {
			out = append(out, passage{text: f.Text.Slice(s), at: s.Start, sort: as})
		}
	}
	for _, field := range f.Header {
		switch {
		case field.Key == "terms":
			continue
		case field.Key == "abbreviations" && lists(entries, field.ValueSpan):
		case names[field.Key]:
			add(field.ValueSpan, named)
		default:
			add(field.ValueSpan, prose)
		}
		add(field.KeySpan, label)
	}
	for _, d := range f.Definitions {
		switch {
		case d.Row != nil:
			add(d.NameSpan, instruction)
			out = append(out, passage{text: d.Row.Text, at: d.Row.At, sort: instruction, row: d.Row, defined: true})
		default:
			add(d.Span, spelled)
		}
	}
	for _, c := range f.Comments {
		add(c.Span, prose)
	}
	for _, s := range f.Prose {
		if !lists(entries, s) {
			add(s, prose)
		}
	}
	for _, p := range f.Pieces {
		add(p.NameSpan, prose)
	}
	return out
}

// inOrder are the passages of a file as they stand in it, with their asides.
func inOrder(f *syntax.File) []passage {
	out := passagesBeside(f)
	for _, p := range f.Pieces {
		for _, r := range p.Rows {
			out = append(out, ofRow(r))
		}
	}
	for i := range out {
		out[i] = out[i].withAsides()
	}
	slices.SortStableFunc(out, func(a, b passage) int { return a.at - b.at })
	return out
}

// lists tells whether a stretch of the file holds entries of a list of abbreviations,
// which are passages of their own.
func lists(entries []*syntax.Definition, s source.Span) bool {
	return slices.ContainsFunc(entries, func(d *syntax.Definition) bool { return s.Covers(d.Span) })
}

// tokens cuts the passage into words, in the words of the pattern.
func (p passage) tokens(vocab *syntax.Vocabulary) []syntax.Token {
	if p.row != nil {
		return p.row.Tokens
	}
	return syntax.Lex(p.text, vocab)
}

// aside is the dialect of the bracket that a place stands in, Unsettled outside
// of those that name one.
func (p passage) aside(at source.Span) stitch.Dialect {
	for _, a := range p.asides {
		if a.Covers(at) {
			return dialectIn(p.text[a.Start:a.End])
		}
	}
	return stitch.Unsettled
}

// ordinary tells a name of a stitch that in prose is an ordinary word: `double
// the yarn`.
func ordinary(written string) bool {
	return !slices.ContainsFunc(strings.Fields(strings.ToLower(written)), func(word string) bool { return !everyday[word] })
}

var everyday = func() map[string]bool {
	out := map[string]bool{}
	for word := range strings.FieldsSeq("single singles double doubles triple triples half long longs short plain slip st sts stitch stitches quad tc sl") {
		out[word] = true
	}
	return out
}()

// loose tells whether a place in an instruction lies in words of no certain
// meaning, which are to be taken as those of prose are.
func (p passage) loose(at source.Span) bool {
	if p.sort == prose {
		return true
	}
	if p.row == nil {
		return false
	}
	for _, c := range p.row.Clauses {
		if c.Span.Covers(at) {
			switch c.Node.(type) {
			case *syntax.Unread, *syntax.Remark, *syntax.MakeUp, *syntax.Yarn, *syntax.Rows:
				return true
			}
		}
	}
	return false
}

// match is a word of a passage in which the dialects differ, other than the name of
// a stitch.
type match struct {
	span    source.Span // in the passage
	dialect stitch.Dialect
	force   stitch.Force
}

// forms are the words beside the stitches' names in which the dialects differ, by
// their first word; of several that begin alike the longest first.
var forms = sync.OnceValue(func() map[string][]form {
	out := map[string][]form{}
	seen := map[string]bool{}
	for _, w := range stitch.DifferingWords() {
		for _, d := range [...]stitch.Dialect{stitch.US, stitch.UK} {
			list, force := w.In(d)
			for _, spelling := range list {
				if words := strings.Fields(spelling); !seen[spelling] {
					seen[spelling] = true
					out[words[0]] = append(out[words[0]], form{words, d, force})
				}
			}
		}
	}
	for _, list := range out {
		slices.SortStableFunc(list, func(a, b form) int { return len(b.words) - len(a.words) })
	}
	return out
})

type form struct {
	words   []string
	dialect stitch.Dialect
	force   stitch.Force
}

// formsIn finds every such word in a text.
func formsIn(text string) []match {
	var out []match
	var word [16]byte // longer than any first word
	for i := 0; i < len(text); {
		n := wordLength(text[i:])
		if n == 0 {
			i++
			continue
		}
		if n <= len(word) {
			for k := range n {
				word[k] = text[i+k] | 0x20 // lower case, of letters and digits
			}
			for _, f := range forms()[string(word[:n])] {
				if end := f.endIn(text[i:]); end > 0 {
					out = append(out, match{source.Span{Start: i, End: i + end}, f.dialect, f.force})
					n = end
					break
				}
			}
		}
		i += n
	}
	return out
}

// endIn is where the form ends that the text begins with, 0 if it does not.
func (f form) endIn(text string) int {
	at := 0
	for k, word := range f.words {
		gap := len(text[at:]) - len(strings.TrimLeft(text[at:], " \t\r\n"))
		if k > 0 && gap == 0 {
			return 0
		}
		at += gap
		if n := wordLength(text[at:]); n != len(word) || !strings.EqualFold(text[at:at+n], word) {
			return 0
		}
		at += len(word)
	}
	return at
}

// wordLength is the number of letters and digits that a text begins with. Letters
// beyond those of English begin no word that is looked for, and end none.
func wordLength(text string) int {
	n := 0
	for n < len(text) && (text[n] >= 'a' && text[n] <= 'z' || text[n] >= 'A' && text[n] <= 'Z' || text[n] >= '0' && text[n] <= '9' || text[n] >= utf8.RuneSelf) {
		n++
	}
	return n
}

// differing finds the words in which the dialects differ. Outside of
// instructions, `miss` is one only before what can be missed, and `tension` is
// not one where it is the hand's.
func (p passage) differing() []match {
	var out []match
	for _, m := range formsIn(p.text) {
		before, after := p.text[:m.span.Start], p.text[m.span.End:]
		word := strings.ToLower(p.text[m.span.Start:m.span.End])
		switch {
		case (strings.HasPrefix(word, "miss") || strings.HasPrefix(word, "skip")) && p.loose(m.span) && (strings.HasSuffix(word, "ing") || !passable.MatchString(after)):
		case strings.HasPrefix(word, "tension") && held.MatchString(before):
		default:
			out = append(out, m)
		}
	}
	return out
}

var (
	// passable begins what can be passed over: `miss the first 2 sts`.
	passable = phrase.MustCompile(`(?i)^\s+(?:(?:the|a|an|next|first|last|of|these|every|other|second|\d+|` + numeral.Expression(1, numeral.Most) + `)\s+)*(?:sts?|stitch(?:es)?|ch(?:s|ains?)?|sps?|spaces?|d?tr|[hs]?dc|sc|htr|shells?|rows?|rounds?|rnds?|tch|turning|corners?)\b`)
	// held ends what tells how the yarn is held: `an even tension`.
	held = phrase.MustCompile(`(?i)\b(?:even|firm|tight|loose|relaxed|steady|good|yarn|thread|constant|same)\s+$`)
)
