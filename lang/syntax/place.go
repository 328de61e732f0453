package syntax

import (
	"slices"
	"strings"

	"stitchproof/lang/stitch"
)

func (r *reader) onePlace(g *gWhere) Place {
	if g == nil {
		return Place{}
	}
	return r.place(g)
}

// firstPlace reads phrases that name one place between them.
func (r *reader) firstPlace(gs []*gWhere) Place {
	places := r.places(gs)
	if len(places) != 1 {
		r.refused = true
		return Place{}
	}
	return places[0]
}

// places reads every place a clause names. `in sp between shells` is one
// place said in two phrases.
func (r *reader) places(gs []*gWhere) []Place {
	if len(gs) == 1 && gs[0].Prep == "across" && alongSide(gs[0].Mods) {
		p := r.place(gs[0])
		p.Noun = Noun{Kind: NounEdge, Word: "side"} // `20 sc along the side`
		return []Place{p}
	}
	var out []Place
	for _, g := range gs {
		p := r.place(g)
		if n := len(out); n > 0 {
			last := &out[n-1]
			switch {
			case last.Empty() && last.Loop == BothLoops && g.Prep == "across" && alongSide(g.Mods):
				last.Noun = Noun{Kind: NounEdge, Word: "side"} // `22 sc evenly up the side`
				continue
			case last.Empty() && last.Loop == BothLoops && !p.Empty():
				*last = p // `evenly along side edge`
				continue
			case p.Noun.Kind == NounOther && last.Noun.Kind == NounChain:
				last.Of = &Place{Noun: p.Noun} // `in next 8 ch along opposite side`
				continue
			case g.Prep == "at" && p.Noun.Kind == NounBase && p.Of != nil && (p.Of.Noun.Kind == NounChain || p.Of.Noun.Kind == NounTurning):
				last.Pick = PickSame // `in st at base of ch-3`
				continue
			case g.Prep == "at" && p.Noun.Kind == NounBase && p.Of == nil && p.Pick == PickNext && last.Pick == PickNext && last.Noun.Kind == NounAny:
				last.Pick = PickSame // `in the st at its base`: that of the chain just made
				continue
			case g.Prep == "at" && p.Noun.Kind == NounBase:
				continue // `in ch at base of dc`
			case g.Prep == "at" && last.Noun.Kind == NounSpace && p.Noun.Kind == NounCorner:
				last.Each = last.Each || p.Each // `in ch-2 sp at each corner`
				continue
			case g.Prep == "at" && last.Noun.Kind != NounNone && last.Of == nil && p.Noun.Kind != NounEdge:
				last.Of = &p // `in center sc at tip of next point`
				continue
			case g.Prep == "to" && p.Elsewhere && p.Name != "" && !last.Empty():
				last.Elsewhere, last.Name = true, p.Name // `in next 5 sts through both layers`
				continue
			case g.Prep == "on" && elsewhere(p):
				last.Elsewhere = true // `in next loop on first motif`
				continue
			case (g.Prep == "across" || g.Prep == "around") && p.Empty():
				continue // `along side`
			case p.Loop != BothLoops && p.Empty():
				last.Loop = p.Loop // `sc across in back loop`
				continue
			case g.Prep == "to" && (p.To.Kind == ToNext || p.To.Kind == ToMarker) && last.To.Kind == ToNothing && !last.Number.Written():
				last.To, last.Each = p.To, true
				continue
			case (g.Prep == "" || g.Prep == "in" && (p.Each || p.To.Kind == ToTheEnd) && last.To.Kind == ToNothing) && last.Each && !last.Number.Written() &&
				p.Noun.Kind != NounNone && p.Pick == PickNext && !p.Number.Written():
				last.Also = append(last.Also, p.Noun)
				if p.To.Kind != ToNothing {
					last.To = p.To
				}
				continue
			case p.Noun.Kind == NounOther && g.Prep == "on":
				last.Of = &Place{Noun: p.Noun} // `in each loop on opposite side`
				continue
			case p.Noun.Kind == NounOther && (last.Noun.Kind == NounRowEnd || last.Noun.Kind == NounEdge):
				continue // `in row-ends along other side`
			case p.Noun.Kind == NounRow && !p.Each && p.Pick == PickLast:
				continue // `in next st in last row`: the row below
			case p.Noun.Kind == NounRow && !p.Each && (p.Pick == PickNth || p.Pick == PickFirst):
				last.Row = One(max(p.Nth, 1))
				continue
			case g.Prep == "on" && p.Row.Written() && p.Noun.Kind == NounNone && p.Pick == PickNext && last.Noun.Kind != NounNone && last.Pick != PickRemaining:
				last.Row = p.Row // `in next ch-1 sp on rnd 3`
				continue
			case p.Prep == Between && (last.Noun.Kind == NounSpace || last.Noun.Kind == NounTurning && last.Noun.Length.Written()):
				if p.Pick, p.Each = last.Pick, last.Each; !p.Number.Written() {
					p.Number = last.Number
				}
				*last = p
				continue
			case p.Noun.Kind == NounNone && p.To.Kind != ToNothing && last.To.Kind == ToNothing && !p.Each && !p.Number.Written():
				if last.Pick != PickNext || last.Prep == AroundPost {
					p.Each = true // `in same st and around`
					break
				}
				last.To = p.To
				if last.Noun.Kind != NounEdge && last.Noun.Kind != NounRowEnd {
					last.Each = true
				}
				continue
			case p.Noun.Kind != NounNone && last.Noun.Kind == NounNone && last.To.Kind == ToTheEnd && !last.Each && g.Prep != "":
				// `sc around post`, `sc along edge`: the first phrase only leads to the second
				*last = p
				continue
			}
		}
		out = append(out, p)
	}
	return out
}

