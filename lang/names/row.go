package names

import (
	"slices"
	"strconv"
	"strings"

	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// row finds what a row of a piece names.
func (f *finder) row(piece int, row *syntax.Row) {
	f.label(piece, row)
	f.stitches(row)
	r := reader{finder: f, piece: piece, row: row, holders: row.Holders()}
	seen := map[source.Span]bool{}
	syntax.Walk(row.Clauses, func(c syntax.Clause) {
		if !seen[c.Span] { // a branch that is made again is written once
			r.clause(c)
		}
		seen[c.Span] = true
	})
}

// label gives a row its number.
func (f *finder) label(piece int, row *syntax.Row) {
	if row.Label.Kind != syntax.Numbered {
		return
	}
	numbers := row.Label.Each(0)
	for i, n := range numbers {
		k := key{kind: Row, piece: piece, number: n}
		if i == 0 {
			delete(f.known, k) // the row of a number is the one that had it last
			f.mention(k, Mention{Span: row.Abs(row.Label.Span), Word: spelled(row.Label.Name()), Declares: true})
			continue
		}
		f.known[k] = f.known[key{kind: Row, piece: piece, number: numbers[0]}]
	}
}

// reader finds what the clauses of a row name.
type reader struct {
	*finder
	piece   int
	row     *syntax.Row
	holders []syntax.Clause // of each token of the row
}

// tokens are those of a clause that belong to none within it.
func (r *reader) tokens(c syntax.Clause) []syntax.Token {
	var out []syntax.Token
	first, _ := slices.BinarySearchFunc(r.row.Tokens, c.Span.Start, func(t syntax.Token, at int) int { return t.Span.Start - at })
	for i := first; i < len(r.row.Tokens) && r.row.Tokens[i].Span.End <= c.Span.End; i++ {
		if r.holders[i].Span == c.Span {
			out = append(out, r.row.Tokens[i])
		}
	}
	return out
}

// clause finds what one clause names, what stands within it left to its own
// clauses.
func (r *reader) clause(c syntax.Clause) {
	tokens := r.tokens(c)
	switch n := c.Node.(type) {
	case *syntax.Branch:
		r.said(key{kind: Branch, piece: r.piece, word: n.Name}, n.Name, tokens, true)
	case *syntax.Return:
		if !n.ToStem() {
			r.said(key{kind: Branch, piece: r.piece, word: n.To}, n.To, tokens, false)
		}
	case *syntax.Yarn:
		r.yarn(n.Yarn, tokens)
	case *syntax.Work:
		r.yarn(n.Yarn, tokens)
	case *syntax.Marker:
		r.marker(tokens, true)
	case *syntax.Rows:
		r.rows(n, tokens)
	case *syntax.LoopNote:
		if n.Row.Written() {
			r.numbers(r.piece, tokens)
		}
	}
	for _, p := range c.Places() {
		r.place(p, tokens)
	}
}

// said notes a name where a clause says it.
func (r *reader) said(k key, name string, tokens []syntax.Token, declares bool) {
	if at, ok := find(tokens, name); ok {
		r.mention(k, Mention{Span: r.row.Abs(at), Word: name, Declares: declares})
	}
}

func (r *reader) yarn(name string, tokens []syntax.Token) {
	r.said(key{kind: Yarn, word: spelled(name)}, name, tokens, false)
}

// find gives the tokens that spell a name, the last of them: `branch A` calls it
// after any other word.
func find(tokens []syntax.Token, name string) (source.Span, bool) {
	words := strings.Fields(name)
	for i := len(tokens) - len(words); i >= 0 && len(words) > 0; i-- {
		same := true
		for k, w := range words {
			same = same && tokens[i+k].Canon == w && tokens[i+k].Kind == syntax.Name
		}
		if same {
			return tokens[i].Span.Union(tokens[i+len(words)-1].Span), true
		}
	}
	return source.Span{}, false
}

// marker notes the words that speak of a marker, with the letter that it is
// called by.
func (r *reader) marker(tokens []syntax.Token, declares bool) {
	for i, t := range tokens {
		if t.Kind != syntax.Word || t.Canon != "marker" && t.Canon != "marked" {
			continue
		}
		k, at := key{kind: Marker, piece: r.piece}, t.Span
		if i+1 < len(tokens) && tokens[i+1].Kind == syntax.Name && len(tokens[i+1].Canon) == 1 {
			k.word, at = tokens[i+1].Canon, tokens[i+1].Span
		}
		r.mention(k, Mention{Span: r.row.Abs(at), Word: k.word, Declares: declares})
	}
}

// place finds what a place belongs to.
func (r *reader) place(p syntax.Place, tokens []syntax.Token) {
	switch {
	case p.Noun.Kind == syntax.NounMarker || p.To.Kind == syntax.ToMarker:
		r.marker(tokens, false)
	case p.Name != "" && r.known[key{kind: Branch, piece: r.piece, word: p.Name}] != nil:
		r.said(key{kind: Branch, piece: r.piece, word: p.Name}, p.Name, tokens, false)
	case p.Name != "":
		if other, ok := r.called(p.Name); ok {
			r.said(key{kind: Piece, piece: other}, p.Name, tokens, false)
		}
	}
	if p.Row.Written() {
		r.numbers(r.piece, tokens)
	}
	if p.Of != nil {
		r.place(*p.Of, tokens)
	}
}

// rows finds the rows that are worked again, and the piece that they are of.
func (r *reader) rows(n *syntax.Rows, tokens []syntax.Token) {
	piece := r.piece
	if n.Piece != "" {
		other, ok := r.called(n.Piece)
		if !ok {
			return
		}
		piece = other
		if at, ok := findWritten(tokens, r.row, r.file.Pieces[other].Name); ok {
			r.mention(key{kind: Piece, piece: other}, Mention{Span: r.row.Abs(at), Word: spelled(n.Piece)})
		}
	}
	r.numbers(piece, tokens)
}

// findWritten gives the tokens that a piece's name is written in, whatever kind
// of word each is.
func findWritten(tokens []syntax.Token, row *syntax.Row, name string) (source.Span, bool) {
	for i := range tokens {
		for k := i; k < len(tokens); k++ {
			at := tokens[i].Span.Union(tokens[k].Span)
			if at.Len() > len(name) {
				break
			}
			if strings.EqualFold(row.Source(at), name) {
				return at, true
			}
		}
	}
	return source.Span{}, false
}

// numbers notes the numbers that follow the word for a row: `Row 2`, `Rnds 2
// and 3`, `Rows 2-5`; and `2nd row`.
func (r *reader) numbers(piece int, tokens []syntax.Token) {
	for _, ref := range References(tokens) {
		r.numbered(piece, ref.From, ref.At, false)
		if ref.To == ref.From {
			continue
		}
		r.numbered(piece, ref.To, ref.ToAt, false)
		for n := ref.From + 1; n < ref.To && n < ref.From+mostBetween; n++ {
			r.numbered(piece, n, ref.At.Union(ref.ToAt), true)
		}
	}
}

// mostBetween bounds the rows of a range that are found in it.
const mostBetween = 1000

func (r *reader) numbered(piece, n int, at source.Span, between bool) {
	k := key{kind: Row, piece: piece, number: n}
	for k.piece > 0 && r.known[k] == nil && r.file.Pieces[k.piece].Name == "" {
		k.piece-- // a part without a heading goes on from the one above
	}
	if r.known[k] != nil {
		r.mention(k, Mention{Span: r.row.Abs(at), Word: strconv.Itoa(n), Between: between})
	}
}

// Reference is a row, or a run of them, that a clause calls by number.
type Reference struct {
	From, To int // the same for one row
	At, ToAt source.Span
}

// References finds the row numbers that some tokens name after the word for a
// row or before it.
func References(tokens []syntax.Token) []Reference {
	var out []Reference
	counting := false // the word for a row was met, and only numbers since
	for i, t := range tokens {
		switch {
		case t.Kind == syntax.Word && (t.Canon == "row" || t.Canon == "rnd" || t.Canon == "r"):
			if i > 0 && tokens[i-1].Kind == syntax.Ordinal {
				n := tokens[i-1].Values.At(0)
				out = append(out, Reference{From: n, To: n, At: tokens[i-1].Span, ToAt: tokens[i-1].Span})
			}
			counting = true
		case t.Kind == syntax.Number && counting:
			n := t.Values.At(0)
			if len(out) > 0 && i > 1 && runsTo(tokens[i-1]) && tokens[i-2].Span == out[len(out)-1].ToAt {
				out[len(out)-1].To, out[len(out)-1].ToAt = n, t.Span
				continue
			}
			out = append(out, Reference{From: n, To: n, At: t.Span, ToAt: t.Span})
		case !joins(t):
			counting = false
		}
	}
	return out
}

// runsTo tells the mark or the word of a run of numbers: `2-5`, `2 to 5`.
func runsTo(t syntax.Token) bool {
	return t.Kind == syntax.Dash || t.Kind == syntax.Hyphen || t.Kind == syntax.Word && t.Canon == "to"
}

// joins tells what may stand between the numbers of a list.
func joins(t syntax.Token) bool {
	return runsTo(t) || t.Kind == syntax.Comma || t.Kind == syntax.Period || t.Kind == syntax.Word && (t.Canon == "and" || t.Canon == "")
}
