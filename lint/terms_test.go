package lint_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
	"stitchproof/lang/terms"
	"stitchproof/lint"
)

// ofRule are the findings of one rule.
func ofRule(text, rule string) []lint.Finding {
	var out []lint.Finding
	for _, f := range lint.Analyze(source.New(text)).Findings {
		if f.Rule == rule {
			out = append(out, f)
		}
	}
	return out
}

const (
	row   = "Row 1: Sc in 2nd ch from hook and in each ch across. (8 sc)\n"
	piece = "\nPiece: Band\nWith A, ch 9.\n"
)

// Where the rules about terms speak, and beside it where they are silent.
func TestTermsRules(t *testing.T) {
	list := "Abbreviations\nch = chain\nsc = single crochet\n"
	for _, test := range []struct {
		name, rule, pattern string
		messages            []string
	}{
		{"shown by sc", "terms-undeclared", piece + row + "Row 2: Dc in each st.\n",
			[]string{"the pattern does not say that its terms are US, as `Sc` shows; in UK terms `Dc` is another stitch"}},
		{"no doubtful name", "terms-undeclared", piece + row, nil},
		{"stated in a note", "terms-undeclared", "Notes\nUS terms.\n" + piece + row + "Row 2: Dc in each st.\n", nil},
		{"the pattern explains the stitch", "terms-undeclared", "Special stitches\ndc: yo, insert hook, draw up a loop.\n" + piece + row + "Row 2: Dc in each st.\n", nil},

		{"a stray htr", "terms-mixed", "Terms: US\n" + piece + row + "Row 2: Htr in each st.\n",
			[]string{"`Htr` is a name of UK terms only, and the pattern says that its terms are US"}},
		{"sc and htr", "terms-mixed", piece + row + "Row 2: Htr in each st.\n",
			[]string{"`Htr` is a name of UK terms only, and `Sc` one of US terms"}},
		{"both names told", "terms-mixed", piece + row + "Row 2: Hdc (UK htr) in each st.\n", nil},

		{"one pair once", "term-ambiguous", "Piece: Haw\nRnd 1: 12 dc in magic ring.\nRnd 2: Dc2tog 6 times, dc in next st.\n",
			[]string{"`dc` is 3 ch high in US terms (a UK tr) and 1 ch high in UK terms (a US sc), and nothing in the pattern shows which is meant"}},
		{"two pairs", "term-ambiguous", "Piece: Haw\nRnd 1: 12 dc in magic ring.\nRnd 2: Tr in each st.\n",
			[]string{"`dc` is 3 ch high in US terms (a UK tr) and 1 ch high in UK terms (a US sc), and nothing in the pattern shows which is meant",
				"`Tr` is 4 ch high in US terms (a UK dtr) and 3 ch high in UK terms (a US dc), and nothing in the pattern shows which is meant"}},
		{"settled by heights", "term-ambiguous", "Piece: Haw\nWith A, ch 9.\nRow 1: Dc in 4th ch from hook and in each ch across.\n", nil},

		{"letters changed over", "abbreviation-unknown", "Terms: US\n" + piece + row + "Row 2: 8 cs.\n",
			[]string{"no stitch is called `cs`; the nearest is `sc`"}},
		{"a name misspelled", "abbreviation-unknown", "Terms: US\n" + piece + row + "Row 2: Trebel in each st.\n",
			[]string{"no stitch is called `Trebel`; the nearest is `treble`"}},
		{"nothing is near", "abbreviation-unknown", "Terms: US\n" + piece + row + "Row 2: Bxq in each st, bxq in first st.\n",
			[]string{"no stitch is called `Bxq`, and the pattern does not explain it"}},
		{"explained", "abbreviation-unknown", "Terms: US\nSpecial stitches\nbxq: 2 sc in same st.\n" + piece + row + "Row 2: Bxq in each st.\n", nil},
		{"a yarn", "abbreviation-unknown", "Terms: US\n" + piece + row + "Row 2: With Bxq, sc in each st.\n", nil},
		{"English", "abbreviation-unknown", "Terms: US\n" + piece + row + "Row 2: Leaves in each st. Note the gaps in between.\n", nil},
		{"prose", "abbreviation-unknown", "Terms: US\n" + piece + row + "Note: Mr Hdgrw in each st says: cs in next row.\n", nil},

		{"not listed", "abbreviation-unlisted", "Terms: US\n" + list + piece + row + "Row 2: Sk first st, hdc in each st, dc2tog.\n",
			[]string{"the list of abbreviations does not explain `sk` and `st`", "`hdc` is not in the list of abbreviations", "`dc2tog` is not in the list of abbreviations"}},
		{"explained by its parts", "abbreviation-unlisted", "Terms: US\n" + list + "tog = together\ndc = double crochet\nst(s) = stitch(es)\n" + piece + row + "Row 2: Dc2tog over first 2 sts.\n", nil},
		{"explained for another number", "abbreviation-unlisted", "Terms: US\n" + list + "dc3tog = 3 dc together\nst(s) = stitch(es)\n" + piece + row + "Row 2: Dc2tog over first 2 sts.\n", []string{"the list of abbreviations does not explain `dc2tog`"}},
		{"explained with no mark", "abbreviation-unlisted", "Terms: US\nWhat I shorten: ch is chain, sc = single crochet; st = stitch; dc2tog insert hook in next st; rnd = round; ea each.\n" + piece + row + "Row 2: Dc2tog over first 2 sts.\n", nil},
		{"words in full", "abbreviation-unlisted", "Terms: US\n" + list + piece + row + "Row 2: Skip first stitch, half double crochet in each stitch.\n", nil},
		{"no list", "abbreviation-unlisted", "Terms: US\n" + piece + row + "Row 2: Sk first st.\n", nil},
		{"a stitch of its own is no list", "abbreviation-unlisted", "Terms: US\nSpecial stitches\nhaw: 2 sc in same st.\n" + piece + row + "Row 2: Haw in each st.\n", nil},

		{"never used", "abbreviation-unused", "Terms: US\n" + list + "tr = treble crochet\n" + piece + row, []string{"`tr` is explained and used nowhere"}},
		{"used in a note", "abbreviation-unused", "Terms: US\n" + list + "tr = treble crochet\n" + piece + row + "Note: no tr, ever.\n", nil},
		{"used within a word", "abbreviation-unused", "Terms: US\n" + list + "tog = together\nFP = front post\nst(s) = stitch(es)\n" + piece + row + "Row 2: FPdc around first st, sc2tog over next 2 sts.\n", nil},
	} {
		t.Run(test.rule+" "+test.name, func(t *testing.T) {
			var got []string
			for _, f := range ofRule(test.pattern, test.rule) {
				got = append(got, f.Message)
			}
			assert.Equal(t, test.messages, got)
		})
	}
}