// alongSide tells words that only say that stitches go along a side, and how close.
func alongSide(mods []*gMod) bool {
	side := false
	for _, m := range mods {
		side = side || m.Word == "side"
		if m.Word != "side" && m.Word != "evenly" {
			return false
		}
	}
	return side
}

// saysSide tells words that only say along which side row ends lie: `up side`, `down first
// side`.
func saysSide(mods []*gMod) bool {
	side := false
	for _, m := range mods {
		edge := m.Noun != nil && m.Noun.Word == "edge" && m.Noun.Stitch == nil && m.Noun.Space == nil
		side = side || edge || m.Word == "side"
		if !edge && m.Ordinal == nil && m.Word != "side" && m.Word != "remaining" && m.Word != "last" && m.Word != "next" {
			return false
		}
	}
	return side
}

// place reads one phrase that names a place.
func (r *reader) place(g *gWhere) Place {
	p := Place{}
	switch g.Prep {
	case "between":
		p.Prep = Between
	case "under", "over":
		p.Prep = Under
	case "around":
		p.Prep = AroundPost
	}
	if short := beforeMarker(g); short != nil {
		return Place{Each: true, To: ToLimit{Kind: ToMarker, Number: r.num(short)}}
	}
	if left := beforeEnd(g); left != nil {
		return Place{Each: true, To: ToLimit{Kind: ToLastN, Number: r.num(left)}}
	}
	r.mods(&p, g.Mods)
	if g.Prep == "" && alongSide(g.Mods) {
		p.Noun = Noun{Kind: NounEdge, Word: "side"} // `5 sc down side`, `22 sc evenly down the side`
	}
	if g.Prep == "" && p.Noun.Word == "top" && p.Of == nil && p.To.Kind == ToTheEnd {
		p = Place{Noun: Noun{Kind: NounEdge, Word: "top"}} // `9 sc across top`
	}
	if of := p.Of; p.Noun.Kind == NounTip && of != nil && (of.Noun.Kind == NounStitch || of.Noun.Kind == NounAny) && (of.Each || of.Number.Written()) {
		p = *of // `in top of each sc`
	}
	if p.Noun.Kind == NounTurning && p.Noun.Length.Written() && slices.ContainsFunc(g.Mods, func(m *gMod) bool { return m.Word == "next" || m.Word == "each" }) {
		p.Noun.Kind = NounSpace // `in next ch-3` of the row below
	}
	if p.Noun.Kind == NounTurning && p.Noun.Length.Written() && p.Of != nil && isGroupNoun(p.Of.Noun) {
		p.Noun.Kind = NounSpace // `in ch-3 of next shell`
	}
	if p.Noun.Kind == NounChain && p.Number.Written() && p.Pick == PickNext && p.From == FromHere && p.Of == nil && !p.Each && r.theNumber(g.Mods) {
		p.Noun, p.Number = Noun{Kind: NounSpace, Length: p.Number, Word: "ch"}, Num{} // `11 dc into the 5 chain`
	}
	if p.Number.Written() && (p.Pick == PickFirst || p.Pick == PickLast) {
		p.Each = false // `in each of last 2 sts` says no more than `in last 2 sts`
	}
	if p.Noun.Kind == NounOther && p.Pick == PickNext && !p.Number.Written() {
		p.Each, p.To.Kind = true, ToTheEnd
	}
	if p.Noun.Kind == NounRow && p.Each {
		p.Noun.Kind = NounRowEnd // `in each row` along an edge
	}
	if p.Noun.Kind == NounRowEnd && p.Pick == PickNext && !p.Number.Written() {
		p.To.Kind = ToTheEnd // how many there are is said only by `each`
		p.Each = p.Each || p.Of != nil && p.Of.Each
	}
	switch {
	case g.Prep == "to" && (p.Pick == PickLast || p.Pick == PickNth && p.From == FromEnd):
		n := p.Number
		if !n.Written() {
			n = One(max(p.Nth, 1))
		}
		return Place{Each: true, To: ToLimit{Kind: ToLastN, Number: n, Noun: p.Noun}}
	case g.Prep == "to" && p.Noun.Kind == NounMarker:
		return Place{Each: true, To: ToLimit{Kind: ToMarker}}
	case g.Prep == "to" && p.Center && p.Noun.Kind == NounNone:
		return Place{Each: true, To: ToLimit{Kind: ToNext, Noun: Noun{Kind: NounCorner}}} // a shawl has one corner, its middle
	case g.Prep == "to" && (p.Noun.Kind == NounCorner || p.Noun.Kind == NounSpace && p.Pick == PickNext && !p.Number.Written()):
		return Place{Each: true, To: ToLimit{Kind: ToNext, Noun: p.Noun}}
	}
	return p
}

