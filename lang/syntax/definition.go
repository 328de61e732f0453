package syntax

import (
	"iter"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
)

// definition takes `sc = single crochet` and, before the first row, `Fan:
// (3 dc in next st)` wherever they stand.
func (d *document) definition(trimmed string, span source.Span) bool {
	if d.started || labelled(trimmed) {
		return false
	}
	return d.defined(trimmed, span, false)
}

// definitionMarks separate a word from its meaning.
var definitionMarks = [...]string{" = ", "=", ": ", " – ", " — ", " - ", " … ", " → ", " : "}

// inList tells a line that stands in a list of definitions and defines no word
// itself: `* * = repeat to the end`, `3x – three single crochets`.
func (d *document) inList(trimmed string, span source.Span) bool {
	b := d.last()
	if b == nil || b.kind != blockDefinition && !b.listed || !d.adjoins(b.span.End, span.Start) || labelled(trimmed) {
		return false
	}
	if word, meaning, found := strings.Cut(trimmed, " "); found && !d.started && shapingWord(word) && meaning[:1] >= "0" && meaning[:1] <= "9" {
		at := span.Start + strings.Index(d.text(span), trimmed)
		end := at + len(trimmed)
		d.add(block{ // `inc 2 dc in one st`
			kind: blockDefinition, span: source.Span{Start: at, End: end}, names: []string{word},
			nameSpan: source.Span{Start: at, End: at + len(word)}, body: source.Span{Start: end - len(meaning), End: end},
		})
		return true
	}
	for _, mark := range definitionMarks {
		if name, _, found := strings.Cut(trimmed, mark); found && strings.TrimSpace(mark) != ":" && len(Lex(name, Standard())) <= maxNamed {
			d.add(block{kind: blockProse, span: span, listed: true})
			return true
		}
	}
	return false
}

// shapingWord tells the name of an increase or a decrease.
func shapingWord(word string) bool {
	tokens := Lex(word, Standard())
	return len(tokens) == 1 && tokens[0].Kind == Stitch && shapes(tokens[0].Stitch)
}

// defined reads `name mark meaning`.
func (d *document) defined(trimmed string, span source.Span, special bool) bool {
	line := d.file.Text.Slice(span)
	at := span.Start + strings.Index(line, trimmed)
	for _, mark := range definitionMarks {
		name, meaning, found := strings.Cut(trimmed, mark)
		if !found || strings.TrimSpace(meaning) == "" {
			continue
		}
		names := definedNames(name)
		if len(names) == 0 {
			continue
		}
		if !special && definesSeveral(trimmed) {
			meaning, _, _ = strings.Cut(meaning, ";") // the first of them tells
		}
		known := knownWord(names[0])
		if strings.TrimSpace(mark) == ":" && known && !special && !knownStitch(names[0]) && strings.ContainsAny(meaning, "0123456789") && readsAsWork(meaning) {
			continue // `Foundation: ch 35`
		}
		if known && !special && d.section == "" && strings.TrimSpace(mark) == ":" && !spellsOut(names[0], meaning) {
			continue // `Above: the leaf before blocking`
		}
		if !special && (hasSizes(meaning) || strings.TrimSpace(mark) == ":" && inCapitals(name) && opensWork(meaning)) {
			continue // `SLEEVES: 36 (39, 42) ch`, `BORDER: With A, …`
		}
		if !special && !known && (mark == ": " || mark == " : ") && !readsAsWork(meaning) {
			continue
		}
		if !special && !known && strings.TrimSpace(mark) != "=" && !readsAsWork(meaning) {
			continue
		}
		bodyAt := at + len(name) + len(mark)
		d.add(block{
			kind: blockDefinition, span: source.Span{Start: at, End: span.End}, names: names,
			nameSpan: source.Span{Start: at, End: at + len(strings.TrimRight(name, " "))},
			body:     source.Span{Start: bodyAt, End: at + len(trimmed)},
			special:  special || !known || varies(names[0]) && strings.ContainsAny(meaning, "0123456789") && readsAsWork(meaning),
		})
		return true
	}
	if _, _, full := cutBeforeFull(trimmed); full || d.section == "abbreviations" {
		return d.inFull(trimmed, at)
	}
	return false
}

