package main

import (
	"bytes"
	"os"
	"testing"
	"testing/synctest"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestProgressIsToldOfLongRunsOnly(t *testing.T) {
	told := func(each time.Duration) string {
		var b bytes.Buffer
		synctest.Test(t, func(*testing.T) {
			p := &progress{w: &b}
			p.start(12)
			for range 12 {
				time.Sleep(each)
				p.step()
			}
			p.end()
		})
		return b.String()
	}
	assert.Empty(t, told(time.Millisecond))
	assert.Equal(t, "\r6 of 12 files checked\r8 of 12 files checked\r10 of 12 files checked\r12 of 12 files checked\r"+
		"                      \r", told(100*time.Millisecond), "and the line is taken back")
}

func TestNoProgressWithoutATerminal(t *testing.T) {
	p := progressOn(&bytes.Buffer{}, false)
	assert.Nil(t, p)
	p.start(1) // which tells nobody
	p.step()
	p.end()
}

func TestColour(t *testing.T) {
	file, err := os.Create(t.TempDir() + "/report")
	require.NoError(t, err)
	defer file.Close()
	for _, w := range []any{&bytes.Buffer{}, file} {
		w := w.(interface{ Write([]byte) (int, error) })
		assert.False(t, coloured(w, "auto"), "what is no terminal is not coloured")
		assert.True(t, coloured(w, "always"))
		assert.False(t, coloured(w, "never"))
		assert.Zero(t, widthOf(w))
	}
}
