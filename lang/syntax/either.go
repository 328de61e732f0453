package syntax

import (
	"strings"

	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
)

// A square of a filet is worked over stitches or over a space, and its definition tells both:
// `Block: dc in next 3 dc; or, over a mesh, 2 dc in next ch-2 sp, dc in next dc`, `Mesh: ch 2,
// sk next 2 sts or next ch-2 sp, dc in next dc`.

var (
	// orOver takes what is worked over something else, behind all the rest.
	orOver = phrase.MustCompile(`(?i)[;,.]?\s+or,? (?:if |when |where )?(?:it is |worked |working )?(?:over|above|on) (?:an? |the |each )?[^,;:.]*[,:]\s*` +
		`|[.;]\s+(?:over|above) (?:an? |the |each )?(?:open )?(?:spaces?|sps?|mesh|squares?|ch-\d+ sps?|gaps?),? (?:work )?`)
	// orInstead takes another step, or another place in the same step, in brackets behind it.
	orInstead = phrase.MustCompile(`(?i)\s*\(or,?\s+([^()]*)\)`)
	// orElse takes another place in the same step.
	orElse     = phrase.MustCompile(`(?i)\s+or\s+`)
	stepEnd    = phrase.MustCompile(`[,;.]|\bthen\b|\band\b`)
	placeAlone = phrase.MustCompile(`(?i)^\s*(?:in|into|over|next|the|ch)\b`)
	namesPlace = phrase.MustCompile(`(?i)^\s*(?:in|into|over)\b`)
	namesSpace = phrase.MustCompile(`(?i)\b(?:sps?|spaces?|loops?|lps?)\b`)
)

// either parts a definition that tells what is worked over stitches and what over a space.
// What is not meant is blank in each, so that all stands where it did.
func either(text string) (stitches, space string, both bool) {
	one, other, found := overOther(text)
	if !found {
		one, other, found = instead(text)
	}
	if !found {
		one, other, found = inOther(text)
	}
	switch a, b := namesSpace.MatchString(one), namesSpace.MatchString(other); {
	case !found || a == b:
		return "", "", false
	case a:
		return other, one, true
	}
	return one, other, true
}

// overOther parts `A; or, over a mesh, B` and `A. Over a space work B`.
func overOther(text string) (one, other string, found bool) {
	at := orOver.FindStringIndex(text)
	if at == nil {
		return "", "", false
	}
	return text[:at[0]], blanked(text, source.Span{End: at[1]}), true
}

// instead parts `dc in next 2 sts (or 2 dc in next ch-2 sp), dc in next dc` and `sk next 2 sts (or next ch-2 sp)`.
func instead(text string) (one, other string, found bool) {
	m := orInstead.FindStringSubmatchIndex(text)
	if m == nil {
		return "", "", false
	}
	from := 0
	for _, end := range stepEnd.FindAllStringIndex(text[:m[0]], -1) {
		from = end[1]
	}
	if inside := text[m[2]:m[3]]; placeAlone.MatchString(inside) {
		step := text[from:m[0]]
		verb := strings.IndexByte(strings.TrimLeft(step, " "), ' ')
		if verb < 0 {
			return "", "", false
		}
		from += len(step) - len(strings.TrimLeft(step, " ")) + verb
	}
	other = blanked(blanked(text, source.Span{Start: from, End: m[2]}), source.Span{Start: m[3], End: m[1]})
	return blanked(text, source.Span{Start: m[0], End: m[1]}), other, true
}

// inOther parts `sk next 2 sts or next ch-2 sp`, and `dc in next 2 sts or in next ch-2 sp
// twice`, wherever that stands in the text.
func inOther(text string) (one, other string, found bool) {
	or := orElse.FindStringIndex(text)
	if or == nil {
		return "", "", false
	}
	from, to := 0, len(text)
	for _, end := range stepEnd.FindAllStringIndex(text, -1) {
		if end[1] <= or[0] {
			from = end[1]
		} else if end[0] >= or[1] {
			to = end[0]
			break
		}
	}
	step := text[from:or[0]]
	place := from + len(step) - len(strings.TrimLeft(step, " "))
	if namesPlace.MatchString(text[or[1]:to]) {
		in := strings.Index(step, " in ")
		if in < 0 {
			return "", "", false
		}
		place = from + in
	} else if verb := strings.IndexByte(text[place:or[0]], ' '); verb > 0 {
		place += verb
	} else {
		return "", "", false
	}
	return blanked(text, source.Span{Start: or[0], End: to}), blanked(text, source.Span{Start: place, End: or[1] - 1}), true
}

// blanked is a text with blanks in a part of it.
func blanked(text string, part source.Span) string {
	return text[:part.Start] + strings.Repeat(" ", part.Len()) + text[part.End:]
}
