package syntax

import (
	"fmt"
	"slices"
	"strings"

	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
)

// Work that only some sizes have: `Size L only: Row 3: …`, `Rows 5 and 6 (sizes M and L
// only): …`, or a line of its own before all that it holds for.

// onlyWords are what may stand beside the names of sizes where some are picked.
var onlyWords = map[string]bool{"for": true, "the": true, "in": true, "size": true, "sizes": true, "only": true, "and": true, "&": true, "or": true}

// sizeLine tells a line of its own that says for which sizes the next ones hold. What
// the sizes are called is not known yet where lines are sorted.
var sizeLine = phrase.MustCompile(`(?i)^[*_#\- ]*(?:for |in )?(?:the )?(?:(?:all|both|every) sizes?|sizes? [^.:;=]{1,40}? only|[^.:;=]{1,40}? sizes? only|` + sizeWord + `(?:(?:, | and |, and | & |/| )` + sizeWord + `)* only)[*_ ]*(?:[:.]|[-–—])?[*_ ]*$`)

// sizeWord is what is a size by itself, whatever a pattern has.
const sizeWord = `(?:(?:(?:extra|x)[- ])?(?:small|medium|large)|[2-6]?X{0,3}[SL]|M|[1-6]X|newborn|baby|toddler|child|teen|adult|woman|man|women|men)`

// sizeLead takes such words before a colon or dash, or in brackets within a label.
var (
	sizeLead  = phrase.MustCompile(`(?i)^[*_ ]*((?:for |in )?(?:the )?(?:(?:all|both|every) sizes?|sizes? [^.:;,()]{1,40}|sizes? [^.:;]{1,40}? only|[^.:;]{1,40}? only))[*_ ]*(?:[:;—–]| - )[*_ ]*`)
	sizeInner = phrase.MustCompile(`(?i)^[^:.;]{1,30}[(\[]([^()\[\]:;]{1,40} only)[)\]]\s*[:.]`)
	// sizeBehind takes them behind a row's number: `Rnd 6, Adult sizes:`.
	sizeBehind = phrase.MustCompile(`^[^:.;,()]{1,20}\d, (\pL[^:.;()]{0,40}):`)
	// sizeBeside takes them in brackets behind it, without a word for sizes: `Rnd 7 (M and L) –`.
	sizeBeside = phrase.MustCompile(`^[^:.;,()]{1,20}\d ?\(([^()\[\]:;]{1,40})\) ?[:.–—-]`)
)

// picked gives the sizes, by index, that the words before an instruction, or in its
// label, pick, how many bytes those before it take, and where they end. all is set where
// they are all sizes; ok where any are picked.
func picked(text string, names []string) (only []int, length, end int, ok bool) {
	if len(names) < 2 {
		return nil, 0, 0, false
	}
	if m := sizeLead.FindStringSubmatch(text); m != nil {
		if only, ok := namedSizes(m[1], names); ok {
			return only, len(m[0]), len(m[0]), true
		}
	}
	for _, way := range [...]*phrase.Phrase{sizeInner, sizeBehind, sizeBeside} {
		if m := way.FindStringSubmatchIndex(text); m != nil {
			only, ok := namedSizes(text[m[2]:m[3]], names)
			return only, 0, m[3], ok && only != nil
		}
	}
	return nil, 0, 0, false
}

// namedSizes reads which sizes some words name: nil for all of them. It is false where
// any word is no name of a size.
func namedSizes(text string, names []string) (only []int, ok bool) {
	words := strings.FieldsFunc(joinedSize.Replace(strings.ToLower(text)), func(r rune) bool { return strings.ContainsRune(" ,/()[]{}.:*_", r) })
	words = slices.DeleteFunc(words, func(w string) bool { return onlyWords[w] })
	if bare := withoutAge(names); bare != nil {
		names, words = bare, slices.DeleteFunc(words, ageWord.MatchString)
	}
	if len(words) == 1 && (words[0] == "all" || words[0] == "both" || words[0] == "every") {
		return nil, true
	}
	for len(words) > 0 {
		i, n := oneSize(words, names)
		if n == 0 {
			alike := sizesBeginning(words[0], names)
			if len(alike) == 0 {
				return nil, false
			}
			only, words = append(only, alike...), words[1:]
			continue
		}
		only, words = append(only, i), words[n:]
	}
	slices.Sort(only)
	only = slices.Compact(only)
	return only, len(only) > 0
}

