package stock

import (
	_ "embed"
	"slices"

	"stitchproof/lang/table"
)

var (
	//go:embed data/bodies.tsv
	bodyTable string
	//go:embed data/heads.tsv
	headTable string
	//go:embed data/ease.tsv
	easeTable string
)

// Body is one published measure of a body, in inches.
type Body struct {
	Who     string // woman, man or child
	Size    string // M; 8; 12 months
	Measure string // bust, waist or hips
	Inches  Range
	Source  string
}

var bodies = read("bodies.tsv", bodyTable, func(r table.Record, source string) (Body, error) {
	inches, err := readRange(r, "inches")
	return Body{r.Text("who"), r.Text("size"), r.Text("measure"), inches, source}, err
}, "who", "size", "measure", "inches")

// Bodies lists what is published of a body: one entry a publication.
func Bodies(who, size, measure string) []Body {
	return slices.DeleteFunc(slices.Clone(bodies()), func(b Body) bool {
		return b.Who != who || b.Size != size || b.Measure != measure
	})
}

// Head is one published measure of a head, in inches.
type Head struct {
	Who    string
	Inches Range
	Source string
}

var heads = read("heads.tsv", headTable, func(r table.Record, source string) (Head, error) {
	inches, err := readRange(r, "inches")
	return Head{r.Text("who"), inches, source}, err
}, "who", "inches")

// Heads lists what is published of the heads of some people: one entry a
// publication.
func Heads(who string) []Head {
	return slices.DeleteFunc(slices.Clone(heads()), func(h Head) bool { return h.Who != who })
}

// Fit is a name for how much wider than the body a garment is, in inches.
type Fit struct {
	Name   string
	Inches Range
	Source string
}

var fits = read("ease.tsv", easeTable, func(r table.Record, source string) (Fit, error) {
	inches, err := readRange(r, "inches")
	return Fit{r.Text("fit"), inches, source}, err
}, "fit", "inches")

// Fits lists the names of ease, the closest first, one entry a publication.
func Fits() []Fit { return slices.Clone(fits()) }

// Hull is the range from the lowest to the highest of some.
func Hull(ranges []Range) Range {
	var out Range
	for i, r := range ranges {
		if i == 0 {
			out = r
		}
		out = Range{min(out.Low, r.Low), max(out.High, r.High)}
	}
	return out
}
