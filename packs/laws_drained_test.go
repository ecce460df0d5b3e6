package packs_test

import (
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// The laws of draining, proving and filling. Common practice, no source.

// wetPump is a pump whose casing opens, with its locks, its drain and its oil.
const wetPump = lawHead + `parts:
  guard: {name: Coupling guard, guard: yes}
  cover: {name: Bearing cover}
  drain-plug: {name: Drain plug}
  casing: {name: Upper casing, mass: 9 kg}
containers: {C1: {name: Parts, kind: crate, keep: dry}}
isolations:
  motor: {point: Breaker 12, energy: electric, state: racked out, proved: no answer}
  suction: {point: Valve V-12, energy: water, state: shut, proved: drain V-14 runs dry}
openings:
  box: {what: Pump casing, cover: cloth}
steps:
  - section: All
    steps:
`

func TestDrainedBelowTheLocks(t *testing.T) {
	t.Parallel()
	const lock = "      - {step: safe, do: Make it safe., lock: [motor, suction]}\n"
	var cases []warned
	for _, c := range []struct {
		words string
		told  bool
	}{
		{"Drain the casing at V-14.", true}, {"Drain and vent the pump.", true}, {"Open the drain and wait.", true}, {"Open the vent, then the drain.", true},
		{"Let the oil off into the tray.", true}, {"Vent the casing.", true}, {"Bleed the line down to zero.", true}, {"Depressurise the system.", true},
		{"Put the tray under it, drain the oil.", true}, {"Drain oil.", true}, {"Drain both housings while warm.", true},
		{"Operators drain the pump.", false}, {"Drain plug: look at it from outside.", false}, {"Do not drain the casing yet.", false},
		{"See that the drain is shut.", false}, {"Stop the pump, drain the line to the sewer.", false}, {"Ask operations to drain the header.", false},
		{"Vents and drains are shown on sheet 2.", false}, {"Read the level before the oil is drained.", false}, {"Shut down and drain the reactor from the control room.", false},
		{"Isolate, drain and prove dead.", false}, {"Drain the pit with the sump pump.", false}, {"Drain the hose behind the valve.", false}, {"Lay hoses for draining it.", false}, {"Tell the shift that the drain opens later.", false},
		{"Öl ablassen.", false}, {"Never vent it while it is hot.", false},
		{"Drain down the casing.", true}, {"Empty the casing at V-62.", true}, {"Blow the receiver down.", true}, {"Let off the pressure.", true}, {"Release the pressure at V-62.", true}, {"Blow down the receiver.", true}, {"Hang the sign, then relieve the line pressure.", true},
		{"Vent the tensioner.", false}, {"Drain the oil of the crane.", false}, {"Drain the water off the foundation pocket.", false}, {"Open the vent of the building.", false}, {"Open the drain pan lid.", false},
		{"Empty the drip tray.", false}, {"Release the pressure of the hydraulic jack.", false}, {"Blow the bolt holes clean.", false}, {"Blow the dust off the motor.", false}, {"Blow off the dust.", false}, {"Blow it down at the cock.", true}, {"Empty the crate and line it.", false}, {"Release the lever pressure on the handle.", false},
		{"Let off the steam hoist gently.", false}, {"Open the vented cabinet.", false},
		{"Open the vent cover of the cabinet.", false}, {"Bleed the torque tool.", false}, {"Let the rope run out.", false}, {"Take off the pressure gauge cover.", false}, {"Drain the rain water from the base frame.", false}, {"Empty the sump pump pit.", false},
		{"Let the casing drain.", true}, {"Drain everything.", true}, {"Slowly drain the casing.", true}, {"Crack the drain open.", true}, {"Open V-62 and let the casing run empty.", true},
	} {
		act := "      - {step: act, do: \"" + c.words + "\"}\n"
		cases = append(cases, warned{act + lock, c.told}, warned{lock + act, false})
	}
	toldJust(t, "drained-unlocked", wetPump+"PUT", cases)
}

func TestProvedBeforeItIsOpened(t *testing.T) {
	t.Parallel()
	line := map[string]string{
		"lock": "do: Make it safe., lock: [motor, suction]", "prove": "do: Look at the drain., seen: [V-14 runs dry]", "guard": "do: Take the guard off., remove: [guard], into: C1",
		"open": "do: \"Lift the casing off by hand, two people.\", people: 2, remove: [casing], into: C1, open: [box]", "other": "do: Look at it., seen: [V-99 is painted]",
	}
	toldWhere(t, "proved-late", func(t *rapid.T) (string, bool) {
		order := anyOrder(t, "lock", "prove", "guard", "open", "other")
		at := func(act string) int { return slices.Index(order, act) }
		return wetPump + stepLines(order, line), at("lock") < at("open") && at("open") < at("prove")
	})
}

// What is seen of a valve for another reason, and what words above the opening tell of, was told
// as proved too late.
func TestProvedIsWhatItSays(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		proved, seen, lock string
		told               bool
	}{
		{"drain V-14 runs dry", "V-14 runs dry", "Make it safe.", true}, {"drain V-14 runs dry", "V-14 still dry", "Make it safe.", true}, {"PG-3 reads nothing", "PG-3 reads nothing still", "Make it safe.", true},
		{"drain V-14 open and dry", "V-14 open and dry", "Make it safe.", true}, {"drain V-14 open and dry", "V-14 shut again", "Make it safe.", false},
		{"drain V-14 runs dry", "V-14 shut again", "Make it safe.", false}, {"drain V-14 runs dry", "V-14 stands open", "Make it safe.", false}, {"drain V-14 runs dry", "valve V-14 closed, plug in", "Make it safe.", false},
		{"drain V-14 runs dry", "V-14 plugged", "Make it safe.", false}, {"drain V-14 runs dry", "tag of V-14 on", "Make it safe.", false}, {"drain V-14 runs dry", "PG-3 reads nothing still", "Make it safe.", false},
		{"drain V-14 runs dry", "V-14 runs dry", "Make it safe. V-14 is seen dry.", false}, {"drain V-14 runs dry", "V-14 runs dry", "Make it safe. V-15 is seen dry.", true},
	} {
		text := strings.Replace(wetPump, "drain V-14 runs dry", c.proved, 1)
		toldJust(t, "proved-late", text+"PUT", []warned{{"      - {step: safe, do: " + c.lock + ", lock: [motor, suction]}\n      - {step: open, do: \"Lift the casing off by hand, two people.\", people: 2, remove: [casing], into: C1, open: [box]}\n      - {step: prove, do: Look at it., seen: [\"" + c.seen + "\"]}\n", c.told}})
	}
}

