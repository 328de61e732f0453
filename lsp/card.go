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
	b.WriteString("**" + escaped.Replace(c.title) + "**\n")
	for _, f := range c.facts {
		b.WriteString("\n- ")
		if f.name != "" {
			b.WriteString(escaped.Replace(f.name) + ": ")
		}
		b.WriteString(escaped.Replace(f.value))
	}
	return &protocol.MarkupContent{Kind: protocol.MarkupKindMarkdown, Value: b.String()}
}

// escaped keeps the marks of a pattern, its stars above all, from being taken for
// those of Markdown.
var escaped = strings.NewReplacer(
	`\`, `\\`, "`", "\\`", `*`, `\*`, `_`, `\_`, `[`, `\[`, `]`, `\]`, `<`, `\<`, `>`, `\>`, `#`, `\#`, `|`, `\|`, `~`, `\~`, `&`, `\&`,
)
