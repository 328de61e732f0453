package syntax

import (
	"strings"

	"stitchproof/lang/phrase"
)

// branchNamed finds what a branch is called where the lexer could not tell by
// itself: letters with digits (`branch B1`), or several words before a colon
// (`branch left tip:`). A name of one word is told by where it stands.
var branchNamed = phrase.MustCompile(`(?i)\bbranch +(?:(\pL+-?\d[\pL\d]*)|(\pL[\pL']*(?:[ -]\pL[\pL\d']*){1,2}) *:)`)

// branchNames lists such names of an instruction's branches.
func branchNames(instruction string) []string {
	var out []string
	if !strings.Contains(instruction, "ranch") {
		return nil
	}
	for _, m := range branchNamed.FindAllStringSubmatch(instruction, -1) {
		out = append(out, m[1]+m[2])
	}
	return out
}

// nameBranches reads what a branch is called as a name, whatever else the word
// means: `branch tip:`, and from there on `return to tip`, `each ch of tip`. Words
// that no branch of the text is called keep their meaning.
func (l *scanner) nameBranches(tokens []Token) []Token {
	names := map[string]bool{}
	for i := range tokens {
		if i > 0 && tokens[i-1].Kind == Number && isBranch(tokens[i]) && l.spelled(tokens[i]) == "branches" {
			tokens[i].Canon = "group" // you have 6 branches
			continue
		}
		passes := i > 0 && (tokens[i-1].Canon == "leave" || tokens[i-1].Canon == "each") // `leave branches unworked`
		if isBranch(tokens[i]) && !passes && i+1 < len(tokens) && callable(tokens[i+1]) && endsName(tokens[i+2:]) {
			names[l.spelled(tokens[i+1])] = true
		}
	}
	if len(names) == 0 {
		return tokens
	}
	for i := range tokens[1:] {
		before, t := tokens[i], &tokens[i+1]
		if (isBranch(before) || before.Kind == Word && (before.Canon == "of" || before.Canon == "to")) && callable(*t) && names[l.spelled(*t)] {
			*t = Token{Kind: Name, Span: t.Span, Canon: l.spelled(*t)}
		}
	}
	return tokens
}

func isBranch(t Token) bool { return t.Kind == Word && t.Canon == "branch" }

// callable tells whether a branch may be called by a token.
func callable(t Token) bool {
	switch t.Kind {
	case Name, Word, Stitch, Ordinal, Number:
		return t.Canon != "stem" && t.Canon != "and" && t.Canon != "to"
	}
	return false
}

func (l *scanner) spelled(t Token) string {
	return fold(l.text[t.Span.Start:t.Span.End])
}

// endsName tells whether a name is over before some tokens: a branch is given
// one where its steps begin.
func endsName(rest []Token) bool {
	if len(rest) == 0 {
		return true
	}
	switch rest[0].Kind {
	case Comma, Semi, Period, Colon, Dash, Close:
		return true
	}
	return false
}
