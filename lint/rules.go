package lint

import (
	"slices"

	"stitchproof/lang/source"
)

// rules is every rule, by name.
var rules = []*Rule{
	abbreviationUnknown,
	abbreviationUnlisted,
	abbreviationUnused,
	abbreviationsMissing,
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
	easeMismatch,
	edgingOverlap,
	endingMissing,
	fitDoubtful,
	gaugeMissing,
	gradingUneven,
	handworkPlace,
	hookMissing,
	hookSize,
	joinMissing,
	markerMissing,
	measureMismatch,
	multipleMismatch,
	notionUnlisted,
	notionUnused,
	piecesMismatch,
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
	textMisleading,
	turnMissing,
	turningChainHeight,
	turningChainUnstated,
	unitsSingle,
	wordingAmbiguous,
	wordsDoubled,
	yarnMissing,
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

// failures are what is told where the checking itself was hindered. They are no
// rules: nobody can switch them off or answer them.
var failures = []*Rule{
	{
		Name: FileUnreadable, Family: "failures", Severity: Error,
		Summary: "A file that is to be checked is there, can be opened, and holds text.",
		Why: "What was not read must not pass as checked. The file is missing or protected, larger than any pattern is, or a " +
			"picture or program. The other files are checked all the same, and the exit code is 2.",
	},
	{
		Name: InternalFailure, Family: "failures", Severity: Error,
		Summary: "The checker itself works on every text.",
		Why: "Where it breaks down, something in the file was not checked, and must not pass as if it were. That is a fault of the " +
			"checker and not of the pattern: please report it, with the file if you can.",
	},
}

// Failures lists what is told where the checking itself was hindered, as rules
// are listed.
func Failures() []*Rule { return slices.Clone(failures) }

// Find gives the rule, or the failure, of a name.
func Find(name string) (*Rule, bool) {
	for _, r := range slices.Concat(rules, failures) {
		if r.Name == name {
			return r, true
		}
	}
	return nil, false
}

// Try analyzes a pattern with the rule running, also one that must be asked for.
func (r *Rule) Try(pattern string) *Analysis {
	return Settings{Levels: Levels{r.Name: Level(r.Severity)}}.Analyze(source.New(pattern))
}

// Offers is the change that the rule offers in its bad example, nil for none.
func (r *Rule) Offers() *Fix {
	for _, f := range r.Try(r.Bad).Findings {
		if f.Rule == r.Name && f.Fix != nil {
			return f.Fix
		}
	}
	return nil
}
