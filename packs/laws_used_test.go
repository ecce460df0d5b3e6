package packs_test

import (
	"strings"
	"testing"
)

// What seals or locks once goes back new; what is made to be used again, and what words say goes
// back, does not have to. Common practice, no source.
func TestUsedSealsDoNotGoBack(t *testing.T) {
	t.Parallel()
	const text = lawHead + "parts:\n  cover: {name: Cover}\n  seal: {name: PUT"
	rest := func(key, back string) string {
		return key + "}\ncontainers: {C1: {name: Parts, kind: crate, keep: dry}}\nsteps:\n  - section: Open\n    steps:\n      - {step: off, do: Take it off., remove: [cover, seal], into: {cover: C1, seal: C1}}\n" +
			"  - section: Close\n    steps:\n      - {step: on, do: \"" + back + "\", fit: [{seal: 1}, cover]}\n"
	}
	var cases []warned
	for _, c := range []struct {
		name, key, back string
		told            bool
	}{
		{"Cover gasket", "", "Put it on.", true}, {"Gasket of the cover", "", "Put it on.", true}, {"O-ring", "", "Put it on.", true}, {"O-ring 40 x 3", "", "Put it on.", true},
		{"Lip seal", "", "Put it on.", true}, {"Split pin", "", "Put it on.", true}, {"Cotter pin", "", "Put it on.", true}, {"Tab washer of the nut", "", "Put it on.", true},
		{"Copper washer", "", "Put it on.", true}, {"Sealing ring", "", "Put it on.", true}, {"Locking wire", "", "Put it on.", true},
		{"Cover gasket", ", renew: if it is torn", "Put it on.", false}, {"Cover gasket", "", "The old gasket goes on again.", false}, {"Cover gasket", "", "Reuse the gasket if it is whole.", false},
		{"O-ring", "", "Put the same O-ring back, oiled.", false}, {"Reusable gasket", "", "Put it on.", false}, {"Permanent gasket", "", "Put it on.", false},
		{"Gasket scraper", "", "Put it on.", false}, {"Mechanical seal", "", "Put it on.", false}, {"Labyrinth ring", "", "Put it on.", false}, {"Circlip", "", "Put it on.", false},
		{"Washer", "", "Put it on.", false}, {"Spring washer", "", "Put it on.", false}, {"Gasket face plate", "", "Put it on.", false}, {"Dichtung", "", "Put it on.", false}, {"Plate under the O-ring", "", "Put it on.", false},
		{"Taper pin", "", "Put it on.", false}, {"Tab washer", "", "Bend the same tab washer over another flat.", false}, {"Split cone", "", "Put it on.", false},
		{"O ring", "", "Put it on.", true}, {"Tabwasher", "", "Put it on.", true}, {"Cotter", "", "Put it on.", true}, {"Lockwire", "", "Put it on.", true}, {"Piston O-ring", "", "Put it on.", true}, {"Carbon fibre gasket", "", "Put it on.", true}, {"Valve gasket", "", "Put it on.", true}, {"Oil seal", "", "Put it on.", true},
		{"Valve cotter", "", "Put it on.", false}, {"Crosshead cotter", "", "Put it on.", false}, {"Taper cotter", "", "Put it on.", false}, {"Piston rod cotter", "", "Put it on.", false},
		{"Floating oil seal", "", "Put it on.", false}, {"Carbon oil seal", "", "Put it on.", false}, {"Labyrinth oil seal", "", "Put it on.", false}, {"Wind-back oil seal", "", "Put it on.", false},
		{"Piston sealing ring", "", "Put it on.", false}, {"Balance sealing ring", "", "Put it on.", false}, {"Carbon sealing ring", "", "Put it on.", false},
		{"Cotter bolt", "", "Put it on.", false}, {"O-ring carrier", "", "Put it on.", false}, {"Graphite sealing ring", "", "Put it on.", false}, {"Sealing ring housing", "", "Put it on.", false}, {"Lock nut", "", "Put it on.", false},
	} {
		cases = append(cases, warned{c.name + rest(c.key, c.back), c.told})
	}
	toldJust(t, "used-seal", text, cases)
}

// Halves that were bored together, and pairs that ran together, are renewed together. Common
// practice, no source.
func TestHalvesAreRenewedTogether(t *testing.T) {
	t.Parallel()
	var cases []warned
	for _, c := range []struct {
		a, b, renewB string
		told         bool
	}{
		{"Upper bearing shell", "Lower bearing shell", "", true}, {"Bearing shell, upper", "Bearing shell, lower", "", true}, {"Top bearing liner", "Bottom bearing liner", "", true},
		{"Upper half of the bearing", "Lower half of the bearing", "", false}, {"Upper shell", "Lower shell", "", true}, {"Worm", "Worm wheel", "", true}, {"Worm shaft", "Worm gear", "", true},
		{"Bevel pinion", "Crown wheel", "", true}, {"Crown wheel", "Bevel pinion", "", true}, {"Upper main bearing half", "Lower main bearing half", "", true},
		{"Upper bearing shell", "Lower bearing shell", ", renew: always", false}, {"Upper bearing shell", "Lower bearing shell", ", renew: if it is scored", false},
		{"Upper casing", "Lower casing", "", false}, {"Upper gasket", "Lower gasket", "", false}, {"Pinion", "Wheel", "", false}, {"Upper bearing shell", "Lower thrust pad", "", false},
		{"Upper bearing shell", "Upper bearing cap", "", false}, {"Upper bearing", "Lower bearing", "", false}, {"Worm", "Crown wheel", "", false}, {"Obere Schale", "Untere Schale", "", false},
		{"Front seal", "Rear seal", "", false}, {"Upper guide bush", "Lower guide bush", "", false},
		{"Upper half shell", "Lower half shell", "", true}, {"Bevel pinion shaft", "Bevel wheel", "", true}, {"Bearing cup", "Bearing cone", "", true}, {"Front bearing cone", "Front bearing cup", "", true}, {"Upper bearing half shell", "Lower bearing half shell", "", true},
		{"Front bearing shell", "Rear bearing shell", "", false}, {"Left big-end shell", "Right big-end shell", "", false}, {"Front main bearing insert", "Rear main bearing insert", "", false}, {"Front bearing cup", "Rear bearing cone", "", false},
		{"Upper front bearing shell", "Lower rear bearing shell", "", false}, {"Bearing cup", "Bearing cup of the motor", "", false}, {"Bevel pinion nut", "Bevel wheel", "", false}, {"Oil cup", "Bearing cone", "", false}, {"Bevel pinion bearing cone", "Bevel gear", "", false},
	} {
		cases = append(cases, warned{"\"" + c.a + "\", renew: always}\n  b: {name: \"" + c.b + "\"" + c.renewB + "}\n", c.told})
	}
	text := lawHead + "parts:\n  a: {name: PUT" + "containers: {C1: {name: Parts, kind: crate, keep: dry}}\nsteps:\n  - section: Open\n    steps:\n      - {step: off, do: Take them out., remove: [a, b], into: {a: scrap, b: C1}}\n  - section: Close\n    steps:\n      - {step: on, do: Put them in., fit: [a, b]}\n"
	toldJust(t, "renewed-singly", text, cases)
	toldJust(t, "renewed-singly", strings.Replace(text, "PUT", "Upper bearing shell, renew: as set, set: S1}\n  b: {name: Lower bearing shell, renew: as set, set: S1}\nsets: {S1: {what: Shells, why: bored together}}\nPUT", 1), []warned{{"", false}})
}
