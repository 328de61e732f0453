package lint

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/materials"
	"stitchproof/lang/measure"
	"stitchproof/lang/numeral"
	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
	"stitchproof/lang/units"
)

var measureMismatch = &Rule{
	Name:     "measure-mismatch",
	Family:   "materials",
	Severity: Warning,
	Summary:  "Sizes are what stitches, rows and motifs come to at the gauge, the same in centimetres and in inches, and those to which the piece is blocked.",
	Why: "A maker who has met the gauge trusts the size. Where the pattern's own figures do not agree, one of them is wrong, " +
		"and she finds out which when it is finished.",
	Bad: `Pattern: Oak leaf scarf
Terms: US
Hook: 5 mm (US H-8)
Gauge: 15 hdc and 10 rows = 10 cm (4 in)
Finished size: 25 cm x 100 cm (10 in x 39 1/2 in)
Turning chains: ch 2 does not count as a st.

Piece: Scarf
With A, ch 32.
Row 1: Hdc in 3rd ch from hook and in each ch across; turn. (30 hdc)
Rows 2-100: Ch 2, hdc in each st across; turn. (30 hdc)
Fasten off.
`,
	Good: `Pattern: Oak leaf scarf
Terms: US
Hook: 5 mm (US H-8)
Gauge: 15 hdc and 10 rows = 10 cm (4 in)
Finished size: 20 cm x 100 cm (8 in x 39 1/2 in)
Turning chains: ch 2 does not count as a st.

Piece: Scarf
With A, ch 32.
Row 1: Hdc in 3rd ch from hook and in each ch across; turn. (30 hdc)
Rows 2-100: Ch 2, hdc in each st across; turn. (30 hdc)
Fasten off.
`,
	Sources: []string{
		"Width = stitches ÷ stitches to a length. Allowed: half a stitch or row of the gauge, and half a centimetre or a quarter of an inch of the size, as each may have been rounded; twice that where the size is called about",
		"An edging is not measured: a size may be larger by what its rounds may be high at most, twice (common practice)",
		"A bust is front and back together: two seams may take a stitch of each edge (common practice)",
		"A size in a writer's own words is held against whatever of its piece is known. Allowed besides: 3 in 100 where all rows are in the stitch of the gauge, else 1 in 10; " +
			"of several sizes one is told that is off by 1 cm where all others agree to 4 mm or a quarter of an inch (our own figures)",
		"Motifs in a row: seams may take 8 in 100, and an edging may add a third (our own figures)",
		"Conversions: 62 in printed as 168 cm and 42 in as 122 cm were met in published sheets (read). Allowed: 7 mm and 15 in a thousand, so that 4 in may be 10 cm; of lengths of yarn, which are rounded to tens, 1 m and one in twenty (common practice)",
	},
	Check: checkMeasureMismatch,
}

func checkMeasureMismatch(p *Pass) {
	for _, f := range p.File.Header {
		if measuredFields[f.Key] || slices.Contains(p.Materials.Finished, f) {
			p.conversions(f)
		}
	}
	for _, at := range p.Materials.OfYarn(p.File) {
		p.yarnConversions(at)
	}
	p.holdBlocked()
	p.holdMotifs()
	if len(p.Materials.Gauges) == 0 {
		return
	}
	for _, f := range slices.Concat(p.Materials.Finished, p.Materials.Measures) {
		for _, c := range p.claims(f) {
			p.holdAgainstGauge(c)
		}
	}
	p.holdBust()
	p.holdCounted()
	p.holdReached()
	p.holdSaid(func(at source.Span) bool {
		return slices.ContainsFunc(p.findings, func(f Finding) bool { return f.Span.Overlaps(at) })
	})
}

// measuredFields are those of the header that give lengths of the work.
var measuredFields = map[string]bool{"finished size": true, "gauge": true, "to fit": true, "ease": true}

// Allowed between a length in one system and in the other.
const (
	conversionGive  = 7     // millimetres
	conversionShare = 0.015 // of the length
)

