package lint

import (
	"slices"
	"strings"
	"unicode"

	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// listing is the pattern's own list of abbreviations.
type listing struct {
	file    *syntax.File
	entries []*syntax.Definition
	known   map[string]bool // every name of an entry or a defined stitch, and each word of it
	// begun are the words that something in the lines of the list begins with, as entries that
	// are not read as such do: `dc2tog, work 2 dc together`.
	begun map[string]bool
}

// fewestListed is how many abbreviations must be explained together to make a list
// that has no heading.
const fewestListed = 3

// listOf finds the pattern's list of abbreviations. It has no entries where there
// is none: what a pattern defines of stitches and other words is no list.
func listOf(f *syntax.File) listing {
	l := listing{file: f, known: map[string]bool{}}
	for _, d := range f.Definitions {
		if !d.Special && abbreviates(d.Names[0]) {
			l.entries = append(l.entries, d)
		}
		for _, name := range namesIn(d) {
			l.known[name], l.known[anyNumber(name)] = true, true
			for _, word := range strings.Fields(name) {
				l.known[word] = true
			}
		}
	}
	if len(l.entries) < fewestListed && !l.headed() {
		l.entries = nil
	}
	l.begun = l.beginnings()
	return l
}

// hints tells whether the list explains an abbreviation for another number, as it does dc3tog where dc2tog is used.
func (l listing) hints(word string) bool { return l.known[anyNumber(word)] }

// anyNumber is an abbreviation with a sign for each digit.
func anyNumber(word string) string {
	return strings.Map(func(r rune) rune {
		if unicode.IsDigit(r) {
			return '#'
		}
		return r
	}, word)
}

// entryStart is the word that may begin an entry of a list, after the end of the one before.
var entryStart = phrase.MustCompile(`(?:^|[:;,.|/]|[-•*] )[ \t*_]*([\pL\d]+(?: st)?)`)

// beginnings are the words that entries may begin with in the lines of the list and those that
// stand with them.
func (l listing) beginnings() map[string]bool {
	out := map[string]bool{}
	if len(l.entries) == 0 {
		return out
	}
	t, last, end := l.file.Text, l.entries[len(l.entries)-1].Span.End, l.file.Text.Len()
	for _, piece := range l.file.Pieces {
		for _, r := range piece.Rows {
			if r.At >= last {
				end = min(end, r.At)
			}
		}
	}
	made := map[int]bool{} // lines that say how a stitch is made
	for _, d := range l.file.Definitions {
		if d.Special {
			made[t.LineOf(d.Span.Start)] = true
		}
	}
	for line := t.LineOf(l.entries[0].Span.Start); line < t.Lines() && t.Line(line).Start < end; line++ {
		text := t.Slice(t.Line(line))
		if made[line] {
			continue
		}
		if t.Line(line).Start > last && strings.TrimSpace(text) == "" {
			break
		}
		for _, m := range entryStart.FindAllStringSubmatch(text, -1) {
			out[bareWords(m[1])] = true
		}
	}
	return out
}

// headed tells whether the first entry stands below a heading that says what it
// is, or beside one.
func (l listing) headed() bool {
	if len(l.entries) == 0 {
		return false
	}
	line := l.file.Text.LineOf(l.entries[0].Span.Start)
	return slices.ContainsFunc([]int{line - 1, line}, func(i int) bool {
		return i >= 0 && strings.Contains(bareWords(l.file.Text.Slice(l.file.Text.Line(i))), "abbreviations")
	})
}

// abbreviates tells the name of an entry, `sl st`, from that of a stitch that the
// pattern defines, `Foundation sc`.
func abbreviates(name string) bool {
	words := strings.Fields(bareWords(name))
	return slices.ContainsFunc(words, shortened) && !slices.ContainsFunc(words, func(word string) bool { return !shortened(word) && len(word) > 3 })
}

// namesIn lists what an entry explains, as [bareWords] writes it: both of `st/sts`.
func namesIn(d *syntax.Definition) []string {
	var out []string
	for _, name := range d.Names {
		for part := range strings.SplitSeq(name, "/") {
			if name := bareWords(part); name != "" {
				out = append(out, name)
			}
		}
	}
	return out
}

// bareWords is a text in lower case with nothing but single spaces between its
// words.
func bareWords(s string) string {
	return strings.Join(strings.FieldsFunc(strings.ToLower(s), func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) }), " ")
}

// explains tells whether the list explains an abbreviation: itself, in the
// singular, or through its parts, as sc and tog explain sc2tog.
func (l listing) explains(word string) bool {
	one := strings.TrimSuffix(word, "s")
	if l.known[word] || l.begun[word] || l.known[one] || l.begun[one] || l.known[word+"s"] {
		return true
	}
	parts := strings.FieldsFunc(word, func(r rune) bool { return r == ' ' || unicode.IsDigit(r) })
	parts = slices.DeleteFunc(parts, func(part string) bool { return !shortened(part) })
	return len(parts) > 0 && parts[0] != word && !slices.ContainsFunc(parts, func(part string) bool { return !l.explains(part) })
}

