package syntax

import (
	"slices"
	"strings"

	"stitchproof/lang/numeral"
	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
)

// Clause is one step of an instruction: what is done, and where it is written.
type Clause struct {
	Span source.Span
	// Sep is the separator written after the clause.
	Sep  Separator
	Node Node
}

// Separator is what stands between a clause and the next one. A stronger one
// ends more: a semicolon closes a list of stitches that go in one place, a
// full stop closes a sentence, which an unmarked repeat repeats.
type Separator uint8

// The separators, weakest first.
const (
	SepNone Separator = iota
	SepComma
	SepSemi
	SepStop
)

// Node is what a clause says. Every node means a number of places used of the
// row below and a number of stitches made.
type Node interface{ node() }

// StitchRef is a stitch as the pattern writes it. What it means depends on
// the pattern's dialect and on its own definitions.
type StitchRef struct {
	Word    string // lower case, words joined by spaces; "" for none
	Meaning stitch.Meaning
}

// Written tells whether a stitch is named at all.
func (r StitchRef) Written() bool { return r.Word != "" }

// Loop is the part of a stitch's top that is worked into.
type Loop uint8

// The loops of a stitch's top.
const (
	BothLoops Loop = iota
	BackLoop
	FrontLoop
	ThirdLoop
)

// Work makes stitches: `sc in next 5 sts`, `2 dc in next st`, `5 sc`, `inc`.
type Work struct {
	// Stitch is unwritten where the stitch worked before is meant: `1 in each of
	// next 3`.
	Stitch StitchRef
	// Number is how many are worked: in each place where a place is named, else
	// one in each of the next so many.
	Number Num
	// Times repeats the whole clause: `inc x 6`, `dec 3 times`.
	Times  Num
	Loop   Loop
	Places []Place
	// Counts is what is said of the chains skipped before the first stitch:
	// `dc in 4th ch from hook (skipped 3 ch count as dc)`.
	Counts Counts
	// Evenly is set where the places are left to the maker: `sc evenly around`.
	Evenly bool
	// Joins is set where the stitch closes the round: `dc in first sc to join`.
	Joins bool
	// Yarn is the yarn it is worked in: `sc with A in next st`.
	Yarn string
	// Picot is set where the stitch closes the chains before it into a picot:
	// `ch 4, sl st in 4th ch from hook for picot`; or goes back along all of them.
	Picot bool
	// InLoops is set where the words say which loops, be it both.
	InLoops bool
	// HeldBack is set where the stitches are closed together into one: `2 tr in
	// same sp, holding back the last loop of each`.
	HeldBack bool
	// Between is the chains between the stitches: `dc in each st with ch 1 between`.
	Between Spacing
	// Body is what the stitch is said to be made of, where it is worked: `shell
	// (2 dc, ch 2, 2 dc) in next sp`.
	Body []Clause
	// Called is what a bracket within the words calls what is worked: `3 dc (shell)
	// in next sp`.
	Called StitchRef
}

// Spacing is said of stitches with chains between them: `with ch 2 between`.
// Folding gives it to the stitches that it is said of.
type Spacing struct {
	Chains Num
	// All is set where every stitch of a list is meant: `between each st`.
	All bool
}

// HeldBack says that stitches are closed together into one. Folding gives it
// to the stitches that it is said of.
type HeldBack struct{}

// Motion tells a stitch by what hook and yarn do: `yo, draw up a loop`.
type Motion struct {
	Place *Place // that the hook goes into, nil where none is named
}

// Likewise says that the work goes on as elsewhere in the pattern, in words
// that give no number: `continue in this manner`, `complete to correspond`.
type Likewise struct{}

// Chain makes chains: `ch 3`, `ch 3 (counts as dc)`.
type Chain struct {
	Number Num
	// Unsaid is set where no number is written: within a row that is one chain,
	// before any (`make a chain 15 inches long`) as many as the maker likes.
	Unsaid bool
	Counts Counts
	// Multiple and Plus are said in `ch a multiple of 6 + 2`, alone or of a
	// number that is given: `ch 56 (a multiple of 6 + 2)`.
	Multiple, Plus Num
	// Piece is the piece that they are made on, where rounds are joined into one:
	// `ch 3 on the second leg`.
	Piece string
	// OfStitches is set where no chains are named in it: those to turn may come to
	// the multiple.
	OfStitches bool
	// Sample is set where the number is one that a maker may choose: `a multiple
	// of 6 + 2 (mine was 98)`.
	Sample bool
}

