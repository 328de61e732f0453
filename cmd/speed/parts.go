package main

import (
	"errors"
	"fmt"
	"go/parser"
	"go/token"
	"io/fs"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"runtime"
	"strings"
	"sync"
	"text/tabwriter"
	"time"

	"stitchproof/lang/source"
	"stitchproof/lint"
)

// lengths are those of the manuscripts that are edited, in lines.
var lengths = []int{100, 1_000, 10_000, 50_000}

// manuscript is a text of so many lines: many pieces in one file.
func manuscript(lines int) string {
	a := newArchive(1)
	var b strings.Builder
	for n := 0; n < lines; {
		text := a.pattern(1, 40)
		if n > 0 { // one header will do
			text = text[strings.Index(text, "##"):]
		}
		for line := range strings.Lines(text) {
			if n++; n > lines {
				break
			}
			b.WriteString(line)
		}
	}
	return b.String()
}

var stated = regexp.MustCompile(`\((\d+) sc\)`)

// counted finds a stated count in the middle of a text: its line, and where its number
// begins and ends in it.
func counted(text string) (line, from, to int) {
	lines := strings.Split(text, "\n")
	for i := range lines {
		line = (len(lines)/2 + i) % len(lines)
		if m := stated.FindStringSubmatchIndex(lines[line]); m != nil {
			return line, m[2], m[3]
		}
	}
	panic("no count is stated") // an archive states hundreds
}

func measureEditor(out *tabwriter.Writer, program string) error {
	fmt.Fprintln(out, "lines\tempty request\topened\tkeystroke\tkeystroke, in empty requests")
	for _, n := range lengths {
		text := manuscript(n)
		line, from, to := counted(text)
		right := strings.Split(text, "\n")[line][from:to]
		e, err := newEditor(program)
		if err != nil {
			return err
		}
		opened := e.open(text)
		empty := several(200, e.ask)
		version, written, other := 1, right, right+"9" // all that comes after it moves
		key := several(40, func() time.Duration {
			version++
			took := e.edit(version, line, from, from+len(written), other)
			written, other = other, written
			return took
		})
		e.close()
		fmt.Fprintf(out, "%d\t%v\t%v\t%v\t%.0f\n", n, empty.Round(time.Microsecond), opened.Round(time.Millisecond), key.Round(10*time.Microsecond), float64(key)/float64(empty))
	}
	return nil
}

// patterns is the size of the archive that is read in bulk.
const patterns = 1_000

func measureBatch(out *tabwriter.Writer, _ string) error {
	lint.ForBatch() // as check does; the parser of Go gains by it as well
	a := newArchive(2)
	var texts []string
	size := 0
	for n := range patterns {
		text := a.pattern(n, a.between(2, 5))
		texts, size = append(texts, text), size+len(text)
	}
	own := timed(func() { onAllCores(texts, func(text string) { lint.Analyze(source.New(text)) }) })
	again := timed(func() { onAllCores(texts, func(text string) { lint.Analyze(source.New(text)) }) })
	code, err := goSource(size)
	if err != nil {
		return err
	}
	theirs := timed(func() {
		onAllCores(code, func(text string) {
			parser.ParseFile(token.NewFileSet(), "", text, parser.ParseComments|parser.SkipObjectResolution)
		})
	})
	speed := func(d time.Duration) float64 { return float64(size) / 1e6 / d.Seconds() }
	fmt.Fprintln(out, "patterns\tMB\tfirst time, MB/s\tagain, MB/s\tgo/parser, MB/s\tshare of its speed")
	fmt.Fprintf(out, "%d\t%.1f\t%.1f\t%.1f\t%.1f\t%.3f\n", patterns, float64(size)/1e6, speed(own), speed(again), speed(theirs), speed(own)/speed(theirs))
	return nil
}

func onAllCores(texts []string, do func(string)) {
	work := make(chan string)
	var all sync.WaitGroup
	for range runtime.NumCPU() {
		all.Go(func() {
			for text := range work {
				do(text)
			}
		})
	}
	for _, text := range texts {
		work <- text
	}
	close(work)
	all.Wait()
}

var errEnough = errors.New("enough")

// goSource is so many bytes of the standard library's source.
func goSource(size int) ([]string, error) {
	root, err := exec.Command("go", "env", "GOROOT").Output()
	if err != nil {
		return nil, fmt.Errorf("where Go is: %w", err)
	}
	var out []string
	err = filepath.WalkDir(filepath.Join(strings.TrimSpace(string(root)), "src"), func(path string, d fs.DirEntry, err error) error {
		switch {
		case err != nil:
			return err
		case size <= 0:
			return errEnough
		case d.IsDir() || filepath.Ext(path) != ".go":
			return nil
		}
		data, err := os.ReadFile(path)
		out, size = append(out, string(data)), size-len(data)
		return err
	})
	if errors.Is(err, errEnough) {
		err = nil
	}
	return out, err
}

func measureStart(out *tabwriter.Writer, program string) error {
	pattern := filepath.Join(filepath.Dir(program), "one.crochet")
	if err := os.WriteFile(pattern, []byte(newArchive(3).pattern(1, 3)), 0o600); err != nil {
		return err
	}
	var failed error
	run := func(args ...string) time.Duration {
		return several(20, func() time.Duration {
			return timed(func() { failed = errors.Join(failed, exec.Command(program, args...).Run()) })
		})
	}
	version, check := run("version"), run("check", "--no-config", pattern)
	if failed != nil {
		return failed
	}
	fmt.Fprintln(out, "version\tcheck of one pattern\tcheck, in versions")
	fmt.Fprintf(out, "%v\t%v\t%.1f\n", version.Round(100*time.Microsecond), check.Round(100*time.Microsecond), float64(check)/float64(version))
	return nil
}

