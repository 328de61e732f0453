package stitch

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
)

// Dialect is the set of stitch names that a pattern uses. From the single
// crochet up, a US name is the UK name of the stitch one rung lower.
type Dialect uint8

// The dialects. Unsettled means that it is not known which is used.
const (
	Unsettled Dialect = iota
	US
	UK
)

var dialectNames = [...]string{"unsettled", "US", "UK"}

// Expressions of the words that name a nation for its stitch names, so written that a phrase with one knows the words
// that it asks for.
const (
	USExpr     = `(?:(?:US|U\.S)\.?(?:A\.?)?|American)`
	UKExpr     = `(?:(?:UK|U\.K)\.?|British)`
	NationExpr = `(?:` + USExpr + `|` + UKExpr + `)`
)

func (d Dialect) String() string { return dialectNames[d] }

// MarshalText writes the dialect as String does.
func (d Dialect) MarshalText() ([]byte, error) { return []byte(d.String()), nil }

// UnmarshalText reads a dialect's name, in capitals or not.
func (d *Dialect) UnmarshalText(text []byte) error {
	i := slices.IndexFunc(dialectNames[:], func(name string) bool { return strings.EqualFold(name, string(text)) })
	if i < 0 {
		return fmt.Errorf("%q is no dialect: US and UK are", text)
	}
	*d = Dialect(i)
	return nil
}

// Class is the kind of thing that a stitch is.
type Class uint8

// The classes of stitch.
const (
	Plain      Class = iota // a rung of the ladder from sc to qtr
	Chain                   // ch
	Slip                    // sl st
	Together                // several of one stitch joined at the top: dc3tog
	Increase                // two in one place: inc, dc inc
	Decrease                // several joined into one, in whatever way the row asks for: dec, inv dec, 3 tog
	Post                    // worked round the stem of the stitch below: FPdc
	Extended                // with one step more: esc
	Linked                  // tied to the stitch before by its side bars: linked dc
	Foundation              // made together with the chain it stands on: fsc
	Texture                 // bobble, puff, popcorn, cluster: one stitch in the count
	Group                   // shell, fan, V-stitch: several stitches, how many the pattern must say
	Picot                   // chains closed into a knot, none in the count
	Crossed                 // a pair whose second goes back to the place skipped
	Spike                   // drawn up from rows below
	Reverse                 // worked backwards along the row
	Tunisian                // recognised, never counted
)

var classNames = [...]string{
	"plain", "chain", "slip", "together", "increase", "decrease", "post", "extended", "linked",
	"foundation", "texture", "group", "picot", "crossed", "spike", "reverse", "tunisian",
}

func (c Class) String() string { return classNames[c] }

// Convention says whether the trade counts a turning chain as a stitch.
type Convention uint8

// The conventions. Where practice varies, only the pattern can say.
const (
	No Convention = iota
	Varies
	Yes
)

var conventionNames = [...]string{"no", "varies", "yes"}

func (c Convention) String() string { return conventionNames[c] }

// Term is how one dialect writes a stitch.
type Term struct {
	Abbr   string   // the usual abbreviation
	Name   string   // in full
	Plural string   // of Name
	Also   []string // other spellings that are met

	proper []string // every spelling but the merely met ones, folded
}

// Stitch is one entry of the dictionary. Figures are 0 where they do not apply
// or no source gives them.
type Stitch struct {
	// ID names the stitch in the program: its US abbreviation.
	ID     string
	US, UK Term
	Class  Class
	// Base is the stitch that this one is built on, nil for none.
	Base *Stitch
	// Legs is how many stitches are joined at the top, for [Together].
	Legs int
	// Uses is how many stitches of the row below it takes, Makes how many
	// stitches it adds to its own row.
	Uses, Makes int
	// Height is in chains, HeightInSC in single crochets: the middle where
	// sources give a range.
	Height, HeightInSC float64
	// YarnOvers is how many are made before the hook goes in.
	YarnOvers int
	// Loops is how many are on the hook when a stitch of one leg has been drawn
	// up, and before the last pull-through of one with several.
	Loops int
	// Passes is how many times the yarn is drawn through to finish one leg.
	Passes int
	// Turning is the usual number of turning chains.
	Turning       int
	TurningCounts Convention
	// Defined is set where publications differ so much that a pattern must
	// itself say what the stitch is.
	Defined bool
	// How tells how the stitch is made, in US terms; Symbol describes its sign
	// in charts, and is empty where the sources show none.
	How, Symbol string
	// Sources are the works behind the entry, each with how it was had.
	Sources []string
}

// Term is how a dialect writes s. Unsettled gives the US term.
func (s *Stitch) Term(d Dialect) Term {
	if d == UK {
		return s.UK
	}
	return s.US
}

// Abbreviation is the shortest word that a dialect has for s: its usual
// abbreviation, else its name, else its ID. Unsettled gives the US word.
func (s *Stitch) Abbreviation(d Dialect) string {
	t := s.Term(d)
	return cmp.Or(t.Abbr, t.Name, s.ID)
}

// Plain is the stitch at the bottom of what s is built on: dc for FPdc and
// dc3tog. It is s itself where s is built on none, and nil for nil.
func (s *Stitch) Plain() *Stitch {
	for s != nil && s.Base != nil {
		s = s.Base
	}
	return s
}

// Meaning is what one spelling names in each dialect, nil where that dialect
// does not use the spelling. The two are equal for words that do not clash.
type Meaning struct{ US, UK *Stitch }

// In is what the spelling names in d, nil if nothing. Unsettled gives the US
// stitch if there is one, else the UK stitch.
func (m Meaning) In(d Dialect) *Stitch {
	if d == UK || d == Unsettled && m.US == nil {
		return m.UK
	}
	return m.US
}

// Is reports whether the spelling names a stitch of one of some classes, while nobody knows in
// which dialect.
func (m Meaning) Is(classes ...Class) bool {
	s := m.In(Unsettled)
	return s != nil && slices.Contains(classes, s.Class)
}

// Shapes reports whether it names one that raises or lowers the count by itself.
func (m Meaning) Shapes() bool { return m.Is(Increase, Decrease) }

// Ambiguous reports whether the dialects use the spelling for two stitches.
func (m Meaning) Ambiguous() bool { return m.US != nil && m.UK != nil && m.US != m.UK }