// A stitch that the list lacks stops a maker; a word such as `rnd` hardly does.
func TestUnlistedStitchIsGraver(t *testing.T) {
	const list = "Terms: US\nAbbreviations\nch = chain\nsc = single crochet\nst(s) = stitch(es)\n\nPiece: Haw\n"
	for text, want := range map[string]lint.Severity{
		list + "Row 1: Ch 9.\nRow 2: Hdc in each st.\n":                           lint.Warning,
		list + "Row 1: Ch 9.\nRow 2: Sc in each st of the prev row to the end.\n": lint.Info,
	} {
		found := ofRule(text, "abbreviation-unlisted")
		require.Len(t, found, 1, text)
		assert.Equal(t, want, found[0].Severity, text)
	}
}

// The list is extended in its own manner: by the alphabet, with its own mark, in a
// column or in a paragraph.
func TestListsAreExtended(t *testing.T) {
	for list, want := range map[string]string{
		"Abbreviations\nch – chain\nst(s) – stitch(es)\n":                     "Abbreviations\nch – chain\nsc – single crochet\nst(s) – stitch(es)\n",
		"**Abbreviations**\n• ch = chain\n• st = stitch\n":                    "**Abbreviations**\n• ch = chain\n• sc = single crochet\n• st = stitch\n",
		"Abbreviations\r\nst: stitch\r\n":                                     "Abbreviations\r\nch: chain\r\nsc: single crochet\r\nst: stitch\r\n",
		"Abbreviations: st = stitch, ch = chain.\n":                           "Abbreviations: st = stitch, ch = chain, sc = single crochet.\n",
		"Abbreviations: ch: chain;\n  rep: repeat; st: stitch\n":              "Abbreviations: ch: chain;\n  rep: repeat; sc: single crochet; st: stitch\n",
		"Abbreviations: ch = chain, st = stitch; inc = increase, of any kind": "Abbreviations: ch = chain, st = stitch; inc = increase, of any kind, sc = single crochet",
	} {
		text := "Pattern: Haw\nTerms: US\n\n" + list + "\n" + "Piece: Band\nRow 1: With A, ch 9, rep, inc, sc in each st.\n"
		if !strings.Contains(list, "rep") {
			text = strings.Replace(text, "rep, ", "", 1)
		}
		if !strings.Contains(list, "inc") {
			text = strings.Replace(text, "inc, ", "", 1)
		}
		if strings.Contains(list, "\r\n") {
			text = strings.ReplaceAll(strings.ReplaceAll(text, "\r\n", "\n"), "\n", "\r\n")
		}
		require.NotEmpty(t, ofRule(text, "abbreviation-unlisted"), list)
		for found := ofRule(text, "abbreviation-unlisted"); len(found) > 0; found = found[1:] {
			next, err := source.New(text).Apply(ofRule(text, "abbreviation-unlisted")[0].Fix.Edits)
			require.NoError(t, err)
			text = next.String()
		}
		assert.Contains(t, text, want)
		assert.Empty(t, ofRule(text, "abbreviation-unlisted"), text)
		assert.Empty(t, ofRule(text, "abbreviation-unused"), text)
	}
}

