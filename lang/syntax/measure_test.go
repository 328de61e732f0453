package syntax_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"stitchproof/lang/syntax"
)

func TestLengths(t *testing.T) {
	for text, want := range map[string][]float64{
		"until piece measures 20 cm":            {200},
		"until piece measures 8 in":             {203.2},
		"until work measures 8½ inches":         {215.9},
		"for 8 1/2\"":                           {215.9},
		"until piece measures 20 (22, 24.5) cm": {200, 220, 245},
		"until it is 10 in (25.5 cm) long":      {255},
		"½ in":                                  {12.7},
		"until long enough":                     nil,
		"rep Rows 2 and 3":                      nil,
		"work in rows":                          nil,
	} {
		got := syntax.ParseLength(text)
		assert.Len(t, got.Vals, len(want), text)
		for i := range want {
			assert.InDelta(t, want[i], got.At(i), 1e-9, text)
		}
	}
}

func TestFindLengths(t *testing.T) {
	text := "46.5 (50, 53.5) cm around, 7⅜ in deep; 20 yd, 4\""
	var found []string
	for _, l := range syntax.FindLengths(text) {
		found = append(found, text[l.Span.Start:l.Span.End]+"="+l.Unit)
	}
	assert.Equal(t, []string{"46.5 (50, 53.5) cm=cm", "7⅜ in=in", "20 yd=yd", "4\"=in"}, found)
	assert.InDelta(t, 7.375*25.4, syntax.FindLengths(text)[1].At(0), 1e-9)
	assert.False(t, syntax.FindLengths(text)[2].Metric())
}

// A number before a length has its unit.
func TestLengthsOfOneUnit(t *testing.T) {
	for text, want := range map[string][]float64{
		"15 x 10 cm":              {150, 100},
		"15 x 10 x 2.5 cm":        {150, 100, 25},
		"15 (20) by 10 (12) cm":   {150, 200, 100, 120},
		"4 1/2 x 8 in":            {114.3, 203.2},
		"20 sts x 10 rows = 5 cm": {50},
		"8 cm x 10 cm":            {80, 100},
		"light (3), 50 m (60 m)":  {50000, 60000},
		"(20) cm":                 {200},
		"[S] (20, 22) cm":         {200, 220},
		"20 (22:24) cm":           {200, 220, 240},
		"20 (22.5: 24: 26) cm":    {200, 225, 240, 260},
		"Row 3: 10 cm":            {100},
		"Row 3: 20 cm":            {200},
	} {
		var got []float64
		for _, l := range syntax.FindLengths(text) {
			got = append(got, l.Vals...)
		}
		assert.InDeltaSlice(t, want, got, 1e-9, text)
	}
}

func TestGauges(t *testing.T) {
	for text, want := range map[string]syntax.Gauge{
		"24 sc and 28 rows = 10 cm":              {Stitches: 24, Rows: 28, Length: 100, Of: "sc"},
		"10 cm = 20 sts x 10 rows":               {Stitches: 20, Rows: 10, Length: 100, Of: "sts"},
		"7 sts and 6 rows = 2 inches":            {Stitches: 7, Rows: 6, Length: 50.8, Of: "sts"},
		"16 dc and 8½ rows to 10 cm / 4 in":      {Stitches: 16, Rows: 8.5, Length: 100, Of: "dc"},
		"14 sts = 9 cm, 7 rows = 10 cm":          {Stitches: 14, Rows: 6.3, Length: 90, Of: "sts"},
		"7 rows = 10 cm; 14 sts = 10 cm":         {Stitches: 14, Rows: 7, Length: 100, Of: "sts"},
		"13 single crochet and 14 rnds = 10 cm":  {Stitches: 13, Rows: 14, Length: 100, Of: "single crochet"},
		"12 rnds = 4 in":                         {Rows: 12, Length: 101.6},
		"1 repeat of 12 sts = 9 cm":              {Stitches: 12, Length: 90, Of: "sts"},
		"4 meshes and 4 rows = 1 in":             {Squares: 4, Rows: 4, Length: 25.4},
		"17 sts and 9 rows on hook 4 mm = 10 cm": {Stitches: 17, Rows: 9, Length: 100, Of: "sts"},
		"4 post-stitch rnds = 2 in":              {Rows: 4, Length: 50.8},
		"not important":                          {},
	} {
		got := syntax.ParseGauge(text)
		assert.InDelta(t, want.Length, got.Length, 1e-9, text)
		assert.InDelta(t, want.Rows, got.Rows, 1e-9, text)
		got.Length, got.Rows = want.Length, want.Rows
		assert.Equal(t, want, got, text)
	}
}
