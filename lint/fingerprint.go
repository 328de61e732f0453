package lint

import (
	"crypto/sha256"
	"encoding/hex"
	"strconv"
	"strings"

	"stitchproof/lang/source"
)

// Fingerprints are signs by which findings are known again, one each in their
// order: of the rule, the sizes and the words of the line, so that they stay
// where lines move, and of which one it is among findings with the same.
func Fingerprints(t *source.Text, found []Finding) []string {
	met := map[string]int{}
	out := make([]string, len(found))
	for i, f := range found {
		line := t.Slice(t.Line(t.LineOf(f.Span.Start)))
		sign := strings.Join(append([]string{f.Rule, f.Size}, strings.Fields(line)...), "\x00")
		sum := sha256.Sum256([]byte(sign + "\x00" + strconv.Itoa(met[sign])))
		met[sign]++
		out[i] = hex.EncodeToString(sum[:16])
	}
	return out
}
