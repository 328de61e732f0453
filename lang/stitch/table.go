package stitch

import (
	_ "embed"
	"fmt"
	"slices"
	"strings"
	"sync"
	"unicode"
	"unicode/utf8"
)

var (
	//go:embed data/stitches.tsv
	stitchTable string
	//go:embed data/families.tsv
	familyTable string
	//go:embed data/names.tsv
	nameTable string
	//go:embed data/abbreviations.tsv
	abbreviationTable string
	//go:embed data/dialects.tsv
	dialectTable string
	//go:embed data/sources.tsv
	sourceTable string
)

// record is one line of a table. Its cells stand under the columns of the same
// index.
type record struct {
	table          string
	line           int // counted from 1
	columns, cells []string
}

// text is the cell of a column, empty for the dash that means none.
func (r record) text(column string) string {
	if cell := r.cells[slices.Index(r.columns, column)]; cell != "-" {
		return cell
	}
	return ""
}

// list is the parts of a cell between separators.
func (r record) list(column, separator string) []string {
	if cell := r.text(column); cell != "" {
		return strings.Split(cell, separator)
	}
	return nil
}

func (r record) errorf(format string, args ...any) error {
	return fmt.Errorf("%s:%d: %s", r.table, r.line, fmt.Sprintf(format, args...))
}

// readTable reads tab-separated lines under a header line that must name just
// the columns given. Lines that begin with # are comments.
func readTable(name, text string, columns ...string) ([]record, error) {
	var records []record
	header, line := false, 0
	for row := range strings.Lines(text) {
		line++
		row = strings.TrimRight(row, "\r\n")
		if row == "" || row[0] == '#' {
			continue
		}
		r := record{name, line, columns, strings.Split(row, "\t")}
		switch {
		case !header:
			if header = true; !slices.Equal(r.cells, columns) {
				return nil, r.errorf("the header must be %q", columns)
			}
		case len(r.cells) != len(columns):
			return nil, r.errorf("%d cells for %d columns", len(r.cells), len(columns))
		case slices.Contains(r.cells, ""):
			return nil, r.errorf("an empty cell under %q; write a dash for none", columns[slices.Index(r.cells, "")])
		default:
			records = append(records, r)
		}
	}
	return records, nil
}

// citations is the works of sources.tsv by their keys.
type citations map[string]string

func readCitations(text string) (citations, error) {
	records, err := readTable("sources.tsv", text, "key", "citation")
	if err != nil {
		return nil, err
	}
	c := make(citations, len(records))
	for _, r := range records {
		c[r.text("key")] = r.text("citation")
	}
	return c, nil
}

// of is the works whose keys the record's column sources holds.
func (c citations) of(r record) ([]string, error) {
	keys := r.list("sources", " ")
	if len(keys) == 0 {
		return nil, r.errorf("no source")
	}
	for i, key := range keys {
		if c[key] == "" {
			return nil, r.errorf("no source has the key %q", key)
		}
		keys[i] = c[key]
	}
	return keys, nil
}

// once reads tables when first asked. They are part of the program, so a fault
// in them is one of the program.
func once[T any](read func() (T, error)) func() T {
	return sync.OnceValue(func() T {
		v, err := read()
		if err != nil {
			panic(err)
		}
		return v
	})
}

// fold writes a spelling as the tables are searched: lower case, straight
// apostrophes, words joined by single spaces, hyphens and stops as spaces.
func fold(s string) string {
	plain := true
	for i := 0; i < len(s) && plain; i++ {
		c := s[i]
		plain = c >= 'a' && c <= 'z' || c >= '0' && c <= '9' ||
			c == ' ' && i > 0 && i < len(s)-1 && s[i-1] != ' '
	}
	if plain {
		return s
	}
	b := make([]byte, 0, len(s))
	gap := false
	for _, r := range s {
		switch {
		case r == '-' || r == '.' || unicode.IsSpace(r) || r >= utf8.RuneSelf && unicode.Is(unicode.Pd, r):
			gap = len(b) > 0
			continue
		case gap:
			b = append(b, ' ')
			gap = false
		}
		if r == '’' {
			r = '\''
		}
		b = utf8.AppendRune(b, unicode.ToLower(r))
	}
	return string(b)
}

// spread parts digits from letters, as a reader does that does not know the
// word they make.
func spread(s string) string {
	var b strings.Builder
	var last rune
	for _, r := range s {
		if unicode.IsDigit(r) && unicode.IsLetter(last) || unicode.IsLetter(r) && unicode.IsDigit(last) {
			b.WriteByte(' ')
		}
		b.WriteRune(r)
		last = r
	}
	return b.String()
}
