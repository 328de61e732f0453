package suggest

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/inflect"
	"stitchproof/lang/rework"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// beginsLine tells whether a line begins here that need not go on with the one
// before.
func (w *writing) beginsLine() bool {
	return !strings.ContainsAny(w.line, ":,;.([*")
}

// labels suggests the next row, a new piece and the end.
func (w *writing) labels() {
	so := strings.TrimLeft(w.line, " \t")
	if row := w.lastLabelled(); row != nil && !beginsPiece(w.before) {
		text := row.Label.Text
		if digits := strings.IndexAny(text, "0123456789"); digits > 0 {
			numbers := row.Label.Each(0)
			w.offer(so, Item{Kind: Label, Text: text[:digits] + strconv.Itoa(numbers[len(numbers)-1]+1) + ": ", Detail: "after " + row.Label.Name()})
		}
	} else {
		w.offer(so, Item{Kind: Label, Text: "Row 1: ", Detail: "worked back and forth"})
		w.offer(so, Item{Kind: Label, Text: "Rnd 1: ", Detail: "worked round"})
	}
	w.pieces(so)
	w.offer(so, Item{Kind: Step, Text: "Fasten off."})
}

// lastLabelled is the numbered row before the line that its piece comes to last,
// nil for none.
func (w *writing) lastLabelled() *syntax.Row {
	for _, piece := range slices.Backward(w.file.Pieces) {
		if piece.Span.Start >= w.lineStart() {
			continue
		}
		for _, row := range slices.Backward(piece.Rows) {
			if row.At < w.lineStart() && row.Label.Kind == syntax.Numbered && len(row.Label.Numbers) > 0 {
				return row
			}
		}
		return nil
	}
	return nil
}

// clause suggests what a clause may say, from where it begins.
func (w *writing) clause() {
	start := max(strings.LastIndexAny(w.before, separators)+1, len(w.before)-len(w.line))
	so := w.before[start:]
	if strings.TrimSpace(w.line[:len(w.line)-len(so)]) == "" && !w.beginsLine() {
		start = strings.LastIndexAny(w.before, separators) + 1 // the clause goes on from the line before
		so = w.before[start:]
	}
	so = strings.TrimLeft(so, " \t\r\n")
	if closed := strings.LastIndexAny(so, ")]}"); closed >= 0 {
		w.after(len(w.before)-len(so)+closed, strings.TrimLeft(so[closed+1:], " "))
		return
	}
	s := w.standing(len(w.before) - len(so))
	file := s.fabric.File
	w.count(s, so)
	w.returns(s, so)
	w.closing(s, so)
	for head, rest := range splits(so) {
		tokens := syntax.Lex(head, file.Vocab)
		switch last := len(tokens) - 1; {
		case last < 0 || last == 0 && tokens[0].Kind == syntax.Number:
			w.stitches(s, rest)
		case tokens[last].Kind == syntax.Stitch:
			w.places(s, rest, tokens[last].Stitch.In(s.fabric.Dialect), "in ")
		case last == 0 && tokens[0].Canon == "skip":
			w.places(s, rest, nil, "")
		case tokens[last].Canon == "with" || tokens[last].Canon == "change" || tokens[last].Canon == "join" && last == 0 || tokens[last].Canon == "to" && tokens[0].Canon == "change":
			w.yarns(file, rest)
		}
	}
	w.templates(s, so)
}

// splits cuts words in two at every gap between them, and at either end.
func splits(so string) func(func(head, rest string) bool) {
	return func(yield func(string, string) bool) {
		for i := 0; i <= len(so); i++ {
			if (i == 0 || so[i-1] == ' ') && !yield(so[:i], so[i:]) {
				return
			}
		}
	}
}

// stitches suggests the stitches of the pattern's dialect: the pattern's own, then
// those that it uses, the oftenest first, then the trade's plain ones.
func (w *writing) stitches(s *state, so string) {
	if strings.Contains(so, " ") {
		return
	}
	file, d := s.fabric.File, s.fabric.Dialect
	for _, def := range file.Definitions {
		if def.Special {
			name := slices.MinFunc(def.Names, func(a, b string) int { return len(a) - len(b) })
			w.offer(so, Item{Kind: Own, Text: name, Detail: "the pattern's own", Word: name})
		}
	}
	used := map[*stitch.Stitch]int{}
	for row := range s.fabric.Rows() {
		for _, t := range row.Tree.Tokens {
			if k := t.Stitch.In(d); k != nil {
				used[k]++
			}
		}
	}
	all := slices.Clone(stitch.All())
	slices.SortStableFunc(all, func(a, b *stitch.Stitch) int { return cmp.Compare(used[b], used[a]) })
	for _, k := range all {
		if used[k] == 0 && !basic(k) && so == "" {
			continue
		}
		if term := k.Term(d); term.Abbr != "" {
			w.offer(so, Item{Kind: Stitch, Text: term.Abbr, Detail: term.Name, Word: term.Abbr})
		}
	}
	w.offer(so, Item{Kind: Stitch, Text: "ch", Detail: "chain", Word: "ch"})
}

