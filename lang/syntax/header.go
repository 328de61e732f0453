package syntax

import (
	"slices"
	"strings"

	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
)

// headerKeys gives the canonical key for each spelling of a header field.
// Keys a pattern may open a section with (a list on the lines below) are in
// sections.
var headerKeys = map[string]string{
	"pattern": "pattern", "title": "pattern", "name": "pattern",
	"terms": "terms", "terms used": "terms", "crochet terms": "terms", "stitch terms": "terms", "terminology": "terms", "us terms": "terms", "uk terms": "terms",
	"size": "sizes", "sizes": "sizes", "the sizes": "sizes", "two sizes": "sizes", "the two sizes": "sizes", "three sizes": "sizes", "the three sizes": "sizes", "which size": "sizes", "sizes given": "sizes",
	"hook": "hook", "hooks": "hook", "crochet hook": "hook", "hook size": "hook",
	"yarn": "yarn", "yarns": "yarn", "thread": "yarn", "wool": "yarn", "colour": "yarn", "color": "yarn", "colours": "yarn", "colors": "yarn",
	"gauge": "gauge", "tension": "gauge", "crochet gauge": "gauge", "crochet tension": "gauge",
	"how big": "finished size", "how big it is": "finished size", "how big it comes out": "finished size", "finished measurement": "finished size", "tension and size": "gauge", "gauge and size": "gauge", "gauge & size": "gauge",
	"finished": "finished size", "finished size": "finished size", "finished measurements": "finished size", "measurements": "finished size", "measures": "finished size",
	"to fit": "to fit", "to fit bust": "to fit", "to fit chest": "to fit", "to fit head": "to fit",
	"notions": "notions", "you will also need": "notions", "you'll also need": "notions", "also needed": "notions", "also required": "notions",
	"also": "notions", "other": "notions", "others": "notions", "other materials": "notions", "other supplies": "notions", "extras": "notions", "sundries": "notions",
	"accessories": "notions", "bits and bobs": "notions", "odds and ends": "notions", "requirements": "materials",
	"materials": "materials", "you will need": "materials", "what you need": "materials", "what you will need": "materials", "what i used": "materials", "i used": "materials", "what you'll need": "materials",
	"you'll need": "materials", "you need": "materials", "what to buy": "materials", "you will want": "materials", "to gather": "materials", "wool and tools": "materials", "yarn and tools": "materials", "what you use": "materials", "you use": "materials", "things you need": "materials", "things needed": "materials", "what is needed": "materials", "supplies": "materials", "supplies needed": "materials", "materials needed": "materials",
	"material": "materials", "need": "materials", "the bits and bobs": "materials", "gather": "materials", "shopping list": "materials",
	"tools and materials": "materials", "materials and tools": "materials", "tools": "notions", "equipment": "notions", "haberdashery": "notions",
	"skill level": "skill level", "level": "skill level", "difficulty": "skill level",
	"stitch multiple": "stitch multiple", "multiple": "stitch multiple", "pattern multiple": "stitch multiple",
	"turning chains": "turning chains", "turning chain": "turning chains",
	"abbreviations": "abbreviations", "abbreviations and terms": "abbreviations", "terms and abbreviations": "abbreviations",
	"abbreviations and stitches": "abbreviations", "stitches and abbreviations": "abbreviations", "stitches used": "abbreviations", "abbreviations used": "abbreviations", "stitches": "abbreviations", "stitch key": "abbreviations",
	"short words": "abbreviations", "short forms": "abbreviations", "shortened words": "abbreviations", "what i've shortened": "abbreviations", "short for": "abbreviations",
	"key to abbreviations": "abbreviations", "shorthand": "abbreviations", "glossary": "abbreviations",
	"special stitches": "special stitches", "special stitch": "special stitches", "stitch guide": "special stitches",
	"special abbreviations": "special stitches", "special words": "special stitches", "special terms": "special stitches", "special parts": "special stitches", "the parts": "special stitches",
	"small parts": "special stitches", "little parts": "special stitches", "elements": "special stitches",
	"know first": "notes", "good to know": "notes", "worth knowing": "notes", "things worth knowing": "notes", "before you begin": "notes", "before you start": "notes", "before starting": "notes",
	"read first": "notes", "read this first": "notes", "notes": "notes", "note": "notes", "pattern notes": "notes", "tips": "notes", "tip": "notes", "hint": "notes", "remember": "notes",
	"designer": "designer", "design": "designer", "by": "designer",
	"version": "version", "date": "version", "copyright": "version",
	"swatch": "swatch", "for": "for", "age": "for", "ease": "ease", "fit": "ease", "stuffing": "notions", "eyes": "notions",
	"needed": "materials", "you'll want": "materials", "material list": "materials", "list of materials": "materials",
	"tally": "notes", "the tally": "notes", "final count": "notes", "last count": "notes", "checklist": "notes",
	"ingredients": "materials", "on the table": "materials", "wanted": "materials", "what to gather": "materials", "have ready": "materials", "what to have ready": "materials",
	"abbr": "abbreviations", "abbrevs": "abbreviations", "abbrev": "abbreviations", "words": "abbreviations", "key": "abbreviations",
	"words used": "abbreviations", "stitch list": "abbreviations", "stitch words": "abbreviations", "stitch abbreviations": "abbreviations",
	"crochet sample": "gauge", "sample": "gauge", "measure": "finished size", "dimensions": "finished size", "finished dimensions": "finished size",
	"general": "notes", "general notes": "notes", "before start": "notes", "please read first": "notes",
	"how it works": "notes", "about the pattern": "notes", "a few notes": "notes", "some notes": "notes",
	"made for": "for", "safety": "notes", "caution": "notes", "warning": "notes", "please note": "notes", "care": "notes", "construction": "notes",
}

