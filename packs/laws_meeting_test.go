package packs_test

import (
	"fmt"
	"os"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"matchmark/packs/job"
)

// A spacer was ticked as meeting its marks before the hub on its other side was on. A mark across
// a joint meets when both sides of it are on and stand, in whatever order they go on, and whether
// the rotor between them hangs for a while or not. Common practice, no source.
func TestMarksMeetWhenBothSidesAreOn(t *testing.T) {
	t.Parallel()
	text, err := os.ReadFile("../testdata/bad/open-at-unlock-hanging.yaml")
	if err != nil {
		t.Fatal(err)
	}
	head, _, _ := strings.Cut(string(text), "permits:\n")
	head, _, _ = strings.Cut(head, "openings:\n")
	_, rest, _ := strings.Cut(string(text), "big:\n")
	rest, _, _ = strings.Cut(rest, "permits:\n")
	head += "  left: {name: Left hub}\n  right: {name: Right hub}\ncontainers:\n  C1: {name: Hubs, kind: box, keep: dry}\nbig:\n" + rest
	pairs := [][2]string{{"left", "rotor"}, {"rotor", "left"}, {"right", "rotor"}, {"rotor", "right"}, {"left", "right"}, {"right", "left"}}
	met := map[bool]int{}
	rapid.Check(t, func(t *rapid.T) {
		marks, across := "", map[string]string{}
		for _, p := range rapid.Permutation(pairs).Draw(t, "marks")[:rapid.IntRange(1, 3).Draw(t, "how many")] {
			if across[p[0]] != "" {
				continue
			}
			across[p[0]] = p[1]
			marks += fmt.Sprintf(", {%s: %s}", p[0], p[1])
		}
		text := head + "steps:\n  - {step: mark, do: Punch them., match-marks: [" + marks[2:] + "]}\n"
		for _, p := range rapid.Permutation([]string{"left", "rotor", "right"}).Draw(t, "off") {
			text += "  - {step: off-" + p + ", do: Off it comes., remove: [" + p + "], into: " + map[bool]string{true: "Y1, lift: [L1]", false: "C1"}[p == "rotor"] + "}\n"
		}
		acts := rapid.Permutation([]string{"left", "rotor", "right", "stands"}).Draw(t, "on")
		hangs := slices.Index(acts, "rotor") < slices.Index(acts, "stands")
		at := map[string]int{}
		for i, p := range acts {
			under := "" // what stands below a rotor that hangs
			if hangs && i > slices.Index(acts, "rotor") && i < slices.Index(acts, "stands") {
				under = ", under-load: two blocks"
			}
			switch {
			case p == "stands" && !hangs:
				text += "  - {step: on-stands, do: Look round.}\n"
				continue
			case p == "stands":
				text += "  - {step: on-stands, do: Set it down., lift: [L1]}\n"
				at["rotor"] = i
				continue
			case p == "rotor":
				text += "  - {step: on-rotor, do: Lower it in., lift: [L1], fit: [rotor]}\n"
			default:
				text += "  - {step: on-" + p + ", do: Put it on., fit: [" + p + "]" + under + "}\n"
			}
			at[p] = i
		}
		jb, problems := loadLaw(text)
		if problems.Errors() > 0 {
			t.Fatalf("%v\n%s", problems, text)
		}
		want := map[string]string{}
		for p, q := range across {
			last := at[p]
			if at[q] > last {
				last = at[q]
			}
			want[p] = "on-" + acts[last]
			met[want[p] == "on-"+p]++
		}
		if got := meetings(jb); fmt.Sprint(got) != fmt.Sprint(want) {
			t.Fatalf("the marks meet at %v, want %v\n%s", got, want, text)
		}
	})
	if met[true] == 0 || met[false] == 0 {
		t.Errorf("only one kind of order was met: %v", met)
	}
}

// meetings are the steps at which the paper has a box for the mark of each part, by the part.
func meetings(j *job.Job) map[string]string {
	out := map[string]string{}
	for _, st := range j.Steps() {
		for _, p := range st.Meet {
			out[p.Key] += st.Key
		}
		for _, m := range st.Fit {
			if m.MeetsAt == nil && m.Part.Meets == nil && m.Part.MarkedAbove(st) != nil {
				out[m.Part.Key] += st.Key
			}
		}
	}
	return out
}

// What is put together at the bench meets there, whatever it was marked to lies beside it; of a
// trial after which it comes off again nothing meets; and a new piece across it has no mark.
func TestMarksMeetOnceForGood(t *testing.T) {
	t.Parallel()
	const head = lawHead + "parts: {rotor: {name: Rotor}, hub: {name: HubOF}, wheel: {name: WheelOFRENEW}}\ncontainers: {C1: {name: All, kind: box, keep: dry}}\nsteps:\n" +
		"  - {step: mark, do: Punch them., match-marks: [{hub: wheel}]}\nROTOR  - {step: wheel-off, do: Off., BENCHremove: [wheel], into: INTO}\n  - {step: hub-off, do: Off., BENCHremove: [hub], into: C1}\n"
	const on, wheel = "  - {step: on, do: On., BENCHfit: [hub]}\n", "  - {step: wheel, do: On., BENCHfit: [wheel]}\n"
	for _, x := range []struct{ steps, bench, renew, want string }{
		{on + wheel, "", "", "wheel"},
		{on + wheel, "where: bench, ", "", "on"},
		{on + "  - {step: off, do: Off., remove: [hub], into: C1}\n" + wheel + "  - {step: again, do: On., fit: [hub]}\n", "", "", "again"},
		{on + wheel, "", ", renew: always", ""},
	} {
		into, of, off := "C1", "", ""
		if x.bench != "" {
			of, off = ", of: rotor", "  - {step: rotor-off, do: Off., remove: [rotor], into: bench}\n"
			x.steps += "  - {step: rotor-on, do: In., fit: [rotor]}\n"
		}
		if x.renew != "" {
			into = "scrap"
		}
		jb, problems := loadLaw(strings.NewReplacer("BENCH", x.bench, "RENEW", x.renew, "INTO", into, "OF", of, "ROTOR", off).Replace(head + x.steps))
		if problems.Errors() > 0 {
			t.Fatalf("%v\n%s", problems, x.steps)
		}
		if got := meetings(jb)["hub"]; got != x.want {
			t.Errorf("%+v: the marks meet at %q", x, got)
		}
	}
}
