package materials

import (
	"strings"

	"stitchproof/lang/phrase"
)

// Wearer is for whom a piece is made, as the published tables call people.
type Wearer string

// The wearers, the youngest first.
const (
	Nobody  Wearer = ""
	Preemie Wearer = "preemie"
	Newborn Wearer = "newborn"
	Baby    Wearer = "baby"
	Toddler Wearer = "toddler"
	Child   Wearer = "child"
	Teen    Wearer = "teen"
	Woman   Wearer = "woman"
	Man     Wearer = "man"
	Adult   Wearer = "adult" // a woman or a man
)

// wearers are the words that tell of each. Where a text has several, the
// youngest decides, for it is the one to be careful with.
var wearers = []struct {
	who   Wearer
	words *phrase.Phrase
}{
	{Preemie, phrase.MustCompile(`\b(?:preemies?|premature)\b`)},
	{Newborn, phrase.MustCompile(`\bnew-?borns?\b`)},
	{Baby, phrase.MustCompile(`\b(?:bab(?:y|ies)|infants?)\b`)},
	{Toddler, phrase.MustCompile(`\btoddlers?\b`)},
	{Child, phrase.MustCompile(`\b(?:child(?:ren)?|child's|children's|kids?|boys?|girls?)\b`)},
	{Teen, phrase.MustCompile(`\b(?:teens?|teenagers?)\b`)},
	{Woman, phrase.MustCompile(`\b(?:wom[ae]n|wom[ae]n's|lad(?:y|ies)|lady's|ladies')`)},
	{Man, phrase.MustCompile(`\b(?:m[ae]n|m[ae]n's|gentlem[ae]n)\b`)},
	{Adult, phrase.MustCompile(`\b(?:adults?|grown-ups?)\b`)},
}

// or is the wearer that a text tells of, where none is known yet.
func (w Wearer) or(text string) Wearer {
	if w != Nobody {
		return w
	}
	return WearerIn(text)
}

// softness are words that speak of yarn and colours, and not of a baby.
var softness = phrase.MustCompile(`\bbaby[- ](?:yarn|wool|blue|pink|weight|soft\w*|alpaca|sport|fingering)`)

// WearerIn is the youngest that a text speaks of, in any case; Nobody for none.
func WearerIn(text string) Wearer {
	text = softness.ReplaceAllString(strings.ToLower(text), "")
	for _, w := range wearers {
		if w.words.MatchString(text) {
			return w.who
		}
	}
	return Nobody
}

// Young tells whether a child may wear or use the piece.
func (w Wearer) Young() bool {
	switch w {
	case Preemie, Newborn, Baby, Toddler, Child:
		return true
	}
	return false
}