// conversions holds the metric lengths of a field against those in inches, in
// the order they stand in.
func (p *Pass) conversions(f *syntax.Field) {
	var metric, imperial []syntax.WrittenLength
	for _, l := range p.lengthsIn(f) {
		if l.Metric() {
			metric = append(metric, l)
		} else {
			imperial = append(imperial, l)
		}
	}
	if len(metric) != len(imperial) {
		return
	}
	for i, m := range metric {
		in := imperial[i]
		for size := range max(len(m.Vals), len(in.Vals)) {
			if len(m.Vals) != len(in.Vals) || math.Abs(m.At(size)-in.At(size)) <= conversionGive+conversionShare*m.At(size) {
				continue
			}
			p.Report(Finding{
				Span: in.Span.Shift(f.ValueSpan.Start),
				Message: fmt.Sprintf("%s in is %s cm, and %s cm is given", units.Inches(in.At(size)), units.Centimetres(in.At(size)),
					units.Centimetres(m.At(size))),
				Related: []Related{{m.Span.Shift(f.ValueSpan.Start), units.Centimetres(m.At(size)) + " cm is " + units.Inches(m.At(size)) + " in"}},
			})
			break
		}
	}
}

// What metres and yards of a yarn may differ by: both are rounded, long ones to tens.
const (
	yarnGive  = 1000 // millimetres
	yarnShare = 0.05 // of the length
)

// yarnConversions holds the metres of a yarn against the yards that stand in brackets behind
// them, or the other way round.
func (p *Pass) yarnConversions(at source.Span) {
	text := p.File.Text.Slice(at)
	lengths := syntax.FindLengths(text)
	for i := 1; i < len(lengths); i++ {
		a, b := lengths[i-1], lengths[i]
		if !ofYarn[a.Unit] || !ofYarn[b.Unit] || a.Unit == b.Unit || len(a.Vals) != len(b.Vals) || !sameBehind.MatchString(text[a.Span.End:b.Span.Start]) {
			continue
		}
		for size := range a.Vals {
			if math.Abs(a.At(size)-b.At(size)) <= yarnGive+yarnShare*max(a.At(size), b.At(size)) {
				continue
			}
			written := func(l syntax.WrittenLength) string { return text[l.Span.Start:l.Span.End] }
			p.Report(Finding{
				Span:    b.Span.Shift(at.Start),
				Message: quoted(written(b)) + " is " + units.OtherOfYarn(b) + ", and " + quoted(written(a)) + " is given",
				Related: []Related{{a.Span.Shift(at.Start), written(a) + " is " + units.OtherOfYarn(a)}},
			})
			break
		}
	}
}

// ofYarn are the units that lengths of yarn are given in.
var ofYarn = map[string]bool{"m": true, "yd": true}

// sameBehind is what stands between a length and the same in other units.
var sameBehind = phrase.MustCompile(`^\s*(?:[(\[/=]|or\b)\s*(?:about |approx(?:\.|imately)? |ca\.? )?$`)

// claim is what the finished size says of one piece: a width with a height, one
// of them, or a way around.
type claim struct {
	field *syntax.Field
	// pieces are those that it is of: one, or the front and the back of a garment, one of
	// which has to keep it.
	pieces  []*fabric.Piece
	lengths []syntax.WrittenLength
	side    side // of one length alone
	about   bool
	// asWorked is set where the size is said to be that before an edging.
	asWorked bool
	// partly is set for a length that is not that of all rows: a sleeve to the underarm.
	partly bool
	// sleeve is set for one of a sleeve, which may be that to where it narrows to its cap.
	sleeve bool
	// edging is what edgings may add to it at most, in millimetres.
	edging float64
}

// side is which way a length goes.
type side string

const (
	unsaid side = ""
	across side = "width"
	along  side = "height"
	round  side = "way round"
)

// sides are the words that tell which way a length goes.
var sides = []struct {
	side  side
	words *phrase.Phrase
}{
	{round, phrase.MustCompile(`\b(?:around|circumference|round)\b`)},
	{across, phrase.MustCompile(`\b(?:wide|width|across)\b`)},
	{along, phrase.MustCompile(`\b(?:tall|high|long|deep|height|length|depth)\b`)},
}

// sideOf is which way a length goes by the words beside it.
func sideOf(said string) side {
	for _, s := range sides {
		if s.words.MatchString(said) {
			return s.side
		}
	}
	return unsaid
}

