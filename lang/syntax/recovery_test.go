package syntax_test

import (
	"strings"
	"testing"
	"unicode/utf8"

	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// TestHalfWritten cuts every instruction of every example pattern off after
// each of its characters, as it stands while it is being written: the rows
// above and below it are read as ever.
func TestHalfWritten(t *testing.T) {
	const above, below = "Row 1: sc, turn. (8)\n", "Row 99: [sc] twice.\n"
	for name, text := range examples(t, "patterns") {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			f := read(text)
			head, wantAbove, wantBelow := headOf(f), shown(above), shown(below)
			for _, row := range rowsOf(f) {
				for end := range row.Text {
					rows := rowsOf(read(head + above + row.Text[:end] + "\n" + below))
					if len(rows) < 2 || show(rows[0]) != wantAbove || show(rows[len(rows)-1]) != wantBelow {
						t.Fatalf("after %q the rows beside it are read otherwise: %d rows", row.Text[:end], len(rows))
					}
				}
			}
		})
	}
}

// headOf is what of a pattern bears on how its rows are read: its sizes, its
// own words, and a first row that ends the header.
func headOf(f *syntax.File) string {
	var b strings.Builder
	for _, x := range f.Header {
		if x.Key == "sizes" {
			b.WriteString(f.Text.Slice(x.Span) + "\n")
		}
	}
	b.WriteString("Special stitches\n")
	for _, d := range f.Definitions {
		if d.Special {
			b.WriteString(f.Text.Slice(d.Span) + "\n")
		}
	}
	return b.String() + "\nPiece: Twig\n"
}

// shown is the only row of a text, written out; "" where it has none.
func shown(text string) string {
	rows := rowsOf(read(text))
	if len(rows) == 0 {
		return ""
	}
	return show(rows[len(rows)-1])
}

func show(r *syntax.Row) string {
	return r.Text + " = " + normalLabel(r.Label) + ": " + normal(r.Clauses)
}

// TestCutOff cuts whole example files off: nothing is lost, and what stands
// above the cut line is read as in the whole file.
func TestCutOff(t *testing.T) {
	const step = 61 // bytes between cuts; coprime to usual line lengths, so that every kind of place is met
	for name, text := range examples(t, "patterns") {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			whole := rowsOf(read(text))
			for end := 0; end < len(text); end += step {
				for !utf8.RuneStart(text[end]) {
					end++
				}
				if err := losses(text[:end]); err != "" {
					t.Fatalf("cut at %d: %s", end, err)
				}
				rows := rowsOf(read(text[:end]))
				for i, row := range whole {
					if row.Span().End >= end {
						break
					}
					if i >= len(rows) || rows[i].Span().End == row.Span().End && show(rows[i]) != show(row) {
						t.Fatalf("cut at %d, row %d is not read as\n\t%s", end, i, show(row))
					}
				}
			}
		})
	}
}

// TestTyped puts in every character that begins or ends something, between
// two rows and within one.
func TestTyped(t *testing.T) {
	const before, after = "Row 1: ch 8, turn.\n", "Row 3: sc in each st, turn.\n"
	for _, typed := range strings.Split("( ) [ ] { } * ** † , ; . : - – — = + × / & \" ' “ ” ½ 1 ( [ { # > // | ~ ^ $ \\ \x00 \u200b \ufeff 🌿", " ") {
		for _, row := range []string{typed, "Row 2: " + typed, "Row 2: sc " + typed + " in next st", "Row 2" + typed, "Row 2: [sc, inc] " + typed + " 3 times"} {
			rows := rowsOf(read(before + row + "\n" + after))
			if len(rows) < 2 || show(rows[0]) != shown(before) || show(rows[len(rows)-1]) != shown(after) {
				t.Errorf("%q changes the rows beside it", row)
			}
		}
	}
}

// TestDeep nests brackets beyond reason: a row says so, and neither hangs nor
// falls.
func TestDeep(t *testing.T) {
	for _, test := range []struct{ open, shut string }{{"[", "]"}, {"(", ")"}, {"(sc, [", "] twice)"}, {"*sc, ", "; rep from * twice"}, {"", "; rep from * twice"}} {
		for _, depth := range []int{10, 1_000, 20_000} {
			text := "Row 1: " + strings.Repeat(test.open, depth) + "sc" + strings.Repeat(test.shut, depth) + ", turn\nRow 2: ch 1\n"
			rows := rowsOf(read(text))
			if len(rows) != 2 {
				t.Fatalf("%d times %q: %d rows, want 2", depth, test.open, len(rows))
			}
			deep := false
			for _, p := range rows[0].Problems {
				deep = deep || p.Kind == syntax.TooDeep
			}
			if brackets := strings.ContainsAny(test.open, "[("); brackets && deep != (depth > 100) {
				t.Errorf("%d times %q: said to be too deep: %v", depth, test.open, deep)
			}
			if got := depthOf(rows[0].Clauses); got > 200 {
				t.Errorf("%d times %q: the tree is %d deep", depth, test.open, got)
			}
		}
	}
}

func depthOf(list []syntax.Clause) int {
	deepest := 0
	for _, c := range list {
		for _, inner := range bodies(c.Node) {
			deepest = max(deepest, 1+depthOf(inner))
		}
	}
	return deepest
}

// TestUnclosed opens brackets by the thousand and closes none.
func TestUnclosed(t *testing.T) {
	rows := rowsOf(read("Row 1: " + strings.Repeat("(sc, ", 5_000) + "\nRow 2: ch 1\n"))
	if len(rows) != 2 || len(rows[0].Problems) != 5_000 {
		t.Fatalf("%d rows, want 2, the first with a problem for each bracket", len(rows))
	}
}

// TestLong reads single instructions of great length, as pasted text may be:
// every clause of it is there.
func TestLong(t *testing.T) {
	const n = 5_000
	for _, clause := range []string{"sc", "wibble", "[sc, inc] twice", "(dc, ch 1) in next sp", "sc in next 3 sts"} {
		row := readRow(t, strings.Repeat(clause+", ", n)+"turn")
		if len(row.Clauses) != n+1 {
			t.Errorf("%d times %q: %d clauses, want %d", n, clause, len(row.Clauses), n+1)
		}
	}
	row := readRow(t, strings.Repeat("wibble ", n)+"(24)")
	if got, want := row.Clauses[0].Span, (source.Span{Start: 7, End: 7 + 7*n - 1}); got != want || len(row.Clauses) != 2 {
		t.Errorf("a long sentence is %d clauses, the first at %v, want 2 and %v", len(row.Clauses), got, want)
	}
}
