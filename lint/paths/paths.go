// Package paths tells which files a list of patterns means. Patterns are
// written as in a .gitignore and speak of the folder that the list is kept in:
// `*.txt` means such files in any folder, `/drafts/` one folder with all in it,
// `!drafts/oak.crochet` takes back what came before it.
package paths

import (
	"path"
	"path/filepath"
	"slices"
	"strings"

	"github.com/bmatcuk/doublestar/v4"
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
	patterns []pattern
}

// New is the list of patterns kept in a folder, which is given by its whole
// path.
func New(folder string, patterns []string) List {
	l := List{folder: folder}
	for _, p := range patterns {
		l.patterns = append(l.patterns, parse(p))
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
// path: of itself or, where it says nothing of that, of the nearest folder around it.
func (l List) Of(name string, isFolder bool) Verdict {
	rel, err := filepath.Rel(l.folder, name)
	if err != nil || rel == "." {
		return Silent
	}
	rel = filepath.ToSlash(rel)
	if rel == ".." || strings.HasPrefix(rel, "../") {
		return Silent
	}
	for isFolder := isFolder; rel != "."; rel, isFolder = path.Dir(rel), true {
		if v := l.itself(rel, isFolder); v != Silent {
			return v
		}
	}
	return Silent
}

// itself is what the list says of a path by itself: the last pattern that means it
// decides.
func (l List) itself(path string, isFolder bool) Verdict {
	for _, p := range slices.Backward(l.patterns) {
		if p.folders && !isFolder {
			continue
		}
		if means, _ := doublestar.Match(p.glob, path); means { // what is no glob means nothing
			return p.verdict
		}
	}
	return Silent
}

// Means tells whether the list means a file.
func (l List) Means(name string) bool { return l.Of(name, false) == Meant }

// pattern is one line of a list, as the manual of git has it (gitignore, "Pattern
// format").
type pattern struct {
	glob    string // of the path from the list's folder
	folders bool   // it means folders alone
	verdict Verdict
}

func parse(line string) pattern {
	p := pattern{verdict: Meant}
	for strings.HasSuffix(line, " ") && !strings.HasSuffix(line, `\ `) {
		line = strings.TrimSuffix(line, " ")
	}
	if rest, spares := strings.CutPrefix(line, "!"); spares {
		line, p.verdict = rest, Spared
	}
	line, p.folders = strings.CutSuffix(line, "/")
	switch within, all := strings.CutSuffix(line, "/**"); {
	case line == "":
		return p // which means nothing
	case all:
		p.glob = strings.TrimPrefix(within+"/**/*", "/") // the folder itself is not meant
	case strings.Contains(line, "/"):
		p.glob = strings.TrimPrefix(line, "/")
	default:
		p.glob = "**/" + line
	}
	p.glob = noChoices.Replace(p.glob)
	return p
}

// noChoices takes the meaning from braces, which only other globs have.
var noChoices = strings.NewReplacer(`\{`, `\{`, `\}`, `\}`, "{", `\{`, "}", `\}`)
