package names

import (
	"strings"

	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// finder collects the names of a file.
type finder struct {
	file  *syntax.File
	index *Index
	known map[key]*Name
	own   map[string]string // the first name of each of the pattern's own stitches, by every name
}

// key tells things apart: a stitch and a yarn are the file's, everything else is
// a piece's.
type key struct {
	kind    Kind
	piece   int
	word    string         // a yarn, a branch, a marker, a stitch of the pattern's own
	meaning stitch.Meaning // any other stitch
	number  int            // a row
}

func (f *finder) mention(k key, m Mention) *Name {
	n := f.known[k]
	if n == nil {
		n = &Name{Kind: k.kind}
		f.known[k] = n
		f.index.Names = append(f.index.Names, n)
	}
	n.Mentions = append(n.Mentions, m)
	return n
}

// spelled is a name as it is compared: lower case, one space between words,
// hyphens as spaces.
func spelled(word string) string {
	return strings.ToLower(strings.Join(strings.FieldsFunc(word, func(r rune) bool { return r == ' ' || r == '-' || r == '\t' }), " "))
}

// header finds the yarns that are listed and the stitches that are defined.
func (f *finder) header() {
	for _, field := range f.file.Header {
		if field.Key == "yarn" && field.Name != "" {
			at := source.Span{Start: field.KeySpan.End - len(field.Name), End: field.KeySpan.End}
			if f.file.Text.Slice(at) == field.Name {
				f.mention(key{kind: Yarn, word: spelled(field.Name)}, Mention{Span: at, Word: spelled(field.Name), Declares: true})
			}
		}
	}
	for _, d := range f.file.Definitions {
		for _, name := range d.Names {
			if d.Special {
				f.own[spelled(name)] = spelled(d.Names[0])
			}
		}
	}
	for _, d := range f.file.Definitions {
		f.defined(d)
		if d.Row != nil {
			f.stitches(d.Row)
		}
	}
}

// defined takes each spelling that a definition gives a stitch.
func (f *finder) defined(d *syntax.Definition) {
	text, from := f.file.Text.Slice(d.NameSpan), 0
	for _, name := range d.Names {
		i := strings.Index(text[from:], name)
		if i < 0 {
			return
		}
		at := source.At(d.NameSpan.Start + from + i)
		at.End += len(name)
		from += i + len(name)
		m := Mention{Span: at, Word: spelled(name), Declares: true}
		if d.Special {
			f.mention(key{kind: Stitch, word: spelled(d.Names[0])}, m).Own = true
		} else if meaning, ok := stitch.Find(spelled(name)); ok {
			f.mention(key{kind: Stitch, meaning: meaning}, m)
		}
	}
}

// stitches finds the stitches that a row names.
func (f *finder) stitches(row *syntax.Row) {
	for _, t := range row.Tokens {
		if t.Kind != syntax.Stitch {
			continue
		}
		m := Mention{Span: row.Abs(t.Span), Word: t.Canon}
		if first, ok := f.own[t.Canon]; ok {
			f.mention(key{kind: Stitch, word: first}, m)
		} else if t.Stitch != (stitch.Meaning{}) {
			f.mention(key{kind: Stitch, meaning: t.Stitch}, m)
		}
	}
}

// heading finds a piece's name.
func (f *finder) heading(piece int) {
	p := f.file.Pieces[piece]
	i := strings.Index(f.file.Text.Slice(p.NameSpan), p.Name)
	if p.Name == "" || i < 0 {
		return
	}
	at := source.At(p.NameSpan.Start + i)
	at.End += len(p.Name)
	f.mention(key{kind: Piece, piece: piece}, Mention{Span: at, Word: spelled(p.Name), Declares: true})
}

// called finds the piece of a name.
func (f *finder) called(word string) (int, bool) {
	for i, p := range f.file.Pieces {
		if p.Name != "" && spelled(p.Name) == spelled(word) {
			return i, true
		}
	}
	return 0, false
}
