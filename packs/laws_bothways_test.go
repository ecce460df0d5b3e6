package packs_test

import (
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"matchmark/packs/job"
)

// The usual wordings of what comes off for a while and is ticked when it is on again: told
// just where the words end with it out. Common practice, no source.
func TestWhatIsTickedOnAgainIsOnByTheWords(t *testing.T) {
	t.Parallel()
	toldJust(t, "left-out-in-words", lawHead+`parts: {cover: {name: Cover}}
containers: {C1: {name: Cover, kind: crate, keep: dry}}
steps:
  - {step: off, remove: [cover], into: C1, PUT}
`, []warned{
		{`do: "Strap off, turn the shaft.", seen: [strap on again]`, true},
		{`do: "Drain plug out, drain the oil.", seen: [drain plug in again]`, true},
		{`do: "Locking pin out. Bar the rotor round.", seen: [the locking pin is in again]`, true},
		{`do: "Strap off, turn the shaft. Strap on.", seen: [strap on again]`, false},
		{`do: "Take the strap off, turn the shaft, put it on again.", seen: [strap on again]`, false},
		{`do: "Strap off for the reading only, then re-strap.", seen: [strap on again]`, false},
		{`do: "Drain the oil, drain plug in again.", seen: [drain plug in again]`, false},
		{`do: "Drain plug out, drain the oil, then seal it.", seen: [drain plug in again]`, false},
		{`do: "Take the cover off.", seen: [vent plug in again]`, false},
		{`do: "Vent open while it drains, then close the vent.", seen: [vent shut again]`, false},
		{`do: "Pin out, bar the rotor round, drive the pin home.", seen: [pin in again]`, false},
		{`do: "Strap off. Turn the shaft.", note: "The strap goes on before the cover is lifted.", seen: [strap on again]`, false},
		{`do: "Strap off, turn, wind it round twice and hook it.", seen: [strap on again]`, false},
		{`do: "Strap off, turn, tie it round the rim.", seen: [strap on again]`, false},
		{`do: "Strap off, turn with the hook.", seen: [strap on again]`, true},
		{`do: "Strap off, turn the shaft.", seen: [nobody near the shaft]`, false},
		{`do: "Strap off, turn the shaft.", seen: [shaft stands still]`, false},
	})
}

// The same on the way back: told just where the words of the row take out, and put on again,
// what the step ticks, and the row does not. Common practice, no source.
func TestWhatIsTickedInTakingApartIsTickedOnTheWayBack(t *testing.T) {
	t.Parallel()
	toldJust(t, "unticked-back", lawHead+`parts: {cover: {name: Cover}}
containers: {C1: {name: Cover, kind: crate, keep: dry}}
steps:
  - {step: off, do: "Strap off, turn the shaft, strap on, cover off.", remove: [cover], into: C1, PUT}
`, []warned{
		{`seen: [strap on again], back: "Cover on. Strap off, turn the shaft, strap on."`, true},
		{`seen: [both straps on again], back: "Strap off, turn, strap on, cover on."`, false},
		{`seen: [strap on again], back-seen: [strap on again], back: "Cover on. Strap off, turn the shaft, strap on."`, false},
		{`seen: [strap on again], back-seen: [the shaft is strapped], back: "Cover on. Strap off, turn the shaft, strap on."`, false},
		{`seen: [strap on again], back: "Cover on."`, false},
		{`seen: [strap on again], back: "Cover on by its marks, strap still on."`, false},
		{`seen: [strap on again], back: "Cover on. Strap off for good."`, false},
		{`seen: [strap tight], back: "Cover on. Strap off, turn the shaft, strap on."`, false},
		{`back: "Cover on. Strap off, turn the shaft, strap on."`, false},
		{`seen: [oil level in the glass], back: "Cover on. Strap off, turn the shaft, strap on."`, false},
	})
}

