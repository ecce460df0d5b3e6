package packs_test

import (
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"matchmark/packs/job"
)

// A rope of left-hand lay was told to be a thread that its part does not say.
func TestARopeLaidToTheLeftIsNoThread(t *testing.T) {
	t.Parallel()
	toldJust(t, "hand-not-kept", lawHead+"parts:\n  bolt: {name: Clamp bolt, thread: M20}\ncontainers:\n  C1: {name: Clamp bolts, kind: bag, keep: dry}\nsteps:\n  - {step: off, do: Take the bolt out., remove: [bolt], into: C1, missed: \"PUT\", back: Put it back.}\n", []warned{
		{"left-hand thread", true},
		{"left-handed", true},
		{"left-hand lay", false},
		{"left-hand grooves of the drum", false},
		{"left-hand side first", false},
		{"left-hand lay, left-hand thread", true},
		{"left-hand bearing", false},
		{"left-hand pump first", false},
		{"at the left hand", false},
		{"nut in the left hand, spanner in the other", false},
		{"left-hand cover", false},
		{"left-hand row of bolts", false},
		{"seen from the left-hand door", false},
		{"left-hand motor, left-hand nut", true},
		{"at the left-hand nut", true},
	})
}

// Oil that is filled to the mark of its glass was told to go by a mark that nobody made.
func TestOilIsFilledToItsMark(t *testing.T) {
	t.Parallel()
	toldJust(t, "unmarked", lawHead+"parts:\n  plug: {name: Filler plug}\ncontainers:\n  C1: {name: Plug, kind: bag, keep: dry}\nsteps:\n  - section: Open\n    steps:\n      - {step: off, do: Take the plug out., remove: [plug], into: C1, back: \"PUT\"}\n  - reverse: [Open]\n", []warned{
		{"Fill the gear case with oil to the mark. Put the plug in.", false},
		{"Top up to its mark and put the plug in.", false},
		{"Turn the plug in to its mark.", true},
		{"Fill the case to its mark, put the plug on to its mark.", true},
		{"Fill the case with oil, up to the mark.", false},
		{"Pour oil in to the mark, plug in.", false},
		{"Fill with oil. Turn the plug in to its mark.", true},
	})
}

// The float was read above the cover that its words put on first; what is only pushed to and
// fro, and what is measured before, is not told.
func TestReadAfterItIsPutOn(t *testing.T) {
	t.Parallel()
	head := lawHead + "parts:\n  cover: {name: Cover}\n  shaft: {name: Shaft}\ncontainers:\n  C1: {name: Cover, kind: box, keep: dry}\ndimensions:\n  D1: {what: Float, kind: float, of: {shaft: end}, found: not taken, left: 0.05 to 0.15 mm}\n  D2: {what: Play, kind: float, of: {shaft: end}, found: record to 0.01 mm}\nsteps:\n  - {step: off, do: Take the cover off., remove: [cover], into: C1}\n"
	toldJust(t, "read-first", head+"PUT", []warned{
		{"  - {step: \"on\", do: Put the cover on. Measure the float., set: [D1], fit: [cover], from: [C1]}\n", true},
		{"  - {step: \"on\", do: \"Press the cover home, turn the shaft and read its float.\", set: [D1], fit: [cover], from: [C1]}\n", true},
		{"  - {step: \"on\", do: Put the cover on. Measure the float., fit: [cover], from: [C1], set: [D1]}\n", false},
		{"  - {step: \"on\", do: Measure the float. Put the cover on., set: [D1], fit: [cover], from: [C1]}\n", false},
		{"  - {step: \"on\", do: Push the shaft to and fro and measure its float. Put the cover on., set: [D1], fit: [cover], from: [C1]}\n", false},
		{"  - {step: \"on\", do: Put the cover on. Look at it., set: [D1], fit: [cover], from: [C1]}\n", false},
		{"  - {step: \"on\", do: Put the cover on. Measure the float., measure: [D2], fit: [cover], from: [C1]}\n", true},
		{"  - {step: \"on\", do: Put the cover on. Measure the float., measure: [D2], fit: [cover], from: [C1], set: [D1]}\n", false}, // on both sides of it
	})
	var cases []warned
	for _, c := range []struct {
		words string
		told  bool
	}{
		{"Put the dial on the shaft and read it. Then put the cover on.", false}, {"Put the gauge on the shaft end, measure the float and put the cover on.", false},
		{"Push the shaft home and read the dial, then put the cover on.", false}, {"Slide the dial base onto the studs and measure. Fit the cover.", false},
		{"Lay the straight edge on the face, measure, and put the cover on.", false}, {"Put oil on the shaft, measure the float, put the cover on.", false},
		{"Press the shaft back against its shoulder, measure, then fit the cover.", false}, {"Put oil on the shaft, put the cover on, measure the float.", true},
		{"Push the shaft home, put the cover on and read the dial.", true}, {"Lay the cover on its studs, then measure.", true},
	} {
		cases = append(cases, warned{"  - {step: \"on\", do: \"" + c.words + "\", set: [D1], fit: [cover], from: [C1]}\n", c.told})
	}
	toldJust(t, "read-first", head+"PUT", cases)
}

