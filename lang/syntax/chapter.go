package syntax

import (
	"slices"

	"stitchproof/lang/source"
)

// chapter is what the blocks from one heading to the next are read as, or those above
// the first. Once read it never changes, and it goes from one reading to the next while
// an edit leaves its blocks as they were.
type chapter struct {
	block  int      // the number of its first block
	pieces []*Piece // that have rows
	// names is the piece that its heading names where no instruction follows, nil for none.
	names          *Piece
	definitions    []*Definition
	part           *Definition   // the meaning of its heading, where that is a word of the pattern's own, else nil
	prose, turning []source.Span // as in a File
	multiple       *Chain        // that a sentence says, as in a File
	traits         Traits
	checks         bool // counts of some rows are told next once more
}

// header reads the definitions that stand in fields.
func (d *document) header() *chapter {
	c := &chapter{}
	d.chapter = c
	for _, f := range d.file.Header {
		if f.Key == "abbreviations" {
			d.listed(f.ValueSpan)
		}
	}
	for i := range d.inField {
		d.readDefinition(&d.inField[i])
	}
	return c
}

// chapters reads all blocks.
func (d *document) chapters() []*chapter {
	var out []*chapter
	for n := 0; n < len(d.blocks); {
		c, end := d.kept(len(out), n)
		if c == nil {
			c, end = d.read(n)
		}
		out, n = append(out, c), end
	}
	return out
}

// read reads the chapter that begins with a block, and gives the block where the next one does.
func (d *document) read(from int) (c *chapter, end int) {
	c = &chapter{block: from}
	d.chapter = c
	for end = from; end < len(d.blocks); end++ {
		b := &d.blocks[end]
		switch {
		case b.kind == blockProse:
			c.say(b.span, b.digest.turning)
		case b.kind == blockDefinition:
			d.readDefinition(b)
		case b.kind == blockText:
			if !d.sizesLeave(b) && !d.labelledPart(b) {
				d.readText(b)
			}
		case b.kind == blockSizes, end > from && d.headsSizes(end):
			d.sizesOf(b)
		case end > from:
			d.finish(c)
			return c, end
		default:
			d.words = d.file.Vocab
			d.startPiece(b)
		}
	}
	d.finish(c)
	return c, end
}

// finish ends a chapter. A heading with no instruction of its own is prose.
func (d *document) finish(c *chapter) {
	for _, p := range c.pieces {
		p.look = d.lookOf(p)
	}
	if len(c.pieces) > 0 && len(c.pieces[0].Rows) == 0 {
		c.names, c.pieces = c.pieces[0], nil
		c.say(c.names.Span, turningIn(d.text(c.names.Span)))
	}
	if heading := &d.blocks[c.block]; len(d.asked) > 0 && heading.kind == blockHeading {
		d.ownPart(c, heading)
	}
	for _, p := range c.pieces {
		p.itemNumbers()
		if multiple := p.multipleSaid(); multiple != nil {
			c.multiple = multiple
		}
		for _, r := range p.Rows {
			c.traits |= r.Traits
		}
	}
}

// kept is the nth chapter as it was read earlier, which begins with a block, and the block
// where the next one begins; nil where it must be read.
func (d *document) kept(n, from int) (c *chapter, end int) {
	if d.known == nil || d.known.Vocab != d.file.Vocab {
		return nil, 0
	}
	known := d.known.lines.chapters
	if n+1 < len(known) && known[n+1].block+1 < d.edit.first { // the block below a heading tells what it is
		return known[n], known[n+1].block
	}
	if from < d.edit.rest {
		return nil, 0
	}
	moved := d.edit.rest - d.edit.restWas
	i, found := slices.BinarySearchFunc(known, from-moved, func(c *chapter, block int) int { return c.block - block })
	if !found {
		return nil, 0
	}
	end = len(d.blocks)
	if i+1 < len(known) {
		end = known[i+1].block + moved
	}
	return known[i].at(from, d.edit.shift), end
}

// subordinate finds the headings that others stand under: those that have no instruction
// of their own, with what follows in another look. `Ribbing` and `Body` stand under `BACK`.
func (d *document) subordinate(chapters []*chapter) {
	var over *Piece
	for i, c := range chapters {
		if c.names != nil {
			over = c.names
			continue
		}
		for j, p := range c.pieces {
			under := ""
			if over != nil && p.look == over.look {
				over = nil
			}
			if over != nil {
				under = over.Name
			}
			if p.Under == under {
				continue
			}
			if chapters[i] == c { // it may be that of an earlier reading
				own := *c
				own.pieces = slices.Clone(c.pieces)
				chapters[i] = &own
			}
			moved := *p
			moved.Under = under
			chapters[i].pieces[j] = &moved
		}
	}
}

// take takes a chapter into the file.
func (d *document) take(c *chapter) {
	f := d.file
	f.Pieces = append(f.Pieces, c.pieces...)
	f.Definitions = append(f.Definitions, c.definitions...)
	if c.part != nil {
		f.OwnParts = append(f.OwnParts, c.part)
	}
	f.Prose = append(f.Prose, c.prose...)
	f.Turning = append(f.Turning, c.turning...)
	if c.multiple != nil {
		f.Multiple = c.multiple
	}
	f.Traits |= c.traits
}

// at is the chapter where its first block is another by its number and all has moved some bytes.
func (c *chapter) at(block, shift int) *chapter {
	moved := *c
	moved.block = block
	if shift == 0 {
		return &moved
	}
	moved.pieces = each(c.pieces, func(p *Piece) *Piece { return p.shift(shift) })
	if c.names != nil {
		moved.names = c.names.shift(shift)
	}
	if c.part != nil {
		moved.part = c.part.shift(shift)
	}
	moved.definitions = each(c.definitions, func(d *Definition) *Definition { return d.shift(shift) })
	moved.prose = each(c.prose, func(s source.Span) source.Span { return s.Shift(shift) })
	moved.turning = each(c.turning, func(s source.Span) source.Span { return s.Shift(shift) })
	return &moved
}

// each is a list of its own of what becomes of each of a list, nil for none.
func each[T any](list []T, become func(T) T) []T {
	var out []T
	if len(list) > 0 {
		out = make([]T, 0, len(list))
	}
	for _, one := range list {
		out = append(out, become(one))
	}
	return out
}

// shift is the piece with its place moved.
func (p *Piece) shift(n int) *Piece {
	moved := *p
	moved.Span = p.Span.Shift(n)
	if p.NameSpan != (source.Span{}) { // a heading names it
		moved.NameSpan = p.NameSpan.Shift(n)
	}
	rows := make([]Row, 0, len(p.Rows)) // all at once: most of a long file moves with each edit
	moved.Rows = each(p.Rows, func(r *Row) *Row {
		rows = append(rows, Row{At: r.At + n, Instruction: r.Instruction})
		return &rows[len(rows)-1]
	})
	return &moved
}

// shift is the definition with its place moved.
func (d *Definition) shift(n int) *Definition {
	moved := *d
	moved.Span, moved.NameSpan = d.Span.Shift(n), d.NameSpan.Shift(n)
	if d.Row != nil {
		moved.Row = &Row{At: d.Row.At + n, Instruction: d.Row.Instruction}
	}
	return &moved
}
