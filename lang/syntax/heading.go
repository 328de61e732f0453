package syntax

import (
	"cmp"
	"slices"
	"strconv"
	"strings"
	"unicode"

	"stitchproof/lang/numeral"
	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
)

// heading takes `Piece: Leaf (make 6)`, `## Leaf`, `Leaf:` and `LEAF (make 6)`.
func (d *document) heading(line, trimmed string, span source.Span) bool {
	name := ""
	switch lower := strings.ToLower(trimmed); {
	case strings.HasPrefix(lower, "piece:"), strings.HasPrefix(lower, "part:"):
		name = trimmed[strings.IndexByte(trimmed, ':')+1:]
		d.started = true
	case d.sectionHead(trimmed) != "":
		d.section = d.sectionHead(trimmed)
		d.add(block{kind: blockProse, span: span})
		return true
	case strings.HasPrefix(trimmed, "#"):
		name = strings.TrimLeft(trimmed, "#")
		if labelled(strings.TrimSpace(name)) && !firstOnes.MatchString(name) && !d.numbersChapter(strings.TrimSpace(name), span) {
			return false
		}
	case supplies[d.section] && (strings.HasSuffix(trimmed, ":") && (bulleted.MatchString(trimmed) || d.indentsBelow(span)) || byLetter.MatchString(d.bare(d.file.Text.LineOf(span.Start)+1))):
		return false // `- DK cotton:`, or `Aran (4) acrylic:` over `A: primrose`, or over indented lines
	case decorated.MatchString(trimmed):
		name = undecorated(trimmed)
	case d.headsInSquares(trimmed, d.file.Text.LineOf(span.Start)):
		name = strings.Trim(trimmed, "[]【】")
	case d.bareHeading(trimmed):
		name = strings.TrimRight(trimmed, ":.")
	default:
		return false
	}
	d.addHeading(name, line, span)
	return true
}

// indentsBelow tells whether the line below one is indented further.
func (d *document) indentsBelow(span source.Span) bool {
	at := d.file.Text.LineOf(span.Start)
	return d.bare(at+1) != "" && d.indent(at+1) > d.indent(at)
}

// numbersChapter tells the name of a chapter that has a number: `### 2. Nests` over rows that have their own, `## 4. Making
// up` over whatever else.
func (d *document) numbersChapter(name string, span source.Span) bool {
	label, _ := labelOf(name)
	if !label.Bare {
		return false
	}
	if title := strings.TrimLeft(name[label.Span.End:], ".) "); title != "" && unicode.IsUpper(firstRune(title)) && !strings.HasSuffix(title, ".") && (namesDeed.MatchString(title) || !readsAsWork(title) && !beginsInstruction(title)) {
		return true
	}
	next := d.file.Text.LineOf(span.Start) + 1
	if d.bare(next) == "" {
		next++
	}
	if laysChainAlone(d.bare(next)) {
		next++ // `Ch 11.`
	}
	return firstOf(d.bare(next)) > 0
}

// namesDeed is a title that names what is done: `Putting the layers together`.
var namesDeed = phrase.MustCompile(`^\p{Lu}\p{Ll}+ing\b[\pL ]*$`)

// firstOnes heads several rows: `First rows`, `Last rounds`.
var firstOnes = phrase.MustCompile(`(?i)^\s*(?:first|last|next|main|remaining) (?:rows|rounds|rnds)\s*$`)

var (
	// decorated is a heading between marks: `~ Leaf ~`, `:: LEAF ::`, `=== Leaf ===`.
	decorated = phrase.MustCompile(`^(?:~+|:+|=+|•+|★+|☆+|\*{3,}|-{2,}|>+) *(\p{L}[^~:=•★☆*<>]{1,40}?[\pL)\d]) *(?:~+|:+|=+|•+|★+|☆+|\*{3,}|-{2,}|<+)$`)
	// byItem is the letter of a part in an outline, before a heading in capitals: `C. ABBREVIATIONS`.
	byItem = phrase.MustCompile(`^[A-Z][.)] +(\p{Lu}[\p{Lu} ,&-]{2,}(?:\([^()]*\))?)$`)
)

// undecorated is a heading without the marks around it, or the letter of the part before it.
func undecorated(trimmed string) string {
	for _, form := range [...]*phrase.Phrase{decorated, byItem} {
		if m := form.FindStringSubmatch(trimmed); m != nil {
			return m[1]
		}
	}
	return trimmed
}

// lastPart is the heading of what is done when all is made.
var lastPart = phrase.MustCompile(`(?i)^\W*(?:to )?(?:finish(?:ing)?|assembl[ey]|making up|make up|joining)\W*$`)

// inSquares is a name in square brackets that a line begins with.
const inSquares = `^\s*[\[【] ?(\pL[^\[\]【】]{0,50}?) ?[\]】]`

