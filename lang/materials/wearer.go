package materials

import (
	"strconv"
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

var (
	// ages are those of a list with the unit behind it: `2 (4, 6) years`, `3-6 mos`.
	ages = phrase.MustCompile(`\b(\d{1,3}(?:(?:[ ,/:()\[\]{}–-]|to|and|or)+\d{1,3})*)[)\]} ]*-?(years?|yrs?|months?|mos?)\b`)
	// agesLead is what ages stand behind where it is for them that something is made.
	agesLead = phrase.MustCompile(`\b(?:sizes?|ages?|aged|fits?|for)[:,]? (?:children |kids |a child )?(?:of |from )?[(\[]?$`)
	// toddlerSize is a size of ready-made clothes: 2T.
	toddlerSize = phrase.MustCompile(`\b[2-5]t\b`)
	number      = phrase.MustCompile(`\d+`)
)

// oldestChild is the age in years up to which rules on things for children hold;
// toddlers are under three, babies in their first year.
const oldestChild = 14

// AgedIn is for whom something is by the ages that a text says it is made for, the
// youngest of them; Nobody where it says none. A number of years alone says nothing.
func AgedIn(text string) Wearer {
	text = strings.ToLower(text)
	if toddlerSize.MatchString(text) {
		return Toddler
	}
	for _, m := range ages.FindAllStringSubmatchIndex(text, -1) {
		list := number.FindAllString(text[m[2]:m[3]], -1)
		if len(list) < 2 && !agesLead.MatchString(text[:m[0]]) {
			continue
		}
		youngest := 100 * 12
		for _, n := range list {
			months, _ := strconv.Atoi(n) // the pattern lets only digits through; too many give none
			if text[m[4]] == 'y' {
				months *= 12
			}
			youngest = min(youngest, months)
		}
		switch {
		case youngest < 12:
			return Baby
		case youngest < 3*12:
			return Toddler
		case youngest <= oldestChild*12:
			return Child
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

// UnderThree tells whether the piece is for somebody so young that the rules on small parts
// hold.
func (w Wearer) UnderThree() bool { return w.Young() && w != Child }
