package lsp

import (
	"strconv"
	"strings"

	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// stitchCard says what a stitch is that the pattern calls by word: the pattern's
// own definition where it has one, and what the dictionary knows.
func (v *view) stitchCard(word string, meaning stitch.Meaning) *card {
	c := &card{title: source.Excerpt(word)}
	if own := v.definition(word); own != nil {
		c.add("Defined by the pattern", source.Excerpt(own.Text))
	}
	settled := meaning.In(v.Fabric.Dialect)
	if meaning.Ambiguous() && v.Fabric.Dialect == stitch.Unsettled {
		c.say("US and UK patterns mean different stitches by this word, and nothing here shows which terms are used.")
		c.add("As a US term", described(meaning.US))
		c.add("As a UK term", described(meaning.UK))
		return c
	}
	if settled == nil {
		return c
	}
	c.add("US", named(settled.US))
	c.add("UK", named(settled.UK))
	c.add("How, in US terms", settled.How)
	if settled.Uses > 0 || settled.Makes > 0 {
		c.add("Uses", sts([]int{settled.Uses}))
		c.add("Makes", sts([]int{settled.Makes}))
	}
	if settled.Loops > 0 {
		c.add("Yarn overs before the hook goes in", strconv.Itoa(settled.YarnOvers))
		c.add("Loops on the hook before it is finished", strconv.Itoa(settled.Loops))
	}
	if settled.Height > 0 {
		c.add("Height", decimal(settled.Height)+" ch; "+decimal(settled.HeightInSC)+" of the US sc")
	}
	if settled.Turning > 0 {
		c.add("Turning chain", "ch "+strconv.Itoa(settled.Turning)+", "+conventions[settled.TurningCounts])
	}
	if settled.Defined {
		c.say("Publications differ on this stitch: the pattern has to say how it is made.")
	}
	return c
}

var conventions = [...]string{
	stitch.No:     "which does not count as a stitch",
	stitch.Varies: "which some patterns count as a stitch",
	stitch.Yes:    "which counts as a stitch",
}

// definition is what the pattern itself says a stitch is, nil for nothing.
func (v *view) definition(word string) *syntax.Definition {
	for _, d := range v.File.Definitions {
		if !d.Special {
			continue
		}
		for _, name := range d.Names {
			if strings.EqualFold(name, word) || strings.EqualFold(name+"s", word) {
				return d
			}
		}
	}
	return nil
}

// named is a term with its abbreviation: sc, single crochet.
func named(t stitch.Term) string {
	if t.Abbr == "" || t.Abbr == t.Name {
		return t.Name
	}
	return t.Abbr + ", " + t.Name
}

// described is a stitch in a line: its US name and height.
func described(s *stitch.Stitch) string {
	text := named(s.US)
	if s.Height > 0 {
		text += ", " + decimal(s.Height) + " ch high"
	}
	return text
}

func decimal(f float64) string { return strconv.FormatFloat(f, 'f', -1, 64) }
