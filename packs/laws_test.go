package packs_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"matchmark/packs/job"
)

// The laws of this file hold for any job that check lets pass. The jobs are those of
// random_job_test.go.

// TestCountsBalance: pieces taken off are those in containers and scrap, and what
// goes back is what came off, less what was scrapped, plus what is new.
func TestCountsBalance(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		j := drawJob(t, true)
		jb := mustLoad(t, j)
		for _, c := range jb.Containers {
			if got := job.Pieces(c.In); got != j.kept[c.Mark] {
				t.Errorf("%d pieces go into %s, the steps say %d", got, c.Mark, j.kept[c.Mark])
			}
			if in, out := job.Pieces(c.In), job.Pieces(c.Out); in != out {
				t.Errorf("%d pieces go into %s and %d come out", in, c.Mark, out)
			}
		}
		for _, p := range jb.Parts {
			if got := job.Pieces(p.Off); got != j.off[p.Key] {
				t.Errorf("%d of %s come off, the steps say %d", got, p.Key, j.off[p.Key])
			}
			want := j.off[p.Key]
			if j.scrapped[p.Key] > 0 && !j.renewed[p.Key] {
				want -= j.scrapped[p.Key]
			}
			if got := job.Pieces(p.Back); got != want {
				t.Errorf("%d of %s go back, want %d", got, p.Key, want)
			}
		}
		for _, d := range jb.Dims {
			if d.FoundAt == nil || d.LeftAt == nil {
				t.Errorf("%s is not on both sheets", d.Mark)
			}
		}
	})
}

// A carried is a number of pieces of a part between the machine and a place.
type carried struct {
	part  string
	n     int
	place string
}

// TestPutBackOfThePutBack: the put-back rows, taken for a job of their own (what
// they fit is taken off, from where it lay, into there), have the job for their
// put-back: the same pieces, in the same order, to the same places.
func TestPutBackOfThePutBack(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		j := drawJob(t, false)
		jb := mustLoad(t, j)
		mirror := &randomJob{head: j.head}
		var off, twice []carried
		for _, s := range jb.Sections {
			for _, st := range s.Steps {
				row := randomStep{key: fmt.Sprintf("row-%d", st.Index)}
				for _, m := range st.Remove {
					off = append(off, carried{m.Part.Key, m.N, m.To.Mark()})
				}
				for _, m := range st.Fit {
					row.remove = append(row.remove, fmt.Sprintf("%s: %d", m.Part.Key, m.N))
					row.into = append(row.into, m.Part.Key+": "+m.From.Mark())
				}
				// What the job measures between two steps is measured in the mirror
				// before anything is taken apart.
				if len(row.remove) > 0 {
					mirror.steps = append(mirror.steps, row)
				}
			}
		}
		first := randomStep{key: "measure"}
		for _, d := range jb.Dims {
			first.measure = append(first.measure, d.Mark)
		}
		if len(jb.Holds) > 0 {
			first.hold = "W1"
		}
		mirror.steps = slices.Insert(mirror.steps, 0, first)
		back, err := load(dropLostBy(mirror.text()))
		if err != nil {
			t.Fatalf("the put-back is no job: %v\n%s", err, mirror.text())
		}
		for _, s := range back.Sections {
			for _, st := range s.Steps {
				for _, m := range st.Fit {
					twice = append(twice, carried{m.Part.Key, m.N, m.From.Mark()})
				}
			}
		}
		if !slices.Equal(off, twice) {
			t.Errorf("taken off:       %v\nput back twice:  %v\n%s", off, twice, j.text())
		}
	})
}

// dropLostBy takes the lines about lost readings out: the steps that they name are
// not in the mirrored jb.
func dropLostBy(text string) string {
	var out []string
	for _, l := range strings.Split(text, "\n") {
		if i := strings.Index(l, ", lost-by:"); i >= 0 {
			l = l[:i] + "}"
		}
		out = append(out, l)
	}
	return strings.Join(out, "\n")
}

// wrong tells what is wrong with an order of steps, found without the program: a
// step above one that it comes after, a reading below the step that destroys it, a
// step on another side of the hold than before.
func (j *randomJob) wrong(was []randomStep) string {
	place, before := map[string]int{}, map[string]int{}
	for i, s := range j.steps {
		place[s.key] = i
	}
	for i, s := range was {
		before[s.key] = i
	}
	for i, s := range j.steps {
		for _, a := range s.after {
			if key, _, _ := strings.Cut(a, ":"); place[key] > i {
				return s.key + " stands above " + key
			}
		}
		for _, mark := range s.measure {
			for _, loser := range j.lost[mark] {
				if at, ok := place[loser]; ok && at < i {
					return mark + " is measured after " + loser
				}
			}
		}
		if h, ok := place["hold"]; ok && (i < h) != (before[s.key] < before["hold"]) {
			return s.key + " has passed the hold"
		}
	}
	return ""
}

// TestFreeStepsMayBeMoved: a job that is in order stays so wherever a free step is
// moved to between the two steps that bind it, by what check says and by what the
// test finds itself.
func TestFreeStepsMayBeMoved(t *testing.T) {
	t.Parallel()
	moved := 0
	rapid.Check(t, func(t *rapid.T) {
		j := drawJob(t, true)
		jb := mustLoad(t, j)
		for i, st := range jb.Sections[0].Steps {
			if st.Free == nil {
				continue
			}
			low, high := 0, len(j.steps)-1
			if st.Free.After != nil {
				low = st.Free.After.Index + 1
			}
			if st.Free.Before != nil {
				high = min(high, st.Free.Before.Index-1)
			}
			if low > i || high < i {
				t.Fatalf("%s may go to %d to %d, and is at %d", st.Key, low, high, i)
			}
			for to := low; to <= high; to++ {
				other := *j
				other.steps = slices.Delete(slices.Clone(j.steps), i, i+1)
				other.steps = slices.Insert(other.steps, to, j.steps[i])
				if w := other.wrong(j.steps); w != "" {
					t.Fatalf("%s is free from %d to %d, and at %d %s\n%s", st.Key, low, high, to, w, j.text())
				}
				if _, err := load(other.text()); err != nil {
					t.Fatalf("%s is free from %d to %d, and at %d: %v\n%s", st.Key, low, high, to, err, j.text())
				}
				moved++
			}
		}
	})
	if moved < 100 {
		t.Errorf("only %d moves were tried", moved)
	}
}
