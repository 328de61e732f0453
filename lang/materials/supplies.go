package materials

import (
	"slices"
	"strings"

	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// supplyLines are the lines that list what is needed: those of a list with a heading, also
// behind a blank line, and those before the work that list something by themselves: `5 mm hook;
// wool needle`.
func supplyLines(file *syntax.File) (headed, loose []source.Span) {
	begin := firstRow(file)
	headed = slices.Clone(file.Supplies)
	for _, paragraph := range paragraphs(file, begin) {
		var lists []source.Span
		for _, span := range paragraph {
			if !slices.Contains(headed, span) && supplied(file.Text.Slice(span)) > 0 {
				lists = append(lists, span)
			}
		}
		if n := len(headed); n > 0 && len(lists) > 0 && file.Text.LineOf(paragraph[0].Start)-file.Text.LineOf(headed[n-1].End) == 2 {
			headed = append(headed, paragraph...)
		} else {
			loose = append(loose, lists...)
		}
	}
	for _, def := range file.Definitions { // `A = bark brown DK, 30 m`
		if line := file.Text.Slice(def.Span); def.Span.Start < begin && coded.MatchString(line) && amountOf.MatchString(line) {
			loose = append(loose, def.Span)
		}
	}
	slices.SortFunc(loose, func(a, b source.Span) int { return a.Start - b.Start })
	return headed, loose
}

// paragraphs are the lines of prose before an offset, those together that stand below one another.
func paragraphs(file *syntax.File, end int) (out [][]source.Span) {
	for i, span := range file.Prose {
		switch {
		case span.Start >= end:
			return out
		case i > 0 && file.Text.LineOf(span.Start)-file.Text.LineOf(file.Prose[i-1].End) == 1:
			out[len(out)-1] = append(out[len(out)-1], span)
		default:
			out = append(out, []source.Span{span})
		}
	}
	return out
}

// supplied is how many things a line says by itself to be needed: a hook with its size,
// a weight of yarn by name and number, yarns by letters, a notion alone.
func supplied(line string) (things int) {
	for _, item := range items(line) {
		text := line[item.Start:item.End]
		if gaugeWords.MatchString(text) {
			continue
		}
		for _, part := range partsOf(text) {
			part := text[part.Start:part.End]
			if sizedHook.MatchString(part) && !fastener.MatchString(part) || slices.ContainsFunc(strings.Split(part, " and "), isNotion) {
				things++
			}
		}
		if describesYarn(text) {
			things++
		}
	}
	if things == 0 && coded.MatchString(line) && amountOf.MatchString(line) {
		things = 1
	}
	return things
}

// amountOf is an amount of yarn.
var amountOf = phrase.MustCompile(`\d ?(?:g|m|yds?|yards|oz|met(?:re|er)s|gram(?:me)?s)\b`)

// listed are so many things in lines below one another that these are a list.
const listed = 3

// inARow is how many things some lines that stand below one another name.
func inARow(text *source.Text, lines []source.Span) int {
	most, run := 0, 0
	for i, span := range lines {
		if i == 0 || text.LineOf(span.Start)-text.LineOf(lines[i-1].End) != 1 {
			run = 0
		}
		run += supplied(text.Slice(span))
		most = max(most, run)
	}
	return most
}

// sizedHook is a hook with its size beside it: `5 mm (US H-8) crochet hook`, `hook size H`.
var sizedHook = phrase.MustCompile(`\b(?:\d ?-?mm|(?:US|UK|[Ss]ize) ?[A-Z\d][-/.\dA-Z]*)\b[^.;,]{0,25}\b(?i:hooks?)\b|\b(?i:hooks?)\b(?:,? (?:US|UK|[Ss]ize|of))* ?\(?(?:[A-Z][-/]?\d*\b|\d[\d.,]* ?-?mm\b)`)

// gaugeWords tell of a sentence about the gauge, which may name the hook it is worked with.
var gaugeWords = phrase.MustCompile(`(?i)\b(?:gauge|tension|swatch)\b`)

// itemEnd parts the items of a list in a line.
var itemEnd = phrase.MustCompile(`;|[.!?](?:\s+|$)|\n`)

// items are what a line lists, between semicolons, full stops and ends of lines.
func items(line string) []source.Span {
	var out []source.Span
	start := 0
	for _, at := range append(itemEnd.FindAllStringIndex(line, -1), []int{len(line), len(line)}) {
		if at[0] > start && (abbreviated(line[start:at[0]]) || nextLetter.MatchString(line[at[0]:]) && hasLetter.MatchString(line[start:at[0]])) {
			continue
		}
		if strings.TrimSpace(line[start:at[0]]) != "" {
			out = append(out, source.Span{Start: start, End: at[0]})
		}
		start = at[1]
	}
	return out
}

// A description of several yarns may part them by semicolons: `in three colors: A
// (primrose), 300 m; B (moss), 200 m`.
var (
	hasLetter  = phrase.MustCompile(`(?:^|[\s(\[])(?:[A-Z]|MC|CC\d?)(?:\)|\]|:| [(\[\p{Ll}=–—-])`)
	nextLetter = phrase.MustCompile(`^;\s*(?:and )?(?:(?:[A-Z]|MC|CC\d?)(?::| ?[(\[=]| \p{Ll}| [–—-])|[^;,(]*[(\[](?:[A-Z]|MC|CC\d?)[)\]])`)
)

// abbreviated tells whether a stop ends a word that is cut short, and no sentence: `No. 3
// hook`, `approx. 200 yd`.
func abbreviated(before string) bool {
	fields := strings.Fields(strings.ToLower(before))
	return len(fields) > 0 && cutShort[fields[len(fields)-1]]
}

var cutShort = map[string]bool{"no": true, "approx": true, "oz": true, "yd": true, "yds": true}

// partsOf are what stands between the commas of an item, or in the cells of a table, that
// are not in brackets.
func partsOf(item string) []source.Span {
	var out []source.Span
	start, depth := 0, 0
	for i, r := range item + "," {
		switch r {
		case '(', '[':
			depth++
		case ')', ']':
			depth--
		case ',', '|':
			if depth <= 0 {
				out = append(out, source.Span{Start: start, End: i})
				start = i + 1
			}
		}
	}
	return out
}

var (
	hookWord = phrase.MustCompile(`(?i)\bhooks?\b`)
	// A hook may be part of a fastener.
	fastener = phrase.MustCompile(`(?i)\bhooks? (?:and|&) (?:eyes?|loops?)\b`)
	// sizeWord is what may stand beside the size of a hook.
	sizeWord = phrase.MustCompile(`(?i)\b(?:us|uk|usa|size|metric|steel|or|and|no)\b`)
	// hookUse begins what a hook is for, which is no part of its size: `5 mm hook for B`.
	hookUse = phrase.MustCompile(`(?i)\b(?:for|with)\b`)
)

// otherSize is the size of something else beside a hook: `size 10 thread and a 1.65 mm hook`.
var otherSize = phrase.MustCompile(`(?i)\b(?:(?:US|UK) )?(?:size |no\.? ?|# ?)\d+ (?:[a-z]+ ){0,2}(?:thread|cotton|yarn|needles?)\b`)

// letterInWords is a capital that goes on in words, as that of no hook does: `I used`.
var letterInWords = phrase.MustCompile(`(?:^|[^-/(\d\pL])[A-Z] [a-z']+`)

func crochetHook(part string) bool { return hookWord.MatchString(part) && !fastener.MatchString(part) }

// onlySize tells a part that gives the size of a hook named beside it: `4 mm hook, US G-6`.
func onlySize(part string) bool {
	rest := hookMM.ReplaceAllString(part, "")
	if rest == part && len(hookLabels(part, 0)) == 0 {
		return false
	}
	rest = sizeWord.ReplaceAllString(hookLabel.ReplaceAllString(rest, ""), "")
	return strings.Trim(rest, " ()[]/-#.•*") == ""
}

// isNotion tells a part that is the name of a notion and no more: `tapestry needle`,
// `8 buttons`.
func isNotion(part string) bool {
	words := strings.Fields(strings.ToLower(strings.Trim(part, " •*-_.:")))
	if len(words) == 0 || len(words) > longestNotion {
		return false
	}
	last := strings.TrimSuffix(words[len(words)-1], "s")
	return slices.ContainsFunc(Notions(), func(n Notion) bool {
		return slices.ContainsFunc(n.listed, func(word string) bool { return last == strings.TrimSuffix(word, "s") && last != "wool" })
	})
}

// longestNotion is how many words name a notion: `two small mother-of-pearl buttons`.
const longestNotion = 5

// Items are where the list of materials tells of things besides yarn and hook: each item
// by itself, in the order written.
func (l *List) Items(file *syntax.File) []source.Span {
	var out []source.Span
	add := func(in source.Span) {
		for _, item := range items(file.Text.Slice(in)) {
			text := file.Text.Slice(item.Shift(in.Start))
			if forbids.MatchString(text) {
				continue
			}
			for _, part := range partsOf(text) {
				out = append(out, part.Shift(item.Start+in.Start))
			}
		}
	}
	for _, f := range file.Header {
		if f.Key == "notions" || f.Key == "materials" {
			add(f.ValueSpan)
		}
	}
	for _, line := range l.Lines {
		add(line)
	}
	return out
}

// forbids begins a sentence on what is not to be used: `Do not add ribbon, cord or elastic`.
var forbids = phrase.MustCompile(`(?i)^\W*(?:please )?(?:do not|don['’]t|never|avoid)\b`)

// OfYarn are where the pattern lists yarn, among other things or by itself.
func (l *List) OfYarn(file *syntax.File) []source.Span {
	var out []source.Span
	for _, f := range file.Header {
		if f.Key == "yarn" || f.Key == "materials" {
			out = append(out, f.ValueSpan)
		}
	}
	return append(out, l.Lines...)
}

// list reads what a line lists. at is where it begins in the file.
func (l *List) list(line string, at int, text *source.Text) {
	for _, item := range items(line) {
		l.item(line[item.Start:item.End], at+item.Start, text)
	}
}

// item reads one item: a hook with the sizes beside it, and the yarn that the other
// parts describe.
func (l *List) item(item string, at int, text *source.Text) {
	parts := partsOf(item)
	yarn := source.Span{Start: -1}
	endYarn := func() {
		if yarn.Start >= 0 {
			l.describedYarn(item[yarn.Start:yarn.End], at+yarn.Start)
		}
		yarn = source.Span{Start: -1}
	}
	for i := 0; i < len(parts); i++ {
		part := item[parts[i].Start:parts[i].End]
		last := i
		for last+1 < len(parts) && onlySize(item[parts[last+1].Start:parts[last+1].End]) {
			last++
		}
		switch {
		case crochetHook(part), onlySize(part) && last+1 < len(parts) && crochetHook(item[parts[last+1].Start:parts[last+1].End]):
			endYarn()
			if !crochetHook(part) {
				last++
			}
			l.describedHook(item[parts[i].Start:parts[last].End], at+parts[i].Start, text)
			i = last
		case isNotion(part):
			endYarn()
		case yarn.Start < 0:
			yarn = parts[i]
		default:
			yarn.End = parts[i].End
		}
	}
	endYarn()
}

// describedHook reads the hooks of a part, without what they are for.
func (l *List) describedHook(part string, at int, text *source.Text) {
	if m := hookUse.FindStringIndex(part); m != nil {
		part = part[:m[0]]
	}
	blank := func(s string) string { return strings.Repeat("~", len(s)) }
	part = otherSize.ReplaceAllStringFunc(part, blank)
	part = letterInWords.ReplaceAllStringFunc(part, func(s string) string {
		if hookWord.MatchString(s) || strings.HasSuffix(s, " crochet") {
			return s
		}
		return blank(s)
	})
	l.Hooks = append(l.Hooks, readHooks(part, source.Span{Start: at, End: at + len(part)}, text)...)
}

// fibre is what tells of yarn.
var fibre = phrase.MustCompile(`(?i)\b(?:yarns?|wool|cotton|thread|acrylic|linen|silk|mohair|alpaca|ply|weight|colou?rs)\b`)

// describesYarn tells whether words describe a yarn so that something can be held
// against it: by the name and the number of its weight, or yarns by letters.
func describesYarn(words string) bool {
	y := Yarn{Text: words}
	y.readWeight()
	named := len(y.Weights) > 0 || len(y.Ply) > 0
	return named && y.Number != nil || (named || fibre.MatchString(words)) && len(letteredYarns(words)) > 0
}

// describedYarn takes what the parts of an item say of a yarn.
func (l *List) describedYarn(words string, at int) {
	bare := strings.TrimLeft(words, " \t•*-_")
	at, words = at+len(words)-len(bare), bare
	lower := strings.ToLower(words)
	if describesYarn(words) || letterAlone.MatchString(words) || strings.Contains(lower, "yarn") && !strings.Contains(lower, "needle") {
		l.addYarn("", words, source.Span{Start: at, End: at + len(words)})
	}
}
