package lsp

import (
	"reflect"
	"testing"

	"github.com/stretchr/testify/assert"
	"go.lsp.dev/protocol"
)

// Editors of all ages leave out what they do not know, at any depth: without one
// part the rest must still be read.
func TestAnyPartOfTheAbilitiesMayBeMissing(t *testing.T) {
	var all protocol.ClientCapabilities
	parts := fill(reflect.ValueOf(&all).Elem(), "")
	assert.Greater(t, len(parts), 100)
	for name, part := range parts {
		kept := reflect.New(part.Type()).Elem()
		kept.Set(part)
		part.SetZero()
		assert.NotPanics(t, func() { abilitiesOf(&all) }, "without %s", name)
		part.Set(kept)
	}
}

// fill gives a value all its parts, and tells which of them can be left out.
func fill(v reflect.Value, name string) map[string]reflect.Value {
	parts := map[string]reflect.Value{}
	switch v.Kind() {
	case reflect.Pointer:
		v.Set(reflect.New(v.Type().Elem()))
		parts[name] = v
		for n, part := range fill(v.Elem(), name) {
			parts[n] = part
		}
	case reflect.Struct:
		for field, value := range v.Fields() {
			if field.IsExported() {
				for n, part := range fill(value, name+"."+field.Name) {
					parts[n] = part
				}
			}
		}
	}
	return parts
}
