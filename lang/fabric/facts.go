// Package fabric works a pattern as a hook would, one size at a time, and
// tells what comes of it: every stitch with the place it was worked into, and
// for every row and clause how many stitches were used and made.
//
// It takes the tree of package syntax and gives facts. It words no message
// and knows no rule: what a fact means to a maker is said in package lint.
package fabric

import (
	"iter"
	"strconv"

	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
	"stitchproof/lang/terms"
)

// Fabric is a whole pattern, worked.
type Fabric struct {
	File *syntax.File
	// Terms is whose words the pattern uses, and what shows it.
	terms.Terms
	Pieces []*Piece
	// Parts are the branches that words of the pattern's own stand for, a leaf or a thorn, each worked by
	// itself. They belong to no piece.
	Parts []*Piece

	words *words
	ends  []crew // how each piece ended
}

// Sizes is how many sizes were worked.
func (f *Fabric) Sizes() int { return f.File.SizeCount() }

// Piece is one piece, worked.
type Piece struct {
	Tree *syntax.Piece
	Rows []*Row
	// From is the piece whose stitches this one is worked on, nil where it has
	// its own beginning.
	From *Piece
	// Stitches holds, for each size, every stitch and chain space of the piece
	// in the order made.
	Stitches [][]Stitch

	proportion float64 // the width of a single crochet by the height of its row
}

// Stitch is a stitch, a chain of a foundation, or a chain space.
type Stitch struct {
	*Manner
	// Into is the index of the stitch or space it was worked into, -1 for none;
	// Over is how many were used, more than one for a decrease.
	Into, Over int
	// Chains is the length of a chain space.
	Chains int
	// Row and Clause tell which instruction made it, by index. Row is OfStated
	// or OfEarlier where none of the piece did.
	Row, Clause int
	// Object numbers the stitches that were worked together in one place, 0 for none.
	Object int
	// Apart is set for what no row counts: chains to work into, slip stitches
	// that travel to where a round begins.
	Apart bool
}

// Manner is how a stitch is worked. Stitches that are worked alike one after the other
// share it, and it never changes: a piece has thousands of them.
type Manner struct {
	// Kind is what was worked; nil for a chain space.
	Kind *stitch.Stitch
	// Own is the pattern's word for one of its own stitches, "" otherwise.
	Own  string
	Yarn string
	// Turning is set for a turning or beginning chain that counts as a stitch.
	Turning bool
	Post    bool
	Loop    syntax.Loop
}

// What Stitch.Row is for a stitch that no instruction of the piece made.
const (
	OfStated  = -1 - iota // nobody made it: it stands for what a row that could not be counted states
	OfEarlier             // it was made in the piece that this one goes on from
)

// IsSpace tells whether this is a chain space or a picot, which is no stitch.
func (s *Stitch) IsSpace() bool { return s.Kind == nil }

// IsPicot tells whether this is a picot: chains closed into a knot, a place that
// only its name leads to.
func (s *Stitch) IsPicot() bool { return s.Kind == nil && s.Chains == 0 }

// Name is how a pattern in a dialect calls it: "dc", "ch-2 sp", or the
// pattern's own word.
func (s *Stitch) Name(d stitch.Dialect) string {
	switch {
	case s.IsPicot():
		return "picot"
	case s.IsSpace():
		return "ch-" + strconv.Itoa(s.Chains) + " sp"
	case s.Own != "":
		return s.Own
	}
	return s.Kind.Abbreviation(d)
}

// Kinds counts stitches and spaces by kind, in the order first made. Of a shell, or
// another of the pattern's own groups, the stitches are counted that it is made
// of; one that is a single stitch goes by the pattern's word.
func Kinds(made []*Stitch, d stitch.Dialect) []PartCount {
	several := map[int]int{} // stitches of each object
	for _, s := range made {
		if !s.IsSpace() {
			several[s.Object]++
		}
	}
	var out []PartCount
	index := map[string]int{}
	var last *Stitch
	at := 0
	for _, s := range made {
		if last == nil || s.Kind == nil || s.Kind != last.Kind || s.Own != "" || last.Own != "" {
			name := s.Name(d)
			if s.Own != "" && s.Kind != nil && several[s.Object] > 1 {
				name = s.Kind.Abbreviation(d)
			}
			known := false
			if at, known = index[name]; !known {
				at = len(out)
				index[name] = at
				out = append(out, PartCount{Name: name})
			}
		}
		out[at].N++
		last = s
	}
	return out
}

