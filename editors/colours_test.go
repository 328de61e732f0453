// Package editors_test holds the configurations of editors against what the
// program knows, and writes the parts of them that follow from other parts.
package editors_test

import (
	"encoding/json"
	"flag"
	"fmt"
	"os"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/numeral"
	"stitchproof/lang/stitch"
)

var update = flag.Bool("update", false, "write what follows from the grammar of colours")

// grammar is the TextMate grammar, as far as it is used here.
type grammar struct {
	Patterns []struct{ Comment, Name, Match string }
	compiled []*regexp.Regexp
}

func readGrammar(t *testing.T) grammar {
	var g grammar
	content, err := os.ReadFile("vscode/syntaxes/crochet.tmLanguage.json")
	require.NoError(t, err)
	require.NoError(t, json.Unmarshal(content, &g))
	require.NotEmpty(t, g.Patterns)
	for _, p := range g.Patterns {
		g.compiled = append(g.compiled, regexp.MustCompile(p.Match))
	}
	return g
}

// shown is how editors without scopes show what has a scope: Vim's group, Emacs's
// face, Kate's style; the node of the tree-sitter grammar, and the captures by which
// most editors, and Helix, colour it.
var shown = map[string]struct{ group, face, style, node, capture, helix string }{
	"comment.line.double-slash.crochet": {"Comment", "font-lock-comment-face", "dsComment", "comment", "comment", "comment"},
	"entity.name.type.class.crochet":    {"Title", "font-lock-type-face", "dsOthers", "heading", "type", "type"},
	"entity.name.function.crochet":      {"PreProc", "font-lock-function-name-face", "dsFunction", "label", "function", "function"},
	"variable.other.property.crochet":   {"Type", "font-lock-variable-name-face", "dsVariable", "field", "property", "variable.other.member"},
	"variable.other.enummember.crochet": {"Special", "font-lock-constant-face", "dsConstant", "count", "constant", "constant"},
	"support.function.crochet":          {"Function", "font-lock-builtin-face", "dsBuiltIn", "stitch", "function.builtin", "function.builtin"},
	"keyword.control.crochet":           {"Statement", "font-lock-keyword-face", "dsControlFlow", "action", "keyword", "keyword"},
	"keyword.operator.crochet":          {"Operator", "font-lock-preprocessor-face", "dsOperator", "bracket", "operator", "operator"},
	"constant.numeric.crochet":          {"Number", "font-lock-string-face", "dsDecVal", "number", "number", "constant.numeric"},
}

// The colours of every editor are those of one grammar, in its own way of writing
// regular expressions.
func TestColoursOfOtherEditors(t *testing.T) {
	g := readGrammar(t)
	for file, write := range map[string]func(grammar) string{
		"vim/syntax/crochet.vim":         vimSyntax,
		"emacs/crochet-colours.el":       emacsColours,
		"kate/crochet.xml":               kateSyntax,
		"sublime/crochet.sublime-syntax": sublimeSyntax,

		"tree-sitter-crochet/grammar.js":             treeSitterGrammar,
		"tree-sitter-crochet/queries/highlights.scm": treeSitterColours,
		"zed/languages/crochet/highlights.scm":       treeSitterColours,
		"helix/highlights.scm":                       helixColours,
	} {
		want := write(g)
		if *update {
			require.NoError(t, os.WriteFile(file, []byte(want), 0o644))
		}
		got, err := os.ReadFile(file)
		require.NoError(t, err)
		assert.Equal(t, want, string(got), "go test ./editors -update writes %s anew", file)
	}
}

// Every stitch that the program knows, however it is spelled, has the colour of a
// stitch from end to end, save for a number before it.
func TestGrammarKnowsEveryStitch(t *testing.T) {
	g := readGrammar(t)
	number := regexp.MustCompile(`^(?:\d+|` + numeral.Expression(2, 9) + `)[ -]`)
	for _, s := range stitch.Spellings() {
		spelling := s.Words
		if scope := g.scopeOf(spelling); scope != "support.function.crochet" {
			scope = g.scopeOf(number.ReplaceAllString(spelling, ""))
			assert.Equal(t, "support.function.crochet", scope, "%q", spelling)
		}
	}
}

// Words that are no stitch have not its colour.
func TestGrammarLeavesOtherWords(t *testing.T) {
	g := readGrammar(t)
	for _, words := range []string{"in next", "around", "front", "back loop", "st", "sts", "stitches", "together", "two", "ring", "hook", "post", "stem"} {
		assert.Empty(t, g.scopeOf(words), words)
	}
	for words, scope := range map[string]string{
		"Rnd 1:": "entity.name.function.crochet", "Rows 2-4 (RS):": "entity.name.function.crochet", "Next row:": "entity.name.function.crochet",
		"Yarn A:": "variable.other.property.crochet", "Terms:": "variable.other.property.crochet", "Piece: Oak leaf": "entity.name.type.class.crochet",
		"(16 sts)": "variable.other.enummember.crochet", "(81 (91, 101, 111) sc)": "variable.other.enummember.crochet",
		"(12 sc, 3 ch-2 sps)": "variable.other.enummember.crochet",
		"turn":                "keyword.control.crochet", "fasten off": "keyword.control.crochet", "*": "keyword.operator.crochet", "27": "constant.numeric.crochet",
		"// Row 3: as the leaf": "comment.line.double-slash.crochet",
	} {
		assert.Equal(t, scope, g.scopeOf(words), words)
	}
}

