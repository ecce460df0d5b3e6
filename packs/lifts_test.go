package packs_test

import (
	"os"
	"strings"
	"testing"
	"testing/fstest"

	"matchmark/packs"
	"matchmark/packs/job"
	"matchmark/packs/lift"
)

// edited loads a definition of testdata with some of its text replaced, and a job
// file beside it.
func edited(t *testing.T, name, jobFile string, swaps ...string) (*job.Job, string) {
	t.Helper()
	data, err := os.ReadFile("../testdata/good/" + name)
	if err != nil {
		t.Fatal(err)
	}
	text := string(data)
	for i := 0; i < len(swaps); i += 2 {
		if !strings.Contains(text, swaps[i]) {
			t.Fatalf("%s: nothing says %q", name, swaps[i])
		}
		text = strings.ReplaceAll(text, swaps[i], swaps[i+1])
	}
	files := fstest.MapFS{name: {Data: []byte(text)}}
	in := packs.Inputs{Definition: name}
	if jobFile != "" {
		files["job.yaml"] = &fstest.MapFile{Data: []byte(jobFile)}
		in.Job = "job.yaml"
	}
	jb, problems := packs.Load(files, in)
	var out []string
	for _, p := range problems {
		out = append(out, p.Code+": "+p.Message)
	}
	return jb, strings.Join(out, "\n")
}

// The crane and the slings of the day come from the job file, each as a whole.
func TestTheCraneOfTheDay(t *testing.T) {
	t.Parallel()
	jb, told := edited(t, "lift-casing.yaml", "cranes: {station: {what: Mobile crane, rated: 2.0 t, high-hook: 9 m}}\n")
	if got := jb.Lifts[0].Result.CraneShare; got < 0.8 || got > 0.95 {
		t.Errorf("a crane for 2 t is used %s", got.Percent())
	}
	if !strings.Contains(told, "critical lift") {
		t.Errorf("a hook used over 75 %% is no critical lift:\n%s", told)
	}
	_, told = edited(t, "lift-casing.yaml", "gear: {round-2t: {what: Round sling 0.5 t, kind: round sling, rated: 0.5 t, mass: 2 kg}}\n")
	if !strings.Contains(told, "must-not-lift: L1: Round sling 0.5 t, DE-DIS carries") {
		t.Errorf("a sling for 0.5 t is not overloaded:\n%s", told)
	}
}

// What a lift must not go without is a problem, and never a guess.
func TestLiftsAreNotGuessed(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		name, want string
		swaps      []string
	}{
		{"no mass", "the mass of the load is not given", []string{"    mass: 1480 kg\n    mass-from", "    mass-from"}},
		{"no source", "the mass has no source", []string{"    mass-from: drawing\n", ""}},
		{"no centre of gravity", "the centre of gravity is not known", []string{"    centre: [60 mm, 185 mm, -80 mm]\n", ""}},
		{"centre past the picks", "does not lie between the picks", []string{"centre: [60 mm,", "centre: [560 mm,"}},
		{"no basis", "by which basis the gear is rated", []string{"    rated-by: EN\n", ""}},
		{"no crane", "what the crane may lift is not given (0 kg)", []string{"    crane: station\n", ""}},
		{"too flat", "under 30°", []string{"hook-height: 1900 mm", "hook-height: 400 mm"}},
		{"shackle of another basis", "is rated by another basis", []string{"kind: shackle, rated: 3.25 t", "kind: shackle, rated-by: US, rated: 3.25 t"}},
		{"no person for another count", "no person is named", []string{"    hook-height: 1900 mm\n", "    hook-height: 1900 mm\n    four-legs: three of four\n    because: matched on the day\n"}},
	} {
		jb, told := edited(t, "lift-casing.yaml", "", c.swaps...)
		l := jb.Lifts[0]
		if !strings.Contains(told, "not-computed: L1 cannot be computed") || !strings.Contains(told, c.want) {
			t.Errorf("%s: check says\n%s", c.name, told)
		}
		if l.Result != nil || len(l.Because) == 0 || !strings.Contains(strings.ReplaceAll(strings.Join(l.Reasons(nil), "\n"), "\u00a0", " "), c.want) {
			t.Errorf("%s: the sheet has a result, or does not say why: %q", c.name, l.Reasons(nil))
		}
	}
}

