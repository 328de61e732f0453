package syntax

import (
	"slices"
	"strings"
	"unicode"

	"stitchproof/lang/source"
)

// readLabel reads the label at the beginning of tokens and gives the number
// of tokens it takes, 0 for none.
func readLabel(tokens []Token, text string) (Label, int) {
	if len(tokens) > 1 && isArticle(tokens[0]) && tokens[1].Kind == Number && text[tokens[0].Span.Start] == '*' {
		if label, n := readLabel(tokens[1:], text); n > 0 {
			return label, n + 1 // behind the star of a title in bold that its number begins
		}
		return Label{}, 0
	}
	r := labelReader{tokens: tokens, text: text}
	for r.peek().Kind == Sign && (r.peek().Canon == "|" || r.peek().Canon == "#") {
		r.at++ // a table's row, a heading
	}
	r.at += listItem(tokens[r.at:])
	for r.peek().Kind == Star || r.at == 0 && (r.peek().Kind == Dash || r.peek().Kind == Hyphen) {
		r.at++ // bold, italic, or a list's mark
	}
	bold, mark := r.at, ""
	if r.at > 0 && tokens[r.at-1].Kind == Star {
		mark = tokens[r.at-1].Canon
	}
	n := r.read()
	if n == 0 && mark == "**" && bold == 1 {
		r.at = bold
		n = r.boldTitle()
	}
	if n == 0 || ofGauge(tokens[n-1:], text) {
		return Label{}, 0
	}
	if mark != "" && r.peek().Kind == Star && r.peek().Canon == mark && n < len(tokens) {
		r.at++
		n = r.at
	}
	for bold > 0 && n < len(tokens) && (tokens[n].Kind == Colon || tokens[n].Kind == Period || tokens[n].Kind == Dash) {
		n++
	}
	r.label.Loop = loopIn(tokens[bold:r.name])
	r.label.Span = source.Span{Start: tokens[bold].Span.Start, End: tokens[r.name-1].Span.End}
	r.label.Text = text[r.label.Span.Start:r.label.Span.End]
	return r.label, n
}

// ofGauge tells rows of which only the measure is given, from the mark behind them on:
// `Rnds 1-3 = 5 cm across`.
func ofGauge(after []Token, text string) bool {
	return len(after) > 1 && after[0].Canon == "=" && ParseLength(text[after[1].Span.Start:]).At(0) > 0 &&
		!slices.ContainsFunc(after, func(t Token) bool { return t.Kind == Stitch })
}

// loopIn is the loop that a label names for its row.
func loopIn(label []Token) Loop {
	for _, t := range label {
		if loop := loopNamed(t.Canon); t.Kind == Word && loop != BothLoops {
			return loop
		}
	}
	return BothLoops
}

type labelReader struct {
	tokens []Token
	text   string
	at     int
	name   int // where what the row is called ends, before the mark that closes it
	label  Label
}

func (r *labelReader) peek() Token {
	if r.at < len(r.tokens) {
		return r.tokens[r.at]
	}
	return Token{Kind: Enclosed}
}

func (r *labelReader) word(canon ...string) bool {
	t := r.peek()
	for _, c := range canon {
		if t.Kind == Word && t.Canon == c {
			return true
		}
	}
	return false
}

// noun takes `row`, `rnd` or `r`.
func (r *labelReader) noun() bool {
	if !r.word("row", "rnd", "r", "step") {
		return false
	}
	r.label.Round = r.label.Round || r.word("rnd")
	r.label.Step = r.label.Step || r.word("step")
	r.at++
	if r.peek().Kind == Sign && r.peek().Canon == "#" && r.at+1 < len(r.tokens) && r.tokens[r.at+1].Kind == Number {
		r.at++ // Row #5
	}
	if r.peek().Kind == Period && r.at+1 < len(r.tokens) && r.tokens[r.at+1].Kind == Number {
		r.at++ // Rnd. 5
	}
	return true
}

// read takes the whole label.
func (r *labelReader) read() int {
	start := r.at
	for _, form := range []func() int{r.numbered, r.named, r.kindOfRow} {
		if n := form(); n > 0 {
			return n
		}
		r.at, r.label = start, Label{}
	}
	return 0
}

