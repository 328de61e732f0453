package report

import (
	"bytes"
	"encoding/json"
	"regexp"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stitchproof/lint/config"
)

// Every key that a file of settings may have is listed with what holds, but for those
// that say which files are meant.
func TestSettingsListEveryKey(t *testing.T) {
	var schema struct {
		Properties map[string]json.RawMessage
	}
	require.NoError(t, json.Unmarshal(config.Schema, &schema))
	for _, key := range []string{"extends", "files", "override"} {
		require.Contains(t, schema.Properties, key)
		delete(schema.Properties, key)
	}
	require.NotEmpty(t, schema.Properties)
	var b bytes.Buffer
	require.NoError(t, Settings(&b, nil, (&config.Config{}).For("haw.crochet"), false))
	for key := range schema.Properties {
		assert.Regexp(t, `(?m)^ +`+regexp.QuoteMeta(key)+`[ .]`, b.String())
	}
}
