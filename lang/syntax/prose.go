package syntax

import (
	"slices"
	"strings"

	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
)

// isNote tells `Note: …`, `NOTE.— …` and the words under a picture.
func isNote(trimmed string) bool {
	if caption.MatchString(trimmed) {
		return true
	}
	end := strings.IndexAny(trimmed, ":.—–")
	if end < 0 {
		return false
	}
	called := strings.Trim(trimmed[:end], "*_ ")
	key, _ := headerKey(called)
	return key == "notes" && !worksTip(called, strings.TrimLeft(trimmed[end+1:], "*_:"))
}

// caption begins the words under a picture: `Photo 3: …`.
var caption = phrase.MustCompile(`(?i)^[*_(]*(?:photos?|pictures?|pics?|fig|figures?|images?|illustrations?|diagrams?|plates?|page|chart|video)\.? ?(?:\d|[a-d]\b|[:—–])`)

var (
	// pageNumber is the number at the foot of a printed page.
	pageNumber = phrase.MustCompile(`^(?:(?i:page|p\.) ?)?[-–— ]*\d{1,3}[-–— ]*$`)
	// leader is a line of a table of contents: dots lead to the page.
	leader = phrase.MustCompile(`(?:\. ?){4,}\s*\d{1,3}$|…{2,}\s*\d{1,3}$`)
)

// beginsInstruction tells a line such as `With A, ch 41.` by its first words.
func beginsInstruction(trimmed string) bool {
	tokens := Lex(firstWords(trimmed), Standard())
	for _, t := range tokens {
		if t.Kind == Word && t.Canon == "" {
			continue
		}
		return t.Kind == Word && (t.Canon == "ch" || t.Canon == "with" || t.Canon == "work" || t.Canon == "join") && len(tokens) > 1
	}
	return false
}

// beginsPart tells a line that begins a part of the pattern: `YOKE: With A, …`.
func beginsPart(trimmed string) bool {
	if _, heads := splitHeading(trimmed); heads {
		return true
	}
	r := readRow(trimmed, 0, Standard())
	return r.Label.Kind == Named && inCapitals(r.Label.Text) && instructs(r)
}

// instructs tells an instruction from prose. The label of a row makes an
// instruction of anything. Without one it is told by what the words do: they
// begin with a step, hold several or a sentence of nothing else, or most of
// them are understood.
func instructs(r *Row) bool {
	if r.Label.Kind != Unlabelled && r.Label.Kind != Named && !r.Label.Bare {
		return !countsCells(r)
	}
	if rules(r) || tellsOf(r) || describes(r) || foretells(r) || compares(r) {
		return false
	}
	return startsAlong(r) || r.CountsAlone() || worksStep(r) || worksCell(r) || makesUp(r) || skipsToJoin(r) || reaches(r) || leads(r) || sentenceOfSteps(r) || onlyMark(r) || mostly(r) || speaksOfWork(r)
}

// countsCells tells a row of a table that counts what a row makes of the piece: `| Round 1, all round | **532** | **836** |`.
func countsCells(r *Row) bool {
	if !tableRow(r.Text) {
		return false
	}
	cells := cellsOf(r.Text)
	return len(cells) > 1 && cellOfCount.MatchString(cells[0]) && !slices.ContainsFunc(cells[1:], func(cell string) bool { return !numbersAlone.MatchString(cell) })
}

var (
	cellOfCount  = phrase.MustCompile(`^\W*(?i:rounds?|rnds?|rows?) \d+\W*,`)
	numbersAlone = phrase.MustCompile(`^[*_ ]*\d+(?: ?/ ?\d+)*[*_ ]*$`)
)

// describes tells a line that says without a number how something is made, and asks for nothing: `The leaf is worked
// down one side of its chain, and up the other side.`
func describes(r *Row) bool {
	if r.Label.Kind != Unlabelled || holds(r.Tokens, Number) {
		return false
	}
	for i, t := range sentence(r.Tokens) {
		if t.Kind == Name && (t.Canon == "is" || t.Canon == "are") && i+1 < len(r.Tokens) && r.Tokens[i+1].Kind == Word && r.Tokens[i+1].Canon == "work" {
			return i < maxNamed && r.Tokens[0].Kind == Word && r.Tokens[0].Canon == ""
		}
	}
	return false
}

// compares tells a line that says without a number what a stitch is called in the other dialect's words: `A UK double
// crochet is what US patterns call single crochet.`, or in bold in whose words it is written: `**All terms are UK.** …`
func compares(r *Row) bool {
	return r.Label.Kind == Named && saysTerms.MatchString(r.Label.Text) || !holds(r.Tokens, Number) && bothDialects.MatchString(r.Text)
}

