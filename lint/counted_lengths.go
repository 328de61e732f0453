package lint

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/materials"
	"stitchproof/lang/measure"
	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
	"stitchproof/lang/units"
)

// countedLength is a length with the stitches or rows that are said to come to it.
type countedLength struct {
	at     source.Span // in the section
	length syntax.WrittenLength
	n      syntax.Num
	of     string // what there are so many of, as written
}

// rows tells whether they are rows.
func (c countedLength) rows() bool { return strings.HasPrefix(c.of, "r") }

// gaugedBy tells whether they are what a gauge counts: any stitches are, and those of a name where it counts that.
func (c countedLength) gaugedBy(g materials.Gauge) bool {
	return c.rows() || strings.HasPrefix(c.of, "st") || strings.EqualFold(strings.TrimSpace(g.Of), c.of)
}

const countList = `\d+(?:(?: ?[(\[:,–-] ?|, | \()\d+)*[)\]]?`

var (
	// beforeLength is a number of stitches or rows that stands before the length it comes to.
	beforeLength = phrase.MustCompile(`(?:^|[^\d.½¼¾/-])(` + countList + `) (?:\w+ )?(rows|rounds|rnds|sts|stitches|sc|dc|hdc|htr|tr)(?: (?:in all|altogether|in total|from the \w+))?,? ?(?:and|or|which)? ?(?:it )?(?:now )?(?:measures?|is|are|=)? ?(?:about|approx\.?|approximately|roughly)? ?$`)
	// behindLength is one in brackets behind it.
	behindLength = phrase.MustCompile(`^(?: long| wide| around| tall| deep| across)? ?\((?:about )?(` + countList + `) (rows|rounds|rnds|sts|stitches)\)`)
	// notCounted tells of a sentence that gives a gauge, or what goes on to a length, and of
	// slip stitches, of which nobody gives the gauge.
	notCounted = phrase.MustCompile(`\b(?:sl sts|slip stitches|gauge|tension|swatch|until|till|every|each|per|yarn|tail|end|apart|evenly|ball|skein|add|adds|more|extra|repeat of|from)\b|=|: ?\d+ (?:sts|rows)`)
)

// countedLengthsIn are those of a section.
var countedLengthsIn = &fact[[]countedLength]{func(p *Pass, s section) []countedLength {
	text := strings.ToLower(s.text)
	if len(text) != len(s.text) || !countedWord.May(text) {
		return nil
	}
	var out []countedLength
	for _, at := range sentencesOf(withoutComments(p.File, s, text)) {
		sentence := unwrapped.Replace(text[at.Start:at.End])
		for _, l := range syntax.FindLengths(sentence) {
			if !l.Metric() && l.Unit != "in" || l.Unit == "m" {
				continue
			}
			m, from := beforeLength.FindStringSubmatch(sentence[:l.Span.Start]), sentence[:l.Span.Start]
			if m == nil {
				m, from = behindLength.FindStringSubmatch(sentence[l.Span.End:]), sentence[:l.Span.Start]
			}
			if m == nil || notCounted.MatchString(lastClause(from)) {
				continue
			}
			out = append(out, countedLength{l.Span.Shift(at.Start), l, numbersIn(m[1]), strings.Clone(m[2])})
		}
	}
	return out
}}

var countedWord = phrase.MustCompile(`\b(?:rows|rounds|rnds|sts|stitches|sc|dc|hdc|htr|tr)\b`)

// lastClause is a text from its last mark on.
func lastClause(text string) string { return text[strings.LastIndexAny(text, ";:.")+1:] }

// numbersIn reads the numbers of a list.
func numbersIn(list string) syntax.Num {
	var n syntax.Num
	for _, w := range wholeNumber.FindAllString(list, -1) {
		n.Vals = append(n.Vals, inWords(w))
	}
	return n
}

var wholeNumber = phrase.MustCompile(`\d+`)

// holdCounted holds lengths against the stitches or rows that stand beside them.
func (p *Pass) holdCounted() {
	for s, all := range countedLengthsIn.in(p) {
		for _, c := range all {
			if len(c.n.Vals) == 1 || len(c.n.Vals) == p.Fabric.Sizes() {
				at := s.abs(c.at)
				if !slices.ContainsFunc(p.Materials.Gauges, func(g materials.Gauge) bool { return g.Span.Covers(at) }) {
					p.holdCount(c, at)
				}
			}
		}
	}
}