var (
	// squareName is such a name with nothing behind it: `[Leaf: 2 pieces]`.
	squareName = phrase.MustCompile(inSquares + `$`)
	// squareHeading is one with how many pieces are made, and in what: `[Wing] 2 pieces, brown.`
	squareHeading = phrase.MustCompile(inSquares + `[ :,]*((?i:(?:make )?` + piecesExpr + `)[^.]*)(?:\.\s*|$)`)
	// squareKey is one that is a key of the header, before its value: `[Stitches] chain (ch), …`.
	squareKey = phrase.MustCompile(inSquares + `[ :.]*`)

	// saysHowMany takes how many are made of what a heading names.
	saysHowMany = phrase.MustCompile(`(?i)\b(?:make ?` + numberExpr + `|` + piecesExpr + `)`)
)

// How many there are of something, and how many are made.
var (
	numberExpr = `(?:\d+|` + numeral.Expression(1, numeral.Most) + `)`
	copiesExpr = `(?:make|x|×) ?` + numberExpr
	piecesExpr = numberExpr + ` (?:pieces?|pcs?)\b`
)

// headsInSquares tells whether a name in square brackets heads a part: it says how many of it are
// made or that all is, or the part begins below. Others are captions, or tell what to do.
func (d *document) headsInSquares(trimmed string, at int) bool {
	name := squareName.FindStringSubmatch(trimmed)
	if name == nil || !unicode.IsUpper(firstRune(name[1])) {
		return false
	}
	next := d.nextSaid(at)
	return saysHowMany.MatchString(name[1]) || lastPart.MatchString(name[1]) || firstOf(next) == 1 || lays(readRow(next, 0, Standard())) != laysNothing
}

// byLetter begins the line of a yarn that a list of them gives a letter.
var byLetter = phrase.MustCompile(`^[-•* ]*(?:[A-Z]|MC|CC\d?) ?[:=]`)

// addHeading begins a piece with a line that names it.
func (d *document) addHeading(name, line string, span source.Span) {
	name = strings.TrimFunc(name, func(r rune) bool { return isBlank(r) || r == '*' })
	if n := len(name); n > 1 && name[0] == name[n-1] && strings.IndexByte("~=", name[0]) >= 0 { // set between marks
		name = strings.Trim(name, "~= ")
	}
	d.section = ""
	at := span.Start + max(0, strings.Index(line, name))
	d.add(block{kind: blockHeading, span: span, names: []string{name}, nameSpan: source.Span{Start: at, End: at + len(name)}})
}

// titles tells a heading with no mark of one: a short line that begins like a
// name, above Row 1 or, where a paragraph begins with it, above an instruction
// to work. A chain laid above it belongs to what it names.
func (d *document) titles(trimmed string, at int) bool {
	if labelled(trimmed) {
		return false
	}
	name := yarnBracket.ReplaceAllString(trimmed, "")
	if at := yarnFrom(name); at >= 0 {
		name = name[:at]
	}
	name = makeLast.ReplaceAllString(name, "")
	made := len(name) < len(trimmed)
	trimmed = name
	if len(strings.Fields(trimmed)) > 2 && strings.ContainsAny(trimmed, "0123456789") {
		return false
	}
	tokens := Lex(trimmed, Standard())
	if len(tokens) > 1 && tokens[0].Kind == Word && tokens[0].Canon == "" {
		tokens = tokens[1:] // `The Leaf`
	}
	if len(trimmed) > maxTitle || len(strings.Fields(trimmed)) > maxNamed+4 || endsSentence(trimmed) && !strings.HasSuffix(trimmed, ")") ||
		!unicode.IsUpper(firstRune(trimmed)) || strings.ContainsAny(trimmed, ":;=—–") || len(tokens) == 0 || !made && (tokens[0].Kind != Name && !partWords[tokens[0].Canon] && !deedParts[strings.ToLower(trimmed)] || !d.resting()) {
		return false
	}
	next := d.bare(at + 1)
	if next == "" {
		below := d.bare(at + 2)
		return firstOf(below) == 1 || d.started && d.bare(at-1) == "" && saysHowMany.MatchString(below) && d.numbersSoon(at+2)
	}
	if n := firstOf(next); n > 0 {
		return n < 2
	}
	if _, _, entry := cutBeforeFull(next); entry || spellsSeveral(next) {
		return false // it heads a list of abbreviations
	}
	r := readRow(next, 0, Standard())
	return (at == 0 || d.bare(at-1) == "") && (made && d.numbersSoon(at+1) || leads(r) && (!makesUp(r) || joinsYarn(r) && labelled(d.bare(at+2))))
}

// joinsYarn tells a line that joins yarn somewhere, as an edging begins.
func joinsYarn(r *Row) bool {
	return slices.ContainsFunc(r.Clauses, func(c Clause) bool {
		y, ok := c.Node.(*Yarn)
		return ok && y.Action == YarnJoin
	})
}

// numbersSoon tells whether Row 1 stands below one line of prose.
func (d *document) numbersSoon(line int) bool { return firstOf(d.bare(line+1)) == 1 }

// saysWay is a heading that says which way the steps below it go: `Coming down`, `The way back`.
var saysWay = phrase.MustCompile(`^\W*(?i:(?:(?:going|coming|working|on|the) )?(?:(?:the )?way )?(?:back|out|home|up|down)(?:wards?)?)\b[\pL ]*\W*$`)

