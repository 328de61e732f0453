package syntax

import (
	"regexp"
	"strings"
)

// branchNamed finds what a branch is called where the lexer could not tell by
// itself: letters with digits (`branch B1`), or several words before a colon
// (`branch left tip:`). A name of one plain word needs no telling.
var branchNamed = regexp.MustCompile(`(?i)\bbranch +(?:(\pL+-?\d[\pL\d]*)|(\pL[\pL']*(?:[ -]\pL[\pL\d']*){1,2}) *:)`)

// branchNames lists such names of an instruction's branches.
func branchNames(instruction string) []string {
	var out []string
	if !strings.Contains(instruction, "ranch") {
		return nil
	}
	for _, m := range branchNamed.FindAllStringSubmatch(instruction, -1) {
		out = append(out, m[1]+m[2])
	}
	return out
}