// beforeMarker gives the number of `to 2 sts before marker`, nil for any other place.
func beforeMarker(g *gWhere) *gNum {
	if n := len(g.Mods); g.Prep != "to" || n < 4 || g.Mods[0].Number == nil || g.Mods[2].Word != "before" || g.Mods[n-1].Noun == nil {
		return nil
	}
	if word := g.Mods[len(g.Mods)-1].Noun.Word; word != "marker" && word != "marked" {
		return nil
	}
	return g.Mods[0].Number
}

// beforeEnd gives the number of `to 2 sts before the end`, nil for any other place.
func beforeEnd(g *gWhere) *gNum {
	if len(g.Mods) != 4 || g.Prep != "to" || g.Mods[1].Noun == nil || g.Mods[1].Noun.Word != "st" || g.Mods[2].Word != "before" || g.Mods[3].Word != "end" {
		return nil
	}
	return g.Mods[0].Number
}

// theNumber tells whether a number stands right behind `the`, and what it counts
// right behind it: `the 5 chain`, which is one thing.
func (r *reader) theNumber(mods []*gMod) bool {
	if len(mods) != 2 || mods[0].Number == nil {
		return false
	}
	at := mods[0].Pos.Offset
	return at > 0 && r.tokens[at-1].Written == "the"
}

// isGroupNoun tells what is worked in one place, with chains among it.
func isGroupNoun(n Noun) bool {
	return n.Kind == NounGroup || n.Kind == NounStitch && n.Stitch.Meaning.Is(stitch.Group)
}