// partOfLeaf is a heading that names a side of a leaf, or its tip.
var partOfLeaf = phrase.MustCompile(`(?i)^[*_# ]*(?:the )?(?:tip|point|top|end|side (?:one|two|1|2|a|b)|(?:first|second|other) side)[*_ ]*(?:[,:–—-][^.;\d]*)?$`)

// turnsBack is a heading that says, in more than a word, that the work goes on from the one above it, or is
// counted: `The stem, coming back`, `Part 2: down`, `The way home`, `Homewards`, `The tip`, `To check`.
var turnsBack = phrase.MustCompile(`^\W*(?:\pL[\pL ]*[,:–—-] ?)?(?:(?i:(?:going|coming|working|travelling|traveling|heading) (?:back|home|up|down|out)|(?:on )?the way (?:back|home|up|down|out)|part \d{1,2} ?[,.:–—-] ?(?:back|home|down)|(?:home|back)wards?|(?:at )?the (?:very )?tip)|(?i:(?:back|home|down)(?: along| the| to)+) [\pL ]+)(?:(?i: (?:the|to|along))[\pL ]+)?\W*$|^\W*(?i:control|check(?:ing)?|to check|check (?:your|the) [a-z]+)\W*$`)

// growthHead is a heading that calls what grows next by a word for a branch, or comes to the end of the stem: `The first twig`.
var growthHead = phrase.MustCompile(`(?i)^[*_# ]*(?:the )?(?:(?:first|second|third|fourth|next|last|side|great|little|small|long|short|upper|lower|top) ){0,2}(?:twig|branch|fork|shoot|spur|prong|tine|sprig|limb|tendril|root)(?: (?:[a-z]|\d{1,2}))?[:*_]*$|^[*_# ]*to the tip[:*_]*$`)

// branchHead is a line of its own that names a branch by its word, and may say what it has: `Branch B, with a fork`.
var branchHead = phrase.MustCompile(`(?i)^[*_# ]*(branch (?:[a-z]|\d{1,2}|` + numeral.Expression(1, 12) + `))(?: ?[,(–—-][^.:;\d]*)?:?[*_]*$`)

// branchAhead takes such a line above a step whose number follows that of the one above it: the branch leaves there.
func (d *document) branchAhead(line, trimmed string, span source.Span) bool {
	at := d.file.Text.LineOf(span.Start)
	name := branchHead.FindStringSubmatchIndex(line)
	if name == nil || !d.stepsOn(at) || bareNumber(d.nextSaid(at)) == 1 {
		return false
	}
	end := span.Start + name[3]
	d.add(block{kind: blockText, span: source.Span{Start: span.Start + name[2], End: end}})
	if end < span.End {
		d.add(block{kind: blockProse, span: source.Span{Start: end, End: span.End}})
	}
	return true
}

// belowSteps tells whether steps of a piece stand right above a line.
func (d *document) belowSteps() bool {
	last := d.last()
	return last != nil && last.kind == blockText
}

// stepsOn tells whether the bare number below a line follows that of the last one above it, or
// is the first below a heading.
func (d *document) stepsOn(at int) bool {
	below := bareNumber(d.nextSaid(at))
	switch last := d.last(); {
	case last == nil || below == 0:
		return false
	case last.kind == blockHeading:
		return below == 1
	default:
		return last.kind == blockText && below == d.step+1
	}
}

// headingLevel is how many marks a heading of Markdown has, 0 for any other line.
func headingLevel(line string) int {
	line = strings.TrimLeft(line, " \t")
	return len(line) - len(strings.TrimLeft(line, "#"))
}

// bareNumber is the number with no word that a line begins with, 0 for none.
func bareNumber(line string) int {
	label, found := labelOf(line)
	if !found || !label.Bare {
		return 0
	}
	return label.First(0)
}

// subheads tells a heading within a piece: one that says which way its steps go on, or that
// reads as work, `Work even` on a line of its own above a row.
func (d *document) subheads(trimmed string, at int) bool {
	if next := d.nextSaid(at); at > 0 && d.belowSteps() && firstOf(next) == 1 && lays(readRow(next, 0, Standard())) != laysNothing {
		return false // another piece begins below it
	}
	way := howManyLast.ReplaceAllString(trimmed, "") // `COMING DOWN (these twigs lie to the right)`
	if at > 0 && d.stepsOn(at) && bareNumber(d.nextSaid(at)) > 1 && d.sectionHead(trimmed) == "" && (headingLevel(trimmed) > 0 || d.bareHeading(trimmed)) && lays(readRow(d.nextSaid(at), 0, Standard())) == laysNothing {
		return true // its steps are numbered on
	}
	if at > 0 && bareNumber(d.nextSaid(at)) > 1 && growthHead.MatchString(trimmed) && d.stepsOn(at) {
		return true
	}
	if at > 0 && ((saysWay.MatchString(way) || partOfLeaf.MatchString(way) || d.level > 0 && headingLevel(trimmed) > d.level && bareNumber(d.nextSaid(at)) > 1) && d.stepsOn(at) || turnsBack.MatchString(undecorated(way)) && d.belowSteps()) {
		return true
	}
	if at == 0 || d.bare(at-1) != "" || endsSentence(trimmed) || len(strings.Fields(trimmed)) > maxNamed || !labelled(d.bare(at+1)) {
		return false
	}
	list, _ := build(settled(Lex(trimmed, Standard()), 0))
	if len(list) != 1 {
		return false
	}
	_, even := list[0].Node.(*Even)
	return even
}

