package lsp

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lint/config"
)

func TestSettingsOfAFolder(t *testing.T) {
	bothWays(t, func(t *testing.T, c *client) {
		folder, at := hedgeFolder(t)
		c.enter(folder, object{"textDocument": pulling})
		c.open(at("acorn.crochet"), 1, cup("13"))
		before := c.reports(nil, nil)[at("acorn.crochet")]
		assert.Equal(t, "count-mismatch", before.codes())

		require.NoError(t, os.WriteFile(filepath.Join(folder, config.Name), []byte("[rules]\ncount-mismatch = \"off\"\n"), 0o600))
		c.notify("workspace/didChangeWatchedFiles", object{"changes": []object{{"uri": at(config.Name), "type": 1}}})
		after := c.reports([]object{{"uri": at("acorn.crochet"), "value": before.ResultID}}, nil)[at("acorn.crochet")]
		assert.Equal(t, "full", after.Kind)
		assert.Empty(t, after.codes())
		assert.NoError(t, c.leave())
	})
}

func TestAFindingIsLetBe(t *testing.T) {
	bothWays(t, func(t *testing.T, c *client) {
		c.initialize(nil, nil)
		text, list := actions(t, c, faulty, object{"only": []string{"quickfix"}})
		after := titled(t, list, "let `count-mismatch` be here, with a reason").Edit.applied(t, text)
		assert.Equal(t, strings.Replace(text, "(13 sc)", "(13 sc) // allow count-mismatch: the reason", 1), after)
		c.diagnostics()
		c.change(file, 4, whole(after))
		assert.NotContains(t, codes(c.diagnostics()), "count-mismatch")
	})
}

// A caution is told until a person has written the reason.
func TestACautionIsAnswered(t *testing.T) {
	bothWays(t, func(t *testing.T, c *client) {
		c.initialize(nil, nil)
		text, list := actions(t, c, "Pattern: Baby bla|nket\nTerms: US\n\nPiece: Blanket\nCh 6.\nRow 1: Sc in 2nd ch from hook and in each ch across. (5 sc)\nFasten off.\n", object{"only": []string{"quickfix"}})
		after := titled(t, list, "answer `sleep-loose` with a reason").Edit.applied(t, text)
		assert.Contains(t, after, "Baby blanket // allow sleep-loose: the reason\n")
		c.diagnostics()
		c.change(file, 4, whole(after))
		assert.ElementsMatch(t, []string{"sleep-loose", "allow-unreasoned"}, codes(c.diagnostics()))
		c.change(file, 5, whole(strings.Replace(after, "the reason", "the note on the cover tells of it", 1)))
		assert.Empty(t, codes(c.diagnostics()))
	})
}
