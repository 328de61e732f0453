package lint_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

// What instructions imply without its name, beside a list of notions that lacks it or has it
// in other words.
func TestImpliedNotions(t *testing.T) {
	for _, test := range []struct{ list, said, needed string }{
		{"stitch marker", "Weave in ends.", "tapestry needle"},
		{"stitch marker", "Whip stitch the edges together.", "tapestry needle"},
		{"stitch marker", "Close the gap with mattress stitch.", "tapestry needle"},
		{"stitch marker", "Thread the tail through the last round and pull tight.", "tapestry needle"},
		{"stitch marker", "Work two french knots for eyes.", "tapestry needle"},
		{"tapestry needle", "Place two markers at the ends of the row.", "stitch marker"},
		{"tapestry needle", "Mark the center st.", "stitch marker"},
		{"tapestry needle", "Stitch the eyes with black embroidery thread.", "embroidery thread"},
		{"tapestry needle", "Scatter a few knots in white thread along the twig.", "embroidery thread"},
		{"tapestry needle, white thread", "Scatter a few knots in white thread along the twig.", ""},
		{"tapestry needle", "Sew the label on with sewing thread.", "sewing thread"},
		{"tapestry needle", "Put the cushion pad in and close the last side.", "cushion pad"},
		{"tapestry needle", "Glue the twig to its base.", "glue"},
		{"tapestry needle", "Starch the snowflake and let it dry.", "starch"},
		{"tapestry needle", "Wind the yarn 60 times round a strip of card.", "cardboard"},
		{"tapestry needle", "Cut a circle of card for the base.", "cardboard"},
		{"tapestry needle", "Hang it on a split ring.", "key ring"},
		{"tapestry needle", "Sew a brooch back to the leaf.", "brooch pin"},
		{"tapestry needle", "Stretch the web over a wooden hoop.", "embroidery hoop"},
		{"tapestry needle", "Sew in the lining.", "lining fabric"},
		{"tapestry needle", "Make a pompom and sew it to the crown.", "card for the pompom"},
		{"tapestry needle", "Wet the mat and pin it out.", "pins"},
		{"tapestry needle", "Block to size.", "pins"},
		{"tapestry needle", "Steam press the back.", "iron"},

		{"tapestry needle", "Weave in ends.", ""},
		{"wool needle", "Whip stitch the edges together.", ""},
		{"darning needle", "Oversew the side seams.", ""},
		{"scraps of waste yarn", "Mark the center st.", ""},
		{"needle, black stranded cotton", "Stitch the eyes with black thread.", ""},
		{"needle, matching thread", "Sew the label on with sewing thread.", ""},
		{"needle, round pillow form", "Put the cushion pad in and close the last side.", ""},
		{"needle, clear adhesive", "Glue the twig to its base.", ""},
		{"needle, fabric stiffener", "Starch the snowflake and let it dry.", ""},
		{"needle, card", "Wind the yarn 60 times round a strip of cardboard.", ""},
		{"needle, brass key ring", "Hang it on the split ring.", ""},
		{"needle, 15 cm metal ring", "Stretch the web over the metal ring.", ""},
		{"needle, rustproof pins", "Block to size.", ""},
		{"needle, blocking wires", "Block to measurements.", ""},
		{"needle, pom-pom maker", "Make a pompom and sew it to the crown.", ""},
		{"tapestry needle", "Block lightly if you like.", ""},
		{"tapestry needle", "Starch it if desired.", ""},
		{"tapestry needle", "Do not iron.", ""},
		{"tapestry needle", "The mat needs no pins.", ""},
		{"tapestry needle", "Work in end sts only. Rep the block to the last square.", ""},
		{"", "Wet the mat and pin it out.", ""},
		{"", "Weave in ends.", "tapestry needle"},
	} {
		t.Run(test.list+"/"+test.said, func(t *testing.T) {
			header := "Hook: 3 mm\n"
			if test.list != "" {
				header += "Notions: " + test.list + "\n"
			}
			var needed []string
			for _, f := range lint.Analyze(source.New(headed(header) + test.said + "\n")).Findings {
				if f.Rule == "notion-unlisted" {
					needed = append(needed, f.Message)
				}
			}
			if test.needed == "" {
				assert.Empty(t, needed)
			} else if assert.Len(t, needed, 1) {
				assert.Contains(t, needed[0], "needs "+test.needed+",")
			}
		})
	}
}

