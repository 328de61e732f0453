package lint

import (
	"fmt"
	"strings"

	"stitchproof/lang/source"
)

var abbreviationUnlisted = &Rule{
	Name:     "abbreviation-unlisted",
	Family:   "terms",
	Severity: Warning,
	Summary:  "A pattern with a list of abbreviations explains in it every one that it uses.",
	Why:      "A maker looks there for the one she does not know, and a beginner knows none. Of other words than stitches it is no more than information.",
	Bad: `Pattern: Acorn cup
Terms: US

Abbreviations
sc = single crochet
st(s) = stitch(es)

Piece: Cup
6 sc in magic ring; sl st in first st to join. (6 sc)
Fasten off.
`,
	Good: `Pattern: Acorn cup
Terms: US

Abbreviations
sc = single crochet
sl st = slip stitch
st(s) = stitch(es)

Piece: Cup
6 sc in magic ring; sl st in first st to join. (6 sc)
Fasten off.
`,
	Sources: []string{"what abbreviations stand for: Craft Yarn Council, Standards & Guidelines, and the lists that `lang/stitch/data/sources.tsv` names"},
	Check:   checkAbbreviationUnlisted,
}

// checkAbbreviationUnlisted tells of each stitch that a list lacks, where it is first worked: there a maker is stopped.
// Of words such as `rnd` and `rep`, which most makers know, it tells all at once, where the list begins.
func checkAbbreviationUnlisted(p *Pass) {
	l := listOf(p.File)
	if len(l.entries) == 0 {
		return
	}
	list := l.entries[0].NameSpan
	var others []string
	var uses []Related
	var edits []source.Edit
	for _, a := range p.abbreviationsUsed() {
		word := bareWords(a.written)
		if l.explains(word) || l.explains(bareWords(a.short)) {
			continue
		}
		if a.works && !l.hints(word) {
			p.Report(Finding{
				Span:    a.span,
				Message: quoted(a.short) + " is not in the list of abbreviations",
				Related: []Related{{Span: list, Message: "the list begins here"}},
				Fix:     &Fix{Title: "add " + quoted(a.short) + " to the list", Safe: true, Edits: []source.Edit{l.adding(a)}},
			})
			continue
		}
		others = append(others, quoted(a.short))
		uses = append(uses, Related{Span: a.span, Message: fmt.Sprintf("%s is used here first", quoted(a.short))})
		edits = append(edits, l.adding(a))
	}
	if len(others) == 0 {
		return
	}
	p.Note(Finding{
		Span:    list,
		Message: "the list of abbreviations does not explain " + both(others),
		Related: uses,
		Fix:     &Fix{Title: "add what is used", Safe: true, Edits: edits},
	})
}

// adding is the edit that explains an abbreviation in the list, in the list's own
// manner: by the alphabet if it keeps it, else at its end.
func (l listing) adding(a abbreviated) source.Edit {
	place := len(l.entries) - 1
	if l.sorted() {
		for place > 0 && strings.ToLower(l.entries[place].Names[0]) > strings.ToLower(a.short) {
			place--
		}
	}
	d := l.entries[place]
	mark := l.file.Text.Slice(source.Span{Start: d.NameSpan.End, End: d.Span.End})
	mark = mark[:len(mark)-len(strings.TrimLeftFunc(mark, isExplanationMark))]
	entry := a.short + mark + a.long
	if strings.ToLower(d.Names[0]) > strings.ToLower(a.short) && l.sorted() {
		return source.Edit{Span: source.At(d.Span.Start), New: entry + l.separator(place)}
	}
	end := d.Span.End
	if strings.HasSuffix(l.file.Text.Slice(d.Span), ".") && d.Listed {
		end-- // the stop ends the list
	}
	return source.Edit{Span: source.At(end), New: l.separator(place) + entry}
}

// isExplanationMark tells what stands between a word and its meaning.
func isExplanationMark(r rune) bool { return strings.ContainsRune(" \t=:-–—…→", r) }

// separator is what stands between two entries of the list where a line does not
// happen to end.
func (l listing) separator(at int) string {
	d := l.entries[at]
	if !d.Listed {
		line := l.file.Text.LineOf(d.Span.Start)
		begins := l.file.Text.Line(line).Start
		return l.file.Text.LineEnd() + l.file.Text.Slice(source.Span{Start: begins, End: d.Span.Start})
	}
	for i := range len(l.entries) - 1 {
		if l.entries[i].Listed && l.entries[i+1].Listed {
			return strings.TrimSpace(l.file.Text.Slice(source.Span{Start: l.entries[i].Span.End, End: l.entries[i+1].Span.Start})) + " "
		}
	}
	return ", "
}

// sorted tells whether the list keeps the alphabet.
func (l listing) sorted() bool {
	for i := 1; i < len(l.entries); i++ {
		if strings.ToLower(l.entries[i-1].Names[0]) > strings.ToLower(l.entries[i].Names[0]) {
			return false
		}
	}
	return true
}
