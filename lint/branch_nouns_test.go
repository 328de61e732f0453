package lint_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

// A slip in a piece whose branches go by nouns of the writer's own is told as one in branches
// A and B is. The pieces themselves are silent (TestConstructionsAreCounted holds their counts).
func TestBranchesByAnyNoun(t *testing.T) {
	tellsSlips(t, []plainSlip{
		{"a chain too short", "branches-by-their-own-nouns", "lower spine: ch 6", "lower spine: ch 5", "row-over", "1 ch more than the 4 there are on the lower spine"},
		{"a chain too long", "branches-by-their-own-nouns", "lower spine: ch 6", "lower spine: ch 8", "branch-chain-left", "the lower spine is left with 2 of its 8 ch unworked"},
		{"a chain too short on a branch of a branch", "branches-by-their-own-nouns", "bud: ch 3", "bud: ch 2", "row-over", "on the bud"},
		{"a stem too short", "branches-by-their-own-nouns", "Ch 21", "Ch 19", "stem-exhausted", "2 ch of the stem more than the 18 there are"},
		{"too much on the stem", "branches-by-their-own-nouns", "sl st in next 5 ch;\n", "sl st in next 7 ch;\n", "stem-exhausted", ""},
		{"the way home to a branch lost", "branches-by-their-own-nouns", " go back down the fork, sl st in last 4 ch of fork;", "", "branch-chain-left", "the fork is left with 4 of its 9 ch unworked"},
		{"the way home to the stem lost", "branches-by-their-own-nouns", " back on the main bole,", "", "branch-unreturned", "the lower spine is never returned from"},
		{"the way home and what follows it lost", "branches-by-their-own-nouns", " back on the main bole, sl st in next 5 ch;", "", "count-mismatch", "says 35"},
		{"a way home to a branch that is none", "branches-by-their-own-nouns", "go back down the fork", "go back down the upper spine", "return-unknown", "upper spine to return to"},
		{"told wrong of the stem", "branches-by-their-own-nouns", "20 sl sts on the bole", "18 sl sts on the bole", "count-mismatch", "makes 20 sl sts on the bole, says 18"},
		{"told wrong of a branch", "branches-by-their-own-nouns", "8 on the fork", "9 on the fork", "count-mismatch", "makes 8 sts on the fork, says 9"},

		{"one of a pair too short", "branches-in-steps", "*5 ch", "*4 ch", "row-over", "on the hair"},
		{"one of a pair left", "branches-in-steps", "in each of next 3 ch; rep", "in each of next 2 ch; rep", "branch-chain-left", "the hair is left with 1 of its 5 ch unworked"},
		{"a step of the stem too long", "branches-in-steps", "Back on the tap root, 1 dc in each of next 5 ch. (5 dc)", "Back on the tap root, 1 dc in each of next 7 ch. (7 dc)", "stem-exhausted", ""},
		{"the count of a step", "branches-in-steps", "(5 dc)", "(6 dc)", "count-mismatch", "says 6"},
		{"the count of the stem in a step", "branches-in-steps", "(18 dc on the tap root)", "(17 dc on the tap root)", "count-mismatch", "makes 18 dc on the tap root, says 17"},
		{"the count of the stem in a sentence", "branches-in-steps", "has 18 dc", "has 20 dc", "count-mismatch", "says 20"},
		{"a stem too short for its steps", "branches-in-steps", "Make 19 ch", "Make 17 ch", "stem-exhausted", ""},

		{"a way home lost between numbered lines", "branches-in-numbered-lines", "; go back down the long vein, sl st in next 5 ch", "", "branch-chain-left", "the long vein is left with 5 of its 9 ch unworked"},
		{"so far", "branches-in-numbered-lines", "(13 sl sts so far", "(12 sl sts so far", "count-mismatch", "says 12"},
		{"a branch in a line of its own too short", "branches-a-line-each", "Upper barb: ch 5", "Upper barb: ch 4", "row-over", ""},
		{"a branch in a line of its own too long", "branches-a-line-each", "Upper barb: ch 5", "Upper barb: ch 7", "branch-chain-left", ""},
		{"without a way home too short", "branches-left-without-a-word", "side cane: ch 8", "side cane: ch 7", "row-over", ""},
		{"without a way home too long", "branches-left-without-a-word", "side cane: ch 8", "side cane: ch 10", "branch-chain-left", "the side cane is left with 2 of its 10 ch unworked"},
		{"a stalk", "stalk-joined-to-its-leaf", "(8 sl sts on the stalk)", "(9 sl sts on the stalk)", "count-mismatch", "says 9"},
		{"a stalk too short", "stalk-joined-to-its-leaf", "Ch 9", "Ch 8", "row-over", ""},
		{"a leaflet of its own", "branch-with-leaflets", "hdc in next ch, dc in next ch,", "dc in next ch,", "row-short", ""},

		{"a spine too short on a stem that grows", "stem-drawn-in-one-go", "Ch 5; sl st", "Ch 4; sl st", "row-over", ""},
		{"a spur too long on it", "stem-drawn-in-one-go", "Ch 8; sl st", "Ch 9; sl st", "row-over", ""},
		{"a part of the stem too long", "stem-drawn-in-one-go", "Ch 6 for the middle", "Ch 7 for the middle", "row-short", ""},
		{"a part of the stem too short", "stem-drawn-in-one-go", "Ch 9. This", "Ch 8. This", "stem-exhausted", ""},
		{"the count of a twig on it", "stem-drawn-in-one-go", "[10 sts]", "[11 sts]", "count-mismatch", "says 11"},
		{"a part of the stem lost", "stem-drawn-in-numbered-lines", "(3) Stalk: ch 5.\n", "", "stem-exhausted", ""},
		{"a part of the way home lost", "stem-drawn-in-numbered-lines", "sc 5 on the ch of (3), ", "", "count-mismatch", ""},
		{"a frond of a pair too long", "stem-drawn-in-numbered-lines", "*ch 7", "*ch 8", "branch-chain-left", "the frond is left with 1 of its 8 ch unworked"},
		{"how many fronds", "stem-drawn-in-numbered-lines", "2 times in all", "3 times in all", "count-mismatch", ""},
		{"an arm too long in a stitch of its own", "stitch-that-forks", "= ch 7", "= ch 8", "branch-chain-left", ""},
		{"a fork too long in it", "stitch-that-forks", "ch 3 for the fork", "ch 4 for the fork", "branch-chain-left", ""},
		{"how many of it", "stitch-that-forks", "4 long and 4", "3 long and 4", "count-mismatch", ""},
		{"how many leaflets", "branch-with-leaflets", "and 1 leaflet", "and 2 leaflets", "count-mismatch", ""},
	})
}