// Slings in hand of one length hang the casing out of level, and the lift says
// which to shorten: with that done it hangs level.
func TestShorteningLevelsTheLoad(t *testing.T) {
	t.Parallel()
	with := func(lengths [4]string) (*job.Job, string) {
		swaps := []string{"    hook-height: 1900 mm\n", "    max-tilt: 12°\n"}
		for i, leg := range []string{"DE-DIS", "DE-SUC", "NDE-SUC", "NDE-DIS"} {
			swaps = append(swaps, "      "+leg+": {", "      "+leg+": {length: "+lengths[i]+", ")
		}
		return edited(t, "lift-casing.yaml", "", swaps...)
	}
	jb, told := with([4]string{"2100 mm", "2100 mm", "2100 mm", "2100 mm"})
	l := jb.Lifts[0]
	if l.Result == nil {
		t.Fatal(told)
	}
	if !l.OutOfLevel() || l.Result.Tilt.Lower == "" {
		t.Errorf("equal legs hang the load level: %+v", l.Result.Tilt)
	}
	var shorter [4]string
	for i, x := range l.Result.Legs {
		shorter[i] = packsLength(x.Length - x.Shorten)
	}
	jb, told = with(shorter)
	if got := jb.Lifts[0]; got.Result == nil || got.OutOfLevel() {
		t.Errorf("legs of %v do not hang it level:\n%s", shorter, told)
	}
}

func packsLength(m lift.Mm) string {
	return m.Size().String()
}

// A put-back row makes the lift again with which its step took the part off.
func TestLiftsGoBack(t *testing.T) {
	t.Parallel()
	jb, _ := edited(t, "lift-casing.yaml", "")
	for _, l := range jb.Lifts {
		var nos []string
		for _, st := range l.Steps {
			nos = append(nos, st.No)
		}
		if len(l.Steps) != 2 || l.Steps[0].Back || !l.Steps[1].Back {
			t.Errorf("%s is made at %v", l.Mark, nos)
		}
	}
}

// After a trial fit the load counted as left hanging, and at its row on the lift sheet nearly
// all stops stood struck.
func TestTheLoadOfATrialFit(t *testing.T) {
	t.Parallel()
	jb, told := edited(t, "lift-casing.yaml", "", "  - section: Rotor\n    steps:\n", `  - section: Rotor
    steps:
      - step: trial
        after: {casing: it is off}
        do: Lift the casing on for a trial fit by the lift sheet.
        lift: [L1]
        fit-for-now: [casing]
      - step: trial-out
        after: {trial: the fit is seen}
        do: Lift the casing off again by the lift sheet.
        lift: [L1]
        take-out-again: [casing]
`, "after: {casing: the rotor is under it}", "after: {trial-out: the rotor is under it}")
	l := jb.Lifts[0]
	if len(l.Steps) != 4 {
		t.Fatalf("%d steps make the lift, want 4 (off, on, off, on):\n%s", len(l.Steps), told)
	}
	for _, st := range l.Steps {
		if len(st.LeftHanging)+len(st.GoesOn) > 0 {
			t.Errorf("step %s: the load hangs before or after it", st.No)
		}
		in := l.PutOnBy(st)
		if !l.Meets(st, job.StopSetDown) || !l.Meets(st, job.StopSeat) || l.Meets(st, job.StopComing) != in || l.Meets(st, job.StopGoingUp) == in {
			t.Errorf("step %s: stops struck that must be met, or met that must be struck", st.No)
		}
	}
}