// An entry that is taken out takes its separator with it.
func TestEntriesAreTakenOut(t *testing.T) {
	for list, want := range map[string]string{
		"Abbreviations\nsc = single crochet\ntr = treble\nst = stitch\n": "Abbreviations\nsc = single crochet\nst = stitch\n",
		"Abbreviations: sc = single crochet, tr = treble, st = stitch\n": "Abbreviations: sc = single crochet, st = stitch\n",
		"Abbreviations: sc = single crochet; st = stitch; tr = treble\n": "Abbreviations: sc = single crochet; st = stitch\n",
		"Abbreviations: tr = treble; sc = single crochet; st = stitch\n": "Abbreviations: sc = single crochet; st = stitch\n",
	} {
		text := "Terms: US\n" + list + "\nPiece: Band\nRow 1: 6 sc in first st.\n"
		found := ofRule(text, "abbreviation-unused")
		require.Len(t, found, 1, list)
		fixed, err := source.New(text).Apply(found[0].Fix.Edits)
		require.NoError(t, err)
		assert.Contains(t, fixed.String(), want)
	}
}

// A list written from use, in the terms of each dialect: nothing is unlisted or
// unused then, and the pattern is worked as it was.
func TestListOfAbbreviationsWritten(t *testing.T) {
	rule, ok := lint.Find("abbreviations-missing")
	require.True(t, ok)
	paths, err := filepath.Glob("../testdata/[pw]*/*.crochet") // patterns and worked examples
	require.NoError(t, err)
	written := 0
	for _, path := range paths {
		content, err := os.ReadFile(path)
		require.NoError(t, err)
		for _, d := range []stitch.Dialect{stitch.US, stitch.UK} {
			text := source.New(string(content))
			edits, err := terms.Rewrite(syntax.Read(text), d, d)
			if err != nil {
				continue // it mixes both
			}
			text, err = text.Apply(edits)
			require.NoError(t, err)
			before := rule.Try(text.String())
			for _, f := range of(before.Findings, rule.Name) {
				written++
				text, err = text.Apply(f.Fix.Edits)
				require.NoError(t, err)
				after := rule.Try(text.String())
				assert.True(t, fabric.Same(before.Fabric, after.Fabric), "%s in %v terms is worked otherwise", path, d)
				assert.Len(t, after.Findings, len(before.Findings)-1, "%s in %v terms:\n%s\n%s", path, d, listed(after.Findings), text)
			}
		}
	}
	assert.Greater(t, written, 100)
}