// A reading on a bearing was told to be parted by the lift of its drum, where the lift names
// both, and shims could not be fetched from the pockets that they went into.
func TestWhatRidesAlongKeepsItsReadings(t *testing.T) {
	t.Parallel()
	const text = lawHead + `places:
  foot: {F1: {name: front}, F2: {name: rear}}
parts:
  drum: {name: Drum, mass: 300 kg}
  nut: {name: Sleeve nut, of: drum}
  shim: {name: Foot shim, each: foot}
containers:
  C1: {name: Foot shims, kind: box, pockets: [F1, F2], keep: dry}
lay-down:
  Y1: {what: Saddles}
dimensions:
  D1: {what: Nut to the end, kind: stand-off, from: {nut: face}, to: {drum: end}, nominal: 10.00 mm, left: as found +/- 0.50 mm}
lifts:
  L1: {what: Drum, parts: [PARTS], rig: bridle, origin: middle}
steps:
  - {step: shims, do: Take the shims out., remove: [shim], into: C1/foot}
  - {step: drum, do: Lift the drum out., lift: [L1], remove: [drum], into: Y1}
  - {step: read, where: bench, do: Measure the nut., measure: [D1], remove: [nut], into: bench}
  - {step: nut, where: bench, do: Put the nut on., fit: [nut], set: [D1]}
  - {step: in, do: Lift the drum in., lift: [L1], fit: [drum], from: [Y1]}
  - {step: shims-in, do: Put the shims in., fit: [shim], from: [C1/foot]}
`
	for _, c := range []struct {
		parts, ride string
		late        bool
	}{
		{"drum", ", of: drum", false},
		{"drum, nut", ", of: drum", false},
		{"drum, nut", "", true},
	} {
		def := strings.Replace(strings.Replace(text, "PARTS", c.parts, 1), ", of: drum", c.ride, 1)
		_, codes := codesOf(def)
		if got := slices.Contains(codes, "too-late"); got != c.late {
			t.Errorf("lift of %s, nut%s: told too-late %t, want %t", c.parts, c.ride, got, c.late)
		}
		if slices.Contains(codes, "unknown-name") || slices.Contains(codes, "from-elsewhere") {
			t.Errorf("from: C1/foot is refused: %v", codes)
		}
	}
	_, _, out := loadText(fstest.MapFS{}, strings.Replace(strings.Replace(text, "PARTS", "drum", 1), ", of: drum", "", 1))
	if want := "or, if nut comes off with drum and is read on it: of: drum at nut"; !strings.Contains(out, want) {
		t.Errorf("no line %q in\n%s", want, out)
	}
}

// Screws that were on for a trial were told to be tightened as at last, though their joint says
// how tight they are held for now.
func TestHeldForNow(t *testing.T) {
	t.Parallel()
	const text = lawHead + `parts:
  cover: {name: Cover}
  screw: {name: Cover screw, count: 6, thread: M10}
containers:
  C1: {name: Cover and screws, kind: box, keep: dry}
joints:
  J1: {what: Cover screws, parts: [screw], torque: 45 N·m, for-now: 15 N·m, lubricant: oil}
steps:
  - {step: off, do: Take the cover off., loosen: [J1], remove: [screw, cover], into: C1}
  - {step: try, do: Try the cover., fit-for-now: [cover, screw], tighten: [J1]}
  - {step: out, do: Take it off again., take-out-again: [screw, cover]}
  - {step: "on", do: Put the cover on., fit: [cover, screw], from: [C1], tighten: [J1]}
`
	jb, _ := loadLaw(text)
	at := map[string]job.Fastening{}
	for _, st := range stepsOf(jb) {
		for _, f := range st.Tighten {
			at[st.Key] = f
		}
	}
	if f := at["try"]; f.Held == nil || f.Held.Text() != "15 N·m" || f.Final != f.Joint || f.On != 6 {
		t.Errorf("on trial: held %v, final %v, %d on; want 15 N·m, J1, 6", f.Held, f.Final, f.On)
	}
	if f := at["on"]; f.Held != nil || f.Final != nil {
		t.Errorf("at last: held %v, final %v; want neither", f.Held, f.Final)
	}
}

