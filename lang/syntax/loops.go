package syntax

// cutLoops cuts the words that name a stitch and the loop it goes in, `scblo`, `BLhdc`
// and `sc-blo`, in two. A word that the pattern defines stays whole.
func (l *scanner) cutLoops() {
	for i := 0; i < len(l.raw); i++ {
		r := &l.raw[i]
		switch {
		case r.kind == Hyphen && i > 0 && i+1 < len(l.raw) && l.loopAndStitch(l.raw[i-1].lower, l.raw[i+1].lower) && !l.hyphened(i):
			l.raw[i+1].start = r.start // the hyphen goes with the second word
			l.raw = append(l.raw[:i], l.raw[i+1:]...)
		case r.kind == Word && r.end-r.start == len(r.lower):
			if l.begins(i) || r.lower == "floss" { // the thread
				continue
			}
			if at := l.loopAt(r.lower); at > 0 {
				second := *r
				r.lower, r.end = r.lower[:at], r.start+at
				second.lower, second.start, second.glued = second.lower[at:], r.end, true
				l.raw = append(l.raw[:i+1], append([]rawToken{second}, l.raw[i+1:]...)...)
			}
		}
	}
}

// hyphened tells whether the pattern defines the words on both sides of a hyphen as one.
func (l *scanner) hyphened(i int) bool {
	_, n := l.longest(l.vocab.own, i-1)
	return n > 1
}

// begins tells whether a known phrase begins with raw token i.
func (l *scanner) begins(i int) bool {
	entry, _ := l.match(i)
	return entry != nil
}

// loopAt is where the loop's name and the stitch's part in a word, 0 where it has no
// such two parts. Embroidery floss has none.
func (l *scanner) loopAt(word string) int {
	if word == "floss" {
		return 0
	}
	for at := 2; at < len(word)-1; at++ {
		if l.loopAndStitch(word[:at], word[at:]) {
			return at
		}
	}
	return 0
}

// loopAndStitch tells whether one of two words names a stitch and the other a loop.
func (l *scanner) loopAndStitch(a, b string) bool {
	return l.namesStitch(a) && l.namesLoop(b) || l.namesLoop(a) && l.namesStitch(b)
}

func (l *scanner) namesStitch(word string) bool {
	node := l.vocab.trade.after(word)
	return node != nil && node.entry != nil && node.entry.kind == Stitch && !node.entry.counted
}

func (l *scanner) namesLoop(word string) bool {
	node := l.vocab.trade.after(word)
	return node != nil && node.entry != nil && node.entry.kind == Word && (node.entry.canon == "blo" || node.entry.canon == "flo")
}