// withoutAge are the names of sizes that are all ages given in one word, without that: the
// `3-6` of `Sizes 3-6 and 6-12 months`. It is nil for others.
func withoutAge(names []string) []string {
	out, unit := make([]string, len(names)), ""
	for i, name := range names {
		fields := strings.Fields(strings.ToLower(name))
		last := len(fields) - 1
		if last < 1 || !ageWord.MatchString(fields[last]) || unit != "" && fields[last] != unit {
			return nil
		}
		unit, out[i] = fields[last], strings.Join(fields[:last], " ")
	}
	return out
}

// oneSize finds the size that some words begin with, and how many of them name it.
func oneSize(words, names []string) (index, length int) {
	for i, name := range names {
		spelled := strings.FieldsFunc(joinedSize.Replace(strings.ToLower(name)), func(r rune) bool { return r == ' ' || r == '.' || r == '/' })
		if n := len(spelled); n > length && n <= len(words) && slices.EqualFunc(words[:n], spelled, sameSize) {
			index, length = i, n
		}
	}
	if length > 0 {
		return index, length
	}
	switch words[0] {
	case "smaller", "smallest", "first":
		return 0, 1
	case "larger", "largest", "last":
		return len(names) - 1, 1
	}
	return 0, 0
}

// sizesBeginning are the sizes whose names of several words begin with one: the Adult Small
// and the Adult Large of `Adult sizes`.
func sizesBeginning(word string, names []string) (sizes []int) {
	for i, name := range names {
		if first, _, several := strings.Cut(strings.ToLower(name), " "); several && first == word {
			sizes = append(sizes, i)
		}
	}
	return sizes
}

// sameSize compares two words for a size, one of which may be the letter that it is
// short for.
func sameSize(a, b string) bool { return longSize(a) == longSize(b) }

func longSize(word string) string {
	if long, ok := sizeLetter[word]; ok {
		return long
	}
	return word
}

// joinedSize writes a size of two words as one.
var joinedSize = strings.NewReplacer("extra large", "x-large", "extra-large", "x-large", "x large", "x-large", "extra small", "x-small", "extra-small", "x-small", "x small", "x-small")

// sizeLetter are the letters that sizes go by.
var sizeLetter = map[string]string{
	"s": "small", "m": "medium", "l": "large", "sm": "small", "med": "medium", "lg": "large", "xl": "x-large", "xs": "x-small", "1x": "x-large",
	"xxl": "2x", "2xl": "2x", "2x-large": "2x", "xxxl": "3x", "3xl": "3x", "3x-large": "3x", "4xl": "4x", "4x-large": "4x", "5xl": "5x", "5x-large": "5x",
}

// sizesNamed takes the names between `Sizes … only`, at the beginning of a line.
var sizesNamed = phrase.MustCompile(`(?i)^[*_#\- ]*(?:for |in )?(?:the )?sizes? ([^.:;=()]{1,80}?) only\b`)

// sizesParted is what stands between the names of sizes.
var sizesParted = phrase.MustCompile(`(?i)\s*(?:,\s*(?:and|or)?|\band\b|\bor\b|&)\s*`)

// ownSizeWord takes such a word.
var ownSizeWord = phrase.MustCompile(`(?i)^` + sizeWord + `$`)

