package syntax_test

import (
	"reflect"
	"strings"
	"testing"

	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// neighbours are steps to put something unreadable between; what they say
// does not depend on what stands beside them.
var neighbours = []string{
	"sc in next 4 sts", "ch 2", "sk next st", "(dc, ch 1, dc) in next sp", "[sc, inc] 3 times", "sl st in next st", "change to B",
	"2 dc in next ch-2 sp", "hdc in each of next 2 sts",
}

// unreadable are slips of the pen and words of no pattern, each without a
// separator of its own.
var unreadable = []string{
	"wibble", "sv in next 4 sts", "dance a jig", "@@@", "in in in", "漢字", "7", "wren 3 wren 4", "of of of", "%", "nxet 4 stt",
}

// TestUnread puts something unreadable between two steps: it becomes an
// unread clause with its exact text and place, and the steps stay what they
// are.
func TestUnread(t *testing.T) {
	for _, bad := range unreadable {
		for i, before := range neighbours {
			after := neighbours[(i+3)%len(neighbours)]
			for _, comma := range []string{", ", "; "} {
				row := readRow(t, before+comma+bad+comma+after)
				text := row.Text
				at := source.Span{Start: strings.Index(text, bad), End: strings.Index(text, bad) + len(bad)}
				var unread []source.Span
				var rest []syntax.Clause
				for _, c := range row.Clauses {
					if _, ok := c.Node.(*syntax.Unread); ok {
						unread = append(unread, c.Span)
					} else {
						rest = append(rest, c)
					}
				}
				if len(unread) == 0 || unread[0].Start != at.Start || unread[len(unread)-1].End != at.End {
					t.Errorf("%q: unread clauses at %v, want all of %v: %s", text, unread, at, normal(row.Clauses))
				}
				if want := normal(readRow(t, before).Clauses) + ", " + normal(readRow(t, after).Clauses); normal(rest) != want {
					t.Errorf("%q: the steps beside it read as\n\t%s\nwant\t%s", text, normal(rest), want)
				}
			}
		}
	}
}

// TestUnreadWithin finds the unread clause inside brackets and repeats, where
// the rest of the bracket and what is said of it stay.
func TestUnreadWithin(t *testing.T) {
	for _, test := range []struct{ wording, mean string }{
		{"[sc, wibble, inc] 6 times", "repeat {work sc each=1 next 1 st, unread, work inc each=1 next 1 st} 6 in all"},
		{"(dc, wibble, dc) in next sp", "group {work dc each=1 here, unread, work dc each=1 here} in next 1 sp"},
		{"*sc, wibble; rep from * across", "repeat {work sc each=1 next 1 st, unread} to the end"},
		{"[sc, (hdc, wibble) twice] 3 times", "repeat {work sc each=1 next 1 st, repeat {work hdc each=1 next 1 st, unread} 2 in all} 3 in all"},
		{"branch A: ch 8, wibble, sc in 2nd ch from hook, return", "branch a, chain 8, unread, work sc each=1 nth=2 ch from hook, return"},
		{"wibble (24 sts)", "unread, count 24 st"},
	} {
		row := readRow(t, test.wording)
		if got := normal(row.Clauses); got != test.mean {
			t.Errorf("%q\n\tmeans %s\n\twant  %s", test.wording, got, test.mean)
		}
		if got := unreadText(row, row.Clauses); !reflect.DeepEqual(got, []string{"wibble"}) {
			t.Errorf("%q: unread is %q, want wibble alone", test.wording, got)
		}
	}
}

// unreadText lists the text of every unread clause, at any depth.
func unreadText(r *syntax.Row, list []syntax.Clause) []string {
	var out []string
	for _, c := range list {
		if _, ok := c.Node.(*syntax.Unread); ok {
			out = append(out, r.Source(c.Span))
		}
		for _, inner := range bodies(c.Node) {
			out = append(out, unreadText(r, inner)...)
		}
	}
	return out
}

// TestProblems: faults of writing that no clause shows are listed with the
// row, each with the place at fault, and the rest is read all the same.
func TestProblems(t *testing.T) {
	for _, test := range []struct {
		wording  string
		problem  syntax.ProblemKind
		at, mean string
	}{
		{"[sc in next st, inc x 6", syntax.BracketUnclosed, "[", "work sc each=1 next 1 st, work inc each=1 next 1 st times 6"},
		{"sc in next st, inc) around", syntax.BracketUnopened, ")", "repeat whole {work sc each=1 next 1 st, work inc each=1 next 1 st} to the end"},
		{"sc in next st; rep from * around", syntax.RepeatUnanchored, "rep from * around", "repeat whole {work sc each=1 next 1 st} to the end"},
		{"*sc in next st, inc", syntax.StarUnused, "*", "repeat {work sc each=1 next 1 st, work inc each=1 next 1 st} to the end, unsaid"},
	} {
		row := readRow(t, test.wording)
		if len(row.Problems) != 1 || row.Problems[0].Kind != test.problem || row.Source(row.Problems[0].Span) != test.at {
			t.Errorf("%q: problems are %v, want kind %d at %q", test.wording, row.Problems, test.problem, test.at)
		}
		if got := normal(row.Clauses); !strings.HasPrefix(got, test.mean) {
			t.Errorf("%q\n\tmeans %s\n\twant  %s", test.wording, got, test.mean)
		}
	}
}

// TestOwnWordsAreNotShared: what one pattern calls its own says nothing in
// the next, though clauses of the same words are read only once.
func TestOwnWordsAreNotShared(t *testing.T) {
	const row = "Row 1: wren in next 2 sts, [wren, ch 1] twice\n"
	tell := func(definition string) string {
		rows := rowsOf(read(definition + row))
		return normal(rows[len(rows)-1].Clauses)
	}
	asDouble, asTreble, undefined := tell("wren = dc\n"), tell("wren = tr\n"), tell("")
	if asDouble == undefined || asTreble == undefined {
		t.Errorf("the definition changes nothing: %s", undefined)
	}
	for range 2 {
		if got := tell("wren = dc\n"); got != asDouble {
			t.Errorf("after another pattern's wren: %s, before it: %s", got, asDouble)
		}
		if got := tell(""); got != undefined {
			t.Errorf("after another pattern's wren: %s, before it: %s", got, undefined)
		}
	}
}

// TestTimesAreNotShared: clauses that differ in a number word alone are
// different clauses.
func TestTimesAreNotShared(t *testing.T) {
	for range 2 {
		for word, want := range map[string]string{"once": "1 in all", "twice": "2 in all", "thrice": "3 in all"} {
			if got := normal(readRow(t, "[sc, ch 1] "+word).Clauses); !strings.HasSuffix(got, want) {
				t.Errorf("%s is read as %s", word, got)
			}
		}
		for word, want := range map[string]string{"2nd": "nth=2", "second": "nth=2", "third": "nth=3", "4th": "nth=4", "302nd": "nth=302"} {
			if got := normal(readRow(t, "sc in "+word+" st").Clauses); !strings.Contains(got, want+" ") {
				t.Errorf("%s is read as %s", word, got)
			}
		}
	}
}