// A trial pack was measured while it lay under its cover, and its cover was on for the trial.
func TestATrialPackIsMeasuredBefore(t *testing.T) {
	t.Parallel()
	head := lawHead + "parts:\n  cover: {name: Cover}\n  shims: {name: Shims, shims: {leaves: 0.05 and 0.10 mm}}\ncontainers:\n  C1: {name: Cover and shims, kind: box, keep: dry}\ndimensions:\n  D1: {what: Trial pack, kind: thickness, of: {shims: trial pack}, found: not taken, left: 0.50 to 1.00 mm}\nsteps:\n  - {step: off, do: Take the cover off., remove: [cover, shims], into: C1}\n"
	tail := "  - {step: out, do: Take it off again., take-out-again: [cover, shims]}\n  - {step: \"on\", do: Put the cover on., fit: [shims, cover], from: [C1]}\n"
	toldJust(t, "pack-closed", head+"PUT"+tail, []warned{
		{"  - {step: try, do: Try the cover., fit-for-now: [shims, cover], set: [D1]}\n", true},
		{"  - {step: try, do: Try the cover., set: [D1], fit-for-now: [shims, cover]}\n", false},
		{"  - {step: lay, where: bench, do: Measure the pack., set: [D1]}\n  - {step: try, do: Try the cover., fit-for-now: [shims, cover]}\n", false},
	})
	toldJust(t, "read-in-machine", head+"PUT"+tail, []warned{
		{"  - {step: try, do: Try the cover., fit-for-now: [shims, cover]}\n  - {step: lay, where: bench, do: Measure the pack., set: [D1]}\n", true},
		{"  - {step: lay, where: bench, do: Measure the pack., set: [D1]}\n  - {step: try, do: Try the cover., fit-for-now: [shims, cover]}\n", false},
	})
}

// The load test stood above the step that takes the locks off.
func TestATestLoadIsLiftedUnlocked(t *testing.T) {
	t.Parallel()
	toldJust(t, "runs-locked", lawHead+"isolations:\n  motor: {point: Q1, energy: electric, state: locked, proved: start tried}\nsteps:\n  - {step: lock, do: Lock the motor out., lock: [motor]}\n  - {step: test, do: \"PUT\"}\n  - {step: unlock, do: Take the lock off., unlock: [motor]}\n", []warned{
		{"Lift the test load one metre and stop.", true},
		{"Stand clear, then raise the full test load.", true},
		{"Chain the test load to the floor.", false},
		{"Lift the test load just off the floor.", true},
		{"Hold the test load for five minutes.", true},
		{"Lower the test load to the floor.", true},
		{"Lower the test weight onto the pallet.", false},
		{"Hold the test weight with the forklift.", false},
		{"Lift the test weight off with the mobile crane.", false},
		{"Lift the test weight off its truck.", false},
		{"Raise the test load with the hand pump.", false},
		{"Lower the test load on to the sleepers.", false},
		{"Lift the proof load by hand into the cage.", false},
		{"Hold the test load with a sling.", false},
		{"Lift the cover.", false},
	})
}

// On the bench too a nut is turned by nobody behind a washer that is on, and what is on the
// machine meanwhile covers nothing there.
func TestANutOnTheBenchIsTurnedBeforeItsWasher(t *testing.T) {
	t.Parallel()
	const text = lawHead + `parts:
  drum: {name: Drum, mass: 20 kg}
  nut: {name: Sleeve nut, of: drum, thread: M60x2, behind: [FRONT]}
  washer: {name: Lock washer, of: drum}
  lid: {name: Lid}
containers:
  C1: {name: Nut and washer, kind: bag, keep: oiled}
lay-down:
  Y1: {what: Saddles}
dimensions:
  D1: {what: Nut to the end, kind: stand-off, from: {nut: face}, to: {drum: end}, nominal: 10.00 mm, left: as found +/- 0.50 mm, adjust: nut}
steps:
  - {step: drum, do: Take the drum out., remove: [drum], into: Y1}
  - {step: strip, where: bench, do: Take the washer off., remove: [washer], into: C1}
  - {step: read, where: bench, do: Measure the nut. Take it off., measure: [D1], remove: [nut], into: C1}
  - {step: nut, where: bench, do: Put the nut on., fit: [nut], from: [C1]}
  - {step: back, where: bench, do: Put the washer on., fit: [washer], from: [C1]}
  - {step: set, where: bench, do: Set the nut., set: [D1]}
  - {step: in, do: Put the drum in., fit: [drum], from: [Y1]}
`
	for front, want := range map[string]bool{"washer": true, "lid": false} {
		_, codes := codesOf(strings.Replace(text, "FRONT", front, 1))
		if got := slices.Contains(codes, "nut-shut-in"); got != want {
			t.Errorf("behind the %s: told %t, want %t (%v)", front, got, want, codes)
		}
	}
}

