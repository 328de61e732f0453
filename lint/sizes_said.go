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
	"stitchproof/lang/units"
)

// saidSize is a length that a pattern says, in its own words, of something that it has made.
type saidSize struct {
	at     source.Span // in the file
	length syntax.WrittenLength
	side   side
	either bool // it is one of a width and a height, in whichever order
	// other is that one, and beside is of a width the length that is said of the same thing.
	other, beside *syntax.WrittenLength
	trimmed       bool // with the edgings of it
	flat          bool // it is that of something that lies flat
	of            body // none where nobody knows
}

// body is what a size is said of: pieces that go on from each other.
type body struct {
	name   string // "" for all that the pattern makes
	pieces []*fabric.Piece
}

// notOfWork are the fields that give the lengths of other things than the work.
var notOfWork = map[string]bool{
	"yarn": true, "hook": true, "notions": true, "materials": true, "abbreviations": true, "to fit": true, "ease": true, "swatch": true, "pattern": true,
}

// statement is a sentence above the work, or in a field of the header with what that is called.
type statement struct {
	at   source.Span // in the file
	text string      // in lower case
	key  string
}

// statements are those that may say how large something is.
func (p *Pass) statements() []statement {
	var out []statement
	add := func(at source.Span, key string, from int) {
		text := strings.ToLower(p.File.Text.Slice(at))
		if len(text) != at.Len() {
			return
		}
		for i, s := range sentencesOf(text) {
			if i >= from {
				out = append(out, statement{s.Shift(at.Start), unwrapped.Replace(text[s.Start:s.End]), key})
			}
		}
	}
	for _, f := range p.File.Header {
		switch {
		case f.Key == "gauge":
			add(f.ValueSpan, "", 1)
		case !notOfWork[f.Key]:
			add(f.ValueSpan, strings.ToLower(p.File.Text.Slice(f.KeySpan)), 0)
		}
	}
	begin := p.beginning()
	for _, at := range p.File.Prose {
		if at.Start < begin && !slices.Contains(p.File.Supplies, at) {
			add(at, "", 0)
		}
	}
	return out
}

// beginning is where the first instruction stands.
func (p *Pass) beginning() int {
	for _, piece := range p.File.Pieces {
		if len(piece.Rows) > 0 {
			return piece.Rows[0].At
		}
	}
	return p.File.Text.Len()
}

// saidSizes are the lengths of those statements that are known to be of some piece.
func (p *Pass) saidSizes() []saidSize {
	var out []saidSize
	bodies, statements := p.bodies(), p.statements()
	bare := slices.ContainsFunc(statements, func(s statement) bool { return asWorked.MatchString(s.text) })
	for _, s := range statements {
		if gaugeSaid.MatchString(s.text) || notSaid.MatchString(bracketed.ReplaceAllString(s.text, "")) || afterBlocking.MatchString(s.text) && !p.gaugeBlocked() {
			continue
		}
		lengths := syntax.FindLengths(s.text)
		for i, l := range lengths {
			if strings.Count(s.text[:l.Span.Start], "(") > strings.Count(s.text[:l.Span.Start], ")") || !l.Metric() && l.Unit != "in" || l.Unit == "m" || i > 0 && inOther(s.text, lengths[i-1], l) || len(l.Vals) > 1 && len(l.Vals) != p.Fabric.Sizes() {
				continue
			}
			size := saidSize{at: l.Span.Shift(s.at.Start), length: l}
			said := saidOf(s.text, l.Span)
			if size.other = crossedWith(s.text, lengths, i); size.other == nil && squareWord.MatchString(said) {
				size.other = &lengths[i]
			}
			size.either = size.other != nil
			if size.side = sideOf(sidewise.Replace(said)); size.side == unsaid {
				size.side = sideOf(sidewise.Replace(s.key))
			}
			if size.side == unsaid && !size.either && finishedKey.MatchString(s.key) && onHead.MatchString(strings.ToLower(p.title())) {
				size.side = round
			}
			size.trimmed = !bare && !withoutIt.MatchString(s.key+" "+said)
			size.flat = size.either || flatWords.MatchString(said)
			bust := atBust.MatchString(s.key + " " + said)
			if size.side == unsaid && !size.either && !bust {
				continue
			}
			if !bust {
				size.of = p.bodyOf(bodies, s, l.Span, said)
			}
			out = append(out, size)
		}
	}
	return out
}