// numbered takes a label that gives a row its place among the others.
func (r *labelReader) numbered() int {
	first := r.peek()
	switch {
	case r.bracketed():
		return r.at
	case r.lettered():
		return r.at
	case r.word("next", "last"):
		return r.next()
	case r.word("foundation", "beg", "base") || first.Kind == Name && (first.Canon == "setup" || first.Canon == "set"):
		return r.setup()
	case r.word("each") || first.Kind == Name && (first.Canon == "all" || first.Canon == "every"):
		return r.every()
	case r.word("row", "rnd", "r", "step"):
		return r.nounFirst()
	case r.ofPart():
		return r.nounFirst()
	case first.Kind == Number || first.Kind == Ordinal:
		return r.numberFirst()
	}
	return 0
}

// namesPart tells a word that may be the name of a part.
func namesPart(t Token) bool {
	return t.Kind == Name || t.Kind == Word && partWords[t.Canon]
}

// bracketed takes the number of a step in brackets: `(1) Stem: ch 10`.
func (r *labelReader) bracketed() bool {
	if r.at > 0 || len(r.tokens) < 4 || r.tokens[0].Kind != Open || r.tokens[1].Kind != Number || r.tokens[2].Kind != Close || r.tokens[1].Values.PerSize() {
		return false
	}
	if after := r.tokens[3]; after.Kind != Name && !beginsAction(after) && after.Kind != Ordinal {
		return false
	}
	r.at = 1
	r.numbers()
	r.label.Kind, r.label.Bare = Numbered, true
	r.at = 3
	r.name = r.at
	return true
}

// lettered takes the number of a step behind the letter of its part: `A1. Ch 6`, `B12) sc in
// next 6 ch`.
func (r *labelReader) lettered() bool {
	at := r.at
	if at+3 >= len(r.tokens) || r.tokens[at].Kind != Name || r.tokens[at].Span.Len() != 1 || r.tokens[at+1].Kind != Number || r.tokens[at+1].Span.Start != r.tokens[at].Span.End {
		return false
	}
	if mark := r.tokens[at+2]; mark.Kind != Period && mark.Kind != Close && mark.Kind != Colon && !(mark.Kind == Sign && mark.Canon == "|") || r.tokens[at+1].Values.PerSize() {
		return false
	}
	r.at++
	r.numbers()
	if r.at != at+2 {
		r.at, r.label = at, Label{}
		return false
	}
	r.name = r.at
	r.at++
	r.label.Kind, r.label.Bare = Numbered, true
	return true
}

// maxNamed is the most words of a label such as `Left front edging:`.
const maxNamed = 4

// leadsOn tells a label that says between which branches it is worked, by their letters: `E to D:`.
func (r *labelReader) leadsOn() bool {
	return r.at+3 < len(r.tokens) && r.tokens[r.at+1].Kind == Word && r.tokens[r.at+1].Canon == "to" && (r.tokens[r.at+2].Kind == Name || r.tokens[r.at+2].Canon == "base") && r.tokens[r.at+3].Kind == Colon
}

// named takes a label that is a name: `Edging:`, `Border (RS):`, `Edge—`.
func (r *labelReader) named() int {
	if t := r.peek(); t.Kind != Name && !(t.Kind == Word && (partWords[t.Canon] || r.word("foundation", "beg", "to", "remaining", "return"))) || len(t.Canon) < 2 && !r.leadsOn() {
		return 0
	}
	first := r.at
	for n := 0; n < maxNamed && (r.peek().Kind == Name || r.peek().Kind == Word || r.peek().Kind == Hyphen); n++ {
		r.at++
	}
	if said := r.tokens[first:r.at]; namesSecondSide(said) || slices.ContainsFunc(said, func(t Token) bool { return t.Kind == Word && t.Canon == "it" }) {
		return 0 // that is where it is worked: `Come back along it: …`
	}
	if r.peek().Kind == Open && !r.remark() || r.at+1 >= len(r.tokens) {
		return 0
	}
	mark := r.peek()
	capital := unicode.IsUpper(firstRune(r.text[r.tokens[first].Span.Start:]))
	limb := r.tokens[first].Written == limbToken
	if mark.Kind != Colon && !(mark.Kind == Dash && capital && r.text[mark.Span.Start] != '-') {
		return 0
	}
	r.label.Kind = Named
	if limb {
		r.label.Limb = r.tokens[first].Canon
	}
	return r.endedBy()
}

// mostInBold is the most tokens of what a step is called in bold.
const mostInBold = 12

