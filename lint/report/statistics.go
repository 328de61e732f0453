package report

import (
	"bufio"
	"cmp"
	"fmt"
	"io"
	"slices"
	"strings"

	"stitchproof/lang/fabric"
)

// Statistics is what many patterns come to together: how far they were read,
// how far their stated counts hold, and what was found how often.
type Statistics struct {
	Files    int             `json:"files"`
	Lines    StatisticsLines `json:"lines"`
	Counts   StatedCounts    `json:"counts"`
	Findings int             `json:"findings"`
	// Rules are the rules that found something, the most frequent first.
	Rules []RuleFindings `json:"rules"`
}

// StatisticsLines counts instruction lines.
type StatisticsLines struct {
	All    int `json:"all"`
	Whole  int `json:"whole"`  // every clause of them is read
	Unread int `json:"unread"` // some clause of them is not
}

// StatedCounts counts the lines that state a count. One that is wrong in one
// size is wrong.
type StatedCounts struct {
	All      int `json:"all"`
	Agree    int `json:"agree"`
	Disagree int `json:"disagree"`
	Unknown  int `json:"unknown"` // what was made is not known
}

// RuleFindings is how often one rule found something.
type RuleFindings struct {
	Rule     string `json:"rule"`
	Findings int    `json:"findings"`
}

// StatisticsOf adds up the files checked.
func StatisticsOf(files []Checked) *Statistics {
	s := &Statistics{Files: len(files), Rules: []RuleFindings{}}
	found := map[string]int{}
	for _, f := range files {
		s.Lines.add(f.Lines)
		s.Counts.add(f.Counts)
		for _, finding := range f.Findings {
			found[finding.Rule]++
			s.Findings++
		}
	}
	for rule, n := range found {
		s.Rules = append(s.Rules, RuleFindings{rule, n})
	}
	slices.SortFunc(s.Rules, func(a, b RuleFindings) int {
		return cmp.Or(cmp.Compare(b.Findings, a.Findings), strings.Compare(a.Rule, b.Rule))
	})
	return s
}

func (l *StatisticsLines) add(more StatisticsLines) {
	l.All += more.All
	l.Whole += more.Whole
	l.Unread += more.Unread
}

func (c *StatedCounts) add(more StatedCounts) {
	c.All += more.All
	c.Agree += more.Agree
	c.Disagree += more.Disagree
	c.Unknown += more.Unknown
}

// tally counts the instruction lines of a file.
func (c *Checked) tally(f *fabric.Fabric) {
	for row := range f.Rows() {
		c.Lines.All++
		if len(row.Tree.Unread()) == 0 {
			c.Lines.Whole++
		} else {
			c.Lines.Unread++
		}
		if row.Stated == nil {
			continue
		}
		c.Counts.All++
		switch agrees := inAll(row, agreements(row)); {
		case agrees == nil:
			c.Counts.Unknown++
		case *agrees:
			c.Counts.Agree++
		default:
			c.Counts.Disagree++
		}
	}
}

// JSON writes the statistics for programs. It fails only where w does.
func (s *Statistics) JSON(w io.Writer) error { return writeJSON(w, s) }

// Text writes the statistics for people, a number a line. It fails only where
// w does.
func (s *Statistics) Text(w io.Writer) error {
	b := bufio.NewWriter(w)
	line := func(of string, n int) { fmt.Fprintf(b, "%-26s %7d\n", of, n) }
	line("files", s.Files)
	line("instruction lines", s.Lines.All)
	line("  read whole", s.Lines.Whole)
	line("  with an unread clause", s.Lines.Unread)
	line("stated counts", s.Counts.All)
	line("  that agree", s.Counts.Agree)
	line("  that disagree", s.Counts.Disagree)
	line("  that cannot be checked", s.Counts.Unknown)
	line("findings", s.Findings)
	for _, r := range s.Rules {
		line("  "+r.Rule, r.Findings)
	}
	return b.Flush()
}
