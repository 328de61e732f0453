package lint

import "slices"

// rules is every rule, by name.
var rules = []*Rule{
	abbreviationUnlisted,
	abbreviationUnused,
	bracketUnclosed,
	branchChainLeft,
	branchEmpty,
	branchNameReused,
	branchUnmarked,
	branchUnreturned,
	countMismatch,
	countMissing,
	countUnknown,
	edgingOverlap,
	endingMissing,
	joinMissing,
	markerMissing,
	multipleMismatch,
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
	stemExhausted,
	tailMissing,
	termAmbiguous,
	termsMixed,
	termsUndeclared,
	textDamaged,
	turnMissing,
	turningChainHeight,
	turningChainUnstated,
	wordingAmbiguous,
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
