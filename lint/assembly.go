package lint

import (
	"slices"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// assembly is a sentence of a section that puts pieces together, sets something on them or
// closes them by hand.
type assembly struct {
	at source.Span // in the section
	// text is what it says, in lower case and with a space for every end of a line, so
	// that places in it are those of the file.
	text string
	// labelled is set where it is part of a row with a label: it begins with what is
	// done by hand, and may go on with stitches.
	labelled bool
}

// byHand begins what is done with pieces that are made, or with yarn and needle.
var byHand = phrase.MustCompile(`\b(?:sew(?:n|ing)?|join|attach|lay|arrange|(?:whip|slip) ?stitch|crochet the|stitch|set|pin|place|position|insert|fix|embroider|` +
	`assemble|hang|pull|seam|graft|glue|space|spread|distribute|weave|thread|draw|gather|close|block|re-?block|press|steam|stretch|skip the|sk the|miss the|along the|fasten (?:the|each|both|all)) `)

// assembliesIn are those sentences of a section, in their order.
var assembliesIn = &fact[[]assembly]{func(p *Pass, s section) []assembly {
	text := strings.ToLower(s.text)
	if len(text) != len(s.text) || !byHand.May(strings.ReplaceAll(text, "\n", " ")) {
		return nil
	}
	text = withoutComments(p.File, s, text)
	var out []assembly
	for _, at := range sentencesOf(text) {
		sentence := unwrapped.Replace(text[at.Start:at.End])
		m := byHand.FindStringIndex(sentence)
		if m == nil {
			continue
		}
		a := assembly{at: at, text: sentence}
		if rowLabel.MatchString(sentence) {
			a.at.Start, a.text, a.labelled = at.Start+m[0], sentence[m[0]:], true
		}
		a.text = strings.Clone(a.text)
		out = append(out, a)
	}
	return out
}}

// unwrapped makes one line of several, each place of which stays where it is.
var unwrapped = strings.NewReplacer("\n", " ", "\r", " ", "\t", " ")

// rowLabel is the label of a row before what it says.
var rowLabel = phrase.MustCompile(`^\W*(?:(?:next|last|set-?up|foundation) )?(?:rows?|rnds?|rounds?|r)\.? ?\d*[^:.]{0,20}[:.]|^\W*(?:next|last) (?:row|rnd|round)\b`)

// withoutComments is the text of a section with spaces for its comments.
func withoutComments(f *syntax.File, s section, text string) string {
	var b strings.Builder
	end := 0
	from, _ := slices.BinarySearchFunc(f.Comments, s.at.Start, func(c *syntax.Comment, at int) int { return c.Span.Start - at })
	for _, c := range f.Comments[from:] {
		if at := s.place(c.Span); s.at.Covers(c.Span) {
			b.WriteString(text[end:at.Start] + strings.Repeat(" ", at.Len()))
			end = at.End
		} else if c.Span.Start >= s.at.End {
			break
		}
	}
	return b.String() + text[end:]
}

// pieceNames are the pieces, by index, of each name that a sentence may call them by: exact
// as one or as several, kind by the last word of a name, a button band by band. There are
// several of one name where a file holds more than one pattern.
type pieceNames struct{ exact, kind map[string][]int }

func pieceNamesOf(pieces []*fabric.Piece) *pieceNames {
	names := &pieceNames{map[string][]int{}, map[string][]int{}}
	add := func(to map[string][]int, forms []string, i int) {
		for _, form := range forms {
			if all := to[form]; len(all) == 0 || all[len(all)-1] != i {
				to[form] = append(all, i)
			}
		}
	}
	for i, piece := range pieces {
		for _, name := range namesOf(piece.Tree) {
			add(names.exact, formsOf(name), i)
			if fields := strings.Fields(plainText(name)); len(fields) > 1 {
				add(names.kind, formsOf(fields[len(fields)-1]), i)
			}
		}
	}
	return names
}

// piecesAt are the pieces, by index, that some words begin with: those of the longest name
// that fits.
func (p *Pass) piecesAt(words string) []int {
	fields := strings.Fields(article.ReplaceAllString(strings.TrimLeft(strings.ReplaceAll(words, "’", "'"), " "), ""))
	names := p.called()
	for n := min(longestName, len(fields)); n > 0; n-- {
		if strings.ContainsAny(strings.Join(fields[:n-1], ""), ".,;:") {
			continue
		}
		called := strings.TrimSuffix(strings.TrimRight(strings.Join(fields[:n], " "), ".,;:!)]*_"), "'s")
		if found := names.exact[called]; found != nil {
			return found
		}
		if n == 1 {
			return names.kind[called]
		}
	}
	return nil
}

// namesOf are what a piece is called, none where it has no name: a head and body is a head,
// and a body.
func namesOf(piece *syntax.Piece) []string {
	bare := bareName(piece.Name)
	if bare == "" {
		return nil
	}
	parts := strings.Split(strings.ReplaceAll(strings.ToLower(bare), " & ", " and "), " and ")
	if len(parts) == 1 {
		return parts
	}
	if bandOf.MatchString(parts[len(parts)-1]) {
		return []string{bare} // of two parts
	}
	return append(parts, bare)
}

// bandOf is a band of something, `neck band`, which a band of two things has at the end of its name: `Front and neck band`.
var bandOf = phrase.MustCompile(`\w (?:bands?|borders?|edgings?|trims?|ribbing)$`)

// pieceAt is the only piece whose name some words begin with, -1 for none.
func (p *Pass) pieceAt(words string) int {
	if found := p.piecesAt(words); len(found) == 1 {
		return found[0]
	}
	return -1
}

// longestName is how many words of a text may be the name of a piece.
const longestName = 4

// bareName is what a piece is called without what stands behind it in brackets or behind a
// mark: `Ears (in B)`.
func bareName(name string) string {
	for _, mark := range [...]string{" (", ":", " – ", " — ", " - "} {
		name, _, _ = strings.Cut(name, mark)
	}
	return name
}

// toldBesides tells whether the pattern has what an expression finds anywhere but in its
// sentences on putting together: what has it there is known, be it by a heading that was
// not read.
func (p *Pass) toldBesides(expr string) bool {
	words := phrase.Of(expr)
	in := func(text string) int {
		return len(words.FindAllStringIndex(yarnTail.ReplaceAllString(unwrapped.Replace(text), ""), -1))
	}
	key := "besides putting together: " + expr
	return p.sections.anywhere(key, func(s section) bool {
		return remembered(s.memory, key, func() bool {
			count := in(s.told)
			for _, a := range assembliesIn.of(p, s) {
				count -= in(a.text)
			}
			return count > 0
		})
	})
}

// yarnTail is a tail that is yarn, and no animal's.
var yarnTail = phrase.MustCompile(`\b(?:long|yarn|beginning|starting|same|loose|cm|in|inch) tails?\b|\btails? (?:for|end|of yarn|through|from)\b`)
