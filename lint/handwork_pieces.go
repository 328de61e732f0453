package lint

import (
	"regexp"
	"slices"
	"strconv"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// piecesThere tells of pieces that are put together and that nobody makes: a left wing where
// there is a right one, the fourth panel of three, ears of a toy that has none.
func (p *Pass) piecesThere() {
	kinds := p.kinds()
	for s, all := range assembliesIn.in(p) {
		for _, a := range all {
			if a.labelled {
				continue
			}
			for _, k := range kinds {
				p.oneOfKind(k, a.text, s.abs(a.at).Start)
			}
			p.partOfToy(a.text, s.abs(a.at).Start)
		}
	}
}

// telling is how the pieces of one kind are told apart.
type telling uint8

const (
	unlike telling = iota
	bySide
	byOrder
	byNumber
	byLetter
)

// sideWords and orderWords stand before the kind.
var (
	sideWords  = []string{"left", "right"}
	orderWords = []string{"first", "second", "third", "fourth", "fifth", "sixth"}
)

// kind is the pieces of one kind: wings of which one is the right one, squares by numbers.
type kind struct {
	noun    string
	telling telling
	which   []string // those that there are, in the words of the telling
	pieces  []*syntax.Piece
	// called takes what is called one of the kind: its first group, or the second, is which.
	called *regexp.Regexp
}

// tellingOf is what a name tells of its piece: the kind, and which one of it.
func tellingOf(name string) (noun string, by telling, which string) {
	fields := strings.Fields(plainText(bareName(name)))
	n := len(fields)
	if n < 2 {
		return strings.Join(fields, " "), unlike, ""
	}
	switch first, last := fields[0], fields[n-1]; {
	case slices.Contains(sideWords, first):
		return strings.Join(fields[1:], " "), bySide, first
	case slices.Contains(orderWords, first):
		return strings.Join(fields[1:], " "), byOrder, first
	case isDigit(last[0]):
		return strings.Join(fields[:n-1], " "), byNumber, last
	case len(last) == 1:
		return strings.Join(fields[:n-1], " "), byLetter, last
	}
	return strings.Join(fields, " "), unlike, ""
}

// kinds are those whose pieces are all told apart in the same way, and those of which one
// piece is made so many times.
func (p *Pass) kinds() []kind {
	of := map[string]*kind{}
	var order []string
	mixed := map[string]bool{}
	for _, piece := range p.File.Pieces {
		noun, by, which := tellingOf(piece.Name)
		if noun == "" {
			continue
		}
		k := of[noun]
		if k == nil {
			k = &kind{noun: noun, telling: by}
			of[noun] = k
			order = append(order, noun)
		}
		mixed[noun] = mixed[noun] || k.telling != by || by == unlike && len(k.pieces) > 0 || by != unlike && madeOf(piece) > 1
		k.which, k.pieces = append(k.which, which), append(k.pieces, piece)
	}
	var out []kind
	for _, noun := range order {
		k := of[noun]
		if k.telling == unlike && madeOf(k.pieces[0]) == 0 || mixed[noun] {
			continue
		}
		k.called = regexp.MustCompile(k.words())
		out = append(out, *k)
	}
	return out
}

// words is the expression of what is called one of the kind.
func (k *kind) words() string {
	noun, orders := regexp.QuoteMeta(k.noun), strings.Join(orderWords, "|")
	switch k.telling {
	case bySide:
		return `\b(?:the|your) (left|right) ` + noun + `\b`
	case byOrder:
		return `\b(?:the|your) (` + orders + `) ` + noun + `\b`
	case byLetter:
		return `\b` + noun + ` ([b-z])\b`
	}
	return `\b` + noun + ` (\d{1,2})\b|\b(?:the|your) (` + orders + `) ` + noun + `\b`
}

// there tells whether one of the kind is made, or may be: one is known not to be where it
// comes next after all of those from the first on.
func (k *kind) there(which string) bool {
	switch k.telling {
	case bySide:
		return slices.Contains(k.which, which) || placeNoun.MatchString(k.noun)
	case unlike:
		return place(which) <= madeOf(k.pieces[0])
	}
	for n := range k.pieces {
		if !slices.ContainsFunc(k.which, func(w string) bool { return place(w) == n+1 }) {
			return true
		}
	}
	return place(which) <= len(k.pieces)
}

// place is which one a word tells: 2 for `2`, `b` and `second`.
func place(which string) int {
	if n, err := strconv.Atoi(which); err == nil {
		return n
	}
	if len(which) == 1 {
		return int(which[0]-'a') + 1
	}
	return slices.Index(orderWords, which) + 1
}

// placeNoun is what a piece may be called after its place in a garment, where the other side
// is part of another piece.
var placeNoun = phrase.MustCompile(`\b(?:shoulder|neck|neckline|side|edge|armhole|half|front|back|top|bottom)$`)

var (
	// afterNumber follows a number that counts something else: `square 4 cm from the edge`.
	afterNumber = phrase.MustCompile(`^(?: ?(?:cm|mm|in|inch|inches|sts?|stitches|times|rows?|rnds?|more|further|apart)\b|["”″.]?\d|/)`)
	// makesOther tells that another piece is made like one.
	makesOther = phrase.MustCompile(`\b(?:revers\w*|mirror\w*|another|other|same way|again|twice|both|(?:make|work) (?:two|2))\b`)
)

// oneOfKind tells of the first in a sentence that is called one of a kind and is not made. at
// is where the sentence begins.
func (p *Pass) oneOfKind(k kind, sentence string, at int) {
	for _, m := range k.called.FindAllStringSubmatchIndex(sentence, -1) {
		from := 2
		if m[from] < 0 {
			from = 4
		}
		which := sentence[m[from]:m[from+1]]
		if k.there(which) || isDigit(which[0]) && (which == "0" || afterNumber.MatchString(sentence[m[1]:])) {
			continue
		}
		said := strings.TrimPrefix(strings.TrimPrefix(sentence[m[0]:m[1]], "the "), "your ")
		elsewhere := `\b` + regexp.QuoteMeta(said) + `\b`
		if k.telling == bySide {
			elsewhere += `|\b(?:the|your|for|on) ` + which + `\b|\b` + which + ` (?:one|side|hand)\b`
		} else {
			elsewhere += `|\b(?:` + strings.Join(slices.DeleteFunc(pluralForms(k.noun), func(form string) bool { return form == k.noun }), "|") + `)\b`
		}
		if k.telling != unlike && slices.ContainsFunc(k.pieces, func(piece *syntax.Piece) bool { return makesOther.MatchString(p.wordsOf(&fabric.Piece{Tree: piece})) }) || p.toldBesides(regexp.MustCompile(elsewhere)) {
			continue
		}
		f := Finding{
			Span:    source.Span{Start: at + m[1] - len(said), End: at + m[1]},
			Message: "no piece is called " + quoted(said),
		}
		if k.telling == unlike {
			f.Message = quoted(said) + " is not made: " + strconv.Itoa(madeOf(k.pieces[0])) + " of " + quoted(k.pieces[0].Name) + " are"
		}
		for _, piece := range k.pieces {
			f.Related = append(f.Related, Related{piece.Span, "this one is made"})
		}
		p.Report(f)
		return
	}
}

// sewnParts are what a toy, a flower or a garment has sewn to it and that is always crocheted
// where a pattern makes pieces, in any number.
var sewnParts = phrase.MustCompile(`^(?:ears?|arms?|legs?|paws?|wings?|tails?|head|body|fins?|horns?|antlers?|muzzle|snout|hoof|hooves|f(?:oo|ee)t|mane|spines?|leaf|leaves|petals?|stalks?|calyx|sepals?|sleeves?|collar|hood|pockets?|cuffs?|straps?)$`)

// notMade tells of things to sew on that are bought, cut or stitched.
var notMade = phrase.MustCompile(`\b(?:felt|fabric|leather|bought|purchased|plastic|safety|embroider\w*|seams?|opening|holes?)\b`)

// partOfToy tells of the first part that a sentence sews to a piece and that is made nowhere.
func (p *Pass) partOfToy(sentence string, at int) {
	if notMade.MatchString(sentence) {
		return
	}
	var missing []string
	there := false
	for _, thing := range sewnOn(sentence) {
		bare := article.ReplaceAllString(strings.TrimSpace(thing), "")
		switch {
		case p.piecesAt(bare) != nil:
			there = true
		case sewnParts.MatchString(bare) && !slices.ContainsFunc(p.File.Pieces, func(piece *syntax.Piece) bool { return sameKind([]string{bare}, piece.Name) }):
			missing = append(missing, bare)
		}
	}
	there = there || slices.ContainsFunc(goal.FindAllStringSubmatchIndex(sentence, -1), func(m []int) bool { return p.piecesAt(sentence[m[2]:]) != nil })
	if !there || missing == nil || !p.allPutTogether() {
		return
	}
	for _, part := range missing {
		forms := strings.Join(pluralForms(strings.TrimSuffix(part, "s")), "|")
		m := regexp.MustCompile(`\b` + part + `\b`).FindStringIndex(sentence)
		if m == nil || strings.HasPrefix(part, "tail") && !tailTo.MatchString(sentence[m[0]:]) || p.toldBesides(regexp.MustCompile(`\b(?:`+forms+`)\b`)) {
			continue
		}
		p.Report(Finding{Span: source.Span{Start: at + m[0], End: at + m[1]}, Message: "no piece of the pattern makes " + quoted(part)})
		return
	}
}

// tailTo is a tail that is sewn on, and not in.
var tailTo = phrase.MustCompile(`^tails? (?:to|on|onto) `)

// allPutTogether tells whether every piece is named where pieces are put together, at least
// two of them: one that is not may be what another word means.
func (p *Pass) allPutTogether() bool {
	n := 0
	for _, piece := range p.Fabric.Pieces {
		if piece.Tree.Name == "" || !slices.ContainsFunc(piece.Rows, (*fabric.Row).Works) {
			continue
		}
		if n++; piece.From == nil && !p.putTogether(piece.Tree) {
			return false
		}
	}
	return n > 1
}

// putTogether tells whether some sentence on putting together names a piece.
func (p *Pass) putTogether(piece *syntax.Piece) bool {
	for _, name := range namesOf(piece) {
		noun, _, _ := tellingOf(name)
		for _, form := range pluralForms(noun) {
			for _, all := range assembliesIn.in(p) {
				if slices.ContainsFunc(all, func(a assembly) bool { return strings.Contains(" "+a.text, " "+form) }) {
					return true
				}
			}
		}
	}
	return false
}
