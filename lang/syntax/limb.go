package syntax

import (
	"slices"
	"strings"

	"stitchproof/lang/source"
)

// Writers call a branch by what it is of: a tine, a thorn, a side root. A limb is a
// branch that a label names, `low tine: ch 8, sc in 2nd ch from hook …`; the way home
// speaks of what it left by its own noun, `back on the beam`, `go back down the long
// branch`. Such words are read here as those that the grammar knows: the label as one
// name, the way home as `return to` it, and `of the side root` with the name in one.

// maxLimb is the most words that name a limb.
const maxLimb = 5

// nameLimbs reads the names of limbs, and the ways home from them, in the tokens of an
// instruction.
func (l *scanner) nameLimbs(tokens []Token) []Token {
	p := pruner{scanner: l, in: tokens, known: l.vocab.limbs}
	labels := p.labels()
	if len(labels) == 0 && len(p.known) == 0 && !p.mayGoHome() && !p.mayTell() && !p.ofBoldBranch() {
		return tokens
	}
	for _, found := range labels {
		if found.word || found.tip {
			continue
		}
		p.know(p.words(found.from, found.to))
	}
	p.branches = len(labels) > 0 || slices.ContainsFunc(tokens, isBranch) || p.branchesUnnamed()
	out := make([]Token, 0, len(tokens))
	for i := 0; i < len(tokens); {
		if len(labels) > 0 && labels[0].at == i {
			out = p.label(out, labels[0])
			i, labels = labels[0].end, labels[1:]
			continue
		}
		if to, more := p.home(out, i); to > i {
			out, i = more, to
			continue
		}
		if to, more := p.tells(out, i); to > i {
			out, i = more, to
			continue
		}
		if to, more := p.ofLimb(out, i); to > i {
			out, i = more, to
			continue
		}
		if to, more := p.limbChain(out, i); to > i {
			out, i = more, to
			continue
		}
		out = append(out, tokens[i])
		i++
	}
	return out
}

// pruner names the limbs of one instruction.
type pruner struct {
	*scanner
	in       []Token
	known    map[string]bool // what limbs, and what they grow from, are called here and elsewhere
	own      bool            // known is a map of this instruction's own
	branches bool            // something branches in the instruction
}

// know adds a name, under which its last words are known as well: a `side root` is what
// `first side root` names.
func (p *pruner) know(name string) {
	if !p.own {
		known := make(map[string]bool, len(p.known)+maxLimb)
		for other := range p.known {
			known[other] = true
		}
		p.known, p.own = known, true
	}
	endings(name, func(tail string) { p.known[tail] = true })
	endings(OneOf(name), func(tail string) { p.known[tail] = true })
}

// OneOf is what one of several limbs is called that are named together: a `barb` of the
// `first pair of barbs`.
func OneOf(name string) string {
	if _, of, several := strings.Cut(name, " of "); several {
		name = of
	}
	if strings.HasSuffix(name, "s") && !strings.HasSuffix(name, "ss") {
		return name[:len(name)-1]
	}
	return name
}

// endings visits a name of several words and what is left of it without the first ones.
func endings(name string, visit func(string)) {
	for rest, more := name, true; more; {
		visit(rest)
		_, rest, more = strings.Cut(rest, " ")
	}
}

// limbLabel is a label: its name from token from to token to, the whole of it from token at
// to token end.
type limbLabel struct {
	at, from, to, end int
	several           bool
	word              bool // it is only called a branch, in italics
	tip               bool // it is what follows to the end of one that is open
	behind            bool // it stands behind the chain
}

// labels finds the labels of limbs: names with a colon, or `for the fork`, before a chain
// that is then worked along from the hook.
func (p *pruner) labels() []limbLabel {
	var out []limbLabel
	if !slices.ContainsFunc(p.in, func(t Token) bool { return t.Kind == Ordinal || isNearest(t) || isHook(t) || skips(t) }) && !p.ofBoldBranch() {
		return nil // no chain is counted from the hook
	}
	for i := 0; i < len(p.in); i++ {
		if !p.begins(i) || p.ofBranch(i) {
			continue
		}
		found, ok := p.labelAt(i)
		if !ok {
			found, ok = p.labelBehind(i)
		}
		if ok {
			out = append(out, found)
			i = found.end - 1
		}
	}
	return out
}

// boldStep is where the title of a step stands that is in bold behind its number, `4. **Branch B.** 7 ch`, 0 for no such step.
func (p *pruner) boldStep() int {
	for i := 2; i < min(len(p.in)-1, 4); i++ {
		if p.in[i].Kind == Star && p.in[i].Canon == "**" && p.in[i-2].Kind == Number {
			return i + 1
		}
	}
	return 0
}

// ofBoldBranch tells a step with the word for a branch in its title, or one that says that it goes out: `4. **Branch B.**
// 7 ch`, `5. **Shoot B1, outward.** 5 ch`.
func (p *pruner) ofBoldBranch() bool {
	title := p.boldStep()
	for i := title; i > 0 && i < min(len(p.in), title+mostInBold) && p.in[i].Kind != Star; i++ {
		if isBranch(p.in[i]) || strings.HasPrefix(p.spelled(p.in[i]), "outward") {
			return true
		}
	}
	return false
}

func skips(t Token) bool { return t.Kind == Word && t.Canon == "skip" }

func isHook(t Token) bool { return t.Kind == Word && t.Canon == "hook" }

// isNearest tells the word for the chain that lies next to the hook: `miss the nearest chain`.
func isNearest(t Token) bool { return t.Kind == Word && t.Canon == "nearest" }

// begins tells whether a clause may begin at token i.
func (p *pruner) begins(i int) bool {
	if i == 0 || separates(p.in[i-1]) {
		return true
	}
	if i == 1 && setOff(p.in[:2], p.text) {
		return true // `7  fork: ch 5`
	}
	before := p.in[i-1]
	return before.Kind == Star || before.Kind == Close || before.Kind == Word && before.Canon == "and"
}

