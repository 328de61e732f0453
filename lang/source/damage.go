package source

import (
	"strings"
	"unicode/utf8"
)

// lineEnds are the line ends a text may have; CRLF stands before the two line ends
// it is made of, so that the first suffix that fits is the right one.
var lineEnds = [...]string{"\r\n", "\n", "\r"}

// DamageKind says what is unusual about the bytes of a text.
type DamageKind uint8

// The kinds of damage. None hinders reading the text.
const (
	ByteOrderMark DamageKind = iota // U+FEFF at the head of the text
	InvalidUTF8                     // bytes that are no part of valid UTF-8
	MixedLineEnds                   // line ends that differ from [Text.LineEnd]
)

// Damage is one unusual thing about a text, reported once however often it occurs:
// Span is the first place, Count the number of places (bytes for InvalidUTF8).
type Damage struct {
	Kind  DamageKind
	Span  Span
	Count int
}

// Damage lists what is unusual about the bytes of the text, in the order of the
// kinds. It reads the whole text.
func (t *Text) Damage() []Damage {
	var found []Damage
	for _, d := range []Damage{t.markDamage(), t.utf8Damage(), t.lineEndDamage()} {
		if d.Count > 0 {
			found = append(found, d)
		}
	}
	return found
}

// LineEnd is the commonest line end of the text: "\n", "\r\n" or "\r". Of equally
// common ones it is the first in that order; without any it is "\n".
func (t *Text) LineEnd() string {
	if !strings.Contains(t.content, "\r") {
		return "\n"
	}
	count := map[string]int{}
	for i := range t.Lines() {
		count[t.endOf(t.LineWithEnd(i))]++
	}
	commonest := "\n"
	for _, end := range []string{"\r\n", "\r"} {
		if count[end] > count[commonest] {
			commonest = end
		}
	}
	return commonest
}

func (t *Text) markDamage() Damage {
	d := Damage{Kind: ByteOrderMark}
	if n := t.head(); n > 0 {
		d.add(Span{0, n})
	}
	return d
}

func (t *Text) utf8Damage() Damage {
	d := Damage{Kind: InvalidUTF8}
	for i, r := range t.content {
		if r != utf8.RuneError {
			continue
		}
		// A U+FFFD that was written into the text is valid and three bytes long.
		if _, size := utf8.DecodeRuneInString(t.content[i:]); size == 1 {
			d.add(Span{i, i + 1})
		}
	}
	return d
}

func (t *Text) lineEndDamage() Damage {
	d := Damage{Kind: MixedLineEnds}
	usual := t.LineEnd()
	for i := range t.Lines() {
		line := t.LineWithEnd(i)
		if end := t.endOf(line); end != "" && end != usual {
			d.add(Span{line.End - len(end), line.End})
		}
	}
	return d
}

// add counts one more place of the damage.
func (d *Damage) add(place Span) {
	if d.Count == 0 {
		d.Span = place
	}
	d.Count++
}
