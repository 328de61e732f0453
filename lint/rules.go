package lint

import "slices"

// rules is every rule, by name.
var rules = []*Rule{
	abbreviationUnknown,
	abbreviationUnlisted,
	abbreviationUnused,
	allowUnknown,
	allowUnpaired,
	allowUnreasoned,
	allowUnused,
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
	gaugeMissing,
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
	rowOrder,
	rowOver,
	rowRepeated,
	rowShort,
	sideParity,
	sizesMismatch,
	sleepLoose,
	smallParts,
	stemExhausted,
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

// Names are the names of all rules, sorted.
func Names() []string {
	names := make([]string, len(rules))
	for i, r := range rules {
		names[i] = r.Name
	}
	return names
}

// Find gives the rule of a name.
func Find(name string) (*Rule, bool) {
	for _, r := range rules {
		if r.Name == name {
			return r, true
		}
	}
	return nil, false
}
