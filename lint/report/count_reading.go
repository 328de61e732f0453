package report

import (
	"bufio"
	"fmt"
	"strings"

	"stitchproof/lang/plain"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// CountReading is what a clause of a row was read as.
type CountReading struct {
	Text  string `json:"text"`  // as the pattern writes it
	Words string `json:"words"` // what that means, in plain words
	// Steps are the clauses within it.
	Steps []CountReading `json:"steps"`
}

// read says of each row what it was read as, for those who want to know.
func (c *Count) read() {
	for i, piece := range c.of.Pieces {
		for k, row := range piece.Rows {
			c.Pieces[i].Rows[k].Reading = readings(row.Tree, plain.Of(row.Tree, row.Tree.Clauses, c.of.Dialect))
		}
	}
}

func readings(row *syntax.Row, clauses []plain.Reading) []CountReading {
	out := make([]CountReading, len(clauses))
	for i, c := range clauses {
		out[i] = CountReading{source.Excerpt(row.Source(c.Span)), c.Words, readings(row, c.Steps)}
	}
	return out
}

// lines are a reading and, set in, those of its steps.
func (r *CountReading) lines(in string) []string {
	out := []string{in + "`" + r.Text + "`: " + r.Words}
	for i := range r.Steps {
		out = append(out, r.Steps[i].lines(in+"  ")...)
	}
	return out
}

// textReading notes in the table what a row was read as.
func (t *table) textReading(r *CountRow) {
	for i := range r.Reading {
		for _, line := range r.Reading[i].lines("") {
			t.note(line)
		}
	}
}

// markdownReading lists what a row was read as.
func (r *CountRow) markdownReading(b *bufio.Writer) {
	if len(r.Reading) == 0 {
		return
	}
	fmt.Fprintf(b, "- %s is read as\n", r.where())
	for i := range r.Reading {
		for _, line := range r.Reading[i].lines("  ") {
			words := strings.TrimLeft(line, " ")
			fmt.Fprintf(b, "%s- %s\n", line[:len(line)-len(words)], markdown(words))
		}
	}
}
