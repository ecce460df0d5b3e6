package packs_test

import "testing"

// Hours with a zero more at their end were refused, and so were those of an eighth: what is finer
// than work is planned is rounded up.
func TestHoursAreAsFineAsWorkIsPlanned(t *testing.T) {
	t.Parallel()
	for typed, want := range map[string]string{"0.500": "0.5", "1.250": "1.25", "2.000": "2", "0.125": "0.13", "0.0001": "0.01", "1.5": "1.5", "1.50": "1.50"} {
		text := lawHead + "steps:\n  - {step: look, do: Look at it., hours: " + typed + "}\n"
		jb, err := load(text)
		if err != nil {
			t.Errorf("hours: %s: %v", typed, err)
			continue
		}
		finer := len(toldOf(text, "beyond-a-step")) > 0
		if got := stepsOf(jb)[0].Hours.Text(); got != want || finer != (typed == "0.125" || typed == "0.0001") {
			t.Errorf("hours: %s give %s, told %t; want %s", typed, got, finer, want)
		}
	}
}