// Row is one instruction, worked.
type Row struct {
	Tree  *syntax.Row
	Piece *Piece
	Index int // in Piece.Rows
	// Tallies are the results, one a size.
	Tallies []Tally
	// Steps are the running counts, one a clause of the tree (top level).
	Steps []Step
	// Stated is the count the row states, nil for none; StatedAt its place in
	// the row.
	Stated   *syntax.Total
	StatedAt source.Span
	// Joined and Turned tell how the row ends; Round whether it is worked round.
	Joined, Turned, Round bool
	// Continued is set for a line that goes on with the row of the one before it.
	Continued bool
	// Repeats is how many rows this instruction stands for (`Rows 3-8` is 6), by size.
	Repeats []int
	// Side is the side that faces by the turns, where it is known and the same in
	// every size.
	Side syntax.SideKind

	// Spent is how many clauses were worked for it, in all sizes and all readings,
	// those of repeats as often as they were tried.
	Spent int

	laid  []stretch // where in the piece's stitches are those that it made, by size
	stage stage     // the work before it, kept of few rows: see Swatch
}

// stretch is a run of a piece's stitches.
type stretch struct{ from, to int }

// Made gives the stitches and spaces that the row made in a size, in their order, with
// their index in Piece.Stitches.
func (r *Row) Made(size int) iter.Seq2[int, *Stitch] {
	return func(yield func(int, *Stitch) bool) {
		all := r.Piece.Stitches[size]
		for i := r.laid[size].from; i < min(r.laid[size].to, len(all)); i++ {
			if s := &all[i]; s.Row == r.Index && !yield(i, s) {
				return
			}
		}
	}
}

// Rows gives every instruction of every piece, in order.
func (f *Fabric) Rows() iter.Seq[*Row] {
	return func(yield func(*Row) bool) {
		for _, piece := range f.Pieces {
			for _, row := range piece.Rows {
				if !yield(row) {
					return
				}
			}
		}
	}
}

// Work stands for what the row came to: it is the same one before and after an edit
// that leaves the row's piece as it was, wherever that stands in the file then.
func (r *Row) Work() *Tally { return &r.Tallies[0] }

// Works tells whether the row works stitches in some size.
func (r *Row) Works() bool {
	for size := range r.Tallies {
		if r.Tallies[size].Works {
			return true
		}
	}
	return false
}

// Branched tells whether branches leave the row.
func (r *Row) Branched() bool {
	for i := range r.Steps {
		if len(r.Steps[i].Ledger) > 0 {
			return true
		}
	}
	found := false // those of a repeat come home within its step
	syntax.Walk(r.Tree.Clauses, func(c syntax.Clause) {
		_, ok := c.Node.(*syntax.Branch)
		found = found || ok
	})
	return found
}

// Agrees is how the stated count compares, in the size where it fares worst.
func (r *Row) Agrees() Agreement {
	result := NotStated
	for size := range r.Tallies {
		if a := r.Tallies[size].Agrees(); a == Disagrees || a > result && result != Disagrees {
			result = a
		}
	}
	return result
}

// Before and After give the nearest row of the piece that works stitches, nil
// for none.
func (r *Row) Before() *Row { return r.neighbour(-1, (*Row).Works) }
func (r *Row) After() *Row  { return r.neighbour(+1, (*Row).Works) }

// Below is the nearest row before it that works stitches in a size, nil for none.
func (r *Row) Below(size int) *Row {
	return r.neighbour(-1, func(b *Row) bool { return b.Works() && b.Tree.HasSize(size) })
}

func (r *Row) neighbour(step int, is func(*Row) bool) *Row {
	list := r.Piece.Rows
	for i := r.Index + step; i >= 0 && i < len(list); i += step {
		if is(list[i]) {
			return list[i]
		}
	}
	return nil
}

