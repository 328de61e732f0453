package house

import (
	"strings"

	"stitchproof/lang/inflect"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

// skipping is the word for passing over a stitch.
var skipping = Aspect{Name: "skip", About: "skipping stitches", Ways: []string{"sk", "skip", "miss"}, find: (*reader).skips}

func (r *reader) skips() {
	for _, t := range r.row.Tree.Tokens {
		word := r.row.Tree.Source(t.Span)
		if t.Kind != syntax.Word || t.Canon != "skip" || !plainSkip[strings.ToLower(word)] {
			continue
		}
		r.word(t, "sk", "skip", "miss")
	}
}

// plainSkip are the forms of the word that the others can stand for as they are.
var plainSkip = map[string]bool{"sk": true, "skip": true, "miss": true}

// rounds is the word for a round.
var rounds = Aspect{Name: "round", About: "naming rounds", Ways: []string{"rnd", "round"}, find: (*reader).rounds}

func (r *reader) rounds() {
	for _, t := range r.row.Tree.Tokens {
		if t.Kind != syntax.Word || t.Canon != "rnd" {
			continue
		}
		switch strings.ToLower(r.row.Tree.Source(t.Span)) {
		case "rnd", "round":
			r.word(t, "rnd", "round")
		case "rnds", "rounds":
			r.word(t, "rnds", "rounds")
		}
	}
}

// stitches is how stitches are named.
var stitches = Aspect{Name: "stitches", About: "naming stitches", Ways: []string{"short", "in full"}, find: (*reader).stitchNames}

func (r *reader) stitchNames() {
	for _, t := range r.row.Tree.Tokens {
		if t.Kind != syntax.Stitch {
			continue
		}
		k := t.Stitch.In(r.fabric.Dialect)
		if k == nil || k.Defined || r.defines(t) {
			continue // the pattern's own name for it is no abbreviation
		}
		term, word := k.Term(r.fabric.Dialect), strings.ToLower(strings.ReplaceAll(r.row.Tree.Source(t.Span), "-", " "))
		if term.Abbr == "" || term.Name == "" || !spells(term, word) {
			continue
		}
		full := term.Name
		if word == term.Plural {
			full = term.Plural
		}
		r.word(t, term.Abbr, full)
	}
}

// defines tells whether a word is one that the pattern explains as a stitch of
// its own.
func (r *reader) defines(t syntax.Token) bool {
	return r.own[t.Canon]
}

// spells tells whether a word is the usual abbreviation or name of a stitch. Other
// spellings are left as they are: they may be the pattern's own.
func spells(t stitch.Term, word string) bool {
	return word == strings.ToLower(t.Abbr) || word == t.Name || word == t.Plural
}

// word notes a word that each way writes otherwise, with a capital where it has
// one now.
func (r *reader) word(t syntax.Token, ways ...string) {
	now := r.row.Tree.Source(t.Span)
	for i, text := range ways {
		if ways[i] = now; !strings.EqualFold(now, text) {
			ways[i] = inflect.Like(text, now)
		}
	}
	r.use(t.Span, ways...)
}
