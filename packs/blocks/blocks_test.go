package blocks

import (
	"slices"
	"testing"

	"matchmark/packs/job"
	"matchmark/packs/reading"
)

// valves are the readings of one dimension at three valves, taken at one step, that differ in all
// that one block of boxes has to answer for.
func valves() (*job.Job, *job.Step, []*job.Dim) {
	last := []*job.Step{{Index: 9}, {Index: 4}, {Index: 6}}
	st := &job.Step{}
	var dims []*job.Dim
	for i, key := range []string{"1", "2", "3"} {
		dims = append(dims, &job.Dim{
			Base: "D1", Mark: "D1/" + key, What: "Lift of the valve", Place: job.Place{Label: key, Keys: []string{key}, Groups: []string{"valve"}, Name: "valve " + key},
			Box: reading.Box{Form: reading.Digits, Before: []int{1, 3, 2}[i], After: []int{2, 1, 3}[i], Signed: i == 1}, Critical: i == 2,
			LastChance: last[i], LostAt: last[i : i+1], LostVerb: []job.Verb{job.DoRemove, job.DoLoosen, job.DoRemove}[i],
			FoundOut: []string{"", "grind the seat", "renew it"}[i],
		})
	}
	st.Measure = slices.Clone(dims)
	return &job.Job{Sections: []*job.Section{{Steps: []*job.Step{st}}}, Dims: dims}, st, dims
}

// The boxes of a block are as wide as the widest reading in it needs, with a box for the sign
// where one has it; the block is critical where one reading is; its last chance is the first of
// theirs, with the act that ends it; and what is done as found stands with its valves.
func TestABlockAnswersForAllItsReadings(t *testing.T) {
	t.Parallel()
	j, st, dims := valves()
	Merge(j)
	if len(st.Measure) != 1 || !slices.Equal(st.Measure[0].Merged, dims) {
		t.Fatalf("three valves are measured as %d readings", len(st.Measure))
	}
	m := st.Measure[0]
	if m.Box.Before != 3 || m.Box.After != 3 || !m.Box.Signed {
		t.Errorf("its boxes have %d and %d digits, a sign %v; want 3, 3 and a sign", m.Box.Before, m.Box.After, m.Box.Signed)
	}
	if !m.Critical {
		t.Error("one valve is critical, the block is not")
	}
	if m.LastChance != dims[1].LastChance || len(m.LostAt) != 1 || m.LostAt[0] != m.LastChance || m.LostVerb != job.DoLoosen {
		t.Errorf("its last chance is step %d by verb %v, want step 4, where the second is loosened", m.LastChance.Index, m.LostVerb)
	}
	if want := "2: grind the seat; 3: renew it"; m.FoundOut != want {
		t.Errorf("as found out of limits: %q, want %q", m.FoundOut, want)
	}
	if got := dims[0].Box; got.Before != 1 || got.After != 2 || got.Signed {
		t.Error("the box of a single reading has changed with the block")
	}
}

// Two readings stand each for itself, and so do those with texts at more places than one heading
// takes, and those whose faces are of parts called otherwise.
func TestWhatStaysApart(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		name   string
		change func(st *job.Step, dims []*job.Dim)
		want   int
	}{
		{"all alike", func(*job.Step, []*job.Dim) {}, 1},
		{"two of them", func(st *job.Step, _ []*job.Dim) { st.Measure = st.Measure[:fewReadings-1] }, fewReadings - 1},
		{"worked out by hand", func(_ *job.Step, dims []*job.Dim) { dims[1].Shims = &job.Shimmed{} }, 3},
		{"of another part", func(_ *job.Step, dims []*job.Dim) {
			dims[2].From = job.Face{Part: &job.Part{Name: "Cage"}, Name: "end"}
		}, 3},
		{"another adjuster", func(_ *job.Step, dims []*job.Dim) { dims[0].Adjuster = &job.Part{Name: "Screw"} }, 3},
	} {
		j, st, dims := valves()
		c.change(st, dims)
		Merge(j)
		if len(st.Measure) != c.want {
			t.Errorf("%s: %d readings stand at the step, want %d", c.name, len(st.Measure), c.want)
		}
	}
}