// scopeOf is the scope that all of text has, as TextMate gives it: of the matches
// that begin first, that of the first pattern.
func (g grammar) scopeOf(text string) string {
	for i, p := range g.Patterns {
		at := g.compiled[i].FindStringIndex(text)
		if at != nil && at[0] == 0 {
			if at[1] != len(text) {
				return "only of " + text[:at[1]]
			}
			return p.Name
		}
	}
	return ""
}

// bare is a pattern without the sign that letters' case does not matter: elsewhere
// that is said otherwise.
func bare(match string) string { return strings.TrimPrefix(match, "(?i)") }

const generated = "written from vscode/syntaxes/crochet.tmLanguage.json by go test ./editors -update"

func vimSyntax(g grammar) string {
	var b strings.Builder
	fmt.Fprintf(&b, "\" The colours of a crochet pattern, %s.\nif exists('b:current_syntax')\n  finish\nendif\n", generated)
	b.WriteString("syntax case ignore\nsyntax sync minlines=1\n\n")
	for i := len(g.Patterns) - 1; i >= 0; i-- { // of those that begin at one place the last goes
		p := g.Patterns[i]
		match := strings.NewReplacer("(?:", "%(", `[\d`, "[0-9", `[^)\d`, "[^)0-9", `\b`, "%(<|>)").Replace(bare(p.Match))
		fmt.Fprintf(&b, "\" %s\nsyntax match crochet%s #\\v%s#\nhighlight default link crochet%[2]s %[2]s\n", remark(p.Comment), shown[p.Name].group, match)
	}
	b.WriteString("\nlet b:current_syntax = 'crochet'\n")
	return b.String()
}

func remark(comment string) string {
	if comment == "" {
		return "numbers"
	}
	return comment
}

func emacsColours(g grammar) string {
	var b strings.Builder
	fmt.Fprintf(&b, ";;; crochet-colours.el --- Colours of a crochet pattern  -*- lexical-binding: t -*-\n\n;; This file is %s.\n\n;;; Code:\n\n", generated)
	b.WriteString("(defconst crochet-colours\n  '(")
	for i, p := range g.Patterns {
		if i > 0 {
			b.WriteString("\n    ")
		}
		fmt.Fprintf(&b, ";; %s\n    (%s . '%s)", remark(p.Comment), lispString(emacsRegexp(bare(p.Match))), shown[p.Name].face)
	}
	b.WriteString(")\n  \"What is coloured in a pattern, and how; what is named first goes first.\")\n\n(provide 'crochet-colours)\n;;; crochet-colours.el ends here\n")
	return b.String()
}

