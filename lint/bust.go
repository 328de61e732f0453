package lint

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/measure"
	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// halfName names a piece that goes half way round the body and has the whole
// of its front or back. Two fronts of a jacket overlap, nobody knows by how
// much.
var halfName = phrase.MustCompile(`^(?:(?:front|back)(?: panels?)?|front (?:and|&) back|back (?:and|&) front|fronts? ?/ ?backs?)$`)

// half is a front or a back: the pieces that make it, one or those under its heading, and
// how many there are of it.
type half struct {
	name   string
	at     source.Span // where it is named
	pieces []*fabric.Piece
	made   int
}

// halves are the fronts and backs that go round the body, nil where they are not two in
// all: a front and a back, or one made twice.
func (p *Pass) halves() []half {
	var out []half
	made := 0
	for _, piece := range p.Fabric.Pieces {
		tree := piece.Tree
		under := halfNamed(tree.Under)
		if n := len(out); under && n > 0 && out[n-1].name == tree.Under {
			out[n-1].pieces = append(out[n-1].pieces, piece)
			continue
		}
		if !under && !halfNamed(tree.Name) {
			continue
		}
		h := half{tree.Name, tree.NameSpan, []*fabric.Piece{piece}, 1}
		if under {
			h.name = tree.Under
		} else {
			h.made = tree.Make.Or(0, 1)
		}
		out = append(out, h)
		made += h.made
	}
	if made != 2 || slices.ContainsFunc(p.File.Pieces, func(piece *syntax.Piece) bool { return quarterName.MatchString(strings.ToLower(piece.Name)) }) {
		return nil
	}
	return out
}

// quarterName names one side of a front or a back, of which nobody knows how much the other
// overlaps.
var quarterName = phrase.MustCompile(`\b(?:left|right|first|second) (?:front|back)\b`)

func halfNamed(name string) bool {
	return halfName.MatchString(strings.ToLower(strings.TrimSpace(name)))
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
		for _, h := range halves {
			related = append(related, Related{h.at, "goes half way round"})
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
func likeness(h half, halves []half) half {
	for _, row := range h.pieces[0].Rows {
		if !row.Works() {
			continue
		}
		for _, other := range halves {
			if strings.EqualFold(other.name, row.Likeness()) {
				return other
			}
		}
		break
	}
	return h
}

// widths is the size of the widest piece of a half whose width can be trusted, but for
// those of one side. It is false where there is none, or where some of it is worked round.
func (p *Pass) widths(h half, size int) (measure.Size, bool) {
	var widest measure.Size
	for _, piece := range h.pieces {
		if whichOne.MatchString(plainText(piece.Tree.Name)) {
			continue
		}
		s := measure.Widths(p.Materials, p.Fabric, piece, size)
		if s.Round() {
			return s, false
		}
		if s.Plain && s.Steady > widest.Steady {
			widest = s
		}
	}
	return widest, widest.Steady > 0
}

// girth adds the pieces up in a size. It is false where one of them is not known.
func (p *Pass) girth(halves []half, size int) (girth, bool) {
	var g girth
	for _, h := range halves {
		s, known := p.widths(likeness(h, halves), size)
		if !known {
			return g, false
		}
		n := float64(h.made)
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

// wholeHalves are the fronts and backs that are a piece each from hem to shoulder, nil where
// they are not known.
func (p *Pass) wholeHalves() []*fabric.Piece {
	var out []*fabric.Piece
	halves := p.halves()
	for _, h := range halves {
		if len(h.pieces) > 1 {
			return nil
		}
		if like := likeness(h, halves); like.name == h.name {
			out = append(out, h.pieces...)
		}
	}
	return out
}

// ofGarment are words beside a length that is that of a whole garment.
var ofGarment = phrase.MustCompile(`\b(?:finished|total|full|overall|garment|body|back|front|length|long|size|measurements?|from|to|at|the|hem|shoulder|cent(?:er|re)|about|approx|of|in|cm|inches|is)\b|[^a-z]`)

// garmentLength tells whether the words beside a length speak of a whole garment.
func garmentLength(said string) bool {
	return ofGarment.ReplaceAllString(said, "") == ""
}
