package fabric_test

import (
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

func TestSame(t *testing.T) {
	worked := func(text string) *fabric.Fabric {
		return fabric.Work(syntax.Read(source.New("Terms: US\n\nPiece: Cup\n" + text)))
	}
	const cup = "Rnd 1: 6 sc in magic ring.\nRnd 2: [Sc in next st, 2 sc in next st] 3 times.\n"
	for text, same := range map[string]bool{
		cup: true,
		"Rnd 1: 6 single crochet in ring.\nRnd 2: *Sc in next st, 2 sc in next st; rep from * around.\n":               true,
		"Rnd 1: 6 sc in magic ring.\nRnd 2: Sc in next st, [2 sc in next st, sc in next st] twice, 2 sc in next st.\n": true,
		"Rnd 1: 6 sc in magic ring.\nRnd 2: [2 sc in next st, sc in next st] 3 times.\n":                               false,
		"Rnd 1: 6 sc in magic ring.\nRnd 2: [Sc in next st, 2 hdc in next st] 3 times.\n":                              false,
		"Rnd 1: 6 sc in magic ring.\nRnd 2: [Sc blo in next st, 2 sc in next st] 3 times.\n":                           false,
		"Rnd 1: 6 sc in magic ring.\nRnd 2: [Wibble, 2 sc in next st] 3 times.\n":                                      false,
		"Rnd 1: 6 sc in magic ring.\n":       false,
		cup + "\nPiece: Nut\nRow 1: Ch 5.\n": false,
	} {
		assert.Equal(t, same, fabric.Same(worked(cup), worked(text)), text)
	}
}

// What stands for stitches that a row states, and that only the pattern knows, is
// the same each time.
func TestSameOfWhatIsStated(t *testing.T) {
	text, err := os.ReadFile("../../testdata/broken/bramble-shell-runner--sc-part.crochet")
	require.NoError(t, err)
	worked := func() *fabric.Fabric { return fabric.Work(syntax.Read(source.New(string(text)))) }
	assert.True(t, fabric.Same(worked(), worked()))
}

// What a word of the pattern's own stands for is part of the work, though no piece calls for it.
func TestSameOfParts(t *testing.T) {
	worked := func(leaf string) *fabric.Fabric {
		return fabric.Work(syntax.Read(source.New("Terms: US\n\nSpecial stitches\n" + leaf + "\n\nPiece: Twig\nCh 11.\nRow 1: Sl st in 2nd ch from hook and in next 9 ch.\n")))
	}
	const leaf = "Leaf: ch 6, sc in 2nd ch from hook and in next 4 ch."
	for text, same := range map[string]bool{
		leaf: true,
		"Frond: ch 6, single crochet in 2nd ch from hook and in next 4 ch. (5 sc)": true,
		"Leaf: ch 7, sc in 2nd ch from hook and in next 5 ch.":                     false,
		"Leaf: ch 6, hdc in 2nd ch from hook and in next 4 ch.":                    false,
		leaf + "\nThorn: ch 3, sl st in 2nd ch from hook and in next ch.":          false,
		"Leaf: 5 dc in next st.": false,
	} {
		assert.Equal(t, same, fabric.Same(worked(leaf), worked(text)), text)
	}
}
