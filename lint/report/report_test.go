package report

import (
	"bytes"
	"errors"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lint"
)

// found makes the analysis of a text in which one finding covers some words.
func found(t *testing.T, text, words string, f lint.Finding) Checked {
	t.Helper()
	at := strings.Index(text, words)
	require.GreaterOrEqual(t, at, 0)
	f.Span = source.Span{Start: at, End: at + len(words)}
	return Checked{File: "haw.crochet", Text: source.New(text), Findings: []lint.Finding{f}}
}

func textOfReport(t *testing.T, colour bool, files ...Checked) string {
	t.Helper()
	var b bytes.Buffer
	require.NoError(t, Text(&b, files, Options{Colour: colour}))
	return b.String()
}

func TestText(t *testing.T) {
	c := found(t, "Rnd 1: 6 sc in ring. (6)\nRnd 2: 2 sc in each st. (14)\n", "(14)", lint.Finding{
		Rule: "count-mismatch", Severity: lint.Error, Message: "makes 12 sts, says 14",
		Related: []lint.Related{{Span: source.Span{Start: 0, End: 5}, Message: "the row below makes 6 sts"}},
		Fix:     &lint.Fix{Title: "write 12 as the count"},
	})
	assert.Equal(t, `haw.crochet:2:25: error: makes 12 sts, says 14 [count-mismatch]
    Rnd 2: 2 sc in each st. (14)
                            ^^^^
    line 1: the row below makes 6 sts
    perhaps: write 12 as the count

1 error in 1 file
`, textOfReport(t, false, c))
}

func TestTextOfNothing(t *testing.T) {
	clean := Checked{File: "nest.crochet", Text: source.New("")}
	assert.Equal(t, "nothing found in 2 files\n", textOfReport(t, false, clean, clean))
	c := found(t, "Ch 5.", "5", lint.Finding{Rule: "x", Severity: lint.Info, Message: "m"})
	assert.Contains(t, textOfReport(t, false, clean, c), "\n1 info in 1 file, nothing in 1 other\n")
}

func TestColour(t *testing.T) {
	c := found(t, "Ch 5.", "5", lint.Finding{Rule: "x", Severity: lint.Caution, Message: "m"})
	assert.Contains(t, textOfReport(t, true, c), "\x1b[1;35mcaution\x1b[0m: m \x1b[2m[x]\x1b[0m\n")
	assert.NotContains(t, textOfReport(t, false, c), "\x1b")
}

func TestExcerpt(t *testing.T) {
	long := strings.Repeat("sc in next st, ", 20) + "zc in next st, " + strings.Repeat("sc in next st, ", 20)
	tests := []struct{ name, line, words, shown, under string }{
		{"plain", "Row 1: zc 3.", "zc", "Row 1: zc 3.", "       ^^"},
		{"wide", "編み図: zc 3.", "zc", "編み図: zc 3.", "        ^^"},
		{"wide place", "a 編み b", "編み", "a 編み b", "  ^^^^"},
		{"combining", "appliqué: zc.", "zc", "appliqué: zc.", "          ^^"},
		{"tab", "a\tzc", "zc", "a   zc", "    ^^"},
		{"tab in the place", "zc\t3 x", "zc\t3", "zc  3 x", "^^^^^"},
		{"control", "a\x1b[31m zc", "zc", "a\uFFFD[31m zc", "       ^^"},
		{"two lines", "Row 1: zc\n  3.", "zc\n  3", "Row 1: zc", "       ^^"},
		{"line end", "Row 1\nRow 2", "\n", "Row 1", "     ^"},
		{"crlf", "Row 1: zc\r\nx", "zc", "Row 1: zc", "       ^^"},
		{"empty line", "", "", "", "^"},
		{
			"long", long, "zc",
			"… n next st, sc in next st, zc in next st, " + strings.Repeat("sc in next st, ", 4) + "sc in …",
			"  " + strings.Repeat(" ", leadIn-2) + "^^",
		},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			at := strings.Index(test.line, test.words)
			line, under := excerpt(source.New(test.line), source.Span{Start: at, End: at + len(test.words)}, 0)
			if test.name == "long" {
				assert.LessOrEqual(t, textWidth(line), excerptWidth+4)
				assert.Equal(t, strings.Index(line, "zc")-len("…")+1, strings.Index(under, "^"))
				return
			}
			assert.Equal(t, test.shown, line)
			assert.Equal(t, test.under, under)
		})
	}
}