// Tally is what a row comes to in one size.
type Tally struct {
	// Known is false where the row could not be counted; Blame then is the
	// clause at fault.
	Known bool
	Blame source.Span
	// Works tells whether the row works stitches at all: `Fasten off.` does not.
	Works bool
	// Made is the number of stitches, a counted turning chain included, slip
	// stitches that join and chain spaces not.
	Made int
	// Parts counts each kind made: "dc", "ch-2 sp", "shell".
	Parts []PartCount
	// Chains is the number of chains in the row's spaces.
	Chains int
	// Base is what the row below offered, Left what of it remains unworked.
	Base, Left int
	// Ahead is what the last clause left to be worked into, by kind, that which comes
	// next first: of a row that is not written to its end, what is before the hook.
	Ahead []PartCount
	// Compared holds each part of the stated count against what was made.
	Compared []Compared
	// Earlier holds the counts that the rows before the last have of their own against what
	// those made, where the instruction stands for several.
	Earlier []Compared
	Faults  []Fault
	// Readings are the ambiguous wordings that were settled otherwise than by
	// default; Undecided are those taken by default of which nothing in the piece
	// shows that it is right.
	Readings, Undecided Reading
	// Explained are the ways of counting under which a stated count that
	// disagrees would agree.
	Explained Reading

	row     []int    // the stitches and spaces made, by index
	footing *footing // what they stand on
}

// PartCount is a number of one kind of stitch or space.
type PartCount struct {
	Name string
	N    int
}

// Part gives the count of a kind, 0 for none.
func (t *Tally) Part(name string) int {
	for _, p := range t.Parts {
		if p.Name == name {
			return p.N
		}
	}
	return 0
}

// Agreement is how a stated count compares with the count made.
type Agreement uint8

// The agreements.
const (
	NotStated Agreement = iota
	Agrees
	Disagrees
	Uncheckable // the row or the thing counted is not known
)

// Compared is one part of a stated count against what was made.
type Compared struct {
	Name   string // as the pattern calls it, "" for stitches
	On     string // the branch, or what branches grow from, on which alone they are counted; "" for the row
	Stated int
	Made   int
	Result Agreement
}

// Agrees is how the whole stated count compares.
func (t *Tally) Agrees() Agreement {
	result := NotStated
	for _, c := range t.Compared {
		result = max(result, c.Result)
		if c.Result == Disagrees {
			return Disagrees
		}
	}
	return result
}

// Step is what one clause of a row does, one value a size.
type Step struct {
	Span source.Span // in the row
	// Used and Made are this clause's own; Total is the row's running count
	// after it; Left the places of the row below not yet reached.
	Used, Made, Total, Left []int
	// Known is false from the first clause on that could not be counted.
	Known bool
	// From and To are the stitches made by the clause in the first size, as
	// indexes into Piece.Stitches[0].
	From, To int
	// Ledger is the state of the stem and the open branches after the clause, the
	// stem first; nil while no branch is open in any size.
	Ledger []BranchState
	// Home is the state, as they closed, of the branches that were open before the
	// clause and came home in it, the innermost first.
	Home []BranchState
}

// BranchState is how far a branch, or the stem, is worked: its own chain, for
// the stem the foundation chain or the row below. It has one value a size, 0 in
// a size in which the branch has no part in the clause, and for a stem of which
// nobody knows how long it is: a ring, or the ends of rows.
type BranchState struct {
	Name                          string
	Chains, Skipped, Worked, Left []int
}

func newBranchState(name string, sizes int) BranchState {
	numbers := func() []int { return make([]int, sizes) }
	return BranchState{name, numbers(), numbers(), numbers(), numbers()}
}

// FaultKind is what is wrong.
type FaultKind uint8

