package syntax

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
)

// None is the value, in a list of sizes, of a size that skips the clause:
// written as a dash.
const None = -1

// Num is a number of a pattern: one value for all sizes, or one for each.
// The zero Num is a number that is not written.
type Num struct{ Vals []int }

// One is a number that is the same for every size.
func One(n int) Num { return Num{Vals: []int{n}} }

// Written tells whether there is a number at all.
func (n Num) Written() bool { return len(n.Vals) > 0 }

// At is the value for a size, counted from 0. A list that is too short gives
// its last value; what is not written is 0.
func (n Num) At(size int) int {
	switch {
	case len(n.Vals) == 0:
		return 0
	case size < len(n.Vals):
		return n.Vals[size]
	}
	return n.Vals[len(n.Vals)-1]
}

// Or is the value for a size, or another where no number is written.
func (n Num) Or(size, other int) int {
	if !n.Written() {
		return other
	}
	return n.At(size)
}

// plus adds another number to it, size by size.
func (n Num) plus(m Num) Num { return n.with(m, func(a, b int) int { return a + b }) }

// times multiplies it by another number, size by size.
func (n Num) times(m Num) Num { return n.with(m, func(a, b int) int { return a * b }) }

func (n Num) with(m Num, op func(a, b int) int) Num {
	out := Num{Vals: make([]int, max(len(n.Vals), len(m.Vals)))}
	for i := range out.Vals {
		out.Vals[i] = op(n.At(i), m.At(i))
	}
	return out
}

// PerSize tells whether the number is a list of values.
func (n Num) PerSize() bool { return len(n.Vals) > 1 }

// Equal tells whether two numbers are written with the same values.
func (n Num) Equal(m Num) bool { return slices.Equal(n.Vals, m.Vals) }

// String writes the number as patterns do: 24, or 24 (28, 32).
func (n Num) String() string {
	words := make([]string, len(n.Vals))
	for i, v := range n.Vals {
		words[i] = strconv.Itoa(v)
	}
	return PerSize(words)
}

// Often says how many times something is done: once, twice, 6 times. A number
// that is not written is one.
func (n Num) Often() string {
	switch {
	case !n.Written() || n.Equal(One(1)):
		return "once"
	case n.Equal(One(2)):
		return "twice"
	}
	return n.String() + " times"
}

// Nth writes the place of one in a row: 2nd, 11th.
func Nth(n int) string {
	ending := "th"
	if n/10%10 != 1 && n%10 >= 1 && n%10 <= 3 {
		ending = [...]string{"st", "nd", "rd"}[n%10-1]
	}
	return strconv.Itoa(n) + ending
}

// Signed writes a difference: +2, -6, or 0.
func Signed(n int) string {
	if n == 0 {
		return "0"
	}
	return fmt.Sprintf("%+d", n)
}

// PerSize writes one value a size as patterns do: once where all are the same,
// else the first and the others in brackets. None at all is "".
func PerSize(values []string) string {
	switch {
	case len(values) == 0:
		return ""
	case !slices.ContainsFunc(values, func(v string) bool { return v != values[0] }):
		return values[0]
	}
	return values[0] + " (" + strings.Join(values[1:], ", ") + ")"
}
