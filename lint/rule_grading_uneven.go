package lint

import (
	"slices"
	"strconv"

	"stitchproof/lang/syntax"
)

var gradingUneven = &Rule{
	Name:     "grading-uneven",
	Family:   "counts",
	Severity: Warning,
	Summary:  "A list of large numbers that rises by even steps has no value that breaks them by a slip of one digit or of two that changed places.",
	Why: "Every size is a pattern of its own, and the tester of one never sees the others. A slip in the third number " +
		"is found by the first maker of the third size.",
	Bad: `Pattern: Hedge band
Terms: US
Sizes: S (M, L, XL)

Piece: Band
With A, ch 82 (92, 120, 112).
Row 1: Sc in 2nd ch from hook and in each ch across. (81 (91, 119, 111) sc)
Fasten off.
`,
	Good: `Pattern: Hedge band
Terms: US
Sizes: S (M, L, XL)

Piece: Band
With A, ch 82 (92, 102, 112).
Row 1: Sc in 2nd ch from hook and in each ch across. (81 (91, 101, 111) sc)
Fasten off.
`,
	Sources: []string{"Grading is often uneven: a value is told of only where all others rise by even steps (common practice)"},
	Check:   checkGradingUneven,
}

const (
	// fewSizes is how many values make a rise that can be broken.
	fewSizes = 4
	// largeNumber is from where on numbers are graded by the body and not by what
	// a repeat happens to need.
	largeNumber = 20
)

func checkGradingUneven(p *Pass) {
	sizes := p.File.SizeCount()
	if sizes < fewSizes {
		return
	}
	for row := range p.Fabric.Rows() {
		for _, t := range row.Tree.Tokens {
			if t.Kind != syntax.Number || len(t.Values.Vals) != sizes || slices.Min(t.Values.Vals) < largeNumber {
				continue
			}
			if at, likely := oddStep(t.Values.Vals); at >= 0 {
				p.inSizes([]int{at}, Finding{
					Span:    row.Tree.Abs(t.Span),
					Message: oddWords(t.Values.Vals, at, likely),
				})
				return // the same slip runs through what follows
			}
		}
	}
}

func oddWords(values []int, at, likely int) string {
	return strconv.Itoa(values[at]) + " breaks the even steps of " + (syntax.Num{Vals: values}).String() + "; " + strconv.Itoa(likely) + " would keep them"
}

// oddStep finds the one value that breaks the even steps of a rising list by a
// slip of the pen, one digit that makes it fall or two that changed places, and
// the value that keeps them; -1 where there is none. Where the other steps are uneven too, nobody knows
// what is meant.
func oddStep(values []int) (at, likely int) {
	for i, v := range values {
		even := evenValue(values, i)
		if even > 0 && even != v && rises(slices.Delete(slices.Clone(values), i, i+1)) && (fallsAt(values, i) && oneDigitOff(v, even) || swapped(v, even)) {
			return i, even
		}
	}
	return -1, 0
}

// fallsAt tells whether a value is less than the one before it or more than the
// one after it.
func fallsAt(values []int, i int) bool {
	return i > 0 && values[i] < values[i-1] || i+1 < len(values) && values[i] > values[i+1]
}

func rises(values []int) bool {
	for i := 1; i < len(values); i++ {
		if values[i] <= values[i-1] {
			return false
		}
	}
	return true
}

// evenValue is what a value would be if all steps of the list were the same, 0
// where those between the others are not.
func evenValue(values []int, at int) int {
	step, last := 0, -1
	for i := range values {
		if i == at {
			continue
		}
		if last >= 0 {
			each := (values[i] - values[last]) / (i - last)
			if (values[i]-values[last])%(i-last) != 0 || step != 0 && each != step {
				return 0
			}
			step = each
		}
		last = i
	}
	if at == 0 {
		return values[1] - step
	}
	return values[at-1] + step
}

// oneDigitOff tells whether two numbers differ in one digit.
func oneDigitOff(a, b int) bool {
	x, y := strconv.Itoa(a), strconv.Itoa(b)
	if len(x) != len(y) {
		return false
	}
	off := 0
	for i := range x {
		if x[i] != y[i] {
			off++
		}
	}
	return off == 1
}

// swapped tells whether two numbers have the same digits, in another order.
func swapped(a, b int) bool {
	digits := func(n int) string {
		d := []byte(strconv.Itoa(n))
		slices.Sort(d)
		return string(d)
	}
	return a != b && digits(a) == digits(b)
}
