package syntax

import (
	"cmp"
	"slices"
	"strings"
)

// Here words are told for a stated count, and read as one, whatever else is said of it: `24 sts`, `18 tr, 6 sp:
// each side has 3 tr`, `12 dc, including the ch 3`, `15 sts, not counting the last sl st`.

// countsOnly tells how many things the sentence that begins with token i counts, where nothing is worked behind it, 0
// for any other sentence.
func (b *builder) countsOnly(i int) int {
	said := sentence(b.tokens[i:])
	end := i + len(said)
	if more := sentence(b.tokens[min(end+1, len(b.tokens)):]); saysCounts(more) {
		end += 1 + len(more) // `12 dc. The ch 3 counts as a dc.`
	}
	if b.worksBehind(end) {
		return 0
	}
	if total, _, _ := countTakesIn(said); total != nil {
		return len(total.Parts)
	}
	switch total := asTotal(said); {
	case tallies(said), countRemarked(said):
		return 2
	case total != nil:
		return len(total.Parts)
	}
	return 0
}

// countsSpaces tells a count of spaces among other things, `4 sc and 1 ch-2 sp`, which no words for work sound like.
func countsSpaces(said []Token) bool {
	total := asTotal(said)
	return total != nil && slices.ContainsFunc(total.Parts, func(p Part) bool { return p.Noun.Kind == NounSpace })
}

// saysCounts tells words that say of a chain whether it counts.
func saysCounts(tokens []Token) bool {
	switch n := clauses.read(tokens).(type) {
	case *Chain:
		return n.Counts.Said
	case *CountsNote:
		return true
	}
	return false
}

// countTakesIn reads a count that says what chain it takes in, `12 dc, including the ch 3`, `43 sts, the 3 ch
// is one of them`, and gives where the count ends and where that is said. It gives nil for anything else.
func countTakesIn(tokens []Token) (total *Total, end, says int) {
	for i := 2; i < len(tokens)-1; i++ {
		end = i
		if tokens[i].Kind == Comma || tokens[i].Kind == Semi {
			i++
		}
		if including := takesIn(tokens[i]); including && takenIn(tokens[i:]) != nil || end < i && !including && saysCounts(tokens[i:]) {
			return asTotal(tokens[:end]), end, i
		}
	}
	return nil, 0, 0
}

// leavesOut tells a count that does not take in all that is made: `15 sts, not counting the last sl st`.
func leavesOut(tokens []Token) bool {
	if len(tokens) == 0 || tokens[0].Kind != Number {
		return false
	}
	for i := 1; i+1 < len(tokens); i++ {
		if tokens[i].Kind == Word && tokens[i].Canon == "not" && takesIn(tokens[i+1]) {
			return true
		}
	}
	return false
}

// saysWhat tells a count that says, in words that nobody reads, what it takes in: `126, counting each tr and
// each single ch`, `45 sl sts, counting the joining sl st, and 5 picots`.
func saysWhat(tokens []Token) bool {
	comma := slices.IndexFunc(tokens, func(t Token) bool { return t.Kind == Comma })
	return comma > 0 && comma+1 < len(tokens) && tokens[0].Kind == Number && takesIn(tokens[comma+1]) &&
		(comma == 1 || counts(tokens[:comma]) && takenIn(tokens[comma+1:]) == nil)
}

// takesIn tells a word before what a count takes in: `including`, `counting`.
func takesIn(t Token) bool { return t.Kind == Word && (t.Canon == "including" || t.Canon == "count") }

