package lint

import (
	"fmt"
	"math"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/measure"
	"stitchproof/lang/phrase"
)

// halfName names a piece that goes half way round the body and has the whole
// of its front or back. Two fronts of a jacket overlap, nobody knows by how
// much.
var halfName = phrase.MustCompile(`^(?:(?:front|back)(?: panels?)?|front (?:and|&) back|back (?:and|&) front|fronts? ?/ ?backs?)$`)

// halves are the pieces that go round the body, nil where they are not two in
// all: a front and a back, or one made twice.
func (p *Pass) halves() []*fabric.Piece {
	var out []*fabric.Piece
	made := 0
	for _, piece := range p.Fabric.Pieces {
		if halfName.MatchString(strings.ToLower(strings.TrimSpace(piece.Tree.Name))) {
			out = append(out, piece)
			made += piece.Tree.Make.Or(0, 1)
		}
	}
	if made != 2 {
		return nil
	}
	return out
}

// holdBust holds a finished bust against front and back together, which are seen
// to be as wide below the arms as in most of their rows. Whatever else of them
// comes to the bust, their widest or their first rows, clears it.
func (p *Pass) holdBust() {
	w, ok := p.fitted()
	halves := p.halves()
	if !ok || w.part != bust || halves == nil {
		return
	}
	var off sized[girth]
	for size := range p.Fabric.Sizes() {
		g, known := p.girth(halves, size)
		if !known {
			return
		}
		g.says = w.length.At(size)
		if !g.comesTo(w) {
			off.add(size, g)
		}
	}
	if len(off.facts) > 0 {
		related := []Related{{p.Materials.Gauges[0].Span, "the gauge"}}
		for _, half := range halves {
			related = append(related, Related{half.Tree.NameSpan, "goes half way round"})
		}
		p.inSizes(off.sizes, Finding{Span: w.span, Message: girthWords(off.facts), Related: related})
	}
}

// girth is the way round a front and a back together, in millimetres.
type girth struct {
	says                   float64
	steady, first, longest float64
	stitch                 float64 // the width of one
}

// likeness is the other half that one is worked like, at its beginning, or itself.
func likeness(half *fabric.Piece, halves []*fabric.Piece) *fabric.Piece {
	for _, row := range half.Rows {
		if !row.Works() {
			continue
		}
		for _, other := range halves {
			if strings.EqualFold(other.Tree.Name, row.Likeness()) {
				return other
			}
		}
		break
	}
	return half
}

// girth adds the pieces up in a size. It is false where one of them is not known.
func (p *Pass) girth(halves []*fabric.Piece, size int) (girth, bool) {
	var g girth
	for _, half := range halves {
		s := measure.Of(p.Materials, p.Fabric, likeness(half, halves), size)
		if !s.Exact || s.Round() || s.Steady == 0 {
			return g, false
		}
		n := float64(half.Tree.Make.Or(0, 1))
		g.steady, g.first, g.longest = g.steady+n*s.Steady, g.first+n*s.First, g.longest+n*s.Width
		g.stitch = s.Gauge.Length / s.Gauge.Stitches
	}
	return g, true
}

// give is what may be between the bust and front and back together: half a stitch
// of the gauge, and what the size was rounded by.
func (g girth) give(w fitted) float64 {
	give := g.steady * g.stitch / 200 // half a stitch in ten centimetres
	if w.length.Metric() {
		return give + metricGive
	}
	return give + imperialGive
}

// seamStitches are what two side seams may take, a stitch of each edge; common
// practice.
const seamStitches = 4

// comesTo tells whether the bust is what front and back come to, with or without
// seams.
func (g girth) comesTo(w fitted) bool {
	for _, round := range [...]float64{g.steady, g.first, g.longest} {
		if d := round - g.says; math.Abs(d) <= g.give(w) || d > 0 && d <= g.give(w)+seamStitches*g.stitch {
			return true
		}
	}
	return false
}

func girthWords(all []girth) string {
	both := func(get func(girth) float64) string { return inBothUnits(all, get) }
	return fmt.Sprintf("says a bust of %s, and front and back make %s together at the gauge", both(func(g girth) float64 { return g.says }),
		both(func(g girth) float64 { return g.steady }))
}
