// Package table reads the tables of trade facts that are part of the program:
// tab-separated lines, each with the works it is taken from.
package table

import (
	"fmt"
	"slices"
	"strings"
	"sync"
)

// Record is one line of a table. Its cells stand under the columns of the same
// index.
type Record struct {
	table          string
	line           int // counted from 1
	columns, cells []string
}

// Text is the cell of a column, empty for the dash that means none.
func (r Record) Text(column string) string {
	if cell := r.cells[slices.Index(r.columns, column)]; cell != "-" {
		return cell
	}
	return ""
}

// List is the parts of a cell between separators.
func (r Record) List(column, separator string) []string {
	if cell := r.Text(column); cell != "" {
		return strings.Split(cell, separator)
	}
	return nil
}

// Errorf is an error that names the table and the line.
func (r Record) Errorf(format string, args ...any) error {
	return fmt.Errorf("%s:%d: %s", r.table, r.line, fmt.Sprintf(format, args...))
}

// Read reads tab-separated lines under a header line that must name just the
// columns given. Lines that begin with # are comments.
func Read(name, text string, columns ...string) ([]Record, error) {
	var records []Record
	header, line := false, 0
	for row := range strings.Lines(text) {
		line++
		row = strings.TrimRight(row, "\r\n")
		if row == "" || row[0] == '#' {
			continue
		}
		r := Record{name, line, columns, strings.Split(row, "\t")}
		switch {
		case !header:
			if header = true; !slices.Equal(r.cells, columns) {
				return nil, r.Errorf("the header must be %q", columns)
			}
		case len(r.cells) != len(columns):
			return nil, r.Errorf("%d cells for %d columns", len(r.cells), len(columns))
		case slices.Contains(r.cells, ""):
			return nil, r.Errorf("an empty cell under %q; write a dash for none", columns[slices.Index(r.cells, "")])
		default:
			records = append(records, r)
		}
	}
	return records, nil
}

// Citations is the works of a sources.tsv by their keys.
type Citations map[string]string

// ReadCitations reads a sources.tsv.
func ReadCitations(text string) (Citations, error) {
	records, err := Read("sources.tsv", text, "key", "citation")
	if err != nil {
		return nil, err
	}
	c := make(Citations, len(records))
	for _, r := range records {
		c[r.Text("key")] = r.Text("citation")
	}
	return c, nil
}

// Of is the works whose keys the record's column sources holds.
func (c Citations) Of(r Record) ([]string, error) {
	keys := r.List("sources", " ")
	if len(keys) == 0 {
		return nil, r.Errorf("no source")
	}
	for i, key := range keys {
		if c[key] == "" {
			return nil, r.Errorf("no source has the key %q", key)
		}
		keys[i] = c[key]
	}
	return keys, nil
}

// Once reads tables when first asked. They are part of the program, so a fault
// in them is one of the program.
func Once[T any](read func() (T, error)) func() T {
	return sync.OnceValue(func() T {
		v, err := read()
		if err != nil {
			panic(err)
		}
		return v
	})
}
