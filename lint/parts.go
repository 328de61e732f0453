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

// added is what a piece is called that makes another longer: ribbing, a yoke.
var added = phrase.MustCompile(`\b(?:cuffs?|rib(?:bing|bings|s)?|(?:\w*)bands?|collar|hood|welts?|hem|yoke|shoulders?|skirt|peplum|frill)\b`)

// lengthens tells whether a piece may make another longer: it goes on from it, stands under
// the same heading or has such a name.
func (p *Pass) lengthens(piece, other *fabric.Piece) bool {
	name, under := strings.ToLower(piece.Tree.Name), piece.Tree.Under
	return piece.From == other || under != "" && (under == other.Tree.Under || under == other.Tree.Name) || added.MatchString(name)
}
