package lsp

import (
	"strings"

	"go.lsp.dev/protocol"
)

// card is what a hover shows: a title and facts.
type card struct {
	title string
	facts []fact
}

// fact is a named value, or a sentence where it has no name.
type fact struct{ name, value string }

func (c *card) add(name, value string) { c.facts = append(c.facts, fact{name, value}) }

func (c *card) say(sentence string) {
	if sentence != "" {
		c.add("", sentence)
	}
}

// markup is the card in the form that the client shows.
func (c *card) markup(markdown bool) *protocol.MarkupContent {
	var b strings.Builder
	if !markdown {
		b.WriteString(c.title)
		for _, f := range c.facts {
			b.WriteString("\n")
			if f.name != "" {
				b.WriteString(f.name + ": ")
			}
			b.WriteString(f.value)
		}
		return &protocol.MarkupContent{Kind: protocol.MarkupKindPlainText, Value: b.String()}
	}
	b.WriteString("**" + literally(c.title) + "**\n")
	for _, f := range c.facts {
		b.WriteString("\n- ")
		if f.name != "" {
			b.WriteString(literally(f.name) + ": ")
		}
		b.WriteString(literally(f.value))
	}
	return &protocol.MarkupContent{Kind: protocol.MarkupKindMarkdown, Value: b.String()}
}

// marks are the characters that Markdown may take for its own: the stars and
// brackets of a pattern above all.
const marks = "\\`*_[]<>#|~&"

// literally writes words so that they show as they are: those with marks as code,
// which reads well too in an editor that shows Markdown as it is written, where a
// backslash before each mark would not.
func literally(words string) string {
	if !strings.ContainsAny(words, marks) {
		return words
	}
	fence := "`"
	for strings.Contains(words, fence) {
		fence += "`"
	}
	if strings.HasPrefix(words, "`") || strings.HasSuffix(words, "`") {
		words = " " + words + " " // which is not shown
	}
	return fence + words + fence
}
