package lint

import (
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/measure"
	"stitchproof/lang/phrase"
)

// beside is what a piece is called that is no part of the size of another, but hangs on it
// or is made of it: a loop, a tie, the sewing up.
var beside = phrase.MustCompile(`\b(?:loops?|hangers?|ties?|cords?|strings?|straps?|drawstrings?|pompoms?|pom-poms?|tassels?|fringes?|finishing|assembly|making up|blocking|joining)\b`)

// mainPiece is the one piece of a pattern that has nothing but edgings, loops and the like
// beside it, nil where there are several. Names alone tell: see sayings.
func (p *Pass) mainPiece() *fabric.Piece {
	if all := p.Fabric.Pieces; len(all) == 1 {
		return all[0]
	}
	var main *fabric.Piece
	for _, piece := range p.Fabric.Pieces {
		if name := piece.Tree.Name; measure.IsEdging(name) || beside.MatchString(strings.ToLower(name)) {
			continue
		}
		if main != nil {
			return nil
		}
		main = piece
	}
	return main
}
