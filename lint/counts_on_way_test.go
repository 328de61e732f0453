package lint_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// What a branch counts on the way may be counted from the last count, from its chain or from
// where it left, and from nowhere else.
func TestCountsOnTheWay(t *testing.T) {
	const twig = "Terms: US\n\nPiece: Twig\nStep 1. Ch 10.\nStep 2. Shoot: ch 5; thorn: ch 4, sl st in 2nd ch from hook and in next 2 ch (3 sl sts); " +
		"ch 6; sl st in 2nd ch from hook and in next 4 ch (5 sl sts), sl st in each of the 5 ch below the thorn (10 sl sts). You are back at the stem.\n" +
		"Step 3. Stem tip: ch 4. Sc in 2nd ch from hook and in next 2 ch, then in each of the 10 ch. (13 sc) Fasten off.\n"
	assert.Empty(t, grave(twig))
	assert.Empty(t, grave(strings.Replace(twig, "(5 sl sts), sl st", "(8 sl sts), sl st", 1)), "with the thorn")
	for said, told := range map[string]string{
		"(3 sl sts)":  "count-mismatch: makes 3 sl sts, says 4",
		"(5 sl sts)":  "count-mismatch: makes 5 sl sts, says 6",
		"(10 sl sts)": "count-mismatch: makes 10 sl sts, says 9",
	} {
		_, wrong, _ := strings.Cut(told, "says ")
		assert.Contains(t, grave(strings.Replace(twig, said, "("+wrong+" sl sts)", 1)), told)
	}
}
