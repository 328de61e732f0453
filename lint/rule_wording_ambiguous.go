package lint

import (
	"strconv"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

var wordingAmbiguous = &Rule{
	Name:     "wording-ambiguous",
	Family:   "counts",
	Severity: Info,
	OfPiece:  true,
	Summary:  "Where words have two meanings in the trade, the pattern says which it means.",
	Why: "A maker who takes `repeat from * 3 times` for three in all and one who takes it for three more make different pieces " +
		"from the same words. The count shows which is meant only to those who count first.",
	Bad: `Pattern: Frost band
Terms: US

Piece: Band
Ch 14.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (13 sc)
Row 2: Ch 1, *sc in next 2 sts, 2 sc in next st; rep from * 4 times, sc in last st. (17 sc)
Fasten off.
`,
	Good: `Pattern: Frost band
Terms: US

Piece: Band
Ch 14.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (13 sc)
Row 2: Ch 1, *sc in next 2 sts, 2 sc in next st; rep from * 3 more times, sc in last st. (17 sc)
Fasten off.
`,
	Sources: []string{
		"`repeat N times`: N more in the booklets of Spinrite and of 1918, N in all on many pages; both in Handbook of Wool Knitting " +
			"and Crochet, 1918 (read)",
	},
	Check: checkWordingAmbiguous,
}

func checkWordingAmbiguous(p *Pass) {
	for _, piece := range p.Pieces {
		told := fabric.Reading(0) // what is counted is said once for a piece
		for _, row := range piece.Rows {
			taken, open := readings(row)
			for _, a := range ambiguities {
				if (taken|open)&a.reading == 0 || told&a.reading != 0 {
					continue
				}
				if f := a.finding(row, taken&a.reading != 0); f != nil {
					p.Report(*f)
				}
				told |= a.reading & (fabric.ReadCountsChains | fabric.ReadOmitsTurning)
			}
		}
	}
}

// readings are those taken against the default in a row, and those that nothing
// decides, in any size.
func readings(row *fabric.Row) (taken, open fabric.Reading) {
	for size := range row.Tallies {
		taken |= row.Tallies[size].Readings
		open |= row.Tallies[size].Undecided
	}
	return taken, open
}

// ambiguities are the readings that a maker is told of, and how.
var ambiguities = []struct {
	reading fabric.Reading
	finding func(row *fabric.Row, taken bool) *Finding
}{
	{fabric.ReadTimesInAll, timesInAll},
	{fabric.ReadEndingReplaces, endingReplaces},
	{fabric.ReadOneInEach, severalInEach},
	{fabric.ReadNumberInOne, numberInOne},
	{fabric.ReadRunsOn, runsOn},
	{fabric.ReadLineRepeats, lineRepeats},
	{fabric.ReadCountsChains, countSays("counts the chains of the spaces as stitches, which nothing says")},
	{fabric.ReadOmitsTurning, countSays("leaves out the turning chain, which stands for a stitch")},
}

// timesInAll tells how often a repeat is taken to be worked, and writes it so that
// it can mean nothing else.
func timesInAll(row *fabric.Row, taken bool) *Finding {
	c, r := repeatOf(row, func(r *syntax.Repeat) bool { return r.Limit == syntax.TimesOrAll })
	if r == nil {
		return nil
	}
	times := r.Number.String() + " times"
	f := &Finding{Span: row.Tree.Abs(c.Span)}
	less, as, other := 0, "more", "in all"
	if taken == r.Starred { // without a star it is in all, unless only more comes out
		less, as, other = 1, "in all", "more"
	}
	n := r.Number.String()
	if taken {
		f.Message = quoted("repeat "+times) + " is taken as " + n + " " + as + ", as only that comes out; to many makers it is " + n + " " + other
	} else {
		f.Message = quoted("repeat "+times) + " may be " + n + " in all or " + n + " more: it is taken as " + as + ", and nothing shows which is meant"
	}
	f.Fix = moreTimes(row, c, r, less)
	return f
}

// moreTimes is the fix that says how many times more, counted from a number of
// times of which less is already in the words before.
func moreTimes(row *fabric.Row, c *syntax.Clause, r *syntax.Repeat, less int) *Fix {
	tokens := row.Tree.Tokens
	for i := len(tokens) - 2; i >= 0; i-- {
		number, times := tokens[i], tokens[i+1]
		if number.Kind != syntax.Number || times.Canon != "times" || !c.Span.Covers(number.Span) || !number.Values.Equal(r.Number) {
			continue
		}
		values := make([]int, len(number.Values.Vals))
		for k, n := range number.Values.Vals {
			if values[k] = n - less; values[k] < 1 {
				return nil // once in all is no repeat
			}
		}
		text := rewritten(row.Tree.Source(number.Span), values) + " more"
		word := "times"
		if len(values) == 1 && values[0] == 1 {
			word = "time"
		}
		return &Fix{
			Title: "write `" + text + " " + word + "`", Safe: true,
			Edits: []source.Edit{
				{Span: row.Tree.Abs(number.Span), New: text},
				{Span: row.Tree.Abs(times.Span), New: word},
			},
		}
	}
	return nil
}

func endingReplaces(row *fabric.Row, taken bool) *Finding {
	c, r := repeatOf(row, func(r *syntax.Repeat) bool { return len(r.Ending) > 0 && !r.Replaces })
	if r == nil {
		return nil
	}
	f := &Finding{Span: row.Tree.Abs(c.Span), Message: "the ending may follow the last repeat or stand in the place of its last step: it is taken to follow, and nothing shows which is meant"}
	if taken {
		f.Message = "the ending is taken to stand in the place of the last repeat's last step, as only that comes out; `ending last rep with` would say so"
	}
	return f
}

func severalInEach(row *fabric.Row, _ bool) *Finding {
	for i := range row.Tree.Clauses {
		c := &row.Tree.Clauses[i]
		w, ok := c.Node.(*syntax.Work)
		if !ok || len(w.Places) != 1 || w.Places[0].Each || !w.Number.Written() || !w.Number.Equal(w.Places[0].Number) {
			continue
		}
		return &Finding{
			Span:    row.Tree.Abs(c.Span),
			Message: quoted(row.Tree.Source(c.Span)) + " is taken as " + w.Number.String() + " in each of them, as only that comes out; `in each of` would say so",
		}
	}
	return nil
}

// numberInOne tells that so many stitches are taken as an increase.
func numberInOne(row *fabric.Row, _ bool) *Finding {
	c, r := repeatOf(row, func(r *syntax.Repeat) bool { return len(r.Body) > 0 })
	if r == nil {
		return nil
	}
	return &Finding{
		Span:    row.Tree.Abs(c.Span),
		Message: "several stitches together are taken as an increase in " + quoted(row.Tree.Source(c.Span)) + ", as only that comes out; `in next st` after the number would say so",
	}
}

func runsOn(row *fabric.Row, _ bool) *Finding {
	for i := range row.Tree.Clauses {
		c := &row.Tree.Clauses[i]
		if _, ok := c.Node.(*syntax.Bracket); ok {
			word := "across"
			if row.Round {
				word = "around"
			}
			return &Finding{
				Span:    row.Tree.Abs(c.Span),
				Message: "nothing says how often " + quoted(row.Tree.Source(c.Span)) + " is worked: it is taken to go on to the end, as only that comes out",
				Fix: &Fix{
					Title: "write `" + word + "` after it", Safe: true,
					Edits: []source.Edit{{Span: source.At(row.Tree.At + c.Span.End), New: " " + word}},
				},
			}
		}
	}
	return nil
}

func lineRepeats(row *fabric.Row, _ bool) *Finding {
	first, last := -1, -1
	for i, c := range row.Tree.Clauses {
		if _, ok := c.Node.(*syntax.Work); ok {
			if first < 0 {
				first = i
			}
			last = i
		}
	}
	if first < 0 {
		return nil
	}
	span := source.Span{Start: row.Tree.Clauses[first].Span.Start, End: row.Tree.Clauses[last].Span.End}
	return &Finding{
		Span:    row.Tree.Abs(span),
		Message: quoted(row.Tree.Source(span)) + " is taken to repeat all its steps to the end, as only that comes out; brackets around them would say so",
	}
}

func countSays(what string) func(*fabric.Row, bool) *Finding {
	return func(row *fabric.Row, _ bool) *Finding {
		if row.Stated == nil {
			return nil
		}
		made := 0
		if len(row.Tallies) > 0 {
			made = row.Tallies[0].Made
		}
		return &Finding{
			Span:    row.Tree.Abs(row.StatedAt),
			Message: "the count " + what + "; there are " + counted(strconv.Itoa(made), "st"),
		}
	}
}

// repeatOf is the first repeat of a row of some kind, with its clause.
func repeatOf(row *fabric.Row, is func(*syntax.Repeat) bool) (*syntax.Clause, *syntax.Repeat) {
	var at *syntax.Clause
	var found *syntax.Repeat
	syntax.Walk(row.Tree.Clauses, func(c syntax.Clause) {
		if r, ok := c.Node.(*syntax.Repeat); ok && found == nil && is(r) {
			at, found = &c, r
		}
	})
	return at, found
}