// A hook that no list gives, and the ways in which one is given.
func TestHookMissing(t *testing.T) {
	const gauge = "Gauge: 12 sc and 14 rows = 10 cm (4 in)\n"
	for _, test := range []struct{ header, said, level string }{
		{gauge + "Yarn: moss, DK (3), 30 m\n", "", "warning"},
		{gauge + "Notions: tapestry needle\n", "", "warning"},
		{"Yarn: moss, DK (3), 30 m\nNotions: tapestry needle\n", "", "warning"},
		{"Yarn A: moss, DK (3), 30 m\nYarn B: haw, DK (3), 3 m\nNotions: 2 buttons\n", "Sew on the buttons.", "warning"},
		{"\nMaterials\n- DK yarn (3) in moss, 30 m\n- tapestry needle\n\n", "", "warning"},
		{"Materials: A: moss DK (3), 30 m; stitch marker\n", "", "warning"},
		{gauge + "Materials: DK yarn (3), 30 m\n", "", "warning"},
		{"Notions: needle\nYarn: moss, DK (3), 30 m\n", "Drop the loop from the hook and pull it through.", "warning"},
		{"Yarn: moss, DK (3), 30 m\nNotions: pins\n", "With 2 loops on hook, yarn over.", "warning"},
		{gauge, "", "info"},
		{gauge + "Finished size: 10 cm x 10 cm (4 in x 4 in)\n", "", "info"},

		{"Hook: 4 mm\n" + gauge, "", ""},
		{"Hook: US G-6\nYarn: moss, DK (3), 30 m\nNotions: needle\n", "", ""},
		{"Yarn: moss, DK (3), 30 m\nNotions: needle, 4 mm crochet hook\n", "", ""},
		{"Materials: DK yarn (3); hook of 4 mm; needle\n", "", ""},
		{"Gauge: with a 4 mm hook, 12 sc and 14 rows = 10 cm\nYarn: moss, DK (3), 30 m\n", "", ""},
		{"\nMaterials\n- DK yarn (3) in moss, 30 m\n- hook 4 mm\n- tapestry needle\n\n", "", ""},
		{"Yarn: moss, DK (3), 30 m\n", "", ""},
		{"Notions: tapestry needle\n", "", ""},
		{"", "", ""},
		{"Yarn: moss, DK (3), 30 m\nNotions: needle\n", "Any hook that goes with the yarn will do.", ""},
		{"Yarn: moss, DK (3), 30 m\nNotions: needle\nNotes: Use a hook of 4 mm.\n", "", ""},
		{"Tools: 4 mm hook\nYarn: moss, DK (3), 30 m\nNotions: needle\n", "", ""},
	} {
		t.Run(test.header+test.said, func(t *testing.T) {
			level := ""
			for _, f := range lint.Analyze(source.New(headed(test.header) + test.said + "\n")).Findings {
				if f.Rule == "hook-missing" {
					level = f.Severity.String()
				}
			}
			assert.Equal(t, test.level, level)
		})
	}
}

