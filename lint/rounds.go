package lint

import (
	"math"

	"stitchproof/lang/fabric"
	"stitchproof/lang/measure"
	"stitchproof/lang/phrase"
	"stitchproof/lang/stitch"
)

// disc is how a piece that begins in its middle grows: the rounds that grow, in
// one plain stitch each, and what a flat piece would grow by in them.
type disc struct {
	rounds       []*fabric.Row
	grown        float64 // stitches more than in the first round
	flat         float64 // what a flat disc grows by
	turnsUpright bool    // further rounds do not grow: the piece is a vessel or a tube
}

// fewGrowing is how many rounds must grow, after the first, before the growth is
// taken for the shape of the piece; common practice.
const fewGrowing = 3

// discOf follows a piece from its middle outwards in one size, as far as its
// rounds are plain and grow. It is false where they do not tell a shape.
func discOf(piece *fabric.Piece, size int) (d disc, ok bool) {
	before, level := 0, 0
	for _, row := range piece.Rows {
		t := &row.Tallies[size]
		if !t.Works {
			continue
		}
		if n := len(d.rounds); n > 0 && t.Known && t.Made <= before {
			level += row.Repeats[size]
			d.turnsUpright = t.Made < before || level > edging
			if d.turnsUpright {
				break
			}
			continue
		}
		main, plain := plainRound(row, size)
		if !plain || level > 0 || len(d.rounds) == 0 && !startsInRing(t) {
			break
		}
		if len(d.rounds) > 0 {
			d.grown += float64(t.Made - before)
			d.flat += 2 * math.Pi * main.HeightInSC
		}
		d.rounds, before = append(d.rounds, row), t.Made
	}
	return d, len(d.rounds) > fewGrowing
}

// edging is how many rounds that do not grow may border a flat piece.
const edging = 1

// ringful is the most stitches that are worked into a ring.
const ringful = 24

func startsInRing(t *fabric.Tally) bool {
	return t.Made > 0 && t.Made <= ringful && t.Base <= ringful/2
}

// plainRound tells a round of one kind of stitch with no spaces between, and
// that kind.
func plainRound(row *fabric.Row, size int) (*stitch.Stitch, bool) {
	t := &row.Tallies[size]
	if !t.Known || !row.Round || row.Turned || t.Chains > 0 || len(t.Faults) > 0 || t.Agrees() == fabric.Disagrees || row.Repeats[size] != 1 {
		return nil, false
	}
	main := measure.MainStitch(row, size)
	if main == nil || main.Class != stitch.Plain || main.HeightInSC == 0 {
		return nil, false
	}
	of := 0
	for _, part := range t.Parts {
		if m, _ := stitch.Find(part.Name); m.US != nil && (m.US.Plain() == main || m.UK != nil && m.UK.Plain() == main) {
			of += part.N
		}
	}
	return main, of >= t.Made
}

// meantShape are words for things that are no flat disc.
var meantShape = phrase.MustCompile(`\b(?:ruffl|frill|wav[ey]|hyperbolic|coral|lettuce|skirt|flounce|flare|bowl|basket|hats?\b|caps?\b|beanie|beret|tam\b|crown|cups?\b|cupped|cone|balls?\b|toy|amigurumi|doll|bell|dome|cover|pouch|bag|sack|purse|mitt|glove|thumb|sock|slipper|boot|shoe|nest|acorn|egg|head|body|ear|nose|snout|arm|leg|paw|tail|horn|antler|hood|lamp|umbrella|parasol|tree|toadstool|mushroom|berr|bud\b|fruit|cozy|cosy|cloche|helmet|stuff|filling|vase|pot\b|box|lid|cord|cable|curl|petal|flower|rose\b|leaf|leaves|sleeve|yoke|cape|poncho|shawl|jug|bottle)`)

// shapeMeant tells whether the pattern says that the shape is meant.
func shapeMeant(p *Pass) bool { return p.tells(meantShape) }

// shapes reports the pieces whose rounds grow otherwise than flat, once each.
func (p *Pass) shapes(found func(d disc) (message string, ok bool)) {
	for _, piece := range p.Pieces {
		d, ok := discOf(piece, 0)
		if !ok {
			continue
		}
		if message, ok := found(d); ok {
			p.Report(Finding{Span: headSpan(d.rounds[1].Tree), Message: message})
		}
	}
}

// perRound is the mean of a figure over the rounds after the first.
func (d disc) perRound(total float64) string { return trimmed(total / float64(len(d.rounds)-1)) }

// from and to name the first and the last round that grow.
func (d disc) from() string { return rowName(d.rounds[1].Tree) }
func (d disc) to() string   { return rowName(d.rounds[len(d.rounds)-1].Tree) }