// ofBranch tells whether a branch is named before the comma in front of token i, of which the
// words there tell more: `branch B, out: ch 9`.
func (p *pruner) ofBranch(i int) bool {
	return i > 2 && p.in[i-1].Kind == Comma && callable(p.in[i-2]) && isBranch(p.in[i-3])
}

// resumed is a branch that is gone on along, with the tokens behind its name and from the mark on.
type resumed struct {
	name     Token
	from, to int
}

// resumes reads `branch B, home:` at token i, or the `Shoot E1, onward.` of a bold title, which goes on along a branch
// that was left.
func (p *pruner) resumes(i int) (resumed, bool) {
	var on resumed
	switch {
	case i+4 >= len(p.in):
		return on, false
	case isBranch(p.in[i]) && callable(p.in[i+1]):
		on.name, on.from = p.in[i+1], i+2
	case i > 0 && i == p.boldStep() && p.numbersLimb(i+1):
		on.from = i + 2
		if p.glued(on.from) {
			on.from++
		}
		if on.name = p.merged(i, on.from); !p.knows(on.name.Canon) {
			return on, false
		}
	default:
		return on, false
	}
	home := false
	for on.to = on.from; on.to < len(p.in) && on.to < i+mostInBold; on.to++ {
		switch t := p.in[on.to]; {
		case t.Kind == Colon, p.boldStop(on.to):
			return on, home && !chainsOut(p.in, on.to+1)
		case t.Kind == Comma && on.to == on.from, t.Kind == Word:
		case t.Kind != Name:
			return on, false
		}
		home = home || p.again(on.to) || goesOnWords[p.spelled(p.in[on.to])] || ends[p.in[on.to].Canon] || p.in[on.to].Canon == "return"
	}
	return on, false
}

// goesOnWords tell that a branch is gone on along that was left: `branch B, home:`, `**Branch B, onward.**`.
var goesOnWords = map[string]bool{"home": true, "onward": true, "onwards": true}

// labelAt reads the label that begins at token i.
func (p *pruner) labelAt(i int) (limbLabel, bool) {
	found := limbLabel{at: i}
	star, fork := "", false
	for ; i < len(p.in); i++ {
		switch t := p.in[i]; {
		case t.Kind == Word && (t.Canon == "" || t.Canon == "and" || t.Canon == "work"):
			continue
		case t.Kind == Word && t.Canon == "for":
			fork = true
			continue
		case t.Kind == Star && star == "":
			star = t.Canon // the label stands in italics
			continue
		}
		break
	}
	found.from = i
	for i < len(p.in) && i < found.from+maxLimb && (p.names(p.in[i]) || i > found.from && (p.numbersLimb(i) || star == "**" && isBranch(p.in[i-1]) && callable(p.in[i]))) {
		i++
	}
	if i == found.from || i >= len(p.in) {
		return found, false
	}
	if of := p.ofChain(found.from, i); of > 0 && star == "" && !fork {
		found.to, found.end = of, i
		return found, true
	}
	found.word = isBranch(p.in[found.from]) && star != ""
	found.tip = p.isTip(found.from, i)
	last := p.in[i-1]
	if last.Kind == Number {
		last = p.in[i-2]
	}
	if !found.word && !found.tip && !p.nameable(p.in[found.from], last) {
		return found, false
	}
	found.to = i
	i = p.pastPlace(p.pastOwner(i))
	grown := p.pastGrowth(i)
	grows := grown > i
	if i = grown; fork {
		i = p.pastGround(i)
	}
	bold := star == "**"
	if bold {
		i = p.toBoldStop(i)
	}
	marked := false
	for ; i < len(p.in); i++ {
		switch t := p.in[i]; {
		case (t.Kind == Colon || t.Kind == Dash || star == "**" && p.boldStop(i) || p.titleStop(found, i)) && !marked:
			marked = true
			continue
		case t.Kind == Star && star != "" && t.Canon == star:
			star = ""
			continue
		}
		break
	}
	if fork && i < len(p.in) && p.in[i].Kind == Comma {
		i++ // for the fork, ch 4
	}
	found.end = i
	if star == "" && !marked && !fork {
		marked = p.in[found.from].Kind == Ordinal && found.to > found.from+1 && chainsOut(p.in, i) // `first twiglet 5 ch, miss 1 ch, …`
	}
	if star != "" || marked == fork {
		return found, false
	}
	if i < len(p.in) && p.in[i].Kind == Star {
		found.several = true
		i++
	}
	_, on := p.resumes(found.from)
	out := chainsOut(p.in, i) || bold && !on && p.ofBoldBranch() && afterChain(p.in, i) > 0 || grows && afterChain(p.in, i) > 0 || p.in[found.from].Kind == Ordinal && !slices.ContainsFunc(p.in[:found.at], worksOrChains) && p.chainsOnly(i) || marked && p.spokenOf(found, i)
	return found, out && (found.several || !p.hasOf(found.from, found.to))
}

// ofChain gives the end of the name in `stalk of 6 ch`, from a token to the one before the number, where the instruction
// goes on to speak of the `stalk ch`, or another did; 0 for any other.
func (p *pruner) ofChain(from, number int) int {
	of := number - 1
	if of <= from || p.in[of].Canon != "of" || p.in[of].Kind != Word || p.in[of-1].Kind != Name || number+1 >= len(p.in) || p.in[number].Kind != Number || p.in[number+1].Canon != "ch" {
		return 0
	}
	for i := number + 2; i+1 < len(p.in); i++ {
		if p.in[i].Canon == p.in[of-1].Canon && p.in[i+1].Canon == "ch" {
			return of
		}
	}
	if p.knows(p.words(from, of)) {
		return of
	}
	return 0
}

