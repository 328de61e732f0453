// Command stitchproof checks crochet patterns from the command line, counts
// them, and serves editors.
package main

import "os"

func main() { os.Exit(Run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr)) }
