package manual

import (
	"fmt"
	"io"
	"strings"
)

// Page writes the manual page, in the macros of man(7).
func (m Manual) Page(w io.Writer, version string) error {
	var b strings.Builder
	fmt.Fprintf(&b, ".TH %s 1 \"\" %s\n", strings.ToUpper(m.Name), roff(m.Name+" "+version))
	fmt.Fprintf(&b, ".SH NAME\n%s \\- %s\n", m.Name, roff(lower(firstSentence(m.Help))))
	b.WriteString(".SH SYNOPSIS\n")
	for _, c := range m.Commands {
		fmt.Fprintf(&b, ".B %s %s\n%s\n.br\n", m.Name, roff(c.Name), roff(strings.TrimSpace("[flags] "+c.Usage)))
	}
	fmt.Fprintf(&b, ".SH DESCRIPTION\n%s\n.SH COMMANDS\n", roff(m.Help))
	for _, c := range m.Commands {
		fmt.Fprintf(&b, ".SS %s\n%s\n", roff(strings.TrimSpace(c.Name+" "+c.Usage)), roff(c.Help))
		for _, f := range c.Flags {
			fmt.Fprintf(&b, ".TP\n%s\n%s\n", flagHead(f), roff(f.Help))
		}
	}
	for _, s := range m.Extra {
		fmt.Fprintf(&b, ".SH %s\n", strings.ToUpper(s.Title))
		for _, i := range s.Items {
			fmt.Fprintf(&b, ".TP\n.B %s\n%s\n", roff(i.Word), roff(i.Text))
		}
	}
	_, err := io.WriteString(w, b.String())
	return err
}

func flagHead(f Flag) string {
	var parts []string
	for _, s := range f.spelled() {
		parts = append(parts, `\fB`+roff(s)+`\fR`)
	}
	head := strings.Join(parts, ", ")
	if f.Value != "" {
		head += ` \fI` + roff(f.Value) + `\fR`
	}
	return head
}

// roff is text with nothing in it that the formatter would obey.
func roff(s string) string {
	s = strings.NewReplacer(`\`, `\e`, "-", `\-`, "`", `\(ga`, "'", `\(aq`).Replace(s)
	if strings.HasPrefix(s, ".") {
		s = `\&` + s
	}
	return s
}

func lower(s string) string {
	if s == "" {
		return s
	}
	return strings.ToLower(s[:1]) + s[1:]
}
