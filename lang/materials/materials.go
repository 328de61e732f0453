// Package materials is what a pattern says is needed and what comes of it:
// yarns, hooks, notions, gauge, swatch, finished size and for whom, read from
// the header into types. It judges nothing.
package materials

import (
	"slices"
	"strings"

	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/stock"
	"stitchproof/lang/syntax"
)

// List is what a pattern's header says of materials and sizes. Places are in
// the file.
type List struct {
	// Given tells whether the pattern lists materials at all.
	Given bool
	// Text is all that is listed, in lower case.
	Text string
	// written is that as it is written, with a line for each part.
	written string
	// Lines are those below the header's fields that list what is needed.
	Lines []source.Span
	Yarns []Yarn
	// Codes are the letters and numbers that what is listed calls yarns by, in whatever way.
	Codes []string
	Hooks []Hook
	// Gauges are those of the header, one for each stitch that one is given for.
	Gauges []Gauge
	// Swatch is the writer's own weighed swatch, nil for none.
	Swatch *Swatch
	// Finished are the finished sizes as written: one of all, or one of each measure.
	Finished []*syntax.Field
	// Measures are single ones that fields of their own give of the finished piece, named as
	// those are: `Sleeve length: 45 cm`.
	Measures []*syntax.Field
	// ToFit is the body that the piece is to fit, and Ease by how much it is wider
	// than that, less than 0 where it is narrower; nil where it is not said.
	ToFit, Ease *Extent
	// For is for whom the piece is made, "" where that is not said.
	For Wearer
}

// Yarn is one yarn of the list.
type Yarn struct {
	Name string // as the rows call it: A, MC; "" where it has none
	// Weights are the standard weights that its description names; several where
	// a name is used for several.
	Weights []stock.Weight
	// Ply are those that a number of plies names in the UK; elsewhere it names none.
	Ply []stock.Weight
	// Number is the weight's number where it is written: (4).
	Number *int
	// WeightSpan is where the weight is named.
	WeightSpan source.Span
	Text       string // the description, as written
	Span       source.Span
}

// Gauge is a gauge with its place.
type Gauge struct {
	syntax.Gauge
	Span source.Span
}

// Read reads the header of a pattern.
func Read(file *syntax.File) *List {
	l := &List{}
	var text []string
	for _, f := range file.Header {
		switch f.Key {
		case "yarn":
			l.yarnField(f, file.Text)
		case "hook":
			l.Hooks = append(l.Hooks, readHooks(f.Value, f.ValueSpan, file.Text)...)
		case "gauge":
			l.addGauges(f, file.Text)
		case "materials", "notions":
			l.list(file.Text.Slice(f.ValueSpan), f.ValueSpan.Start, file.Text)
		case "swatch":
			l.Swatch = readSwatch(f)
		case "finished size":
			l.Finished = append(l.Finished, f)
		case "to fit":
			l.ToFit = readExtent(f)
		case "ease":
			l.Ease = readEase(f)
		}
		if ownMeasure.MatchString(f.Key) {
			l.Measures = append(l.Measures, &syntax.Field{Key: "finished size", Name: f.Key, Value: f.Value, Span: f.Span, KeySpan: f.KeySpan, ValueSpan: f.ValueSpan})
		}
		if supply[f.Key] {
			l.Given = l.Given || f.Value != ""
			text = append(text, f.Name, file.Text.Slice(f.ValueSpan))
			if f.Key == "notions" {
				text = append(text, file.Text.Slice(f.KeySpan)) // `Buttons: 3`
			}
		}
	}
	if l.Gauges == nil {
		l.gaugeSaid(file)
	}
	headed, loose := supplyLines(file)
	l.Given = l.Given || len(headed) > 0 || inARow(file.Text, loose) >= listed // fewer may be part of a sentence, and not all
	for _, span := range slices.Concat(headed, loose) {
		line := file.Text.Slice(span)
		text = append(text, line)
		l.supply(line, span, file.Text)
	}
	if l.Finished == nil {
		l.Finished = finishedSize(file)
	}
	l.Lines = slices.Concat(headed, loose)
	all := strings.Join(text, "\n")
	l.written = matched.ReplaceAllString(all, "")
	l.Text, l.Codes = plain(all), codesIn(l.written)
	for _, key := range []string{"for", "sizes", "pattern"} {
		for _, f := range file.Header {
			if f.Key == key {
				l.For = l.For.or(f.Value)
			}
		}
	}
	return l
}

// yarnField reads a field of yarn, of which further lines may give its colours letters.
func (l *List) yarnField(f *syntax.Field, text *source.Text) {
	described := Yarn{Text: f.Value, Span: f.ValueSpan}
	described.readWeight()
	named := false
	start := f.ValueSpan.Start
	for line := range strings.Lines(text.Slice(f.ValueSpan)) {
		if m := coded.FindStringSubmatch(line); m != nil && start > f.ValueSpan.Start {
			one := described // they share a weight
			one.Name, one.Text = m[1]+m[2], strings.TrimSpace(line[len(m[0]):])
			one.Span = source.Span{Start: start + len(m[0]), End: start + len(strings.TrimRight(line, " \t\r\n"))}
			l.Yarns, named = append(l.Yarns, one), true
		}
		start += len(line)
	}
	if !named {
		l.addYarn(f.Name, f.Value, f.ValueSpan)
	}
}

