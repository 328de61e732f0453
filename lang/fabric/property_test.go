package fabric_test

import (
	"flag"
	"fmt"
	"math/rand/v2"
	"reflect"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
	"stitchproof/lang/terms"
)

// Random pieces whose counts the oracle knows, written in random wording,
// read and worked by the engine.

// TestMain sets how much is drawn where the command does not say: enough to
// meet every form, little enough for a slow machine. The seed is fixed so that
// a run is the same on every machine; -rapid.seed tries another.
func TestMain(m *testing.M) {
	for name, value := range map[string]string{"rapid.seed": "1", "rapid.checks": "300", "rapid.shrinktime": "10s", "rapid.nofailfile": "true"} {
		if err := flag.Set(name, value); err != nil {
			panic(err)
		}
	}
	m.Run()
}

// strip is what lies below: solid stitches, of which only the number matters,
// or a pattern of places that repeats.
type strip struct {
	counts          []int  // by size; nil where a pattern repeats
	kind            string // the name all solid stitches share, "" for none
	pre, unit, post []string
	times           []int
}

func (s *strip) solid() bool { return s.counts != nil }

func (s *strip) reverse() {
	slices.Reverse(s.pre)
	slices.Reverse(s.unit)
	slices.Reverse(s.post)
	s.pre, s.post = s.post, s.pre
}

// length is the number of places in a size.
func (s *strip) length(size int) int {
	if s.solid() {
		return s.counts[size]
	}
	return len(s.pre) + len(s.unit)*s.times[size] + len(s.post)
}

// maker draws a piece.
type maker struct {
	t     *rapid.T
	piece *piece
	leads map[string]row // how each stitch's rows begin, the same all through
	// of the row being drawn
	stitch string
	mixed  bool // stitches of other kinds are worked too
	narrow bool // the row below is long: no stitch is added
	alike  bool // the row below is of the same stitch
}

func (m *maker) n(low, high int) int { return rapid.IntRange(low, high).Draw(m.t, "n") }

// odds is true once in n times.
func (m *maker) odds(n int) bool { return m.n(1, n) == n }

func (m *maker) one(list ...string) string { return list[m.n(0, len(list)-1)] }

// height is the chains of a beginning chain: the usual ones, as in the
// stitch lesson of the Handbook of Wool Knitting and Crochet (Needlecraft
// Publishing, Augusta, Maine, 1918).
var height = map[string]int{"sc": 1, "hdc": 2, "dc": 3, "tr": 4}

// drawPiece draws a piece of a few rows in so many sizes.
func drawPiece(t *rapid.T, sizes int) *piece {
	m := maker{t: t, piece: &piece{sizes: sizes}, leads: map[string]row{}}
	m.piece.shape = shape(m.n(int(flat), int(spiral)))
	var below strip
	if m.piece.shape == flat {
		below = m.onChain()
	} else {
		below = m.inRing()
	}
	for range m.n(1, 4) {
		if m.piece.shape == flat {
			below.reverse()
		}
		below = m.next(below)
	}
	return m.piece
}

// growing draws a number for every size, rising evenly.
func (m *maker) growing(low, high int) sized {
	first := m.n(low, high)
	rise := []int{6, 4, 12, 1, 3}[m.n(0, 4)]
	out := sized{first}
	for size := 1; size < m.piece.sizes; size++ {
		out = append(out, first+size*rise)
	}
	return out
}

func (m *maker) drawStitch() {
	m.stitch = m.one("sc", "dc", "hdc", "tr")
	m.mixed = m.odds(3)
}

// lead draws a beginning chain for the row's stitch.
func (m *maker) lead() row {
	if r, ok := m.leads[m.stitch]; ok {
		return r
	}
	r := row{height: height[m.stitch], stands: m.stitch}
	switch m.stitch {
	case "sc":
	case "hdc":
		r.counts = m.odds(2)
	default:
		r.counts = !m.odds(5)
		if !r.counts {
			r.height = m.n(r.height-1, r.height)
		}
	}
	m.leads[m.stitch] = r
	return r
}

