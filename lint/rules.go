package lint

import "slices"

// rules is every rule, by name.
var rules = []*Rule{
	abbreviationUnknown,
	abbreviationUnlisted,
	abbreviationUnused,
	bracketUnclosed,
	branchAtTip,
	branchChainLeft,
	branchEmpty,
	branchNameReused,
	branchUnmarked,
	branchUnreturned,
	cordLength,
	countMismatch,
	countMissing,
	countUnknown,
	edgingOverlap,
	endingMissing,
	fitDoubtful,
	gaugeMissing,
	gradingUneven,
	hookSize,
	joinMissing,
	markerMissing,
	measureMismatch,
	multipleMismatch,
	notionUnlisted,
	placeAbsent,
	referenceUnknown,
	repeatRemainder,
	repeatUnanchored,
	repeatUnended,
	returnUnknown,
	roundCups,
	roundRuffles,
	rowOrder,
	rowOver,
	rowRepeated,
	rowShort,
	sideBySize,
	sideParity,
	sizesMismatch,
	sleepLoose,
	smallParts,
	stemExhausted,
	styleConsistency,
	tailMissing,
	termAmbiguous,
	termsMixed,
	termsUndeclared,
	textDamaged,
	turnMissing,
	turningChainHeight,
	turningChainUnstated,
	unitsSingle,
	wordingAmbiguous,
	yarnUndeclared,
	yarnUnused,
	yarnWeight,
}

// Rules lists every rule, by name.
func Rules() []*Rule { return slices.Clone(rules) }

// Find gives the rule of a name.
func Find(name string) (*Rule, bool) {
	for _, r := range rules {
		if r.Name == name {
			return r, true
		}
	}
	return nil, false
}