// spokenOf tells whether the instruction speaks of a limb again behind the chain at a token, of its chains or of the way
// along it: `Stalk: 8 ch. … Home down the stalk: …`.
func (p *pruner) spokenOf(found limbLabel, i int) bool {
	from, last := afterChain(p.in, i), p.in[found.to-1]
	if from == 0 || last.Kind != Name {
		return false
	}
	for j := from; j < len(p.in); j++ {
		if p.in[j].Kind == Name && p.in[j].Canon == last.Canon && (j+1 < len(p.in) && p.in[j+1].Canon == "ch" || alongWords[p.spelled(p.in[j-1])] || alongWords[p.spelled(p.in[max(0, j-2)])]) {
			return true
		}
	}
	return false
}

// alongWords lead along a limb.
var alongWords = map[string]bool{"down": true, "along": true, "up": true}

// numbersLimb tells the number or the letter at token i of a limb among several, `arm two`, `thorn E`, which a mark follows, or the star of what is set off.
func (p *pruner) numbersLimb(i int) bool {
	t := p.in[i]
	numbers := t.Kind == Number && !t.Values.PerSize() && t.Values.At(0) > 0 && t.Values.At(0) <= mostLimbs
	if !numbers && !p.letter(t) || p.in[i-1].Kind != Name || i+1 == len(p.in) {
		return false
	}
	mark := p.in[i+1]
	if !numbers && i+2 < len(p.in) && p.glued(i+1) {
		mark = p.in[i+2] // `shoot B1`
	}
	return separates(mark) || mark.Kind == Open || mark.Kind == Close || strings.HasPrefix(p.text[mark.Span.Start:], "*")
}

// glued tells a number at token i that stands right behind the letter before it, `B1`.
func (p *pruner) glued(i int) bool {
	return p.in[i].Kind == Number && i > 0 && p.letter(p.in[i-1]) && p.in[i-1].Span.End == p.in[i].Span.Start
}

// mostLimbs is how many branches of one kind are told apart by numbers.
const mostLimbs = 40

// boldStop tells the stop at token i within the stars that end a title in bold: `**Arm one.** Ch 12`.
func (p *pruner) boldStop(i int) bool {
	return i+1 < len(p.in) && p.in[i].Kind == Period && p.in[i+1].Kind == Star && p.in[i+1].Canon == "**" && p.in[i+1].Span.Start == p.in[i].Span.End
}

// titleStop tells the stop at token i that ends a title at the head of a paragraph: `Second twig. Ch 10`. What is fastened
// off there is a piece.
func (p *pruner) titleStop(title limbLabel, i int) bool {
	return title.at == 0 && title.from == 0 && i == title.to && p.in[i].Kind == Period && title.to == 2 && p.in[0].Kind == Ordinal && !slices.ContainsFunc(p.in[i:], func(t Token) bool { return t.Kind == Word && t.Canon == "fasten" })
}

// toBoldStop passes over what more such a title says behind a comma, at token i. It gives i for nothing.
func (p *pruner) toBoldStop(i int) int {
	if p.in[min(i, len(p.in)-1)].Kind != Comma {
		return i
	}
	for j := i + 1; j < len(p.in) && j <= i+farthestHook; j++ {
		switch t := p.in[j]; {
		case p.boldStop(j):
			return j
		case t.Kind != Word && t.Kind != Name && t.Kind != Hyphen && t.Kind != Number && t.Kind != Comma:
			return i
		}
	}
	return i
}

// pastOwner passes over what a branch is on, from the word at token i to the mark of the label: `shoot on B: ch 5`, `thorn on
// the side shoot: ch 4`. It gives i for nothing.
func (p *pruner) pastOwner(i int) int {
	if i >= len(p.in) || p.in[i].Kind != Word || p.in[i].Canon != "on" {
		return i
	}
	for j := i + 1; j < len(p.in) && j <= i+maxLimb; j++ {
		switch {
		case p.in[j].Kind == Colon && (callable(p.in[j-1]) || p.in[j-1].Canon == "stem"):
			return j
		case !p.names(p.in[j]) && !p.letter(p.in[j]):
			return i
		}
	}
	return i
}

// pastPlace passes over where a branch is, between the comma at token i behind its name and the mark
// of the label, or how it is: `third thorn, on the other side of the stem: ch 4`, `twig three, facing twig two: ch 7`,
// `twig two, which forks: ch 5`. It gives i for nothing.
func (p *pruner) pastPlace(i int) int {
	if i >= len(p.in) || p.in[i].Kind != Comma {
		return i
	}
	for j := i + 1; j < len(p.in) && j <= i+farthestHook; j++ {
		switch t := p.in[j]; {
		case t.Kind == Colon && j > i+1:
			return j
		case j == i+1 && !p.placesLimb(j), t.Kind != Word && t.Kind != Name && t.Kind != Hyphen && !(t.Kind == Number && p.in[j-1].Kind == Name):
			return i
		}
	}
	return i
}

// placesLimb tells the word, token i, with which it begins where a branch is or how.
func (p *pruner) placesLimb(i int) bool {
	t := p.in[i]
	switch t.Kind {
	case Word:
		return t.Canon == "on" || t.Canon == "at" || t.Canon == "other" || t.Canon == "across" || p.spelled(t) == "which"
	case Name:
		return t.Canon == "facing" || t.Canon == "beside"
	}
	return false
}

// pastGrowth passes over what a branch is said to grow, from the word at token i to the mark of the label: `a shoot with
// a thorn of its own: ch 7`. It gives i for nothing.
func (p *pruner) pastGrowth(i int) int {
	if i >= len(p.in) || p.in[i].Kind != Word || p.in[i].Canon != "with" {
		return i
	}
	for j := i + 1; j < len(p.in) && j <= i+farthestHook; j++ {
		switch t := p.in[j]; {
		case t.Kind == Colon:
			return j
		case t.Kind != Word && t.Kind != Name && t.Kind != Hyphen && t.Kind != Stitch:
			return i
		}
	}
	return i
}