var saysTerms = phrase.MustCompile(`(?i)\bterms?\b.*\b` + stitch.NationExpr + `\b|\b` + stitch.NationExpr + `\b.*\bterms?\b`)

var bothDialects = phrase.MustCompile(`\b` + stitch.USExpr + `\b[^.]*\b` + stitch.UKExpr + `\b|\b` + stitch.UKExpr + `\b[^.]*\b` + stitch.USExpr + `\b`)

// foretells tells a line that says of the steps to come what they do all together: `Work one sc in every stem ch, stopping
// where I say.`
func foretells(r *Row) bool {
	return r.Label.Kind == Unlabelled && toldThere.MatchString(r.Text)
}

// toldThere says that the steps tell where the work stops.
var toldThere = phrase.MustCompile(`(?i)\b(?:stopping|pausing|branching)(?: off)? (?:where|when|as|whenever) (?:I|we|the steps?|it|you(?: are|'re)) (?:says?|tells?|told)\b|\b(?:stopping|pausing) (?:where|as) (?:told|noted|shown|described)\b`)

// CountsAlone tells a line without a label that says how many stitches there are by now, and no more: `You now have 24
// sts.`
func (r *Instruction) CountsAlone() bool {
	if r.Label.Kind != Unlabelled || len(r.Tokens) < 2 || firstWord(r.Tokens).Canon != "have" && !(r.Tokens[0].Kind == Word && r.Tokens[0].Canon == "count" && r.Tokens[1].Kind == Colon) {
		return false
	}
	return onlyCounts(r.Clauses, func(i int, n *Total) bool {
		return i == 0 && n.Change == 0 && !n.Reached && !slices.ContainsFunc(n.Parts, func(p Part) bool { return p.Noun.Kind != NounAny && p.Noun.Kind != NounStitch })
	})
}

// onlyCounts tells clauses that count, as they are told to by their place, and remark on it; there is one at least.
func onlyCounts(list []Clause, as func(i int, n *Total) bool) bool {
	for i, c := range list {
		switch n := c.Node.(type) {
		case *Total:
			if !as(i, n) {
				return false
			}
		case *Remark:
			if i == 0 {
				return false
			}
		default:
			return false
		}
	}
	return len(list) > 0
}

// startsAlong tells a line that says in which chain the stitches below it begin, and no more: `Begin in the 2nd ch from
// the hook.`
func startsAlong(r *Row) bool {
	return len(r.Clauses) == 1 && isSkip(r.Clauses[0].Node) && fromHook(r.Clauses[0].Node)
}

func isSkip(n Node) bool { _, ok := n.(*Skip); return ok }

// worksCell tells a row of a table of which a cell holds steps.
func worksCell(r *Row) bool {
	return r.Label.Bare && inCells(r.Text) && slices.ContainsFunc(r.Clauses, func(c Clause) bool { return steps(c.Node) })
}

// worksStep tells an item of a list that works another one again: `7. Lobe 5: repeat step 6 once`.
func worksStep(r *Row) bool {
	if !r.Label.Bare {
		return false
	}
	again := false
	for i, t := range r.Tokens[:len(r.Tokens)-1] {
		again = again || t.Kind == Word && (t.Canon == "rep" || t.Canon == "work")
		if again && t.Kind == Word && t.Canon == "step" && r.Tokens[i+1].Kind == Number {
			return true
		}
	}
	return false
}

// skipsToJoin tells a line that passes over stitches to where yarn is joined: `miss the centre 16
// sts and rejoin yarn to the next st`.
func skipsToJoin(r *Row) bool {
	if len(r.Clauses) < 2 {
		return false
	}
	skip, skips := r.Clauses[0].Node.(*Skip)
	yarn, joins := r.Clauses[1].Node.(*Yarn)
	return skips && joins && skip.Place.Number.Written() && yarn.Action == YarnJoin
}

// tellsOf tells a sentence on what there is a number of: `Twelve squares make a cushion, three
// across and four down`.
func tellsOf(r *Row) bool {
	if len(r.Clauses) < 2 || r.Clauses[1].Sep > SepComma {
		return false
	}
	total, begins := r.Clauses[0].Node.(*Total)
	return begins && !total.Reached && (slices.ContainsFunc(r.Clauses, notWhole) || !slices.ContainsFunc(r.Tokens, namesStitch))
}

// namesStitch tells a word for a stitch, a chain, or stitches of any kind.
func namesStitch(t Token) bool {
	return t.Kind == Stitch || t.Kind == Word && (t.Canon == "ch" || t.Canon == "st")
}

// reaches tells a line that goes on until there are so many stitches.
func reaches(r *Row) bool {
	return slices.ContainsFunc(r.Clauses, func(c Clause) bool {
		total, ok := c.Node.(*Total)
		return ok && total.Reached
	})
}

