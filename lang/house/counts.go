package house

import (
	"strings"

	"stitchproof/lang/source"
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
	span := r.withDash(last.Span)
	inner, ok := unwrapped(r.row.Tree.Source(span))
	if !ok {
		return
	}
	r.use(span, "("+inner+")", "["+inner+"]", "— "+inner)
}

// withDash is a span with the dash before it, where there is one.
func (r *reader) withDash(span source.Span) source.Span {
	for _, t := range r.row.Tree.Tokens {
		if t.Span.End > span.Start {
			break
		}
		if t.Kind == syntax.Dash && strings.TrimSpace(r.row.Tree.Source(source.Span{Start: t.Span.End, End: span.Start})) == "" {
			return source.Span{Start: t.Span.Start, End: span.End}
		}
	}
	return span
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
