package house

import (
	"strings"

	"stitchproof/lang/syntax"
)

// counts is how a row states what it comes to.
var counts = Aspect{Name: "count", About: "stating a count", Ways: []string{"(24 sts)", "[24 sts]", "— 24 sts"}, find: (*reader).counts}

func (r *reader) counts() {
	clauses := r.row.Tree.Clauses
	if len(clauses) == 0 {
		return
	}
	last := clauses[len(clauses)-1]
	if _, ok := last.Node.(*syntax.Total); !ok {
		return
	}
	inner, ok := unwrapped(r.row.Tree.Source(last.Span))
	if !ok {
		return
	}
	r.use(last.Span, map[string][]rewriting{
		"(24 sts)": {{last.Span, "(" + inner + ")"}},
		"[24 sts]": {{last.Span, "[" + inner + "]"}},
		"— 24 sts": {{last.Span, "— " + inner}},
	})
}

// unwrapped takes the brackets or the dash off a stated count. It fails for one
// that is written in another way, such as a sentence.
func unwrapped(text string) (string, bool) {
	for _, pair := range [...]string{"()", "[]", "{}"} {
		if strings.HasPrefix(text, pair[:1]) && strings.HasSuffix(text, pair[1:]) {
			return strings.TrimSpace(text[1 : len(text)-1]), true
		}
	}
	for _, dash := range [...]string{"—", "–", "--", "-", "="} {
		if inner, ok := strings.CutPrefix(text, dash); ok {
			return strings.TrimSpace(inner), true
		}
	}
	return "", false
}

func lower(s string) string { return strings.ToLower(strings.ReplaceAll(s, "-", " ")) }
