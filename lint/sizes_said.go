package lint

import (
	"slices"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/measure"
	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
	"stitchproof/lang/units"
)

// saidSize is a length that a pattern says, in its own words, of something that it has made.
type saidSize struct {
	at     source.Span // in the file
	length syntax.WrittenLength
	side   side
	either bool // it is one of a width and a height, in whichever order
	// other is that one, and beside is of a width the length that is said of the same thing.
	other, beside *syntax.WrittenLength
	trimmed       bool // with the edgings of it
	flat          bool // it is that of something that lies flat
	shallow       bool // the same thing is said to be much longer: `10 in long and 1 in deep`
	of            body // none where nobody knows
}

// body is what a size is said of: pieces that go on from each other.
type body struct {
	name   string // "" for all that the pattern makes
	pieces []*fabric.Piece
}

// notOfWork are the fields that give the lengths of other things than the work.
var notOfWork = map[string]bool{
	"yarn": true, "hook": true, "notions": true, "materials": true, "abbreviations": true, "to fit": true, "ease": true, "swatch": true, "pattern": true,
}

// statement is a sentence above the work, or in a field of the header with what that is called.
type statement struct {
	at   source.Span // in the file
	text string      // in lower case
	key  string
}

// statements are those that may say how large something is.
func (p *Pass) statements() []statement {
	var out []statement
	add := func(at source.Span, key string, from int) {
		text := strings.ToLower(p.File.Text.Slice(at))
		if len(text) != at.Len() {
			return
		}
		for i, s := range sentencesOf(text) {
			if i >= from {
				out = append(out, statement{s.Shift(at.Start), unwrapped.Replace(text[s.Start:s.End]), key})
			}
		}
	}
	for _, f := range p.File.Header {
		switch {
		case f.Key == "gauge":
			add(f.ValueSpan, "", 1)
		case !notOfWork[f.Key]:
			add(f.ValueSpan, strings.ToLower(p.File.Text.Slice(f.KeySpan)), 0)
		}
	}
	begin := p.beginning()
	for _, at := range p.File.Prose {
		if at.Start < begin && !slices.Contains(p.File.Supplies, at) {
			add(at, "", 0)
		}
	}
	return out
}

// beginning is where the first instruction stands.
func (p *Pass) beginning() int {
	for _, piece := range p.File.Pieces {
		if len(piece.Rows) > 0 {
			return piece.Rows[0].At
		}
	}
	return p.File.Text.Len()
}

// saidSizes are the lengths of those statements that are known to be of some piece.
func (p *Pass) saidSizes() []saidSize {
	var out []saidSize
	bodies, statements := p.bodies(), p.statements()
	bare := slices.ContainsFunc(statements, func(s statement) bool { return asWorked.MatchString(s.text) })
	for _, s := range statements {
		if gaugeSaid.MatchString(s.text) || assembled.MatchString(s.text) || notSaid.MatchString(bracketed.ReplaceAllString(s.text, "")) || afterBlocking.MatchString(s.text) && !p.gaugeBlocked() {
			continue
		}
		lengths := syntax.FindLengths(s.text)
		for i, l := range lengths {
			if strings.Count(s.text[:l.Span.Start], "(") > strings.Count(s.text[:l.Span.Start], ")") || !l.Metric() && l.Unit != "in" || l.Unit == "m" || i > 0 && inOther(s.text, lengths[i-1], l) || len(l.Vals) > 1 && len(l.Vals) != p.Fabric.Sizes() ||
				len(l.Vals) <= 1 && p.Fabric.Sizes() > 1 && ofSizes.MatchString(s.text) {
				continue
			}
			size := saidSize{at: l.Span.Shift(s.at.Start), length: l}
			said := saidOf(s.text, l.Span)
			if size.other = crossedWith(s.text, lengths, i); size.other == nil && squareWord.MatchString(said) {
				size.other = &lengths[i]
			}
			size.either = size.other != nil
			if size.side = sideOf(sidewise.Replace(p.withoutNames(said))); size.side == unsaid {
				size.side = sideOf(sidewise.Replace(s.key))
			}
			if size.side == unsaid && !size.either && finishedKey.MatchString(s.key) && onHead.MatchString(strings.ToLower(p.title())) {
				size.side = round
			}
			size.trimmed = !bare && !withoutIt.MatchString(s.key+" "+said)
			size.flat = size.either || flatWords.MatchString(said)
			bust := atBust.MatchString(s.key + " " + said)
			if size.side == unsaid && !size.either && !bust {
				continue
			}
			if !bust {
				size.of = p.bodyOf(bodies, s, l.Span, said)
			}
			out = append(out, size)
		}
	}
	return out
}

