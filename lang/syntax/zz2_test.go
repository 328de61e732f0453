package syntax_test

import (
	"fmt"
	"os"
	"strings"
	"testing"

	"stitchproof/lang/syntax"
)

func TestZT(t *testing.T) {
	text, _ := os.ReadFile("/tmp/w6/zz.in")
	for line := range strings.Lines(string(text)) {
		var out []string
		for _, tok := range syntax.Lex(strings.TrimSpace(line), syntax.Standard()) {
			out = append(out, fmt.Sprintf("%v:%s", tok.Kind, tok.Canon))
		}
		fmt.Println("[T]", strings.Join(out, " "))
	}
}