// takenIn reads what a count takes in: `including the ch 3 as 1 dc`, nil for no chain.
func takenIn(tokens []Token) Node {
	said := tokens[1:]
	if as := slices.IndexFunc(said, func(t Token) bool { return t.Kind == Word && t.Canon == "as" }); as > 0 {
		said = said[:as]
	}
	one := Counts{Said: true, As: []Part{{Noun: Noun{Kind: NounAny}}}}
	if len(said) > 0 && firstWord(said).Canon == "tch" {
		return &CountsNote{Counts: one}
	}
	if len(said) == 3 && said[1].Kind == Hyphen {
		said = []Token{said[0], said[2]} // ch-3
	}
	if ch, ok := clauses.read(said).(*Chain); ok {
		with := *ch
		with.Counts = one
		return &with
	}
	return nil
}

// countRemarked tells a sentence that counts, and behind a comma says more of that: `34 dc, with 4
// dc between the markers`, `43 sts, which is what Row 1 had`.
func countRemarked(tokens []Token) bool {
	comma := slices.IndexFunc(tokens, func(t Token) bool { return t.Kind == Comma })
	if comma < 0 || comma+1 == len(tokens) || asTotal(tokens[:comma]) == nil {
		return false
	}
	says := tokens[comma+1]
	return says.Kind == Word && (says.Canon == "" || says.Canon == "with") || says.Kind == Name && !beginsAction(says)
}

// tallyWords are words of the trade that also stand in a tally: `78 sc, 13 on each side, 6 ch-3
// corners`.
var tallyWords = map[string]bool{
	"": true, "st": true, "group": true, "on": true, "in": true, "each": true, "side": true, "edge": true, "corner": true, "ch": true, "sp": true, "loop": true,
}

// tallies tells words that can only count several things, though of one of them nobody
// knows what it is: `5 shells, 2 half shells, 6 dc`.
func tallies(tokens []Token) bool {
	items, begins := 0, true
	for i, t := range tokens {
		switch {
		case begins && (t.Kind == Comma || inInches(tokens[i:])):
			return false
		case t.Kind == Comma || !begins && andMore(tokens[i:]):
			begins = true
		case begins && t.Kind == Word && (t.Canon == "and" || t.Canon == "plus"):
		case begins:
			if t.Kind != Number {
				return false
			}
			items, begins = items+1, false
		case t.Kind != Stitch && t.Kind != Name && t.Kind != Hyphen && t.Kind != Number && !(t.Kind == Word && tallyWords[t.Canon]):
			return false
		}
	}
	return items > 1 && !begins
}

// andMore tells the `and` before one more of what is counted: `12 sc and 6 barbs`.
func andMore(tokens []Token) bool {
	return len(tokens) > 1 && tokens[0].Kind == Word && (tokens[0].Canon == "and" || tokens[0].Canon == "plus") && tokens[1].Kind == Number
}

// tallied reads such a count of stitches and other things, nil for any other words. Of what
// nobody knows there are groups.
func tallied(tokens []Token) *Total {
	if !tallies(tokens) || !holds(tokens, Stitch) {
		return nil
	}
	total := &Total{}
	for len(tokens) > 0 {
		item := tokens
		for end := range tokens {
			if end > 0 && (tokens[end].Kind == Comma || andMore(tokens[end:])) {
				item = tokens[:end]
				break
			}
		}
		tokens = tokens[min(len(tokens), len(item)+1):]
		for item[0].Kind != Number {
			item = item[1:] // 78 sc, and 6 corners
		}
		if known := asTotal(item); known != nil {
			total.Parts = append(total.Parts, known.Parts...)
			continue
		}
		var words []string
		for _, t := range item[1:] {
			if t.Kind != Hyphen {
				words = append(words, t.Canon)
			}
		}
		total.Parts = append(total.Parts, Part{Number: item[0].Values, Noun: Noun{Kind: NounGroup, Word: strings.Join(words, " ")}})
	}
	return total
}

// tellsCount tells a sentence that begins by telling how many there are on something: `you
// have 39 dc on the stem, 13 dc on …`.
func tellsCount(flat []Token) bool {
	first := firstWord(flat)
	return first.Kind == Word && first.Canon == "have" && slices.ContainsFunc(flat, func(t Token) bool { return t.Kind == Word && t.Canon == "on" })
}

