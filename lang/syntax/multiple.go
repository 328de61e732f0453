package syntax

// multipleSaid takes `Multiple of 6 + 2.` for a remark where the foundation that it
// speaks of is laid below it, and gives it then. Elsewhere it is the foundation itself.
func (p *Piece) multipleSaid() *Chain {
	var said *Row
	for _, r := range p.Rows {
		if r.Label.Kind != Unlabelled {
			break
		}
		if said != nil && lays(r) == laysChain {
			multiple := said.Clauses[0].Node.(*Chain)
			said.Instruction = said.asRemark()
			return multiple
		}
		if ch := r.onlyMultiple(); ch != nil {
			said = r
		}
	}
	return nil
}

// onlyMultiple is the chain of which an instruction gives a multiple and nothing else,
// nil for any other.
func (r *Instruction) onlyMultiple() *Chain {
	if ch, only := r.onlyChain(); only && ch.Multiple.Written() && !ch.Number.Written() {
		return ch
	}
	return nil
}

// asRemark is the instruction with its one clause taken for a remark.
func (r *Instruction) asRemark() *Instruction {
	remark := *r
	remark.Clauses = []Clause{{Span: r.Clauses[0].Span, Sep: r.Clauses[0].Sep, Node: &Remark{}}}
	return &remark
}
