package packs_test

import "testing"

// A limit that bounds both sides by two tests was told, and its mirror alone was not. Common
// practice, no source: a fall has one end beyond nought.
func TestOneEndOfALevelPasses(t *testing.T) {
	t.Parallel()
	toldJust(t, "sign-passes", lawHead+`
parts: {bracket: {name: Upper bracket}}
instruments: {level: {name: Precision level, range: 0 to 1 mm, reads: 0.01 mm}}
dimensions:
  D1: {what: Level of the bracket, kind: angle, of: {bracket: rim}, by: level, at: [north-south, east-west], sign: yes, left: "PUT", source: sheet 5}
steps:
  - {step: level, do: Put the level on., measure: [D1]}
`, []warned{
		{"at most 0.10 mm", true},
		{"at least -0.10 mm", true},
		{"at most 0.10 mm and spread at most 0.05 mm", true},
		{"at most 0.10 mm and mean at least -0.10 mm", true},
		{"at most 0.10 mm and at least -0.10 mm", false},
		{"at least -0.10 mm and at most 0.10 mm", false},
		{"-0.10 to 0.10 mm", false},
		{"0.00 +/- 0.10 mm", false},
		{"at least 0.10 mm", false},
		{"at most -0.10 mm", false},
	})
}
