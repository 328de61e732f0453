// Package terms tells whose words a pattern uses, US or UK, and what shows it,
// and rewrites a pattern in the words of the other dialect.
//
// The words themselves are data of package stitch. What the evidence means to a
// maker is said in package lint.
package terms

import (
	"cmp"
	"slices"
	"strings"

	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// Kind is what sort of thing shows a pattern's dialect.
type Kind uint8

// The kinds of evidence, the strongest first. Which is stronger is the custom of
// those who tell US from UK patterns (beautybady.com, foxcreations.com.au,
// woolandcrafts.co.uk).
const (
	Statement Kind = iota // the pattern says it: `Terms: UK`
	Stitch                // a stitch's name that only one dialect has, in instructions and lists: sc, htr
	Mention               // such a name elsewhere, in notes or the gauge
	Height                // chains beside a stitch whose name has two meanings: ch 3 before tr
	Word                  // another word that one dialect seldom or never has: miss, tension
	Spelling              // a habit of the country, which settles nothing: colour
)

// Evidence is one thing that shows which dialect a pattern is written in.
type Evidence struct {
	Kind    Kind
	Dialect stitch.Dialect
	Text    string // the word or wording, as written
	// Span is where it stands first, Times how often it is met.
	Span  source.Span
	Times int

	proof bool // of a word: no pattern of the other dialect has it
}

// Terms is whose words a pattern uses.
type Terms struct {
	Dialect stitch.Dialect
	// Evidence is all that shows a dialect, of either, the strongest first, then by
	// place; a word that comes again is there once.
	Evidence []Evidence

	shown shownIn
}

// Or takes a pattern in which nothing settles whose words it uses to be in a
// dialect.
func (t Terms) Or(usual stitch.Dialect) Terms {
	if t.Dialect == stitch.Unsettled {
		t.Dialect = usual
	}
	return t
}

// Stated tells whether the pattern itself says whose words it uses.
func (t Terms) Stated() bool { return len(t.Evidence) > 0 && t.Evidence[0].Kind == Statement }

// Firm tells whether a statement or the names of stitches settle the dialect, so that
// no other word matters.
func (t Terms) Firm() bool {
	firm := slices.DeleteFunc(slices.Clone(t.Evidence), func(e Evidence) bool { return e.Kind > Stitch })
	return settle(firm) != stitch.Unsettled
}

// Of gives the evidence of some kinds for a dialect.
func (t Terms) Of(d stitch.Dialect, kinds ...Kind) []Evidence {
	var out []Evidence
	for _, e := range t.Evidence {
		if e.Dialect == d && slices.Contains(kinds, e.Kind) {
			out = append(out, e)
		}
	}
	return out
}

// Strangers are the stitches' names that contradict the rest: those that only the
// dialect has that the pattern does not use. Where as many are of each, those
// of UK terms.
func (t Terms) Strangers() []Evidence {
	home := t.Dialect
	if home == stitch.Unsettled {
		home = stitch.US
	}
	certain := func(d stitch.Dialect) []Evidence {
		return slices.DeleteFunc(t.Of(d, Stitch), func(e Evidence) bool { return old.MatchString(e.Text) })
	}
	if len(certain(home)) == 0 && len(t.Of(home, Statement)) == 0 {
		return nil
	}
	return certain(home.Other())
}

// old are names from before the terms were settled. Beeton's Book of Needlework
// (London, 1870) has long stitches beside single crochet, and so have US
// patterns of today, for other stitches.
var old = phrase.MustCompile(`(?i)\blongs?\b`)

// Find tells whose words a pattern uses. What it says of itself decides; else the
// strongest kind of evidence that speaks more for one dialect than for the
// other.
func Find(f *syntax.File) Terms { return FindAfter(Terms{}, f) }

// FindAfter does what Find does, in less time where the terms of an earlier text of
// the pattern are known.
func FindAfter(before Terms, f *syntax.File) Terms {
	c := collector{file: f, seen: map[seenKey]int{}, shown: shownIn{texts: map[words]*shown{}, vocab: f.Vocab}}
	if before.shown.vocab == f.Vocab {
		c.before = before.shown
	}
	beside := passagesBeside(f)
	if !c.header() && !c.title() {
		c.statements(beside)
	}
	for _, p := range beside {
		for _, e := range c.of(p).evidence {
			c.add(e, p.at)
		}
	}
	for i, piece := range f.Pieces {
		shown := c.ofRows(i, piece)
		c.shown.pieces = append(c.shown.pieces, shown)
		for _, e := range shown.evidence {
			c.add(e, piece.Rows[0].At)
		}
	}
	slices.SortStableFunc(c.found, func(a, b Evidence) int {
		return cmp.Or(cmp.Compare(a.Kind, b.Kind), cmp.Compare(a.Span.Start, b.Span.Start))
	})
	return Terms{settle(c.found), c.found, c.shown}
}

// shownIn is what the passages of a file show by themselves: those beside its rows each,
// and the rows of each piece.
type shownIn struct {
	texts  map[words]*shown
	pieces []*shownInRows
	vocab  *syntax.Vocabulary
}

// shownInRows is what the rows of a piece show, with places counted from the first of them.
type shownInRows struct {
	rows     []shownInRow
	evidence []Evidence
}

type shownInRow struct {
	row *syntax.Instruction
	at  int // from the first row of the piece
	*shown
}

// of tells whether these are the rows of a piece, as they stand in it.
func (s *shownInRows) of(p *syntax.Piece) bool {
	return slices.EqualFunc(s.rows, p.Rows, func(known shownInRow, r *syntax.Row) bool {
		return known.row == r.Instruction && known.at == r.At-p.Rows[0].At
	})
}

// like is what is known of the rows of a piece, the ith of n, or of the one that was there
// before it: an edit changes one of them, and what stands before and after it is counted
// from the file's beginning and from its end. It is nil where there was none.
func (s shownIn) like(p *syntax.Piece, i, n int) *shownInRows {
	var was *shownInRows
	for _, at := range [...]int{i, len(s.pieces) - n + i} {
		if at < 0 || at >= len(s.pieces) {
			continue
		}
		if was = s.pieces[at]; was.of(p) {
			break
		}
	}
	return was
}

// words are those of a passage that is no row.
type words struct {
	text string
	sort sort
}

// shown is the evidence in a passage, each once with how often it is there, and what
// the passage says of the whole pattern.
type shown struct {
	evidence  []Evidence
	statement []Evidence
}

// of finds what a passage beside the rows shows.
func (c *collector) of(p passage) *shown {
	if p.row != nil {
		return c.look(p.withAsides()) // of a definition, which few patterns have
	}
	key := words{p.text, p.sort}
	if known := c.shown.texts[key]; known != nil {
		return known
	}
	known := c.before.texts[key]
	if known == nil {
		known = c.look(p.withAsides())
	}
	key.text = strings.Clone(key.text) // it outlives the text of the file
	c.shown.texts[key] = known
	return known
}

// ofRows finds what the rows of the ith piece show.
func (c *collector) ofRows(i int, p *syntax.Piece) *shownInRows {
	was := c.before.like(p, i, len(c.file.Pieces))
	if was != nil && was.of(p) {
		return was
	}
	known := map[*syntax.Instruction]*shown{}
	if was != nil {
		for _, r := range was.rows {
			known[r.row] = r.shown
		}
	}
	now := &shownInRows{}
	sum := collector{seen: map[seenKey]int{}}
	for _, r := range p.Rows {
		what := known[r.Instruction]
		if what == nil {
			what = c.look(ofRow(r).withAsides())
		}
		at := r.At - p.Rows[0].At
		now.rows = append(now.rows, shownInRow{r.Instruction, at, what})
		for _, e := range what.evidence {
			sum.add(e, at)
		}
	}
	now.evidence = sum.found
	return now
}

// look gathers the evidence in a passage.
func (c *collector) look(p passage) *shown {
	in := collector{file: c.file, seen: map[seenKey]int{}}
	in.names(p)
	in.words(p)
	in.heights(p)
	for i := range in.found {
		in.found[i].Text = strings.Clone(in.found[i].Text) // it outlives the text of the file
	}
	return &shown{evidence: in.found, statement: statementsIn(p)}
}

// settle weighs evidence, one kind after the other. Words beside the stitches
// settle only what they agree on, and a single one that is merely rare in
// the other dialect does not.
func settle(found []Evidence) stitch.Dialect {
	for _, kind := range [...]Kind{Statement, Stitch, Mention, Height} {
		us, uk := 0, 0
		for _, e := range found {
			switch {
			case e.Kind != kind:
			case e.Dialect == stitch.US:
				us += e.Times
			default:
				uk += e.Times
			}
		}
		switch {
		case us > uk:
			return stitch.US
		case uk > us:
			return stitch.UK
		}
	}
	said, weight := stitch.Unsettled, 0
	for _, e := range found {
		if e.Kind != Word {
			continue
		}
		if said != stitch.Unsettled && said != e.Dialect {
			return stitch.Unsettled
		}
		said = e.Dialect
		if weight++; e.proof {
			weight++
		}
	}
	if weight < 2 {
		return stitch.Unsettled
	}
	return said
}

// collector gathers the evidence in a file.
type collector struct {
	file  *syntax.File
	found []Evidence
	seen  map[seenKey]int // index in found

	shown, before shownIn
}

type seenKey struct {
	kind    Kind
	dialect stitch.Dialect
	text    string
}

// add adds what is met at a place of the file. The same again counts once more, and
// stands where it is met first.
func (c *collector) add(e Evidence, at int) {
	e.Span, e.Times = e.Span.Shift(at), max(1, e.Times)
	key := seenKey{e.Kind, e.Dialect, strings.ToLower(e.Text)}
	i, ok := c.seen[key]
	if !ok {
		c.seen[key] = len(c.found)
		c.found = append(c.found, e)
		return
	}
	e.Times += c.found[i].Times
	if c.found[i].Span.Start <= e.Span.Start {
		e.Text, e.Span = c.found[i].Text, c.found[i].Span
	}
	c.found[i] = e
}

// titleEnd is a dialect in brackets at the end of a title: `Hazel leaf (US)`.
var titleEnd = phrase.MustCompile(`[(\[]\s*` + stitch.NationExpr + `(?:\s+(?i:terms|terminology|version|pattern|english))?\s*[)\]][\s*_#]*$`)

// mostTitled is how long a line is at most that is the title of a pattern.
const mostTitled = 80

// title finds what the first line of the file says.
func (c *collector) title() bool {
	t := c.file.Text
	for i := range t.Lines() {
		at := t.Line(i)
		line := t.Slice(at)
		if strings.TrimSpace(line) == "" {
			continue
		}
		m := titleEnd.FindStringIndex(line)
		if m == nil || len(line) > mostTitled {
			return false
		}
		said := source.Span{Start: m[0], End: m[1]}.Shift(at.Start)
		d := dialectIn(t.Slice(said))
		if d != stitch.Unsettled {
			c.add(Evidence{Kind: Statement, Dialect: d, Text: strings.TrimSpace(t.Slice(said)), Span: said}, 0)
		}
		return d != stitch.Unsettled
	}
	return false
}

// header finds what the header says: `Terms: UK`, `Abbreviations (UK): …`.
func (c *collector) header() bool {
	for _, field := range c.file.Header {
		before := source.Span{Start: field.Span.Start, End: max(field.KeySpan.End, field.ValueSpan.Start)} // `US terms - skill level: easy`
		if key := c.file.Text.Slice(before); statement.MatchString(key) {
			if d := dialectIn(key); d != stitch.Unsettled {
				c.add(Evidence{Kind: Statement, Dialect: d, Text: key, Span: before}, 0)
				return true
			}
		}
		if field.Key == "terms" {
			said := c.file.Text.Slice(field.Span)
			if d := cmp.Or(dialectIn(said), dialectIn(firstSentence.FindString(said))); d != stitch.Unsettled {
				c.add(Evidence{Kind: Statement, Dialect: d, Text: c.file.Text.Slice(field.Span), Span: field.Span}, 0)
				return true
			}
		}
	}
	return false
}

// firstSentence is what a field says before it goes on: `Terms: British. Where I write dc, an American …`.
var firstSentence = phrase.MustCompile(`^[^.;\n]+`)

// statements finds what the prose says: `Written in US terms`. A pattern that speaks
// of both dialects says neither.
func (c *collector) statements(all []passage) {
	type said struct {
		Evidence
		at int
	}
	var list []said
	for _, p := range all {
		for _, e := range c.of(p).statement {
			if e.Dialect == stitch.Unsettled || len(list) > 0 && list[0].Dialect != e.Dialect {
				return
			}
			list = append(list, said{e, p.at})
		}
	}
	for _, e := range list {
		c.add(e.Evidence, e.at)
	}
}

// statementsIn finds where a passage names a dialect, or both, for the words of the
// pattern.
func statementsIn(p passage) []Evidence {
	var out []Evidence
	if !p.tells() || !nation.May(p.text) {
		return nil
	}
	for _, at := range statement.FindAllStringIndex(p.text, -1) {
		if callsStitches(p.text[:at[0]]) || ofOther(p.text, at) {
			continue
		}
		written := p.text[at[0]:at[1]]
		out = append(out, Evidence{Kind: Statement, Dialect: dialectIn(written), Text: written, Span: source.Span{Start: at[0], End: at[1]}})
	}
	return out
}

// ofOther tells a statement among other words in a table of three columns or more: that lists
// several patterns, and says it of one of them.
func ofOther(text string, at []int) bool {
	line := text[strings.LastIndexByte(text[:at[0]], '\n')+1:]
	line, _, _ = strings.Cut(line, "\n")
	if cells := strings.Count(line, "|") - 1; cells < 3 || !strings.HasPrefix(strings.TrimSpace(line), "|") {
		return false
	}
	before := text[strings.LastIndexByte(text[:at[0]], '|')+1 : at[0]]
	after, _, _ := strings.Cut(text[at[1]:], "|")
	return strings.TrimSpace(before+after) != ""
}

// callsStitches tells whether a text ends with no more than names of stitches that are so called in
// the terms named next, `circle of tr (dtr in`: of the pattern's own that says nothing.
func callsStitches(before string) bool {
	m := namesBefore.FindStringSubmatch(before)
	if m == nil {
		return false
	}
	stitches := false
	for _, t := range syntax.Lex(m[1], syntax.Standard()) {
		switch {
		case t.Kind == syntax.Stitch:
			stitches = true
		case t.Kind == syntax.Comma, t.Kind == syntax.Word && (t.Canon == "and" || t.Canon == ""):
		default:
			return false
		}
	}
	return stitches
}

// namesBefore takes the words from a bracket, a cell of a table or a stop on to an `in`.
var namesBefore = phrase.MustCompile(`(?i)(?:^|[(\[|.;:])([^(\[|.;:]{1,60}?),?\s+in\s+$`)

const (
	// subjectExpr is what a dialect is said to be of.
	subjectExpr = `(?i:terms|terminology|words|(?:stitch|crochet)\s+names|names\s+of\s+(?:the\s+)?stitches)`
	// nationsExpr is a dialect, also by both its names, `British (UK)`, or both.
	nationsExpr = stitch.NationExpr + `(?:\s*(?:(?:/|,|&|and|or)\s*` + stitch.NationExpr + `|\(\s*` + stitch.NationExpr + `\s*\)))*`
)

var (
	// statement is a dialect, or both, named for the words of a pattern.
	statement = phrase.MustCompile(`\b` + nationsExpr + `\s+(?i:(?:crochet|stitch)\s+)?(?i:terms|terminology|abbreviations|names|words)\b|` +
		`\bEnglish\s+(?i:(?:crochet|stitch)\s+)?` + subjectExpr + `\b|` +
		`\b` + subjectExpr + `(?i:\s+(?:used|in|for|of|this|the|here|pattern|throughout))*(?:\s*:[*_]{0,2}|\s+(?i:are|is)(?i:\s+(?:all|in|the|those|used|given|written))*)\s*` + nationsExpr + `\b|` +
		`\b` + nationsExpr + `,?\s+and\s+so\s+(?:is|are)\s+(?:the|my|all)\s+(?:the\s+|my\s+)?(?:crochet|terms|words|stitches)\b|` +
		`\b(?i:terms|terminology|abbreviations)\s*[(\[]\s*(?i:in )?` + nationsExpr + `\s*[)\]]`)
	// nation is in every statement, whose other words are common ones.
	nation = phrase.MustCompile(stitch.NationExpr + `|English`)
	// nations are the dialects, of which a text names some.
	nations = phrase.MustCompile(`(?i)\b(?:(?:us|u\.s\.|american|uk|u\.k\.|british) english|usa?|u\.s|american|uk|u\.k|british|english)\b`)
)

// dialectIn is the one dialect that a text names, Unsettled for none and for both.
func dialectIn(text string) stitch.Dialect {
	said := stitch.Unsettled
	for _, written := range nations.FindAllString(text, -1) {
		d := stitch.US
		if strings.ContainsAny(written, "KkBb") || strings.EqualFold(written, "English") {
			d = stitch.UK
		}
		if said != stitch.Unsettled && said != d {
			return stitch.Unsettled
		}
		said = d
	}
	return said
}

// names finds the names of stitches that only one dialect has. What stands in
// brackets as the other dialect's name is none.
func (c *collector) names(p passage) {
	kind := Mention
	if p.instructs() {
		kind = Stitch
	}
	for _, t := range p.tokens(c.file.Vocab) {
		us, uk := t.Stitch.US, t.Stitch.UK
		if t.Kind != syntax.Stitch || (us == nil) == (uk == nil) || p.aside(t.Span) != stitch.Unsettled {
			continue
		}
		written := p.text[t.Span.Start:t.Span.End]
		if !p.instructs() && ordinary(written) {
			continue
		}
		d := stitch.US
		if us == nil {
			d = stitch.UK
		}
		c.add(Evidence{Kind: kind, Dialect: d, Text: written, Span: t.Span}, 0)
	}
}

// words finds the words beside the stitches' names in which the dialects differ.
func (c *collector) words(p passage) {
	for _, m := range p.differing() {
		if p.aside(m.span) != stitch.Unsettled {
			continue
		}
		e := Evidence{Kind: Word, Dialect: m.dialect, Text: p.text[m.span.Start:m.span.End], Span: m.span, proof: m.force == stitch.Proof}
		if m.force == stitch.Hint {
			e.Kind = Spelling
		}
		if m.force != stitch.Nothing {
			c.add(e, 0)
		}
	}
}

// heights tells whose words a pattern uses by how many chains it makes before
// a stitch whose name has two meanings: 3 before a tr is UK, 4 is US.
func (c *collector) heights(p passage) {
	if p.row == nil || p.defined {
		return
	}
	for i, clause := range p.row.Clauses {
		w, ok := clause.Node.(*syntax.Work)
		if !ok || !w.Stitch.Meaning.Ambiguous() {
			continue
		}
		n := chainsBefore(p.row.Clauses[:i], w)
		for _, d := range [...]stitch.Dialect{stitch.US, stitch.UK} {
			k := w.Stitch.Meaning.In(d)
			if n > 0 && k.Class == stitch.Plain && k.Turning == n {
				c.add(Evidence{Kind: Height, Dialect: d, Text: p.row.Source(clause.Span), Span: clause.Span}, 0)
			}
		}
	}
}

// chainsBefore is how many chains a row begins with before its first stitch, 0
// where it has another beginning.
func chainsBefore(before []syntax.Clause, w *syntax.Work) int {
	for _, p := range w.Places {
		if p.From == syntax.FromHook {
			return p.Nth - 1
		}
	}
	if len(before) == 0 || works(before[:len(before)-1]) {
		return 0
	}
	if ch, ok := before[len(before)-1].Node.(*syntax.Chain); ok {
		return ch.Number.At(0)
	}
	return 0
}

// works tells whether some clause takes a stitch of the row below.
func works(list []syntax.Clause) bool {
	taken := false
	syntax.Walk(list, func(c syntax.Clause) {
		switch c.Node.(type) {
		case *syntax.Work, *syntax.Group, *syntax.Skip:
			taken = true
		}
	})
	return taken
}
