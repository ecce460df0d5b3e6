package templates

import (
	"slices"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/words"
)

// A hold that stands again at the put-back row is released there, not once more at its step.
func TestAHoldIsReleasedAtBothItsSteps(t *testing.T) {
	t.Parallel()
	apart, back, last := &job.Step{No: "1.2"}, &job.Step{No: "R1.3"}, &job.Step{No: "4.1"}
	rows := holdRows(&job.Job{Holds: []*job.Hold{{Mark: "W1", Step: apart, Again: back}, {Mark: "W2", Step: last}}})
	want := []struct{ mark, no string }{{"W1", "1.2"}, {"W1", "R1.3"}, {"W2", "4.1"}}
	if len(rows) != len(want) {
		t.Fatalf("%d releases, want %d", len(rows), len(want))
	}
	for i, r := range rows {
		if r.hold.Mark != want[i].mark || r.at.No != want[i].no {
			t.Errorf("release %d is of %s at %s, want %s at %s", i+1, r.hold.Mark, r.at.No, want[i].mark, want[i].no)
		}
	}
}

// The list of counts says where a kind lies, once each; how many of it are scrap, were it one,
// but not where all of it is; and how many new ones go on.
func TestFactsOfAKind(t *testing.T) {
	t.Parallel()
	c := &composer{Composer: &block.Composer{W: words.English}}
	box, bag := &job.Container{Base: "C1", Mark: "C1/DE"}, &job.Container{Base: "C2"}
	for _, x := range []struct {
		kind job.Kind
		want string
	}{
		{job.Kind{Off: 4, In: []job.Where{{Container: box}, {Container: box}}}, "C1"},
		{job.Kind{Off: 4, Scrap: 1, In: []job.Where{{Container: box}, {Scrap: true}}}, "C1, SCRAP · 1 of them scrap"},
		{job.Kind{Off: 4, Scrap: 4, New: 4, In: []job.Where{{Scrap: true}}}, "SCRAP · 4 new"},
		{job.Kind{Off: 3, New: 1, In: []job.Where{{Container: bag}, {Bench: true}}}, "C2, bench · 1 new"},
	} {
		if got := c.kindFacts(x.kind); got != x.want {
			t.Errorf("%+v: %q, want %q", x.kind, got, x.want)
		}
	}
}

// Whoever checks a step as well has a row in the register of who signs, once.
func TestWhoChecksSigns(t *testing.T) {
	t.Parallel()
	steps := []*job.Step{{Check: "second mechanic"}, {}, {Check: "second mechanic"}, {Check: "electrician"}}
	c := &composer{Composer: &block.Composer{W: words.English, Job: &job.Job{Sections: []*job.Section{{Steps: steps}}}}}
	var got []string
	for _, r := range c.roles() {
		got = append(got, r.name)
	}
	if want := []string{"second mechanic", "electrician", words.English.Signatures.Mechanic}; !slices.Equal(got, want) {
		t.Errorf("%q sign, want %q", got, want)
	}
}

// A blank is not struck.
func TestSignsThatAreStruck(t *testing.T) {
	t.Parallel()
	for text, want := range map[string]int{"C4 NDE XBVT": 9, "X1 KDFB": 6, "": 0} {
		if got := signs(text); got != want {
			t.Errorf("%q has %d signs, want %d", text, got, want)
		}
	}
}

// A lock that is on twice is counted twice at the end, and one that no step puts on once.
func TestLocksAreCountedAsOftenAsTheyAreOn(t *testing.T) {
	t.Parallel()
	on, again := &job.Step{No: "1.1"}, &job.Step{No: "R2.1"}
	j := &job.Job{Isolations: []*job.Isolation{{Periods: []job.LockPeriod{{Locked: on}, {Locked: again, Again: true}}}, {}}}
	c := &composer{Composer: &block.Composer{W: words.English, Job: j}}
	for _, x := range c.tally() {
		if x.what == words.English.CloseOut.Locks {
			if x.printed != "3" {
				t.Errorf("%s locks are counted, want 3", x.printed)
			}
			return
		}
	}
	t.Error("no locks are counted")
}

// An opening that a person fits through is told as one at each of its places.
func TestEnclosedOpeningsAreToldAtEachPlace(t *testing.T) {
	t.Parallel()
	j := &job.Job{Openings: []*job.Opening{
		{Key: "pit", What: "Pit", Enclosed: true},
		{Key: "bore", What: "Bore", Place: job.Place{Label: "DE", Name: "drive end"}, Enclosed: true},
		{Key: "bore", What: "Bore", Place: job.Place{Label: "NDE", Name: "open end"}},
	}}
	c := &composer{Composer: block.New(pdf.NewFaces(), layout.Pen{}, j, words.English, 180)}
	said := ""
	for _, p := range openings(c) {
		for _, it := range p.Block.Items() {
			if text, ok := it.Shape.(layout.Text); ok {
				said += strings.ReplaceAll(text.S, "\u00a0", " ") + " "
			}
		}
	}
	said = strings.Join(strings.Fields(said), " ")
	for text, want := range map[string]int{words.English.Openings.Enclosed: 2, "Bore, drive end": 1, "Bore, open end": 1} {
		if got := strings.Count(said, text); got != want {
			t.Errorf("%q stands %d times, want %d, in\n%s", text, got, want, said)
		}
	}
}