func TestJSON(t *testing.T) {
	c := found(t, "Größe\nRow 1: äöü zc. (14)\n", "zc", lint.Finding{
		Rule: "count-unknown", Severity: lint.Info, Message: "`zc` is not understood <here>", Size: "M and L",
		Related:      []lint.Related{{Span: source.Span{Start: 0, End: len("Größe")}, Message: "there"}},
		Fix:          &lint.Fix{Title: "write sc", Safe: true, Edits: []source.Edit{{Span: source.Span{Start: 0, End: 0}, New: "sc"}}},
		Alternatives: []lint.Fix{{Title: "leave it out"}},
	})
	var b bytes.Buffer
	require.NoError(t, JSON(&b, []Checked{c}, Options{}))
	assert.JSONEq(t, `{"files": [{"file": "haw.crochet", "findings": [{
		"rule": "count-unknown", "severity": "info", "line": 2, "column": 12, "endLine": 2, "endColumn": 14,
		"message": "`+"`zc`"+` is not understood <here>", "size": "M and L",
		"related": [{"line": 1, "column": 1, "endLine": 1, "endColumn": 6, "message": "there"}],
		"fix": {"title": "write sc", "safe": true, "edits": [{"line": 1, "column": 1, "endLine": 1, "endColumn": 1, "new": "sc"}]},
		"alternatives": [{"title": "leave it out", "safe": false, "edits": []}],
		"fingerprint": "`+lint.Fingerprints(c.Text, c.Findings)[0]+`"
	}]}]}`, b.String())
	assert.Contains(t, b.String(), "<here>", "signs are not escaped")
}

func TestJSONOfNothing(t *testing.T) {
	var b bytes.Buffer
	require.NoError(t, JSON(&b, []Checked{{File: "nest.crochet", Text: source.New("")}}, Options{}))
	assert.JSONEq(t, `{"files": [{"file": "nest.crochet", "findings": []}]}`, b.String())
}

// full is a writer on which nothing can be written.
type full struct{}

func (full) Write([]byte) (int, error) { return 0, errors.New("no room") }

func TestWriteErrors(t *testing.T) {
	files := []Checked{found(t, "Ch 5.", "5", lint.Finding{Rule: "x", Message: "m"})}
	a := lint.Analyze(source.New("Ch 5."))
	rule := lint.Rules()[0]
	assert.ErrorContains(t, Text(full{}, files, Options{}), "no room")
	assert.ErrorContains(t, JSON(full{}, files, Options{}), "no room")
	for _, f := range CountFormats {
		assert.ErrorContains(t, f.Write(Counted("x", a), full{}), "no room", f.Name)
	}
	assert.ErrorContains(t, ExplainRule(full{}, rule), "no room")
}

func TestExplainStitch(t *testing.T) {
	explained := func(word string) string {
		m, ok := stitch.Find(word)
		require.True(t, ok)
		var b bytes.Buffer
		require.NoError(t, ExplainStitch(&b, word, m))
		return b.String()
	}
	dc := explained("dc")
	assert.Contains(t, dc, "dc is one stitch in US terms and another in UK terms")
	assert.Contains(t, dc, "\nin US terms double crochet (dc), in UK terms treble")
	assert.Contains(t, dc, "\nin UK terms double crochet (dc), in US terms single crochet (sc)\n")
	assert.Contains(t, dc, "    turning chain: ch 3, which counts as a stitch\n")
	htr := explained("htr")
	assert.NotContains(t, htr, "one stitch in US terms")
	assert.Contains(t, htr, "in US terms half double crochet (hdc)")
	assert.Contains(t, htr, "uses 1 st, makes 1 st\n")
}

func TestExplainRule(t *testing.T) {
	rule, ok := lint.Find("turning-chain-height")
	require.True(t, ok)
	var b bytes.Buffer
	require.NoError(t, ExplainRule(&b, rule))
	assert.Contains(t, b.String(), "turning-chain-height (warning, order)\n")
	assert.Contains(t, b.String(), "\n    Row 2: Ch 4, sc in each st across; turn. (12 sc)\n")
	assert.Contains(t, b.String(), "Where this comes from:\n- 1 chain for sc")
	for line := range strings.Lines(b.String()) {
		assert.LessOrEqual(t, textWidth(strings.TrimRight(line, "\n")), 120)
	}
}
