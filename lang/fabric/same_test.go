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