// A tick of the put-back row stands above all else that the row does where it is written above
// back:, and else below all of it, wherever the author writes it among the other keys.
func TestTicksOfThePutBackRowStandByItsWords(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		keys := rapid.Permutation([]string{"measure: [D1]", "loosen: [J1]", "remove: [bolt, cover]", "open: [top]", "seen: [gauge at zero]", "back-seen: [strap on again, plug in again]", `back: "On again."`, "into: C1"}).Draw(t, "keys")
		if rapid.Bool().Draw(t, "without words") {
			keys = slices.DeleteFunc(keys, func(k string) bool { return strings.HasPrefix(k, "back: ") })
		}
		at := func(key string) int {
			return slices.IndexFunc(keys, func(k string) bool { return strings.HasPrefix(k, key) })
		}
		above := at("back-seen: ") < at("back: ") // at is -1 without words
		jb, _ := codesOf(lawHead + `parts: {cover: {name: Cover}, bolt: {name: Bolt, count: 4}, wall: {name: Tank}}
containers: {C1: {name: Cover, kind: crate, keep: dry}}
joints: {J1: {what: Bolts, parts: [bolt], torque: 40 N·m, source: sheet 1}}
openings: {top: {what: Top, cover: sheet}}
dimensions: {D1: {what: Gap, kind: gap, from: {cover: edge}, to: {wall: edge}, nominal: 5.0 mm, left: 4.0 to 6.0 mm, source: sheet 2}}
steps:
  - {step: off, do: Off., ` + strings.Join(keys, ", ") + `}
`)
		rows := stepsOf(jb)
		row := rows[len(rows)-1]
		acts := slices.DeleteFunc(row.Acts(), func(a job.Act) bool { return a.Verb == job.DoEmpty }) // that stands with what is put away
		if row.Undoes == nil || len(row.Seen) != 2 || len(acts) < 6 {
			t.Fatalf("the row has %d ticks and %d acts", len(row.Seen), len(acts))
		}
		for i, a := range acts {
			if ticks := above && i < 2 || !above && i >= len(acts)-2; (a.Verb == job.DoSee) != ticks {
				t.Fatalf("act %d of %d is of verb %d; the ticks stand above: %t", i+1, len(acts), a.Verb, above)
			}
		}
	})
}

// A hand hole that one step opens and closes: told just where it is closed above the line
// that opens it, and what is looked at inside just where that stands below the closing. As one
// that a person can be in, it is counted before it is closed. Common practice, no source.
func TestAnOpeningOfOneStep(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		verbs := rapid.Permutation([]string{"open: [hole]", "seen: [no rag in the pump]", "tool-count: yes", "close: [hole]"}).Draw(t, "verbs")
		enclosed := rapid.SampledFrom([]string{"no", "yes"}).Draw(t, "enclosed")
		text := lawHead + `permits: {in: {what: Entry permit}}
openings: {hole: {what: Hand hole, cover: its lid, enclosed: ` + enclosed + `}}
steps:
  - {step: look, do: "Open the hand hole, look in, shut it.", permit: [in], ` + strings.Join(verbs, ", ") + `}
`
		at := func(verb string) int {
			return slices.IndexFunc(verbs, func(s string) bool { return strings.HasPrefix(s, verb) })
		}
		var want []string
		opened, closed := at("open"), at("close")
		if enclosed == "yes" && opened < closed && (at("tool") < opened || at("tool") > closed) {
			want = append(want, "closed-uncounted")
		}
		if opened < closed && at("seen") > closed {
			want = append(want, "seen-shut")
		}
		if closed < opened {
			want = append(want, "wrong-way-round")
		}
		if got := toldOf(text, "wrong-way-round", "closed-uncounted", "seen-shut", "never-closed", "never-opened"); !slices.Equal(got, want) {
			if closed < opened && slices.Contains(got, "wrong-way-round") {
				return // what else it means is told from a machine that is open at the end
			}
			t.Fatalf("told %v, want %v\n%s", got, want, text)
		}
	})
}

