package syntax_test

import (
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"stitchproof/lang/fabric"
	"stitchproof/lang/syntax"
)

// notationPath is the reference of the notation.
var notationPath = filepath.Join("..", "NOTATION.md")

// TestNotationInStep holds the generated parts of the reference to the tables
// of wordings and to the grammar.
func TestNotationInStep(t *testing.T) {
	page := readFile(t, notationPath)
	want := between(t, page, "wordings", wordingList(t))
	want = between(t, want, "grammar", "```ebnf\n"+syntax.Grammar()+"\n```\n")
	switch {
	case page == want:
	case *update:
		if err := os.WriteFile(notationPath, []byte(want), 0o644); err != nil {
			t.Fatal(err)
		}
	default:
		t.Error("NOTATION.md is out of step: run the test with -update")
	}
}

// between puts text between the marks of a part of the page.
func between(t *testing.T, page, part, text string) string {
	t.Helper()
	begin, end := "<!-- "+part+": begin -->\n", "<!-- "+part+": end -->\n"
	before, rest, found := strings.Cut(page, begin)
	_, after, closed := strings.Cut(rest, end)
	if !found || !closed {
		t.Fatalf("NOTATION.md has no marks around its %s", part)
	}
	return before + begin + "\n" + text + "\n" + end + after
}

// wordingList writes the tables as lists: what means the same in one line.
func wordingList(t *testing.T) string {
	var b strings.Builder
	var last wording
	for _, w := range wordings(t) {
		if w.table != last.table {
			fmt.Fprintf(&b, "\n\n### %s", strings.TrimSuffix(w.table, "."))
		}
		switch {
		case w.table != last.table || w.kind != last.kind:
			fmt.Fprintf(&b, "\n\n%s:\n\n- ", strings.ToUpper(w.kind[:1])+w.kind[1:])
		case w.mean != last.mean:
			b.WriteString("\n- ")
		default:
			b.WriteString(" · ")
		}
		b.WriteString("`" + w.wording + "`")
		last = w
	}
	return strings.TrimSpace(b.String()) + "\n"
}

// TestNotationExamples reads and works every pattern of the reference: each
// word of it is understood, nothing is at fault, and every row makes what it
// says.
func TestNotationExamples(t *testing.T) {
	blocks := strings.Split(readFile(t, notationPath), "```crochet\n")[1:]
	if len(blocks) < 5 {
		t.Fatalf("%d patterns, want at least 5", len(blocks))
	}
	for _, block := range blocks {
		text, _, _ := strings.Cut(block, "```")
		work := fabric.Work(read(text))
		for _, piece := range work.Pieces {
			for _, row := range piece.Rows {
				if unread := unreadText(row.Tree, row.Tree.Clauses); len(unread) > 0 || len(row.Tree.Problems) > 0 {
					t.Errorf("%q: unread %q, problems %v", row.Tree.Text, unread, row.Tree.Problems)
				}
				for size, tally := range row.Tallies {
					if a := tally.Agrees(); !tally.Known || len(tally.Faults) > 0 || row.Tree.HasSize(size) && (a == fabric.Disagrees || a == fabric.Uncheckable) {
						t.Errorf("%q in size %d: makes %d, known %v, agreement %v, faults %+v", row.Tree.Text, size, tally.Made, tally.Known, a, tally.Faults)
					}
				}
			}
		}
	}
}

var codeSpan = regexp.MustCompile("`([^`]+)`")

// TestNotationClauses works each example of the table of clauses on a row of
// twelve stitches, and holds what it uses and makes to the table's numbers.
func TestNotationClauses(t *testing.T) {
	_, table, _ := strings.Cut(readFile(t, notationPath), "| clause | example | used | made |\n")
	table, _, _ = strings.Cut(table, "\n\n")
	checked := 0
	for _, line := range strings.Split(table, "\n")[1:] {
		cell := strings.Split(strings.Trim(line, "| "), " | ")
		if len(cell) != 4 {
			t.Fatalf("%q has %d cells, want 4", line, len(cell))
		}
		used, usedKnown := tableNumbers(cell[2])
		made, madeKnown := tableNumbers(cell[3])
		if !usedKnown || !madeKnown {
			continue // what it uses depends on the row
		}
		for i, example := range codeSpan.FindAllStringSubmatch(cell[1], -1) {
			u, m := on12(t, example[1])
			if wantUsed, wantMade := used[min(i, len(used)-1)], made[min(i, len(made)-1)]; u != wantUsed || m != wantMade {
				t.Errorf("`%s` uses %d and makes %d, the table says %d and %d", example[1], u, m, wantUsed, wantMade)
			}
			checked++
		}
	}
	if checked < 15 {
		t.Errorf("%d examples of the table were checked, want at least 15", checked)
	}
}

// tableNumbers reads the numbers of a cell, such as `5, 2` or `0, and a ch-2
// space`: one for all examples of the line, or one for each.
func tableNumbers(cell string) ([]int, bool) {
	cell, _, _ = strings.Cut(cell, ", and")
	var out []int
	for part := range strings.SplitSeq(cell, ", ") {
		n, err := strconv.Atoi(part)
		if err != nil {
			return nil, false
		}
		out = append(out, n)
	}
	return out, true
}

// on12 works a clause on a row of twelve sc, the first of which is worked
// before it, and gives the stitches that it uses and makes.
func on12(t *testing.T, clause string) (used, made int) {
	t.Helper()
	work := fabric.Work(read("Terms: US\nCh 13.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\n" +
		"Row 2: Ch 1, sc in first st, " + clause + ", leave remaining sts unworked.\n"))
	rows := work.Pieces[0].Rows
	steps := rows[len(rows)-1].Steps
	for _, s := range steps[2 : len(steps)-1] {
		if len(s.Used) == 0 || !s.Known {
			t.Fatalf("`%s` is not counted", clause)
		}
		used, made = used+s.Used[0], made+s.Made[0]
	}
	return used, made
}