// rules tells whether a line only says what beginning chains count for, once
// for the whole pattern.
func rules(r *Row) bool {
	said := rulesTurning(r.Text)
	for i, c := range r.Clauses {
		switch n := c.Node.(type) {
		case *Chain:
			said = said || n.Counts.Always
		case *CountsNote:
			said = said || n.Counts.Always || i == 0 && n.Counts.Said
		case *Work, *Group, *Repeat, *Bracket:
			return false
		}
	}
	return said
}

// stepsToTell is how many steps make an instruction of a line, whatever else it
// says.
const stepsToTell = 4

// mostly tells whether a line is understood for the greater part, or holds many
// steps. What it begins with counts twice: prose may end in a step, and seldom
// begins with one.
func mostly(r *Row) bool {
	read, total, steps := 0, 0, 0
	for i, c := range r.Clauses {
		switch n := c.Node.(type) {
		case *Remark: // a comment says neither
			if n.Chats {
				total += c.Span.Len()
			}
		case *Unread:
			switch {
			case i > 0:
				total += c.Span.Len()
			case !opens(r) && !slip(r):
				total += 2 * c.Span.Len()
			}
		default:
			read, total = read+c.Span.Len(), total+c.Span.Len()
			if acts(c.Node) || i > 0 && step(c.Node) {
				steps++
			}
		}
	}
	return steps >= stepsToTell || steps > 0 && 2*read >= total
}

// slip tells a line that begins with an unknown word where a stitch would stand:
// `Sv in next 3 sts`.
func slip(r *Row) bool {
	for i, t := range r.Tokens {
		if r.Label.Kind != Unlabelled && t.Span.Start < r.Label.Span.End || t.Kind == Number || t.Kind == Colon {
			continue
		}
		return t.Kind == Name && !tells[t.Canon] && i+1 < len(r.Tokens) && placeWords[r.Tokens[i+1].Canon]
	}
	return false
}

// placeWords begin the place of a stitch.
var placeWords = map[string]bool{"in": true, "next": true, "each": true, "around": true, "across": true, "first": true, "last": true}

// opens tells a line that says where the work begins before the first step:
// `Starting at center, ch 6`.
func opens(r *Row) bool {
	for _, t := range r.Tokens {
		if r.Label.Kind == Unlabelled || t.Span.Start >= r.Label.Span.End {
			return openers[t.Canon]
		}
	}
	return false
}

var openers = map[string]bool{
	"starting": true, "beg": true, "commencing": true, "commence": true, "working": true, "with": true, "from": true, "holding": true, "along": true,
}

// leads tells whether a line begins with a step of its own, and goes on to tell
// the maker what to do.
func leads(r *Row) bool {
	for _, c := range r.Clauses {
		switch c.Node.(type) {
		case *Remark, *Mark, *Side:
			continue
		case *Unread, *MakeUp:
			return false
		case *Finish:
			return !tellsIn(r)
		}
		return (acts(c.Node) || r.Label.Kind == Named) && !tellsIn(r)
	}
	return false
}

// tellsIn tells whether the first part of a line says how something is,
// rather than what to do.
func tellsIn(r *Row) bool {
	depth := 0 // in brackets, where a remark may stand
	for _, t := range r.Tokens {
		switch {
		case t.Kind == Open:
			depth++
		case t.Kind == Close:
			depth--
		case depth > 0:
		case t.Kind == Period || t.Kind == Semi:
			return false
		case t.Kind == Name && tells[t.Canon]:
			return true
		}
	}
	return false
}

// sentenceOfSteps tells whether some sentence of a line is nothing but steps.
func sentenceOfSteps(r *Row) bool {
	whole, does := true, false
	for _, c := range r.Clauses {
		switch n := c.Node.(type) {
		case *Unread:
			whole = false
		case *Remark:
			whole = whole && !n.Chats
		case *Finish:
			does = does || !strings.HasPrefix(strings.ToLower(r.Source(c.Span)), "cut") // `Cut one end.`
		default:
			does = does || acts(c.Node)
		}
		if c.Sep >= SepStop && !strings.HasPrefix(r.Text[c.Span.End:], ":") {
			if whole && does {
				return true
			}
			whole, does = true, false
		}
	}
	return whole && does
}

// introduction is the length of the prose that a line without a label begins
// with: the sentences before the first that does anything.
func introduction(r *Row) int {
	if r.Label.Kind != Unlabelled {
		return 0
	}
	for i, c := range r.Clauses {
		switch c.Node.(type) {
		case *Unread, *Remark, *Total:
			continue
		}
		end := 0
		for j, t := range r.Tokens {
			if t.Kind == Period && t.Span.End <= c.Span.Start && (i == 0 || t.Span.Start >= r.Clauses[0].Span.End) {
				end = t.Span.End
				if j+1 < len(r.Tokens) && r.Tokens[j+1].Span.Start == end && strings.HasPrefix(r.Text[end:], "**") {
					end = r.Tokens[j+1].Span.End // `**And home.** Sl st in …`
				}
			}
		}
		return end
	}
	return 0
}