var (
	aboutWords = phrase.MustCompile(`\b(?:about|approx|approximately|roughly|circa|ca)\b`)
	// A size before its edging is that of the rows; one without something else, or
	// of something folded, is that of some of them.
	asWorked = phrase.MustCompile(`\b(?:before|without|excluding) (?:(?:the|its|an|a|any) )?(?:edging|border)`)
	inPart   = phrase.MustCompile(`\b(?:without|excluding|plus|folded|stretched|gathered|blocked|after|before|felt(?:ed|ing)?)\b`)
)

// claims reads the finished size: widths with heights, and ways around. What it
// says of pieces that are joined from others is left alone.
func (p *Pass) claims(f *syntax.Field) []claim {
	text := strings.ToLower(p.File.Text.Slice(f.ValueSpan))
	bare := asWorked.MatchString(text)
	if !bare && inPart.MatchString(text) {
		return nil
	}
	var out []claim
	lengths := syntax.FindLengths(text)
	for i := 0; i < len(lengths); i++ {
		c := claim{field: f, lengths: lengths[i : i+1], about: aboutWords.MatchString(text), asWorked: bare}
		said := saidIn(f, text, lengths[i].Span)
		switch {
		case i+1 < len(lengths) && units.Crossed(unworded.ReplaceAllString(text[lengths[i].Span.End:lengths[i+1].Span.Start], "")):
			c.lengths = lengths[i : i+2]
			i++
		case squareWord.MatchString(said):
			c.lengths = []syntax.WrittenLength{lengths[i], lengths[i]}
		default:
			c.side = sideOf(p.withoutNames(said))
		}
		if c.sleeve = sleeveWord.MatchString(said); c.sleeve && c.side == unsaid {
			c.side = along
		}
		c.partly = toUnderarm.MatchString(said)
		if piece := p.claimedPiece(f, text[:c.lengths[0].Span.Start], c.side); piece != nil {
			c.pieces = []*fabric.Piece{piece}
		} else if c.side == along && garmentLength(said) {
			c.pieces = p.wholeHalves()
		}
		if c.pieces != nil && c.lengths[0].Metric() == lengths[0].Metric() && (len(c.lengths) == 2 || c.side != unsaid) {
			out = append(out, c)
		}
	}
	return p.ofAllSizes(paired(out))
}

// withoutNames are words without the names of pieces, which say nothing of a side: `Round Leaf 2"`.
func (p *Pass) withoutNames(said string) string {
	for _, piece := range p.Fabric.Pieces {
		if name := strings.ToLower(bareName(piece.Tree.Name)); strings.Contains(name, " ") {
			said = strings.ReplaceAll(said, strings.TrimSuffix(name, "s"), "")
		}
	}
	return said
}

var (
	sleeveWord = phrase.MustCompile(`\bsleeves?\b`)
	toUnderarm = phrase.MustCompile(`\b(?:underarm|under arm|seam|inside|inner|armhole|armpit)\b`)
)

// ofAllSizes are claims without those of one size each, one after the other: `S: 20 cm wide,
// M: 22 cm wide`.
func (p *Pass) ofAllSizes(all []claim) []claim {
	if p.Fabric.Sizes() == 1 {
		return all
	}
	return slices.DeleteFunc(slices.Clone(all), func(c claim) bool {
		alike := 0
		for _, other := range all {
			if slices.Equal(c.pieces, other.pieces) && c.side == other.side && len(c.lengths) == len(other.lengths) {
				alike++
			}
		}
		return alike > 1 && len(c.lengths[0].Vals) == 1
	})
}

var squareWord = phrase.MustCompile(`\bsquare\b`)

// paired makes one claim of a width and a height of the same piece.
func paired(all []claim) []claim {
	var out []claim
	for i := 0; i < len(all); i++ {
		c := all[i]
		if i+1 < len(all) && slices.Equal(c.pieces, all[i+1].pieces) && c.side == across && all[i+1].side == along {
			i++
			c.lengths, c.side = []syntax.WrittenLength{c.lengths[0], all[i].lengths[0]}, unsaid
		}
		out = append(out, c)
	}
	return out
}

