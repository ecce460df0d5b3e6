package packs_test

import (
	"testing"

	"matchmark/packs"
)

// A container says how heavy it is when that is more than a hand takes, and that it
// may be more where the mass of a part is not known.
func TestHeavyContainersSayTheirMass(t *testing.T) {
	const text = `pack: 1
equipment: {tag: P-1, name: Pump}
job: {number: "1", revision: A, issued: 2026-03-02}
parts:
  hub: {name: Hub, mass: 36 kg}
  key: {name: Key}
  bolt: {name: Bolt, count: 12, mass: 2 kg}
  cover: {name: Cover, mass: 19 kg}
  ring: {name: Ring, mass: 30 lb}
containers:
  C1: {name: Hub and key, kind: box}
  C2: {name: Bolts, kind: tray}
  C3: {name: Cover, kind: box}
  C4: {name: Ring and cover, kind: box}
steps:
  - {step: a, do: Take all off., people: 2, remove: [hub, key, bolt, ring], into: {hub: C1, key: C1, bolt: C2, ring: C4}}
  - {step: b, do: Take the cover off., remove: [cover], into: C3}
`
	jb, _ := packs.Load(mapFS("p.yaml", text), packs.Inputs{Definition: "p.yaml"})
	got := map[string]string{}
	for _, tag := range jb.Tags {
		if tag.Mass != nil {
			got[tag.Mark] = tag.Mass.Text()
			if tag.MassAtLeast {
				got[tag.Mark] = "at least " + got[tag.Mark]
			}
		}
	}
	for mark, want := range map[string]string{"C1": "at least 36 kg", "C2": "24 kg", "C3": "", "C4": ""} {
		if got[mark] != want {
			t.Errorf("%s says %q, want %q", mark, got[mark], want)
		}
	}
}
