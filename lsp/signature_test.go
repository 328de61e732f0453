package lsp

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"go.lsp.dev/protocol"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

func TestSignatureHelp(t *testing.T) {
	const cup = "Pattern: Cup\nTerms: US\n\nSpecial stitches\nknop: (sc, ch 3, sc) in next st.\n\nPiece: Cup\nRnd 1: 6 sc in magic ring.\n"
	for words, want := range map[string]string{
		"Rnd 2: 2 dc |":                                 "2 dc in next st",
		"Rnd 2: Sc in next 3 sts, Hdc in |":             "2 Hdc in next st",
		"Rnd 2: Fpdc |\nRnd 3: Sc in each st around.\n": "2 Fpdc in next st",
		"Rnd 2: 2 knop |":                               "2 knop in next st",
		"Rnd 2: Sc in next 3 sts, |":                    "",
		"Rnd 2: Sc|":                                    "",
		"Rnd 2: sc2tog |":                               "",
		"Rnd 2: ch |":                                   "",
		"Rnd 2: Sc in each st.\n|":                      "",
		"// 2 dc |":                                     "",
	} {
		c := inProcess(t, lint.Analyze)
		offer := c.initialize(nil, nil).Capabilities
		assert.Equal(t, []string{" "}, offer.SignatureHelpProvider.TriggerCharacters)
		plain, p := marked(t, strings.Replace(cup+words, "|", "¦", 1), source.UTF16)
		c.open(file, 1, plain)
		var got *struct {
			Signatures []struct {
				Label         string
				Documentation protocol.MarkupContent
				Parameters    []struct{ Label, Documentation string }
			}
			ActiveParameter int
		}
		c.call("textDocument/signatureHelp", at(file, p), &got)
		if want == "" {
			assert.Nil(t, got, words)
			continue
		}
		require.NotNil(t, got, words)
		require.Len(t, got.Signatures, 1)
		s := got.Signatures[0]
		assert.Equal(t, want, s.Label)
		assert.Contains(t, s.Label, s.Parameters[got.ActiveParameter].Label)
		assert.Equal(t, "next st", s.Parameters[got.ActiveParameter].Label)
		if strings.Contains(words, "knop") {
			assert.Equal(t, "knop\nDefined by the pattern: (sc, ch 3, sc) in next st.", s.Documentation.Value)
		} else {
			assert.Contains(t, s.Documentation.Value, "How, in US terms: ")
		}
	}
}

func TestSignatureMarkup(t *testing.T) {
	bothWays(t, func(t *testing.T, c *client) {
		c.initialize(object{"textDocument": object{"signatureHelp": object{"signatureInformation": object{"documentationFormat": []string{"markdown"}}}}}, nil)
		c.open(file, 1, "Terms: US\n\nRnd 1: Dc ")
		var got struct {
			Signatures []struct{ Documentation protocol.MarkupContent }
		}
		c.call("textDocument/signatureHelp", at(file, place(2, 10)), &got)
		require.Len(t, got.Signatures, 1)
		assert.Equal(t, protocol.MarkupKindMarkdown, got.Signatures[0].Documentation.Kind)
	})
}
