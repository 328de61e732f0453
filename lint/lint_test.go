package lint

import (
	"encoding/json"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/fabric"
	"stitchproof/lang/materials"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

const twoSizes = `Pattern: Hedge mitten
Terms: US
Sizes: S (M, L)

Piece: Cuff
With A, ch 21 (23, 25).
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (20 (22, 24) sc)
`

func findings(t *testing.T, pattern string) []Finding {
	t.Helper()
	return Analyze(source.New(pattern)).Findings
}

func TestSeverityNames(t *testing.T) {
	for _, s := range []Severity{Info, Warning, Error, Caution} {
		text, err := json.Marshal(s)
		require.NoError(t, err)
		var back Severity
		require.NoError(t, json.Unmarshal(text, &back))
		assert.Equal(t, s, back)
	}
	var s Severity
	assert.ErrorContains(t, s.UnmarshalText([]byte("grave")), "no severity")
}

func TestPanickingRuleCostsOnlyItself(t *testing.T) {
	text := source.New(countMismatch.Bad)
	file := syntax.Read(text)
	broken := &Rule{Name: "broken", Check: func(*Pass) { panic("dropped a stitch") }}
	look := (&Analysis{File: file, Fabric: fabric.Work(file), Materials: materials.Read(file), around: aroundOf(file)}).look()
	look.sections, _ = sectionsOf(&look, knowledge{})
	found := Settings{}.run([]*Rule{broken, countMismatch}, look)
	require.Len(t, found, 2)
	assert.Equal(t, InternalFailure, found[0].Rule)
	assert.Equal(t, Error, found[0].Severity)
	assert.Contains(t, found[0].Message, "broken")
	assert.Contains(t, found[0].Message, "dropped a stitch")
	assert.Equal(t, "count-mismatch", found[1].Rule)
}

func TestSameFindingsEveryTime(t *testing.T) {
	for _, r := range rules {
		assert.Equal(t, r.Try(r.Bad).Findings, r.Try(r.Bad).Findings, r.Name)
	}
}

func TestOneFindingNamesItsSizes(t *testing.T) {
	found := findings(t, twoSizes+"Row 2: Ch 1, sc in each st across. (20 (23, 25) sc)\nFasten off.\n")
	require.Len(t, found, 1)
	assert.Equal(t, "M and L", found[0].Size)
	assert.Equal(t, "sizes M and L: makes 22 (24) sc, says 23 (25)", found[0].Message)
	require.NotNil(t, found[0].Fix)
	assert.Equal(t, "20 (22, 24)", found[0].Fix.Edits[0].New)
}

func TestAllSizesAreNotNamed(t *testing.T) {
	found := findings(t, twoSizes+"Row 2: Ch 1, sc in each st across. (21 (23, 25) sc)\nFasten off.\n")
	require.Len(t, found, 1)
	assert.Empty(t, found[0].Size)
	assert.Equal(t, "makes 20 (22, 24) sc, says 21 (23, 25)", found[0].Message)
}

func TestRewrittenKeepsBrackets(t *testing.T) {
	for text, want := range map[string]string{
		"20 (24, 28)": "7 (8, 9)",
		"20[24:28]":   "7[8:9]",
		"20/24/28":    "7/8/9",
		"20":          "7 (8, 9)",
	} {
		assert.Equal(t, want, rewritten(text, []int{7, 8, 9}), text)
	}
	assert.Equal(t, "7", rewritten("20", []int{7}))
}

func TestMeasures(t *testing.T) {
	var lists [][]float64
	for _, m := range measures("46.5 (50, 53.5) cm around (18 1/4 (19 3/4, 21) in), 5 cm (2 in) deep", 0) {
		lists = append(lists, m.values)
	}
	assert.Equal(t, [][]float64{{46.5, 50, 53.5}, {18.25, 19.75, 21}}, lists)
	assert.True(t, falls([]float64{50, 48, 52}))
	assert.False(t, falls([]float64{50, 50, 52}))
}

func TestSewnOn(t *testing.T) {
	text := "Sew the stalk to the top of the cup and the cup\nto the nut. Sew three sides with A. Leaving a tail for sewing."
	sewn := sewnOn(strings.ToLower(text))
	assert.True(t, namesPiece(sewn, "Stalk"))
	assert.True(t, namesPiece(sewn, "Cup"))
	assert.False(t, namesPiece(sewn, "Nut"))
	assert.True(t, namesPiece(sewnOn("sew the eleven leaves to the twig."), "Leaf"))
	assert.True(t, namesPiece(sewnOn("sew the twenty-four leaves to the twig."), "Leaf"))
	assert.True(t, namesPiece(sewnOn("sew head, ears and leaves to the body."), "Leaf"))
}

func TestReferencesMoveWithTheirRows(t *testing.T) {
	file := syntax.Read(source.New("Piece: Mat\nWith A, ch 5.\nRow 9: Rep Rows 4, 5 and 7 until 6 cm, 8 times.\n"))
	row := file.Pieces[0].Rows[1]
	var moved []string
	for _, e := range shiftReferences(row, 5, -1) {
		moved = append(moved, file.Text.Slice(e.Span)+">"+e.New)
	}
	assert.Equal(t, []string{"5>4", "7>6"}, moved)
}
