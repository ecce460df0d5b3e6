package templates

import (
	"strings"
	"testing"
)

// A word of more than 24 letters in the reason why a job is not printed was cut in two without a
// hyphen; so are paths and file names alone, which no hyphen may stand in.
func TestOnlyPathsArePartedAnywhere(t *testing.T) {
	t.Parallel()
	for _, x := range []struct{ text, want string }{
		{"the Strömungsmaschinenlagergehäusedeckel, is not told", "the Strömungsmaschinenlagergehäusedeckel, is not told"},
		{"l’anticonstitutionnellement-incompréhensible: rien", "l’anticonstitutionnellement-incompréhensible: rien"},
		{"a/b/c.csv:7", "a/|b/|c.csv:7"},
		{`C:\jobs\abcdefghijkl.csv row 2`, `C:\|jobs\|abcdefghij|kl.csv row 2`},
		{"abcdefghijkl.csv:7:1: no number", "abcdefghij|kl.csv:7:1|: no number"},
		{"WO-100 A", "WO-100 A"},
	} {
		if got := strings.ReplaceAll(anywhere(x.text, 10), "\u200b", "|"); got != x.want {
			t.Errorf("%q is parted as %q, want %q", x.text, got, x.want)
		}
	}
}
