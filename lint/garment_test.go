package lint_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

// jumper is a garment in pieces, 50 (55, 60) cm wide and 50 (52, 54) cm long, with sleeves of
// 40 (40, 42) cm, with what its header says of that.
func jumper(finished string, changes ...string) string {
	text := `Pattern: Stile jumper
Terms: US
Sizes: S (M, L)
Hook: 6 mm (US J-10)
Gauge: 12 hdc and 10 rows = 10 cm (4 in)
` + finished + `
Turning chains: ch 2 does not count as a st.

## Back
Ch 62 (68, 74).
Row 1: Hdc in 3rd ch from hook and in each ch across; turn. (60 (66, 72) hdc)
Rows 2-50 (52, 54): Ch 2, hdc in each st across; turn. (60 (66, 72) hdc)
Fasten off.

## Front
Ch 62 (68, 74).
Row 1: Hdc in 3rd ch from hook and in each ch across; turn. (60 (66, 72) hdc)
Rows 2-44 (46, 48): Ch 2, hdc in each st across; turn. (60 (66, 72) hdc)
Row 45 (47, 49): Ch 2, hdc in next 20 (23, 26) sts; turn, leaving remaining 40 (43, 46) sts unworked. (20 (23, 26) hdc)
Rows 46-50 (48-52, 50-54): Ch 2, hdc in each st across; turn. (20 (23, 26) hdc)
Fasten off.

## Sleeves (make 2)
Ch 32 (32, 32).
Row 1: Hdc in 3rd ch from hook and in each ch across; turn. (30 (30, 30) hdc)
Rows 2-10: Ch 2, hdc in each st across; turn. (30 hdc)
Row 11: Ch 2, 2 hdc in first st, hdc in each st to last st, 2 hdc in last st; turn. (32 hdc)
Rows 12-40 (40, 42): Ch 2, hdc in each st across; turn. (32 hdc)
Fasten off.
`
	return strings.NewReplacer(changes...).Replace(text)
}

