package lint

import (
	"regexp"
	"slices"
	"strconv"
	"strings"
	"sync"

	"stitchproof/lang/fabric"
	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// calledOne is where a sentence speaks of one of several alike: the left wing, square 3.
type calledOne struct {
	at    source.Span // in the section
	noun  string
	which string // left, third, 3, c
}

var (
	// oneByWord takes `the left front leg`, `your third panel`, and oneByMark `square 3`,
	// `side panel b`. Which words of them are the noun, the names of pieces tell.
	oneByWord = phrase.MustCompile(`\b(?:the|your) ((left|right|first|second|third|fourth|fifth|sixth) ([a-z]+(?: [a-z]+)?))\b`)
	oneByMark = phrase.MustCompile(`\b([a-z]+ )?([a-z]+) (\d{1,2}|[b-z])\b`)
	// afterNumber follows a number that counts something else: `square 4 cm from the edge`.
	afterNumber = phrase.MustCompile(`^(?: ?(?:cm|mm|in|inch|inches|sts?|stitches|times|rows?|rnds?|more|further|apart|g|grams?|yds?|yards?|m|metres?|meters?|centimet\w+|millimet\w+|balls?|skeins?)\b|["”″.]?\d|/)`)
)

// calledIn are those places of a section, once for each noun that may be meant.
var calledIn = &fact[[]calledOne]{func(p *Pass, s section) []calledOne {
	var out []calledOne
	for _, a := range assembliesIn.of(p, s) {
		if a.labelled {
			continue
		}
		add := func(start, end int, noun, which string) {
			out = append(out, calledOne{source.Span{Start: start, End: end}.Shift(a.at.Start), strings.Clone(noun), strings.Clone(which)})
		}
		for _, m := range oneByWord.FindAllStringSubmatchIndex(a.text, -1) {
			noun, which := a.text[m[6]:m[7]], a.text[m[4]:m[5]]
			add(m[2], m[7], noun, which)
			if first, _, two := strings.Cut(noun, " "); two {
				add(m[2], m[6]+len(first), first, which)
			}
		}
		for _, m := range oneByMark.FindAllStringSubmatchIndex(a.text, -1) {
			noun, which := a.text[m[4]:m[5]], a.text[m[6]:m[7]]
			if isDigit(which[0]) && afterNumber.MatchString(a.text[m[1]:]) {
				continue
			}
			add(m[4], m[1], noun, which)
			if m[2] >= 0 {
				add(m[2], m[1], a.text[m[2]:m[5]], which)
			}
		}
	}
	return out
}}

// piecesThere tells of pieces that are put together and that nobody makes: a left wing where
// there is a right one, the fourth panel of three, ears of a toy that has none.
func (p *Pass) piecesThere() {
	kinds := p.kinds()
	whole := sync.OnceValue(p.allPutTogether)
	for s, all := range calledIn.in(p) {
		told := map[kindOne]bool{}
		for _, c := range all {
			if k := kinds[c.noun]; k != nil && !told[kindOne{k, c.which}] && p.noneOfKind(k, c) {
				told[kindOne{k, c.which}] = true
				p.notOfKind(k, c, s.abs(c.at))
			}
		}
	}
	for s, all := range partsIn.in(p) {
		for _, part := range all {
			if p.partMissing(part, whole) {
				p.Report(Finding{Span: s.abs(part.at), Message: "no piece of the pattern makes " + quoted(part.name)})
			}
		}
	}
}

// kindOne is one of a kind.
type kindOne struct {
	*kind
	which string
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
	telling telling
	which   []string // those that there are, in the words of the telling
	pieces  []*syntax.Piece
	mixed   bool // they are told apart in several ways, or some not at all
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

// kinds are those of the pieces, by the noun.
func (p *Pass) kinds() map[string]*kind {
	out := map[string]*kind{}
	for _, piece := range p.File.Pieces {
		noun, by, which := tellingOf(piece.Name)
		k := out[noun]
		if k == nil {
			k = &kind{telling: by}
			out[noun] = k
		}
		k.mixed = k.mixed || k.telling != by || by == unlike && len(k.pieces) > 0 || by != unlike && madeOf(piece) > 1
		k.which, k.pieces = append(k.which, which), append(k.pieces, piece)
	}
	return out
}

// tells tells whether a word tells one of the kind from the others.
func (k *kind) tells(which string) bool {
	side, order := slices.Contains(sideWords, which), slices.Contains(orderWords, which)
	switch k.telling {
	case bySide:
		return side
	case byOrder:
		return order
	case byNumber:
		return isDigit(which[0])
	case byLetter:
		return len(which) == 1 && !isDigit(which[0])
	}
	return order || isDigit(which[0])
}

// there tells whether one of the kind is made, or may be: one is known not to be where it
// comes next after all of those from the first on.
func (k *kind) there(which string) bool {
	switch k.telling {
	case bySide:
		return slices.Contains(k.which, which) || placeNoun.MatchString(plainText(k.pieces[0].Name))
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

// makesOther tells that another piece is made like one.
var makesOther = phrase.MustCompile(`\b(?:revers\w*|mirror\w*|another|other|same way|again|twice|both|(?:make|work) (?:two|2))\b`)

// noneOfKind tells whether what is called one of a kind is sure not to be made.
func (p *Pass) noneOfKind(k *kind, c calledOne) bool {
	if k.mixed || !k.tells(c.which) || k.telling == unlike && madeOf(k.pieces[0]) == 0 || k.there(c.which) {
		return false
	}
	if k.telling != unlike && slices.ContainsFunc(k.pieces, func(piece *syntax.Piece) bool { return makesOther.MatchString(p.wordsOf(&fabric.Piece{Tree: piece})) }) {
		return false
	}
	noun := regexp.QuoteMeta(c.noun)
	elsewhere := `\b(?:` + c.which + ` ` + noun + `|` + noun + ` ` + c.which + `)\b`
	if k.telling == bySide {
		elsewhere += `|\b(?:the|your|for|on) ` + c.which + `\b|\b` + c.which + ` (?:one|side|hand)\b`
	} else {
		elsewhere += `|\b(?:` + strings.Join(slices.DeleteFunc(pluralForms(noun), func(form string) bool { return form == noun }), "|") + `)\b`
	}
	return !p.toldBesides(elsewhere)
}

// notOfKind reports it.
func (p *Pass) notOfKind(k *kind, c calledOne, at source.Span) {
	said := strings.ToLower(unwrapped.Replace(p.File.Text.Slice(at)))
	f := Finding{Span: at, Message: "no piece is called " + quoted(said)}
	if k.telling == unlike {
		f.Message = quoted(said) + " is not made: " + strconv.Itoa(madeOf(k.pieces[0])) + " of " + quoted(k.pieces[0].Name) + " are"
	}
	for _, piece := range k.pieces {
		f.Related = append(f.Related, Related{piece.Span, "this one is made"})
	}
	p.Report(f)
}

// sewnParts are what a toy, a flower or a garment has sewn to it and that is always crocheted
// where a pattern makes pieces, in any number.
var sewnParts = phrase.MustCompile(`^(?:ears?|arms?|legs?|paws?|wings?|tails?|head|body|fins?|horns?|antlers?|muzzle|snout|hoof|hooves|f(?:oo|ee)t|mane|spines?|leaf|leaves|petals?|stalks?|calyx|sepals?|sleeves?|collar|hood|pockets?|cuffs?|straps?)$`)

// notMade tells of things to sew on that are bought, cut or stitched.
var notMade = phrase.MustCompile(`\b(?:felt|fabric|leather|bought|purchased|plastic|safety|embroider\w*|seams?|opening|holes?)\b`)

// sewnPart is a part that a sentence sews on, and what else that names.
type sewnPart struct {
	at     source.Span // in the section
	name   string
	others []string // what is sewn on with it, and the words behind each `to` and `on`
}

// partsIn are the parts that a section sews on.
var partsIn = &fact[[]sewnPart]{func(p *Pass, s section) []sewnPart {
	var out []sewnPart
	for _, a := range assembliesIn.of(p, s) {
		if a.labelled || notMade.MatchString(a.text) {
			continue
		}
		things := sewnOn(a.text)
		for i, thing := range things {
			bare := article.ReplaceAllString(strings.TrimSpace(thing), "")
			at := strings.Index(a.text, bare)
			if !sewnParts.MatchString(bare) || at < 0 || strings.HasPrefix(bare, "tail") && !tailTo.MatchString(a.text[at:]) {
				continue
			}
			part := sewnPart{at: source.Span{Start: at, End: at + len(bare)}.Shift(a.at.Start), name: strings.Clone(bare)}
			for j, other := range things {
				if j != i {
					part.others = append(part.others, strings.Clone(other))
				}
			}
			for _, m := range goal.FindAllStringSubmatchIndex(a.text, -1) {
				part.others = append(part.others, strings.Clone(a.text[m[2]:]))
			}
			out = append(out, part)
		}
	}
	return out
}}

// partMissing tells whether a part that is sewn to a piece is sure not to be made. whole
// tells whether all pieces are put together by their names.
func (p *Pass) partMissing(part sewnPart, whole func() bool) bool {
	if p.piecesAt(part.name) != nil || !slices.ContainsFunc(part.others, func(other string) bool { return p.piecesAt(other) != nil }) || !whole() {
		return false
	}
	return !p.toldBesides(`\b(?:` + strings.Join(pluralForms(strings.TrimSuffix(part.name, "s")), "|") + `)\b`)
}

// tailTo is a tail that is sewn on, and not in.
var tailTo = phrase.MustCompile(`^tails? (?:to|on|onto) `)

// maxPieces is how many pieces one thing has at most: a file with more is a book of several.
const maxPieces = 40

// allPutTogether tells whether every piece is named where pieces are put together, at least
// two of them: one that is not may be what another word means.
func (p *Pass) allPutTogether() bool {
	n := 0
	if len(p.Fabric.Pieces) > maxPieces {
		return false
	}
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