var (
	// ofSizes tells lengths that are those of one size and another: `80 x 100 cm / 120 x 150 cm`.
	ofSizes = phrase.MustCompile(`\d ?(?:cm|mm|in(?:ches)?|["”″]) ?/ ?\d`)
	// notSaid tells of sizes that no gauge gives: of a body, of what is stretched, hung or felted.
	notSaid = phrase.MustCompile(`\b(?:fits?|stretch\w*|gather\w*|felt\w*|fold\w*|drops?|hangs?|pad|insert|swatch|before washing)\b`)
	// gaugeSaid tells of a gauge.
	gaugeSaid = phrase.MustCompile(`\d (?:[a-z]+ ){1,5}(?:and|x|by) \d+ (?:rows|rnds|rounds)\b`)
	// afterBlocking tells of one that the gauge gives where that is blocked as well.
	afterBlocking = phrase.MustCompile(`\b(?:block\w*|starch\w*|stiffen\w*|pinned)\b`)
	finishedKey   = phrase.MustCompile(`^finished(?: (?:size|measurements?))?$`)
	flatWords     = phrase.MustCompile(`\b(?:wide|width|flat)\b`)
	sidewise      = strings.NewReplacer("from side to side", "across", "side to side", "across", "diameter", "across", "in length", "long", "lengthways", "long")
)

// gaugeBlocked tells whether the gauge is that of a blocked piece.
func (p *Pass) gaugeBlocked() bool {
	return len(p.Materials.Gauges) > 0 && afterBlocking.MatchString(strings.ToLower(p.File.Text.Slice(p.Materials.Gauges[0].Span)))
}

// inOther tells whether a length is the one before it in the other units.
func inOther(text string, before, l syntax.WrittenLength) bool {
	return before.Metric() != l.Metric() && sameBehind.MatchString(text[before.Span.End:l.Span.Start])
}

// crossedWith is the length that one stands beside in a width by a height, nil for none.
func crossedWith(text string, all []syntax.WrittenLength, i int) *syntax.WrittenLength {
	joined := func(a, b syntax.WrittenLength) bool {
		return units.Crossed(unworded.ReplaceAllString(bracketed.ReplaceAllString(text[a.Span.End:b.Span.Start], ""), ""))
	}
	switch {
	case i > 0 && joined(all[i-1], all[i]):
		return &all[i-1]
	case i+1 < len(all) && joined(all[i], all[i+1]):
		return &all[i+1]
	}
	return nil
}

// bodies are the pieces of a pattern with those that go on from them.
func (p *Pass) bodies() []body {
	var out []body
	of := map[*fabric.Piece]int{}
	for _, piece := range p.Fabric.Pieces {
		if at, known := of[piece.From]; piece.From != nil && known {
			of[piece] = at
			if name := piece.Tree.Name; !measure.IsEdging(name) && !beside.MatchString(strings.ToLower(name)) {
				out[at].pieces = append(out[at].pieces, piece)
			}
			continue
		}
		of[piece] = len(out)
		out = append(out, body{piece.Tree.Name, []*fabric.Piece{piece}})
	}
	return out
}

// onlyChained tells of a body of which nothing is told but the chain that it begins with.
func (b body) onlyChained() bool {
	chained := false
	for _, piece := range b.pieces {
		for _, row := range piece.Rows {
			if measure.MainStitch(row, 0) != nil && row.Tallies[0].Works {
				return false
			}
			syntax.Walk(row.Tree.Clauses, func(c syntax.Clause) {
				_, chain := c.Node.(*syntax.Chain)
				chained = chained || chain
			})
		}
	}
	return chained
}