// Measures of a garment against its pieces, in the places where headers give them.
func TestMeasuresOfGarments(t *testing.T) {
	const sound = "Finished size: bust 100 (110, 120) cm; length 50 (52, 54) cm; sleeve length 40 (40, 42) cm"
	underBack := []string{"## Back\nCh 62", "BACK\n\nBody\nCh 62", "## Front\n", "FRONT\n\nBody\n"}
	cuffs := []string{"Fasten off.\n\n## Sleeves", "Fasten off.\n\n## Cuff (make 2)\nCh 9.\nRow 1: Hdc in 3rd ch from hook and in each ch across; turn. (7 hdc)\nRows 2-10: Ch 2, hdc in each st across; turn. (7 hdc)\nFasten off.\n\n## Sleeves"}
	caps := []string{"Rows 12-40 (40, 42): Ch 2, hdc in each st across; turn. (32 hdc)\n", "Rows 12-40 (40, 42): Ch 2, hdc in each st across; turn. (32 hdc)\n" +
		"Next 8 rows: Ch 2, hdc2tog, hdc in each st to last 2 sts, hdc2tog; turn. (16 hdc)\n"}
	for _, test := range []struct {
		name, finished string
		changes        []string
		told           []string // the beginning of what each finding says
	}{
		{name: "one field", finished: sound},
		{name: "a field each", finished: "Finished bust: 100 (110, 120) cm\nLength: 50 (52, 54) cm\nSleeve: 40 (40, 42) cm"},
		{name: "a field each, in other words", finished: "Finished chest: 100 (110, 120) cm\nTotal length: 50 (52, 54) cm\nSleeve seam: 38 (38, 40) cm"},
		{name: "a list", finished: "\nFinished measurements\n- Bust: 100 (110, 120) cm\n- Length to shoulder: 50 (52, 54) cm\n- Sleeve: 40 (40, 42) cm\n"},
		{name: "with seams taken off", finished: "Finished size: bust 97 (107, 117) cm"},
		{name: "flat widths", finished: "Back width: 50 (55, 60) cm\nBack length: 50 (52, 54) cm"},
		{name: "size by size", finished: "Finished size: S: bust 100 cm, M: bust 110 cm, L: bust 120 cm"},
		{name: "lengths size by size", finished: "Finished size: S: length 50 cm, M: length 52 cm, L: length 54 cm"},
		{name: "in inches", finished: "Finished size: bust 39 1/4 (43 1/4, 47 1/4) in; length 19 3/4 (20 1/2, 21 1/4) in"},
		{name: "under headings", finished: sound, changes: underBack},
		{name: "sleeves with cuffs", finished: "Sleeve length: 46 (46, 48) cm", changes: cuffs},
		{name: "sleeves to the cap", finished: "Sleeve length: 40 (40, 42) cm", changes: caps},
		{name: "sleeves to the underarm", finished: "Sleeve length to underarm: 38 cm\nFinished size: sleeve to underarm 38 cm"},
		{name: "a yoke above", finished: "Length: 60 (62, 64) cm", changes: []string{"## Sleeves", "## Yoke\nCh 60.\nRow 1: Hdc in 3rd ch from hook and in each ch across. (58 hdc)\nFasten off.\n\n## Sleeves"}},
		{name: "rows to a length", finished: "Length: 60 (62, 64) cm", changes: []string{"Rows 2-50 (52, 54): Ch 2, hdc in each st across; turn. (60 (66, 72) hdc)", "Rep Row 1 until piece measures 60 cm."}},
		{name: "another measure", finished: "Length from armhole to hem: 30 (31, 32) cm\nFinished size: armhole depth 20 (21, 22) cm"},
		{name: "a body's", finished: "To fit: bust 90 (100, 110) cm"},
		{name: "fronts of a cardigan under one heading", finished: "Finished size: bust 100 (110, 120) cm", changes: []string{"## Front\nCh 62 (68, 74).", "FRONT\n\nLeft front\nCh 32.\nRow 1: Hdc in 3rd ch from hook and in each ch across; turn. (30 hdc)\nFasten off.\n\nRight front\nCh 62 (68, 74)."}},

		{name: "bust", finished: "Finished size: bust 110 (120, 130) cm", told: []string{"says a bust of 110"}},
		{name: "bust in one size", finished: "Finished size: bust 100 (110, 130) cm", told: []string{"size L: says a bust of 130"}},
		{name: "chest under headings", finished: "Finished size: 100 (118, 120) cm around the chest", changes: underBack, told: []string{"size M: says a bust of 118"}},
		{name: "a chain in one size", finished: sound, changes: []string{"Ch 62 (68, 74).", "Ch 62 (68, 84).", "(60 (66, 72) hdc)", "(60 (66, 82) hdc)", "40 (43, 46)", "40 (43, 56)"}, told: []string{"size L: says a bust of 120"}},
		{name: "length in one field", finished: "Finished size: bust 100 (110, 120) cm; length 60 (62, 64) cm", told: []string{"says 60 (62, 64) cm"}},
		{name: "length as a field", finished: "Length: 60 (62, 64) cm", told: []string{"says 60 (62, 64) cm"}},
		{name: "length in one size", finished: "Total length: 50 (52, 66) cm", told: []string{"size L: says 66 cm"}},
		{name: "length of a list", finished: "\nFinished measurements\nBust: 100 (110, 120) cm\nLength: 40 (42, 44) cm\n", told: []string{"says 40 (42, 44) cm"}},
		{name: "length in inches", finished: "Finished length: 24 (24, 26) in", told: []string{"says 61 (61, 66) cm"}},
		{name: "long", finished: "Finished size: 100 (110, 120) cm around the chest, 60 (62, 64) cm long", told: []string{"says 60 (62, 64) cm"}},
		{name: "rows in one size", finished: sound, changes: []string{"2-50 (52, 54)", "2-50 (52, 64)", "2-44 (46, 48)", "2-44 (46, 58)", "45 (47, 49)", "45 (47, 59)", "50-54)", "60-64)"}, told: []string{"size L: says 54 cm"}},
		{name: "sleeve as a field", finished: "Sleeve length: 50 (50, 52) cm", told: []string{"says 50 (50, 52) cm"}},
		{name: "sleeve in a sentence", finished: "\nFinished chest 100 (110, 120) cm; length 50 (52, 54) cm; sleeve 50 (50, 52) cm.\n", told: []string{"says 50 (50, 52) cm"}},
		{name: "sleeve seam longer than the sleeve", finished: "Sleeve seam: 50 (50, 52) cm", told: []string{"says 50 (50, 52) cm"}},
		{name: "sleeve rows in one size", finished: sound, changes: []string{"12-40 (40, 42)", "12-40 (40, 52)"}, told: []string{"size L: says 42 cm"}},
		{name: "back width", finished: "Back width: 55 (60, 65) cm", told: []string{"says 55 (60, 65) cm"}},
	} {
		t.Run(test.name, func(t *testing.T) {
			var told []string
			text := jumper(test.finished, test.changes...)
			for _, f := range lint.Analyze(source.New(text)).Findings {
				if f.Rule == "measure-mismatch" {
					told = append(told, f.Message)
				}
			}
			if assert.Len(t, told, len(test.told), "%v\n%s", told, text) {
				for i := range told {
					assert.True(t, strings.HasPrefix(told[i], test.told[i]), told[i])
				}
			}
		})
	}
}

