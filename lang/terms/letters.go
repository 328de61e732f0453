package terms

import (
	"strings"
	"unicode"

	"stitchproof/lang/inflect"
)

// inLetters writes words, given in lower case, with the capitals of what they
// stand for and with what stands between its words: for Half-Double, and half
// treble, Half-Treble. Words in capitals of their own stay as they are.
func inLetters(written, words string) string {
	if strings.ToLower(words) != words {
		return words
	}
	for _, possessive := range [...]string{"'s", "’s"} {
		if base, ok := strings.CutSuffix(written, possessive); ok {
			return inLetters(base, words) + possessive
		}
	}
	old, oldGaps := runs(written)
	now, gaps := runs(words)
	if len(old) == 0 {
		return words
	}
	capitals(old, now)
	gaps[len(now)] = oldGaps[len(old)]
	for k := 1; k < min(len(old), len(now)); k++ {
		gaps[len(now)-k] = oldGaps[len(old)-k]
	}
	var b strings.Builder
	for i, run := range now {
		b.WriteString(gaps[i])
		b.WriteString(run)
	}
	b.WriteString(gaps[len(now)])
	return b.String()
}

// runs cuts a text into its runs of letters and of digits. Between run i-1 and
// run i stands gap i, which may be empty.
func runs(text string) (runs, gaps []string) {
	var run, gap strings.Builder
	class := func(r rune) int {
		switch {
		case unicode.IsLetter(r):
			return 1
		case unicode.IsDigit(r):
			return 2
		}
		return 0
	}
	last := 0
	flush := func() {
		if run.Len() > 0 {
			runs, gaps = append(runs, run.String()), append(gaps, gap.String())
			run.Reset()
			gap.Reset()
		}
	}
	for _, r := range text {
		c := class(r)
		if c != last {
			flush()
		}
		last = c
		if c == 0 {
			gap.WriteRune(r)
		} else {
			run.WriteRune(r)
		}
	}
	flush()
	return runs, append(gaps, gap.String())
}

// capitals gives new words, in lower case, the capitals of old ones: all of them
// where all old ones have them, that of each word, or that of the first. Where
// the old ones mix capitals otherwise (FPdc), letter stands for letter.
func capitals(old, now []string) {
	all, each, first, words := true, true, true, 0
	for _, run := range old {
		lower := strings.ToLower(run)
		if lower == strings.ToUpper(run) {
			continue // digits
		}
		all = all && run == strings.ToUpper(run)
		each = each && run == inflect.Capital(lower)
		first = first && (words == 0 && run == inflect.Capital(lower) || words > 0 && run == lower)
		words++
	}
	begun := false
	for i, run := range now {
		was := ""
		if k := len(old) - len(now) + i; k >= 0 {
			was = old[k]
		}
		switch {
		case all:
			now[i] = strings.ToUpper(run)
		case first && !begun, each && words > 1:
			now[i] = inflect.Capital(run)
		case !first:
			now[i] = letterByLetter(was, run)
		}
		begun = begun || unicode.IsLetter([]rune(run)[0])
	}
}

// letterByLetter keeps of an old word what the new one begins and ends with, and
// writes what is new between in the capitals of what it replaces.
func letterByLetter(old, now string) string {
	lower := strings.ToLower(old)
	if len(lower) != len(old) {
		return now
	}
	head := 0
	for head < min(len(now), len(old)) && now[head] == lower[head] {
		head++
	}
	tail := 0
	for tail < min(len(now), len(old))-head && now[len(now)-1-tail] == lower[len(old)-1-tail] {
		tail++
	}
	middle, new := old[head:len(old)-tail], now[head:len(now)-tail]
	if middle != "" && middle != strings.ToLower(middle) {
		new = strings.ToUpper(new)
	}
	return old[:head] + new + old[len(old)-tail:]
}
