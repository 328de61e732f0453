package lint

import (
	"slices"
	"strconv"
	"strings"

	"stitchproof/lang/fabric"
	"stitchproof/lang/materials"
	"stitchproof/lang/numeral"
	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// works tells whether any row of the pattern works a stitch.
func (p *Pass) works() bool {
	return slices.ContainsFunc(p.Fabric.Pieces, func(piece *fabric.Piece) bool { return slices.ContainsFunc(piece.Rows, (*fabric.Row).Works) })
}

// directionsIn lists the parts of a piece's section that tell a maker what to do: the rows,
// and the prose that stands among them or after them.
func (p *Pass) directionsIn(s section) []source.Span {
	var out []source.Span
	for _, row := range s.rows() {
		out = append(out, row.Tree.Written())
	}
	return append(out, s.those(p.File.Prose)...)
}

// yarnUse is a yarn where a row names it.
type yarnUse struct {
	name    string // as the tree has it: lower case
	written string
	at      source.Span // in the section
}

// yarnsUsed are the first places of each section where a row takes up a yarn by name.
var yarnsUsed = &fact[[]yarnUse]{func(_ *Pass, s section) []yarnUse {
	var out []yarnUse
	add := func(name, written string, at source.Span) {
		if !slices.ContainsFunc(out, func(u yarnUse) bool { return u.name == name }) {
			out = append(out, yarnUse{name, strings.Clone(written), at})
		}
	}
	for _, row := range s.rows() {
		syntax.Walk(row.Tree.Clauses, func(c syntax.Clause) {
			name := ""
			switch n := c.Node.(type) {
			case *syntax.Yarn:
				name = n.Yarn
			case *syntax.Work:
				name = n.Yarn
			case *syntax.Finish:
				name = n.Yarn
			}
			if name != "" {
				add(yarnNoun.ReplaceAllString(name, ""), row.Tree.AsWritten(name), s.place(row.Tree.Abs(c.Span)))
			}
		})
	}
	if s.piece == nil {
		return out
	}
	begin := 0
	for line := range strings.Lines(s.text) {
		uses := usedSaid.FindAllStringSubmatchIndex(line, -1)
		if begin == 0 {
			uses = append(usedInHeading.FindAllStringSubmatchIndex(strings.TrimSuffix(line, "\n"), -1), uses...)
		}
		for _, m := range uses {
			group := 2
			for m[group] < 0 {
				group += 2
			}
			at := source.Span{Start: m[group], End: m[group+1]}
			written := line[at.Start:at.End]
			add(strings.ToLower(written), written, at.Shift(begin))
		}
		begin += len(line)
	}
	return out
}}

// yarnNoun stands before the letter that a yarn is called by: `shade A`.
var yarnNoun = phrase.MustCompile(`^(?:yarn|colou?r|shade) `)

// The uses of a yarn that are no clause of a row.
var (
	// usedInHeading takes `Cup (make 8) - with A`, `Cup (make 8, colour A)`, `Cup - make 8 in A`, `Cup (yarn A, from the
	// foot up)`.
	usedInHeading = phrase.MustCompile(` [–—-] (?i:yarn|colou?r|shade) ([A-Z]|MC|CC\d?) [–—-] |(?:(?: [–—-] |[,(] ?|(?i:make (?:\d+|` + numeral.Expression(2, 12) + `)) )(?i:with|using|in) (?i:(?:yarn|colou?r|shade) )?|(?: [–—-] |[,(] ?)(?i:yarn|colou?r|shade) )([A-Z]|MC|CC\d?)[):.\r]*$|\((?i:yarn|colou?r|shade) ([A-Z]|MC|CC\d?)[,;)]`)
	// usedSaid takes `using colour D`, `with two strands of A`, `with CC2,`.
	usedSaid = phrase.MustCompile(`\b(?i:with|using|in) (?:(?i:(?:\d|a|double|` + numeral.Expression(1, 12) + `) (?:strands?|ends?|threads?) of (?:(?:yarn|colou?r) )?|(?:yarn|colou?r) )([A-Z]|MC|CC\d?)(?:[,;:.)\s]|$)|([A-Z]|MC|CC\d)(?:[,;:]| and ))`)
)

// namedYarns are the names that the materials give to yarns, in order.
func namedYarns(l *materials.List) []string {
	var out []string
	for _, y := range l.Yarns {
		if y.Name != "" {
			out = append(out, y.Name)
		}
	}
	return out
}

// yarnCode is a yarn's name that is no word: A, MC, CC2, CB, 3.
var yarnCode = phrase.MustCompile(`^(?i:[a-z]|\d|mc|cc\d?|c[a-f])$`)

// mm writes a size of hook: 4 mm, 3.25 mm.
func mm(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) + " mm" }
