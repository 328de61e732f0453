package syntax

import (
	_ "embed"
	"slices"
	"strconv"
	"strings"
	"sync"
	"sync/atomic"

	"stitchproof/lang/inflect"
	"stitchproof/lang/numeral"
	"stitchproof/lang/stitch"
)

//go:embed words.tsv
var wordTable string

// Vocabulary is what the lexer knows of words: the trade's words, every
// stitch's spellings in both dialects, and the stitches one pattern defines.
// What it makes of a text never changes. It is safe for concurrent use.
type Vocabulary struct {
	trade *wordNode
	own   *wordNode       // the pattern's own stitches; nil for none
	limbs map[string]bool // what the pattern calls its branches by labels, and what they grow from
	// Sizes is how many sizes the pattern is written for, 0 where it is not
	// said. It decides whether `20 (24)` is one number for two sizes.
	Sizes int
	names []string // of the sizes
	only  []int    // the sizes, by index, that the work has; nil for all
	all   *Vocabulary
	some  memo[*Vocabulary] // for work that only some sizes have

	// A line is looked at many times before it is known what it is: what was last cut
	// and read is kept.
	cut  memo[[]Token]
	rows memo[*Instruction]
}

// wordNode is a node of a tree of words: the path from the root spells a
// phrase, a word at a time.
type wordNode struct {
	entry *wordEntry // nil where no phrase ends
	// next is nil until the node is first looked into: most words of the trade are in no
	// one pattern. What goes on from the node is then found by the words of stitches,
	// sorted, and those of the table, each behind its first `at` bytes.
	next     atomic.Pointer[map[string]*wordNode]
	at       int
	stitches []stitch.Spelling
	table    []wording
}

// wording is a phrase of the table of words, or the words of a number.
type wording struct {
	words string
	entry *wordEntry
}

type wordEntry struct {
	kind   Kind
	canon  string
	filler bool
	// capital is set for a pattern's own word of one capital letter: its A is not
	// the article.
	capital bool
	// counted is set for a word that names a stitch only where one is counted
	// or picked: `3 long`, `next p`.
	counted bool
	// picked is set for a word of plain English that is one of the trade where one
	// of several is picked: `next leaf`, `2nd flower`.
	picked bool
	colour bool // a word that names a yarn wherever it stands
	values Num
	stitch stitch.Meaning
}

// Standard is the vocabulary of a pattern that defines nothing of its own.
var Standard = sync.OnceValue(func() *Vocabulary {
	return newVocabulary(&wordNode{stitches: stitch.Spellings(), table: readWords()}, 0)
})

// Prepare begins to make ready what every reading needs, the words of the trade and the
// grammar, while a program still does other things. Who does not ask for it has them made
// at the first reading.
func Prepare() {
	go Standard()
	go clauseGrammar()
}

func readWords() []wording {
	var all []wording
	for line := range strings.Lines(wordTable) {
		line = strings.TrimRight(line, "\r\n")
		if line == "" || line[0] == '#' {
			continue
		}
		column := strings.Split(line, "\t")
		entry := newWordEntry(column[0], column[1])
		for spelling := range strings.SplitSeq(column[2], "|") {
			all = append(all, wording{spelling, entry})
		}
	}
	for n := range numeral.Most + 1 {
		words := numeral.Words(n)
		all = append(all, wording{strings.ReplaceAll(words, "-", " "), &wordEntry{kind: Number, canon: words, values: One(n)}})
	}
	return all
}

func newVocabulary(trade *wordNode, sizes int) *Vocabulary {
	return &Vocabulary{trade: trade, Sizes: sizes, cut: memo[[]Token]{most: mostLines}, rows: memo[*Instruction]{most: mostLines}, some: memo[*Vocabulary]{most: mostLines}}
}

func newWordEntry(canon, kind string) *wordEntry {
	kind, value, _ := strings.Cut(kind, ":")
	e := &wordEntry{canon: canon, filler: kind == "filler"}
	e.colour = kind == "colour"
	e.picked = kind == "picked"
	if e.counted = kind == "counted"; e.counted {
		e.kind = Stitch
		e.stitch, _ = stitch.Find(value)
	}
	n, _ := strconv.Atoi(value)
	switch kind {
	case "number":
		e.kind, e.values = Number, One(n)
	case "ordinal":
		e.kind, e.values = Ordinal, One(n)
	case "once":
		e.canon, e.values = "once", One(n)
	}
	return e
}

// after is the node that a word leads to, nil for none.
func (n *wordNode) after(word string) *wordNode { return n.children()[word] }

// children are the nodes that words lead to.
func (n *wordNode) children() map[string]*wordNode {
	if next := n.next.Load(); next != nil {
		return *next
	}
	grown := n.grown()
	n.next.CompareAndSwap(nil, &grown) // another may have been as quick
	return *n.next.Load()
}