// tellsOn tells words in a sentence on how many there are that work nothing: `you have 6 whole
// shells`, `a half shell of 3 dc at each edge`.
func tellsOn(flat []Token) bool {
	for i := 3; i < len(flat) && flat[0].Kind != Name; i++ {
		if asTotal(flat[:i]) != nil && flat[i-1].Kind != Number {
			return false // `8 tr and the spine` begins with what is counted
		}
	}
	return flat[0].Kind == Name || flat[0].Canon == "have" && !slices.ContainsFunc(flat, func(t Token) bool { return t.Kind == Enclosed || t.Kind != Stitch && beginsAction(t) })
}

// inAll reads a count that sounds like work: `making 21 sc in all`. It gives nil
// for anything else.
func inAll(flat []Token) *Total {
	if flat[0].Kind == Word && flat[0].Canon == "work" {
		flat = flat[1:]
	}
	n := len(flat)
	if n < 4 || flat[0].Kind != Number || flat[n-2].Canon != "in" || flat[n-1].Written != "all" {
		return nil
	}
	return asTotal(flat[:n-2])
}

// oneToClose tells a count of which some only close the work: `7 sl sts and 1 to join`.
func oneToClose(inside []Token) bool {
	n := len(inside)
	return n > 5 && inside[n-4].Canon == "and" && inside[n-3].Kind == Number && inside[n-2].Canon == "to" && (inside[n-1].Canon == "join" || inside[n-1].Canon == "weave")
}

// countUnderName reads how many stitches something is said to have: `rib has 24 ss in all`. It gives
// nil for anything else.
func countUnderName(flat []Token) *Total {
	if len(flat) < 3 || flat[0].Written != holderToken {
		return nil
	}
	rest := flat[2:]
	if n := len(rest); n > 2 && rest[n-2].Canon == "in" && rest[n-1].Written == "all" {
		rest = rest[:n-2]
	}
	return asTotal(rest).on(flat[0].Canon)
}

// countAfterName reads what a branch or the stem is said to have behind its name: `Branch A: 14 sc, 2
// twiglets`, `stem so far: 12 ch`. It gives nil for anything else.
func countAfterName(inside []Token) *Total {
	colon := slices.IndexFunc(inside, func(t Token) bool { return t.Kind == Colon })
	if colon < 1 || colon > maxNamed {
		return nil
	}
	on := ""
	for i, t := range inside[:colon] {
		switch {
		case t.Kind == Word && t.Canon == "stem":
			on = "stem"
		case i > 0 && t.Kind == Name && isBranch(inside[i-1]):
			on = t.Canon
		}
	}
	if on == "" {
		return nil
	}
	rest := inside[colon+1:]
	return cmp.Or(asTotal(rest), countsAmong(rest)).on(on)
}

// on is the count of what stands on something, which words before it name; nil of no count.
func (t *Total) on(name string) *Total {
	if t == nil {
		return nil
	}
	named := *t
	named.Parts = slices.Clone(t.Parts)
	for i := range named.Parts {
		named.Parts[i].On = name
	}
	return &named
}

// inParts reads a count and what it consists of, or comes to, on the other side of a colon: `6 shells and
// 7 dc: 37 sts`. Of the two sides one alone may be read. It gives nil for anything else.
func inParts(tokens []Token) *Total {
	colon := slices.IndexFunc(tokens, func(t Token) bool { return t.Kind == Colon })
	if colon < 1 || colon+1 == len(tokens) || tokens[0].Kind != Number || tokens[colon+1].Kind != Number {
		return nil
	}
	one, other := asTotal(tokens[:colon]), asTotal(tokens[colon+1:])
	switch {
	case one == nil:
		return other
	case other == nil || len(other.Parts) == 0:
		return one
	}
	both := *other
	both.Parts = slices.Concat(one.Parts, other.Parts)
	return &both
}

