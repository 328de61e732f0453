package lint

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/source"
)

const (
	haw       = "Pattern: Haw\nTerms: US\n\nPiece: Haw\nRnd 1: 6 sc in magic ring; sl st in first sc to join. (6 sc)\n"
	wrongRow  = "Rnd 2: Ch 1, 2 sc in each st around; sl st in first sc to join. (14 sc)"
	uncounted = "Rnd 2: Ch 1, 2 sc in each st around; sl st in first sc to join."
	thirdRow  = "\nRnd 3: Ch 1, sc in each st around; sl st in first sc to join. (12 sc)"
	end       = "\nFasten off.\n"
)

// told lists the rules that find something, in their order.
func told(t *testing.T, pattern string) []string {
	t.Helper()
	names := []string{}
	for _, f := range findings(t, pattern) {
		names = append(names, f.Rule)
	}
	return names
}

func TestAllowances(t *testing.T) {
	wrapped := "Rnd 2: Ch 1, 2 sc in each st around; // allow count-mismatch: so be it\n  sl st in first sc to join. (14 sc)"
	tests := map[string]struct {
		pattern string
		want    []string
	}{
		"none":                     {haw + wrongRow + end, []string{"count-mismatch"}},
		"same line":                {haw + wrongRow + " // allow count-mismatch: so be it" + end, []string{}},
		"line before":              {haw + "// allow count-mismatch: so be it\n" + wrongRow + end, []string{}},
		"blank line between":       {haw + "// allow count-mismatch: so be it\n\n" + wrongRow + end, []string{}},
		"comments between":         {haw + "// allow count-mismatch: so be it\n// mine\n" + wrongRow + end, []string{}},
		"a line of an instruction": {haw + wrapped + end, []string{}},
		"CRLF":                     {strings.ReplaceAll(haw+wrongRow+" // allow count-mismatch: so be it"+end, "\n", "\r\n"), []string{}},
		"file":                     {"// allow-file count-mismatch: so be it\n" + haw + wrongRow + end, []string{}},
		"stretch":                  {haw + "// allow-begin count-mismatch: so be it\n" + wrongRow + "\n// allow-end count-mismatch" + end, []string{}},
		"stretch over":             {haw + "// allow-begin count-mismatch: so be it\n// allow-end\n" + wrongRow + end, []string{"allow-unused", "count-mismatch"}},
		"stretch to the end":       {haw + "// allow-begin count-mismatch: so be it\n" + wrongRow + end, []string{"allow-unpaired"}},
		"end of other rules":       {haw + "// allow-begin count-mismatch: so be it\n" + wrongRow + "\n// allow-end row-over" + end, []string{"allow-unpaired", "allow-unpaired"}},
		"another line":             {haw + "// allow count-mismatch: so be it\nFasten off.\n\nPiece: Hip\nRnd 1: 6 sc in magic ring; sl st in first sc to join. (7 sc)\nFasten off.\n", []string{"allow-unused", "count-mismatch"}},
		"another rule":             {haw + wrongRow + " // allow row-over: so be it" + end, []string{"count-mismatch", "allow-unused"}},
		"several rules":            {haw + wrongRow + " // allow row-over, count-mismatch: so be it" + end, []string{"allow-unused"}},
		"no reason":                {haw + wrongRow + " // allow count-mismatch" + end, []string{"allow-unreasoned"}},
		"empty reason":             {haw + wrongRow + " // allow count-mismatch: " + end, []string{"allow-unreasoned"}},
		"no rule":                  {haw + "// allow-file : so be it\n" + wrongRow + end, []string{"allow-unreasoned", "count-mismatch"}},
		"misspelt":                 {haw + wrongRow + " // allow count-mismach: so be it" + end, []string{"count-mismatch", "allow-unknown"}},
		"not of ours":              {"// allow extra yarn for the fringe: 2 m\n" + haw + wrongRow + end, []string{"count-mismatch"}},
		"an allowance of these":    {haw + "// allow-file allow-unused: so be it\n// allow row-over: so be it\n" + wrongRow + end, []string{"allow-unused", "allow-unused", "count-mismatch"}},
	}
	for name, test := range tests {
		t.Run(name, func(t *testing.T) { assert.Equal(t, test.want, told(t, test.pattern)) })
	}
}

// The fixes of these rules leave a pattern as if the comment had never been
// wrong.
func TestAllowanceFixes(t *testing.T) {
	sound := strings.Replace(wrongRow, "14", "12", 1)
	for name, test := range map[string]struct{ pattern, want string }{
		"at a line's end": {haw + sound + "  // allow row-over: so" + end, haw + sound + end},
		"alone in a line": {"\ufeff// allow-file row-over: so\n" + haw + sound + end, "\ufeff" + haw + sound + end},
		"first of two":    {haw + wrongRow + " // allow row-over, count-mismatch: so" + end, haw + wrongRow + " // allow count-mismatch: so" + end},
		"last of two":     {haw + wrongRow + " // allow count-mismatch, row-over: so" + end, haw + wrongRow + " // allow count-mismatch: so" + end},
		"misspelt":        {haw + wrongRow + " // allow count-mismach: so" + end, haw + wrongRow + " // allow count-mismatch: so" + end},
		"lost beginning":  {haw + sound + "\n// allow-end" + end, haw + sound + end},
	} {
		t.Run(name, func(t *testing.T) {
			text := source.New(test.pattern)
			var edits []source.Edit
			for _, f := range Analyze(text).Findings {
				if f.Fix != nil && strings.HasPrefix(f.Rule, "allow-") {
					assert.True(t, f.Fix.Safe)
					edits = append(edits, f.Fix.Edits...)
				}
			}
			fixed, err := text.Apply(edits)
			require.NoError(t, err)
			assert.Equal(t, test.want, fixed.String())
			assert.Empty(t, told(t, test.want))
		})
	}
}

func TestRulesOffAreNotJudgedUnused(t *testing.T) {
	s := Settings{Levels: Levels{"row-over": Off}}
	assert.Empty(t, s.Analyze(source.New(haw+strings.Replace(wrongRow, "14", "12", 1)+" // allow row-over: so be it"+end)).Findings)
}

// A caution is told until its answer has a reason, which the place kept for one is not.
func TestCautionsNeedAReason(t *testing.T) {
	toy := func(answer string) string {
		return "Pattern: Dormouse toy\nTerms: US\n\nPiece: Head\nRnd 1: 6 sc in magic ring; sl st in first sc to join. (6 sc)\n" +
			"Fasten off. Attach the safety eyes." + answer + "\n"
	}
	assert.Equal(t, []string{"small-parts"}, told(t, toy("")))
	assert.Equal(t, []string{"small-parts", "allow-unreasoned"}, told(t, toy(" // allow small-parts")))
	assert.Equal(t, []string{"small-parts", "allow-unreasoned"}, told(t, toy(" // allow small-parts: "+ReasonToCome)))
	assert.Empty(t, told(t, toy(" // allow small-parts: the kit holds embroidery yarn in their place")))

	// Nor does a fix complete an answer.
	found := findings(t, toy(" // allow small-prts: the kit holds embroidery yarn in their place"))
	require.Len(t, found, 2)
	assert.Equal(t, "no rule is called `small-prts`; perhaps `small-parts` is meant", found[1].Message)
	assert.Nil(t, found[1].Fix)
}

func TestInternalFailureCannotBeAllowed(t *testing.T) {
	as := &allowances{all: []*allowance{{names: []allowedRule{{name: InternalFailure}}, reach: source.Span{End: 10}}}}
	assert.Len(t, as.filter(source.New(""), []Finding{{Rule: InternalFailure}}), 1)
}
