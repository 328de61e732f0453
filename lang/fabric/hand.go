package fabric

import (
	"slices"

	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// Bounds of what is worked. A pattern that asks for more is told so.
const (
	maxRow   = 100_000
	maxPiece = 1_000_000
	// maxFaults bounds what is said of one row.
	maxFaults = 64
	// maxSteps bounds the clauses worked for one row, in all its readings: a
	// repeat of repeats may make nothing and never end.
	maxSteps = 200_000
	// maxOpen bounds the branches that stand open within each other.
	maxOpen = 200
	// maxOwn bounds the pattern's own stitches worked within each other.
	maxOwn = 12
)

// hand is the state of the work on one piece in one size: what hangs on the
// hook, what lies below, where the next stitch goes. Copying a hand and
// putting the copy back undoes what was done between.
type hand struct {
	words  *words
	size   int
	sizes  int
	habit  *habit              // what is taken of the writer's habits
	tall   []turningKey        // beginning chains met of which nothing says whether they count
	shown  map[turningKey]bool // what the joins of rounds show of the chains that begin them
	budget *int                // clauses that may still be worked for this row
	choose Reading             // readings taken against the default

	// The piece.
	earlier      []Stitch // every stitch and space of the rows that are done
	fresh        []Stitch // those of the row at work, numbered on from the earlier ones
	manner       *Manner  // of the stitch made last
	yarn         string
	done         map[int][]int // what each numbered row made
	rows         int           // rows worked, as far as they are numbered
	turns        int           // turns made
	rules        named[turningSaid]
	grown        named[[]int]    // what each named branch that is done is made of
	edged        map[edged]int   // the row that each place is edged by
	left         []leftOut       // places left unworked on purpose, those of the last row first
	short        leftOut         // what the last row that came short left, and did not say so
	shortIn      int             // the row of the piece that it was, or OfEarlier
	resumed      *int            // a row that came short, and is gone on with now: nil for none
	openings     []opening       // runs of skipped stitches with chains over them
	marks        []int           // stitches that carry a marker
	markedChain  int             // which of the chains on the hook carries one, from the first on; 0 for none
	lastGroup    []syntax.Clause // what was worked together in one place last
	corner       []syntax.Clause // what the pattern works at a corner, as far as it is known
	twigged      bool            // a branch came home, named or not
	unread       bool            // a line of the piece could not be counted: what it began may be open
	regrown      bool            // chained anew after branches of which not all is known: there may be more of the stem
	increases    bool            // numbers of stitches may be increases
	cut          bool            // the yarn was fastened off, and nothing has been worked since
	multipleSaid bool            // the foundation chain says its own multiple

	// What lies below, and how the work goes over it.
	ground
	footing  *footing       // the edges that the row stands on, the one at work first
	outline  []int          // the row below with its branches, where it has any
	laid     bool           // the ground stands in working order
	adrift   bool           // what lies below is not known
	reversed bool           // the base stands reversed against the row that made it
	joinedAt int            // where in the ground an edging is joined
	ring     bool           // there is a ring to work into
	round    bool           // the work goes round
	hooks    bool           // its rows are fastened at their ends to what the piece goes along
	spiral   bool           // the round below was said not to be joined
	unjoined bool           // this one is
	closer   *stitch.Stitch // the stitch that closed the round into its last space, nil for none
	closed   *stitch.Stitch // the one that closed the round below so
	inLast   bool           // a stitch closed the round into its last space, where the hook stands now

	// The chains on the hook.
	chains   int  // chains made since the last stitch
	supposed int  // those of them that a maker may choose otherwise
	inner    bool // they were made inside a repeat
	counts   syntax.Counts
	tipFull  bool // several stitches at the beginning of a chain already turn round its end

	// The instruction, of which a row may have several.
	rowIndex  int
	plainLine bool          // it has no label, or only the name of what hangs from the work
	keeps     bool          // it goes on with the row before it
	around    []int         // what lies round a chain of which the last two rows were worked along the one side and the other
	tells     bool          // the line only counts what the ones above it have made
	homeward  bool          // a branch that is worked to its end with the line is come home from
	heads     bool          // a step by its number: a branch that it begins with is as good as its label
	goesOn    bool          // the next line, without a label, goes on with this row
	goesRound bool          // it does so along the other side of the chain
	lastRow   *grownRow     // the row that was worked last, nil where it is not known
	limbs     *limbs        // what the piece calls its branches
	referred  bool          // the words at work are another row's, which this one is said to be like
	stated    *syntax.Total // how many the row says it makes, nil where it does not
	rowAtWork

	// The clause.
	clause    int
	span      source.Span     // for faults
	after     []syntax.Clause // what the row says after it
	coming    []syntax.Clause // what follows it, in its repeat too
	further   []syntax.Place  // where it goes on after its present place
	main      *stitch.Stitch  // the row's own stitch, for inc and dec
	apartFrom bool            // a semicolon or a stop parts it from the one before
	lastWork  bool            // it is the row's last that works
	lastRead  bool            // it ends a sentence, and none behind it is understood to work
	inBlocks  bool            // the place is said to be one of a block, of which the row's beginning is one
	ending    bool            // the ending of a repeat is being worked
}

// rowAtWork is what every row begins anew.
type rowAtWork struct {
	row      []int // what it has made
	rowMade  int   // stitches of it that count
	sideFrom int   // how long it was where it went over to the other side of its chain
	stepFrom int   // how long it was when the step at work began, of a row told in several lines
	steps    []step
	works    bool
	begun    bool // a stitch was worked or a beginning chain settled
	known    bool
	blame    source.Span
	faults   []Fault
	over     bool        // a bound was met and said
	met      Reading     // readings that had a choice
	against  Reading     // readings taken against the default by habit
	said     source.Span // where a count without brackets is stated

	joined, turned bool // how it ends
	turnedFirst    bool // it turns before its first stitch
	notTurned      bool
	turning        bool // it is turned at its end, as the pattern says of every row
	ended          bool // the yarn is fastened off

	branches []branch
	home     *past[arrival]     // the branches that came home in the clause at work
	used     named[source.Span] // branch names, with where they are given
	leaving  *past[run]         // what branches have made of it
	lastHome []int              // the stitches of its own of the branch that came home last
	branched bool               // a branch left it by its word
	cameHome int                // how long the row was when an unnamed branch was at an end, 0 for none

	loop       syntax.Loop
	object     int
	objects    named[int]       // how many of the pattern's own stitches and groups it made, by name
	lastStitch syntax.StitchRef // the stitch worked last, by name
	inSpaces   bool             // a stitch of it stands in a space
	fixed      bool             // every stitch goes into held: inside a group
	within     int              // own stitches being worked within each other
	nested     bool             // the clause at work stands inside a repeat or a group
	together   bool             // the next clause is worked already, together with the one before
	closing    bool             // the stitch worked last is closed by the motions that follow
	spacing    *spacing         // chains made between stitches, nil for none
	trusting   bool             // how many it makes is taken from what it says
	landed     bool             // it lies on no more than what its own words show
	brought    int              // the chains on the hook before it

	skipped      int   // the place skipped last, -1 for none
	run          []int // the stitches and spaces skipped since the last stitch
	passedRun    []int // the run before that
	stemSkipped  int   // foundation chains passed before the first stitch
	skippedFirst bool  // they were passed by a word of their own
	gapIn        int   // the group whose gaps are worked one after the other, 0 for none
	gap          int   // where the gap worked into last ended, -1 for none
	spare        bool  // it was led to its first place by a slip stitch, and nothing stands there yet
	opened       bool  // an opening is being worked around
	attached     bool  // it is an edging, joined at a counted stitch
	edge         bool  // row ends are, or were, worked into
	along        bool  // what follows goes along row ends
	pieces       int   // how many times other pieces were worked into: the round joins them
	bridge       int   // chains between joined pieces

	repeated  int    // how often the latest repeat was worked, 0 where its number is not said
	origin    int    // where the repeat at work began this time
	leadSkip  int    // how many places the last repeat passes over first
	namedNext bool   // a step went as far as a place that it named, which comes next
	filling   *Fault // the last repeat to the end, for what it leaves
}

// forked is the hand as one that goes on by itself, beside others that go on from the
// same work: what is added to its lists is its own.
func (h hand) forked() hand {
	h.earlier, h.fresh, h.row, h.base = slices.Clip(h.earlier), slices.Clip(h.fresh), slices.Clip(h.row), slices.Clip(h.base)
	h.tall, h.branches, h.left, h.openings = slices.Clip(h.tall), slices.Clip(h.branches), slices.Clip(h.left), slices.Clip(h.openings)
	h.run, h.passedRun, h.marks = slices.Clip(h.run), slices.Clip(h.passedRun), slices.Clip(h.marks)
	h.faults, h.steps = slices.Clip(h.faults), slices.Clip(h.steps)
	return h
}

// edged is a place that an edging is worked into.
type edged struct {
	place int
	loop  syntax.Loop
}

// leftOut is a run of places left unworked on purpose, at the end of a row
// after so many turns of the work.
type leftOut struct {
	places []int
	turns  int
	unseen bool // nobody knows how many they are
}

// turningSaid is what a row of the piece said of its turning chain; later
// rows go by it.
type turningSaid struct {
	chains int
	counts bool
}

// spacing is so many chains between every two stitches of a clause; begun
// once the first is made.
type spacing struct {
	chains int
	begun  bool
}

// remember notes what is said of n chains before a stitch.
func (h *hand) remember(base *stitch.Stitch, n int, counts bool) {
	rule := turningSaid{n, counts}
	if known, _ := h.rules.get(base.ID); known != rule {
		h.rules = h.rules.with(base.ID, rule)
	}
}

// step is what one clause did in one size.
type step struct {
	used, made, total, left int
	known                   bool
	from, to                int
	ledger, home            []progress
}

// fault notes what is wrong. Once a row cannot be counted, nothing is said of
// places any more: one slip gives one message.
func (h *hand) fault(f Fault) {
	switch f.Kind {
	case RowShort, RowOver, RepeatRemainder, PlaceAbsent, StemExhausted:
		if !h.known {
			return
		}
	}
	if b := h.innermost(); b != nil && f.Branch == "" && !f.OnBranch {
		f.Branch, f.OnBranch = b.name, true
	}
	f.Size = h.size
	if f.Span == (source.Span{}) {
		f.Span = h.span
	}
	for _, g := range h.faults {
		if ofBranches(f.Kind) && f.Kind == g.Kind && f.Span == g.Span && f.Name == g.Name {
			return // a branch in a repeat is one branch to a reader
		}
	}
	if len(h.faults) < maxFaults {
		h.faults = append(h.faults, f)
	}
}

// ofBranches tells whether a fault is of a branch, not of the places it is worked
// into.
func ofBranches(k FaultKind) bool {
	switch k {
	case BranchUnreturned, BranchChainLeft, BranchEmpty, BranchNameReused, ReturnUnknown, BranchUnmarked, BranchAtTip:
		return true
	}
	return false
}

// lose gives up counting this row: blame is the clause that cannot be counted.
func (h *hand) lose() {
	h.unread = true
	if h.known {
		h.known = false
		h.blame = h.span
	}
}

// stitch is the stitch or space with an index.
func (h *hand) stitch(i int) *Stitch {
	if i < len(h.earlier) {
		return &h.earlier[i]
	}
	return &h.fresh[i-len(h.earlier)]
}

// made is how many stitches and spaces there are.
func (h *hand) made() int { return len(h.earlier) + len(h.fresh) }

// addSpace puts a chain space on the row, or a picot, which has no length, and gives its
// index.
func (h *hand) addSpace(chains int) int { return h.add(Stitch{Chains: chains, Into: -1}, Manner{}) }

// mannerOf is a manner to work in: the one of the last stitch where it is the same.
func (h *hand) mannerOf(m Manner) *Manner {
	if h.manner == nil || *h.manner != m {
		own := m
		h.manner = &own
	}
	return h.manner
}

// add puts a stitch or space, worked in some manner, on the row and gives its index.
func (h *hand) add(s Stitch, m Manner) int {
	if h.stopped() {
		return h.made() - 1
	}
	m.Yarn = h.yarn
	s.Row, s.Clause, s.Manner = h.rowIndex, h.clause, h.mannerOf(m)
	s.Object = h.object
	h.joined = h.joined && len(h.row) > 0 // a ring that was formed in this line is no round
	if s.Into >= 0 {
		h.stands()
	}
	if h.row == nil {
		room := len(h.base) + len(h.base)/4 + 4 // most rows make about as many as lie below
		h.fresh, h.row = slices.Grow(h.fresh, room), make([]int, 0, room)
	}
	h.fresh = append(h.fresh, s)
	h.row = append(h.row, h.made()-1)
	if !s.IsSpace() {
		h.rowMade++
	}
	return h.made() - 1
}

// stopped tells whether a bound is reached and work must stop, and says so
// once.
func (h *hand) stopped() bool {
	if len(h.row) < maxRow && h.made() < maxPiece && *h.budget > 0 {
		return h.over
	}
	if !h.over {
		h.over = true
		h.fault(Fault{Kind: TooMany, N: maxRow})
		h.lose()
	}
	return true
}

// make works n stitches of a kind into the place at index into of the base,
// using over places.
func (h *hand) make(k *stitch.Stitch, own string, n, into, over int) {
	if k.Class == stitch.Picot {
		h.knot()
		return
	}
	h.settle(k)
	h.namedNext = false
	target := -1
	if into >= 0 && into < len(h.base) {
		target = h.base[into]
	}
	if len(h.run) > 0 {
		h.run, h.passedRun = nil, h.run
	}
	h.spare = h.spare && h.round && (into != 0 || len(h.base) == 0)
	h.inSpaces = h.inSpaces || target >= 0 && h.stitch(target).IsSpace()
	for range n {
		if h.stopped() {
			h.add(Stitch{Into: -1}, Manner{Kind: k})
			return
		}
		h.part()
		h.add(Stitch{Into: target, Over: over}, Manner{Kind: k, Own: own, Loop: h.loop, Post: k.Class == stitch.Post})
	}
	h.begun = true
}

// knot makes a picot, which stands before the chains that are on the hook: they
// may go on after it as one space.
func (h *hand) knot() {
	h.begun = h.begun || h.chains == 0
	h.addSpace(0)
}

// part makes the chains that are said to stand between stitches.
func (h *hand) part() {
	if s := h.spacing; s != nil && s.begun {
		h.addSpace(s.chains)
	} else if s != nil {
		h.spacing = &spacing{s.chains, true}
	}
}

// space turns the chains made since the last stitch into a chain space.
func (h *hand) space() {
	if h.chains == 0 {
		return
	}
	n := h.chains
	h.chains, h.counts = 0, syntax.Counts{}
	h.overRun(h.addSpace(n))
	h.begun = true
}

// foundation lays the chains made so far as a foundation to work into, the
// hook's end first.
func (h *hand) foundation() {
	h.first = h.chainNodes(h.chains)
	if n := h.markedChain; n > 0 && n <= len(h.first) {
		h.marks = append(slices.Clip(h.marks), h.first[n-1])
	}
	h.chains, h.markedChain = 0, 0
	h.base = reverse(h.first)
	h.toStart()
}

// chainNodes makes n chains to work into; they are no part of the row.
func (h *hand) chainNodes(n int) []int {
	if n > maxRow {
		n = maxRow
		*h.budget = 0
		h.stopped()
	}
	out := make([]int, 0, n)
	for range n {
		if h.made() >= maxPiece {
			break
		}
		h.fresh = append(h.fresh, Stitch{Manner: h.mannerOf(Manner{Kind: chainStitch()}), Into: -1, Row: h.rowIndex, Clause: h.clause})
		out = append(out, h.made()-1)
	}
	return out
}

func chainStitch() *stitch.Stitch { return stitch.ByID("ch") }

func reverse(list []int) []int {
	out := make([]int, len(list))
	for i, v := range list {
		out[len(list)-1-i] = v
	}
	return out
}

// settle decides what the chains on the hook are before a stitch k is
// worked: a beginning chain, which may count, or a chain space.
func (h *hand) settle(k *stitch.Stitch) {
	if h.skippedFirst {
		h.skippedFirst = false
		h.stemSkipped = h.at
		h.skippedStands(k, h.at+1)
	}
	if h.chains == 0 {
		return
	}
	if h.begun || h.fixed && len(h.row) > 0 || h.base == nil && !h.ring && !h.edge {
		h.space()
		return
	}
	n, said := h.chains, h.counts
	counts, extra := h.turningCounts(k, n, said)
	h.chains, h.counts = 0, syntax.Counts{}
	h.begun = true
	if counts {
		h.standing(h.standsFor(k, said))
	}
	if extra > 0 {
		h.addSpace(extra)
	}
}

// standing puts a counted beginning chain on the row. It stands on the first
// stitch, or on the place the yarn was joined in.
func (h *hand) standing(k *stitch.Stitch) {
	into := -1
	switch {
	case h.gap >= 0 && h.gap == h.at: // it stands between two groups
	case h.held >= 0 && h.held < len(h.base):
		into = h.base[h.held]
		h.spare = false
	case h.toStitch():
		into = h.base[h.at]
		h.held = h.at
		h.at++
	}
	h.add(Stitch{Into: into, Over: 1}, Manner{Kind: k, Turning: true})
}

// toStitch passes over picots and tells whether a stitch comes next.
func (h *hand) toStitch() bool {
	for h.at < len(h.base) && h.stitch(h.base[h.at]).IsPicot() {
		h.at++
	}
	return h.at < len(h.base) && !h.stitch(h.base[h.at]).IsSpace()
}

// standsFor is the stitch that a counted beginning chain replaces.
func (h *hand) standsFor(k *stitch.Stitch, said syntax.Counts) *stitch.Stitch {
	for _, part := range said.As {
		if part.Noun.Kind == syntax.NounStitch {
			if named, _ := h.words.stitch(part.Noun.Stitch); named != nil {
				return named
			}
		}
	}
	if k.Class == stitch.Increase || k.Class == stitch.Decrease {
		return h.main
	}
	return k.Plain()
}

// turningCounts decides whether n beginning chains before a stitch k count
// as a stitch, and how many chains beyond it make a space.
func (h *hand) turningCounts(k *stitch.Stitch, n int, said syntax.Counts) (counts bool, extra int) {
	base := k.Plain()
	if base.Class == stitch.Increase || base.Class == stitch.Decrease {
		base = h.main
	}
	if said.Said {
		for _, part := range said.As {
			if part.Noun.Word == "foundation" {
				continue // `as dc, ch 1 and one foundation ch`: it lies under the space
			}
			if part.Noun.Kind == syntax.NounChain || part.Noun.Kind == syntax.NounSpace || part.Noun.Kind == syntax.NounTurning {
				extra += part.Noun.Length.Or(h.size, 1) * part.Number.Or(h.size, 1)
			} else {
				counts = true
			}
		}
		h.remember(base, n, counts)
		return counts, extra
	}
	usual := base.Turning
	named, ruled := h.words.turning[base.ID]
	if all, ok := h.words.turning[""]; ok && !ruled && usual > 1 {
		named, ruled = all, true
	}
	if slices.Contains(h.words.uncounted, n) {
		named, ruled = false, true
	}
	switch row, ok := h.rules.get(base.ID); {
	case ok && row.chains == n:
		counts = row.counts
	case ruled:
		counts = named
	case base.Class == stitch.Slip || usual <= 1:
		if n >= 3 {
			return false, n // a loop before the first short stitch
		}
		return false, 0
	default:
		counts = h.unsaidCounts(base, n)
	}
	if n > usual && (counts || n > usual+1) {
		extra = n - usual
	}
	return counts, extra
}

// unsaidCounts decides by custom, or by the writer's habit, whether n chains
// before a stitch count where nothing is said of them.
func (h *hand) unsaidCounts(base *stitch.Stitch, n int) bool {
	counts := n >= base.Turning && base.TurningCounts == stitch.Yes
	if n < base.Turning-1 || n < 2 { // a single chain never counts for a tall stitch
		return counts
	}
	key := turningKey{base.ID, n}
	if shown, ok := h.joinShows(base); ok {
		h.shown = with(h.shown, key, shown)
	}
	if shown, ok := h.shown[key]; ok {
		counts = shown
	}
	if !slices.Contains(h.tall, key) {
		h.tall = append(slices.Clip(h.tall), key)
	}
	if h.habit.turning[key] {
		h.against |= ReadTurningCounts
		return !counts
	}
	return counts
}