// UnknownSizes are where a line picks sizes that the pattern does not have: the XL of
// `Sizes M and XL only:` in a pattern of S, M and L. Words that may mean one of its sizes in
// another way are none.
func UnknownSizes(line string, names []string) []source.Span {
	m := sizesNamed.FindStringSubmatchIndex(line)
	if m == nil || len(names) < 2 {
		return nil
	}
	var unknown []source.Span
	at := m[2]
	for _, sep := range append(sizesParted.FindAllStringIndex(line[m[2]:m[3]], -1), []int{m[3] - m[2], m[3] - m[2]}) {
		name := source.Span{Start: at, End: m[2] + sep[0]}
		at = m[2] + sep[1]
		if _, known := namedSizes(line[name.Start:name.End], names); !known && ownSizeWord.MatchString(line[name.Start:name.End]) {
			unknown = append(unknown, name)
		}
	}
	return unknown
}

// forSizes is the vocabulary for work that only some sizes have, where a list of numbers
// has a value for each of those; for nil that for all.
func (v *Vocabulary) forSizes(only []int) *Vocabulary {
	all := v
	if v.all != nil {
		all = v.all
	}
	if only == nil {
		return all
	}
	return all.some.of(fmt.Sprint(only), func(string) *Vocabulary {
		v := newVocabulary(all.trade, len(only))
		v.own, v.names, v.only, v.all = all.own, all.names, only, all
		return v
	})
}

// lexFor cuts the words of an instruction for those sizes that have it: a list of as
// many numbers gets none for the others.
func lexFor(text string, vocab *Vocabulary) []Token {
	tokens := Lex(text, vocab)
	if vocab.only == nil {
		return tokens
	}
	tokens = slices.Clone(tokens) // others see them
	for i := range tokens {
		if t := &tokens[i]; t.Values.PerSize() && len(t.Values.Vals) == len(vocab.only) {
			t.Values = t.Values.spread(vocab.only, len(vocab.names))
			t.Written = fmt.Sprint(vocab.only)
		}
	}
	return tokens
}

// spread gives a number that has a value for each of some sizes one for all of them.
func (n Num) spread(only []int, sizes int) Num {
	out := Num{Vals: make([]int, sizes)}
	for i := range out.Vals {
		out.Vals[i] = None
	}
	for i, size := range only {
		out.Vals[size] = n.Vals[i]
	}
	return out
}

// sizesOf is a line of its own that says for which sizes the next ones hold.
func (d *document) sizesOf(b *block) {
	d.chapter.say(b.span, nil)
	if only, ok := namedSizes(strings.Trim(d.text(b.span), headingMarks), d.file.Sizes); ok && len(d.file.Sizes) > 1 {
		d.words = d.file.Vocab.forSizes(only)
	}
}

// sizeGoesOn takes the sizes that are done with a part, in a line of its own: `Baby size only: go to Sides.`, `The adult
// size stops here and goes on to the Brim.`, `Stop here for the child size and go to the Brim.`
var (
	sizeGoesOn = phrase.MustCompile(`(?i)^[*_# ]*((?:for )?(?:the )?[^.:;]{1,40}?)[:,]?[*_]* ` + doneHere + `(?:now )?` + onToPart)
	sizeStops  = phrase.MustCompile(`(?i)^[*_# ]*stop here (for [^.:;]{1,40}?)(?:,? and ` + onToPart + `|\.?[*_ ]*$)`)
	sizeIsDone = phrase.MustCompile(`(?i)^[*_# ]*((?:for )?(?:the )?[^.:;]{1,40}?)[:,]?[*_]* (?:stops? here|ends? here|is (?:now )?(?:done|finished|complete)(?: here| now)?)\.?[*_ ]*$`)
)

const (
	doneHere = `(?:(?:stops? here|leaves? the [a-z]+ here|(?:is|are) (?:now )?done(?: with the [a-z]+)?|the [a-z]+ is done)(?:[,;.]|,? and)? (?:then )?)?`
	onToPart = `(?:goe?s?|skips?|jumps?|moves?|proceeds?|continues?)(?: on| straight| ahead| directly| now)* to (?:the )?[*_]*\pL[^.:;\d]{0,30}\.?[*_ ]*$`
)

