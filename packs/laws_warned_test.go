package packs_test

import (
	"slices"
	"strings"
	"testing"

	"matchmark/packs/source"
)

// A warned is a definition of whose words it is known whether a law is told.
type warned struct {
	put  string // in place of PUT
	told bool
}

// toldJust sees that a law is told of a definition just with the words of which it is known,
// and as a warning: what rests on words stops no paper.
func toldJust(t *testing.T, code, text string, cases []warned) {
	t.Helper()
	for _, c := range cases {
		_, problems := loadLaw(strings.Replace(text, "PUT", c.put, 1))
		i := slices.IndexFunc(problems, func(p source.Problem) bool { return p.Code == code })
		switch {
		case i >= 0 != c.told:
			t.Errorf("%q: told of %s %t, want %t:\n%v", c.put, code, i >= 0, c.told, problems)
		case i >= 0 && problems[i].Severity == source.Error:
			t.Errorf("%q: %s is an error, and rests on words", c.put, code)
		}
	}
}

// The float of a shaft at its free end, a follower three parts behind the coupling guard and
// the gap of the guard itself were told as behind it; a coupling gap without a kind was not.
func TestGuardStraightInFront(t *testing.T) {
	t.Parallel()
	toldJust(t, "behind-guard", lawHead+`
parts:
  frame: {name: Frame}
  shaft: {name: Shaft, behind: [hub]}
  hub: {name: Pump hub, mass: 8 kg, behind: [bolt]}
  bolt: {name: Coupling bolt, behind: [guard]}
  guard: {name: Coupling guard, mass: 6 kg, guard: yes}
containers:
  C1: {name: Guard, kind: crate, keep: dry}
dimensions:
  D1: {what: Reading, PUT, nominal: 5.00 mm, found: record to 0.01 mm}
steps:
  - section: Read
    steps:
      - {step: read, do: Read it., measure: [D1]}
      - {step: off, do: "Take the guard off, bolt and hub.", remove: [guard, bolt, hub], into: C1}
  - reverse: [Read]
`, []warned{
		{"from: {hub: face}, to: {frame: face}", true},
		{"kind: gap, from: {hub: face}, to: {frame: face}", true},
		{"kind: gap, from: {bolt: head}, to: {frame: face}", true},
		{"kind: runout, of: {hub: rim}", true},
		{"of: {hub: rim}", false},
		{"kind: float, from: {shaft: free end}, to: {frame: face}", false},
		{"kind: gap, from: {guard: rim}, to: {hub: rim}", false},
		{"kind: gap, from: {hub: face}, to: {frame: face}, with: through the inspection door", false},
		{"kind: gap, from: {hub: face}, to: {frame: face}, with: through its flap", false},
		{"kind: gap, from: {hub: face}, to: {frame: face}, with: through the peep hole", false},
	})
}

// A motor that stands out of line or off by some amount, and words that ask whether something is
// still out, were told as if they said that it is.
func TestStillOutSaysNotHowItStands(t *testing.T) {
	t.Parallel()
	toldJust(t, "said-out", lawHead+`
parts:
  motor: {name: Motor, mass: 20 kg, behind: [bolt]}
  bolt: {name: Foot bolt, count: 4}
containers:
  C1: {name: Motor, kind: crate, keep: dry}
steps:
  - section: Off
    steps:
      - {step: off, do: Take the motor off., remove: [bolt, motor], into: C1}
  - reverse: [Off]
  - section: Then
    steps:
      - {step: line, do: "PUT"}
`, []warned{
		{"Motor still out, turn the pump by hand.", true},
		{"Turn the pump, the motor is still off.", true},
		{"No hurry, the motor is still out: turn the pump.", true},
		{"Motor still out of line: shim.", false},
		{"Motor still out of true, turn it.", false},
		{"Shim again while the motor is still off by more than 0.05 mm.", false},
		{"The motor is still off line.", false},
		{"If the motor is still out, stop.", false},
		{"See that no bolts are still out.", false},
		{"Look whether any bolt is still out.", false},
		{"Mark where a bolt is still out.", false},
		{"See that the motor is still out.", false},
		{"Walk round: nothing loose, no motor still off.", false},
	})
}