// Counts is what a pattern says of a turning or beginning chain.
type Counts struct {
	Said bool
	// As lists what the chain stands for: a stitch, and perhaps chains after it
	// (`counts as dc and ch 1`). Empty where it is said not to count.
	As     []Part
	Always bool // said once for the whole pattern: `here and throughout`
	Span   source.Span
}

// Part is a number of one thing: `4 ch-2 sps`, `12 dc`.
type Part struct {
	Number Num
	Noun   Noun
	// On is what they stand on, where only those are counted: a branch, or what it grows
	// from.
	On string
	// All is set where they are said to be counted in all, `16 sts; 37 sts in all`, and Whole where all that was made
	// is said to have them: `the whole leaf has 48 sts`.
	All, Whole bool
	// Inside is set for what the things counted before it consist of: the dc of `12 fans (96 dc), 60 sc`.
	Inside bool
}

// Skip passes over places: `sk next 2 sts`.
type Skip struct{ Place Place }

// Leave says that places stay unworked: `leave remaining 10 sts unworked`.
type Leave struct {
	Place Place
	// Told is set where it only says how many chains are left so far: `2 ch left`.
	Told bool
}

// Group works several clauses all in one place: `(2 dc, ch 2, 2 dc) in next sp`,
// and again in each further place that is named.
type Group struct {
	Body   []Clause
	Places []Place
	// Listed is set where no bracket holds the steps together: the place may be
	// that of the last alone, `2 dc, ch 1, 3 tr in next sp`.
	Listed bool
	// Called is what a bracket within the words calls the group.
	Called StitchRef
	// Corner is set where it is said to make a corner: a later `corner` is the same.
	Corner bool
	// Between is the number of chains between the stitches, where they are said
	// once for all: `3 dc with ch 1 between in next st`.
	Between Num
}

// Corner is the word for a step that works a corner as it was worked before.
const Corner = "corner"

// Bracket is a bracketed run of clauses with nothing said after it.
type Bracket struct {
	Body []Clause
	// Total is the stated count that the inside could also be read as.
	Total *Total
}

// Limit says how a repeat ends.
type Limit uint8

// The limits of a repeat.
const (
	Unstated   Limit = iota // nothing is said: to the end
	Times                   // so many times in all
	More                    // so many times more than the once already worked
	TimesOrAll              // `rep from * 3 times`: more or in all, as the counts decide
	ToEnd                   // across, around
	ToLast                  // to the last so many places
	ToPlace                 // to the next of a thing: `rep from * to center ch-2 sp`
	Measured                // until a length, a wish or a marker is reached
)

// Repeat works its body again and again.
type Repeat struct {
	Body   []Clause
	Limit  Limit
	Number Num
	// Last is what is left by ToLast, and what ToPlace stops before.
	Last Place
	// Starred is set where the body is marked by stars rather than brackets.
	Starred bool
	// StopAt is the index of the clause of Body before which a second mark
	// stands, -1 for none. Stops is set where the last repeat ends there
	// (`ending last rep at **`).
	StopAt int
	Stops  bool
	// Ending follows the last repeat, or replaces its last step: it does where
	// the words say so (Replaces), else as the counts decide.
	Ending   []Clause
	Replaces bool
	// Omits is the kind of step that the last repeat leaves out: `omit last ch 2`.
	Omits Node
	// Mirrored is set where the row ends as it began, the other way round:
	// `ending to correspond`.
	Mirrored bool
	// Whole is set where no mark says where the repeat begins.
	Whole bool
	// ByTurns is set where one step of the body is worked at a time, so that the end
	// may fall on any: `sc and dc alternately across`. First is the one that begins.
	ByTurns bool
	First   int
}