// sizesLeave takes such a line, below the rows that those sizes have: what follows up to the next heading is for the
// others.
func (d *document) sizesLeave(b *block) bool {
	if len(d.file.Sizes) < 2 || !d.chapter.begun() {
		return false
	}
	said := strings.TrimFunc(d.text(b.span), isBlank)
	if first, rest, more := strings.Cut(said, ". "); more {
		if others, _, named := strings.Cut(rest, ":"); named && sizesOfThing(others, d.file.Sizes) != nil {
			said = first // `Small: go on to the wall. Large: two more.`
		}
	}
	var gone []int
	for _, leaves := range []*phrase.Phrase{sizeStops, sizeGoesOn, sizeIsDone} {
		if m := leaves.FindStringSubmatch(said); m != nil {
			gone = sizesOfThing(m[1], d.file.Sizes)
			break
		}
	}
	if gone == nil {
		return false
	}
	var stay []int
	for size := range d.file.Sizes {
		if (d.words.only == nil || slices.Contains(d.words.only, size)) && !slices.Contains(gone, size) {
			stay = append(stay, size)
		}
	}
	if len(stay) == 0 {
		return false
	}
	d.chapter.say(b.span, nil)
	d.words = d.file.Vocab.forSizes(stay)
	return true
}

// sizesOfThing reads which sizes some words name, with or without the thing that has them: `for the small`, `the medium
// hat`. It is nil for other words, and for all sizes.
func sizesOfThing(words string, names []string) []int {
	if only, ok := namedSizes(words, names); ok {
		return only
	}
	only, _ := namedSizes(words[:max(0, strings.LastIndexByte(words, ' '))], names)
	return only
}

// headingMarks may stand round what a heading says.
const headingMarks = "#*_-=: \t\r\n"

// headsSizes tells a heading, block i, that names nothing but sizes: the rows below it go on with
// the piece above, in those alone. What begins with a first row is a piece for a size.
func (d *document) headsSizes(i int) bool {
	if n := len(d.chapter.pieces); len(d.file.Sizes) < 2 || n == 0 || len(d.chapter.pieces[n-1].Rows) == 0 {
		return false
	}
	if only, ok := namedSizes(strings.Trim(d.text(d.blocks[i].span), headingMarks), d.file.Sizes); !ok || only == nil {
		return false
	}
	if i+1 >= len(d.blocks) || d.blocks[i+1].kind != blockText {
		return false
	}
	label, found := labelOf(strings.TrimSpace(d.text(d.blocks[i+1].span)))
	return found && label.Kind == Numbered && label.First(0) > 1
}

// leadClause is the remark that words before the label of an instruction are.
func leadClause(tokens []Token, length int) (clause []Clause, n int) {
	for n < len(tokens) && tokens[n].Span.Start < length {
		n++
	}
	if n == 0 {
		return nil, 0
	}
	return []Clause{{Span: source.Span{Start: tokens[0].Span.Start, End: tokens[n-1].Span.End}, Sep: SepStop, Node: &Remark{}}}, n
}

// HasSize tells whether the instruction is worked in a size.
func (r *Instruction) HasSize(size int) bool { return r.Only == nil || slices.Contains(r.Only, size) }

// sizesOnly are the tokens of an instruction with those up to an offset, which pick sizes, as
// names: the L of `Size L only` is no stitch.
func sizesOnly(tokens []Token, end int) []Token {
	tokens = slices.Clone(tokens) // others see them
	for i := range tokens {
		if tokens[i].Kind == Stitch && tokens[i].Span.Start < end {
			tokens[i].Kind, tokens[i].Stitch = Name, stitch.Meaning{}
		}
	}
	return tokens
}
