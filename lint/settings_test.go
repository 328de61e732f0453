package lint

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/fabric"
	"stitchproof/lang/source"
	"stitchproof/lang/stitch"
)

func TestLevels(t *testing.T) {
	of := func(l Levels) Level { return l.Of(countMissing) }
	assert.Equal(t, Level(countMissing.Severity), of(nil))
	assert.Equal(t, Off, of(Levels{All: Off}))
	assert.Equal(t, Level(Error), of(Levels{All: Off, "counts": Level(Error)}))
	assert.Equal(t, Level(Caution), of(Levels{All: Off, "counts": Level(Error), "count-missing": Level(Caution)}))
	assert.Equal(t, Level(countMissing.Severity), of(Levels{"branches": Off}))
}

func TestLaterLevelsUndoEarlierOnes(t *testing.T) {
	chosen := func(later Levels) Levels {
		l := Levels{"counts": Off, "count-missing": Level(Info), "row-order": Off}
		l.Choose(later)
		return l
	}
	assert.Equal(t, Levels{"counts": Off, "count-missing": Level(Error), "row-order": Off}, chosen(Levels{"count-missing": Level(Error)}))
	assert.Equal(t, Levels{"counts": Level(Error), "row-order": Off}, chosen(Levels{"counts": Level(Error)}))
	assert.Equal(t, Levels{"all": Off, "row-over": Level(Info)}, chosen(Levels{"all": Off, "row-over": Level(Info)}))
}

func TestLevelNamesAreReadBack(t *testing.T) {
	for _, name := range LevelNames() {
		var l Level
		require.NoError(t, l.UnmarshalText([]byte(name)))
		assert.Equal(t, name, l.String())
	}
	var l Level
	assert.ErrorContains(t, l.UnmarshalText([]byte("grave")), "no level")
}

func TestSelectorsNameEveryRuleOnce(t *testing.T) {
	seen := map[string]bool{}
	for _, name := range Selectors() {
		assert.False(t, seen[name], "%s names two things", name)
		seen[name] = true
	}
	for _, r := range rules {
		assert.True(t, seen[r.Name] && seen[r.Family] && seen[All])
		assert.Contains(t, r.Name, "-", "a rule's name cannot be told from a writer's own word")
	}
}

func TestLevelsDecideWhatIsFound(t *testing.T) {
	text := source.New(countMismatch.Bad)
	found := Settings{Levels: Levels{"counts": Level(Info)}}.Analyze(text).Findings
	require.Len(t, found, 1)
	assert.Equal(t, Info, found[0].Severity)
	assert.Empty(t, Settings{Levels: Levels{"count-mismatch": Off}}.Analyze(text).Findings)
}

func TestHouseDialectIsTheLastResort(t *testing.T) {
	dialect := func(header string, house stitch.Dialect) stitch.Dialect {
		const piece = "Piece: Haw\nWith A, ch 12.\nRow 1: Dc in each ch.\n"
		return Settings{Dialect: house}.Analyze(source.New(header + piece)).Fabric.Dialect
	}
	assert.Equal(t, stitch.Unsettled, dialect("", stitch.Unsettled))
	assert.Equal(t, stitch.UK, dialect("", stitch.UK))
	assert.Equal(t, stitch.US, dialect("Terms: US\n", stitch.UK), "what the pattern says goes first")
}

func TestReadingThatBreaksDownIsAFinding(t *testing.T) {
	text := source.New("Rnd 1: 6 sc.\n")
	a := guarded(text, func() *Analysis {
		var none *fabric.Row
		_ = none.Index // as a bug would
		return nil
	})
	assert.Same(t, text, a.Text)
	require.Len(t, a.Findings, 1)
	assert.Equal(t, InternalFailure, a.Findings[0].Rule)
	assert.Equal(t, Error, a.Findings[0].Severity)
	assert.Contains(t, a.Findings[0].Message, "nil pointer")
	assert.NotNil(t, a.File)
	assert.NotNil(t, a.Fabric)
}