func TestFilledWhenItHoldsWhatIsFilled(t *testing.T) {
	t.Parallel()
	off, on := func(p string) string { return "      - {step: off, do: Take it off., remove: [" + p + "], into: C1}\n" }, func(p string) string { return "      - {step: on, do: Put it on., fit: [" + p + "]}\n" }
	var cases []warned
	for _, c := range []struct {
		words string
		told  bool // with the drain plug off
	}{
		{"Fill the bearing with oil.", true}, {"Clean it and fill it with oil to the glass.", true}, {"Fill both housings with oil VG 46.", true}, {"Pour the oil in slowly.", true},
		{"Fill with oil, 48 l.", true}, {"Refill the sump.", true}, {"Then fill each housing to its mark.", true}, {"Top up the oil.", true},
		{"Fill in the form.", false}, {"Fill the groove with grease.", false}, {"Fill the boxes below.", false}, {"Do not fill it yet.", false}, {"Fill the can with oil.", false},
		{"It is filled at step 9.", false}, {"Look at the oil filler.", false}, {"Fill the columns of the report.", false}, {"If it is dry, fill it later.", false},
		{"Do not forget: never fill it hot.", false}, {"Wipe the filler clean.", false}, {"Einfüllen.", false},
		{"Pour 4 litres of oil in.", true}, {"Fill 4 litres of oil.", true}, {"New oil: 4 litres.", true}, {"Charge 4 litres.", true}, {"Put new oil in.", true}, {"Fill it with coolant.", true}, {"Fill oil in to the middle of the glass.", true}, {"Fill gearbox with VG 220.", true}, {"Fill up with water.", true},
		{"Fill the crate with shavings.", false}, {"Fill the threads with anti-seize.", false}, {"Fill the holes with wax.", false}, {"Fill the gap with sealing compound.", false}, {"Fill the cleaning tank with diesel.", false},
		{"Fill the bearing with flushing oil and let it run out at the drain.", false}, {"Fill it with rags.", false}, {"Top up the washer.", false}, {"Fill the scratches with filler.", false}, {"Fill each pocket of the crate.", false}, {"Fill the bearing with grease.", false},
		{"Put the bolts in.", false}, {"Charge the battery of the lamp.", false}, {"Put the oil pipe in.", false}, {"New oil is in the store.", false}, {"Pour the oil out.", false}, {"Fill the cracks in the grout with mortar.", false},
		{"Add 4 litres of oil.", true}, {"Oil in: 4 litres.", true}, {"Fill each bolt hole with oil.", false}, {"Put oil into the threads.", false}, {"Fill the spray bottle with water.", false}, {"Top up the water of the truck.", false},
	} {
		act := "      - {step: act, do: \"" + c.words + "\"}\n"
		plug, cover := off("drain-plug")+act+on("drain-plug"), off("cover")+act+on("cover")
		cases = append(cases, warned{plug, c.told}, warned{cover, c.told && strings.Contains(c.words, "bearing")}, warned{off("drain-plug") + on("drain-plug") + act, false}, warned{act + off("drain-plug") + on("drain-plug"), false})
	}
	toldJust(t, "fill-open", wetPump+"PUT", cases)
	fill := func(words string) string { return "      - {step: act, do: \"" + words + "\"}\n" }
	for _, c := range []struct {
		plugs, words string
		told         bool
	}{
		{"Drain plug of the gear case", "Fill the gear case with oil.", true}, {"Drain plug of the gear case", "Fill the bearing with oil.", false}, {"Case drain plug", "Fill the gear case with oil.", true}, {"Pump drain plug", "Fill the gearbox with oil.", false},
		{"Drain plug M24", "Fill the gearbox with oil.", true}, {"Oil drain plug", "Fill both gearboxes.", true}, {"Drain plug}\n  other: {name: Drain screw", "Fill the gearbox with oil.", false}, {"Drain pipe", "Fill it.", false},
	} {
		text := strings.Replace(wetPump, "name: Drain plug", "name: "+c.plugs, 1)
		toldJust(t, "fill-open", text+"PUT", []warned{{off("drain-plug") + fill(c.words) + on("drain-plug"), c.told}})
	}
}

