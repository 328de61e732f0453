package lint

import (
	"slices"
	"strings"
	"sync"

	"stitchproof/lang/fabric"
	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// section is what a part of the file tells a maker: what stands above the first piece,
// or a piece from its heading to the next one. Whether it holds something is found out
// once, and stays known while its words stay.
type section struct {
	text string // in lower case, below the end of a line: words may be told by what stands before them

	mu    sync.Mutex
	holds map[any]bool
}

func sectionOf(f *syntax.File, at source.Span) *section {
	return &section{text: "\n" + strings.ToLower(toldIn(f, at)), holds: map[any]bool{}}
}

// has tells whether the text holds what a function looks for; key stands for that.
func (s *section) has(key any, in func(text string) bool) bool {
	s.mu.Lock()
	defer s.mu.Unlock()
	holds, known := s.holds[key]
	if !known {
		holds = in(s.text)
		s.holds[key] = holds
	}
	return holds
}

// aboveThePieces is what the file tells before its first piece.
func aboveThePieces(f *syntax.File, pieces []*fabric.Piece) *section {
	end := f.Text.Len()
	if len(pieces) > 0 {
		end = pieces[0].Tree.Span.Start
	}
	return sectionOf(f, source.Span{End: end})
}

// said is all that the file tells a maker, in lower case.
func (p *Pass) said() string {
	var b strings.Builder
	for _, s := range p.told {
		b.WriteString(s.text[1:])
	}
	return b.String()
}

// toldSomewhere tells whether some section of the file holds what a function looks for
// in its text, which is in lower case; key stands for that.
func (p *Pass) toldSomewhere(key any, in func(text string) bool) bool {
	return slices.ContainsFunc(p.told, func(s *section) bool { return s.has(key, in) })
}

// tells tells whether the pattern says something anywhere.
func (p *Pass) tells(thing *phrase.Phrase) bool { return p.toldSomewhere(thing, thing.MatchString) }

// says tells whether the pattern has one of some words anywhere.
func (p *Pass) says(words ...string) bool {
	return p.toldSomewhere(strings.Join(words, "|"), func(text string) bool { return says(text, words...) })
}
