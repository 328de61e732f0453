package lint_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

// What is offered for a twig whose branches are at fault, the best first. Each
// change settles the finding.
func TestBranchFixes(t *testing.T) {
	const (
		foot = "Sc in 2nd ch from hook and in next 4 ch, "
		home = "return to stem, sc in next 5 ch."
	)
	tests := []struct {
		name, header, chain, row, rule string
		want                           []string
	}{
		{"a chain too long", "", "11", foot + "branch A: ch 6, sc in 2nd ch from hook and in next 2 ch, " + home, "branch-chain-left", []string{
			"write `sc in 2nd ch from hook and in next 4 ch` instead of `sc in 2nd ch from hook and in next 2 ch`",
			"write `ch 4` instead of `ch 6`",
		}},
		{"a chain too long, by the count", "", "11", foot + "branch A: ch 6, sc in 2nd ch from hook and in next 2 ch, return to stem, sc in next 5 ch. (13 sts)", "branch-chain-left", []string{
			"write `ch 4` instead of `ch 6`",
		}},
		{"the parent is left by the way home from its own branch", "", "11",
			foot + "branch A: ch 6, sc in 2nd ch from hook and in next 2 ch, branch B: ch 5, sc in 2nd ch from hook and in each ch of B, " + home, "branch-chain-left", []string{
				"write `sc in 2nd ch from hook and in next 4 ch` instead of `sc in 2nd ch from hook and in next 2 ch`",
				"write `ch 4` instead of `ch 6`",
			}},
		{"a chain too long in one size", "Sizes: S (M)\n", "11", foot + "branch A: ch 6 (9), sc in 2nd ch from hook and in next 4 (6) ch, " + home, "branch-chain-left", []string{
			"write `sc in 2nd ch from hook and in next 4 (7) ch` instead of `sc in 2nd ch from hook and in next 4 (6) ch`",
			"write `ch 6 (8)` instead of `ch 6 (9)`",
		}},
		{"a branch that is turned too soon", "", "11",
			foot + "branch A: ch 6, sc in 2nd ch from hook and in next 3 ch, turn, sc in next 2 sts, turn, sl st in next 2 sts, " + home, "branch-chain-left", []string{
				"write `sc in 2nd ch from hook and in next 4 ch` instead of `sc in 2nd ch from hook and in next 3 ch`",
				"write `ch 5` instead of `ch 6`",
			}},
		{"a stem too short", "", "9", foot + "branch A: ch 4, sc in 2nd ch from hook and in next 2 ch, " + home, "stem-exhausted", []string{
			"write `sc in next 3 ch` instead of `sc in next 5 ch`",
			"write `ch 11` instead of `ch 9`",
		}},
		{"a stem too short, by the count", "", "9", foot + "branch A: ch 4, sc in 2nd ch from hook and in next 2 ch, return to stem, sc in next 5 ch. (13 sts)", "stem-exhausted", []string{
			"write `ch 11` instead of `ch 9`",
		}},
		{"a name twice", "", "11", foot + "branch B: ch 4, sc in 2nd ch from hook and in each ch of B, return to stem, sc in next 2 ch, " +
			"branch B: ch 6, sc in 2nd ch from hook, branch D: ch 4, sc in 2nd ch from hook and in next 2 ch, return to B, sc in each rem ch of branch B, return to stem, sc in next 3 ch.",
			"branch-name-reused", []string{"call it branch C"}},
		{"a name within itself", "", "11", foot + "branch B: ch 6, sc in 2nd ch from hook, branch B: ch 4, sc in 2nd ch from hook and in next 2 ch, return to B, sc in next 4 ch, " + home,
			"branch-name-reused", nil},
		{"a name twice, and again later", "", "11", foot + "branch B: ch 4, sc in 2nd ch from hook and in next 2 ch, return to stem, " +
			"branch B: ch 4, sc in 2nd ch from hook and in next 2 ch, return to stem, sl st in 2nd st of branch B, sc in next 5 ch.",
			"branch-name-reused", nil},
		{"a return to nowhere", "", "11", foot + "branch A: ch 6, sc in 2nd ch from hook, branch B: ch 4, sc in 2nd ch from hook and in next 2 ch, return to G, sc in next 4 ch, " + home,
			"return-unknown", []string{"return to A"}},
		{"a return to a name misspelt", "", "11", foot + "branch Thorn: ch 4, sc in 2nd ch from hook, branch B: ch 4, sc in 2nd ch from hook and in next 2 ch, branch C: ch 4, sc in 2nd ch from hook and in next 2 ch, " +
			"return to thron, sc in next 2 ch, " + home, "return-unknown", []string{"return to Thorn", "return to B"}},
		{"a return all the way to nowhere", "", "11", foot + "branch A: ch 4, sc in 2nd ch from hook and in next 2 ch, branch B: ch 4, sc in 2nd ch from hook and in next 2 ch, return to G, sc in next 5 ch.",
			"return-unknown", []string{"return to stem", "return to A"}},
		{"a return from nowhere", "", "11", foot + "branch A: ch 4, sc in 2nd ch from hook and in next 2 ch, return to stem, sc in next 2 ch, return to A, sc in next 3 ch.",
			"return-unknown", []string{"leave out `return to A`"}},
		{"a return that goes too far", "", "11", foot + "branch A: ch 6, sc in 2nd ch from hook, branch B: ch 4, sc in 2nd ch from hook and in next 2 ch, return to stem, sc in next 4 ch, " + home,
			"branch-chain-left", []string{"write `return to A` instead of the 1st `return to stem`"}},
		{"a return that is forgotten", "", "11", foot + "branch A: ch 6, sc in 2nd ch from hook, branch B: ch 4, sc in 2nd ch from hook and in next 2 ch, sc in each rem ch of A, " + home,
			"branch-unreturned", []string{"write `return` here"}},
		{"a return that is forgotten before the next branch", "", "11", foot + "branch A: ch 4, sc in 2nd ch from hook and in next 2 ch, sc in next 2 ch, " +
			"branch B: ch 4, sc in 2nd ch from hook and in next 2 ch, return to stem, sc in next 3 ch.",
			"branch-unreturned", []string{"write `return` here"}},
		{"not from the hook", "", "11", foot + "branch A: ch 6, sc in next 5 ch, " + home, "branch-empty", []string{"write `sc in 2nd ch from hook and in next 4 ch`"}},
		{"not from the hook, and too few", "", "11", foot + "branch A: ch 6, sc in next 3 ch, " + home, "branch-empty", nil},
		{"nothing worked back", "", "11", foot + "branch A: ch 6, " + home,
			"branch-empty", []string{"write `sc in 2nd ch from hook and in each rem ch`"}},
		{"nothing worked back, by the count", "", "11", foot + "branch A: ch 6, " + "return to stem, sl st in next 5 ch. (5 sc, 10 sl sts)",
			"branch-empty", []string{"write `sl st in 2nd ch from hook and in each rem ch`", "write `sc in 2nd ch from hook and in each rem ch`"}},
		{"nothing worked back from where it is joined", "", "11", foot + "branch A: ch 6, sl st in 2nd st of stem, " + home,
			"branch-empty", []string{"write `sc in each rem ch`", "write `sl st in each rem ch`"}},
		{"no chain", "", "11", foot + "branch A: sc in next 5 ch, " + home, "branch-empty", nil},
		{"a name twice in a repeat", "", "11", foot + "[branch B: ch 4, sc in 2nd ch from hook and in next 2 ch, return, branch B: ch 3, sc in 2nd ch from hook and in next ch, return, sc in next ch] 5 times.",
			"branch-name-reused", []string{"call it branch C"}},
		{"a return to nowhere in a repeat", "", "11", foot + "[branch A: ch 4, sc in 2nd ch from hook, branch B: ch 3, sc in 2nd ch from hook and in next ch, return to C, sc in next 2 ch, return to stem, sc in next ch] 5 times.",
			"return-unknown", []string{"return to A"}},
		{"a branch that is not called one, on one that is", "", "11", foot + "branch A: ch 9, sc in 2nd ch from hook and in next 2 ch, ch 7, sl st in 2nd ch from hook and in next 5 ch, sc in each rem ch of A, " + home,
			"branch-unmarked", []string{"write `branch B:` and `return`"}},
		{"a branch that ends at its tip", "", "11", foot + "branch A: ch 6, sc in 2nd ch from hook and in next 4 ch, turn, ch 1, sc in next 3 sts, " + home,
			"branch-at-tip", []string{"write `turn, sl st in each of next 3 sts`"}},
		{"a branch that ends at its tip, by its other side", "", "11", foot + "branch A: ch 6, sc in 2nd ch from hook and in next 4 ch, along other side of A sc in next 5 ch, " + home,
			"branch-at-tip", []string{"write `turn, sl st in each of next 5 sts`"}},
		{"a join to no branch", "", "11", foot + "branch A: ch 4, sc in 2nd ch from hook and in next 2 ch, return to stem, branch B: ch 4, sl st in 2nd st of branch C, sc in each ch of B, " + home,
			"place-absent", []string{"speak of branch A"}},
		{"a stem left over", "", "13", foot + "branch A: ch 4, sc in 2nd ch from hook and in next 2 ch, " + home, "row-short", []string{
			"write `sc in next 7 ch` instead of `sc in next 5 ch`",
			"write `ch 11` instead of `ch 13`",
		}},
		{"a bare return from nowhere", "", "11", foot + "sc in next 5 ch, return.", "return-unknown", []string{"leave out `return`"}},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			text := source.New("Pattern: Twig\nTerms: US\n" + test.header + "\nPiece: Twig\nWith A, ch " + test.chain + ".\nRow 1: " + test.row + "\nFasten off.\n")
			found := of(lint.Analyze(text).Findings, test.rule)
			require.Len(t, found, 1)
			var titles []string
			for _, fix := range fixes(found[0]) {
				titles = append(titles, fix.Title)
				assert.Empty(t, of(fixed(t, text, fix).Findings, test.rule), "after: %s", fix.Title)
			}
			assert.Equal(t, test.want, titles)
			if len(titles) > 0 {
				assert.Empty(t, listed(fixed(t, text, *found[0].Fix).Findings), "the best one settles all")
			}
		})
	}
}

// of are the findings of a rule.
func of(all []lint.Finding, rule string) []lint.Finding {
	var out []lint.Finding
	for _, f := range all {
		if f.Rule == rule {
			out = append(out, f)
		}
	}
	return out
}