// pastGround passes over what a branch without a mark behind its name grows from, or how it lies: `for the twig
// on this shoot make 6 ch`, `for the third shoot, which lies on the other side, make 8 ch`. It gives i for nothing.
func (p *pruner) pastGround(i int) int {
	if i+1 >= len(p.in) {
		return i
	}
	on := p.in[i].Kind == Word && (p.in[i].Canon == "on" || p.in[i].Canon == "at")
	which := p.in[i].Kind == Comma && p.spelled(p.in[i+1]) == "which"
	if !on && !which {
		return i
	}
	for j := i + 1; j < len(p.in) && j <= i+farthestHook; j++ {
		switch t := p.in[j]; {
		case which && t.Kind == Comma, on && afterChain(p.in, j) > 0:
			return j
		case t.Kind != Word && t.Kind != Name && t.Kind != Ordinal:
			return i
		}
	}
	return i
}

// isTip tells what the stem, or a branch that was begun, ends with: its `tip`, to which its chain
// goes on. What is returned from is a branch called so.
func (p *pruner) isTip(from, to int) bool {
	if to != from+2 || p.in[from].Kind != Word || p.spelled(p.in[from+1]) != "tip" {
		return false
	}
	return p.in[from].Canon == "stem" || isBranch(p.in[from]) && slices.ContainsFunc(p.in[:from], isBranch) && !slices.ContainsFunc(p.in[to:], goesHome)
}

// worksOrChains tells a word of work.
func worksOrChains(t Token) bool { return t.Kind == Stitch || t.Kind == Word && t.Canon == "ch" }

// chainsOnly tells whether a chain is made at token i and no stitch in the same sentence: the
// branch branches again before any of it is worked.
func (p *pruner) chainsOnly(i int) bool {
	from := afterChain(p.in, i)
	if from == 0 {
		return false
	}
	for _, t := range p.in[from:] {
		switch t.Kind {
		case Stitch:
			return false
		case Period:
			return true
		}
	}
	return true
}

// labelBehind reads the name that stands behind a chain at token i, after the work has begun:
// `ch 4 for the left fork, sl st in 2nd ch from hook`.
func (p *pruner) labelBehind(i int) (limbLabel, bool) {
	if i+3 >= len(p.in) {
		return limbLabel{}, false
	}
	at := afterChain(p.in, i)
	if further := p.chainsFurther(i); further > 0 {
		at = further
	} else if !chainsOut(p.in, i) || !holds(p.in[:i], Stitch) {
		return limbLabel{}, false
	}
	found := limbLabel{at: at, from: at, behind: true}
	for found.from < len(p.in) && p.in[found.from].Kind == Word && (p.in[found.from].Canon == "" || p.in[found.from].Canon == "for") {
		found.from++
	}
	for found.to = found.from; found.to < len(p.in) && found.to < found.from+maxLimb && p.names(p.in[found.to]); found.to++ {
	}
	found.end = found.to
	named := found.to > found.from && p.in[found.at].Canon == "for" && p.in[found.from].Canon != "other" && p.nameable(p.in[found.from], p.in[found.to-1]) && !p.hasOf(found.from, found.to)
	return found, named && found.end < len(p.in) && separates(p.in[found.end])
}

// chainsFurther gives the token after `make 12 more ch`, at token i, of a sentence that says what else but what
// they are for: `make 12 more ch for the first shoot`. It gives 0 for any other.
func (p *pruner) chainsFurther(i int) int {
	for i < len(p.in) && p.in[i].Kind == Word && (p.in[i].Canon == "" || p.in[i].Canon == "work") {
		i++
	}
	if i+5 >= len(p.in) || p.in[i].Kind != Number || p.in[i+1].Canon != "more" || p.in[i+2].Canon != "ch" || p.in[i+3].Canon != "for" || holds(p.in, Stitch) {
		return 0
	}
	return i + 3
}

// names tells whether a token may be one of those that name a limb.
func (p *pruner) names(t Token) bool {
	switch t.Kind {
	case Name:
		return len(t.Canon) > 2 && t.Written != colourToken
	case Ordinal, Hyphen:
		return true
	case Word:
		return limbWords[t.Canon]
	}
	return false
}

// limbWords are words of the trade that also stand in the name of a limb.
var limbWords = map[string]bool{
	"": true, "stem": true, "branch": true, "top": true, "base": true, "group": true, "side": true, "next": true, "last": true,
	"other": true, "center": true, "remaining": true, "post": true, "of": true, "foundation": true, "long": true,
}

// limbNouns are those of limbWords that a name may end in.
var limbNouns = map[string]bool{"stem": true, "branch": true, "group": true, "top": true, "base": true, "post": true}

// nameable tells whether a name may begin and end with two tokens. What begins with the
// word is named as a branch, and one number more or less makes none.
func (p *pruner) nameable(first, last Token) bool {
	if isBranch(first) || first.Canon == "of" {
		return false
	}
	return last.Kind == Name || last.Kind == Word && limbNouns[last.Canon]
}

// hasOf tells the `first pair of thorns`, which no single limb is called.
func (p *pruner) hasOf(from, to int) bool {
	return slices.ContainsFunc(p.in[from:to], func(t Token) bool { return t.Kind == Word && t.Canon == "of" })
}

// farthestHook is how many words after a chain its first stitch may take to say that it is
// worked from the hook.
const farthestHook = 14

