package syntax_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// Other words for a row are read as the file reads its own.
func TestReread(t *testing.T) {
	f := syntax.Read(source.New("Sizes: S (M, L)\nSpecial stitches\nHip: (2 dc, ch 1, 2 dc) in next st\n\nPiece: Hedge\nRow 1: Ch 1, hip in next 2 (3, 4) sts. (2 (3, 4) hips)\n"))
	row := f.Pieces[0].Rows[0]
	again := f.Reread(row, row.Text)
	assert.Equal(t, row, again)
	other := f.Reread(row, strings.Replace(row.Text, "4) sts", "5) sts", 1))
	assert.Empty(t, other.Unread())
	assert.Equal(t, row.Span().Start, other.Span().Start)
	assert.NotEqual(t, row.Clauses[1].Node, other.Clauses[1].Node)
}
