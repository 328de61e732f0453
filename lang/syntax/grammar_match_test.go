package syntax

import (
	"errors"
	"io"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"

	"github.com/alecthomas/participle/v2"
	"github.com/alecthomas/participle/v2/lexer"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// The grammar is written for participle: it prints it, and what it makes of a clause is
// what we must make of it.
var clauseParser = sync.OnceValue(func() *participle.Parser[gClause] {
	return participle.MustBuild[gClause](
		participle.Lexer(kinds{}),
		// Alternatives are tried in order to the end of the clause. The
		// grammar is not recursive, so this stays linear in practice.
		participle.UseLookahead(participle.MaxLookahead),
	)
})

// Grammar is the grammar of a clause in extended Backus-Naur form, printed
// from the parser itself.
func Grammar() string { return clauseParser().String() }

// kinds is the lexer the grammar is built with. Clauses are parsed from
// tokens already cut, so it never reads text.
type kinds struct{}

func (kinds) Symbols() map[string]lexer.TokenType {
	m := map[string]lexer.TokenType{"EOF": lexer.EOF}
	for k := Word; k <= Enclosed; k++ {
		m[k.String()] = tokenType(k)
	}
	return m
}

func tokenType(k Kind) lexer.TokenType { return lexer.TokenType(k) + 1 }

func (kinds) Lex(string, io.Reader) (lexer.Lexer, error) { return &replay{}, nil }

// replay hands tokens to the parser. A token's offset is its index in the
// clause, so that what is parsed can be shared by clauses that stand at
// different places.
type replay struct {
	tokens []Token
	next   int
}

func (r *replay) Next() (lexer.Token, error) {
	for r.next < len(r.tokens) && r.tokens[r.next].Kind == Word && r.tokens[r.next].Canon == "" {
		r.next++ // a filler word
	}
	at := lexer.Position{Offset: r.next}
	if r.next >= len(r.tokens) {
		return lexer.EOFToken(at), nil
	}
	t := &r.tokens[r.next]
	r.next++
	return lexer.Token{Type: tokenType(t.Kind), Value: t.inGrammar(), Pos: at}, nil
}

// theirs is what participle makes of some tokens: nil and the index of the one that it
// did not expect, or a clause.
func theirs(tokens []Token) (*gClause, int) {
	peeking, err := lexer.Upgrade(&replay{tokens: tokens})
	if err != nil {
		panic(err) // of our own tokens
	}
	g, err := clauseParser().ParseFromLexer(peeking)
	if bad := participle.Error(nil); errors.As(err, &bad) {
		return nil, bad.Position().Offset
	}
	return g, 0
}

// TestMatch holds what is made of clauses, of all wordings that are known and of what
// comes of them by chance, to what participle makes of them.
func TestMatch(t *testing.T) {
	lines := knownWordings(t)
	same := func(t require.TestingT, tokens []Token) {
		if len(tokens) == 0 || len(tokens) > maxClauseTokens {
			return
		}
		value, bad := clauseGrammar().Match(symbols(tokens))
		want, wantBad := theirs(tokens)
		if want == nil {
			require.Nil(t, value, string(shapeKey(nil, tokens)))
			require.Equal(t, wantBad, bad, string(shapeKey(nil, tokens)))
			return
		}
		require.NotNil(t, value, string(shapeKey(nil, tokens)))
		require.Equal(t, want, value, string(shapeKey(nil, tokens)))
	}
	var all []Token
	for _, line := range lines {
		tokens := Lex(line, Standard())
		same(t, tokens)
		all = append(all, tokens...)
	}
	rapid.Check(t, func(t *rapid.T) {
		tokens := append([]Token{}, Lex(rapid.SampledFrom(lines).Draw(t, "line"), Standard())...)
		for range rapid.IntRange(1, 3).Draw(t, "changes") {
			at := rapid.IntRange(0, len(tokens)).Draw(t, "at")
			switch token := rapid.SampledFrom(all).Draw(t, "token"); {
			case at == len(tokens) || rapid.Bool().Draw(t, "more"):
				tokens = append(tokens[:at:at], append([]Token{token}, tokens[at:]...)...)
			case rapid.Bool().Draw(t, "other"):
				tokens[at] = token
			default:
				tokens = append(tokens[:at:at], tokens[at+1:]...)
			}
		}
		same(t, tokens)
	})
}

// knownWordings are the clauses of the tables of wordings.
func knownWordings(t *testing.T) []string {
	files, err := filepath.Glob(filepath.Join("..", "..", "testdata", "phrasing", "*.tsv"))
	require.NoError(t, err)
	var out []string
	for _, file := range files {
		text, err := os.ReadFile(file)
		require.NoError(t, err)
		for line := range strings.Lines(string(text)) {
			if column := strings.Split(line, "\t"); len(column) == 3 {
				out = append(out, strings.FieldsFunc(column[1], func(r rune) bool { return strings.ContainsRune(",;.", r) })...)
			}
		}
	}
	assert.Greater(t, len(out), 500)
	return out
}
