package lsp

import (
	"encoding/json"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"go.lsp.dev/protocol"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

type completed struct {
	ItemDefaults *struct {
		EditRange *protocol.Range `json:"editRange"`
	} `json:"itemDefaults"`
	Items []completedItem `json:"items"`
}

type completedItem struct {
	Label        string `json:"label"`
	Detail       string `json:"detail"`
	LabelDetails *struct {
		Description string `json:"description"`
	} `json:"labelDetails"`
	SortText         string          `json:"sortText"`
	FilterText       string          `json:"filterText"`
	InsertTextFormat int             `json:"insertTextFormat"`
	TextEdit         *textEdit       `json:"textEdit"`
	TextEditText     string          `json:"textEditText"`
	Data             json.RawMessage `json:"data"`
	Documentation    *struct {
		Kind, Value string
	} `json:"documentation"`
	raw json.RawMessage
}

// suggestions asks at the bar of a text.
func suggestions(t *testing.T, c *client, text string) (plain string, list completed) {
	t.Helper()
	plain, p := marked(t, strings.Replace(text, "|", "¦", 1), source.UTF16)
	c.open(file, 1, plain)
	m := c.answer(c.request("textDocument/completion", at(file, p)))
	require.Nil(t, m.Error)
	require.NoError(t, json.Unmarshal(m.Result, &list))
	var raw struct{ Items []json.RawMessage }
	require.NoError(t, json.Unmarshal(m.Result, &raw))
	for i := range list.Items {
		list.Items[i].raw = raw.Items[i]
	}
	return plain, list
}

func (l completed) labelled(t *testing.T, label string) completedItem {
	t.Helper()
	for _, item := range l.Items {
		if item.Label == label {
			return item
		}
	}
	require.Fail(t, "not suggested", "%s among %v", label, l.Items)
	return completedItem{}
}

func TestCompletion(t *testing.T) {
	const cup = "Pattern: Cup\nTerms: US\n\nPiece: Cup\nRnd 1: 6 sc in magic ring.\nRnd 2: 2 sc in next 3 sts, sc in ne|"
	bothWays(t, func(t *testing.T, c *client) {
		c.initialize(nil, nil)
		text, list := suggestions(t, c, cup)
		item := list.labelled(t, "in next st")
		assert.Equal(t, "3 left", item.Detail)
		assert.Equal(t, "in next st", item.FilterText)
		assert.True(t, strings.HasSuffix(spliced(t, text, []textEdit{*item.TextEdit}), "sc in next 3 sts, sc in next st"))
		assert.Nil(t, list.ItemDefaults)
		several := list.labelled(t, "in next 2 sts")
		assert.Equal(t, "in next 2 sts", several.TextEdit.NewText)
		assert.Zero(t, several.InsertTextFormat)
		for i, item := range list.Items[1:] {
			assert.Less(t, list.Items[i].SortText, item.SortText)
		}
		assert.NoError(t, c.leave())
	})
}

func TestCompletionForAbleClients(t *testing.T) {
	able := object{"textDocument": object{"completion": object{
		"completionItem": object{"snippetSupport": true, "labelDetailsSupport": true, "documentationFormat": []string{"markdown"}},
		"completionList": object{"itemDefaults": []string{"editRange"}},
	}}}
	bothWays(t, func(t *testing.T, c *client) {
		c.initialize(able, nil)
		text, list := suggestions(t, c, "Pattern: Twig\nTerms: US\n\nPiece: Twig\nCh 14.\nRow 1: Sc in 2nd ch from hook, br|")
		require.NotNil(t, list.ItemDefaults)
		item := list.labelled(t, "branch A: ch 6, sc in 2nd ch from hook and in each ch of A, return to stem")
		assert.Equal(t, "a twig", item.LabelDetails.Description)
		assert.Equal(t, 2, item.InsertTextFormat)
		assert.Equal(t, "branch ${1:A}: ch ${2:6}, sc in 2nd ch from hook and in each ch of ${1:A}, return to stem", item.TextEditText)
		assert.Equal(t, "br", source.New(text).Slice(converter{source.New(text), source.UTF16}.span(*list.ItemDefaults.EditRange)))
	})
}

func TestCompletionResolve(t *testing.T) {
	bothWays(t, func(t *testing.T, c *client) {
		c.initialize(nil, nil)
		_, list := suggestions(t, c, "Pattern: Cup\nTerms: US\n\nPiece: Cup\nRnd 1: 6 |")
		var resolved completedItem
		c.call("completionItem/resolve", list.labelled(t, "sc").raw, &resolved)
		require.NotNil(t, resolved.Documentation)
		assert.Contains(t, resolved.Documentation.Value, "single crochet")
		assert.Equal(t, "sc", resolved.Label)

		_, list = suggestions(t, c, "Pattern: Cup\n|")
		resolved = completedItem{}
		c.call("completionItem/resolve", list.labelled(t, "Terms:").raw, &resolved)
		assert.Nil(t, resolved.Documentation)
		assert.Equal(t, "Terms:", resolved.Label)
	})
}

func TestNothingToSuggest(t *testing.T) {
	c := inProcess(t, lint.Analyze)
	c.initialize(nil, nil)
	_, list := suggestions(t, c, "Pattern: Cup\n// a note |")
	assert.NotNil(t, list.Items)
	assert.Empty(t, list.Items)
}

func TestRulesAreSuggestedWhereTheyAreAllowed(t *testing.T) {
	c := inProcess(t, lint.Analyze)
	c.initialize(nil, nil)
	_, list := suggestions(t, c, strings.Replace(faulty, "1|3", "13", 1)+"// allow count-missing, |\n")
	assert.Equal(t, "count-mismatch", list.Items[0].Label, "it finds something here")
	assert.NotEmpty(t, list.labelled(t, "turn-missing").TextEdit.NewText)
	_, list = suggestions(t, c, "// allow count-mis|")
	assert.Equal(t, []string{"count-mismatch", "count-missing"}, []string{list.Items[0].Label, list.Items[1].Label})
	assert.Len(t, list.Items, 2)
}

// What comes next is told while the rules still look at what was typed.
func TestCompletionDoesNotWait(t *testing.T) {
	const cup = "Pattern: Cup\nTerms: US\n\nPiece: Cup\nRnd 1: 6 sc in magic ring.\n"
	looked := make(chan struct{})
	c := inProcessWith(t, func(s lint.Settings, before *lint.Analysis, text *source.Text) *lint.Analysis {
		if text.String() != cup {
			<-looked
		}
		return s.AnalyzeAfter(before, text)
	})
	c.initialize(nil, nil)
	c.open(file, 1, cup)
	c.diagnostics()
	const words = "Rnd 2: 2 sc in next 3 sts, sc in ne"
	c.change(file, 2, object{"range": protocol.Range{Start: place(5, 0), End: place(5, 0)}, "text": words})
	var list completed
	c.call("textDocument/completion", at(file, place(5, uint32(len(words)))), &list)
	assert.Equal(t, "3 left", list.labelled(t, "in next st").Detail)
	assert.Equal(t, place(5, uint32(len(words))), list.labelled(t, "in next st").TextEdit.Range.End)
	close(looked)
	c.diagnostics()
}
