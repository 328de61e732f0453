package main

import (
	"fmt"
	"strings"

	"stitchproof/lang/nearest"
	"stitchproof/lang/stitch"
	"stitchproof/lint"
	"stitchproof/lint/report"
)

type explainCommand struct {
	Words []string `arg:"" name:"rule|stitch" help:"A rule's name, or a stitch in any spelling of either dialect."`
}

// Run explains the rule of that name, else the stitch.
func (c *explainCommand) Run(s *streams) error {
	word := strings.ToLower(strings.Join(c.Words, " "))
	if rule, ok := lint.Find(word); ok {
		return report.ExplainRule(s.out, rule)
	}
	if meaning, ok := stitch.Find(word); ok {
		return report.ExplainStitch(s.out, word, meaning)
	}
	known := lint.Names()
	for _, s := range stitch.Spellings() {
		known = append(known, s.Words)
	}
	if meant, ok := nearest.To(word, known); ok {
		return fmt.Errorf("no rule and no stitch is called %q; perhaps %q is meant", word, meant)
	}
	return fmt.Errorf("no rule and no stitch is called %q; `stitchproof rules` lists the rules", word)
}
