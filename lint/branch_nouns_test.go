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
	tests := []struct {
		name, piece string
		old, new    string
		rule, says  string
	}{
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
		{"how many leaflets", "branch-with-leaflets", "and 1 leaflet", "and 2 leaflets", "count-mismatch", ""},
	}
	for _, test := range tests {
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
