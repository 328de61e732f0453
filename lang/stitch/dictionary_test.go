package stitch

import (
	_ "embed"
	"fmt"
	"slices"

	"stitchproof/lang/table"
)

var (
	//go:embed data/stitches.tsv
	stitchTable string
	//go:embed data/families.tsv
	familyTable string
	//go:embed data/names.tsv
	nameTable string
)

// dictionary is the tables of stitches, read and joined: what the program's dictionary is
// made from.
type dictionary struct {
	stitches  []*Stitch
	byID      map[string]*Stitch
	spellings map[string]Meaning
	scratch   []string // room for one stitch's spellings while the tables are read
}

func readDictionary(stitches, families, names, sources string) (*dictionary, error) {
	cited, err := table.ReadCitations(sources)
	if err != nil {
		return nil, err
	}
	worded, err := readWordings(names)
	if err != nil {
		return nil, err
	}
	d := &dictionary{byID: map[string]*Stitch{}, spellings: map[string]Meaning{}}
	keys := map[string]bool{}
	for _, t := range [...]struct{ name, text string }{{"stitches.tsv", stitches}, {"families.tsv", families}} {
		records, err := table.Read(t.name, t.text, ruleColumns...)
		if err != nil {
			return nil, err
		}
		for _, r := range records {
			keys[r.Text("key")] = true
			if err := d.add(r, cited, worded); err != nil {
				return nil, err
			}
		}
	}
	for key := range worded {
		if !keys[key] && d.byID[key] == nil {
			return nil, fmt.Errorf("names.tsv: there is no stitch or family %q", key)
		}
	}
	return d, nil
}

// add makes the stitches of one line, one for each base and number of legs.
func (d *dictionary) add(r table.Record, cited table.Citations, worded wordings) error {
	made, err := readRule(r, cited)
	if err != nil {
		return err
	}
	for _, id := range made.bases {
		base := d.byID[id]
		if base == nil && id != "" {
			return r.Errorf("no stitch above has the abbreviation %q", id)
		}
		if base != nil && worded[id] == nil {
			return r.Errorf("names.tsv has no line %q to build names on", id)
		}
		for n := made.fewest; n <= made.most; n++ {
			m := member{base, n}
			if err := d.enter(made.build(m), m, r, worded); err != nil {
				return err
			}
		}
	}
	return nil
}

// enter gives a stitch its terms and lists it under all its spellings.
func (d *dictionary) enter(s *Stitch, m member, r table.Record, worded wordings) error {
	key := r.Text("key")
	for _, dialect := range [...]Dialect{US, UK} {
		w := worded.in(key, dialect)
		if w == nil || len(w.short) == 0 || len(w.name) == 0 || len(w.plural) == 0 {
			return r.Errorf("names.tsv must give %q an abbreviation, a name and a plural in %v terms", key, dialect)
		}
		base := worded.of(m.base, dialect)
		all := spell(d.scratch[:0], w.short, base, m.legs)
		names := len(all)
		all = spell(all, w.name, base, m.legs)
		plurals := len(all)
		all = spell(all, w.plural, base, m.legs)
		folded := len(all)
		all = spell(all, w.also, base, m.legs)
		term := &s.UK
		if dialect == US {
			term, s.ID = &s.US, all[0]
			if d.byID[s.ID] != nil {
				return r.Errorf("%q is there twice", s.ID)
			}
		}
		if own := worded.in(s.ID, dialect); own != nil && own != w {
			all = spell(all, own.also, base, m.legs)
		}
		*term = Term{Abbr: all[0], Name: all[names], Plural: all[plurals]}
		d.scratch = all

		also := all[:0]
		for i, key := range all {
			if i < folded {
				key = fold(key)
			}
			added, err := d.list(key, dialect, s)
			if err != nil {
				return r.Errorf("%v", err)
			}
			if i < folded {
				term.proper = append(term.proper, key)
			}
			if added && i != 0 && i != names && i != plurals {
				also = append(also, key)
			}
		}
		term.Also = slices.Clone(also)
	}
	d.stitches, d.byID[s.ID] = append(d.stitches, s), s
	return nil
}

// list makes a folded spelling name a stitch in one dialect, and tells whether
// that is new. A Tunisian stitch gives way where an ordinary one has its
// spelling.
func (d *dictionary) list(key string, dialect Dialect, s *Stitch) (added bool, err error) {
	m := d.spellings[key]
	named := &m.US
	if dialect == UK {
		named = &m.UK
	}
	switch {
	case *named == nil:
		*named = s
		d.spellings[key] = m
		return true, nil
	case *named == s || s.Class == Tunisian:
		return false, nil
	}
	return false, fmt.Errorf("%q is %v for both %s and %s", key, dialect, (*named).ID, s.ID)
}
