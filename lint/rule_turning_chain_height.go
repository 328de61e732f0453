package lint

import (
	"fmt"
	"slices"
	"strings"
	"unicode"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
	"stitchproof/lang/syntax"
)

var turningChainHeight = &Rule{
	Name:     "turning-chain-height",
	Family:   "order",
	Severity: Warning,
	OfPiece:  true,
	Summary:  "The chain that begins a row is as high as the row's stitches, give or take one, and the same in rows alike.",
	Why: "A chain that is too short pulls the edge in, one that is too long stands out as a loop. A number that differs from " +
		"that of the rows around it is most often a slip.",
	Bad: `Pattern: Frost scarf
Terms: US

Piece: Scarf
With A, ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (12 sc)
Row 2: Ch 4, sc in each st across; turn. (12 sc)
Row 3: Ch 1, sc in each st across. (12 sc)
Fasten off.
`,
	Good: `Pattern: Frost scarf
Terms: US

Piece: Scarf
With A, ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (12 sc)
Row 2: Ch 1, sc in each st across; turn. (12 sc)
Row 3: Ch 1, sc in each st across. (12 sc)
Fasten off.
`,
	Sources: []string{
		"1 chain for sc, 2 for hdc, 3 for dc, 4 for tr and one more for each taller stitch (US names): dummies.com; " +
			"Handbook of Wool Knitting and Crochet, Needlecraft Publishing, 1918; The Ladies' Work-Book, London, c. 1850 (read)",
		"one chain more or fewer is in use: ch 2 for dc, ch 5 for tr in Coats & Clark RHC0101-021719M (read)",
		"post stitches are shorter than plain ones, and a ch 2 before post dc is usual (common practice)",
	},
	Check: checkTurningChainHeight,
}

// slack is how many chains a beginning chain may differ from the stitch it
// stands beside before it is called a slip.
const slack = 1

func checkTurningChainHeight(p *Pass) {
	for _, piece := range p.Pieces {
		usage := habits{}
		said := chainsSaid(p.File)
		begun := map[*fabric.Row]beginning{}
		for _, row := range piece.Rows {
			if b, ok := p.beginningOf(row); ok && !b.chain.Number.PerSize() {
				begun[row] = b
				usage.add(b)
			}
		}
		for _, row := range piece.Rows {
			if again := begunAgain(row); again != nil {
				p.Report(Finding{Span: row.Tree.Abs(again.Span), Message: "begins the row a second time with a chain that counts as a stitch"})
				continue
			}
			b, ok := begun[row]
			if !ok {
				continue
			}
			if why := p.saidOtherwise(row, b, said); why != "" {
				p.Report(Finding{Span: row.Tree.Abs(b.clause.Span), Message: fmt.Sprintf("begins with ch %d%s", b.length, why)})
				said = nil // once for the piece
				continue
			}
			if want, why := p.rightHeight(row, b, usage); want > 0 {
				p.Report(Finding{
					Span:    row.Tree.Abs(b.clause.Span),
					Message: fmt.Sprintf("begins with ch %d%s", b.length, why),
					Fix:     rechain(row, b, want),
				})
			}
		}
	}
}

// chainsSaid is what the header and the notes say of chains by their length alone: whether
// so many count as a stitch.
func chainsSaid(f *syntax.File) map[int]bool {
	said := map[int]bool{}
	for _, field := range f.Header {
		if field.Key == "turning chains" {
			chainsIn(field.Value, said)
		}
	}
	for _, span := range f.Turning {
		chainsIn(f.Text.Slice(span), said)
	}
	return said
}

// chainsIn notes what the parts of a sentence say of chains: `ch 2 counts as a st, ch 3
// does not`.
func chainsIn(value string, said map[int]bool) {
	for part := range strings.FieldsFuncSeq(value, func(r rune) bool { return r == ',' || r == ';' || r == '.' }) {
		chains, numbers, counts, rules := 0, 0, true, false
		for _, t := range syntax.Lex(part, syntax.Standard()) {
			switch {
			case t.Kind == syntax.Number && unicode.IsDigit(rune(part[t.Span.Start])): // not `every one`
				chains, numbers = t.Values.At(0), numbers+1
			case t.Kind == syntax.Word && t.Canon == "not":
				counts = false
			case t.Kind == syntax.Word && t.Canon == "count":
				rules = true
			case t.Kind == syntax.Stitch:
				numbers = 2 // told of one stitch: the counting goes by it
			}
		}
		if rules && numbers == 1 {
			said[chains] = counts
		}
	}
}

// saidOtherwise tells of a beginning chain that by the count is not what is said of it for
// the whole pattern, "" where it is.
func (p *Pass) saidOtherwise(row *fabric.Row, b beginning, said map[int]bool) string {
	counts, ok := said[b.length]
	if !ok || b.chain.Counts.Said {
		return ""
	}
	shown := p.countsShow(row, b)
	if shown == "" || counts == (shown != countsNot) {
		return ""
	}
	if counts {
		return ", which is said to count as a st; by the count it does not"
	}
	return ", which is said not to count as a st; by the count it " + shown
}

// begunAgain is the second of two chains that both are said to count as the
// first stitch of a row, nil for none.
func begunAgain(row *fabric.Row) *syntax.Clause {
	c := chainAfter(row, preparesOrTravels)
	if c == nil || !standsForStitch(c.Node) {
		return nil
	}
	i := slices.IndexFunc(row.Tree.Clauses, func(other syntax.Clause) bool { return other.Span == c.Span }) + 1
	if i < len(row.Tree.Clauses) && standsForStitch(row.Tree.Clauses[i].Node) {
		return &row.Tree.Clauses[i]
	}
	return nil
}

