package report

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// column is one column of the table.
type column struct {
	name  string
	right bool // set to the right: numbers
	list  bool // several things with commas, which may stand on several lines
}

// The columns of the table, in the order of cells.
var columns = []column{
	{name: "line", right: true},
	{name: "row"},
	{name: sizeColumn},
	{name: "rows", right: true},
	{name: "sts", right: true},
	{name: "change", right: true},
	{name: "by kind", list: true},
	{name: "yarn", list: true},
	{name: "running", right: true},
	{name: "stated", list: true},
	{name: "agrees"},
	{name: "side"},
}

const (
	sizeColumn = "size"
	allSizes   = "all" // for a line that holds in every size
	unknown    = "?"   // for a number that is not known
	unnamed    = "(no name)"
)

// cells are what a row comes to in one size. A line that works nothing leaves
// its numbers out.
func (c *Count) cells(r *CountRow, size int) []string {
	out := []string{strconv.Itoa(r.Line), r.name(), c.sizeName(size)}
	rows, made, running := "", "", ""
	if r.counts() {
		rows, made = number(r.Repeats[size]), number(r.Made[size])
	}
	if r.counts() || len(r.Yarn.names) > 0 {
		running = number(r.Running[size])
	}
	return append(out, rows, made, r.change(size), r.Parts.text(size), r.yarn(size), running,
		r.stated(size), r.agreement(size), r.Side)
}

// counts tells whether stitches are to be counted of a row: it works some, or
// it is not known to work none.
func (r *CountRow) counts() bool { return r.Works || len(r.Unread) > 0 }

// lines are what a row comes to in every size that has it: one line where that is the
// same for all, else a line for each.
func (c *Count) lines(r *CountRow) [][]string {
	at := slices.IndexFunc(columns, func(c column) bool { return c.name == sizeColumn })
	var out [][]string
	for size := range r.Made {
		if !r.has(size) {
			continue
		}
		line := c.cells(r, size)
		line[1], line[at] = source.Excerpt(line[1]), allSizes
		out = append(out, line)
	}
	switch {
	case len(c.Sizes) < 2:
		return [][]string{slices.Delete(out[0], at, at+1)}
	case len(out) == len(r.Made) && !slices.ContainsFunc(out, func(line []string) bool { return !slices.Equal(line, out[0]) }):
		return out[:1]
	}
	next := 0
	for size := range r.Made {
		if r.has(size) {
			out[next][at] = c.Sizes[size]
			next++
		}
	}
	return out
}

// shown are the columns of lines.
func (c *Count) shown() []column {
	if len(c.Sizes) < 2 {
		return slices.DeleteFunc(slices.Clone(columns), func(c column) bool { return c.name == sizeColumn })
	}
	return columns
}

func (c *Count) sizeName(size int) string {
	if size < len(c.Sizes) {
		return c.Sizes[size]
	}
	return ""
}

// name is the label of a row, or all of a row that has none.
func (r *CountRow) name() string {
	if r.Label != "" {
		return r.Label
	}
	return r.Text
}

func (r *CountRow) change(size int) string {
	if n := r.Change[size]; n != nil {
		return syntax.Signed(*n)
	}
	return ""
}

// yarn names the yarn of a row; of several, it tells how many stitches are in
// each.
func (r *CountRow) yarn(size int) string {
	switch {
	case len(r.Yarn.names) == 1:
		return r.Yarn.names[0]
	case len(r.Yarn.names) == 0 && r.counts() && r.Made[size] == nil:
		return unknown
	}
	var parts []string
	for _, name := range r.Yarn.names {
		if n := r.Yarn.counts[name][size]; n == nil || *n > 0 {
			parts = append(parts, yarnName(name)+" "+number(n))
		}
	}
	return strings.Join(parts, ", ")
}

func yarnName(name string) string {
	if name == "" {
		return unnamed
	}
	return name
}

// stated is the count that a row states in one size.
func (r *CountRow) stated(size int) string {
	var parts []string
	for _, c := range r.Compared {
		parts = append(parts, strings.TrimSpace(strconv.Itoa(c.Stated[size])+" "+c.Name))
	}
	return strings.Join(parts, ", ")
}

// agreement is a word for whether the stated count is met.
func (r *CountRow) agreement(size int) string {
	switch {
	case len(r.Compared) == 0:
		return ""
	case r.Agreement[size] == nil:
		return unknown
	case *r.Agreement[size]:
		return "yes"
	}
	return "DIFFERS"
}

// text lists the amounts that there are in one size: 12 dc, 4 ch-2 sp.
func (a *Amounts) text(size int) string {
	var parts []string
	for _, name := range a.names {
		if n := a.counts[name][size]; n == nil || *n > 0 {
			parts = append(parts, number(n)+" "+name)
		}
	}
	return strings.Join(parts, ", ")
}

func number(n *int) string {
	if n == nil {
		return unknown
	}
	return strconv.Itoa(*n)
}

// perSize writes one value a size as patterns do, with a question mark for
// what is not known.
func perSize(values []*int) string {
	words := make([]string, len(values))
	for i, n := range values {
		words[i] = number(n)
	}
	return syntax.PerSize(words)
}

// title is the name of a piece and how many are made of it.
func (p *CountPiece) title() string {
	name := p.Name
	if name == "" {
		name = unnamed
	}
	if made := (syntax.Num{Vals: p.Make}).String(); made != "1" {
		name += ", make " + made
	}
	return name
}

// Lines are the totals as lines of text: all stitches, then by kind and by yarn
// where they are known.
func (t *CountTotals) Lines() []string {
	out := []string{fmt.Sprintf("total %s sts", perSize(t.Total))}
	if !slices.ContainsFunc(t.Total, func(n *int) bool { return n != nil }) {
		return out
	}
	var kinds, yarns []string
	for _, name := range t.Parts.names {
		kinds = append(kinds, perSize(t.Parts.counts[name])+" "+name)
	}
	for _, name := range t.Yarn.names {
		yarns = append(yarns, yarnName(name)+" "+perSize(t.Yarn.counts[name]))
	}
	if len(kinds) > 0 {
		out = append(out, "by kind: "+strings.Join(kinds, ", "))
	}
	if len(yarns) > 1 || len(yarns) == 1 && t.Yarn.names[0] != "" {
		out = append(out, "by yarn: "+strings.Join(yarns, ", "))
	}
	return out
}

// several tells whether the totals of the pattern are more than those of its
// only piece.
func (c *Count) several() bool {
	often := func(p CountPiece) bool { return slices.ContainsFunc(p.Make, func(n int) bool { return n != 1 }) }
	return len(c.Pieces) > 1 || slices.ContainsFunc(c.Pieces, often)
}
