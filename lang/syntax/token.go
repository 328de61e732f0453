package syntax

import (
	"slices"
	"strings"
	"sync"
	"unicode"
	"unicode/utf8"

	"stitchproof/lang/numeral"
	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
)

// Kind says what sort of token a piece of text is.
type Kind uint8

// The kinds of token. Every byte of an instruction belongs to a token or is
// white space between two.
const (
	Word     Kind = iota // a word of the trade or of plain English, in its canonical spelling
	Name                 // a word no table knows: a yarn, a branch, a place name, a slip of the pen
	Number               // digits, number words and fractions, one value or one for each size
	Ordinal              // 2nd, second
	Stitch               // a stitch's name or abbreviation, however many words it has
	Star                 // *, **, † and the like, marking where a repeat begins or ends
	Open                 // ( [ {
	Close                // ) ] }
	Comma                // ,
	Semi                 // ;
	Period               // . ! ?
	Colon                // :
	Dash                 // a dash or a hyphen standing alone
	Hyphen               // a hyphen joining two words
	Sign                 // = + x × / & and any other sign
	Enclosed             // a whole bracketed group, as the grammar of clauses sees it
)

var kindNames = [...]string{
	"Word", "Name", "Number", "Ordinal", "Stitch", "Star", "Open", "Close", "Comma", "Semi",
	"Period", "Colon", "Dash", "Hyphen", "Sign", "Enclosed",
}

func (k Kind) String() string { return kindNames[k] }

// Token is one token of an instruction.
type Token struct {
	Kind Kind
	// Span is the token's place in the text it was cut from.
	Span source.Span
	// Canon is the canonical spelling: "st" for stitches, "rnd" for Round,
	// "next" for following. For a stitch it is the spelling in lower case.
	Canon string
	// Written is the word as the pattern writes it, where Canon is not enough: for the many
	// words that name a counted thing. Of a name it may be what is named, as limbToken is.
	Written string
	// Values holds a number's value, one or one a size, in whole units.
	Values Num
	// Stitch is what the word names in each dialect.
	Stitch stitch.Meaning
	// Group is the index of a bracketed group among those of the instruction.
	Group int
}

// What a token is, as its Written says, where its kind does not tell.
const (
	colourToken = "colour" // the name of a colour
	limbToken   = "limb"   // the label of a branch
	behindToken = "behind" // the name of a branch behind its chain
	limbsToken  = "limbs"  // the label of several, which a repeat makes
	movedToken  = "moved"  // a name that is read behind its chains and stands before them, where they are
	holderToken = "holder" // what is said to have so many stitches
	wholeToken  = "whole"  // of the word for having, where all of the piece has them
	homeToken   = "home"   // a way home in other words than `return`
)

// scanner cuts text into tokens. It is total: whatever the text holds, every
// character that is neither white space nor in a note to the checker ends up in
// exactly one token.
type scanner struct {
	text  string
	vocab *Vocabulary
	raw   []rawToken
	// hashes is set where a hash marks a repeat: elsewhere it numbers hooks and yarns.
	hashes  bool
	closing int // where the quotation mark stands that closes what is repeated
}

// rawToken is a run of characters before words are looked up.
type rawToken struct {
	kind       Kind
	start, end int    // relative to scanner.text
	lower      string // folded spelling
	glued      bool   // no white space before it
	value      int    // of a Number or Ordinal
}

// rawTokens are lists to cut a text into, which nobody needs once its words are looked up.
var rawTokens = sync.Pool{New: func() any { return &[]rawToken{} }}

// Lex cuts text into tokens. Whoever asks for the same text is given the same ones,
// so they must not be changed.
func Lex(text string, vocab *Vocabulary) []Token {
	return vocab.cut.of(text, func(text string) []Token {
		raw := rawTokens.Get().(*[]rawToken)
		l := scanner{text: text, vocab: vocab, raw: slices.Grow((*raw)[:0], len(text)/3+4), hashes: strings.Contains(text, "from #")}
		l.scan()
		l.cutLoops()
		tokens := l.nameLimbs(l.nameBranches(l.numberFirst(l.group())))
		numberSides(tokens)
		unitStops(tokens, text)
		if len(text) <= maxKey { // the list of a long text is not kept, nor what it says
			clear(l.raw)
			*raw = l.raw
			rawTokens.Put(raw)
		}
		return tokens
	})
}