var (
	// inYarn is the yarn that a heading says a piece is worked in: `Cup (make 8) - with A`, `Cup
	// (make 8, colour A)`; behind how many are made with no mark before it: `Cup - make 8 in A`.
	inYarn     = phrase.MustCompile(`(?i:\s*[-–—,(] *(?:(?:with|using|in) (?:(?:yarn|colou?r|shade) )?|(?:yarn|colou?r|shade) ))` + yarnLast)
	madeInYarn = phrase.MustCompile(`(?i:` + copiesExpr + `)((?i: (?:with|using|in) (?:(?:yarn|colou?r|shade) )?)` + yarnLast + `)`)
)

// yarnBracket is the `(yarn C, make 2)` at the end of a heading.
var yarnBracket = phrase.MustCompile(`\s*\((?i:yarn|colou?r|shade) (?:[A-Z]|MC|CC\d?)\b[^()]*\)$`)

const yarnLast = `(?:[A-Z]|MC|CC\d?)\)?[ .:*_]*$`

// yarnFrom is where a heading begins to tell the yarn, -1 where it tells none.
func yarnFrom(heading string) int {
	if at := inYarn.FindStringIndex(heading); at != nil {
		return at[0]
	}
	if at := madeInYarn.FindStringSubmatchIndex(heading); at != nil {
		return at[2]
	}
	return -1
}

// bare is a line without the blanks around it, "" beyond the end.
func (d *document) bare(line int) string {
	t := d.file.Text
	if line >= t.Lines() {
		return ""
	}
	return strings.TrimFunc(t.Slice(t.Line(line)), isBlank)
}

// nextSaid is the line under one, or the next where that is blank.
func (d *document) nextSaid(at int) string { return cmp.Or(d.bare(at+1), d.bare(at+2)) }

// firstOf is the number of the row that a line begins with, 0 for none.
func firstOf(line string) int {
	label, found := labelOf(line)
	if !found || label.Kind != Numbered || label.Bare {
		return 0
	}
	return label.First(0)
}

// maxTitle is the length of the longest heading with no mark of one.
const maxTitle = 50

// resting tells whether a piece may begin: the line above does not lay the
// beginning of one that has no rows yet.
func (d *document) resting() bool {
	b := d.last()
	if b == nil || b.kind != blockText {
		return true
	}
	r := readRow(strings.TrimFunc(d.text(b.span), isBlank), 0, Standard())
	return r.Label.Kind != Unlabelled || lays(r) == laysNothing
}

// sectionHead gives the section that a line of its own begins: `Special
// stitches`, `**Notes**`, `## Materials`.
func (d *document) sectionHead(trimmed string) string {
	plain := listNumber.ReplaceAllString(strings.Trim(undecorated(trimmed), headMarks+"."), "")
	bare := dialectBeside.ReplaceAllString(howManyLast.ReplaceAllString(plain, ""), "") // `Abbreviations (US)`
	key, name := headerKey(bare)
	if !sections[key] || bare != plain && name != "" || strings.Contains(plain, ":") || d.needs(key, name, trimmed) {
		return ""
	}
	return key
}

// dialectBeside is the dialect that the heading of a list names: `Abbreviations, UK terms`, `UK abbreviations`.
var dialectBeside = phrase.MustCompile(`(?i)[ ,–—-]+(?:in )?` + stitch.NationExpr + `(?: (?:crochet )?terms?)?(?: throughout)?$|^` + stitch.NationExpr + ` `)

// needs tells an item of what is needed, which heads no list of it though it begins with the
// same word: `Yarn A (Straw), 2 cones`, and in such a list `Yarn needle` and `• Hook`.
func (d *document) needs(key, name, trimmed string) bool {
	switch {
	case key != "hook" && !supplies[key]:
		return false
	case strings.ContainsAny(name, "0123456789,("):
		return true
	}
	return supplies[d.section] && (name != "" || bulleted.MatchString(trimmed))
}

// listNumber begins the headings of a text that numbers its sections: `2. Materials`, `B) Notes`.
var listNumber = phrase.MustCompile(`^(?:\d{1,2}|[A-Z]|[IVX]{1,4})[.)] ?`)

// headsSection tells the words behind such a number from a step in capitals: `2. WORDS`, but not
// `2. CH 5, TURN`.
func headsSection(words string) bool {
	name, _, _ := strings.Cut(words, "(")
	return inCapitals(name) && !strings.ContainsAny(name, ",;.") && !slices.ContainsFunc(Lex(words, Standard()), func(t Token) bool {
		return beginsAction(t)
	})
}

