package lint

import (
	"fmt"

	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
	"stitchproof/lang/terms"
)

// doubtfulName is a stitch's name that means another stitch in the other dialect.
type doubtfulName struct {
	written string
	span    source.Span // in the file
	us, uk  *stitch.Stitch
}

// doubtfulNames lists the names in the instructions that mean another stitch in
// the other dialect, each pair of plain stitches once: dc2tog is no other doubt
// than dc. Names that the pattern itself defines are not in doubt.
func (p *Pass) doubtfulNames() []doubtfulName {
	var out []doubtfulName
	seen := map[*stitch.Stitch]bool{}
	for row := range p.Fabric.Rows() {
		for _, t := range row.Tree.Tokens {
			if t.Kind != syntax.Stitch || !t.Stitch.Ambiguous() || seen[t.Stitch.US.Plain()] || p.defines(t.Canon) {
				continue
			}
			seen[t.Stitch.US.Plain()] = true
			out = append(out, doubtfulName{row.Tree.Source(t.Span), row.Tree.Abs(t.Span), t.Stitch.US, t.Stitch.UK})
		}
	}
	return out
}

// defines tells whether the pattern says itself how a stitch is made.
func (p *Pass) defines(word string) bool {
	for _, d := range p.File.Definitions {
		if d.Special {
			for _, name := range d.Names {
				if plainText(name) == word {
					return true
				}
			}
		}
	}
	return false
}

// declaring is the fix that has the pattern state its terms. It is not safe: only
// the writer knows.
func declaring(f *syntax.File, d stitch.Dialect) *Fix {
	return &Fix{Title: fmt.Sprintf("write Terms: %v at its head", d), Edits: []source.Edit{terms.Declare(f, d)}}
}