func TestOilIsLookedForWhenItIsIn(t *testing.T) {
	t.Parallel()
	line := map[string]string{
		"drain": "do: Drain the oil.", "fill": "do: Fill the bearings with new oil.", "look": "do: Look at both ends., seen: [oil at the middle of both glasses]", "other": "do: Look at it., seen: [oil pipe tight]",
	}
	toldWhere(t, "no-oil-yet", func(t *rapid.T) (string, bool) {
		order := anyOrder(t, "drain", "fill", "look", "other")
		at := func(act string) int { return slices.Index(order, act) }
		return wetPump + stepLines(order, line), at("drain") < at("look") && at("look") < at("fill")
	})
	toldJust(t, "no-oil-yet", wetPump+"PUT", []warned{
		{"      - {step: a, do: Let the oil off.}\n      - {step: b, do: Look., seen: [oil stands in the middle of the glass]}\n      - {step: c, do: Fill it with oil.}\n", true},
		{"      - {step: a, do: Let the oil off.}\n      - {step: b, do: \"Fill it with oil.\", seen: [oil at the middle of the glass]}\n", false},
		{"      - {step: a, do: Drain the water.}\n      - {step: b, do: Look., seen: [oil at the middle of the glass]}\n      - {step: c, do: Fill it with water.}\n", false},
		{"      - {step: a, do: Drain the oil.}\n      - {step: b, do: Look., seen: [no oil in the glass]}\n      - {step: c, do: Fill it with oil.}\n", false},
		{"      - {step: a, do: Drain the oil.}\n      - {step: b, do: Look., seen: [oil glass clean]}\n      - {step: c, do: Fill it with oil.}\n", false},
		{"      - {step: a, do: Drain the seal oil pot.}\n      - {step: b, do: Look., seen: [oil at the middle of the glass]}\n      - {step: c, do: Fill it with oil.}\n", false},
		{"      - {step: a, do: Drain the oil cooler.}\n      - {step: b, do: Look., seen: [oil at the middle of the glass]}\n      - {step: c, do: Fill it with oil.}\n", false},
		{"      - {step: a, do: Let the oil drip off the wheel.}\n      - {step: b, do: Look., seen: [oil at the middle of the glass]}\n      - {step: c, do: Fill it with oil.}\n", false},
		{"      - {step: a, do: Drain the oil.}\n      - {step: b, do: Pour 4 litres of oil into the gear case.}\n      - {step: c, do: Look., seen: [oil at the middle of the glass]}\n      - {step: d, do: Top up the oil to the glass.}\n", false},
		{"      - {step: a, do: Read the level., seen: [oil at the mark]}\n      - {step: b, do: Drain the oil.}\n      - {step: c, do: Fill it with oil.}\n", false},
	})
}