// mods applies the words of a place phrase to p, one after the other.
func (r *reader) mods(p *Place, mods []*gMod) {
	for i, m := range mods {
		switch {
		case p.Noun.Kind == NounRowEnd && saysSide(mods[i:]):
			return
		case m.Extent != nil:
			p.To = r.extent(m.Extent)
		case m.Of != nil:
			r.ofNamed(p, m.Of)
		case m.From != nil:
			r.from(p, m.From)
		case m.Below != nil:
			r.below(p, m.Below)
		case m.As != nil:
			switch {
			case p.Pick == PickSame:
			case m.As.Place, m.As.Grown:
				p.Pick, p.Grown = PickSame, m.As.Grown // `in the place of the first 2 dc`, `in the sc that the spray grew from`
			case m.As.Where:
				p.Below = 1
			default:
				r.refused = true
			}
		case m.On != nil:
			p.Elsewhere = true
		case m.OfStem:
			p.Name = "stem"
		case m.Piece != nil:
			r.ofPiece(p, m.Piece)
		case m.By != nil: // `in loop formed by dc`
		case m.AndNext != nil:
			if p.Prep != Between {
				r.refused = true
			}
			r.placeNoun(p, m.AndNext)
			p.Number = One(2) // `between this petal and the next`
		case m.After != nil:
			owner := Place{Pick: PickAny}
			r.placeNoun(&owner, m.After)
			p.Of = &owner
			r.refused = r.refused || owner.Noun.Kind != NounSpace
		case m.Beside != nil: // `in next loop to right of picot` is in the next loop
		case m.Noun != nil:
			r.placeNoun(p, m.Noun)
		case m.Number != nil:
			if i > 0 && mods[i-1].Word == "other" && (p.Noun.Kind == NounOther || i > 1 && mods[i-2].Word == "of") {
				p.Pick, p.Nth, p.Noun = PickRemaining, 0, Noun{} // `in the other 10 sts`, and not in every other
			}
			if p.Number.Written() || p.Noun.Kind != NounNone {
				r.refuse(m.Pos.Offset)
			}
			p.Number = r.num(m.Number)
		case m.Pair != nil:
			if p.Prep != Between || r.ordinal(m.Pair.To) != r.ordinal(m.Pair.From)+1 {
				r.refused = true
			}
			p.Pick, p.Nth = PickNth, r.ordinal(m.Pair.From)
		case m.Ordinal != nil:
			p.Nth = r.ordinal(m.Ordinal)
			p.Pick = PickNth
			if all := r.tokens[m.Ordinal.Pos.Offset].Values; all.PerSize() {
				p.Nths = all
			}
			if p.Nth == 1 {
				p.Pick = PickFirst
			}
		case m.Word == "of":
			if p.Pick == PickLast && !p.Number.Written() && p.Noun.Kind == NounNone && i+1 < len(mods) && mods[i+1].Number != nil {
				r.mods(p, mods[i+2:]) // `last of the 7 ch` is one
				return
			}
			if p.Noun.Kind == NounNone && !p.Center && p.Pick != PickNth {
				continue // `each of next 3 sts`
			}
			owner := &Place{}
			r.mods(owner, mods[i+1:])
			if p.Elsewhere || owner.Pick == PickFirst && elsewhere(*owner) {
				p.Elsewhere = true
				return
			}
			if (p.Pick == PickNth || p.Pick == PickFirst) && owner.Noun.Kind == NounChain && owner.Number.Written() && owner.Pick == PickNext {
				owner.Noun, owner.Number = Noun{Kind: NounTurning, Length: owner.Number}, Num{} // `3rd of 6 ch`
			}
			if p.Noun.Kind == NounSpace && !p.Noun.Length.Written() && owner.Noun.Kind == NounChain && owner.Number.Written() && owner.Pick == PickNext {
				p.Noun.Length = owner.Number // `the loop of 9 chain`
				return
			}
			p.Of = owner
			if p.Noun.Kind == NounTurning && p.Noun.Length.Written() && (owner.Noun.Kind == NounGroup || owner.Noun.Kind == NounStitch) {
				p.Noun.Kind = NounSpace // `in ch-2 of next shell`
			}
			settleOwner(p)
			return
		case m.Word == "odd", m.Word == "even" && i+1 < len(mods) && mods[i+1].Noun != nil:
			p.Each, p.Pick, p.Nth, p.Odd = true, PickNth, 2, m.Word == "odd"
		default:
			r.placeWord(p, m.Word)
		}
	}
}

// ofPiece reads `of the first leg` as a place on another piece. The post of a
// stitch is called a leg by nobody who counts them.
func (r *reader) ofPiece(p *Place, g *gPieceOf) {
	if g.Name == "half" || g.Name == "post" && r.tokens[g.Pos.Offset+1].Written != "leg" {
		r.refuse(g.Pos.Offset)
		return
	}
	p.Elsewhere, p.Name, p.Prep = true, r.pieceName(g), In
	if at := g.Pos.Offset; at > 0 && (r.tokens[at-1].Canon == "around" || r.tokens[at-1].Canon == "across") {
		p.Each = true // `sc around first leg`
	}
}

