package stitch

import (
	"strings"

	"stitchproof/lang/table"
)

// Abbreviation is an abbreviation, a sign or a word of the dialects that is not
// a stitch.
type Abbreviation struct {
	Short, Long string
	// Also holds other spellings.
	Also []string
	// Source is the works that print it, each with how it was had.
	Source string
}

// glossary is abbreviations.tsv, in its order and by spelling.
type glossary struct {
	list   []Abbreviation
	byWord map[string]int
}

var abbreviations = table.Once(func() (*glossary, error) { return readGlossary(abbreviationTable, sourceTable) })

func readGlossary(text, sources string) (*glossary, error) {
	cited, err := table.ReadCitations(sources)
	if err != nil {
		return nil, err
	}
	records, err := table.Read("abbreviations.tsv", text, "short", "long", "also", "sources")
	if err != nil {
		return nil, err
	}
	g := &glossary{make([]Abbreviation, len(records)), make(map[string]int, 2*len(records))}
	for i, r := range records {
		works, err := cited.Of(r)
		if err != nil {
			return nil, err
		}
		a := Abbreviation{r.Text("short"), r.Text("long"), r.List("also", "|"), strings.Join(works, "; ")}
		for _, word := range append([]string{a.Short}, a.Also...) {
			if j, taken := g.byWord[fold(word)]; taken {
				return nil, r.Errorf("%q already stands for %q", word, g.list[j].Long)
			}
			g.byWord[fold(word)] = i
		}
		g.list[i] = a
	}
	return g, nil
}

// FindAbbreviation looks a word up as [Find] does a stitch.
func FindAbbreviation(word string) (Abbreviation, bool) {
	g := abbreviations()
	i, ok := g.byWord[fold(word)]
	if !ok {
		return Abbreviation{}, false
	}
	return g.list[i], true
}
