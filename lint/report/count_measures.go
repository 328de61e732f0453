package report

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/measure"
	"stitchproof/lang/syntax"
	"stitchproof/lint"
)

// CountSize is how large a piece comes out by the gauge, in centimetres; nil
// stands for what cannot be told.
type CountSize struct {
	Width  *float64 `json:"width"`
	Around *float64 `json:"around"`
	Across *float64 `json:"across"`
	Height *float64 `json:"height"`
}

// CountNeeds is how much yarn is taken, by the names of the yarns, in each size.
type CountNeeds struct {
	// Unit is g where it is reckoned from the writer's own swatch, m where it is
	// estimated from what stitches took elsewhere.
	Unit  string                  `json:"unit"`
	Yarns map[string][]*CountNeed `json:"yarns"`

	names []string
}

// CountNeed is the least and the most of a yarn that is likely taken.
type CountNeed struct {
	Low  float64 `json:"low"`
	High float64 `json:"high"`
}

// measured tells how large a piece comes out in each size.
func measured(a *lint.Analysis, piece *fabric.Piece) []*CountSize {
	out := make([]*CountSize, a.Fabric.Sizes())
	for size := range out {
		s := measure.Of(a.Materials, a.Fabric, piece, size)
		if s.Exact {
			out[size] = &CountSize{inCm(s.Width), inCm(s.Around), inCm(s.Across), inCm(s.Height)}
		}
	}
	return out
}

func inCm(mm float64) *float64 {
	if mm == 0 {
		return nil
	}
	cm := math.Round(mm) / 10
	return &cm
}

// needs tells what yarn a piece takes, nil where that cannot be told.
func needs(a *lint.Analysis, piece *fabric.Piece) *CountNeeds {
	sizes, names := a.Fabric.Sizes(), yarnNames{analysis: a}
	out := &CountNeeds{Yarns: map[string][]*CountNeed{}}
	for size := range sizes {
		yarns := measure.YarnOf(a.Materials, a.Fabric, piece, size)
		if len(yarns) == 0 {
			return nil
		}
		for _, y := range yarns {
			out.Unit = y.Unit()
			out.of(names.written(y.Name), sizes)[size] = &CountNeed{math.Floor(y.Low*10) / 10, math.Ceil(y.High*10) / 10}
		}
	}
	return out
}

// of gives the needs of a yarn, which are none at first.
func (n *CountNeeds) of(name string, sizes int) []*CountNeed {
	if n.Yarns[name] == nil {
		n.Yarns[name] = make([]*CountNeed, sizes)
		for size := range sizes {
			n.Yarns[name][size] = &CountNeed{}
		}
		n.names = append(n.names, name)
	}
	return n.Yarns[name]
}

// needsOfPieces adds up what all pieces take, each as often as it is made; nil
// where it is not known of one.
func needsOfPieces(pieces []CountPiece, sizes int) *CountNeeds {
	out := &CountNeeds{Yarns: map[string][]*CountNeed{}}
	for i := range pieces {
		p := &pieces[i]
		if p.Needs == nil {
			return nil
		}
		out.Unit = p.Needs.Unit
		for _, name := range p.Needs.names {
			sum := out.of(name, sizes)
			for size, n := range p.Needs.Yarns[name] {
				sum[size].Low += n.Low * float64(p.Make[size])
				sum[size].High += n.High * float64(p.Make[size])
			}
		}
	}
	if len(out.names) == 0 {
		return nil
	}
	return out
}

// line writes the needs as one line of text.
func (n *CountNeeds) line() string {
	if n == nil {
		return ""
	}
	var parts []string
	for _, name := range n.names {
		words := make([]string, len(n.Yarns[name]))
		for size, need := range n.Yarns[name] {
			words[size] = rounded(need.Low, math.Floor) + "-" + rounded(need.High, math.Ceil)
		}
		parts = append(parts, yarnName(name)+" "+syntax.PerSize(words)+" "+n.Unit)
	}
	from := "estimated from what stitches took elsewhere, with no swatch: "
	if n.Unit == "g" {
		from = "by the swatch: "
	}
	return "yarn " + from + strings.Join(parts, ", ")
}

// rounded writes a figure outwards, to tenths where it is small.
func rounded(v float64, to func(float64) float64) string {
	if v < 10 {
		return strconv.FormatFloat(to(v*10)/10, 'f', -1, 64)
	}
	return strconv.FormatFloat(to(v), 'f', -1, 64)
}

// sizeLine writes how large a piece comes out, "" where that cannot be told.
func (p *CountPiece) sizeLine() string {
	if slices.Contains(p.Size, nil) {
		return ""
	}
	var parts []string
	for _, d := range []struct {
		word string
		of   func(*CountSize) *float64
	}{
		{"wide", func(s *CountSize) *float64 { return s.Width }},
		{"around", func(s *CountSize) *float64 { return s.Around }},
		{"high", func(s *CountSize) *float64 { return s.Height }},
		{"across", func(s *CountSize) *float64 { return s.Across }},
	} {
		var words []string
		for _, s := range p.Size {
			if v := d.of(s); v != nil {
				words = append(words, strconv.FormatFloat(*v, 'f', -1, 64))
			}
		}
		if len(words) == len(p.Size) {
			parts = append(parts, fmt.Sprintf("%s cm %s", syntax.PerSize(words), d.word))
		}
	}
	if len(parts) == 0 {
		return ""
	}
	return "size by the gauge: " + strings.Join(parts, ", ")
}

// measures are the lines that follow the totals of a piece.
func (p *CountPiece) measures() []string {
	return slices.DeleteFunc([]string{p.sizeLine(), p.Needs.line()}, func(s string) bool { return s == "" })
}
