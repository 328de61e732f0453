package syntax_test

import (
	"slices"
	"strings"
	"testing"

	"stitchproof/lang/syntax"
)

// TestSizeLists reads one value for each size in every style, wherever a
// number may stand. A dash is a size that skips; brackets that hold a stated
// count are none.
func TestSizeLists(t *testing.T) {
	for _, test := range []struct {
		sizes int // that the pattern says it has, 0 for none
		text  string
		want  string // the numbers of the text
	}{
		{4, "ch 81 (91, 101, 111)", "81/91/101/111"},
		{0, "ch 81 (91, 101, 111)", "81/91/101/111"},
		{4, "ch 81[91:101:111]", "81/91/101/111"},
		{4, "ch 81 [91: 101: 111]", "81/91/101/111"},
		{4, "ch 81/91/101/111", "81/91/101/111"},
		{4, "ch 81 {91, 101, 111}", "81/91/101/111"},
		{4, "ch 81 (91-101-111)", "81/91/101/111"},
		{4, "ch 81 (91, 101, 111) (121)", "81/91/101/111 121"},
		{4, "ch 81 (91 101 111)", "81 91 101 111"}, // nothing parts them
		{4, "ch 81(91,101,111)", "81/91/101/111"},
		{2, "ch 81 (91)", "81/91"},
		{2, "ch 81/91", "81/91"},
		{2, "ch 81 [91], turn", "81/91"},
		{0, "ch 81 (91)", "81 91"},
		{0, "ch 81/91", "81 91"},
		{4, "ch 81", "81"},
		{4, "[sc, inc] - (-, 2, 2) times", "-/-/2/2"},
		{4, "[sc, inc] – (–, 2, 2) times", "-/-/2/2"},
		{4, "[sc, inc] 3 (-, 2, -) times", "3/-/2/-"},
		{4, "[sc, inc] 0 (0, 2, 4) times", "0/0/2/4"},
		{5, "ages 2 (4) 6 (8) 10", "2/4/6/8/10"},
		{3, "ages 2 (4) 6", "2/4/6"},
		{3, "sc in next five (6, 7) sts", "5 6 7"},                             // a list begins with digits
		{4, "48 (54, 60, 66) sts (72, 78, 84, 90)", "48/54/60/66 72/78/84/90"}, // the count of each size, at the end
		{3, "ch 61 (67) [73]", "61/67/73"},
		{0, "ch 61 (67) [73]", "61/67/73"},
		{6, "ch 61 (67, 73) [79] {85, 91}, turn", "61/67/73/79/85/91"},
		{0, "ch 61 (67, 73) [79]", "61/67/73/79"},
		{3, "ch 61 (67) (73)", "61/67/73"},
		{0, "ch 61 (67) (73)", "61 67 73"}, // the last may be a count
		{2, "ch 61 (67) [73]", "61/67 73"}, // one too many is no size
		{3, "[sc, inc] 6 (7) [8] times. [18 (21) [24] sc]", "6/7/8 18/21/24"},
		{3, "3½ (4, 4½) in", "3/4/4"},
		{3, "2.5 (2.75, 3) cm", "2/2/3"},
	} {
		var got []string
		vocab := syntax.Standard()
		if test.sizes > 0 {
			vocab = vocab.Defining(nil, make([]string, test.sizes))
		}
		for _, tok := range syntax.Lex(test.text, vocab) {
			if tok.Kind == syntax.Number {
				got = append(got, number(tok.Values))
			}
		}
		if strings.Join(got, " ") != test.want {
			t.Errorf("%q in %d sizes: numbers are %q, want %q", test.text, test.sizes, got, test.want)
		}
	}
}

