package syntax_test

import (
	"fmt"
	"regexp"
	"strings"
	"testing"

	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// TestLossless holds every example, every wording and every document of the
// other tests to what package syntax promises of a tree: no byte lost, no byte
// twice.
func TestLossless(t *testing.T) {
	for name, text := range examples(t, "patterns", "broken") {
		t.Run(name, func(t *testing.T) { lossless(t, text) })
	}
	for _, d := range documents {
		t.Run(d.name, func(t *testing.T) { lossless(t, d.text) })
	}
	for _, d := range typography {
		t.Run(d.name, func(t *testing.T) { lossless(t, d.text) })
	}
	for _, w := range wordings(t) {
		if err := losses(w.document()); err != "" {
			t.Errorf("%s: %q: %s", w.at, w.wording, err)
		}
	}
}

func lossless(t *testing.T, text string) {
	t.Helper()
	if err := losses(text); err != "" {
		t.Error(err)
	}
}

// losses reads text and says what of it is lost, doubled or out of place in
// the tree, the first few faults; "" where all is well.
func losses(text string) string {
	f := read(text)
	var faults []string
	fault := func(format string, args ...any) { faults = append(faults, fmt.Sprintf(format, args...)) }

	end := 0
	for _, p := range parts(f) {
		if p.within {
			continue
		}
		if p.span.Start < end {
			fault("%v %q begins before %d, in what stands before it", p.span, f.Text.Slice(p.span), end)
		}
		if p.span.Start < 0 || p.span.End > len(text) || p.span.Start >= p.span.End {
			fault("%v of %q is no stretch of the file", p.span, p.line)
		}
		if lost := unblank(f.Text.Slice(source.Span{Start: end, End: p.span.Start})); lost != "" {
			fault("%q belongs to nothing", lost)
		}
		end = max(end, p.span.End)
	}
	if lost := unblank(f.Text.Slice(source.Span{Start: end, End: len(text)})); lost != "" {
		fault("%q at the end belongs to nothing", lost)
	}

	for _, r := range rowsOf(f) {
		rowLosses(f, r, fault)
	}
	for _, d := range f.Definitions {
		if d.Row != nil {
			if !d.Span.Covers(d.Row.Span()) {
				fault("the row %v of the definition %v lies outside it", d.Row.Span(), d.Span)
			}
			rowLosses(f, d.Row, fault)
		}
		if !d.Span.Covers(d.NameSpan) {
			fault("the name %v of the definition %v lies outside it", d.NameSpan, d.Span)
		}
	}
	for _, x := range f.Header {
		// a value written over several lines is one line in the tree
		if got := strings.Join(strings.Fields(f.Text.Slice(x.ValueSpan)), " "); got != strings.Join(strings.Fields(x.Value), " ") || !x.Span.Covers(x.KeySpan) || !x.Span.Covers(x.ValueSpan) || x.KeySpan.End > x.ValueSpan.Start {
			fault("field %s: value %q at %v is %q, key at %v, all at %v", x.Key, x.Value, x.ValueSpan, got, x.KeySpan, x.Span)
		}
	}
	return strings.Join(faults[:min(len(faults), 5)], "\n")
}

// rowLosses checks one instruction: its tokens, its label and its clauses.
func rowLosses(f *syntax.File, r *syntax.Row, fault func(string, ...any)) {
	if got := f.Text.Slice(r.Span()); got != r.Text {
		fault("the row at %d holds %q, the file %q", r.At, r.Text, got)
	}
	end := 0
	for _, tok := range r.Tokens {
		if tok.Span.Start < end || tok.Span.Start >= tok.Span.End || tok.Span.End > len(r.Text) {
			fault("row %q: token %v after %d", r.Text, tok.Span, end)
			return
		}
		if lost := lostIn(r.Text, end, tok.Span.Start); lost != "" {
			fault("row %q: %q belongs to no token", r.Text, lost)
		}
		end = tok.Span.End
	}
	if lost := lostIn(r.Text, end, len(r.Text)); lost != "" {
		fault("row %q: %q at the end belongs to no token", r.Text, lost)
	}
	if r.Label.Kind != syntax.Unlabelled {
		if got := r.Source(r.Label.Span); got != r.Label.Text {
			fault("row %q: the label %q stands at %v, which is %q", r.Text, r.Label.Text, r.Label.Span, got)
		}
	}
	list := r.Clauses
	if len(list) > 0 && list[0].Span.End <= r.Label.Span.Start {
		clauseLosses(r, list[:1], source.Span{End: r.Label.Span.Start}, fault) // `Size L only:`, `All sizes:` stand before the label
		list = list[1:]
	}
	if len(list) > 0 && r.Label.Far.Len() > 0 && list[0].Span == r.Label.Far {
		clauseLosses(r, list[:1], r.Label.Span, fault) // `Row 1, second side:` says within the label where the row goes
		list = list[1:]
	}
	clauseLosses(r, list, source.Span{Start: r.Label.Span.End, End: len(r.Text)}, fault)
	wordLosses(r, fault)
}

// clauseLosses checks that clauses stand one after the other within what they
// are part of. The body of a repeat that speaks of an earlier one (`then from
// * to ** once`) stands where it was written, before the repeat.
func clauseLosses(r *syntax.Row, list []syntax.Clause, within source.Span, fault func(string, ...any)) {
	end := within.Start
	for _, c := range list {
		if c.Span.Start >= c.Span.End {
			fault("row %q: clause %s at %v holds nothing", r.Text, (&writer{}).node(c.Node), c.Span)
			continue
		}
		if c.Span.Start < end || !within.Covers(c.Span) {
			fault("row %q: clause %q at %v stands out of order, after %d within %v", r.Text, r.Source(c.Span), c.Span, end, within)
		}
		end = c.Span.End
		for _, inner := range bodies(c.Node) {
			if len(inner) > 0 && inner[len(inner)-1].Span.End <= c.Span.Start {
				continue // the body of an earlier repeat, worked again
			}
			clauseLosses(r, inner, c.Span, fault)
		}
	}
}

// bodies lists the clauses within a clause, in the order written.
func bodies(n syntax.Node) [][]syntax.Clause {
	switch n := n.(type) {
	case *syntax.Group:
		return [][]syntax.Clause{n.Body}
	case *syntax.Bracket:
		return [][]syntax.Clause{n.Body}
	case *syntax.Repeat:
		return [][]syntax.Clause{n.Body, n.Ending}
	}
	return nil
}

// wordLosses checks that no word is passed over: each stands in the label or
// in a clause. Words that join clauses or only fill (`and`, `the`) may stand
// between them, and the number of a list's item before the label.
func wordLosses(r *syntax.Row, fault func(string, ...any)) {
	for i, tok := range r.Tokens {
		first := i == 0 || i == 1 && strings.HasPrefix(r.Text[r.Tokens[0].Span.Start:], "*") // it may stand in bold with the label
		if first && tok.Kind == syntax.Number && tok.Span.End < r.Label.Span.Start {
			continue
		}
		switch tok.Kind {
		case syntax.Word, syntax.Name, syntax.Number, syntax.Ordinal, syntax.Stitch:
		default:
			continue
		}
		if tok.Canon == "and" || tok.Kind == syntax.Word && tok.Canon == "" || r.Label.Span.Covers(tok.Span) {
			continue
		}
		held := false
		for _, c := range r.Clauses {
			held = held || c.Span.Covers(tok.Span)
		}
		if !held {
			fault("row %q: %q at %v stands in no clause", r.Text, r.Source(tok.Span), tok.Span)
			return
		}
	}
}

// letters number the items of a list within a step, a line each: no token holds them.
var letters = regexp.MustCompile(`(?:^|\n)[ \t]*(?:[-*] |\d{1,2}[.)] ?)?(\(?(?:[a-z]|[ivx]{1,4})\)) `)

// lostIn gives what is not blank of a stretch of a text, but for the letters of items.
func lostIn(text string, from, to int) string {
	bare := []byte(text)
	for _, at := range letters.FindAllStringSubmatchIndex(text, -1) {
		copy(bare[at[2]:at[3]], strings.Repeat(" ", at[3]-at[2]))
	}
	return unblank(string(bare[from:to]))
}

// unblank gives what of s is not blank.
func unblank(s string) string {
	return strings.TrimFunc(strings.Map(func(r rune) rune {
		if blank(r) {
			return ' '
		}
		return r
	}, s), func(r rune) bool { return r == ' ' })
}

// TestLosslessBytes reads what no editor would write: bytes that are no text.
func TestLosslessBytes(t *testing.T) {
	for _, text := range []string{
		"", "\n", "\r", "\x00", "Row 1: \xff\xfe sc \x80", "\xef\xbb\xbf", "\xef\xbb", "Row 1: sc\x00dc\n\x00",
		"Row 1: (\xff)", "Hook:\xff\n", "// \xff\n", "a\x00b = dc\n", strings.Repeat("\xc3", 300),
	} {
		lossless(t, text)
	}
}

// TestLosslessSlips reads rows with a slip of the pen in them, where the reader
// has to give something up: never text.
func TestLosslessSlips(t *testing.T) {
	for _, row := range []string{
		"rh 5 (counts as dc + ch 2)",
		"rh 5 (counts as dc + ch 2), sc in next st",
		"wibble (counts as dc). Sc in next st",
		"wibble (counts as dc) wobble, sc in next st",
		"sk 2 (counts as dc), sc in next st",
		"Dc in 4th ch frwm hook (skipped 3 ch count as dc), dc in next 5 ch",
		"Dc in 4th ch from hook (skipped 3 ch count as dc) and in each c",
		"*sc in next st, inc",
		"*sc in next st, *inc, wibble",
		"(sc, inc) rep rep",
		"*sc, inc* rep around",
		"*ch 3, sc in next sp; rep from * 3 tims, ending with sc in last st",
		"*ch 3, sc in next sp; rep from *, wibble, ending last rep at **",
		"in next sp work 2 dc, wibble, ch 2",
		"fasten off, wibble, leaving a long tail",
		"same as Row 3, wibble, but ending with sc",
		"wibble with B, sc",
		"ch 4 * counts as dc, sc",
		"*sc in next sp; rep from * 3 times *, ending with sc in last st",
		"ch - 3 (counts as dc)",
		"sk 2 (counts as dc)",
	} {
		if err := losses("Row 1: " + row + "\n"); err != "" {
			t.Error(err)
		}
	}
}
