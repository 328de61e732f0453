package stitch

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"stitchproof/lang/numeral"
	"stitchproof/lang/table"
)

// wording is a line of names.tsv: how one dialect writes a stitch or a family.
type wording struct {
	short, name, plural []pattern
	also                []pattern // folded: there to be found, not to be shown
}

// wordings is names.tsv, by key and dialect.
type wordings map[string]*[UK + 1]*wording

func readWordings(text string) (wordings, error) {
	records, err := table.Read("names.tsv", text, "stitch", "dialect", "short", "name", "plural", "also")
	if err != nil {
		return nil, err
	}
	w := make(wordings, len(records))
	for _, r := range records {
		words := &wording{}
		for _, list := range [...]struct {
			column string
			to     *[]pattern
		}{{"short", &words.short}, {"name", &words.name}, {"plural", &words.plural}, {"also", &words.also}} {
			for _, spelling := range r.List(list.column, "|") {
				if list.to == &words.also {
					spelling = fold(spelling)
				}
				p, err := readPattern(spelling)
				if err != nil {
					return nil, r.Errorf("%v", err)
				}
				*list.to = append(*list.to, p)
			}
		}
		dialects := []Dialect{US, UK}
		switch said := r.Text("dialect"); said {
		case "both":
		case US.String():
			dialects = dialects[:1]
		case UK.String():
			dialects = dialects[1:]
		default:
			return nil, r.Errorf("the dialect is US, UK or both, not %q", said)
		}
		key := r.Text("stitch")
		if w[key] == nil {
			w[key] = &[UK + 1]*wording{}
		}
		for _, d := range dialects {
			if w[key][d] != nil {
				return nil, r.Errorf("%q is named twice in %v terms", key, d)
			}
			w[key][d] = words
		}
	}
	return w, nil
}

// in is how a dialect writes a stitch or family, nil if the table does not say.
func (w wordings) in(key string, d Dialect) *wording {
	if row := w[key]; row != nil {
		return row[d]
	}
	return nil
}

// of is how a dialect writes a stitch that others are built on, nil for none.
func (w wordings) of(base *Stitch, d Dialect) *wording {
	if base == nil {
		return nil
	}
	return w.in(base.ID, d)
}

// pattern is a text with slots for what differs between the members of a family.
type pattern struct {
	pieces []piece
	over   slot // the list of the base's words that it runs over, or literal
}

// piece is text to stand as it is, or a slot.
type piece struct {
	text string
	slot slot
}

type slot uint8

const (
	literal slot = iota
	short        // each of the base's abbreviations
	name         // each of its full names
	plural       // each of their plurals
	abbr         // its first abbreviation
	digits       // the number of legs
	word         // the same in letters
)

var slots = [...]string{short: "short", name: "name", plural: "plural", abbr: "abbr", digits: "n", word: "word"}

// mostLegs is the largest number of legs that a family has.
const mostLegs = 9

// readPattern cuts text at its slots, which are written {name}.
func readPattern(text string) (pattern, error) {
	var p pattern
	for text != "" {
		before, rest, found := strings.Cut(text, "{")
		if before != "" {
			p.pieces = append(p.pieces, piece{text: before})
		}
		if !found {
			break
		}
		inside, after, _ := strings.Cut(rest, "}")
		s := slot(max(0, slices.Index(slots[:], inside)))
		if s == literal {
			return pattern{}, fmt.Errorf("there is no slot {%s}", inside)
		}
		if s <= plural {
			if p.over != literal && p.over != s {
				return pattern{}, fmt.Errorf("{%s} and {%s} cannot stand together", slots[p.over], inside)
			}
			p.over = s
		}
		p.pieces = append(p.pieces, piece{slot: s})
		text = after
	}
	return p, nil
}

// fill writes the pattern out for a base's first abbreviation, one of the words
// that the pattern runs over, and a number of legs.
func (p pattern) fill(first, each string, legs int) string {
	if len(p.pieces) == 1 && p.pieces[0].slot == literal {
		return p.pieces[0].text
	}
	b := make([]byte, 0, 64)
	for _, piece := range p.pieces {
		switch piece.slot {
		case literal:
			b = append(b, piece.text...)
		case abbr:
			b = append(b, first...)
		case digits:
			b = strconv.AppendInt(b, int64(legs), 10)
		case word:
			b = append(b, numeral.Words(legs)...)
		default:
			b = append(b, each...)
		}
	}
	return string(b)
}

// spell appends what patterns give for a base, nil for none, and a number of
// legs.
func spell(to []string, patterns []pattern, base *wording, legs int) []string {
	for _, p := range patterns {
		if base == nil {
			to = append(to, p.fill("", "", legs))
			continue
		}
		first := base.short[0].fill("", "", 0)
		each := base.short[:1]
		switch p.over {
		case short:
			each = base.short
		case name:
			each = base.name
		case plural:
			each = base.plural
		}
		for _, e := range each {
			to = append(to, p.fill(first, e.fill("", "", 0), legs))
		}
	}
	return to
}