// A film of oil and the oil of a cooler tell nothing of how much there is, and what is filled first
// may be said by its litres.
func TestOilThatIsNoLevel(t *testing.T) {
	t.Parallel()
	var cases []warned
	for _, c := range []struct {
		seen string
		told bool
	}{
		{"oil at the middle of both glasses", true}, {"oil level in both bearings", true}, {"oil stands at the mark of the glass", true}, {"oil up to the upper notch", false}, {"oil level at the notch", true},
		{"film of oil on the bearings", false}, {"oil on the bearings wiped off", false}, {"oil in the bearing housings is out", false}, {"oil on both bearings", false}, {"oil in the bearing", false},
		{"oil on the glass wiped off", false}, {"drops of oil on the glass", false}, {"oil glass whole", false}, {"oil stick clean", false}, {"oil pipes of the bearings tight", false},
	} {
		cases = append(cases, warned{"      - {step: a, do: Drain the oil.}\n      - {step: b, do: Look., seen: [" + c.seen + "]}\n      - {step: c, do: Fill it with oil.}\n", c.told})
	}
	toldJust(t, "no-oil-yet", wetPump+"PUT", cases)
	cases = nil
	for _, c := range []struct {
		drain, fill, after string
		told               bool
	}{
		{"Drain the oil.", "Sweep the floor.", "Fill it with oil.", true}, {"Drain the oil.", "Sweep the floor.", "Pour 4 litres of oil into the gear case.", true}, {"Drain the oil.", "Sweep the floor.", "New oil: 4 litres.", true}, {"Drain the oil.", "Fill the sump with water.", "Fill it with oil.", true},
		{"Drain the oil.", "Pour 4 litres of oil into the gear case.", "Top up the oil to the glass.", false}, {"Drain the oil.", "Fill 4 litres of oil.", "Top up the oil to the glass.", false}, {"Drain the oil.", "New oil: 4 litres.", "Top up the oil to the glass.", false},
		{"Drain the oil.", "Charge 4 litres.", "Top up the oil to the glass.", false}, {"Drain the oil.", "Fill it with oil.", "Fill the sump with water.", false}, {"Drain the oil.", "Put new oil in, 4 litres.", "Fill the oiler with oil.", false},
		{"Drain the oil.", "Refill the gear case.", "Fill it with oil.", false}, {"Drain the oil of the jack.", "Sweep the floor.", "Fill it with oil.", false}, {"Let the oil warm up.", "Sweep the floor.", "Fill it with oil.", false},
		{"Read it before the oil is drained.", "Sweep the floor.", "Fill it with oil.", false}, {"Drain the oil filter.", "Sweep the floor.", "Fill it with oil.", false}, {"Drain the water out of the oil tank.", "Sweep the floor.", "Fill it with oil.", false},
	} {
		act := func(step, words string) string { return "      - {step: " + step + ", do: \"" + words + "\"}\n" }
		cases = append(cases, warned{act("a", c.drain) + act("b", c.fill) + act("c", "Start the pump.") + act("d", c.after), c.told})
	}
	toldJust(t, "runs-dry", wetPump+"PUT", cases)
}