// boldTitle takes what a step is called in bold with its stop, behind the stars that begin it: `**Second stretch.**`,
// `**Down arm two a bit.**`
func (r *labelReader) boldTitle() int {
	first := r.at
	for i := first; i+1 < len(r.tokens) && i < first+mostInBold; i++ {
		switch t, next := r.tokens[i], r.tokens[i+1]; {
		case t.Kind == Word && t.Canon == "other side":
			return 0 // that is where it is worked
		case t.Kind == Period && i > first && next.Kind == Star && next.Canon == "**" && next.Span.Start == t.Span.End:
			r.label.Kind, r.name, r.at = Named, i, i+1
			r.label.Homeward = slices.ContainsFunc(r.tokens[first:i], func(t Token) bool { return t.Kind == Name && t.Canon == "home" })
			return r.at
		case t.Kind == Stitch && endsInRow(r.tokens[first:i+2]): // `**Shell row.**`
		case i > first && (t.Kind == Open || t.Kind == Close): // `**First tab, Row 1 (WS).**`
		case t.Kind != Name && t.Kind != Word && t.Kind != Ordinal && t.Kind != Hyphen && t.Kind != Number && t.Kind != Comma:
			return 0
		}
	}
	return 0
}

// kindOfRow takes a label that says what kind of row it is: `Decrease row:`,
// `Third-to-last row:`, `Joining round –`, `Bobble rnd 2:`.
func (r *labelReader) kindOfRow() int {
	if r.word("rep", "work", "as", "to", "from", "in", "with", "row", "rnd") || r.peek().Kind == Number {
		return 0
	}
	for n := 0; n < maxNamed+2; n++ {
		switch r.peek().Kind {
		case Name, Word, Stitch, Ordinal, Hyphen:
			r.at++
		default:
			return 0
		}
		if tells[r.tokens[r.at-1].Canon] {
			return 0
		}
		of := r.tokens[r.at-1]
		if r.noun() {
			r.label.Kind = Named
			if r.peek().Kind == Number && (of.Kind == Stitch || of.Kind == Word && !partWords[of.Canon]) {
				r.at++ // `Bobble rnd 2:`, but not the `Wing Rnd 1:` of a piece
			}
			from := r.tokens[0].Span.Start
			if n := r.end(true); n > 0 && (r.tokens[n-1].Kind == Colon || r.tokens[n-1].Kind == Dash || r.tokens[n-1].Kind == Period && inCapitals(r.text[from:r.tokens[n-1].Span.Start])) {
				return n // `PLAIN ROW.` in capitals
			}
			return 0
		}
	}
	return 0
}

// headingBefore gives the number of tokens of a heading with its colon that may stand before a
// label, as in `Shape neck: Next row: …`, 0 for none. n is how many the label takes that was read.
func headingBefore(label Label, n int, tokens []Token) int {
	switch {
	case label.Kind == Named && label.Limb == "" && tokens[n-1].Kind == Colon:
		return n
	case len(tokens) > 2 && tokens[0].Kind == Word && tokens[0].Canon == "comment" && tokens[1].Kind == Colon:
		return 2
	}
	return 0
}

// headingAfter finds the heading that stands between a label and its
// instruction, as in `Next row: SHAPE NECK: …`, and gives the number of tokens it
// takes. The first token is the last of the label.
func headingAfter(label Label, tokens []Token, text string) int {
	if text[tokens[0].Span.Start] == '|' {
		if title, n := readLabel(tokens[1:], text); title.Limb == "" {
			return n // `| L3 | Quill end: 3 sc in the last ch. |`
		}
		return 0
	}
	if label.Bare && len(tokens) > 2 && tokens[1].Kind == Star && tokens[1].Canon == "**" && tokens[2].Written != limbToken && tokens[2].Written != homeToken && tokens[2].Canon != "branch" {
		r := labelReader{tokens: tokens[2:], text: text}
		if n := r.boldTitle(); n > 0 && !holds(tokens[2:2+n], Stitch) {
			return n + 2 // with its stars: `17. **Side leaf on a stalk.** Ch 10.`
		}
		return 0
	}
	if label.Kind == Named || label.Bare || tokens[0].Kind != Colon && tokens[0].Kind != Dash || len(tokens) > 1 && goesHome(tokens[1]) {
		return 0
	}
	r := labelReader{tokens: tokens[1:], text: text}
	n := r.named()
	if n == 0 {
		return 0
	}
	name := text[tokens[1].Span.Start:tokens[n].Span.Start]
	if !inCapitals(name) && (n < 3 || !unicode.IsUpper(firstRune(name))) {
		return 0
	}
	return n
}

