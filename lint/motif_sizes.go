package lint

import (
	"fmt"
	"strconv"
	"strings"

	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// motifExpr is what is joined in rows to something larger, all of one size.
const motifExpr = `(?:square|block|motif|hexagon|granny|tile)`

var (
	// motifSays stands before how large one of them is, each way.
	motifSays = phrase.MustCompile(`\b(?:one|each|every|the|a) (?:\w+ )?` + motifExpr + `(?:,? (?:when )?(?:finished|blocked),?)? ?(?:=|:|measures?|is) ?(?:about |approx\.? |approximately )?$`)
	// laidAcross takes `4 across and 6 down`, `three rows of three`, `in 5 rows of 6`.
	laidAcross = phrase.MustCompile(`\b` + countExpr + ` (?:\w+ )?across (?:and|by|x) ` + countExpr + ` (?:\w+ )?(?:down|deep|high|long)\b|\b` + countExpr + ` rows of ` + countExpr + `\b`)
	// through takes `through three hexagons`.
	through = phrase.MustCompile(`\b(?:through|across|over) (?:the |all )?` + countExpr + ` ` + motifExpr + `s\b`)
)

// layout is how many motifs stand beside each other each way.
type layout struct{ across, down int }

// layoutsIn are those of a section.
var layoutsIn = &fact[[]layout]{func(p *Pass, s section) []layout {
	text := unwrapped.Replace(strings.ToLower(s.text))
	if len(text) != len(s.text) || !laidAcross.May(text) {
		return nil
	}
	var out []layout
	for _, m := range laidAcross.FindAllStringSubmatchIndex(text, -1) {
		l := layout{inWords(groupOf(text, m, 1)), inWords(groupOf(text, m, 2))}
		if l.across == 0 {
			l.across, l.down = inWords(groupOf(text, m, 4)), inWords(groupOf(text, m, 3))
		}
		out = append(out, l)
	}
	return out
}}

// motifSize is how large one motif is, as a statement gives it.
func (p *Pass) motifSize() (size syntax.WrittenLength, at source.Span) {
	statements := p.statements()
	for _, f := range p.File.Header {
		if f.Key == "gauge" {
			statements = append(statements, statement{f.ValueSpan, unwrapped.Replace(strings.ToLower(p.File.Text.Slice(f.ValueSpan))), ""})
		}
	}
	for _, s := range statements {
		for _, l := range syntax.FindLengths(s.text) {
			if len(l.Vals) == 1 && motifSays.MatchString(s.text[:l.Span.Start]) {
				return l, l.Span.Shift(s.at.Start)
			}
		}
	}
	return syntax.WrittenLength{}, source.Span{}
}

// What motifs in a row may come to: seams take a little, and an edging adds to them.
const (
	seamsTake   = .08
	edgingGives = .35
)

// holdMotifs holds the size of what is made of motifs against theirs.
func (p *Pass) holdMotifs() {
	motif, at := p.motifSize()
	if !motif.Written() {
		return
	}
	one := motif.At(0)
	for _, s := range p.statements() {
		for _, l := range syntax.FindLengths(s.text) {
			// one way of it, by what it goes through
			if m := through.FindStringSubmatch(s.text); m != nil && len(l.Vals) == 1 && sideOf(saidOf(s.text, l.Span)) == across {
				if n := inWords(m[1]); !s.comesTo(l, n, one) {
					p.tellMotifs(l.Span.Shift(s.at.Start), at, l, n, one)
				}
			}
		}
		p.holdLaid(s, one, at)
	}
}

// holdLaid holds a width by a height against motifs that are laid out in rows.
func (p *Pass) holdLaid(s statement, one float64, at source.Span) {
	for _, area := range areasIn(s.text, s.at.Start) {
		a, b := area.sides[0], area.sides[1]
		if len(a.Vals) != 1 || len(b.Vals) != 1 {
			continue
		}
		for _, all := range layoutsIn.in(p) {
			for _, laid := range all {
				upright := s.comesTo(a, laid.across, one) && s.comesTo(b, laid.down, one)
				sideways := s.comesTo(a, laid.down, one) && s.comesTo(b, laid.across, one)
				if upright || sideways {
					return
				}
				wrong, n := a, laid.across
				if s.comesTo(a, laid.across, one) {
					wrong, n = b, laid.down
				}
				p.tellMotifs(area.at, at, wrong, n, one)
				return
			}
		}
	}
}

// comesTo tells whether a length is that of so many motifs in a row.
func (s statement) comesTo(l syntax.WrittenLength, n int, one float64) bool {
	says, makes := l.At(0), float64(n)*one
	more := edgingGives
	if asWorked.MatchString(s.text) {
		more = seamsTake
	}
	return says >= makes*(1-seamsTake) && says <= makes*(1+more)
}

func (p *Pass) tellMotifs(at, of source.Span, l syntax.WrittenLength, n int, one float64) {
	self := func(v float64) float64 { return v }
	p.Report(Finding{
		Span: at,
		Message: fmt.Sprintf("says %s, and %s of %s in a row make %s", inBothUnits([]float64{l.At(0)}, self), strconv.Itoa(n),
			inBothUnits([]float64{one}, self), inBothUnits([]float64{float64(n) * one}, self)),
		Related: []Related{{of, "the size of one"}},
	})
}