// No machine is given back to its drive, started or run between the draining and the filling.
func TestNothingRunsWithoutOil(t *testing.T) {
	t.Parallel()
	acts := map[string]bool{
		"do: Take the locks off., unlock: [motor, suction]": true, "do: Start the pump and listen.": true, "do: Run it for one hour.": true, "do: \"Everybody clear, take the locks off.\", unlock: [motor]": true,
		"do: Take the lock off the valve., unlock: [suction]": false, "do: Run the motor for ten minutes uncoupled.": false, "do: Turn the pump by hand.": false, "do: Try which way it runs., unlock-for-now: [motor], lock-again: [motor]": false,
		"do: Start the nuts by hand.": false, "do: Look at the start button.": false, "do: Fit the starter.": false,
	}
	list := make([]string, 0, len(acts))
	for a := range acts {
		list = append(list, a)
	}
	slices.Sort(list)
	toldWhere(t, "runs-dry", func(t *rapid.T) (string, bool) {
		act := rapid.SampledFrom(list).Draw(t, "act")
		line := map[string]string{"drain": "do: Let the oil off.", "fill": "do: Fill both bearings with oil.", "run": act, "other": "do: Sweep the floor."}
		order := anyOrder(t, "drain", "fill", "run", "other")
		at := func(act string) int { return slices.Index(order, act) }
		text := wetPump + "      - {step: safe, do: Make it safe., lock: [motor, suction]}\n" + stepLines(order, line)
		return text, acts[act] && at("drain") < at("run") && at("run") < at("fill")
	})
}

// What is looked at inside is looked at when something is open.
func TestNothingIsSeenInsideBeforeItIsOpen(t *testing.T) {
	t.Parallel()
	const open, shut = "      - {step: open, do: \"Lift the casing off by hand, two people.\", people: 2, remove: [casing], into: C1, open: [box]}\n", "      - {step: shut, do: \"Put the casing on, two people.\", people: 2, fit: [casing], close: [box]}\n"
	var cases []warned
	for _, c := range []struct {
		seen string
		told bool
	}{
		{"nothing left inside", true}, {"casing clean", false}, {"no rags left in the casing", true}, {"no tools inside", true}, {"nothing loose in the pump", true}, {"casing free of chips", true},
		{"casing empty", false}, {"nobody inside", false}, {"casing drained and dry inside", false}, {"inside cold by thermometer", false}, {"no noise inside", false},
		{"strap tight", false}, {"nobody in the area", false}, {"V-14 runs dry", false}, {"rotor stands still", false}, {"no pressure inside", false}, {"oil in the glass", false},
		{"no rags in the pump pit", false}, {"ladder stands inside the bund", false}, {"floor inside the tent clean", false}, {"tags inside the casing box", false}, {"no oil inside the casing foot", false},
		{"level of oil inside casing at the mark", false}, {"nothing left in the crate", false}, {"no tools in the pump frame", false}, {"lamp inside the shelter on", false}, {"no rags left in the trench", false}, {"no rags left in the pump", true}, {"no wedges in the casing", true},
	} {
		act := "      - {step: act, do: Look., seen: [\"" + c.seen + "\"]}\n"
		cases = append(cases, warned{act + open + shut, c.told}, warned{open + act + shut, false})
	}
	toldJust(t, "seen-unopened", wetPump+"PUT", cases)
}
