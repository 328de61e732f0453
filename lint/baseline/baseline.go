// Package baseline sets the findings of a day aside, so that an archive with many
// old ones can be checked for new ones. It knows findings again by their
// fingerprints, wherever their lines move to.
package baseline

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"sync"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

// version is that of the file's form.
const version = 1

// file is how a baseline is kept.
type file struct {
	Version int                `json:"version"`
	Files   map[string][]entry `json:"files"` // by path from the baseline's own folder
}

// entry is a finding set aside. Only the fingerprint decides; the rule is for
// people.
type entry struct {
	Rule        string `json:"rule"`
	Fingerprint string `json:"fingerprint"`
}

// Baseline is findings set aside. A nil one sets none aside. It may be used from
// many goroutines.
type Baseline struct {
	folder string
	kept   file

	mu  sync.Mutex
	met map[string]bool // the files looked at and, by file and fingerprint, the entries met
}

// Load reads a baseline.
func Load(name string) (*Baseline, error) {
	data, err := os.ReadFile(name)
	if err != nil {
		return nil, fmt.Errorf("%s: cannot be read: %w", name, errors.Unwrap(err))
	}
	b := &Baseline{met: map[string]bool{}}
	d := json.NewDecoder(bytes.NewReader(data))
	d.DisallowUnknownFields()
	if err := d.Decode(&b.kept); err != nil {
		return nil, fmt.Errorf("%s is no baseline: %w", name, err)
	}
	if b.kept.Version != version {
		return nil, fmt.Errorf("%s is a baseline of version %d, and this program reads version %d: write it anew", name, b.kept.Version, version)
	}
	b.folder, err = filepath.Abs(filepath.Dir(name))
	return b, err
}

// Filter leaves out the findings of a file that are set aside.
func (b *Baseline) Filter(name string, t *source.Text, found []lint.Finding) []lint.Finding {
	if b == nil {
		return found
	}
	key := keyOf(b.folder, name)
	signs := lint.Fingerprints(t, found)
	b.mu.Lock()
	defer b.mu.Unlock()
	b.met[key] = true
	var out []lint.Finding
	for i, f := range found {
		if settable(f) && slices.ContainsFunc(b.kept.Files[key], func(e entry) bool { return e.Fingerprint == signs[i] }) {
			b.met[key+"\x00"+signs[i]] = true
			continue
		}
		out = append(out, f)
	}
	return out
}

// Gone counts the findings set aside that are found no more, in the files looked
// at.
func (b *Baseline) Gone() int {
	if b == nil {
		return 0
	}
	gone := 0
	for key, entries := range b.kept.Files {
		for _, e := range entries {
			if b.met[key] && !b.met[key+"\x00"+e.Fingerprint] {
				gone++
			}
		}
	}
	return gone
}

// Writer gathers findings for a baseline to be written.
type Writer struct {
	folder string
	file   file
}

// NewWriter gathers for a baseline in a file of a name.
func NewWriter(name string) (*Writer, error) {
	folder, err := filepath.Abs(filepath.Dir(name))
	return &Writer{folder, file{version, map[string][]entry{}}}, err
}

// Add sets the findings of a file aside.
func (w *Writer) Add(name string, t *source.Text, found []lint.Finding) {
	for i, sign := range lint.Fingerprints(t, found) {
		if settable(found[i]) {
			key := keyOf(w.folder, name)
			w.file.Files[key] = append(w.file.Files[key], entry{found[i].Rule, sign})
		}
	}
}

// settable tells whether a finding can be set aside, as neither a failure nor a
// caution can.
func settable(f lint.Finding) bool { return slices.Contains(lint.Names(), f.Rule) && !f.IsCaution() }

// Len is how many findings are set aside.
func (w *Writer) Len() int {
	n := 0
	for entries := range maps.Values(w.file.Files) {
		n += len(entries)
	}
	return n
}

// Bytes is what the baseline's file is to hold.
func (w *Writer) Bytes() ([]byte, error) {
	text, err := json.MarshalIndent(w.file, "", "  ")
	return append(text, '\n'), err
}

// keyOf is a file's path from a folder, the same on every system.
func keyOf(folder, name string) string {
	whole, err := filepath.Abs(name)
	if err != nil {
		return filepath.ToSlash(name)
	}
	rel, err := filepath.Rel(folder, whole)
	if err != nil {
		rel = whole
	}
	return filepath.ToSlash(rel)
}