func (r *labelReader) next() int {
	r.at++
	r.label.Kind = NextRow
	if r.peek().Kind == Number {
		r.label.Count = r.peek().Values
		r.at++
	}
	if !r.noun() {
		return 0
	}
	return r.end(false)
}

func (r *labelReader) setup() int {
	if beginsWithChain(r.tokens[r.at:]) {
		return 0
	}
	if r.at+1 < len(r.tokens) && r.tokens[r.at+1].Canon == "with" {
		r.label.Kind = Setup
		r.at++
		return r.ended() // `Foundation With A, ch 20`
	}
	for r.at < 3 && !r.word("row", "rnd") && (r.peek().Kind == Name || r.peek().Kind == Word || r.peek().Kind == Hyphen) {
		r.at++
	}
	r.label.Kind = Setup
	if !r.noun() {
		return 0
	}
	return r.end(false)
}

// beginsWithChain tells `Begin with 30 ch`, which lays a chain and is no label.
func beginsWithChain(tokens []Token) bool {
	return len(tokens) > 3 && tokens[0].Kind == Word && tokens[0].Canon == "beg" && tokens[1].Canon == "with" &&
		(tokens[2].Kind == Number && tokens[3].Canon == "ch" || tokens[2].Canon == "ch" && tokens[3].Kind == Number)
}

// every takes `All rows:`, `Every row:`.
func (r *labelReader) every() int {
	r.at++
	r.parity()
	if !r.noun() {
		return 0
	}
	r.label.Kind = Parity
	return r.end(true)
}

// parity takes `even`, `odd`, `even-numbered`, `alternate`, `other`.
func (r *labelReader) parity() bool {
	switch {
	case r.word("even"):
		r.label.Which = EvenRows
	case r.word("odd"):
		r.label.Which = OddRows
	case r.word("alternate", "other"):
	default:
		return false
	}
	r.at++
	for r.peek().Kind == Hyphen || r.peek().Canon == "numbered" {
		r.at++
	}
	return true
}

// maxPart is the most words of a part's name before the number of its row.
const maxPart = 3

// ofPart takes the name of a part before the number of its row: `Band Row 2:`, `Cuff, Rows 2-4:`.
// With its first row the part begins, and its name is a heading, but where all of it is bold: `**Band row 1:**`.
func (r *labelReader) ofPart() bool {
	from := r.at
	if r.at >= len(r.tokens) || !unicode.IsUpper(firstRune(r.text[r.peek().Span.Start:])) {
		return false
	}
	for r.at < from+maxPart && namesPart(r.peek()) && !tells[r.peek().Canon] {
		r.at++
	}
	if r.at > from && r.peek().Kind == Comma {
		r.at++
	}
	least := 2
	if from > 0 && r.tokens[from-1].Kind == Star {
		least = 1
	}
	if r.at > from && r.word("row", "rnd") && r.at+1 < len(r.tokens) && r.tokens[r.at+1].Kind == Number && r.tokens[r.at+1].Values.At(0) >= least && !r.tokens[r.at+1].Values.PerSize() && r.marked() {
		return true
	}
	r.at = from
	return false
}

// marked tells whether the label ends in a mark, whatever stands before that in brackets.
func (r *labelReader) marked() bool {
	ahead := labelReader{tokens: r.tokens, text: r.text, at: r.at}
	n := ahead.nounFirst()
	return n > 0 && (r.tokens[n-1].Kind == Colon || r.tokens[n-1].Kind == Dash)
}

func (r *labelReader) nounFirst() int {
	r.noun()
	if r.parity() {
		r.label.Kind = Parity
		return r.end(true)
	}
	if r.peek().Kind != Number && r.peek().Kind != Ordinal || !r.numbers() {
		return 0
	}
	r.label.Kind = Numbered
	return r.end(false)
}