// bareHeading tells a heading without markup: a short line of its own that
// ends in a colon or is written in capitals.
func (d *document) bareHeading(trimmed string) bool {
	if rest := listNumber.ReplaceAllString(trimmed, ""); rest != trimmed && headsSection(rest) {
		return len(trimmed) <= 60
	}
	if len(trimmed) > 60 || labelled(trimmed) {
		return false
	}
	if f, ok := readField(trimmed, 0); ok && f.Value != "" && !d.started {
		return false // `SIZES: S (M, L)`
	}
	plain := strings.Trim(trimmed, "*_ ")
	if bold, ok := strings.CutPrefix(trimmed, "**"); ok && strings.HasSuffix(bold, "**") && strings.Count(bold, "*") == 2 && len(strings.Fields(plain)) <= 6 {
		return true
	}
	if head, ok := strings.CutSuffix(plain, ":"); ok {
		key, _ := headerKey(head)
		return key == "" && len(strings.Fields(head)) <= 6 && !strings.ContainsAny(head, ",;")
	}
	name, after, found := strings.Cut(plain, "(")
	if found && !strings.HasSuffix(after, ")") {
		return false
	}
	name, _, _ = strings.Cut(makeLast.ReplaceAllString(name, ""), ",")
	letters := 0
	for _, r := range name {
		if unicode.IsLower(r) {
			return false
		}
		if unicode.IsLetter(r) {
			letters++
		}
	}
	return letters >= 3 && len(strings.Fields(name)) <= 7 && len(strings.Fields(plain)) <= mostHeadingWords && !finishes(plain)
}

// mostHeadingWords is how many words a heading in capitals has at most, with what a bracket says of it.
const mostHeadingWords = 12

// finishes tells `FASTEN OFF.`, in capitals on a line of its own, from a
// heading.
func finishes(line string) bool {
	list, _ := build(settled(Lex(line, Standard()), 0))
	if len(list) == 0 {
		return false
	}
	switch list[0].Node.(type) {
	case *Finish, *MakeUp, *Turn, *Chain:
		return true
	}
	return false
}

// runIn takes a part heading that runs into its instruction: `ROOT (make 5):
// ch 26`.
func (d *document) runIn(line string, span source.Span) bool {
	h, ok := splitHeading(line)
	if !ok || h.mark == ":" && !h.capitals && (!d.started && !h.ring || d.branches(line, span)) || boldTitle.MatchString(line) && d.growsOn(line[h.body:], span) {
		return false
	}
	name := source.Span{Start: span.Start + len(line) - len(strings.TrimLeft(line, " \t*_")), End: span.Start + h.name}
	body := span.Start + h.body
	d.add(block{kind: blockHeading, span: source.Span{Start: span.Start, End: body}, names: []string{d.text(name)}, nameSpan: name})
	if body < span.End {
		d.add(block{kind: blockText, span: source.Span{Start: body, End: span.End}})
	}
	d.started, d.section = true, ""
	return true
}

// boldTitle is what a step is called, in bold with its stop: `**Arm one.** Chain 12.`
var boldTitle = phrase.MustCompile(`^\s*\*\*[^*]{2,40}\.\*\* `)

// growsOn tells a step that chains out and works back where the part it belongs to has laid its stem, or one that
// chains and no more there, or below the heading.
func (d *document) growsOn(step string, span source.Span) bool {
	at := d.file.Text.LineOf(span.Start)
	if firstOf(d.nextSaid(at)) == 1 {
		return false // a piece with rows of its own
	}
	r := readRow(strings.TrimLeft(step, "* "), 0, Standard())
	_, only := r.onlyChain()
	if len(r.Clauses) == 0 || !isChain(r.Clauses[0].Node) || !only && !worksBack(r) {
		return false
	}
	if only && d.underHeading() {
		return true
	}
	d.stemAsked++
	return stemLaid(d.file.Text, d.blocks) && !rowsBelow(d.file.Text, d.blocks)
}

// rowsBelow tells whether the part that the last of some blocks belongs to has numbered rows.
func rowsBelow(text *source.Text, blocks []block) bool {
	for _, b := range slices.Backward(blocks) {
		if b.kind == blockHeading {
			return false
		}
		if b.kind == blockText && firstOf(strings.TrimFunc(text.Slice(b.span), isBlank)) > 0 {
			return true
		}
	}
	return false
}

// branches tells the label of a branch, or of the stem that is gone on with: it is called so and a
// stem is laid, its own line tells the way home, or the next one begins with it.
func (d *document) branches(line string, span source.Span) bool {
	tokens := Lex(line, Standard())
	if d.underHeading() && d.growsFrom(line) {
		return true // the heading has named it
	}
	if ofSpray(tokens) || d.inParagraph(span) && d.growsFrom(line) {
		d.stemAsked++
		if stemLaid(d.file.Text, d.blocks) {
			return true
		}
	}
	if len(tokens) == 0 || tokens[0].Written != limbToken {
		return false
	}
	if slices.ContainsFunc(tokens, goesHome) {
		return true
	}
	next := d.file.Text.LineOf(span.Start) + 1
	if next >= d.file.Text.Lines() {
		return false
	}
	tokens = Lex(d.file.Text.Slice(d.file.Text.Line(next)), Standard())
	return len(tokens) > 0 && goesHome(tokens[0])
}

