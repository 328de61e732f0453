package units_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
	"stitchproof/lang/units"
)

func TestLengthsAsPatternsGiveThem(t *testing.T) {
	for mm, want := range map[float64][2]string{
		100: {"4", "10"}, 101.6: {"4", "10"}, 6: {"1/4", "0.5"}, 241.3: {"9 1/2", "24"}, 235: {"9 1/4", "23.5"}, -50: {"-2", "-5"}, 0: {"0", "0"},
	} {
		assert.Equal(t, want, [2]string{units.Inches(mm), units.Centimetres(mm)}, mm)
	}
}

func TestBeside(t *testing.T) {
	for text, want := range map[string]string{
		"10 cm":                  "10 cm (4 in)",
		"9 cm x 2.5 cm":          "9 cm x 2.5 cm (3 1/2 in x 1 in)",
		"20 (22, 24) cm":         "20 (22, 24) cm (7 3/4 (8 3/4, 9 1/2) in)",
		"3 in high and 4 in":     "3 in (7.5 cm) high and 4 in (10 cm)",
		"15 x 10 cm, 2 m around": "15 x 10 cm (6 in x 4 in), 2 m (78 3/4 in) around",
	} {
		after, err := source.New(text).Apply(units.Beside(text, 0, syntax.FindLengths(text), units.Other))
		require.NoError(t, err)
		assert.Equal(t, want, after.String())
	}
	for text, want := range map[string]string{"50 m": "55 yd", "100 yd": "91 m", "8 in": "20.5 cm"} {
		assert.Equal(t, want, units.OtherOfYarn(syntax.FindLengths(text)[0]))
	}
}
