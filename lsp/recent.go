package lsp

import (
	"slices"
	"sync"
)

// recent are the documents that were asked about last, the latest at the end. Of these
// alone it is kept what is known of them, which takes some two hundred times the text:
// editors hold many files open that nobody looks at, and what is known of one is found
// out again in less time than it takes to notice.
type recent struct {
	mu   sync.Mutex
	list []*document
}

// mostKept is how much text the recent documents have in all, in bytes: some thirty
// patterns of the usual length, or one of any.
const mostKept = 96 << 10

// use makes a document the latest, and puts away those that are one too many.
func (r *recent) use(d *document) {
	r.mu.Lock()
	defer r.mu.Unlock()
	r.list = append(without(r.list, d), d)
	size := 0
	for i := len(r.list) - 1; i >= 0; i-- {
		if size += r.list[i].text.Len(); size > mostKept && i < len(r.list)-1 {
			late := slices.DeleteFunc(slices.Clone(r.list[:i+1]), (*document).putAway)
			r.list = append(late, r.list[i+1:]...)
			return
		}
	}
}

// drop forgets a document that is replaced or closed.
func (r *recent) drop(d *document) {
	r.mu.Lock()
	defer r.mu.Unlock()
	r.list = without(r.list, d)
}

func without(list []*document, d *document) []*document {
	return slices.DeleteFunc(list, func(other *document) bool { return other == d })
}
