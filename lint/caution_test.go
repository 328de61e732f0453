package lint_test

import (
	"bytes"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/source"
	"stitchproof/lang/stock"
	"stitchproof/lint"
	"stitchproof/lint/report"
)

// leave is what could be read as leave to do something, or as word that no harm
// comes of it.
var leave = regexp.MustCompile(`(?i)\b(?:safe(?:ly|st|r)?|harmless|danger-free|no (?:danger|risk|harm)|allow(?:s|ed|able)?|permit(?:s|ted)?|permission|` +
	`(?:may|can) (?:still |then )?be (?:used|left|given|kept|sold|made|sewn|put)|(?:un)?suitable for|(?:is|are) (?:fine|enough)|ok|okay|` +
	`compl(?:y|ies|iant)|conforms?|approved?|certified|passes|meets|within the limits?|need not|no need|nothing (?:can )?come(?:s)? off|` +
	`for (?:a )?child(?:ren)? of .* (?:and|or) (?:over|older|up))\b`)

// named are things whose name has such a word in it: a part that is sold as one,
// a title, a setting, the comment that answers.
var named = regexp.MustCompile("(?i)safety (?:eyes?|noses?)|(?:advice on )?safe sleep|// allow [a-z-]+: the reason")

func givesLeave(text string) string { return leave.FindString(named.ReplaceAllString(text, "")) }

func TestLeaveIsSeen(t *testing.T) {
	for _, words := range []string{
		"safe if firmly sewn", "OK for babies", "Cords are allowed up to 22 cm", "suitable for children over 3", "a tied belt may be used",
		"the eyes are fine", "this complies with EN 71-1", "nothing can come off", "For children of 3 years and over.", "firm sewing is enough",
	} {
		assert.NotEmpty(t, givesLeave(words), words)
	}
	assert.Empty(t, givesLeave("safety eyes in a toy can come off and be swallowed"))
}

// cautioned has a pattern for each wording of a caution.
var cautioned = map[string]string{
	"loose where a baby sleeps":   titled("Baby blanket", ""),
	"a hard part in a toy":        titled("Dormouse toy", "Attach the safety eyes.\n"),
	"a hard part, an age is said": titled("Dormouse toy for ages 8 to 10", "Attach the safety eyes.\n"),
	"a hard part for a baby":      titled("Baby mitts", "Sew on the buttons.\n"),
	"a cord on a toy":             titled("Dormouse toy", "Sew on the cord.\n"),
	"a cord on something to wear": titled("Child's bonnet", "Sew on the ties.\n"),
	"a cord that holds a soother": titled("Soother clip", ""),
}

// A caution says that the law of the place decides, names the source of each
// figure, offers nothing that would make it go away, and gives no leave.
func TestCautionsGiveNoLeave(t *testing.T) {
	seen := map[string]bool{}
	for name, pattern := range cautioned {
		cautions := 0
		for _, f := range lint.Analyze(source.New(pattern)).Findings {
			if !f.IsCaution() {
				continue
			}
			cautions++
			seen[regexp.MustCompile("^`[^`]*`").ReplaceAllString(f.Message, "")] = true
			assert.Equal(t, lint.Caution, f.Severity, name)
			assert.Nil(t, f.Fix, name)
			assert.Empty(t, f.Alternatives, name)
			assert.True(t, strings.HasSuffix(f.Message, ": "+lint.LocalRules), "%s: %s", name, f.Message)
			assert.Empty(t, givesLeave(f.Message), f.Message)
			assert.NotEmpty(t, f.Related, "no figure: %s", name)
			for _, r := range f.Related {
				assert.Regexp(t, `\(.{10,}\)$`, r.Message, "no source")
				assert.Empty(t, givesLeave(r.Message), r.Message)
			}
		}
		assert.Equal(t, 1, cautions, name)
	}
	assert.Len(t, seen, wordings(t), "a wording of a caution without a pattern: %v", seen)
}

// wordings counts the places in the rules that word a caution.
func wordings(t *testing.T) int {
	t.Helper()
	files, err := filepath.Glob("rule_*.go")
	require.NoError(t, err)
	n := 0
	for _, file := range files {
		code, err := os.ReadFile(file)
		require.NoError(t, err)
		n += strings.Count(string(code), "p.caution(")
	}
	return n
}

// What is said of cautions elsewhere gives no leave either: the pages of their
// rules, on which the law of the place stands as well, and the figures.
func TestPagesOfCautionsGiveNoLeave(t *testing.T) {
	pages := 0
	for _, r := range lint.Rules() {
		if r.Family != "caution" {
			assert.NotEqual(t, lint.Caution, r.Severity, r.Name)
			continue
		}
		pages++
		assert.Nil(t, r.Offers(), r.Name)
		assert.NotEmpty(t, r.Sources, r.Name)
		for _, s := range append([]string{r.Summary, r.Why}, r.Sources...) {
			assert.Empty(t, givesLeave(s), s)
		}
		for _, s := range r.Sources {
			assert.Regexp(t, `\b(?:read|memory|practice)\b`, s, "how it was had")
		}
		var page bytes.Buffer
		require.NoError(t, report.ExplainRule(&page, r))
		said := strings.Join(strings.Fields(page.String()), " ")
		assert.Contains(t, said, lint.OfCautions)
		said = strings.NewReplacer(strings.Join(strings.Fields(r.Bad), " "), "", strings.Join(strings.Fields(r.Good), " "), "").Replace(said)
		assert.Empty(t, givesLeave(said), said)
	}
	assert.Equal(t, 3, pages)
	assert.Contains(t, lint.OfCautions, lint.LocalRules)
	for _, l := range stock.SafetyLimits() {
		assert.Empty(t, givesLeave(l.Holds), l.Holds)
		assert.Regexp(t, `\b(?:read|memory|practice)\b`, l.Source, "how it was had")
	}
}

// Our own patterns and documents promise nobody that no harm comes of them.
func TestPatternsGiveNoLeave(t *testing.T) {
	of := regexp.MustCompile(`(?i)\b(?:child(?:ren)?|bab(?:y|ies)|cot|toys?|swallowed|eyes|cautions?)\b`)
	paths, err := filepath.Glob("../testdata/*/*[ctd]")
	require.NoError(t, err)
	paths = append(paths, "../README.md", "../CHANGELOG.md", "../DEVELOPERS.md", "../lang/NOTATION.md", "../lsp/FEATURES.md", "RULES.md")
	looked := 0
	for _, path := range paths {
		text, err := os.ReadFile(path)
		require.NoError(t, err)
		for sentence := range strings.SplitSeq(strings.Join(strings.Fields(string(text)), " "), ". ") {
			if of.MatchString(sentence) {
				looked++
				assert.Empty(t, givesLeave(sentence), "%s: %s", path, sentence)
			}
		}
	}
	assert.Greater(t, looked, 20)
}
