// Command stitchproof checks crochet patterns from the command line, counts
// them, and serves editors.
package main

import (
	"os"

	"stitchproof/lang/syntax"
)

func main() {
	syntax.Prepare() // nearly every command reads patterns
	s := &streams{in: os.Stdin, out: os.Stdout, err: os.Stderr}
	os.Exit(s.run(os.Args[1:]))
}
