package packs_test

import "testing"

// Screws and shims that come out in a further try were told as going back by nothing, where the joint
// is tightened below; of "cover and shims off" the shims alone were read, and told twice.
func TestFurtherTriesPutBackByTheJoint(t *testing.T) {
	t.Parallel()
	toldJust(t, "not-in-this-try", lawHead+`
parts:
  shaft: {name: Shaft}
  cover: {name: End cover, behind: [screw]}
  screw: {name: Cover screw, count: 4}
  pack: {name: Cover shims, behind: [cover], shims: {leaves: 0.05 and 0.10 mm}, moves: 0.10 mm gives 0.10 mm}
  plate: {name: Name plate}
containers: {C1: {name: All, kind: box, keep: dry}}
joints: {J1: {what: Cover screws, parts: [screw], torque: 45 N·m, source: sheet 1}}
dimensions:
  D1: {what: Float, kind: float, from: {shaft: shoulder}, to: {cover: inside}, nominal: 0.20 mm, left: 0.10 to 0.30 mm, adjust: pack, source: sheet 2}
  D2: {what: Cover shims, kind: thickness, shims: pack, nominal: 0.50 mm, found: not taken, left: record to 0.01 mm}
steps:
  - section: Off
    steps:
      - {step: off, do: Take all off., measure: [D1], loosen: [J1], remove: [screw, cover, pack, plate], into: C1}
  - section: On
    steps:
      - {step: on, do: Fit all., set: [D2], fit: [plate, pack, cover, screw], tighten: [J1]}
      - {step: float, do: Measure., set: [D1], until: D1 is in limits, tries: 3, still-out: tell the engineer, each-try: [PUT]}
`, []warned{
		{"cover off, shims out, D2, J1", false},
		{"screws out and cover off, D2, cover on, J1", false},
		{"cover and shims off, D2, J1", false},
		{"screws and cover off, D2, J1", false},
		{"cover off, shims out, D2", true},
		{"cover and shims off, D2", true},
		{"shims off, D2, J1", true},
		{"cover and plate off, D2, J1", true},
	})
}