// brokenDown reads a count of which one thing or another is told in a bracket behind it: `12 fans (96 dc,
// 36 picots), 60 sc, 48 ch-3 sps`. It gives nil for anything else.
func brokenDown(tokens []Token) *Total {
	if len(tokens) == 0 || tokens[0].Kind != Number {
		return nil
	}
	total, parted := &Total{}, false
	add := func(some []Token, inside bool) bool {
		known := asTotal(some)
		if known == nil {
			return false
		}
		for _, p := range known.Parts {
			p.Inside = inside
			total.Parts = append(total.Parts, p)
		}
		return true
	}
	for {
		open := slices.IndexFunc(tokens, func(t Token) bool { return t.Kind == Open })
		if open < 0 {
			if parted && add(tokens, false) {
				return total
			}
			return nil
		}
		shut := slices.IndexFunc(tokens, func(t Token) bool { return t.Kind == Close })
		if shut < open || open == 0 || oneInEach(tokens[open-1].Stitch) || !add(tokens[:open], false) || !add(tokens[open+1:shut], true) {
			return nil
		}
		if rest := tokens[shut+1:]; len(rest) == 0 || len(rest) == 1 && rest[0].Kind == Period {
			if parted || total.Parts[1].Inside {
				return nil // `6 fans (30 dc)` alone may be work and its count
			}
			return total
		} else if len(rest) < 2 || rest[0].Kind != Comma && !andMore(rest) {
			return nil
		}
		tokens, parted = tokens[shut+2:], true
	}
}

// countShared reads a count behind which a colon tells how many are on each of several parts: `224 hdc: 64 each on front and
// back, 48 on each sleeve`, or a bracket, `18 tr (9 tr each side)`. It gives nil for anything else.
func countShared(said []Token) *Total {
	for len(said) > 0 && said[len(said)-1].Kind == Period {
		said = said[:len(said)-1]
	}
	if open := slices.IndexFunc(said, func(t Token) bool { return t.Kind == Open }); open > 0 && said[len(said)-1].Kind == Close {
		if inside := said[open+1 : len(said)-1]; numberOfEach(inside) && !holds(inside, Open) {
			return asTotal(said[:open])
		}
		return nil
	}
	colon := slices.IndexFunc(said, func(t Token) bool { return t.Kind == Colon })
	if colon < 1 || colon+1 == len(said) {
		return nil
	}
	for rest := said[colon+1:]; len(rest) > 0; {
		item := rest
		if end := slices.IndexFunc(rest, func(t Token) bool { return t.Kind == Comma || t.Kind == Semi }); end >= 0 {
			item, rest = rest[:end], rest[end+1:]
		} else {
			rest = nil
		}
		if !numberOfEach(item) {
			return nil
		}
	}
	return asTotal(said[:colon])
}

// countsAmong reads a count that more is said of than can be counted: `18 tr, 6 sp: each side has 3
// tr`, `5 shells, a half shell of 3 tr at each end, 6 dc`. It gives nil for anything else, and for
// what may be work.
func countsAmong(inside []Token) *Total {
	total, among := &Total{}, false
	spread, _ := countSpread(inside)
	if sum, _, _ := countTakesIn(inside); sum != nil || spread != nil && !severalParts(inside) || asTotal(inside) != nil || tallies(inside) || countRemarked(inside) && !severalParts(inside) || slices.ContainsFunc(inside, func(t Token) bool { return t.Kind == Sign && t.Canon == "=" }) {
		return nil
	}
	for len(inside) > 0 {
		item := inside
		if end := slices.IndexFunc(inside, partsCount); end >= 0 {
			item, inside = inside[:end], inside[end+1:]
		} else {
			inside = nil
		}
		for len(item) > 0 && item[0].Kind == Word && item[0].Canon == "" {
			item = item[1:]
		}
		if len(item) == 0 {
			continue
		}
		if takesIn(item[0]) {
			return nil // 38 sts, counting each ch as a st
		}
		length := inInches(item)
		known, whole := countFirst(item)
		among = among || !whole || length || known != nil && known.Parts[len(known.Parts)-1].All // `13 sc in all: 4 on each prong`
		switch {
		case length:
		case known != nil:
			total.Parts = append(total.Parts, known.Parts...)
		case ofEach(item):
		case len(total.Parts) == 0:
			return nil
		default:
			if n := clauses.read(item); steps(n) || comesLast(n) {
				return nil
			}
		}
	}
	all := 0
	for _, p := range total.Parts {
		if p.Noun.OfAll() {
			all++
		}
	}
	if !among || len(total.Parts) == 0 || all > 1 {
		return nil // it is read as a whole, or it is none, or nobody knows which of them is all: `27 sts on this side, 54 in all`
	}
	return total
}