// growing are texts that grow in one way, n times as large as the smallest.
var growing = []struct {
	name string
	text func(n int) string
}{
	{"clauses in a row", func(n int) string {
		var row strings.Builder
		total := 0
		for i := range 50 * n {
			fmt.Fprintf(&row, "sc in next %s, ", sts(i%7+1))
			total += i%7 + 1
		}
		return fmt.Sprintf("Terms: US\n\nCh %d.\nRow 1: Sc in 2nd ch from hook and in each ch across; turn. (%d sc)\nRow 2: Ch 1, %sturn. (%d sc)\nFasten off.\n", total+1, total, row.String(), total)
	}},
	{"stitches in a row", func(n int) string {
		s := 500 * n
		return fmt.Sprintf("Terms: US\n\nCh %d.\nRow 1: Sc in 2nd ch from hook and in each ch across; turn. (%d sc)\nRow 2: Ch 1, *sc in next st, hdc in next st; rep from * across; turn. (%d sts)\nFasten off.\n", s+1, s, s)
	}},
	{"sizes", func(n int) string {
		list := func(first, step int) string {
			var more []string
			for i := 1; i < n+1; i++ {
				more = append(more, fmt.Sprint(first+i*step))
			}
			return fmt.Sprintf("%d (%s)", first, strings.Join(more, ", "))
		}
		var names []string
		for i := range n + 1 {
			names = append(names, fmt.Sprint(30+2*i))
		}
		var rows strings.Builder
		for r := range 40 {
			fmt.Fprintf(&rows, "Row %d: Ch 1, sc in next %s sts, hdc in each st across; turn. (%s sts)\n", r+2, list(10, 4), list(40, 8))
		}
		return fmt.Sprintf("Terms: US\nSizes: %s (%s)\n\nCh %s.\nRow 1: Sc in 2nd ch from hook and in each ch across; turn. (%s sc)\n%sFasten off.\n", names[0], strings.Join(names[1:], ", "), list(41, 8), list(40, 8), rows.String())
	}},
	{"branches", func(n int) string {
		var row strings.Builder
		for range 50 * n {
			row.WriteString("sl st in next ch, branch: ch 5, sl st in 2nd ch from hook and in next 3 ch, return, ")
		}
		return fmt.Sprintf("Terms: US\n\nCh %d.\nRow 1: Sl st in 2nd ch from hook, %ssl st in next ch.\nFasten off.\n", 50*n+3, row.String())
	}},
	{"rows", func(n int) string {
		var rows strings.Builder
		for r := range 50 * n {
			fmt.Fprintf(&rows, "Row %d: Ch 1, sc in next %s, hdc in each st across; turn. (40 sts)\n", r+2, sts(r%30+1))
		}
		return "Terms: US\n\nCh 41.\nRow 1: Sc in 2nd ch from hook and in each ch across; turn. (40 sc)\n" + rows.String() + "Fasten off.\n"
	}},
	{"pieces", func(n int) string { return newArchive(4).pattern(1, 10*n) }},
}

// factors are by how much the texts grow.
var factors = []int{1, 2, 4, 8, 16}

func measureGrowth(out *tabwriter.Writer, _ string) error {
	fmt.Fprint(out, "what grows")
	for _, n := range factors {
		fmt.Fprintf(out, "\t× %d", n)
	}
	fmt.Fprintln(out, "\tpower of growth")
	var curves []curve
	for _, g := range growing {
		c := curve{name: g.name}
		fmt.Fprint(out, g.name)
		for _, n := range factors {
			text := source.New(g.text(n))
			lint.Analyze(text) // its words are known after that: what grows is the work
			took := several(5, func() time.Duration { return timed(func() { lint.Analyze(text) }) })
			c.times = append(c.times, took.Seconds())
			fmt.Fprintf(out, "\t%v", took.Round(10*time.Microsecond))
		}
		last := len(factors) - 1
		fmt.Fprintf(out, "\t%.2f\n", math.Log(c.times[last]/c.times[1])/math.Log(float64(factors[last])/float64(factors[1])))
		curves = append(curves, c)
	}
	if *plots == "" {
		return nil
	}
	return os.WriteFile(filepath.Join(*plots, "growth.svg"), draw(curves), 0o644)
}

// opened is how many patterns are open at once while memory is measured.
const opened = 200

func measureMemory(out *tabwriter.Writer, program string) error {
	e, err := newEditor(program)
	if err != nil {
		return err
	}
	defer e.close()
	fmt.Fprintln(out, "\tresident, MB")
	fmt.Fprintf(out, "nothing open\t%.0f\n", e.memory())
	a := newArchive(5)
	for n := range opened {
		uri := fmt.Sprintf("file:///%d.crochet", n)
		e.notify("textDocument/didOpen", map[string]any{"textDocument": map[string]any{"uri": uri, "languageId": "crochet", "version": 1, "text": a.pattern(n, 3)}})
		e.found(1)
	}
	fmt.Fprintf(out, "%d patterns open\t%.0f\n", opened, e.memory())
	text := manuscript(300)
	line, from, to := counted(text)
	right := strings.Split(text, "\n")[line][from:to]
	e.open(text)
	fmt.Fprintf(out, "and one of 300 lines\t%.0f\n", e.memory())
	for i := range *edits {
		word := right
		if i%2 == 0 {
			word = strings.Repeat(fmt.Sprint(i/2%9+1), len(right))
			if word == right {
				word = strings.Repeat("0", len(right))
			}
		}
		e.edit(i+2, line, from, to, word)
		if done := i + 1; done == *edits/2 || done == *edits {
			fmt.Fprintf(out, "after %d edits\t%.0f\n", done, e.memory())
		}
	}
	return nil
}