// chainsOut tells whether a chain is made at token i, along which the next step goes from
// the hook.
func chainsOut(tokens []Token, i int) bool {
	from := afterChain(tokens, i)
	if from == 0 {
		return false
	}
	if skipsNearest(tokens, from) {
		return true
	}
	for j := from; j < min(len(tokens), from+farthestHook); j++ {
		switch t := tokens[j]; {
		case countsFromHook(tokens, j):
			return true
		case (t.Kind == Semi || t.Kind == Period) && j > from, t.Kind == Word && (t.Canon == "row" || t.Canon == "rnd"):
			return false
		}
	}
	return false
}

// skipsNearest tells whether behind a chain, which ends before token i, a few of its own are skipped and stitches go along
// the others: `7 ch, miss 1 ch, 1 dc in each of the next 6 ch`. A mesh skips as many as it chains.
func skipsNearest(tokens []Token, i int) bool {
	chain := tokens[i-1]
	if chain.Kind != Number {
		chain = tokens[i-2]
	}
	if i < len(tokens) && (tokens[i].Kind == Comma || tokens[i].Kind == Period) {
		i++
	}
	i += saysHome(tokens[i:])
	if i+2 >= len(tokens) || chain.Kind != Number || !skips(tokens[i]) {
		return false
	}
	if i++; tokens[i].Kind == Word && tokens[i].Canon == "" {
		i++
	}
	return i+1 < len(tokens) && tokens[i].Kind == Number && tokens[i+1].Canon == "ch" && chain.Values.At(0) > tokens[i].Values.At(0)+1
}

// saysHome is how many tokens say with a colon that what comes next is the way home: `Come home:`.
func saysHome(tokens []Token) int {
	if len(tokens) > 1 && tokens[0].Kind == Word && tokens[0].Canon == "return" && tokens[1].Kind == Colon {
		return 2
	}
	return 0
}

// afterChain gives the token after the chain that is made at token i, 0 where none is.
func afterChain(tokens []Token, i int) int {
	for i < len(tokens) && tokens[i].Kind == Word && (tokens[i].Canon == "" || tokens[i].Canon == "work") {
		i++
	}
	if i+1 >= len(tokens) {
		return 0
	}
	a, b := tokens[i], tokens[i+1]
	if !(a.Canon == "ch" && a.Kind == Word && (b.Kind == Number || b.Kind == Hyphen || b.Kind == Dash)) && !(a.Kind == Number && b.Kind == Word && b.Canon == "ch") {
		return 0
	}
	return i + 2
}

// countsFromHook tells whether token i says that chains are counted from the hook: by the
// word, in `from the 2nd ch`, or in `the nearest ch`.
func countsFromHook(tokens []Token, i int) bool {
	if isHook(tokens[i]) || isNearest(tokens[i]) {
		return true
	}
	if i+1 >= len(tokens) || tokens[i].Kind != Ordinal || tokens[i+1].Canon != "ch" {
		return false
	}
	for i--; i >= 0 && tokens[i].Kind == Word && tokens[i].Canon == ""; i-- {
	}
	return i >= 0 && tokens[i].Kind == Word && (tokens[i].Canon == "from" || tokens[i].Canon == "beg")
}

// branchesUnnamed tells whether a chain that no word names is worked along from the hook
// after the row has begun.
func (p *pruner) branchesUnnamed() bool {
	for i, worked := 0, false; i < len(p.in); i++ {
		if p.in[i].Kind == Stitch {
			worked = true
		} else if worked && p.begins(i) && chainsOut(p.in, i) {
			return true
		}
	}
	return false
}

// label writes a label as one name.
func (p *pruner) label(out []Token, found limbLabel) []Token {
	out = p.filling(out, found.at, found.from)
	if found.word {
		out = append(out, p.in[found.from:found.to]...)
		return p.endLabel(out, found)
	}
	name := p.merged(found.from, found.to)
	switch {
	case found.tip: // it only says where the chain comes to
	case found.several:
		name.Written = limbsToken
	case found.behind:
		name.Written = behindToken
	default:
		name.Written = limbToken
	}
	return p.endLabel(append(out, name), found)
}

// endLabel writes what comes after the name of a label.
func (p *pruner) endLabel(out []Token, found limbLabel) []Token {
	for _, t := range p.in[found.to:found.end] {
		if t.Kind == Colon || t.Kind == Dash || t.Kind == Period || t.Kind == Comma && t.Span == p.in[found.end-1].Span {
			t.Kind = Colon
		} else {
			t.Kind, t.Canon = Word, ""
		}
		out = append(out, t)
	}
	return out
}

// merged is the name that tokens from to to make.
func (p *pruner) merged(from, to int) Token {
	return Token{Kind: Name, Canon: p.words(from, to), Span: spanOf(p.in[from:to])}
}

// words are those of some tokens, without the ones that mean nothing.
func (p *pruner) words(from, to int) string {
	var out []string
	for i := from; i < to; i++ {
		switch t := p.in[i]; {
		case i > from && p.glued(i):
			out[len(out)-1] += p.spelled(t)
		case t.Kind != Hyphen && (t.Kind != Word || t.Canon != ""):
			out = append(out, p.spelled(t))
		}
	}
	return strings.Join(out, " ")
}

// mayGoHome tells whether any words could be those of a way home.
func (p *pruner) mayGoHome() bool {
	return slices.ContainsFunc(p.in, func(t Token) bool {
		return t.Kind == Word && (t.Canon == "back" || t.Canon == "return" || ends[t.Canon]) || t.Kind == Name && t.Canon == "home" || t.Canon == "comment" || p.spelled(t) == "again"
	})
}

// ends are the words that go on along what was begun to its end: `finish the branch`.
var ends = map[string]bool{"continue": true, "made": true, "end": true, "remaining": true}

