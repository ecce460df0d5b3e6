package packs_test

import (
	"os"
	"strings"
	"testing"

	"matchmark/packs"
	"matchmark/packs/job"
	"matchmark/packs/source"
)

// loaded loads a definition of testdata, with its job and site files if wanted.
func loaded(t *testing.T, in packs.Inputs) *job.Job {
	t.Helper()
	jb, problems := packs.Load(os.DirFS("../testdata/good"), in)
	if len(problems) > 0 {
		t.Fatalf("%s: %v", in.Definition, problems)
	}
	return jb
}

// told are the steps of a job as "key: what it says, measures and removes".
func told(j *job.Job) string {
	var out []string
	for _, s := range j.Sections {
		for _, st := range s.Steps {
			line := st.Key + ":"
			for _, m := range st.Remove {
				line += " -" + m.Part.Key
			}
			for _, m := range st.Fit {
				line += " +" + m.Part.Key
			}
			for _, d := range st.Measure {
				line += " " + d.Mark
			}
			for _, a := range st.After {
				line += " after " + a.Step.Key
			}
			out = append(out, line)
		}
	}
	return strings.Join(out, "\n")
}

// One definition gives two machines: what is left out is gone from steps, lists,
// readings, containers and holds, and the order goes on over the gap.
func TestTheSameDefinitionForTwoMachines(t *testing.T) {
	early := loaded(t, packs.Inputs{Definition: "variants.yaml"})
	if got, want := told(early), strings.Join([]string{
		"ejector: -pipe -orifice D2", "packing: -ring D1 after ejector", "nuts: -nut after packing",
		"nuts: +nut", "packing: +ring", "ejector: +orifice +pipe",
	}, "\n"); got != want {
		t.Errorf("with ejector, packed seal:\n%s\nwant\n%s", got, want)
	}
	late := loaded(t, packs.Inputs{Definition: "variants.yaml", Job: "variants.job.yaml", Site: "variants.site.yaml"})
	if got, want := told(late), strings.Join([]string{
		// nuts came after packing; it is left out, and what it came after stands in for it.
		"ejector:", "face: -face after ejector", "nuts: -nut after ejector after face",
		"nuts: +nut", "face: +face",
	}, "\n"); got != want {
		t.Errorf("without ejector, face seal:\n%s\nwant\n%s", got, want)
	}
	if s := late.Sections[0].Steps[0].Do; !strings.Contains(s, "plug") {
		t.Errorf("the step for the ejector says %q, want what is done otherwise", s)
	}
	if n := len(early.Dims); n != 2 || len(late.Dims) != 0 {
		t.Errorf("%d and %d dimensions, want 2 and none", n, len(late.Dims))
	}
	if len(early.Holds) != 1 || len(late.Holds) != 0 || len(early.Sets) != 1 || len(late.Sets) != 0 {
		t.Error("the hold and the matched set of the ejector do not come and go with it")
	}
	for _, c := range []struct {
		jb   *job.Job
		nuts int
		box  string
	}{{early, 28, "C1 C2"}, {late, 24, "C2 C3"}} {
		for _, p := range c.jb.Parts {
			if p.Key == "nut" && p.Count != c.nuts {
				t.Errorf("%s has %d nuts, want %d", c.jb.Equipment.Serial, p.Count, c.nuts)
			}
		}
		var boxes []string
		for _, x := range c.jb.Containers {
			boxes = append(boxes, x.Mark)
		}
		if got := strings.Join(boxes, " "); got != c.box {
			t.Errorf("%s has the containers %s, want %s", c.jb.Equipment.Serial, got, c.box)
		}
	}
}

// The front sheet names each choice; the serial number tells the build of the
// studs, and the job file the rest.
func TestWhatWasChosenIsKept(t *testing.T) {
	j := loaded(t, packs.Inputs{Definition: "variants.yaml", Job: "variants.job.yaml", Site: "variants.site.yaml"})
	for i, want := range []job.Choice{
		{Key: "ejector", What: "Priming ejector"},
		{Key: "studs", What: "Joint studs", Build: "old-studs", Means: "serials up to TH-0417", Serial: "TH-0410"},
		{Key: "seal", What: "Shaft seal", Build: "faced", Means: "face seal"},
	} {
		got := *j.Choices[i]
		got.At = source.Pos{}
		if got != want {
			t.Errorf("choice %d is %+v, want %+v", i, got, want)
		}
	}
	if got := strings.Join(j.NotHere, " "); got != "C1 D1 D2 S1 W1" {
		t.Errorf("not on this machine are %s", got)
	}
	s := j.Site
	if s.Company == "" || s.Paper != "letter" || s.Heavy.Text() != "20 kg" || s.FireWatch.Text() != "90 min" || !s.Gloves || len(s.Roles) != 3 {
		t.Errorf("the site file reads as %+v", s)
	}
	usual := loaded(t, packs.Inputs{Definition: "variants.yaml"}).Site
	if usual.Paper != "" || usual.Heavy.Text() != "25 kg" || usual.FireWatch.Text() != "60 min" || usual.Gloves {
		t.Errorf("without a site file the site is %+v", usual)
	}
}

// Serial numbers are compared as numbers behind the same letters; where no range
// holds, nothing is guessed.
func TestSerialRanges(t *testing.T) {
	const text = `pack: 1
equipment: {tag: P-1, name: Pump, serial: SERIAL}
job: {number: "1", title: Check, revision: A, issued: 2026-03-02}
options: {build: {what: Build, builds: {a: serials up to TH-99, b: serials TH-100 to TH-1999, c: serials from TH-2000}}}
steps: [{step: s, do: Look.}]
`
	for serial, want := range map[string]string{
		"TH-99": "a", "TH-0099": "a", "TH-100": "b", "TH-1999": "b", "TH-2000": "c", "TH-10000": "c", "TH-1": "a",
		"TX-5": "", "5": "", "TH-": "", "TH-5b": "",
	} {
		jb, problems := packs.Load(mapFS("p.yaml", strings.Replace(text, "SERIAL", `"`+serial+`"`, 1)), packs.Inputs{Definition: "p.yaml"})
		if got := jb.Choices[0].Build; got != want {
			t.Errorf("serial %s is of build %q, want %q", serial, got, want)
		}
		if told := len(problems) == 1 && problems[0].Code == "not-chosen"; told != (want == "") {
			t.Errorf("serial %s: %v", serial, problems)
		}
	}
}
