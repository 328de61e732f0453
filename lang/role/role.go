// Package role says what part each word of a pattern plays as it was read, so
// that a writer sees what was taken for a stitch, a number, a place or a count.
// What was not understood plays none, and so stands out.
package role

import (
	"slices"
	"strings"

	"stitchproof/lang/names"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// Role is the part that words play.
type Role uint8

// The roles.
const (
	None    Role = iota
	Comment      // the writer's own lines, and remarks within an instruction
	Key          // of a field of the header
	Value        // of a field of the header
	Heading      // a piece, where it begins or is called
	Label        // a row, where it begins or is called
	Stitch       // a stitch, of the trade or of the pattern's own
	Number
	Place  // where stitches go: `in next st`, `around`
	Action // what is done other than stitches: `turn`, `skip`, `rep`
	Mark   // the stars and brackets of repeats and groups
	Count  // a stated count
	Branch
	Yarn
	Marker
)

// Word is a stretch of text with its role. It never spans a line end.
type Word struct {
	Span source.Span
	Role Role
	// Declares is set where a thing is given its name; Own for a stitch that the
	// pattern defines.
	Declares, Own bool
}

// Of gives the words of a pattern that play a part, in order. No two overlap.
func Of(file *syntax.File, index *names.Index) []Word {
	p := painter{file: file, index: index, named: map[int]Word{}}
	p.naming()
	for _, c := range file.Comments {
		p.add(c.Span, Comment)
	}
	p.header()
	for _, piece := range file.Pieces {
		for _, row := range piece.Rows {
			p.row(row)
		}
	}
	slices.SortFunc(p.words, func(a, b Word) int { return a.Span.Start - b.Span.Start })
	return p.words
}

// painter collects the words of a file.
type painter struct {
	file  *syntax.File
	index *names.Index
	named map[int]Word // those that are names, by where they begin
	words []Word
}

// roles are those of the kinds of name.
var roles = [...]Role{
	names.Stitch: Stitch, names.Yarn: Yarn, names.Branch: Branch, names.Marker: Marker, names.Row: Label, names.Piece: Heading,
}

// naming notes the names; those outside of instructions are words as they are.
func (p *painter) naming() {
	p.index.Within(source.Span{End: p.file.Text.Len()}, func(n *names.Name, m names.Mention) {
		w := Word{Span: m.Span, Role: roles[n.Kind], Own: n.Own, Declares: m.Declares}
		p.named[m.Span.Start] = w
		if m.Declares && (n.Kind == names.Stitch || n.Kind == names.Yarn || n.Kind == names.Piece) {
			p.put(w)
		}
	})
}

// add gives a stretch of text a role, line by line.
func (p *painter) add(s source.Span, role Role) { p.put(Word{Span: s, Role: role}) }

func (p *painter) put(w Word) {
	text, at := p.file.Text.Slice(w.Span), w.Span.Start
	for line := range strings.Lines(text) {
		body := strings.TrimRight(line, " \t\r\n")
		start := at + len(body) - len(strings.TrimLeft(body, " \t\ufeff"))
		if end := at + len(body); end > start {
			part := w
			part.Span = source.Span{Start: start, End: end}
			p.words = append(p.words, part)
		}
		at += len(line)
	}
}

// header gives fields and definitions their roles. The name in `Yarn A` is one
// already.
func (p *painter) header() {
	for _, f := range p.file.Header {
		key := f.KeySpan
		if w, ok := p.named[key.End-len(f.Name)]; ok && f.Name != "" {
			key.End = w.Span.Start
		}
		p.add(key, Key)
		p.values(f)
	}
	for _, d := range p.file.Definitions {
		if d.Row != nil {
			p.row(d.Row)
		}
	}
}

// values gives the value of a field its role, but for the stitches that are
// defined in it.
func (p *painter) values(f *syntax.Field) {
	at := f.ValueSpan.Start
	p.index.Within(f.ValueSpan, func(_ *names.Name, m names.Mention) {
		p.add(source.Span{Start: at, End: m.Span.Start}, Value)
		at = m.Span.End
	})
	p.add(source.Span{Start: at, End: max(at, f.ValueSpan.End)}, Value)
}

// row gives the words of an instruction their roles.
func (p *painter) row(row *syntax.Row) {
	label := row.Abs(row.Label.Span)
	if !label.Empty() {
		p.put(Word{Span: label, Role: Label, Declares: true})
	}
	said := -1 // where the clause ends that was given one role as a whole
	for i, holder := range row.Holders() {
		t := row.Tokens[i]
		at := row.Abs(t.Span)
		if label.Covers(at) || t.Span.Start < said {
			continue
		}
		switch holder.Node.(type) {
		case nil, *syntax.Unread:
		case *syntax.Remark:
			p.add(row.Abs(holder.Span), Comment)
			said = holder.Span.End
		case *syntax.Total:
			p.add(row.Abs(holder.Span), Count)
			said = holder.Span.End
		default:
			if w, ok := p.named[at.Start]; ok {
				p.put(w)
				said = w.Span.End - row.At
			} else if role := of(t); role != None {
				p.add(at, role)
			}
		}
	}
}

// of is the role of a word that was understood and is no name.
func of(t syntax.Token) Role {
	switch t.Kind {
	case syntax.Stitch:
		return Stitch
	case syntax.Number, syntax.Ordinal:
		return Number
	case syntax.Star, syntax.Open, syntax.Close:
		return Mark
	case syntax.Word:
		switch {
		case t.Canon == "ch":
			return Stitch
		case actions[t.Canon]:
			return Action
		case t.Canon != "":
			return Place
		}
	}
	return None
}

// actions are the words that say what is done; every other word of the trade
// says where, or how often.
var actions = func() map[string]bool {
	out := map[string]bool{}
	for word := range strings.FieldsSeq(`rep continue likewise motion work skip turn rotate fasten weave trim drop carry hold change place
		return join branch leave ending even not once times more made form count evenly magic`) {
		out[word] = true
	}
	return out
}()