// countAlong reads a count in a bracket that tells along what its stitches lie: `11 sl sts along the twig`.
// It gives nil for anything else.
func countAlong(inside []Token) *Total {
	along := slices.IndexFunc(inside, func(t Token) bool { return t.Kind == Word && t.Canon == "across" })
	if along < 2 || !holds(inside[along:], Name) || holds(inside[along:], Stitch) || holds(inside[along:], Number) {
		return nil
	}
	return asTotal(inside[:along])
}

// changeBehind is by how many a count changes, which it says behind a mark, and where that stands: `12 sts, +6`. It is nil for
// any other.
func changeBehind(inside []Token) (cut int, change *Total) {
	n := len(inside)
	if n < 4 || inside[n-1].Kind != Number || inside[n-3].Kind != Comma && inside[n-3].Kind != Semi {
		return 0, nil
	}
	change = &Total{Parts: []Part{{Number: inside[n-1].Values}}, Change: 1}
	switch sign := inside[n-2]; {
	case sign.Kind == Dash || sign.Kind == Hyphen:
		change.Change = -1
	case sign.Canon != "+":
		return 0, nil
	}
	return n - 3, change
}

// withoutNamed is a count without the one thing behind it that has a name and no number: `19; 40 in all, and the tip sp`.
func withoutNamed(inside []Token) []Token {
	n := len(inside)
	if n < 4 || inside[n-1].Kind != Word || nouns[inside[n-1].Canon] == NounNone || inside[n-2].Kind != Name && inside[n-2].Canon != "top" {
		return inside
	}
	at := n - 2
	for at > 0 && (inside[at].Kind == Name || inside[at].Kind == Word && (inside[at].Canon == "" || inside[at].Canon == "top")) {
		at--
	}
	if inside[at].Kind != Word || inside[at].Canon != "and" && inside[at].Canon != "plus" {
		return inside
	}
	if at > 0 && inside[at-1].Kind == Comma {
		at--
	}
	return inside[:at]
}

// countFirst reads the count that words begin with, and tells whether they are no more than that:
// `36 in all`, `12 sts every time`. It gives nil for none, and for the count of a part of them.
func countFirst(item []Token) (total *Total, whole bool) {
	if total = asTotal(item); total != nil || item[0].Kind != Number || ofEach(item) || placesStitches(item) {
		return total, total != nil
	}
	for end := len(item) - 1; end > 0; end-- {
		next := item[end]
		if next.Kind == Stitch || next.Kind == Hyphen || next.Kind == Number || next.Kind == Word && (next.Canon == "of" || next.Canon == "between") || end == 1 && next.Canon != "in" {
			continue
		}
		if total = asTotal(item[:end]); total != nil && total.Parts[0].Noun.Kind != NounChain && !holds(item[end:], Stitch) {
			return total, false
		}
	}
	return nil, false
}

// placesStitches tells work from a count: `2 hdc in next st`.
func placesStitches(item []Token) bool {
	w, ok := clauses.read(item).(*Work)
	return ok && len(w.Places) > 0
}

