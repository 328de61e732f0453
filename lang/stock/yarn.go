package stock

import (
	_ "embed"
	"slices"
	"strconv"

	"stitchproof/lang/stitch"
	"stitchproof/lang/table"
)

var (
	//go:embed data/weights.tsv
	weightTable string
	//go:embed data/use.tsv
	useTable string
)

// Weight is one of the standard yarn weights.
type Weight struct {
	Number int
	Name   string
	Also   []string
	// SC is how many single crochets go to 10 cm, Hook the hooks in millimetres.
	SC, Hook Range
	Source   string
}

// Covers tells whether the weight has a name, in lower case.
func (w Weight) Covers(name string) bool { return w.Name == name || slices.Contains(w.Also, name) }

var weights = read("weights.tsv", weightTable, func(r table.Record, source string) (Weight, error) {
	number, err := strconv.Atoi(r.Text("number"))
	if err != nil {
		return Weight{}, r.Errorf("number is a whole number, not %q", r.Text("number"))
	}
	sc, err := readRange(r, "sc")
	if err != nil {
		return Weight{}, err
	}
	hook, err := readRange(r, "hook")
	return Weight{number, r.Text("name"), r.List("also", "|"), sc, hook, source}, err
}, "number", "name", "also", "sc", "hook")

// Weights is the yarn weights, the finest first.
func Weights() []Weight { return slices.Clone(weights()) }

// WeightNumbered is the weight of a number.
func WeightNumbered(n int) (Weight, bool) {
	if n < 0 || n >= len(weights()) {
		return Weight{}, false
	}
	return weights()[n], true
}

// WeightsNamed lists the weights that a name is used for, in lower case.
func WeightsNamed(name string) []Weight {
	return slices.DeleteFunc(Weights(), func(w Weight) bool { return !w.Covers(name) })
}

// use is how much yarn a stitch takes.
type use struct {
	stitch string
	inches float64 // of yarn for each inch of a row
	source string
}

var uses = read("use.tsv", useTable, func(r table.Record, source string) (use, error) {
	inches, err := readRange(r, "inches")
	return use{r.Text("stitch"), inches.Low, source}, err
}, "stitch", "inches")

func useOf(id string) float64 {
	for _, u := range uses() {
		if u.stitch == id {
			return u.inches
		}
	}
	return 0
}

// YarnUse is how many inches of yarn an inch of a row of a stitch takes, 0
// where nothing tells. What was not measured is taken by its height against
// the single crochet's, and by its legs where it is closed of several.
func YarnUse(s *stitch.Stitch) float64 {
	if s == nil || s.Class == stitch.Tunisian {
		return 0
	}
	if u := useOf(s.ID); u > 0 {
		return u
	}
	if s.Base != nil {
		return YarnUse(s.Base) * float64(max(1, s.Legs))
	}
	return useOf("sc") * s.HeightInSC
}

// ChainUse is how many inches of yarn an inch of chain takes.
func ChainUse() float64 { return useOf("ch") }
