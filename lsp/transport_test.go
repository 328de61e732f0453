package lsp

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"sync"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

// pipe is one end of a stream between client and server.
type pipe struct {
	io.ReadCloser
	io.WriteCloser
}

func (p pipe) Close() error { return errors.Join(p.ReadCloser.Close(), p.WriteCloser.Close()) }

// inProcess serves in this process, with the given way to analyze a text.
func inProcess(t *testing.T, analyze func(*source.Text) *lint.Analysis) *client {
	t.Helper()
	return inProcessWith(t, func(_ lint.Settings, _ *lint.Analysis, text *source.Text) *lint.Analysis { return analyze(text) })
}

// inProcessWith is a server whose analyzer heeds the settings of files.
func inProcessWith(t *testing.T, analyze analyzer) *client {
	t.Helper()
	serverIn, clientOut := io.Pipe()
	clientIn, serverOut := io.Pipe()
	var notes bytes.Buffer
	done := make(chan error, 1)
	ctx, stop := context.WithCancel(context.Background())
	go func() { done <- serve(ctx, pipe{serverIn, serverOut}, &notes, analyze, "") }()
	wait := sync.OnceValue(func() error { return within(t, done) })
	t.Cleanup(func() {
		stop()
		_ = wait()
		if t.Failed() {
			t.Logf("the server noted:\n%s", notes.String())
		}
	})
	return connect(t, clientOut, clientIn, wait)
}

// spawned serves in a process of its own.
func spawned(t *testing.T) *client {
	t.Helper()
	command := exec.Command(binary(t), "lsp")
	in, err := command.StdinPipe()
	require.NoError(t, err)
	out, err := command.StdoutPipe()
	require.NoError(t, err)
	var notes bytes.Buffer
	command.Stderr = &notes
	require.NoError(t, command.Start())
	done := make(chan error, 1)
	go func() { done <- command.Wait() }()
	wait := sync.OnceValue(func() error { return within(t, done) })
	t.Cleanup(func() {
		_ = in.Close()
		_ = wait()
		if t.Failed() {
			t.Logf("the server noted:\n%s", notes.String())
		}
	})
	return connect(t, in, out, wait)
}

func within(t *testing.T, done <-chan error) error {
	select {
	case err := <-done:
		return err
	case <-time.After(patience):
		t.Errorf("the server did not end within %v", patience)
		return nil
	}
}

var built struct {
	once sync.Once
	path string
	err  error
}

// binary is the tool, built once for all tests.
func binary(t *testing.T) string {
	t.Helper()
	built.once.Do(func() {
		folder, err := os.MkdirTemp("", "stitchproof")
		if err != nil {
			built.err = err
			return
		}
		built.path = filepath.Join(folder, "stitchproof.exe")
		output, err := exec.Command("go", "build", "-o", built.path, "stitchproof/cmd/stitchproof").CombinedOutput()
		if err != nil {
			built.err = fmt.Errorf("%w\n%s", err, output)
		}
	})
	require.NoError(t, built.err)
	return built.path
}

func TestMain(m *testing.M) {
	code := m.Run()
	if built.path != "" {
		_ = os.RemoveAll(filepath.Dir(built.path))
	}
	os.Exit(code)
}

// bothWays runs a script against a server in this process and against the built
// binary.
func bothWays(t *testing.T, script func(*testing.T, *client)) {
	t.Helper()
	t.Run("in process", func(t *testing.T) { script(t, inProcessWith(t, lint.Settings.AnalyzeAfter)) })
	t.Run("binary", func(t *testing.T) { script(t, spawned(t)) })
}
