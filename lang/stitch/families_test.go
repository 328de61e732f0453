package stitch

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"stitchproof/lang/table"
)

// rule is a line of stitches.tsv or families.tsv: how a stitch, or each member
// of a family, comes out of the stitch it is built on and its number of legs.
type rule struct {
	class        Class
	bases        []string // IDs; one empty ID where it is built on none
	fewest, most int      // legs
	uses, makes  figure

	yarnOvers, loops, passes, height, heightInSC, turning figure

	counts      string // a Convention, or "base" for that of the base
	defined     bool
	how, symbol pattern
	sources     []string
}

var ruleColumns = []string{
	"key", "class", "base", "legs", "uses", "makes", "yo", "loops", "passes", "height", "height sc",
	"turning", "counts", "defined", "how", "symbol", "sources",
}

// ofBase is what a line writes for a figure or a habit of the base.
const ofBase = "base"

func readRule(r table.Record, cited table.Citations) (rule, error) {
	out := rule{
		bases:  r.List("base", " "),
		counts: r.Text("counts"), defined: r.Text("defined") == "yes",
	}
	if len(out.bases) == 0 {
		out.bases = []string{""}
	}
	class := slices.Index(classNames[:], r.Text("class"))
	if class < 0 {
		return rule{}, r.Errorf("no class is called %q: %s are", r.Text("class"), strings.Join(classNames[:], ", "))
	}
	out.class = Class(class)
	if out.counts != ofBase && !slices.Contains(conventionNames[:], out.counts) {
		return rule{}, r.Errorf("counts is one of %q or %q, not %q", conventionNames, ofBase, out.counts)
	}
	if defined := r.Text("defined"); defined != "yes" && defined != "no" {
		return rule{}, r.Errorf("defined is yes or no, not %q", defined)
	}
	if legs := r.Text("legs"); legs != "" {
		_, err := fmt.Sscanf(legs, "%d-%d", &out.fewest, &out.most)
		if err != nil || out.fewest < 2 || out.most > mostLegs {
			return rule{}, r.Errorf("legs is a range within 2-9, not %q", legs)
		}
	}
	for _, f := range [...]struct {
		column string
		to     *figure
	}{
		{"uses", &out.uses},
		{"makes", &out.makes},
		{"yo", &out.yarnOvers},
		{"loops", &out.loops},
		{"passes", &out.passes},
		{"height", &out.height},
		{"height sc", &out.heightInSC},
		{"turning", &out.turning},
	} {
		var ok bool
		if *f.to, ok = readFigure(r.Text(f.column)); !ok {
			return rule{}, r.Errorf("%s is a sum of numbers, base and n, not %q", f.column, r.Text(f.column))
		}
	}
	var err error
	if out.how, err = readPattern(r.Text("how")); err != nil {
		return rule{}, r.Errorf("%v", err)
	}
	if out.symbol, err = readPattern(r.Text("symbol")); err != nil {
		return rule{}, r.Errorf("%v", err)
	}
	out.sources, err = cited.Of(r)
	return out, err
}

// figure is a sum: so many times the base's figure, so many times the legs, and
// a number.
type figure struct{ base, legs, plus float64 }

// readFigure reads 3, base, base+0.5, n, 2n+1.
func readFigure(text string) (f figure, ok bool) {
	for term := range strings.SplitSeq(text, "+") {
		times, perLeg := strings.CutSuffix(term, "n")
		switch {
		case term == ofBase:
			f.base++
			continue
		case term == "n":
			f.legs++
			continue
		}
		v, err := strconv.ParseFloat(times, 64)
		if err != nil {
			return figure{}, false
		}
		if perLeg {
			f.legs += v
		} else {
			f.plus += v
		}
	}
	return f, true
}

// member is one of a family: the stitch it is built on, nil for none, and its
// number of legs, 0 where the family has no such number.
type member struct {
	base *Stitch
	legs int
}

func (m member) figure(f figure, base float64) float64 {
	return f.base*base + f.legs*float64(m.legs) + f.plus
}

func (m member) whole(f figure, base int) int { return int(m.figure(f, float64(base))) }

// build makes a member of the family, but for its names.
func (r *rule) build(m member) *Stitch {
	base := m.base
	if base == nil {
		base = &Stitch{}
	}
	s := &Stitch{
		Class:         r.class,
		Base:          m.base,
		Uses:          m.whole(r.uses, base.Uses),
		Makes:         m.whole(r.makes, base.Makes),
		Height:        m.figure(r.height, base.Height),
		HeightInSC:    m.figure(r.heightInSC, base.HeightInSC),
		YarnOvers:     m.whole(r.yarnOvers, base.YarnOvers),
		Loops:         m.whole(r.loops, base.Loops),
		Passes:        m.whole(r.passes, base.Passes),
		Turning:       m.whole(r.turning, base.Turning),
		TurningCounts: base.TurningCounts,
		Defined:       r.defined,
		How:           r.how.fill(base.US.Abbr, base.US.Name, m.legs),
		Symbol:        r.symbol.fill(base.US.Abbr, base.US.Name, m.legs),
		Sources:       r.sources,
	}
	if r.class == Together {
		s.Legs = m.legs
	}
	if r.counts != ofBase {
		s.TurningCounts = Convention(slices.Index(conventionNames[:], r.counts))
	}
	return s
}