// grown makes the children of a node. The table of words wins over the dictionary, so that
// a crocheter can settle a clash there.
func (n *wordNode) grown() map[string]*wordNode {
	next := map[string]*wordNode{}
	for rest := n.stitches; len(rest) > 0; {
		word, _, _ := strings.Cut(rest[0].Words[n.at:], " ")
		child := n.child(next, word)
		path := rest[0].Words[:n.at+len(word)]
		if rest[0].Words == path {
			child.entry = &wordEntry{kind: Stitch, canon: path, stitch: rest[0].Meaning}
			rest = rest[1:]
		}
		more := 0
		for more < len(rest) && strings.HasPrefix(rest[more].Words, path) && rest[more].Words[len(path)] == ' ' {
			more++
		}
		child.stitches, rest = rest[:more], rest[more:]
	}
	for _, w := range n.table {
		word, _, more := strings.Cut(w.words[n.at:], " ")
		if child := n.child(next, word); more {
			child.table = append(child.table, w)
		} else {
			child.entry = w.entry
		}
	}
	return next
}

// child is the one that a word leads to among some, made where there is none.
func (n *wordNode) child(next map[string]*wordNode, word string) *wordNode {
	child := next[word]
	if child == nil {
		child = &wordNode{at: n.at + len(word) + 1}
		next[word] = child
	}
	return child
}

// add registers a phrase.
func (n *wordNode) add(phrase string, e *wordEntry) {
	for word := range strings.FieldsSeq(phrase) {
		n = n.child(n.children(), word)
	}
	n.entry = e
}

// OwnWord is a word that one pattern defines: a stitch, or what a branch or a yarn
// is called.
type OwnWord struct {
	Text         string
	Branch, Yarn bool
	// Limb is set for a branch that is named by a label, and for what it grows from: the
	// word keeps its meaning elsewhere.
	Limb bool
	// Stands is the known stitch that the word is another name of, if any.
	Stands stitch.Meaning
	// As is the word of the trade that it is short for, `m` for a marker; "" for none.
	As string
}

// Defining returns the vocabulary with a pattern's own stitch words added,
// for a pattern of the sizes named.
func (v *Vocabulary) Defining(words []OwnWord, sizes []string) *Vocabulary {
	w := newVocabulary(v.trade, len(sizes))
	w.names = sizes
	for _, word := range words {
		if word.Limb {
			if w.limbs == nil {
				w.limbs = map[string]bool{}
			}
			for _, name := range [...]string{word.Text, OneOf(word.Text)} {
				endings(name, func(tail string) { w.limbs[tail] = true })
			}
			continue
		}
		if w.own == nil {
			w.own = &wordNode{}
		}
		phrase := fold(strings.ReplaceAll(word.Text, "-", " "))
		if word.As != "" {
			w.own.add(phrase, &wordEntry{kind: Word, canon: word.As})
			continue
		}
		if word.Branch || word.Yarn {
			w.own.add(phrase, &wordEntry{kind: Name, canon: fold(word.Text), colour: word.Yarn})
			continue
		}
		meaning := word.Stands
		if meaning == (stitch.Meaning{}) {
			meaning, _ = stitch.Find(phrase)
		}
		entry := &wordEntry{kind: Stitch, canon: phrase, stitch: meaning, capital: phrase == "a" && word.Text == "A"}
		w.own.add(phrase, entry)
		w.own.add(phrase+"s", entry)
		w.own.add(inflect.Plural(phrase), entry) // meshes
	}
	return w
}

// middles tells whether the spine of a shawl, before raw token i, is the place in the middle of its rows: `in
// the spine sp`, `tr in each tr to the spine`.
func (l *scanner) middles(before []Token, i int) bool {
	if i < len(l.raw) && l.raw[i].kind == Word && (l.raw[i].lower == "sp" || l.raw[i].lower == "space" || l.raw[i].lower == "ch") {
		return true
	}
	for _, t := range slices.Backward(before) {
		if t.Kind != Word || t.Canon != "" {
			return t.Kind == Word && t.Canon == "to"
		}
	}
	return false
}

// namesPlace tells whether a place in which something is worked, behind the tokens before, is named at raw token i.
func (l *scanner) namesPlace(before []Token, i int) bool {
	if len(before) == 0 || i >= len(l.raw) || before[len(before)-1].Kind != Word || before[len(before)-1].Canon != "in" {
		return false
	}
	entry, _ := l.match(i)
	if entry == nil || entry.kind != Word {
		return entry != nil && entry.kind == Stitch
	}
	switch nouns[entry.canon] {
	case NounAny, NounChain, NounSpace, NounCorner:
		return true
	}
	return false
}

// known tells whether some phrase begins with the word.
func (v *Vocabulary) known(word string) bool {
	return v.trade.after(word) != nil || v.own != nil && v.own.after(word) != nil
}

// titled tells whether the nth token, before raw token i, ends a title: the round of `Bobble round:`.
func (l *scanner) titled(n, i int) bool { return n == 1 && i < len(l.raw) && l.raw[i].lower == ":" }