// inParagraph tells whether the line above is an instruction.
func (d *document) inParagraph(span source.Span) bool {
	last := d.last()
	return last != nil && last.kind == blockText && d.adjoins(last.span.End, span.Start)
}

// growsFrom tells a line with a label that chains out and works back, or chains out and no more.
func (d *document) growsFrom(line string) bool {
	_, rest, _ := strings.Cut(line, ":")
	r := readRow(strings.TrimLeft(strings.TrimFunc(rest, isBlank), "* "), 0, Standard())
	return laysFirst(r) != nil && (len(r.Clauses) == 1 || worksBack(r))
}

// ofSpray tells a line that begins with what a part of a spray is called: `Branch 1:`, `Main stem:`,
// `Stem tip:`.
func ofSpray(tokens []Token) bool {
	return len(tokens) > 0 && (isBranch(tokens[0]) || slices.ContainsFunc(tokens[:min(len(tokens), 2)], func(t Token) bool {
		return t.Canon == "stem" || t.Kind == Name && strings.HasPrefix(t.Canon, "stem ")
	}))
}

// stemLaid tells whether the part that the last of some blocks belongs to has laid a chain and not
// ended: what branches there is no part of its own.
func stemLaid(text *source.Text, blocks []block) bool {
	for _, b := range slices.Backward(blocks) {
		if b.kind == blockHeading {
			return false
		}
		if b.kind != blockText {
			continue
		}
		r := readRow(strings.TrimFunc(text.Slice(b.span), isBlank), 0, Standard())
		made := 0
		for _, c := range r.Clauses {
			if _, ends := c.Node.(*Finish); ends {
				return false
			}
			if steps(c.Node) {
				made++
			}
		}
		if made == 1 && lays(r) == laysChain {
			return true
		}
	}
	return false
}

// goesHome tells a word that leads home from a branch.
func goesHome(t Token) bool { return t.Kind == Word && t.Canon == "return" }

// runInHeading is a heading with the instruction that it runs into.
type runInHeading struct {
	name, body int // where the name ends and the instruction begins in the line
	mark       string
	capitals   bool // the name is written in capitals
	ring       bool // the instruction makes a ring
}

var (
	// headingMark is what may stand between a heading and its instruction: a
	// stop, a dash, dots, how many to make.
	headingMark = phrase.MustCompile(`\s*(?:` + headingStop + `(?:\s*` + howMany + `(?:\s*` + headingStop + `)?)?|` + howMany + `(?:\s*` + headingStop + `)?)[*_]*\s*`)
	// makeLast is the `– make 2`, `(make 2)`, `(make 2 in A)` or `(make 2, mid green)` at the end of a heading.
	makeLast = phrase.MustCompile(`(?i)(?:[ ,:—–-]+` + copiesExpr + `|\s*\(` + copiesExpr + `(?:,? (?:[^()]+ )?(?:with|in|using) [^()]+|, ?[^(),]+)?\)?)$`)
	// howManyLast is the `(2)` at the end of a heading's name.
	howManyLast = phrase.MustCompile(`\s*\([^()]+\)$`)
)

const (
	headingStop = `(?:[.:]?(?:--+|[—–])|\.(?: ?\.)+|…|[:.])`
	howMany     = `\((?i:make|work) [^()]*\)`
)

// splitHeading splits a heading from the instruction it runs into. It is one
// where the instruction lays a beginning or begins with Row 1, or where the
// heading says how many to make.
func splitHeading(line string) (h runInHeading, ok bool) {
	if labelled(strings.TrimLeftFunc(line, isBlank)) {
		return h, false
	}
	if n := besideRow1(line); n > 0 {
		return runInHeading{name: len(strings.TrimRight(line[:n], " ,")), body: n, capitals: true}, true
	}
	if m := squareHeading.FindStringSubmatchIndex(line); m != nil {
		return runInHeading{name: m[5], body: m[1], capitals: true}, true
	}
	for _, at := range headingMark.FindAllStringIndex(line[:min(len(line), maxHeading)], -1) {
		h = runInHeading{name: at[0], body: at[1], mark: strings.Trim(line[at[0]:at[1]], " \t*_")}
		if made := strings.IndexByte(h.mark, ')'); made >= 0 {
			h.name = at[0] + strings.IndexByte(line[at[0]:], ')') + 1
		}
		if h.begins(line) {
			return h, true
		}
	}
	return h, false
}

