package report

import (
	"bufio"
	"cmp"
	"fmt"
	"io"
	"strings"

	"stitchproof/lang/house"
	"stitchproof/lint"
	"stitchproof/lint/config"
)

type jsonSettings struct {
	Files   []string           `json:"files"` // the nearest first
	Choices []config.Choice    `json:"choices"`
	FailOn  lint.Severity      `json:"failOn"`
	Dialect string             `json:"dialect"`
	Rules   []jsonRuleSettings `json:"rules"`
}

type jsonRuleSettings struct {
	Rule  string     `json:"rule"`
	Level lint.Level `json:"level"`
}

// Settings writes the settings that hold for a file and where each choice comes
// from. It fails only where w does.
func Settings(w io.Writer, files []string, e config.Effective, asJSON bool) error {
	if asJSON {
		out := jsonSettings{Files: append([]string{}, files...), Choices: append([]config.Choice{}, e.Choices...), FailOn: e.FailOn, Dialect: e.Dialect.String()}
		for _, r := range lint.Rules() {
			out.Rules = append(out.Rules, jsonRuleSettings{r.Name, e.Levels.Of(r)})
		}
		return writeJSON(w, out)
	}
	b := bufio.NewWriter(w)
	if len(files) == 0 {
		fmt.Fprintf(b, "no %s holds here\n", config.Name)
	} else {
		fmt.Fprintf(b, "from %s\n", strings.Join(files, ", extending "))
	}
	t := table{columns: []column{{name: "setting"}, {name: "value"}, {name: "from"}}}
	from := map[string]string{}
	for _, c := range e.Choices {
		from[c.Key] = c.From
	}
	add := func(key string, value any) { t.add(key, fmt.Sprint(value), from[key]) }
	add("dialect", e.Dialect)
	add("fail-on", e.FailOn)
	add("style.line-width", e.Style.Width)
	for _, a := range house.Aspects() {
		add("style.ways."+a.Name, cmp.Or(e.Style.Ways[a.Name], "as written"))
	}
	for _, r := range lint.Rules() {
		t.add("rules."+r.Name, e.Levels.Of(r).String(), levelFrom(e, r, from))
	}
	b.WriteByte('\n')
	t.write(b)
	return b.Flush()
}

// levelFrom is where a rule's level comes from: the choice for it, for its
// family or for all.
func levelFrom(e config.Effective, r *lint.Rule, from map[string]string) string {
	name, chosen := e.Levels.Names(r)
	if !chosen {
		return ""
	}
	at, ok := from["rules."+name]
	if !ok {
		at = "the command line"
	}
	if name != r.Name {
		at += ", as " + name
	}
	return at
}