// The faults that counting finds.
const (
	RowShort         FaultKind = iota // places left unworked and not said to be; N of them
	RowOver                           // N more places asked for than there are
	RepeatRemainder                   // a repeat to the end leaves N over; Unit is its size, Base what it had
	PlaceAbsent                       // the place named is not there; Name names it, There what is, Base the row that was named, 0 for none
	MultipleMismatch                  // the chain does not fit the stated multiple
	TooMany                           // more stitches than a row may have
	BranchUnreturned                  // the branch Name is still open where the row goes on, or ends with N places of it left
	BranchChainLeft                   // N of the Base chains of the branch Name are left unworked
	BranchEmpty                       // nothing is worked along the N chains of the branch Name, or it has none
	BranchNameReused                  // a second branch of the row is called Name; Related is the first
	ReturnUnknown                     // no branch is open to come home from, or none called Name to come home to: `return to A`
	StemExhausted                     // N more places asked for than the stem has, once its branches have come home; Base is how many it has
	BranchUnmarked                    // a branch made without the word
	RowUnknown                        // a row or piece that is referred to is not there
	ChainSupposed                     // only a multiple of the foundation is given: it is counted with N chains, which are Unit repeats
	BranchAtTip                       // a branch is worked along N times, which is even, and so ends at its tip
	EdgingOverlaps                    // N places of an edging are those of another; Base is its row's index, Fits by how far it could be moved
)

// Fault is one thing that counting found wrong.
type Fault struct {
	Kind FaultKind
	// Span is in the row.
	Span source.Span
	Size int
	// N is the number at fault: the 2 of `2 sts are left over`. Base is what it is at fault
	// against, mostly the places there were, and Unit how many one repeat takes: what they are of
	// each kind, the kinds say.
	N, Base, Unit int
	// Fits are the numbers nearest to Base, or to the chains laid, that would do: 12 and 18 for
	// 15 where a repeat takes 6.
	Fits []int
	// Name is what was asked for, in the words of the pattern, `ch-3 sp`, or the branch at fault;
	// There is what lies in its place: `12 sc and 3 ch-1 sp`.
	Name, There string
	// OnBranch is set where the ground is not the row below but a branch, whose name
	// Branch is. Of a PlaceAbsent without a Name there is no such branch.
	OnBranch bool
	Branch   string
	// Related is another place of the same row that explains the fault.
	Related source.Span
}

// Reading is a set of wordings with two meanings, each of which the counts
// settled.
type Reading uint32

// The readings.
const (
	ReadTurningCounts  Reading = 1 << iota // the beginning chain was taken to count, or not, against the default
	ReadTimesInAll                         // `rep from * N times` was taken as N in all
	ReadEndingReplaces                     // `ending with` replaces the end of the last repeat
	ReadOneInEach                          // `3 sc in next 3 sts` was taken as 3 in each
	ReadGapsAdjoin                         // `between next 2 dc`, again, begins with the dc the gap before it ended with
	ReadRunsOn                             // brackets of which nothing is said go on to the end of the row
	ReadLineRepeats                        // `around`, said of the row's last step, is said of all its steps
	ReadTipShared                          // the last chain has a place on both sides though one stitch turns round it, or none though several do
	ReadBehindPassed                       // the stitch behind one worked rows below is passed over only by its own words
	ReadCountsChains                       // stated counts count each chain of a space as a stitch
	ReadLoopOfStitch                       // a `loop` is that of any stitch, where the row below has no spaces
	ReadAllInRing                          // stitches of a first round go into the ring though no place is named for them
	ReadListApart                          // of a list of stitches only the last goes in the place named at its end
	ReadLoopFromFirst                      // the loop that a round begins with stands on its first stitch
	ReadSpaceIsGap                         // a `space` is the gap between two groups that nothing parts, though there are chain spaces too
	ReadClosedInOne                        // `dc2tog in next st` closes stitches that all stand in that one
	ReadOmitsTurning                       // stated counts leave out the turning chain, which stands for a stitch
	ReadStartsInJoined                     // a round begins in the place that it was led to, though its first step does not say the same
	ReadNumberInOne                        // `(2 sc, sc) around` was taken as 2 in one stitch, then 1
	ReadOverBranches                       // the row goes over the branches of the row below, which only hang from it by custom
)

// counted are the readings of which neither is the custom, so that only counts
// can decide.
const counted = ReadTimesInAll | ReadEndingReplaces

// wholePiece are the readings that hold for a piece or not at all: what is
// counted, and whether its beginning chains are.
const wholePiece = ReadTurningCounts | ReadCountsChains | ReadOmitsTurning

// start is the row's first clause.
func (r *Row) start() source.Span {
	if len(r.Steps) == 0 {
		return source.Span{}
	}
	return r.Steps[0].Span
}
