package report

import (
	"encoding/json"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lint"
)

// CountTotals are the stitches of all rows together: their number, how many
// there are of each kind, with the spaces, and how many are in each yarn. Chains
// to work into are no stitches, nor slip stitches that only travel.
type CountTotals struct {
	Total []*int  `json:"total"`
	Parts Amounts `json:"parts"`
	Yarn  Amounts `json:"yarn"`
}

// Amounts are the numbers of several things by their names, one a size; nil
// stands for what is not known.
type Amounts struct {
	names  []string // in the order first met
	counts map[string][]*int
}

// MarshalJSON writes an object with the numbers behind the names.
func (a Amounts) MarshalJSON() ([]byte, error) {
	if a.counts == nil {
		return []byte("{}"), nil
	}
	return json.Marshal(a.counts)
}

// of gives the numbers of a thing, which are those of none at first.
func (a *Amounts) of(name string, sizes int) []*int {
	if counts, ok := a.counts[name]; ok {
		return counts
	}
	if a.counts == nil {
		a.counts = map[string][]*int{}
	}
	counts := make([]*int, sizes)
	for size := range counts {
		counts[size] = new(int)
	}
	a.names, a.counts[name] = append(a.names, name), counts
	return counts
}

// count counts one more of a thing in one size.
func (a *Amounts) count(name string, size, sizes int) { *a.of(name, sizes)[size]++ }

// addTimes puts what another holds to it in one size, so many times.
func (a *Amounts) addTimes(other *Amounts, size, times int) {
	for _, name := range other.names {
		more := other.counts[name]
		counts := a.of(name, len(more))
		counts[size] = plus(counts[size], more[size], times)
	}
}

// forget makes a size unknown.
func (a *Amounts) forget(size int) {
	for _, counts := range a.counts {
		counts[size] = nil
	}
}

// plus is a and b times so many, unknown where one of them is.
func plus(a, b *int, times int) *int {
	if a == nil || b == nil {
		return nil
	}
	sum := *a + *b*times
	return &sum
}

// addUp counts the stitches of a piece: for each row those in each yarn and
// the running total, for the piece the totals.
func (p *CountPiece) addUp(a *lint.Analysis, piece *fabric.Piece) {
	sizes, yarns := len(piece.Stitches), yarnNames{analysis: a}
	p.Total = make([]*int, sizes)
	made := make([][]int, sizes)
	for size := range sizes {
		made[size] = make([]int, len(p.Rows))
		var counted []*fabric.Stitch
		for i := range piece.Stitches[size] {
			s := &piece.Stitches[size][i]
			if s.Row < 0 || s.Apart {
				continue
			}
			counted = append(counted, s)
			if s.IsSpace() {
				continue
			}
			made[size][s.Row]++
			yarn := yarns.written(s.Yarn)
			p.Yarn.count(yarn, size, sizes)
			p.Rows[s.Row].Yarn.count(yarn, size, sizes)
		}
		for _, kind := range fabric.Kinds(counted, a.Fabric.Dialect) {
			*p.Parts.of(kind.Name, sizes)[size] = kind.N
		}
	}
	for size := range sizes {
		p.run(piece, size, made[size])
	}
}

// run adds up what the rows make in one size, as far as it is known.
func (p *CountPiece) run(piece *fabric.Piece, size int, made []int) {
	sum := new(int)
	for i, row := range piece.Rows {
		r := &p.Rows[i]
		if !whole(row, size) {
			r.Yarn.forget(size)
			sum = nil
		}
		if row.Tallies[size].Agrees() == fabric.Disagrees {
			sum = nil // which of the two a maker ends up with is not known
		}
		sum = plus(sum, &made[i], 1)
		r.Running[size] = sum
	}
	if p.Total[size] = sum; sum == nil {
		p.forget(size)
	}
}

// yarnNames finds how a pattern writes its yarns, which the facts call by one
// spelling, lower case.
type yarnNames struct {
	analysis *lint.Analysis
	last     string // the yarn asked for last, and how it is written
	answer   string
}

// written is a yarn as the header has it, else as the rows do.
func (y *yarnNames) written(name string) string {
	if name != y.last {
		y.last, y.answer = name, y.find(name)
	}
	return y.answer
}

func (y *yarnNames) find(name string) string {
	for _, f := range y.analysis.File.Header {
		if f.Key == "yarn" && strings.EqualFold(f.Name, name) {
			return f.Name
		}
	}
	for row := range y.analysis.Fabric.Rows() {
		if as := row.Tree.AsWritten(name); as != name {
			return as
		}
	}
	return name
}

// whole tells whether all was counted that a line stands for: of several rows,
// work stops at the first that goes wrong.
func whole(row *fabric.Row, size int) bool {
	t := &row.Tallies[size]
	return t.Known && (len(t.Faults) == 0 || row.Repeats[size] < 2)
}

// forget makes the parts unknown in a size.
func (t *CountTotals) forget(size int) {
	t.Parts.forget(size)
	t.Yarn.forget(size)
}

// totalOfPieces adds up all pieces, each as often as it is made.
func totalOfPieces(pieces []CountPiece, sizes int) CountTotals {
	out := CountTotals{Total: make([]*int, sizes)}
	for size := range sizes {
		out.Total[size] = new(int)
		for i := range pieces {
			if p := &pieces[i]; p.Make[size] > 0 {
				out.Total[size] = plus(out.Total[size], p.Total[size], p.Make[size])
				out.Parts.addTimes(&p.Parts, size, p.Make[size])
				out.Yarn.addTimes(&p.Yarn, size, p.Make[size])
			}
		}
	}
	for size, total := range out.Total {
		if total == nil {
			out.forget(size)
		}
	}
	return out
}