var (
	// notSaid tells of sizes that no gauge gives: of a body, of what is stretched, hung or felted.
	notSaid = phrase.MustCompile(`\b(?:fits?|stretch\w*|gather\w*|felt\w*|fold\w*|drops?|hangs?|pad|insert|swatch|before washing)\b`)
	// gaugeSaid tells of a gauge.
	gaugeSaid = phrase.MustCompile(`\d (?:[a-z]+ ){1,5}(?:and|x|by) \d+ (?:rows|rnds|rounds)\b`)
	// afterBlocking tells of one that the gauge gives where that is blocked as well.
	afterBlocking = phrase.MustCompile(`\b(?:block\w*|starch\w*|stiffen\w*|pinned)\b`)
	finishedKey   = phrase.MustCompile(`^finished(?: (?:size|measurements?))?$`)
	flatWords     = phrase.MustCompile(`\b(?:wide|width|flat)\b`)
	sidewise      = strings.NewReplacer("from side to side", "across", "side to side", "across", "diameter", "across", "in length", "long", "lengthways", "long")
)

// gaugeBlocked tells whether the gauge is that of a blocked piece.
func (p *Pass) gaugeBlocked() bool {
	return len(p.Materials.Gauges) > 0 && afterBlocking.MatchString(strings.ToLower(p.File.Text.Slice(p.Materials.Gauges[0].Span)))
}

// inOther tells whether a length is the one before it in the other units.
func inOther(text string, before, l syntax.WrittenLength) bool {
	return before.Metric() != l.Metric() && again.MatchString(text[before.Span.End:l.Span.Start])
}

// crossedWith is the length that one stands beside in a width by a height, nil for none.
func crossedWith(text string, all []syntax.WrittenLength, i int) *syntax.WrittenLength {
	joined := func(a, b syntax.WrittenLength) bool {
		return units.Crossed(unworded.ReplaceAllString(bracketed.ReplaceAllString(text[a.Span.End:b.Span.Start], ""), ""))
	}
	switch {
	case i > 0 && joined(all[i-1], all[i]):
		return &all[i-1]
	case i+1 < len(all) && joined(all[i], all[i+1]):
		return &all[i+1]
	}
	return nil
}

// bodies are the pieces of a pattern with those that go on from them.
func (p *Pass) bodies() []body {
	var out []body
	of := map[*fabric.Piece]int{}
	for _, piece := range p.Fabric.Pieces {
		if at, known := of[piece.From]; piece.From != nil && known {
			of[piece] = at
			if name := piece.Tree.Name; !measure.IsEdging(name) && !beside.MatchString(strings.ToLower(name)) {
				out[at].pieces = append(out[at].pieces, piece)
			}
			continue
		}
		of[piece] = len(out)
		out = append(out, body{piece.Tree.Name, []*fabric.Piece{piece}})
	}
	return out
}

// first is the piece that a body begins with, nil for none.
func (b body) first() *fabric.Piece {
	if len(b.pieces) == 0 {
		return nil
	}
	return b.pieces[0]
}

// unread tells of a body of several rows some of which could not be counted.
func (b body) unread() bool {
	return b.rows() > 2 && slices.ContainsFunc(b.pieces, func(piece *fabric.Piece) bool {
		return slices.ContainsFunc(piece.Rows, func(row *fabric.Row) bool { return row.Tallies[0].Works && !row.Tallies[0].Known })
	})
}

// rows are how many a body has, so far as is known.
func (b body) rows() int {
	n := 0
	for _, piece := range b.pieces {
		for _, row := range piece.Rows {
			if row.Tallies[0].Works {
				n += row.Repeats[0]
			}
		}
	}
	return n
}

// stitches are how many a body has, so far as is known.
func (b body) stitches() int {
	n := 0
	for _, piece := range b.pieces {
		for _, row := range piece.Rows {
			if t := &row.Tallies[0]; t.Works {
				n += (t.Made + t.Chains) * row.Repeats[0]
			}
		}
	}
	return n
}

// muchSmaller is how many times smaller than the body of a thing what is only sewn on to it is.
const muchSmaller = 4

