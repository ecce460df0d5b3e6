package packs

import (
	"strings"
	"testing"
	"testing/fstest"

	"matchmark/packs/job"
)

// oneStep loads a job of one step, with what stands before it.
func oneStep(t *testing.T, machine, step string) (*job.Job, []string) {
	t.Helper()
	text := "pack: 1\nequipment: {tag: P-1, name: Pump}\njob: {number: \"1\", title: Check, revision: A, issued: 2026-03-02}\n" + machine + "\nsteps:\n  - step: s\n    " + step + "\n"
	jb, problems := Load(fstest.MapFS{"p.yaml": &fstest.MapFile{Data: []byte(text)}}, Inputs{Definition: "p.yaml"})
	var codes []string
	for _, p := range problems {
		codes = append(codes, p.Code)
	}
	return jb, codes
}

func keysOf(list []*job.Caution) string {
	var out []string
	for _, c := range list {
		out = append(out, c.Key)
	}
	return strings.Join(out, " ")
}

// Each built-in note stands before a step that does what it warns of, and not
// before one that only sounds like it.
func TestWhatAStepDoesCallsForItsCautions(t *testing.T) {
	const (
		parts    = "parts:\n  follower: {name: Follower, holds: spring}\n  plug: {name: Drain plug, holds: pressure}\n  strut: {name: Strut, holds: weight}\n  seal: {name: Cover gasket, renew: always}\n  rotor: {name: Rotor, mass: 26 kg}\n  cap: {name: Cap, mass: 25 kg}\n"
		guards   = "isolations:\n  motor: {point: Breaker 1, energy: electric, state: open, proved: lamp dark}\npermits:\n  hot-work: {what: Hot work permit}\nopenings:\n  sump: {what: Sump, cover: grating, enclosed: yes}\n  gland: {what: Gland, cover: rag}\nlay-down:\n  Y1: {what: Timbers}\n"
		machine  = parts + guards
		anything = "do: Do it."
	)
	for _, c := range []struct{ step, want string }{
		{anything, ""},
		{"do: Lock out the motor.\n    lock: [motor]", "lockout"},
		{"do: Take the locks off.\n    unlock: [motor]", "unlocking"},
		{"do: Take the grating off.\n    open: [sump]", "confined-space foreign-material"},
		{"do: Take the cover off.\n    open: [gland]", "foreign-material"},
		{"do: Hook it to the station crane.", "lifting"},
		{"do: Set the slings at the marked bands.", "lifting"},
		{"do: Lift the lid and look.", ""},
		{"do: Lay the rotor down.\n    remove: [rotor]\n    into: Y1", "lifting"},
		{"do: Lay the cap down.\n    remove: [cap]\n    into: Y1", ""}, // not over 25 kg
		{"do: Take it off with two people.", "hand-lift"},
		{"do: \"Turn by hand, two people.\"", ""}, // a shaft that is turned is not lifted
		{"do: Turn the shaft with two people.", ""},
		{"do: Two people turn the rotor.", ""},
		{"do: Turn the shaft. Take the cover off with two people.", "hand-lift"},
		{"do: Turn the cover over with two people.", "hand-lift"},
		{"do: \"Turn the shaft until the key is up, and lift the coupling half off with two people.\"", "hand-lift"},
		{"do: Bar the rotor round to the mark and take the half off with two people.", "hand-lift"},
		{"do: \"Turn the coupling to the mark, then two people lift it off.\"", "hand-lift"},
		{"do: Two people turn the half over and carry it off.", "hand-lift"},
		{"do: \"Turn the shaft to the mark, two people hold the half.\"", "hand-lift"},
		{"do: Turn the coupling half over with two people.", "hand-lift"},
		{"do: Bar the rotor round to the mark with two people and read the dial.", ""},
		{"do: Lay the rotor down.\n    people: 2\n    remove: [rotor]\n    into: Y1", "hand-lift"},
		{"do: Warm it with the torch.", "hot-work heating"},
		{"do: Cut the pin.\n    permit: [hot-work]", "hot-work"},
		{"do: Heat the hub to 150 °C.", "heating"},
		{"do: Clean the heat exchanger tubes.", ""},
		{"do: Warm the bearing on the hot plate.", "heating"},
		{"do: Read the bearing temperature when warm.", ""},
		{"do: Put the ring on the induction heater.", "induction"},
		{"do: Shrink the pin in dry ice.", "cold"},
		{"do: Take the follower off.\n    remove: [follower]\n    into: bench", "springs"},
		{"do: Slacken the follower.\n    loosen: [follower]", "springs"},
		{"do: Take the plug out.\n    remove: [plug]\n    into: bench", "pressure"},
		{"do: Take the strut away.\n    remove: [strut]\n    into: bench", "weight"},
		{"do: Take the lagging off.", "lagging"},
		{"do: Take the gasket off.", "asbestos"},
		// A shaft stood on a cradle, a casing on its screws, and no note said so.
		{"do: Cradle under the shaft, hands clear.", "propped"},
		{"do: Jack the casing up evenly.", "propped"},
		{"do: Put the cradle away.", ""},
		{"do: Lock out the fan motor.", "lockout"},
		{"do: Last the locks off by name.", "unlocking"},
		{"do: Look at the joint while it hangs.", "hanging"},
		// The note spoke of what is written under the step, and nothing was.
		{"do: Look at the joint while it hangs.\n    on-hook: workshop crane", "hanging lifting"},
		{"do: Look at the joint while it hangs.\n    on-hook: workshop crane\n    under-load: two blocks under the rim", "hanging-propped lifting"},
		// Two people were called for, and the part had no mass in the file.
		{"do: Take it away.\n    people: 2\n    remove: [seal]\n    into: scrap", "asbestos hand-lift"},
		{"do: Draw it off.\n    remove: [seal]\n    into: scrap", "asbestos"},
		{"do: Wash the races with solvent.", "solvent"},
		{"do: Drive it out with hammer and drift.", "eyes"},
		{"do: Look.\n    caution: [rotor-lift, sharp, pinch]", "rotor-lift sharp pinch"},
	} {
		jb, _ := oneStep(t, machine, c.step)
		if got := keysOf(jb.Sections[0].Steps[0].Cautions); got != c.want {
			t.Errorf("%s\n  gets %q, want %q", c.step, got, c.want)
		}
	}
}

