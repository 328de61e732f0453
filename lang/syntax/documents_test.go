package syntax_test

import (
	"strings"
	"testing"
)

// document is a text and what it is read as, in the outline's words.
type document struct{ name, text, want string }

// TestDocuments reads whole files: what is a header field, a definition, a
// heading, an instruction, a comment, prose.
func TestDocuments(t *testing.T) {
	for _, d := range documents {
		t.Run(d.name, func(t *testing.T) {
			if got := outline(read(d.text)); got != d.want {
				t.Errorf("%s\nis read as\n%s\nwant\n%s", d.text, got, d.want)
			}
		})
	}
}

var documents = []document{
	{"abbreviations with dots", `Sloe wrist
Abbreviations and terms (US)
ch ........ chain
hw ........ haw: 3 sc in next st or whatever is beneath it
sc...single crochet
st, sts ... stitch, stitches

Row 1: ch 8.
`, `prose "Sloe wrist"
prose "Abbreviations and terms (US)"
definition ch is chain
definition hw is haw: 3 sc in next st or whatever is beneath it
definition sc is single crochet
definition st|sts is stitch, stitches
row 1: chain 8
`},
	{"abbreviations under a heading of the pattern's own", `What these letters stand for
ch, chain
hdc, half double crochet

Row 1: ch 8.
`, `prose "What these letters stand for"
definition ch is chain
definition hdc is half double crochet
row 1: chain 8
`},
	{"abbreviations in one line", `Shorthand: ch (chain), sc (single crochet), sc2tog (a loop out of each of 2 sts, then through all).
ch chain | rep repeat | st(s) stitch(es)

*ch* chain - *hdc* half double crochet - *st(s)* stitch(es)

Row 1: ch 8.
`, `field abbreviations = ch (chain), sc (single crochet), sc2tog (a loop out of each of 2 sts, then through all).
definition ch is chain
definition sc is single crochet
definition sc2tog is a loop out of each of 2 sts, then through all
definition ch is chain
prose "ch chain | rep repeat | st(s) stitch(es)"
definition rep is repeat
definition st is stitch(es)
definition ch is chain
prose "*ch* chain - *hdc* half double crochet - *st(s)* stitch(es)"
definition hdc is half double crochet
definition st is stitch(es)
row 1: chain 8
`},
	{"dots behind a heading", `HAWS (make 9) ... Starting at the middle with Leaf Green, ch 3.
Row 1: ch 8.
`, `prose "HAWS (make 9) ..."
no label: remark, chain 3
row 1: chain 8
`},
	{"the header in a table and in columns", `| Thing | What |
|---|---|
| Hook | 4 mm (G-6) |
| Size | 6 in (15 cm) wide |

Finished     20 cm round
Front edge: 11 cm

Row 1: ch 8.
`, `prose "| Thing | What |"
prose "|---|---|"
field hook = 4 mm (G-6)
field sizes = 6 in (15 cm) wide
field finished size = 20 cm round
field front edge = 11 cm
row 1: chain 8
`},
	{"a heading in capitals that says how many", `HAW LEAF - make 2

Row 1: ch 8.

Work even
Next row: ch 8.
`, `piece HAW LEAF make 2
row 1: chain 8
prose "Work even"
next row: chain 8
`},
	{"words in italics before a colon", `Row 1: ch 8, *second twig:* ch 5.
`, `row 1: chain 8, remark, chain 5
`},
	{"header", `Pattern: Hawthorn pin
Designer: the hedge
Terms: US
Skill level: easy
Sizes: S (M, L)
Hook: 3 mm
Yarn: bark brown, 20 m
Gauge: 24 sc = 10 cm
Finished size: 3 cm
Notions: needle
Stitch multiple: 6 + 2
Turning chains: ch 3 counts as dc
Version: 2
Row 1: ch 8.
`, `field pattern = Hawthorn pin
field designer = the hedge
field terms = US
field skill level = easy
field sizes = S (M, L)
field hook = 3 mm
field yarn = bark brown, 20 m
field gauge = 24 sc = 10 cm
field finished size = 3 cm
field notions = needle
field stitch multiple = 6 + 2
field turning chains = ch 3 counts as dc
field version = 2
row 1: chain 8
`},
	{"header keys by other names", `Title: Acorn cup
TENSION: 20 dc
Crochet hook: 4 mm
Level: hard
Measurements: 5 cm
You will also need: pins
Colour: moss
Row 1: ch 8.
`, `field pattern = Acorn cup
field gauge = 20 dc
field hook = 4 mm
field skill level = hard
field finished size = 5 cm
field notions = pins
field yarn = moss
row 1: chain 8
`},
	{"yarns by letter and name", `Yarn A: moss
Yarn B: bramble, dk (3), 10 m
Colour C: haw red
Color D: bark
Row 1: with A, ch 8.
`, `field yarn A = moss
field yarn B = bramble, dk (3), 10 m
field yarn C = haw red
field yarn D = bark
row 1: yarn use a, chain 8
`},
	{"header in bold and in a list", `**Hook:** 4 mm
* Gauge: 20 dc
- Notions: pins
Row 1: ch 8.
`, `field hook = 4 mm
field gauge = 20 dc
field notions = pins
row 1: chain 8
`},
	{"a key that nobody knows", `Pattern: Acorn
Weather: wet
Row 1: ch 8.
`, `field pattern = Acorn
field weather = wet
row 1: chain 8
`},
	{"a wrapped header field", `Finished size: 9 cm
  (3 1/2 in) across
Notions: needle,
  pins
Row 1: ch 8.
`, `field finished size = 9 cm (3 1/2 in) across
field notions = needle, pins
row 1: chain 8
`},
	{"materials in a section", `Materials
Hook: 3 mm
Yarn: moss
Gauge: 20 dc

Row 1: ch 8.
`, `prose "Materials"
field hook = 3 mm
field yarn = moss
field gauge = 20 dc
row 1: chain 8
`},
	{"pieces", `Piece: Leaf (make 6)
Row 1: ch 8.
## Stalk
Row 1: ch 9.
Bud:
Row 1: ch 10.
HAW (make 2)
Row 1: ch 11.
Piece: Wren's nest
Ch 12.
`, `piece Leaf make 6
row 1: chain 8
piece Stalk
row 1: chain 9
piece Bud
row 1: chain 10
piece HAW make 2
row 1: chain 11
piece Wren's nest
no label: chain 12
`},
	{"a heading that runs into its instruction", `LEAF (make 6): ch 8.
Row 2: dc in each st.
STALK: ch 9.
`, `piece LEAF make 6
no label: chain 8
row 2: work dc each=1 each st to the end
piece STALK
no label: chain 9
`},
	{"row 1 again begins a piece", `Row 1: ch 8.
Row 2: dc in each st.
Row 1: ch 9.
Rnd 1: ch 10.
`, `row 1: chain 8
row 2: work dc each=1 each st to the end
again row 1: chain 9
rnd 1: chain 10
`},
	{"a heading with nothing below is prose", `Piece: Leaf
Row 1: ch 8.
Piece: Finishing
The end.
`, `piece Leaf
row 1: chain 8
prose "Piece: Finishing"
prose "The end."
`},
	{"special stitches", `Special stitches
haw: (2 dc, ch 2, sl st) in next st.
Fan (fn): (3 dc, ch 1, 3 dc) in next sp
leaf bud: uses 1 st, makes 5 dc

Row 1: haw in next st, fn in next sp, leaf bud.
`, `prose "Special stitches"
definition haw = group {work dc each=2 here, chain 2, work sl st each=1 here} in next 1 st
definition Fan|fn = group {work dc each=3 here, chain 1, work dc each=3 here} in next 1 sp
definition leaf bud uses 1 makes 5 = unread, work dc each=1 next 5 st
row 1: work "haw" each=1 next 1 st, work "fn" each=1 next 1 sp, work "leaf bud" each=1 next 1 st
`},
	{"a definition of many lines", `Special stitches
haw: (2 dc, ch 2,
  sl st) in next st.

Row 1: haw in next st.
`, `prose "Special stitches"
definition haw = group {work dc each=2 here, chain 2, work sl st each=1 here} in next 1 st
row 1: work "haw" each=1 next 1 st
`},
	{"a definition without a heading", `haw = (2 dc, ch 2) in next st
Row 1: haw in next st.
`, `definition haw = group {work dc each=2 here, chain 2} in next 1 st
row 1: work "haw" each=1 next 1 st
`},
	{"abbreviations below a heading", `Abbreviations
sc = single crochet
ch - chain
sl st – slip stitch
rep: repeat

Row 1: ch 8.
`, `prose "Abbreviations"
definition sc is single crochet
definition ch is chain
definition sl st is slip stitch
definition rep is repeat
row 1: chain 8
`},
	{"abbreviations behind their meanings", `Abbreviations
chain (ch)
stitch(es) (st(s))
single crochet (sc)

Row 1: Sc in next 3 ch.
`, `prose "Abbreviations"
prose "chain (ch)"
prose "stitch(es) (st(s))"
prose "single crochet (sc)"
row 1: work sc each=1 next 3 ch
`},
	{"abbreviations without a mark", `Abbreviations
ch chain
sl st slip stitch
st(s) stitch(es)
sc single crochet · rep repeat · RS right side

Ch 12, join with sl st in first ch.
Row 1: Sc in next 3 ch.
`, `prose "Abbreviations"
definition ch is chain
definition sl st is slip stitch
definition st is stitch(es)
definition sc is single crochet
prose "sc single crochet · rep repeat · RS right side"
definition rep is repeat
definition RS is right side
no label: chain 12, join at first 1 ch
row 1: work sc each=1 next 3 ch
`},
	{"abbreviations in columns that a word fills", `Abbreviations
ch     chain
sl st  slip stitch
dc2tog work 2 dc together

Row 1: ch 8.
`, `prose "Abbreviations"
definition ch is chain
definition sl st is slip stitch
definition dc2tog is work 2 dc together
row 1: chain 8
`},
	{"abbreviations in bold under a heading with the dialect", `## Abbreviations, UK terms

- **ch** chain
- **MB** make bobble: (yrh, draw up a loop) 3 times
- **CR2** cross 2 (miss 1 st, 1 dc in next st, 1 dc in the missed st)

Row 1: ch 8.
`, `prose "## Abbreviations, UK terms"
definition ch is chain
definition MB|bobble = repeat {motion, motion} 3 in all
definition CR2 = skip next 1 st, work dc each=1 next 1 st, work dc each=1 previous st
row 1: chain 8
`},
	{"a section under a line", `Special stitches
----------------
Cluster: dc3tog in one stitch.

Row 1: ch 8.
`, `prose "Special stitches"
prose "----------------"
definition Cluster = work dc3tog each=1 next 1 st
row 1: chain 8
`},
	{"steps numbered on under titles", `## Twig
1. Ch 20.
2. Sc in 2nd ch from hook, sc in next 4 ch.

Branch B, with a fork
3. Ch 10, sc in 2nd ch from hook.

COMING DOWN
4. Sc in next 4 ch of stem.
`, `piece Twig
row 1: chain 20
row 2: work sc each=1 nth=2 ch from hook, work sc each=1 next 4 ch
no label: branch b
prose ", with a fork"
row 3: chain 10, work sc each=1 nth=2 ch from hook
prose "COMING DOWN"
row 4: work sc each=1 next 4 ch of stem
`},
	{"a row that is labelled in bold with its part", `## Bands

**Band row 1:** Ch 1, 35 sc up the right front.

**Band row 2:** Ch 1, sc in each st.
`, `piece Bands
row 1: chain 1, work sc each=35 next 1 edge evenly
row 2: chain 1, work sc each=1 each st to the end
`},
	{"abbreviations in a table", `Abbreviations
| abbr. | meaning |
| --- | --- |
| ch | chain |
| st(s) | stitch(es) |

Row 1: ch 8.
`, `prose "Abbreviations"
prose "| abbr. | meaning |"
prose "| --- | --- |"
definition ch is chain
definition st is stitch(es)
row 1: chain 8
`},
	{"abbreviations below no heading", `ch chain
dc double crochet
inc 2 dc in one st

R1: ch 8.
`, `definition ch is chain
definition dc is double crochet
definition inc is 2 dc in one st
row 1: chain 8
`},
	{"notes below a blank line", `## Notes

The ch 2 at the beginning of a round does not count as a stitch.

Row 1: ch 8.
`, `prose "## Notes"
prose "The ch 2 at the beginning of a round does not count as a stitch."
row 1: chain 8
`},
	{"abbreviations in a line", `Abbreviations: ch = chain, tr = treble,
  dc = double crochet
Row 1: ch 8.
`, `field abbreviations = ch = chain, tr = treble, dc = double crochet
definition ch is chain
definition tr is treble
definition dc is double crochet
row 1: chain 8
`},
	{"comments", `// the writer's own
Row 1: ch 8.
  // allow count-mismatch: the swatch is meant to flare
Row 2: dc in each st. // not one: it stands in the row
//
`, `comment the writer's own
row 1: chain 8
comment allow count-mismatch: the swatch is meant to flare
row 2: work dc each=1 each st to the end, unread, unread
comment ` + `
`},
	{"continuation lines", `Row 1: ch 8,
dc in next st.
Row 2: dc in next st;
sc in next st.
Row 3: (dc in next st,
sc in next st) twice.
Row 4: dc in next st
  and sc in next st.
Row 5: dc in next st,

Row 6: sc in next st,
Row 7: hdc in next st.
`, `row 1: chain 8, work dc each=1 next 1 st
row 2: work dc each=1 next 1 st, work sc each=1 next 1 st
row 3: repeat {work dc each=1 next 1 st, work sc each=1 next 1 st} 2 in all
row 4: work dc each=1 next 1 st, work sc each=1 next 1 st
row 5: work dc each=1 next 1 st
row 6: work sc each=1 next 1 st
row 7: work hdc each=1 next 1 st
`},
	{"several rows on one line", `Row 1: ch 8. Row 2: dc in each st. (8) Row 3: sc in each st, turn.
5th rnd: sc around. 6th rnd: dc around.
`, `row 1: chain 8
row 2: work dc each=1 each st to the end, count 8
row 3: work sc each=1 each st to the end, turn
rnd 5: work sc each=1 each st to the end
rnd 6: work dc each=1 each st to the end
`},
	{"a row spoken of does not begin one", `Row 1: ch 8.
Row 2: rep Row 1. Rep Row 2 twice.
`, `row 1: chain 8
row 2: rows 1, rows 2 2 more or in all
`},
	{"prose", `A hedge flower opens in May, before the hawthorn.
It was worked by the fire.

Notes
Made in one go, and blocked.
The wind is free.

Row 1: ch 8.
Note: the hook is cold.
> a line from the hedge book
Tip: block it wet.
You can see the leaf in the picture above.
Row 2: dc in each st.
`, `prose "A hedge flower opens in May, before the hawthorn."
prose "It was worked by the fire."
prose "Notes"
prose "Made in one go, and blocked."
prose "The wind is free."
row 1: chain 8
prose "Note: the hook is cold."
prose "> a line from the hedge book"
prose "Tip: block it wet."
prose "You can see the leaf in the picture above."
row 2: work dc each=1 each st to the end
`},
	{"keys and headings in square brackets", `No. 3  HEDGE FERN

[Hook]  steel hook 1.50 mm
[Gauge]  sc 32 sts = 10 cm
[Symbols]  ch = chain, sc = single crochet

[Fern: 1 piece]
(1) Stalk: ch 10.
(2) Top frond: ch 4; from the 2nd ch, sc 3.

[Finishing]
Pin out the fern.
`, `prose "No. 3  HEDGE FERN"
field hook = steel hook 1.50 mm
field gauge = sc 32 sts = 10 cm
field abbreviations = ch = chain, sc = single crochet
definition ch is chain
definition sc is single crochet
piece Fern: 1 piece
row 1: remark, chain 10
row 2: branch top frond, chain 4, skip next 1 ch from hook, work sc each=1 next 3 st
piece Finishing
no label: make up
`},
	{"instructions without a label", `Piece: Twig
With B, make a magic ring.
Ch 26.
Do not turn.
Fasten off.
Weave in ends.
`, `piece Twig
no label: yarn use b, ring
no label: chain 26
no label: turn not
no label: fasten off
no label: make up
`},
	{"a row in two sizes", `Sizes: child (adult)
Rnd 8 (10): sc in next 4 (6) sts. (4 (6) sc)
8th (10th) rnd: sc around. (24)
`, `field sizes = child (adult)
rnd 8/10: work sc each=1 next 4/6 st, count 4/6 sc
rnd 8/10: work sc each=1 each st to the end, count 24
`},
	{"materials below a heading of Markdown", `# Oak mat
## Materials

- 4 mm (US G-6) hook
- stitch marker
## Mat
Row 1: ch 8.
`, `prose "# Oak mat"
prose "## Materials"
prose "- 4 mm (US G-6) hook"
prose "- stitch marker"
piece Mat
row 1: chain 8
`},
	{"a size of two names", `Sizes: XS/S (M/L, XL/2X)
Row 1: ch 8 (10, 12).
Sizes M/L (XL/2X) only:
Row 2: sc in next 4 (6) sts.
`, `field sizes = XS/S (M/L, XL/2X)
row 1: chain 8/10/12
prose "Sizes M/L (XL/2X) only:"
row 2: work sc each=1 next -/4/6 st
`},
	{"a bracket of its own for each size", `Sizes: S (M) [L]
Ch 61 (67) [73].
Rows 2-20 (22) [24]: sc in next 4 (6) [8] sts. (4 (6) [8] sc)
`, `field sizes = S (M) [L]
no label: chain 61/67/73
row 2-20/22/24: work sc each=1 next 4/6/8 st, count 4/6/8 sc
`},
	{"names in square brackets", `[Yarn] wool in brown.
[Stitches] chain (ch), single crochet (sc).
[Caution] Not for a small child.

[Body] 1 piece. Begin with a ring.
Rnd 1: 6 sc in ring.

[Wing] 2 pieces, brown.
Rnd 1: 6 sc in ring.

[Tail] 1 piece, brown. Make 7 ch.
Row 1: sc in each ch.
`, `field yarn = wool in brown.
field abbreviations = chain (ch), single crochet (sc).
definition chain is ch
definition single crochet is sc
field notes = Not for a small child.
piece Body make 1
set-up row: ring
rnd 1: work sc each=6 next 1 ring
piece Wing make 2
rnd 1: work sc each=6 next 1 ring
piece Tail make 1
no label: chain 7
row 1: work sc each=1 each ch to the end
`},
	{"a heading for the first rows", `# Frost shawl
## First rows
Row 1: ch 8.
## Last rounds
Rnd 2: ch 9.
`, `prose "# Frost shawl"
piece First rows
row 1: chain 8
piece Last rounds
rnd 2: chain 9
`},
	{"a part under a heading that steps elsewhere call for", `The Leaf
Ch 7.
Sc in 2nd ch from hook and in next 5 ch.

The Spray
Ch 15, leaf.
Sc in each ch.
`, `piece The Leaf
no label: chain 7
no label: work sc each=1 nth=2 ch from hook + next 5 ch
piece The Spray
no label: chain 15, work "leaf" each=1 next 1 st
no label: work sc each=1 each ch to the end
`},
	{"steps that go by names", `## Antler
Beam: ch 14.
Front tine: ch 5; sl st in 2nd ch from hook and in next 3 ch - 4 sts, back at the beam.
Upper beam: ch 8.
`, `piece Antler
named Beam: chain 14
named Front tine: chain 5, work sl st each=1 nth=2 ch from hook + next 3 ch, count 4 st, remark
named Upper beam: chain 8
`},
	{"counts behind arrows in lines of their own", `Row 1: sc in 12 sts.
--> 12 sc
Row 2: sc in 12 sts.
>> 12 sts
> a line from the hedge book
`, `row 1: work sc each=1 next 12 st, count 12 sc
row 2: work sc each=1 next 12 st, count 12 st
prose "> a line from the hedge book"
`},
	{"words of the pattern's own under other headings", `Little parts
haw: (2 dc, ch 2) in next st.

Elements
thorn: ch 4, sl st in 2nd ch from hook and in next 2 ch.

Row 1: ch 8, haw, thorn.
`, `prose "Little parts"
definition haw = group {work dc each=2 here, chain 2} in next 1 st
prose "Elements"
definition thorn = chain 4, work sl st each=1 nth=2 ch from hook + next 2 ch
row 1: chain 8, work "haw" each=1 next 1 st, work "thorn" each=1 next 1 st
`},
	{"the tip of a leaf and one for the maker", `Row 1: ch 8.
Tip: work 3 sc in last ch.
Tip: use a small hook.
`, `row 1: chain 8
named Tip: work sc each=3 last 1 ch
prose "Tip: use a small hook."
`},
	{"headings between steps that go on", `1. Ch 8.
Homewards
2. Sc in next 7 ch.
The tip
3. Ch 4.
`, `row 1: chain 8
prose "Homewards"
row 2: work sc each=1 next 7 ch
prose "The tip"
row 3: chain 4
`},
	{"nothing", "", ""},
	{"only blank lines", "\n \n\t\n", ""},
}

// TestDefinedInOneParagraph reads every abbreviation of a list that is one paragraph,
// and takes a meaning with commas of its own for one.
func TestDefinedInOneParagraph(t *testing.T) {
	for text, want := range map[string]string{
		"beg: beginning; ch: chain; inc: 2 in one, of any stitch":    "beg=beginning|ch=chain|inc=2 in one, of any stitch",
		"ch - chain, sk - skip, sl st - slip stitch":                 "ch=chain|sk=skip|sl st=slip stitch",
		"ch = chain, tr = treble":                                    "ch=chain|tr=treble",
		"inc: 2 sc in one st, or of any other stitch, as it is said": "inc=2 sc in one st, or of any other stitch, as it is said",
	} {
		var got []string
		for _, d := range read("Abbreviations\n" + text + "\n\nRow 1: ch 8.\n").Definitions {
			got = append(got, d.Names[0]+"="+strings.TrimSpace(d.Text))
		}
		if strings.Join(got, "|") != want {
			t.Errorf("%q defines %q, want %q", text, strings.Join(got, "|"), want)
		}
	}
}
