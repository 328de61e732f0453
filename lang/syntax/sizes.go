package syntax

import (
	"slices"
	"strings"

	"stitchproof/lang/phrase"
)

// sizes finds how many sizes the pattern is written for: from the header, from
// what a line before the first row says, or from the numbers themselves.
func (d *document) sizes() {
	for _, f := range d.file.Header {
		if f.Key == "sizes" && !measuresOne(f.Value) {
			d.file.Sizes = sizeNames(f.Value)
		}
	}
	for i := 0; i < len(d.blocks) && d.file.Sizes == nil; i++ {
		text := strings.Join(strings.Fields(d.text(d.blocks[i].span)), " ")
		if labelled(text) {
			break
		}
		d.file.Sizes = saidSizes(text)
	}
	if d.file.Sizes == nil {
		d.file.Sizes = d.sizesInNumbers()
	}
}

var (
	// sizesListed takes `sizes small (medium, large)`.
	sizesListed = phrase.MustCompile(`(?i)\bsizes?[:,]? ([^.:;()]{1,20}\([^()]{1,60}\))`)
	// otherThings are the sizes of what is no garment: `size 10 crochet thread`, `hook size
	// H`, `thread size 10, lace`.
	otherThings = phrase.MustCompile(`(?i)\b(?:threads?|cotton|yarns?|hooks?|needles?|beads?),? (?:in )?sizes? [\pL\d]+(?:, lace)?\b|\bsizes? [\pL\d]+,? (?:[\pL]+ ){0,2}(?:threads?|cotton|yarns?|lace|hooks?|needles?|beads?|buttons?|eyes)\b`)
	// sizesBracketed takes `Directions are for small size. Changes for medium and
	// large sizes are in parentheses.`
	sizesBracketed = phrase.MustCompile(`(?i)\b(?:directions|instructions|figures|pattern)\b[^.]*? for (.+?)[.;,] +(?:(?:changes|figures|those|numbers) for )?(.+?) in (?:brackets|parenthes[ei]s|parens|braces|\(|\{|\[)`)
	// sizesPointedAt are not named: `for the smallest size first, with larger sizes in brackets`.
	sizesPointedAt = phrase.MustCompile(`(?i)\b(?:first|smallest|smaller|largest|larger|bigger|other|others|rest|remaining|further|following)\b`)
	// sizeLetters takes `(S) M (L)`, and sizeYears `(2 (4) 6 (8) 10 yrs)`.
	sizeLetters = phrase.MustCompile(`(?:[(\[{]? ?\b(?:[2-6]?X{0,3}[SL]|M|[1-6]X)\b ?[)\]}]?[ ,/]*){3,}`)
	sizeYears   = phrase.MustCompile(`(?i)\(?(\d+ ?\([0-9 ,()]+) ?(?:years|yrs|months|mos)\b`)
	// ageWord is what all sizes before it are given in.
	ageWord = phrase.MustCompile(`(?i)^(?:yrs?|years?|mos|months)$`)
	// measured takes the measures that a size is given by: `29 cm x 32 cm`.
	measured = phrase.MustCompile(`(?i)^(?:about |approx(?:\.|imately)? )?\d[\d .,/½¼¾]*(?:cms?|in(?:ch(?:es)?)?|["”″])? ?(?:\([^()]*\) ?)?(?:(?:x|×|by) ?\d|wide|across|square|around)`)
	// sizeWords are no part of a size's name.
	sizeWords = phrase.MustCompile(`(?i)(?:^|[ -])(?:the|size|sizes|is|are|given|written|shown|only)\b`)
)

// inFirstSize leaves one number of each list of numbers: `ch 76 (82) 88` is
// `ch 76`.
func inFirstSize(s string) string { return sizeList.ReplaceAllString(s, "$1") }

var sizeList = phrase.MustCompile(`(\d+)(?: ?[({\[][\d ,/:–-]+[)}\]](?: ?\d+)?)+`)

// saidSizes reads the names of the sizes from a sentence, nil where it names
// none.
func saidSizes(text string) []string {
	if m := sizesListed.FindStringSubmatch(otherThings.ReplaceAllString(text, "")); m != nil {
		return sizeNames(m[1])
	}
	if m := sizesBracketed.FindStringSubmatch(text); m != nil && !sizesPointedAt.MatchString(m[1]+" "+m[2]) {
		rest := strings.ReplaceAll(strings.ReplaceAll(m[2], " and ", ","), ";", ",")
		return sizeNames(m[1] + "," + rest)
	}
	if m := sizeLetters.FindString(text); m != "" {
		return sizeNames(m)
	}
	if m := sizeYears.FindStringSubmatch(text); m != nil {
		return sizeNames(m[1])
	}
	return nil
}

// spreadRun is a run of sizes joined by hyphens, as in `2 (4-6-8)`. Two numbers
// with one between are a single size: `2-4 (6-8)`.
var spreadRun = phrase.MustCompile(`\d+(?:-\d+){2,}`)

// sizeNames reads the names of `S (M, L, XL)`, `2 (4) 6 (8) 10 yrs`,
// `S, M, L`. A stroke joins the two names of one size (`XS/S (M/L)`), but where it
// parts three or more, or nothing else parts any.
func sizeNames(value string) []string {
	value = spreadRun.ReplaceAllStringFunc(value, func(run string) string { return strings.ReplaceAll(run, "-", ",") })
	var out []string
	for _, c := range cutSizes(value) {
		c = sizeWords.ReplaceAllString(strings.TrimPrefix(strings.TrimSpace(c), "and "), "")
		if c = strings.Trim(c, " ."); c == "" || len(out) > 0 && ageWord.MatchString(c) {
			continue
		}
		if len(strings.Fields(c)) > maxNamed {
			return nil // a sentence
		}
		out = append(out, c)
	}
	if len(out) < 2 || !strings.ContainsAny(value, "([{,/:;|") {
		return nil
	}
	return out
}

// cutSizes parts the names of sizes.
func cutSizes(value string) []string {
	listed := strings.FieldsFunc(value, func(r rune) bool { return strings.ContainsRune("()[]{},:;|", r) })
	listed = slices.DeleteFunc(listed, func(s string) bool { return strings.Trim(s, " .") == "" })
	var out []string
	for _, part := range listed {
		if names := strings.Split(part, "/"); len(names) > 2 || len(listed) == 1 {
			out = append(out, names...)
		} else {
			out = append(out, part)
		}
	}
	return out
}

// measuresOne tells the measures of one size, in brackets again in the other units, from
// the names of several: `29 cm x 32 cm (11 x 12 in)`.
func measuresOne(value string) bool {
	if !measured.MatchString(value) {
		return false
	}
	metric, other := false, false
	for _, l := range FindLengths(value) {
		metric, other = metric || l.Metric(), other || !l.Metric()
	}
	return metric && other || !strings.ContainsAny(value, "([{")
}

// sizesToTell is how many numbers of several values must agree before they are
// taken to be one for each size of a pattern that names none.
const sizesToTell = 3

// sizesInNumbers numbers the sizes of a pattern that does not name them, where
// its lists of numbers are all of one length.
func (d *document) sizesInNumbers() []string {
	length, lists := 0, 0
	for i := range d.blocks {
		for _, n := range d.blocks[i].digest.lists {
			if lists > 0 && n != length {
				return nil
			}
			length = n
			lists++
		}
	}
	if lists < sizesToTell {
		return nil
	}
	var out []string
	for i := range length {
		out = append(out, Nth(i+1)+" size")
	}
	return out
}