// pieceName is what a piece is called: a leg is no post there.
func (r *reader) pieceName(g *gPieceOf) string {
	if g.Name == "post" {
		return "leg"
	}
	return g.Name
}

// elsewhere tells a place on another piece from one of this row: `on 1st
// motif`, `of other block`.
func elsewhere(p Place) bool {
	if p.Noun.Kind != NounGroup {
		return false
	}
	switch p.Noun.Word {
	case "motif", "motifs", "block", "blocks", "square", "squares", "hexagon", "hexagons", "medallion", "medallions", "flower", "flowers":
		return true
	}
	return false
}

// settleOwner reads `top of ch-3` and `3rd ch of ch-6` as what they are: the
// stitch that the beginning chain stands for.
func settleOwner(p *Place) {
	if p.Noun.Kind == NounNone {
		p.Noun = p.Of.Noun
	}
}

func (r *reader) placeWord(p *Place, word string) {
	switch word {
	case "next":
		if p.Pick != PickNth && p.Pick != PickFirst {
			p.Pick = PickNext
		}
	case "same", "it":
		p.Pick = PickSame
	case "each", "both":
		p.Each = true
	case "last":
		p.Pick = PickLast
	case "penultimate":
		p.Pick, p.Nth, p.From = PickNth, 2, FromEnd
	case "remaining":
		if p.Pick == PickNext {
			p.Pick = PickRemaining
		}
	case "previous", "skip":
		p.Pick = PickPrevious
	case "any":
		p.Pick = PickAny
	case "center":
		p.Center = true
	case "top":
		if p.Noun.Kind == NounNone {
			p.Noun.Kind = NounTip
		}
	case "even":
		p.To.Kind = ToTheEnd
	case "between": // `in sp between`, whatever it lies between
		p.Prep, p.Noun, r.refused = Between, Noun{}, r.refused || p.Noun.Kind != NounSpace
	case "before": // `in sp before next st`
		if p.Noun.Kind != NounSpace {
			r.refused = true
		}
		p.Prep, p.Noun = Between, Noun{}
	case "post":
		p.Prep = AroundPost
	case "blo", "flo", "thirdloop":
		p.Loop = loopNamed(word)
	case "corresponding":
		p.Elsewhere = true
	case "down the chain":
		p.Pick, p.Noun = PickRemaining, oneChain
	case "other":
		if p.Each && p.Noun.Kind == NounNone {
			p.Pick, p.Nth = PickNth, 2 // `inc in every other st`
			return
		}
		p.Noun.Kind = NounOther
	case "end":
		if p.Pick == PickNext && p.Noun.Kind == NounNone {
			p.Pick = PickLast
		}
	}
}

func (r *reader) ofNamed(p *Place, g *gOf) {
	switch {
	case g.Name != "":
		p.Name = g.Name
	case g.Stem:
		p.Name = "stem"
	case g.RowN != nil:
		p.Row = r.num(g.RowN)
	case g.RowNth != nil:
		p.Row = One(r.ordinal(g.RowNth))
	}
}

func (r *reader) from(p *Place, g *gFrom) {
	switch g.What {
	case "hook":
		p.From = FromHook
		if p.Pick == PickFirst {
			p.Pick, p.Nth = PickNth, 1
		}
	case "beg", "join":
		p.From = FromBeginning
	case "end":
		p.From = FromEnd
	}
	if g.Of != nil {
		r.ofNamed(p, g.Of)
	}
	if g.Row != nil {
		p.From, p.Row = FromEnd, r.num(g.Row) // `end of Row 2`, of which `end of row` is one word elsewhere
	}
}

func (r *reader) below(p *Place, g *gBelow) {
	switch {
	case g.N != nil:
		p.Below = r.num(g.N).At(0)
	case g.RowN != nil:
		p.Row = r.num(g.RowN)
	}
}

