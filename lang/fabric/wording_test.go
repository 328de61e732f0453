package fabric_test

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"unicode"
)

// The wording of a piece: each step of the oracle's model is written in one of
// the forms that published patterns use for it. The forms are those met in a
// survey of published sources; the first of each list is the plainest.

// voice chooses among the forms.
type voice struct {
	// pick gives a choice below n; 0 is the plainest form.
	pick func(n int) int
	// uk writes UK terms.
	uk bool
	// exact keeps to wordings with one meaning, and to counts that name every
	// stitch and space.
	exact bool
	// unrolled writes every repeat out by hand.
	unrolled bool

	list      int  // how the values of several sizes are written
	chainLast bool // the turning chain stands at the end of the row before
	// settled tells that nothing in the row is left for its count to decide:
	// neither what the beginning chain counts for nor how often a repeat is
	// meant. One open wording a row is all that a count can settle.
	settled bool
}

// say picks one form.
func (v *voice) say(forms ...string) string { return forms[v.pick(len(forms))] }

// names gives the words for each stitch: US and UK, short and long, as in the
// term tables of lanternmoon.com and crochetbouquet.co.uk.
var names = map[string][4]string{
	"sc":  {"sc", "single crochet", "dc", "double crochet"},
	"hdc": {"hdc", "half double crochet", "htr", "half treble"},
	"dc":  {"dc", "double crochet", "tr", "treble"},
	"tr":  {"tr", "treble crochet", "dtr", "double treble"},
}

// short is a stitch's abbreviation, that of dc2tog too.
func (v *voice) short(stitch string) string {
	if i := strings.IndexAny(stitch, "23456789"); i > 0 {
		return v.short(stitch[:i]) + stitch[i:]
	}
	if v.uk {
		return names[stitch][2]
	}
	return names[stitch][0]
}

// long is a stitch's abbreviation or its name in full.
func (v *voice) long(stitch string) string {
	if v.pick(4) == 3 {
		if v.uk {
			return names[stitch][3]
		}
		return names[stitch][1]
	}
	return v.short(stitch)
}