// The face of a dimension at each of its places, and by the build of the machine.
func TestTheFaceDiffersByPlace(t *testing.T) {
	t.Parallel()
	text := lawHead + `options: {hub: {what: Hub, builds: {old: serials up to 9, new: serials from 10}}}
places: {jaw: {A: {name: jaw A}, B: {name: jaw B}, C: {name: jaw C}}}
parts: {hub: {name: Hub}, half: {name: Half}}
dimensions:
  D1: {what: Play, each: jaw, kind: gap, from: {hub: FROM}, to: {half: {A: tooth 1, others: tooth 2}}, nominal: 1.0 mm, left: 0.5 to 1.5 mm, source: sheet 2}
steps:
  - {step: read, do: Read., measure: [D1]}
`
	jb, codes := codesOf(strings.Replace(text, "FROM", "{A: flank 1, B: flank 2, C: flank 3}", 1))
	var got []string
	for _, d := range jb.Dims {
		got = append(got, d.Mark+" "+d.From.Name+" to "+d.To.Name)
	}
	if want := []string{"D1/A flank 1 to tooth 1", "D1/B flank 2 to tooth 2", "D1/C flank 3 to tooth 2"}; !slices.Equal(got, want) {
		t.Errorf("%q (%v), want %q", got, codes, want)
	}
	if _, codes := codesOf(strings.Replace(text, "FROM", "{A: flank 1, B: flank 2}", 1)); !slices.Contains(codes, "place-left-out") {
		t.Errorf("a place without a face: told %v", codes)
	}
	if _, codes := codesOf(strings.Replace(text, "FROM", "{A: flank 1, D: flank 2, others: flank 3}", 1)); !slices.Contains(codes, "unknown-name") {
		t.Errorf("a face of a place that there is not: told %v", codes)
	}
}

// The part across the joint of a mark: as written, at the step that makes it or where it meets;
// from a matched set of two where one is behind the other, if that is no pin or key; none where
// neither says.
func TestMarksStandAcrossTwoParts(t *testing.T) {
	t.Parallel()
	const text = lawHead + `places: {end: {DE: {name: drive end}, NDE: {name: other end}}}
parts:
  hub: {name: Hub}
  half: {name: Half hub, each: end}
  cap: {name: Cap, each: end, set: S1}
  foot: {name: Foot, each: end, set: S1, behind: [cap]}
  ring: {name: Wear ring, each: end, set: S2}
  peg: {name: Peg, each: end, set: S2, behind: [ring]}
containers: {C1: {name: Parts, kind: crate, keep: dry}}
sets: {S1: {what: Foot and cap, each: end, why: bored together}, S2: {what: Ring and peg, each: end, why: fitted}}
steps:
  - {step: off, do: "Mark all, take them off.", match-marks: [cap, ring, HUB], remove: [hub, cap, ring], into: C1}
  - {step: on, do: "All on by their marks.", fit: [ring, cap, hub], match-marks: [BACK]}
`
	for _, c := range []struct{ hub, back, want string }{
		{"hub", "hub", ""},
		{"{hub: half/NDE}", "hub", "half/NDE"},
		{"hub", "{hub: half/DE}", "half/DE"},
		{"{hub: half/DE}", "{hub: half/DE}", "half/DE"},
	} {
		jb, codes := codesOf(strings.NewReplacer("HUB", c.hub, "BACK", c.back).Replace(text))
		got := map[string]string{}
		for _, p := range jb.Parts {
			if p.Marked != nil && p.Across != nil {
				got[p.Place.Mark(p.Key)] = p.Across.Place.Mark(p.Across.Key)
			}
		}
		if got["cap/DE"] != "foot/DE" || got["cap/NDE"] != "foot/NDE" || got["ring/DE"] != "" || got["hub"] != c.want {
			t.Errorf("%s, %s: %v (%v), want hub across %q and each cap across its foot, no ring across its peg", c.hub, c.back, got, codes, c.want)
		}
	}
}