// mostKeyWords is the most words that a key has: `you will also need`, and a yarn with
// its name.
const mostKeyWords = 5

var sections = map[string]bool{
	"abbreviations": true, "special stitches": true, "notes": true, "materials": true, "notions": true, "gauge": true, "yarn": true,
	"finished size": true, "sizes": true, "hook": true, bothMeasures: true,
}

// supplies are the sections that list what is needed.
var supplies = map[string]bool{"materials": true, "notions": true, "yarn": true}

// bothMeasures is the section of a heading such as `Gauge and size`, where each line tells
// which of the two it gives.
const bothMeasures = "gauge and finished size"

// headMarks are the marks of a heading, and keyMarks those of a list or a table too.
const (
	headMarks = " \t*#_-–—•~=<>:"
	keyMarks  = headMarks + "|"
)

// trimKey is a key without the marks of a list or a heading.
func trimKey(key string) string { return strings.Trim(key, keyMarks) }

// readField reads `Key: value`, `Yarn A: …`. The line begins at offset at.
func readField(line string, at int) (*Field, bool) {
	key, value, found := cutKey(line)
	trimmed := trimKey(key)
	if !found || len(trimmed) > 40 {
		return nil, false
	}
	canonical, name := headerKey(trimmed)
	if canonical == "" && headsList(trimmed, value) {
		canonical = "abbreviations" // whatever it is called
	}
	if canonical == "" || worksTip(trimmed, value) {
		return nil, false
	}
	return fieldOf(line, at, canonical, name), true
}

// worksTip tells the tip of a leaf from one for the maker: `Tip: 3 sc in last ch.`
func worksTip(key, value string) bool {
	if !strings.EqualFold(key, "tip") {
		return false
	}
	tokens := Lex(firstWords(strings.TrimFunc(value, isBlank)), Standard())
	if len(tokens) < 2 {
		return false
	}
	if tokens[0].Kind == Word && tokens[0].Canon == "work" {
		tokens = tokens[1:]
	}
	if len(tokens) < 2 {
		return false
	}
	first := tokens[0]
	if first.Kind == Number || first.Kind == Open {
		first = tokens[1]
	}
	return (first.Kind == Stitch || first.Kind == Word && first.Canon == "ch") && readsAsWork(value)
}