// mayTell tells whether a sentence may tell of the stem, or of a branch by its word or letter, or how many
// there are of something, which need no branch in it.
func (p *pruner) mayTell() bool {
	holder := slices.IndexFunc(p.in, func(t Token) bool { return isBranch(t) || t.Kind == Name && len(t.Canon) == 1 })
	for i, t := range p.in {
		if t.Kind == Word && t.Canon == "in" && p.counts(i) {
			return true
		}
		if has, _ := p.tellsOfAll(i); has > i {
			return true
		}
	}
	return slices.ContainsFunc(p.in, func(t Token) bool { return t.Kind == Word && t.Canon == "stem" || t.Kind == Name && t.Canon == "is" }) ||
		holder >= 0 && slices.ContainsFunc(p.in[holder:], func(t Token) bool { return t.Kind == Word && t.Canon == "have" })
}

// home reads a way home that begins at token i: `back on the beam`, `go back down the long
// branch`, `carry on along the stem`. It gives the token after it, i for none.
func (p *pruner) home(out []Token, i int) (end int, more []Token) {
	if !p.begins(i) || i+1 >= len(p.in) {
		return i, nil
	}
	if on, ok := p.resumes(i); ok {
		begin, end := p.in[i].Span.Start, min(p.in[i].Span.End, on.name.Span.Start)
		cut := min(begin+1, end)
		out = append(out, Token{Kind: Word, Canon: "return", Written: homeToken, Span: source.Span{Start: begin, End: cut}})
		out = append(out, Token{Kind: Word, Canon: "to", Span: source.Span{Start: cut, End: end}}, on.name)
		return on.to, p.filling(out, on.from, on.to)
	}
	j, bare := i, false
	switch t := p.in[i]; {
	case t.Kind == Word && (t.Canon == "back" || t.Canon == "return" || ends[t.Canon]):
		j++
	case p.arrives(i) > i:
		j = p.arrives(i)
	case t.Kind == Word && t.Canon == "on" && alongWords[p.spelled(p.in[i+1])]:
		j++ // `On down the side branch:`
	case t.Kind == Name && comes[t.Canon]:
		j++
		if p.in[j].Kind == Word && p.in[j].Canon == "back" {
			j++
		}
	default:
		bare = true
	}
	way := j
	for j < len(p.in) && p.in[j].Kind == Word && (p.in[j].Canon == "" || ways[p.in[j].Canon]) {
		j++
	}
	from := j
	for j < len(p.in) && j < from+maxLimb && p.names(p.in[j]) && !p.again(j) {
		j++
	}
	byLetter := j == from && !bare && j > way && j < len(p.in) && (p.in[j-1].Canon == "on" || p.in[j-1].Canon == "at") && p.letter(p.in[j])
	if byLetter {
		j++ // back on B
	}
	if j == from || way == from || !p.leads(way, from) && !p.finishes(i, from, j) || !(j == from+1 && isBranch(p.in[from])) && !p.nameable(p.in[from], p.in[j-1]) || p.hasOf(from, j) {
		return i, nil
	}
	end = j
	if p.again(end) {
		end++
	}
	if end < len(p.in) && !p.after(end) && !p.withCount(end) {
		return i, nil
	}
	name := p.words(from, j)
	if p.saysMain(way, from) && name != "stem" {
		name = "main " + name
	}
	if !byLetter && !p.knows(name) && (bare || !p.branches && !p.worksChains(j)) {
		return i, nil
	}
	goal := spanOf(p.in[way:from])
	verb := source.Span{Start: goal.Start, End: goal.Start + 1}
	if bare {
		goal.Start = verb.End // the words that lead there stand for both
	} else {
		verb = spanOf(p.in[i:way])
	}
	first := Token{Kind: Word, Canon: "return", Written: homeToken, Span: verb}
	if p.in[i].Canon == "return" && p.in[i].Kind == Word {
		first.Written = ""
	}
	out = append(out, first, Token{Kind: Word, Canon: "to", Span: goal})
	to := p.merged(from, j)
	if to.Canon == "stem" {
		to.Kind = Word
	}
	to.Canon = name
	out = p.filling(append(out, to), j, end)
	if end < len(p.in) && p.withCount(end) {
		at := p.in[end].Span
		comma := source.Span{Start: at.Start, End: at.Start + 1}
		return end + 1, append(out, Token{Kind: Comma, Span: comma}, Token{Kind: Word, Canon: "have", Span: source.Span{Start: comma.End, End: at.End}})
	}
	return end, out
}

// withCount tells the word at token i before what has been made: `you are at the stem again with 11 sc on the shoot`.
func (p *pruner) withCount(i int) bool {
	return p.in[i].Kind == Word && p.in[i].Canon == "with" && p.in[i].Span.Len() > 1 && i+1 < len(p.in) && p.in[i+1].Kind == Number
}

// again tells the word at token i of what is come to once more: `you are at the stem again`.
func (p *pruner) again(i int) bool {
	return i < len(p.in) && p.in[i].Kind == Word && (p.in[i].Canon == "back" || p.spelled(p.in[i]) == "again")
}

// arrives reads the words at token i that say that the maker is where she was before: `you are
// again` on the stem, `and there you are back` at it. It gives the token after them, i for none.
func (p *pruner) arrives(i int) int {
	j := i
	for j < len(p.in) && p.in[j].Kind == Word && (p.in[j].Canon == "" || p.in[j].Canon == "and" || p.spelled(p.in[j]) == "there") {
		j++
	}
	switch {
	case j == len(p.in):
		return i
	case p.in[j].Canon == "comment" && strings.HasPrefix(p.spelled(p.in[j]), "you"):
		return j + 1 // you are back
	case j == i || p.spelled(p.in[j]) != "are" || p.spelled(p.in[j-1]) != "you":
		return i
	}
	for j++; p.again(j); j++ {
	}
	for k := j - 1; k < len(p.in) && !separates(p.in[k]); k++ {
		if p.again(k) {
			return j
		}
	}
	return i
}