// unworded are words that may stand between a width and a height.
var unworded = phrase.MustCompile(`\b(?:wide|deep|tall|long|high|around|square)\b`)

// claimedPiece is the piece that a size is of: the one named before it, else the
// only one there is. Of several alike, as squares, it may be that of all together;
// a way round is that of each, as of two gloves. What is folded to a bag is of no size
// that its piece has.
func (p *Pass) claimedPiece(f *syntax.Field, before string, side side) *fabric.Piece {
	before = strings.ToLower(f.Name) + " " + before[strings.LastIndexAny(before, ",;")+1:]
	if assembled.MatchString(before) {
		return nil
	}
	for _, piece := range p.Fabric.Pieces {
		if name := strings.ToLower(piece.Tree.Name); name != "" && strings.Contains(before, strings.TrimSuffix(name, "s")) {
			return piece
		}
	}
	if p.tells(madeUp) {
		return nil
	}
	if main := p.mainPiece(); main != nil && (main.Tree.Make.Or(0, 1) == 1 || side == round) {
		return main
	}
	return nil
}

// assembled says of a size that it is of several pieces.
var assembled = phrase.MustCompile(`\b(?:(?:sewn|put|joined|all|laid|wired|tied) together|assembled|arranged|made up)\b`)

// madeUp tells of a piece that the finished thing is larger or smaller than: one of many
// squares, or one that is folded.
var madeUp = phrase.MustCompile(`\b(?:squares|blocks|strips|panels|motifs|hexagons|circles) together\b|\b(?:sew|join|seam|whipstitch|make) (?:all |the |your |(?:\d+|` + numeral.Expression(2, numeral.Most) + `) (?:more )?)*(?:squares|blocks|strips|panels|motifs|hexagons|circles)\b|\bfold (?:it |the |your |each )?(?:\w+ )?in (?:half|two)\b|\bside seams?\b|\b(?:sew|seam) (?:up )?(?:the |both )?sides\b`)

// dimension is one measure of a worked piece, in millimetres, and what it is
// reckoned from: so many of something at so many to a length.
type dimension struct {
	length, per float64
	count       int
	noun        string
}

// dimensions are the width of a piece, or its way around, and its height.
func dimensions(s measure.Size) (width, height dimension) {
	width = dimension{max(s.Width, s.Around), s.Gauge.Stitches, s.Stitches, "sts"}
	if s.Gauge.Rows > 0 {
		height = dimension{s.Height, s.Gauge.Rows, s.Rows, "rows"}
	}
	return width, height
}

// gap is a length that is not what the gauge gives.
type gap struct {
	says, give, edging float64 // in millimetres
	dimension
}

// holdAgainstGauge compares what is claimed with what the gauge gives, in every
// size. A width and a height may stand in either order.
func (p *Pass) holdAgainstGauge(c claim) {
	gaps := make([]sized[gap], len(c.lengths))
	var gauge materials.Gauge
	for size := range p.Fabric.Sizes() {
		var least []*gap // of the pieces, that which keeps most
		for _, piece := range c.pieces {
			s := measure.Of(p.Materials, p.Fabric, piece, size)
			if !s.Exact || len(c.pieces) > 1 && s.Height == 0 {
				return
			}
			c.partly = c.partly || c.sleeve && p.tapers(piece, size)
			if !c.asWorked {
				c.edging = s.Edging + p.edgings(piece, size)
				if c.side == along && slices.ContainsFunc(p.Fabric.Pieces, func(other *fabric.Piece) bool { return other != piece && p.lengthens(other, piece) }) {
					c.edging = math.Inf(1)
				}
			}
			gauge = s.Gauge
			if these := c.against(s, size); least == nil || kept(these) > kept(least) {
				least = these
			}
		}
		for i, g := range least {
			if g != nil {
				gaps[i].add(size, *g)
			}
		}
	}
	for i, g := range gaps {
		if len(g.facts) > 0 {
			p.inSizes(g.sizes, Finding{
				Span:    c.lengths[i].Span.Shift(c.field.ValueSpan.Start),
				Message: gapWords(g, gauge),
				Related: []Related{{gauge.Span, "the gauge"}},
			})
		}
	}
}

