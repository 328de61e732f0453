package lsp

import (
	"encoding/json"
	"slices"
	"strings"

	"go.lsp.dev/protocol"

	"stitchproof/lang/rework"
	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/terms"
	"stitchproof/lint"
)

// fixAll is the kind of the action that makes all safe changes at once.
const fixAll = protocol.CodeActionKindSourceFixAll + ".stitchproof"

// actionKinds are those that are offered.
var actionKinds = []protocol.CodeActionKind{
	protocol.CodeActionKindQuickFix, fixAll, protocol.CodeActionKindRefactorExtract, protocol.CodeActionKindRefactorRewrite,
}

// deed is one thing that can be done to the document.
type deed struct {
	title string
	kind  protocol.CodeActionKind
	about *lint.Finding // that it settles, nil for none
	first bool          // it is the one to take
	edits []source.Edit
	// asked are, in the place of edits, changes that a person has to say yes to one
	// by one.
	asked []*lint.Fix
}

// codeActions offers what can be done at a place: what settles the findings
// there, all that is safe, and other ways to write the same work. While nobody
// asks, and the cursor only moves, other ways are not looked for.
func codeActions(v *view, params *protocol.CodeActionParams) []protocol.CommandOrCodeAction {
	out := []protocol.CommandOrCodeAction{}
	at := v.span(params.Range)
	for _, d := range v.deeds(at, params.Context.Only, params.Context.TriggerKind != protocol.CodeActionTriggerKindAutomatic) {
		out = append(out, v.action(d, at, params.Context.Diagnostics))
	}
	return out
}

// deeds lists what can be done at a place, of the kinds that are asked for.
func (v *view) deeds(at source.Span, only []protocol.CodeActionKind, invoked bool) []deed {
	var out []deed
	if wanted(protocol.CodeActionKindQuickFix, only) {
		out = append(out, v.fixes(at)...)
		out = append(out, v.allowances(at)...)
	}
	if wanted(fixAll, only) {
		if edits := v.allSafe(); len(edits) > 0 {
			out = append(out, deed{title: "make all safe changes", kind: fixAll, edits: edits})
		}
	}
	if invoked && wanted(protocol.CodeActionKindRefactorExtract, only) {
		out = append(out, reworked(protocol.CodeActionKindRefactorExtract, v.pattern().Define(at.Start))...)
	}
	if invoked && wanted(protocol.CodeActionKindRefactorRewrite, only) {
		p := v.pattern()
		out = append(out, reworked(protocol.CodeActionKindRefactorRewrite, slices.Concat(p.Rows(at.Start), p.Units(at.Start), p.WriteCounts(), v.translated()))...)
	}
	return out
}

// wanted tells whether a kind is among those that are asked for, each of which
// stands for all below it; none asks for all.
func wanted(kind protocol.CodeActionKind, only []protocol.CodeActionKind) bool {
	return len(only) == 0 || slices.ContainsFunc(only, func(o protocol.CodeActionKind) bool {
		return o == kind || o == "" || strings.HasPrefix(string(kind), string(o)+".")
	})
}

// fixes are the changes that settle the findings at a place.
func (v *view) fixes(at source.Span) []deed {
	var out []deed
	for i := range v.Findings {
		f := &v.Findings[i]
		if f.Fix == nil || !f.Span.Touches(at) {
			continue
		}
		for k, fix := range append([]lint.Fix{*f.Fix}, f.Alternatives...) {
			out = append(out, deed{
				title: fix.Title, kind: protocol.CodeActionKindQuickFix, about: f,
				first: k == 0 && (fix.Safe || len(f.Alternatives) == 0), edits: fix.Edits,
			})
		}
	}
	if len(out) == 0 || !v.can.annotates {
		return out
	}
	if all := v.together(func(*lint.Fix) bool { return true }); len(all) > 1 {
		out = append(out, deed{title: "go through every change that is suggested", kind: protocol.CodeActionKindQuickFix, asked: all})
	}
	return out
}

// allowances answer the findings at a place in a comment, with the reason for a
// person to fill in.
func (v *view) allowances(at source.Span) []deed {
	var out []deed
	for i := range v.Findings {
		f := &v.Findings[i]
		if !f.Span.Touches(at) {
			continue
		}
		edits := lint.Answer(v.Text, v.Findings[i:i+1], lint.ReasonToCome)
		if len(edits) == 0 {
			continue
		}
		title := "let `" + f.Rule + "` be here, with a reason"
		if f.IsCaution() { // which is not for us to let be
			title = "answer `" + f.Rule + "` with a reason"
		}
		out = append(out, deed{title: title, kind: protocol.CodeActionKindQuickFix, about: f, edits: edits})
	}
	return out
}