func (r *labelReader) numberFirst() int {
	ordinal := r.peek().Kind == Ordinal
	if !r.numbers() || !ordinal && r.amount() {
		return 0
	}
	r.label.Kind = Numbered
	if r.noun() {
		return r.end(false)
	}
	t := r.peek()
	if ordinal {
		if t.Kind == Colon || t.Kind == Period && r.dashAfter() {
			return r.end(true)
		}
		return 0
	}
	more := r.at+1 < len(r.tokens)
	switch {
	case len(r.label.Numbers) > 1 && r.stopped():
		return r.ended()
	case more && (t.Kind == Period || t.Kind == Close) && r.at == 1:
		r.label.Bare = true
		return r.endedBy()
	case more && (t.Kind == Colon || t.Kind == Sign && t.Canon == "|"):
		r.label.Bare = true // `3-5: 10 sc`, and the cell of a table
		return r.endedBy()
	case r.at < len(r.tokens) && setOff(r.tokens[:r.at+1], r.text):
		r.label.Bare = true // `3  sc in next 5 sts`
		return r.ended()
	case more && (t.Kind == Period || t.Kind == Close): // `4-6) sc around`
		return r.endedBy()
	}
	return 0
}

// ended ends the label here, where nothing marks its end.
func (r *labelReader) ended() int {
	r.name = r.at
	return r.at
}

// endedBy ends the label behind the mark that comes next.
func (r *labelReader) endedBy() int {
	r.name = r.at
	r.at++
	return r.at
}

// setOff tells whether the number that some tokens begin with stands in a column of its own, by
// the blanks behind it.
func setOff(tokens []Token, text string) bool {
	n := len(tokens) - 1
	if tokens[0].Kind != Number || strings.TrimLeftFunc(text[:tokens[0].Span.Start], isBlank) != "" {
		return false
	}
	gap := text[tokens[n-1].Span.End:tokens[n].Span.Start]
	return (strings.Contains(gap, "  ") || strings.Contains(gap, "\t")) && strings.TrimLeftFunc(gap, isBlank) == ""
}

// stopped tells whether the last number holds the stop after it.
func (r *labelReader) stopped() bool { return r.text[r.tokens[r.at-1].Span.End-1] == '.' }

// amount tells the `3 rows` of a gauge from the `3-8 rows` of a label.
func (r *labelReader) amount() bool {
	t := r.peek()
	return r.word("row", "rnd") && len(r.label.Numbers) == 1 && r.label.Numbers[0].From.At(0) == r.label.Numbers[0].To.At(0) &&
		strings.HasSuffix(strings.ToLower(strings.TrimRight(r.text[t.Span.Start:t.Span.End], ".")), "s")
}

// dashAfter tells the stop of `3rd.—`.
func (r *labelReader) dashAfter() bool {
	return r.at+1 < len(r.tokens) && r.tokens[r.at+1].Kind == Dash
}

// rowWord are the words for a row before its number.
var rowWord = map[string]bool{"r": true, "row": true, "rnd": true}

// numbers takes `3`, `3-8`, `4 and 6`, `4, 6 and 8`, `4 to Rnd 12`.
func (r *labelReader) numbers() bool {
	kind := r.peek().Kind
	for {
		t := r.peek()
		if t.Kind != Number && t.Kind != Ordinal {
			return len(r.label.Numbers) > 0
		}
		r.at++
		values := r.perSize(t.Values)
		span := RowSpan{From: values, To: values}
		if l := r.peek(); t.Kind == Number && l.Span.Len() == 1 && l.Span.Start == t.Span.End && (l.Kind == Name || l.Kind == Word) {
			r.at++
			r.label.Lettered = true // `Row 4b`
		}
		alone := r.at
		if r.peek().Kind == Close && r.at+2 < len(r.tokens) && (r.tokens[r.at+1].Canon == "to" || r.tokens[r.at+1].Canon == "and" || r.tokens[r.at+1].Kind == Dash || r.tokens[r.at+1].Kind == Hyphen) &&
			(rowWord[r.tokens[r.at+2].Canon] || r.at+3 < len(r.tokens) && r.tokens[r.at+2].Kind == Number && r.tokens[r.at+3].Kind == Close) {
			r.at++ // `R12) to R15)`, `R2) and R3)`, `14) to 19)`
		}
		if k := r.peek().Kind; k == Dash || k == Hyphen || r.word("to") {
			dash := r.at
			r.at++
			noun := r.noun()
			if to := r.peek(); (to.Kind == Number || to.Kind == Ordinal) && (noun || r.ranges(dash)) {
				r.at++
				span.To = r.perSize(to.Values)
				r.rangesPerSize(&span)
			} else {
				r.at = alone
			}
		}
		r.label.Numbers = append(r.label.Numbers, span)
		mark := r.at
		for r.peek().Kind == Comma || r.word("and") || r.peek().Kind == Sign && r.peek().Canon == "&" {
			r.at++
		}
		if r.at == mark {
			return true
		}
		if r.word("each") || r.peek().Kind == Name && (r.peek().Canon == "all" || r.peek().Canon == "every") {
			r.at++
			r.parity()
			if r.noun() {
				r.label.EveryOther = true
				r.upTo()
				return true
			}
		}
		r.noun()
		if k := r.peek().Kind; k != Number && k != Ordinal || k == Ordinal && kind == Number { // `Step 2, first thorn.`
			r.at = mark
			return true
		}
	}
}