// onChain draws the first row of a flat piece.
func (m *maker) onChain() strip {
	m.drawStitch()
	places := m.growing(8, 24)
	r := m.lead()
	r.from, r.height = height[m.stitch]+1, 0
	m.piece.chains = plus(places, r.from-1)
	return m.partition(r, &strip{counts: places, kind: "ch"})
}

// inRing draws the first round of a piece worked in a ring.
func (m *maker) inRing() strip {
	m.drawStitch()
	m.mixed = false
	var r row
	if m.piece.shape == joined {
		r = m.lead()
	}
	if m.odds(3) && m.piece.shape == joined && r.counts {
		n, ch, groups := m.n(1, 3), m.n(1, 3), m.n(2, 5)
		in := func(n int) step {
			return step{verb: work, stitch: m.stitch, n: sized{n}, m: once(), noun: "ring"}
		}
		space := step{verb: chain, n: sized{ch}}
		again := step{verb: repeat, m: sized{groups}, parts: []step{in(n), space}}
		r.steps = []step{in(n), space, again}
		m.piece.rows = append(m.piece.rows, r)
		unit := append(slices.Repeat([]string{m.stitch}, n), spaceOf(ch))
		s := strip{pre: append([]string{m.stitch}, unit...), unit: unit}
		for range m.piece.sizes {
			s.times = append(s.times, groups)
		}
		return s
	}
	n := m.growing(5, 12)
	r.steps = []step{{verb: work, stitch: m.stitch, n: n, m: once(), noun: "ring"}}
	m.piece.rows = append(m.piece.rows, r)
	if r.counts {
		n = plus(n, 1)
	}
	return strip{counts: n, kind: m.stitch}
}

// next draws a row on what lies below.
func (m *maker) next(below strip) strip {
	if last := m.piece.rows[len(m.piece.rows)-1]; below.solid() && wholly(last) && m.odds(3) {
		last.again, last.steps = true, mapped(last.steps, slices.Clone[sized])
		m.piece.rows = append(m.piece.rows, last)
		return below
	}
	m.drawStitch()
	m.narrow = below.length(m.piece.sizes-1) > 60
	m.alike = below.kind == m.stitch
	var r row
	if m.piece.shape != spiral {
		r = m.lead()
	}
	if below.solid() {
		if slices.Min(below.counts) < 8 || m.odds(3) {
			return m.along(r, &below)
		}
		return m.partition(r, &below)
	}
	return m.laced(r, &below)
}

// wholly tells whether a row is one stitch in each, whatever its kind, which
// can be worked again on itself.
func wholly(r row) bool {
	s := r.steps[0]
	return len(r.steps) == 1 && s.verb == each && s.limit == toEnd && s.noun == "st" && is(s.n, 1)
}

// mapped copies steps with every number changed by do.
func mapped(steps []step, do func(sized) sized) []step {
	out := slices.Clone(steps)
	for i := range out {
		s := &out[i]
		for _, n := range []*sized{&s.n, &s.m, &s.last} {
			if *n != nil {
				*n = do(*n)
			}
		}
		s.parts = mapped(s.parts, do)
	}
	return out
}

// noun is what solid stitches may be called.
func (m *maker) noun(kind string) string {
	if kind == "ch" || kind != "" && names[kind] != [4]string{} && m.odds(3) {
		return kind
	}
	return "st"
}

// along draws a row of one stitch in each, or two, or one up to the last few.
func (m *maker) along(r row, below *strip) strip {
	left := slices.Clone(below.counts)
	if r.counts {
		left = plus(left, -1)
	}
	n := 1
	if !m.narrow && m.odds(3) {
		n = 2
	}
	s := step{verb: each, stitch: m.stitch, n: sized{n}, noun: m.noun(below.kind), limit: toEnd}
	tail := 0
	if slices.Min(left) > 3 && m.odds(3) {
		tail = m.n(1, 2)
		s.limit, s.last = toLast, sized{tail}
	}
	if n == 1 && slices.Min(left) > 3+tail && m.odds(4) {
		s.verb = turns
		for _, stitch := range m.pair() {
			s.parts = append(s.parts, step{verb: work, stitch: stitch, n: once(), m: once()})
		}
	}
	r.steps = append(r.steps, s)
	made := slices.Clone(left)
	for i := range made {
		made[i] = n * (made[i] - tail)
	}
	if tail > 0 {
		m.mixed = false
		steps := m.cover(slices.Repeat([]string{"st"}, tail), cover{end: true})
		r.steps = append(r.steps, steps...)
		made = plus(made, len(segment(steps, tail)))
	}
	if r.counts {
		made = plus(made, 1)
	}
	m.piece.rows = append(m.piece.rows, r)
	return strip{counts: made, kind: m.uniform(r)}
}