// standsForStitch tells whether a chain is said to count as a stitch.
func standsForStitch(n syntax.Node) bool {
	ch, ok := n.(*syntax.Chain)
	return ok && len(ch.Counts.As) > 0 && ch.Counts.As[0].Noun.Kind == syntax.NounStitch
}

// rightHeight is the number of chains that a row should begin with and the
// words for it, 0 where what it has will do.
func (p *Pass) rightHeight(row *fabric.Row, b beginning, usage habits) (want int, why string) {
	n := b.length
	tall := b.first.Abbreviation(p.Fabric.Dialect)
	switch said := b.chain.Counts; {
	case len(said.As) > 0:
		return p.saidHeight(n, said)
	case said.Said && n > b.high+slack && b.only:
		return b.first.Turning, fmt.Sprintf(" before %s, which stands %d ch high", tall, b.first.Turning)
	case said.Said:
		return 0, ""
	}
	if usual := usage.others(b); !b.post && !p.Fabric.Uncounted(n) && usual != n && usual == b.first.Turning && (n < usual || n > max(usual, b.high) && (b.only || stray(row, n-usual))) {
		return usual, fmt.Sprintf(", and the other rows that begin with %s have ch %d", tall, usual)
	}
	if n < b.low-slack && !p.around.turningSaid || n > b.high+slack && b.only {
		return b.first.Turning, fmt.Sprintf(" before %s, which stands %d ch high", tall, b.first.Turning)
	}
	return 0, ""
}

// stray tells whether the chains that a row begins with beyond the usual ones
// make a space that stands alone: the row has no other like it, its count,
// which is met, names none, and nothing is worked into it.
func stray(row *fabric.Row, chains int) bool {
	if row.Stated == nil || !row.Works() {
		return false
	}
	for _, part := range row.Stated.Parts {
		switch part.Noun.Kind {
		case syntax.NounNone, syntax.NounAny, syntax.NounStitch:
		case syntax.NounSpace:
			if !part.Noun.Length.Written() || slices.Contains(part.Noun.Length.Vals, chains) {
				return false
			}
		default:
			return false
		}
	}
	for i := range row.Tallies {
		if t := &row.Tallies[i]; t.Agrees() != fabric.Agrees || t.Part(fmt.Sprintf("ch-%d sp", chains)) != 1 {
			return false
		}
	}
	for space, s := range row.Made(0) {
		if s.IsSpace() && s.Chains == chains {
			return !slices.ContainsFunc(row.Piece.Stitches[0], func(s fabric.Stitch) bool { return s.Into == space })
		}
	}
	return false
}

// habits counts, for each stitch that rows of a piece begin with, how many
// begin with each number of chains.
type habits map[*stitch.Stitch]map[int]int

func (h habits) add(b beginning) {
	if h[b.first] == nil {
		h[b.first] = map[int]int{}
	}
	h[b.first][b.length]++
}

// others is the number of chains that all other rows beginning with the same
// stitch have, 0 where they are fewer than two or differ.
func (h habits) others(b beginning) int {
	usual := 0
	for n, rows := range h[b.first] {
		if n == b.length {
			rows--
		}
		switch {
		case rows <= 0:
		case usual != 0 || rows < 2:
			return 0
		default:
			usual = n
		}
	}
	return usual
}

// saidHeight checks a chain against what it is said to count as: a stitch, and perhaps
// chains after it.
func (p *Pass) saidHeight(n int, counts syntax.Counts) (want int, why string) {
	height, beyond, name := 0, 0, ""
	for _, part := range counts.As {
		switch part.Noun.Kind {
		case syntax.NounStitch:
			k := p.plain(part.Noun.Stitch)
			if k == nil || height > 0 {
				return 0, "" // a group, or a word that is not known
			}
			height, name = k.Turning, k.Abbreviation(p.Fabric.Dialect)
		case syntax.NounSpace, syntax.NounChain, syntax.NounTurning:
			if !part.Noun.Length.Written() || part.Noun.Length.PerSize() {
				return 0, "" // a space, of which only the maker knows how wide it is
			}
			beyond += part.Noun.Length.At(0)
		default:
			return 0, ""
		}
	}
	switch want = height + beyond; {
	case height == 0, n >= want-slack && n <= want+slack && n > beyond:
		return 0, ""
	case beyond > 0 && n > want:
		return 0, "" // a wide space is a matter of taste
	case beyond > 0:
		return want, fmt.Sprintf(" that counts as %s and ch %d: %s stands %d ch high", name, beyond, name, height)
	}
	return height, fmt.Sprintf(" that counts as %s, which stands %d ch high", name, height)
}

// rechain is the fix that writes another number of chains. It is not safe: a
// loop may be meant.
func rechain(row *fabric.Row, b beginning, want int) *Fix {
	if b.length != b.chain.Number.At(0) {
		return nil // one chain typed twice, or a loop that stands apart
	}
	for _, t := range row.Tree.Tokens {
		if t.Kind == syntax.Number && b.clause.Span.Covers(t.Span) {
			text := fmt.Sprint(want)
			return &Fix{Title: "write ch " + text, Edits: []source.Edit{{Span: row.Tree.Abs(t.Span), New: text}}}
		}
	}
	return nil
}
