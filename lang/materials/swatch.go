package materials

import (
	"strconv"
	"strings"

	"stitchproof/lang/phrase"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// Swatch is a piece that the writer made and weighed: `20 sts x 10 rows of sc =
// 2.1 g`.
type Swatch struct {
	Stitches, Rows float64
	Of             string // the stitch it is made of
	Grams          float64
}

var swatchText = phrase.MustCompile(`(?i)(\d+)\s*(?:sts?|stitches)?\s*(?:x|×|by|and)\s*(\d+)\s*(?:rows?|rnds?|rounds?)?\s*(?:of|in)\s+([a-z][a-z ]*?)\s*(?:=|:|weighs|,)\s*(\d+(?:[.,]\d+)?)\s*(?:g|grams?|grammes?)\b`)

// readSwatch reads the swatch of the header, nil where it does not say enough.
func readSwatch(f *syntax.Field) *Swatch {
	m := swatchText.FindStringSubmatch(f.Value)
	if m == nil {
		return nil
	}
	number := func(s string) float64 {
		v, _ := strconv.ParseFloat(strings.Replace(s, ",", ".", 1), 64) // the pattern lets only numbers through
		return v
	}
	s := &Swatch{number(m[1]), number(m[2]), strings.ToLower(m[3]), number(m[4])}
	if s.Stitches*s.Rows*s.Grams == 0 {
		return nil
	}
	return s
}

// Stitch is the stitch that the swatch is made of, nil where no dictionary has it.
func (s *Swatch) Stitch(d stitch.Dialect) *stitch.Stitch {
	m, _ := stitch.Find(s.Of)
	return m.In(d)
}
