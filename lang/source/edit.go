package source

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
)

// Edit puts New in the place of the bytes that Span covers. An empty span inserts,
// an empty New deletes.
type Edit struct {
	Span Span
	New  string
}

// Apply is the text after all of edits, each of which speaks of t as it is now. They
// may come in any order. Edits may touch; insertions at one offset appear in
// the order given and before the replacement of what follows them.
//
// It is an error if an edit reaches outside the text or ends before it starts, or
// if two overlap: share a byte, or one inserts inside the other. The error counts
// the edits from 1.
func (t *Text) Apply(edits []Edit) (*Text, error) {
	order := make([]int, len(edits))
	for i, edit := range edits {
		if edit.Span.Start < 0 || edit.Span.End < edit.Span.Start || edit.Span.End > t.Len() {
			return nil, fmt.Errorf("edit %d spans bytes %d to %d, which is out of range in a text of %d bytes",
				i+1, edit.Span.Start, edit.Span.End, t.Len())
		}
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int {
		return cmp.Or(cmp.Compare(edits[a].Span.Start, edits[b].Span.Start),
			cmp.Compare(edits[a].Span.End, edits[b].Span.End))
	})

	var out strings.Builder
	done := 0 // everything of t before this offset is in out
	for k, i := range order {
		edit := edits[i]
		if edit.Span.Start < done {
			before := order[k-1]
			return nil, fmt.Errorf("edits %d and %d overlap: bytes %d to %d and bytes %d to %d",
				before+1, i+1, edits[before].Span.Start, edits[before].Span.End, edit.Span.Start, edit.Span.End)
		}
		out.WriteString(t.content[done:edit.Span.Start])
		out.WriteString(edit.New)
		done = edit.Span.End
	}
	out.WriteString(t.content[done:])
	return New(out.String()), nil
}
