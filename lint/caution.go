package lint

import (
	"strconv"
	"strings"

	"stitchproof/lang/materials"
	"stitchproof/lang/numeral"
	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/stock"
	"stitchproof/lang/syntax"
)

// LocalRules ends every caution, and stands on the page of every rule that gives
// some. Nothing in one may be read as leave to do without the law of the place.
const LocalRules = "follow the rules in force where the piece is made, sold or given (this is information, no legal advice)"

// OfCautions is what has to be known of all of them.
const OfCautions = "Whatever stands here, " + LocalRules + ". No fix takes a caution away, and an answer to it needs a reason."

// Cautions tells whether a rule looks for what could hurt somebody, at whatever
// level a house has it. What it finds is left to people: no fix takes it away, a
// baseline does not set it aside, and an answer to it needs a reason.
func (r *Rule) Cautions() bool { return r != nil && r.Family == "caution" }

// IsCaution tells whether a finding is of such a rule.
func (f *Finding) IsCaution() bool {
	r, _ := Find(f.Rule)
	return r.Cautions()
}

// caution reports what could hurt somebody, with the published figures that
// bear on it. It offers no fix: what is to be done is for people to decide.
func (p *Pass) caution(at source.Span, what string, figures ...string) {
	f := Finding{Span: at, Message: quoted(p.File.Text.Slice(at)) + what + ": " + LocalRules}
	for _, key := range figures {
		l := stock.SafetyLimit(key)
		words := l.Holds
		if l.Figure > 0 {
			words += ": " + strconv.FormatFloat(l.Figure, 'f', -1, 64) + " " + l.Unit
		}
		f.Related = append(f.Related, Related{at, words + " (" + howHad.Replace(l.Source) + ")"})
	}
	p.Report(f)
}

// howHad tells a maker what the tables note of their sources.
var howHad = strings.NewReplacer(" (read)", "", "(memory)", "(from memory)")

// wearer is for whom the pattern is: as the header says, else the names of its
// pieces, else its first line, else the ages that it is made for.
func (p *Pass) wearer() materials.Wearer {
	return remembered(p.sections.list[0].memory, "who wears it", p.findWearer)
}

func (p *Pass) findWearer() materials.Wearer {
	if who := p.Materials.For; who != materials.Nobody {
		if aged := p.aged(); who == materials.Child && aged.UnderThree() {
			return aged // `children from 12 months`
		}
		return who
	}
	var names []string
	for _, piece := range p.File.Pieces {
		names = append(names, piece.Name)
	}
	if who := materials.WearerIn(strings.Join(names, " ")); who != materials.Nobody {
		return who
	}
	if who := materials.WearerIn(p.around.opening); who != materials.Nobody {
		return who
	}
	return p.aged()
}

// aged is for whom the pattern is by the ages that its sizes, its title or its first
// line give.
func (p *Pass) aged() materials.Wearer {
	for _, f := range p.File.Header {
		said := f.Value
		if f.Key == "sizes" || f.Key == "for" {
			said = "for " + said
		} else if f.Key != "pattern" {
			continue
		}
		if who := materials.AgedIn(said); who != materials.Nobody {
			return who
		}
	}
	return materials.AgedIn(p.around.opening)
}

// opening is the first line of a pattern.
func opening(f *syntax.File) string {
	for i := range f.Text.Lines() {
		line := strings.TrimSpace(f.Text.Slice(f.Text.Line(i)))
		if line != "" && !strings.HasPrefix(line, "//") {
			return line
		}
	}
	return ""
}

var (
	agesSaid = phrase.MustCompile(`\b(?:\d+|` + numeral.Expression(1, 19) + `)\)? ?(?:-| )?(?:years?|yrs?|months?)\b|\b(?:child(?:ren)?|bab(?:y|ies)|toddlers|anyone) (?:under|over|below|above|younger than|older than) (?:the age of )?(?:\d+|` + numeral.Expression(1, 19) + `)\b|\bage[sd]? \d|\b\d+\+|\badults?\b|\bgrown-ups?\b`)
	playful  = phrase.MustCompile(`\b(?:toys?|amigurumi|dolls?|rattles?|plush|soft toy|stuffed animal|` + fillingExpr + `)\b`)
)

// noToy says of something that it is none.
var noToy = phrase.MustCompile(`\b(?:not|no|never) (?:an? |meant as an? |intended as an? )?(?:toys?|dolls?)\b`)

// filled are words of what toys are filled with, and other things too.
var filled = phrase.MustCompile(`\b(?:` + fillingExpr + `)\b`)