// inFull takes an entry of a list of abbreviations that has no mark before what the word
// is short for, or a line of several.
func (d *document) inFull(trimmed string, at int) bool {
	first := trimmed
	if definesSeveral(trimmed) {
		for part := range cutAtSeparators(trimmed) {
			first = trimmed[part.Start:part.End]
			break
		}
	}
	name, meaning, found := cutAtMark(first)
	names := definedNames(name)
	if !found || len(names) == 0 {
		return false
	}
	start := at + strings.Index(trimmed, name)
	body := start + len(name) + strings.Index(first[strings.Index(first, name)+len(name):], meaning)
	d.add(block{
		kind: blockDefinition, span: source.Span{Start: at, End: at + len(trimmed)}, names: names[:1],
		nameSpan: source.Span{Start: start, End: start + len(name)},
		body:     source.Span{Start: body, End: body + len(meaning)},
	})
	return true
}

// definedNames splits `Picot stitch (pst)` and `Hip (a bobble)` into the
// words that are defined.
func definedNames(s string) []string {
	name, rest, found := strings.Cut(s, "(")
	name = strings.Trim(name, " *•-_")
	if strings.Count(s, "(") > strings.Count(s, ")") {
		return nil // the mark stands in brackets: `Make 50 (54: 58)`
	}
	if name == "" || amounts(name) || len(strings.Fields(name)) > 4 || len(name) > 32 || strings.ContainsAny(name, ",.;*[") {
		return nil
	}
	out := []string{name}
	if found {
		inner := strings.Trim(rest, " )*")
		if inner != "" && len(strings.Fields(inner)) <= 2 && !strings.ContainsAny(inner, ",;") && !strings.EqualFold(inner, "counts") {
			out = append(out, inner)
		}
	}
	return out
}

// amounts tells `3x`, `15 squares` and `Rnds 1-3`, which no word is defined by.
func amounts(name string) bool {
	tokens := Lex(name, Standard())
	return len(tokens) == 2 && tokens[0].Kind == Number && tokens[1].Kind != Stitch ||
		len(tokens) > 1 && tokens[1].Kind == Number && (tokens[0].Canon == "row" || tokens[0].Canon == "rnd")
}

// spellsOut tells whether a meaning is the word itself in full: `rep: repeat`.
func spellsOut(name, meaning string) bool {
	word := Lex(name, Standard())[0]
	return word.Kind == Stitch || slices.ContainsFunc(Lex(meaning, Standard()), func(t Token) bool { return t.Kind == Word && t.Canon == word.Canon })
}

// opensWork tells an instruction that says first where or with what it is worked.
func opensWork(meaning string) bool {
	tokens := Lex(firstWords(meaning), Standard())
	return len(tokens) > 0 && (openers[tokens[0].Canon] || tokens[0].Canon == "join")
}

// explains tells whether the words after a stitch's name only say what it is:
// `increase, 2 in 1`.
func explains(tokens []Token) bool {
	return len(tokens) > 1 && tokens[1].Kind == Comma && !slices.ContainsFunc(tokens, func(t Token) bool {
		return t.Kind == Stitch && t.Stitch != tokens[0].Stitch || t.Canon == "ch"
	})
}

// hasSizes tells whether some number is given for each size.
func hasSizes(s string) bool {
	return slices.ContainsFunc(Lex(s, Standard()), func(t Token) bool { return t.Kind == Number && t.Values.PerSize() })
}

// knownWord tells a word of the trade. A single capital and the many words for a
// counted thing (block, petal) are a pattern's own to define.
func knownWord(name string) bool {
	tokens := Lex(name, Standard())
	return len(tokens) == 1 && tokens[0].Kind != Name && tokens[0].Canon != "group" && (len(name) > 1 || name != strings.ToUpper(name))
}

