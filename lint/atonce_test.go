package lint

import (
	"sync/atomic"
	"testing"

	"github.com/stretchr/testify/assert"

	"stitchproof/lang/source"
)

func TestAtOnce(t *testing.T) {
	for _, n := range []int{0, 1, 2, 100} {
		done := make([]atomic.Int32, n)
		atOnce(n, func(i int) { done[i].Add(1) })
		for i := range done {
			assert.EqualValues(t, 1, done[i].Load(), "%d of %d", i, n)
		}
	}
}

// A panic in another goroutine would end the whole program: it must come back to whoever
// waits, from whichever of them it was.
func TestAtOnceBreaksDown(t *testing.T) {
	for broken := range 2 {
		a := guarded(source.New("Row 1: ch 4."), func() *Analysis {
			atOnce(2, func(i int) {
				if i == broken {
					droppedAStitch()
				}
			})
			return nil
		})
		assert.Len(t, a.Findings, 1)
		assert.Equal(t, InternalFailure, a.Findings[0].Rule)
		assert.Contains(t, a.Findings[0].Message, "dropped a stitch")
		assert.Contains(t, a.Trace, "droppedAStitch", "where it was")
	}
}

func droppedAStitch() { panic("dropped a stitch") }
