package report

import (
	"bytes"
	"encoding/json"
	"encoding/xml"
	"io"
	"os"
	"path/filepath"
	"reflect"
	"slices"
	"strings"
	"testing"

	"github.com/invopop/jsonschema"
	validator "github.com/santhosh-tekuri/jsonschema/v6"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

// various are files with findings of all kinds: with signs that formats must
// escape, wide characters, a byte-order mark, fixes, related places, and a file
// that cannot be read.
func various(t *testing.T) []Checked {
	t.Helper()
	var out []Checked
	for name, bad := range map[string]string{"hedge row/haw.crochet": "count-mismatch", "nest.crochet": "tail-missing"} {
		rule, ok := lint.Find(bad)
		require.True(t, ok)
		out = append(out, CheckedOf(name, lint.Analyze(source.New(rule.Bad))))
	}
	if out[0].File > out[1].File {
		out[0], out[1] = out[1], out[0]
	}
	signs := found(t, "\ufeffPièce 🌰: <&\"%,:'>\nzc 3\x01.\nRow 2.\n", "<&\"%,:'>", lint.Finding{
		Rule: "count-unknown", Severity: lint.Caution, Message: "`<&\"%,:'>` is not understood: 100%\x01", Size: "M and L",
		Fix:          &lint.Fix{Title: "write x", Edits: []source.Edit{{Span: source.At(3), New: "x"}}},
		Alternatives: []lint.Fix{{Title: "leave it out", Safe: true, Edits: []source.Edit{{Span: source.Span{Start: 3, End: 5}}}}},
	})
	signs.File = "signs,50%.crochet"
	over := found(t, "Row 1: zc\nRow 2.\n", "zc\nRow", lint.Finding{Rule: "row-over", Severity: lint.Info, Message: "two lines"})
	over.File = "over.crochet"
	clean := CheckedOf("clean.crochet", lint.Analyze(source.New("")))
	unread := CheckedOf("gone.crochet", lint.Unread(source.New(""), lint.FileUnreadable, "cannot be read"))
	return append(out, signs, over, clean, unread)
}

func inFormat(t *testing.T, format string, files []Checked) string {
	t.Helper()
	f, ok := FindFormat(format)
	require.True(t, ok)
	var b bytes.Buffer
	require.NoError(t, f.Write(&b, files, Options{Version: "v1.2.3"}))
	return b.String()
}

func TestFormatsAreAsTheyWere(t *testing.T) {
	for _, f := range Formats {
		t.Run(f.Name, func(t *testing.T) {
			got := inFormat(t, f.Name, various(t))
			if f.Name == "sarif" {
				got = withFewRules(t, got)
			}
			golden := filepath.Join("testdata", "report."+f.Name+".golden")
			if *update {
				require.NoError(t, os.WriteFile(golden, []byte(got), 0o644))
			}
			want, err := os.ReadFile(golden)
			require.NoError(t, err)
			assert.Equal(t, string(want), got, "run `go test ./lint/report -update` and read the difference")
			assert.Equal(t, inFormat(t, f.Name, various(t)), inFormat(t, f.Name, various(t)), "the same every time")
		})
	}
}

// withFewRules leaves out the rules that find nothing, which are many and have
// pages of their own.
func withFewRules(t *testing.T, text string) string {
	t.Helper()
	var log sarifLog
	require.NoError(t, json.Unmarshal([]byte(text), &log))
	driver := &log.Runs[0].Tool.Driver
	driver.Rules = slices.DeleteFunc(driver.Rules, func(r sarifRule) bool {
		return !slices.ContainsFunc(log.Runs[0].Results, func(f sarifResult) bool { return f.RuleID == r.ID })
	})
	for i := range log.Runs[0].Results {
		f := &log.Runs[0].Results[i]
		f.RuleIndex = slices.IndexFunc(driver.Rules, func(r sarifRule) bool { return r.ID == f.RuleID })
	}
	var b bytes.Buffer
	require.NoError(t, writeJSON(&b, log))
	return b.String()
}

func TestFormatsFailWithTheirWriter(t *testing.T) {
	for _, f := range Formats {
		assert.ErrorContains(t, f.Write(full{}, various(t), Options{}), "no room", f.Name)
	}
}

// Each format tells every finding, in its place.
func TestFormatsLoseNothing(t *testing.T) {
	files := various(t)
	findings := 0
	for _, c := range files {
		findings += len(c.Findings)
	}
	require.Greater(t, findings, 4)
	marks := map[string]string{ // what stands once in a report for each finding
		"text": "\n\n", "lines": "\n", "json": `"rule"`, "jsonl": "\n", "sarif": `"ruleId"`, "github": "\n", "gitlab": `"check_name"`,
		"junit": "<failure ", "checkstyle": "<error ",
	}
	for _, f := range Formats {
		require.Contains(t, marks, f.Name)
		assert.Equal(t, findings, strings.Count(inFormat(t, f.Name, files), marks[f.Name]), f.Name)
	}
}

// validate holds a JSON text against a schema.
func validate(t *testing.T, schema []byte, text string) {
	t.Helper()
	doc, err := validator.UnmarshalJSON(bytes.NewReader(schema))
	require.NoError(t, err)
	c := validator.NewCompiler()
	require.NoError(t, c.AddResource("https://schema.invalid/it", doc))
	compiled, err := c.Compile("https://schema.invalid/it")
	require.NoError(t, err)
	instance, err := validator.UnmarshalJSON(strings.NewReader(text))
	require.NoError(t, err)
	assert.NoError(t, compiled.Validate(instance))
}

func TestSARIFFitsItsSchema(t *testing.T) {
	schema, err := os.ReadFile("testdata/sarif-schema-2.1.0.json")
	require.NoError(t, err)
	for _, files := range [][]Checked{nil, various(t)} {
		text := inFormat(t, "sarif", files)
		validate(t, schema, text)
		var log sarifLog
		require.NoError(t, json.Unmarshal([]byte(text), &log))
		run := log.Runs[0]
		seen := map[string]bool{}
		for _, r := range run.Tool.Driver.Rules {
			assert.False(t, seen[r.ID], "a rule is listed twice")
			seen[r.ID] = true
		}
		for _, r := range run.Results {
			assert.Equal(t, r.RuleID, run.Tool.Driver.Rules[r.RuleIndex].ID)
			assert.NotEmpty(t, r.PartialFingerprints)
			assert.Positive(t, r.Locations[0].PhysicalLocation.Region.StartLine)
		}
	}
}

// A rule that must be asked for is listed as one that does not run by itself.
func TestSARIFTellsWhichRulesAreAskedFor(t *testing.T) {
	asked := 0
	rules := sarifRules(lint.Rules())
	for i, r := range lint.Rules() {
		assert.Equal(t, r.Name, rules[i].ID)
		assert.Equal(t, !r.Asked, rules[i].DefaultConfiguration.Enabled, r.Name)
		if r.Asked {
			asked++
		}
	}
	assert.Positive(t, asked)
}

func TestSARIFColumnsAreUTF16(t *testing.T) {
	c := found(t, "\ufeff🌰 zc\n", "zc", lint.Finding{Rule: "row-over"})
	r := sarifRegionOf(c.Text, c.Findings[0].Span)
	assert.Equal(t, sarifRegion{1, 4, 1, 6}, r, "the mark counts nothing, the acorn two")
}

func TestSARIFPlacesOfFiles(t *testing.T) {
	assert.Equal(t, sarifArtifactLocation{"hedge%20row/haw.crochet", sarifBaseID}, sarifAt(filepath.Join("hedge row", "haw.crochet")))
	assert.Equal(t, sarifArtifactLocation{"../50%25:x.crochet", sarifBaseID}, sarifAt(filepath.Join("..", "50%:x.crochet")))
	assert.Equal(t, sarifArtifactLocation{"./a:b.crochet", sarifBaseID}, sarifAt("a:b.crochet"))
	assert.Equal(t, sarifArtifactLocation{"haw.crochet", sarifBaseID}, sarifAt("./haw.crochet"))
	if filepath.IsAbs("/tmp") {
		assert.Equal(t, sarifArtifactLocation{URI: "file:///hedge%20row/haw.crochet"}, sarifAt("/hedge row/haw.crochet"))
	}
}

// The published schemas of our own formats are made of the types.
func TestJSONFitsItsSchema(t *testing.T) {
	for name, of := range map[string]any{"findings": jsonReport{}, "finding": jsonLine{}} {
		r := jsonschema.Reflector{ExpandedStruct: true, DoNotReference: true, Anonymous: true, AllowAdditionalProperties: true, Mapper: severity}
		schema := r.Reflect(of)
		schema.Title = map[string]string{"findings": "What stitchproof found in files (--format json)", "finding": "A line of what stitchproof found (--format jsonl)"}[name]
		var b bytes.Buffer
		require.NoError(t, writeJSON(&b, schema))
		path := filepath.Join("schema", name+".schema.json")
		if *update {
			require.NoError(t, os.WriteFile(path, b.Bytes(), 0o644))
		}
		is, err := os.ReadFile(path)
		require.NoError(t, err)
		assert.Equal(t, b.String(), string(is), "%s is stale: run `go test ./lint/report -update`", path)
	}
	findings, err := os.ReadFile("schema/findings.schema.json")
	require.NoError(t, err)
	validate(t, findings, inFormat(t, "json", various(t)))
	validate(t, findings, inFormat(t, "json", nil))
	finding, err := os.ReadFile("schema/finding.schema.json")
	require.NoError(t, err)
	for line := range strings.Lines(inFormat(t, "jsonl", various(t))) {
		validate(t, finding, line)
	}
}

func severity(t reflect.Type) *jsonschema.Schema {
	if t != reflect.TypeFor[lint.Severity]() {
		return nil
	}
	s := &jsonschema.Schema{Type: "string"}
	for _, name := range lint.LevelNames()[1:] {
		s.Enum = append(s.Enum, name)
	}
	return s
}

func TestXMLIsWellFormed(t *testing.T) {
	for _, format := range []string{"junit", "checkstyle"} {
		d := xml.NewDecoder(strings.NewReader(inFormat(t, format, various(t))))
		for {
			if _, err := d.Token(); err == io.EOF {
				break
			} else if !assert.NoError(t, err, format) {
				break
			}
		}
	}
	var back junitReport
	require.NoError(t, xml.Unmarshal([]byte(inFormat(t, "junit", various(t))), &back))
	cases := 0
	for _, s := range back.Suites {
		cases += len(s.Cases)
		assert.Equal(t, s.Tests, len(s.Cases))
	}
	assert.Equal(t, back.Tests, cases)
}

func TestGitLabTellsFindingsApart(t *testing.T) {
	same := found(t, "zc\n", "zc", lint.Finding{Rule: "row-over"})
	other := same
	other.File = "hip.crochet"
	var issues []gitlabIssue
	require.NoError(t, json.Unmarshal([]byte(inFormat(t, "gitlab", append(various(t), same, other))), &issues))
	seen := map[string]bool{}
	for _, i := range issues {
		assert.False(t, seen[i.Fingerprint], i.Description)
		seen[i.Fingerprint] = true
	}
}

func TestGitHubEscapes(t *testing.T) {
	assert.Contains(t, inFormat(t, "github", various(t)), "::error file=signs%2C50%25.crochet,line=1,col=10,endColumn=18,endLine=1,title=count-unknown::`<&\"%25,:'>` is not understood: 100%25")
}

func TestTextFitsItsTerminal(t *testing.T) {
	long := strings.Repeat("sc in next st, ", 20)
	c := found(t, long+"zc in next st, "+long, "zc", lint.Finding{
		Rule: "row-over", Message: "m", Related: []lint.Related{{Message: strings.Repeat("a row below that is far away, ", 5)}},
		Fix: &lint.Fix{Title: strings.Repeat("write another word, ", 6)},
	})
	for _, width := range []int{40, 60, 80, 200} {
		var b bytes.Buffer
		require.NoError(t, Text(&b, []Checked{c}, Options{Width: width}))
		lines := strings.Split(b.String(), "\n")
		assert.Equal(t, strings.Index(lines[1], "zc"), strings.Index(lines[2], "^")+len("…")-1)
		for _, line := range lines {
			assert.LessOrEqual(t, textWidth(line), width, line)
		}
	}
}

func TestQuietTextHasNoSummary(t *testing.T) {
	var b bytes.Buffer
	require.NoError(t, Text(&b, []Checked{{File: "x", Text: source.New("")}}, Options{Quiet: true}))
	assert.Empty(t, b.String())
}
