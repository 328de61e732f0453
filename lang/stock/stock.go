// Package stock is what a maker works with and for, as published: hooks, yarn
// weights, how much yarn stitches take, the sizes of bodies and heads, and the
// figures of safety rules. It holds tables in data/, each line with its source,
// and looks things up in them; it reads no pattern.
package stock

import (
	_ "embed"
	"strconv"
	"strings"

	"stitchproof/lang/table"
)

//go:embed data/sources.tsv
var sourceTable string

// Range is a span of figures from low to high, both included. A single figure
// is a range of no width.
type Range struct{ Low, High float64 }

// Holds tells whether a figure lies in the range, give or take a little.
func (r Range) Holds(v, give float64) bool { return v >= r.Low-give && v <= r.High+give }

// Width is how far the range reaches.
func (r Range) Width() float64 { return r.High - r.Low }

// String writes the range as tables do: 2.75-3, or 4.
func (r Range) String() string {
	if r.Low == r.High {
		return figure(r.Low)
	}
	return figure(r.Low) + "-" + figure(r.High)
}

func figure(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) }

// MMPerInch is by definition.
const MMPerInch = 25.4

// readRange reads `4`, `2.75-3` and `-4--2`.
func readRange(r table.Record, column string) (Range, error) {
	cell := r.Text(column)
	at := strings.IndexByte(strings.TrimPrefix(cell, "-"), '-')
	if at < 0 {
		v, err := strconv.ParseFloat(cell, 64)
		if err != nil {
			return Range{}, r.Errorf("%s is a number or a range of two, not %q", column, cell)
		}
		return Range{v, v}, nil
	}
	at += len(cell) - len(strings.TrimPrefix(cell, "-"))
	low, err := strconv.ParseFloat(cell[:at], 64)
	high, err2 := strconv.ParseFloat(cell[at+1:], 64)
	if err != nil || err2 != nil || high < low {
		return Range{}, r.Errorf("%s is a number or a range of two, not %q", column, cell)
	}
	return Range{low, high}, nil
}

// read reads a table with the works that each of its lines is taken from.
func read[T any](name, text string, entry func(table.Record, string) (T, error), columns ...string) func() []T {
	return table.Once(func() ([]T, error) { return readAll(name, text, entry, columns...) })
}

func readAll[T any](name, text string, entry func(table.Record, string) (T, error), columns ...string) ([]T, error) {
	cited, err := table.ReadCitations(sourceTable)
	if err != nil {
		return nil, err
	}
	records, err := table.Read(name, text, append(columns, "sources")...)
	if err != nil {
		return nil, err
	}
	out := make([]T, len(records))
	for i, r := range records {
		works, err := cited.Of(r)
		if err != nil {
			return nil, err
		}
		if out[i], err = entry(r, strings.Join(works, "; ")); err != nil {
			return nil, err
		}
	}
	return out, nil
}
