package packs_test

import (
	"os"
	"slices"
	"strings"
	"testing"
)

// The help of a turned body that would turn over led to a refusal that asked for a person, and
// the help of that one to nothing more: both are told at once, and what they say to write is
// enough. Of a load that does not lie in baskets round its axis it is not said. Common
// practice, no source.
func TestWhatIsSaidOfARoundBodyIsEnough(t *testing.T) {
	t.Parallel()
	file, err := os.ReadFile("../testdata/bad/lift-round-body.yaml")
	if err != nil {
		t.Fatal(err)
	}
	text := string(file)
	if !strings.Contains(roundHelp(text), "centre-within: [5 mm, 0 mm, 0 mm], and both decided-by:") {
		t.Fatalf("told: %q", roundHelp(text))
	}
	const ball, person = "centre-within: 5 mm", "\n    decided-by: R. Ashdown, lift supervisor\n    because: turned body, its centre is on its axis"
	line := "centre-within: [5 mm, 0 mm, 0 mm]"
	for _, x := range []struct {
		write string
		want  []string
	}{{ball, []string{"not-computed"}}, {line, []string{"not-known"}}, {line + person, nil}} {
		var got []string
		for _, code := range codesTold(strings.Replace(text, ball, x.write, 1)) {
			if code == "not-computed" || code == "not-known" {
				got = append(got, code)
			}
		}
		if got = slices.Compact(got); !slices.Equal(got, x.want) {
			t.Errorf("%s is told %v, want %v", x.write, got, x.want)
		}
	}
	for _, not := range [][2]string{
		{"hitch: basket, around: 300 mm, spread: parallel", "hitch: straight"},
		{"[600 mm, 0 mm, 0 mm]", "[600 mm, 0 mm, 2 mm]"},
		{"centre: [0 mm, 0 mm, 0 mm]", "centre: [0 mm, 0 mm, -1 mm]"},
	} {
		if said := roundHelp(strings.Replace(text, not[0], not[1], 1)); said != "" {
			t.Errorf("with %s it is said: %s", not[1], said)
		}
	}
}

// roundHelp is what is said of a turned body in baskets.
func roundHelp(text string) string {
	_, problems := loadLaw(text)
	for _, p := range problems {
		for _, h := range p.Help {
			if strings.Contains(h, "turned body") {
				return h
			}
		}
	}
	return ""
}
