package lint

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"stitchproof/lang/fabric"
)

// Shape says how the shaping of a row bends it, in every size, and tells
// whether it bends at all. It says nothing where nothing is known, and of a row
// on another that goes straight on.
func (a *Analysis) Shape(row *fabric.Row) (words string, bends bool) {
	var said []string
	for size := range row.Tallies {
		words, bent := shapeWords(row, size)
		said, bends = append(said, words), bends || bent
	}
	if !slices.ContainsFunc(said, func(s string) bool { return s != said[0] }) {
		return said[0], bends
	}
	var out []string
	for size, words := range said {
		if words != "" {
			out = append(out, "size "+a.File.Sizes[size]+" "+words)
		}
	}
	return strings.Join(out, "; "), bends
}

// shapeWords says it of the strips of a row in one size.
func shapeWords(row *fabric.Row, size int) (words string, bends bool) {
	var bent []string
	straight, strips := 0, row.Shape(size)
	for i := range strips {
		s := &strips[i]
		switch {
		case !s.Known:
		case len(stretches(s)) > 0:
			name := ""
			if len(strips) > 1 {
				name = stripName(row, s) + " "
			}
			bent = append(bent, name+bendWords(s))
		case s.OnChain:
			straight++
		}
	}
	switch {
	case len(bent) > 0:
		return strings.Join(bent, "; "), true
	case straight == 0 || straight < len(strips):
		return "", false
	case straight == 1:
		return "lies straight along the chain", false
	}
	return "lies straight along every chain", false
}

// stripName is what a strip is called beside others of its row.
func stripName(row *fabric.Row, s *fabric.Strip) string {
	switch {
	case s.Stem:
		return "the stem"
	case s.Branch == "":
		return "a branch"
	}
	return "branch " + row.Tree.AsWritten(s.Branch)
}

// stretch is a run of places that bend one way.
type stretch struct {
	turn        float64
	first, last int // stitches of the strip
}

// stretches are the bends of a strip, those that follow each other the same way
// taken together.
func stretches(s *fabric.Strip) []stretch {
	var out []stretch
	for _, b := range s.Bends {
		if b.Turn == 0 {
			continue
		}
		last := b.First + b.Made - 1
		if n := len(out); n > 0 && (out[n-1].turn > 0) == (b.Turn > 0) {
			out[n-1].turn += b.Turn
			out[n-1].last = last
			continue
		}
		out = append(out, stretch{b.Turn, b.First, last})
	}
	return out
}

// maxStretches is how many bends a maker can follow in a line; more are waves.
const maxStretches = 5

// bendWords says how a strip bends.
func bendWords(s *fabric.Strip) string {
	edge, out := "the row below", "on its own "
	if s.OnChain {
		edge, out = "the chain", ""
	}
	list := stretches(s)
	if len(list) > maxStretches {
		most := slices.MaxFunc(list, func(a, b stretch) int { return int(math.Abs(a.turn) - math.Abs(b.turn)) })
		return out + "runs in waves, up to " + degrees(most.turn) + " each way"
	}
	if len(list) == 1 {
		return out + turned(s.Turn, edge) + ", at " + list[0].stitches()
	}
	var each []string
	for _, l := range list {
		each = append(each, degrees(l.turn)+way(l.turn)+"it at "+l.stitches())
	}
	whole := turned(s.Turn, edge) + " in all"
	if rounded(s.Turn) == 0 {
		whole = "bends to and fro along " + edge + " and ends straight"
	}
	return out + whole + ": " + both(each)
}

// fullTurn is the degrees of a full curl.
const fullTurn = 360

// turned says how far a strip bends and which way, and how many curls that is
// from one on.
func turned(turn float64, edge string) string {
	if math.Abs(turn) < fullTurn {
		return "bends " + degrees(turn) + way(turn) + edge
	}
	halves := math.Floor(math.Abs(turn) / (fullTurn / 2))
	curls := strings.Replace(fmt.Sprint(halves/2), ".5", "½", 1)
	return "curls " + degrees(turn) + way(turn) + edge + " (" + counted(curls, "full curl") + ")"
}

func way(turn float64) string {
	if turn < 0 {
		return " away from "
	}
	return " towards "
}

// rounded is a turn to five degrees, which is more than the hand can promise.
func rounded(turn float64) int { return int(math.Round(math.Abs(turn)/5)) * 5 }

func degrees(turn float64) string { return fmt.Sprintf("about %d°", max(rounded(turn), 5)) }

func (s *stretch) stitches() string {
	if s.first == s.last {
		return fmt.Sprintf("st %d", s.first)
	}
	return fmt.Sprintf("sts %d to %d", s.first, s.last)
}