// Nuts slackened and left on to catch the cover, and the screws of a slinger that comes off in the
// same step, were told as what holds; screws that come out in a step of their own, and jackscrews
// by that name, were not seen.
func TestJackedByAnyNameAndStep(t *testing.T) {
	t.Parallel()
	const jack, nuts, dowels = "      - {step: jack, do: Push the casing up by 5 mm., JACK}\n", "      - {step: nuts, do: Nuts off., remove: [nut], into: C1}\n", "      - {step: dowels, do: Draw the dowels., remove: [dowel], into: C1}\n"
	const lift = "      - {step: away, do: Jacking screws out and the casing off., take-out-again: [jack], remove: [casing, screw, slinger], into: C1}\n"
	const alone, screws = "      - {step: away, do: Take the casing off., remove: [casing], into: C1}\n", "      - {step: screws, do: Jacking screws out., take-out-again: [jack]}\n"
	var cases []warned
	for _, c := range []struct {
		screw, steps string
		told         bool
	}{
		{"Jacking screw M12", nuts + dowels + jack + lift, false},
		{"Jacking screw M12", jack + nuts + dowels + lift, true},
		{"Jacking screw M12", dowels + strings.Replace(jack, "JACK", "loosen: [J1], JACK", 1) + nuts + lift, false},
		{"Jacking screw M12", strings.Replace(jack, "JACK", "loosen: [J1], JACK", 1) + nuts + dowels + lift, true},
		{"Jacking screw M12", jack + nuts + dowels + alone + screws, true},
		{"Jacking screw M12", jack + screws + nuts + dowels + alone, true},
		{"Jacking screw M12", nuts + dowels + jack + alone + screws, false},
		{"Jacking screw M12", strings.Replace(jack, "casing", "motor", 1) + screws + nuts + dowels + alone, false},
		{"Jackscrew M12", jack + nuts + dowels + lift, true},
		{"Jack-off bolt M12", jack + nuts + dowels + lift, true},
		{"Guide stud M12", jack + nuts + dowels + lift, false},
	} {
		cases = append(cases, warned{c.screw + ", count: 2, aid: yes}\n" + strings.ReplaceAll("containers:\n  C1: {name: Casing, kind: crate, keep: dry}\njoints:\n  J1: {what: Joint nuts, parts: [nut], torque: 60 N·m, source: sheet}\nsteps:\n  - section: Open\n    steps:\n"+c.steps, "JACK", "fit-for-now: [jack]"), c.told})
	}
	toldJust(t, "jacked-early", lawHead+`
parts:
  casing: {name: Casing, mass: 20 kg, behind: [nut, dowel]}
  slinger: {name: Slinger, behind: [screw, casing]}
  screw: {name: Slinger screw, behind: [casing]}
  nut: {name: Joint nut, count: 4}
  dowel: {name: Taper dowel, count: 2}
  jack: {name: PUT  - reverse: [Open]
`, cases)
}

// Bolts that are finger-tight, or read before they are tight, were told as to be tight.
func TestFingerTightIsNotTight(t *testing.T) {
	t.Parallel()
	toldJust(t, "read-loose", lawHead+`
parts:
  shaft: {name: Shaft}
  cap: {name: Bearing cap, mass: 9 kg, behind: [bolt]}
  bolt: {name: Cap bolt, count: 4}
containers:
  C1: {name: Cap and bolts, kind: crate, keep: oiled}
joints:
  J1: {what: Cap bolts, parts: [bolt], torque: 90 N·m, lubricant: oil, source: sheet 2}
dimensions:
  D1: {what: Gap, kind: gap, from: {cap: face}, to: {shaft: shoulder}, with: "PUT", left: 0.10 to 0.30 mm, out: tell, source: sheet 2, found: not taken}
steps:
  - section: Open
    steps:
      - {step: apart, do: "Bolts out, cap off.", loosen: [J1], remove: [bolt, cap], into: C1}
  - section: Back
    steps:
      - {step: on, do: Cap and bolts on., fit: [cap, bolt]}
      - {step: read, do: Measure the gap., set: [D1]}
      - {step: tight, do: Tighten., tighten: [J1]}
`, []warned{
		{"bolts tight", true},
		{"bolts as tight as they are now", true},
		{"bolts finger-tight", false},
		{"bolts only hand-tight", false},
		{"bolts in, not yet tight", false},
		{"before the bolts are tight", false},
		{"bolts snug tight", false},
	})
}

