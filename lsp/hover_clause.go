package lsp

import (
	"strconv"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/plain"
	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// clauseCard says what a clause of a row does and how the row stands after it.
func (v *view) clauseCard(row *fabric.Row, i int) *card {
	clause := row.Tree.Clauses[i]
	c := &card{title: source.Excerpt(row.Tree.Source(clause.Span))}
	if read := plain.Line(plain.Of(row.Tree, []syntax.Clause{clause}, v.Fabric.Dialect)); !strings.EqualFold(read, row.Tree.Source(clause.Span)) {
		c.add("Read as", read)
	}
	step := &row.Steps[i]
	if !step.Known || len(step.Total) != v.Fabric.Sizes() || !row.Works() {
		return c
	}
	if len(v.File.Sizes) > 1 {
		c.add("Sizes", v.sizeNames())
	}
	if some(step.Made) {
		c.add("Makes", sts(step.Made))
		c.add("By kind"+v.firstSize(), v.kindsMade(row, step))
	}
	if some(step.Used) {
		c.add("Uses", places(step.Used))
		if into := v.placesUsed(row, step); into != "" {
			c.add("Worked into"+v.firstSize(), into)
		}
	}
	c.add("Count after it", sts(step.Total))
	c.add("Left to work into", places(step.Left))
	for _, branch := range step.Home {
		c.add(branchName(row.Tree, branch)+", closed", ledger(branch))
	}
	for _, branch := range step.Ledger {
		if !some(branch.Chains) {
			continue // a stem that nobody can measure
		}
		c.add(branchName(row.Tree, branch), ledger(branch))
	}
	return c
}

// firstSize qualifies what is known of the first size only: " in S", "" where there is
// but one size.
func (v *view) firstSize() string {
	if len(v.File.Sizes) < 2 {
		return ""
	}
	return " in " + v.File.Sizes[0]
}

// kindsMade lists what a clause makes in the first size, by kind: 3 dc, 1 ch-2 sp.
// Chains to be worked into are left out: they are in no count.
func (v *view) kindsMade(row *fabric.Row, step *fabric.Step) string {
	var made []*fabric.Stitch
	all := row.Piece.Stitches[0]
	for i := step.From; i < step.To; i++ {
		if s := &all[i]; s.IsSpace() || s.Kind.Class != stitch.Chain || s.Turning {
			made = append(made, s)
		}
	}
	var words []string
	for _, part := range fabric.Kinds(made, v.Fabric.Dialect) {
		words = append(words, strconv.Itoa(part.N)+" "+part.Name)
	}
	return strings.Join(words, ", ")
}

// placesUsed lists what a clause is worked into in the first size, by kind and
// row: 4 sc of Rnd 2, 1 ch-2 sp of Rnd 2.
func (v *view) placesUsed(row *fabric.Row, step *fabric.Step) string {
	all := row.Piece.Stitches[0]
	seen := map[int]bool{}
	var used tallied
	for _, s := range all[step.From:step.To] {
		if s.Into < 0 || seen[s.Into] {
			continue
		}
		seen[s.Into] = true
		into := &all[s.Into]
		name := into.Name(v.Fabric.Dialect)
		switch {
		case into.Row == fabric.OfStated:
			name += " that the row below states"
		case into.Row == fabric.OfEarlier:
			name += " of the piece before"
		case into.Row != row.Index:
			name += " of " + rowName(row.Piece.Rows[into.Row].Tree)
		}
		used.add(name)
	}
	return used.String()
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

func (t *tallied) String() string {
	words := make([]string, len(t.names))
	for i, name := range t.names {
		words[i] = strconv.Itoa(t.counts[name]) + " " + name
	}
	return strings.Join(words, ", ")
}

func branchName(row *syntax.Row, b fabric.BranchState) string {
	switch b.Name {
	case "stem":
		return "Stem"
	case "":
		return "Branch"
	}
	return "Branch " + row.AsWritten(b.Name)
}

func ledger(b fabric.BranchState) string {
	text := places(b.Chains)
	if some(b.Skipped) {
		text += ", " + perSize(b.Skipped) + " skipped"
	}
	return text + ", " + perSize(b.Worked) + " worked, " + perSize(b.Left) + " left"
}
