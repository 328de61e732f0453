package lint

import (
	"slices"
	"strconv"
	"strings"
	"sync"

	"stitchproof/lang/fabric"
	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

var handworkPlace = &Rule{
	Name:     "handwork-place",
	Family:   "order",
	Severity: Warning,
	Summary:  "The piece, round, row, branch and stitches on which something is sewn, set or joined are there.",
	Why: "Eyes between Rnds 18 and 19 of a head of 9 rounds, or yarn joined at the tip of a branch that was never made: " +
		"the maker has the needle in hand and nowhere to put it. Often rounds were taken out and the words stayed.",
	Bad: `Pattern: Dormouse
Terms: US

Piece: Head
Rnd 1: 6 sc in magic ring; sl st in first sc to join. (6 sc)
Rnd 2: Ch 1, 2 sc in each st around; sl st in first sc to join. (12 sc)
Rnds 3-9: Ch 1, sc in each st around; sl st in first sc to join. (12 sc)
Set the eyes between Rnds 18 and 19.
Fasten off.
`,
	Good: `Pattern: Dormouse
Terms: US

Piece: Head
Rnd 1: 6 sc in magic ring; sl st in first sc to join. (6 sc)
Rnd 2: Ch 1, 2 sc in each st around; sl st in first sc to join. (12 sc)
Rnds 3-9: Ch 1, sc in each st around; sl st in first sc to join. (12 sc)
Set the eyes between Rnds 6 and 7.
Fasten off.
`,
	Check: checkHandworkPlace,
}

// handwork is a place of a section where something is set on work that is done.
type handwork struct {
	at      source.Span // in the section
	calls   bool        // it calls rows by number
	branchy bool        // it speaks of branches
}

// handworkIn are the places of a section where something is set on work that is done, and
// on which by its number or name.
var handworkIn = &fact[[]handwork]{func(p *Pass, s section) []handwork {
	var out []handwork
	add := func(h handwork) {
		if h.calls = rowsCalled.MatchString(strings.ToLower(s.text[h.at.Start:h.at.End])); h.calls || h.branchy {
			out = append(out, h)
		}
	}
	var said []source.Span
	for _, a := range assembliesIn.of(p, s) {
		if !a.labelled && setsOn.MatchString(a.text) && !worksOn.MatchString(a.text) {
			said = append(said, a.at)
			add(handwork{at: a.at, branchy: strings.Contains(a.text, "branch")})
		}
	}
	for _, row := range s.rows() {
		if hasFault(&row.Tallies[0], fabric.RowUnknown, fabric.PlaceAbsent) {
			continue // the counting has told of it
		}
		for _, c := range row.Tree.Clauses {
			at := s.place(row.Tree.Abs(c.Span))
			if takesPlace(c) && !slices.ContainsFunc(said, at.Overlaps) {
				branchy := slices.ContainsFunc(row.Tree.Tokens, func(t syntax.Token) bool { return t.Canon == "branch" && c.Span.Covers(t.Span) })
				add(handwork{at: at, branchy: branchy})
			}
		}
	}
	return out
}}

func checkHandworkPlace(p *Pass) {
	made := sync.OnceValue(func() map[string]int { return branchesMade(p.Fabric) })
	lasts := sync.OnceValue(func() []int { return lastRows(p.Fabric) })
	for s, all := range handworkIn.in(p) {
		for _, h := range all {
			if h.calls {
				p.rowsThere(p.sections.pieceOf(s), s.abs(h.at), lasts)
			}
			if h.branchy {
				p.branchesThere(p.toStop(s.abs(h.at)), made)
			}
		}
	}
	p.piecesThere()
	p.stitchesThere()
}

// takesPlace tells a clause that sets something on work that is done: sewing, a new yarn,
// a stitch into a row that it names.
func takesPlace(c syntax.Clause) bool {
	switch c.Node.(type) {
	case *syntax.MakeUp, *syntax.Finish, *syntax.Yarn:
		return true
	case *syntax.Work, *syntax.Join:
		return slices.ContainsFunc(c.Places(), func(p syntax.Place) bool { return p.Row.Written() || p.Of != nil && p.Of.Row.Written() })
	}
	return false
}

var (
	// setsOn tells a sentence that sets something on work that is done.
	setsOn = phrase.MustCompile(`\b(?:insert|attach|fix|set|place|position|embroider|sew|pin)\b`)
	// worksOn tells one that goes on with rows, which its numbers may be of.
	worksOn = phrase.MustCompile(`\b(?:rep|repeat\w*|work(?:ing)?|continue|until)\b`)
	// eyes are set while a piece is open.
	eyes = phrase.MustCompile(`\beyes?\b`)
	// ofHead are sewn on a head, where there is one.
	ofHead = phrase.MustCompile(`\b(?:ears?|eyes?|nose|muzzle|snout|beak|horns?|antlers?|whiskers|cheeks?|mouth|mane)\b`)
	// rowsCalled are the numbers of rows that words call.
	rowsCalled = phrase.MustCompile(`\b(?:(?:rows?|rnds?|rounds?|r)\.? ?(\d+)(?: ?(?:and|&|-|–|to) ?(?:(?:rows?|rnds?|rounds?|r)\.? ?)?(\d+))?|(\d+)(?:st|nd|rd|th) (?:row|rnd|round)\b)`)
)

// rowsThere tells of the first row that is called by a number beyond those of the piece that
// is meant, in words in the lines of a piece, -1 for above the first. lasts gives the last row
// of each.
func (p *Pass) rowsThere(piece int, at source.Span, lasts func() []int) {
	text := unwrapped.Replace(strings.ToLower(p.File.Text.Slice(at)))
	if len(text) != at.Len() {
		return
	}
	for _, m := range rowsCalled.FindAllStringSubmatchIndex(text, -1) {
		of, last := p.meant(piece, at, text[:m[0]], text[m[1]:], lasts)
		n := 0
		for g := 2; g < len(m); g += 2 {
			if m[g] >= 0 {
				called, _ := strconv.Atoi(text[m[g]:m[g+1]])
				n = max(n, called)
			}
		}
		if last > 0 && n > last {
			p.Report(Finding{
				Span:    source.Span{Start: at.Start + m[0], End: at.Start + m[1]},
				Message: "there is no row or round " + strconv.Itoa(n) + of + ": the last one is " + strconv.Itoa(last),
			})
			return
		}
	}
}

var (
	// goal is what something is set on: `to the head`, `on your mat`.
	goal = phrase.MustCompile(`\b(?:to|onto|on|of|in|into|at|along|around|over) (?:(?:the|each|your|both) )*([a-z])`)
	// plainGoal begins what may be a part of any piece, or is none.
	plainGoal = phrase.MustCompile(`^(?:first|last|other|opposite|foundation|beginning|starting|sides?|edge|top|bottom|rows?|rnds?|rounds?|r\d|place|it|them|secure|either|right|wrong|rs|ws|same|front|back|cent(?:er|re)|middle|ch|sts?|stitch(?:es)?|size|close|form)\b`)
	// besideIt ends before what something is set beside, not on: `on each side of the beak`.
	besideIt = phrase.MustCompile(`\b(?:each|either|both|one|this|that|left|right) sides? of (?:(?:the|each|your) )*$`)
	// partOfIt ends before what is set on by a part of it: `sew the narrow edge of the tail to …`.
	partOfIt = phrase.MustCompile(`\b(?:sew|pin|stitch|attach|fix|glue|place|position) (?:[a-z-]+ ){1,4}of (?:(?:the|each|your) )*$`)
	// sewnOnto is what is set on, where no goal is said: `sew on the head`.
	sewnOnto = phrase.MustCompile(`\b(?:sewn?|sewing|pin|stitch|set|attach|glue) on\b`)
)

// setToo is a second thing that is set on, with the row that it goes on behind it: `a nose on the snout and two closed eyes
// on R10`.
var setToo = phrase.MustCompile(`(?:,|;| and) (?:an?|two|three|four|both|\d+) [a-z -]{2,40} (?:on|over|at|between) $`)

// meant is the last number of the rows that are spoken of, 0 where it cannot be told: those
// of the piece that the words behind them name (`Rnd 30 of the body`), or of the longest
// that the sentence names as a goal (`to the body at Rnd 30`); of the piece that is open
// while eyes are set; of the head for what is sewn on one; or of any. What is sewn may go on
// a piece that is not in the file.
func (p *Pass) meant(within int, at source.Span, before, after string, lasts func() []int) (of string, n int) {
	piece := func(all []int) (string, int) {
		longest := slices.MaxFunc(all, func(i, j int) int { return lasts()[i] - lasts()[j] })
		if slices.ContainsFunc(all, func(i int) bool { return lasts()[i] == untold }) {
			return "", 0
		}
		return " of the " + strings.ToLower(bareName(p.Fabric.Pieces[longest].Tree.Name)), lasts()[longest]
	}
	if rest, named := strings.CutPrefix(strings.TrimLeft(after, " "), "of "); named {
		if all := p.piecesAt(rest); all != nil {
			return piece(all)
		}
		return "", 0
	}
	if m := setToo.FindStringIndex(before); m != nil {
		before = before[m[0]:]
	}
	text := sewnOnto.ReplaceAllString(before, "sew") + ";" + notOfOthers(after)
	var goals []int
	elsewhere := says(text, "chart")
	for _, m := range goal.FindAllStringSubmatchIndex(text, -1) {
		if besideIt.MatchString(text[:m[2]]) || partOfIt.MatchString(text[:m[2]]) {
			continue
		}
		all := p.piecesAt(text[m[2]:])
		goals = append(goals, all...)
		elsewhere = elsewhere || all == nil && !plainGoal.MatchString(text[m[2]:])
	}
	switch head := p.piecesAt("head"); {
	case goals != nil:
		return piece(goals)
	case elsewhere:
		return "", 0
	case eyes.MatchString(text) && within >= 0 && finishedAfter(p.Fabric.Pieces[within], at.End):
		return "", lasts()[within]
	case head != nil && ofHead.MatchString(before):
		return piece(head)
	case slices.Contains(lasts(), untold):
		return "", 0
	}
	return "", slices.Max(lasts())
}

// othersRow is another row in the words behind one, with what it is of.
var othersRow = phrase.MustCompile(`^(.*?[a-z].*?)` + `\b(?:rows?|rnds?|rounds?|r)\.? ?\d+(?: ?(?:and|&|-|–|to) ?\d+)? of (?:(?:the|each|your|both) )*[a-z]+`)

// listsRows begins the words that only list another row: `Rnds 8 and 12 of the head`.
var listsRows = phrase.MustCompile(`^[\s,]*(?:and|to|or|&|-|–)?\s*(?:(?:at|over|between|through)\s)?$`)

// notOfOthers is what stands behind a row without what another row is of: in `eyes level with Rnd
// 8 and a nose at Rnd 1 of the muzzle` that says nothing of the eyes.
func notOfOthers(after string) string {
	m := othersRow.FindStringSubmatchIndex(after)
	if m == nil || listsRows.MatchString(after[:m[3]]) {
		return after
	}
	return after[:m[3]] + after[m[1]:]
}

// finishedAfter tells whether the piece with numbered rows is still being made at a place:
// it is fastened off later.
func finishedAfter(piece *fabric.Piece, place int) bool {
	return len(numberedRows(piece)) > 0 && slices.ContainsFunc(piece.Rows, func(r *fabric.Row) bool {
		return slices.ContainsFunc(r.Tree.Clauses, func(c syntax.Clause) bool {
			_, finish := c.Node.(*syntax.Finish)
			return finish && r.Tree.Abs(c.Span).Start >= place
		})
	})
}

// untold is the last row of a piece that works rows without numbers.
const untold = -1

// lastRows are the last number of each piece's rows and of those that go on from it: 0 where
// none has a number, untold where rows are worked that no number tells of.
func lastRows(f *fabric.Fabric) []int {
	begins := make([]int, len(f.Pieces)) // the piece from which each goes on, or itself
	index := map[*fabric.Piece]int{}
	last, open := make([]int, len(f.Pieces)), make([]bool, len(f.Pieces))
	for i, piece := range f.Pieces {
		index[piece], begins[i] = i, i
		if piece.From != nil {
			begins[i] = begins[index[piece.From]]
		} else if piece.Tree.Name == "" && i > 0 {
			begins[i] = begins[i-1]
		}
		at := begins[i]
		for _, row := range piece.Rows {
			open[at] = open[at] || unnumbered(row)
			for _, span := range row.Tree.Label.Numbers {
				last[at] = slices.Max(append([]int{last[at]}, slices.Concat(span.From.Vals, span.To.Vals)...))
			}
		}
	}
	for i, at := range begins {
		if last[i] = last[at]; open[at] {
			last[i] = untold
		}
	}
	return last
}

// unnumbered tells a line that works rows and gives them no number.
func unnumbered(row *fabric.Row) bool {
	r := row.Tree
	switch {
	case thenRepeats(r), r.Label.EveryOther, r.Label.Kind == syntax.Parity, r.Label.Kind == syntax.NextRow:
		return true
	}
	return r.Label.Kind == syntax.Unlabelled && (has[*syntax.Rows](r) || has[*syntax.Even](r) || has[*syntax.Long](r))
}

// branchesMade gives of every branch of a pattern, by name, the most stitches that one of
// that name has in any size; 0 where it cannot be told.
func branchesMade(f *fabric.Fabric) map[string]int {
	made := map[string]int{}
	for row := range f.Rows() {
		if name := row.Tree.Label.Limb; name != "" {
			made[name] = max(made[name], 0)
		}
		if !has[*syntax.Branch](row.Tree) {
			continue
		}
		syntax.Walk(row.Tree.Clauses, func(c syntax.Clause) {
			if b, ok := c.Node.(*syntax.Branch); ok {
				made[b.Name] = max(made[b.Name], 0)
			}
		})
		for size := range row.Tallies {
			for name, n := range stitchesAlong(row, size) {
				made[name] = max(made[name], n)
			}
		}
	}
	return made
}

// stitchesAlong is how many stitches a row makes in a size while each of its branches is
// open; nothing where not all that it makes is known.
func stitchesAlong(row *fabric.Row, size int) map[string]int {
	along := map[string]int{}
	var open []string
	for i, c := range row.Tree.Clauses {
		s := &row.Steps[i]
		if !s.Known || size >= len(s.Made) {
			return nil
		}
		switch n := c.Node.(type) {
		case *syntax.Branch:
			open = append(open, n.Name)
		case *syntax.Return:
			open = n.Leaves(open)
		}
		for _, name := range open {
			along[name] += s.Made[size]
		}
	}
	return along
}

// toStop is a stretch of the file as far as the end of its sentence: a list of branches goes
// on behind the comma that ends a clause.
func (p *Pass) toStop(at source.Span) source.Span {
	rest := p.File.Text.Slice(source.Span{Start: at.End, End: p.File.Text.Len()})
	if n := strings.IndexAny(rest, ".\r\n"); n >= 0 {
		rest = rest[:n]
	}
	at.End += len(rest)
	return at
}

// branchesThere tells of branches that no row makes, and of stitches beyond theirs, in a
// clause.
func (p *Pass) branchesThere(at source.Span, made func() map[string]int) {
	text := p.File.Text.Slice(at)
	tokens := syntax.Lex(text, p.File.Vocab)
	for i, word := range tokens {
		if word.Canon != "branch" {
			continue
		}
		for n, t := range branchNames(tokens[i+1:]) {
			name := text[t.Span.Start:t.Span.End]
			length, known := made()[t.Canon]
			of := t.Span
			if n == 0 {
				of = word.Span.Union(of)
			}
			switch nth := ordinalBefore(tokens[:i]); {
			case !known:
				p.Report(Finding{Span: of.Shift(at.Start), Message: "no branch is called " + name})
			case n == 0 && length > 0 && nth > length:
				p.Report(Finding{
					Span:    t.Span.Shift(at.Start),
					Message: "asks for `st " + strconv.Itoa(nth) + "` of branch " + name + ", and it has " + counted(strconv.Itoa(length), "st"),
				})
			}
		}
	}
}

// branchNames are the names that some tokens begin with: `A, B and D` behind `branches`.
func branchNames(tokens []syntax.Token) []syntax.Token {
	var out []syntax.Token
	for i := 0; i < len(tokens); {
		if t := tokens[i]; t.Kind != syntax.Name && t.Kind != syntax.Number || len(t.Canon) > 2 || i+1 < len(tokens) && tokens[i+1].Canon == "each" {
			break // `branch C and 1 each to branches B and D`
		}
		out = append(out, tokens[i])
		for i++; i < len(tokens) && (tokens[i].Kind == syntax.Comma || tokens[i].Canon == "and" || tokens[i].Canon == "&"); i++ {
		}
	}
	return out
}

// ordinalBefore is the place that some tokens end in, `12th st of`; 0 for none.
func ordinalBefore(tokens []syntax.Token) int {
	n := len(tokens)
	if n < 3 || tokens[n-1].Canon != "of" || tokens[n-3].Kind != syntax.Ordinal || tokens[n-3].Values.PerSize() {
		return 0
	}
	return tokens[n-3].Values.At(0)
}