// unitStops reads the stop behind a unit, `leaving a 6 in. tail`, as no end of a sentence, where the words go on.
func unitStops(tokens []Token, text string) {
	for i := 2; i+1 < len(tokens); i++ {
		unit, next := tokens[i-1], tokens[i+1]
		if tokens[i].Kind == Period && tokens[i-2].Kind == Number && unit.Kind == Word && (unit.Canon == "in" || unit.Canon == "inch") &&
			(next.Kind == Name || next.Kind == Word) && unicode.IsLower(firstRune(text[next.Span.Start:])) {
			tokens[i].Kind, tokens[i].Canon = Word, ""
		}
	}
}

// scan fills l.raw.
func (l *scanner) scan() {
	glued := false
	marks := marked(l.text)
	gaps := columnGaps(l.text)
	for i := 0; i < len(l.text); {
		if len(gaps) > 0 && i >= gaps[0] {
			l.add(Sign, gaps[0], gaps[0]+1, "|", false)
			i, glued, gaps = gaps[0]+1, false, gaps[1:]
			continue
		}
		for len(marks) > 0 && marks[0].Start < i {
			marks = marks[1:]
		}
		if len(marks) > 0 && marks[0].Start == i {
			i, glued, marks = marks[0].End, false, marks[1:]
			continue
		}
		r, size := utf8.DecodeRuneInString(l.text[i:])
		if end := l.quoted(r, i); end > 0 {
			l.closing = end
			l.add(Open, i, i+size, l.text[i:i+size], glued)
			i, glued = i+size, true
			continue
		}
		if l.closing == i && i > 0 {
			l.closing = 0
			l.add(Close, i, i+size, l.text[i:i+size], glued)
			i, glued = i+size, true
			continue
		}
		if end := countMark(l.text[i:]); end > 0 {
			l.add(Sign, i, i+end, "=", false)
			i, glued = i+end, false
			continue
		}
		if isBlank(r) {
			glued = false
			i += size
			continue
		}
		if notes(l.text, i) {
			i = lineEnd(l.text, i)
			continue
		}
		start := i
		switch {
		case unicode.IsLetter(r):
			i = l.word(start, glued)
		case r >= '0' && r <= '9':
			i = l.number(start, glued)
		case r == '*' || r == '†' || r == '‡' || r == '#' && l.hashes || r == '+' && l.markPlus(start):
			i += size
			for i < len(l.text) && l.text[i] == byte(r) && r < utf8.RuneSelf {
				i++
			}
			l.add(Star, start, i, l.text[start:i], glued)
		case vulgarFraction(r) > 0:
			i += size
			l.add(Number, start, i, l.text[start:i], glued)
		case strings.HasPrefix(l.text[start:], "--"): // a dash, as a typewriter has it
			for i < len(l.text) && l.text[i] == '-' {
				i++
			}
			l.add(Dash, start, i, "-", glued)
		case r == '"' && (start == 0 || !unicode.IsDigit(rune(l.text[start-1])) && !l.fractionBefore(start)):
			i += size // quotes; after a number they are inches
			continue
		default:
			i += size
			l.add(l.punctuation(r, start), start, i, l.text[start:i], glued)
			if last := &l.raw[len(l.raw)-1]; last.kind == Dash && glued && r != '–' && r != '—' && r != '―' && l.wordFollows(i) {
				last.kind = Hyphen
			}
		}
		glued = true
	}
}

// leadsToCount is an arrow, or what stands for one, before a count: `--> 12 dc`, `» 22 (30, 38) sts`.
var leadsToCount = phrase.MustCompile(`^((?:[-–—]{1,3}|={0,2})>{1,2}|→|➔|➜|»)[ \t]+[(\[{]?\d`)

// countMark is how long such an arrow is that a text begins with, 0 for none. A sign that closes
// a label, `R1> 6 sc`, is none.
func countMark(text string) int {
	if text == "" || strings.IndexByte("-=>\xe2\xc2", text[0]) < 0 || strings.HasPrefix(text, "> ") {
		return 0
	}
	m := leadsToCount.FindStringSubmatchIndex(text[:min(len(text), 16)])
	if m == nil {
		return 0
	}
	return m[3]
}

func (l *scanner) add(kind Kind, start, end int, lower string, glued bool) {
	l.raw = append(l.raw, rawToken{kind: kind, start: start, end: end, lower: lower, glued: glued})
}

func (l *scanner) wordFollows(i int) bool {
	r, _ := utf8.DecodeRuneInString(l.text[i:])
	return unicode.IsLetter(r) || unicode.IsDigit(r)
}