// basic tells a stitch that any pattern may need.
func basic(k *stitch.Stitch) bool {
	return k.Class == stitch.Plain || k.Class == stitch.Slip || k.ID == "inc" || k.ID == "dec"
}

// places suggests where stitches go, from what is there. Each begins with a word
// such as `in `.
func (w *writing) places(s *state, so string, k *stitch.Stitch, in string) {
	offer := func(text, detail string) { w.offer(so, Item{Kind: Place, Text: in + text, Detail: detail}) }
	switch {
	case s.ring && in != "":
		offer("ring", "")
		return
	case s.chain != nil && in != "":
		if k != nil && k.Turning > 0 {
			fromHook(offer, k.Turning+1, s.chain)
		}
		return
	case s.known && !s.some() && len(s.ahead) == 0:
		return // nothing is left
	}
	noun := "st"
	if len(s.ahead) > 0 && s.ahead[0].Name == "ch" {
		noun = "ch"
	}
	left, sure := "", s.known && len(s.left) > 0 && !s.rises()
	if sure {
		left = syntax.Num{Vals: s.left}.String() + " left"
	}
	if n := len(s.open); n > 0 && in != "" {
		name := s.open[n-1].Name
		if name != "" {
			offer("each rem ch of "+s.row.Tree.AsWritten(name), syntax.Num{Vals: s.open[n-1].Left}.String()+" left")
		}
	}
	w.offer(so, Item{Kind: Place, Text: in + "next " + noun, Detail: left})
	if sure && s.some() {
		w.last(s, offer, noun)
	}
	if in != "" {
		offer("each "+noun+" "+s.way(), left)
		if sure && s.total[0] == 0 && noun == "st" {
			offer("first st", left)
		}
	}
	several := template(in+"next {1:2} "+noun+"s", left)
	several.Kind = Place
	w.offer(so, several)
	for _, sp := range s.spaces() {
		offer("next "+sp, "")
	}
	for _, p := range s.ahead {
		if len(s.ahead) > 1 && !strings.HasSuffix(p.Name, " sp") {
			offer("next "+p.Name, "")
		}
	}
	if sure && in != "" && s.total[0] > 0 {
		offer("same "+noun, "")
	}
}

// fromHook suggests the chain that a stitch is worked into first, and those after
// it, where there are so many.
func fromHook(offer func(text, detail string), nth int, chain []int) {
	first, detail := syntax.Nth(nth)+" ch from hook", "of "+syntax.Num{Vals: chain}.String()
	if shortest := slices.Min(chain); shortest > nth {
		offer(first, detail)
		offer(first+" and in each ch across", detail)
	} else if shortest == nth {
		offer(first, detail)
	}
}

// last suggests all that is left, as the last so many.
func (w *writing) last(s *state, offer func(text, detail string), noun string) {
	if slices.Contains(s.left, 0) {
		return // in some size nothing is left
	}
	if n := (syntax.Num{Vals: s.left}).String(); n == "1" {
		offer("last "+noun, "the only one left")
	} else {
		offer("last "+n+" "+inflect.Plural(strings.TrimSuffix(noun, "s")), "all that are left")
	}
}

// way is how a row goes to its end.
func (s *state) way() string {
	if s.row != nil && s.row.Tree.Label.Round {
		return "around"
	}
	return "across"
}

// returns suggests the way back from the branches that are open.
func (w *writing) returns(s *state, so string) {
	for i := len(s.open) - 1; i >= 0; i-- {
		to := "stem"
		if i > 0 {
			to = s.row.Tree.AsWritten(s.open[i-1].Name)
		}
		name := s.row.Tree.AsWritten(s.open[i].Name)
		detail := "branch " + name + " has " + syntax.Num{Vals: s.open[i].Left}.String() + " left"
		w.offer(so, Item{Kind: Step, Text: "return to " + to, Detail: detail})
	}
}