// group joins raw tokens into phrases, the longest known one first.
func (l *scanner) group() []Token {
	tokens := make([]Token, 0, len(l.raw))
	for i := 0; i < len(l.raw); {
		r := l.raw[i]
		entry, n := l.match(i)
		switch {
		case entry != nil && !(entry.filler && l.letter(i, n)) && !(entry.counted && !l.counts(tokens, i+n)) && !(entry.picked && !picks(tokens)):
			t := Token{Kind: entry.kind, Canon: entry.canon, Values: entry.values, Stitch: entry.stitch}
			if entry.filler {
				t.Canon = ""
			}
			if entry.canon == "group" || entry.filler && (r.lower == "still" || r.lower == "working" || r.lower == "the") || (entry.canon == "each" || entry.canon == "in") && r.lower == "all" {
				t.Written = r.lower
			}
			if r.lower == "round" && n == 1 && len(tokens) > 0 && tokens[len(tokens)-1].Kind == Stitch && !l.titled(len(tokens), i+n) {
				t.Canon = "around" // `RtrF round next st`
			}
			if (entry.canon == "corner" || entry.canon == "branch") && strings.HasSuffix(l.raw[i+n-1].lower, "s") {
				t.Written = l.raw[i+n-1].lower // of several
			}
			if strings.HasSuffix(l.raw[i+n-1].lower, "markers") {
				t.Written = "markers"
			}
			if entry.canon == "post" && strings.HasPrefix(r.lower, "leg") {
				t.Written = "leg"
			}
			if entry.canon == "rowend" && slices.ContainsFunc(l.raw[i:i+n], func(r rawToken) bool { return r.lower == "each" }) {
				t.Written = "each" // end of each row
			}
			if r.lower == "that" && n == 1 && l.namesPlace(tokens, i+n) {
				t.Canon = "same" // `3 dc in that sp`
			}
			if entry.colour {
				t.Kind, t.Canon, t.Written = Name, r.lower, colourToken
			}
			if r.lower == "repeats" && len(tokens) > 0 && tokens[len(tokens)-1].Kind == Number {
				t.Kind, t.Canon = Name, r.lower // `that is 8 repeats in all`
			}
			if r.lower == "w" && i+1 < len(l.raw) && l.raw[i+1].glued && l.raw[i+1].lower == "/" {
				n++ // w/ sl st
			}
			if !l.stopsAStep(entry, i+n) {
				n += l.abbreviationStop(i + n)
			}
			t.Span.Start, t.Span.End = r.start, l.raw[i+n-1].end
			tokens = append(tokens, t)
			i += n
		case r.kind == Open && l.countList(i):
			values, end := l.enclosed(i)
			tokens = append(tokens, l.plain(i), l.list(values, i+1, end-1), l.plain(end))
			i = end + 1
		case r.kind == Open && l.loneList(i):
			values, end := l.enclosed(i)
			tokens = append(tokens, l.list(values, i, end))
			i = end + 1
		case r.kind == Number && l.countedList(i):
			values, n := l.separated(i)
			tokens = append(tokens, l.list(values, i, i+n-1))
			i += n
		case r.kind == Number && calls(tokens) && !l.timesFollow(i+1):
			t, n := Token{Kind: Name, Canon: r.lower}, 1
			if next := i + 1; next < len(l.raw) && l.raw[next].kind == Word && l.raw[next].glued && len(l.raw[next].lower) == 1 {
				t.Canon, n = t.Canon+l.raw[next].lower, 2 // branch 1a
			}
			t.Span.Start, t.Span.End = r.start, l.raw[i+n-1].end
			tokens = append(tokens, t)
			i += n
		case r.kind == Number && ofYarn(tokens) && !l.timesFollow(i+1) && !l.countedThing(i+1) && !l.stitchFollows(i+1):
			t := Token{Kind: Name, Canon: r.lower} // colour 2
			t.Span.Start, t.Span.End = r.start, r.end
			tokens = append(tokens, t)
			i++
		case r.kind == Open && l.ledList(i):
			values, n := l.alternating(i - 1)
			tokens = append(tokens, l.list(values, i, i+n-2))
			i += n - 1
		case r.kind == Number, r.kind == Dash && l.dashList(i):
			t, n := l.numberList(i)
			tokens = append(tokens, t)
			i += n
		default:
			t := Token{Kind: r.kind, Canon: r.lower}
			if r.kind == Word {
				t.Kind = Name
			}
			n := 1
			if r.lower == "spine" && !l.vocab.limbs["spine"] && l.middles(tokens, i+1) {
				t.Kind, t.Canon = Word, "center"
			}
			if looks[r.lower] && len(tokens) > 0 && tokens[len(tokens)-1].Canon != "as" && l.isGroup(i+1) {
				t.Kind, t.Canon = Word, "" // of a small motif, on the finished square
				if l.raw[i+1].kind == Hyphen {
					n++ // next half-loop
				}
			}
			if r.kind == Ordinal {
				t.Canon, t.Values = "", One(r.value)
				if values, end := l.ordinalList(i); len(values) > 1 {
					t.Values, n = Num{Vals: values}, end+1-i
				} else {
					n += l.numberStop(i)
				}
			}
			if n < len(l.raw)-i && (shades[r.lower] || r.lower == "no") {
				n += l.abbreviationStop(i + 1)
			}
			t.Span.Start, t.Span.End = r.start, l.raw[i+n-1].end
			tokens = append(tokens, t)
			i += n
		}
	}
	inColours(tokens)
	heldDouble(tokens)
	return tokens
}

