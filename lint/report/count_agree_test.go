package report

import (
	"encoding/csv"
	"encoding/json"
	"fmt"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// told is what a table tells of a row in one size.
type told struct {
	line, size, rows, made, change, running string
	kinds, yarn, stated                     string // lists, in alphabetical order
	agrees, side                            string
}

// readers read what the formats of a count wrote, with code that shares none with what
// wrote it. Where a page has one line for all sizes, it holds for each.
var readers = map[string]func(t *testing.T, text string, table *Count) []told{
	"text": func(_ *testing.T, text string, table *Count) []told {
		unlabelled := map[string]bool{}
		for _, piece := range table.Pieces {
			for _, row := range piece.Rows {
				unlabelled[strconv.Itoa(row.Line)] = row.Label == ""
			}
		}
		return toldByText(text, table.Sizes, unlabelled)
	},
	"csv":      func(t *testing.T, text string, _ *Count) []told { return toldByCSV(t, text) },
	"markdown": func(_ *testing.T, text string, table *Count) []told { return toldByMarkdown(text, table.Sizes) },
	"json":     func(t *testing.T, text string, _ *Count) []told { return toldByJSON(t, text) },
}

// Every format tells the same of every example pattern.
func TestFormatsAgree(t *testing.T) {
	paths, err := filepath.Glob("../../testdata/patterns/*.crochet")
	require.NoError(t, err)
	require.NotEmpty(t, paths)
	for _, path := range paths {
		name := strings.TrimSuffix(filepath.Base(path), ".crochet")
		t.Run(name, func(t *testing.T) {
			table := countOfPattern(t, name)
			want := toldByJSON(t, written(t, table, "json"))
			require.NotEmpty(t, want)
			numbered := slices.DeleteFunc(slices.Clone(want), func(r told) bool { return r.running == "" })
			for _, format := range CountFormatNames() {
				require.Contains(t, readers, format, "a reader of each format")
				got := readers[format](t, written(t, table, format), table)
				if format == "text" { // its words are passed over where they have no label
					assert.Equal(t, numbered, got, format)
					continue
				}
				assert.Equal(t, want, got, format)
			}
		})
	}
}

// jsonRow is a row as other programs read it.
type jsonRow struct {
	Line            int
	Works           bool
	Repeats, Made   []*int
	Change, Running []*int
	Agreement       []*bool
	Compared        []struct {
		Name   string
		Stated []int
	}
	Parts, Yarn map[string][]*int
	Side        string
	Unread      []string
}

func toldByJSON(t *testing.T, text string) []told {
	var table struct {
		Sizes  []string
		Pieces []struct{ Rows []jsonRow }
	}
	require.NoError(t, json.Unmarshal([]byte(text), &table))
	var out []told
	for _, piece := range table.Pieces {
		for _, row := range piece.Rows {
			for size := range row.Made {
				r := row.told(size)
				if len(table.Sizes) > 0 {
					r.size = table.Sizes[size]
				}
				out = append(out, r)
			}
		}
	}
	return out
}

func (r *jsonRow) told(size int) told {
	out := told{line: strconv.Itoa(r.Line), side: r.Side, kinds: amountsText(r.Parts, size), yarn: yarnText(r.Yarn, size)}
	if r.Works || len(r.Unread) > 0 {
		out.rows, out.made = orQuestion(r.Repeats[size]), orQuestion(r.Made[size])
	}
	if out.made != "" || len(r.Yarn) > 0 {
		out.running = orQuestion(r.Running[size])
	}
	if c := r.Change[size]; c != nil {
		out.change = fmt.Sprintf("%+d", *c)
		if *c == 0 {
			out.change = "0"
		}
	}
	if len(r.Yarn) == 0 && out.made == "?" {
		out.yarn = "?"
	}
	var stated []string
	for _, part := range r.Compared {
		stated = append(stated, strings.TrimSpace(fmt.Sprintf("%d %s", part.Stated[size], part.Name)))
	}
	out.stated = inOrder(stated)
	if len(r.Compared) > 0 {
		out.agrees = "?"
		if a := r.Agreement[size]; a != nil {
			out.agrees = map[bool]string{true: "yes", false: "DIFFERS"}[*a]
		}
	}
	return out
}

func amountsText(amounts map[string][]*int, size int) string {
	var parts []string
	for name, counts := range amounts {
		if counts[size] == nil || *counts[size] > 0 {
			parts = append(parts, orQuestion(counts[size])+" "+name)
		}
	}
	return inOrder(parts)
}

func yarnText(yarn map[string][]*int, size int) string {
	var parts []string
	for name, counts := range yarn {
		switch {
		case len(yarn) == 1:
			return name
		case counts[size] == nil || *counts[size] > 0:
			parts = append(parts, strings.TrimSpace(name+" "+orQuestion(counts[size])))
		}
	}
	return inOrder(parts)
}

func orQuestion(n *int) string {
	if n == nil {
		return "?"
	}
	return strconv.Itoa(*n)
}

func inOrder(parts []string) string {
	slices.Sort(parts)
	return strings.Join(parts, ", ")
}

// toldBy is what a line of cells tells, the cells found by the names above them.
func toldBy(head, cells []string) told {
	at := func(name string) string {
		if i := slices.Index(head, name); i >= 0 {
			return strings.TrimSpace(cells[i])
		}
		return ""
	}
	list := func(name string) string { return inOrder(strings.Split(at(name), ", ")) }
	return told{
		line: at("line"), size: at("size"), rows: at("rows"), made: at("sts"), change: at("change"), running: at("running"),
		kinds: list("by kind"), yarn: list("yarn"), stated: list("stated"), agrees: at("agrees"), side: at("side"),
	}
}

// perSizeTold is a line for each size that it holds for.
func perSizeTold(r told, sizes []string) []told {
	if r.size != "all" {
		return []told{r}
	}
	var out []told
	for _, size := range sizes {
		r.size = size
		out = append(out, r)
	}
	return out
}

func toldByCSV(t *testing.T, text string) []told {
	require.Equal(t, strings.Count(text, "\n"), strings.Count(text, "\r\n"), "lines end as RFC 4180 has it")
	lines, err := csv.NewReader(strings.NewReader(text)).ReadAll()
	require.NoError(t, err)
	var out []told
	for _, line := range lines[1:] {
		out = append(out, toldBy(lines[0], line))
	}
	return out
}

func toldByMarkdown(text string, sizes []string) []told {
	var out []told
	var head []string
	for line := range strings.Lines(text) {
		if !strings.HasPrefix(line, "|") {
			head = nil
			continue
		}
		cells := strings.Split(strings.Trim(strings.ReplaceAll(line, `\|`, "¦"), "|\n"), "|")
		for i := range cells {
			cells[i] = strings.TrimSpace(cells[i])
		}
		switch {
		case head == nil:
			head = cells
		case !strings.HasPrefix(cells[0], "---"):
			out = append(out, perSizeTold(toldBy(head, cells), sizes)...)
		}
	}
	return out
}

// toldByText reads the table that stands in columns: numbers end where their
// heading ends, words begin where it begins, and a list may go on in lines
// that hold nothing else. The words of a row without a label are passed over.
func toldByText(text string, sizes []string, unlabelled map[string]bool) []told {
	var out []told
	var columns []textColumn
	var head []string
	var rows [][]string
	number := ""
	for line := range strings.Lines(text) {
		switch {
		case strings.HasPrefix(line, "  line  row"):
			columns, head = columnsOf(line)
			continue
		case strings.HasPrefix(line, "  total"):
			for _, cells := range rows {
				out = append(out, perSizeTold(toldBy(head, cells), sizes)...)
			}
			columns, rows = nil, nil
		}
		if columns == nil || strings.ContainsAny(line, "├└│") || noteLine.MatchString(line) {
			continue
		}
		cells := cellsUnder(columns, line)
		if cells[0] != "" {
			number = cells[0]
			if unlabelled[number] {
				continue
			}
		}
		if cells[slices.Index(head, "running")] != "" {
			cells[0] = number
			rows = append(rows, cells)
			continue
		}
		for i, cell := range cells {
			last := rows[len(rows)-1]
			last[i] = strings.TrimSpace(last[i] + " " + cell)
		}
	}
	return out
}

var noteLine = regexp.MustCompile(`^ +(stem  |not understood: |shape: |branches in size )`)

type textColumn struct {
	start, end int // in characters
	right      bool
}

func columnsOf(line string) (columns []textColumn, head []string) {
	for _, at := range regexp.MustCompile(`\S+( \S+)*`).FindAllStringIndex(line, -1) {
		name := line[at[0]:at[1]]
		right := slices.Contains([]string{"line", "rows", "sts", "change", "running"}, name)
		columns, head = append(columns, textColumn{at[0], at[1], right}), append(head, name)
	}
	return columns, head
}

func cellsUnder(columns []textColumn, line string) []string {
	letters := []rune(line + strings.Repeat(" ", 200))
	cells := make([]string, len(columns))
	for i, c := range columns {
		for at := c.end - 1; c.right && letters[at] != ' '; at-- {
			cells[i] = string(letters[at]) + cells[i]
			letters[at] = ' '
		}
	}
	end := len(letters)
	for i, c := range slices.Backward(columns) {
		if !c.right {
			cells[i] = strings.TrimSpace(string(letters[c.start:end]))
			end = c.start
		}
	}
	return cells
}
