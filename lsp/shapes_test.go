package lsp

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"math"
	"net/url"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// metaModel is the official description of the protocol, which the module of the
// protocol's types carries.
type metaModel struct {
	requests, notifications map[string]exchange
	named                   map[string]*shape
}

// exchange is a kind of request or notification.
type exchange struct {
	Method              string
	Direction           string `json:"messageDirection"`
	Params              *shape
	Result              *shape
	PartialResult       *shape
	ErrorData           *shape
	RegistrationOptions *shape
}

// goes tells whether messages of this kind go in a direction.
func (e exchange) goes(direction string) bool {
	return e.Direction == direction || e.Direction == "both"
}

// The directions of messages, as the model names them.
const (
	toServer = "clientToServer"
	toClient = "serverToClient"
)

// shape is what a value may look like. A structure is a literal with all that it has
// of others.
type shape struct {
	Kind       string
	Name       string   // of what is referred to, or of a base type
	Items      []*shape // of or, and, tuple
	Element    *shape   // of an array
	Key, Value *shape   // of a map
	Text       string   // of a stringLiteral
	Properties []property
	Values     []any // of an enumeration
}

type property struct {
	Name     string
	Type     *shape
	Optional bool
}

// UnmarshalJSON tells apart what the model calls value.
func (s *shape) UnmarshalJSON(data []byte) error {
	type plain shape
	var read struct {
		*plain
		Value json.RawMessage
	}
	read.plain = (*plain)(s)
	if err := json.Unmarshal(data, &read); err != nil || read.Value == nil {
		return err
	}
	switch s.Kind {
	case "map":
		return json.Unmarshal(read.Value, &s.Value)
	case "stringLiteral":
		return json.Unmarshal(read.Value, &s.Text)
	case "literal":
		return json.Unmarshal(read.Value, s)
	}
	return fmt.Errorf("the model has a %s with a value", s.Kind)
}

// theModel is read where the module lies, once for all tests.
var theModel = sync.OnceValues(func() (*metaModel, error) {
	folder, err := exec.Command("go", "list", "-m", "-f", "{{.Dir}}", "go.lsp.dev/protocol").Output()
	if err != nil {
		return nil, err
	}
	content, err := os.ReadFile(filepath.Join(strings.TrimSpace(string(folder)), "internal", "genlsp", "testdata", "metaModel.json"))
	if err != nil {
		return nil, err
	}
	return readModel(content)
})

func modelOf(t *testing.T) *metaModel {
	t.Helper()
	m, err := theModel()
	require.NoError(t, err)
	return m
}

// structure is one as the model writes it.
type structure struct {
	Name            string
	Extends, Mixins []*shape
	Properties      []property
}

func readModel(content []byte) (*metaModel, error) {
	var written struct {
		Requests, Notifications []exchange
		Structures              []structure
		Enumerations            []struct {
			Name                 string
			Type                 *shape
			Values               []struct{ Value any }
			SupportsCustomValues bool
		}
		TypeAliases []struct {
			Name string
			Type *shape
		}
	}
	numbers := json.NewDecoder(bytes.NewReader(content))
	numbers.UseNumber()
	if err := numbers.Decode(&written); err != nil {
		return nil, err
	}
	m := &metaModel{map[string]exchange{}, map[string]exchange{}, map[string]*shape{}}
	for _, e := range written.Requests {
		m.requests[e.Method] = e
	}
	for _, e := range written.Notifications {
		m.notifications[e.Method] = e
	}
	for _, a := range written.TypeAliases {
		m.named[a.Name] = a.Type
	}
	for _, e := range written.Enumerations {
		s := &shape{Kind: "enumeration", Name: e.Name}
		for _, v := range e.Values {
			s.Values = append(s.Values, v.Value)
		}
		if e.SupportsCustomValues {
			s = e.Type
		}
		m.named[e.Name] = s
	}
	structures := map[string]structure{}
	for _, s := range written.Structures {
		structures[s.Name] = s
	}
	for name := range structures {
		m.named[name] = literalOf(propertiesOf(structures, name)...)
	}
	return m, nil
}

