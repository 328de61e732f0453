package suggest

import (
	"slices"
	"strconv"
	"strings"

	"stitchproof/lang/stitch"
	"stitchproof/lang/stock"
	"stitchproof/lang/syntax"
)

// inHeader tells whether no instruction has come yet, and the line is none.
func (w *writing) inHeader() bool {
	if key, _, ok := strings.Cut(w.line, ":"); ok {
		return values[strings.ToLower(strings.TrimSpace(firstWord(key)))] != nil && !w.working()
	}
	return !w.working() && !strings.ContainsAny(w.line, ",.;")
}

func firstWord(s string) string {
	for _, known := range []string{"skill level", "turning chains"} {
		if strings.EqualFold(strings.TrimSpace(s), known) {
			return known
		}
	}
	word, _, _ := strings.Cut(strings.TrimSpace(s), " ")
	return word
}

// working tells whether the lines before this one hold an instruction.
func (w *writing) working() bool {
	return slices.ContainsFunc(w.file.Pieces, func(p *syntax.Piece) bool { return len(p.Rows) > 0 && p.Rows[0].At < w.lineStart() }) || beginsPiece(w.before)
}

// beginsPiece tells whether the last line before this one that says something is
// the heading of a piece.
func beginsPiece(before string) bool {
	lines := strings.Split(before, "\n")
	for _, line := range slices.Backward(lines[:len(lines)-1]) {
		if !blank(line) {
			return strings.HasPrefix(strings.ToLower(strings.Trim(line, "*# \t")), "piece:")
		}
	}
	return false
}

// keys are the fields that a header may have, each once; a yarn for each.
var keys = []struct{ key, about string }{
	{"Pattern", "what it is called"},
	{"Terms", "whose words the stitches are in, US or UK"},
	{"Skill level", "how much a maker has to know"},
	{"Sizes", "the smallest first, the others in brackets"},
	{"Hook", "in millimetres, and its label"},
	{"Yarn", "colour, weight and how much"},
	{"Gauge", "stitches and rows to a length"},
	{"Finished size", "measured when it is done"},
	{"Notions", "what else is needed"},
	{"Turning chains", "whether beginning chains count as stitches"},
	{"Stitch multiple", "what the foundation chain is a multiple of"},
}

// values are those that a field usually has.
var values = map[string]func() []Item{
	"terms":          func() []Item { return valued("US", "UK") },
	"skill level":    func() []Item { return valued("basic", "easy", "intermediate", "complex") },
	"sizes":          func() []Item { return []Item{template("{1:S} ({2:M, L, XL})", "one number for each size then")} },
	"hook":           hooks,
	"yarn":           weights,
	"gauge":          func() []Item { return []Item{template("{1:18} {2:sc} and {3:20} rows = {4:10 cm (4 in)}", "")} },
	"turning chains": turnings,
	"stitch":         func() []Item { return []Item{template("{1:6} + {2:2}", "chains of a repeat, and chains more")} },
}

func valued(texts ...string) []Item {
	items := make([]Item, len(texts))
	for i, text := range texts {
		items[i] = Item{Kind: Value, Text: text}
	}
	return items
}

// hooks are the published sizes of hooks for yarn, in millimetres with their US
// label.
func hooks() []Item {
	var out []Item
	seen := map[string]bool{}
	for _, l := range stock.Labels() {
		text := strconv.FormatFloat(l.MM.Low, 'f', -1, 64) + " mm (" + l.String() + ")"
		if usual, ok := stock.UsualLabel("US", l.MM.Low); l.Kind != "US" || l.MM.Width() > 0 || !ok || usual.String() != l.String() || seen[text] {
			continue
		}
		seen[text] = true
		out = append(out, Item{Kind: Value, Text: text})
	}
	return out
}

// weights are the standard weights of yarn.
func weights() []Item {
	var out []Item
	for _, weight := range stock.Weights() {
		out = append(out, template("{1:colour}, "+weight.Name+" ("+strconv.Itoa(weight.Number)+"), {2:50 m (55 yd)}", "hook "+weight.Hook.String()+" mm"))
	}
	return out
}

// turnings are what is said of the beginning chains of the plain stitches.
func turnings() []Item {
	var out []Item
	seen := map[int]bool{}
	for _, k := range stitch.All() {
		if k.Class != stitch.Plain || k.Turning == 0 || k.Turning > 4 || seen[k.Turning] {
			continue
		}
		seen[k.Turning] = true
		chain := "ch " + strconv.Itoa(k.Turning)
		out = append(out, Item{Kind: Value, Text: chain + " does not count as a st"}, Item{Kind: Value, Text: chain + " counts as " + k.Abbreviation(stitch.US)})
	}
	return out
}

// header suggests keys at the beginning of a line and values after a colon.
func (w *writing) header() {
	key, value, found := strings.Cut(w.line, ":")
	if found {
		for _, item := range values[strings.ToLower(firstWord(key))]() {
			w.offer(strings.TrimLeft(value, " "), item)
		}
		return
	}
	listed := w.listed()
	so := strings.TrimLeft(w.line, " ")
	for _, k := range keys {
		text := k.key
		if text == "Yarn" {
			text += " " + nextYarn(listed)
		} else if slices.ContainsFunc(listed, func(f *syntax.Field) bool { return strings.EqualFold(f.Key, k.key) }) {
			continue
		}
		w.offer(so, Item{Kind: Key, Text: text + ": ", Detail: k.about})
	}
	w.offer(so, template("Special stitches\n{1:shell}: {2:5 dc in next st}.\n", "the pattern's own stitches"))
	w.pieces(so)
}

// listed are the fields that the header has on other lines.
func (w *writing) listed() []*syntax.Field {
	line := w.file.Text.Line(w.file.Text.LineOf(w.at))
	return slices.DeleteFunc(slices.Clone(w.file.Header), func(f *syntax.Field) bool { return line.Start <= f.Span.Start && f.Span.Start <= line.End })
}

// nextYarn is the letter after those that the yarns have.
func nextYarn(listed []*syntax.Field) string {
	letter := 'A'
	for _, f := range listed {
		if f.Key == "yarn" && len(f.Name) == 1 && rune(f.Name[0]) >= letter {
			letter = rune(f.Name[0]) + 1
		}
	}
	return string(min(letter, 'Z'))
}

// pieces suggests the heading of a piece with its beginning.
func (w *writing) pieces(so string) {
	w.offer(so, template("Piece: {1:Leaf}\nCh {2:12}.\nRow 1: Sc in 2nd ch from hook and in each ch across. ({3:11} sts)\n", "worked in rows"))
	w.offer(so, template("Piece: {1:Cup}\nRnd 1: {2:6} sc in magic ring. ({2:6} sts)\n", "worked in rounds"))
}
