package syntax_test

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// part is one stretch of a file and what it was read as.
type part struct {
	span source.Span
	line string
	// within is set for a definition in a list of them that is a header field
	// (`Abbreviations: ch = chain, tr = treble`) or a paragraph, which holds its
	// bytes already.
	within bool
}

// parts lists everything a file was read as, in the order of the text.
func parts(f *syntax.File) []part {
	var out []part
	add := func(s source.Span, format string, args ...any) {
		out = append(out, part{span: s, line: fmt.Sprintf(format, args...)})
	}
	for _, x := range f.Header {
		add(x.Span, "field %s = %s", words(x.Key, x.Name), x.Value)
	}
	for _, x := range f.Definitions {
		add(x.Span, "%s", outlineDefinition(x))
		out[len(out)-1].within = slices.ContainsFunc(f.Header, func(h *syntax.Field) bool { return h.Span.Covers(x.Span) }) ||
			slices.ContainsFunc(f.Prose, func(p source.Span) bool { return p.Covers(x.Span) })
	}
	for _, p := range f.Pieces {
		if p.Span.Start < p.Rows[0].At { // a heading, and not the first instruction itself
			add(p.Span, "piece %s%s", p.Name, num(" make ", p.Make))
		}
		for i, r := range p.Rows {
			again := when(i == 0 && p.Again, "again ")
			add(r.Span(), "%s%s: %s", again, normalLabel(r.Label), normal(r.Clauses))
		}
	}
	for _, x := range f.Comments {
		add(x.Span, "comment %s", x.Text)
	}
	for _, s := range f.Prose {
		add(s, "prose %s", strconv.Quote(strings.TrimSpace(f.Text.Slice(s))))
	}
	slices.SortStableFunc(out, func(a, b part) int { return cmp.Compare(a.span.Start, b.span.Start) })
	return out
}

// outline writes what a file was read as, a line for each part.
func outline(f *syntax.File) string {
	var b strings.Builder
	for _, p := range parts(f) {
		b.WriteString(p.line + "\n")
	}
	return b.String()
}

func outlineDefinition(d *syntax.Definition) string {
	out := "definition " + strings.Join(d.Names, "|")
	if !d.Special {
		return out + " is " + d.Text
	}
	return out + num(" uses ", d.Uses) + num(" makes ", d.Makes) + " = " + normal(d.Row.Clauses)
}

// normalLabel writes what a label says, however it is spelled.
func normalLabel(l syntax.Label) string {
	noun := "row"
	if l.Round {
		noun = "rnd"
	}
	numbers := make([]string, len(l.Numbers))
	for i, s := range l.Numbers {
		numbers[i] = number(s.From)
		if !s.To.Equal(s.From) {
			numbers[i] += "-" + number(s.To)
		}
	}
	side := map[syntax.SideKind]string{syntax.RightSide: "RS", syntax.WrongSide: "WS"}[l.Side]
	switch l.Kind {
	case syntax.Unlabelled:
		return "no label"
	case syntax.Numbered:
		return words(noun, strings.Join(numbers, ","), when(l.EveryOther, "and every other"), side, when(l.Loop != syntax.BothLoops, loops[l.Loop]))
	case syntax.NextRow:
		return words("next", num("", l.Count), noun, side)
	case syntax.Setup:
		return words("set-up", noun, side)
	case syntax.Named:
		return words("named", l.Text, side)
	case syntax.Parity:
		return words([...]string{syntax.AllRows: "", syntax.EvenRows: "even", syntax.OddRows: "odd"}[l.Which], "rows by parity", side)
	}
	panic(fmt.Sprintf("the outline does not know label kind %d", l.Kind))
}
