package lsp

import (
	"slices"
	"strconv"

	"go.lsp.dev/protocol"

	"stitchproof/lang/role"
	"stitchproof/lang/source"
)

// legend names the protocol's kinds of token that words are shown as, and what
// more is said of them.
var legend = func() protocol.SemanticTokensLegend {
	l := protocol.SemanticTokensLegend{TokenModifiers: []string{
		string(protocol.SemanticTokenModifiersDeclaration), string(protocol.SemanticTokenModifiersDefaultLibrary),
	}}
	for _, t := range tokenTypes[1:] {
		l.TokenTypes = append(l.TokenTypes, string(t))
	}
	return l
}()

// The bits of the legend's modifiers.
const (
	declaration uint32 = 1 << iota
	defaultLibrary
)

// tokenTypes shows each role as what is likest it in a program: a theme made for
// programs then tells them apart.
var tokenTypes = [...]protocol.SemanticTokenTypes{
	role.None:    "",
	role.Comment: protocol.SemanticTokenTypesComment,
	role.Key:     protocol.SemanticTokenTypesProperty,
	role.Value:   protocol.SemanticTokenTypesString,
	role.Heading: protocol.SemanticTokenTypesClass,
	role.Label:   protocol.SemanticTokenTypesMethod,
	role.Stitch:  protocol.SemanticTokenTypesFunction,
	role.Number:  protocol.SemanticTokenTypesNumber,
	role.Place:   protocol.SemanticTokenTypesParameter,
	role.Action:  protocol.SemanticTokenTypesKeyword,
	role.Mark:    protocol.SemanticTokenTypesOperator,
	role.Count:   protocol.SemanticTokenTypesEnumMember,
	role.Branch:  protocol.SemanticTokenTypesVariable,
	role.Yarn:    protocol.SemanticTokenTypesType,
	role.Marker:  protocol.SemanticTokenTypesEvent,
}

// semanticTokens says what each word of the document was read as.
func semanticTokens(v *view, _ *protocol.SemanticTokensParams) *protocol.SemanticTokens {
	data := v.tokens(source.Span{End: v.Text.Len()})
	id, _ := v.memory.remember(data)
	return &protocol.SemanticTokens{ResultID: &id, Data: data}
}

// semanticTokensRange says it of a part.
func semanticTokensRange(v *view, params *protocol.SemanticTokensRangeParams) *protocol.SemanticTokens {
	return &protocol.SemanticTokens{Data: v.tokens(v.span(params.Range))}
}

// semanticTokensDelta says what changed since the client asked before, or all where
// that is not remembered.
func semanticTokensDelta(v *view, params *protocol.SemanticTokensDeltaParams) protocol.SemanticTokensDeltaResult {
	data := v.tokens(source.Span{End: v.Text.Len()})
	id, before := v.memory.remember(data)
	if params.PreviousResultID != strconv.Itoa(before.id) || before.id == 0 {
		return &protocol.SemanticTokens{ResultID: &id, Data: data}
	}
	return &protocol.SemanticTokensDelta{ResultID: &id, Edits: difference(before.answer, data)}
}

// remember keeps tokens and gives their id and what was kept before.
func (m *memory) remember(data []uint32) (string, numbered[[]uint32]) {
	m.mu.Lock()
	defer m.mu.Unlock()
	before := m.tokens
	m.tokens = numbered[[]uint32]{before.id + 1, data}
	return strconv.Itoa(m.tokens.id), before
}

// difference is the one edit that makes before of after, none where they are the
// same. It is of whole tokens.
func difference(before, after []uint32) []protocol.SemanticTokensEdit {
	const size = 5
	head := 0
	for head < min(len(before), len(after)) && slices.Equal(before[head:head+size], after[head:head+size]) {
		head += size
	}
	tail := 0
	for tail < min(len(before), len(after))-head && slices.Equal(before[len(before)-tail-size:len(before)-tail], after[len(after)-tail-size:len(after)-tail]) {
		tail += size
	}
	if head+tail == len(before) && head+tail == len(after) {
		return nil
	}
	return []protocol.SemanticTokensEdit{{
		Start: uint32(head), DeleteCount: uint32(len(before) - head - tail), Data: after[head : len(after)-tail],
	}}
}

// tokens are those of a part of the document as the protocol writes them: each by
// its distance from the one before.
func (v *view) tokens(within source.Span) []uint32 {
	data := []uint32{}
	var last protocol.Position
	for _, w := range role.Of(v.File, v.names()) {
		if !w.Span.Overlaps(within) {
			continue
		}
		r := v.rangeOf(w.Span)
		line, character := r.Start.Line-last.Line, r.Start.Character
		if line == 0 {
			character -= last.Character
		}
		data = append(data, line, character, r.End.Character-r.Start.Character, uint32(w.Role)-1, modifiers(w))
		last = r.Start
	}
	return data
}

func modifiers(w role.Word) uint32 {
	var bits uint32
	if w.Declares {
		bits |= declaration
	}
	if w.Role == role.Stitch && !w.Own {
		bits |= defaultLibrary
	}
	return bits
}
