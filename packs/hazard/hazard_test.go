package hazard

import (
	"regexp"
	"strings"
	"testing"
)

// Every built-in note says all that a note has to say, and asks for no act: that
// is for steps, which have a number and a box. The verbs are those by which the
// steps of the starters act.
func TestBuiltInNotesAreWholeAndHoldNoStep(t *testing.T) {
	act := regexp.MustCompile(`(?:^|[.;:] )(Measure|Write|Tie|Purge|Record|Lock|Drain|Vent|Clean|Remove|Take|Put|Fit|Tighten|Loosen|Slacken|Open|Close|Check|Turn|Pull|Push|Draw|Mark|Cover|Cap|Count|Sign|Weigh|Test|Hang|Block)\b`)
	seen := map[string]bool{}
	if len(builtins) != 20 {
		t.Errorf("%d built-in notes: name the new ones in the test of their signs too", len(builtins))
	}
	for _, n := range builtins {
		if seen[n.Key] {
			t.Errorf("%s stands twice", n.Key)
		}
		seen[n.Key] = true
		if n.Hazard == "" || n.Result == "" || n.Avoid == "" || n.Rule == "" || rank(&n.Caution) < 0 {
			t.Errorf("%s is not whole: %+v", n.Key, n.Caution)
		}
		if (n.Signal == "notice") != (len(n.Signs) == 0) {
			t.Errorf("%s: a note of injury has signs, and one of the machine has none", n.Key)
		}
		for _, s := range []string{n.Hazard, n.Result, n.Avoid, n.Short} {
			if m := act.FindString(s); m != "" {
				t.Errorf("%s holds an act: %q in %q", n.Key, m, s)
			}
		}
	}
}

// Asbestos is never a suggestion: wherever the word or its like stands, it is the
// hazard, and what goes in its place is named as free of it.
func TestAsbestosIsOnlyEverTheHazard(t *testing.T) {
	for _, n := range builtins {
		text := strings.ToLower(n.Hazard + n.Result + n.Avoid + n.Short)
		if strings.Contains(text, "asbestos") != (n.Key == "asbestos") {
			t.Errorf("%s speaks of asbestos: %s", n.Key, text)
		}
	}
	for _, must := range []string{"stop", "free of asbestos", "mineral wool", "heat shield"} {
		i := 0
		for i < len(builtins) && builtins[i].Key != "asbestos" {
			i++
		}
		for _, s := range []string{builtins[i].Avoid, builtins[i].Short} {
			if !strings.Contains(s, must) {
				t.Errorf("the note of asbestos does not say %q: %s", must, s)
			}
		}
	}
}
