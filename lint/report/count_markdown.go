package report

import (
	"bufio"
	"fmt"
	"io"
	"strings"

	"stitchproof/lang/source"
)

// Markdown writes the table for a page or a comment, a table for each piece, in
// the Markdown that GitHub reads. It fails only where w does.
func (c *Count) Markdown(w io.Writer) error {
	b := bufio.NewWriter(w)
	if c.ShowReading {
		c.read()
	}
	fmt.Fprintf(b, "# %s\n", markdown(c.File))
	for i := range c.Pieces {
		c.markdownPiece(b, &c.Pieces[i])
	}
	if c.several() {
		fmt.Fprint(b, "\n## All pieces, each as often as it is made\n\n")
		c.CountTotals.markdown(b)
		if line := c.Needs.line(); line != "" {
			fmt.Fprintf(b, "- %s\n", markdown(line))
		}
	}
	return b.Flush()
}

func (c *Count) markdownPiece(b *bufio.Writer, p *CountPiece) {
	fmt.Fprintf(b, "\n## %s\n\n", markdown(p.title()))
	var head, rule []string
	for _, column := range c.shown() {
		mark := "---"
		if column.right {
			mark = "---:"
		}
		head, rule = append(head, column.name), append(rule, mark)
	}
	markdownLine(b, head)
	markdownLine(b, rule)
	for i := range p.Rows {
		for _, line := range c.lines(&p.Rows[i]) {
			for k := range line {
				line[k] = markdown(line[k])
			}
			markdownLine(b, line)
		}
	}
	b.WriteByte('\n')
	p.CountTotals.markdown(b)
	for _, line := range p.measures() {
		fmt.Fprintf(b, "- %s\n", markdown(line))
	}
	for i := range p.Rows {
		for _, text := range p.Rows[i].Unread {
			fmt.Fprintf(b, "- not understood in %s: %s\n", p.Rows[i].where(), markdown(text))
		}
	}
	for i := range p.Rows {
		p.Rows[i].markdownBranches(b)
	}
	for i := range p.Rows {
		if c.ShowReading {
			p.Rows[i].markdownReading(b)
		}
	}
}

func markdownLine(b *bufio.Writer, cells []string) {
	fmt.Fprintf(b, "| %s |\n", strings.Join(cells, " | "))
}

func (t *CountTotals) markdown(b *bufio.Writer) {
	for _, line := range t.Lines() {
		fmt.Fprintf(b, "- %s\n", markdown(line))
	}
}

// markdownBranches lists the branches of a row, each indented under its parent.
func (r *CountRow) markdownBranches(b *bufio.Writer) {
	if len(r.Branches) == 0 {
		return
	}
	fmt.Fprintf(b, "\nThe branches of %s:\n\n", r.where())
	for i := range r.Branches {
		branch := &r.Branches[i]
		fmt.Fprintf(b, "%s- %s: %s\n", strings.Repeat("  ", branch.Depth), markdown(branch.title()), branch.ledger())
	}
}

// where names the place of a row for the notes below a table.
func (r *CountRow) where() string {
	return fmt.Sprintf("line %d, %s", r.Line, markdown(source.Excerpt(r.name())))
}

// markdown is text of which nothing is taken for a mark.
func markdown(s string) string {
	return marks.Replace(visible(strings.Join(strings.Fields(s), " ")))
}

// marks sets a backslash before the signs that mean something in a table or a
// line of Markdown.
var marks = strings.NewReplacer(`\`, `\\`, "`", "\\`", "*", `\*`, "_", `\_`, "[", `\[`, "]", `\]`, "<", `\<`, ">", `\>`,
	"#", `\#`, "|", `\|`, "~", `\~`, "&", `\&`)