// A slip in a way of writing that is counted is told; without it the piece is silent.
func TestSlipsInWaysOfWriting(t *testing.T) {
	tellsSlips(t, []plainSlip{
		{"the rows of another piece", "stitch-that-forks", "top layer. (12 sc)", "top layer. (14 sc)", "count-mismatch", "says 14"},
		{"an increase of one size lost", "other-yarn-cut", "2 tr in next st) 11 times, sl st in top of 3 ch. [36 tr]", "2 tr in next st) 10 times, sl st in top of 3 ch. [36 tr]", "count-mismatch", ""},
		{"a count of two sizes", "other-yarn-cut", "[24 (36) tr]", "[24 (37) tr]", "count-mismatch", "Adult Small"},
		{"bobbles under a heading", "other-yarn-cut", "*1 dc in next 3 sts", "*1 dc in next 4 sts", "repeat-remainder", ""},
		{"the count after a yarn is cut", "other-yarn-cut", "first RtrF. [24 (36, 48) sts]", "first RtrF. [24 (36, 46) sts]", "count-mismatch", ""},
		{"a chain too short for a leaf in numbers", "leaf-round-its-chain-in-numbers", "Ch 8 with", "Ch 7 with", "row-over", ""},
		{"a repeat by its two stars", "leaf-round-its-chain-in-numbers", "crochet *-* 2 times in all, finish", "crochet *-* 3 times in all, finish", "row-over", ""},
		{"the other edge of the chain", "leaf-round-its-chain-in-numbers", "1 hdc in each of next 3 ch, 1 sc in last ch, sl st", "1 hdc in each of next 4 ch, 1 sc in last ch, sl st", "row-over", ""},
	})
}

// plainSlip is a change in a piece of the counted constructions, with the rule that tells of it and
// what that says.
type plainSlip struct {
	name, piece string
	old, new    string
	rule, says  string
}

func tellsSlips(t *testing.T, slips []plainSlip) {
	t.Helper()
	for _, test := range slips {
		t.Run(test.name, func(t *testing.T) {
			text, err := os.ReadFile(filepath.Join("../testdata/counted", test.piece+".crochet"))
			require.NoError(t, err)
			good := strings.ReplaceAll(string(text), "\r\n", "\n")
			assert.Empty(t, listed(lint.Analyze(source.New(good)).Findings))
			require.Equal(t, 1, strings.Count(good, test.old))
			found := of(lint.Analyze(source.New(strings.Replace(good, test.old, test.new, 1))).Findings, test.rule)
			if assert.NotEmpty(t, found, "%v", listed(lint.Analyze(source.New(strings.Replace(good, test.old, test.new, 1))).Findings)) {
				assert.Contains(t, found[0].Message, test.says)
			}
		})
	}
}
