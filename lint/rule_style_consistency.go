package lint

import (
	"regexp"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

var styleConsistency = &Rule{
	Name:     "style-consistency",
	Family:   "style",
	Severity: Info,
	Summary:  "One file says the same thing in one way.",
	Why:      "A maker who has read `sk` twenty times stops at the first `skip` and asks herself what is different here.",
	Bad: `Pattern: Oak leaf mat
Terms: US

Piece: Mat
With A, ch 14.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (13 sc)
Row 2: Ch 1, sc in first st, *ch 1, sk next st, sc in next st; rep from * across; turn. (7 sc, 6 ch-1 sps)
Row 3: Ch 1, sc in first sc, *ch 1, sk next sp, sc in next sc; rep from * across; turn. (7 sc, 6 ch-1 sps)
Row 4: Ch 1, sc in first sc, *ch 1, sk next sp, sc in next sc; rep from * across; turn. (7 sc, 6 ch-1 sps)
Row 5: Ch 1, sc in first sc, *ch 1, skip next sp, sc in next sc; rep from * across. (7 sc, 6 ch-1 sps)
Fasten off.
`,
	Good: `Pattern: Oak leaf mat
Terms: US

Piece: Mat
With A, ch 14.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (13 sc)
Row 2: Ch 1, sc in first st, *ch 1, sk next st, sc in next st; rep from * across; turn. (7 sc, 6 ch-1 sps)
Row 3: Ch 1, sc in first sc, *ch 1, sk next sp, sc in next sc; rep from * across; turn. (7 sc, 6 ch-1 sps)
Row 4: Ch 1, sc in first sc, *ch 1, sk next sp, sc in next sc; rep from * across; turn. (7 sc, 6 ch-1 sps)
Row 5: Ch 1, sc in first sc, *ch 1, sk next sp, sc in next sc; rep from * across. (7 sc, 6 ch-1 sps)
Fasten off.
`,
	Check: checkStyleConsistency,
}

// Style is how a house writes; "" leaves a file to the way that it uses most.
type Style struct {
	Skip   string // sk, skip or miss
	Round  string // rnd or round
	Repeat string // rep or repeat
	Run    string // `sc in next 5 sts`, `5 sc` or `sc 5`
	Count  string // the brackets of stated counts: (), [] or {}
}

// wording is one thing that can be written in several ways.
type wording struct {
	forms []string
	house func(Style) string
	uses  func(*syntax.Row, []string) []worded
}

// worded is one place where a thing is written, with what it would be in the
// other ways.
type worded struct {
	form string
	span source.Span // in the row
	as   func(form string) string
}

// wordingsOfStyle are what a file should write alike.
var wordingsOfStyle = []wording{
	{[]string{"sk", "skip", "miss"}, func(s Style) string { return s.Skip }, ofWord("skip")},
	{[]string{"rnd", "round"}, func(s Style) string { return s.Round }, ofWord("rnd")},
	{[]string{"rep", "repeat"}, func(s Style) string { return s.Repeat }, ofWord("rep")},
	{[]string{inNext, numberFirst, numberLast}, func(s Style) string { return s.Run }, runs},
	{[]string{"()", "[]", "{}"}, func(s Style) string { return s.Count }, nil},
}

// clearly is how many times as often a form must stand before the other is a
// slip rather than a habit.
const clearly = 3

func checkStyleConsistency(p *Pass) {
	for _, w := range wordingsOfStyle {
		var all []worded
		for row := range p.Fabric.Rows() {
			uses := counts(row.Tree, row.StatedAt)
			if w.uses != nil {
				uses = w.uses(row.Tree, w.forms)
			}
			for _, u := range uses {
				u.span = row.Tree.Abs(u.span)
				all = append(all, u)
			}
		}
		p.reportStyle(w, all)
	}
}

// reportStyle points at the places that are written otherwise than the house
// has it or, where the house has no say, than the file mostly has it.
func (p *Pass) reportStyle(w wording, all []worded) {
	number := map[string]int{}
	for _, u := range all {
		number[u.form]++
	}
	want := w.house(p.House)
	if want == "" {
		for _, form := range w.forms {
			if want == "" || number[form] > number[want] {
				want = form
			}
		}
		if clearly*(len(all)-number[want]) > number[want] {
			return
		}
	}
	var odd []worded
	for _, u := range all {
		if u.form != want {
			odd = append(odd, u)
		}
	}
	if len(odd) == 0 {
		return
	}
	f := Finding{
		Span:    odd[0].span,
		Message: quoted(p.File.Text.Slice(odd[0].span)) + " would be `" + odd[0].as(want) + "` as in " + elsewhere(number[want]),
		Fix:     &Fix{Title: "write `" + odd[0].as(want) + "`", Safe: true},
	}
	for i, u := range odd {
		f.Fix.Edits = append(f.Fix.Edits, source.Edit{Span: u.span, New: u.as(want)})
		if i > 0 {
			f.Related = append(f.Related, Related{u.span, "also here"})
		}
	}
	if len(odd) > 1 {
		f.Fix.Title += ", and so in " + counted(strconv.Itoa(len(odd)-1), "other place")
	}
	p.Report(f)
}

// elsewhere is where the usual form stands.
func elsewhere(n int) string {
	if n == 0 {
		return "the house style"
	}
	return counted(strconv.Itoa(n), "other place")
}

// ofWord finds a word of the trade under its spellings, in one or more.
func ofWord(canon string) func(*syntax.Row, []string) []worded {
	return func(row *syntax.Row, forms []string) []worded {
		var out []worded
		for _, t := range row.Tokens {
			if t.Kind != syntax.Word || t.Canon != canon {
				continue
			}
			written := row.Source(t.Span)
			stem := strings.TrimSuffix(strings.ToLower(written), "s")
			for _, form := range forms {
				if stem == form || strings.ToLower(written) == form {
					ending := strings.TrimPrefix(strings.ToLower(written), form)
					out = append(out, worded{form, t.Span, func(form string) string { return likeCase(form+ending, written) }})
					break
				}
			}
		}
		return out
	}
}

// likeCase gives a word the capitals of another.
func likeCase(word, as string) string {
	first, _ := utf8.DecodeRuneInString(as)
	switch {
	case as == strings.ToUpper(as) && len(as) > 1:
		return strings.ToUpper(word)
	case unicode.IsUpper(first):
		return strings.ToUpper(word[:1]) + word[1:]
	}
	return word
}

// The ways to write one stitch in each of the next few.
const (
	inNext      = "sc in next 5 sts"
	numberFirst = "5 sc"
	numberLast  = "sc 5"
)

var (
	runInNext = regexp.MustCompile(`^([A-Za-z]+) in next (\d+) sts$`)
	runFirst  = regexp.MustCompile(`^(\d+) ([A-Za-z]+)$`)
	runLast   = regexp.MustCompile(`^([A-Za-z]+) (\d+)$`)
)

// runs finds stitches worked one in each of the next few, in their plainest
// wordings. Those that go in one place are something else.
func runs(row *syntax.Row, _ []string) []worded {
	var out []worded
	var in func([]syntax.Clause)
	in = func(list []syntax.Clause) {
		for _, c := range list {
			switch n := c.Node.(type) {
			case *syntax.Repeat:
				in(n.Body)
			case *syntax.Work:
				if u, ok := runOf(row.Source(c.Span), c.Span); ok && n.Stitch.Written() && !n.Evenly {
					out = append(out, u)
				}
			}
		}
	}
	in(row.Clauses)
	return out
}

func runOf(text string, span source.Span) (worded, bool) {
	form, stitch, number := "", "", ""
	if m := runInNext.FindStringSubmatch(text); m != nil {
		form, stitch, number = inNext, m[1], m[2]
	} else if m := runFirst.FindStringSubmatch(text); m != nil {
		form, stitch, number = numberFirst, m[2], m[1]
	} else if m := runLast.FindStringSubmatch(text); m != nil {
		form, stitch, number = numberLast, m[1], m[2]
	}
	if form == "" || number == "1" {
		return worded{}, false
	}
	return worded{form, span, func(form string) string {
		switch form {
		case inNext:
			return stitch + " in next " + number + " sts"
		case numberFirst:
			return number + " " + strings.ToLower(stitch)
		}
		return stitch + " " + number
	}}, true
}

// counts finds the stated count of a row where it stands in brackets.
func counts(row *syntax.Row, at source.Span) []worded {
	text := row.Source(at)
	if len(text) < 3 {
		return nil
	}
	form := text[:1] + text[len(text)-1:]
	switch form {
	case "()", "[]", "{}":
		return []worded{{form, at, func(form string) string { return form[:1] + text[1:len(text)-1] + form[1:] }}}
	}
	return nil
}
