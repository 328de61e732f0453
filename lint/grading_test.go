package lint

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestOddSteps(t *testing.T) {
	for _, c := range []struct {
		values     []int
		at, likely int
	}{
		{[]int{82, 92, 120, 112}, 2, 102},     // digits the other way round, and a fall
		{[]int{81, 91, 110, 111}, 2, 101},     // digits the other way round
		{[]int{28, 100, 120, 140}, -1, 0},     // even steps would need 80
		{[]int{60, 46, 68, 72}, 1, 64},        // digits the other way round
		{[]int{56, 60, 54, 68, 72}, 2, 64},    // a digit that makes it fall
		{[]int{56, 60, 64, 32}, -1, 0},        // what is left of a round after shaping
		{[]int{56, 60, 64, 64}, -1, 0},        // two sizes alike
		{[]int{56, 60, 62, 70}, -1, 0},        // uneven grading
		{[]int{56, 50, 70, 72}, -1, 0},        // a fall, and nothing even to tell what is meant
		{[]int{72, 68, 64, 60}, -1, 0},        // falls all the way
		{[]int{80, 90, 100, 110, 120}, -1, 0}, // even
	} {
		at, likely := oddStep(c.values)
		assert.Equal(t, []int{c.at, c.likely}, []int{at, likely}, "%v", c.values)
	}
}