// mainBody is the body that is all of what is made but for edgings and small things beside it,
// none where there are several. Of what is made several times each is small.
func mainBody(all []body) body {
	whole := slices.DeleteFunc(slices.Clone(all), func(b body) bool {
		return b.stitches() == 0 || beside.MatchString(strings.ToLower(b.name))
	})
	own := slices.DeleteFunc(slices.Clone(whole), func(b body) bool { return measure.IsEdging(b.name) })
	if slices.ContainsFunc(own, func(b body) bool { return b.rows() > 1 }) {
		whole = own
	}
	var main body
	most, rest, several := 0, 0, 0
	for _, b := range whole {
		switch n := b.stitches(); {
		case b.pieces[0].Tree.Make.Or(0, 1) > 1:
			several = max(several, n)
		case n > most:
			rest += most
			main, most = b, n
		default:
			rest += n
		}
	}
	if slices.ContainsFunc(whole, func(b body) bool {
		return b.pieces[0] != main.first() && b.pieces[0].Tree.Make.Or(0, 1) == 1 && b.unread()
	}) {
		return body{}
	}
	if most < several || most < muchSmaller*rest {
		return body{}
	}
	return main
}

// bodyOf is the body that a length of a statement is of: that of a piece named with it, or the
// main one, where nothing is said but which way it goes. There is none where the words speak of
// anything else.
func (p *Pass) bodyOf(bodies []body, s statement, at source.Span, said string) body {
	before := s.text[:at.Start]
	before = withoutIt.ReplaceAllString(bracketed.ReplaceAllString(before[strings.LastIndexAny(before, ",;.")+1:], ""), " ")
	said = withoutIt.ReplaceAllString(s.key+" "+said, " ")
	for _, b := range bodies {
		for _, piece := range b.pieces {
			for _, name := range p.namesBeside(piece) {
				if wordsIn(s.key+" "+before+" "+said, name) < 0 || !generic(strings.ReplaceAll(said, name, ""), p.File) {
					continue
				}
				if b.pieces[0] == piece {
					return b
				}
				return body{piece.Tree.Name, []*fabric.Piece{piece}}
			}
		}
	}
	if !generic(said, p.File) || p.tells(madeUp) {
		return body{}
	}
	return mainBody(bodies)
}

// namesBeside are the words that a size may name a piece by: the last of its name too, where no
// other has it.
func (p *Pass) namesBeside(piece *fabric.Piece) []string {
	var out []string
	for _, name := range namesOf(piece.Tree) {
		name = article.ReplaceAllString(plainText(bareName(name)), "")
		out = append(out, formsOf(name)...)
		if words := strings.Fields(name); len(words) > 1 {
			if kind := words[len(words)-1]; len(p.called().kind[kind]) == 1 && p.called().exact[kind] == nil {
				out = append(out, formsOf(kind)...)
			}
		}
	}
	return out
}

// wordsIn is where some words stand in a text as such, -1 for nowhere.
func wordsIn(text, words string) int {
	at := strings.Index(text, words)
	if words == "" || at < 0 || at > 0 && isLetter(text[at-1]) || at+len(words) < len(text) && isLetter(text[at+len(words)]) {
		return -1
	}
	return at
}

func isLetter(c byte) bool { return c >= 'a' && c <= 'z' }

// withoutIt are words that leave something out of a size.
var withoutIt = phrase.MustCompile(`\b(?:without|excluding|not counting|not including|before) (?:(?:the|its|their|any|adding the) )?\w+(?: and \w+)?\b`)

// ofNothingElse are words beside a length that speak of no part of the thing.
var ofNothingElse = phrase.MustCompile(`\b(?:with|including) (?:(?:the|its) )?(?:edging|border)\b|\b(?:edging|border) included\b|\b(?:up|down|along) the (?:middle|cent(?:er|re))(?: \w+)?\b|\bat the (?:cent(?:er|re)|point|widest|deepest)(?: \w+)?\b|` +
	`\bfrom (?:side to side|tip to tip|point to point|top to bottom)\b|\b(?:after|once|when) (?:blocking|blocked|starched|stiffened|pinned)\b|` +
	`\bat a (?:gauge|tension) of\b.*|\b(?:finished|actual|total|full|overall|sizes?|measures?|measurements?|measuring|dimensions?|about|approx|approximately|roughly|circa|ca|each|one|the|an?|is|are|it|its|and|or|of|in|at|to|edge|sample|piece|stem|stalk|spine|` +
	`circumference|round|around|across|wide|width|long|length|deep|depth|tall|high|height|square|diameter|cms?|mm|inch|inches|ins|end|worked|shown|both|every|has|have|lies|laid|flat|by|x|included)\b|[^a-z]+`)

