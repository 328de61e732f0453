package phrase

import (
	"regexp"
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
		`goo?gl[ey]+`:                  {"go"},
		`\b(?:cots?|cribs?|cradles)\b`: {"cot", "crib", "cradles"},
		`(?:cord)?s?`:                  nil,
		`(?i)bead`:                     {"bead"},
		`(?i)no|Zé`:                    nil, // é may be written in any case
		`(?i:silK) [A-Z]`:              {"silk"},
		`no (?i:bead|TOY)s`:            {"no bead", "no toy"},
		`a|bead`:                       nil, // one letter is everywhere
	} {
		assert.ElementsMatch(t, want, MustCompile(expr).needs().words.words, expr)
	}
}

// A phrase finds what its expression finds.
func TestAsItsExpression(t *testing.T) {
	exprs := []string{`\b(?:toys?|plush|soft toy)\b`, `\bdumm(?:y|ies)\b`, `(?:no|without) (?:bead|button)s?`, `b(?:ea)+d|x`, `(toy|bead){2}`, `[bt]o+y?`, `^toy|bead$`, `\b(?:toys?|tots?|buttons?|boots)\b`, `b(?:ea|utt|)d`, `^(?:toys?|(?i:b)ea?d*)\b`, `[ ,]+(?:beads?|x|(?i)toy)$`, `^x*$`, `(?:^bead|^t[^o])$`, `^é|^\W`, `(?i)soft|bea|Dumm`, `(?i:é|X)o|no (?i:toy|KID)s?`, `(?i)kids?`}
	rapid.Check(t, func(t *rapid.T) {
		expr := rapid.SampledFrom(exprs).Draw(t, "expr")
		text := rapid.StringMatching(`((toys?|plush|dummy|dummies|no|without|beads?|button|beaead|x|boy|soft|é|É|NO|TOYS|kid|Kid|ſoft|\x{212a}id|[a-zA-Z ])( ?)){0,8}`).Draw(t, "text")
		plain := regexp.MustCompile(expr)
		assert.Equal(t, plain.MatchString(text), MustCompile(expr).MatchString(text))
		assert.Equal(t, plain.FindStringIndex(text), MustCompile(expr).FindStringIndex(text))
		assert.Equal(t, plain.FindString(text), MustCompile(expr).FindString(text))
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
		p := MustCompile(c.expr).needs()
		for of, e := range map[string]edge{c.begins: p.begins, c.ends: p.ends} {
			if of == "" {
				continue
			}
			var got []byte
			for b := range 0x81 {
				if e[b] {
					got = append(got, byte(b))
				}
			}
			assert.Equal(t, of, string(got), c.expr)
		}
		assert.Equal(t, []bool{c.begins != "", c.ends != ""}, []bool{p.begins != nil, p.ends != nil}, c.expr)
	}
}
