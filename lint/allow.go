package lint

import (
	"slices"
	"sort"
	"strings"

	"stitchproof/lang/nearest"
	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// A writer answers findings that are as they should be in comments:
//
//	Rnd 3: … (16 sts) // allow count-mismatch: the last two are left for the stalk
//	// allow count-missing, turn-missing: as the old leaflet has it
//	// allow-begin count-missing: the chart gives the counts … // allow-end
//	// allow-file tail-missing: all ends are woven in as you go

// allowance is one such comment.
type allowance struct {
	*syntax.Comment
	kind   allowKind
	names  []allowedRule
	reason string
	reach  source.Span // what it holds for
	ended  bool        // of one that begins a stretch
}

// allowKind is how far an allowance reaches.
type allowKind string

const (
	allowHere  allowKind = "allow"       // for the instruction whose line it ends, else for the next one
	allowBegin allowKind = "allow-begin" // from here
	allowEnd   allowKind = "allow-end"   // to here
	allowFile  allowKind = "allow-file"  // everywhere
)

// allowedRule is a rule as an allowance names it.
type allowedRule struct {
	name string
	span source.Span
	used bool // it answers a finding
}

// allowances are those of a file.
type allowances struct {
	all     []*allowance
	known   []string         // the names of all rules
	running map[string]*Rule // the rules that were run, by name
}

func allowancesOf(f *syntax.File, known []string) *allowances {
	out := &allowances{known: known, running: map[string]*Rule{}}
	for _, c := range f.Comments {
		if a := out.read(f.Text, c); a != nil {
			out.all = append(out.all, a)
		}
	}
	out.reach(f)
	return out
}

var (
	allowWords = phrase.MustCompile(`^//\s*(allow(?:-[a-z]+)?)(\s[^:]*)?(?::\s*(.*))?$`)
	allowName  = phrase.MustCompile(`[^\s,]+`)
)

// read reads a comment, nil where it is a writer's own: `// allow extra yarn for
// the fringe` names no rule.
func (as *allowances) read(t *source.Text, c *syntax.Comment) *allowance {
	written := t.Slice(c.Span)
	lead := strings.Index(written, "//")
	m := allowWords.FindStringSubmatchIndex(written[lead:])
	if m == nil {
		return nil
	}
	at := func(group int) (string, source.Span) {
		if m[2*group] < 0 {
			return "", source.At(c.Span.End)
		}
		s := source.Span{Start: m[2*group], End: m[2*group+1]}.Shift(c.Span.Start + lead)
		return t.Slice(s), s
	}
	kind, _ := at(1)
	list, span := at(2)
	reason, _ := at(3)
	a := &allowance{Comment: c, kind: allowKind(kind), reason: strings.TrimSpace(reason)}
	if a.reason == ReasonToCome {
		a.reason = ""
	}
	meant := a.kind != allowHere
	for _, n := range allowName.FindAllStringIndex(list, -1) {
		name := allowedRule{name: list[n[0]:n[1]], span: source.Span{Start: n[0], End: n[1]}.Shift(span.Start)}
		_, near := nearest.To(name.name, as.known)
		meant = meant || near || strings.Contains(name.name, "-")
		a.names = append(a.names, name)
	}
	if !meant || !slices.Contains([]allowKind{allowHere, allowBegin, allowEnd, allowFile}, a.kind) {
		return nil
	}
	return a
}

// reach finds what each allowance holds for.
func (as *allowances) reach(f *syntax.File) {
	if len(as.all) == 0 {
		return
	}
	parts := instructions(f)
	for i, a := range as.all {
		switch a.kind {
		case allowHere:
			a.reach = a.instruction(parts)
		case allowFile:
			a.reach = source.Span{End: f.Text.Len()}
		case allowBegin:
			a.reach = source.Span{Start: a.Span.Start, End: as.end(i, f.Text.Len())}
		}
	}
}

// part is a part of a file that is no comment, with the lines it stands in.
type part struct{ span, lines source.Span }

// instructions are the parts of a file that an allowance may stand in or before,
// in their order.
func instructions(f *syntax.File) []part {
	comments := map[source.Span]bool{}
	for _, c := range f.Comments {
		comments[c.Span] = true
	}
	parts := f.Parts()
	out := make([]part, 0, len(parts))
	for _, span := range parts {
		if !comments[span] {
			out = append(out, part{span, f.Text.LineWithEnd(f.Text.LineOf(span.Start)).Union(f.Text.LineWithEnd(f.Text.LineOf(span.End)))})
		}
	}
	return out
}

// instruction is the lines of the part of the file that an allowance stands in,
// or before.
func (a *allowance) instruction(parts []part) source.Span {
	i := sort.Search(len(parts), func(i int) bool {
		if a.Ends {
			return parts[i].lines.End >= a.Span.End
		}
		return parts[i].span.Start > a.Span.Start
	})
	if i == len(parts) || a.Ends && !parts[i].lines.Covers(a.Span) {
		return source.Span{}
	}
	return parts[i].lines
}

// end is where the stretch ends that allowance i begins: at the next end that
// names its rules, or none. Both are marked as paired.
func (as *allowances) end(i, last int) int {
	for _, e := range as.all[i+1:] {
		if e.kind == allowEnd && e.endsAll(as.all[i]) {
			e.ended, as.all[i].ended = true, true
			return e.Span.Start
		}
	}
	return last
}

// endsAll tells whether an end names every rule of a beginning, or none at all.
func (a *allowance) endsAll(begin *allowance) bool {
	if len(a.names) == 0 {
		return true
	}
	return !slices.ContainsFunc(begin.names, func(n allowedRule) bool {
		return !slices.ContainsFunc(a.names, func(m allowedRule) bool { return m.name == n.name })
	})
}

// ran notes that a rule was run: of a rule that was not, nobody can say that it
// would have found nothing.
func (as *allowances) ran(r *Rule) { as.running[r.Name] = r }

// ReasonToCome stands where a writer is to put the reason of an answer, and is none.
const ReasonToCome = "the reason"

// filter takes out the findings that are answered, a caution only with a reason.
func (as *allowances) filter(t *source.Text, found []Finding) []Finding {
	return slices.DeleteFunc(found, func(f Finding) bool {
		answered := false
		for _, a := range as.all {
			for i := range a.names {
				if n := &a.names[i]; n.name == f.Rule && f.Rule != InternalFailure && a.holdsAt(f.Span.Start) {
					n.used = true
					answered = answered || a.reason != "" || !f.IsCaution()
				}
			}
		}
		return answered
	})
}

// holdsAt tells whether an allowance reaches a place. The end of the file
// belongs to its last line.
func (a *allowance) holdsAt(offset int) bool {
	return a.reach.Contains(offset) || offset == a.reach.End && !a.reach.Empty()
}

// without is the fix that takes rule i out of an allowance, and the whole
// allowance where it names no other.
func (p *Pass) without(a *allowance, i int) *Fix {
	if len(a.names) > 1 {
		cut := source.Span{Start: a.names[i].span.Start}
		if i+1 < len(a.names) {
			cut.End = a.names[i+1].span.Start
		} else {
			cut = source.Span{Start: a.names[i-1].span.End, End: a.names[i].span.End}
		}
		return &Fix{Title: "take `" + a.names[i].name + "` out", Safe: true, Edits: []source.Edit{{Span: cut}}}
	}
	return p.withoutComment(a)
}

// withoutComment is the fix that takes a whole allowance out, with its line where
// it has one to itself.
func (p *Pass) withoutComment(a *allowance) *Fix {
	cut := a.Span
	if a.Ends {
		cut.Start -= trailingBlanks(p.File.Text.Slice(source.Span{End: cut.Start}))
	} else {
		line := p.File.Text.LineOf(cut.Start)
		cut.End = p.File.Text.LineWithEnd(line).End
	}
	return &Fix{Title: "take the comment out", Safe: true, Edits: []source.Edit{{Span: cut}}}
}

func trailingBlanks(s string) int { return len(s) - len(strings.TrimRight(s, " \t")) }
