package lsp

import (
	"strconv"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// clauseCard says what a clause of a row does and how the row stands after it.
func (v *view) clauseCard(row *fabric.Row, i int) *card {
	clause := row.Tree.Clauses[i]
	c := &card{title: excerpt(row.Tree.Source(clause.Span))}
	c.say(doing(clause.Node))
	step := &row.Steps[i]
	sizes := v.Fabric.Sizes()
	if !step.Known || len(step.Total) != sizes {
		return c
	}
	if moves(step, sizes) {
		if len(v.File.Sizes) > 1 {
			c.add("Sizes", v.sizeNames())
		}
		c.add("Makes", perSize(step.Made)+v.kindsMade(row, step))
		c.add("Uses", perSize(step.Used)+v.placesUsed(row, step))
	}
	c.add("Count after it", perSize(step.Total))
	c.add("Places left", perSize(step.Left))
	for _, branch := range step.Ledger {
		c.add(branchName(branch), ledger(branch))
	}
	return c
}

// kindsMade lists what a clause makes, by kind, in the first size: ": 3 dc, 1 ch-2 sp".
func (v *view) kindsMade(row *fabric.Row, step *fabric.Step) string {
	all := row.Piece.Stitches[0]
	var made tallied
	for i := step.From; i < min(step.To, len(all)); i++ {
		made.add(v.stitchName(&all[i]))
	}
	return made.list(": ")
}

// placesUsed lists what a clause is worked into, by kind and row, in the first
// size: ", into 4 sc and 1 ch-2 sp of Rnd 2".
func (v *view) placesUsed(row *fabric.Row, step *fabric.Step) string {
	all := row.Piece.Stitches[0]
	seen := map[int]bool{}
	var used tallied
	for i := step.From; i < min(step.To, len(all)); i++ {
		into := all[i].Into
		if into < 0 || into >= len(all) || seen[into] {
			continue
		}
		seen[into] = true
		below := row.Piece.Rows[all[into].Row]
		name := v.stitchName(&all[into])
		if below != row {
			name += " of " + rowName(below.Tree)
		}
		used.add(name)
	}
	return used.list(", into ")
}

// tallied counts things by name, in the order first met.
type tallied struct {
	names  []string
	counts map[string]int
}

func (t *tallied) add(name string) {
	if t.counts == nil {
		t.counts = map[string]int{}
	}
	if t.counts[name] == 0 {
		t.names = append(t.names, name)
	}
	t.counts[name]++
}

func (t *tallied) list(before string) string {
	if len(t.names) == 0 {
		return ""
	}
	words := make([]string, len(t.names))
	for i, name := range t.names {
		words[i] = strconv.Itoa(t.counts[name]) + " " + name
	}
	return before + strings.Join(words, ", ")
}

// stitchName is how the pattern calls a stitch or space.
func (v *view) stitchName(s *fabric.Stitch) string {
	switch {
	case s.IsSpace():
		return "ch-" + strconv.Itoa(s.Chains) + " sp"
	case s.Own != "":
		return s.Own
	}
	return abbreviation(s.Kind, v.Fabric.Dialect)
}

// abbreviation is the shortest name of a stitch in a dialect.
func abbreviation(s *stitch.Stitch, d stitch.Dialect) string {
	if t := s.Term(d); t.Abbr != "" {
		return t.Abbr
	} else if t.Name != "" {
		return t.Name
	}
	return s.ID
}

func branchName(b fabric.BranchState) string {
	switch b.Name {
	case "stem":
		return "Stem"
	case "":
		return "Branch"
	}
	return "Branch " + b.Name
}

func ledger(b fabric.BranchState) string {
	text := plural(b.Chains, "place")
	if b.Skipped > 0 {
		text += ", " + strconv.Itoa(b.Skipped) + " skipped"
	}
	return text + ", " + strconv.Itoa(b.Worked) + " worked, " + strconv.Itoa(b.Left) + " left"
}

// doing says what a clause does where its counts do not say it already.
func doing(n syntax.Node) string {
	switch n := n.(type) {
	case *syntax.Skip:
		return "Passes over places without working into them."
	case *syntax.Leave:
		return "Leaves places unworked."
	case *syntax.Join:
		if n.Ring {
			return "Closes the chain into a ring."
		}
		return "Closes the round."
	case *syntax.NoJoin:
		return "Leaves the round open: the next one goes on from it."
	case *syntax.Turn:
		if n.Not {
			return "The work is not turned."
		}
		return "Turns the work."
	case *syntax.Finish:
		return "Ends the piece."
	case *syntax.MakeUp:
		return "Handwork: no stitch is counted in it."
	case *syntax.Yarn:
		return yarn(n)
	case *syntax.Marker:
		return "Marks a stitch."
	case *syntax.MagicRing:
		return "Makes a ring to work into."
	case *syntax.Rows:
		return "Works other rows again."
	case *syntax.Even:
		return "Works one stitch in each, without shaping."
	case *syntax.Branch:
		return "Begins a branch: a new chain that leaves the work here."
	case *syntax.Return:
		return "Goes back to where the branch left."
	case *syntax.Total:
		return "States the count of the row."
	case *syntax.CountsNote:
		return "Says what the chain counts as."
	case *syntax.LoopNote:
		return "Says which loop what follows is worked in."
	case *syntax.Side:
		return "Names the side that faces."
	case *syntax.Remark:
		return "A remark: it changes nothing."
	case *syntax.Unread:
		return "Not understood, so the row cannot be counted from here on."
	}
	return ""
}

func yarn(n *syntax.Yarn) string {
	verbs := [...]string{
		syntax.YarnUse: "Goes on with", syntax.YarnJoin: "Joins", syntax.YarnDrop: "Drops", syntax.YarnCarry: "Carries along",
	}
	if n.Yarn == "" {
		return verbs[n.Action] + " a yarn."
	}
	return verbs[n.Action] + " yarn " + n.Yarn + "."
}