// propertiesOf are a structure's own and those it has of others. Its own go before.
func propertiesOf(all map[string]structure, name string) []property {
	s := all[name]
	out := slices.Clone(s.Properties)
	for _, of := range slices.Concat(s.Extends, s.Mixins) {
		for _, p := range propertiesOf(all, of.Name) {
			if !slices.ContainsFunc(out, func(own property) bool { return own.Name == p.Name }) {
				out = append(out, p)
			}
		}
	}
	return out
}

func literalOf(properties ...property) *shape { return &shape{Kind: "literal", Properties: properties} }

func either(items ...*shape) *shape { return &shape{Kind: "or", Items: items} }

func base(name string) *shape { return &shape{Kind: "base", Name: name} }

func reference(name string) *shape { return &shape{Kind: "reference", Name: name} }

func spelling(text string) *shape { return &shape{Kind: "stringLiteral", Text: text} }

// misfit says where a value has not its shape, and why.
type misfit struct{ at, why string }

func (m *misfit) String() string { return m.at + ": " + m.why }

// depth is how far a value was understood before it did not fit.
func (m *misfit) depth() int { return strings.Count(m.at, "/") }

func unfit(at, why string, args ...any) *misfit { return &misfit{at, fmt.Sprintf(why, args...)} }

// misfit says why a value at a place has not a shape, nil where it has.
func (m *metaModel) misfit(s *shape, value any, at string) *misfit {
	switch s.Kind {
	case "base":
		if !bases[s.Name](value) {
			return unfit(at, "%v is no %s", value, s.Name)
		}
	case "reference":
		to, ok := m.named[s.Name]
		if !ok {
			return unfit(at, "the model has no %s", s.Name)
		}
		return m.misfit(to, value, at)
	case "enumeration":
		if !slices.Contains(s.Values, value) {
			return unfit(at, "%v is no %s", value, s.Name)
		}
	case "stringLiteral":
		if value != s.Text {
			return unfit(at, "%v is not %q", value, s.Text)
		}
	case "or":
		return m.misfitOfAll(s, value, at)
	case "and":
		return m.misfit(m.merged(s), value, at)
	case "array", "tuple":
		return m.misfitOfList(s, value, at)
	case "map", "literal":
		return m.misfitOfObject(s, value, at)
	default:
		return unfit(at, "nobody knows what a %q is", s.Kind)
	}
	return nil
}

// misfitOfAll is nil where a value has one shape of several, and says else of those
// that it comes closest to.
func (m *metaModel) misfitOfAll(s *shape, value any, at string) *misfit {
	var closest *misfit
	for _, item := range s.Items {
		found := m.misfit(item, value, at)
		switch {
		case found == nil:
			return nil
		case closest == nil || found.depth() > closest.depth():
			closest = found
		case found.depth() == closest.depth():
			closest = unfit(closest.at, "%s; or %v", closest.why, found)
		}
	}
	return closest
}

// merged is a structure with what several have.
func (m *metaModel) merged(s *shape) *shape {
	all := literalOf()
	for _, item := range s.Items {
		for item.Kind == "reference" {
			item = m.named[item.Name]
		}
		all.Properties = append(all.Properties, item.Properties...)
	}
	return all
}

func (m *metaModel) misfitOfList(s *shape, value any, at string) *misfit {
	list, ok := value.([]any)
	if !ok {
		return unfit(at, "%v is no %s", value, s.Kind)
	}
	if s.Kind == "tuple" && len(list) != len(s.Items) {
		return unfit(at, "there are %d in the place of %d", len(list), len(s.Items))
	}
	for i, v := range list {
		item := s.Element
		if s.Kind == "tuple" {
			item = s.Items[i]
		}
		if found := m.misfit(item, v, at+"/"+strconv.Itoa(i)); found != nil {
			return found
		}
	}
	return nil
}