// TestSizesPlaces reads a list of sizes in a row of every kind of place.
func TestSizesPlaces(t *testing.T) {
	const head = "Sizes: S (M, L)\n"
	for _, test := range []struct{ line, want string }{
		{"Row 1: ch 8 (10, 12).", "row 1: chain 8/10/12"},
		{"Row 1: sc in next 8 (10, 12) sts.", "row 1: work sc each=1 next 8/10/12 st"},
		{"Row 1: sc 8 (10, 12).", "row 1: work sc each=1 next 8/10/12 st"},
		{"Row 1: 8 (10, 12) sc.", "row 1: work sc each=1 next 8/10/12 st"},
		{"Row 1: sk next 8 (10, 12) sts.", "row 1: skip next 8/10/12 st"},
		{"Row 1: [sc, inc] 8 (10, 12) times.", "row 1: repeat {work sc each=1 next 1 st, work inc each=1 next 1 st} 8/10/12 in all"},
		{"Row 1: *sc, inc; rep from * 8 (10, 12) more times.", "row 1: repeat {work sc each=1 next 1 st, work inc each=1 next 1 st} 8/10/12 more"},
		{"Row 1: sc in each st to last 8 (10, 12) sts.", "row 1: work sc each=1 each st to last 8/10/12 st"},
		{"Row 1: sc across. (8 (10, 12) sts)", "row 1: work sc each=1 each st to the end, count 8/10/12 st"},
		{"Row 1: sc across. [8 (10, 12)]", "row 1: work sc each=1 each st to the end, count 8/10/12"},
		{"Row 1: sc across — 8 (10, 12) sts.", "row 1: work sc each=1 each st to the end, count 8/10/12 st"},
		{"Row 8 (10, 12): sc across.", "row 8/10/12: work sc each=1 each st to the end"},
		{"Rows 2-8 (10, 12): sc across.", "row 2-8/10/12: work sc each=1 each st to the end"},
		{"Next 8 (10, 12) rows: sc across.", "next 8/10/12 row: work sc each=1 each st to the end"},
		{"Row 1: rep Rows 2 and 3 8 (10, 12) times.", "row 1: rows 2,3 8/10/12 more or in all"},
		{"Row 1: work even for 8 (10, 12) rows.", "row 1: even for 8/10/12"},
		{"Row 1: sc in next ch-8 (10, 12) sp.", "row 1: work sc each=1 next 1 ch-8/10/12 sp"},
	} {
		if got, want := outline(read(head+test.line+"\n")), "field sizes = S (M, L)\n"+test.want+"\n"; got != want {
			t.Errorf("%q is read as\n%s\nwant\n%s", test.line, got, want)
		}
	}
}

// TestSizeNames finds the sizes of a pattern in the header.
func TestSizeNames(t *testing.T) {
	for text, want := range map[string]string{
		"S (M, L, XL)":                    "S|M|L|XL",
		"S, M, L":                         "S|M|L",
		"child (adult)":                   "child|adult",
		"2 (4) 6 (8) 10 years":            "2|4|6|8|10 years",
		"S/M/L":                           "S|M|L",
		"S [M: L]":                        "S|M|L",
		"S (M) [L]":                       "S|M|L",
		"S (M, L) [XL] {2X}":              "S|M|L|XL|2X",
		"XS/S (M/L, XL/2X)":               "XS/S|M/L|XL/2X",
		"XS/S, M/L, XL/2X":                "XS/S|M/L|XL/2X",
		"S/M (L/XL)":                      "S/M|L/XL",
		"(S/M/L)":                         "S|M|L",
		"S/M":                             "S|M",
		"29 cm x 32 cm (11 x 12 in)":      "",
		"about 60 cm wide, blocked":       "",
		"about 9 cm / 3.5 in standing":    "",
		"46 cm round (12 cm deep)":        "",
		"18 in (46 cm)":                   "",
		"S    M    L":                     "S|M|L",
		"30 cm, 40 cm, 50 cm":             "30 cm|40 cm|50 cm",
		"20 x 25 cm (30 x 40 cm)":         "20 x 25 cm|30 x 40 cm",
		"one size":                        "",
		"twig 18 cm, with the haws 21 cm": "",
		"15 cm, 18 cm before edging":      "",
		"":                                "",
	} {
		f := read("Sizes: " + text + "\nRow 1: ch 8.\n")
		if got := strings.Join(f.Sizes, "|"); got != want {
			t.Errorf("Sizes: %s names %q, want %q", text, got, want)
		}
		if n := max(1, len(f.Sizes)); f.SizeCount() != n {
			t.Errorf("Sizes: %s counts as %d, want %d", text, f.SizeCount(), n)
		}
	}
}