// ofEach tells a count of each of several parts: `9 sts on each side`, `each side has 3 tr`. Of each row,
// or each time, it is of all.
func ofEach(item []Token) bool {
	at := slices.IndexFunc(item, func(t Token) bool { return t.Kind == Word && t.Canon == "each" })
	if at < 0 || at+1 == len(item) {
		return false
	}
	next := item[at+1]
	if noun := nouns[next.Canon]; next.Kind != Name && (next.Kind != Word || noun == NounAny || noun == NounChain || noun == NounSpace) {
		return false // work: `2 sc in each st`
	}
	return next.Canon != "row" && next.Canon != "rnd" && next.Canon != "time" && next.Canon != "times"
}

// numberOfEach tells such a count that begins with its number.
func numberOfEach(item []Token) bool {
	return len(item) > 0 && item[0].Kind == Number && ofEach(item)
}

// onEach tells a count of each of several that were named before: `8 sl sts on each`.
func onEach(item []Token) bool {
	n := len(item)
	return n > 3 && item[0].Kind == Number && item[n-1].Canon == "each" && item[n-2].Canon == "on"
}

// leadsHome tells words that say where the work is again: `4 sts, and you are back on the beam`.
func leadsHome(said []Token) bool {
	return slices.ContainsFunc(said, func(t Token) bool {
		return t.Kind == Word && (t.Canon == "return" || t.Canon == "back") || t.Kind == Name && speaks[t.Canon]
	})
}

// severalParts tells a list of more than two items.
func severalParts(list []Token) bool {
	n := 0
	for _, t := range list {
		if partsCount(t) {
			n++
		}
	}
	return n > 1
}

// partsCount tells what parts the items of a count.
func partsCount(t Token) bool {
	return t.Kind == Comma || t.Kind == Semi || t.Kind == Colon || t.Kind == Period || t.Kind == Sign && t.Canon == "+" || t.Kind == Word && (t.Canon == "and" || t.Canon == "plus")
}

// spreads are the words that begin to tell how stitches lie that were counted before.
var spreads = map[string]bool{"in": true, "on": true, "around": true, "across": true, "between": true, "with": true, "for": true, "along": true}

// countSpread reads a count that tells how its stitches lie, and where that begins: `42 sts in
// 6 petals`. It gives nil for anything else, and for what may be work.
func countSpread(flat []Token) (total *Total, rest int) {
	rest = slices.IndexFunc(flat, func(t Token) bool { return t.Kind == Word && spreads[t.Canon] })
	if rest < 2 {
		return nil, 0
	}
	if w, ok := clauses.read(flat).(*Work); ok && w.Stitch.Written() && len(w.Places) > 0 && w.Places[0].Noun.Kind != NounGroup {
		return nil, 0
	}
	return asTotal(flat[:rest]), rest
}

// countAgain reads a sentence that counts what was made since the last count: `Another 23.` It gives nil for anything
// else.
func countAgain(flat []Token) *Total {
	if len(flat) != 2 || flat[0].Kind != Word || flat[0].Canon != "more" || flat[1].Kind != Number {
		return nil
	}
	return asTotal(flat[1:])
}

// countsAround tells a sentence that counts what goes around a part that has a name, of which nobody knows what it
// takes in: `so 49 sts round the vane`.
func countsAround(flat []Token) bool {
	if flat[0].Kind == Name && flat[0].Canon == "so" {
		flat = flat[1:]
	}
	around := slices.IndexFunc(flat, func(t Token) bool { return t.Kind == Word && (t.Canon == "rnd" || t.Canon == "around") })
	return around > 1 && !holds(flat[:around], Stitch) && around+1 < len(flat) && named(flat[around+1:]) && holds(flat[around:], Name) && asTotal(flat[:around]) != nil
}

