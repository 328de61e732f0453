package syntax

// Traits are things which an instruction says that matter to the rest of its pattern. Few
// instructions have any: who looks for them in a file sees first whether it has one.
type Traits uint8

// The traits.
const (
	SetsMarkers    Traits = 1 << iota // a marker is placed, or spoken of
	NamesStitches                     // says what one of its stitches is made of
	CountsChains                      // says whether a chain counts as a stitch
	SuccessiveTops                    // works through successive loops
	CallsRows                         // has a number, and is worked as a row that has a name
)

// traitsOf finds those of an instruction.
func traitsOf(r *Instruction) Traits {
	var out Traits
	Walk(r.Clauses, func(c Clause) {
		switch n := c.Node.(type) {
		case *Marker:
			out |= SetsMarkers
		case *Made:
			out |= NamesStitches
		case *Work:
			if len(n.Body) > 0 || n.Called.Written() {
				out |= NamesStitches
			}
		case *Group:
			if n.Called.Written() {
				out |= NamesStitches
			}
		case *Rows:
			if n.Called != "" && r.Label.Kind == Numbered {
				out |= CallsRows
			}
		case *Chain:
			if n.Counts.Said {
				out |= CountsChains
			}
		case *CountsNote:
			out |= CountsChains
		}
	})
	for i := 1; i < len(r.Tokens); i++ {
		if r.Tokens[i].Canon == "loop" && r.Tokens[i-1].Canon == "successive" {
			out |= SuccessiveTops
		}
	}
	return out
}