// first is the piece that a body begins with, nil for none.
func (b body) first() *fabric.Piece {
	if len(b.pieces) == 0 {
		return nil
	}
	return b.pieces[0]
}

// unread tells of a body of several rows some of which could not be counted.
func (b body) unread() bool {
	return b.rows() > 2 && slices.ContainsFunc(b.pieces, func(piece *fabric.Piece) bool {
		return slices.ContainsFunc(piece.Rows, func(row *fabric.Row) bool { return row.Tallies[0].Works && !row.Tallies[0].Known })
	})
}

// rows are how many a body has, so far as is known.
func (b body) rows() int {
	n := 0
	for _, piece := range b.pieces {
		for _, row := range piece.Rows {
			if row.Tallies[0].Works {
				n += row.Repeats[0]
			}
		}
	}
	return n
}

// stitches are how many a body has, so far as is known.
func (b body) stitches() int {
	n := 0
	for _, piece := range b.pieces {
		for _, row := range piece.Rows {
			if t := &row.Tallies[0]; t.Works {
				n += (t.Made + t.Chains) * row.Repeats[0]
			}
		}
	}
	return n
}

// muchSmaller is how many times smaller than the body of a thing what is only sewn on to it is.
const muchSmaller = 4

// mainBody is the body that is all of what is made but for edgings and small things beside it,
// none where there are several. Of what is made several times each is small.
func mainBody(all []body) body {
	whole := slices.DeleteFunc(slices.Clone(all), func(b body) bool {
		return b.stitches() == 0 && !b.onlyChained() || beside.MatchString(strings.ToLower(b.name))
	})
	own := slices.DeleteFunc(slices.Clone(whole), func(b body) bool { return measure.IsEdging(b.name) })
	if slices.ContainsFunc(own, func(b body) bool { return b.rows() > 1 }) {
		whole = own
	}
	var main body
	most, rest, several := 0, 0, 0
	for _, b := range whole {
		switch n := b.stitches(); {
		case b.pieces[0].Tree.Make.Or(0, 1) > 1:
			several = max(several, n)
		case n > most:
			rest += most
			main, most = b, n
		default:
			rest += n
		}
	}
	if slices.ContainsFunc(whole, func(b body) bool {
		return b.onlyChained() || b.pieces[0] != main.first() && b.pieces[0].Tree.Make.Or(0, 1) == 1 && b.unread()
	}) {
		return body{}
	}
	if most < several || most < muchSmaller*rest {
		return body{}
	}
	return main
}

// bodyOf is the body that a length of a statement is of: that of a piece named with it, or the
// main one, where nothing is said but which way it goes. There is none where the words speak of
// anything else.
func (p *Pass) bodyOf(bodies []body, s statement, at source.Span, said string) body {
	before := s.text[:at.Start]
	before = withoutIt.ReplaceAllString(bracketed.ReplaceAllString(before[strings.LastIndexAny(before, ",;.")+1:], ""), " ")
	said = withoutIt.ReplaceAllString(s.key+" "+said, " ")
	for _, b := range bodies {
		for _, piece := range b.pieces {
			for _, name := range p.namesBeside(piece) {
				if wordsIn(s.key+" "+before+" "+said, name) < 0 || !generic(strings.ReplaceAll(said, name, ""), p.File) {
					continue
				}
				if b.pieces[0] == piece {
					return b
				}
				return body{piece.Tree.Name, []*fabric.Piece{piece}}
			}
		}
	}
	if !generic(said, p.File) || p.tells(madeUp) || anywhere(p, unreadIn) {
		return body{}
	}
	return mainBody(bodies)
}

// unreadIn tells whether the words of some row of a section are not all understood: the piece
// that a size is of, where it names none, may be one that is not counted.
var unreadIn = &fact[bool]{func(_ *Pass, s section) bool {
	return slices.ContainsFunc(s.rows(), func(row *fabric.Row) bool { return len(row.Tree.Unread()) > 0 })
}}