func knownStitch(name string) bool {
	tokens := Lex(name, Standard())
	return len(tokens) == 1 && tokens[0].Kind == Stitch
}

// varies tells a name that every pattern gives to something else of its own:
// shell, fan, bobble.
func varies(name string) bool {
	tokens := Lex(name, Standard())
	if len(tokens) != 1 || tokens[0].Kind != Stitch {
		return false
	}
	k := tokens[0].Stitch.In(stitch.Unsettled)
	return k != nil && (k.Class == stitch.Group || k.Class == stitch.Texture)
}

func readsAsWork(meaning string) bool {
	list, _ := build(settled(Lex(meaning, Standard()), 0))
	for _, c := range list {
		switch n := c.Node.(type) {
		case *Work, *Group, *Repeat, *Chain, *Skip:
			return true
		case *Bracket:
			return !unread(n.Body)
		}
	}
	return false
}

// listed reads the definitions of a list in one paragraph: `ch = chain, tr =
// treble`, `ch: chain; inc: 2 in one, of any stitch`. What has no mark of its own
// goes on with the meaning before it.
func (d *document) listed(span source.Span) {
	var last *Definition
	for part := range cutAtSeparators(d.text(span)) {
		at := part.Shift(span.Start)
		text := d.text(at)
		name, meaning, found := cutAtMark(text)
		names := definedNames(name)
		if !found || len(names) == 0 || !unicode.IsLetter(firstRune(names[0])) {
			if last != nil && strings.TrimFunc(text, isBlank) != "" {
				last.Span.End = at.Start + len(strings.TrimRightFunc(text, isBlank))
				last.Text = strings.TrimFunc(d.text(source.Span{Start: last.NameSpan.End, End: last.Span.End}), isMark)
			}
			continue
		}
		start := at.Start + len(text) - len(strings.TrimLeftFunc(text, isBlank))
		last = &Definition{
			Names: names, Text: strings.TrimFunc(meaning, isBlank), Listed: true,
			Span:     source.Span{Start: start, End: at.Start + len(strings.TrimRightFunc(text, isBlank))},
			NameSpan: source.Span{Start: start, End: start + len(strings.TrimFunc(name, isBlank))},
		}
		d.file.Definitions = append(d.file.Definitions, last)
	}
}

// cutAtSeparators gives what stands between the commas, semicolons and raised dots of a
// text that are not in brackets.
func cutAtSeparators(text string) iter.Seq[source.Span] {
	return func(yield func(source.Span) bool) {
		start, depth := 0, 0
		for i, r := range text {
			switch punctuation(r) {
			case Open:
				depth++
			case Close:
				depth--
			case Comma, Semi, Sign:
				if depth > 0 || punctuation(r) == Sign && r != '·' {
					continue
				}
				if !yield(source.Span{Start: start, End: i}) {
					return
				}
				start = i + utf8.RuneLen(r)
			}
		}
		yield(source.Span{Start: start, End: len(text)})
	}
}

// cutAtMark parts a word from its meaning, neither of them empty. Where no mark stands
// between them, what the word is short for tells where it ends.
func cutAtMark(text string) (name, meaning string, found bool) {
	for _, mark := range definitionMarks {
		name, meaning, found = strings.Cut(text, mark)
		if name = strings.TrimFunc(name, isBlank); found && name != "" && strings.TrimFunc(meaning, isBlank) != "" {
			return name, meaning, true
		}
	}
	return cutBeforeFull(text)
}

// cutBeforeFull parts a word from the same in full that stands right behind it: `sl st
// slip stitch`, `sp(s) space(s)`.
func cutBeforeFull(text string) (name, meaning string, found bool) {
	trimmed := strings.TrimFunc(text, isBlank)
	if tableRow(trimmed) {
		if cells := cellsOf(trimmed); len(cells) == 2 && sameWord(cells[0], cells[1]) {
			return cells[0], cells[1], true
		}
		return "", "", false
	}
	for i, r := range trimmed {
		if r != ' ' && r != '\t' {
			continue
		}
		if name, meaning := trimmed[:i], trimmed[i+1:]; sameWord(name, meaning) {
			return name, meaning, true
		}
	}
	return "", "", false
}

