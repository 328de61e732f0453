package phrase

import (
	"regexp"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

func TestNeeded(t *testing.T) {
	for expr, want := range map[string][]string{
		`\b(?:toys?|plush)\b`:         {"toy", "plush"},
		`\bdumm(?:y|ies)\b`:           {"dumm"},
		`(?:no|without) eyes?`:        {" eye"},
		`\b\d+ ?(?:years?|months?)\b`: {"year", "month"},
		`goo?gl[ey]+`:                 {"go"},
		`(?:cord)?s?`:                 nil,
		`(?i)bead`:                    nil,
		`a|bead`:                      nil, // one letter is everywhere
	} {
		assert.ElementsMatch(t, want, MustCompile(expr).compiled().words, expr)
	}
}

// A phrase finds what its expression finds.
func TestAsItsExpression(t *testing.T) {
	exprs := []string{`\b(?:toys?|plush|soft toy)\b`, `\bdumm(?:y|ies)\b`, `(?:no|without) (?:bead|button)s?`, `b(?:ea)+d|x`, `(toy|bead){2}`, `[bt]o+y?`, `^toy|bead$`}
	rapid.Check(t, func(t *rapid.T) {
		expr := rapid.SampledFrom(exprs).Draw(t, "expr")
		text := rapid.StringMatching(`((toys?|plush|dummy|dummies|no|without|beads?|button|beaead|x|boy|soft|[a-z ])( ?)){0,8}`).Draw(t, "text")
		plain := regexp.MustCompile(expr)
		assert.Equal(t, plain.MatchString(text), MustCompile(expr).MatchString(text))
		assert.Equal(t, plain.FindStringIndex(text), MustCompile(expr).FindStringIndex(text))
	})
}
