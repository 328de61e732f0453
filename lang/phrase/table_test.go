package phrase_test

import (
	"flag"
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/phrase"

	_ "stitchproof/lsp" // with all packages that have expressions
)

var update = flag.Bool("update", false, "write the table anew")

// The table of facts is that of the expressions that the program is written with.
func TestTable(t *testing.T) {
	const table = "table.go"
	source, err := phrase.Source()
	require.NoError(t, err)
	if *update {
		require.NoError(t, os.WriteFile(table, source, 0o644))
	}
	was, err := os.ReadFile(table)
	require.NoError(t, err)
	assert.True(t, string(was) == string(source), "expressions have changed: write the table anew with -update")
}