// A heat with no pull: stood at the step that draws its hub off, and nothing was printed of how.
func TestAHeatThatDrawsOffSaysHow(t *testing.T) {
	t.Parallel()
	const text = lawHead + `parts:
  shaft: {name: Shaft}
  hub: {name: Hub, mass: 8 kg}
containers:
  C1: {name: Hub, kind: box, keep: dry}
heats:
  H1: {what: Hub, fit: 75 H7/m6, hub: {part: hub, material: carbon steel, outside: 135 mm, length: 100 mm, kind: plain carbon steel hub}, shaft: {part: shaft, material: carbon steel, behind: 900 mm}, nothing-near: bare shaft, put-on: {by: induction, clearance: 0.08 mm}}
steps:
  - {step: off, do: Draw the hub off., HEAT remove: [hub], into: C1}
ON`
	on := "  - {step: \"on\", do: Heat the hub and push it on., heat: [H1], fit: [hub], from: [C1]}\n"
	for _, c := range []struct {
		put, on string
		told    bool
	}{{"heat: [H1],", on, true}, {"", on, false}, {"heat: [H1],", "", false}} { // the last: the row that undoes it is hot
		put, want := c.put, c.told
		_, codes := codesOf(strings.Replace(strings.Replace(text, "HEAT", put, 1), "ON", c.on, 1))
		if got := slices.Contains(codes, "never-heated"); got != want {
			t.Errorf("%q: told %t, want %t (%v)", put, got, want, codes)
		}
	}
}

// The paper told of the input-shaft, a key, where the two machines of a coupling are named.
func TestAnAlignmentNamesItsMachines(t *testing.T) {
	t.Parallel()
	text := lawHead + "parts:\n  drive-motor: {name: Drive motor}\n  pump: {name: Pump}\nalignments:\n  A1: {what: Motor to pump, movable: drive-motor, stationary: pump, method: rim and face, reads: 0.01 mm, feet: [{name: front, at: 400 mm}, {name: rear, at: 900 mm}]}\nsteps:\n  - {step: align, do: Align the motor., align: [A1]}\n"
	jb, _ := load(text)
	if a := jb.Alignments[0]; a.Movable != "drive motor" || a.Stationary != "pump" {
		t.Errorf("got %q and %q, want drive motor and pump", a.Movable, a.Stationary)
	}
}

// The motor came off and went back, and its coupling was aligned only before.
func TestAlignedAgainOnceTheMotorIsBack(t *testing.T) {
	t.Parallel()
	head := lawHead + "parts:\n  motor: {name: Motor, mass: 20 kg}\n  pump: {name: Pump}\nlay-down:\n  Y1: {what: Timbers}\nalignments:\n  A1: {what: Motor to pump, movable: motor, stationary: pump, method: rim and face, reads: 0.01 mm, face-diameter: 200 mm, sag: 0.00 mm, feet: [{name: front, at: 400 mm}, {name: rear, at: 900 mm}]}\nsteps:\n  - {step: found, do: Read the coupling., align: [A1]}\n  - {step: off, do: Take the motor off., remove: [motor], into: Y1}\n  - {step: \"on\", do: Put the motor on., fit: [motor], from: [Y1]LEFT}\n"
	for _, c := range []struct {
		at, below string
		told      bool
	}{
		{"", "", true},
		{", align: [A1]", "", false},
		{"", "  - {step: left, do: Align the motor., align: [A1]}\n", false},
	} {
		_, codes := codesOf(strings.Replace(head, "LEFT", c.at, 1) + c.below)
		if got := slices.Contains(codes, "never-aligned"); got != c.told {
			t.Errorf("%q, %q: told %t, want %t (%v)", c.at, c.below, got, c.told, codes)
		}
	}
}