// upTo takes the last of every other row, where that is said: `Row 6 and every even row to Row 12`.
// The rows between them tell as much by their numbers.
func (r *labelReader) upTo() {
	from := r.at
	if r.word("to", "until") {
		r.at++
		if r.noun(); r.peek().Kind == Number || r.peek().Kind == Ordinal {
			r.at++
			return
		}
	}
	r.at = from
}

// rangesPerSize takes the `{7-16}` of `Rows 7-14 {7-16}`, or the `(47-66, 51-70)` of `Rnds
// 43-62 (47-66, 51-70)`: a range for each size.
func (r *labelReader) rangesPerSize(span *RowSpan) {
	for r.peek().Kind == Open {
		from, to, at := slices.Clone(span.From.Vals), slices.Clone(span.To.Vals), r.at
		for {
			in := r.tokens[at+1 : min(at+5, len(r.tokens))]
			if len(in) < 4 || in[0].Kind != Number || in[1].Kind != Hyphen && in[1].Kind != Dash || in[2].Kind != Number || in[3].Kind != Close && in[3].Kind != Comma {
				return
			}
			from, to, at = append(from, in[0].Values.At(0)), append(to, in[2].Values.At(0)), at+4
			if in[3].Kind == Close {
				break
			}
		}
		span.From.Vals, span.To.Vals, r.at = from, to, at+1
	}
}

// perSize takes the `(10th)` of `8th (10th) rnd`: a row's number in each size.
func (r *labelReader) perSize(first Num) Num {
	if r.peek().Kind != Open || first.PerSize() {
		return first
	}
	values := Num{Vals: []int{first.At(0)}}
	for i := r.at + 1; i+1 < len(r.tokens); i += 2 {
		if r.tokens[i].Kind != Ordinal {
			return first
		}
		values.Vals = append(values.Vals, r.tokens[i].Values.At(0))
		switch r.tokens[i+1].Kind {
		case Close:
			r.at = i + 2
			return values
		case Comma, Colon, Semi:
		default:
			return first
		}
	}
	return first
}

// ranges tells the dash of `Rows 4-6` or `Rows 4 – 6:` from the one that closes
// a label: `Rnd 4 – 6 sc in ring`.
func (r *labelReader) ranges(dash int) bool {
	to := r.tokens[dash+1]
	if r.tokens[dash].Kind == Word || to.Span.Start == r.tokens[dash].Span.End && r.tokens[dash-1].Span.End == r.tokens[dash].Span.Start {
		return true // `4 to 6`, `4-6`
	}
	if to.Values.At(0) <= r.tokens[dash-1].Values.At(0) {
		return false // `Row 2 - 1 block, 9 spaces`
	}
	if dash+2 >= len(r.tokens) {
		return true
	}
	next := r.tokens[dash+2]
	if to.Kind == Ordinal && r.tokens[dash-1].Kind == Number && next.Canon != "row" && next.Canon != "rnd" {
		return false // `Step 2 - First branch: ch 9`
	}
	if next.Kind == Name && r.single() {
		return false // `Row 4 - 5 blocks`
	}
	return next.Kind != Stitch && !(next.Kind == Word && (next.Canon == "ch" || next.Canon == "st" || next.Canon == "more"))
}

// single tells a label that speaks of one row, or of one round.
func (r *labelReader) single() bool {
	for _, t := range r.tokens[:min(r.at, len(r.tokens))] {
		if t.Kind == Word && (t.Canon == "row" || t.Canon == "rnd") {
			return !strings.HasSuffix(strings.ToLower(r.text[t.Span.Start:t.Span.End]), "s")
		}
	}
	return false
}

