package fabric_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// steps are the clauses of a twig's only row, by their words.
func steps(t *testing.T, header, row string) map[string]*fabric.Step {
	t.Helper()
	f := fabric.Work(syntax.Read(source.New("Pattern: Twig\nTerms: US\n" + header + "\nPiece: Twig\n" + row + "\nFasten off.\n")))
	worked := f.Pieces[0].Rows[1]
	out := map[string]*fabric.Step{}
	for i := range worked.Steps {
		out[worked.Tree.Source(worked.Steps[i].Span)] = &worked.Steps[i]
	}
	return out
}

func after(t *testing.T, all map[string]*fabric.Step, words string) *fabric.Step {
	t.Helper()
	require.Contains(t, all, words)
	return all[words]
}

// state is that of a branch in one size.
func state(name string, chains, skipped, worked, left int) fabric.BranchState {
	return fabric.BranchState{Name: name, Chains: []int{chains}, Skipped: []int{skipped}, Worked: []int{worked}, Left: []int{left}}
}

func TestLedger(t *testing.T) {
	all := steps(t, "", `Ch 14.
Row 1: Sc in 2nd ch from hook and in next 4 ch, branch A: ch 9, sc in 2nd ch from hook and in next 3 ch,
  branch B: ch 5, sc in 2nd ch from hook, sc in next 3 ch, return to A, sc in each rem ch of A, return to stem, sc in next 8 ch.`)
	assert.Empty(t, after(t, all, "Sc in 2nd ch from hook and in next 4 ch").Ledger)
	assert.Equal(t, []fabric.BranchState{state("stem", 14, 1, 5, 8), state("a", 9, 0, 0, 9)}, after(t, all, "ch 9").Ledger)
	assert.Equal(t, []fabric.BranchState{state("stem", 14, 1, 5, 8), state("a", 9, 1, 4, 4)}, after(t, all, "sc in 2nd ch from hook and in next 3 ch").Ledger)
	assert.Equal(t, []fabric.BranchState{state("stem", 14, 1, 5, 8), state("a", 9, 1, 4, 4), state("b", 5, 1, 1, 3)}, after(t, all, "sc in 2nd ch from hook").Ledger)
	home := after(t, all, "return to A")
	assert.Equal(t, []fabric.BranchState{state("b", 5, 1, 4, 0)}, home.Home)
	assert.Equal(t, []fabric.BranchState{state("stem", 14, 1, 5, 8), state("a", 9, 1, 4, 4)}, home.Ledger)
	home = after(t, all, "return to stem")
	assert.Equal(t, []fabric.BranchState{state("a", 9, 1, 8, 0)}, home.Home)
	assert.Empty(t, home.Ledger)
	assert.Empty(t, after(t, all, "sc in next 8 ch").Home)
}

// One return may close several branches, the innermost first.
func TestLedgerOfTheWholeWayHome(t *testing.T) {
	all := steps(t, "", `Ch 14.
Row 1: Sc in 2nd ch from hook and in next 4 ch, branch A: ch 4, sc in 2nd ch from hook and in next 2 ch,
  branch B: ch 6, sc in 2nd ch from hook and in each ch of B, return to stem, sc in next 8 ch.`)
	assert.Equal(t, []fabric.BranchState{state("b", 6, 1, 5, 0), state("a", 4, 1, 3, 0)}, after(t, all, "return to stem").Home)
}

// A branch that is only chained when the row is cut off leaves what it grew from
// as it is, whatever was taken back of the row before.
func TestBranchCutOffInItsChain(t *testing.T) {
	f := fabric.Work(syntax.Read(source.New(`Terms: US

Piece: Frost star
Make a magic ring.
Rnd 1: 6 sc in ring.
Rnd 2: Sl st in next sc, branch ray: ch 8, sl st in 2nd ch from hook and in next 2 ch, branch thorn: ch 3.
`)))
	row := f.Pieces[0].Rows[2]
	ledger := row.Steps[len(row.Steps)-1].Ledger
	assert.Equal(t, state("thorn", 3, 0, 0, 3), ledger[len(ledger)-1])
}

func TestLedgerInSizes(t *testing.T) {
	all := steps(t, "Sizes: S (M)\n", `Ch 11 (13).
Row 1: Sc in 2nd ch from hook and in next 4 (5) ch, branch A: ch 6 (8), sc in 2nd ch from hook and in next 2 (3) ch, sc in each rem ch of A,
  return, sc in next 5 (6) ch.`)
	assert.Equal(t, []fabric.BranchState{
		{Name: "stem", Chains: []int{11, 13}, Skipped: []int{1, 1}, Worked: []int{5, 6}, Left: []int{5, 6}},
		{Name: "a", Chains: []int{6, 8}, Skipped: []int{1, 1}, Worked: []int{3, 4}, Left: []int{2, 3}},
	}, after(t, all, "sc in 2nd ch from hook and in next 2 (3) ch").Ledger)
	assert.Equal(t, []fabric.BranchState{{Name: "a", Chains: []int{6, 8}, Skipped: []int{1, 1}, Worked: []int{5, 7}, Left: []int{0, 0}}},
		after(t, all, "return").Home)
}

// A branch that is worked back over itself, or along the other side of its
// chain, still tells of its chain.
func TestLedgerOffTheChain(t *testing.T) {
	worked := state("a", 6, 1, 5, 0)
	turned := steps(t, "", `Ch 11.
Row 1: Sc in 2nd ch from hook and in next 4 ch, branch A: ch 6, sc in 2nd ch from hook and in next 4 ch, turn, sc in next 2 sts,
  return to stem, sc in next 5 ch.`)
	assert.Equal(t, worked, after(t, turned, "turn").Ledger[1])
	assert.Equal(t, worked, after(t, turned, "sc in next 2 sts").Ledger[1])
	assert.Equal(t, []fabric.BranchState{worked}, after(t, turned, "return to stem").Home)

	short := steps(t, "", `Ch 11.
Row 1: Sc in 2nd ch from hook and in next 4 ch, branch A: ch 6, sc in 2nd ch from hook and in next 2 ch, turn, sc in next 2 sts,
  return to stem, sc in next 5 ch.`)
	assert.Equal(t, state("a", 6, 1, 3, 2), after(t, short, "sc in next 2 sts").Ledger[1])

	around := steps(t, "", `Ch 11.
Row 1: Sc in 2nd ch from hook and in next 4 ch, branch A: ch 6, sc in 2nd ch from hook and in next 4 ch,
  working along opposite side of ch, sc in next 3 ch, return to stem, sc in next 5 ch.`)
	assert.Equal(t, worked, after(t, around, "sc in next 3 ch").Ledger[1])
	assert.Equal(t, []fabric.BranchState{worked}, after(t, around, "return to stem").Home)
}
