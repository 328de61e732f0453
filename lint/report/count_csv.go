package report

import (
	"encoding/csv"
	"io"
	"strconv"
	"strings"
	"unicode"
)

// CSV writes the table for spreadsheets, as RFC 4180 has it: a line for each
// row and size, the first with the names of the columns. It fails only where w
// does.
func (c *Count) CSV(w io.Writer) error {
	out := csv.NewWriter(w)
	out.UseCRLF = true
	head := []string{"piece", "make"}
	for _, column := range columns {
		head = append(head, column.name)
	}
	if err := out.Write(append(head, "not understood", "branches")); err != nil {
		return err
	}
	for i := range c.Pieces {
		if err := c.csvPiece(out, &c.Pieces[i]); err != nil {
			return err
		}
	}
	out.Flush()
	return out.Error()
}

func (c *Count) csvPiece(out *csv.Writer, p *CountPiece) error {
	for i := range p.Rows {
		r := &p.Rows[i]
		for size := range r.Made {
			line := append([]string{p.Name, strconv.Itoa(p.Make[size])}, c.cells(r, size)...)
			line = append(line, strings.Join(r.Unread, "; "), ledgers(r, size))
			for i := range line {
				line[i] = harmless(visible(strings.Join(strings.Fields(line[i]), " ")))
			}
			if err := out.Write(line); err != nil {
				return err
			}
		}
	}
	return nil
}

// ledgers tells of all branches of a row in one size.
func ledgers(r *CountRow, size int) string {
	var out []string
	for i := range r.Branches {
		b := &r.Branches[i]
		out = append(out, b.title()+b.leaves()+": "+b.ledgerIn(size))
	}
	return strings.Join(out, "; ")
}

// leaves says what a branch leaves.
func (b *CountBranch) leaves() string {
	switch {
	case b.Depth == 0:
		return ""
	case b.Parent == "":
		return " from " + unnamed
	}
	return " from " + b.Parent
}

// harmless keeps a spreadsheet from running words of a pattern as a formula:
// it takes for one what begins with such a sign and is no number.
func harmless(cell string) string {
	if _, err := strconv.Atoi(cell); err == nil {
		return cell
	}
	if start := strings.TrimLeftFunc(cell, unicode.IsSpace); start != "" && strings.ContainsRune("=+-@＝＋－＠", []rune(start)[0]) {
		return "'" + cell
	}
	return cell
}
