package lsp

import (
	"encoding/json"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"go.lsp.dev/protocol"

	"stitchproof/lang/stitch"
	"stitchproof/lang/suggest"
)

// completion suggests what may come next, the likeliest first. What is known may be
// known of an earlier text.
func completion(v *view, params *protocol.CompletionParams) *protocol.CompletionList {
	list := &protocol.CompletionList{Items: []protocol.CompletionItem{}}
	at := v.offset(params.Position)
	found := v.ruleNames(at)
	if v.File.Text == v.Text { // it could be read
		found = append(found, suggest.At(v.Fabric, v.text, at)...)
	}
	if len(found) == 0 {
		return list
	}
	shared := sharedDefaults(v, found[0])
	if v.can.completes.defaults {
		list.ItemDefaults = shared
	}
	for i, s := range found {
		item := v.suggested(s, i)
		if list.ItemDefaults != nil && s.Replace == found[0].Replace {
			edit := item.TextEdit.(*protocol.TextEdit)
			item.TextEdit, item.TextEditText = nil, protocol.NewOptional(edit.NewText)
		}
		list.Items = append(list.Items, item)
	}
	return list
}

// sharedDefaults is what need not be said of each suggestion.
func sharedDefaults(v *view, first suggest.Item) *protocol.CompletionItemDefaults {
	return &protocol.CompletionItemDefaults{EditRange: new(v.rangeOf(first.Replace))}
}

// suggested is one suggestion as the client takes it.
func (v *view) suggested(s suggest.Item, place int) protocol.CompletionItem {
	item := protocol.CompletionItem{
		Label:      firstLine(s.Text),
		Kind:       completionKinds[s.Kind],
		SortText:   protocol.NewOptional(fmt.Sprintf("%03d", place)),
		FilterText: protocol.NewOptional(s.Text),
		Data:       protocol.LSPAny(v.remembering(s.Word)),
	}
	switch {
	case s.Detail == "":
	case v.can.completes.details:
		item.LabelDetails = &protocol.CompletionItemLabelDetails{Description: new(s.Detail)}
	default:
		item.Detail = protocol.NewOptional(s.Detail)
	}
	text := s.Text
	if len(s.Holes) > 0 && v.can.completes.snippets {
		text, item.InsertTextFormat = snippet(s), protocol.InsertTextFormatSnippet
	}
	item.TextEdit = &protocol.TextEdit{Range: v.rangeOf(s.Replace), NewText: text}
	return item
}

var completionKinds = [...]protocol.CompletionItemKind{
	suggest.Stitch:   protocol.CompletionItemKindFunction,
	suggest.Own:      protocol.CompletionItemKindFunction,
	suggest.Place:    protocol.CompletionItemKindField,
	suggest.Step:     protocol.CompletionItemKindKeyword,
	suggest.Label:    protocol.CompletionItemKindMethod,
	suggest.Count:    protocol.CompletionItemKindEnumMember,
	suggest.Yarn:     protocol.CompletionItemKindTypeParameter,
	suggest.Key:      protocol.CompletionItemKindProperty,
	suggest.Value:    protocol.CompletionItemKindValue,
	suggest.Template: protocol.CompletionItemKindSnippet,
}

// firstLine is a text as a list shows it.
func firstLine(text string) string {
	if line, _, more := strings.Cut(text, "\n"); more {
		return line + " …"
	}
	return strings.TrimSpace(text)
}

// snippet writes a suggestion's holes as the client fills them in.
func snippet(s suggest.Item) string {
	var b strings.Builder
	at := 0
	for _, h := range s.Holes {
		b.WriteString(literal.Replace(s.Text[at:h.Span.Start]))
		b.WriteString("${" + strconv.Itoa(h.Number) + ":" + literal.Replace(s.Text[h.Span.Start:h.Span.End]) + "}")
		at = h.Span.End
	}
	return b.String() + literal.Replace(s.Text[at:])
}

// literal keeps a text's own signs from being taken for those of a snippet.
var literal = strings.NewReplacer(`\`, `\\`, `$`, `\$`, `}`, `\}`)

// keepsake is what an answer carries so that more can be told of it later.
type keepsake struct {
	URI  string `json:"uri"`
	Word string `json:"word,omitempty"`
}

func (v *view) remembering(word string) []byte {
	data, _ := json.Marshal(keepsake{string(v.uri), word}) // two strings
	return data
}

// completionResolve tells of a stitch what it is.
func completionResolve(v *view, item *protocol.CompletionItem) *protocol.CompletionItem {
	var kept keepsake
	if err := json.Unmarshal(item.Data, &kept); err != nil || kept.Word == "" {
		return item
	}
	meaning, _ := stitch.Find(kept.Word)
	item.Documentation = v.stitchCard(kept.Word, meaning).markup(v.can.completes.markdown)
	return item
}

// completionOptions offer completion. A space begins a new word: of what the
// last one was, other words follow.
func completionOptions() *protocol.CompletionOptions {
	return &protocol.CompletionOptions{TriggerCharacters: []string{" ", "(", "["}, ResolveProvider: new(true)}
}

// completing is what the client can do with suggestions.
type completing struct{ snippets, details, defaults, markdown bool }

func completingOf(c *protocol.CompletionClientCapabilities) completing {
	var can completing
	if i := c.CompletionItem; i != nil {
		can.snippets, can.details = is(i.SnippetSupport), is(i.LabelDetailsSupport)
		can.markdown = prefersMarkdown(i.DocumentationFormat)
	}
	can.defaults = c.CompletionList != nil && slices.Contains(c.CompletionList.ItemDefaults, "editRange")
	return can
}
