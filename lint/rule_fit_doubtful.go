package lint

import (
	"fmt"
	"math"
	"regexp"
	"strings"

	"stitchproof/lang/materials"
	"stitchproof/lang/phrase"
	"stitchproof/lang/stock"
	"stitchproof/lang/syntax"
)

var fitDoubtful = &Rule{
	Name:     "fit-doubtful",
	Family:   "materials",
	Severity: Info,
	Summary:  "A hat or garment for somebody in particular is about as wide as published heads and bodies, and a warning names the ease.",
	Why:      "A maker chooses by the name of the size. A hat of 40 cm for a man fits nobody that the name suggests.",
	Bad: `Pattern: Hedge hat
Terms: US
For: men
Gauge: 12 hdc and 9 rnds = 10 cm (4 in)
Finished size: 40 cm (15 3/4 in) around
Turning chains: ch 1 does not count as a st.

Piece: Hat
With A, ch 48, sl st in first ch to join.
Rnd 1: Ch 1, hdc in each ch around; join. (48 hdc)
Rnd 2: Ch 1, hdc in each st around; join. (48 hdc)
Fasten off.
`,
	Good: `Pattern: Hedge hat
Terms: US
For: men
Gauge: 12 hdc and 9 rnds = 10 cm (4 in)
Finished size: 56.5 cm (22 1/4 in) around
Turning chains: ch 1 does not count as a st.

Piece: Hat
With A, ch 68, sl st in first ch to join.
Rnd 1: Ch 1, hdc in each ch around; join. (68 hdc)
Rnd 2: Ch 1, hdc in each st around; join. (68 hdc)
Fasten off.
`,
	Sources: []string{
		"Heads: Craft Yarn Council (memory), tables of knitting sites, calicojoy.com and crochetkitten, 2014 (read). They differ by two inches: every one is allowed, and a tenth less, as snug hats are worked",
		"Bodies: Craft Yarn Council, 2018 (memory; bust columns agree with Spinrite sheets, read). Ease: Craft Yarn Council (memory), Lion Brand and worldknits.com (read); up to 14 in is taken for meant (common practice)",
	},
	Check: checkFitDoubtful,
}

var (
	onHead = phrase.MustCompile(`\b(?:hat|cap|beanie|bonnet|beret|tam)\b`)
	atBust = regexp.MustCompile(`\b(?:bust|chest)\b`)
)

func checkFitDoubtful(p *Pass) {
	f := p.Materials.Finished
	if f == nil {
		return
	}
	text := strings.ToLower(p.File.Text.Slice(f.ValueSpan))
	head := onHead.In(strings.ToLower(p.title()))
	for _, l := range p.lengthsIn(f) {
		switch {
		case head && aroundAt(text, l):
			p.holdAgainst(l, p.headRange)
			return
		case atBust.MatchString(text) && (strings.Contains(text[:l.Span.Start], "bust") || strings.Contains(text[:l.Span.Start], "chest")):
			p.holdAgainst(l, p.bustRange)
			return
		}
	}
}

// aroundAt tells whether a length is said to be a way around.
func aroundAt(text string, l syntax.WrittenLength) bool {
	after := text[l.Span.End:]
	if at := strings.IndexAny(after, ",;"); at >= 0 && strings.IndexByte(after[:at], '(') < 0 {
		after = after[:at]
	}
	return strings.Contains(after, "around") || strings.Contains(after, "circumference")
}

// title is the pattern's name with those of its pieces.
func (p *Pass) title() string {
	words := []string{p.opening()}
	for _, f := range p.File.Header {
		if f.Key == "pattern" {
			words = append(words, f.Value)
		}
	}
	for _, piece := range p.File.Pieces {
		words = append(words, piece.Name)
	}
	return strings.Join(words, " ")
}

// holdAgainst compares a width around with what is published of each size.
func (p *Pass) holdAgainst(l syntax.WrittenLength, published func(size int) (body, fits stock.Range, ok bool)) {
	for size := range p.Fabric.Sizes() {
		body, fits, ok := published(size)
		in := l.At(size) / stock.MMPerInch
		if !ok || fits.Holds(in, 0.25) {
			continue
		}
		p.inSizes([]int{size}, Finding{
			Span: l.Span.Shift(p.Materials.Finished.ValueSpan.Start),
			Message: fmt.Sprintf("%s cm (%s in) is %s what is published for a %s, %s in around", centimetres(l.At(size)), inches(l.At(size)),
				easeWords(in, body), string(p.wearerOf(size)), body),
		})
	}
}

// easeWords says by how much a piece is wider than a body, and what that is
// called.
func easeWords(in float64, body stock.Range) string {
	ease := in - body.High
	if in < body.Low {
		return inches((body.Low-in)*stock.MMPerInch) + " in less than"
	}
	name := ""
	for _, fit := range stock.Fits() {
		if fit.Inches.Holds(ease, 0) {
			name = " (" + fit.Name + ")"
		}
	}
	return inches(math.Max(0, ease)*stock.MMPerInch) + " in more" + name + " than"
}

// wearerOf is for whom a size is: as its name says, else as the pattern does.
func (p *Pass) wearerOf(size int) materials.Wearer {
	if size < len(p.File.Sizes) {
		if who := materials.WearerIn(p.File.Sizes[size]); who != materials.Nobody {
			return who
		}
	}
	return p.Materials.For
}

// snug is what of the head a hat may be: snug hats are worked up to a tenth
// smaller. roomy is by how many inches it may be wider.
const (
	snug  = 0.9
	roomy = 2
)

func (p *Pass) headRange(size int) (body, fits stock.Range, ok bool) {
	var ranges []stock.Range
	for _, who := range people(p.wearerOf(size)) {
		for _, h := range stock.Heads(who) {
			ranges = append(ranges, h.Inches)
		}
	}
	body = stock.Hull(ranges)
	return body, stock.Range{Low: snug * body.Low, High: body.High + roomy}, len(ranges) > 0
}

// people are those that the tables have for a wearer.
func people(who materials.Wearer) []string {
	if who == materials.Adult {
		return []string{string(materials.Woman), string(materials.Man)}
	}
	return []string{string(who)}
}

// What a garment may be wider or narrower than the body, in inches.
const (
	closest = -4
	widest  = 14
)

func (p *Pass) bustRange(size int) (body, fits stock.Range, ok bool) {
	if size >= len(p.File.Sizes) {
		return body, fits, false
	}
	var ranges []stock.Range
	for _, who := range people(p.wearerOf(size)) {
		for _, b := range stock.Bodies(who, sizeWord(p.File.Sizes[size]), "bust") {
			ranges = append(ranges, b.Inches)
		}
	}
	body = stock.Hull(ranges)
	return body, stock.Range{Low: body.Low + closest, High: body.High + widest}, len(ranges) > 0
}

var sizeNames = map[string]string{
	"small": "S", "medium": "M", "large": "L", "extra small": "XS", "extra large": "XL", "x-large": "XL", "x-small": "XS",
	"2xl": "2X", "3xl": "3X", "4xl": "4X", "5xl": "5X", "xxl": "2X",
}

// sizeWord is the name that the tables have for a size.
func sizeWord(size string) string {
	folded := strings.ToLower(strings.TrimSpace(size))
	if word := sizeNames[folded]; word != "" {
		return word
	}
	if strings.HasSuffix(folded, "months") {
		return folded
	}
	return strings.ToUpper(folded)
}
