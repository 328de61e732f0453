package stock

import (
	_ "embed"
	"slices"

	"stitchproof/lang/table"
)

//go:embed data/safety.tsv
var safetyTable string

// Limit is a figure of a safety rule or of published advice.
type Limit struct {
	Key    string
	Figure float64
	Unit   string // mm or months
	Holds  string // for what, in plain words
	Source string
}

var limits = read("safety.tsv", safetyTable, func(r table.Record, source string) (Limit, error) {
	v, err := readRange(r, "figure")
	return Limit{r.Text("key"), v.Low, r.Text("unit"), r.Text("holds"), source}, err
}, "key", "figure", "unit", "holds")

// SafetyLimit is the figure with a key. A key that the table does not have is a
// fault of the program.
func SafetyLimit(key string) Limit {
	for _, l := range limits() {
		if l.Key == key {
			return l
		}
	}
	panic("no safety figure is called " + key)
}

// SafetyLimits is every figure, in the order of the table.
func SafetyLimits() []Limit { return slices.Clone(limits()) }
