package lsp

import (
	"strings"

	"go.lsp.dev/protocol"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// documentSymbols lists the pieces and, within them, the rows with their counts.
func documentSymbols(v *view, _ *protocol.DocumentSymbolParams) protocol.DocumentSymbolResult {
	var pieces protocol.DocumentSymbolSlice
	for _, piece := range v.Fabric.Pieces {
		pieces = append(pieces, v.pieceSymbol(piece))
	}
	if v.can.hierarchy {
		return pieces
	}
	return v.flat(pieces)
}

func (v *view) pieceSymbol(piece *fabric.Piece) protocol.DocumentSymbol {
	tree := piece.Tree
	heading := headingOf(tree)
	symbol := protocol.DocumentSymbol{Name: strings.TrimSpace(tree.Name), Kind: protocol.SymbolKindClass}
	for _, row := range piece.Rows {
		symbol.Children = append(symbol.Children, v.rowSymbol(row))
	}
	if symbol.Name == "" {
		symbol.Name = source.Excerpt(v.Text.Slice(heading))
	}
	if tree.Make.Written() {
		symbol.Detail = new("make " + tree.Make.String())
	}
	symbol.Range, symbol.SelectionRange = v.rangeOf(wholePiece(piece)), v.rangeOf(heading)
	return symbol
}

// headingOf is the name of a piece where it has one, else the line that heads it.
func headingOf(piece *syntax.Piece) source.Span {
	if piece.NameSpan.Empty() {
		return piece.Span
	}
	return piece.NameSpan
}

// wholePiece is a piece from its heading to the end of its last row.
func wholePiece(piece *fabric.Piece) source.Span {
	all := piece.Tree.Span
	for _, row := range piece.Rows {
		all = all.Union(row.Tree.Written())
	}
	return all
}

func (v *view) rowSymbol(row *fabric.Row) protocol.DocumentSymbol {
	all := row.Tree.Written()
	head := all
	if !row.Tree.Label.Span.Empty() {
		head = row.Tree.Abs(row.Tree.Label.Span)
	}
	symbol := protocol.DocumentSymbol{
		Name: rowName(row.Tree), Kind: protocol.SymbolKindMethod,
		Range: v.rangeOf(all), SelectionRange: v.rangeOf(head),
	}
	if counts, ok := made(row); ok {
		symbol.Detail = new(sts(counts))
	}
	return symbol
}

// flat lists pieces and rows one after the other, for a client that knows no
// symbols within symbols.
func (v *view) flat(pieces []protocol.DocumentSymbol) protocol.SymbolInformationSlice {
	var list protocol.SymbolInformationSlice
	add := func(symbol *protocol.DocumentSymbol, container *string) {
		list = append(list, protocol.SymbolInformation{
			BaseSymbolInformation: protocol.BaseSymbolInformation{Name: symbol.Name, Kind: symbol.Kind, ContainerName: container},
			Location:              protocol.Location{URI: v.uri, Range: symbol.Range},
		})
	}
	for i := range pieces {
		piece := &pieces[i]
		add(piece, nil)
		for k := range piece.Children {
			row := &piece.Children[k]
			if row.Detail != nil {
				row.Name += ": " + *row.Detail
			}
			add(row, &piece.Name)
		}
	}
	return list
}