// InOrder is the body as it is worked, from the step on that begins.
func (r *Repeat) InOrder() []Clause {
	if r.First == 0 {
		return r.Body
	}
	return slices.Concat(r.Body[r.First:], r.Body[:r.First])
}

// Alternate works stitches by turns: `alternate sc and dc across`. A single one goes by
// turns with those before it (`sc, dc alternately`), none with all that stand there (`keep
// alternating`). After folding it is a Repeat.
type Alternate struct {
	Turns []Work
	Body  []Clause // those of a bracket: `[sc, dc] alternately`
	// Limit, Number and Last are those of the repeat.
	Limit  Limit
	Number Num
	Last   Place
}

// Mark is a star standing in the text. After folding only the marks that
// found no repeat are left.
type Mark struct{ Text string }

// RepeatFrom is the text that ends a starred repeat. After folding only those
// that found no star are left.
type RepeatFrom struct {
	From, To string
	// Pattern is set in `repeat the pattern`: the steps that are marked, or elsewhere.
	Pattern bool
	Limit   Limit
	Number  Num
	Last    Place
}

// Ending gives the end of the last repeat: `ending with sc in last 3 sts`.
type Ending struct {
	StopAt string
	Step   Node // nil for none
	// Omits is set in `omit last dc`: the last repeat leaves Step out.
	Omits bool
	// Last is set in `ending last rep with …`, which replaces the last step of
	// the last repeat; `ending with …` may also follow it.
	Last bool
	// Mirrored is set in `ending to correspond`: how is not said.
	Mirrored bool
}

// Join closes a round or a ring: `join`, `sl st in first sc to join`,
// `join with sl st to form ring`.
type Join struct {
	Place Place
	Ring  bool
	// Chains are those of the ring where they are said with it: `make a ring of 5
	// ch`.
	Chains Num
	// With is the stitch that joins, where one is named: `join with sc in first sc`.
	With StitchRef
}

// Turn turns the work.
type Turn struct {
	Not    bool // `do not turn`
	Rotate bool // to the other side of a chain or to the row ends
	// OtherSide is set where the words say that it is the chain's other side.
	OtherSide bool
	// OfStart is set where it is said to be the other side of the chain that the piece begins with.
	OfStart bool
	// Foundation is set where they only name the foundation chain: `working along the
	// foundation chain`, which is its other side once a row stands on it.
	Foundation bool
}

// NoJoin says that a round is left open: `do not join`.
type NoJoin struct{}

// Finish ends a piece: `fasten off`. Where the yarn is named by its letter, the work goes on
// if it was in another: `cut CC`.
type Finish struct {
	LongTail bool
	Yarn     string
}

// MakeUp is handwork that no stitch is counted in: stuffing, sewing, weaving in.
type MakeUp struct{ LongTail bool }

// Yarn changes, joins, drops or carries a yarn.
type Yarn struct {
	Action YarnAction
	// Before is set in `sc in next 3 sts with B`: the yarn is taken up before the
	// clause that it follows.
	Before bool
	Yarn   string
	// Place is where a yarn is joined; With is the stitch it is joined with.
	Place Place
	With  StitchRef
}

// YarnAction is what is done with a yarn.
type YarnAction uint8

// The actions with a yarn.
const (
	YarnUse YarnAction = iota
	YarnJoin
	YarnDrop
	YarnCarry
)

// Marker places, moves or removes a stitch marker.
type Marker struct {
	// Nth stitch of the last OfLast made, or of the row where OfLast is 0; both
	// 0 is the last stitch made.
	Nth, OfLast int
	// Skipped is set where it is one of the stitches just passed over.
	Skipped bool
	// All is set where all that there are move up.
	All bool
}

// MagicRing makes a ring to work into.
type MagicRing struct{}

