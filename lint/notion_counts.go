package lint

import (
	"maps"
	"strconv"
	"strings"

	"stitchproof/lang/inflect"
	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
)

// notionCount is how many of a notion are spoken of, or how large one is.
type notionCount struct {
	at   source.Span // in the file
	noun string
	n    int     // 0 where no number is said
	mm   float64 // 0 where no size is
	all  bool    // there are no more of them
}

// What is counted of notions, in the words of a list and of instructions. Those of one size
// are not those of another: nothing stands between number and name but what they look like.
const (
	notionNoun = `(eye|button|bead|snap|press stud|toggle|bell)s?\b`
	notionLook = `(?:(?:safety|plastic|toy|black|brown|small|large|round|flat|wooden|shell|glass|shank|matching) )*`
	ofMM       = `(?:(\d{1,2}(?:\.\d)?) ?-?mm )?`
)

var (
	// notionListed takes `8 wooden buttons`, `pair of 8 mm safety eyes`, `2 safety eyes of 6 mm`.
	notionListed = phrase.MustCompile(`^\W*(?:` + countExpr + ` |(a )?(pairs? of) )?` + ofMM + notionLook + notionNoun + `(?:,? (?:of|\()? ?(\d{1,2}(?:\.\d)?) ?mm)?`)
	// notionSaid takes `the 6 buttons`, `sew on 6 buttons`, `the 8 mm eyes`.
	notionSaid = phrase.MustCompile(`\b(the|all|all the|your|on|sew|attach|insert|fix|add|string) (?:` + countExpr + ` )?` + ofMM + notionLook + notionNoun)
	// inParts tells that a number is that of one of several places.
	inParts = phrase.MustCompile(`\b(?:each|every|per|side|front|left|right|first|then|other|remaining|rest|another|more|last|spare)\b`)
)

// notionsListed are the counts of the list, of those notions that it has once.
func (p *Pass) notionsListed() map[string]notionCount {
	out, twice := map[string]notionCount{}, map[string]bool{}
	for _, item := range p.Materials.Items(p.File) {
		text := strings.ToLower(p.File.Text.Slice(item))
		m := notionListed.FindStringSubmatch(text)
		if m == nil {
			continue
		}
		c := notionCount{at: item, noun: m[5], n: inWords(m[1])}
		if m[3] == "pair of" {
			c.n = 2
		}
		c.mm, _ = strconv.ParseFloat(m[4]+m[6], 64) // of one of them alone
		_, there := out[c.noun]
		twice[c.noun] = twice[c.noun] || there || strings.ContainsAny(text, "([/") && strings.Contains(text, ",")
		out[c.noun] = c
	}
	maps.DeleteFunc(out, func(noun string, _ notionCount) bool { return twice[noun] })
	return out
}

// notionsSaidIn are the counts of a section's sentences that sew or set something on, with
// their places in the section.
var notionsSaidIn = &fact[[]notionCount]{func(p *Pass, s section) []notionCount {
	var out []notionCount
	for _, a := range assembliesIn.of(p, s) {
		for _, m := range notionSaid.FindAllStringSubmatchIndex(a.text, -1) {
			group := func(i int) string { return groupOf(a.text, m, i) }
			from := m[2]
			if m[4] >= 0 {
				from = m[4]
			} else if m[6] >= 0 {
				from = m[6]
			}
			c := notionCount{at: source.Span{Start: from, End: m[1]}.Shift(a.at.Start), noun: strings.Clone(group(4)), n: inWords(group(2))}
			c.mm, _ = strconv.ParseFloat(group(3), 64)
			switch group(1) {
			case "the", "all", "all the", "your":
				c.all = !inParts.MatchString(a.text)
			}
			out = append(out, c)
		}
	}
	return out
}}

// notionsSaid are those of the file, with their places in it.
func (p *Pass) notionsSaid() []notionCount {
	var out []notionCount
	for s, all := range notionsSaidIn.in(p) {
		for _, c := range all {
			c.at = s.abs(c.at)
			out = append(out, c)
		}
	}
	return out
}

// moreThanListed tells of notions that instructions ask for in a larger number, or in
// another size, than the materials list.
func (p *Pass) moreThanListed() {
	listed := p.notionsListed()
	if len(listed) == 0 {
		return
	}
	for _, said := range p.notionsSaid() {
		there := listed[said.noun]
		related := []Related{{there.at, "what is listed"}}
		switch {
		case there.n > 0 && said.n > there.n:
			p.Report(Finding{
				Span: said.at, Message: "asks for " + counted(strconv.Itoa(said.n), said.noun) + ", and the materials list " + strconv.Itoa(there.n), Related: related,
			})
		case there.mm > 0 && said.mm > 0 && said.mm != there.mm:
			p.Report(Finding{
				Span: said.at, Message: "asks for " + mm(said.mm) + ", and the " + inflect.Plural(said.noun) + " of the materials are " + mm(there.mm), Related: related,
			})
		}
	}
}

// fewerThanListed tells of notions of which the instructions use fewer than the materials
// list, where they speak of them all and once.
func (p *Pass) fewerThanListed() {
	listed := p.notionsListed()
	if len(listed) == 0 {
		return
	}
	all := p.notionsSaid()
	times := map[string]int{}
	for _, said := range all {
		times[said.noun]++
	}
	for _, said := range all {
		if there := listed[said.noun]; said.all && said.n > 0 && said.n < there.n && times[said.noun] == 1 {
			p.Report(Finding{
				Span: there.at, Message: "lists " + counted(strconv.Itoa(there.n), said.noun) + ", and " + strconv.Itoa(said.n) + " are used",
				Related: []Related{{said.at, "all that are used"}},
			})
		}
	}
}