// heldDouble takes the `double` of `with A double`, `Change to B held double,` for how the yarn is held: it is no stitch.
func heldDouble(tokens []Token) {
	for i := 2; i < len(tokens); i++ {
		t, before := tokens[i], tokens[i-1]
		if t.Kind != Stitch || t.Canon != "double" && t.Canon != "single" || i+1 < len(tokens) && !separates(tokens[i+1]) && tokens[i+1].Kind != Close && tokens[i+1].Canon != "and" {
			continue
		}
		lead := tokens[i-2]
		if before.Kind == Name && (before.Canon == "held" || before.Canon == "used" || lead.Kind == Word && (lead.Canon == "with" || lead.Canon == "change" || lead.Canon == "yarn" || lead.Canon == "to")) {
			tokens[i] = Token{Kind: Word, Span: t.Span}
			if before.Canon == "held" || before.Canon == "used" {
				tokens[i-1] = Token{Kind: Word, Span: before.Span}
			}
		}
	}
}

// list is the token of a number for each size, from one raw token to another.
func (l *scanner) list(values []int, from, to int) Token {
	t := Token{Kind: Number, Values: Num{Vals: values}, Canon: l.text[l.raw[from].start:l.raw[to].end]}
	t.Span.Start, t.Span.End = l.raw[from].start, l.raw[to].end
	return t
}

// ordinalList reads `15th (16th, 17th)`, one for each size, and gives the index of
// the raw token that ends it.
func (l *scanner) ordinalList(i int) (values []int, end int) {
	values = []int{l.raw[i].value}
	if i+2 >= len(l.raw) || l.raw[i+1].kind != Open {
		return values, i
	}
	for j := i + 2; j < len(l.raw); j++ {
		switch r := l.raw[j]; {
		case r.kind == Ordinal:
			values = append(values, r.value)
		case r.kind == Close && len(values) > 1:
			return values, j
		case r.kind != Comma:
			return values[:1], i
		}
	}
	return values[:1], i
}

// calls tells whether the words so far end in one that a name comes after:
// `return to branch 2`.
func calls(before []Token) bool {
	return len(before) > 0 && before[len(before)-1].Kind == Word && before[len(before)-1].Canon == "branch"
}

// ofYarn tells whether the words so far end in one that the number of a yarn comes after:
// `with colour 2`.
func ofYarn(before []Token) bool {
	n := len(before)
	return n > 1 && before[n-1].Kind == Word && before[n-1].Canon == "yarn" && before[n-2].Kind != Number
}

// stitchFollows tells whether a stitch is named at raw token i: `with yarn 3 sc in first st`.
func (l *scanner) stitchFollows(i int) bool {
	entry, _ := l.match(i)
	return entry != nil && entry.kind == Stitch
}

// timesFollow tells whether raw token i says how often: `repeat branch 3 times`.
func (l *scanner) timesFollow(i int) bool {
	entry, _ := l.match(i)
	return entry != nil && (entry.canon == "times" || entry.canon == "more")
}

// inColours reads `in White, ch 9` and `sc in Gold in next st` as `with`: a
// colour after `in` is a yarn, unless what it colours is worked into.
func inColours(tokens []Token) {
	for i := range tokens {
		if tokens[i].Kind != Word || tokens[i].Canon != "in" {
			continue
		}
		if ringCalled(tokens, i+1) {
			tokens[i+1] = Token{Kind: Word, Canon: "ring", Span: tokens[i+1].Span}
			continue
		}
		j, colour := i+1, false
		for j < len(tokens) && (tokens[j].Kind == Name || tokens[j].Kind == Word && tokens[j].Canon == "yarn") {
			colour = colour || tokens[j].Written == colourToken || j == i+2 && tokens[i+1].Canon == "yarn" || j > i+1 && tokens[j].Canon == "yarn" || stitchesBefore(tokens, i) && yarnLetter(tokens, j)
			j++
		}
		if colour && (j == len(tokens) || tokens[j].Kind != Stitch && (tokens[j].Kind != Word || tokens[j].Canon == "in" || tokens[j].Canon == "to" || tokens[j].Canon == "work")) {
			tokens[i].Canon = "with"
		}
	}
}

// stitchesBefore tells stitches before token i, where the yarn may stand that they are worked in: `6 sc`, `sc 6`,
// `sc in next 6 sts`.
func stitchesBefore(tokens []Token, i int) bool {
	if i == 0 {
		return false
	}
	before := tokens[i-1]
	return before.Kind == Stitch || before.Kind == Word && before.Canon == "st" || before.Kind == Number && i > 1 && tokens[i-2].Kind == Stitch
}

// yarnLetter tells the letters of `6 sc in A, 6 sc in CC`, with which the clause
// ends.
func yarnLetter(tokens []Token, i int) bool {
	return lettersYarn(tokens[i].Canon) && (i+1 == len(tokens) || separates(tokens[i+1]) || tokens[i+1].Kind == Close || tokens[i+1].Kind == Word && tokens[i+1].Canon == "and")
}

// ringCalled tells the MC of `6 sc in MC (6)`, a magic circle, from the main
// colour: so many stitches go in it, and the row ends with them.
func ringCalled(tokens []Token, i int) bool {
	if i >= len(tokens) || tokens[i].Kind != Name || tokens[i].Canon != "mc" || i < 3 {
		return false
	}
	number, stitch := tokens[i-3].Kind, tokens[i-2].Kind
	if !(number == Number && stitch == Stitch || number == Stitch && stitch == Number) {
		return false
	}
	return !slices.ContainsFunc(tokens[i+1:], func(t Token) bool { return t.Kind == Stitch || t.Kind == Name })
}