// holdCount holds one of them by each gauge.
func (p *Pass) holdCount(c countedLength, at source.Span) {
	var off sized[missed]
	for size := range max(len(c.n.Vals), len(c.length.Vals)) {
		var told *missed
		for _, g := range p.Materials.Gauges {
			m, known := c.missedBy(g, size)
			if !known {
				continue
			}
			if m == nil {
				told = nil
				break
			}
			told = m
		}
		if told != nil {
			off.add(size, *told)
		}
	}
	p.tellMissed(off, at, nil)
}

// missedBy is what a count comes to by a gauge in a size, nil where that is the length.
func (c countedLength) missedBy(g materials.Gauge, size int) (m *missed, known bool) {
	per, of, way := g.Stitches, "sts", measure.Wide
	if c.rows() {
		per, of, way = g.Rows, "rows", measure.Tall
	}
	if per == 0 || g.Length == 0 || !c.gaugedBy(g) {
		return nil, false
	}
	n := c.n.At(size)
	makes := float64(n) * g.Length / per
	says := c.length.At(size)
	give := g.Length/per/2 + imperialGive + countedShare*makes
	if math.Abs(says-makes) <= give {
		return nil, true
	}
	return &missed{says, dimensionOf{makes, makes, measure.Reach{Way: way, N: n, Of: of, Gauge: g}, ""}}, true
}

// countedShare is what a length may be off what stands beside it, as both are rounded.
const countedShare = .05

// nowMeasures takes the length that a piece has come to, where it is said behind a row.
var nowMeasures = phrase.MustCompile(`\b(?:piece|work|it|strip|scarf|back|front|panel|body|sleeve|blanket) (?:now |should now |should )?measures? (?:now |about |approx\.? |approximately |roughly )*$`)

// holdReached holds what a piece is said to measure behind a row against the rows up to there.
func (p *Pass) holdReached() {
	for _, piece := range p.Fabric.Pieces {
		for _, row := range piece.Rows {
			text := strings.ToLower(row.Tree.Text)
			if len(text) != len(row.Tree.Text) || !strings.Contains(text, "measure") {
				continue
			}
			for _, l := range syntax.FindLengths(text) {
				before, after := text[:l.Span.Start], text[l.Span.End:]
				if nowMeasures.MatchString(before) && !crossedAfter.MatchString(after) && !notReached.MatchString(before[strings.LastIndexAny(before, ".;")+1:]) {
					p.holdHeight(row, l)
				}
			}
		}
	}
}

var (
	// crossedAfter follows a width that is given with a height.
	crossedAfter = phrase.MustCompile(`^ ?(?:\([^()]*\) ?)?(?:x|×|by|wide|across|around)\b`)
	// notReached tells of a length that is worked to.
	notReached = phrase.MustCompile(`\b(?:until|till|when|if|once|from|armhole|should)\b`)
)

// holdHeight holds one such length.
func (p *Pass) holdHeight(row *fabric.Row, l syntax.WrittenLength) {
	if len(l.Vals) > 1 && len(l.Vals) != p.Fabric.Sizes() {
		return
	}
	var off sized[missed]
	for size := range p.Fabric.Sizes() {
		r, known := measure.HeightTo(p.Materials, p.Fabric, row, size)
		if !known {
			return
		}
		s := saidSize{length: l}
		if d := seenAs(r, 1, 1, ""); s.misses(d, size, 0) > 0 {
			off.add(size, missed{l.At(size), d})
		}
	}
	p.tellMissed(off, l.Span.Shift(row.Tree.At), nil)
}

// tellMissed tells of a length that stitches or rows do not come to.
func (p *Pass) tellMissed(off sized[missed], at source.Span, of *fabric.Piece) {
	if len(off.facts) == 0 {
		return
	}
	first := off.facts[0]
	words := fmt.Sprintf("says %s, and %s %s at %s to %s cm make %s", inBothUnits(off.facts, func(m missed) float64 { return m.says }),
		off.num(func(m missed) int { return m.N }), first.Of, trimmed(first.per()), units.Centimetres(first.Gauge.Length),
		inBothUnits(off.facts, func(m missed) float64 { return (m.low + m.high) / 2 }))
	if first.how != "" {
		words += " " + first.how
	}
	related := []Related{{first.Gauge.Span, "the gauge"}}
	if of != nil {
		related = append(related, Related{of.Tree.NameSpan, "what is measured"})
	}
	p.inSizes(off.sizes, Finding{Span: at, Message: words, Related: related})
}