// gaugeIn takes the gauge from a sentence: `at a gauge of 16 dc = 4 in`.
var gaugeIn = phrase.MustCompile(`(?i)\b(?:gauge|tension) (?:of|is) (\d[^.;\n]*)`)

// gaugeSaid reads the gauge of a pattern that has no field for it from a sentence above the work.
func (l *List) gaugeSaid(file *syntax.File) {
	begin := firstRow(file)
	for _, span := range file.Prose {
		if span.Start >= begin {
			return
		}
		m := gaugeIn.FindStringSubmatchIndex(file.Text.Slice(span))
		if m == nil {
			continue
		}
		at := source.Span{Start: m[2], End: m[3]}.Shift(span.Start)
		if g := syntax.ParseGauge(file.Text.Slice(at)); g.Stitches > 0 && g.Length > 0 {
			l.Gauges = append(l.Gauges, Gauge{g, at})
			return
		}
	}
}

// supply are the header fields that list what is needed.
var supply = map[string]bool{"yarn": true, "hook": true, "notions": true, "materials": true}

// plain is text in lower case with every run of white space as one space.
func plain(s string) string { return strings.ToLower(strings.Join(strings.Fields(s), " ")) }

// coded is a line of a list that names a yarn by a letter: `A: bark brown`,
// `MC – gray`, `Color B: …`, `Yarn A, moss brown`, `**A** – bark brown`, `A  bark brown`.
var coded = phrase.MustCompile(`^[-•*\s]*(?:(?i:yarn|colou?r)\s+([A-Z]|MC|CC\d?)\s*[:=,–—-]|([A-Z]|MC|CC\d?)(?:\**\s*[:=–—-]|\s{2,}))\s*`)

// codeFirst is a yarn's code with its colour behind it: `Color B (bark): 90 yards`, `Color B, bark: 90 yards`.
var codeFirst = phrase.MustCompile(`^(` + codeExpr + `)(?: ?\(([^()]*)\)|, (\pL[\pL -]*))$`)

// supply reads a line of a list of materials.
func (l *List) supply(line string, span source.Span, text *source.Text) {
	if m := coded.FindStringSubmatch(line); m != nil {
		l.addYarn(m[1]+m[2], line[len(m[0]):], source.Span{Start: span.Start + len(m[0]), End: span.End})
		return
	}
	l.list(line, span.Start, text)
}

func (l *List) addYarn(name, value string, span source.Span) {
	if value == "" {
		return
	}
	color := ""
	if m := codeFirst.FindStringSubmatch(name); m != nil {
		name, color = m[1], m[2]+m[3]
	}
	y := Yarn{Name: name, Text: value, Span: span}
	y.readWeight()
	if color != "" {
		y.Text = color + ", " + value
	}
	lettered := letteredYarns(value)
	if name != "" || len(lettered) == 0 {
		l.Yarns = append(l.Yarns, y)
		return
	}
	for _, c := range lettered {
		one := y // they share a weight
		one.Name, one.Text, one.Span = c.name, c.colour, c.span.Shift(span.Start)
		l.Yarns = append(l.Yarns, one)
	}
}

// hookLetter is a hook by its letter, which names no yarn: `C/2`, `US G-6`.
var hookLetter = phrase.MustCompile(`\b(?:US |[Ss]ize )?[A-Z](?:-\d|/\d| ?\(?\d+(?:\.\d+)? ?mm\b| hook\b)`)

// Named tells whether the list names a yarn by the word, as a letter or in its
// description.
func (l *List) Named(word string) bool {
	for _, y := range l.Yarns {
		if strings.EqualFold(y.Name, word) {
			return true
		}
	}
	switch {
	case len(word) == 1 && word[0] <= '9':
		return slices.Contains(l.Codes, word)
	case len(word) == 1: // no article, and no unit
		return alone(hookLetter.ReplaceAllString(l.written, ""), strings.ToUpper(word), func(c byte) bool { return lowerLetter(c|0x20) || c >= '0' && c <= '9' }) >= 0
	}
	return l.HasWords(word)
}

// HasWords tells whether the list holds each of some words: the brown sewing thread that `brown thread` calls for.
func (l *List) HasWords(words string) bool { return hasWords(l.Text, words) }

// hasWords tells whether a text holds each of some words.
func hasWords(text, words string) bool {
	for w := range strings.FieldsSeq(strings.ToLower(words)) {
		if alone(text, w, lowerLetter) < 0 {
			return false
		}
	}
	return true
}

// addGauges reads a gauge field: one gauge, or several with semicolons between.
// Stitches and rows that have a length each make one.
func (l *List) addGauges(f *syntax.Field, text *source.Text) {
	parts := strings.SplitAfter(strings.ReplaceAll(text.Slice(f.ValueSpan), "\n", ";"), ";") // or a line each
	whole := syntax.ParseGauge(f.Value)
	at := f.ValueSpan.Start
	var out []Gauge
	for _, part := range parts {
		g := syntax.ParseGauge(part)
		if g.Stitches == 0 || g.Length == 0 {
			out = []Gauge{{whole, f.ValueSpan}}
			break
		}
		lead := len(part) - len(strings.TrimLeft(part, " \r\n"))
		out = append(out, Gauge{g, source.Span{Start: at + lead, End: at + len(strings.TrimRight(part, "; \r\n"))}})
		at += len(part)
	}
	if whole.Length > 0 {
		l.Gauges = append(l.Gauges, out...)
	}
}