// besideRow1 finds where Row 1 begins in a line that names a part first, with no
// mark between, or a comma: `Wing Rnd 1: 6 sc in ring`, `Right band, Row 1: …`.
func besideRow1(line string) int {
	words := firstWords(line)
	tokens := Lex(words, Standard())
	for i, t := range tokens[:min(len(tokens), maxPart+2)] { // a comma may stand behind it, and then the label
		if i > 0 {
			label, n := readLabel(tokens[i:], words)
			last := tokens[min(i+max(n, 1), len(tokens))-1].Kind
			if n > 1 && label.Kind == Numbered && !label.Bare && label.First(0) == 1 && (last == Colon || last == Dash || label.Numbers[0].To.At(0) > 1) {
				return t.Span.Start
			}
		}
		if t.Kind == Comma && i > 0 && tokens[i-1].Kind == Name {
			continue
		}
		if i == maxPart || !namesPart(t) || i == 0 && !unicode.IsUpper(firstRune(words[t.Span.Start:])) {
			return 0
		}
	}
	return 0
}

// maxHeading is how far into a line its heading may reach.
const maxHeading = 64

// begins tells whether what stands before the mark is a name and what follows
// begins a piece.
func (h *runInHeading) begins(line string) bool {
	name := strings.Trim(howManyLast.ReplaceAllString(line[:h.name], ""), "*_•- ")
	first := firstRune(name)
	if !unicode.IsUpper(first) && !unicode.IsDigit(first) || strings.ContainsAny(name, ",;([=") || speaksOfCrochet(name) {
		return false
	}
	h.capitals = inCapitals(name)
	if words := len(strings.Fields(name)); words > maxNamed+2 || words > maxNamed && !h.capitals {
		return false
	}
	body := line[h.body:]
	if strings.TrimFunc(body, isBlank) == "" || h.mark == "." && !h.capitals {
		return false
	}
	r := readRow(inFirstSize(body), 0, Standard())
	if r.Label.Kind == Numbered && !r.Label.Bare {
		return r.Label.First(0) == 1
	}
	list := r.Clauses
	beginning := lays(r)
	h.ring = beginning == laysRing
	if len(name) < len(strings.Trim(line[:h.name], "*_•- ")) && h.capitals {
		return len(list) > 0 && !unread(list[:1]) // it says how many
	}
	return beginning != laysNothing && instructs(r)
}

// speaksOfCrochet tells a word of the trade, which is no name of a part: `MR`,
// `Foundation`.
func speaksOfCrochet(name string) bool {
	tokens := Lex(name, Standard())
	return len(tokens) == 1 && (tokens[0].Kind == Stitch || tokens[0].Kind == Word && !partWords[tokens[0].Canon])
}

// partWords are those words of the trade that name a part as well.
var partWords = map[string]bool{
	"edge": true, "side": true, "corner": true, "top": true, "center": true, "tail": true, "post": true, "base": true, "group": true, "stem": true, "back": true, "front": true,
}

// deedParts are parts that are called as what is done in finishing.
var deedParts = map[string]bool{"hem": true, "trim": true, "wrap": true, "lace": true}

// inCapitals tells `LEFT FRONT` and `2nd LEAF` from a name in small letters.
func inCapitals(name string) bool {
	letters := 0
	for word := range strings.FieldsSeq(name) {
		if unicode.IsDigit(firstRune(word)) {
			continue
		}
		for _, r := range word {
			if unicode.IsLower(r) {
				return false
			}
			if unicode.IsLetter(r) {
				letters++
			}
		}
	}
	return letters >= 3
}

// laid is the beginning that an instruction lays.
type laid uint8

const (
	laysNothing laid = iota
	laysChain
	laysRing
)

// lays tells whether an instruction begins something new: a ring, or a chain
// that nothing else is done with than to work along it. A chain before the
// stitches of a row lays nothing.
func lays(r *Row) laid {
	for i, c := range r.Clauses {
		switch n := c.Node.(type) {
		case *MagicRing:
			return laysRing
		case *Chain:
			return laysWith(n, r.Clauses[i+1:])
		case *Work:
			if len(n.Places) > 0 && n.Places[0].Noun.Kind == NounRing {
				return laysRing
			}
			return laysNothing
		case *Yarn, *Remark, *Side:
		case *Unread:
			if i > 0 || !opens(r) {
				return laysNothing
			}
		default:
			return laysNothing
		}
	}
	return laysNothing
}

// surelyFoundation is how many chains are a foundation whatever is done with them. Fewer, though
// more than MostRising, may still be the first stitch of a row and a loop behind it: `ch 8 (counts
// as dc and ch-5 sp)`.
const surelyFoundation = 10

// laysWith tells what a chain lays, from what is done with it.
func laysWith(chain *Chain, after []Clause) laid {
	if chain.Number.At(0) >= surelyFoundation {
		return laysChain
	}
	for _, c := range after {
		switch n := c.Node.(type) {
		case *Join:
			return laysRing
		case *Work:
			if len(n.Places) > 0 && n.Places[0].From == FromHook {
				return laysChain
			}
			return laysNothing
		case *CountsNote, *Remark, *Total, *Turn, *Yarn:
		default:
			return laysNothing
		}
	}
	if chain.Number.Or(0, 0) > 1 || chain.Multiple.Written() {
		return laysChain
	}
	return laysNothing
}