// abbreviated is an abbreviation that the pattern uses.
type abbreviated struct {
	written string
	span    source.Span // in the file, where it stands first
	// short and long are how a list gives it and explains it.
	short, long string
	// works is set where it stands for a stitch that is worked: without its meaning nobody can go on.
	works bool
}

// abbreviationsUsed lists the abbreviations in instructions and definitions, each
// where it stands first, in the order of the file.
func (p *Pass) abbreviationsUsed() []abbreviated {
	var out []abbreviated
	seen, looked := map[string]bool{}, map[string]bool{}
	for _, r := range p.instructions() {
		for _, t := range r.Tokens {
			written := r.Source(t.Span)
			if t.Kind != syntax.Stitch && t.Kind != syntax.Word || looked[written] {
				continue
			}
			looked[written] = true
			a, ok := abbreviationOf(written, p.Fabric.Dialect)
			if !ok || seen[a.short] {
				continue
			}
			seen[a.short] = true
			a.written, a.span, a.works = written, r.Abs(t.Span), t.Kind == syntax.Stitch && !r.Label.Span.Covers(t.Span)
			out = append(out, a)
		}
	}
	slices.SortStableFunc(out, func(a, b abbreviated) int { return a.span.Start - b.span.Start })
	return out
}

// instructions are the rows of the pattern and the stitches it defines.
func (p *Pass) instructions() []*syntax.Row {
	var out []*syntax.Row
	for _, d := range p.Definitions {
		if d.Row != nil {
			out = append(out, d.Row)
		}
	}
	for row := range p.rows() {
		out = append(out, row.Tree)
	}
	return out
}

// abbreviationOf is what a word of an instruction is short for. It is false for a
// word in full, and for what is understood without a list: measures and signs.
func abbreviationOf(written string, d stitch.Dialect) (abbreviated, bool) {
	word := bareWords(written)
	if !slices.ContainsFunc(strings.Fields(word), shortened) {
		return abbreviated{}, false
	}
	if m, ok := stitch.Find(word); ok {
		if k := m.In(d); k != nil {
			a := abbreviated{short: strings.TrimSuffix(strings.ToLower(written), "."), long: k.Term(d).Name}
			if bareWords(k.Term(d).Abbr) == word {
				a.short = k.Term(d).Abbr // FPdc, however it begins a sentence
			}
			return a, true
		}
	}
	if a, ok := stitch.FindAbbreviation(word); ok && !measured[a.Short] {
		return abbreviated{short: a.Short, long: a.Long}, true
	}
	return abbreviated{}, false
}

// measured are the shorthands that every pattern uses and no list explains.
var measured = map[string]bool{`"`: true, "cm": true, "mm": true, "g": true, "m": true, "oz": true, "yd": true}

// shortened tells a shortened word from one in full. Those that can be spoken are
// counted up.
func shortened(word string) bool {
	letters := strings.TrimFunc(word, unicode.IsDigit)
	return letters != "" && !strings.ContainsAny(letters, "aeiouy") || spoken[letters] || strings.Contains(letters, "tog") && letters != "together"
}

var spoken = func() map[string]bool {
	out := map[string]bool{}
	for word := range strings.FieldsSeq("inc dec rep reps beg alt foll cont prev rem pat patt approx bet blo flo bo esc edc etr ehdc yo yoh rev exsc") {
		out[word] = true
	}
	return out
}()

// writes tells whether a text, as [listing.elsewhere] gives it, has a word of the
// list: by itself, in the plural, or within a longer one, as tog in sc2tog.
func writes(text, name string) bool {
	for _, form := range [...]string{name, name + "s", name + "es"} {
		if strings.Contains(text, " "+form+" ") {
			return true
		}
	}
	for word := range strings.FieldsSeq(text) {
		rest, before := strings.CutPrefix(word, name)
		if !before {
			rest, before = strings.CutSuffix(word, name)
		}
		if _, known := stitch.Find(rest); before && known {
			return true
		}
	}
	return false
}

// elsewhere is the text of the file but for the list, as bare words parted from
// their digits, once with the digits and once without.
func (l listing) elsewhere() string {
	var rest strings.Builder
	at := 0
	for _, d := range l.entries {
		rest.WriteString(l.file.Text.Slice(source.Span{Start: at, End: d.Span.Start}) + " ")
		at = d.Span.End
	}
	rest.WriteString(l.file.Text.Slice(source.Span{Start: at, End: l.file.Text.Len()}))
	whole := bareWords(rest.String())
	parted := strings.Map(func(r rune) rune {
		if unicode.IsDigit(r) {
			return ' '
		}
		return r
	}, whole)
	return " " + whole + " " + strings.Join(strings.Fields(parted), " ") + " "
}
