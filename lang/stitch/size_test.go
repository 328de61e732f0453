package stitch

import (
	"fmt"
	"testing"
)

func TestFam(t *testing.T) {
	c := map[string]int{}
	n := map[string]int{}
	for _, s := range All() {
		n[s.Class.String()]++
		for _, x := range []Term{s.US, s.UK} {
			c[s.Class.String()] += 3 + len(x.Also)
		}
	}
	fmt.Println(c, n)
}
