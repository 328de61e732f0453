package lint_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

// TestShapeWords holds what a maker reads of a row's shape. A single crochet is
// as wide as high by this gauge: one stitch more turns 180/pi, about 57 degrees.
func TestShapeWords(t *testing.T) {
	const square = "Terms: US\nGauge: 20 sc and 20 rows = 10 cm\n\nPiece: Sprig\n"
	for _, test := range []struct{ name, rows, want string }{
		{"straight", "Ch 9.\nRow 1: Sc in 2nd ch from hook and in each ch across.", "lies straight along the chain"},
		{"one bend", "Ch 9.\nRow 1: Sc in 2nd ch from hook, sc in next 2 ch, 2 sc in next ch, sc in each ch across.",
			"bends about 55° towards the chain, at sts 4 to 5"},
		{"drawn in", "Ch 9.\nRow 1: Hdc in 2nd ch from hook, hdc in next 2 ch, hdc2tog, hdc in each ch across.",
			"bends about 40° away from the chain, at st 4"},
		{"two ways", "Ch 12.\nRow 1: Sc in 2nd ch from hook, 3 sc in next ch, sc in next 3 ch, sc2tog, sc in each ch across.",
			"bends about 55° towards the chain in all: about 115° towards it at sts 2 to 4 and about 55° away from it at st 8"},
		{"as much one way as the other", "Ch 12.\nRow 1: Sc in 2nd ch from hook, 2 sc in next ch, sc in next 3 ch, sc2tog, sc in each ch across.",
			"bends to and fro along the chain and ends straight: about 55° towards it at sts 2 to 3 and about 55° away from it at st 7"},
		{"curls", "Ch 12.\nRow 1: Sc in 2nd ch from hook, 2 sc in each of next 9 ch, sc in last ch.",
			"curls about 515° towards the chain (1 full curl), at sts 2 to 19"},
		{"curls and a half", "Ch 13.\nRow 1: Sc in 2nd ch from hook, 2 sc in each of next 10 ch, sc in last ch.",
			"curls about 575° towards the chain (1½ full curls), at sts 2 to 21"},
		{"waves", "Ch 30.\nRow 1: Sc in 2nd ch from hook, *2 sc in next ch, sc2tog, sc in next ch; rep from * to end.",
			"runs in waves, up to about 55° each way"},
		{"on the row below", "Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\nRow 2: Ch 1, sc in next 4 sts, 2 sc in next st, sc in each st across.",
			"on its own bends about 55° towards the row below, at sts 5 to 6"},
		{"straight on the row below", "Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\nRow 2: Ch 1, sc in each st across.", ""},
		{"round", "Ch 9.\nRnd 1: Sc in 2nd ch from hook, 2 sc in next ch, sc in each ch across; sl st in first sc to join.", ""},
		{"branches", "Ch 9.\nRow 1: Sc in 2nd ch from hook and in next 3 ch, branch Thorn: ch 7, sc in 2nd ch from hook, 2 sc in next ch, sc in next 4 ch, return to stem, sc in each ch across.",
			"branch Thorn bends about 55° towards the chain, at sts 2 to 3"},
		{"straight branches", "Ch 9.\nRow 1: Sc in 2nd ch from hook and in next 3 ch, branch Thorn: ch 7, sc in 2nd ch from hook, sc in next 5 ch, return to stem, sc in each ch across.",
			"lies straight along every chain"},
	} {
		t.Run(test.name, func(t *testing.T) {
			a := lint.Analyze(source.New(square + test.rows + "\n"))
			rows := a.Fabric.Pieces[0].Rows
			words, bends := a.Shape(rows[len(rows)-1])
			assert.Equal(t, test.want, words)
			straight := test.want == "" || test.want == "lies straight along the chain" || test.want == "lies straight along every chain"
			assert.Equal(t, !straight, bends)
		})
	}
}

func TestShapeWordsOfSizes(t *testing.T) {
	a := lint.Analyze(source.New("Terms: US\nSizes: S (M)\nGauge: 20 sc and 20 rows = 10 cm\n\nPiece: Sprig\nCh 12.\n" +
		"Row 1: Sc in 2nd ch from hook, 2 sc in each of next 2 (3) ch, sc in each ch across.\n"))
	words, bends := a.Shape(a.Fabric.Pieces[0].Rows[1])
	assert.True(t, bends)
	assert.Equal(t, "size S bends about 115° towards the chain, at sts 2 to 5; size M bends about 170° towards the chain, at sts 2 to 7", words)
}
