package syntax_test

import (
	"slices"
	"strings"
	"testing"
)

// TestLines reads patterns as they are published, with no markup: which lines
// are instructions, where a piece begins, what is prose.
func TestLines(t *testing.T) {
	for _, d := range published {
		t.Run(d.name, func(t *testing.T) {
			if got := outline(read(d.text)); got != d.want {
				t.Errorf("%s\nis read as\n%s\nwant\n%s", d.text, got, d.want)
			}
		})
	}
}

var published = []document{
	{"headings that run in, with every mark", `BACK. With A, ch 20.
Row 1: dc in each ch.
SLEEVE—Ch 12.
FRONT ... Starting at neck, ch 30.
HOOD (make 2)—Ch 14.
TIE: (make 2): Ch 16.
No. 2.--Make a chain of 9.
Left wing — ch 15.
Rose: ch 6, join with sl st to form ring.
Leaf Rnd 1: 6 sc in a magic ring.
`, `piece BACK
no label: yarn use a, chain 20
row 1: work dc each=1 each ch to the end
piece SLEEVE
no label: chain 12
piece FRONT
no label: remark, chain 30
piece HOOD make 2
no label: chain 14
piece TIE make 2
no label: chain 16
piece No. 2
no label: chain 9
piece Left wing
no label: chain 15
piece Rose
no label: chain 6, join into a ring
piece Leaf
rnd 1: work sc each=6 next 1 ring
`},
	{"a heading in capitals that goes on with the piece is a label", `CUFF
Row 1: ch 12.
BORDER: Sc evenly around.
Edge—Ch 3, dc in each st around.
Next row: SHAPE NECK: Sc in next 4 sts.
Row 5: Thumb gusset: sc in next 2 sts.
`, `piece CUFF
row 1: chain 12
named BORDER: work sc each=1 each st to the end evenly
named Edge: chain 3, work dc each=1 each st to the end
next row: remark, work sc each=1 next 4 st
row 5: remark, work sc each=1 next 2 st
`},
	{"headings with no mark", `Tail

Rnd 1: 6 sc in ring.

Ear – make 2
Rnd 1: 4 sc in ring.

Body, worked from the nose
• 6 sc in a magic ring
• inc around

Feet
4 sc into a magic ring
`, `piece Tail
rnd 1: work sc each=6 next 1 ring
piece Ear make 2
rnd 1: work sc each=4 next 1 ring
piece Body, worked from the nose
no label: work sc each=6 next 1 ring
no label: work inc each=1 each st to the end
piece Feet
no label: work sc each=4 next 1 ring
`},
	{"a foundation stays with its rows", `Ch 26.
Moss border
Row 1: sc in 2nd ch from hook and in each ch across.
`, `no label: chain 26
prose "Moss border"
row 1: work sc each=1 nth=2 ch from hook + each ch to the end
`},
	{"a text wrapped to a width", `Row 1: Ch 3 (counts as dc), dc in next 4 sts, ch 1, skip next st, dc in each
of next 4 sts, ch 1, skip next st, dc in each of next 4 sts (one leaf made),
(ch 1, skip next st, dc in next st) twice, dc in each of next 6 sts; turn
the work.
Row 2: Ch 3, dc in each st and in each ch-1 space across to the last st, then
dc in top of the turning chain.
Turn.

The hedge is at its best in the first week of May, before the hawthorn drops
its flowers, and this is the week to block a shawl out of doors.
`, `row 1: chain 3 counts as dc, work dc each=1 next 4 st, chain 1, skip next 1 st, work dc each=1 next 4 st, chain 1, skip next 1 st, work dc each=1 next 4 st, remark, repeat {chain 1, skip next 1 st, work dc each=1 next 1 st} 2 in all, work dc each=1 next 6 st, turn
row 2: chain 3, work dc each=1 each st&ch-1 sp to last 1 st, work dc each=1 next 1 top of (next 1 turning chain)
no label: turn
prose "The hedge is at its best in the first week of May, before the hawthorn drops\nits flowers, and this is the week to block a shawl out of doors."
`},
	{"a label on a line of its own", `Rnd 1:
6 sc in ring.
Rnd 2
2 sc in each st around. (12)
Rnd 3:
Rnd 4: sc around.
`, `rnd 1: work sc each=6 next 1 ring
rnd 2: work sc each=2 each st to the end, count 12
rnd 3: 
rnd 4: work sc each=1 each st to the end
`},
	{"several rows on one line", `R1: 6 sc in ring {6 sts} R2: inc around {12 sts} R3: sc around
Rnd 4. sc around. Rnd 5. inc around.
Row 6: sc across, turn; Row 7: dc across.
8th row: dc across. 9th and 10th rows same as 8th row.
`, `row 1: work sc each=6 next 1 ring, count 6 st
row 2: work inc each=1 each st to the end, count 12 st
row 3: work sc each=1 each st to the end
rnd 4: work sc each=1 each st to the end
rnd 5: work inc each=1 each st to the end
row 6: work sc each=1 each st to the end, turn
row 7: work dc each=1 each st to the end
row 8: work dc each=1 each st to the end
row 9,10: rows 8
`},
	{"a numbered list is rows only where it instructs", `You will need
1. A ball of moss yarn
2. A 3 mm hook

1. Ch 4.
2. 11 dc in 4th ch from hook
3. Dc in each st around
4. Enjoy your little cup!
`, `prose "You will need"
prose "1. A ball of moss yarn"
prose "2. A 3 mm hook"
row 1: chain 4
row 2: work dc each=11 nth=4 ch from hook
row 3: work dc each=1 each st to the end
prose "4. Enjoy your little cup!"
`},
	{"prose before and between the steps of a line", `Colours: moss (A), haw red (B). With A, ch 21.
Row 1: sc across.
It is easy to lose count here. Fasten off.
`, `prose "Colours: moss (A), haw red (B)."
no label: yarn use a, chain 21
row 1: work sc each=1 each st to the end
prose "It is easy to lose count here."
no label: fasten off
`},
	{"contents and captions are prose", `Contents
Row by row ........ 4
Hawthorn twig ..... 7

GAUGE:
18 sts = 4 inches
3 rows = 1 inch

Photo 1: the ring, closed.
Fig. 2 – round 3 from the back
Row 1: ch 8.
(see photo 3)
The cup should now look like an acorn.
You can leave the tail long if you like.
Perfect for beginners: one evening each.
Row 2: dc in each st.
`, `prose "Contents"
prose "Row by row ........ 4"
prose "Hawthorn twig ..... 7"
prose "GAUGE:"
field gauge = 18 sts = 4 inches 3 rows = 1 inch
prose "Photo 1: the ring, closed."
prose "Fig. 2 – round 3 from the back"
row 1: chain 8
prose "(see photo 3)"
prose "The cup should now look like an acorn."
prose "You can leave the tail long if you like."
prose "Perfect for beginners: one evening each."
row 2: work dc each=1 each st to the end
`},
	{"what stands in a list of definitions", `A – decrease, 2 together
block = 3 dc in one space
* * → repeat to the end of the round
3x – three single crochets
( ) = the number of stitches

Row 1: A, block.
`, `definition A is decrease, 2 together
definition block = work dc each=3 next 1 sp
prose "* * → repeat to the end of the round"
prose "3x – three single crochets"
prose "( ) = the number of stitches"
row 1: work dec each=1 next 1 st, work "block" each=1 next 1 st
`},
	{"a part of the pattern is no definition", `BACK: 66 (72, 78) ch, work 20 rows even.
MOTIF: With A, ch 5, join to form a ring.
`, `piece BACK
no label: chain 66/72/78, even for 20
piece MOTIF
no label: yarn use a, chain 5, join into a ring
`},
	{"a sentence on what there is a number of", `Twelve squares make a good cushion front, three across and four down.
Ch 8.
`, `prose "Twelve squares make a good cushion front, three across and four down."
no label: chain 8
`},
	{"rows that a gauge measures", `Rnds 1-3 = 5 cm across
Row 1: ch 8.
`, `prose "Rnds 1-3 = 5 cm across"
row 1: chain 8
`},
	{"sizes told in a sentence", `Directions are for small size. Changes for medium and large sizes are in parentheses.
Ch 10 (12, 14).
`, `prose "Directions are for small size. Changes for medium and large sizes are in parentheses."
no label: chain 10/12/14
`},
	{"sizes told in a title", `Stile Mitts, sizes child (adult)
Ch 10 (12).
`, `piece Stile Mitts, sizes child (adult)
no label: chain 10/12
`},
	{"sizes told by the numbers alone", `Row 1: ch 10 (12, 14).
Row 2: sc in next 4 (5, 6) sts, dc in next 6 (7, 8) sts.
`, `row 1: chain 10/12/14
row 2: work sc each=1 next 4/5/6 st, work dc each=1 next 6/7/8 st
`},
	{"rows by parity", `Row 1: ch 8.
All even rows: sc in each st.
All odd rows: dc in each st.
`, `row 1: chain 8
even rows by parity: work sc each=1 each st to the end
odd rows by parity: work dc each=1 each st to the end
`},
	{"a range for each size in a label", `Sizes: S (M)
Row 1: ch 8.
Rows 2-5 {2-7}: sc across.
`, `field sizes = S (M)
row 1: chain 8
row 2/2-5/7: work sc each=1 each st to the end
`},
	{"a typing slip keeps its line", `Row 1: ch 8.
Brim
Sv in next 3 sts, ch 2, sc in next 3 sts.
Border: sc eevnly along, ch 1.
`, `row 1: chain 8
prose "Brim"
no label: unread, chain 2, work sc each=1 next 3 st
named Border: unread, chain 1
`},
}

// TestTurningSaid finds what prose says of beginning chains, and only that.
func TestTurningSaid(t *testing.T) {
	f := read(`Note: beginning ch-3 counts as a dc throughout. Join every round.
The ch 1 at the start of a row does not count as a stitch.
I like to count the chain.

Row 1: ch 8.
`)
	var got []string
	for _, s := range f.Turning {
		got = append(got, strings.TrimSpace(f.Text.Slice(s)))
	}
	want := []string{"The ch 1 at the start of a row does not count as a stitch.", "beginning ch-3 counts as a dc throughout."}
	if !slices.Equal(got, want) {
		t.Errorf("found %q, want %q", got, want)
	}
}