const fillingExpr = `toy (?:filling|stuffing)|fiberfill|fibrefill|polyfill|stuff(?:ing)? (?:the )?(?:head|body|legs?|arms?|firmly|lightly)`

// isToy tells whether the pattern speaks of a toy. The filling makes none of what is said to
// be no toy: `an ornament, not a toy`.
func (p *Pass) isToy() bool {
	if p.tells(noToy) {
		return p.toldSomewhere("a toy, whatever is filled", func(text string) bool {
			return playful.MatchString(filled.ReplaceAllString(noToy.ReplaceAllString(text, ""), ""))
		})
	}
	return p.tells(playful)
}

// firstOf is the first place where the pattern speaks of a thing, in the
// sentences that do not say it is left out.
func (p *Pass) firstOf(thing *phrase.Phrase) (source.Span, bool) {
	return p.firstBut(thing, func(source.Span, string) bool { return false })
}

// firstBut is the first such place that is none to pass over by the passage that it stands
// in and its own words, in lower case.
func (p *Pass) firstBut(thing *phrase.Phrase, passed func(passage source.Span, words string) bool) (source.Span, bool) {
	if !p.tells(thing) {
		return source.Span{}, false
	}
	for _, span := range p.passages() {
		at := span.Start
		for sentence := range strings.SplitAfterSeq(p.File.Text.Slice(span), ".") {
			lower := strings.ToLower(sentence)
			if len(lower) == len(sentence) && thing.MatchString(lower) {
				for _, m := range thing.FindAllStringIndex(lower, -1) {
					if !leftOut(lower, m) && !passed(span, lower[m[0]:m[1]]) {
						return source.Span{Start: at + m[0], End: at + m[1]}, true
					}
				}
			}
			at += len(sentence)
		}
	}
	return source.Span{}, false
}

// leftOut tells whether a sentence, in lower case, keeps the thing at some place of it out
// of the piece. Only words that go with the thing do: what else is not done, or is
// embroidered, says nothing of it.
func leftOut(sentence string, thing []int) bool {
	before, after := sentence[:thing[0]], sentence[thing[1]:]
	if all := otherwise.FindAllStringIndex(before, -1); len(all) > 0 {
		before = before[all[len(all)-1][1]:]
	}
	for _, m := range keptOut.FindAllStringIndex(before, -1) {
		between := strings.Fields(before[m[1]:])
		if len(between) <= farFromNot && !(len(between) > 0 && notOnly.MatchString(between[0])) {
			return true
		}
	}
	return notUsed.MatchString(after)
}

// farFromNot is how many words may stand between a word that keeps things out and the last
// of them: `no small parts such as buttons, eyes or beads`.
const farFromNot = 8

var (
	keptOut = phrase.MustCompile(`\b(?:no|not|none|never|nowhere|don't|without|instead of|rather than|in place of|omit(?:ting)?|leave (?:out|off|away)|replace)\b`)
	// notOnly is what makes another word of the one before it: `no. 6 beads`, `not only`.
	notOnly = phrase.MustCompile(`^(?:\d|only\b|just\b)`)
	// notUsed takes `buttons are not used`.
	notUsed = phrase.MustCompile(`^(?:,? [a-z]+){0,3} (?:are|is|be|were) (?:not|never) (?:to be )?(?:used|needed|sewn|attached|added|included|wanted|necessary)\b`)
	// otherwise is where a sentence goes on to something else that is to be done.
	otherwise = phrase.MustCompile(`[;:(]|\n\s*(?:[-•*]|\d)|\b(?:but|then|because|which|so that)\b|\s[–—-]\s|, (?:the|an?|your|\d+|` + numeral.Expression(2, 12) + `)\b|(?:,| and| or| to)(?: then)? (?:sew|attach|add|fasten|insert|place|use|using|put|push|fix|thread|string|slide|glue|stitch|make|work|finish|trim|decorate|position|secure|mark)\b`)
)

// passages lists the parts of the file that speak to the maker, each line of a
// paragraph of prose with those that it goes on in.
func (p *Pass) passages() []source.Span {
	prose, comments := map[source.Span]bool{}, map[source.Span]bool{}
	for _, span := range p.File.Prose {
		prose[span] = true
	}
	for _, c := range p.File.Comments {
		comments[c.Span] = true
	}
	var out []source.Span
	runsOn := false
	for _, span := range p.File.Parts() {
		if comments[span] {
			continue
		}
		if last := len(out) - 1; runsOn && prose[span] && p.File.Text.LineOf(span.Start)-p.File.Text.LineOf(out[last].End) < 2 {
			out[last].End = span.End
		} else {
			out = append(out, span)
		}
		runsOn = prose[span]
	}
	return out
}