// finishes tells whether the words at token i say to go on to the end of what is named from
// token from to token to: `finish the branch:`.
func (p *pruner) finishes(i, from, to int) bool {
	return p.in[i].Kind == Word && ends[p.in[i].Canon] && to < len(p.in) && separates(p.in[to]) && (isBranch(p.in[to-1]) || p.knows(p.words(from, to)))
}

// letter tells a branch that is called by a letter.
func (p *pruner) letter(t Token) bool {
	return t.Kind == Name && len(t.Canon) == 1 && t.Written != colourToken && strings.ToUpper(t.Canon) == p.text[t.Span.Start:t.Span.End]
}

// comes are the words for coming home that no table knows.
var comes = map[string]bool{"go": true, "going": true, "come": true, "coming": true, "move": true}

// ways are the words that lead along what is come home to.
var ways = map[string]bool{"on": true, "to": true, "across": true, "in": true, "at": true}

// leads tells whether words say where, as `on the` does and `the` alone does not.
func (p *pruner) leads(from, to int) bool {
	return slices.ContainsFunc(p.in[from:to], func(t Token) bool {
		return t.Canon != "" || strings.HasPrefix(p.spelled(t), "down") || strings.HasPrefix(p.spelled(t), "onto")
	})
}

// saysMain tells whether words speak of the main one.
func (p *pruner) saysMain(from, to int) bool {
	return slices.ContainsFunc(p.in[from:to], func(t Token) bool { return p.spelled(t) == "main" })
}

// after tells whether a step may begin, or the words may end, at token i.
func (p *pruner) after(i int) bool {
	switch t := p.in[i]; t.Kind {
	case Number, Stitch, Star, Open, Close:
		return true
	case Word:
		return t.Canon == "and" || t.Canon == "work"
	default:
		return separates(t)
	}
}

// worksChains tells whether the step after token i goes along chains.
func (p *pruner) worksChains(i int) bool {
	for _, t := range p.in[i:min(len(p.in), i+farthestHook)] {
		switch {
		case t.Kind == Word && t.Canon == "ch":
			return true
		case t.Kind == Period || t.Kind == Semi:
			return false
		}
	}
	return false
}

// knows tells whether a name, or one that it ends in, is that of a limb or of what limbs
// grow from.
func (p *pruner) knows(name string) bool {
	return name == "stem" || strings.HasSuffix(name, " stem") || p.known[name] || p.known[strings.TrimPrefix(name, "main ")]
}

// ofLimb reads `of the side root`, and `left on the side root`, at token i. It gives the
// token after it, i for none.
func (p *pruner) ofLimb(out []Token, i int) (end int, more []Token) {
	t := p.in[i]
	counted := t.Kind == Word && t.Canon == "in" && p.counts(i)
	if counted {
		t.Canon = "on" // you have 26 ch in the spine
	}
	if t.Kind != Word || t.Canon != "of" && t.Canon != "on" {
		return i, nil
	}
	from := i + 1
	for from < len(p.in) && p.in[from].Kind == Word && p.in[from].Canon == "" {
		from++
	}
	if last := from + 1; t.Canon == "on" && from < len(p.in) && p.in[from].Kind == Ordinal && len(p.known) > 0 && (last == len(p.in) || separates(p.in[last]) || p.in[last].Canon == "and") {
		return last, append(append(append(out, t), p.in[i+1:from]...), p.merged(from, last)) // 10 dc on the second
	}
	if i > 0 && p.in[i-1].Canon == "remaining" && from+1 < len(p.in) && isBranch(p.in[from]) && p.in[from+1].Kind == Name {
		t.Canon = "of" // the 5 ch left on branch E
		return from, append(append(out, t), p.in[i+1:from]...)
	}
	for to := min(len(p.in), from+maxLimb); to > from; to-- {
		named := p.in[from:to]
		if n := len(named) - 1; n > 0 && p.numbersLimb(to-1) {
			named = named[:n]
		}
		if slices.ContainsFunc(named, func(t Token) bool { return !p.names(t) }) || !p.knows(p.words(from, to)) && !(counted && p.nameable(p.in[from], p.in[to-1])) {
			continue
		}
		if i > 0 && p.in[i-1].Canon == "remaining" {
			t.Canon = "of" // the 5 ch left on it
		}
		out = append(append(out, t), p.in[i+1:from]...)
		if name := p.merged(from, to); name.Canon != "stem" && name.Canon != "branch" {
			return to, append(out, name)
		}
		return to, append(out, p.in[from:to]...)
	}
	return i, nil
}

// limbChain reads the `stem ch` of `next 4 stem ch` and of `(18 stem chs)` at token i as chains
// of the stem. It gives the token after it, i for none.
func (p *pruner) limbChain(out []Token, i int) (end int, more []Token) {
	if i == 0 || !p.names(p.in[i]) {
		return i, nil
	}
	before := p.in[i-1]
	if before.Kind != Number && !(before.Kind == Word && (before.Canon == "next" || before.Canon == "last" || before.Canon == "first" || before.Canon == "remaining")) {
		return i, nil
	}
	to := i + 1
	for to < len(p.in) && to < i+maxLimb && p.names(p.in[to]) {
		to++
	}
	if to == len(p.in) || p.in[to].Kind != Word || p.in[to].Canon != "ch" || !p.knows(p.words(i, to)) {
		return i, nil
	}
	gap := source.Span{Start: p.in[to-1].Span.End, End: p.in[to].Span.Start}
	if gap.Empty() {
		return i, nil
	}
	ch, name := p.in[to], p.merged(i, to)
	ch.Span, name.Span = name.Span, ch.Span // in the order of the grammar, which has the name behind
	of := Token{Kind: Word, Canon: "of", Span: gap}
	if i < 2 || p.in[i-2].Kind == Open || p.in[i-2].Kind == Dash || p.in[i-2].Kind == Period {
		of.Canon = "on" // a count
	}
	if name.Canon == "stem" {
		name.Kind = Word
	}
	name.Written = movedToken
	return to + 1, append(out, ch, of, name)
}

