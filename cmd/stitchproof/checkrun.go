package main

import (
	"runtime"
	"sync"

	"stitchproof/lang/source"
	"stitchproof/lint"
	"stitchproof/lint/baseline"
	"stitchproof/lint/config"
	"stitchproof/lint/fix"
	"stitchproof/lint/inputs"
	"stitchproof/lint/report"
)

// checkRun is one run of a check over many files.
type checkRun struct {
	*streams
	*checkCommand
	settings *config.Finder
	baseline *baseline.Baseline
	progress *progress
	timing   *timing // nil where nobody asked
}

// outcome is what came of one file.
type outcome struct {
	report.Checked
	failOn lint.Severity
	stdin  bool
	was    []byte // the file as it was read, where it may be changed
	fixed  fix.Result
	asWas  func() report.Checked // what is found in the file as it was read
}

// all checks the inputs, as many at a time as there are processors, and gives
// their outcomes in the same order.
func (r *checkRun) all(found []inputs.Input) []outcome {
	out := make([]outcome, len(found))
	r.progress.start(len(found))
	turn := make(chan struct{}, runtime.GOMAXPROCS(0))
	var all sync.WaitGroup
	for i, in := range found {
		turn <- struct{}{}
		all.Go(func() {
			var err error
			if out[i], err = unbroken(in.Name, func() (outcome, error) { return r.one(in), nil }); err != nil {
				out[i] = unread(r.named(in.Name), lint.InternalFailure, err)
			}
			r.progress.step()
			<-turn
		})
	}
	all.Wait()
	r.progress.end()
	return out
}

// one checks one input. What hinders that is its finding.
func (r *checkRun) one(in inputs.Input) outcome {
	name := r.named(in.Name)
	content, err := in.Read(r.in)
	var settings config.Effective
	if err == nil {
		settings, err = r.effective(r.settings, name)
		settings.Took = r.timing.adder()
	}
	if err != nil {
		return unread(name, lint.FileUnreadable, err)
	}
	text := source.New(string(content))
	o := outcome{failOn: settings.FailOn, stdin: in.Name == inputs.Stdin}
	if r.FailOn != nil {
		o.failOn = *r.FailOn
	}
	if r.wanted() {
		o.was = content
		o.fixed = r.change(text, func(t *source.Text) []lint.Finding {
			return r.baseline.Filter(name, t, settings.Analyze(t).Findings)
		})
		if !r.Diff {
			text = o.fixed.Text
		}
	}
	look := func(text *source.Text) report.Checked {
		c := report.CheckedOf(name, settings.Analyze(text))
		c.Findings = r.baseline.Filter(name, text, c.Findings)
		return c
	}
	o.Checked, o.asWas = look(text), func() report.Checked { return look(source.New(string(content))) }
	return o
}

// unread is the outcome of a file in which nothing was checked.
func unread(name, rule string, why error) outcome {
	return outcome{Checked: report.CheckedOf(name, lint.Unread(source.New(""), rule, why.Error()))}
}