// As many as are listed, and of the size.
func TestCountsOfNotions(t *testing.T) {
	for _, test := range []struct{ list, said, told string }{
		{"8 buttons, needle", "Sew on the 8 buttons.", ""},
		{"eight wooden buttons; needle", "Sew the 8 buttons to the front.", ""},
		{"8 buttons, needle", "Sew 4 buttons to each front.", ""},
		{"8 buttons, needle", "Sew the 3 buttons to the first tab and the others to the second.", ""},
		{"8 buttons, needle", "Sew 5 buttons to the front. Sew 3 buttons to the back.", ""},
		{"8 buttons, needle", "Make 10 buttonholes. Sew the buttons opposite.", ""},
		{"8 (9, 10) buttons, needle", "Sew on the 10 buttons.", ""},
		{"2 safety eyes of 6 mm, needle", "Insert the 6 mm safety eyes between Rows 2 and 3.", ""},
		{"pair of 8 mm safety eyes, needle", "Attach the 2 eyes.", ""},
		{"2 large buttons, 4 small buttons, needle", "Sew on the 4 small buttons.", ""},
		{"buttons, needle", "Sew on the 6 buttons.", ""},
		{"24 glass beads, needle", "Sew the beads on wherever you like.", ""},
		{"2 snaps, needle", "Sew on the snaps, 2 cm from the edge.", ""},

		{"8 buttons, needle", "Sew on the 9 buttons.", "asks for 9 buttons, and the materials list 8"},
		{"five buttons, needle", "Sew all 6 buttons\nto the band.", "asks for 6 buttons, and the materials list 5"},
		{"a pair of 8 mm safety eyes, needle", "Insert 4 safety eyes.", "asks for 4 eyes, and the materials list 2"},
		{"2 safety eyes of 6 mm, needle", "Insert the 8 mm eyes between Rows 2 and 3.", "asks for 8 mm, and the eyes of the materials are 6 mm"},
		{"pair of 9 mm safety eyes, needle", "Attach the 12 mm safety eyes.", "asks for 12 mm, and the eyes of the materials are 9 mm"},
		{"12 glass beads, needle", "Sew 20 beads along the edge.", "asks for 20 beads, and the materials list 12"},
		{"3 shell buttons (15 mm), needle", "Sew the 18 mm buttons opposite.", "asks for 18 mm, and the buttons of the materials are 15 mm"},
		{"8 buttons, needle", "Sew on the 6 buttons.", "lists 8 buttons, and 6 are used"},
		{"eight wooden buttons, needle", "Sew all seven buttons to the band.", "lists 8 buttons, and 7 are used"},
		{"4 snaps, needle", "Sew the 3 snaps along the opening.", "lists 4 snaps, and 3 are used"},
		{"2 toggles, needle", "Sew on the 3 toggles.", "asks for 3 toggles, and the materials list 2"},
	} {
		t.Run(test.list+"/"+test.said, func(t *testing.T) {
			var told []string
			for _, f := range lint.Analyze(source.New(headed("Hook: 3 mm\nNotions: "+test.list+"\n") + test.said + "\n")).Findings {
				if f.Rule == "notion-unlisted" || f.Rule == "notion-unused" {
					told = append(told, f.Message)
				}
			}
			if test.told == "" {
				assert.Empty(t, told)
			} else {
				assert.Equal(t, []string{test.told}, told)
			}
		})
	}
}

// Hook and notions are listed, and the yarn's line was lost.
func TestYarnIsMissed(t *testing.T) {
	for _, test := range []struct {
		header, said string
		missed       bool
	}{
		{"Hook: 4 mm\nNotions: tapestry needle\n", "", true},
		{"\nMaterials\n- 4 mm hook\n- yarn needle\n- sewing thread to match\n\n", "", true},
		{"Hook: 4 mm\n", "", false},
		{"Yarn: moss, DK (3), 30 m\nHook: 4 mm\nNotions: tapestry needle\n", "", false},
		{"\nMaterials\n- 4 mm hook\n- tapestry needle\n- 20 g of cotton in moss\n\n", "", false},
		{"Hook: 4 mm\nNotions: tapestry needle\n", "Any DK yarn will do.", false},
		{"Hook: 4 mm\nNotions: tapestry needle\n", "Yarn over and pull through.", true},
	} {
		t.Run(test.header+test.said, func(t *testing.T) {
			missed := false
			for _, f := range lint.Analyze(source.New(headed(test.header) + test.said + "\n")).Findings {
				missed = missed || f.Rule == "yarn-missing"
			}
			assert.Equal(t, test.missed, missed)
		})
	}
}
