package grammar_test

import (
	"testing"

	"github.com/alecthomas/participle/v2/lexer"
	"github.com/stretchr/testify/assert"

	"stitchproof/lang/grammar"
)

// The kinds of symbol of these tests. What the grammar of clauses makes of its own is
// held to what participle makes of them, in lang/syntax.
var kinds = map[string]int{"Word": 0, "Number": 1, "EOF": 2}

type nest struct {
	Twigs []*twig `parser:"( 'with' @@ ( 'and' @@ )* )?"`
	Soft  bool    `parser:"@( 'moss' | 'down' )?"`
	Note  string  `parser:"( ( ?! Number ) @Word+ )? EOF"`
}

type twig struct {
	Pos  lexer.Position
	Many bool   `parser:"( @Number"`
	Name string `parser:"  @( 'hawthorn' | 'bramble' ) | @'bramble' )"`
}

func symbols(words ...string) []grammar.Symbol {
	var out []grammar.Symbol
	for i, w := range words {
		s := grammar.Symbol{Word: w, At: i}
		if w[0] >= '0' && w[0] <= '9' {
			s.Kind, s.Word = kinds["Number"], ""
		}
		out = append(out, s)
	}
	return append(out, grammar.Symbol{Kind: kinds["EOF"], At: len(words)})
}

func TestMatch(t *testing.T) {
	g := grammar.Of[nest](kinds)
	at := func(n int) lexer.Position { return lexer.Position{Offset: n} }
	for _, c := range []struct {
		words []string
		want  nest
	}{
		{nil, nest{}},
		{[]string{"down"}, nest{Soft: true}},
		{[]string{"with", "bramble", "and", "3", "hawthorn", "moss"}, nest{Soft: true, Twigs: []*twig{{Pos: at(1), Name: "bramble"}, {Pos: at(3), Many: true, Name: "hawthorn"}}}},
		{[]string{"moss", "by", "hand"}, nest{Soft: true, Note: "byhand"}},
	} {
		made, _ := g.Match(symbols(c.words...))
		if assert.NotNil(t, made, c.words) {
			assert.Equal(t, c.want, *made, c.words)
		}
	}
	for want, words := range map[int][]string{
		0: {"7"},
		1: {"with", "2", "down"},           // no twig: the word is a note
		3: {"with", "bramble", "and", "2"}, // nor here
	} {
		made, bad := g.Match(symbols(words...))
		assert.Nil(t, made, words)
		assert.Equal(t, want, bad, words)
	}
}

func TestUnreadable(t *testing.T) {
	assert.Panics(t, func() {
		grammar.Of[struct {
			A bool `parser:"@( 'a' "`
		}](kinds)
	})
	assert.Panics(t, func() {
		grammar.Of[struct {
			A bool `parser:"@Nothing"`
		}](kinds)
	})
	assert.Panics(t, func() {
		grammar.Of[struct {
			A bool `parser:"'a' | "`
		}](kinds)
	})
}
