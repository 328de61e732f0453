package lint

import (
	"fmt"
	"iter"
	"slices"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// toldSum is a sentence below a row that says again what its parts have, `The stem has 23 dc, the
// first branch 7 dc and the second 10 dc`: the stitch and the number of all.
type toldSum struct {
	at   source.Span // in the section
	of   stitch.Meaning
	noun string
	n    int
}

var (
	// partHas takes the first part of such a sentence.
	partHas = phrase.MustCompile(`^\W*(?:the|each of the) (?:[a-z]+ ){1,3}has (\d+) ((?:[a-z]+ )?[a-z]+)$`)
	// partToo takes each of the others.
	partToo = phrase.MustCompile(`^(?:and )?(?:the|each of the(?: ` + countExpr + `)?) (?:[a-z]+ ){1,3}(?:has )?(\d+)(?: ((?:[a-z]+ )?[a-z]+))?$`)
)

// addition takes numbers that are added up, and what they are said to come to, where nothing else is reckoned with
// before them: `23 + 5 + 23 = 51 sts`.
var addition = phrase.MustCompile(`(?:^|[.:;(\[] ?|\n)(\d{1,4}(?: ?\+ ?\d{1,4})+) ?= ?(\d{1,5})(?:[ )\].,;]|$)`)

// product takes two numbers of which one is taken as often as the other says: `22 x 2 = 44 sts`.
var product = phrase.MustCompile(`(?:^|[.:;(\[] ?|\n)((\d{1,4}) ?[x×] ?(\d{1,4})) ?= ?(\d{1,5})(?:[ )\].,;]|$)`)

// additionsIn are the places in a section where those do not come to what is said, with what they come to.
var additionsIn = &fact[[]toldSum]{func(p *Pass, s section) []toldSum {
	var out []toldSum
	for _, m := range addition.FindAllStringSubmatchIndex(s.text, -1) {
		n := 0
		for _, part := range strings.Split(s.text[m[2]:m[3]], "+") {
			n += inWords(strings.TrimSpace(part))
		}
		if n != inWords(s.text[m[4]:m[5]]) {
			out = append(out, toldSum{at: source.Span{Start: m[2], End: m[5]}, n: n})
		}
	}
	for _, m := range product.FindAllStringSubmatchIndex(s.text, -1) {
		if n := inWords(s.text[m[4]:m[5]]) * inWords(s.text[m[6]:m[7]]); n != inWords(s.text[m[8]:m[9]]) {
			out = append(out, toldSum{at: source.Span{Start: m[2], End: m[9]}, n: n})
		}
	}
	return out
}}

// holdAdditions tells of them.
func (p *Pass) holdAdditions() {
	for s, sum := range p.sums(additionsIn) {
		p.Report(Finding{Span: s.abs(sum.at), Message: fmt.Sprintf("`%s` is not right: it comes to %d", s.text[sum.at.Start:sum.at.End], sum.n)})
	}
}

// sums are those that the sections of the pieces at hand tell.
func (p *Pass) sums(told *fact[[]toldSum]) iter.Seq2[section, toldSum] {
	return func(yield func(section, toldSum) bool) {
		for s, all := range told.in(p) {
			for _, sum := range all {
				if slices.Contains(p.Pieces, s.piece) && !yield(s, sum) {
					return
				}
			}
		}
	}
}

// toldSumsIn are those of a section that begins with a piece.
var toldSumsIn = &fact[[]toldSum]{func(p *Pass, s section) []toldSum {
	text := strings.ToLower(s.text)
	if len(text) != len(s.text) || s.piece == nil || !strings.Contains(text, " has ") {
		return nil
	}
	var out []toldSum
	for _, at := range sentencesOf(text) {
		parts := strings.Split(strings.ReplaceAll(strings.TrimSpace(unwrapped.Replace(text[at.Start:at.End])), " and ", ", "), ", ")
		m := partHas.FindStringSubmatch(parts[0])
		if m == nil || len(parts) < 3 {
			continue
		}
		sum := toldSum{at: at, n: inWords(m[1]), noun: strings.Clone(m[2])}
		sum.of, _ = stitch.Find(strings.TrimSuffix(sum.noun, "s"))
		for _, part := range parts[1:] {
			m := partToo.FindStringSubmatch(part)
			if m == nil || m[3] != "" && m[3] != sum.noun {
				sum.of = stitch.Meaning{}
				break
			}
			sum.n += inWords(m[2]) * max(1, inWords(m[1]))
		}
		if sum.of != (stitch.Meaning{}) {
			out = append(out, sum)
		}
	}
	return out
}}

// holdToldSums holds them against what the row above states.
func (p *Pass) holdToldSums() {
	for s, sum := range p.sums(toldSumsIn) {
		if row, n := statedAbove(s, sum); row != nil && n != sum.n {
			p.Report(Finding{
				Span:    s.abs(sum.at),
				Message: fmt.Sprintf("makes %d %s in all, and the row above has %d", sum.n, sum.noun, n),
				Related: []Related{{row.Tree.Abs(row.StatedAt), "the count of the row"}},
			})
		}
	}
}

// statedAbove is the row above such a sentence, with how many of its stitches that states.
func statedAbove(s section, sum toldSum) (*fabric.Row, int) {
	var above *fabric.Row
	for _, row := range s.rows() {
		if row.Tree.At > s.abs(sum.at).Start {
			break
		}
		if row.Stated != nil {
			above = row
		}
	}
	if above == nil {
		return nil, 0
	}
	for _, part := range above.Stated.Parts {
		if part.On == "" && part.Noun.Kind == syntax.NounStitch && part.Noun.Stitch.Meaning == sum.of {
			return above, part.Number.At(0)
		}
	}
	return nil, 0
}