// startPiece begins the piece that a heading names.
func (d *document) startPiece(b *block) {
	b.digest = b.digest.in(d.file.Vocab, func(g *digest) { g.naming = namingIn(b.names[0], d.file.Vocab) })
	n := b.digest.naming
	p := &Piece{Name: n.name, Span: b.span, NameSpan: b.nameSpan, Make: n.makes}
	if n.cut >= 0 {
		p.NameSpan.End = p.NameSpan.Start + n.cut
	}
	d.chapter.pieces = append(d.chapter.pieces, p)
}

// naming is what a heading says of a piece.
type naming struct {
	name  string
	cut   int // how long the heading is without the yarn that it names, -1 where it names none
	makes Num // how many are made
}

func namingIn(heading string, vocab *Vocabulary) (n naming) {
	n.name, n.cut = heading, -1
	if m := squareHeading.FindStringSubmatchIndex(heading); m != nil {
		return naming{name: heading[m[2]:m[3]], cut: m[3], makes: firstNumber(heading[m[4]:m[5]], vocab)}
	}
	if at := yarnFrom(heading); at >= 0 {
		n.name, n.cut = heading[:at], at
	}
	name, rest, ok := strings.Cut(n.name, "(")
	if at := makeLast.FindStringIndex(n.name); !ok && at != nil {
		name, rest, ok = n.name[:at[0]], n.name[at[0]:], true
	}
	if !ok {
		return n
	}
	if n.makes = firstNumber(rest, vocab); !n.makes.PerSize() {
		if all := madeInAll(rest); all > 0 {
			n.makes = One(all)
		}
	}
	if n.makes.Written() {
		n.name = strings.Trim(name, " :.—–")
	}
	return n
}

// inYarns takes each of the numbers of pieces that are made in different yarns.
var inYarns = phrase.MustCompile(`(?i)(?:\bmake|,|\band) (\d{1,3}) (?:with|in|from|using) `)

// madeInAll is how many pieces a heading says to make in several yarns, `make 24 with A and 24 with
// B`, 0 where it says no such thing.
func madeInAll(said string) int {
	all, found := 0, inYarns.FindAllStringSubmatch(said, -1)
	if len(found) < 2 {
		return 0
	}
	for _, m := range found {
		n, _ := strconv.Atoi(m[1])
		all += n
	}
	return all
}

// firstNumber is the first number of pieces in a text, unwritten where there is none: that of a hook, of strands or of
// stitches is none.
func firstNumber(text string, vocab *Vocabulary) Num {
	tokens := Lex(text, vocab)
	for i, t := range tokens {
		if t.Kind == Number && !(i+1 < len(tokens) && notOfPieces[tokens[i+1].Canon]) {
			return t.Values
		}
	}
	return Num{}
}

// notOfPieces are words behind a number that counts no pieces.
var notOfPieces = map[string]bool{"mm": true, "cm": true, "inch": true, "ply": true, "strand": true, "ends": true, "hook": true, "st": true, "row": true, "rnd": true}

// piece is the piece that instructions now belong to.
func (c *chapter) piece(at source.Span) *Piece {
	if len(c.pieces) == 0 {
		c.pieces = append(c.pieces, &Piece{Span: at})
	}
	return c.pieces[len(c.pieces)-1]
}

// begun tells whether the piece at hand has a row.
func (c *chapter) begun() bool {
	return len(c.pieces) > 0 && len(c.pieces[len(c.pieces)-1].Rows) > 0
}

// lookOf is how a heading is set apart: its marks, and whether it is in capitals.
func (d *document) lookOf(p *Piece) string {
	line := strings.TrimLeftFunc(d.text(p.Span), isBlank)
	marks := line[:len(line)-len(strings.TrimLeft(line, "#*_"))]
	if inCapitals(p.Name) {
		return marks + "CAPITALS"
	}
	return strings.Clone(marks)
}

// startsAgain tells whether a second Row 1 begins a new piece.
func (p *Piece) startsAgain(r *Row) bool {
	if r.Label.Kind != Numbered || r.Label.First(0) != 1 {
		return false
	}
	for _, earlier := range slices.Backward(p.Rows) {
		if earlier.Label.Kind == Numbered && earlier.Label.First(0) >= 1 && earlier.Label.Round == r.Label.Round && earlier.Label.Bare == r.Label.Bare {
			return !r.Label.GoesOn(earlier.Label)
		}
	}
	return false
}

// again is the piece that begins where the rows of this one begin again: with the line
// before that takes up the work for it, if there is one.
func (p *Piece) again(at source.Span) *Piece {
	next := &Piece{Span: at, Again: true}
	if last := len(p.Rows) - 1; takesUp(p.Rows[last]) {
		next.Span.Start = p.Rows[last].At
		next.Rows, p.Rows = []*Row{p.Rows[last]}, p.Rows[:last]
	}
	return next
}

// takesUp tells a line that leads to where work is taken up: `Skip next 20 sts and join yarn
// in next st.`
func takesUp(r *Row) bool {
	if r.Label.Kind != Unlabelled {
		return false
	}
	skips := false
	for _, c := range r.Clauses {
		switch n := c.Node.(type) {
		case *Skip:
			skips = true
		case *Yarn:
			return skips && n.Action == YarnJoin
		case *Remark, *Side:
		default:
			return false
		}
	}
	return false
}
