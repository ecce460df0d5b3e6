package packs_test

import "testing"

// What a hold at the last step is released on, by its words: readings, reports and the pit that
// the machine stands in are seen with the machine shut, the inside of the casing is not, and that
// warns. Common practice, no source.
func TestWhatAHoldIsReleasedOnWithTheMachineShut(t *testing.T) {
	t.Parallel()
	toldJust(t, "seen-shut", lawHead+`parts: {cover: {name: Cover}}
containers: {C1: {name: Cover, kind: crate, keep: dry}}
openings: {casing: {what: Casing, cover: taped sheet}}
holds: {W1: {kind: hold, what: "PUT", releases: engineer}}
steps:
  - {step: off, do: Off., remove: [cover], into: C1, open: [casing]}
  - {step: on, do: On., fit: [cover], close: [casing]}
  - {step: last, do: Show the engineer., hold: W1}
`, []warned{
		{"Casing is clean inside.", true},
		{"Nothing left inside.", true},
		{"All readings inside their limits.", false},
		{"Bearing temperature inside 70 °C at the trial run.", false},
		{"Nobody left in the pit, locks may come off.", false},
		{"Engineer has read the report: nothing was found inside.", false},
		{"All stubs are inside the folder.", false},
		{"Tools counted, nothing left in", false},
	})
}