// closing suggests how a row ends where nothing is left to work into.
func (w *writing) closing(s *state, so string) {
	if !s.known || s.some() || len(s.total) == 0 || s.total[0] == 0 || len(s.open) > 0 {
		return
	}
	if s.way() == "around" {
		first := "st"
		if s.last != nil {
			first = s.last.Abbreviation(s.fabric.Dialect)
		}
		slip := stitch.ByID("sl st")
		if slip != nil {
			w.offer(so, Item{Kind: Step, Text: slip.Abbreviation(s.fabric.Dialect) + " in first " + first + " to join", Detail: "the round is full"})
		}
		return
	}
	w.offer(so, Item{Kind: Step, Text: "turn", Detail: "the row is full"})
}

// count suggests the count that the row has come to.
func (w *writing) count(s *state, so string) {
	if s.row == nil || len(s.total) == 0 || s.total[0] == 0 {
		return
	}
	from := len(w.before) - len(so)
	before := strings.TrimRight(w.before[:from], " \t\r\n")
	bracket := strings.HasSuffix(before, "(")
	if bracket {
		from = len(before) - 1
		before = strings.TrimRight(before[:from], " \t\r\n")
	}
	if !bracket && !strings.HasSuffix(before, ".") || !strings.HasSuffix(before, ".") && !strings.HasSuffix(before, ")") {
		return
	}
	row := lastRow(w.work(before))
	if row == nil || row.Stated != nil {
		return
	}
	said := rework.Count(row)
	if said == "" {
		return
	}
	if stated := lastRow(w.work(before + " " + said)); stated != nil && stated.Agrees() == fabric.Agrees {
		w.offer(w.before[from:], Item{Kind: Count, Text: said, Detail: "what the row makes"})
	}
}

// yarns suggests the yarns that are listed.
func (w *writing) yarns(file *syntax.File, so string) {
	for _, f := range file.Header {
		if f.Key == "yarn" && f.Name != "" {
			w.offer(so, Item{Kind: Yarn, Text: f.Name, Detail: f.Value})
		}
	}
}

// after suggests what may be said of a bracket that has closed at an offset: as
// often as it goes into what is left, or all of it in one place.
func (w *writing) after(closed int, so string) {
	opened := opening(w.before[:closed])
	if opened < 0 {
		return
	}
	before := w.standing(opened)
	if w.before[opened] == '[' {
		if n, ok := times(before, w.standing(closed)); ok {
			w.offer(so, Item{Kind: Step, Text: n + " times", Detail: "to the end"})
		}
		w.offer(so, Item{Kind: Step, Text: before.way()})
		w.offer(so, template("{1:6} times", ""))
	}
	w.places(before, so, nil, "in ")
}

// opening is where the bracket opens that a text is in, -1 for none.
func opening(text string) int {
	depth := 0
	for i := len(text) - 1; i >= 0; i-- {
		switch text[i] {
		case ')', ']', '}':
			depth++
		case '(', '[', '{':
			if depth == 0 {
				return i
			}
			depth--
		}
	}
	return -1
}

// times is how often a step goes into what is left before it, where that is a
// whole number in every size.
func times(before, after *state) (string, bool) {
	if !before.known || !after.known || len(before.left) != len(after.left) {
		return "", false
	}
	n := make([]int, len(before.left))
	for size, left := range before.left {
		used := left - after.left[size]
		if used <= 0 || left%used != 0 {
			return "", false
		}
		n[size] = left / used
	}
	return syntax.Num{Vals: n}.String(), true
}

// templates suggests repeats and branches.
func (w *writing) templates(s *state, so string) {
	if s.row == nil {
		w.offer(so, template("Ch {1:12}", ""))
		w.offer(so, Item{Kind: Step, Text: "Make a magic ring"})
		return
	}
	w.offer(so, template("[{1:sc in next st, inc}] {2:6} times", "a repeat"))
	w.offer(so, template("*{1:sc in next st, inc}; rep from * "+s.way(), "a repeat to the end"))
	name := nextBranch(s.row.Tree)
	home := "stem"
	if n := len(s.open); n > 0 {
		home = s.row.Tree.AsWritten(s.open[n-1].Name)
	}
	w.offer(so, template("branch {1:"+name+"}: ch {2:6}, sc in 2nd ch from hook and in each ch of {1:"+name+"}, return to "+home, "a twig"))
	w.offer(so, template("ch {1:3}", ""))
	w.offer(so, Item{Kind: Step, Text: "turn"})
}

// nextBranch is the letter after those that the branches of a row have.
func nextBranch(row *syntax.Row) string {
	letter := byte('a')
	syntax.Walk(row.Clauses, func(c syntax.Clause) {
		if b, ok := c.Node.(*syntax.Branch); ok && len(b.Name) == 1 && b.Name[0] >= letter {
			letter = b.Name[0] + 1
		}
	})
	return strings.ToUpper(string(min(letter, 'z')))
}