// sameWord tells whether two spellings are one word of the trade, in the singular or with
// the ending of the plural behind it in brackets.
func sameWord(a, b string) bool {
	short, full := Lex(pluralEnding.Replace(a), Standard()), Lex(pluralEnding.Replace(b), Standard())
	if len(short) != 1 || len(full) != 1 || short[0].Kind != full[0].Kind {
		return false
	}
	one, other := short[0], full[0]
	if one.Kind == Stitch {
		return one.Stitch.US != nil && one.Stitch.US == other.Stitch.US || one.Stitch.UK != nil && one.Stitch.UK == other.Stitch.UK
	}
	return one.Kind == Word && one.Canon != "" && one.Canon == other.Canon
}

var pluralEnding = strings.NewReplacer("(s)", "", "(es)", "")

// isMark tells what parts a word from its meaning.
func isMark(r rune) bool {
	return isBlank(r) || r == '=' || r == '→' || punctuation(r) == Colon || punctuation(r) == Dash
}

// inFields finds the words that a sentence of a field defines: `Gauge: … V =
// (dc, ch 1, dc) in one place.`
func (d *document) inFields() {
	for _, f := range d.file.Header {
		at := f.ValueSpan.Start
		for sentence := range strings.SplitAfterSeq(d.text(f.ValueSpan), ". ") {
			name, meaning, found := strings.Cut(sentence, " = ")
			if names := definedNames(strings.TrimSpace(name)); found && len(names) == 1 && strings.HasPrefix(meaning, "(") && !knownWord(names[0]) && readsAsWork(meaning) {
				d.inField = append(d.inField, block{
					kind: blockDefinition, names: names, special: true, listed: true,
					span:     source.Span{Start: at, End: at + len(sentence)},
					nameSpan: source.Span{Start: at, End: at + len(name)},
					body:     source.Span{Start: at + len(name) + len(" = "), End: at + len(sentence)},
				})
			}
			at += len(sentence)
		}
	}
}

// definesSeveral tells a list in one paragraph from a single definition: it has a
// mark behind most of its commas and semicolons, or it is one with `=`, whose meanings
// may have commas of their own.
func definesSeveral(text string) bool {
	parts, marked := 0, 0
	for part := range cutAtSeparators(text) {
		name, _, found := cutAtMark(text[part.Start:part.End])
		if parts++; found && len(definedNames(name)) > 0 {
			marked++
		}
	}
	return marked > 1 && 2*marked > parts || parts > 1 && strings.Count(text, "=") > 1
}

func (d *document) readDefinition(b *block) {
	if !b.special && definesSeveral(d.text(b.span)) {
		d.listed(b.span)
		d.prose(b.span, turningIn(d.text(b.span)))
		return
	}
	def := &Definition{Names: b.names, Span: b.span, NameSpan: b.nameSpan, Text: d.text(b.body), Special: b.special, Listed: b.listed}
	if b.special {
		b.digest = b.digest.in(d.file.Vocab, func(g *digest) { g.parts = []part{{row: d.newRow(b.body).Instruction}} })
		def.Row = &Row{At: b.body.Start, Instruction: b.digest.parts[0].row}
		def.Uses, def.Makes = saidEffect(def.Row.Tokens)
	}
	d.file.Definitions = append(d.file.Definitions, def)
}

// saidEffect reads `uses 1 st, makes 5 dc`.
func saidEffect(tokens []Token) (uses, makes Num) {
	for i := 0; i+1 < len(tokens); i++ {
		if tokens[i+1].Kind != Number {
			continue
		}
		switch {
		case tokens[i].Canon == "uses" || tokens[i].Canon == "use":
			uses = tokens[i+1].Values
		case tokens[i].Canon == "work" && uses.Written():
			makes = tokens[i+1].Values
		}
	}
	return uses, makes
}