// end takes what may stand between a label's number and its instruction: a
// side or a remark in brackets, `incl`, and the mark that closes the label.
// strict asks for that mark.
func (r *labelReader) end(strict bool) int {
	if r.peek().Kind == Name && (r.peek().Canon == "incl" || r.peek().Canon == "inclusive") {
		r.at++
		if r.peek().Kind == Period {
			r.at++
		}
	}
	for range 2 {
		if r.peek().Kind == Open && r.remark() {
			continue
		}
		if t := r.peek(); t.Kind == Sign && t.Canon == "/" && r.at+1 < len(r.tokens) && (r.tokens[r.at+1].Canon == "rs" || r.tokens[r.at+1].Canon == "ws") {
			r.at++ // Row 4/RS
		}
		if r.word("rs", "ws") {
			r.side(r.peek().Canon)
			r.at++
		}
	}
	r.ofWhat()
	r.title()
	r.name = r.at
	marked := false
	for range 2 {
		switch t := r.peek(); {
		case t.Kind == Colon, t.Kind == Semi, t.Kind == Period, t.Kind == Dash, t.Kind == Close, t.Kind == Sign && labelSigns[t.Canon]:
			r.at++
			marked = true
			continue
		}
		break
	}
	if !marked && (strict || !r.followed()) {
		return 0
	}
	return r.at
}

// labelSigns are signs that close a label: `Row 3 =`, `Row 3 ->`.
var labelSigns = map[string]bool{"=": true, ">": true, "→": true, "|": true, "~": true}

// ofWhat takes what a row is a row of, where a colon closes it: `Row 1 of the
// border:`.
func (r *labelReader) ofWhat() {
	if !r.word("of", "for") {
		return
	}
	for i := r.at + 1; i < len(r.tokens) && i <= r.at+2*maxNamed; i++ {
		switch r.tokens[i].Kind {
		case Word, Name, Hyphen:
		case Colon:
			r.at = i
			return
		default:
			return
		}
	}
}

// mostTitled is the most words of a title behind the number of a row.
const mostTitled = 7

// title takes what a row is called, or whose it is, behind a comma, where a colon closes
// that or a stop before the next step, or behind the word for a side: `Rnd 6, Adult sizes:`, `Step 2, first thorn.`,
// `Row 1, up one side.`
func (r *labelReader) title() {
	if r.peek().Kind != Comma {
		return
	}
	ofSide := false
	for i := r.at + 1; i < len(r.tokens) && (i <= r.at+mostTitled || ofSide && i <= r.at+mostOfSide); i++ {
		ofSide = ofSide || isSide(r.tokens[i])
		switch t := r.tokens[i]; {
		case t.Kind == Number && (isSide(r.tokens[i-1]) || i+1 < len(r.tokens) && isSide(r.tokens[i+1])):
		case t.Kind == Name && !tells[t.Canon], t.Kind == Ordinal, t.Kind == Hyphen, t.Kind == Comma, t.Kind == Sign && t.Canon == "&":
		case t.Kind == Stitch && isArticle(r.tokens[i-1]) && i+1 < len(r.tokens) && r.tokens[i+1].Kind == Colon: // `Row 2, the Wings:`
		case isBranch(t), t.Kind == Word && !beginsAction(t) && !(opensTitle[t.Canon] && r.tokens[i-1].Kind == Comma):
		case ofSide && t.Kind == Word && t.Canon == "ch" && i+1 < len(r.tokens) && r.tokens[i+1].Kind == Colon: // along the other side of the chain:
		case t.Kind == Colon, t.Kind == Period && i > r.at+1 && i+1 < len(r.tokens) && (r.label.Step || ofSide || beginsAction(r.tokens[i+1])):
			r.sides(r.at+1, i)
			r.limb(r.at+1, i, i+1)
			r.at = i
			return
		case t.Kind == Open && ofSide:
			if end := closedBefore(r.tokens, i); end > 0 {
				r.sides(r.at+1, i)
				r.at = end
			}
			return
		default:
			return
		}
	}
}

// isArticle tells `the` and `a`.
func isArticle(t Token) bool { return t.Kind == Word && t.Canon == "" }

// closedBefore is where the colon stands right behind the bracket that token i opens, 0 for none.
func closedBefore(tokens []Token, i int) int {
	n := slices.IndexFunc(tokens[i:], func(t Token) bool { return t.Kind == Close })
	if n < 0 || i+n+1 >= len(tokens) || tokens[i+n+1].Kind != Colon {
		return 0
	}
	return i + n + 1
}

