package lsp

import (
	"strings"

	"go.lsp.dev/protocol"

	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// signatureHelp tells, while a clause is written, of the stitch that it has come to:
// how it is made, and that what comes next is where it goes.
func signatureHelp(v *view, params *protocol.SignatureHelpParams) *protocol.SignatureHelp {
	row, t := v.stitchBefore(v.offset(params.Position))
	if row == nil || !goesInOnePlace(t.Stitch.In(v.Fabric.Dialect)) {
		return nil
	}
	word := row.Source(t.Span)
	where := "next st"
	return &protocol.SignatureHelp{Signatures: []protocol.SignatureInformation{{
		Label:         "2 " + word + " in " + where,
		Documentation: v.stitchCard(word, t.Stitch).markup(v.can.signs),
		Parameters: []protocol.ParameterInformation{
			{Label: protocol.String("2"), Documentation: protocol.String("how many go in one place; one where none is said")},
			{Label: protocol.String(where), Documentation: protocol.String("where they go: next st, next 3 sts, each st across, next ch-2 sp, same st")},
		},
	}}, ActiveParameter: protocol.NewNullable[uint32](1)}
}

// goesInOnePlace tells of a stitch, nil for one that only the pattern knows, whether
// how often it is worked and where can both be said of it.
func goesInOnePlace(k *stitch.Stitch) bool {
	return k == nil || k.Class != stitch.Chain && k.Uses == 1 && k.Makes == 1
}

// stitchBefore is the last stitch before a place in the instruction that is written
// there, where its clause has not ended yet; nil for none.
func (v *view) stitchBefore(at int) (*syntax.Row, syntax.Token) {
	var row *syntax.Row
	for r := range v.Fabric.Rows() {
		if r.Tree.At <= at {
			row = r.Tree
		}
	}
	if row == nil {
		return nil, syntax.Token{}
	}
	for i := len(row.Tokens) - 1; i >= 0; i-- {
		t := row.Tokens[i]
		end := row.At + t.Span.End
		if t.Kind == syntax.Stitch && end < at {
			if since := v.Text.Slice(source.Span{Start: end, End: at}); strings.ContainsAny(since, ",;.:()[]{}*\r\n") {
				return nil, syntax.Token{}
			}
			return row, t
		}
	}
	return nil, syntax.Token{}
}

// signatureOptions offer it behind the space after a stitch.
func signatureOptions() *protocol.SignatureHelpOptions {
	return &protocol.SignatureHelpOptions{TriggerCharacters: []string{" "}}
}