// The size to which a piece is blocked, and the finished one.
func TestBlockedSizes(t *testing.T) {
	const size = "Finished size: 10 cm x 10 cm (4 in x 4 in)\n"
	for _, test := range []struct {
		header, said string
		told         bool
	}{
		{size, "Block to size.", false},
		{size, "Block to 10 cm x 10 cm.", false},
		{size, "Pin out to 4 in x 4 in and let dry.", false},
		{size, "Wet it, block to about 11 by 10 cm and let dry.", false},
		{"Finished size: 10 cm x 30 cm\n", "Block to 30 x 10 cm.", false},
		{size, "Sew on a label of 2 cm x 5 cm.", false},
		{size, "Cut a lining of 12 cm x 12 cm and press it.", false},
		{size, "Block each square to 8 x 8 cm.", false},
		{"Finished size: 10 cm x 10 cm without the edging\n", "Block to 14 x 14 cm.", false},
		{"Finished size: 10 cm wide\n", "Block to 14 x 14 cm.", false},
		{"", "Block to 14 x 14 cm.", false},
		{size, "Fold it to 5 x 10 cm.", false},

		{size, "Block to 15 cm x 10 cm.", true},
		{size, "Block the mat to 14 x\n14 cm and let it dry.", true},
		{size, "Pin out to 6 in x 6 in.", true},
		{size, "Wet the mat, stretch it and pin to 12 cm by 13 cm.", true},
		{"Finished size: 25 cm x 100 cm\n", "Block to 20 cm x 100 cm.", true},
		{"Finished size: 25 cm x 100 cm\n", "Block to 100 cm x 20 cm.", true},
		{"Finished size: about 25 cm x 100 cm\n", "Block to 25 cm x 120 cm.", true},
		{"Finished size: 10 in x 40 in\n", "Steam block to 10 cm x 40 cm.", true},
		{"Finished size: 30 cm wide x 150 cm long\n", "Block to 30 cm wide x 130 cm long.", true},
		{size, "Press lightly to 9 x 12 cm.", true},
	} {
		t.Run(test.header+test.said, func(t *testing.T) {
			told := false
			for _, f := range lint.Analyze(source.New(headed(test.header) + test.said + "\n")).Findings {
				told = told || f.Rule == "measure-mismatch"
			}
			assert.Equal(t, test.told, told)
		})
	}
}
