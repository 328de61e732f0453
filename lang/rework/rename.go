package rework

import (
	"errors"
	"fmt"
	"strings"

	"stitchproof/lang/inflect"
	"stitchproof/lang/names"
	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// Renamable tells why what is named by a mention cannot be given another name,
// nil where it can.
func Renamable(n *names.Name, m names.Mention) error {
	switch {
	case n.Kind == names.Row:
		return errors.New("rows have numbers; let them be numbered anew instead")
	case n.Kind == names.Stitch && (!n.Own || trade(m.Word)):
		return errors.New("this is a word of the trade, not the pattern's own")
	case n.Kind == names.Marker && m.Word == "":
		return errors.New("this marker has no name")
	}
	return nil
}

// Rename gives what a mention names another name, wherever it is called by that
// one. Its other names, and a plural's ending, stay.
func (p *Pattern) Rename(n *names.Name, m names.Mention, to string) ([]source.Edit, error) {
	if err := Renamable(n, m); err != nil {
		return nil, err
	}
	to = strings.TrimSpace(to)
	if to == "" || strings.ContainsAny(to, "\r\n") {
		return nil, errors.New("a name has at least a letter and stands in one line")
	}
	var edits []source.Edit
	for _, other := range n.Mentions {
		if other.Word != m.Word {
			continue
		}
		span := other.Span
		if written := p.Text.Slice(span); n.Kind == names.Stitch && !other.Declares {
			span.End -= len(written) - len(strings.TrimSuffix(written, plural(written, m.Word)))
		}
		name := to
		if n.Kind == names.Piece && other.Declares {
			name = inflect.Like(to, p.Text.Slice(span)) // capitals alone may set a heading apart: `MOTIF`, or `Body` above Row 1
		}
		edits = append(edits, source.Edit{Span: span, New: name})
	}
	text, err := p.Text.Apply(edits)
	if err != nil {
		return nil, err
	}
	if taken(n.Kind, to) || !p.Keeps(edits) || len(p.mentions(n, edits, text)) != len(n.Mentions) {
		return nil, fmt.Errorf("the pattern would read otherwise with %q; that word has a meaning already", to)
	}
	return edits, nil
}

// trade tells whether a word names a stitch of the trade, which a pattern may well
// define once more.
func trade(word string) bool {
	_, ok := stitch.Find(word)
	return ok
}

// taken tells whether a word means something in the trade. A piece and a branch
// may be called by any, `Back`, `left`: what is said of them tells the name. The
// many words for a counted thing are free to all.
func taken(kind names.Kind, word string) bool {
	tokens := syntax.Lex(word, syntax.Standard())
	return kind != names.Piece && kind != names.Branch && len(tokens) == 1 && tokens[0].Kind != syntax.Name && tokens[0].Canon != "" && tokens[0].Canon != "group"
}

// plural is the ending of a word beyond the one that it is a plural of.
func plural(written, word string) string {
	if len(written) == len(word)+1 {
		return written[len(word):]
	}
	return ""
}

// mentions are those of a thing after edits that gave it another name.
func (p *Pattern) mentions(n *names.Name, edits []source.Edit, after *source.Text) []names.Mention {
	at := edits[0].Span.Start
	for _, e := range edits {
		if e.Span.End <= edits[0].Span.Start {
			at += len(e.New) - e.Span.Len()
		}
	}
	found, _ := names.Of(syntax.ReadAfter(p.File, after)).At(at)
	if found == nil || found.Kind != n.Kind {
		return nil
	}
	return found.Mentions
}