// pair draws a stitch to go by turns with the row's own, which comes first as its
// beginning chain stands for it.
func (m *maker) pair() []string {
	others := slices.DeleteFunc([]string{"sc", "dc", "hdc", "tr"}, func(s string) bool { return s == m.stitch })
	return []string{m.stitch, m.one(others...)}
}

// uniform names the stitch that a row is made of where it is of one kind.
func (m *maker) uniform(r row) string {
	kind := m.stitch
	var look func([]step)
	look = func(steps []step) {
		for _, s := range steps {
			if s.verb == together || s.stitch != "" && s.stitch != m.stitch {
				kind = ""
			}
			look(s.parts)
		}
	}
	look(r.steps)
	return kind
}

// partition draws a row over solid stitches: a beginning, a repeat, an end.
func (m *maker) partition(r row, below *strip) strip {
	lace := m.odds(2)
	least := slices.Min(below.counts)
	head := m.n(1, 3)
	tail := m.n(0, 2)
	if m.piece.shape != joined && lace {
		tail = max(tail, 1)
	}
	unit := m.n(1, min(6, least-head-tail))
	rest := make(sized, m.piece.sizes)
	reps := make(sized, m.piece.sizes)
	for i, c := range below.counts {
		rest[i] = (c - head - tail) % unit
		reps[i] = (c - head - tail) / unit
	}
	if lace && !uniform(rest) {
		unit, rest, reps = 1, sized{0}, plus(below.counts, -head-tail)
	}
	if uniform(rest) {
		head += rest[0]
		rest = sized{0}
	}
	reps = narrowed(reps)

	kind := below.kind
	if kind == "" {
		kind = "st"
	}
	places := func(n int) []string { return slices.Repeat([]string{kind}, n) }
	trailing := lace && m.odds(2)
	m.begin(&r, places(head), lace, lace && trailing)
	if !is(rest, 0) {
		r.steps = append(r.steps, step{verb: work, stitch: m.stitch, n: once(), m: narrowed(rest), noun: m.noun(below.kind)})
	}
	pre := r.steps
	body := m.cover(places(unit), cover{lace: lace, start: trailing || len(pre) == 0, end: !trailing, row: len(pre) == 0})
	again := step{verb: repeat, parts: body, m: reps, noun: m.noun(below.kind)}
	m.limit(&again, tail, true)
	post := m.cover(places(tail), cover{lace: lace, start: trailing, end: m.piece.shape != joined || !trailing})
	r.steps = slices.Concat(pre, []step{again}, post)
	m.piece.rows = append(m.piece.rows, r)
	return m.result(r, head, unit, tail, rest, pre, body, post, reps)
}

// narrowed writes a number that is the same for every size once.
func narrowed(n sized) sized {
	if uniform(n) {
		return n[:1]
	}
	return n
}

// begin draws the steps of a row's first places, behind its beginning chain.
func (m *maker) begin(r *row, places []string, lace, open bool) {
	if r.from > 0 {
		n := 1
		if m.odds(4) {
			n = 2
		}
		r.steps = []step{{verb: work, stitch: m.stitch, n: sized{n}, m: once(), noun: "ch"}}
		places = places[1:]
		r.steps = append(r.steps, m.cover(places, cover{lace: lace, start: true, end: !open})...)
		return
	}
	if r.counts {
		places = places[1:]
	}
	r.steps = m.cover(places, cover{lace: lace, start: true, end: !open, row: true})
}

