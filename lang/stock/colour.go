package stock

import (
	_ "embed"
	"encoding/hex"

	"stitchproof/lang/table"
)

//go:embed data/colours.tsv
var colourTable string

// Colour is a plain colour word with the colour that is shown for it.
type Colour struct {
	Name   string   // in lower case
	RGB    [3]uint8 // red, green, blue, from 0 to 255
	Source string
}

var colours = read("colours.tsv", colourTable, func(r table.Record, source string) (Colour, error) {
	c := Colour{Name: r.Text("name"), Source: source}
	parts, err := hex.DecodeString(r.Text("colour"))
	if err != nil || copy(c.RGB[:], parts) != len(parts) || len(parts) != len(c.RGB) {
		return c, r.Errorf("colour is six hexadecimal digits, not %q", r.Text("colour"))
	}
	return c, nil
}, "name", "colour")

// Colours are the colour words that are known.
func Colours() []Colour { return colours() }