// A note on how figures are given names no size.
func TestSizesPointedAt(t *testing.T) {
	for text, want := range map[string]string{
		"Directions are for small size. Changes for medium and large sizes are in parentheses.": "small|medium|large",
		"Figures are given for the smallest size first, with larger sizes in brackets.":         "",
		"Instructions are for the first size, with the other sizes in brackets.":                "",
		"Figures for the smallest size come first, those for the remaining sizes in brackets.":  "",
	} {
		if got := strings.Join(read(text+"\nRow 1: ch 8.\n").Sizes, "|"); got != want {
			t.Errorf("%s names %q, want %q", text, got, want)
		}
	}
}

// The size of thread or of a hook is none of a garment.
func TestOtherSizes(t *testing.T) {
	for text, want := range map[string]string{
		"Size 10 crochet thread (0) in haw red, 15 m":  "",
		"White crochet thread size 10, lace (0), 45 m": "",
		"size 10, lace (0)":                            "",
		"hook size G (4 mm)":                           "",
		"US size H-8 (5 mm) crochet hook":              "",
		"size 7/4.5 mm (or to obtain gauge) hook":      "",
		"a size E-4 (3.5 mm) hook":                     "",
		"Sizes are given as 1 (2, 3)":                  "1|2|3",
		"30 size 6 glass beads (red)":                  "",
		"Cotton jacket in sizes small (medium, large)": "small|medium|large",
	} {
		if got := strings.Join(read(text+"\nRow 1: ch 8.\n").Sizes, "|"); got != want {
			t.Errorf("%s names %q, want %q", text, got, want)
		}
	}
}

// Ages may be picked without their unit.
func TestAgesPicked(t *testing.T) {
	f := read("Sizes: 0-3 months (3-6 months, 6-12 months)\n\nHat\nRow 1: ch 8.\n\nSizes 3-6 and 6-12 months only\nRow 2: ch 9.\n")
	rows := rowsOf(f)
	if got := rows[len(rows)-1].Only; len(got) != 2 || got[0] != 1 || got[1] != 2 {
		t.Errorf("picks %v", got)
	}
}

// Sizes may be picked behind a row's number, where several may go by a word that they share.
func TestSizesPickedBehindANumber(t *testing.T) {
	const head = "To fit: Child (Adult Small, Adult Large)\n\nHat\n"
	for row, want := range map[string][]int{
		"Rnd 6, Child only: sc around.":            {0},
		"Rnd 6, Adult sizes: sc around.":           {1, 2},
		"Rnd 6, Child and Adult Small: sc around.": {0, 1},
		"Rnd 6, all sizes: sc around.":             nil,
		"Rnd 6, the thorn round: sc around.":       nil,
	} {
		rows := rowsOf(read(head + row + "\n"))
		if got := rows[len(rows)-1].Only; !slices.Equal(got, want) {
			t.Errorf("%s picks %v, want %v", row, got, want)
		}
	}
	if got := read("To fit: 81 (86, 91) cm bust\n\nHat\nRow 1: ch 8.\n").Sizes; got != nil {
		t.Errorf("a measure names sizes %q", got)
	}
}

// A list that has lost a value leaves the sizes of the others as they are.
func TestSizesInNumbers(t *testing.T) {
	list := strings.Repeat("Row 1: ch 10 (12:14).\n", 6)
	for text, want := range map[string]int{list: 3, list + "Row 2: ch 10 (12:14:16).\n": 3, "Row 1: ch 10 (12:14).\nRow 2: ch 1 (2:3:4).\n": 1} {
		if got := read(text).SizeCount(); got != want {
			t.Errorf("%s has %d sizes, want %d", text, got, want)
		}
	}
}

