package report

import (
	"bufio"
	"fmt"
	"strings"
)

// listWidth is how many cells a list takes at most, where it can be folded.
const listWidth = 16

// table lines up columns by the cells of a terminal that their text takes, and
// leaves out those with nothing in them.
type table struct {
	columns []column
	lines   []tableLine
}

// tableLine is a line of cells, or a note that runs across them. The last cell
// of a line that is short runs on over the columns that it lacks.
type tableLine struct {
	cells []string
	note  string
}

// add puts a line into the table, or several where lists are folded.
func (t *table) add(cells ...string) {
	var lines []tableLine
	for i, cell := range cells {
		parts := []string{visible(cell)}
		if t.columns[i].list {
			parts = folded(parts[0], listWidth)
		}
		for k, part := range parts {
			if k == len(lines) {
				lines = append(lines, tableLine{cells: make([]string, len(cells))})
			}
			lines[k].cells[i] = part
		}
	}
	t.lines = append(t.lines, lines...)
}

func (t *table) note(s string) { t.lines = append(t.lines, tableLine{note: visible(s)}) }

// folded breaks a list after commas, so that no line is wider than it may be,
// if its things are not. The first line may be empty.
func folded(list string, wide int) []string {
	out := []string{""}
	for i, part := range strings.SplitAfter(list, ", ") {
		last := &out[len(out)-1]
		if i > 0 && textWidth(*last)+textWidth(strings.TrimSpace(part)) > wide {
			*last = strings.TrimSpace(*last)
			out = append(out, part)
			continue
		}
		*last += part
	}
	return out
}

func (t *table) write(b *bufio.Writer) {
	widths := t.widths()
	head := make([]string, len(t.columns))
	for i, c := range t.columns {
		head[i] = c.name
	}
	t.writeLine(b, widths, head)
	for _, l := range t.lines {
		if l.cells == nil {
			fmt.Fprintf(b, "%*s%s\n", widths[0]+6, "", l.note)
			continue
		}
		t.writeLine(b, widths, l.cells)
	}
}

// widths are how many cells each column takes: none where nothing stands in it.
func (t *table) widths() []int {
	out := make([]int, len(t.columns))
	for _, l := range t.lines {
		for i, c := range l.cells {
			if c != "" {
				out[i] = max(out[i], textWidth(t.columns[i].name))
			}
			if i < len(l.cells)-1 || len(l.cells) == len(t.columns) {
				out[i] = max(out[i], textWidth(c))
			}
		}
	}
	return out
}

func (t *table) writeLine(b *bufio.Writer, widths []int, cells []string) {
	var line strings.Builder
	for i, c := range cells {
		if widths[i] == 0 {
			continue
		}
		pad := strings.Repeat(" ", max(0, widths[i]-textWidth(c)))
		line.WriteString("  ")
		if t.columns[i].right {
			line.WriteString(pad + c)
		} else {
			line.WriteString(c + pad)
		}
	}
	fmt.Fprintln(b, strings.TrimRight(line.String(), " "))
}