// looks are the words that say of a motif or petal how it looks, and no more.
var looks = map[string]bool{"small": true, "large": true, "big": true, "little": true, "complete": true, "completed": true, "finished": true, "fill": true, "whole": true, "flower": true, "half": true, "incomplete": true, "incompleted": true, "hemstitched": true}

// isGroup tells whether raw token i names a group of stitches or a motif.
func (l *scanner) isGroup(i int) bool {
	if i < len(l.raw) && (l.raw[i].kind == Hyphen || l.raw[i].lower == "in" && l.raw[i-1].lower == "fill") {
		return l.isGroup(i + 1)
	}
	entry, _ := l.match(i)
	return entry != nil && (entry.canon == "group" || entry.canon == "loop" || entry.canon == "sp")
}

// picks tells whether the words before pick one of several.
func picks(before []Token) bool {
	for len(before) > 0 && before[len(before)-1].Kind == Word && before[len(before)-1].Canon == "" {
		before = before[:len(before)-1]
	}
	if len(before) == 0 {
		return false
	}
	last := before[len(before)-1]
	switch last.Canon {
	case "next", "same", "last", "each", "any", "other", "previous":
		return last.Kind == Word
	}
	return last.Kind == Ordinal
}

// counts tells whether a short name of a stitch, which ends before raw token
// i, is one here: a number or a pick stands before it, and no noun after it.
func (l *scanner) counts(before []Token, i int) bool {
	for len(before) > 0 && before[len(before)-1].Kind == Word && before[len(before)-1].Canon == "" {
		before = before[:len(before)-1]
	}
	if n := len(before); n > 3 && before[n-1].Kind == Close && before[n-3].Kind == Open {
		before = before[:n-3] // next (center) p
	}
	if len(before) == 0 {
		return false
	}
	if i < len(l.raw) && l.raw[i].kind == Word {
		if next, _ := l.match(i); next == nil || next.kind == Word && (next.canon == "row" || next.canon == "rnd" || next.canon == "loop") {
			return false
		}
	}
	last := before[len(before)-1]
	if last.Kind == Comma && (i >= len(l.raw) || l.raw[i].kind == Comma || l.raw[i].kind == Semi) {
		return len(l.raw[i-1].lower) == 1 // `3 sc, p, 3 sc`
	}
	switch last.Canon {
	case "next", "same", "last", "each", "any", "corner", "for", "more", "with", "and":
		return last.Kind == Word
	}
	return last.Kind == Number || last.Kind == Ordinal
}

// match finds the longest phrase beginning at raw token i and its length in
// raw tokens. Hyphens inside a phrase count as spaces, and so do the stops of
// dotted abbreviations (s.c., d. c.).
func (l *scanner) match(i int) (entry *wordEntry, length int) {
	trade, n := l.longest(l.vocab.trade, i)
	own, m := l.longest(l.vocab.own, i)
	if own == nil || trade != nil && (trade.canon == "corner" && l.space(i+m) || trade.canon == "sp" && l.ofChains(i)) {
		return trade, n // `corner ch-3 sp`, where the pattern has a stitch that it calls corner, or space
	}
	return own, m
}

// ofChains tells whether chains are named before raw token i, as of a space: `ch-2 space`, `2-ch sp`.
func (l *scanner) ofChains(i int) bool {
	for i--; i >= 0 && (l.raw[i].kind == Hyphen || l.raw[i].kind == Number); i-- {
	}
	return i >= 0 && (l.raw[i].lower == "ch" || l.raw[i].lower == "chain")
}

// space tells whether raw token i goes on to name a space.
func (l *scanner) space(i int) bool {
	entry, _ := l.longest(l.vocab.trade, i)
	return entry != nil && entry.kind == Word && (entry.canon == "sp" || entry.canon == "ch")
}

// longest finds the longest phrase of some words.
func (l *scanner) longest(node *wordNode, i int) (entry *wordEntry, length int) {
	for j := i; node != nil && j < len(l.raw); j++ {
		r := &l.raw[j]
		if j > i && (r.kind == Hyphen || l.dotted(j)) {
			continue
		}
		if r.kind != Word && r.kind != Number && r.kind != Ordinal {
			break
		}
		if node = node.after(r.lower); node != nil && node.entry != nil {
			entry, length = node.entry, j-i+1
		}
	}
	if entry != nil && entry.capital && l.text[l.raw[i].start] == 'a' {
		return nil, 0
	}
	return entry, length
}

// dotted tells whether raw token i is the stop of an abbreviation written
// letter by letter: s.c., d. c., sl. st.
func (l *scanner) dotted(i int) bool {
	stroke := l.raw[i].kind == Sign && l.raw[i].lower == "/" // F/O
	if l.raw[i].kind != Period && !stroke || !l.raw[i].glued || l.raw[i-1].kind != Word {
		return false
	}
	before := l.raw[i-1].lower
	return len(before) == 1 || before == "sl"
}

