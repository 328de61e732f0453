package lsp

import (
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"go.lsp.dev/protocol"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

// cup has one fault: its round 2 makes 12 and states a number of our choice.
func cup(stated string) string {
	return "Pattern: Acorn cup\nTerms: US\n\nPiece: Cup\n" +
		"Rnd 1: 6 sc in magic ring; sl st in first sc to join. (6 sc)\n" +
		"Rnd 2: Ch 1, 2 sc in each st around; sl st in first sc to join. (" + stated + " sc)\nFasten off.\n"
}

func codes(p published) []string {
	list := []string{}
	for _, d := range p.Diagnostics {
		list = append(list, string(d.Code.(protocol.String)))
	}
	return list
}

func TestFindingsFollowTheText(t *testing.T) {
	bothWays(t, func(t *testing.T, c *client) {
		c.initialize(nil, nil)
		c.open(file, 7, cup("13"))
		p := c.diagnostics()
		assert.Equal(t, file, p.URI)
		assert.Equal(t, int32(7), *p.Version)
		require.Equal(t, []string{"count-mismatch"}, codes(p))
		found := p.Diagnostics[0]
		assert.Equal(t, protocol.DiagnosticSeverityError, found.Severity)
		from, _ := found.Source.Get()
		assert.Equal(t, "stitchproof", from)
		assert.Contains(t, string(found.Message.(protocol.String)), "makes 12")
		assert.Equal(t, uint32(5), found.Range.Start.Line)

		number := strings.Index(strings.Split(cup("13"), "\n")[5], "13")
		c.change(file, 8, span(place(5, uint32(number)), place(5, uint32(number+2)), "12"))
		p = c.diagnostics()
		assert.Equal(t, int32(8), *p.Version)
		assert.Empty(t, p.Diagnostics)

		c.change(file, 9, whole(cup("14")))
		assert.Equal(t, int32(9), *c.diagnostics().Version)
		c.close(file)
		p = c.diagnostics()
		assert.Empty(t, p.Diagnostics)
		assert.Nil(t, p.Version)
		assert.NoError(t, c.leave())
	})
}

func TestSameFindingsAreNotToldTwice(t *testing.T) {
	c := inProcess(t, lint.Analyze)
	c.initialize(nil, nil)
	c.open(file, 1, cup("13"))
	assert.Equal(t, int32(1), *c.diagnostics().Version)
	c.change(file, 2, whole(cup("13")+"// a note\n"))
	c.call("textDocument/documentSymbol", naming(file), nil)
	other := strings.Replace(file, "acorn", "bramble", 1)
	c.open(other, 1, "")
	assert.Equal(t, other, c.diagnostics().URI, "files are told of in turn")

	c.close(file)
	assert.Equal(t, file, c.diagnostics().URI)
	c.open(file, 3, cup("13"))
	p := c.diagnostics()
	assert.Equal(t, int32(3), *p.Version)
	assert.Equal(t, []string{"count-mismatch"}, codes(p), "the client was told to forget them")
}

func TestPositionsInEachEncoding(t *testing.T) {
	text := strings.Replace(cup("13"), "Rnd 2: Ch 1,", "Rnd 2 (🌰 é): Ch 1,", 1)
	for _, e := range []source.Encoding{source.UTF8, source.UTF16, source.UTF32} {
		t.Run(e.String(), func(t *testing.T) {
			bothWays(t, func(t *testing.T, c *client) {
				c.initialize(object{"general": object{"positionEncodings": []string{e.String()}}}, nil)
				c.open(file, 1, text)
				p := c.diagnostics()
				require.Contains(t, codes(p), "count-mismatch")
				found := p.Diagnostics[slices.Index(codes(p), "count-mismatch")]
				converter := converter{source.New(text), e}
				assert.Contains(t, source.New(text).Slice(converter.span(found.Range)), "13")
				assert.Contains(t, []string{"13", "13 sc", "(13 sc)"}, source.New(text).Slice(converter.span(found.Range)))
			})
		})
	}
}

// chosen is an analyzer that finds what it is told to.
func chosen(findings ...lint.Finding) func(*source.Text) *lint.Analysis {
	return func(text *source.Text) *lint.Analysis {
		analysis := lint.Analyze(text)
		analysis.Findings = findings
		return analysis
	}
}

func TestSeverities(t *testing.T) {
	want := map[lint.Severity]protocol.DiagnosticSeverity{
		lint.Info: protocol.DiagnosticSeverityInformation, lint.Warning: protocol.DiagnosticSeverityWarning,
		lint.Error: protocol.DiagnosticSeverityError, lint.Caution: protocol.DiagnosticSeverityError,
	}
	for ours, theirs := range want {
		c := inProcess(t, chosen(lint.Finding{Rule: "acorn", Severity: ours, Message: "an acorn"}))
		c.initialize(nil, nil)
		c.open(file, 1, "")
		p := c.diagnostics()
		require.Len(t, p.Diagnostics, 1)
		assert.Equal(t, theirs, p.Diagnostics[0].Severity, ours)
	}
}

func TestRelatedPlaces(t *testing.T) {
	finding := lint.Finding{
		Rule: "acorn", Span: source.Span{Start: 3, End: 4}, Message: "an acorn",
		Related: []lint.Related{{Span: source.Span{Start: 0, End: 2}, Message: "its cup"}},
	}
	for _, supported := range []bool{true, false} {
		c := inProcess(t, chosen(finding))
		c.initialize(object{"textDocument": object{"publishDiagnostics": object{"relatedInformation": supported}}}, nil)
		c.open(file, 1, "ch 5.")
		related := c.diagnostics().Diagnostics[0].RelatedInformation
		if !supported {
			assert.Empty(t, related)
			continue
		}
		require.Len(t, related, 1)
		assert.Equal(t, "its cup", related[0].Message)
		assert.Equal(t, file, string(related[0].Location.URI))
		assert.Equal(t, protocol.Range{Start: place(0, 0), End: place(0, 2)}, related[0].Location.Range)
	}
}

// slow is an analyzer that says which text it was given and waits to be let go.
type slow struct {
	began chan string
	goOn  chan struct{}
}

func newSlow() slow { return slow{make(chan string, 8), make(chan struct{})} }

func (s slow) analyze(text *source.Text) *lint.Analysis {
	s.began <- text.String()
	<-s.goOn
	return lint.Analyze(text)
}

func TestReplacedTextIsNotToldOf(t *testing.T) {
	s := newSlow()
	c := inProcess(t, s.analyze)
	c.initialize(nil, nil)
	c.open(file, 1, cup("13"))
	require.Equal(t, cup("13"), <-s.began)
	c.change(file, 2, whole(cup("14")))
	c.change(file, 3, whole(cup("15")))
	assert.Equal(t, -32601, c.refused("hedgerow/count", nil)) // so the edits have been read
	s.goOn <- struct{}{}
	require.Equal(t, cup("15"), <-s.began, "the text between was never looked at")
	s.goOn <- struct{}{}
	assert.Equal(t, int32(3), *c.diagnostics().Version, "the first thing that is told")
}

func TestClosedWhileBeingRead(t *testing.T) {
	s := newSlow()
	c := inProcess(t, s.analyze)
	c.initialize(nil, nil)
	c.open(file, 1, cup("13"))
	<-s.began
	c.close(file)
	assert.Equal(t, -32601, c.refused("hedgerow/count", nil))
	s.goOn <- struct{}{}
	p := c.diagnostics()
	assert.Nil(t, p.Version)
	assert.Empty(t, p.Diagnostics)
}

func TestUnreadableTextCostsOnlyItself(t *testing.T) {
	c := inProcess(t, func(text *source.Text) *lint.Analysis {
		if text.Len() == 0 {
			panic("dropped a stitch")
		}
		return lint.Analyze(text)
	})
	c.initialize(nil, nil)
	c.open(file, 1, "")
	m := c.answer(c.request("textDocument/documentSymbol", naming(file)))
	require.NotNil(t, m.Error)
	assert.Equal(t, -32803, m.Error.Code)
	assert.Equal(t, "reading the text broke down: dropped a stitch", m.Error.Message)
	c.change(file, 2, whole(cup("13")))
	assert.Equal(t, []string{"count-mismatch"}, codes(c.diagnostics()))
}

func TestBrokenFeatureCostsOnlyItsAnswer(t *testing.T) {
	c := inProcess(t, func(text *source.Text) *lint.Analysis {
		if text.Len() == 0 {
			return nil // which every feature trips over
		}
		return lint.Analyze(text)
	})
	c.initialize(nil, nil)
	c.open(file, 1, "")
	for method := range features {
		if !strings.HasPrefix(method, "textDocument/") {
			continue // it asks for more of an answer, and there was none
		}
		params := at(file, place(0, 0))
		params["range"], params["positions"] = protocol.Range{}, []protocol.Position{{}}
		assert.Equal(t, -32603, c.refused(method, params), method)
	}
	c.change(file, 2, whole(cup("13")))
	assert.Equal(t, []string{"count-mismatch"}, codes(c.diagnostics()))
	assert.NoError(t, c.leave())
}

func TestCancelledRequestIsAnswered(t *testing.T) {
	s := newSlow()
	c := inProcess(t, s.analyze)
	c.initialize(nil, nil)
	c.open(file, 1, cup("12"))
	<-s.began
	cancelled := c.request("textDocument/hover", at(file, place(0, 0)))
	patient := c.request("textDocument/hover", at(file, place(0, 0)))
	c.notify("$/cancelRequest", object{"id": cancelled})
	m := c.answer(cancelled)
	require.NotNil(t, m.Error)
	assert.Equal(t, -32800, m.Error.Code)
	close(s.goOn)
	assert.Nil(t, c.answer(patient).Error)
	c.notify("$/cancelRequest", object{"id": patient}) // too late, and no harm
	assert.NoError(t, c.leave())
}

func TestRequestSeesTheTextOfItsMoment(t *testing.T) {
	s := newSlow()
	c := inProcess(t, s.analyze)
	c.initialize(nil, nil)
	c.open(file, 1, "Piece: Acorn\nWith A, ch 5.\n")
	<-s.began
	before := c.request("textDocument/documentSymbol", naming(file))
	c.change(file, 2, whole("Piece: Bramble\nWith A, ch 5.\n"))
	after := c.request("textDocument/documentSymbol", naming(file))
	close(s.goOn)
	assert.Contains(t, string(c.answer(before).Result), "Acorn")
	assert.Contains(t, string(c.answer(after).Result), "Bramble")
}