// generic tells whether words beside a length say nothing but how it is measured, and of the
// whole thing by the words of the pattern's title.
func generic(words string, file *syntax.File) bool {
	left := ofNothingElse.ReplaceAllString(words, " ")
	return !slices.ContainsFunc(strings.Fields(left), func(w string) bool { return !titled(file, w) })
}

// longestTitle is how long a line at the top may be that is a title, or goes with it.
const longestTitle = 50

// titled tells whether a word stands in the title of a pattern.
func titled(file *syntax.File, word string) bool {
	for _, piece := range file.Pieces {
		if name := plainText(piece.Name); name != word && len(file.Pieces) > 1 && wordsIn(name, strings.TrimSuffix(word, "s")) >= 0 {
			return false // of one piece of several
		}
	}
	for _, f := range file.Header {
		if f.Key == "pattern" && wordsIn(strings.ToLower(f.Value), word) >= 0 {
			return true
		}
	}
	top := strings.ToLower(strings.TrimLeft(file.Text.Slice(source.Span{Start: 0, End: min(200, file.Text.Len())}), "# \t\r\n"))
	for _, line := range strings.SplitN(top, "\n", 3)[:min(2, strings.Count(top, "\n")+1)] {
		if line, _, _ = strings.Cut(line, " with "); wordsIn(line, word) >= 0 && len(line) < longestTitle {
			return true
		}
	}
	return false
}

// dimensionOf is a length that a body comes to, in millimetres, between two, and what makes it.
type dimensionOf struct {
	low, high float64
	measure.Reach
	how string // what is done to come to it
}

// per is how many go to the length of the gauge.
func (d dimensionOf) per() float64 {
	switch {
	case d.Way == measure.Tall && d.Gauge.Rows > 0:
		return d.Gauge.Rows
	case d.Gauge.Stitches > 0:
		return d.Gauge.Stitches
	}
	return d.Gauge.Squares
}

// seenAs is what is seen of a reach where it is so many times as long.
func seenAs(r measure.Reach, low, high float64, how string) dimensionOf {
	return dimensionOf{r.Low * low, r.High * high, r, how}
}

// How many times its width the way round a piece is: of one that lies flat with corners or
// without, four times at most, and of a tube twice.
const (
	ofSquare = 4
	ofLeast  = 2.8
	ofTube   = 2
)

// shape is what is known of the lengths of a body.
type shape struct {
	all   []measure.Reach
	most  map[measure.Way]int
	grown bool // rounds grow from a middle
	rows  int
	// loose is set where a round has so many more stitches than the one before it that they
	// do not lie along it: petals, a frill.
	loose bool
	// lengthwise is set where only the chain that a body begins with tells of its length: it has
	// branches, or its rows go round the chain.
	lengthwise bool
}

func shapeOf(all []measure.Reach) shape {
	s := shape{all: all, most: map[measure.Way]int{}}
	least, last := math.MaxInt, 0
	for _, r := range all {
		s.most[r.Way] = max(s.most[r.Way], r.N)
		switch r.Way {
		case measure.Around:
			least = min(least, r.N)
			s.rows++
			s.loose = s.loose || last > 0 && float64(r.N) > frill*float64(last)
			last = r.N
		case measure.Wide:
			s.rows++
		}
	}
	row := max(s.most[measure.Around], s.most[measure.Wide])
	s.lengthwise = s.most[measure.Long] > 0 && (row == 0 || float64(row) > bothSides*float64(s.most[measure.Long]))
	s.grown = s.most[measure.Around] > 2*least
	return s
}

const (
	// bothSides is how much longer than its chain a row is that goes round that.
	bothSides = 1.7
	// offStem is how much longer a branched piece may be than its stem.
	offStem = 1.3
	// frill is how many times the stitches of the round before it lie along a round.
	frill = 2.1
	// bulge is one row in how many may be longer than the way round something: a gusset.
	bulge = 6
)

