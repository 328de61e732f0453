package fabric

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stitchproof/lang/source"
	"stitchproof/lang/source/sourcetest"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// Working after any edits gives what working the text afresh gives.
func TestWorkAfter(t *testing.T) {
	texts := sourcetest.Manuscripts(t, "../..")
	rapid.Check(t, func(t *rapid.T) {
		text := source.New(rapid.SampledFrom(texts).Draw(t, "text"))
		file := syntax.Read(text)
		f := Work(file)
		for range rapid.IntRange(1, 6).Draw(t, "edits") {
			text = sourcetest.Edit(t, text, texts)
			file = syntax.ReadAfter(file, text)
			f = WorkAfter(f, file, stitch.Unsettled)
			sameFacts(t, Work(syntax.Read(text)), f)
		}
	})
}

// sameFacts holds all that is said of two fabrics against each other.
func sameFacts(t require.TestingT, want, got *Fabric) {
	require.Equal(t, want.Dialect, got.Dialect)
	require.Equal(t, want.Evidence, got.Evidence)
	require.Len(t, got.Pieces, len(want.Pieces))
	for i, p := range want.Pieces {
		q := got.Pieces[i]
		require.Same(t, got.File.Pieces[i].Rows[0].Instruction, q.Tree.Rows[0].Instruction)
		require.Equal(t, p.Tree.Span, q.Tree.Span)
		require.Equal(t, slices.Index(want.Pieces, p.From), slices.Index(got.Pieces, q.From), p.Tree.Name)
		require.Equal(t, p.Stitches, q.Stitches)
		require.Len(t, q.Rows, len(p.Rows))
		for j, r := range p.Rows {
			s := q.Rows[j]
			require.Same(t, q, s.Piece)
			require.Equal(t, r.Tree, s.Tree)
			require.Equal(t, r.Tallies, s.Tallies, r.Tree.Text)
			require.Equal(t, r.Steps, s.Steps)
			require.Equal(t, []any{r.Index, r.Stated, r.StatedAt, r.Joined, r.Turned, r.Round, r.Repeats, r.Side}, []any{s.Index, s.Stated, s.StatedAt, s.Joined, s.Turned, s.Round, s.Repeats, s.Side})
			require.Equal(t, want.Swatch(r) != nil, got.Swatch(s) != nil)
		}
	}
}
