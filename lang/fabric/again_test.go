package fabric

import (
	"slices"
	"strings"
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

// A branch that a word of the pattern's own stands for is worked again where its definition
// changes, and stays as it was worked, where it stands now, where only what is above it does.
func TestWorkAfterOfParts(t *testing.T) {
	const sprig = "Pattern: Sprig\nTerms: US\n\nSpecial stitches\nBud: ch 3, sl st in 2nd ch from hook and in next ch. (2 sl sts)\n" +
		"Leaf: ch 6, sc in 2nd ch from hook and in next ch, bud, sc in next 3 ch. (5 sc)\n\nPiece: Sprig\nCh 11.\n" +
		"Row 1: Sl st in 2nd ch from hook and in next 3 ch, leaf, sl st in last 6 ch.\nFasten off.\n"
	before := Work(syntax.Read(source.New(sprig)))
	require.Len(t, before.Parts, 2)
	for edit, worked := range map[[2]string]bool{ // whether the leaf is worked again
		{"Leaf: ch 6", "Leaf: ch 7"}:         true,
		{"(5 sc)", "(6 sc)"}:                 true,
		{"Bud: ch 3", "Bud: ch 4"}:           true, // it grows on the leaf
		{"bud, ", ""}:                        true,
		{"Pattern: Sprig", "Pattern: Twig"}:  false,
		{"Terms: US\n", "Terms: US\n\n\n"}:   false,
		{"Piece: Sprig", "Piece: Haw twig"}:  false,
		{"Ch 11", "Ch 12"}:                   false,
		{"Leaf: ", "Frond: "}:                true,
		{"last 6 ch.", "last 6 ch, 1 leaf."}: false,
	} {
		text := source.New(strings.Replace(sprig, edit[0], edit[1], 1))
		file := syntax.ReadAfter(before.File, text)
		after := WorkAfter(before, file, stitch.Unsettled)
		sameFacts(t, Work(syntax.Read(text)), after)
		back := WorkAfter(after, syntax.ReadAfter(file, before.File.Text), stitch.Unsettled)
		sameFacts(t, before, back)
		kept := slices.ContainsFunc(after.Parts, func(p *Piece) bool {
			return &p.Rows[0].Tallies[0] == &before.Parts[1].Rows[0].Tallies[0]
		})
		require.Equal(t, !worked, kept, edit)
	}
}

// sameFacts holds all that is said of two fabrics against each other.
func sameFacts(t require.TestingT, want, got *Fabric) {
	require.Equal(t, want.Dialect, got.Dialect)
	require.Equal(t, want.Evidence, got.Evidence)
	require.Len(t, got.Pieces, len(want.Pieces))
	for i := range want.Pieces {
		require.Same(t, got.File.Pieces[i].Rows[0].Instruction, got.Pieces[i].Tree.Rows[0].Instruction)
	}
	require.Len(t, got.Parts, len(want.Parts))
	for i, p := range want.Parts {
		require.Equal(t, p.Tree.Name, got.Parts[i].Tree.Name)
		require.Truef(t, slices.ContainsFunc(got.File.Definitions, func(d *syntax.Definition) bool {
			return d.Row != nil && d.Row.Instruction == got.Parts[i].Rows[0].Tree.Instruction
		}), "%s", p.Tree.Name)
	}
	all, pieces := slices.Concat(got.Pieces, got.Parts), slices.Concat(want.Pieces, want.Parts)
	for i, p := range pieces {
		q := all[i]
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