// markPlus tells a plus that marks a repeat (standing before a word with no
// number on its left) from one that adds.
func (l *scanner) markPlus(at int) bool {
	before := strings.TrimRightFunc(l.text[:at], isBlank)
	if before == "" {
		return true
	}
	if after := l.text[at+1:]; after != "" && strings.IndexByte(",;", after[0]) >= 0 {
		return true // `ch 3+, sc in next loop`: nothing is left to add
	}
	if sum := strings.TrimLeft(strings.TrimLeft(l.text[at+1:], " "), "0123456789"); strings.HasPrefix(strings.TrimLeft(sum, " "), "=") {
		return false // `6 x 4 = 24, + 3 = 27`
	}
	last := before[len(before)-1]
	if last == ',' || last == ';' || last == '*' || last == ':' {
		return !strings.HasPrefix(l.text[at+1:], " ") || last != '*'
	}
	for _, word := range []string{" from", " at", " to"} {
		if strings.HasSuffix(before, word) {
			return true
		}
	}
	return false
}

// maxMixed is how long, in bytes, a run of letters and digits is looked at as one
// word: longer than any in a table.
const maxMixed = 64

// word reads a run of letters and digits. A run that some table knows is one
// word (dc3tog); any other is cut where letters meet digits (sc6, R5, 3ch).
func (l *scanner) word(start int, glued bool) int {
	end := start
	letters := 0
	for end < len(l.text) && (letters == 0 || end-start < maxMixed) {
		r, size := utf8.DecodeRuneInString(l.text[end:])
		switch {
		case unicode.IsLetter(r) || unicode.Is(unicode.Mn, r):
		case isApostrophe(r) && end > start && l.wordFollows(end+size):
		case isSoft(r) && l.wordFollows(end+size):
		case unicode.IsDigit(r):
			if letters == 0 {
				letters = end
			}
		default:
			size = 0
		}
		if size == 0 {
			break
		}
		end += size
	}
	if letters > 0 && !l.vocab.known(fold(l.text[start:end])) {
		end = letters
	}
	word := fold(l.text[start:end])
	if rest := l.hyphenated(end); rest > end {
		if whole := word + fold(strings.TrimLeft(l.text[end+1:rest], " \t\r\n")); l.vocab.known(whole) {
			word, end = whole, rest
		}
	}
	if base, plural := strings.CutSuffix(word, "'s"); plural && !l.vocab.known(word) && l.vocab.known(base) {
		word = base // 3 dc's
	}
	l.add(Word, start, end, word, glued)
	return end
}

// hyphenated is where a word ends that is cut at the end of a line, which stops
// at an offset: `cro-` with `chet` below. It gives the offset for none.
func (l *scanner) hyphenated(end int) int {
	if end >= len(l.text) || l.text[end] != '-' {
		return end
	}
	at := end + 1 + len(l.text[end+1:]) - len(strings.TrimLeft(l.text[end+1:], " \t\r\n"))
	if !strings.Contains(l.text[end:at], "\n") {
		return end
	}
	for at < len(l.text) {
		r, size := utf8.DecodeRuneInString(l.text[at:])
		if !unicode.IsLower(r) {
			break
		}
		at += size
	}
	return at
}

// number reads digits with an ordinal's ending, a decimal part or a fraction.
func (l *scanner) number(start int, glued bool) int {
	end := start
	for end < len(l.text) && l.text[end] >= '0' && l.text[end] <= '9' {
		end++
	}
	value := atoi(l.text[start:end])
	for _, suffix := range [...]string{"st", "nd", "rd", "th", "d"} {
		rest := l.text[end:]
		if len(rest) >= len(suffix) && strings.EqualFold(rest[:len(suffix)], suffix) && !letterAt(rest, len(suffix)) &&
			ordinalSuffix(value, suffix) {
			end += len(suffix)
			l.raw = append(l.raw, rawToken{Ordinal, start, end, l.text[start:end], glued, value})
			return end
		}
	}
	if end+1 < len(l.text) && l.text[end] == '.' && l.text[end+1] >= '0' && l.text[end+1] <= '9' {
		end++
		for end < len(l.text) && l.text[end] >= '0' && l.text[end] <= '9' {
			end++
		}
	}
	if r, size := utf8.DecodeRuneInString(l.text[end:]); vulgarFraction(r) > 0 {
		end += size
	}
	l.raw = append(l.raw, rawToken{Number, start, end, l.text[start:end], glued, value})
	return end
}

// ordinalSuffix refuses "1st" read out of "1 st" mistakes such as 6st, 12st:
// those are stitch counts.
func ordinalSuffix(value int, suffix string) bool {
	if suffix == "d" {
		return value%10 == 2 || value%10 == 3
	}
	tens, unit := value/10%10, value%10
	want := "th"
	if tens != 1 {
		switch unit {
		case 1:
			want = "st"
		case 2:
			want = "nd"
		case 3:
			want = "rd"
		}
	}
	return suffix == want
}

func letterAt(s string, i int) bool {
	r, _ := utf8.DecodeRuneInString(s[i:])
	return unicode.IsLetter(r)
}

