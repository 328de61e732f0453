package lint

import "stitchproof/lang/syntax"

// sized is the same fact in several sizes, so that one finding can speak of
// all of them.
type sized[T any] struct {
	sizes []int
	facts []T
}

func (s *sized[T]) add(size int, fact T) {
	s.sizes = append(s.sizes, size)
	s.facts = append(s.facts, fact)
}

// num writes a number of the facts as patterns do: once where it is the same
// for all, else one value a size.
func (s *sized[T]) num(get func(T) int) string {
	values := make([]int, len(s.facts))
	for i, f := range s.facts {
		values[i] = get(f)
	}
	return syntax.Num{Vals: values}.String()
}

// sizeName names the sizes of a finding, "" where they are all the sizes there are.
func (p *Pass) sizeName(sizes []int) string {
	if len(sizes) == p.Fabric.Sizes() {
		return ""
	}
	names := make([]string, len(sizes))
	for i, size := range sizes {
		names[i] = p.File.Sizes[size]
	}
	return both(names)
}

// inSizes reports a finding that holds for some sizes only, and says which.
func (p *Pass) inSizes(sizes []int, f Finding) { p.Report(p.ofSizes(sizes, f)) }

// noteIn reports it as information.
func (p *Pass) noteIn(sizes []int, f Finding) { p.Note(p.ofSizes(sizes, f)) }

func (p *Pass) ofSizes(sizes []int, f Finding) Finding {
	if f.Size = p.sizeName(sizes); f.Size != "" {
		word := "size "
		if len(sizes) > 1 {
			word = "sizes "
		}
		f.Message = word + f.Size + ": " + f.Message
	}
	return f
}
