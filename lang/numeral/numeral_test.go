package numeral

import (
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestWords(t *testing.T) {
	for n, want := range map[int]string{0: "zero", 9: "nine", 13: "thirteen", 20: "twenty", 41: "forty-one", 99: "ninety-nine", 100: "", -1: ""} {
		assert.Equal(t, want, Words(n))
	}
}

func TestRead(t *testing.T) {
	for text, want := range map[string]int{"0": 0, "zero": 0, "12": 12, "twelve": 12, "thirty-six": 36, "thirty six": 36, "144": 144} {
		n, ok := Read(text)
		assert.True(t, ok, text)
		assert.Equal(t, want, n, text)
	}
	for _, text := range []string{"", "leaf", "thirty-", "thirty-twelve", "six-two", "twenty-one-two"} {
		_, ok := Read(text)
		assert.False(t, ok, text)
	}
}

// Every number that there are words for is read as it is written, and found whole.
func TestEachNumber(t *testing.T) {
	found := regexp.MustCompile(Expression(0, Most))
	for n := range Most + 1 {
		words := Words(n)
		for _, written := range []string{words, strings.ReplaceAll(words, "-", " ")} {
			read, ok := Read(written)
			assert.True(t, ok, written)
			assert.Equal(t, n, read, written)
			assert.Equal(t, written, found.FindString("the "+written+" leaves"))
		}
	}
}

func TestExpressionFrom(t *testing.T) {
	several := regexp.MustCompile(`^` + Expression(2, Most) + `$`)
	for _, words := range []string{"two", "eleven", "twenty-one"} {
		assert.True(t, several.MatchString(words), words)
	}
	for _, words := range []string{"zero", "one", "twenty-zero", "often", "twofold"} {
		assert.False(t, several.MatchString(words), words)
	}
}