// letter tells a yarn or branch called A from the article that begins a
// sentence.
func (l *scanner) letter(i, n int) bool {
	r := l.raw[i]
	if n != 1 || l.text[r.start:r.end] != "A" {
		return false
	}
	begins := i == 0 || l.raw[i-1].kind == Period || l.raw[i-1].kind == Colon
	named := i+1 < len(l.raw) && l.raw[i+1].kind != Word
	return !begins || named
}

// stopped are the abbreviations that some books print with a stop.
var stopped = func() map[string]bool {
	out := map[string]bool{}
	for word := range strings.FieldsSeq("ch chs rep rpt rnd rnds st sts sp sps sk inc dec tr dc sc hdc dtr sl ss lp lps beg tog pat patt foll alt approx rem incl cl yds ins") {
		out[word] = true
	}
	return out
}()

// shades are the abbreviations that begin the name of a yarn.
var shades = map[string]bool{"lt": true, "dk": true, "med": true}

// abbreviationStop says whether the stop after an abbreviation (ch. 10, rep.
// from) belongs to it: it does where no new sentence follows.
func (l *scanner) abbreviationStop(i int) int {
	if i >= len(l.raw) || i == 0 {
		return 0
	}
	r, before := l.raw[i], l.raw[i-1]
	if r.kind != Period || !r.glued || l.text[r.start] != '.' || before.kind != Word || !stopped[before.lower] && len(before.lower) > 1 && !shades[before.lower] && before.lower != "no" {
		return 0
	}
	if i+1 >= len(l.raw) {
		return 0
	}
	next := l.raw[i+1]
	if before.lower == "no" {
		if next.kind != Number {
			return 0
		}
		return 1 // No. 3
	}
	if shades[before.lower] {
		return 1 // Dk. Green
	}
	if next.kind == Number {
		// `Ch. 10`, but `in next ch. 1 hdc in next ch`
		begins := i < 2 || l.raw[i-2].kind != Word && l.raw[i-2].kind != Number && l.raw[i-2].kind != Hyphen
		if !begins || before.lower != "ch" && before.lower != "sk" && before.lower != "rnd" {
			return 0
		}
	}
	if next.kind == Word && l.text[next.start:next.end] == next.lower && !next.glued || next.kind == Number || next.kind == Comma || next.kind == Semi {
		return 1
	}
	return 0
}

// stopsAStep tells whether the stop after a stitch, or what it goes into, ends a
// step though small letters follow, as those of the next stitch do: `inc. sc in next
// 4 sts. dec.`
func (l *scanner) stopsAStep(entry *wordEntry, i int) bool {
	if entry.kind != Stitch && nouns[entry.canon] == NounNone || i+1 >= len(l.raw) || l.raw[i].kind != Period || l.raw[i+1].glued {
		return false
	}
	next, _ := l.match(i + 1)
	return next != nil && next.kind == Stitch
}

// numberList reads a number and, where one value for each size follows it in
// brackets or after strokes, all of them as one token.
func (l *scanner) numberList(i int) (Token, int) {
	first := l.raw[i]
	value := first.value
	if first.kind == Dash {
		value = None
	}
	t := Token{Kind: Number, Values: One(value), Canon: first.lower}
	t.Span.Start, t.Span.End = first.start, first.end
	values, n := l.inBrackets(i)
	if n == 0 {
		values, n = l.bracketed(i)
	}
	if n == 0 {
		values, n = l.stroked(i)
	}
	if n == 0 || len(values) == 1 {
		if more, k := l.alternating(i); k > max(n, 4) {
			values, n = more, k
		}
	}
	if n == 0 {
		n = 1 + l.numberStop(i)
		t.Span.End = l.raw[i+n-1].end
		return t, n
	}
	t.Values = Num{Vals: append([]int{value}, values...)}
	t.Canon = l.text[first.start:l.raw[i+n-1].end]
	t.Span.End = l.raw[i+n-1].end
	return t, n
}

// numberStop says whether the stop after a number belongs to it, as some books
// print it (`1. s.c. in next st`): it does where the number begins a clause and
// a stitch in small letters follows.
func (l *scanner) numberStop(i int) int {
	if i+2 >= len(l.raw) || l.raw[i+1].kind != Period || !l.raw[i+1].glued || l.raw[i+2].glued || l.raw[i+2].kind != Word {
		return 0
	}
	next := l.raw[i+2]
	entry, n := l.match(i + 2)
	if entry == nil || l.text[next.start:next.end] != next.lower {
		return 0
	}
	switch {
	case entry.kind == Stitch && n > 1 && l.dotted(i+3):
		return 1
	case entry.kind == Word && (entry.canon == "st" || entry.canon == "sp" || entry.canon == "loop" || entry.canon == "group"):
		return 1 // no sentence begins with one in small letters
	case entry.kind != Stitch:
		return 0
	}
	if i == 0 || i > 1 && l.raw[i-2].kind == Number {
		return 0 // a row's label
	}
	switch l.raw[i-1].kind {
	case Period, Comma, Semi, Colon, Star, Open:
		return 1
	}
	return 0
}