// seenOf are the dimensions of a body that a size may be, none where one of them is not known.
func (s saidSize) seenOf(of shape) []dimensionOf {
	switch {
	case of.loose && (s.either || s.side == across):
		return nil
	case s.either, s.side == along && !of.lengthwise:
		if of.most[measure.Tall] == 0 {
			return nil
		}
	case s.side == along:
		return of.lengths()
	case s.side == round && of.most[measure.Around] > 0:
		return of.rounds()
	case s.side == across && of.most[measure.Around] > 0:
		return s.widths(of)
	case of.most[measure.Tall] == 0:
		if s.side == across && s.beside != nil {
			return s.widths(of) // of which the length is none, see holdSize
		}
		return nil
	}
	out := s.widths(of)
	for _, r := range of.all {
		if r.Way != measure.Tall {
			continue
		}
		out = append(out, seenAs(r, 1, 1, ""))
		if of.most[measure.Around] == 0 {
			out = append(out, seenAs(r, .5, .5, "folded"), seenAs(r, 2, 2, "to both sides"))
		}
	}
	return out
}

// lengths are those of a body that is worked along a chain.
func (of shape) lengths() []dimensionOf {
	for _, r := range of.all {
		if r.Way == measure.Long {
			d := seenAs(r, 1, 1, "")
			if of.rows > 0 {
				d.high += (float64(of.rows) - 0.5) * r.High / float64(r.N) // the rounds at its end
			} else {
				d.high *= offStem
			}
			return []dimensionOf{d}
		}
	}
	return nil
}

// rounds are the ways round a body, but for those of few rounds between shorter ones.
func (of shape) rounds() []dimensionOf {
	rows, last := map[int]int{}, 0
	for _, r := range of.all {
		if r.Way == measure.Around {
			rows[r.N] += r.Rows
			last = r.N
		}
	}
	total := 0
	for _, n := range rows {
		total += n
	}
	longest := 0
	for n, times := range rows {
		if bulge*times >= total || n == last {
			longest = max(longest, n)
		}
	}
	var out []dimensionOf
	for _, r := range of.all {
		if r.Way == measure.Around && r.N <= longest && 2*r.N >= longest {
			out = append(out, seenAs(r, 1, 1, ""))
		}
	}
	return out
}

// widths are those of rows and rounds, of which the first of a piece that grows are none.
func (s saidSize) widths(of shape) []dimensionOf {
	var out []dimensionOf
	for _, r := range of.all {
		if r.Way == measure.Tall || 2*r.N < of.most[r.Way] || r.Way == measure.Wide && of.lengthwise {
			continue
		}
		if r.Way != measure.Around {
			out = append(out, seenAs(r, 1, 1, ""), seenAs(r, .5, .5, "folded"))
			continue
		}
		out = append(out, seenAs(r, 1./ofSquare, 1./ofLeast, "across"))
		if s.flat || !of.grown {
			out = append(out, seenAs(r, 1./ofTube, 1./ofTube, "folded flat"))
		}
	}
	return out
}

// How far a size may be from what can be told of a body, of which not all is known, or what is
// measured may not be what the gauge counts.
const (
	generous = .1
	exactly  = .03
)

// misses tells by how much a size is off a dimension, 0 where it is not; an edging may add to it.
func (s saidSize) misses(d dimensionOf, size int, edging float64) float64 {
	says := s.length.At(size)
	per, share := d.per(), generous
	if d.Exact {
		share = exactly
	}
	give := 0.5/per*d.high + imperialGive
	if s.length.Metric() {
		give += metricGive - imperialGive
	}
	low, high := d.low*(1-share)-give, d.high*(1+share)+give+edging
	switch {
	case says < low:
		return low / says
	case says > high:
		return says / high
	}
	return 0
}

// outOfLine is by how much, in millimetres, the size of one is off what the others keep.
const outOfLine = 10

// outlier is the one of several sizes that is not what stitches come to, where those of all
// others are, as often as times over; -1 where none is, or all are.
func (s saidSize) outlier(stitches []measure.Reach, times float64) int {
	at, seen := -1, map[float64]bool{}
	for size, r := range stitches {
		by := math.Abs(s.length.At(size) - times*r.Low)
		give := metricGive / 1.25
		if !s.length.Metric() {
			give = imperialGive
		}
		if inches := r.Gauge.Length / 25.4; s.length.Metric() == (math.Abs(inches-math.Round(inches)) < .01) {
			give += conversionShare * s.length.At(size)
		}
		switch {
		case by <= give:
			seen[s.length.At(size)] = true
		case at >= 0 || by < max(outOfLine, 2*give):
			return noOutlier
		default:
			at = size
		}
	}
	if at < 0 {
		return -1
	}
	if len(seen) < 2 {
		return noOutlier
	}
	return at
}

// noOutlier stands for sizes that are off in more than one place.
const noOutlier = -2

