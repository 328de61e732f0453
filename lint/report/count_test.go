package report

import (
	"bytes"
	"encoding/csv"
	"encoding/json"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

var update = flag.Bool("update", false, "write the golden files anew")

func countOf(file, text string) *Count { return Counted(file, lint.Analyze(source.New(text))) }

// written is a table in one of the formats.
func written(t *testing.T, c *Count, format string) string {
	t.Helper()
	f, ok := FindCountFormat(format)
	require.True(t, ok, format)
	var b bytes.Buffer
	require.NoError(t, f.Write(c, &b))
	return b.String()
}

// countOfPattern is the table of one of the example patterns.
func countOfPattern(t *testing.T, name string) *Count {
	t.Helper()
	text, err := os.ReadFile(filepath.Join("../../testdata/patterns", name+".crochet"))
	require.NoError(t, err)
	return countOf(name+".crochet", string(text))
}

// One pattern in sizes, one with branches, one in three colours, and a plain one.
func TestCountGolden(t *testing.T) {
	for _, name := range []string{"hedge-walker-hat", "hawthorn-twig", "bramble-stripe-cushion", "mizzle-scarf"} {
		table := countOfPattern(t, name)
		for _, format := range CountFormatNames() {
			t.Run(name+"."+format, func(t *testing.T) {
				path := filepath.Join("testdata", "count", name+"."+format)
				got := written(t, table, format)
				if *update {
					require.NoError(t, os.WriteFile(path, []byte(got), 0o644))
				}
				want, err := os.ReadFile(path)
				require.NoError(t, err)
				assert.Equal(t, string(want), got)
			})
		}
	}
}

// n is one number a size.
func n(values ...int) []*int {
	var out []*int
	for _, v := range values {
		out = append(out, &v)
	}
	return out
}

// circle is a flat circle: six more stitches in each round.
func circle(rounds int) string {
	var b strings.Builder
	b.WriteString("Pattern: Nest base\nTerms: US\n\nPiece: Base (make 3)\nRnd 1: 6 sc in magic ring. (6 sc)\nRnd 2: 2 sc in each st around. (12 sc)\n")
	for k := 3; k <= rounds; k++ {
		fmt.Fprintf(&b, "Rnd %d: [Sc in next %d sts, 2 sc in next st] 6 times. (%d sc)\n", k, k-2, 6*k)
	}
	b.WriteString("Fasten off.\n")
	return b.String()
}

func TestCircleTotals(t *testing.T) {
	for rounds := 2; rounds <= 20; rounds++ {
		table := countOf("nest.crochet", circle(rounds))
		piece := table.Pieces[0]
		for k := 1; k <= rounds; k++ {
			assert.Equal(t, n(6*k), piece.Rows[k-1].Made)
			assert.Equal(t, n(6*k*(k+1)/2), piece.Rows[k-1].Running, "after round %d", k)
		}
		all := 6 * rounds * (rounds + 1) / 2
		assert.Equal(t, n(all), piece.Total)
		assert.Equal(t, n(all), piece.Parts.counts["sc"])
		assert.Equal(t, n(3*all), table.Total, "three of it")
	}
}

// Rows of a line that stands for several count as often as they are worked, in
// each size, and in the yarn that each is worked in.
func TestScarfTotals(t *testing.T) {
	const scarf = `Pattern: Frost scarf
Terms: US
Sizes: S (M, L)
Yarn A: white, DK (3), 90 m
Yarn B: grey, DK (3), 90 m

Piece: Scarf (make 1 (2, 2))
With A, ch 21 (25, 31).
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (20 (24, 30) sc)
Rows 2-9: Ch 1, sc in each st across; turn. (20 (24, 30) sc)
Row 10: Ch 1, sc in each st across, change to B; turn. (20 (24, 30) sc)
Rows 11-16: Ch 1, sc in each st across; turn. (20 (24, 30) sc)
Row 17: Ch 1, sc in next 5 sts, change to A, sc in each st across; turn. (20 (24, 30) sc)
Fasten off.
`
	table := countOf("scarf.crochet", scarf)
	piece := table.Pieces[0]
	assert.Equal(t, n(9*20, 9*24, 9*30), piece.Rows[2].Running)
	assert.Equal(t, n(17*20, 17*24, 17*30), piece.Total)
	assert.Equal(t, n(6*20, 6*24, 6*30), piece.Rows[4].Yarn.counts["B"])
	assert.Equal(t, n(5, 5, 5), piece.Rows[5].Yarn.counts["B"])
	assert.Equal(t, n(15, 19, 25), piece.Rows[5].Yarn.counts["A"])
	assert.Equal(t, n(10*20+15, 10*24+19, 10*30+25), piece.Yarn.counts["A"])
	assert.Equal(t, n(17*20, 2*17*24, 2*17*30), table.Total)
	assert.Equal(t, n(6*20+5, 2*(6*24+5), 2*(6*30+5)), table.Yarn.counts["B"])
}

// Of a group, a row and the totals count the stitches that it is made of.
func TestTotalsOfGroups(t *testing.T) {
	const frond = `Pattern: Frond
Terms: US

Piece: Frond
Ch 11.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (10 sc)
Row 2: Ch 3 (counts as dc), V-st in next st, dc in each of next 8 sts. (11 dc)
Fasten off.
`
	table := countOf("frond.crochet", frond)
	assert.Equal(t, n(11), table.Pieces[0].Rows[2].Parts.counts["dc"])
	assert.Equal(t, map[string][]*int{"sc": n(10), "dc": n(11)}, table.Pieces[0].Parts.counts)
}

// A row that makes something other than it states, or that cannot be counted,
// leaves what follows it open in its size only.
func TestUnknownTotals(t *testing.T) {
	table := countOf("cuff.crochet", mitten)
	piece := table.Pieces[0]
	at := func(row, size int) *int { return piece.Rows[row].Running[size] }
	assert.Equal(t, 20, *at(1, 0))
	assert.Equal(t, 38, *at(2, 0))
	assert.Nil(t, at(2, 1), "states 20 and makes 20 or 21: one of them is wrong")
	assert.Nil(t, at(3, 0), "not understood")
	for size := range table.Sizes {
		assert.Nil(t, piece.Total[size])
		assert.Nil(t, table.Total[size])
		assert.Nil(t, table.Parts.counts["sc"][size])
	}
}

// Of rows that one line stands for work stops at the first that goes wrong, so that how
// many stitches they come to is not known.
func TestTotalOfRowsThatGoWrong(t *testing.T) {
	const mat = "Terms: US\n\nPiece: Mat\nCh 11.\nRow 1: Sc in 2nd ch from hook and in each ch across; turn. (10 sc)\n"
	one := countOf("mat.crochet", mat+"Row 2: Ch 1, sc in next 8 sts; turn.\n").Pieces[0]
	assert.Equal(t, n(18), one.Total)
	several := countOf("mat.crochet", mat+"Rows 2-4: Ch 1, sc in next 8 sts; turn.\n").Pieces[0]
	assert.Equal(t, n(10), several.Rows[1].Running)
	assert.Nil(t, several.Rows[2].Running[0])
	assert.Nil(t, several.Total[0])
}

// Rounds that go on with the numbers of another piece are counted once.
func TestTotalOfPieceThatGoesOn(t *testing.T) {
	text := strings.TrimSuffix(circle(4), "Fasten off.\n") + "\nPiece: Wall\nRnds 5-7: Sc in each st around. (24 sc)\nFasten off.\n"
	table := countOf("nest.crochet", text)
	require.Len(t, table.Pieces, 2)
	assert.Equal(t, n(24), table.Pieces[1].Rows[0].Made)
	assert.Equal(t, n(60), table.Pieces[0].Total)
	assert.Equal(t, n(72), table.Pieces[1].Total)
	assert.Equal(t, n(3*60+72), table.Total)
}

// Where every other row is told in one line, those rows lie between the others.
func TestTotalWithEveryOtherRow(t *testing.T) {
	const mat = `Pattern: Mat
Terms: US

Piece: Mat
Ch 11.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (10 sc)
Row 2 and all even rows: Ch 1, sc in each st across; turn. (10 sc)
Row 3: Ch 1, sc in each st across; turn. (10 sc)
Row 5: Ch 1, sc in each st across; turn. (10 sc)
%s
Fasten off.
`
	whole := countOf("mat.crochet", fmt.Sprintf(mat, "Row 7: Ch 1, sc in each st across; turn. (10 sc)")).Pieces[0]
	assert.Equal(t, n(70), whole.Total)
	assert.Equal(t, n(3), whole.Rows[2].Repeats)
	open := countOf("mat.crochet", fmt.Sprintf(mat, "Rows 7 and 9: Ch 1, sc in each st across; turn. (10 sc)")).Pieces[0]
	assert.Equal(t, n(90), open.Rows[5].Running)
	assert.Equal(t, n(90), open.Total)
}

// In every example pattern, a line of one row adds what it makes (and, where
// every other row is told elsewhere, that of the row before it), and the kinds,
// the yarns and the rows come to the same.
func TestTotalsAddUp(t *testing.T) {
	paths, err := filepath.Glob("../../testdata/patterns/*.crochet")
	require.NoError(t, err)
	checked := 0
	for _, path := range paths {
		name := strings.TrimSuffix(filepath.Base(path), ".crochet")
		for _, piece := range countOfPattern(t, name).Pieces {
			for size, total := range piece.Total {
				if total == nil {
					continue
				}
				checked++
				before, between := 0, 0
				for _, row := range piece.Rows {
					if r := row.Repeats[size]; row.Works && r != nil && *r == 1 {
						assert.Contains(t, []int{*row.Made[size], *row.Made[size] + between}, *row.Running[size]-before, "%s:%d", name, row.Line)
					}
					if strings.Contains(row.Label, "all even") {
						between = *row.Made[size]
					}
					before = *row.Running[size]
				}
				assert.Equal(t, *total, before, "%s, %s: rows", name, piece.Name)
				assert.Equal(t, *total, sumOf(piece.Parts, size), "%s, %s: kinds", name, piece.Name)
				assert.Equal(t, *total, sumOf(piece.Yarn, size), "%s, %s: yarns", name, piece.Name)
			}
		}
	}
	assert.Greater(t, checked, len(paths)/2, "totals that are known")
}

// sumOf adds up stitches of all names; spaces are none.
func sumOf(a Amounts, size int) int {
	sum := 0
	for name, counts := range a.counts {
		if !strings.HasPrefix(name, "ch-") && name != "picot" { // neither is a stitch
			sum += *counts[size]
		}
	}
	return sum
}

const mitten = `Pattern: Hedge mitten
Terms: US
Sizes: S (M, L)

Piece: Cuff (make 2)
With A, ch 21 (23, 25).
Row 1 (RS): Sc in 2nd ch from hook and in each ch across; turn. (20 (22, 24) sc)
Row 2: Ch 1, sc2tog over next 2 sts, sc in each st to last 2 sts, sc2tog over next 2 sts; turn. (18 (21, 20) sts)
Row 3: Ch 1, zc in each st across. (18 (20, 22) sts)
Fasten off.
`

func TestCount(t *testing.T) {
	table := countOf("cuff.crochet", mitten)
	assert.Equal(t, "cuff.crochet", table.File)
	assert.Equal(t, []string{"S", "M", "L"}, table.Sizes)
	require.Len(t, table.Pieces, 1)
	piece := table.Pieces[0]
	assert.Equal(t, "Cuff", piece.Name)
	assert.Equal(t, 5, piece.Line)
	assert.Equal(t, []int{2, 2, 2}, piece.Make)
	require.Len(t, piece.Rows, 5, "every instruction line, those without a label as well")

	yes, no := true, false
	first, second, third := piece.Rows[1], piece.Rows[2], piece.Rows[3]
	assert.Equal(t, "Row 1 (RS)", first.Label)
	assert.Equal(t, 7, first.Line)
	assert.Equal(t, n(20, 22, 24), first.Made)
	assert.Equal(t, []int{20, 22, 24}, first.Stated)
	assert.Equal(t, &yes, first.Agrees)
	assert.Equal(t, map[string][]*int{"sc": n(20, 22, 24)}, first.Parts.counts)
	assert.Equal(t, map[string][]*int{"A": n(20, 22, 24)}, first.Yarn.counts, "as the pattern writes it")
	assert.Equal(t, n(18, 20, 22), second.Made)
	assert.Equal(t, n(-2, -2, -2), second.Change)
	assert.Equal(t, &no, second.Agrees)
	assert.Equal(t, []*bool{&yes, &no, &no}, second.Agreement)
	assert.Equal(t, []*int{nil, nil, nil}, third.Made, "what is not known is nil")
	assert.Nil(t, third.Agrees)
	assert.Equal(t, []*bool{nil, nil, nil}, third.Agreement)
	assert.Equal(t, []string{"zc in each st across"}, third.Unread)
	assert.Empty(t, piece.Rows[4].Label)
	assert.False(t, piece.Rows[4].Works)
}

// The fields that other programs rely on.
func TestCountJSONFields(t *testing.T) {
	text := written(t, countOf("cuff.crochet", mitten), "json")
	var got struct {
		File   string
		Sizes  []string
		Pieces []struct {
			Name string
			Line int
			Rows []map[string]any
		}
	}
	require.NoError(t, json.Unmarshal([]byte(text), &got))
	require.Len(t, got.Pieces, 1)
	require.Len(t, got.Pieces[0].Rows, 5)
	row := got.Pieces[0].Rows[1]
	assert.Equal(t, "Row 1 (RS)", row["label"])
	assert.Equal(t, 7.0, row["line"])
	assert.Equal(t, []any{20.0, 22.0, 24.0}, row["made"])
	assert.Equal(t, []any{20.0, 22.0, 24.0}, row["stated"])
	assert.Equal(t, true, row["agrees"])
	assert.Equal(t, map[string]any{"sc": []any{20.0, 22.0, 24.0}}, row["parts"])
	assert.Equal(t, []any{}, row["unread"])
	assert.Equal(t, []any{}, row["branches"])
	end := got.Pieces[0].Rows[4]
	assert.Equal(t, "", end["label"])
	assert.Contains(t, end, "stated")
	assert.Nil(t, end["stated"])
}

func TestCountText(t *testing.T) {
	text := written(t, countOf("cuff.crochet", mitten), "text")
	lines := strings.Split(text, "\n")
	require.Greater(t, len(lines), 8)
	assert.Equal(t, []string{"cuff.crochet", "sizes S (M, L)", "", "Cuff, make 2"}, lines[:4])
	for _, want := range []string{
		"     7  Row 1 (RS)  S        1   20          20 sc            A          20  20 sc   yes      RS\n",
		"                    M        1   20      -2  2 sc2tog, 18 sc  A           ?  21      DIFFERS  WS\n",
		"          not understood: zc in each st across\n",
		"\n  total ? sts\n",
	} {
		assert.Contains(t, text, want)
	}
}

// A row is named in the table also where nothing of it could be worked.
func TestCountTextOfRowWithoutStitches(t *testing.T) {
	text := written(t, countOf("frond.crochet", "Terms: US\n\nPiece: Frond\nRnd 1: 6 sc in magic ring. (6 sc)\nRnd 2: Two rounds of sc.\n"), "text")
	assert.Contains(t, text, "\n     5  Rnd 2\n")
}

func TestBranchLedger(t *testing.T) {
	rule, ok := lint.Find("branch-chain-left")
	require.True(t, ok)
	branches := countOf("twig.crochet", rule.Bad).Pieces[0].Rows[1].Branches
	assert.Contains(t, branches, CountBranch{Name: "A", Parent: "stem", Depth: 1, Chains: []int{6}, Skipped: []int{1}, Worked: []int{3}, Left: []int{2}})
}

// Branches without names are told apart by where they leave; the stem is told
// as it is at the end of the row.
func TestBranchTree(t *testing.T) {
	const twig = `Pattern: Twig
Terms: US

Piece: Twig
Ch 21.
Row 1: Sc in 2nd ch from hook and in next 4 ch,
  branch: ch 6, sc in 2nd ch from hook and in next ch,
    branch B: ch 4, sc in 2nd ch from hook and in next 2 ch, return,
  sc in next 3 ch, return to stem,
  sc in next 5 ch,
  branch: ch 3, sc in 2nd ch from hook and in next ch, return,
  sc in each rem ch. (30 sc)
Fasten off.
`
	row := countOf("twig.crochet", twig).Pieces[0].Rows[1]
	assert.Equal(t, []string{
		"stem                 21 ch, 1 skipped, 20 worked, 0 left",
		"├─ branch (no name)  6 ch, 1 skipped, 5 worked, 0 left",
		"│  └─ branch B       4 ch, 1 skipped, 3 worked, 0 left",
		"└─ branch (no name)  3 ch, 1 skipped, 2 worked, 0 left",
	}, drawn(row.Branches))
	assert.Equal(t, "stem: 21 ch, 1 skipped, 20 worked, 0 left; branch (no name) from stem: 6 ch, 1 skipped, 5 worked, 0 left; "+
		"branch B from (no name): 4 ch, 1 skipped, 3 worked, 0 left; branch (no name) from stem: 3 ch, 1 skipped, 2 worked, 0 left",
		ledgers(&row, 0))
}

// In a pattern in sizes the ledger has one value a size; a spreadsheet gets the
// one of its line.
func TestBranchTreeInSizes(t *testing.T) {
	const twig = `Pattern: Twig
Terms: US
Sizes: S (M)

Piece: Twig
Ch 11 (13).
Row 1: Sc in 2nd ch from hook and in next 4 ch, branch A: ch 6 (8), sc in 2nd ch from hook and in next 4 (5) ch,
  return to stem, sc in next 5 ch.
Fasten off.
`
	table := countOf("twig.crochet", twig)
	row := table.Pieces[0].Rows[1]
	assert.Equal(t, []string{
		"stem         11 (13) ch, 1 skipped, 10 worked, 0 (2) left",
		"└─ branch A  6 (8) ch, 1 skipped, 5 (6) worked, 0 (1) left",
	}, drawn(row.Branches))
	assert.Equal(t, "stem: 11 ch, 1 skipped, 10 worked, 0 left; branch A from stem: 6 ch, 1 skipped, 5 worked, 0 left", ledgers(&row, 0))
	assert.Equal(t, "stem: 13 ch, 1 skipped, 10 worked, 2 left; branch A from stem: 8 ch, 1 skipped, 6 worked, 1 left", ledgers(&row, 1))
	assert.Contains(t, written(t, table, "text"), "└─ branch A  6 (8) ch, 1 skipped, 5 (6) worked, 0 (1) left\n")
	assert.Contains(t, written(t, table, "markdown"), "The branches of line 7, Row 1:\n\n- stem: 11 (13) ch,")
	assert.Contains(t, strings.Join(strings.Fields(written(t, table, "json")), ""), `"chains":[6,8],"skipped":[1,1],"worked":[5,6],"left":[0,1]`)
}

// A branch that no word announces is home with the clause that works its last
// chain, and is told as it is then.
func TestBranchTreeOfUnmarked(t *testing.T) {
	const twig = `Pattern: Twig
Terms: US

Piece: Twig
Ch 11.
Row 1: Sc in 2nd ch from hook and in next 4 ch, ch 6, sc in 2nd ch from hook, sc in next 4 ch, sc in next 5 ch.
Fasten off.
`
	assert.Equal(t, []string{
		"stem                 11 ch, 1 skipped, 10 worked, 0 left",
		"└─ branch (no name)  6 ch, 1 skipped, 5 worked, 0 left",
	}, drawn(countOf("twig.crochet", twig).Pieces[0].Rows[1].Branches))
}

func TestHarmless(t *testing.T) {
	tests := []struct{ cell, want string }{
		{"12 dc, 4 ch-2 sp", "12 dc, 4 ch-2 sp"},
		{"-6", "-6"}, {"+6", "+6"}, {"", ""}, {"?", "?"},
		{`=HYPERLINK("x")`, `'=HYPERLINK("x")`},
		{"+1+cmd|x", "'+1+cmd|x"}, {"-1+1", "'-1+1"}, {"- leaf", "'- leaf"}, {"@SUM(A1)", "'@SUM(A1)"},
		{" =1", "' =1"}, {"＝1", "'＝1"}, {"a=1", "a=1"},
	}
	for _, test := range tests {
		assert.Equal(t, test.want, harmless(test.cell), test.cell)
	}
}

// Words of a pattern do no harm in a spreadsheet, a page or a terminal.
func TestCountOfHostileWords(t *testing.T) {
	const text = "Pattern: x\nTerms: US\n\nPiece: =1+1 | *\"a\", b\nRnd 1: 6 sc in magic ring. (6 sc)\nRnd 2: =zc\x1b[31m | <b>, @x. (6 sc)\n"
	table := countOf("a|b.crochet", text)
	require.Equal(t, `=1+1 | *"a", b`, table.Pieces[0].Name)
	lines, err := csv.NewReader(strings.NewReader(written(t, table, "csv"))).ReadAll()
	require.NoError(t, err)
	assert.Equal(t, `'=1+1 | *"a", b`, lines[1][0])
	for _, line := range lines {
		for _, cell := range line {
			assert.Equal(t, cell, harmless(cell))
		}
	}
	page := written(t, table, "markdown")
	assert.Contains(t, page, `# a\|b.crochet`+"\n")
	assert.Contains(t, page, `## =1+1 \| \*"a", b`+"\n")
	assert.NotContains(t, page, "<b>")
	for _, format := range []string{"text", "csv", "markdown"} {
		assert.NotContains(t, written(t, table, format), "\x1b", format)
	}
}

// TestShape holds what is told of a row's bends: in words where it bends, as
// degrees for programs, null where it is not known.
func TestShape(t *testing.T) {
	const sprig = `Pattern: Sprig
Terms: US
Sizes: S (M)
Gauge: 20 sc and 20 rows = 10 cm

Piece: Sprig
Ch 12.
Row 1: Sc in 2nd ch from hook, 2 sc in each of next 2 (3) ch, branch Thorn: ch 5, sc in 2nd ch from hook, sc in next 3 ch, return to stem, sc in each ch across; turn.
Row 2: Ch 1, 20 sc evenly across.
Fasten off.
`
	table := countOf("sprig.crochet", sprig)
	n := func(i int) *int { return &i }
	assert.Equal(t, []CountStrip{
		{Of: "stem", Along: "chain", Turn: []*int{n(115), n(172)}},
		{Of: "Thorn", Along: "chain", Turn: []*int{n(0), n(0)}},
	}, table.Pieces[0].Rows[1].Shape)
	assert.Empty(t, table.Pieces[0].Rows[2].Shape)
	text := written(t, table, "text")
	assert.Contains(t, text, "shape: size S the stem bends about 115° towards the chain, at sts 2 to 5; size M the stem bends about 170° towards the chain, at sts 2 to 7\n")
	assert.Equal(t, 1, strings.Count(text, "shape: "), "only what bends is said")
}
