package main

import (
	"bytes"
	"flag"
	"os"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
	"github.com/stretchr/testify/assert"
)

var update = flag.Bool("update", false, "write what is compared in the scripts anew")

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){
		"stitchproof": func() {
			s := &streams{in: os.Stdin, out: os.Stdout, err: os.Stderr}
			s.files.Before = dieAt(os.Getenv(lastStep))
			os.Exit(s.run(os.Args[1:]))
		},
	})
}

func TestScripts(t *testing.T) {
	testscript.Run(t, testscript.Params{
		Dir: "testdata/script", RequireExplicitExec: true, RequireUniqueNames: true, UpdateScripts: *update,
		Cmds: map[string]func(*testscript.TestScript, bool, []string){"zero": zero},
	})
}

// zero puts a zero byte at the end of a file, which a script cannot hold.
func zero(ts *testscript.TestScript, _ bool, args []string) {
	f, err := os.OpenFile(ts.MkAbs(args[0]), os.O_APPEND|os.O_WRONLY, 0)
	ts.Check(err)
	_, err = f.Write([]byte{0})
	ts.Check(err)
	ts.Check(f.Close())
}

func TestExitCodes(t *testing.T) {
	const sound = "Pattern: Haw\nTerms: US\n\nPiece: Haw\nRnd 1: 6 sc in magic ring; sl st in first sc to join. (6 sc)\nFasten off.\n"
	wrong := strings.Replace(sound, "(6 sc)", "(7 sc)", 1)
	tests := []struct {
		name, stdin string
		args        []string
		want        int
	}{
		{"clean", sound, []string{"check", "-"}, exitClean},
		{"found", wrong, []string{"check", "-"}, exitFound},
		{"not text", "P\x00i\x00e\x00c\x00e\x00", []string{"check", "-"}, exitBroke},
		{"found as json", wrong, []string{"check", "--format", "json", "-"}, exitFound},
		{"below what fails", wrong, []string{"check", "--fail-on", "caution", "-"}, exitClean},
		{"counting", wrong, []string{"count", "-"}, exitClean},
		{"rewriting", sound, []string{"terms", "--to", "uk", "-"}, exitClean},
		{"rewriting what is unsettled", strings.NewReplacer("Terms: US\n", "", "sc", "dc").Replace(sound), []string{"terms", "--to", "uk", "-"}, exitBroke},
		{"no such file", "", []string{"check", "nowhere.crochet"}, exitBroke},
		{"no such command", "", []string{"knit"}, exitBroke},
		{"no such rule", "", []string{"explain", "nothing-like-it"}, exitBroke},
		{"help", "", []string{"--help"}, exitClean},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			var out, err bytes.Buffer
			got := (&streams{in: strings.NewReader(test.stdin), out: &out, err: &err}).run(test.args)
			assert.Equal(t, test.want, got, "stdout:\n%s\nstderr:\n%s", &out, &err)
			assert.Equal(t, test.want == exitBroke, err.Len() > 0, "what could not run is said on standard error")
		})
	}
}
