package lint

import (
	"strings"

	"stitchproof/lang/phrase"
)

// What a pattern's own notes may say in place of a caution. Each takes a whole advice, the
// danger with what is to be done: a pattern that only speaks of cots or of eyes has
// cautioned nobody.
var (
	// keptFromSleep takes `do not leave the rattle in the cot` and `take it out of the crib
	// when the baby sleeps`, `nor for a pram or cot`, and `not for babies under twelve months to sleep with`.
	keptFromSleep = phrase.MustCompile(`\b(?:never|do not|don't|must not|should not)\b[^.;:]*\b(?:in|into|over|near|with|while|when)\b[^.;:,]{0,24}\b` + asleepExpr +
		`|\b(?:remove|take|keep)\b[^.;:]*\b(?:out of|away from|from|off)\b[^.;:,]{0,24}\b` + asleepExpr +
		`|\b(?:not|nor|never)(?: meant| suitable| safe| intended)? for (?:an? |the |use (?:in|on|over) )?(?:[a-z]+,? (?:or|and|nor) (?:an? |the )?)*` + asleepExpr +
		`|\b(?:never|do not|don't|must not|should not)\b[^.;:]*\bsleep(?:s|ing)? with\b` +
		`|\bnot for (?:an? )?(?:bab(?:y|ies)|infants?|child(?:ren)?)\b[^.;:]*\bto sleep (?:with|in|under|on)\b`)
	// The three parts of an advice on small parts, which may take two sentences: `The eyes
	// are small parts. For a child under three years embroider them instead.`
	swallowed   = phrase.MustCompile(`\b(?:small parts?|swallow(?:ed|s)?|chok(?:e|ed|ing)|not safe|unsafe)\b`)
	ofTheYoung  = phrase.MustCompile(`\b(?:under|younger than|below) (?:3|three|36)\b|\b(?:bab(?:y|ies)|infants?|toddlers?|(?:small|young|younger|little) child(?:ren)?)\b`)
	withoutThem = phrase.MustCompile(`\b(?:not suitable|unsuitable|not for|never|do not|don't|must not|should not|leave (?:off|out|away|them)|omit|instead|embroider)\b`)
)

const asleepExpr = `(?:cots?|cribs?|cradles?|prams?|bassinets?|moses baskets?|sleeps?|sleeping|asleep|sleep space)\b`

// advisesOnSleep tells whether the pattern itself says that the piece has no place where a
// baby sleeps.
func (p *Pass) advisesOnSleep() bool { return keptFromSleep.MatchString(p.around.notes) }

// advisesOnPart tells whether the pattern itself says that such a part, or parts of no
// kind in particular, can be swallowed, by whom, and what to do.
func (p *Pass) advisesOnPart(part string) bool {
	words := strings.Fields(part)
	kind := strings.TrimSuffix(words[len(words)-1], "s")
	sentences := strings.Split(p.around.notes, ". ")
	for i := range sentences {
		said := strings.Join(sentences[i:min(i+2, len(sentences))], ". ")
		if swallowed.MatchString(said) && ofTheYoung.MatchString(said) && withoutThem.MatchString(said) &&
			(strings.Contains(said, kind) || !hardParts.MatchString(said) && !bareEyes.MatchString(said)) {
			return true
		}
	}
	return false
}

// bareEyes are hard parts that notes call no more than that.
var bareEyes = phrase.MustCompile(`\b(?:eyes?|noses?)\b`)
