package lint_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

// Where the lines of the list begin with the names of yarns, a name that the rows call one by stands among them.
func TestYarnNames(t *testing.T) {
	const work = "\nTWIG\nWith Bark, ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across; turn. (20 sc)\nRow 2: With Stamen, ch 1, sc in each st across. (20 sc)\nFasten off.\n"
	for list, told := range map[string]string{
		"Bark: dark brown 4-ply wool, 15 g\nStamen: yellow cotton, 1 m\n":    "",
		"Bark: dark brown 4-ply wool, 15 g\nBlossom: white cotton, 10 g\n":   "yarn Stamen is used, and the materials do not list it",
		"- **Bark**, aran-weight wool, 15 g\n- **Blossom**, 4-ply, 10 g\n":   "yarn Stamen is used, and the materials do not list it",
		"Bark (brown), 20 g\nPollen (yellow), 5 g\n":                         "yarn Stamen is used, and the materials do not list it",
		"Bark: dark brown 4-ply wool, 15 g, and a scrap in the stamen's hue": "", // it is spoken of
		"Brown 4-ply wool, 15 g\nA scrap of yellow cotton\n":                 "", // none is called by a name
	} {
		t.Run(list, func(t *testing.T) {
			found := ""
			for _, f := range lint.Analyze(source.New("Terms: US\n\nMATERIALS\n" + list + work)).Findings {
				if f.Rule == "yarn-undeclared" {
					found += f.Message
				}
			}
			assert.Equal(t, told, found)
		})
	}
}