// Rows works other rows again: `rep Row 2`, `Rows 2 and 3`, `work as for Front
// to Row 12`.
type Rows struct {
	List []RowSpan
	Last Num // `rep last 2 rows`
	// Called is the row referred to by its name, without the word row: `rep dec row`.
	Called string
	// Piece is the piece referred to, as far as PieceRow or Mark, or whose rows are those of
	// List.
	Piece    string
	PieceRow Num
	Mark     string
	Limit    Limit
	Number   Num
	Changed  bool // `same as Row 3, but …`
	// Long is over how many rows those named go, in turn: `rep Row 2 for 8 more rows`.
	// Where InAll is set, it counts all that the piece has then: `until there are 20 rows`.
	Long  Num
	InAll bool
	// UpTo names the part of the piece referred to that is no longer worked, as Ideas
	// has it: `work as Back to armhole shaping`.
	UpTo string
}

// RowSpan is a run of row numbers.
type RowSpan struct {
	From, To Num
	Each     bool // the word stands before both: `row 2 through row 26`
}

// Long says over how many rows an instruction goes: `sc around for 4 rounds`.
type Long struct{ Rows Num }

// Even works without shaping: `work even for 4 rows`, in the stitch of the row below or in one
// that is named: `work 2 rows in sc`.
type Even struct {
	Number Num
	Stitch StitchRef
}

// Branch begins a branch that chains out from the work.
type Branch struct {
	Name     string
	Labelled bool // a label in the writer's own words names it, not the word
	Behind   bool // its name stands behind its chain: `ch 4 for the fork`
}

// Return goes back to where a branch left its parent.
type Return struct {
	To   string // "" for the innermost branch's parent, "stem" for the row itself
	Told bool   // in other words than that: `back on the stem`
}

// ToStem tells whether it comes home to the row itself, from all branches.
func (r *Return) ToStem() bool {
	switch r.To {
	case "stem", "foundation", "row", "rnd", "base", "edge":
		return true
	}
	return false
}

// Leaves gives which of the branches that are open, the innermost last, a return
// leaves open.
func (r *Return) Leaves(open []string) []string {
	if r.ToStem() {
		return nil
	}
	for i := len(open) - 1; i >= 0; i-- {
		if r.To != "" && CalledBy(open[i], r.To) {
			return open[:min(i+1, len(open)-1)]
		}
	}
	if r.To != "" && r.Told {
		return nil // what all grow from
	}
	return open[:max(0, len(open)-1)]
}

// CalledBy tells whether what has a name is called by a word, or by several: it is by the
// last of those that it has, with the number that tells it from others or without, and a branch without a name by that
// word.
func CalledBy(name, words string) bool {
	if name == words || strings.HasSuffix(name, " "+words) || name == "" && words == "branch" {
		return true
	}
	bare := Unnumbered(name)
	return bare != name && CalledBy(bare, words)
}

// Unnumbered is the name of one of several without the number that tells it from the others: `arm two` is an arm.
func Unnumbered(name string) string {
	at := strings.LastIndexByte(name, ' ')
	if at < 0 {
		return name
	}
	if _, number := numeral.Read(name[at+1:]); !number {
		return name
	}
	return name[:at]
}

// RepeatBranch makes a branch of the row again: `rep branch A 3 times`. After
// folding only those are left for which the row has no such branch.
type RepeatBranch struct {
	Name   string
	Number Num
}

// PassBranch passes over a branch of the row below, or over all where it names
// none: `skip branch A`, `leave branches unworked`.
type PassBranch struct{ Name string }

// Total is a stated count: `(24 sc)`, `— 24 sts`, `you now have 12 dc and 4 sps`.
type Total struct {
	Parts []Part
	// Change is 1 where the count tells only how many more there are than in the
	// row below, and -1 where it tells how many fewer.
	Change int
	// Reached is set where the count is what the work goes on to: `until there are
	// 60 sts`.
	Reached bool
	// Chains is set where it says that it counts each chain as a stitch.
	Chains bool
	// Left is how many chains it says are left to work into: `6 sts, 4 ch left`, `9 sts, none left`.
	Left Num
	// Before are the counts of the rows before the last, where each of several rows has its
	// own: `Rows 3-5: … (11, 15, 19 sts)`.
	Before []Num
}

