package report

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/syntax"
)

// CountBranch is how far a branch, or the stem, is worked when the row comes to
// its end, or leaves the branch for good: one value a size.
type CountBranch struct {
	Name string `json:"name"`
	// Parent is the name of the branch that this one left, or "stem"; Depth is
	// how many it is away from the stem. A branch stands after its parent.
	Parent string `json:"parent"`
	Depth  int    `json:"depth"`
	// Chains is what it is worked along: its own chains, for the stem the
	// foundation chain or the stitches of the row below.
	Chains  []int `json:"chains"`
	Skipped []int `json:"skipped"`
	Worked  []int `json:"worked"`
	Left    []int `json:"left"`

	onRow bool // a stem of stitches
}

// stemName is what the facts call the work that branches leave.
const stemName = "stem"

// branches lists the stem and the branches of a row, in the order made.
func branches(row *fabric.Row) []CountBranch {
	t := tree{list: []CountBranch{}}
	for _, step := range row.Steps {
		for i := range step.Home {
			t.close(&step.Home[i])
		}
		for i, b := range step.Ledger {
			b.Name = row.Tree.AsWritten(b.Name)
			t.note(i, &b)
		}
		t.open = t.open[:len(step.Ledger)]
		if len(step.Ledger) == 0 && step.Known {
			t.finish(step.Left)
		}
	}
	if len(t.list) > 0 {
		t.list[0].onRow = row.Before() != nil
	}
	return t.list
}

// tree gathers branches from the ledgers of a row's steps.
type tree struct {
	list []CountBranch
	open []int // the ones that are open, the stem first, by their place in list
}

// note brings the branch at a depth up to date. Another name there, or a
// branch where none was open, is a new branch.
func (t *tree) note(depth int, b *fabric.BranchState) {
	if depth == 0 && len(t.open) == 0 && len(t.list) > 0 {
		t.open = append(t.open, 0) // a row has one stem
	}
	if depth >= len(t.open) || t.list[t.open[depth]].Name != b.Name {
		t.open = append(t.open[:depth], len(t.list))
		t.list = append(t.list, newCountBranch(b.Name, depth, len(b.Chains)))
		if depth > 0 {
			t.list[len(t.list)-1].Parent = t.list[t.open[depth-1]].Name
		}
	}
	t.list[t.open[depth]].stands(b)
}

func newCountBranch(name string, depth, sizes int) CountBranch {
	numbers := func() []int { return make([]int, sizes) }
	return CountBranch{Name: name, Depth: depth, Chains: numbers(), Skipped: numbers(), Worked: numbers(), Left: numbers()}
}

// stands takes over the state of a branch in the sizes that it is in.
func (b *CountBranch) stands(now *fabric.BranchState) {
	for size, chains := range now.Chains {
		if chains > 0 {
			b.Chains[size], b.Skipped[size], b.Worked[size], b.Left[size] = chains, now.Skipped[size], now.Worked[size], now.Left[size]
		}
	}
}

// close brings the innermost branch up to date as it comes home. One that left in an earlier
// line is drawn there.
func (t *tree) close(b *fabric.BranchState) {
	last := len(t.open) - 1
	if last < 0 {
		return
	}
	t.list[t.open[last]].stands(b)
	t.open = t.open[:last]
}

// finish brings the stem up to date once every branch is home. Where more is
// left than before, the row has gone on to other ground.
func (t *tree) finish(left []int) {
	if len(t.list) == 0 {
		return
	}
	stem := &t.list[0]
	for size, n := range left {
		if n <= stem.Left[size] {
			stem.Left[size], stem.Worked[size] = n, stem.Chains[size]-stem.Skipped[size]-n
		}
	}
}

// title is what a branch is called.
func (b *CountBranch) title() string {
	switch {
	case b.Depth == 0:
		return stemName
	case b.Name == "":
		return "branch (no name)"
	}
	return "branch " + b.Name
}

// ledger says how far a branch is worked in all sizes.
func (b *CountBranch) ledger() string {
	return b.told(func(values []int) string { return syntax.Num{Vals: values}.String() })
}

// ledgerIn says it in one size.
func (b *CountBranch) ledgerIn(size int) string {
	return b.told(func(values []int) string { return strconv.Itoa(values[size]) })
}

func (b *CountBranch) told(number func([]int) string) string {
	if slices.Max(b.Chains) == 0 {
		return "not counted" // a ring, or the ends of rows
	}
	noun := "ch"
	if b.onRow {
		noun = "sts"
	}
	return fmt.Sprintf("%s %s, %s skipped, %s worked, %s left",
		number(b.Chains), noun, number(b.Skipped), number(b.Worked), number(b.Left))
}

// drawn draws branches as a tree, a line each.
func drawn(list []CountBranch) []string {
	names := make([]string, len(list))
	wide := 0
	for i := range list {
		names[i] = limbs(list, i) + list[i].title()
		wide = max(wide, textWidth(names[i]))
	}
	for i := range list {
		names[i] += strings.Repeat(" ", wide-textWidth(names[i])) + "  " + list[i].ledger()
	}
	return names
}

// limbs draws what leads to a branch: a limb for its own leaving, and one for
// each branch on the way to it that has another below.
func limbs(list []CountBranch, i int) string {
	var out string
	for depth := list[i].Depth; depth > 0; depth-- {
		own, more := depth == list[i].Depth, hasNext(list[i+1:], depth)
		limb := "   "
		switch {
		case own && more:
			limb = "├─ "
		case own:
			limb = "└─ "
		case more:
			limb = "│  "
		}
		out = limb + out
	}
	return out
}

// hasNext tells whether another branch leaves at a depth, from the same
// parent, among those that follow.
func hasNext(after []CountBranch, depth int) bool {
	for i := range after {
		if after[i].Depth <= depth {
			return after[i].Depth == depth
		}
	}
	return false
}