// counts tells whether the words before token i are a count: `have 26 ch`.
func (p *pruner) counts(i int) bool {
	return i > 2 && p.in[i-2].Kind == Number && p.in[i-3].Kind == Word && p.in[i-3].Canon == "have"
}

// tells reads the beginning of a sentence that tells how many stitches there are, at token
// i: `that is 30 sl sts`, `the rib has 24 ss`, `the stem now has 26 ch`, `…, so the stem has 26 ch`. It gives the token
// after it, i for none.
func (p *pruner) tells(out []Token, i int) (end int, more []Token) {
	if i > 0 && p.in[i-1].Kind != Period && p.in[i-1].Kind != Open && !(p.in[i-1].Kind == Comma && p.spelled(p.in[i]) == "so") {
		return i, nil
	}
	if i+2 < len(p.in) && p.in[i].Kind == Name && len(p.in[i].Canon) == 1 && p.in[i+1].Kind == Word && p.in[i+1].Canon == "have" && p.in[i+2].Kind == Number {
		name := p.in[i]
		name.Written = holderToken // B has 8 sl sts
		return i + 1, append(out, name)
	}
	if has, written := p.tellsOfAll(i); has > i {
		have := p.in[has]
		have.Written = written
		return has + 1, append(p.filling(out, i, has), have)
	}
	from := i
	for from < len(p.in) && p.in[from].Kind == Word && p.in[from].Canon == "" {
		from++
	}
	to := from
	for to < len(p.in) && to < from+maxLimb && p.names(p.in[to]) && !p.isNow(to) {
		to++
	}
	if to == from+1 && to < len(p.in) && isBranch(p.in[from]) && p.in[to].Kind == Name {
		from, to = to, to+1 // branch 1 has 9 sc
	}
	has := to
	if to < len(p.in) && p.isNow(to) {
		has++
	}
	numberAt := func(i int) bool { return i < len(p.in) && p.in[i].Kind == Number }
	switch {
	case from > i && from < len(p.in) && p.in[from].Kind == Name && p.in[from].Canon == "is" && numberAt(from+1):
		return from + 1, append(append(out, p.in[i:from]...), Token{Kind: Word, Canon: "have", Span: p.in[from].Span})
	case to > from && has < len(p.in) && p.in[has].Kind == Word && p.in[has].Canon == "have" && p.allBefore(has, numberAt) && (p.knows(p.words(from, to)) || from > i && isBranch(p.in[from-1])):
		name := p.merged(from, to)
		name.Written = holderToken
		out = append(p.filling(out, i, from), name)
		return p.inAll(p.filling(out, to, has), has, numberAt)
	}
	return i, nil
}

// tellsOfAll reads what is said to have so many stitches, at token i, where it is a side or all there is: `side one
// now has 24 sts`, `the whole leaf has 48 sts`. It gives the token of the word for having, and how that is to be
// written; i for none.
func (p *pruner) tellsOfAll(i int) (has int, written string) {
	j := i
	for j < len(p.in) && p.in[j].Kind == Word && p.in[j].Canon == "" {
		if said := p.spelled(p.in[j]); said == "whole" || said == "entire" {
			written = wholeToken
		}
		j++
	}
	switch {
	case j+2 < len(p.in) && sideNamed(p.in[j:j+2]) > 0:
		j += 2
	case written == "":
		return i, ""
	default:
		for from := j; j < len(p.in) && j < from+maxLimb && p.in[j].Kind == Name; j++ {
		}
	}
	if j < len(p.in) && p.isNow(j) {
		j++
	}
	if j+1 < len(p.in) && p.in[j].Kind == Word && p.in[j].Canon == "have" && p.in[j+1].Kind == Number {
		return j, written
	}
	return i, ""
}

// inAll goes on behind the word for having at token i, past an `in all` that stands before the number.
func (p *pruner) inAll(out []Token, i int, numberAt func(int) bool) (int, []Token) {
	if numberAt(i + 1) {
		return i, out
	}
	to := i + 1
	for !numberAt(to) {
		to++
	}
	return to, p.filling(append(out, p.in[i]), i+1, to)
}

// filling adds tokens that mean nothing by themselves.
func (p *pruner) filling(out []Token, from, to int) []Token {
	for _, t := range p.in[from:to] {
		t.Kind, t.Canon = Word, ""
		out = append(out, t)
	}
	return out
}

// allBefore tells whether a number follows token i, or an `in all` and a number.
func (p *pruner) allBefore(i int, counts func(int) bool) bool {
	if counts(i + 1) {
		return true
	}
	from := i + 1
	for i++; i < len(p.in) && i < from+2 && (p.in[i].Kind == Word || p.in[i].Kind == Name); i++ {
	}
	said := p.spelled(p.in[i-1])
	return counts(i) && (said == "all" || said == "total" || said == "altogether" || said == "in all" || said == "in total")
}

// isNow tells the word between what has stitches and how many: `the stem now has 26 ch`.
func (p *pruner) isNow(i int) bool { return p.spelled(p.in[i]) == "now" }

// limbNames lists what an instruction calls its limbs, and what they grow from.
func limbNames(tokens []Token) []string {
	var out []string
	for i, t := range tokens {
		switch {
		case t.Kind == Name && (t.Written == limbToken || t.Written == limbsToken || t.Written == behindToken):
			out = append(out, t.Canon)
		case t.Kind == Word && t.Canon == "return" && i+2 < len(tokens) && tokens[i+2].Kind == Name && len(tokens[i+2].Canon) > 2:
			out = append(out, tokens[i+2].Canon)
		}
	}
	return out
}