func (m *metaModel) misfitOfObject(s *shape, value any, at string) *misfit {
	members, ok := value.(object)
	if !ok {
		return unfit(at, "%v is no object", value)
	}
	left := len(members)
	for _, p := range s.Properties {
		v, there := members[p.Name]
		if !there {
			if !p.Optional {
				return unfit(at+"/"+p.Name, "it is missing")
			}
			continue
		}
		left--
		if found := m.misfit(p.Type, v, at+"/"+p.Name); found != nil {
			return found
		}
	}
	if s.Kind == "literal" && left > 0 {
		return unfit(at, "it has what the protocol does not know: %v", extra(s, members))
	}
	if s.Kind == "map" {
		for k, v := range members {
			if found := m.misfit(s.Key, k, at+"/"+k); found != nil {
				return found
			}
			if found := m.misfit(s.Value, v, at+"/"+k); found != nil {
				return found
			}
		}
	}
	return nil
}

// extra are the members that a structure does not have.
func extra(s *shape, members object) []string {
	var out []string
	for name := range members {
		if !slices.ContainsFunc(s.Properties, func(p property) bool { return p.Name == name }) {
			out = append(out, name)
		}
	}
	slices.Sort(out)
	return out
}

// bases are the types that are made of no others.
var bases = map[string]func(any) bool{
	"null":        func(v any) bool { return v == nil },
	"boolean":     isOf[bool],
	"string":      isOf[string],
	"RegExp":      isOf[string],
	"decimal":     isOf[json.Number],
	"integer":     func(v any) bool { return within32(v, math.MinInt32) },
	"uinteger":    func(v any) bool { return within32(v, 0) },
	"URI":         isURI,
	"DocumentUri": isURI,
}

func isOf[T any](v any) bool {
	_, ok := v.(T)
	return ok
}

// within32 tells whether a value is a whole number from some least one to the
// protocol's greatest, which is the same with and without a sign.
func within32(v any, least int64) bool {
	written, _ := v.(json.Number)
	n, err := written.Int64()
	return err == nil && least <= n && n <= math.MaxInt32
}

func isURI(v any) bool {
	text, _ := v.(string)
	u, err := url.Parse(text)
	return err == nil && u.Scheme != "" && !strings.ContainsAny(text, " \"<>\\^`{|}") && ascii(text)
}

func ascii(text string) bool {
	return !strings.ContainsFunc(text, func(r rune) bool { return r > '~' })
}

// decoded reads JSON and keeps numbers as they are written.
func decoded(body []byte) (any, error) {
	var value any
	d := json.NewDecoder(bytes.NewReader(body))
	d.UseNumber()
	if err := d.Decode(&value); err != nil {
		return nil, err
	}
	if _, err := d.Token(); !errors.Is(err, io.EOF) {
		return nil, errors.New("something follows it")
	}
	return value, nil
}

// envelope is a message that has some members beside the one that all have.
func envelope(members ...property) *shape {
	return literalOf(append(members, property{Name: "jsonrpc", Type: spelling("2.0")})...)
}

// number is the id of a request.
var number = either(base("integer"), base("string"))

// spoken is the shape of a request or notification that goes in a direction, nil
// where the protocol has none by that name.
func (m *metaModel) spoken(method, direction string, request bool) *shape {
	kinds := m.notifications
	var members []property
	if request {
		kinds, members = m.requests, []property{{Name: "id", Type: number}}
	}
	e, ok := kinds[method]
	if !ok || !e.goes(direction) {
		return nil
	}
	members = append(members, property{Name: "method", Type: spelling(method)})
	if e.Params != nil {
		members = append(members, property{Name: "params", Type: e.Params})
	}
	return envelope(members...)
}