// limb takes the title of a step, from a token to another, for the name of a branch where the
// step makes a chain first and goes back along that.
func (r *labelReader) limb(from, to, body int) {
	for from < to && r.tokens[from].Kind == Word && r.tokens[from].Canon == "" {
		from++
	}
	called := from < to && isBranch(r.tokens[from])
	if called && from+1 < to {
		from++ // `(Branch A)`
	}
	if r.label.Step && from < to && (chainsOut(r.tokens, body) || called && afterChain(r.tokens, body) > 0) {
		r.label.Limb = strings.ToLower(r.text[r.tokens[from].Span.Start:r.tokens[to-1].Span.End])
	}
}

// opensTitle are words behind which work is told, and no title.
var opensTitle = map[string]bool{"with": true, "as": true, "in": true, "from": true, "beg": true, "foundation": true}

// followed tells whether an instruction can begin right after the label.
func (r *labelReader) followed() bool {
	t := r.peek()
	switch t.Kind {
	case Stitch, Star, Open, Number, Comma:
		return true
	case Word:
		if t.Canon == "comment" {
			return false // `Rows 2 to 9 form the pattern.`
		}
		if t.Canon == "work" && r.several() && strings.EqualFold(r.text[t.Span.Start:t.Span.End], "make") {
			return false // `Rows 2 to 5 make one point`
		}
		return beginsAction(t) || t.Canon == "with" || t.Canon == "as" || t.Canon == "in" || t.Canon == "same" || t.Canon == ""
	}
	return r.at >= len(r.tokens) && r.label.Kind == Numbered
}

// several tells a label of more than one row.
func (r *labelReader) several() bool {
	return len(r.label.Numbers) > 1 || len(r.label.Numbers) == 1 && r.label.Numbers[0].To.Written()
}

// remark takes a bracket after the number: the side, or a note.
func (r *labelReader) remark() bool {
	mark := r.at
	for i := r.at + 1; i+1 < len(r.tokens) && i < r.at+8; i++ {
		if r.tokens[i].Kind == Close && r.tokens[i+1].Kind == Colon {
			r.sides(r.at+1, i)
			r.limb(r.at+1, i, i+2)
			r.at = i + 1 // `Row 3 (increase row):`
			return true
		}
	}
	for i := r.at + 1; i < len(r.tokens) && i < r.at+8; i++ {
		switch t := r.tokens[i]; {
		case t.Kind == Close:
			r.at = i + 1
			return true
		case t.Kind == Word && (t.Canon == "rs" || t.Canon == "ws"):
			r.side(t.Canon)
		case t.Kind == Stitch || t.Kind == Comma || t.Kind == Star || t.Kind == Word && t.Canon == "ch":
			r.at = mark
			return false
		}
	}
	r.at = mark
	return false
}

// sides looks for a side among the tokens of a remark: one that faces, or one of the chain.
func (r *labelReader) sides(from, to int) {
	said := r.tokens[from:to]
	if len(said) == 0 {
		return
	}
	at := spanOf(said)
	named := said
	if end := slices.IndexFunc(said, func(t Token) bool { return t.Kind == Comma }); end > 0 && sideNamed(said[:end]) > 0 {
		named, said = said[:end], said[end+1:] // `second side, along the underside of the same chain`
	}
	across := slices.ContainsFunc(said, leadsAcross) && (sendsAcross(said) || tellsOtherSide(said))
	switch nth := sideNamed(named); {
	case across || nth == 2:
		r.label.Part = SecondSide
	case nth == 1:
		r.label.Part = FirstSide
	case strings.EqualFold(r.text[at.Start:at.End], "tip"):
		r.label.Part = AtTip
	case footWords[strings.ToLower(r.text[at.Start:at.End])]:
		r.label.Part = AtFoot
	}
	if across || r.label.Part == SecondSide && r.label.First(0) == 1 {
		r.label.Far = at
	}
	for _, t := range r.tokens[from:to] {
		if t.Kind == Word && (t.Canon == "rs" || t.Canon == "ws") {
			r.side(t.Canon)
		}
	}
}

// footWords are what the foot of a leaf or a feather is called, along which a row begins.
var footWords = map[string]bool{"quill": true, "stalk": true, "stem": true, "shaft": true, "foot": true, "base": true}

func (r *labelReader) side(word string) {
	if r.label.Side != NoSide {
		return
	}
	r.label.Side = RightSide
	if word == "ws" {
		r.label.Side = WrongSide
	}
}