// limit draws how a repeat says where it ends, with tail places after it.
func (m *maker) limit(s *step, tail int, stitches bool) {
	switch {
	case m.odds(2):
	case tail == 0:
		s.limit = toEnd
	case stitches:
		s.limit, s.last = toLast, sized{tail}
	}
}

// result is what a row offers the next one.
func (m *maker) result(r row, head, unit, tail int, rest sized, pre, body, post []step, reps sized) strip {
	if r.counts && r.from == 0 {
		head--
	}
	if !is(rest, 0) {
		pre = pre[:len(pre)-1]
	}
	s := strip{pre: segment(pre, head), unit: segment(body, unit), post: segment(post, tail)}
	if r.counts {
		s.pre = append([]string{m.stitch}, s.pre...)
	}
	return m.settled(s, r, rest, reps)
}

// settled makes a strip of stitches alone a solid one.
func (m *maker) settled(s strip, r row, rest, reps sized) strip {
	for size := range m.piece.sizes {
		s.times = append(s.times, reps.of(size))
	}
	if slices.ContainsFunc(slices.Concat(s.pre, s.unit, s.post), isSpace) {
		return s
	}
	solid := strip{kind: m.uniform(r)}
	for size := range m.piece.sizes {
		solid.counts = append(solid.counts, s.length(size)+rest.of(size))
	}
	return solid
}

// segment names what steps make of some places of their own.
func segment(steps []step, places int) []string {
	o := oracle{below: slices.Repeat([]string{"st"}, places)}
	return segmentOf(o, steps)
}

func segmentOf(o oracle, steps []step) []string {
	o.list(steps)
	o.closeSpace()
	return o.made
}

// laced draws a row over a pattern of stitches and spaces.
func (m *maker) laced(r row, below *strip) strip {
	lace := m.odds(2)
	trailing := lace && m.odds(2)
	m.begin(&r, below.pre, lace, trailing)
	pre := r.steps
	body := m.cover(below.unit, cover{lace: lace, start: trailing || len(pre) == 0, end: !trailing, row: len(pre) == 0})
	again := step{verb: repeat, parts: body, m: narrowed(below.times), noun: "st"}
	m.limit(&again, len(below.post), !slices.ContainsFunc(below.post, isSpace))
	post := m.cover(below.post, cover{lace: lace, start: trailing, end: m.piece.shape != joined || !trailing})
	r.steps = slices.Concat(pre, []step{again}, post)
	m.piece.rows = append(m.piece.rows, r)
	head := below.pre
	if r.counts {
		head = head[1:]
	}
	s := strip{
		pre:  segmentOf(oracle{below: head}, pre),
		unit: segmentOf(oracle{below: below.unit}, body),
		post: segmentOf(oracle{below: below.post}, post),
	}
	if r.counts {
		s.pre = append([]string{m.stitch}, s.pre...)
	}
	return m.settled(s, r, sized{0}, below.times)
}

// cover says what steps may be drawn over some places.
type cover struct {
	lace  bool // chains may be made
	start bool // it begins with a stitch
	end   bool // it ends with a stitch
	row   bool // it begins the row, with a plain stitch of the row's own
	inner bool // it stands in a repeat
}

// cover draws steps that use exactly some places.
func (m *maker) cover(places []string, c cover) []step {
	var out []step
	chained, skipped := false, false
	for i := 0; i < len(places); {
		must := i == 0 && c.start || chained && skipped
		if c.lace && !chained && !skipped && !(i == 0 && c.start) && m.odds(3) {
			out = append(out, step{verb: chain, n: sized{m.n(1, 3)}})
			chained = true
			must = false
		}
		run := 0
		for i+run < len(places) && !isSpace(places[i+run]) && places[i+run] == places[i] {
			run++
		}
		final := i+1 == len(places) && (c.end || chained)
		if !must && !final && !skipped && m.odds(4) {
			s, used := m.skip(places[i], run, len(places)-i, c.end || chained)
			out, i, skipped = append(out, s), i+used, true
			continue
		}
		s, used := m.stitches(places[i], run, c.row && i == 0, c)
		out, i, chained, skipped = append(out, s), i+used, false, false
	}
	if c.lace && !c.end && !chained && !skipped && len(out) > 0 && m.odds(2) {
		out = append(out, step{verb: chain, n: sized{m.n(1, 3)}})
	}
	return out
}