// answered is the shape of what answers a request. One that the protocol does not
// know can only be refused.
func (m *metaModel) answered(method string) *shape {
	e, known := m.requests[method]
	refused := refusing(number, e.ErrorData)
	if !known {
		return refused
	}
	return either(envelope(property{Name: "id", Type: number}, property{Name: "result", Type: e.Result}), refused)
}

// refusing is the shape of an error.
func refusing(id, data *shape) *shape {
	if data == nil {
		data = reference("LSPAny")
	}
	return envelope(property{Name: "id", Type: id}, property{Name: "error", Type: literalOf(
		property{Name: "code", Type: base("integer")}, property{Name: "message", Type: base("string")},
		property{Name: "data", Type: data, Optional: true},
	)})
}

// Each kind of broken message is refused where it is broken, and the sound one beside
// it is not.
func TestBrokenShapesAreRefused(t *testing.T) {
	const (
		hover  = "textDocument/hover"
		tokens = "textDocument/semanticTokens/full"
		report = "textDocument/diagnostic"
		at     = `{"start":{"line":0,"character":0},"end":{"line":0,"character":2}}`
	)
	for _, test := range []struct{ method, result, fault string }{
		{hover, `null`, ""},
		{hover, `{"contents":{"kind":"plaintext","value":"sc"},"range":` + at + `}`, ""},
		{hover, `{"contents":["sc",{"language":"crochet","value":"sc"}]}`, ""},
		{hover, `{"range":` + at + `}`, "/result/contents: it is missing"},
		{hover, `{"contents":{"kind":"plaintext"}}`, "/result/contents/value: it is missing"},
		{hover, `{"contents":{"kind":"html","value":"sc"}}`, "/result/contents/kind: html is no MarkupKind"},
		{hover, `{"contents":3}`, "/result/contents: 3 is no"},
		{hover, `{"contents":"sc","range":null}`, "/result/range: <nil> is no object"},
		{hover, `{"contents":"sc","colour":"bark"}`, "/result: it has what the protocol does not know: [colour]"},
		{hover, `{"contents":"sc","range":{"start":{"line":-1,"character":0},"end":{"line":0,"character":0}}}`, "/line: -1 is no uinteger"},
		{hover, `{"contents":"sc","range":{"start":{"line":0.5,"character":0},"end":{"line":0,"character":0}}}`, "/line: 0.5 is no uinteger"},
		{hover, `{"contents":"sc","range":{"start":{"line":4294967295,"character":0},"end":{"line":0,"character":0}}}`, "/line: 4294967295 is no uinteger"},
		{tokens, `{"resultId":"1","data":[0,1,2,3,4]}`, ""},
		{tokens, `{"resultId":"1","data":[0,1,"2",3,4]}`, "/result/data/2: 2 is no uinteger"},
		{tokens, `{"resultId":"1","data":null}`, "/result/data: <nil> is no array"},
		{report, `{"kind":"unchanged","resultId":"1"}`, ""},
		{report, `{"kind":"unchanged"}`, "/result/resultId: it is missing"},
		{report, `{"kind":"full","items":[{"range":` + at + `,"message":"short","severity":3}]}`, ""},
		{report, `{"kind":"full","items":[{"range":` + at + `,"message":"short","severity":9}]}`, "/severity: 9 is no DiagnosticSeverity"},
		{report, `{"kind":"full","items":[{"range":` + at + `,"message":"short","data":{"any":["thing",1.5,null]}}]}`, ""},
		{report, `{"kind":"full","items":[{"range":` + at + `,"message":"short","codeDescription":{"href":"a page"}}]}`, "/href: a page is no URI"},
		{"textDocument/rename", `{"changes":{"file:///hedge":[]}}`, ""},
		{"textDocument/rename", `{"changes":{"hedge":[]}}`, "/result/changes/hedge: hedge is no DocumentUri"},
		{"textDocument/foldingRange", `[{"startLine":0,"endLine":1,"kind":"of our own"}]`, ""},
		{"initialize", `{"capabilities":{"hoverProvider":"yes"}}`, "/hoverProvider: yes is no"},
		{"initialize", `{"capabilities":{"semanticTokensProvider":{"legend":{"tokenTypes":[],"tokenModifiers":[]},"range":{}}}}`, ""},
		{"initialize", `{"capabilities":{"semanticTokensProvider":{"legend":{"tokenTypes":[],"tokenModifiers":[]},"range":{"a":1}}}}`, "/range: it has what the protocol does not know: [a]"},
		{"textDocument/signatureHelp", `{"signatures":[{"label":"sc","parameters":[{"label":[0,2]}]}]}`, ""},
		{"textDocument/signatureHelp", `{"signatures":[{"label":"sc","parameters":[{"label":[0,2,4]}]}]}`, "/label: there are 3 in the place of 2"},
		{"shutdown", `null`, ""},
		{"shutdown", `{}`, "/result: map[] is no null"},
		{"hedgerow/count", `1`, "/error: it is missing"},
	} {
		e := newEar(modelOf(t))
		e.said(`{"jsonrpc":"2.0","id":1,"method":"` + test.method + `"}`)
		e.heard([]byte(`{"jsonrpc":"2.0","id":1,"result":` + test.result + `}`))
		holdFault(t, e, test.fault, test.method+" "+test.result)
	}
}

