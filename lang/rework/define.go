package rework

import (
	"strings"

	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// Define gives a group of stitches that the pattern works more than once in one
// place a name: it becomes one of the pattern's own stitches.
func (p *Pattern) Define(at int) []Change {
	row, group := p.groupAt(at)
	if row == nil {
		return nil
	}
	words := bracketed(row, group)
	spans := p.everywhere(words)
	if len(spans) < 2 {
		return nil
	}
	name := p.freeName()
	c := Change{Title: "call " + source.Excerpt(words) + " a stitch of its own", Edits: []source.Edit{p.defining(name, words)}}
	for _, s := range spans {
		c.Edits = append(c.Edits, source.Edit{Span: s, New: name})
	}
	return p.kept(c)
}

// groupAt is the innermost group of stitches at a place.
func (p *Pattern) groupAt(at int) (*syntax.Row, syntax.Clause) {
	var found syntax.Clause
	for row := range p.Fabric.Rows() {
		if !row.Tree.Span().Contains(at) {
			continue
		}
		syntax.Walk(row.Tree.Clauses, func(c syntax.Clause) {
			if _, ok := c.Node.(*syntax.Group); ok && c.Span.Contains(at-row.Tree.At) {
				found = c
			}
		})
		if found.Node != nil && bracketed(row.Tree, found) != "" {
			return row.Tree, found
		}
	}
	return nil, found
}

// bracketed is the group in its brackets, without where it goes, "" for one that
// has none.
func bracketed(row *syntax.Row, c syntax.Clause) string {
	text := row.Source(c.Span)
	if !strings.HasPrefix(text, "(") {
		return ""
	}
	depth := 0
	for i, r := range text {
		switch r {
		case '(':
			depth++
		case ')':
			if depth--; depth == 0 {
				return text[:i+1]
			}
		}
	}
	return ""
}

// everywhere lists the groups of the pattern that are written in some words.
func (p *Pattern) everywhere(words string) []source.Span {
	var out []source.Span
	for row := range p.Fabric.Rows() {
		syntax.Walk(row.Tree.Clauses, func(c syntax.Clause) {
			if _, ok := c.Node.(*syntax.Group); ok && bracketed(row.Tree, c) == words {
				s := source.At(row.Tree.At + c.Span.Start)
				s.End += len(words)
				out = append(out, s)
			}
		})
	}
	return out
}

// freeName is a name that nothing in the pattern has.
func (p *Pattern) freeName() string {
	name := "special"
	for strings.Contains(strings.ToLower(p.Text.String()), name+" ") {
		name += "x"
	}
	return name
}

// defining writes a definition after the pattern's others, else before its first
// piece under a heading of its own.
func (p *Pattern) defining(name, words string) source.Edit {
	line := name + ": " + words + " in next st." + p.Text.LineEnd()
	for i := len(p.File.Definitions) - 1; i >= 0; i-- {
		if d := p.File.Definitions[i]; d.Special && !d.Listed {
			return source.Edit{Span: source.At(p.Text.LineWithEnd(p.Text.LineOf(max(d.Span.Start, d.Span.End-1))).End), New: line}
		}
	}
	first := p.File.Pieces[0].Span.Start
	at := p.Text.LineWithEnd(p.Text.LineOf(first)).Start
	return source.Edit{Span: source.At(at), New: "Special stitches" + p.Text.LineEnd() + line + p.Text.LineEnd()}
}
