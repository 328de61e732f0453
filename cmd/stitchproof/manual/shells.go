package manual

import (
	"fmt"
	"io"
	"slices"
	"strings"
)

// Shells are the shells that completion is written for, by name.
var Shells = map[string]func(Manual, io.Writer) error{"bash": Manual.Bash, "zsh": Manual.Zsh, "fish": Manual.Fish}

// Bash writes a script that completes in bash.
func (m Manual) Bash(w io.Writer) error {
	var b strings.Builder
	fmt.Fprintf(&b, `# Completion of %[1]s for bash: source it, or put it into a folder of bash-completion.
_%[1]s() {
  local cur=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]} command= i
  for ((i = 1; i < COMP_CWORD; i++)); do
    case ${COMP_WORDS[i]} in %[2]s) command=${COMP_WORDS[i]}; break ;; esac
  done
  case "$command $before" in
`, m.Name, strings.Join(m.names(), "|"))
	for _, c := range m.Commands {
		for _, f := range c.Flags {
			if f.Value == "" {
				continue
			}
			var at []string
			for _, s := range f.spelled() {
				at = append(at, fmt.Sprintf("%q", c.Name+" "+s))
			}
			fmt.Fprintf(&b, "  %s) %s; return ;;\n", strings.Join(at, "|"), bashWords(f.Words, f.takesFile()))
		}
	}
	fmt.Fprintf(&b, "  esac\n  case $command in\n  \"\") %s ;;\n", bashWords(append(m.names(), "--help"), false))
	for _, c := range m.Commands {
		fmt.Fprintf(&b, "  %s)\n    case $cur in\n    -*) %s ;;\n    *) %s ;;\n    esac ;;\n",
			c.Name, bashWords(c.flagWords(), false), bashWords(c.Words, c.Words == nil))
	}
	fmt.Fprintf(&b, "  esac\n}\ncomplete -o filenames -F _%[1]s %[1]s\n", m.Name)
	_, err := io.WriteString(w, b.String())
	return err
}

func (c Command) flagWords() []string {
	var out []string
	for _, f := range c.Flags {
		out = append(out, "--"+f.Name)
	}
	return out
}

// bashWords is what offers words, or files.
func bashWords(words []string, files bool) string {
	switch {
	case len(words) > 0:
		return fmt.Sprintf(`COMPREPLY=($(compgen -W %q -- "$cur"))`, strings.Join(words, " "))
	case files:
		return `COMPREPLY=($(compgen -f -- "$cur"))`
	}
	return ":"
}

// Zsh writes a script that completes in zsh.
func (m Manual) Zsh(w io.Writer) error {
	var b strings.Builder
	fmt.Fprintf(&b, `#compdef %[1]s
# Completion of %[1]s for zsh: put it into a folder of $fpath as _%[1]s, or source it.
_%[1]s() {
  local -a commands=(
`, m.Name)
	for _, c := range m.Commands {
		fmt.Fprintf(&b, "    %s\n", quoted(c.Name+":"+c.Help))
	}
	fmt.Fprintf(&b, "  )\n  if ((CURRENT == 2)); then\n    _describe command commands\n    return\n  fi\n  local command=${words[2]}\n  words=(${words[2,-1]})\n  ((CURRENT--))\n  case $command in\n")
	for _, c := range m.Commands {
		fmt.Fprintf(&b, "  %s)\n    _arguments \\\n", c.Name)
		for _, f := range c.Flags {
			for _, s := range f.spelled() {
				fmt.Fprintf(&b, "      %s \\\n", quoted("*"+s+zshHelp(f.Help)+zshValue(f)))
			}
		}
		fmt.Fprintf(&b, "      %s ;;\n", quoted("*: :"+zshWords(c.Words, c.Words == nil)))
	}
	fmt.Fprintf(&b, "  esac\n}\nif [[ ${funcstack[1]} == _%[1]s ]]; then\n  _%[1]s \"$@\"\nelse\n  compdef _%[1]s %[1]s\nfi\n", m.Name)
	_, err := io.WriteString(w, b.String())
	return err
}

func zshHelp(help string) string {
	return "[" + strings.NewReplacer("[", `\[`, "]", `\]`, ":", `\:`).Replace(firstSentence(help)) + "]"
}

func zshValue(f Flag) string {
	if f.Value == "" {
		return ""
	}
	return ":" + strings.ToLower(strings.NewReplacer("[", "", "]", "", ":", " ").Replace(f.Value)) + ":" + zshWords(f.Words, f.takesFile())
}

func zshWords(words []string, files bool) string {
	switch {
	case len(words) > 0:
		return "(" + strings.Join(words, " ") + ")"
	case files:
		return "_files"
	}
	return " "
}

// Fish writes a script that completes in fish.
func (m Manual) Fish(w io.Writer) error {
	var b strings.Builder
	fmt.Fprintf(&b, "# Completion of %[1]s for fish: put it into ~/.config/fish/completions/%[1]s.fish, or source it.\n", m.Name)
	none := "not __fish_seen_subcommand_from " + strings.Join(m.names(), " ")
	for _, c := range m.Commands {
		fmt.Fprintf(&b, "complete -c %s -f -n %s -a %s -d %s\n", m.Name, quoted(none), c.Name, quoted(firstSentence(c.Help)))
		seen := quoted("__fish_seen_subcommand_from " + c.Name)
		switch {
		case len(c.Words) > 0:
			fmt.Fprintf(&b, "complete -c %s -f -n %s -a %s\n", m.Name, seen, quoted(strings.Join(c.Words, " ")))
		case c.Usage == "":
			fmt.Fprintf(&b, "complete -c %s -f -n %s\n", m.Name, seen)
		}
		for _, f := range c.Flags {
			fmt.Fprintf(&b, "complete -c %s -n %s -l %s", m.Name, seen, f.Name)
			if f.Short != "" {
				fmt.Fprintf(&b, " -s %s", f.Short)
			}
			switch {
			case f.Value == "":
			case len(f.Words) > 0:
				fmt.Fprintf(&b, " -x -a %s", quoted(strings.Join(f.Words, " ")))
			case f.takesFile():
				b.WriteString(" -r -F")
			default:
				b.WriteString(" -x")
			}
			fmt.Fprintf(&b, " -d %s\n", quoted(firstSentence(f.Help)))
		}
	}
	_, err := io.WriteString(w, b.String())
	return err
}

// quoted is a word as the shells take it literally.
func quoted(s string) string { return "'" + strings.ReplaceAll(s, "'", `'\''`) + "'" }

// firstSentence is as much of a help as a list has room for.
func firstSentence(s string) string {
	if i := strings.IndexAny(s, ".;"); i > 0 && (i+1 == len(s) || s[i+1] == ' ') {
		return s[:i]
	}
	return s
}

// ShellNames are the names of the shells, sorted.
func ShellNames() []string {
	var out []string
	for name := range Shells {
		out = append(out, name)
	}
	slices.Sort(out)
	return out
}
