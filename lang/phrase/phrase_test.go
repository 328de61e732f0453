package phrase

import (
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

func TestNeeded(t *testing.T) {
	for expr, want := range map[string][]string{
		`\b(?:toys?|plush)\b`:          {"toy", "plush"},
		`\bdumm(?:y|ies)\b`:            {"dumm"},
		`(?:no|without) eyes?`:         {" eye"},
		`\b\d+ ?(?:years?|months?)\b`:  {"year", "month"},
		`goo?gl[ey]+`:                  {"gle", "gly"},
		`[Cc]ot[s ]`:                   {"cots", "cot "}, // a C in any case
		` {2,}x|\.{3}`:                 {"  ", "..."},
		`(?:ab){2}c?`:                  {"abab"},
		`\b(?:cots?|cribs?|cradles)\b`: {"cot", "crib", "cradles"},
		`(?:cord)?s?`:                  nil,
		`(?i)bead`:                     {"bead"},
		`(?i)no|Zé`:                    nil, // é may be written in any case
		`(?i:silK) [A-Z]`:              {"silk"},
		`no (?i:bead|TOY)s`:            {"no bead", "no toy"},
		`a|bead`:                       nil, // one letter is everywhere
	} {
		assert.ElementsMatch(t, want, Of(expr).known().words.words, expr)
	}
}

func TestHeads(t *testing.T) {
	for expr, want := range map[string][]string{
		`\b(?:toys?|plush)\b`:   {"toy", "plush"},
		`\bsew|\b(?i:Pin) on`:   {"sew", "pin on"},
		`\bsew|pin`:             nil, // only one of them begins a word
		`(?:^ |then |, )stitch`: nil,
		`s?ew`:                  nil,
		`\b toy`:                nil, // begins where a word ends
		`[.!?](?:\s+|$)|;|\n`:   {".", "!", "?", ";", "\n"},
	} {
		assert.ElementsMatch(t, want, Of(expr).known().heads.words, expr)
	}
}

// A phrase finds what its expression finds.
func TestAsItsExpression(t *testing.T) {
	exprs := []string{`\b(?:toys?|plush|soft toy)\b`, `\bdumm(?:y|ies)\b`, `(?:no|without) (?:bead|button)s?`, `b(?:ea)+d|x`, `(toy|bead){2}`, `[bt]o+y?`, `^toy|bead$`, `\b(?:toys?|tots?|buttons?|boots)\b`, `b(?:ea|utt|)d`, `^(?:toys?|(?i:b)ea?d*)\b`, `[ ,]+(?:beads?|x|(?i)toy)$`, `^x*$`, `(?:^bead|^t[^o])$`, `^é|^\W`, `(?i)soft|bea|Dumm`, `(?i:é|X)o|no (?i:toy|KID)s?`, `(?i)kids?`,
		`\b(?i:kid|soft)( toys?)?\b`, `\b[Tt]o(y)?(s)?`, ` {2,}|[xy]`, `\bx|\b y`, `o\b ?(\w*)`, `[ſst]o(f)?`, `\bé|\btoy`, `(?:ea){1,3}(d)?`, `y\b|s\B`}
	rapid.Check(t, func(t *rapid.T) {
		expr := rapid.SampledFrom(exprs).Draw(t, "expr")
		text := rapid.StringMatching(`((toys?|plush|dummy|dummies|no|without|beads?|button|beaead|x|boy|soft|é|É|NO|TOYS|kid|Kid|ſoft|\x{212a}id|[a-zA-Z ])( ?)){0,8}`).Draw(t, "text")
		n := rapid.IntRange(-1, 3).Draw(t, "n")
		plain, phrase := regexp.MustCompile(expr), Of(expr)
		assert.Equal(t, plain.MatchString(text), phrase.MatchString(text))
		assert.Equal(t, plain.FindString(text), phrase.FindString(text))
		assert.Equal(t, plain.FindStringIndex(text), phrase.FindStringIndex(text))
		assert.Equal(t, plain.FindStringSubmatch(text), phrase.FindStringSubmatch(text))
		assert.Equal(t, plain.FindStringSubmatchIndex(text), phrase.FindStringSubmatchIndex(text))
		assert.Equal(t, plain.FindAllString(text, n), phrase.FindAllString(text, n))
		assert.Equal(t, plain.FindAllStringIndex(text, n), phrase.FindAllStringIndex(text, n))
		assert.Equal(t, plain.FindAllStringSubmatch(text, n), phrase.FindAllStringSubmatch(text, n))
		assert.Equal(t, plain.FindAllStringSubmatchIndex(text, n), phrase.FindAllStringSubmatchIndex(text, n))
		assert.Equal(t, plain.ReplaceAllString(text, "<$1>"), phrase.ReplaceAllString(text, "<$1>"))
		assert.Equal(t, plain.ReplaceAllStringFunc(text, strings.ToUpper), phrase.ReplaceAllStringFunc(text, strings.ToUpper))
	})
}

func TestEdges(t *testing.T) {
	for _, c := range []struct{ expr, begins, ends string }{
		{`^[*_]*(?:p|Q)\d`, "*Q_p", ""},
		{`(?i)^k`, "Kk\x80", ""},
		{` ?(?:x|y)+$`, "", "xy"},
		{`a|^b`, "", ""},
		{`^x?`, "", ""},
		{`(?:^ab|^cd)$`, "ac", "bd"},
	} {
		p := Of(c.expr).known()
		for of, e := range map[string]*byteSet{c.begins: p.begins, c.ends: p.ends} {
			if of == "" {
				continue
			}
			var got []byte
			for b := range 0x81 {
				if e.has(byte(b)) {
					got = append(got, byte(b))
				}
			}
			assert.Equal(t, of, string(got), c.expr)
		}
		assert.Equal(t, []bool{c.begins != "", c.ends != ""}, []bool{p.begins != nil, p.ends != nil}, c.expr)
	}
}
