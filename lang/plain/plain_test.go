package plain_test

import (
	"cmp"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/plain"
	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// said is what a row's words were read as, a clause a line.
func said(t testing.TB, row string, d stitch.Dialect) string {
	t.Helper()
	file := syntax.Read(source.New("Row 1: ch 3, turn.\n" + row + "\n"))
	rows := file.Pieces[len(file.Pieces)-1].Rows
	var out []string
	for _, r := range plain.Of(rows[len(rows)-1], rows[len(rows)-1].Clauses, d) {
		out = append(out, r.String())
	}
	return strings.Join(out, "\n")
}

func TestClausesInPlainWords(t *testing.T) {
	for _, test := range []struct{ row, want string }{
		{"sc in next 5 sts", "5 sc, one in each of the next 5 stitches"},
		{"5 sc", "5 sc, one in each of the next 5 stitches"},
		{"2 dc in next st", "2 dc in the next stitch"},
		{"2 sc in each of next 3 sts", "2 sc in each of the next 3 stitches"},
		{"dc in each st across", "1 dc in each stitch to the end"},
		{"sc in each st to last 2 sts", "1 sc in each stitch before the last 2 stitches"},
		{"sc in 2nd ch from hook and in each ch across", "1 sc in the 2nd chain from the hook and in each chain to the end"},
		{"inc, dec, sc2tog, dc3tog over next 3 sts", "1 inc in the next stitch\n1 dec over the next 2 stitches\n1 sc2tog over the next 2 stitches\n1 dc3tog over the next 3 stitches"},
		{"sc in BLO of next 3 sts", "3 sc, one in each of the next 3 stitches, in the back loop only"},
		{"ch 3 (counts as dc)", "3 chains, counted as 1 dc"},
		{"ch 1 (does not count as a st), turn", "1 chain, not counted\nturn the work over"},
		{"sk next 2 sts", "skip the next 2 stitches"},
		{"sk ch-2 sp", "skip the next ch-2 space"},
		{"(2 dc, ch 2, 2 dc) in next ch-2 sp", "all in the next ch-2 space [2 dc; 2 chains; 2 dc]"},
		{"[sc 2, inc] 6 times", "6 times in all [2 sc, one in each of the next 2 stitches; 1 inc in the next stitch]"},
		{"*dc, ch 1, sk 1; rep from * across", "repeated to the end [1 dc in the next stitch; 1 chain; skip the next stitch]"},
		{"*dc in next 2 sts, ch 2; rep from * 5 more times", "once and then 5 times more [2 dc, one in each of the next 2 stitches; 2 chains]"},
		{"inc in every 3rd st", "1 inc in every 3rd stitch"},
		{"sc in odd sts", "1 sc in every 2nd stitch, from the first on"},
		{"sc and dc alternately across", "by turns, repeated to the end [1 sc in the next stitch; 1 dc in the next stitch]"},
		{"sc in first st, alternate sc and dc across", "1 sc in the first stitch\nby turns, from step 2 on, repeated to the end [1 sc in the next stitch; 1 dc in the next stitch]"},
		{"*sc 3, inc; rep from * to last 3 sts", "repeated as far as the last 3 stitches [3 sc, one in each of the next 3 stitches; 1 inc in the next stitch]"},
		{"*5 dc in next sp, sc in next sp; rep from * around, ending last rep with sl st in first sc", "repeated to the end [5 dc in the next space; 1 sc in the next space; the last time, in the place of its last step [1 sl st in the first sc]]"},
		{"sl st in first sc to join", "close the round in the first sc"},
		{"join with sl st in top of beg ch-3", "close the round in the top of the turning chain of 3"},
		{"do not turn", "do not turn"},
		{"fasten off, leaving a long tail", "fasten off, leaving a long tail"},
		{"with A", "go on with A"},
		{"join B with sl st in 9th st from beg of Row 1", "join B in the 9th stitch from the beginning of row 1"},
		{"change to B in last st", "go on with B in the last stitch"},
		{"place marker in last st", "mark the last stitch made"},
		{"make a magic ring, 6 sc in ring", "make a ring to work into\n6 sc in the ring"},
		{"rep Row 2", "work again row 2"},
		{"rep Rows 2 and 3 five more times", "work again rows 2 and 3, once and then 5 times more"},
		{"work even for 4 rows", "one stitch in each for 4 rows, without shaping"},
		{"branch A: ch 9, sc in 2nd ch from hook and in next 2 ch, return to stem", "begin a branch called A\n9 chains\n1 sc in the 2nd chain from the hook and in each of the next 2 chains\ncome back to the stem"},
		{"sc in each remaining ch of A", "1 sc in each of the remaining chains of A"},
		{"dc in 3rd ch of beg ch-6", "1 dc in the 3rd chain of the turning chain of 6"},
		{"sc between next 2 dc", "1 sc between the next 2 dc"},
		{"FPdc around post of next dc", "1 FPdc around the post of the next dc"},
		{"dec 6 sts evenly around", "6 stitches fewer, at places left to the maker"},
		{"3 sc in last ch, working along other side of ch, sc in next 9 ch", "3 sc in the last chain\ngo on along the other side\n1 sc in each of the next 9 chains"},
		{"in next sp work 2 dc, ch 2 and 2 dc", "all in the next space [2 dc; 2 chains; 2 dc]"},
		{"leave remaining 10 sts unworked", "leave the remaining 10 stitches unworked"},
		{"dc in marked st", "1 dc in the marked stitch"},
		{"hdc in third loop of each st around", "1 hdc in each stitch to the end, in the third loop"},
		{"sl st in 4th st of branch A", "1 sl st in the 4th stitch of A"},
		{"ch 48 (a multiple of 6 + 2)", "48 chains, a multiple of 6 plus 2"},
		{"(24 sts)", "the count it should come to: 24 stitches"},
		{"(12 dc, 4 ch-2 sps)", "the count it should come to: 12 dc and 4 ch-2 spaces"},
	} {
		assert.Equal(t, test.want, said(t, "Row 2: "+test.row, stitch.US), test.row)
	}
}

// overSteps are stitches worked together over as many as they take: naming
// those, or not, is one thing.
var overSteps = regexp.MustCompile(`(dec|\w*?(\d)tog) each=1 next (\d) st over`)

// meaning is what a wording means; what the normal form of the wording tables
// keeps apart, though it is one thing, is made one.
func meaning(normal string) string {
	if normal == "marker" {
		return "marker nth=1 of last 1"
	}
	return overSteps.ReplaceAllStringFunc(normal, func(step string) string {
		m := overSteps.FindStringSubmatch(step)
		if m[3] != cmp.Or(m[2], "2") {
			return step // over more, or fewer, than it takes
		}
		return m[1] + " each=1 next 1 st"
	})
}

// TestEveryWordingIsSaid goes through all accepted wordings: each is said in
// words, wordings of one meaning alike, and those of two meanings in two ways.
func TestEveryWordingIsSaid(t *testing.T) {
	files, err := filepath.Glob(filepath.Join("..", "..", "testdata", "phrasing", "*.tsv"))
	require.NoError(t, err)
	require.NotEmpty(t, files)
	means := map[string]string{}  // by what is said
	spoken := map[string]string{} // by meaning
	for _, name := range files {
		if filepath.Base(name) == "label.tsv" {
			continue // what a row is called is not said
		}
		text, err := os.ReadFile(name)
		require.NoError(t, err)
		for line := range strings.Lines(string(text)) {
			column := strings.Split(strings.TrimSpace(line), "\t")
			if len(column) != 3 || line[0] == '#' {
				continue
			}
			mean := meaning(column[2])
			got := said(t, "Row 2: "+column[1], stitch.US)
			assert.NotEmpty(t, got, column[1])
			if before, ok := spoken[mean]; ok {
				assert.Equal(t, before, got, "%q means %s", column[1], mean)
			}
			spoken[mean] = got
			if other, ok := means[got]; ok {
				assert.Equal(t, other, mean, "%q is said as %q", column[1], got)
			}
			means[got] = mean
		}
	}
}