// skip draws a step that passes over a space, or over stitches, leaving one
// place where something must still be worked.
func (m *maker) skip(place string, run, left int, leave bool) (step, int) {
	if isSpace(place) {
		return step{verb: skip, m: once(), space: true, noun: place}, 1
	}
	most := min(run, 2)
	if leave && most == left {
		most--
	}
	n := m.n(1, most)
	return step{verb: skip, m: sized{n}, noun: m.noun(place)}, n
}

// stitches draws a step that works into the next places, of which run are
// stitches of one name.
func (m *maker) stitches(place string, run int, first bool, c cover) (step, int) {
	stitch := m.stitch
	if m.mixed && !first && m.odds(2) {
		stitch = m.one("sc", "dc", "hdc", "tr")
	}
	if isSpace(place) {
		if m.odds(3) {
			return m.group(place, true, c.lace), 1
		}
		n := m.n(1, 3)
		return step{verb: work, stitch: stitch, n: sized{n}, m: once(), space: true, noun: place}, 1
	}
	noun := m.noun(place)
	choices := []verb{work, work}
	if first && m.alike && !m.narrow {
		choices = append(choices, increase)
	}
	if !first {
		if run > 1 {
			choices = append(choices, together)
		}
		if !m.narrow {
			choices = append(choices, increase, work, group)
		}
		if run > 3 && !c.inner {
			choices = append(choices, repeat)
		}
	}
	choice := m.n(0, len(choices)-1)
	switch v := choices[choice]; {
	case v == increase && !m.mixed:
		n := m.n(1, min(run, 3))
		return step{verb: increase, stitch: stitch, m: sized{n}, own: true, noun: "st"}, n
	case v == group:
		return m.group(noun, false, c.lace), 1
	case v == together:
		n := m.n(2, min(run, 3))
		k := m.n(1, min(2, run/n))
		return step{verb: together, stitch: stitch, n: sized{n}, m: sized{k}, own: !m.mixed, noun: noun}, n * k
	case v == repeat:
		unit := 2
		k := m.n(2, run/unit)
		parts := m.cover(slices.Repeat([]string{place}, unit), cover{start: true, end: true, inner: true})
		return step{verb: repeat, parts: parts, m: sized{k}, noun: noun}, unit * k
	case choice > 1 && !first && (v == work || v == increase):
		n := m.n(1, min(run, 3))
		return step{verb: work, stitch: stitch, n: sized{m.n(2, 3)}, m: sized{n}, noun: noun}, n
	}
	n := m.n(1, run)
	return step{verb: work, stitch: stitch, n: once(), m: sized{n}, noun: noun}, n
}

// group draws several stitches in one place, with a space or another stitch
// among them.
func (m *maker) group(noun string, space, lace bool) step {
	in := func(stitch string, most int) step {
		return step{verb: work, stitch: stitch, n: sized{m.n(1, most)}}
	}
	middle := in(m.one("dc", "hdc", "tr"), 1)
	if lace {
		middle = step{verb: chain, n: sized{m.n(1, 3)}}
	}
	return step{verb: group, m: once(), space: space, noun: noun, parts: []step{in(m.stitch, 2), middle, in(m.stitch, 2)}}
}

// drawVoice gives a voice whose choices are drawn with the piece, and a second
// one that makes the same choices again.
func drawVoice(t *rapid.T) (v, same *voice) {
	var tape []int
	v = &voice{pick: func(n int) int {
		choice := rapid.IntRange(0, n-1).Draw(t, "form")
		tape = append(tape, choice)
		return choice
	}}
	at := 0
	same = &voice{pick: func(int) int {
		at++
		return tape[at-1]
	}}
	return v, same
}