// loneList tells the `(48, 54, 60)` of `(48, 54, 60) sts`: one value for each
// size with nothing before the bracket.
func (l *scanner) loneList(i int) bool {
	if l.vocab.Sizes == 1 || i > 0 && l.raw[i-1].kind == Number {
		return false
	}
	values, end := l.enclosed(i)
	if len(values) < 2 || len(values) != l.vocab.Sizes && !(l.vocab.Sizes == 0 && len(values) >= 3) || end+1 >= len(l.raw) {
		return false
	}
	entry, _ := l.match(end + 1)
	return entry != nil && (entry.canon == "st" || entry.kind == Stitch || entry.canon == "times")
}

// countList tells the `(48, 54, 60)` that ends a row: the count of each size.
func (l *scanner) countList(i int) bool {
	if l.vocab.Sizes < 2 || i == 0 || l.raw[i-1].kind == Number {
		return false
	}
	values, end := l.enclosed(i)
	return len(values) == l.vocab.Sizes && (end+1 == len(l.raw) || end+2 == len(l.raw) && l.raw[end+1].kind == Period)
}

// countedList tells numbers with commas between them, one for each size, from the numbers of several steps: `(48, 54, 60
// sc)`, `sc in next 12, 14, 16 sts`, `Ch 49, 55, 61.`
func (l *scanner) countedList(i int) bool {
	if l.vocab.Sizes < 2 || i == 0 {
		return false
	}
	values, n := l.separated(i)
	if len(values) != l.vocab.Sizes {
		return false
	}
	if i+n == len(l.raw) || l.raw[i+n].kind == Period {
		return l.raw[i-1].lower == "ch" || l.raw[i-1].lower == "chain"
	}
	entry, words := l.match(i + n)
	if entry == nil || entry.canon != "st" && entry.kind != Stitch {
		return false
	}
	if behind := i + n + words; l.raw[i-1].kind == Open || l.raw[i-1].kind == Comma {
		return behind < len(l.raw) && (l.raw[behind].kind == Close || l.raw[i-1].kind == Open && (l.raw[behind].kind == Comma || l.raw[behind].lower == "and"))
	}
	return entry.canon == "st" && (l.raw[i-1].lower == "next" || l.raw[i-1].lower == "last" || l.raw[i-1].lower == "first")
}

// separated reads numbers with commas between them from raw token i on, and how many tokens they are.
func (l *scanner) separated(i int) (values []int, length int) {
	for j := i; j < len(l.raw) && l.raw[j].kind == Number; j += 2 {
		values, length = append(values, l.raw[j].value), j-i+1
		if j+1 == len(l.raw) || l.raw[j+1].kind != Comma {
			break
		}
	}
	return values, length
}

// plain is the token of raw token i alone.
func (l *scanner) plain(i int) Token {
	r := l.raw[i]
	t := Token{Kind: r.kind, Canon: r.lower}
	t.Span.Start, t.Span.End = r.start, r.end
	return t
}

// ledList tells the `(102) 114 (126)` of a pattern in three sizes that names the
// first in brackets.
func (l *scanner) ledList(i int) bool {
	if l.vocab.Sizes < 3 || i > 0 && l.raw[i-1].kind == Number {
		return false
	}
	values, _ := l.alternating(i - 1)
	return len(values) == l.vocab.Sizes
}

// dashList tells the dash of `- (-, 2, 2) times`, which stands for a size that
// skips, from one that separates.
func (l *scanner) dashList(i int) bool {
	values, n := l.bracketed(i)
	return n > 0 && len(values) > 0 && (len(values)+1 == l.vocab.Sizes || len(values)+1 == len(l.vocab.names) || values[0] == None)
}

// bracketed reads the `(91, 101, 111)` of `81 (91, 101, 111)`.
func (l *scanner) bracketed(i int) (values []int, length int) {
	if i+2 >= len(l.raw) || l.raw[i+1].kind != Open {
		return nil, 0
	}
	values, end := l.enclosed(i + 1)
	if values == nil || !l.sizeList(len(values)+1, end) || l.rangeIn(i+1, values) {
		return nil, 0
	}
	return values, end - i + 1
}

// inBrackets reads the `(67) [73]` of `61 (67) [73]` and the `(67, 70) [73]` of `61
// (67, 70) [73]`: brackets after one another, with a value between them for each size
// but the first. Where the sizes are not named they must differ in shape, for a count
// may follow a list in brackets like its own.
func (l *scanner) inBrackets(i int) (values []int, length int) {
	j, shapes := i, ""
	for j+1 < len(l.raw) && l.raw[j+1].kind == Open {
		inner, end := l.enclosed(j + 1)
		if inner == nil {
			break
		}
		values, shapes, j = append(values, inner...), shapes+l.raw[j+1].lower, end
	}
	n := len(values) + 1
	if len(shapes) < 2 || n != l.vocab.Sizes && (l.vocab.Sizes > 0 || strings.Count(shapes, shapes[:1]) == len(shapes)) {
		return nil, 0
	}
	return values, j - i + 1
}

// rangeIn tells the `{7-16}` of `Rows 7-14 {7-16}`, a range, from two values.
func (l *scanner) rangeIn(open int, values []int) bool {
	sign := l.raw[open+2].kind
	return len(values) == 2 && l.vocab.Sizes == 2 && (sign == Hyphen || sign == Dash)
}