// acts tells a clause that can only be an instruction.
func acts(n Node) bool {
	switch n := n.(type) {
	case *Chain:
		return n.Number.Written() || n.Multiple.Written()
	case *Work:
		return len(n.Places) > 0 || n.Number.Written()
	case *Rows:
		return len(n.List) > 0 || n.Last.Written() || n.Called != "" || n.Piece != "" && !idle[n.Piece]
	case *Join:
		return n.Place.Elsewhere && n.Place.Name == "" // `join at the underarm seam`
	case *Bracket:
		return !unread(n.Body)
	case *Repeat:
		return !unread(n.Body)
	case *Group, *RepeatFrom, *Ending, *PlaceFirst, *MagicRing, *Even, *Branch, *Return, *Yarn, *Along, *Shaping, *Leave:
		return true
	}
	return false
}

// idle are what follows `repeat as` and names no piece.
var idle = map[string]bool{"necessary": true, "needed": true, "required": true, "desired": true, "before": true, "wished": true, "usual": true}

// onlyMark tells a line such as `**`, which other rows refer to.
func onlyMark(r *Row) bool {
	if len(r.Clauses) != 1 {
		return false
	}
	_, ok := r.Clauses[0].Node.(*Mark)
	return ok
}

// speaksOfWork tells a line that nothing of is understood and that is an
// instruction all the same, from its words: it names a stitch or a chain, knows
// few words but those of the trade, and does not tell a tale. A labelled one
// need not begin with the stitch.
func speaksOfWork(r *Row) bool {
	known, unknown, names, begins := 0, 0, false, r.Label.Kind != Unlabelled
	for i, t := range r.Tokens {
		switch t.Kind {
		case Stitch:
			begins = begins || known+unknown == 0
			names = true
			known++
		case Number, Ordinal:
			known++
		case Word:
			names = names || t.Canon == "ch"
			known++
		case Name:
			unknown++
		case Sign:
			if i == 1 {
				return false // `sp = space`
			}
		}
	}
	return names && begins && !tellsIn(r) && known >= 2 && 3*known >= 2*(known+unknown)
}

// tells are words of prose: an instruction is told to a maker, not told of
// something.
var tells = func() map[string]bool {
	out := map[string]bool{}
	for word := range strings.FieldsSeq("if is are was were be been can could may might will would it'll they'll that'll looks look gives shows i my me because which who whose how why what see photo picture page chart pattern goes forks leans bends lands") {
		out[word] = true
	}
	return out
}()

// step tells a clause that is an instruction among others.
func step(n Node) bool {
	switch n.(type) {
	case *Work, *Chain, *Finish:
		return true
	}
	return false
}

// makesUp tells whether an unlabelled line is all handwork, such as `Weave in
// ends.`.
func makesUp(r *Row) bool {
	for _, c := range r.Clauses {
		switch c.Node.(type) {
		case *MakeUp, *Finish, *Marker, *Turn, *Yarn, *NoJoin, *Join:
		default:
			return false
		}
	}
	return len(r.Clauses) > 0
}

// say keeps a part of the file that is no instruction, and where it says of
// beginning chains what holds for the whole pattern.
func (c *chapter) say(span source.Span, turning []source.Span) {
	c.prose = append(c.prose, span)
	for _, s := range turning {
		c.turning = append(c.turning, s.Shift(span.Start))
	}
}

// turningIn finds the sentences of a text that say what beginning chains count for:
// `The ch 2 at the start of a row does not count as a stitch.`
func turningIn(text string) []source.Span {
	var out []source.Span
	at := 0
	for sentence := range strings.SplitAfterSeq(text, ".") {
		if rulesTurning(sentence) {
			out = append(out, source.Span{Start: at, End: at + len(sentence)})
		}
		at += len(sentence)
	}
	return out
}

// ofEvery begins what holds for every row.
var ofEvery = phrase.MustCompile(`(?i)\b(?:beg|begin|begins|beginning|start|starts|turning|each|every|throughout|always|never)\b`)

// rulesTurning tells whether a sentence names a chain, says whether it counts,
// and says it of every row.
func rulesTurning(sentence string) bool {
	if !ofEvery.MatchString(sentence) {
		return false
	}
	chain, counts, not := false, false, false
	for _, t := range Lex(sentence, Standard()) {
		switch t.Canon {
		case "ch", "tch":
			chain = true
		case "count":
			counts = true
		case "not":
			not = true
		case "st":
			counts = counts || not // `is never a stitch`
		}
	}
	return chain && counts
}
