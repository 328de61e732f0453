package stock

import (
	_ "embed"
	"slices"
	"strings"

	"stitchproof/lang/table"
)

//go:embed data/hooks.tsv
var hookTable string

// Label is how one publication labels a size of hook.
type Label struct {
	Kind           string // US, UK, US steel, UK steel
	Letter, Number string // "" where the label has none
	MM             Range
	Source         string
}

// String writes the label as patterns do: US G-6.
func (l Label) String() string {
	number := strings.Replace(l.Number, ".5", " 1/2", 1)
	return l.Kind + " " + strings.Trim(l.Letter+"-"+number, "-")
}

var labels = read("hooks.tsv", hookTable, func(r table.Record, source string) (Label, error) {
	mm, err := readRange(r, "mm")
	return Label{r.Text("kind"), r.Text("letter"), r.Text("number"), mm, source}, err
}, "kind", "letter", "number", "mm")

// Labels is every label of a hook, in the order of the table.
func Labels() []Label { return slices.Clone(labels()) }

// Labelled lists the entries for a label as a pattern writes it: its letter, its
// number or both, and whose it is where that is said. A bare number may be
// anybody's; a letter is always US.
func Labelled(kind, letter, number string) []Label {
	var out []Label
	for _, l := range labels() {
		if kind != "" && l.Kind != kind && l.Kind != kind+" steel" ||
			letter != "" && l.Letter != letter || number != "" && l.Number != number {
			continue
		}
		out = append(out, l)
	}
	return out
}

// hookGive is by how much a millimetre size may be off its label: makers round
// to a tenth, and 3.125 to 3.1.
const hookGive = 0.06

// AnyIs tells whether one of the labels stands for a size in millimetres.
func AnyIs(labels []Label, mm float64) bool {
	return slices.ContainsFunc(labels, func(l Label) bool {
		if l.MM.Width() > 0 {
			return l.MM.Holds(mm, 0.001) // the sizes that makers give it, as they round them
		}
		return l.MM.Holds(mm, hookGive)
	})
}

// LargestSteel is the size of the largest steel hook in millimetres.
func LargestSteel() float64 {
	largest := 0.
	for _, l := range labels() {
		if strings.HasSuffix(l.Kind, "steel") {
			largest = max(largest, l.MM.High)
		}
	}
	return largest
}

// UsualLabel is the label of a kind for a size in millimetres, the fullest
// there is.
func UsualLabel(kind string, mm float64) (Label, bool) {
	best, found := Label{}, false
	for _, l := range labels() {
		if l.Kind == kind && l.MM.Width() == 0 && l.MM.Holds(mm, hookGive) && len(l.String()) > len(best.String()) {
			best, found = l, true
		}
	}
	return best, found
}
