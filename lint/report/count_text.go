package report

import (
	"bufio"
	"fmt"
	"io"
	"strings"

	"stitchproof/lang/source"
)

// Text writes the table for people to file: a line a row, or one for each of
// its sizes where they differ. It fails only where w does.
func (c *Count) Text(w io.Writer) error {
	b := bufio.NewWriter(w)
	if c.ShowReading {
		c.read()
	}
	fmt.Fprintln(b, visible(c.File))
	if len(c.Sizes) > 1 {
		fmt.Fprintf(b, "sizes %s (%s)\n", visible(c.Sizes[0]), visible(strings.Join(c.Sizes[1:], ", ")))
	}
	for i := range c.Pieces {
		c.textPiece(b, &c.Pieces[i])
	}
	if c.several() {
		fmt.Fprint(b, "\nAll pieces, each as often as it is made\n")
		c.CountTotals.write(b)
		if line := c.Needs.line(); line != "" {
			writeFolded(b, []string{line})
		}
	}
	return b.Flush()
}

func (c *Count) textPiece(b *bufio.Writer, p *CountPiece) {
	fmt.Fprintf(b, "\n%s\n", visible(p.title()))
	t := table{columns: c.shown()}
	for i := range p.Rows {
		r := &p.Rows[i]
		t.addRow(c.lines(r), r)
		if c.ShowReading {
			t.textReading(r)
		}
		for _, text := range r.Unread {
			t.note("not understood: " + source.Excerpt(text))
		}
		for _, line := range drawn(r.Branches) {
			t.note(line)
		}
		if r.bends != "" {
			t.note("shape: " + r.bends)
		}
	}
	t.write(b)
	p.CountTotals.write(b)
	writeFolded(b, p.measures())
}

// addRow puts the lines of a row into the table. Its number and name stand once;
// the words of a row without a label run on over the numbers' columns, and its
// numbers stand below.
func (t *table) addRow(lines [][]string, r *CountRow) {
	named, numbered := 1, r.counts() || len(r.Yarn.names) > 0
	if r.Label == "" || !numbered {
		t.add(lines[0][:2]...)
		named = 0
	}
	if !numbered {
		return
	}
	for i, line := range lines {
		if i >= named {
			line[0], line[1] = "", ""
		}
		t.add(line...)
	}
}

func (t *CountTotals) write(b *bufio.Writer) { writeFolded(b, t.Lines()) }

// writeFolded writes lines below a table.
func writeFolded(b *bufio.Writer, lines []string) {
	for _, line := range lines {
		for i, part := range folded(line, totalsWidth) {
			fmt.Fprintf(b, "%*s%s\n", 2+2*min(i, 1), "", visible(part))
		}
	}
}

// totalsWidth is how many cells a line of totals takes at most, where it can
// be folded.
const totalsWidth = 90