// A part that held pressure, an old gasket: the row that puts the new one in does
// not warn of the old one, though its words name it.
func TestPuttingBackWarnsOfWhatItDoesItself(t *testing.T) {
	jb, _ := oneStep(t, "parts: {seal: {name: Gasket, renew: always}, cover: {name: Cover, holds: spring}}",
		"do: Take both off.\n    remove: [seal, cover]\n    into: {seal: scrap, cover: bench}\n    back: Warm the cover in the oven, then fit it with the new gasket.")
	var got []string
	for _, s := range jb.Sections {
		for _, st := range s.Steps {
			got = append(got, keysOf(st.Cautions))
		}
	}
	if want := "springs asbestos|heating springs"; strings.Join(got, "|") != want {
		t.Errorf("cautions %q, want %q", strings.Join(got, "|"), want)
	}
}

// A definition overrides a built-in note by its key, adds its own, and leaves one
// out with a reason; what guards a life stays.
func TestADefinitionAddsOverridesAndLeavesOut(t *testing.T) {
	jb, codes := oneStep(t, "cautions: {lagging: {signal: notice, hazard: Old sheet., avoid: Keep it.}, own: {signal: danger, hazard: Acid., avoid: Stand back.}}",
		"do: Take the lagging off and wash it with solvent.\n    caution: [own]\n    no-caution: {solvent: water based cleaner}")
	st := jb.Sections[0].Steps[0]
	if got := keysOf(st.Cautions); got != "own lagging" {
		t.Errorf("cautions %q, want own and lagging", got)
	}
	if c := st.Cautions[1]; c.Hazard != "Old sheet." || c.Signal != "notice" || c.Signs[0] != "W071" || c.Rule == "" {
		t.Errorf("the overridden note is %+v, want its own words with the signs and rule of the built-in one", c)
	}
	if len(jb.Spared) != 1 || jb.Spared[0].Reason != "water based cleaner" || len(codes) > 0 {
		t.Errorf("left out: %v, problems %v", jb.Spared, codes)
	}
	for _, c := range []struct{ machine, step, code string }{
		{"", "do: Warm it with the torch.\n    no-caution: {hot-work: it is small}", "caution-kept"},
		{"", "do: Warm it with the torch.", "no-permit"},
		{"cautions: {heating: {signal: caution, signs: [M009], hazard: Hot., avoid: Gloves.}}", "do: Heat it in the oven.", "sign-missing"},
		{"cautions: {heating: {signal: caution, signs: [W017], hazard: Hot., avoid: Gloves.}}", "do: Heat it in the oven.", "sign-missing"},
		{"cautions: {lifting: {signal: caution, signs: [M014], hazard: Load., avoid: Helmets.}}", "do: Hook it to the crane.", "sign-missing"},
	} {
		_, codes := oneStep(t, c.machine, c.step)
		found := false
		for _, code := range codes {
			found = found || code == c.code
		}
		if !found {
			t.Errorf("%s %s: problems %v, want %s", c.machine, c.step, codes, c.code)
		}
	}
}

// A heavy part that the hook holds while its bolts go out or in has hands at it all that time
// (common practice, no source); one that is only moved hangs on the hook and no longer.
func TestWhatHangsForItsBolts(t *testing.T) {
	const machine = "parts:\n  bracket: {name: Bracket, mass: 118 kg}\n  bolt: {name: Bracket bolt, count: 4}\n  lid: {name: Lid, mass: 3 kg}\n" +
		"joints:\n  J1: {what: Bracket bolts, parts: [bolt], torque: 310 N·m, lubricant: oil, source: sheet 7}\n" +
		"lay-down:\n  Y1: {what: Timbers}\ncontainers:\n  C1: {name: Bolts}\n"
	const hook = "do: Do it.\n    people: 3\n    on-hook: station hook"
	for _, c := range []struct{ step, want string }{
		{hook + "\n    loosen: [J1]\n    remove: [bolt, bracket]\n    into: {bolt: C1, bracket: Y1}", "hanging lifting"},
		{hook + "\n    remove: [bracket]\n    into: Y1", "lifting"},
		{hook + "\n    loosen: [J1]\n    remove: [bolt, lid]\n    into: {bolt: C1, lid: Y1}", "lifting"},
		{"do: Do it.\n    people: 3\n    loosen: [J1]\n    remove: [bolt, bracket]\n    into: {bolt: C1, bracket: Y1}", "hand-lift"},
	} {
		jb, _ := oneStep(t, machine, c.step)
		if got := keysOf(jb.Sections[0].Steps[0].Cautions); got != c.want {
			t.Errorf("%q: %q, want %q", c.step, got, c.want)
		}
	}
}
