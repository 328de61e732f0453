package lint

import (
	"math"
	"slices"
	"strings"

	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
	"stitchproof/lang/units"
)

// area is a width with a height, as written.
type area struct {
	at     source.Span // in the file
	before string      // what the sentence, or the field, says before it
	text   string
	sides  [2]syntax.WrittenLength
	about  bool // it is called about
	part   bool // it is that of a part of the work
}

var (
	// blockedTo stands before the size to which the finished piece is blocked.
	blockedTo = phrase.MustCompile(`\b(?:re-?)?(?:block|pin|press|steam|stretch)\b.*\b(?:to|at|measures?|measuring)(?: a size of| about| approx(?:\.|imately)?| roughly)*\W*$`)
	// ofAPart tells that a size is not that of all of the finished piece.
	ofAPart = phrase.MustCompile(`\b(?:each|every|squares?|motifs?|blocks|strips?|panels?|swatch|gauge|pieces|before|without|excluding|plus|edging|border|folded|center|centre|middle)\b`)
)

// areasIn are the widths with heights of a text in lower case that begins at a place.
func areasIn(text string, at int) []area {
	var out []area
	lengths := syntax.FindLengths(text)
	for i := 0; i+1 < len(lengths); i++ {
		a, b := lengths[i], lengths[i+1]
		if units.Crossed(unworded.ReplaceAllString(text[a.Span.End:b.Span.Start], "")) && len(a.Vals) == len(b.Vals) {
			span := source.Span{Start: a.Span.Start, End: b.Span.End}
			out = append(out, area{
				at: span.Shift(at), before: text[:span.Start], text: text[span.Start:span.End], sides: [2]syntax.WrittenLength{a, b},
				about: aboutWords.MatchString(text), part: ofAPart.MatchString(text),
			})
			i++
		}
	}
	return out
}

// holdBlocked holds the size to which the only piece is blocked against the finished size.
func (p *Pass) holdBlocked() {
	if main := p.mainPiece(); main == nil || main.Tree.Make.Or(0, 1) != 1 {
		return
	}
	var finished []area
	for _, f := range p.Materials.Finished {
		finished = append(finished, areasIn(strings.ToLower(p.File.Text.Slice(f.ValueSpan)), f.ValueSpan.Start)...)
	}
	if len(finished) == 0 || slices.ContainsFunc(finished, func(a area) bool { return a.part }) {
		return
	}
	for s, all := range assembliesIn.in(p) {
		for _, a := range all {
			if a.labelled {
				continue
			}
			for _, blocked := range areasIn(a.text, s.abs(a.at).Start) {
				if blockedTo.MatchString(blocked.before) && !blocked.part && !slices.ContainsFunc(finished, blocked.is) {
					p.Report(Finding{
						Span:    blocked.at,
						Message: quoted(blocked.text) + " is not the finished size, which is " + quoted(finished[0].text),
						Related: []Related{{finished[0].at, "the finished size"}},
					})
				}
			}
		}
	}
}

// is tells whether two areas are the same, in either order of their sides.
func (a area) is(b area) bool {
	give := metricGive + imperialGive
	if a.about || b.about {
		give *= 2
	}
	same := func(x, y syntax.WrittenLength) bool {
		if len(x.Vals) != len(y.Vals) {
			return true
		}
		for size := range x.Vals {
			if math.Abs(x.At(size)-y.At(size)) > give+conversionShare*x.At(size) {
				return false
			}
		}
		return true
	}
	return same(a.sides[0], b.sides[0]) && same(a.sides[1], b.sides[1]) || same(a.sides[0], b.sides[1]) && same(a.sides[1], b.sides[0])
}
