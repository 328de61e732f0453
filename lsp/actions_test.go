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

type acted struct {
	Title       string            `json:"title"`
	Kind        string            `json:"kind"`
	IsPreferred bool              `json:"isPreferred"`
	Edit        *edited           `json:"edit"`
	Diagnostics []json.RawMessage `json:"diagnostics"`
	raw         json.RawMessage
}

// actions asks what can be done at the bar of a text.
func actions(t *testing.T, c *client, text string, context object) (plain string, list []acted) {
	t.Helper()
	plain, p := marked(t, strings.Replace(text, "|", "¦", 1), source.UTF16)
	c.open(file, 3, plain)
	params := naming(file)
	params["range"] = object{"start": p, "end": p}
	context["diagnostics"] = []any{}
	params["context"] = context
	m := c.answer(c.request("textDocument/codeAction", params))
	require.Nil(t, m.Error)
	var raw []json.RawMessage
	require.NoError(t, json.Unmarshal(m.Result, &raw))
	require.NoError(t, json.Unmarshal(m.Result, &list))
	for i := range list {
		list[i].raw = raw[i]
	}
	return plain, list
}

func titled(t *testing.T, list []acted, title string) acted {
	t.Helper()
	for _, a := range list {
		if a.Title == title {
			return a
		}
	}
	require.Fail(t, "not offered", "%s among %v", title, list)
	return acted{}
}

// faulty has a wrong count and no fastening off.
const faulty = "Pattern: Cup\nTerms: US\n\nPiece: Cup\nRnd 1: 6 sc in magic ring. (6 sc)\nRnd 2: 2 sc in each st around. (1|3 sc)\nRnd 3: Sc in each st around. (12 sc)\n"

func TestQuickFixes(t *testing.T) {
	bothWays(t, func(t *testing.T, c *client) {
		c.initialize(object{"textDocument": object{"codeAction": object{"isPreferredSupport": true}}}, nil)
		text, list := actions(t, c, faulty, object{})
		fix := titled(t, list, "write 12 as the count")
		assert.Equal(t, "quickfix", fix.Kind)
		assert.True(t, fix.IsPreferred)
		require.Len(t, fix.Diagnostics, 1)
		assert.Contains(t, string(fix.Diagnostics[0]), "count-mismatch")
		assert.Equal(t, strings.Replace(text, "13", "12", 1), fix.Edit.applied(t, text))
		assert.NoError(t, c.leave())
	})
}

func TestActionsOfAKind(t *testing.T) {
	for only, want := range map[string][]string{
		"quickfix":                  {"quickfix"},
		"source":                    {"source.fixAll.stitchproof"},
		"source.fixAll":             {"source.fixAll.stitchproof"},
		"source.fixAll.stitchproof": {"source.fixAll.stitchproof"},
		"source.organizeImports":    {},
		"refactor":                  {"refactor.rewrite"},
		"refactor.inline":           {},
	} {
		c := inProcess(t, lint.Analyze)
		c.initialize(nil, nil)
		_, list := actions(t, c, faulty, object{"only": []string{only}})
		kinds := []string{}
		for _, a := range list {
			if len(kinds) == 0 || kinds[len(kinds)-1] != a.Kind {
				kinds = append(kinds, a.Kind)
			}
		}
		assert.Equal(t, want, kinds, only)
	}
}

func TestFixAll(t *testing.T) {
	c := inProcess(t, lint.Analyze)
	c.initialize(nil, nil)
	text, list := actions(t, c, faulty, object{"only": []string{"source.fixAll"}})
	require.Len(t, list, 1)
	after := list[0].Edit.applied(t, text)
	assert.Equal(t, text+"Fasten off.\n", after, "the count is for a person to choose")
}

func TestOtherWaysToWriteIt(t *testing.T) {
	bothWays(t, func(t *testing.T, c *client) {
		c.initialize(nil, nil)
		text, list := actions(t, c, faulty, object{"triggerKind": 1})
		uk := titled(t, list, "write it in UK terms").Edit.applied(t, text)
		assert.Contains(t, uk, "Terms: UK")
		assert.Contains(t, uk, "6 dc in magic ring. (6 dc)")
		_, list = actions(t, c, faulty, object{"triggerKind": 2})
		for _, a := range list {
			assert.NotContains(t, a.Kind, "refactor", "nobody asked")
		}
	})
}

func TestActionResolve(t *testing.T) {
	able := object{
		"textDocument": object{"codeAction": object{
			"dataSupport": true, "resolveSupport": object{"properties": []string{"edit"}},
			"codeActionLiteralSupport": object{"codeActionKind": object{"valueSet": []string{"", "quickfix"}}},
		}},
		"workspace": object{"workspaceEdit": object{"documentChanges": true, "changeAnnotationSupport": object{}}},
	}
	bothWays(t, func(t *testing.T, c *client) {
		offer := c.initialize(able, nil).Capabilities.CodeActionProvider.(*protocol.CodeActionOptions)
		assert.True(t, *offer.ResolveProvider)
		assert.Contains(t, offer.CodeActionKinds, fixAll)
		text, list := actions(t, c, faulty, object{})
		for _, a := range list {
			assert.Nil(t, a.Edit)
		}
		var resolved acted
		c.call("codeAction/resolve", titled(t, list, "write 12 as the count").raw, &resolved)
		require.NotNil(t, resolved.Edit)
		assert.Equal(t, strings.Replace(text, "13", "12", 1), resolved.Edit.applied(t, text))
		assert.Equal(t, 3, *resolved.Edit.DocumentChanges[0].TextDocument.Version)
		assert.Empty(t, resolved.Edit.ChangeAnnotations, "whoever picked it by its title is not asked again")

		resolved = acted{}
		c.call("codeAction/resolve", titled(t, list, "go through every change that is suggested").raw, &resolved)
		assert.Equal(t, strings.Replace(text, "13", "12", 1)+"Fasten off.\n", resolved.Edit.applied(t, text))
		asked := map[string]bool{}
		for _, e := range resolved.Edit.DocumentChanges[0].Edits {
			label := resolved.Edit.ChangeAnnotations[e.AnnotationID]
			asked[label.Label] = label.NeedsConfirmation
		}
		assert.True(t, asked["write 12 as the count"], "a person has to choose between the count and the words")
		assert.Len(t, asked, 2)

		c.change(file, 4, whole(text+"\n"))
		m := c.answer(c.request("codeAction/resolve", list[0].raw))
		require.NotNil(t, m.Error)
		assert.Equal(t, -32801, m.Error.Code)
	})
}

func TestEveryChangeNeedsAClientThatAsks(t *testing.T) {
	c := inProcess(t, lint.Analyze)
	c.initialize(object{"workspace": object{"workspaceEdit": object{"documentChanges": true}}}, nil)
	_, list := actions(t, c, faulty, object{})
	titled(t, list, "write 12 as the count")
	for _, a := range list {
		assert.NotContains(t, a.Title, "every change")
	}
}

func TestLengthsInOtherUnits(t *testing.T) {
	bothWays(t, func(t *testing.T, c *client) {
		c.initialize(nil, nil)
		text, list := actions(t, c, "Pattern: Frost hat\nGauge: 16 sc = 10| cm\nFinished size: 20 cm\n", object{"triggerKind": 1})
		a := titled(t, list, "write (4 in) beside 10 cm")
		assert.Equal(t, "refactor.rewrite", a.Kind)
		assert.Equal(t, strings.Replace(text, "10 cm", "10 cm (4 in)", 1), a.Edit.applied(t, text))
	})
}