// counts are the oracle's stitches, by size and row.
func counts(p *piece) [][][]string {
	out := make([][][]string, p.sizes)
	for size := range out {
		out[size] = p.stitches(size)
	}
	return out
}

func worked(text string) *fabric.Fabric { return fabric.Work(syntax.Read(source.New(text))) }

// rowsOf are the rows of the first piece that work stitches.
func rowsOf(f *fabric.Fabric) []*fabric.Row {
	var out []*fabric.Row
	for _, r := range f.Pieces[0].Rows {
		if r.Tallies[0].Works {
			out = append(out, r)
		}
	}
	return out
}

// stitchesOf names what a row made in a size, in the order made.
func stitchesOf(r *fabric.Row, size int) []string {
	var out []string
	for _, s := range r.Piece.Stitches[size] {
		switch {
		case s.Row != r.Index:
		case s.IsSpace():
			out = append(out, spaceOf(s.Chains))
		case s.Kind.ID != "ch":
			out = append(out, s.Kind.ID)
		}
	}
	return out
}

// wrong tells the first thing that the engine finds otherwise than the oracle,
// "" for none.
func wrong(f *fabric.Fabric, want [][][]string) string {
	if len(f.Pieces) != 1 {
		return fmt.Sprintf("%d pieces", len(f.Pieces))
	}
	rows := rowsOf(f)
	for size := range want {
		for i, made := range want[size] {
			if i >= len(rows) {
				return fmt.Sprintf("%d rows worked, want %d", len(rows), len(want[size]))
			}
			tally := &rows[i].Tallies[size]
			at := fmt.Sprintf("row %d, size %d: ", i+1, size+1)
			switch got := stitchesOf(rows[i], size); {
			case !tally.Known:
				return at + "not counted"
			case len(tally.Faults) > 0:
				return at + fmt.Sprintf("fault %+v", tally.Faults[0])
			case !slices.Equal(got, made):
				return at + fmt.Sprintf("made %s, want %s", strings.Join(got, " "), strings.Join(made, " "))
			case tally.Made != stitchCount(made):
				return at + fmt.Sprintf("counted %d, want %d", tally.Made, stitchCount(made))
			case tally.Agrees() == fabric.Disagrees || tally.Agrees() == fabric.Uncheckable:
				return at + fmt.Sprintf("stated count not met: %+v", tally.Compared)
			}
		}
	}
	if len(rows) > len(want[0]) {
		return fmt.Sprintf("%d rows worked, want %d", len(rows), len(want[0]))
	}
	return ""
}

func stitchCount(made []string) int {
	total := 0
	for _, name := range made {
		if !isSpace(name) {
			total++
		}
	}
	return total
}

func TestEngineCountsAsTheOracleDoes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawPiece(t, rapid.IntRange(1, 4).Draw(t, "sizes"))
		want := counts(p)
		v, _ := drawVoice(t)
		v.uk = rapid.Bool().Draw(t, "uk")
		pattern := v.write(p, want)
		f := worked(pattern)
		if found := wrong(f, want); found != "" {
			t.Fatalf("%s\n%s", found, pattern)
		}
		for _, r := range rowsOf(f) {
			for size := range want {
				if r.Tallies[size].Agrees() != fabric.Agrees {
					t.Fatalf("row %q: stated count not read\n%s", r.Tree.Text, pattern)
				}
			}
		}
	})
}

// number is a number in a row, for it to be changed.
type number struct {
	row   int
	value *int
}

// numbers are the numbers of a piece's steps.
func (p *piece) numbers() []number {
	var out []number
	add := func(row int, n sized) {
		for i := range n {
			out = append(out, number{row, &n[i]})
		}
	}
	add(0, p.chains)
	var look func(int, []step)
	look = func(row int, steps []step) {
		for i := range steps {
			s := &steps[i]
			add(row, s.n)
			add(row, s.last)
			if s.limit == times {
				add(row, s.m)
			}
			look(row, s.parts)
		}
	}
	for i := range p.rows {
		look(i, p.rows[i].steps)
	}
	return out
}

