package lint

import (
	"strconv"
	"unicode/utf8"

	"stitchproof/lang/source"
)

var textDamaged = &Rule{
	Name:     "text-damaged",
	Family:   "order",
	Severity: Warning,
	Summary:  "The file is text: UTF-8, with no stray bytes.",
	Why: "Bytes that are no letters turn up where a word processor saved in an old encoding or a file was cut off. A maker sees " +
		"boxes or question marks in place of what stood there. The text is kept as it is, and read around them.",
	Bad: "Pattern: Wren's nest\nTerms: US\n\nPiece: Nest\nWith A (moss \xe9paisse), ch 11.\n" +
		"Row 1: Sc in 2nd ch from hook and in each ch across. (10 sc)\nFasten off.\n",
	Good: "Pattern: Wren's nest\nTerms: US\n\nPiece: Nest\nWith A (moss épaisse), ch 11.\n" +
		"Row 1: Sc in 2nd ch from hook and in each ch across. (10 sc)\nFasten off.\n",
	Check: checkTextDamaged,
}

// unreadable tells of a section with bytes that are no text.
var unreadable = &fact[bool]{func(_ *Pass, s section) bool { return !utf8.ValidString(s.text) }}

func checkTextDamaged(p *Pass) {
	if !anywhere(p, unreadable) {
		return
	}
	for _, d := range p.File.Text.Damage() {
		if d.Kind != source.InvalidUTF8 {
			continue // byte-order marks and odd line ends hinder nobody
		}
		bytes := "a byte that is no letter of UTF-8 stands here"
		if d.Count > 1 {
			bytes = strconv.Itoa(d.Count) + " bytes that are no letters of UTF-8 stand in the file, the first here"
		}
		p.Report(Finding{Span: d.Span, Message: bytes + ": save it as UTF-8"})
	}
}