// atoi reads digits and holds at a number larger than any pattern's, so that
// no sum of two can overflow.
func atoi(digits string) int {
	n := 0
	for i := 0; i < len(digits); i++ {
		if digits[i] < '0' || digits[i] > '9' {
			break
		}
		if n = n*10 + int(digits[i]-'0'); n > maxNumber {
			return maxNumber
		}
	}
	return n
}

// maxNumber bounds every number of a pattern; what is larger reads as this.
const maxNumber = 100_000_000

// isBlank counts as white space also what word processors slip in:
// non-breaking and zero-width spaces, the byte-order mark, soft hyphens.
func isBlank(r rune) bool {
	switch r {
	case '\u00ad', '\u200b', '\u200c', '\u200d', '\u2060', '\ufeff', '_', '`', '\\', '“', '”', '„', '«', '»', '•', '·', '●', '▪', '◦':
		return true
	}
	return unicode.IsSpace(r) || unicode.Is(unicode.Cf, r) || unicode.Is(unicode.So, r) || r == '\ufe0f'
}

// isSoft tells what a word processor puts within a word to cut it there, if need be.
func isSoft(r rune) bool { return r == '\u00ad' || r == '\u200b' || r == '\u2060' }

func isApostrophe(r rune) bool { return r == '\'' || r == '’' || r == 'ʼ' }

// quotes are those that may open what is repeated, with those that close it.
var quotes = map[rune]string{'"': "\"", '“': "”", '„': "“”", '«': "»", '「': "」"}

// howOften follows what is repeated.
var howOften = phrase.MustCompile(`^[ ,]*(?i:(?:rep(?:eat)? |work )?(?:(?:x|×) ?\d|\d+ ?(?:x\b|×|times|more)|(?:` + numeral.Expression(2, numeral.Most) + `) (?:more )?times|twice|once|around|to end))`)

// maxQuoted is how many bytes stand at most between two quotation marks: so far is looked.
const maxQuoted = 2000

// quoted gives where the quotation marks close that open at an offset and hold what is
// repeated: `"sc, inc" 6 times`. It gives 0 for any others.
func (l *scanner) quoted(r rune, at int) int {
	closing := quotes[r]
	if closing == "" || l.closing > 0 {
		return 0
	}
	from := at + utf8.RuneLen(r)
	n := strings.IndexAny(l.text[from:min(len(l.text), from+maxQuoted)], closing)
	if n < 0 {
		return 0
	}
	_, size := utf8.DecodeRuneInString(l.text[from+n:])
	if !howOften.MatchString(l.text[from+n+size:]) {
		return 0
	}
	return from + n
}

// fractionBefore tells whether a fraction stands right before an offset.
func (l *scanner) fractionBefore(at int) bool {
	r, _ := utf8.DecodeLastRuneInString(l.text[:at])
	return vulgarFraction(r) > 0
}

// angled begins with a count in angles: `<24 sts>`.
var angled = phrase.MustCompile(`^<\d[^<>\n]*>`)

func (l *scanner) punctuation(r rune, at int) Kind {
	switch r {
	case '<':
		if angled.MatchString(l.text[at:]) {
			return Open
		}
	case '>':
		if open := strings.LastIndexAny(l.text[:at], "<>"); open >= 0 && angled.MatchString(l.text[open:at+1]) {
			return Close
		}
	}
	return punctuation(r)
}

func punctuation(r rune) Kind {
	switch r {
	case '(', '[', '{', '（', '［':
		return Open
	case ')', ']', '}', '）', '］':
		return Close
	case ',', '，', '、':
		return Comma
	case ';':
		return Semi
	case '.', '!', '?', '…', '。':
		return Period
	case ':', '：', '>':
		return Colon
	case '-', '–', '—', '―', '‐', '‑', '−':
		return Dash
	}
	return Sign
}

var vulgar = map[rune]int{'¼': 25, '½': 50, '¾': 75, '⅓': 33, '⅔': 67, '⅛': 13, '⅜': 38, '⅝': 63, '⅞': 88}

// vulgarFraction gives a fraction written as one character in hundredths.
func vulgarFraction(r rune) int { return vulgar[r] }

var apostrophes = strings.NewReplacer("’", "'", "ʼ", "'", "\u00ad", "", "\u200b", "", "\u2060", "")

// fold lower-cases a word and writes every apostrophe alike.
func fold(s string) string {
	for i := 0; i < len(s); i++ {
		if c := s[i]; c >= utf8.RuneSelf || c >= 'A' && c <= 'Z' {
			return strings.ToLower(apostrophes.Replace(s))
		}
	}
	return s
}
