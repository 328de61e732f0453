package inflect_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"stitchproof/lang/inflect"
)

func TestLike(t *testing.T) {
	for _, c := range []struct{ word, other, want string }{
		{"skip", "sk", "skip"}, {"skip", "Sk", "Skip"}, {"skip", "SK", "Skip"}, {"miss", "SKIP", "MISS"}, {"miss", "sKIP", "miss"},
		{"églantine", "Haw", "Églantine"}, {"haw", "ÉGLANTINE", "HAW"}, {"haw", "1 Haw", "haw"}, {"", "Haw", ""}, {"haw", "", "haw"},
	} {
		assert.Equal(t, c.want, inflect.Like(c.word, c.other), "%s like %s", c.word, c.other)
	}
}

func TestPlural(t *testing.T) {
	for noun, want := range map[string]string{
		"st": "sts", "eye": "eyes", "ch-2 sp": "ch-2 sps", "rnd": "rnds", "row end": "row ends", "stitch": "stitches", "branch": "branches", "chain": "chains",
		"bobble": "bobbles", "half shell": "half shells", "top of a dc": "top of a dc", "dc": "dc", "sc2tog": "sc2tog", "tog3tog": "tog3tog", "ch": "ch",
		"inc": "inc", "sl st": "sl sts", "cross": "cross", "": "", "berry": "berries", "oak spray": "oak sprays",
	} {
		assert.Equal(t, want, inflect.Plural(noun), noun)
	}
}