func (r *reader) placeNoun(p *Place, g *gNoun) {
	n := r.noun(g)
	if n.Kind == NounCorner && r.tokens[g.Pos.Offset].Written == "corners" && !p.Number.Written() {
		p.Each = true // `3 sc in the corners`
	}
	if n.Kind == NounRowEnd && r.tokens[g.Pos.Offset].Written == "each" {
		p.Each = true // `1 sc in the end of each row`
	}
	if p.Number.Written() && g.Space != nil && n.Kind == NounTurning && !g.Space.Beg {
		r.refused = true // `into the 4 ch 1 sc`
	}
	switch {
	case n.Kind == NounRow && n.Word == "rnd" && p.Each && p.Noun.Kind != NounNone:
		p.To.Kind = ToTheEnd // `2 dc in each dc round`
	case n.Kind == NounTip:
		p.Noun = n
	case p.Noun.Kind == NounNone || p.Noun.Kind == NounTip:
		p.Noun = n
	case p.Noun.Kind == NounOther && n.Kind == NounGroup:
		p.Noun, p.Elsewhere = n, true // `on other block`
	case p.Noun.Kind == NounTurning && n.Kind == NounSpace, n.Kind == NounAny, n.Kind == NounSpace && p.Noun.Kind == NounGroup:
		// `beg ch-3`, `corner st`
		if n.Length.Written() {
			p.Noun.Length = n.Length
		}
	default:
		r.refuse(g.Pos.Offset)
	}
}

func (r *reader) noun(g *gNoun) Noun {
	if g == nil {
		return Noun{}
	}
	if g.Space != nil {
		n := Noun{Kind: NounSpace, Length: r.num(g.Space.N)}
		if g.Space.M != nil {
			n.Length = r.num(g.Space.M)
		}
		if g.Space.Beg || g.Space.Made || g.Space.Sp == "" && (g.Space.N != nil || g.Space.M != nil) {
			n.Kind = NounTurning
		}
		if g.Corner || g.Space.Sp == "corner" {
			n.Word = "corner"
		}
		return n
	}
	if len(g.Named) == 1 && parts[g.Named[0]] {
		if r.passes {
			return anyStitch // `miss the 10 gusset sts`: they come next
		}
		r.refused = true // where they are is not told
	}
	if len(g.Named) > 0 {
		return Noun{Kind: NounStitch, Stitch: StitchRef{Word: strings.Join(g.Named, " ") + " st"}} // `center of next knot st`
	}
	if g.Stitch != nil {
		if r.uncoloured(g.Stitch) {
			r.refused = true
		}
		n := Noun{Kind: NounStitch, Stitch: r.stitch(g.Stitch)}
		if g.Tail == "group" {
			n.Kind, n.Length, n.Word = NounGroup, r.num(g.Of), "group"
		}
		return n
	}
	if g.Colour != nil && r.tokens[g.Colour.Pos.Offset].Written != colourToken {
		r.refused = true
	}
	if g.Tch {
		return Noun{Kind: NounTurning, Length: r.num(g.Length)}
	}
	if g.Word == "" {
		return Noun{Kind: NounCorner}
	}
	if g.Word == "top" && g.Tail == "sp" {
		return Noun{Kind: NounSpace, Word: g.Tail} // `in the tip sp`
	}
	n := Noun{Kind: nouns[g.Word], Word: g.Word}
	if g.Word == "group" {
		n.Word = r.tokens[g.wordAt(r.tokens)].Written
	}
	if g.Corner && n.Kind == NounSpace {
		n.Word = "corner"
	}
	return n
}

// uncoloured tells a stitch with a word before it that is no colour: only the
// colour of a stitch may be said of it (`in next White sc`).
func (r *reader) uncoloured(g *gStitch) bool {
	at := g.Pos.Offset
	for at > 0 && r.tokens[at-1].Kind == Word && r.tokens[at-1].Canon == "" {
		at--
	}
	return at > 0 && r.tokens[at-1].Kind == Name && r.tokens[at-1].Written != colourToken
}

// wordAt is the index of the token that names the thing.
func (g *gNoun) wordAt(tokens []Token) int {
	i := g.Pos.Offset
	for i < len(tokens)-1 && tokens[i].Canon != "group" {
		i++
	}
	return i
}

// nouns gives the kind of each word that names a thing to work into.
var nouns = map[string]NounKind{
	"st": NounAny, "ch": NounChain, "sp": NounSpace, "loop": NounSpace, "ring": NounRing, "corner": NounCorner,
	"rowend": NounRowEnd, "edge": NounEdge, "tch": NounTurning, "foundation": NounChain, "group": NounGroup,
	"marker": NounMarker, "marked": NounMarker, "base": NounBase, "row": NounRow, "rnd": NounRow, "join": NounJoin,
	"top": NounTip, "other side": NounOther,
}
