package packs_test

import (
	"os"
	"strings"
	"testing"
)

// A rotor is let down for a trial, lifted away again and let down for good. Its marks are ticked as
// meeting wherever it comes to stand, and never at the step that takes it away: they stood at the trial
// alone, or above the words that lift it out. Common practice, no source.
func TestMarksMeetWhereALoadStandsForGood(t *testing.T) {
	t.Parallel()
	text, err := os.ReadFile("../testdata/bad/open-at-unlock-hanging.yaml")
	if err != nil {
		t.Fatal(err)
	}
	head, _, _ := strings.Cut(string(text), "  - section: In\n")
	head = strings.Replace(head, "{step: out, ", "{step: out, match-marks: [{rotor: case}], ", 1)
	head = strings.Replace(head, "\nopenings:", "\n  case: {name: Casing shell}\nopenings:", 1)
	const good = "      - {step: near, do: Lower it and hold it., close: [casing], lift: [L1], fit: [rotor]}\n      - {step: in, do: Set it down., lift: [L1], hand-back: [entry]}\n"
	for trial, want := range map[string]string{
		"": "in",
		"      - {step: near1, do: Lower it and hold it., lift: [L1], fit: [rotor]}\n      - {step: in1, do: Let it down on the wires., lift: [L1], set-down: [L1]}\n" +
			"      - {step: up, do: Lift it out and read the wires., lift: [L1], remove: [rotor], into: Y1}\n": "in1 in",
		"      - {step: near1, do: Lower it and hold it., lift: [L1], fit: [rotor]}\n      - {step: in1, do: Wires in., lift: [L1]}\n" +
			"      - {step: up, do: Lift it out and read the wires., lift: [L1], remove: [rotor], into: Y1}\n": "in",
	} {
		jb, problems := loadLaw(head + "  - section: In\n    steps:\n" + trial + good)
		if problems.Errors() > 0 {
			t.Fatalf("%s: %v", trial, problems)
		}
		var met []string
		for _, st := range jb.Steps() {
			if len(st.Meet) > 0 {
				met = append(met, st.Key)
			}
		}
		if got := strings.Join(met, " "); got != want {
			t.Errorf("after the trial\n%s the marks meet at %q, want %q", trial, got, want)
		}
	}
}
