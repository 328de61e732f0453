package stitch

import (
	"testing"
	"time"
)

func TestMin(t *testing.T) {
	least := time.Hour
	for range 300 {
		start := time.Now()
		if _, err := readDictionary(stitchTable, familyTable, nameTable, sourceTable); err != nil {
			t.Fatal(err)
		}
		least = min(least, time.Since(start))
	}
	w := time.Hour
	for range 300 {
		start := time.Now()
		readWordings(nameTable)
		w = min(w, time.Since(start))
	}
	r := time.Hour
	for range 300 {
		start := time.Now()
		c,_ := readCitations(sourceTable)
		a, _ := readTable("", familyTable, ruleColumns...)
		for _, x := range a { readRule(x, c) }
		a, _ = readTable("", stitchTable, ruleColumns...)
		for _, x := range a { readRule(x, c) }
		r = min(r, time.Since(start))
	}
	t.Log(least, w, r)
}
func BenchmarkRead(b *testing.B) {
	for b.Loop() {
		readDictionary(stitchTable, familyTable, nameTable, sourceTable)
	}
}
