// Package paths tells which files a list of patterns means. Patterns are
// written as in a .gitignore and speak of the folder that the list is kept in:
// `*.txt` means such files in any folder, `/drafts/` one folder with all in it,
// `!drafts/oak.crochet` takes back what came before it.
package paths

import (
	"path/filepath"
	"strings"

	"github.com/go-git/go-git/v5/plumbing/format/gitignore"
)

// Verdict is what a list says of a file.
type Verdict uint8

// The verdicts.
const (
	Silent Verdict = iota // no pattern means it
	Meant                 // a pattern means it
	Spared                // one does and a later one takes it back
)

// List is a list of patterns in the folder it speaks of. The zero value means no
// file.
type List struct {
	folder   string
	patterns []gitignore.Pattern
}

// New is the list of patterns kept in a folder, which is given by its whole
// path.
func New(folder string, patterns []string) List {
	l := List{folder: folder}
	for _, p := range patterns {
		l.patterns = append(l.patterns, gitignore.ParsePattern(p, nil))
	}
	return l
}

// Read is the list in the text of a .gitignore that is kept in a folder.
func Read(folder, text string) List {
	var patterns []string
	for line := range strings.Lines(text) {
		line = strings.TrimRight(line, "\r\n")
		if strings.TrimSpace(line) != "" && !strings.HasPrefix(line, "#") {
			patterns = append(patterns, line)
		}
	}
	return New(folder, patterns)
}

// Of is what the list says of a file or a folder, which is given by its whole
// path. The last pattern that means it decides.
func (l List) Of(name string, isFolder bool) Verdict {
	rel, err := filepath.Rel(l.folder, name)
	if err != nil {
		return Silent
	}
	parts := strings.Split(filepath.ToSlash(rel), "/")
	if parts[0] == ".." || rel == "." {
		return Silent
	}
	for i := len(l.patterns) - 1; i >= 0; i-- {
		switch l.patterns[i].Match(parts, isFolder) {
		case gitignore.Exclude:
			return Meant
		case gitignore.Include:
			return Spared
		}
	}
	return Silent
}

// Means tells whether the list means a file.
func (l List) Means(name string) bool { return l.Of(name, false) == Meant }