// tapers tells whether a piece ends narrower than it is somewhere.
func (p *Pass) tapers(piece *fabric.Piece, size int) bool {
	widest, last := 0, 0
	for _, row := range piece.Rows {
		if t := &row.Tallies[size]; t.Works {
			last = t.Made
			widest = max(widest, last)
		}
	}
	return last < widest
}

// edgings is what the pieces that are edgings of another may add to it at most.
func (p *Pass) edgings(of *fabric.Piece, size int) float64 {
	total := 0.0
	for _, piece := range p.Fabric.Pieces {
		if piece != of && measure.IsEdging(piece.Tree.Name) {
			total += measure.Edging(p.Materials, p.Fabric, piece, size)
		}
	}
	return total
}

// gapWords says both lengths and how far apart they may be.
func gapWords(g sized[gap], gauge materials.Gauge) string {
	first := g.facts[0]
	message := fmt.Sprintf("says %s, and %s %s at %s to %s cm make %s, give or take %s cm", inBothUnits(g.facts, func(f gap) float64 { return f.says }),
		g.num(func(f gap) int { return f.count }), first.noun, trimmed(first.per), units.Centimetres(gauge.Length),
		inBothUnits(g.facts, func(f gap) float64 { return f.length }), trimmed(first.give/10))
	if first.edging > 0 && first.says > first.length {
		message += "; the edging adds " + trimmed(first.edging/10) + " cm at most"
	}
	return message
}

// against tells which of its lengths a claim does not keep in a size, nil for
// those that it does.
func (c claim) against(s measure.Size, size int) []*gap {
	width, height := dimensions(s)
	switch {
	case c.side == round && s.Round():
		return []*gap{c.gap(0, size, width)}
	case c.side == round || s.Round():
		return nil // a strip may be joined at its ends or at its sides
	case height.length == 0:
		return c.openEnded(size, width)
	case len(c.lengths) == 1:
		return []*gap{c.alone(size, width, height)}
	}
	upright := []*gap{c.gap(0, size, width), c.gap(1, size, height)}
	sideways := []*gap{c.gap(0, size, height), c.gap(1, size, width)}
	if kept(sideways) > kept(upright) {
		return sideways
	}
	return upright
}

// openEnded tells of a width and a height of a piece whose height is not known: one of
// them is its width.
func (c claim) openEnded(size int, width dimension) []*gap {
	if len(c.lengths) != 2 {
		return nil
	}
	gaps := []*gap{c.gap(0, size, width), c.gap(1, size, width)}
	if kept(gaps) > 0 {
		return nil
	}
	return gaps[:1]
}

// alone tells of a width or a height by itself. Either may be that of the rows or
// of the stitches, and of the piece folded in two.
func (c claim) alone(size int, width, height dimension) *gap {
	meant := width
	if c.side == along {
		meant = height
	}
	for _, d := range [...]dimension{width, height} {
		folded := d
		folded.length /= 2
		if c.gap(0, size, d) == nil || c.gap(0, size, folded) == nil {
			return nil
		}
	}
	return c.gap(0, size, meant)
}

func kept(gaps []*gap) int {
	n := 0
	for _, g := range gaps {
		if g == nil {
			n++
		}
	}
	return n
}

// What may be between a size and what the gauge gives, in millimetres: the size
// may have been rounded to half a centimetre or to quarter of an inch.
const (
	metricGive   = 5
	imperialGive = 25.4 / 4
)

// gap tells of a length that is not a dimension of the piece, nil where it is.
func (c claim) gap(i, size int, d dimension) *gap {
	says := c.lengths[i].At(size)
	give := 0.5/d.per*d.length + imperialGive
	if c.lengths[i].Metric() {
		give += metricGive - imperialGive
	}
	if c.about {
		give *= 2
	}
	over := says - d.length
	if over <= give+c.edging && (over >= -give || c.partly) {
		return nil
	}
	return &gap{says, give, c.edging, d}
}

func trimmed(v float64) string { return strconv.FormatFloat(math.Round(v*10)/10, 'f', -1, 64) }
