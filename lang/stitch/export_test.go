package stitch

// Abbreviations is every abbreviation that is not a stitch's, in the order of the table.
func Abbreviations() []Abbreviation { return abbreviations().list }
