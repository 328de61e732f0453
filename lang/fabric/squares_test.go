package fabric_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// A square of a filet need not name how many places it takes; then nobody can count those that
// are made.
func TestSquaresThatNameNoPlace(t *testing.T) {
	const text = "Terms: US\n\nSpecial stitches\nGap: sk next 2 sts or next ch-2 sp, dc.\n\nCh 12.\n" +
		"Row 1: Dc in 4th ch from hook and in each ch across. (10 dc)\nRow 2: Ch 3, 3 gaps. (3 gaps)\n"
	worked := fabric.Work(syntax.Read(source.New(text)))
	rows := worked.Pieces[0].Rows
	assert.NotEqual(t, fabric.Disagrees, rows[len(rows)-1].Agrees())
}
