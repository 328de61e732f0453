package syntax_test

import (
	"testing"

	"stitchproof/lang/syntax"
)

// TestGrammar shows every change of the grammar of a clause.
func TestGrammar(t *testing.T) { golden(t, "grammar.ebnf", syntax.Grammar()+"\n") }