// The length of a beginning chain is not among the numbers changed: what is
// unusual there is told by a rule of its own, not by counting.
func TestOneNumberChangedIsFound(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawPiece(t, rapid.IntRange(1, 3).Draw(t, "sizes"))
		want := counts(p)
		seed := rapid.Uint64().Draw(t, "seed")
		write := func() string {
			r := rand.New(rand.NewPCG(seed, 0))
			v := voice{pick: r.IntN, exact: true}
			return v.write(p, want)
		}
		right := write()
		before := worked(right)
		if wrong := wrong(before, want); wrong != "" {
			t.Fatalf("%s\n%s", wrong, right)
		}
		numbers := p.numbers()
		n := numbers[rapid.IntRange(0, len(numbers)-1).Draw(t, "number")]
		if *n.value++; *n.value > 2 && rapid.Bool().Draw(t, "less") {
			*n.value -= 2
		}
		changed := write()
		after := worked(changed)
		if !found(after, n.row) && !sameCounts(before, after) {
			t.Fatalf("row %d changed and nothing found; before:\n%s\nafter:\n%s", n.row+1, right, changed)
		}
	})
}

// found tells whether something is found in a row or in the next: a fault, a
// count that differs, or words that cannot be counted (`dc1tog`).
func found(f *fabric.Fabric, row int) bool {
	rows := rowsOf(f)
	for _, r := range rows[row:min(row+2, len(rows))] {
		for _, tally := range r.Tallies {
			if !tally.Known || len(tally.Faults) > 0 || tally.Agrees() == fabric.Disagrees {
				return true
			}
		}
	}
	return false
}

// sameCounts tells whether a pattern, one number of it changed, makes as many
// of every stitch and space in every row and leaves as many places: one may
// have moved along its row, which no count can show.
func sameCounts(before, after *fabric.Fabric) bool {
	rows, others := rowsOf(before), rowsOf(after)
	if len(rows) != len(others) {
		return false
	}
	for i, r := range rows {
		for size := range r.Tallies {
			made, other := stitchesOf(r, size), stitchesOf(others[i], size)
			slices.Sort(made)
			slices.Sort(other)
			if !slices.Equal(made, other) || r.Tallies[size].Left != others[i].Tallies[size].Left {
				return false
			}
		}
	}
	return true
}

// samePiece tells whether two patterns make the same stitches into the same
// places, whichever clauses say so.
func samePiece(a, b *fabric.Fabric) bool {
	return reflect.DeepEqual(madeBy(a), madeBy(b))
}

func madeBy(f *fabric.Fabric) [][]fabric.Stitch {
	var out [][]fabric.Stitch
	for _, list := range f.Pieces[0].Stitches {
		list = slices.Clone(list)
		for i := range list {
			list[i].Clause = 0
		}
		out = append(out, list)
	}
	return out
}

func TestWorkingIsDeterministic(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawPiece(t, rapid.IntRange(1, 3).Draw(t, "sizes"))
		v, _ := drawVoice(t)
		pattern := v.write(p, counts(p))
		a, b := worked(pattern), worked(pattern)
		for i, r := range a.Pieces[0].Rows {
			other := b.Pieces[0].Rows[i]
			if !reflect.DeepEqual(r.Tallies, other.Tallies) || !reflect.DeepEqual(r.Steps, other.Steps) {
				t.Fatalf("row %d differs from one time to the next:\n%s", i, pattern)
			}
		}
		if !samePiece(a, b) {
			t.Fatalf("the stitches differ from one time to the next:\n%s", pattern)
		}
	})
}

// single is the piece in one of its sizes.
func (p *piece) single(size int) *piece {
	q := &piece{sizes: 1, shape: p.shape}
	if p.chains != nil {
		q.chains = sized{p.chains.of(size)}
	}
	for _, r := range p.rows {
		r.steps = mapped(r.steps, func(n sized) sized { return sized{n.of(size)} })
		q.rows = append(q.rows, r)
	}
	return q
}