// emacsRegexp writes a pattern as Emacs does, where the signs of groups have a
// backslash and brackets as letters have none.
func emacsRegexp(match string) string {
	var b strings.Builder
	class := false
	for i := 0; i < len(match); i++ {
		switch c := match[i]; {
		case class && c == '\\' && match[i+1] == 'd':
			b.WriteString("0-9")
			i++
		case class && c == '\\': // a bracket as a letter, kept at the end that Emacs wants it at
			i++
			b.WriteByte(match[i])
		case c == '[' || c == ']':
			class = c == '['
			b.WriteByte(c)
		case class:
			b.WriteByte(c)
		case c == '\\' && match[i+1] == 's':
			b.WriteString("[ \t]")
			i++
		case c == '\\' && match[i+1] == 'd':
			b.WriteString("[0-9]")
			i++
		case c == '\\' && (match[i+1] == '(' || match[i+1] == ')'):
			i++
			b.WriteByte(match[i])
		case c == '\\':
			b.WriteString(match[i : i+2])
			i++
		case c == '(' || c == ')' || c == '|':
			b.WriteString(`\` + string(c))
		default:
			b.WriteByte(c)
		}
	}
	return b.String()
}

func lispString(s string) string {
	return `"` + strings.NewReplacer(`\`, `\\`, `"`, `\"`, "\t", `\t`).Replace(s) + `"`
}

func kateSyntax(g grammar) string {
	var b strings.Builder
	fmt.Fprintf(&b, "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<!DOCTYPE language>\n<!-- This file is %s. -->\n", generated)
	b.WriteString("<language name=\"Crochet\" section=\"Other\" extensions=\"*.crochet\" version=\"1\" kateversion=\"5.0\" casesensitive=\"0\" license=\"MIT\">\n  <highlighting>\n    <contexts>\n      <context name=\"Pattern\" attribute=\"Normal\" lineEndContext=\"#stay\">\n")
	xml := strings.NewReplacer("&", "&amp;", "<", "&lt;", ">", "&gt;", `"`, "&quot;")
	for _, p := range g.Patterns {
		fmt.Fprintf(&b, "        <RegExpr attribute=\"%s\" context=\"#stay\" insensitive=\"true\" String=\"%s\"/>\n", shown[p.Name].group, xml.Replace(bare(p.Match)))
	}
	b.WriteString("      </context>\n    </contexts>\n    <itemDatas>\n      <itemData name=\"Normal\" defStyleNum=\"dsNormal\"/>\n")
	for _, p := range g.Patterns {
		fmt.Fprintf(&b, "      <itemData name=\"%s\" defStyleNum=\"%s\"/>\n", shown[p.Name].group, shown[p.Name].style)
	}
	b.WriteString("    </itemDatas>\n  </highlighting>\n  <general>\n    <comments>\n      <comment name=\"singleLine\" start=\"//\"/>\n    </comments>\n  </general>\n</language>\n")
	return b.String()
}

func sublimeSyntax(g grammar) string {
	var b strings.Builder
	fmt.Fprintf(&b, "%%YAML 1.2\n---\n# This file is %s.\nname: Crochet\nfile_extensions: [crochet]\nscope: text.crochet\ncontexts:\n  main:\n", generated)
	for _, p := range g.Patterns {
		fmt.Fprintf(&b, "    - match: '%s'\n      scope: %s\n", strings.ReplaceAll(p.Match, "'", "''"), p.Name)
	}
	return b.String()
}

// treeSitterGrammar writes a grammar of lines whose parts are the patterns. Its tokens
// know no bounds of words, but the longest goes, and of two as long the first: a word
// that only begins like a stitch is longer than it, with its stray end.
func treeSitterGrammar(g grammar) string {
	var starts, parts, rules, strays strings.Builder
	stray := func(match string) string { return fmt.Sprintf("token(seq(/%s/i, /[\\p{L}\\p{Nd}_]+/))", match) }
	for _, p := range g.Patterns {
		node, match := shown[p.Name].node, bare(p.Match)
		first, more, several := strings.Cut(match, `\b(?:[\s-]?`)
		more = treeSitterRegexp(`[\s-]?` + strings.TrimSuffix(more, `)*`))
		rule := fmt.Sprintf("token(/%s/i)", treeSitterRegexp(first))
		if several {
			rule = fmt.Sprintf("seq(%s, repeat(token(/%s/i)))", rule, more)
		}
		fmt.Fprintf(&rules, "    // %s\n    %s: () => %s,\n", remark(p.Comment), node, rule)
		if strings.HasPrefix(match, "^") {
			fmt.Fprintf(&starts, "$.%s, ", node)
			continue
		}
		if several {
			fmt.Fprintf(&rules, "    _no_more: () => %s,\n", stray(strings.Replace(more, "]?", "]", 1)))
			fmt.Fprintf(&parts, "seq($.%s, optional($._no_more)), ", node)
		} else {
			fmt.Fprintf(&parts, "$.%s, ", node)
		}
		if several || strings.HasSuffix(match, `\b`) {
			fmt.Fprintf(&strays, "      %s,\n", stray(treeSitterRegexp(first)))
		}
	}
	return fmt.Sprintf(`// Colours a crochet pattern wherever no server runs; this file is
// %s.
module.exports = grammar({
  name: 'crochet',
  extras: () => [],
  rules: {
    pattern: ($) => seq(repeat(seq(optional($._line), /\r?\n/)), optional($._line)),
    _line: ($) => choice(
      seq(choice(%s), repeat($._part)),
      seq($._space, optional(seq($.label, repeat($._part)))),
      seq($._space, $._word_or_sign, repeat($._part)),
      seq($._word_or_sign, repeat($._part)),
    ),
    _part: ($) => choice($._word_or_sign, $._space),
    _word_or_sign: ($) => choice(%s$._other),
    _space: () => /[ \t]+/,
%s    _other: () => choice(
%s      /[\p{L}\p{Nd}_]+(\/\/[^\s]*)?/,
      /[^\s\p{L}\p{Nd}_*\[\]()]+/,
    ),
  },
});
`, generated, strings.TrimSuffix(starts.String(), ", "), parts.String(), rules.String(), strays.String())
}

// treeSitterRegexp leaves out of a pattern what is said otherwise there, and keeps it
// within its line.
func treeSitterRegexp(match string) string {
	match = strings.TrimPrefix(match, `(?:^|\s)`)
	return strings.NewReplacer(`\b[^()]*`, `(?:[^\n()\p{L}\p{Nd}_][^\n()]*)?`, `^\s*`, "", "$", "", `\b`, "", "[^", `[^\n`, "^", "", `\s`, `[ \t]`, `[\s-]`, `[ \t-]`, "/", `\/`).Replace(match)
}

func treeSitterColours(g grammar) string {
	return captures(g, func(scope string) string { return shown[scope].capture })
}

func helixColours(g grammar) string {
	return captures(g, func(scope string) string { return shown[scope].helix })
}

func captures(g grammar, capture func(scope string) string) string {
	var b strings.Builder
	fmt.Fprintf(&b, "; This file is %s.\n\n", generated)
	for _, p := range g.Patterns {
		fmt.Fprintf(&b, "(%s) @%s\n", shown[p.Name].node, capture(p.Name))
	}
	return b.String()
}
