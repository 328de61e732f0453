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
			d.file.Sizes = sizeNames(afterSizes.ReplaceAllString(f.Value, "$1"))
		}
	}
	for _, f := range d.file.Header { // whom it fits may be what the sizes are called
		if f.Key == "to fit" && d.file.Sizes == nil && len(FindLengths(f.Value)) == 0 {
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
	otherThings = phrase.MustCompile(`(?i)\b(?:threads?|cotton|yarns?|hooks?|needles?|beads?),? (?:in )?sizes? [\pL\d]+(?:, lace)?\b|\bsizes? [\pL\d][\pL\d./-]*,?(?: ?\([^()]{1,30}\))?,? (?:[\pL]+ ){0,2}(?:threads?|cotton|yarns?|lace|hooks?|needles?|beads?|buttons?|eyes)\b`)
	// sizesBracketed takes `Directions are for small size. Changes for medium and
	// large sizes are in parentheses.`
	sizesBracketed = phrase.MustCompile(`(?i)\b(?:directions|instructions|figures|pattern)\b[^.]*? for (.+?)[.;,] +(?:(?:changes|figures|those|numbers) for )?(.+?) in (?:brackets|parenthes[ei]s|parens|braces|\(|\{|\[)`)
	// sizesPointedAt are not named: `for the smallest size first, with larger sizes in brackets`.
	sizesPointedAt = phrase.MustCompile(`(?i)\b(?:first|smallest|other|others|rest|remaining|further|following|(?:larger|bigger) sizes)\b`)
	// sizeLetters takes `(S) M (L)`, and sizeYears `(2 (4) 6 (8) 10 yrs)`.
	sizeLetters = phrase.MustCompile(`(?:[(\[{]? ?\b(?:[2-6]?X{0,3}[SL]|M|[1-6]X)\b ?[)\]}]?[ ,/]*){3,}`)
	sizeYears   = phrase.MustCompile(`(?i)\(?(\d+ ?\([0-9 ,()]+) ?(?:years|yrs|months|mos)\b`)
	// ageWord is what all sizes before it are given in.
	ageWord = phrase.MustCompile(`(?i)^(?:yrs?|years?|mos|months)$`)
	// measured takes the measures that a size is given by: `29 cm x 32 cm`.
	measured = phrase.MustCompile(`(?i)^(?:about |approx(?:\.|imately)? )?\d[\d .,/½¼¾]*(?:cms?|in(?:ch(?:es)?)?|["”″])? ?(?:\([^()]*\) ?)?(?:(?:x|×|by) ?\d|wide|across|square|around)`)
	// onlySizes is a line of nothing but the names of sizes: `Small (Medium, Large)`.
	onlySizes = phrase.MustCompile(`^\pL[\pL '.-]{0,23}[(\[{][\pL '.,:/-]{2,80}[)\]}]\.?$`)
	// afterSizes takes what more is said behind a list in brackets: `S (M, L). One figure is for all.`
	afterSizes = phrase.MustCompile(`^([^()]{1,24}\([^()]*\))\. \p{Lu}.*$`)
	// sizeWords are no part of a size's name.
	sizeWords = phrase.MustCompile(`(?i)(?:^|[ -])(?:the|size|sizes|is|are|given|written|shown|only|as)\b`)
	// inUnits begins the same length again in other units: `11 cm / 4.25 in`.
	inUnits = phrase.MustCompile(`^[\s,]*(?:[(\[/=]|or\b)\s*(?:about |approx(?:\.|imately)? |ca\.? )?$`)
	// measuredAs begins with the way that a length goes, or how something is held.
	measuredAs = phrase.MustCompile(`(?i)^[\s)\]]*(?:in )?(?:wide|width|across|square|around|round|long|length|tall|high|height|deep|depth|diameter|circumference|sitting|standing|thick)\b`)
	// columns part the values of a table that is set in spaces.
	columns = phrase.MustCompile(`\t| {2,}`)
)

// inFirstSize leaves one number of each list of numbers: `ch 76 (82) 88` is
// `ch 76`.
func inFirstSize(s string) string { return sizeList.ReplaceAllString(s, "$1") }

var sizeList = phrase.MustCompile(`(\d+)(?: ?[({\[][\d ,/:–-]+[)}\]](?: ?\d+)?)+`)

// saidSizes reads the names of the sizes from a sentence, nil where it names
// none.
func saidSizes(text string) []string {
	if m := sizesListed.FindStringSubmatch(otherThings.ReplaceAllString(text, "")); m != nil && !measuresOne(m[1]) {
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
var spreadRun = phrase.MustCompile(`\d+(?:-\d+){2,}|\b(?:\d?X{0,3}[SL]|M)(?:-(?:\d?X{0,3}[SL]|M)){2,}\b`)

// sizeNames reads the names of `S (M, L, XL)`, `2 (4) 6 (8) 10 yrs`,
// `S, M, L`. A stroke joins the two names of one size (`XS/S (M/L)`), but where it
// parts three or more, or nothing else parts any.
func sizeNames(value string) []string {
	if !strings.ContainsAny(value, "([{,/:;|") {
		value = columns.ReplaceAllString(strings.TrimSpace(value), ",")
	}
	value = spreadRun.ReplaceAllStringFunc(value, func(run string) string { return strings.ReplaceAll(run, "-", ",") })
	if parted := strings.Split(value, " - "); len(parted) > 2 {
		value = strings.Join(parted, ",") // `2/3 - 4/5 - 6/7 years`
	}
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

// ofParts tells lengths of one thing with some part and without: `stem 18 cm, with the tip 21 cm`.
var ofParts = phrase.MustCompile(`(?i)\b(?:with(?:out)?|including|excluding|incl|excl|before|after)\b`)

// measuresOne tells the measures of one size from the names of several: each in other units
// again (`29 cm x 32 cm (11 x 12 in)`), or with the way that it goes (`60 cm round (20 cm
// deep)`). A hook that is given in millimetres is no size of a piece.
func measuresOne(value string) bool {
	lengths := FindLengths(value)
	if len(lengths) > 0 && ofParts.MatchString(value) {
		return true
	}
	metric, other := false, false
	for i, l := range lengths {
		if l.Unit == "mm" || measuredAs.MatchString(value[l.Span.End:]) {
			return true
		}
		metric, other = metric || l.Metric(), other || !l.Metric()
		if i == 1 && len(lengths) == 2 && len(l.Vals) == 1 && lengths[0].Metric() != l.Metric() && inUnits.MatchString(value[lengths[0].Span.End:l.Span.Start]) {
			return true
		}
	}
	return measured.MatchString(value) && (metric && other || !strings.ContainsAny(value, "([{"))
}

// sizesToTell is how many numbers of several values must agree before they are
// taken to be one for each size of a pattern that names none.
const sizesToTell = 3

// shareToTell is how many lists of numbers must agree for each that is of another length,
// in which a value may be lost.
const shareToTell = 6

// sizesInNumbers numbers the sizes of a pattern that does not name them, where
// its lists of numbers are of one length, or nearly all.
func (d *document) sizesInNumbers() []string {
	lists, length, most := map[int]int{}, 0, 0
	all := 0
	for i := range d.blocks {
		for _, n := range d.blocks[i].digest.lists {
			all++
			if lists[n]++; lists[n] > most {
				length, most = n, lists[n]
			}
		}
	}
	if most < sizesToTell || most < all && most < shareToTell*(all-most) {
		return nil
	}
	var out []string
	for i := range length {
		out = append(out, Nth(i+1)+" size")
	}
	return out
}