// cutKey parts the key of a field from its value: between the cells of a table, behind
// square brackets around it, at a colon, or where dots, blanks or a dash lead from one to the other: `Hook ..... 4 mm`, `Hook - 4 mm`.
func cutKey(line string) (key, value string, found bool) {
	if trimmed := strings.TrimFunc(line, isBlank); tableRow(trimmed) {
		key, value, found = strings.Cut(trimmed[1:], "|")
		return key, value, found && strings.Trim(value, " \t|-:") != ""
	}
	if m := squareKey.FindStringSubmatchIndex(line); m != nil {
		return line[m[2]:m[3]], line[m[1]:], m[1] < len(line)
	}
	if at := boldKey.FindStringIndex(line); at != nil && known(line[:at[0]]) {
		return line[:at[0]], line[at[1]:], true
	}
	if key, value, found = strings.Cut(line, ":"); found && !strings.Contains(key, "...") && !inColumns(line, len(key)) {
		return key, value, true
	}
	for _, lead := range [...]*phrase.Phrase{dotsLead, columns, dashLead} {
		at := lead.FindStringIndex(line)
		if at == nil {
			continue
		}
		if known(line[:at[0]]) {
			return line[:at[0]], line[at[1]:], true
		}
	}
	return key, value, found
}

// known tells a key of the header by itself, or a measure.
func known(key string) bool {
	canonical, name := headerKey(trimKey(key))
	return canonical != "" && name == "" || IsMeasure(trimKey(key))
}

// inColumns tells whether a line is set in columns before an offset, with a key in the first.
func inColumns(line string, before int) bool {
	at := columns.FindStringIndex(line)
	return at != nil && at[0] < before && known(line[:at[0]])
}

// dotsLead are the dots of a list that is set in two columns.
var dotsLead = phrase.MustCompile(` ?\.{3,} ?`)

// boldKey ends a key in bold with its stop: `**Yarn.** DK cotton, …`.
var boldKey = phrase.MustCompile(`\.\*\* `)

// dashLead is a dash between a key and its value.
var dashLead = phrase.MustCompile(` [-–—]+(?: |$)`)

// fieldOf makes the field of a line `Key: value` that begins at offset at. It
// outlives the text of the file, and so keeps its own words.
func fieldOf(line string, at int, canonical, name string) *Field {
	key, value, _ := cutKey(line)
	trimmed := trimKey(key)
	keyAt := at + strings.Index(line, trimmed)
	valueText := strings.Trim(value, " \t*")
	if tableRow(strings.TrimFunc(line, isBlank)) {
		valueText = strings.Trim(value, " \t*|")
	}
	end := at + len(strings.TrimRight(line, " \t"))
	valueAt := at + strings.LastIndex(line, value)
	if valueText != "" {
		valueAt += strings.Index(value, valueText)
	}
	valueAt = min(valueAt, end) // of a key with blanks behind it and no more
	return &Field{
		Key: strings.Clone(canonical), Name: strings.Clone(name), Value: strings.Clone(valueText),
		Span:      source.Span{Start: at, End: end},
		KeySpan:   source.Span{Start: keyAt, End: keyAt + len(trimmed)},
		ValueSpan: source.Span{Start: valueAt, End: valueAt + len(valueText)},
	}
}

// headerKey gives the canonical key, and the name in a key such as `Yarn A`.
func headerKey(key string) (canonical, name string) {
	fields := strings.Fields(strings.ReplaceAll(key, "’", "'"))
	if len(fields) > mostKeyWords {
		return "", ""
	}
	if c := headerKeys[strings.ToLower(strings.Join(fields, " "))]; c != "" {
		return c, ""
	}
	if len(fields) < 2 {
		return "", ""
	}
	if c := severalKeys(fields); c != "" {
		return c, ""
	}
	switch first := strings.ToLower(fields[0]); first {
	case "yarn", "colour", "color", "hook":
		return headerKeys[first], strings.Join(fields[1:], " ")
	case "finished", "actual":
		if rest := strings.Join(fields[1:], " "); IsMeasure(rest) {
			return "finished size", rest
		}
	}
	return "", ""
}

