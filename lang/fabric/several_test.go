package fabric_test

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/syntax"
)

// grounds are rows that a next one is worked into, with its first stitch.
var grounds = map[string]string{
	"plain": "Ch 21.\nRow 1: Sc in 2nd ch from hook and in next 6 ch, place marker in last st, sc in each ch across; turn.\nRow 2: Ch 1, sc in first sc, ",
	"mixed": "Ch 21.\nRow 1: Sc in 2nd ch from hook, [dc in next ch, sc in next ch] 9 times, sc in last ch; turn.\nRow 2: Ch 1, sc in first sc, ",
	"lace":  "Ch 22.\nRow 1: Sc in 2nd ch from hook, [ch 5, sk 4 ch, sc in next ch] 4 times; turn.\nRow 2: Ch 1, sc in first sc, ",
	"dc":    "Ch 22.\nRow 1: Dc in 4th ch from hook (skipped chs count as dc) and in each ch across; turn.\nRow 2: Ch 3 (counts as dc), sk first dc, dc in next dc, ",
	"round": "Rnd 1: 12 sc in magic ring; join.\nRnd 2: Ch 1, sc in first sc, [ch 3, sk 1, sc in next sc] 5 times, ch 3, sk 1; join.\nRnd 3: Ch 1, sc in first sc, ",
}

// Wherever one stitch goes, several go that are told together: the same places are
// found, and the same faults.
func TestSeveralGoWhereOneWould(t *testing.T) {
	for _, place := range []string{
		"next st", "next 3 sts", "each of next 3 sts", "first st", "last st", "last 2 sts", "each of last 2 sts", "4th st", "5th st", "same st",
		"each st across", "each st around", "each st to last st", "each st to last 4 sts", "each rem st", "rem 6 sts", "marked st", "each st to marked st",
		"next sc", "next dc", "each dc across", "next ch-5 sp", "each ch-5 sp across", "3rd ch of next ch-5 sp", "last ch of next ch-3 sp",
		"center ch of next ch-5 sp", "skipped st", "next st 2 rows below", "top of tch", "next corner", "next ch-2 sp of Row 4",
	} {
		for name, ground := range grounds {
			one, several := ground+"dc in "+place+", sc in next st.\n", ground+"(dc, ch 1, dc) in "+place+", sc in next st.\n"
			assert.Equal(t, placesFound(one), placesFound(several), "in %s, on %s", place, name)
		}
	}
}

// whereabouts is where the stitches of a row went, and what was wrong with that.
type whereabouts struct {
	into   []int
	known  bool
	faults []fabric.FaultKind
}

// placesFound are those of the last row of a piece.
func placesFound(text string) whereabouts {
	piece := fabric.Work(syntax.Read(source.New("Terms: US\nNotions: marker\n\nPiece: A\n" + text))).Pieces[0]
	row := piece.Rows[len(piece.Rows)-1]
	out := whereabouts{known: row.Tallies[0].Known}
	for _, s := range piece.Stitches[0] {
		if s.Row == row.Index && !s.IsSpace() {
			out.into = append(out.into, s.Into)
		}
	}
	out.into = slices.Compact(out.into) // however many went into each
	for _, f := range row.Tallies[0].Faults {
		out.faults = append(out.faults, f.Kind)
	}
	return out
}

// What no chain has is no fault where nothing but a chain lies below: the row is worked
// on something that the piece did not make.
func TestPlacesOfOtherWork(t *testing.T) {
	for _, place := range []string{"next dc", "next ch-3 sp"} {
		got := placesFound("Ch 11.\nRow 1: Sc in 2nd ch from hook, sc in " + place + ", sc in next ch.\n")
		assert.False(t, got.known, place)
		assert.Empty(t, got.faults, place)
	}
	got := placesFound("Ch 11.\nRow 1: Sc in 2nd ch from hook and in each ch across; turn.\nRow 2: Ch 1, sc in next dc, sc in next st.\n")
	assert.Contains(t, got.faults, fabric.PlaceAbsent, "a row of sc has no dc")
}

// A group that a round begins within has one middle, wherever the round reaches it.
func TestMiddleOfTheGroupThatARoundBeginsIn(t *testing.T) {
	const flower = "Rnd 1: 6 sc in magic ring; join.\nRnd 2: Ch 1, [5 dc in next sc, sc in next sc] 3 times; join.\nRnd 3: Join B with sl st in 2nd dc, ch 1, sc in same st, "
	three := placesFound(flower + "[sc in center dc of next 5-dc group] 3 times; join.\n")
	assert.Empty(t, three.faults)
	four := placesFound(flower + "[sc in center dc of next 5-dc group] 4 times; join.\n")
	assert.NotEmpty(t, four.faults, "there are three")
}
