package source

import (
	"strings"
	"testing"
)

func TestExcerpt(t *testing.T) {
	tests := []struct{ name, text, want string }{
		{"short", "sc in next st", "sc in next st"},
		{"several lines", "  sc in next st,\n  dc  in\tnext ", "sc in next st, dc in next"},
		{"just short enough", strings.Repeat("é", 60), strings.Repeat("é", 60)},
		{"cut after a word", strings.Repeat("sc in next st, ", 5), "sc in next st, sc in next st, sc in next st, sc in next st …"},
		{"one long word", strings.Repeat("é", 61), strings.Repeat("é", 60) + " …"},
		{"nothing", " \n", ""},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			if got := Excerpt(test.text); got != test.want {
				t.Errorf("Excerpt(%q) = %q; want %q", test.text, got, test.want)
			}
		})
	}
}