// enclosed reads numbers, and dashes for sizes that skip, between the bracket
// at raw token i and the one that closes it at end. It gives nil for anything
// else.
func (l *scanner) enclosed(i int) (values []int, end int) {
	wantNumber := true
	dashes, others := 0, 0 // that part them: of both the dashes are those of ranges
	for j := i + 1; j < len(l.raw); j++ {
		r := l.raw[j]
		switch {
		case r.kind == Number && wantNumber:
			values = append(values, r.value)
			wantNumber = false
		case r.kind == Dash && wantNumber:
			values = append(values, None)
			wantNumber = false
		case r.kind == Close && !wantNumber && (dashes == 0 || others == 0):
			return values, j
		case !wantNumber && (r.kind == Dash || r.kind == Hyphen):
			wantNumber = true
			dashes++
		case !wantNumber && (r.kind == Comma || r.kind == Colon || r.kind == Semi || r.kind == Sign && r.lower == "/"):
			wantNumber = true
			others++
		default:
			return nil, 0
		}
	}
	return nil, 0
}

// alternating reads the `(4) 6 (8) 10` of `2 (4) 6 (8) 10`.
func (l *scanner) alternating(i int) (values []int, length int) {
	j := i
	for {
		inner, n := []int(nil), 0
		if j+3 < len(l.raw) && l.raw[j+1].kind == Open && l.raw[j+2].kind == Number && l.raw[j+3].kind == Close {
			inner, n = []int{l.raw[j+2].value}, 3
		}
		if n == 0 {
			return values, j - i + 1
		}
		values = append(values, inner...)
		j += n
		if j+1 >= len(l.raw) || l.raw[j+1].kind != Number {
			return values, j - i + 1
		}
		values = append(values, l.raw[j+1].value)
		j++
	}
}

// sizeList decides whether n numbers, the last n-1 of them in a bracket that
// closes at raw token j, are one value for each size. Three and more can be nothing
// else; of two the second may be a stated count, which ends its line.
func (l *scanner) sizeList(n, j int) bool {
	if n >= 3 || l.vocab.Sizes == n {
		return true
	}
	if l.vocab.Sizes < 2 {
		return l.vocab.Sizes == 0 && l.countedThing(j+1)
	}
	return j+1 < len(l.raw) && l.raw[j+1].kind != Period
}

// countedThing tells whether the word at raw token i is one that a number
// before it counts: `3 (4) times`, `47 {55} ch,`.
func (l *scanner) countedThing(i int) bool {
	entry, n := l.match(i)
	if entry == nil {
		return false
	}
	switch entry.canon {
	case "times", "sp", "loop", "group", "row", "rnd":
		return true
	case "ch":
		if i+n+1 < len(l.raw) && l.raw[i+n].kind == Number {
			after, _ := l.match(i + n + 1)
			return after != nil && (after.canon == "loop" || after.canon == "sp") // skip 4 (5) ch 5 loops
		}
		return true
	case "st":
		return i+n >= len(l.raw) || l.raw[i+n].kind != Number
	}
	return false
}

// stroked reads the `/91/101` of `81/91/101` and the ` / 91 / 101` of `81 / 91 / 101`, and,
// where there are so many sizes, the `-91-101` of `81-91-101`.
func (l *scanner) stroked(i int) (values []int, length int) {
	if values, length = l.joined(i, Sign); len(values) >= 2 || len(values) == 1 && l.vocab.Sizes == 2 {
		return values, length
	}
	if values, length = l.apart(i); len(values)+1 == l.vocab.Sizes || l.vocab.Sizes == 0 && len(values) >= 2 {
		return values, length
	}
	if values, length = l.joined(i, Hyphen); len(values) >= 2 && len(values)+1 == l.vocab.Sizes && !l.numbersRows(i) && slices.IsSorted(append([]int{l.raw[i].value}, values...)) {
		return values, length
	}
	return nil, 0
}

// numbersRows tells the numbers of rows, which raw token i begins: `Rows 2-4-6`.
func (l *scanner) numbersRows(i int) bool {
	if i == 0 {
		return false
	}
	switch strings.TrimSuffix(l.raw[i-1].lower, "s") {
	case "row", "rnd", "round", "r", "rd", "step":
		return true
	}
	return false
}

// joined reads the numbers after one at raw token i that strokes or hyphens join to it without
// a blank.
func (l *scanner) joined(i int, by Kind) (values []int, length int) {
	j := i
	for j+2 < len(l.raw) && l.raw[j+1].kind == by && (by != Sign || l.raw[j+1].lower == "/") && l.raw[j+1].glued &&
		l.raw[j+2].kind == Number && l.raw[j+2].glued {
		values = append(values, l.raw[j+2].value)
		j += 2
	}
	return values, j - i + 1
}

// apart reads the numbers after one at raw token i that strokes or bars with blanks around them
// part from it.
func (l *scanner) apart(i int) (values []int, length int) {
	j := i
	for j+2 < len(l.raw) && l.raw[j+1].kind == Sign && (l.raw[j+1].lower == "/" || l.raw[j+1].lower == "|") &&
		l.raw[j+1].lower == l.raw[i+1].lower && !l.raw[j+1].glued && !l.raw[j+2].glued && l.raw[j+2].kind == Number {
		values = append(values, l.raw[j+2].value)
		j += 2
	}
	return values, j - i + 1
}
