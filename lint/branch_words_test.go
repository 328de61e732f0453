package lint_test

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

// A slip in a word that stands for a branch, or in steps that go by names, is told. The pieces
// themselves are silent (TestConstructionsAreCounted holds their counts).
func TestBranchesByWordsOfThePattern(t *testing.T) {
	tellsSlips(t, []plainSlip{
		{"the count of a leaf", "words-for-branches-on-branches", "sl st in the next. (5 sts)", "sl st in the next. (6 sts)", "count-mismatch", "makes 5 sts, says 6"},
		{"the count of a branch on which another grows", "words-for-branches-on-branches", "(9 sl sts)", "(8 sl sts)", "count-mismatch", "makes 9 sl sts, says 8"},
		{"a leaf too short", "words-for-branches-on-branches", "Leaf: ch 6", "Leaf: ch 5", "row-over", "asks for 1 st more than the 4 there are"},
		{"a twiglet too short", "words-for-branches-on-branches", "Twiglet: ch 8", "Twiglet: ch 7", "stem-exhausted", ""},
		{"a bud too short", "words-for-branches-on-branches", "Bud: ch 3", "Bud: ch 2", "row-over", "asks for 1 ch more than the 1 there are"},
		{"a stem too long for its leaves", "words-for-branches-on-branches", "Ch 21", "Ch 22", "row-short", ""},
		{"the count of the stem", "words-for-branches-on-branches", "(20 sl sts on the stem)", "(19 sl sts on the stem)", "count-mismatch", "makes 20 sl sts on the stem, says 19"},

		{"the count of a leaf under its heading", "leaf-under-a-heading-called-for", "(6 sts)", "(7 sts)", "count-mismatch", "makes 6 sts, says 7"},
		{"a leaf under its heading too long", "leaf-under-a-heading-called-for", "Ch 7", "Ch 8", "row-short", "leaves 1 st of 8"},
		{"a leaf under its heading too short", "leaf-under-a-heading-called-for", "Ch 7", "Ch 6", "row-over", "asks for 1 ch more than the 5 there are"},
		{"the stem of a spray too long", "leaf-under-a-heading-called-for", "15 ch, leaf", "16 ch, leaf", "row-short", "leaves 1 ch of 26"},
		{"the stem of a spray too short", "leaf-under-a-heading-called-for", "leaf, 10 ch", "leaf, 9 ch", "stem-exhausted", "1 ch of the stem more than the 24 there are"},

		{"what the stem has, in italics", "counts-in-italics-along-a-stem", "*Stem: 17 ch.*", "*Stem: 18 ch.*", "count-mismatch", "makes 17 ch, says 18"},
		{"what a branch has, in italics", "counts-in-italics-along-a-stem", "*Branch A: 14 sc.*", "*Branch A: 15 sc.*", "count-mismatch", "makes 14 sc on branch A, says 15"},
		{"what the stem has in the end, in italics", "counts-in-italics-along-a-stem", "*Stem: 22 sl sts.*", "*Stem: 23 sl sts.*", "count-mismatch", "says 23"},
		{"a length of the stem too long", "counts-in-italics-along-a-stem", "Ch 9 for", "Ch 10 for", "count-mismatch", "makes 18 ch, says 17"},
		{"a branch of that stem too short", "counts-in-italics-along-a-stem", "ch 15", "ch 14", "row-over", ""},

		{"the count of a thorn as in a step", "thorn-as-in-an-earlier-step", "left. (3 sl sts)", "left. (4 sl sts)", "count-mismatch", "says 4"},
		{"chains of another step than it laid", "thorn-as-in-an-earlier-step", "each of the 5 ch from step 3", "each of the 6 ch from step 3", "stem-exhausted", "1 ch of the stem more than the 15 there are"},
		{"the count along the twig", "thorn-as-in-an-earlier-step", "(15 sl sts along the twig)", "(16 sl sts along the twig)", "count-mismatch", "says 16"},

		{"a beam too long", "steps-by-name-along-a-beam", "Beam: 14 ch.\n", "Beam: 15 ch.\n", "row-short", ""},
		{"more of the beam too short", "steps-by-name-along-a-beam", "Upper beam: 8 ch", "Upper beam: 7 ch", "stem-exhausted", ""},
		{"a tine too long", "steps-by-name-along-a-beam", "Front tine: 5 ch", "Front tine: 6 ch", "branch-chain-left", ""},
		{"a tine too short", "steps-by-name-along-a-beam", "Back tine: 6 ch", "Back tine: 5 ch", "row-over", ""},
		{"the count of a tine", "steps-by-name-along-a-beam", "3 ch - 4 sts", "3 ch - 5 sts", "count-mismatch", "makes 4 sts, says 5"},
		{"the count of the way home", "steps-by-name-along-a-beam", "22 dc", "21 dc", "count-mismatch", "makes 22 dc, says 21"},

		{"a row with a block too many", "filet-over-spaces-in-a-sentence", "1S, 1B, turn", "1S, 2B, turn", "row-over", "asks for 3 sts more than the 10 there are"},
		{"a row with a block too few", "filet-over-spaces-in-a-sentence", "5B", "4B", "count-mismatch", "makes 13 tr, says 16"},
		{"a block with a stitch too many over a space", "filet-over-spaces-in-a-sentence", "work 2 tr", "work 3 tr", "count-mismatch", "makes 13 tr, says 12"},
	})
}

// What is wrong in a word that stands for a branch is told where the word is told, and not again
// where the branch grows.
func TestBranchesByWordsAreToldOnce(t *testing.T) {
	text, err := os.ReadFile("../testdata/counted/words-for-branches-on-branches.crochet")
	require.NoError(t, err)
	good := strings.ReplaceAll(string(text), "\r\n", "\n")
	found := lint.Analyze(source.New(strings.Replace(good, "Leaf: ch 6", "Leaf: ch 7", 1))).Findings
	require.Len(t, found, 1, listed(found))
	assert.Equal(t, "branch-chain-left", found[0].Rule)
	assert.Contains(t, found[0].Message, "branch Leaf is left with 1 of its 7 ch unworked; `ch 6` instead of `ch 7` would put it right")
	assert.Equal(t, strings.Count(good[:strings.Index(good, "Leaf:")], "\n"), source.New(good).LineOf(found[0].Span.Start))
}