func TestTenSizesAreTenPieces(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		const sizes = 10
		p := drawPiece(t, sizes)
		want := counts(p)
		v, _ := drawVoice(t)
		all := v.write(p, want)
		f := worked(all)
		if len(f.Pieces[0].Stitches) != sizes {
			t.Fatalf("%d sizes worked\n%s", len(f.Pieces[0].Stitches), all)
		}
		for size := range sizes {
			plain := voice{pick: func(int) int { return 0 }}
			alone := plain.write(p.single(size), [][][]string{want[size]})
			one := rowsOf(worked(alone))
			for i, r := range rowsOf(f) {
				if got, single := stitchesOf(r, size), stitchesOf(one[i], 0); !slices.Equal(got, single) {
					t.Fatalf("row %d, size %d: %v, alone %v\n%s\n%s", i+1, size+1, got, single, all, alone)
				}
			}
		}
	})
}

func TestRepeatUnrolledIsTheSameRow(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawPiece(t, 1)
		want := counts(p)
		v, _ := drawVoice(t)
		plain := voice{pick: func(int) int { return 0 }, unrolled: true}
		rolled, unrolled := v.write(p, want), plain.write(p, want)
		other := rowsOf(worked(unrolled))
		for i, r := range rowsOf(worked(rolled)) {
			if got, byHand := stitchesOf(r, 0), stitchesOf(other[i], 0); !slices.Equal(got, byHand) {
				t.Fatalf("row %d: %v, by hand %v\n%s\n%s", i+1, got, byHand, rolled, unrolled)
			}
			if got, byHand := knownStrips(r), knownStrips(other[i]); !reflect.DeepEqual(got, byHand) {
				t.Fatalf("row %d bends %v, by hand %v\n%s\n%s", i+1, got, byHand, rolled, unrolled)
			}
		}
	})
}

// A pattern rewritten in the other dialect makes the same stitches. A US pattern
// rewritten again is what it was, byte for byte; a UK one, which may say treble for
// short or skip for miss, from then on.
func TestRewrittenInOtherTermsIsTheSamePiece(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawPiece(t, rapid.IntRange(1, 3).Draw(t, "sizes"))
		voice, _ := drawVoice(t)
		home := stitch.US
		if voice.uk = rapid.Bool().Draw(t, "uk"); voice.uk {
			home = stitch.UK
		}
		text := voice.write(p, counts(p))
		there := inTerms(t, text, home.Other())
		a, b := worked(text), worked(there)
		if !samePiece(a, b) || !sameCounts(a, b) {
			t.Fatalf("not the same stitches:\n%s\n%s", text, there)
		}
		if home == stitch.UK || len(a.Of(stitch.UK, terms.Word)) > 0 {
			text = inTerms(t, there, home)
			there = inTerms(t, text, home.Other())
		}
		if back := inTerms(t, there, home); back != text {
			t.Fatalf("came back otherwise:\n%s\n%s\n%s", text, there, back)
		}
	})
}

// inTerms rewrites a pattern in a dialect.
func inTerms(t *rapid.T, text string, d stitch.Dialect) string {
	f := syntax.Read(source.New(text))
	edits, err := terms.Rewrite(f, stitch.Unsettled, d)
	if err != nil {
		t.Fatal(err)
	}
	out, err := f.Text.Apply(edits)
	if err != nil {
		t.Fatal(err)
	}
	return out.String()
}

func TestBothDialectsMakeTheSameStitches(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawPiece(t, rapid.IntRange(1, 3).Draw(t, "sizes"))
		want := counts(p)
		us, uk := drawVoice(t)
		uk.uk = true
		american := us.write(p, want)
		british := uk.write(p, want)
		a, b := worked(american), worked(british)
		if !samePiece(a, b) {
			t.Fatalf("not the same stitches:\n%s\n%s", american, british)
		}
		other := rowsOf(b)
		for i, r := range rowsOf(a) {
			if !reflect.DeepEqual(knownStrips(r), knownStrips(other[i])) {
				t.Fatalf("row %d does not bend the same:\n%s\n%s", i+1, american, british)
			}
		}
	})
}
