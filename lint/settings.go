package lint

import (
	"fmt"
	"maps"
	"reflect"
	"slices"
	"time"

	"stitchproof/lang/house"
	"stitchproof/lang/nearest"
	"stitchproof/lang/stitch"
)

// Settings are what a house chooses of the checks. The zero value is what holds
// where nobody has chosen.
type Settings struct {
	Levels Levels
	// Dialect is whose terms a pattern uses where nothing in it shows that.
	Dialect stitch.Dialect
	// Style is how patterns are written.
	Style house.Style
	// Took is told how long each rule took on a file, and reading and counting it
	// under the name [Counting]; nil for nobody. It may be called by several at once.
	Took func(what string, d time.Duration)
}

// sameAs tells whether the same is found under both, whoever is told how long it took.
func (s Settings) sameAs(other Settings) bool {
	s.Took, other.Took = nil, nil
	return reflect.DeepEqual(s, other)
}

// Counting is what [Settings.Took] calls all that is done before the rules.
const Counting = "reading and counting"

// took tells who asked for it how long something took since a time.
func (s Settings) took(what string, since time.Time) {
	if s.Took != nil {
		s.Took(what, time.Since(since))
	}
}

// Level is what a house makes of a rule: a severity for what it finds, or Off.
type Level int8

// Off is the level of a rule that is not run.
const Off Level = -1

// String is the level's name, as settings spell it.
func (l Level) String() string {
	if l == Off {
		return "off"
	}
	return Severity(l).String()
}

// MarshalText writes the level's name.
func (l Level) MarshalText() ([]byte, error) { return []byte(l.String()), nil }

// UnmarshalText reads a level's name.
func (l *Level) UnmarshalText(text []byte) error {
	if string(text) == Off.String() {
		*l = Off
		return nil
	}
	var s Severity
	if err := s.UnmarshalText(text); err != nil {
		return fmt.Errorf("%q is no level: %s are", text, both(LevelNames()))
	}
	*l = Level(s)
	return nil
}

// LevelNames are the names that a level may have.
func LevelNames() []string { return append([]string{Off.String()}, severityNames[:]...) }

// All is the name that a level for every rule goes by.
const All = "all"

// Levels are the levels chosen, by the name of a rule, of a family, or [All]. A
// rule's own goes before its family's, and that before the one for all.
type Levels map[string]Level

// Choose takes later choices over: one for all undoes every choice before, and
// one for a family those for its rules.
func (l Levels) Choose(later Levels) {
	if _, ok := later[All]; ok {
		clear(l)
	}
	for _, r := range rules {
		if _, ok := later[r.Family]; ok {
			delete(l, r.Name)
		}
	}
	maps.Copy(l, later)
}

// Of is the level of a rule.
func (l Levels) Of(r *Rule) Level {
	if name, ok := l.Names(r); ok {
		return l[name]
	}
	if r.Asked {
		return Off
	}
	return Level(r.Severity)
}

// Names is the name by which the level of a rule is chosen: its own, its family's
// or [All]. It is false where none is. A rule that must be asked for is so by its
// own name.
func (l Levels) Names(r *Rule) (name string, chosen bool) {
	names := []string{r.Name, r.Family, All}
	if r.Asked {
		names = names[:1]
	}
	for _, name := range names {
		if _, ok := l[name]; ok {
			return name, true
		}
	}
	return "", false
}

// Selectors are the names that levels can be chosen for: every rule's, every
// family's, and [All].
func Selectors() []string {
	return slices.Concat([]string{All}, Families(), Names())
}

// CheckSelector tells what is wrong with a name that a level is chosen for.
func CheckSelector(name string) error {
	known := Selectors()
	if slices.Contains(known, name) {
		return nil
	}
	if meant, ok := nearest.To(name, known); ok {
		return fmt.Errorf("no rule and no family of rules is called %q; perhaps %q is meant", name, meant)
	}
	return fmt.Errorf("no rule and no family of rules is called %q; `stitchproof rules` lists them", name)
}

// Families are the names of the families of rules, sorted.
func Families() []string {
	var names []string
	for _, r := range rules {
		names = append(names, r.Family)
	}
	slices.Sort(names)
	return slices.Compact(names)
}