// The same of all messages but sound answers.
func TestBrokenMessagesAreRefused(t *testing.T) {
	const asked = `{"jsonrpc":"2.0","id":1,"method":"workspace/diagnostic","params":{"workDoneToken":"t","partialResultToken":7}}`
	progress := func(token, value string) string {
		return `{"jsonrpc":"2.0","method":"$/progress","params":{"token":` + token + `,"value":` + value + `}}`
	}
	register := func(options string) string {
		return `{"jsonrpc":"2.0","id":1,"method":"client/registerCapability","params":{"registrations":[{"id":"a","method":"textDocument/colorPresentation","registerOptions":` + options + `}]}}`
	}
	for body, fault := range map[string]string{
		`{"jsonrpc":"2.0","id":null,"error":{"code":-32700,"message":"what?"}}`:                                             "",
		`{"jsonrpc":"2.0","id":1,"error":{"code":-32802,"message":"later","data":{"retriggerRequest":true}}}`:               "",
		`{"jsonrpc":"2.0","id":1,"error":{"code":-32802,"message":"later","data":{"retriggerRequest":3}}}`:                  "/error/data/retriggerRequest: 3 is no boolean",
		`{"jsonrpc":"2.0","id":1,"error":{"code":"x","message":"later"}}`:                                                   "/error/code: x is no integer",
		`{"jsonrpc":"2.0","id":1,"result":{"items":[]},"error":{"code":1,"message":"m"}}`:                                   "does not know",
		`{"jsonrpc":"1.0","id":1,"result":{"items":[]}}`:                                                                    "/jsonrpc: 1.0 is not",
		`{"jsonrpc":"2.0","id":2,"result":null}`:                                                                            "nobody waits for",
		`{"jsonrpc":"2.0","id":1}`:                                                                                          "is missing",
		`[]`:                                                                                                                "no message",
		`{"jsonrpc":"2.0","id":1,"result":{"items":[]}} {}`:                                                                 "no message",
		`{"jsonrpc":"2.0","method":"textDocument/publishDiagnostics","params":{"uri":"file:///hedge","diagnostics":[]}}`:    "",
		`{"jsonrpc":"2.0","method":"textDocument/publishDiagnostics","params":{"uri":"file:///a hedge","diagnostics":[]}}`:  "/params/uri: file:///a hedge is no DocumentUri",
		`{"jsonrpc":"2.0","method":"textDocument/publishDiagnostics","params":{"uri":"file:///hedge","diagnostics":null}}`:  "/params/diagnostics: <nil> is no array",
		`{"jsonrpc":"2.0","id":1,"method":"textDocument/publishDiagnostics","params":{"uri":"file:///h","diagnostics":[]}}`: "no request",
		`{"jsonrpc":"2.0","method":"textDocument/didOpen","params":{}}`:                                                     "no notification",
		`{"jsonrpc":"2.0","id":5,"method":"workspace/inlayHint/refresh"}`:                                                   "",
		`{"jsonrpc":"2.0","id":5,"method":"workspace/inlayHint/refresh","params":null}`:                                     "does not know: [params]",
		`{"jsonrpc":"2.0","id":null,"method":"workspace/inlayHint/refresh"}`:                                                "/id: <nil> is no",
		progress(`"t"`, `{"kind":"begin","title":"Looking"}`):                                                               "",
		progress(`"t"`, `{"kind":"begin"}`):                                                                                 "/params/value/title: it is missing",
		progress(`"t"`, `{"kind":"over"}`):                                                                                  "/params/value/kind: over is not",
		progress(`7`, `{"items":[]}`):                                                                                       "",
		progress(`7`, `{"kind":"end"}`):                                                                                     "/params/value/items: it is missing",
		progress(`"x"`, `{"kind":"end"}`):                                                                                   "nobody waits for",
		progress(`null`, `{"kind":"end"}`):                                                                                  "/params/token: <nil> is no",
		register(`{"workDoneProgress":true,"documentSelector":null}`):                                                       "",
		register(`{"workDoneProgress":true}`):                                                                               "/registerOptions/documentSelector: it is missing",
		register(`{"documentSelector":null,"colour":1}`):                                                                    "does not know: [colour]",
	} {
		e := newEar(modelOf(t))
		e.said(asked)
		e.heard([]byte(body))
		holdFault(t, e, fault, body)
	}
}

