package lint

import (
	"strings"

	"stitchproof/lang/materials"
	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/stock"
	"stitchproof/lang/syntax"
)

// bodyPart is where a piece fits closest: the width there is told of it.
type bodyPart string

const (
	head bodyPart = "head"
	bust bodyPart = "bust"
)

// fitted is how wide a piece comes out around the part of the body that it fits.
type fitted struct {
	length syntax.WrittenLength
	span   source.Span // in the file
	part   bodyPart
}

var (
	onHead      = phrase.MustCompile(`\b(?:hat|cap|beanie|bonnet|beret|tam)\b`)
	atBust      = phrase.MustCompile(`\b(?:bust|chest)\b`)
	goingAround = phrase.MustCompile(`around|circumference`)
	// otherPart are parts that nothing is published of here: the pattern may say itself how
	// wide they are.
	otherPart = phrase.MustCompile(`\b(?:hand|wrist|arm|foot|ankle|calf|leg|neck|waist)\b`)
)

// fitted finds in the finished size the width at the bust, or of something for
// the head the way around.
func (p *Pass) fitted() (fitted, bool) {
	forHead := onHead.MatchString(strings.ToLower(p.title()))
	for _, f := range p.Materials.Finished {
		text := strings.ToLower(p.File.Text.Slice(f.ValueSpan))
		if p.sizeBySize(f, text) {
			continue
		}
		for _, l := range p.lengthsIn(f) {
			w := fitted{l, l.Span.Shift(f.ValueSpan.Start), bust}
			switch said := saidIn(f, text, l.Span); {
			case forHead && goingAround.MatchString(said):
				w.part = head
				return w, true
			case atBust.MatchString(said):
				return w, true
			case goingAround.MatchString(said) && p.Materials.ToFit != nil:
				if w.part = bodyPart(otherPart.FindString(p.Materials.ToFit.Text)); w.part != "" {
					return w, true
				}
			}
		}
	}
	return fitted{}, false
}

// sizeBySize tells whether a field, whose value is a text, gives the widths of the sizes one
// after the other, each by itself: `S: bust 90 cm, M: bust 100 cm`. None is that of all.
func (p *Pass) sizeBySize(f *syntax.Field, text string) bool {
	around := 0
	for _, l := range p.lengthsIn(f) {
		if said := saidIn(f, text, l.Span); l.Metric() && len(l.Vals) == 1 && (atBust.MatchString(said) || goingAround.MatchString(said)) {
			around++
		}
	}
	return around > 1 && p.Fabric.Sizes() > 1
}

// bracketed is what stands in brackets: the same length in other units.
var bracketed = phrase.MustCompile(`\([^()]*(?:\([^()]*\)[^()]*)*\)`)

// nextLength is what parts one length from what is said of another.
var nextLength = phrase.MustCompile(`[,;\n]|\s(?:x|×|by|and)\s`)

// saidIn is what a field, whose value is a text, says of the length at a span.
func saidIn(f *syntax.Field, text string, at source.Span) string {
	return saidOf(text, at) + " " + strings.ToLower(f.Name)
}

// saidOf is what a text says of the length at a span.
func saidOf(text string, at source.Span) string {
	before, after := bracketed.ReplaceAllString(text[:at.Start], ""), bracketed.ReplaceAllString(text[at.End:], "")
	if all := nextLength.FindAllStringIndex(before, -1); len(all) > 0 {
		before = before[all[len(all)-1][1]:]
	}
	if end := nextLength.FindStringIndex(after); end != nil {
		after = after[:end[0]]
	}
	return before + " " + after
}

// title is the pattern's name with those of its pieces.
func (p *Pass) title() string {
	words := []string{p.around.opening}
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

// wearerOf is for whom a size is: as its name says, else as the pattern does.
func (p *Pass) wearerOf(size int) materials.Wearer {
	if who := materials.WearerIn(p.sizeCalled(size)); who != materials.Nobody {
		return who
	}
	return p.Materials.For
}

// What a piece may be narrower and wider than the body, in inches.
const (
	// snug is what of the head a hat may be: snug hats are worked up to a tenth
	// smaller. roomy is by how much it may be wider.
	snug  = 0.9
	roomy = 2
	// A garment may be so much narrower or wider at the bust.
	closest = -4
	widest  = 14
)

// fits is how wide, in inches, a piece may be for a body.
func (part bodyPart) fits(body stock.Range) stock.Range {
	if part == head {
		return stock.Range{Low: snug * body.Low, High: body.High + roomy}
	}
	return stock.Range{Low: body.Low + closest, High: body.High + widest}
}

// published is how wide, in inches, bodies of a size are, by all publications
// together. It is false where none has the size.
func (p *Pass) published(part bodyPart, size int) (stock.Range, bool) {
	var ranges []stock.Range
	if part != head && part != bust {
		return stock.Range{}, false
	}
	for _, who := range people(p.wearerOf(size)) {
		if part == head {
			for _, h := range stock.Heads(who) {
				ranges = append(ranges, h.Inches)
			}
			continue
		}
		for _, b := range stock.Bodies(who, sizeWord(p.sizeCalled(size)), string(bust)) {
			ranges = append(ranges, b.Inches)
		}
	}
	return stock.Hull(ranges), len(ranges) > 0
}

// people are those that the tables have for a wearer.
func people(who materials.Wearer) []string {
	if who == materials.Adult {
		return []string{string(materials.Woman), string(materials.Man)}
	}
	return []string{string(who)}
}

// sizeCalled is what the header calls a size, "" for nothing: the only one of a
// pattern stands alone there.
func (p *Pass) sizeCalled(size int) string {
	if size < len(p.File.Sizes) {
		return p.File.Sizes[size]
	}
	for _, f := range p.File.Header {
		if f.Key == "sizes" {
			return f.Value
		}
	}
	return ""
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
