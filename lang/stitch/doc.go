// Package stitch is the dictionary of crochet stitches and of the abbreviations
// of patterns, in US and UK terms.
//
// The dictionary is data: the tables in the folder data say what a stitch does,
// how it is made, how each dialect spells it, and which published source says so.
// A crocheter who knows better corrects a line there; nothing else need change.
//
//	stitches.tsv       one stitch a line: what it uses and makes, loops, height
//	families.tsv       the stitches built on others: dc3tog, FPdc, fsc, 5-dc shell
//	names.tsv          how each dialect writes the stitches of both
//	abbreviations.tsv  the other abbreviations and signs of patterns
//	dialects.tsv       the words beside the stitches in which the dialects differ
//	sources.tsv        the works that the other tables cite
//
// The first three are written out as Go in entries.go, so that a program has the
// dictionary without reading them:
//
//	go test ./lang/stitch -run TestEntries -update
//
// The others are read once, when first asked for. What the package hands out is
// shared and is not to be changed; it may be read from many goroutines at once.
package stitch
