package measure

import (
	"stitchproof/lang/fabric"
	"stitchproof/lang/materials"
	"stitchproof/lang/stitch"
	"stitchproof/lang/stock"
)

// Yarn is how much of one yarn a piece takes: grams where the writer has
// weighed a swatch, else metres by what was measured elsewhere.
type Yarn struct {
	Name       string // as the rows call it
	Low, High  float64
	FromSwatch bool
}

// Unit is the unit of the figures.
func (y Yarn) Unit() string {
	if y.FromSwatch {
		return "g"
	}
	return "m"
}

// How far a piece may differ from what it is reckoned at, as a share of it.
const (
	// Ten in a hundred is the usual allowance (common practice).
	swatchShare = 0.1
	// In stitches that the swatch is not made of, or by figures that one other
	// maker measured in another yarn, it is a guess: the published experiments
	// differ by so much.
	otherShare, estimateShare = 0.2, 0.4
)

// YarnOf reckons the yarn that a piece takes in one size, in the order the
// yarns are taken up. It tells nothing where a row could not be counted, where
// a stitch's use is not known, or where there is neither a swatch nor a gauge.
func YarnOf(list *materials.List, worked *fabric.Fabric, piece *fabric.Piece, size int) []Yarn {
	scale, fromSwatch := scaleOf(list, worked)
	if scale == 0 || !counted(piece, size) {
		return nil
	}
	var out []Yarn
	at := map[string]int{}
	same, main, first := true, mainOf(piece, size), firstYarn(piece, size)
	for i := range piece.Stitches[size] {
		s := &piece.Stitches[size][i]
		if s.Row == fabric.OfEarlier {
			continue
		}
		use := useOf(s, main)
		if use == 0 {
			return nil
		}
		same = same && (s.Apart || !fromSwatch || !s.IsSpace() && s.Kind.Plain() == list.Swatch.Stitch(worked.Dialect))
		yarn := s.Yarn
		if yarn == "" && s.Apart {
			yarn = first
		}
		n, known := at[yarn]
		if !known {
			n, at[yarn] = len(out), len(out)
			out = append(out, Yarn{Name: yarn, FromSwatch: fromSwatch})
		}
		out[n].Low += use * scale
	}
	share := estimateShare
	if fromSwatch {
		if share = otherShare; same {
			share = swatchShare
		}
	}
	for i := range out {
		out[i].Low, out[i].High = out[i].Low*(1-share), out[i].Low*(1+share)
	}
	return out
}

// useOf is how much yarn a stitch or a space takes, in inches for each inch of a
// row of it. A decrease of no stitch in particular takes as much as the stitches
// that it joins.
func useOf(s *fabric.Stitch, main *stitch.Stitch) float64 {
	switch {
	case s.IsSpace():
		return stock.ChainUse() * float64(s.Chains)
	case s.Kind.Class == stitch.Decrease || s.Kind.Class == stitch.Increase:
		return stock.YarnUse(main) * float64(max(1, s.Over))
	}
	return stock.YarnUse(s.Kind)
}

// firstYarn is the yarn of the first stitch that has one by name: the chain
// before it is laid in it.
func firstYarn(piece *fabric.Piece, size int) string {
	for i := range piece.Stitches[size] {
		if s := &piece.Stitches[size][i]; s.Yarn != "" {
			return s.Yarn
		}
	}
	return ""
}

// mainOf is the stitch of the ladder that a piece is mostly worked in, nil for
// none.
func mainOf(piece *fabric.Piece, size int) *stitch.Stitch {
	counts := map[*stitch.Stitch]int{}
	var main *stitch.Stitch
	for i := range piece.Stitches[size] {
		s := &piece.Stitches[size][i]
		if s.IsSpace() || s.Kind.Plain().Class != stitch.Plain {
			continue
		}
		k := s.Kind.Plain()
		if counts[k]++; main == nil || counts[k] > counts[main] {
			main = k
		}
	}
	return main
}

// scaleOf is what a stitch takes for each inch of yarn that an inch of a row of
// it takes: grams by the swatch, or metres by the width of a stitch.
func scaleOf(list *materials.List, worked *fabric.Fabric) (scale float64, fromSwatch bool) {
	if s := list.Swatch; s != nil {
		if use := stock.YarnUse(s.Stitch(worked.Dialect)); use > 0 {
			return s.Grams / (s.Stitches * s.Rows * use), true
		}
	}
	for _, g := range list.Gauges {
		if of := gaugedStitch(g, worked.Dialect); g.Stitches > 0 && g.Length > 0 && (of == nil || of.Class != stitch.Group) {
			return g.Length / g.Stitches / 1000, false
		}
	}
	return 0, false
}

// counted tells whether every row of a piece was counted and makes what it
// states.
func counted(piece *fabric.Piece, size int) bool {
	for _, row := range piece.Rows {
		t := &row.Tallies[size]
		if t.Works && (!t.Known || len(t.Faults) > 0 || t.Agrees() == fabric.Disagrees) {
			return false
		}
	}
	return len(piece.Stitches[size]) > 0
}
