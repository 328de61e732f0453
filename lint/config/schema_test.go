package config

import (
	"bytes"
	"encoding/json"
	"flag"
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"reflect"
	"strings"
	"testing"

	"github.com/invopop/jsonschema"
	"github.com/pelletier/go-toml/v2"
	validator "github.com/santhosh-tekuri/jsonschema/v6"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lang/house"
	"stitchproof/lang/stitch"
	"stitchproof/lint"
)

var update = flag.Bool("update", false, "write the generated files anew")

func names[T interface{ ~string }](list ...T) *jsonschema.Schema {
	s := &jsonschema.Schema{Type: "string"}
	for _, name := range list {
		s.Enum = append(s.Enum, string(name))
	}
	return s
}

// written is how types that write themselves are written.
func written(t reflect.Type) *jsonschema.Schema {
	switch t {
	case reflect.TypeFor[worded[lint.Severity]]():
		return names(lint.LevelNames()[1:]...)
	case reflect.TypeFor[worded[stitch.Dialect]]():
		return names("US", "UK", "us", "uk")
	case reflect.TypeFor[ways]():
		chosen := &jsonschema.Schema{Type: "object", Properties: jsonschema.NewProperties(), AdditionalProperties: jsonschema.FalseSchema}
		for _, a := range house.Aspects() {
			way := names(a.Ways...)
			way.Description = "How to write it: " + a.About + "."
			chosen.Properties.Set(a.Name, way)
		}
		return chosen
	case reflect.TypeFor[levels]():
		levels := &jsonschema.Schema{Type: "object", Properties: jsonschema.NewProperties(), AdditionalProperties: jsonschema.FalseSchema}
		for _, name := range lint.Selectors() {
			level := names(lint.LevelNames()...)
			if rule, ok := lint.Find(name); ok {
				level.Description = rule.Summary
			}
			levels.Properties.Set(name, level)
		}
		return levels
	}
	return nil
}

// comments are what stands over each field in file.go.
func comments(t *testing.T) func(reflect.Type, string) string {
	t.Helper()
	parsed, err := parser.ParseFile(token.NewFileSet(), "file.go", nil, parser.ParseComments)
	require.NoError(t, err)
	over := map[string]string{}
	ast.Inspect(parsed, func(n ast.Node) bool {
		spec, ok := n.(*ast.TypeSpec)
		if !ok {
			return true
		}
		if fields, ok := spec.Type.(*ast.StructType); ok {
			for _, f := range fields.Fields.List {
				for _, name := range f.Names {
					over[spec.Name.Name+"."+name.Name] = strings.Join(strings.Fields(f.Doc.Text()), " ")
				}
			}
		}
		return false
	})
	return func(t reflect.Type, field string) string { return over[t.Name()+"."+field] }
}

func TestSchemaIsCurrent(t *testing.T) {
	r := jsonschema.Reflector{
		FieldNameTag: "toml", ExpandedStruct: true, DoNotReference: true, Anonymous: true,
		Mapper: written, LookupComment: comments(t),
	}
	schema := r.ReflectFromType(reflect.TypeFor[file]())
	schema.Title = "Settings of stitchproof"
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	require.NoError(t, e.Encode(schema))
	if *update {
		require.NoError(t, os.WriteFile("stitchproof.schema.json", b.Bytes(), 0o644))
		Schema = b.Bytes()
	}
	assert.Equal(t, b.String(), string(Schema), "the schema is stale: run `go test ./lint/config -update`")
}

// valid tells whether a file of settings fits the schema.
func valid(t *testing.T, text string) error {
	t.Helper()
	doc, err := validator.UnmarshalJSON(bytes.NewReader(Schema))
	require.NoError(t, err)
	c := validator.NewCompiler()
	require.NoError(t, c.AddResource("settings", doc))
	schema, err := c.Compile("settings")
	require.NoError(t, err)
	var v any
	require.NoError(t, toml.Unmarshal([]byte(strings.TrimPrefix(text, "\uFEFF")), &v))
	raw, err := json.Marshal(v)
	require.NoError(t, err)
	instance, err := validator.UnmarshalJSON(bytes.NewReader(raw))
	require.NoError(t, err)
	return schema.Validate(instance)
}

// The schema and the reader agree on what is right.
func TestSchemaAgreesWithTheReader(t *testing.T) {
	for name, text := range map[string]string{
		"empty": "", "all": everything, "uncommented example": uncommented(t),
		"unknown key": "dialct = \"US\"\n", "unknown rule": "[rules]\ncount-mismach = \"off\"\n", "unknown level": "[rules]\nall = \"grave\"\n",
		"no paths": "[[override]]\ndialect = \"UK\"\n", "unknown dialect": "dialect = \"French\"\n", "number": "fail-on = 3\n", "below nothing": "[style]\nline-width = -5\n", "a mark at the head": "\uFEFFdialect = \"UK\"\n", "unknown way": "style.ways.repeat = \"daggers\"\n", "nothing with ways": "style.ways.moon = \"full\"\n",
	} {
		t.Run(name, func(t *testing.T) {
			_, err := Load(file1(t, text))
			assert.Equal(t, err == nil, valid(t, text) == nil, "reader: %v\nschema: %v", err, valid(t, text))
		})
	}
}