// A reading of a ring below the step that decides of the cover alone was told as too late.
func TestDecidedOfTheNamedPart(t *testing.T) {
	t.Parallel()
	toldJust(t, "decided-late", lawHead+`
parts:
  cover: {name: End cover, mass: 2 kg}
  ring: {name: Wear ring, mass: 2 kg, renew: "if worn, decided at 1.4"}
containers:
  C1: {name: Ring, kind: crate, keep: dry}
dimensions:
  D1: {what: Ring bore, kind: bore, of: {ring: bore}, left: 100.00 to 120.00 mm, out: renew, source: sheet 2}
steps:
  - section: Off
    steps:
      - {step: off, do: Take cover and ring off., remove: [cover, ring], into: C1}
      - {step: dec, do: "PUT"}
      - {step: read, do: Measure the bore of the ring., where: bench, measure: [D1]}
  - reverse: [Off]
`, []warned{
		{"Decide of every part: reuse, repair or scrap it?", true},
		{"Wear ring: reuse, repair or scrap it?", true},
		{"End cover: reuse, repair or scrap it?", false},
	})
}

// A new hub that is marked at its fit was told as loose since the old one came off; so was an old
// one, beside what is told of it as put anywhere.
func TestMarkedAnewAtItsFit(t *testing.T) {
	t.Parallel()
	toldJust(t, "marked-late", lawHead+`
parts:
  hub: {name: Hub, mass: 8 kg, behind: [nut], renew: always}
  nut: {name: Hub nut}
containers:
  C1: {name: Nut, kind: box, keep: oiled}
joints:
  J1: {what: Hub nut, parts: [nut], torque: 120 N·m, lubricant: oil, source: sheet 1}
steps:
  - section: Open
    steps:
      - {step: off, do: "Nut off, hub off.", PUT, remove: [nut, hub], into: {nut: C1, hub: scrap}}
  - section: Shut
    steps:
      - {step: on, do: "Fit the new hub and match-mark it to the shaft, nut on, tighten.", fit: [hub, nut], match-marks: [hub], tighten: [J1]}
`, []warned{
		{"loosen: [J1]", false},
		{"loosen: [J1], match-marks: [hub]", true},
		{"match-marks: [hub], loosen: [J1]", false},
	})
}

// A gap that is set on the bench was told as read while its shaft is off.
func TestReadApartOnTheBench(t *testing.T) {
	t.Parallel()
	toldJust(t, "read-apart", lawHead+`
parts:
  shaft: {name: Shaft, mass: 10 kg}
  bearing: {name: Ball bearing}
containers:
  C1: {name: Shaft, kind: crate, keep: oiled}
dimensions:
  D1: {what: Bearing to shoulder, kind: gap, from: {bearing: inner ring}, to: {shaft: shoulder}, found: not taken, left: at most 0.03 mm, over: press it home, source: sheet 2, lost-by: nothing}
steps:
  - section: Open
    steps:
      - {step: off, do: Draw the shaft., remove: [shaft], into: C1}
      - {step: read, do: Measure the gap., PUT, set: [D1]}
  - reverse: [Open]
`, []warned{{"where: bench", false}, {"hours: 1", true}})
}

// The side across was called by its group and key alone: by its name, the other way round or as
// one of both it was not seen.
func TestOtherSideByItsName(t *testing.T) {
	t.Parallel()
	toldJust(t, "not-as-told", lawHead+`
places:
  side:
    L: {name: left side, viewed-from: the motor}
    R: {name: right side, viewed-from: the motor}
parts:
  housing: {name: Housing}
  cover: {name: Gland cover, each: side, mass: 6 kg}
containers:
  C1: {name: Covers, kind: box, each: side, keep: dry}
dimensions:
  D1: {what: Gap, kind: gap, from: {cover/L: flange}, to: {housing: joint}, with: "PUT", found: not taken, left: record to 0.01 mm, lost-by: nothing}
steps:
  - section: Open
    steps:
      - {step: covers, each: side, do: Take the cover off., remove: [cover], into: C1}
  - section: Close
    steps:
      - {step: left, each: L, do: Put the left cover on., fit: [cover], set: [D1]}
      - {step: right, each: R, do: Put the right cover on., fit: [cover]}
`, []warned{
		{"side R tight", true},
		{"side R bolted up tight", true},
		{"R side tight", true},
		{"right side tight", true},
		{"both sides tight", true},
		{"side L tight", false},
		{"left side tight", false},
		{"the other way tight", false},
	})
}