// OfChains tells a count of chains and of nothing else, not of spaces.
func (t *Total) OfChains() bool {
	return len(t.Parts) == 1 && t.Parts[0].Noun.Kind == NounChain && !t.Parts[0].Noun.Length.Written()
}

// CountsNote is a remark on the turning chain standing alone.
type CountsNote struct{ Counts Counts }

// LoopNote says that what follows is worked in one loop only: of the row
// below, or of the row named.
type LoopNote struct {
	Loop Loop
	Row  Num
}

// GoBack goes back to an earlier row and works along it: `back in the stitches of
// Row 8`.
type GoBack struct{ Row Num }

// PlaceFirst names the place before the stitches: `in next sp work 2 dc, ch 2
// and 2 dc`. Folding makes it a Group.
type PlaceFirst struct {
	Place Place
	First Node
}

// Shaping changes the number of a row's stitches at places left to the maker:
// `decreasing 6 evenly`.
type Shaping struct {
	Less   bool
	Number Num
}

// Along says that the row ends are worked into from here on.
type Along struct{}

// Made says that what was just worked is one of something: `(half shell made)`.
type Made struct {
	Stitch StitchRef
	// Body is what one is made of, as far as it was worked in one place.
	Body []Clause
	// Defines is set where it only says what one is: `(shell: 5 dc in one st)`.
	Defines bool
}

// Side names the side that faces: `RS facing`.
type Side struct{ Wrong bool }

// Remark is a comment within an instruction that changes nothing.
type Remark struct {
	// Chats is set for one that speaks to the maker, or of the work, as prose does.
	Chats bool
}

// Unread is a clause that was not understood.
type Unread struct{}

func (*Work) node()         {}
func (*Chain) node()        {}
func (*Skip) node()         {}
func (*Leave) node()        {}
func (*Group) node()        {}
func (*Bracket) node()      {}
func (*Repeat) node()       {}
func (*Alternate) node()    {}
func (*Mark) node()         {}
func (*RepeatFrom) node()   {}
func (*Ending) node()       {}
func (*Join) node()         {}
func (*Turn) node()         {}
func (*NoJoin) node()       {}
func (*Finish) node()       {}
func (*MakeUp) node()       {}
func (*Yarn) node()         {}
func (*Marker) node()       {}
func (*MagicRing) node()    {}
func (*Rows) node()         {}
func (*Even) node()         {}
func (*Long) node()         {}
func (*Branch) node()       {}
func (*Return) node()       {}
func (*RepeatBranch) node() {}
func (*PassBranch) node()   {}
func (*GoBack) node()       {}
func (*Total) node()        {}
func (*CountsNote) node()   {}
func (*LoopNote) node()     {}
func (*PlaceFirst) node()   {}
func (*Shaping) node()      {}
func (*Along) node()        {}
func (*Made) node()         {}
func (*Side) node()         {}
func (*Remark) node()       {}
func (*Spacing) node()      {}
func (*HeldBack) node()     {}
func (*Likewise) node()     {}
func (*Motion) node()       {}
func (*Unread) node()       {}

// Pick says which of the places is meant.
type Pick uint8

// The picks.
const (
	PickNext      Pick = iota // the next one, or the next so many
	PickSame                  // the place worked into last
	PickFirst                 // the first of the row, or of a ring of them
	PickLast                  // the last one, or the last so many
	PickNth                   // the Nth one
	PickAny                   // any one: where a yarn is joined
	PickRemaining             // all that are left
	PickPrevious              // the one passed over before
)

// Prep is how the hook meets the place.
type Prep uint8

// The ways a hook meets a place.
const (
	In         Prep = iota // into its top, or into a space: `in next ch-2 sp`
	AroundPost             // `around post of next dc`
	Between                // `between next 2 dc`
	Under                  // beneath the whole of it: `under next ch-3`, `over the ring`
)