func holdFault(t *testing.T, e *ear, fault, of string) {
	t.Helper()
	if fault == "" {
		assert.Empty(t, e.faults, of)
	} else if assert.Len(t, e.faults, 1, of) {
		assert.Contains(t, e.faults[0], fault, of)
	}
}

// A request is answered once.
func TestSecondAnswerIsRefused(t *testing.T) {
	e := newEar(modelOf(t))
	e.said(`{"jsonrpc":"2.0","id":1,"method":"shutdown"}`)
	for range 2 {
		e.heard([]byte(`{"jsonrpc":"2.0","id":1,"result":null}`))
	}
	holdFault(t, e, "nobody waits for", "the second answer")
}

// All that the model refers to is there, and of a kind that is known.
func TestModelIsUnderstood(t *testing.T) {
	m := modelOf(t)
	require.NotEmpty(t, m.named)
	seen := map[*shape]bool{}
	var walk func(of string, s *shape)
	walk = func(of string, s *shape) {
		if s == nil || seen[s] {
			return
		}
		seen[s] = true
		switch s.Kind {
		case "base":
			assert.Contains(t, bases, s.Name, of)
		case "reference":
			assert.Contains(t, m.named, s.Name, of)
		default:
			assert.Contains(t, []string{"enumeration", "stringLiteral", "or", "and", "array", "tuple", "map", "literal"}, s.Kind, of)
		}
		for _, inner := range append(slices.Clone(s.Items), s.Element, s.Key, s.Value) {
			walk(of, inner)
		}
		for _, p := range s.Properties {
			walk(of+"/"+p.Name, p.Type)
		}
	}
	for name, s := range m.named {
		walk(name, s)
	}
	for _, kinds := range []map[string]exchange{m.requests, m.notifications} {
		for method, e := range kinds {
			for _, s := range []*shape{e.Params, e.Result, e.PartialResult, e.ErrorData, e.RegistrationOptions} {
				walk(method, s)
			}
		}
	}
	for method := range features {
		assert.Contains(t, m.requests, method)
	}
}
