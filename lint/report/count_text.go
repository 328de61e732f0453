package report

import (
	"bufio"
	"fmt"
	"io"
	"strconv"
	"strings"

	"stitchproof/lang/syntax"
)

// Text writes the table for people to file: a line a row, numbers as patterns
// write them, 24 (28, 32) for three sizes. It fails only where w does.
func (c *Count) Text(w io.Writer) error {
	b := bufio.NewWriter(w)
	fmt.Fprintln(b, visible(c.File))
	if len(c.Sizes) > 0 {
		fmt.Fprintf(b, "sizes %s (%s)\n", visible(c.Sizes[0]), visible(strings.Join(c.Sizes[1:], ", ")))
	}
	for _, p := range c.Pieces {
		p.text(b)
	}
	return b.Flush()
}

func (p *CountPiece) text(b *bufio.Writer) {
	name := p.Name
	if name == "" {
		name = "(no name)"
	}
	fmt.Fprintf(b, "\n%s", visible(name))
	if made := (syntax.Num{Vals: p.Make}).String(); made != "1" {
		fmt.Fprintf(b, ", make %s", made)
	}
	fmt.Fprintln(b)
	t := table{head: []string{"line", "row", "sts", "change", "by kind", "stated", "side"}, right: []bool{true, false, true, true, false, true, false}}
	for i := range p.Rows {
		r := &p.Rows[i]
		t.add(r.cells()...)
		for _, note := range r.notes() {
			t.note(note)
		}
	}
	t.write(b)
	fmt.Fprintf(b, "  total %s sts\n", orUnknown(p.Total))
}

// cells are the columns of a row's line.
func (r *CountRow) cells() []string {
	label := r.Label
	if label == "" {
		label = clipped(r.Text, 28)
	}
	if !r.Works && len(r.Unread) == 0 {
		return []string{strconv.Itoa(r.Line), label, "", "", "", "", ""}
	}
	return []string{strconv.Itoa(r.Line), label, orUnknown(r.Made), r.changeText(), r.kindsText(), r.statedText(), r.Side}
}

func (r *CountRow) changeText() string {
	known := false
	words := make([]string, len(r.Change))
	for i, n := range r.Change {
		words[i] = "?"
		if n != nil {
			words[i] = signed(*n)
			known = true
		}
	}
	if !known {
		return ""
	}
	return syntax.PerSize(words)
}

func signed(n int) string {
	if n == 0 {
		return "0"
	}
	return fmt.Sprintf("%+d", n)
}

func (r *CountRow) kindsText() string {
	var parts []string
	for _, name := range r.kinds {
		parts = append(parts, orUnknown(r.Parts[name])+" "+name)
	}
	return strings.Join(parts, ", ")
}

// statedText is the stated count, with a word for one that is not met.
func (r *CountRow) statedText() string {
	var parts []string
	for _, c := range r.Compared {
		parts = append(parts, strings.TrimSpace(syntax.Num{Vals: c.Stated}.String()+" "+c.Name))
	}
	text := strings.Join(parts, ", ")
	switch {
	case text == "":
		return ""
	case r.Agrees == nil:
		return text + "  unchecked"
	case !*r.Agrees:
		return text + "  DIFFERS"
	}
	return text + "  agrees"
}

// notes are what stands below a row's line: how many rows it is, what was
// not read, how far each branch is.
func (r *CountRow) notes() []string {
	var out []string
	if n := (syntax.Num{Vals: r.Repeats}).String(); r.Works && n != "1" {
		out = append(out, "stands for "+n+" rows; the count is the last one's")
	}
	for _, text := range r.Unread {
		out = append(out, "not understood: "+clipped(text, 60))
	}
	for _, b := range r.Branches {
		name := b.Name
		if name == "" {
			name = "(no name)"
		}
		if name != "stem" {
			name = "branch " + name
		}
		out = append(out, fmt.Sprintf("%s: %d ch, %d skipped, %d worked, %d left", name, b.Chains, b.Skipped, b.Worked, b.Left))
	}
	return out
}

// clipped shortens text to so many characters.
func clipped(s string, n int) string {
	r := []rune(strings.Join(strings.Fields(s), " "))
	if len(r) <= n {
		return string(r)
	}
	return strings.TrimRight(string(r[:n-1]), " ,;") + "…"
}

// orUnknown writes one value a size, with a question mark for what is not known.
func orUnknown(values []*int) string {
	words := make([]string, len(values))
	for i, n := range values {
		words[i] = "?"
		if n != nil {
			words[i] = strconv.Itoa(*n)
		}
	}
	return syntax.PerSize(words)
}

// table lines up columns by the cells their text takes.
type table struct {
	head  []string
	right []bool // which columns are set to the right
	lines []tableLine
}

// tableLine is a line of cells, or a note that runs across them.
type tableLine struct {
	cells []string
	note  string
}

func (t *table) add(cells ...string) {
	for i := range cells {
		cells[i] = visible(cells[i])
	}
	t.lines = append(t.lines, tableLine{cells: cells})
}

func (t *table) note(s string) { t.lines = append(t.lines, tableLine{note: visible(s)}) }

func (t *table) write(b *bufio.Writer) {
	widths := make([]int, len(t.head))
	lines := append([]tableLine{{cells: t.head}}, t.lines...)
	for _, l := range lines {
		for i, c := range l.cells {
			widths[i] = max(widths[i], textWidth(c))
		}
	}
	for _, l := range lines {
		if l.cells == nil {
			fmt.Fprintf(b, "%*s%s\n", widths[0]+6, "", l.note)
			continue
		}
		var line strings.Builder
		for i, c := range l.cells {
			pad := strings.Repeat(" ", widths[i]-textWidth(c))
			line.WriteString("  ")
			if t.right[i] {
				line.WriteString(pad + c)
			} else {
				line.WriteString(c + pad)
			}
		}
		fmt.Fprintln(b, strings.TrimRight(line.String(), " "))
	}
}
