// Package lint checks a pattern: rules read the facts that package fabric
// found and say, in a maker's words, what a maker must be told.
//
// A rule is a value in a file of its own, registered in one list. Rules keep no
// state and never count stitches themselves: what a row comes to is a fact,
// what that means to the maker is a rule.
package lint

import (
	"cmp"
	"fmt"
	"slices"
	"sync"
	"time"

	"stitchproof/lang/fabric"
	"stitchproof/lang/house"
	"stitchproof/lang/materials"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// Severity is how much a finding matters to a maker.
type Severity uint8

// The severities, the least first.
const (
	Info    Severity = iota // the shape, style or completeness could be better
	Warning                 // a maker may be misled
	Error                   // a maker following the words cannot get the stated piece
	Caution                 // someone could be hurt; local rules and licensed practice decide
)

var severityNames = [...]string{"info", "warning", "error", "caution"}

// String is the severity's name, as reports and the command line spell it.
func (s Severity) String() string { return severityNames[s] }

// MarshalText writes the severity's name.
func (s Severity) MarshalText() ([]byte, error) { return []byte(s.String()), nil }

// UnmarshalText reads a severity's name.
func (s *Severity) UnmarshalText(text []byte) error {
	i := slices.Index(severityNames[:], string(text))
	if i < 0 {
		return fmt.Errorf("%q is no severity: %s are", text, both(severityNames[:]))
	}
	*s = Severity(i)
	return nil
}

// Finding is one thing that a rule has to say about a pattern.
type Finding struct {
	Rule     string // the rule's name
	Severity Severity
	Span     source.Span // in the file
	// Message says what is there and what was expected: lower case, no full stop.
	Message string
	// Size names the sizes that the finding is about, "" for all of them.
	Size    string
	Related []Related
	Fix     *Fix // nil for none
	// Alternatives are other changes that would settle the finding, each by
	// itself; none where there is no Fix.
	Alternatives []Fix
}

// Related is another place in the file that explains a finding.
type Related struct {
	Span    source.Span
	Message string
}

// Fix is a change to the file that settles a finding.
type Fix struct {
	Title string // what it does, as an order: "write 27 sts"
	// Safe is set where the change cannot alter what a maker makes of the
	// pattern. A fix that is not safe is one of several that would settle the
	// finding, and a person has to choose it.
	Safe  bool
	Edits []source.Edit
}

// Rule is one promise of what is found.
type Rule struct {
	Name     string // names what is found: "allow count-mismatch" reads well
	Family   string // counts, branches, order, materials, shape, style, caution
	Severity Severity
	Summary  string // the promise, in one sentence
	Why      string // why it matters to a maker
	// Bad is a whole pattern in which exactly this rule finds something; Good is
	// the same one put right, in which no rule does.
	Bad, Good string
	// Sources are where the rule's numbers and customs of the trade come from.
	Sources []string
	// Asked is set where the rule runs only if settings choose a level for it by its
	// own name: what not every house wants, and rules on trial.
	Asked bool
	Check func(*Pass)

	// OfPiece is set for a rule that looks at each piece by itself, and at what the
	// pattern says outside of its rows. What it finds in a piece is kept while an edit
	// leaves both as they are.
	OfPiece bool
	// Moot tells, of a rule that is OfPiece, whether what the whole pattern says makes
	// moot what the rule finds in any piece; nil for never.
	Moot func(*Pass) bool

	// last is set for a rule that looks at what the others found.
	last bool
}

// Pass is one rule's look at one file.
type Pass struct {
	File   *syntax.File
	Fabric *fabric.Fabric
	// Pieces are those that are looked at: one at most for a rule that is OfPiece, else all.
	Pieces []*fabric.Piece
	// Parts are those of the fabric that stand in what is looked at.
	Parts []*fabric.Piece
	// Materials is what the header says is needed.
	Materials *materials.List
	// House is how the house writes; the zero value leaves each file to its own way.
	House house.Style

	// Definitions are those that are looked at: with a piece alone none.
	Definitions []*syntax.Definition

	sections *sections // of all of the file
	around   *around
	called   func() *pieceNames

	rule       *Rule
	severity   Severity // of what it finds
	doubts     doubts
	mendings   *mendings
	allowances *allowances
	findings   []Finding
}

// of is the pass that a rule makes.
func (p Pass) of(r *Rule, s Severity) *Pass {
	p.rule, p.severity = r, s
	return &p
}

// Report adds a finding of the pass's rule.
func (p *Pass) Report(f Finding) {
	f.Rule, f.Severity = p.rule.Name, p.severity
	p.findings = append(p.findings, f)
}

// Note adds a finding that is no more than information, whatever else the rule tells.
func (p *Pass) Note(f Finding) {
	p.Report(f)
	noted := &p.findings[len(p.findings)-1]
	noted.Severity = min(noted.Severity, Info)
}

// Analysis is all that is known of a file.
type Analysis struct {
	// Settings are those that it was made under.
	Settings Settings
	Text     *source.Text
	File     *syntax.File
	Fabric   *fabric.Fabric
	// Materials is what the header says is needed.
	Materials *materials.List
	Findings  []Finding // by place, then by rule
	// Trace tells a programmer where looking at the file broke down, "" where it did not.
	Trace string

	around *around
	known  knowledge
}

// Analyze checks a pattern where nobody has chosen any settings.
func Analyze(text *source.Text) *Analysis { return Settings{}.Analyze(text) }

// Analyze reads a pattern, works it and runs every rule that is not off. The
// same text always gives the same findings in the same order.
func (s Settings) Analyze(text *source.Text) *Analysis { return s.AnalyzeAfter(nil, text) }

// AnalyzeAfter does what Analyze does, in less time where an earlier text of the
// pattern was analyzed under the same settings. before is nil for none.
func (s Settings) AnalyzeAfter(before *Analysis, text *source.Text) *Analysis {
	return guarded(text, func() *Analysis {
		if before == nil || before.Settings.Dialect != s.Dialect {
			before = &Analysis{}
		}
		begun := time.Now()
		file := syntax.ReadAfter(before.File, text)
		a := &Analysis{Settings: s, Text: text, File: file, around: aroundOf(file)}
		atOnce(2, func(i int) {
			if i == 0 {
				a.Fabric = fabric.WorkAfter(before.Fabric, file, s.Dialect)
				s.took(Counting, begun)
			} else {
				a.Materials = before.materialsOf(a)
			}
		})
		kept := before.keptFor(a)
		look := a.look()
		look.sections, a.known = sectionsOf(&look, kept)
		a.Findings = s.run(rules, look)
		return a
	})
}

// look is what every rule sees of the file.
func (a *Analysis) look() Pass {
	return Pass{
		File: a.File, Fabric: a.Fabric, Pieces: a.Fabric.Pieces, Parts: a.Fabric.Parts, Definitions: a.File.Definitions, Materials: a.Materials, House: a.Settings.Style,
		around: a.around, called: sync.OnceValue(func() *pieceNames { return pieceNamesOf(a.Fabric.Pieces) }), allowances: allowancesOf(a.File, Names()),
	}
}

// guarded makes an analysis. Where that breaks down, what is left says so.
func guarded(text *source.Text, analyze func() *Analysis) (a *Analysis) {
	defer func() {
		if broken := recover(); broken != nil {
			a = Unread(text, InternalFailure, fmt.Sprintf("reading this file broke down, and nothing in it is checked: %v; please report it", broken))
			a.Trace = stackOf(broken)
		}
	}()
	return analyze()
}

// Unread is the analysis of a file in which nothing could be checked, with the
// one finding that says so.
func Unread(text *source.Text, rule, why string) *Analysis {
	empty := syntax.Read(source.New(""))
	return &Analysis{
		Text: text, File: empty, Fabric: fabric.Work(empty), Materials: materials.Read(empty),
		Findings: []Finding{{Rule: rule, Severity: Error, Message: why}},
	}
}

// run runs rules, those last that look at what the others found.
func (s Settings) run(rules []*Rule, look Pass) []Finding {
	var ofPiece, ofPattern, last []*Rule
	for _, r := range rules {
		switch {
		case s.Levels.Of(r) == Off:
			continue
		case r.last:
			last = append(last, r)
		case r.OfPiece:
			ofPiece = append(ofPiece, r)
		default:
			ofPattern = append(ofPattern, r)
		}
		look.allowances.ran(r)
	}
	onPieces := s.onPieces(ofPiece, &look)
	inPattern := make([][]Finding, len(ofPattern))
	atOnce(len(onPieces.fresh)+len(ofPattern), func(i int) {
		if i < len(onPieces.fresh) {
			onPieces.run(i)
		} else {
			i -= len(onPieces.fresh)
			inPattern[i] = s.runOne(&look, ofPattern[i])
		}
	})
	found := slices.Concat(append(inPattern, onPieces.findings())...)
	found = look.allowances.filter(look.File.Text, found)
	for _, r := range last {
		found = append(found, s.runOne(&look, r)...)
	}
	slices.SortStableFunc(found, func(a, b Finding) int {
		return cmp.Or(cmp.Compare(a.Span.Start, b.Span.Start), cmp.Compare(a.Span.End, b.Span.End),
			cmp.Compare(a.Rule, b.Rule), cmp.Compare(a.Message, b.Message))
	})
	return found
}

// What hinders the checking is reported as an error under a name of its own: what
// was not checked must not pass as checked.
const (
	InternalFailure = "internal-failure" // the checker broke down
	FileUnreadable  = "file-unreadable"  // there is no text to check
)

// runOne runs a rule at the level that the house has it at.
func (s Settings) runOne(look *Pass, r *Rule) []Finding {
	defer s.took(r.Name, time.Now())
	return runToEnd(look.of(r, Severity(s.Levels.Of(r))))
}

// runToEnd runs a rule to its end. A rule that panics costs its own findings and
// no other rule's.
func runToEnd(p *Pass) (found []Finding) {
	defer func() {
		if broken := recover(); broken != nil {
			found = []Finding{{
				Rule:     InternalFailure,
				Severity: Error,
				Message:  fmt.Sprintf("the rule %s broke down on this file and found nothing: %v; please report it", p.rule.Name, broken),
			}}
		}
	}()
	p.rule.Check(p)
	return p.findings
}
