package lint_test

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Branches that are told in the items of a list: each is worked out along a chain of one
// line, and home in another.
func TestSlipsInStepsOfLists(t *testing.T) {
	for file, slips := range map[string][][2]string{
		"steps-in-a-column": {
			{"branch A: ch 8", "branch A: ch 7"},
			{"sc in next 6 ch. (7) back", "sc in next 5 ch. (7) back"},
			{"fork: ch 4", "fork: ch 3"},
			{"sc in last 6 ch of B", "sc in last 5 ch of B"},
			{"9  ch 6", "9  ch 5"},
			{"sc in next 5 ch of stem. (5)", "sc in next 5 ch of stem. (6)"},
			{"3  ch 1. other side of ch: sl st, sc, hdc, sc, sl st,", "3  ch 1. other side of ch: sl st, sc, hdc, sc, sc, sl st,"},
		},
		"branches-in-a-list": {
			{"Ch 9 (foot", "Ch 8 (foot"},
			{"Branch 1: ch 8", "Branch 1: ch 9"},
			{"has in all 7 sc", "has in all 8 sc"},
			{"Branch 2: ch 6", "Branch 2: ch 7"},
			{"next 5 ch of the stem = 5", "next 6 ch of the stem = 6"},
		},
		"foundation-under-a-heading": {
			{"Ch 13", "Ch 12"},
			{"sc in next 11 ch    12", "sc in next 11 ch    13"},
			{"sc in next 10 sc        11", "sc in next 10 sc        12"},
		},
		"sizes-behind-the-number": {
			{"(M and L)", "(L)"},
			{"6 times; join. [24]", "6 times; join. [23]"},
			{"[12/18/24]", "[12/18/23]"},
		},
		"shells-and-their-sum": {
			{"make 20 ch", "make 19 ch"},
			{"turn. (3 shells and 4 dc: 19 sts)\nRow 2", "turn. (4 shells and 4 dc: 19 sts)\nRow 2"},
			{"turn. (3 shells and 4 dc: 19 sts)\nFasten", "turn. (3 shells and 4 dc: 20 sts)\nFasten"},
		},
	} {
		bytes, err := os.ReadFile("../testdata/counted/" + file + ".crochet")
		require.NoError(t, err)
		text := string(bytes)
		assert.Empty(t, grave(text), file)
		for _, slip := range slips {
			require.Contains(t, text, slip[0])
			assert.NotEmpty(t, grave(strings.Replace(text, slip[0], slip[1], 1)), "%s: %s", file, slip[1])
		}
	}
}