var numberWords = []string{"", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"}

// num writes a number; where it differs by size, all its values.
func (v *voice) num(n sized) string {
	if uniform(n) {
		if n[0] > 0 && n[0] < len(numberWords) && v.pick(8) == 7 {
			return numberWords[n[0]]
		}
		return strconv.Itoa(n[0])
	}
	return v.sizes(n)
}

// sizes writes one value for each size.
func (v *voice) sizes(n sized) string {
	values := make([]string, len(n))
	for i, x := range n {
		values[i] = strconv.Itoa(x)
	}
	rest := values[1:]
	switch v.list {
	case 1:
		return values[0] + "[" + strings.Join(rest, ":") + "]"
	case 2:
		return strings.Join(values, "/")
	}
	return values[0] + " (" + strings.Join(rest, ", ") + ")"
}

// uniform tells whether every size has the same value.
func uniform(n sized) bool {
	return !slices.ContainsFunc(n, func(x int) bool { return x != n[0] })
}

// is tells whether the number is x in every size.
func is(n sized, x int) bool { return uniform(n) && n[0] == x }

func plus(n sized, d int) sized {
	out := slices.Clone(n)
	for i := range out {
		out[i] += d
	}
	return out
}

// text fills a form's blanks.
func text(form string, blanks ...string) string { return strings.NewReplacer(blanks...).Replace(form) }

// noun is what places are called, one or several.
func (v *voice) noun(noun string, several bool) string {
	switch {
	case noun == "st" && several:
		return v.say("sts", "sts", "stitches")
	case noun == "st":
		return v.say("st", "st", "stitch")
	case noun == "ch" && several:
		return v.say("ch", "chs", "chains")
	case noun == "ch":
		return v.say("ch", "chain")
	case isSpace(noun) && several:
		return v.say(noun+"s", strings.TrimSuffix(noun, "sp")+"spaces", chainFirst(noun)+"s", "sps")
	case isSpace(noun) && v.exact:
		return v.say(noun, strings.TrimSuffix(noun, "sp")+"space", chainFirst(noun))
	case isSpace(noun):
		return v.say(noun, strings.TrimSuffix(noun, "sp")+"space", chainFirst(noun), strings.TrimSuffix(noun, "sp")+"loop", "sp")
	}
	return v.short(noun)
}

// chainFirst calls a ch-3 sp a 3-ch sp.
func chainFirst(space string) string {
	n := strings.TrimSuffix(strings.TrimPrefix(space, "ch-"), " sp")
	return n + "-ch sp"
}

// step words one step.
func (v *voice) step(s step, round bool) string {
	switch s.verb {
	case work:
		return v.work(s)
	case increase:
		return v.sayTimes(s.m, "inc")
	case together:
		return v.together(s)
	case skip:
		if is(s.m, 1) {
			return text(v.say("sk next {st}", "skip next {st}", "sk 1 {st}", "skip {st}", "miss next {st}", "miss 1 {st}"), "{st}", v.noun(s.noun, false))
		}
		return text(v.say("sk next {m} {sts}", "skip next {m} {sts}", "sk {m} {sts}", "skip {m} {sts}", "miss {m} {sts}", "skip the next {m} {sts}"),
			"{m}", v.num(s.m), "{sts}", v.noun(s.noun, true))
	case chain:
		return v.chain(s.n)
	case group:
		return v.group(s)
	case each:
		return v.each(s, round)
	case turns:
		return v.turns(s, round)
	}
	return v.repeat(s, round)
}

func (v *voice) work(s step) string {
	blanks := []string{"{k}", v.long(s.stitch), "{n}", v.num(s.n), "{m}", v.num(s.m), "{d}", v.digits(s.m),
		"{st}", v.noun(s.noun, false), "{sts}", v.noun(s.noun, true), "{s}", v.short(s.stitch)}
	switch {
	case s.place != "":
		return text(v.say("{k} in ", "1 {k} in ", "work {k} in "), blanks...) + s.place
	case s.noun == "ring":
		return text(v.say("{n} {s} in ring", "work {n} {s} in ring", "{n} {k} in the ring", "{n} {s} into ring"), blanks...)
	case is(s.n, 1) && is(s.m, 1):
		forms := []string{"{k} in next {st}", "1 {k} in next {st}", "{k} in the next {st}", "work {k} in next {st}", "{k} into next {st}"}
		if !s.space {
			forms = append(forms, "1 {s}", "{s} 1")
		}
		return text(v.say(forms...), blanks...)
	case is(s.m, 1):
		return text(v.say("{n} {s} in next {st}", "work {n} {s} in next {st}", "{n} {k} in the next {st}", "{n} {s} into next {st}"), blanks...)
	case is(s.n, 1):
		forms := []string{"{k} in next {m} {sts}", "{k} in each of next {m} {sts}", "1 {k} in each of next {m} {sts}", "{k} in each of the next {m} {sts}",
			"{k} in the next {m} {sts}", "1 {k} in next {m} {sts}", "work {k} in next {m} {sts}"}
		if !s.space {
			forms = append(forms, "{m} {s}", "{s} {d}", "work {m} {s}", "{s} in next {m}")
		}
		return text(v.say(forms...), blanks...)
	}
	return text(v.say("{n} {s} in each of next {m} {sts}", "{n} {k} in each of the next {m} {sts}", "work {n} {s} in each of next {m} {sts}"), blanks...)
}

// sayTimes words something that is done m times, each time further on.
func (v *voice) sayTimes(m sized, word string) string {
	if is(m, 1) {
		return v.say(word, word, word+" 1", "1 "+word)
	}
	forms := []string{word + " {m} times", word + " x {d}", "{m} " + word, "(" + word + ") {m} times", "[" + word + "] {m} times"}
	if word == "inc" {
		forms = append(forms, "inc in next {m} {sts}", "inc in each of next {m} {sts}")
	}
	return text(v.say(forms...), "{m}", v.num(m), "{d}", v.digits(m), "{sts}", v.noun("st", true))
}

func (v *voice) together(s step) string {
	word := v.short(fmt.Sprintf("%s%dtog", s.stitch, s.n[0]))
	if s.own && is(s.n, 2) {
		word = v.say(word, "dec")
	}
	if is(s.m, 1) && word != "dec" {
		return text(v.say(word, word+" over next {n} {sts}", word+" over the next {n} {sts}"), "{n}", v.num(s.n), "{sts}", v.noun(s.noun, true))
	}
	return v.sayTimes(s.m, word)
}

func (v *voice) chain(n sized) string {
	return text(v.say("ch {n}", "ch {n}", "chain {n}", "ch-{d}", "{d} ch"), "{n}", v.num(n), "{d}", v.digits(n))
}

// digits writes a number in digits.
func (v *voice) digits(n sized) string {
	if uniform(n) {
		return strconv.Itoa(n[0])
	}
	return v.sizes(n)
}

func (v *voice) group(s step) string {
	parts := make([]string, len(s.parts))
	for i, p := range s.parts {
		switch {
		case p.verb == chain:
			parts[i] = "ch " + v.digits(p.n)
		case is(p.n, 1):
			parts[i] = v.short(p.stitch)
		default:
			parts[i] = v.digits(p.n) + " " + v.short(p.stitch)
		}
	}
	last := len(parts) - 1
	if s.space && !slices.ContainsFunc(s.parts, func(p step) bool { return p.verb != chain && is(p.n, 1) }) && v.pick(4) == 3 {
		return text("{p} in next {st}; ", "{p}", strings.Join(parts, ", "), "{st}", v.noun(s.noun, false))
	}
	return text(v.say("({p}) in next {st}", "({p}) all in next {st}", "[{p}] in next {st}", "({p}) in the next {st}", "in next {st} work {q} and {z}; "),
		"{p}", strings.Join(parts, ", "), "{q}", strings.Join(parts[:last], ", "), "{z}", parts[last], "{st}", v.noun(s.noun, false))
}

func (v *voice) each(s step, round bool) string {
	blanks := []string{"{k}", v.long(s.stitch), "{s}", v.short(s.stitch), "{n}", v.num(s.n), "{a}", along(round), "{w}", whole(round), "{st}", v.noun(s.noun, false), "{sts}", v.noun(s.noun, true)}
	switch {
	case s.limit == toLast:
		to := v.toLast(s)
		forms := []string{"{k} in each {st} " + to, "{k} in each {st} {a} " + to, "{k} " + to}
		if !is(s.n, 1) {
			forms = []string{"{n} {s} in each {st} " + to, "work {n} {s} in each {st} {a} " + to}
		}
		return text(v.say(forms...), blanks...)
	case is(s.n, 1):
		return text(v.say("{k} in each {st} {a}", "{k} in each {st} to end", "{k} {a}", "1 {k} in each {st} {a}", "{k} in every {st} {a}",
			"{k} in each of the remaining {sts}", "{k} in next {st} and in each {st} {a}", "work 1 {k} in each", "{k} in back loop of each {st} {a}",
			"{s} in both loops of each {st}", "{k} in all {sts} {a}", "{s} {w}", "work {k} in {w}", "{k} in each and every {st} {a}"), blanks...)
	}
	return text(v.say("{n} {s} in each {st} {a}", "work {n} {s} in each {st} {a}", "{n} {k} in every {st} {a}"), blanks...)
}

func (v *voice) turns(s step, round bool) string {
	to := along(round)
	if s.limit == toLast {
		to = v.toLast(s)
	} else if v.pick(2) == 1 {
		to = "to end"
	}
	if s.limit == toEnd && v.pick(3) == 2 {
		return text(v.say("{a} in odd sts, {b} in even sts", "{b} in every even st and {a} in every odd st", "{a} in odd-numbered sts and {b} in even-numbered sts"),
			"{a}", v.short(s.parts[0].stitch), "{b}", v.short(s.parts[1].stitch))
	}
	return text(v.say("{a} and {b} alternately {to}", "1 {a}, 1 {b} alternately {to}", "work {a} and {b} alternately {to}", "alternate {a} and {b} {to}",
		"alternate between {a} and {b} {to}", "alternating {a} and {b} {to}", "[{a}, {b}] alternately {to}", "{a}, {b}, keep alternating {to}",
		"{a}, {b}, rep {a} and {b} {to}", "{a}, keep alternating {a} and {b} {to}"),
		"{a}", v.short(s.parts[0].stitch), "{b}", v.short(s.parts[1].stitch), "{to}", to)
}

func whole(round bool) string {
	if round {
		return "the whole round"
	}
	return "the whole row"
}

func along(round bool) string {
	if round {
		return "around"
	}
	return "across"
}

// toLast words how many places are left.
func (v *voice) toLast(s step) string {
	if is(s.last, 1) {
		return text(v.say("to last {st}", "to last {st}", "until 1 {st} remains", "until only 1 {st} is left"), "{st}", v.noun(s.noun, false))
	}
	return text(v.say("to last {n} {sts}", "to last {n} {sts}", "until {n} {sts} remain", "until only {n} {sts} are left", "until there are {n} {sts} left", "until you reach the last {n} {sts}"),
		"{n}", v.num(s.last), "{sts}", v.noun(s.noun, true))
}

func (v *voice) repeat(s step, round bool) string {
	if v.unrolled {
		var out []string
		for range s.m[0] {
			out = append(out, v.steps(s.parts, ", ", round))
		}
		return strings.Join(out, ", ")
	}
	body := strings.TrimSuffix(v.steps(s.parts, ", ", round), "; ")
	open, shut := "[", "]"
	if !strings.ContainsAny(body, "()[]*;") && v.pick(2) == 1 {
		open, shut = "(", ")"
	}
	starred := !strings.ContainsAny(body, "*;")
	var forms []string
	switch s.limit {
	case toEnd:
		forms = []string{"[{b}] {a}", "[{b}] to end", "[{b}] rep {a}"}
		if starred {
			forms = append(forms, "*{b}; rep from * {a}", "*{b}; repeat from * {a}", "*{b}, rep from * to end", "*{b}; rep from * to * {a}", "*{b}*; rep from * to * {a}",
				"*{b}* {a}", "*{b}; rep from * all the way {a}")
		}
	case toLast:
		to := v.toLast(s)
		forms = []string{"[{b}] " + to, "[{b}] {a} " + to}
		if starred {
			forms = append(forms, "*{b}; rep from * "+to, "*{b}; rep from * {a} "+to, "*{b}, repeat from * "+to)
		}
	default:
		forms = v.timesForms(s.m, starred)
		if uniform(s.m) && !is(s.m, 1) && starred && !strings.Contains(body, `"`) {
			forms = append(forms, `"{b}" {m} times`, `"{b}" x {d}`)
		}
	}
	return text(v.say(forms...), "{b}", body, "{m}", v.num(s.m), "{d}", v.digits(s.m), "{r}", v.num(plus(s.m, -1)), "[", open, "]", shut, "{a}", along(round))
}

// timesForms lists the ways to say how often a repeat is worked.
func (v *voice) timesForms(m sized, starred bool) []string {
	if is(m, 1) {
		return []string{"[{b}] once"}
	}
	forms := []string{"[{b}] {m} times", "[{b}] x {d}", "[{b}] × {d}"}
	if uniform(m) {
		forms = append(forms, "[{b}] {d}x")
	}
	if is(m, 2) {
		forms = append(forms, "[{b}] twice")
	}
	if !starred || slices.Min(m) < 2 {
		return forms
	}
	if is(m, 2) {
		return append(forms, "*{b}; rep from * once more")
	}
	if v.settled && !v.exact && v.pick(4) == 3 {
		v.settled = false
		return []string{"*{b}; rep from * {r} times", "*{b}; rep from * {m} times"}
	}
	return append(forms, "*{b}; rep from * {r} more times", "*{b}; rep from * {r} times more", "*{b}, repeat from * {r} more times")
}

// steps words a list of steps.
func (v *voice) steps(steps []step, sep string, round bool) string {
	var b strings.Builder
	for i, s := range steps {
		if s.m != nil && is(s.m, 0) && s.limit == times || v.unsaid(steps, i) {
			continue
		}
		if b.Len() > 0 && !strings.HasSuffix(b.String(), "; ") {
			b.WriteString(sep)
		}
		w := v.step(s, round)
		if strings.HasPrefix(sep, ".") {
			w = capital(w)
		}
		b.WriteString(w)
	}
	return b.String()
}

// unsaid tells whether a skip goes without saying: what comes next is worked in a
// space, which is found by itself.
func (v *voice) unsaid(steps []step, i int) bool {
	if steps[i].verb != skip || steps[i].space || i+1 == len(steps) || v.exact {
		return false
	}
	next := steps[i+1]
	return next.space && (next.verb == work || next.verb == group) && v.pick(3) == 2
}

// capital writes the first letter large, behind any star or bracket.
func capital(s string) string {
	for i, r := range s {
		if unicode.IsLetter(r) {
			return s[:i] + string(unicode.ToUpper(r)) + s[i+1:]
		}
		if !strings.ContainsRune("*[(", r) {
			break
		}
	}
	return s
}

// lead words a beginning chain.
func (v *voice) lead(r row) string {
	said := v.exact || r.stands == "hdc" || !r.counts && r.stands != "sc" || v.pick(2) == 0
	ch := fmt.Sprintf("ch %d", r.height)
	v.settled = said || r.stands == "sc"
	switch {
	case r.height == 0 || !said:
		return ch
	case r.counts:
		return ch + text(v.say(" (counts as {s})", " (counts as 1 {s})", " (counts as first {s})", ", counts as {s}"), "{s}", v.short(r.stands))
	}
	return ch + v.say(" (does not count as a st)", " (does not count as st)", " (does not count as a stitch)", " (not counted as a st)")
}

// onChain words the first stitch of a row on the foundation chain.
func (v *voice) onChain(r row) string {
	s := r.steps[0]
	out := text("{k} in {f} ch from hook", "{k}", v.long(s.stitch), "{f}", ordinal(r.from))
	if !is(s.n, 1) {
		out = text("{n} {k} in {f} ch from hook", "{n}", v.num(s.n), "{k}", v.short(s.stitch), "{f}", ordinal(r.from))
	}
	if r.from == 2 && r.stands == "sc" && is(s.n, 1) && !v.exact && v.pick(8) == 7 {
		out = text(v.say("skip the nearest ch, {k} in next ch", "miss the chain nearest the hook, {k} in next ch"), "{k}", v.long(s.stitch))
	}
	skipped := r.from - 1
	said := v.exact || r.stands == "hdc" || !r.counts || v.pick(2) == 0
	v.settled = said || r.stands == "sc"
	switch {
	case r.stands == "sc" || !said:
	case r.counts:
		out += text(v.say(" (skipped {c} ch count as {s})", " (skipped {c} chs count as 1 {s})", " (the skipped {c} ch count as {s})"), "{c}", strconv.Itoa(skipped), "{s}", v.short(r.stands))
	default:
		out += text(v.say(" (skipped {c} ch do not count as a st)", " (skipped {c} chs do not count as a stitch)"), "{c}", strconv.Itoa(skipped))
	}
	return out
}

func ordinal(n int) string {
	switch {
	case n%100 >= 11 && n%100 <= 13:
	case n%10 == 1:
		return fmt.Sprintf("%dst", n)
	case n%10 == 2:
		return fmt.Sprintf("%dnd", n)
	case n%10 == 3:
		return fmt.Sprintf("%drd", n)
	}
	return fmt.Sprintf("%dth", n)
}

// label words what stands before a row.
func (v *voice) label(number int, round bool, body string) string {
	side := "(WS)"
	if number%2 == 1 {
		side = "(RS)"
	}
	forms := []string{"Row {n}: ", "Row {n}. ", "R{n}: ", "{o} row: ", "ROW {n}: ", "Row {n}— ", "Row {n} " + side + ": "}
	if round {
		forms = []string{"Rnd {n}: ", "Round {n}: ", "R{n}: ", "{o} rnd: ", "RND {n}. ", "Rnd {n}— ", "Rd {n}: "}
	}
	form := v.say(forms...)
	if unicode.IsDigit(rune(body[0])) {
		form = forms[0] // `Row 3. 2 sc` and `Row 3— 2 sc` may be taken for numbers that belong together
	}
	return text(form, "{n}", strconv.Itoa(number), "{o}", ordinal(number))
}

// counted words a stated count: what each size made.
func (v *voice) counted(made [][]string) string {
	total := make(sized, len(made))
	kinds := map[string]sized{}
	var order []string
	for size, list := range made {
		for _, name := range list {
			if kinds[name] == nil {
				kinds[name] = make(sized, len(made))
				order = append(order, name)
			}
			kinds[name][size]++
			if !isSpace(name) {
				total[size]++
			}
		}
	}
	plain, spaced, only := true, false, ""
	for _, name := range order {
		plain = plain && slices.Min(kinds[name]) > 0 && (isSpace(name) || names[name] != [4]string{})
		spaced = spaced || isSpace(name)
		only = name
	}
	var parts []string
	switch {
	case v.exact || plain && len(order) > 1 && len(order) < 4 && v.pick(2) == 1:
		for _, name := range order {
			if !isSpace(name) {
				parts = append(parts, v.digits(kinds[name])+" "+v.short(name))
			}
		}
	case plain && len(order) == 1 && v.pick(2) == 1:
		parts = append(parts, v.digits(total)+" "+v.short(only))
	case len(made) == 1 && !v.exact && v.pick(4) == 3:
		parts = append(parts, v.digits(total))
	default:
		parts = append(parts, v.digits(total)+" "+v.say("sts", "stitches"))
	}
	bare := !strings.Contains(parts[0], " ")
	if spaced && !bare && (v.exact || v.pick(2) == 0) {
		for _, name := range order {
			if isSpace(name) {
				parts = append(parts, v.digits(kinds[name])+" "+name+"s")
			}
		}
	}
	count := strings.Join(parts, ", ")
	switch v.pick(7) {
	case 1:
		return "[" + count + "]"
	case 2:
		return "{" + count + "}"
	case 3:
		if len(parts) == 1 && !bare {
			return "— " + count + "."
		}
	case 4:
		if len(parts) == 1 && !bare {
			return "= " + count + "."
		}
	case 5:
		return v.say("--> ", "-> ", "→ ", "» ", "==> ", ">> ") + count + v.say("", ".")
	}
	return "(" + count + ")"
}

// reference words a row that is worked like the one with a number.
func (v *voice) reference(number int, round bool) string {
	noun := "Row"
	if round {
		noun = "Rnd"
	}
	return text(v.say("Rep {row} {n}", "Repeat {row} {n}", "As {row} {n}", "Same as {row} {n}", "Work as for {row} {n}"), "{row}", noun, "{n}", strconv.Itoa(number))
}

// end words how a row closes.
func (v *voice) end(p *piece, i int) string {
	r := p.rows[i]
	switch {
	case p.shape == flat && v.chainLast && i+1 < len(p.rows) && p.rows[i+1].height > 0:
		return v.say("; ", ", ") + v.lead(p.rows[i+1]) + v.say(", turn.", "; turn.", ", turn the work.")
	case p.shape == flat:
		return v.say("; turn.", ", turn.", ". Turn.", "; turn work.")
	case p.shape == spiral && i == 0:
		return v.say("; do not join.", "; do not join, place marker in first st.", ".")
	case p.shape == spiral:
		return "."
	case r.counts:
		return text(v.say("; join with sl st in top of beg ch-{h}.", "; join.", "; join with sl st in top of ch-{h}.", "; sl st in top of beg ch-{h} to join.",
			", sl st to top of beg ch-{h} to join.", "; join with sl st in {o} ch of beg ch-{h}."), "{h}", strconv.Itoa(r.height), "{o}", ordinal(r.height))
	}
	return text(v.say("; join with sl st in first st.", "; join.", "; sl st in first st to join.", ", join with sl st to first st.", "; join with sl st in first {s}."),
		"{s}", v.short(firstStitch(r.steps)))
}

// firstStitch is the stitch that a row begins with.
func firstStitch(steps []step) string {
	for _, s := range steps {
		if s.stitch != "" {
			return s.stitch
		}
		if inner := firstStitch(s.parts); inner != "" {
			return inner
		}
	}
	return ""
}

// write words the whole piece, each row with the count given for it: by row,
// then by size.
func (v *voice) write(p *piece, counts [][][]string) string {
	v.list = v.pick(3)
	v.chainLast = p.shape == flat && v.pick(3) == 2
	var b strings.Builder
	terms := "US"
	if v.uk {
		terms = "UK"
	}
	fmt.Fprintf(&b, "Pattern: Hedge bank sampler\nTerms: %s\n", terms)
	if p.sizes > 1 {
		sizeNames := make([]string, p.sizes)
		for i := range sizeNames {
			sizeNames[i] = string(rune('A' + i))
		}
		fmt.Fprintf(&b, "Sizes: %s (%s)\n", sizeNames[0], strings.Join(sizeNames[1:], ", "))
	}
	b.WriteString("\nPiece: Sampler\n")
	lines := v.start(p)
	for i := range p.rows {
		line := v.row(p, i)
		if i == 0 && strings.HasSuffix(lines, ", ") {
			line = lines + line
			lines = ""
		}
		line = capital(line)
		b.WriteString(lines)
		lines = ""
		b.WriteString(v.label(i+1, p.shape != flat, line))
		end := v.end(p, i)
		if p.rows[i].again && !v.chainLast && v.pick(2) == 1 {
			// the row referred to turns or joins
			line, end = v.reference(i, p.shape != flat), "."
		}
		if before, ok := strings.CutSuffix(line, "; "); ok {
			// what was named place first is closed by more than a comma
			line, end = before, strings.Replace(end, ",", ";", 1)
		}
		b.WriteString(line + end)
		if counts != nil {
			made := make([][]string, p.sizes)
			for size := range made {
				made[size] = counts[size][i]
			}
			b.WriteString(" " + v.counted(made))
		}
		b.WriteString("\n")
	}
	b.WriteString("Fasten off.\n")
	return b.String()
}

// start words what the first row is worked on: a line of its own, or the
// beginning of the first row, which ends in a comma.
func (v *voice) start(p *piece) string {
	if p.chains != nil {
		return text(v.say("Ch {n}.\n", "Chain {n}.\n", "With A, ch {n}.\n", "ch {n}, "), "{n}", v.digits(p.chains))
	}
	return v.say("Make a magic ring.\n", "Ch 4, join with sl st to form a ring.\n", "Magic ring.\n", "Ch 5, sl st in first ch to form ring.\n", "With A, make a magic ring.\n")
}

// row words one row up to its end.
func (v *voice) row(p *piece, i int) string {
	r := p.rows[i]
	round := p.shape != flat
	sep := v.say(", ", ", ", "; ", ". ")
	var done []string
	steps := v.ends(p, i)
	switch {
	case r.from > 0:
		done = append(done, v.onChain(r))
		steps = steps[1:]
		if len(steps) == 1 && steps[0].verb == each && steps[0].limit == toEnd && is(steps[0].n, 1) && steps[0].stitch == r.stands && v.pick(2) == 0 {
			return done[0] + v.say(" and in each ch across", " and in each ch to end", " and each ch across", " and in each remaining ch")
		}
	case r.height == 0:
		v.settled = true
	case !v.chainLast || i == 0:
		done = append(done, v.lead(r))
	}
	if rest := v.steps(steps, sep, round); rest != "" {
		if len(done) > 0 && sep == ". " {
			rest = capital(rest)
		}
		done = append(done, rest)
	}
	return strings.Join(done, sep)
}

// ends gives a row's steps, the first and the last perhaps with the words for
// the ends of the row below: `in first st`, `in top of tch`.
func (v *voice) ends(p *piece, i int) []step {
	steps := slices.Clone(p.rows[i].steps)
	single := func(s step) bool {
		return s.verb == work && is(s.m, 1) && is(s.n, 1) && !s.space && s.noun != "ring"
	}
	if p.rows[i].from > 0 || i == 0 {
		return steps
	}
	last := len(steps) - 1
	if single(steps[0]) && p.rows[i].height > 0 && !p.rows[i].counts {
		steps[0].place = v.say("", "first st", "first "+v.noun(steps[0].noun, false))
		if p.shape == joined {
			steps[0].place = v.say("", "first st", "same st", "same st as join")
		}
	}
	if last == 0 || !single(steps[last]) {
		return steps
	}
	reaches := func() {
		if before := &steps[last-1]; steps[last].place != "" && before.verb == each && before.limit == toLast && is(before.last, 1) && v.pick(2) == 1 {
			before.limit = toEnd // `dc in each st across, dc in last st`: it leaves that one
		}
	}
	if p.shape != flat || !p.rows[i-1].counts {
		steps[last].place = v.say("", "last st")
		reaches()
		return steps
	}
	// after the turn the last place is the turning chain of the row below
	steps[last].place = v.say("", "top of tch", "top of turning ch", "last st", "top of beg ch")
	reaches()
	return steps
}