// allSafe is every change that cannot alter what a maker makes, as far as they
// leave each other alone.
func (v *view) allSafe() []source.Edit {
	var all []source.Edit
	for _, fix := range v.together(func(f *lint.Fix) bool { return f.Safe }) {
		all = append(all, fix.Edits...)
	}
	return all
}

// together are the first changes of the findings, of those that are wanted, as far
// as they leave each other alone.
func (v *view) together(wanted func(*lint.Fix) bool) []*lint.Fix {
	var all []*lint.Fix
	var taken []source.Edit
	for i := range v.Findings {
		fix := v.Findings[i].Fix
		if fix == nil || !wanted(fix) || slices.ContainsFunc(fix.Edits, func(e source.Edit) bool {
			return slices.ContainsFunc(taken, func(t source.Edit) bool { return t.Span.Overlaps(e.Span) })
		}) {
			continue
		}
		all, taken = append(all, fix), append(taken, fix.Edits...)
	}
	return all
}

// translated is the pattern in the words of the other dialect.
func (v *view) translated() []rework.Change {
	to := v.Fabric.Dialect.Other()
	if v.Fabric.Dialect == stitch.Unsettled {
		return nil
	}
	edits, err := terms.Rewrite(v.File, v.Fabric.Dialect, to)
	if err != nil || len(edits) == 0 {
		return nil
	}
	return []rework.Change{{Title: "write it in " + to.String() + " terms", Edits: edits}}
}

func reworked(kind protocol.CodeActionKind, changes []rework.Change) []deed {
	var out []deed
	for _, c := range changes {
		out = append(out, deed{title: c.Title, kind: kind, edits: c.Edits})
	}
	return out
}

// action is a deed as the client takes it. Where the client asks for the edits
// only of the one that is chosen, they are left for later.
func (v *view) action(d deed, at source.Span, shown []protocol.Diagnostic) *protocol.CodeAction {
	a := &protocol.CodeAction{Title: d.title, Kind: new(d.kind)}
	if d.first && v.can.acts.prefers {
		a.IsPreferred = new(true)
	}
	if d.about != nil {
		a.Diagnostics = v.shownAs(d.about, shown)
	}
	if v.can.acts.resolves {
		a.Data, _ = json.Marshal(choice{keepsake{URI: string(v.uri)}, v.version, at, d.kind, d.title})
		return a
	}
	a.Edit = v.doing(d)
	return a
}

// doing is the edits of a deed. Whoever has picked a change by its title is not
// asked again; of many at once, about each.
func (v *view) doing(d deed) *protocol.WorkspaceEdit {
	if len(d.asked) > 0 {
		return v.asking(d.asked)
	}
	return v.edit(d.edits)
}

// shownAs is the diagnostic that a client shows a finding as.
func (v *view) shownAs(f *lint.Finding, shown []protocol.Diagnostic) []protocol.Diagnostic {
	for _, d := range shown {
		if d.Code == protocol.String(f.Rule) && v.span(d.Range) == f.Span {
			return []protocol.Diagnostic{d}
		}
	}
	return []protocol.Diagnostic{v.diagnostic(f)}
}

// choice is what an action carries so that its edits can be told when it is chosen.
type choice struct {
	keepsake
	Version int32
	At      source.Span
	Kind    protocol.CodeActionKind
	Title   string
}

// codeActionResolve gives the edits of an action that was chosen.
func codeActionResolve(v *view, a *protocol.CodeAction) (*protocol.CodeAction, error) {
	var c choice
	if err := json.Unmarshal(a.Data, &c); err != nil {
		return nil, refusal(err)
	}
	if c.Version != v.version {
		return nil, protocol.ErrContentModified
	}
	for _, d := range v.deeds(c.At, []protocol.CodeActionKind{c.Kind}, true) {
		if d.title == c.Title {
			a.Edit = v.doing(d)
			return a, nil
		}
	}
	return nil, protocol.ErrContentModified
}

// acting is what the client can do with actions.
type acting struct{ literals, prefers, resolves bool }

func actingOf(c *protocol.CodeActionClientCapabilities) acting {
	return acting{
		literals: len(c.CodeActionLiteralSupport.CodeActionKind.ValueSet) > 0, prefers: is(c.IsPreferredSupport),
		resolves: is(c.DataSupport) && slices.Contains(c.ResolveSupport.Properties, "edit"),
	}
}

// actionOptions offer actions, with their kinds where the client knows any.
func actionOptions(can abilities) protocol.CodeActionProvider {
	if !can.acts.literals {
		return protocol.Boolean(true)
	}
	return &protocol.CodeActionOptions{CodeActionKinds: actionKinds, ResolveProvider: new(can.acts.resolves)}
}