// holdInLine holds sizes against each other: where all of them but one are what some row of a
// piece comes to, that one is a slip. Of three sizes the piece has to be known.
func (p *Pass) holdInLine(s saidSize, pieces []*fabric.Piece) {
	sizes := p.Fabric.Sizes()
	if len(s.length.Vals) != sizes || sizes < 3 {
		return
	}
	var found []measure.Reach
	slip, often := 0, 0.
	for _, piece := range pieces {
		for _, row := range measure.ReachesInSizes(p.Materials, p.Fabric, piece) {
			for _, times := range [...]float64{1, 2} {
				switch at := s.outlier(row, times); {
				case at == -1:
					return // this row gives them all
				case at >= 0 && found == nil:
					found, slip, often = row, at, times
				}
			}
		}
	}
	if found == nil {
		return
	}
	r := found[slip]
	made := "make"
	if often > 1 {
		made = "twice make"
	}
	says := []float64{s.length.At(slip)}
	comes := []float64{often * r.Low}
	self := func(v float64) float64 { return v }
	p.inSizes([]int{slip}, Finding{
		Span: s.at,
		Message: fmt.Sprintf("says %s, and %d sts at %s to %s cm %s %s, as they do in the other sizes", inBothUnits(says, self), r.N, trimmed(r.Gauge.Stitches),
			units.Centimetres(r.Gauge.Length), made, inBothUnits(comes, self)),
		Related: []Related{{r.Gauge.Span, "the gauge"}},
	})
}

// holdSaid holds what is said of sizes against what pieces can come to, but for what was told.
func (p *Pass) holdSaid(told func(source.Span) bool) {
	if len(p.Materials.Gauges) == 0 {
		return
	}
	all := p.saidSizes()
	for _, s := range all {
		if s.side == across && s.of.pieces != nil {
			for _, l := range all {
				if l.side == along && l.of.first() == s.of.first() {
					s.beside = &l.length
				}
			}
		}
		if !told(s.at) && s.of.pieces != nil {
			p.holdSize(s)
		}
		if pieces := s.of.pieces; !told(s.at) && s.side != along && (pieces != nil || p.Fabric.Sizes() > 3) {
			if pieces == nil {
				pieces = p.Fabric.Pieces
			}
			p.holdInLine(s, pieces)
		}
	}
}

// otherThan are the dimensions that a size may be whose other one is known: where that is
// along the rows alone, over all rows, and the other way round.
func (s saidSize) otherThan(all []dimensionOf, size int, edging float64) []dimensionOf {
	other := s
	other.length = *s.other
	kept := map[bool]bool{} // by whether it is over all rows
	for _, d := range all {
		tall := d.Way == measure.Tall
		kept[tall] = kept[tall] || other.misses(d, size, edging) == 0
	}
	if kept[true] == kept[false] {
		return all
	}
	return slices.DeleteFunc(slices.Clone(all), func(d dimensionOf) bool { return (d.Way == measure.Tall) == kept[true] })
}

// lengthFits tells whether the length beside a width is along the rows, which may go either way.
func (s saidSize) lengthFits(all []dimensionOf, size int, edging float64) bool {
	s.length = *s.beside
	return slices.ContainsFunc(all, func(d dimensionOf) bool { return s.misses(d, size, edging) == 0 })
}

// missed is a size that nothing of a body comes to, with what comes nearest.
type missed struct {
	says float64
	dimensionOf
}

func (p *Pass) holdSize(s saidSize) {
	var off sized[missed]
	for size := range p.Fabric.Sizes() {
		edging := 0.0
		if s.trimmed && s.side != round {
			edging = p.edgings(s.of.pieces[0], size)
		}
		of := shapeOf(measure.Reaches(p.Materials, p.Fabric, s.of.pieces, size))
		all := s.seenOf(of)
		flat := of.most[measure.Around] == 0
		if s.either && flat {
			all = s.otherThan(all, size, edging)
		}
		var nearest dimensionOf
		least := math.Inf(1)
		for _, d := range all {
			if by := s.misses(d, size, edging); by < least {
				least, nearest = by, d
			}
		}
		if len(all) == 0 || least == 0 || flat && s.beside != nil && of.most[measure.Tall] == 0 && s.lengthFits(all, size, edging) {
			continue
		}
		off.add(size, missed{s.length.At(size), nearest})
	}
	p.tellMissed(off, s.at, s.of.first())
}