// Sizes that a line picks and the pattern does not have.
func TestUnknownSizes(t *testing.T) {
	for line, want := range map[string]string{
		"Sizes M and XL only: Rnd 10: sc around.": "XL",
		"**Size Extra Large only:**":              "Extra Large",
		"For sizes S, M and L only:":              "",
		"Size medium only":                        "",
		"Sizes Toddler & Small only:":             "Toddler",
		"The two largest sizes only:":             "",
		"Sizes first two only:":                   "",
	} {
		var got []string
		for _, at := range syntax.UnknownSizes(line, []string{"S", "M", "L"}) {
			got = append(got, line[at.Start:at.End])
		}
		if strings.Join(got, "|") != want {
			t.Errorf("%s: %q, want %q", line, got, want)
		}
	}
	if got := syntax.UnknownSizes("Size extra large only:", []string{"S", "XL"}); got != nil {
		t.Errorf("extra large is XL")
	}
}

// TestNumbers reads numbers in digits and in words.
func TestNumbers(t *testing.T) {
	for text, want := range map[string]int{
		"0": 0, "7": 7, "007": 7, "eleven": 11, "twenty": 20, "Forty": 40, "twenty-five": 25, "thirty three": 33, "ninety-nine": 99,
		"99999999999999999999": 100_000_000, "100000000": 100_000_000,
	} {
		tokens := syntax.Lex(text, syntax.Standard())
		if len(tokens) != 1 || tokens[0].Kind != syntax.Number || !tokens[0].Values.Equal(syntax.One(want)) {
			t.Errorf("%q is cut into %v, want the number %d", text, tokens, want)
		}
	}
	for text, want := range map[string]int{"2nd": 2, "second": 2, "3d": 3, "11th": 11, "21st": 21, "tenth": 10, "302nd": 302} {
		tokens := syntax.Lex(text, syntax.Standard())
		if len(tokens) != 1 || tokens[0].Kind != syntax.Ordinal || !tokens[0].Values.Equal(syntax.One(want)) {
			t.Errorf("%q is cut into %v, want the ordinal %d", text, tokens, want)
		}
	}
}

// TestNum holds the values of sizes to what Num promises.
func TestNum(t *testing.T) {
	list := syntax.Num{Vals: []int{5, syntax.None, 9}}
	for size, want := range []int{5, syntax.None, 9, 9, 9} {
		if got := list.At(size); got != want {
			t.Errorf("At(%d) is %d, want %d", size, got, want)
		}
	}
	var unwritten syntax.Num
	if unwritten.Written() || unwritten.At(2) != 0 || unwritten.Or(2, 7) != 7 || list.Or(0, 7) != 5 {
		t.Error("a number that is not written has a value, or one that is has none")
	}
	if syntax.One(5).PerSize() || !list.PerSize() || list.Equal(syntax.One(5)) || !list.Equal(syntax.Num{Vals: []int{5, -1, 9}}) {
		t.Error("one value and a list are taken for each other")
	}
}

// TestLabelRows lists the rows that a label names.
func TestLabelRows(t *testing.T) {
	for text, want := range map[string]string{
		"Row 3:": "3", "Rows 3-6:": "3/4/5/6", "Rows 4, 6-8 and 10:": "4/6/7/8/10", "Rows 8-6:": "8", "Next row:": "",
	} {
		rows := rowsOf(read("Row 1: ch 3, turn.\n" + text + " sc across\n"))
		label := rows[len(rows)-1].Label
		if got := number(syntax.Num{Vals: label.Each(0)}); got != want {
			t.Errorf("%s names rows %s, want %s", text, got, want)
		}
	}
	rows := rowsOf(read("Sizes: S (M, L)\nRow 1: ch 3, turn.\nRows 2-4 (5, 6): sc across\nRows 1-999999999: dc across\n"))
	if got := number(syntax.Num{Vals: rows[1].Label.Each(2)}); got != "2/3/4/5/6" {
		t.Errorf("in the third size the rows are %s, want 2/3/4/5/6", got)
	}
	if got := len(rows[2].Label.Each(0)); got > 20_000 {
		t.Errorf("a label names %d rows", got)
	}
}
