package config

import (
	"fmt"
	"strings"

	"github.com/pelletier/go-toml/v2/unstable"
)

// linesOf tells on which line each key of a file stands: `rules.row-over`,
// `override[1].dialect`. The file is known to be sound.
func linesOf(data []byte) map[string]int {
	var p unstable.Parser
	p.Reset(data)
	w := keyLines{parser: &p, lines: map[string]int{}, count: map[string]int{}}
	table := ""
	for p.NextExpression() {
		e := p.Expression()
		switch e.Kind {
		case unstable.Table:
			table = w.note("", e)
		case unstable.ArrayTable:
			name := w.name("", e)
			table = fmt.Sprintf("%s[%d]", name, w.count[name])
			w.count[name]++
			w.lines[table] = w.line(e)
		case unstable.KeyValue:
			w.pair(table, e)
		}
	}
	return w.lines
}

type keyLines struct {
	parser *unstable.Parser
	lines  map[string]int
	count  map[string]int // of the tables of each array
}

// pair notes a key, and those in its value where that is a table.
func (w *keyLines) pair(table string, n *unstable.Node) {
	key := w.note(table, n)
	value := n.Value()
	if value == nil || value.Kind != unstable.InlineTable {
		return
	}
	for it := value.Children(); it.Next(); {
		w.pair(key, it.Node())
	}
}

func (w *keyLines) note(table string, n *unstable.Node) string {
	key := w.name(table, n)
	w.lines[key] = w.line(n)
	return key
}

// name is the whole key of a node. A key below an array of tables speaks of the
// last of them.
func (w *keyLines) name(table string, n *unstable.Node) string {
	var parts []string
	if table != "" {
		parts = append(parts, table)
	}
	for it := n.Key(); it.Next(); {
		parts = append(parts, string(it.Node().Data))
		if so := strings.Join(parts, "."); w.count[so] > 0 && n.Kind != unstable.ArrayTable {
			parts = []string{fmt.Sprintf("%s[%d]", so, w.count[so]-1)}
		}
	}
	return strings.Join(parts, ".")
}

func (w *keyLines) line(n *unstable.Node) int {
	it := n.Key()
	it.Next()
	return w.parser.Shape(it.Node().Raw).Start.Line
}
