package syntax_test

import (
	"strings"
	"testing"

	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// plain is a pattern in the plainest type. Those of typography say the same.
const plain = `Pattern: Wren's nest
Hook: 3 mm

Special stitches
wren's foot: (2 dc, ch 2, 2 dc) in next st

Piece: Cup (make 2)
Row 1 (RS): Ch 12, sc in 2nd ch from hook and in each ch across, don't turn. (11 sc)
Row 2: [sc in next 2 sts, inc] x 3 - 12 sts
Row 3: *sc in next 3 sts, dec; rep from * across, wren's foot in last st
Fasten off.
`

// typography is what word processors, mail and web pages make of it.
var typography = []document{
	{"curly quotes", strings.ReplaceAll(plain, "'", "’"), ""},
	{"modifier apostrophes", strings.ReplaceAll(plain, "'", "ʼ"), ""},
	{"en dash", strings.ReplaceAll(plain, " - ", " – "), ""},
	{"em dash", strings.ReplaceAll(plain, " - ", "—"), ""},
	{"minus sign", strings.ReplaceAll(plain, " - ", " − "), ""},
	{"multiplication sign", strings.ReplaceAll(plain, " x 3", " × 3"), ""},
	{"multiplication sign, closed up", strings.ReplaceAll(plain, " x 3", "×3"), ""},
	{"non-breaking spaces", spaced("\u00a0"), ""},
	{"narrow non-breaking spaces", spaced("\u202f"), ""},
	{"two spaces", spaced("  "), ""},
	{"tabs", spaced("\t"), ""},
	{"zero-width spaces", strings.ReplaceAll(plain, ", ", ",\u200b "), ""},
	{"soft hyphens between words", strings.ReplaceAll(plain, ", ", ", \u00ad"), ""},
	{"byte-order mark", "\ufeff" + plain, ""},
	{"line ends of two bytes", strings.ReplaceAll(plain, "\n", "\r\n"), ""},
	{"line ends of old", strings.ReplaceAll(plain, "\n", "\r"), ""},
	{"byte-order mark and line ends of two bytes", "\ufeff" + strings.ReplaceAll(plain, "\n", "\r\n"), ""},
	{"no line end at the end", strings.TrimSuffix(plain, "\n"), ""},
	{"bullets", strings.ReplaceAll(plain, "Row ", "• Row "), ""},
	{"hyphens as bullets", strings.ReplaceAll(plain, "Row ", "- Row "), ""},
	{"bold labels", bold("**", "**"), ""},
	{"bold labels with the colon outside", bold("**", ""), ""},
	{"underlined labels", bold("__", "__"), ""},
	{"full-width brackets", strings.NewReplacer("[", "［", "]", "］").Replace(plain), ""},
	{"capitals", strings.NewReplacer("sc in", "SC IN", "rep from", "REP FROM", "Fasten off", "FASTEN OFF").Replace(plain), ""},
	{"blanks at line ends", strings.ReplaceAll(plain, "\n", "  \n"), ""},
	{"pictures", strings.ReplaceAll(plain, "Row ", "🌿 Row "), ""},
}

// spaced writes another blank between the words of instructions.
func spaced(blank string) string {
	head, body, _ := strings.Cut(plain, "Row 1")
	return head + strings.ReplaceAll("Row 1"+body, " ", blank)
}

// bold sets the labels of rows in marks; after the colon where shut is given.
func bold(open, shut string) string {
	out := strings.ReplaceAll(plain, "Row ", open+"Row ")
	for _, label := range []string{"(RS):", "2:", "3:"} {
		if shut == "" {
			out = strings.Replace(out, label, strings.TrimSuffix(label, ":")+open+":", 1)
			continue
		}
		out = strings.Replace(out, label, label+shut, 1)
	}
	return out
}

func TestTypography(t *testing.T) {
	want := outline(read(plain))
	for _, d := range typography {
		t.Run(d.name, func(t *testing.T) {
			if d.text == plain {
				t.Fatal("the text is the plain one")
			}
			if got := strings.ReplaceAll(outline(read(d.text)), "’", "'"); strings.ReplaceAll(got, "ʼ", "'") != want {
				t.Errorf("is read as\n%s\nwant\n%s", got, want)
			}
		})
	}
}

// TestPlain pins what the plain pattern says, so that the others are not held
// to a wrong reading.
func TestPlain(t *testing.T) {
	const want = `field pattern = Wren's nest
field hook = 3 mm
prose "Special stitches"
definition wren's foot = group {work dc each=2 here, chain 2, work dc each=2 here} in next 1 st
piece Cup make 2
row 1 RS: chain 12, work sc each=1 nth=2 ch from hook + each ch to the end, turn not, count 11 sc
row 2: repeat {work sc each=1 next 2 st, work inc each=1 next 1 st} 3 in all, count 12 st
row 3: repeat {work sc each=1 next 3 st, work dec each=1 next 1 st} to the end, work "wren's foot" each=1 last 1 st
no label: fasten off
`
	if got := outline(read(plain)); got != want {
		t.Errorf("is read as\n%s\nwant\n%s", got, want)
	}
}

// TestPositions holds spans to bytes, whatever stands before them.
func TestPositions(t *testing.T) {
	for _, before := range []string{"", "\ufeff", "é ", "🌿🌿 ", "a\u0301\u200b\u00a0", "漢字\t"} {
		text := before + "Row 1: sc in next 3 sts, wibble, dc in next st\n"
		rows := rowsOf(read(text))
		if len(rows) != 1 {
			// letters before a label make the line another one
			text = "// " + before + "\nRow 1: sc in next 3 sts, wibble, dc in next st\n"
			rows = rowsOf(read(text))
		}
		var got []string
		for _, c := range rows[0].Clauses {
			got = append(got, source.New(text).Slice(rows[0].Abs(c.Span)))
		}
		if want := "sc in next 3 sts|wibble|dc in next st"; strings.Join(got, "|") != want {
			t.Errorf("after %q: clauses are %q, want %q", before, got, want)
		}
	}
}

// TestFractions: a fraction is one number with what stands before it, and a
// measure never looks like stitches.
func TestFractions(t *testing.T) {
	for _, test := range []struct{ text, want string }{
		{"3½", "3½=3"}, {"3 ½", "3=3 ½=0"}, {"2.75", "2.75=2"}, {"½", "½=0"}, {"12", "12=12"},
	} {
		var got []string
		for _, tok := range syntax.Lex(test.text, syntax.Standard()) {
			if tok.Kind != syntax.Number {
				t.Errorf("%q: %v at %v is no number", test.text, tok.Kind, tok.Span)
			}
			got = append(got, test.text[tok.Span.Start:tok.Span.End]+"="+number(tok.Values))
		}
		if strings.Join(got, " ") != test.want {
			t.Errorf("%q is cut into %q, want %q", test.text, got, test.want)
		}
	}
}
