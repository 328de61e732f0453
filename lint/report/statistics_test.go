package report

import (
	"bytes"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

func checked(texts ...string) []Checked {
	var out []Checked
	for _, text := range texts {
		out = append(out, CheckedOf("haw.crochet", lint.Analyze(source.New(text))))
	}
	return out
}

const (
	statisticsHaw = `Terms: US

Piece: Haw
Rnd 1: 6 sc in magic ring; sl st in first sc to join. (6 sc)
Rnd 2: Ch 1, 2 sc in each st around; sl st in first sc to join. (14 sc)
Rnd 3: Ch 1, wibble wobble, sc in each st around; sl st in first sc to join. (15 sc)
Fasten off.
`
	statisticsSizes = `Terms: US
Sizes: S (M)

Piece: Wren
Ch 8 (10).
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (7 (8) sc)
Fasten off.
`
)

func TestStatistics(t *testing.T) {
	s := StatisticsOf(checked(statisticsHaw, statisticsSizes, "The hedge is bare.\n"))
	assert.Equal(t, 3, s.Files)
	assert.Equal(t, StatisticsLines{All: 7, Whole: 6, Unread: 1}, s.Lines)
	assert.Equal(t, StatedCounts{All: 4, Agree: 1, Disagree: 2, Unknown: 1}, s.Counts, "right in one size and wrong in another is wrong")
	assert.Equal(t, 3, s.Findings)
	assert.Equal(t, []RuleFindings{{"count-mismatch", 2}, {"count-unknown", 1}}, s.Rules, "the most frequent first")
}

// TestStatisticsAgreeWithFindings: every finding of the files is in the sum,
// under its rule.
func TestStatisticsAgreeWithFindings(t *testing.T) {
	files := checked(statisticsHaw, statisticsSizes, statisticsHaw)
	want := map[string]int{}
	for _, f := range files {
		for _, finding := range f.Findings {
			want[finding.Rule]++
		}
	}
	s := StatisticsOf(files)
	got, sum := map[string]int{}, 0
	for _, r := range s.Rules {
		got[r.Rule] = r.Findings
		sum += r.Findings
	}
	assert.Equal(t, want, got)
	assert.Equal(t, s.Findings, sum)
}

func TestStatisticsText(t *testing.T) {
	var b bytes.Buffer
	require.NoError(t, StatisticsOf(checked(statisticsHaw)).Text(&b))
	assert.Equal(t, `files                            1
instruction lines                4
  read whole                     3
  with an unread clause          1
stated counts                    3
  that agree                     1
  that disagree                  1
  that cannot be checked         1
findings                         2
  count-mismatch                 1
  count-unknown                  1
`, b.String())
}

func TestStatisticsOfNothing(t *testing.T) {
	var b bytes.Buffer
	require.NoError(t, StatisticsOf(nil).JSON(&b))
	assert.JSONEq(t, `{"files": 0, "lines": {"all": 0, "whole": 0, "unread": 0},
		"counts": {"all": 0, "agree": 0, "disagree": 0, "unknown": 0}, "findings": 0, "rules": []}`, b.String())
}
