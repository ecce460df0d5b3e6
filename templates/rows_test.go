package templates

import (
	"testing"

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