// countBeside reads a count beside which chains are said to be left, or where the work is now, and where that
// begins: `you have 23 sts and one ch is left`, `which makes 13 sts and brings you level with the fork`. It
// gives nil for anything else.
func countBeside(flat []Token) (total *Total, rest int) {
	if flat[0].Kind != Word || flat[0].Canon != "have" {
		return nil, 0
	}
	left := flat[len(flat)-1].Kind == Word && flat[len(flat)-1].Canon == "remaining"
	for rest = len(flat) - 2; rest > 1; rest-- {
		t := flat[rest]
		if t.Kind == Name && t.Canon == "if" { // `you have 12 sc and 6 barbs if you count`
			return counted(flat[1:rest]), rest
		}
		if t.Kind != Word || t.Canon != "and" {
			continue
		}
		said := flat[rest+1:]
		if left && slices.ContainsFunc(said, func(t Token) bool { return t.Kind == Word && t.Canon == "ch" }) ||
			said[0].Kind == Name && speaks[said[0].Canon] && !holds(said, Stitch) && !holds(said, Number) {
			return asTotal(flat[1:rest]), rest
		}
	}
	return nil, 0
}

// counted reads a count of things of which not all may be known; nil for anything else.
func counted(tokens []Token) *Total { return cmp.Or(asTotal(tokens), tallied(tokens)) }

// longestTotal bounds the tokens of a stated count, so that a long bracket of
// work is not read twice. A count of a dozen kinds takes about 60.
const longestTotal = 80

// asTotal reads tokens as a stated count: a number alone, or numbers of
// things. It gives nil for anything else.
func asTotal(tokens []Token) *Total {
	if len(tokens) == 0 || len(tokens) > longestTotal || inInches(tokens) {
		return nil
	}
	if tokens[0].Kind == Dash || tokens[0].Kind == Sign && tokens[0].Canon == "=" {
		tokens = tokens[1:]
	}
	if len(tokens) == 2 && tokens[0].Kind == Number && tokens[1].Kind == Word && tokens[1].Canon == "across" {
		return &Total{Parts: []Part{{Number: tokens[0].Values, Noun: anyStitch, On: "stem"}}} // `(9 along)`
	}
	said := make([]Token, 0, len(tokens)+1)
	if len(tokens) == 0 || tokens[0].Kind != Word || tokens[0].Canon != "have" {
		said = append(said, Token{Kind: Word, Canon: "have"})
	}
	for _, t := range tokens {
		if t.Kind == Period {
			continue
		}
		said = append(said, t)
	}
	if total, ok := clauses.read(said).(*Total); ok {
		return total
	}
	return nil
}

// inInches tells a length whose unit is written like the word `in`: `20 in`, `20 in long`.
func inInches(tokens []Token) bool {
	if len(tokens) < 2 || tokens[0].Kind != Number || tokens[1].Kind != Word || tokens[1].Canon != "in" {
		return false
	}
	return len(tokens) == 2 || extents[tokens[2].Canon]
}

// extents are the words that say which way a length goes.
var extents = map[string]bool{"across": true, "around": true, "deep": true, "high": true, "long": true, "round": true, "tall": true, "wide": true}

// addsUp tells numbers that are reckoned with, before what they come to: `23 + 5 + 23`, `22 x 2`.
func addsUp(flat []Token) bool {
	for i, t := range flat {
		number := t.Kind == Number && !t.Values.PerSize()
		if i%2 == 0 && !number || i%2 == 1 && t.Canon != "+" && t.Canon != "x" && t.Canon != "×" {
			return false
		}
	}
	return len(flat) > 2 && len(flat)%2 == 1
}

// CountOf is the count that a node is, in a bracket or not; nil for none.
func CountOf(n Node) *Total {
	switch n := n.(type) {
	case *Total:
		return n
	case *Bracket:
		return n.Total
	}
	return nil
}

// counts tells words that are a stated count, whatever else is said of it.
func counts(tokens []Token) bool {
	return asTotal(tokens) != nil || countsAmong(tokens) != nil || tallied(tokens) != nil
}
