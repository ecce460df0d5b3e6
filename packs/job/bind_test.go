package job

import (
	"fmt"
	"slices"
	"testing"
)

// Twenty reasons that are alike were twenty lines on paper.
func TestRuns(t *testing.T) {
	w2, cover := &Hold{Mark: "W2"}, &Part{Key: "cover", Name: "Cover"}
	steps := make([]*Step, 26)
	for i := range steps {
		steps[i] = &Step{Index: i, No: fmt.Sprintf("3.%d", i+1), Key: fmt.Sprintf("step-%d", i)}
	}
	steps[21].Key, steps[22].Key = "gland", "gland" // one step at three places
	last := &Step{Index: 25, Key: "gland"}
	binds := []Bind{
		{Kind: BoundPart, Before: steps[22], Part: cover},
		{Kind: BoundPart, Before: steps[21], Part: cover},
		{Kind: BoundPart, Before: steps[20], Part: cover},
	}
	for i := 19; i >= 0; i-- {
		if i == 10 {
			continue // does not bind, and parts the run
		}
		binds = append(binds, Bind{Kind: BoundHold, Before: steps[i], Hold: w2})
	}
	var got []string
	for _, r := range last.Runs(binds) {
		got = append(got, fmt.Sprint(r.From.No, " to ", r.Before.No, " ", r.Steps, " ", r.Loop, ": ", r.Why()))
	}
	// A witness does not stop the work, and was printed as a hold that stands between.
	called := Bind{Kind: BoundHold, Hold: &Hold{Mark: "W3", Witness: true}}
	if called.Why() != "witness W3 is called there" {
		t.Errorf("a witness binds because %q", called.Why())
	}
	want := []string{
		"3.22 to 3.23 2 true: both move or measure Cover (cover)",
		"3.21 to 3.21 1 false: both move or measure Cover (cover)",
		"3.12 to 3.20 9 false: hold W2 stands between them",
		"3.1 to 3.10 10 false: hold W2 stands between them",
	}
	if !slices.Equal(got, want) {
		t.Errorf("folded to\n%q, want\n%q", got, want)
	}
}

// A reason that follows from the others is left out, the author's own stays. More
// steps than one word of the set has bits.
func TestReasons(t *testing.T) {
	s := &Section{}
	for i := range 200 {
		st := &Step{Index: i}
		for k := i - 1; k >= 0 && k >= i-3; k-- {
			st.Binds = append(st.Binds, Bind{Kind: BoundPart, Before: s.Steps[k]})
		}
		s.Steps = append(s.Steps, st)
	}
	last := s.Steps[199]
	last.Binds = append(last.Binds, Bind{Kind: BoundAfter, Before: s.Steps[5]}, Bind{Kind: BoundHold, Before: s.Steps[0]})
	got := (&Job{Sections: []*Section{s}}).Reasons()[last]
	if len(got) != 2 || got[0].Before != s.Steps[198] || got[1].Before != s.Steps[5] {
		t.Errorf("%d reasons are left: %v", len(got), got)
	}
}