// namesBeside are the words that a size may name a piece by: the last of its name too, where no
// other has it.
func (p *Pass) namesBeside(piece *fabric.Piece) []string {
	var out []string
	for _, name := range namesOf(piece.Tree) {
		name = article.ReplaceAllString(plainText(bareName(name)), "")
		out = append(out, formsOf(name)...)
		if words := strings.Fields(name); len(words) > 1 {
			if kind := words[len(words)-1]; len(p.called().kind[kind]) == 1 && p.called().exact[kind] == nil {
				out = append(out, formsOf(kind)...)
			}
		}
	}
	return out
}

// wordsIn is where some words stand in a text as such, -1 for nowhere.
func wordsIn(text, words string) int {
	at := strings.Index(text, words)
	if words == "" || at < 0 || at > 0 && isLetter(text[at-1]) || at+len(words) < len(text) && isLetter(text[at+len(words)]) {
		return -1
	}
	return at
}

func isLetter(c byte) bool { return c >= 'a' && c <= 'z' }

// withoutIt are words that leave something out of a size.
var withoutIt = phrase.MustCompile(`\b(?:without|excluding|not counting|not including|before) (?:(?:the|its|their|any|adding the) )?\w+(?: and \w+)?\b`)

// ofNothingElse are words beside a length that speak of no part of the thing.
var ofNothingElse = phrase.MustCompile(`\b(?:with|including) (?:(?:the|its) )?(?:edging|border)\b|\b(?:edging|border) included\b|\b(?:up|down|along) the (?:middle|cent(?:er|re))(?: \w+)?\b|\bat the (?:cent(?:er|re)|point|widest|deepest)(?: \w+)?\b|` +
	`\bfrom (?:side to side|tip to tip|point to point|top to bottom)\b|\b(?:after|once|when) (?:blocking|blocked|starched|stiffened|pinned)\b|` +
	`\bat a (?:gauge|tension) of\b.*|\b(?:finished|actual|total|full|overall|sizes?|measures?|measurements?|measuring|dimensions?|about|approx|approximately|roughly|circa|ca|each|one|the|an?|is|are|it|its|and|or|of|in|at|to|edge|sample|piece|stem|stalk|spine|` +
	`circumference|round|around|across|wide|width|long|length|deep|depth|tall|high|height|square|diameter|cms?|mm|inch|inches|ins|end|worked|shown|both|every|has|have|lies|laid|flat|by|x|included)\b|[^a-z]+`)

// generic tells whether words beside a length say nothing but how it is measured, and of the
// whole thing by the words of the pattern's title.
func generic(words string, file *syntax.File) bool {
	left := ofNothingElse.ReplaceAllString(words, " ")
	return !slices.ContainsFunc(strings.Fields(left), func(w string) bool { return !titled(file, w) })
}

// longestTitle is how long a line at the top may be that is a title, or goes with it.
const longestTitle = 50

// titled tells whether a word stands in the title of a pattern.
func titled(file *syntax.File, word string) bool {
	for _, piece := range file.Pieces {
		if name := plainText(piece.Name); name != word && len(file.Pieces) > 1 && wordsIn(name, strings.TrimSuffix(word, "s")) >= 0 {
			return false // of one piece of several
		}
	}
	for _, f := range file.Header {
		if f.Key == "pattern" && wordsIn(strings.ToLower(f.Value), word) >= 0 {
			return true
		}
	}
	top := strings.ToLower(strings.TrimLeft(file.Text.Slice(source.Span{Start: 0, End: min(200, file.Text.Len())}), "# \t\r\n"))
	for _, line := range strings.SplitN(top, "\n", 3)[:min(2, strings.Count(top, "\n")+1)] {
		if line, _, _ = strings.Cut(line, " with "); wordsIn(line, word) >= 0 && len(line) < longestTitle {
			return true
		}
	}
	return false
}
