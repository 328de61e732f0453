package main

import (
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"

	"github.com/rogpeppe/go-internal/diff"

	"stitchproof/lang/nearest"
	"stitchproof/lang/source"
	"stitchproof/lint"
	"stitchproof/lint/fix"
	"stitchproof/lint/inputs"
	"stitchproof/lint/report"
)

// fixFlags choose what is fixed.
type fixFlags struct {
	Fix      bool     `help:"Make the changes that are safe: they alter nothing that a maker makes."`
	FixRisky bool     `help:"Make the first of the changes that a person should choose as well. Read what they did."`
	FixOnly  []string `placeholder:"RULE" help:"Make only the changes that settle this rule's findings. May be given several times."`
	Answer   string   `placeholder:"REASON" help:"Answer what is found, or left after fixing, in comments with this reason; cautions are left, each for an answer of its own."`
	Diff     bool     `help:"Show what would be changed, and write nothing; the exit code is 1 where there is something."`
}

// wanted tells whether anything is to be changed.
func (f *fixFlags) wanted() bool { return f.fixes() || f.Answer != "" }

// fixes tells whether anything is to be fixed. What --diff shows by itself is what
// --fix would do.
func (f *fixFlags) fixes() bool { return f.Fix || f.FixRisky || f.Diff && f.Answer == "" }

// change fixes a text, and answers what is left.
func (f *fixFlags) change(text *source.Text, check func(*source.Text) []lint.Finding) fix.Result {
	r := fix.Result{Text: text}
	if f.fixes() {
		r = fix.Fix(text, f.choice(), check)
	}
	if f.Answer == "" {
		return r
	}
	found := slices.DeleteFunc(check(r.Text), func(f lint.Finding) bool { return f.IsCaution() }) // one reason cannot answer them all
	edits := lint.Answer(r.Text, found, f.Answer)
	if answered, err := r.Text.Apply(edits); err == nil { // they stand on lines of their own
		r.Text, r.Applied = answered, r.Applied+len(edits)
	}
	return r
}

func (f *fixFlags) choice() fix.Choice { return fix.Choice{Risky: f.FixRisky, Only: f.FixOnly} }

// check tells what is wrong with the choice.
func (f *fixFlags) check() error {
	for _, name := range f.FixOnly {
		if slices.Contains(lint.Names(), name) {
			continue
		}
		if meant, ok := nearest.To(name, lint.Names()); ok {
			return fmt.Errorf("no rule is called %q; perhaps %q is meant", name, meant)
		}
		return fmt.Errorf("no rule is called %q; `stitchproof rules` lists them", name)
	}
	switch {
	case len(f.FixOnly) > 0 && !f.fixes():
		return errors.New("--fix-only says which changes --fix, --fix-risky or --diff makes: give one of them")
	case strings.ContainsAny(f.Answer, "\r\n"):
		return errors.New("the reason that --answer gives is one line")
	}
	return nil
}

func (c *checkCommand) readsStdin() bool { return slices.Contains(c.Paths, inputs.Stdin) }

// rewrite writes what was fixed, or shows it, and tells whether anything was. A
// file that cannot be written does not hinder the others.
func (c *checkCommand) rewrite(s *streams, outcomes []outcome) (bool, error) {
	var all []error
	made, changed, left := 0, 0, 0
	for i, o := range outcomes {
		if o.fixed.Text == nil {
			continue
		}
		if o.fixed.Unsettled {
			left++
		}
		err := c.rewriteOne(s, o)
		all = append(all, err)
		switch {
		case err != nil:
			outcomes[i].Checked = o.asWas()
		case o.fixed.Applied > 0:
			made, changed = made+o.fixed.Applied, changed+1
		}
	}
	if !c.Diff && !c.Quiet && made > 0 {
		fmt.Fprintf(s.err, "stitchproof: %s in %s\n", report.Amount(made, "change"), report.Amount(changed, "file"))
	}
	if risky := choosable(outcomes); c.Fix && !c.FixRisky && !c.Quiet && made == 0 && risky > 0 {
		fmt.Fprintf(s.err, "stitchproof: no change is safe; --fix-risky makes the first of those that a person should choose, for %s\n", report.Amount(risky, "finding"))
	}
	if !c.Quiet && left > 0 {
		fmt.Fprintf(s.err, "stitchproof: in %s a change is left that would bring as much as it settles\n", report.Amount(left, "file"))
	}
	return changed > 0, errors.Join(all...)
}

// choosable counts the findings that have a change for a person to choose.
func choosable(outcomes []outcome) int {
	n := 0
	for _, o := range outcomes {
		for _, f := range o.Findings {
			if f.Fix != nil && !f.Fix.Safe {
				n++
			}
		}
	}
	return n
}

func (c *checkCommand) rewriteOne(s *streams, o outcome) error {
	now := []byte(o.fixed.Text.String())
	switch {
	case c.Diff:
		return showDiff(s.out, o.File, o.was, now)
	case o.stdin:
		_, err := s.out.Write(now)
		return err
	}
	return s.files.File(o.File, o.was, now)
}

// showDiff shows a change as programs that apply one read it.
func showDiff(w io.Writer, name string, was, now []byte) error {
	_, err := w.Write(diff.Diff("a/"+name, was, "b/"+name, now))
	return err
}
