package lint

import (
	"fmt"
	"strings"

	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// inventory is a list of all pieces with how many there are of each, and of all: `You should have 15 pieces: 3 twigs, 5
// leaves and 7 sloes.`
type inventory struct {
	at    source.Span // of the number of all, in the section
	all   int
	items []madeUpFrom // of which the number is 0 where none is said
	bare  bool         // no word says that it is one of pieces
}

var (
	// piecesBefore has the number of all before the list, piecesBehind behind it.
	piecesBefore = phrase.MustCompile(`\b` + countExpr + ` (?:pieces|parts)(?: in all| altogether)?\s*:\s*([^:]+)$`)
	piecesBehind = phrase.MustCompile(`^(?:\W*(?:pieces|parts)\s+|.*?(?::|\bthat's|\bthat is|\bthat makes|\byou have|\bshould have)\s+)?([^:]+?)(?:,|:| =| [–—-]) ` + countExpr + `(?: (?:pieces|parts)\b[^:,;]*| in all| altogether|\.?\s*)$`)
	// itemOf is one thing of the list.
	itemOf = phrase.MustCompile(`^(?:(an?|one|the|` + countExpr + `) )?([a-z]+(?:[ -][a-z']+){0,4})$`)
)

// ofPieces are words by which a list is one of pieces, and inAllWords may say so of what it comes to.
var (
	ofPieces   = []string{" pieces", " parts", "piece count"}
	inAllWords = []string{" in all", " altogether"}
)

// inventoriesIn are those of a section.
var inventoriesIn = &fact[[]inventory]{func(p *Pass, s section) []inventory {
	text := strings.ToLower(s.text)
	if len(text) != len(s.text) || !says(text, ofPieces...) && !says(text, inAllWords...) {
		return nil
	}
	text = strings.ReplaceAll(text, "*", " ")
	var out []inventory
	for _, at := range sentencesOf(text) {
		sentence := unwrapped.Replace(text[at.Start:at.End])
		if found, ok := inventoryOf(sentence); ok && len(sentence) == at.Len() {
			found.at = found.at.Shift(at.Start)
			out = append(out, found)
		}
	}
	return out
}}

// leastItems is how many things an inventory lists at least.
const leastItems = 3

// inventoryOf reads a sentence.
func inventoryOf(sentence string) (inventory, bool) {
	sentence = strings.TrimRight(sentence, " .\n")
	list, all := 2, 1
	m := piecesBefore.FindStringSubmatchIndex(sentence)
	if m == nil {
		if m = piecesBehind.FindStringSubmatchIndex(sentence); m == nil || !says(sentence, ofPieces...) && !says(sentence, inAllWords...) {
			return inventory{}, false
		}
		list, all = 1, 2
	}
	out := inventory{at: source.Span{Start: m[2*all], End: m[2*all+1]}, all: inWords(groupOf(sentence, m, all)), bare: !says(sentence, ofPieces...)}
	for item := range strings.SplitSeq(strings.ReplaceAll(groupOf(sentence, m, list), " and ", ", "), ",") {
		item = strings.Join(strings.Fields(item), " ")
		if item == "" {
			continue
		}
		said := itemOf.FindStringSubmatch(item)
		if said == nil {
			return inventory{}, false
		}
		n := inWords(said[2])
		if strings.HasPrefix(said[1], "a") || said[1] == "one" {
			n = 1
		}
		out.items = append(out.items, madeUpFrom{of: strings.Clone(said[3]), number: n})
	}
	return out, len(out.items) >= leastItems
}

// comesTo is how many pieces are listed, 0 where that cannot be told. What has no number is there once, or as often as it is
// made.
func (p *Pass) comesTo(list inventory) int {
	sum := 0
	for _, item := range list.items {
		n := item.number
		if made := p.makes(item.of).n; n == 0 && made > 1 {
			n = made
		} else if n == 0 && syntax.OneOf(item.of) != item.of {
			return 0
		}
		sum += max(1, n)
	}
	return sum
}

// makesSeveral tells whether the pattern makes two of the things that are listed at least.
func (p *Pass) makesSeveral(list inventory) bool {
	n := 0
	for _, item := range list.items {
		if p.makes(item.of).n > 0 {
			n++
		}
	}
	return n > 1
}

// holdInventories tells of those that do not come to what they say, or list more or fewer of a piece than are made.
func (p *Pass) holdInventories() {
	for s, all := range inventoriesIn.in(p) {
		for _, list := range all {
			if list.bare && !p.makesSeveral(list) {
				continue // a count of stitches
			}
			if sum := p.comesTo(list); sum > 0 && sum != list.all {
				p.Report(Finding{Span: s.abs(list.at), Message: fmt.Sprintf("says %d, and the list comes to %d", list.all, sum)})
				continue
			}
			for _, item := range list.items {
				of := p.makes(item.of)
				if of.n == 0 || of.some || item.number == 0 || item.number == of.n {
					continue
				}
				p.Report(Finding{
					Span:    s.abs(list.at),
					Message: fmt.Sprintf("lists %d of %s, and %d are made", item.number, quoted(of.called), of.n),
					Related: of.madeHere(),
				})
			}
		}
	}
}