// Place is where stitches are worked: `in next ch-2 sp`, `in 2nd ch from hook`,
// `in each st to last 3 sts`.
type Place struct {
	Pick Pick
	// Also are further things of the same place: `each dc and ch-1 sp`.
	Also []Noun
	// Number is how many places; unwritten is one, or all where Each is set.
	Number Num
	// Nth is the ordinal of PickNth; Nths has it for each size, where they differ.
	Nth  int
	Nths Num
	// Odd is set where the first of every Nth is meant, and not the last: `in odd sts`.
	Odd  bool
	Noun Noun
	Prep Prep
	Loop Loop
	From From
	// To limits an `each` to the places before the last so many.
	To ToLimit
	// Of is what the place belongs to: `of branch A`, `of next shell`, `of Row 1`.
	Of *Place
	// Name is the branch, marker or piece named.
	Name string
	// Below is how many rows below; 0 is the row below.
	Below int
	// Row is the row or round named, where one is.
	Row Num
	// Center is set for the middle one of a group.
	Center bool
	// Each is set where `each` or a plural puts one in every place.
	Each bool
	// Elsewhere is set for a place that this row does not offer: on another
	// motif, at the corner of another piece.
	Elsewhere bool
	// Grown is set for the place that what is worked grew from: `in the sc the arm grew from`, `in the st you left`.
	Grown bool
}

// AllAlong is every place that is left: `across`, `around`.
var AllAlong = Place{Each: true, To: ToLimit{Kind: ToTheEnd}}

// Empty tells whether nothing at all is said of the place.
func (p Place) Empty() bool {
	return p.Pick == PickNext && !p.Number.Written() && p.Noun.Kind == NounNone && p.To.Kind == ToNothing && p.Of == nil && p.Prep == In && !p.Each && !p.Elsewhere
}

// From is where a position is counted from.
type From uint8

// The origins of a position.
const (
	FromHere      From = iota // from where is not said: `in next st`, `in 3rd sc`
	FromHook                  // `in 2nd ch from hook`
	FromBeginning             // of the row, or from the join: `in 9th st from beg`
	FromEnd                   // `in 3rd st from end`
)

// ToKind is how far an `each` goes.
type ToKind uint8

// How far an `each` goes.
const (
	ToNothing ToKind = iota
	ToTheEnd         // across, around
	ToLastN          // to the last so many
	ToMarker         // to the marker, or to so many places before it
	ToNext           // to the next of a thing: a corner, a ch-1 sp
	ToMeasure        // until a length is reached
)

// ToLimit is how far an `each` goes.
type ToLimit struct {
	Kind ToKind
	// Number is how many places are left before the end, or before the marker: the 3 of `to last
	// 3 sts`. Noun is what they are, or what ToNext comes to: `to next corner`.
	Number Num
	Noun   Noun
	// Left is set where the words say that what is beyond is left: `all but the last 2`.
	Left bool
}

// NounKind is the kind of thing that is worked into or counted.
type NounKind uint8

// The kinds of thing.
const (
	NounNone   NounKind = iota
	NounAny             // st: any stitch
	NounStitch          // a stitch named: dc
	NounChain           // a chain
	NounSpace           // a space or loop; Length names its chains where written
	NounCorner
	NounRing
	NounRowEnd  // the end of one row, of which there are as many as rows: `in each row end`
	NounEdge    // a side as a whole, however many places it has: `evenly up the side`
	NounTurning // the turning chain
	NounOther   // the other side of the foundation chain
	NounGroup   // a group, block, petal, motif: an object that is counted
	NounMarker
	NounBase // the place a chain grows from
	NounRow
	NounJoin // the join, the slip stitch of the join
	NounTip
)

// Noun is a thing that is worked into or counted.
type Noun struct {
	Kind   NounKind
	Stitch StitchRef
	// Length is the number of chains of a space or of a beginning chain.
	Length Num
	// Word is how the pattern calls the thing: petals, blocks.
	Word string
}

// OfAll tells a noun of stitches whatever they are, said or left out: `30 sts`, `30`.
func (n Noun) OfAll() bool { return n.Kind == NounNone || n.Kind == NounAny }

// What words mean that name no stitch of their own: `in next st`, `in next ch`.
var (
	anyStitch = Noun{Kind: NounAny, Word: "st"}
	oneChain  = Noun{Kind: NounChain, Word: "ch"}
)