// severalKeys gives the section that several keys head together: `Yarn & hook`, `TENSION + SIZE`.
func severalKeys(fields []string) string {
	var keys []string
	for part := range strings.SplitSeq(strings.ToLower(strings.Join(fields, " ")), joinsKeys(fields)) {
		keys = append(keys, headerKeys[part])
	}
	switch {
	case len(keys) < 2 || slices.ContainsFunc(keys, func(key string) bool { return !sections[key] }):
		return ""
	case slices.Contains(keys, "gauge") && (slices.Contains(keys, "sizes") || slices.Contains(keys, "finished size")):
		return bothMeasures
	case supplies[keys[0]] || supplies[keys[1]]:
		return "materials"
	}
	return keys[0]
}

// joinsKeys is what stands between the words of keys to join them.
func joinsKeys(fields []string) string {
	for _, and := range [...]string{"&", "+", "/"} {
		if slices.Contains(fields, and) {
			return " " + and + " "
		}
	}
	return " and "
}

// measureWord is what a measure of a piece is called: `sole length`.
var measureWord = phrase.MustCompile(`(?i)\b(?:length|width|height|depth|circumference|diameter|bust|chest|around|wide|long|tall|deep|edge|panel)$|` +
	`^(?:length|width|height|depth|circumference|diameter)\b`)

// IsMeasure tells whether the key of a header field is a measure of a piece, in the words
// of the pattern.
func IsMeasure(key string) bool { return measureWord.MatchString(key) }

// givesValue tells whether a line below a heading is what the heading says, as far as that
// is a figure.
func givesValue(section, line string) bool {
	switch section {
	case "gauge", "finished size", bothMeasures:
		return len(FindLengths(line)) > 0
	case "sizes":
		return (sizeLetters.MatchString(line) || onlySizes.MatchString(line)) && sizeNames(line) != nil || measured.MatchString(line)
	case "hook":
		return hookSaid.MatchString(line)
	}
	return false
}

// givesGauge tells a line that says what goes to a length: `With larger hook, 16 hdc and 12 rows
// = 4 in.`
func givesGauge(line string) bool {
	g := ParseGauge(line)
	return strings.Contains(line, "=") && g.Length > 0 && (g.Stitches > 0 || g.Rows > 0)
}

// hookSaid takes the size of a hook: `5 mm`, `US G-6`, `steel 7`.
var hookSaid = phrase.MustCompile(`\d ?-?mm\b|\b(?:US|UK|(?i:size|steel)) ?[A-Z\d]|\b[B-Z][-/]\d`)

// bareField takes a line that gives no more than a value, below the heading that is its
// key. A gauge may have a line for its stitches and one for its rows.
func (d *document) bareField(line string, span source.Span) {
	if n := len(d.file.Header); n > 0 && d.section == "gauge" {
		if above := d.file.Header[n-1]; above.Key == "gauge" && above.KeySpan.Len() == 0 && d.adjoins(above.Span.End, span.Start) {
			d.extendField(span)
			return
		}
	}
	key := d.section
	if key == bothMeasures {
		key = "finished size"
		if g := ParseGauge(line); g.Stitches > 0 || g.Rows > 0 {
			key = "gauge"
		}
	}
	value := trimKey(line)
	from := span.Start + strings.Index(line, value)
	d.file.Header = append(d.file.Header, &Field{
		Key: key, Value: strings.Clone(value),
		Span:      source.Span{Start: span.Start, End: span.Start + len(strings.TrimRight(line, " \t"))},
		KeySpan:   source.At(from),
		ValueSpan: source.Span{Start: from, End: from + len(value)},
	})
	if d.section == "hook" {
		d.section = "" // one line says it
	}
}
