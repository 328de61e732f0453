package lsp

import (
	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// rowCard says what a row comes to in every size.
func (v *view) rowCard(row *fabric.Row) *card {
	c := &card{title: rowName(row.Tree)}
	counts, ok := made(row)
	switch {
	case ok:
		v.count(c, row, counts)
	case unknown(row) != nil:
		c.add("Cannot be counted", source.Excerpt(row.Tree.Source(unknown(row).Blame)))
	default:
		c.say("Works no stitches.")
	}
	if states := stated(row); states != "" {
		c.add("Stated", states)
	}
	if n := row.Repeats; len(n) > 0 && perSize(n) != "1" {
		c.add("Stands for", perSize(n)+" rows")
	}
	if shape, _ := v.Shape(row); shape != "" {
		c.add("Shape", shape)
	}
	switch row.Side {
	case syntax.RightSide:
		c.add("Facing", "right side")
	case syntax.WrongSide:
		c.add("Facing", "wrong side")
	}
	return c
}

func (v *view) count(c *card, row *fabric.Row, counts []int) {
	if sizes := v.File.Sizes; len(sizes) > 1 {
		c.add("Sizes", v.sizeNames())
	}
	c.add("Makes", sts(counts))
	for _, part := range parts(row) {
		c.add(part.name, perSize(part.counts))
	}
	if below := row.Before(); below != nil {
		if before, ok := made(below); ok {
			change := make([]int, len(counts))
			for size := range counts {
				change[size] = counts[size] - before[size]
			}
			c.add("Change", signed(change)+" from "+rowName(below.Tree))
		}
	}
	base, left := make([]int, len(counts)), make([]int, len(counts))
	for size, t := range row.Tallies {
		base[size], left[size] = t.Base, t.Left
	}
	if some(base) {
		c.add("The row below offered", places(base)+", of which "+perSize(left)+" left unworked")
	}
}

// unknown is the first size's tally that could not be counted, nil for none.
func unknown(row *fabric.Row) *fabric.Tally {
	for size := range row.Tallies {
		if t := &row.Tallies[size]; !t.Known {
			return t
		}
	}
	return nil
}

// part is a kind of stitch or space with its number in each size.
type part struct {
	name   string
	counts []int
}

// parts lists the kinds that a row makes, in the order first made.
func parts(row *fabric.Row) []part {
	var list []part
	seen := map[string]bool{}
	for size := range row.Tallies {
		for _, p := range row.Tallies[size].Parts {
			if seen[p.Name] {
				continue
			}
			seen[p.Name] = true
			counts := make([]int, len(row.Tallies))
			for k := range row.Tallies {
				counts[k] = row.Tallies[k].Part(p.Name)
			}
			list = append(list, part{p.Name, counts})
		}
	}
	return list
}

// stated says how the row's stated count compares with what it makes, "" where it
// states none.
func stated(row *fabric.Row) string {
	if row.Stated == nil {
		return ""
	}
	written := source.Excerpt(row.Tree.Source(row.StatedAt))
	switch row.Agrees() {
	case fabric.Agrees:
		return written + ", which agrees"
	case fabric.Disagrees:
		return written + ", which does not agree"
	}
	return written + ", which cannot be checked"
}

// sizeNames lists the sizes as patterns do: S (M, L).
func (v *view) sizeNames() string {
	names := v.File.Sizes[0] + " ("
	for i, name := range v.File.Sizes[1:] {
		if i > 0 {
			names += ", "
		}
		names += name
	}
	return names + ")"
}
