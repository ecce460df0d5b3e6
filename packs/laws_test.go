package packs_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"pgregory.net/rapid"

	"matchmark/packs"
	"matchmark/packs/job"
)

// The laws of this file hold for any job that check lets pass. The jobs are made
// at random: parts in assemblies, partial removals into several places, readings
// between parts, reasons between steps, holds.

// A randomStep is one step of a random job as its text.
type randomStep struct {
	key     string
	after   []string
	free    bool // after: is written
	measure []string
	remove  []string // "part: n" with the place it goes to
	into    []string
	hold    string
}

func (s randomStep) text() string {
	out := "      - step: " + s.key + "\n        do: Do it.\n"
	if s.free {
		out += "        after: {" + strings.Join(s.after, ", ") + "}\n"
	}
	if len(s.measure) > 0 {
		out += "        measure: [" + strings.Join(s.measure, ", ") + "]\n"
	}
	if len(s.remove) > 0 {
		out += "        remove: [{" + strings.Join(s.remove, "}, {") + "}]\n        into: {" + strings.Join(s.into, ", ") + "}\n"
	}
	if s.hold != "" {
		out += "        hold: " + s.hold + "\n"
	}
	return out
}

// A randomJob is a definition made at random, with what it must come to.
type randomJob struct {
	head  string
	steps []randomStep
	// off counts the pieces taken off by part, scrapped those of them that go to
	// scrap, renewed tells of which a new one goes on; kept counts by place.
	off, scrapped, kept map[string]int
	renewed             map[string]bool
	lost                map[string][]string // the steps that destroy each reading
}

func (j *randomJob) text() string {
	out := j.head + "steps:\n  - section: Off\n    steps:\n"
	for _, s := range j.steps {
		out += s.text()
	}
	return out
}

// drawJob makes a random job. Parts are taken off in the order of their numbers, in
// one go or in two, so that the definition is in order.
func drawJob(t *rapid.T, scrap bool) *randomJob {
	j := &randomJob{off: map[string]int{}, scrapped: map[string]int{}, kept: map[string]int{}, renewed: map[string]bool{}, lost: map[string][]string{}}
	n := rapid.IntRange(2, 6).Draw(t, "parts")
	var parts, dims strings.Builder
	used := map[string]bool{}
	for i := range n {
		key := fmt.Sprintf("part-%d", i)
		count := rapid.IntRange(1, 4).Draw(t, "count")
		line := fmt.Sprintf("  %s: {name: Part %d, count: %d", key, i, count)
		gone := scrap && rapid.IntRange(0, 3).Draw(t, "scrapped") == 0
		if gone {
			j.renewed[key] = rapid.Bool().Draw(t, "renewed")
			line += map[bool]string{true: ", renew: always", false: ", renew: never"}[j.renewed[key]]
		}
		parts.WriteString(line + "}\n")
		var first randomStep
		if rapid.Bool().Draw(t, "measured") {
			mark := fmt.Sprintf("D%d", i+1)
			lost := ""
			if rapid.Bool().Draw(t, "lost by") && i < n-1 {
				loser := fmt.Sprintf("off-%d", rapid.IntRange(i, n-1).Draw(t, "loser"))
				lost = ", lost-by: [" + loser + "]"
				j.lost[mark] = append(j.lost[mark], loser)
			}
			j.lost[mark] = append(j.lost[mark], fmt.Sprintf("off-%d-first", i), fmt.Sprintf("off-%d", i))
			fmt.Fprintf(&dims, "  %s: {what: Gap, kind: gap, from: {%s: face}, to: {base: face}, nominal: 5.0 mm, left: 4.0 to 6.0 mm, source: sheet%s}\n", mark, key, lost)
			first.measure = []string{mark}
		}
		split := 0
		if count > 1 && rapid.Bool().Draw(t, "in two goes") {
			split = rapid.IntRange(1, count-1).Draw(t, "first go")
		}
		for half, pieces := range []int{split, count - split} {
			if pieces == 0 {
				continue
			}
			s := randomStep{key: fmt.Sprintf("off-%d", i)}
			if split > 0 && half == 0 {
				s.key += "-first"
			}
			if half == 0 || split == 0 {
				s.measure = first.measure
			}
			to := fmt.Sprintf("C%d", rapid.IntRange(1, 4).Draw(t, "container"))
			if gone {
				to = "scrap"
				j.scrapped[key] += pieces
			} else {
				used[to] = true
				j.kept[to] += pieces
			}
			j.off[key] += pieces
			s.remove, s.into = []string{fmt.Sprintf("%s: %d", key, pieces)}, []string{key + ": " + to}
			s.free = rapid.IntRange(0, 3).Draw(t, "after written") > 0
			for _, b := range j.steps {
				if s.free && rapid.IntRange(0, 4).Draw(t, "after it") == 0 {
					s.after = append(s.after, b.key+": so it is")
				}
			}
			j.steps = append(j.steps, s)
		}
	}
	if rapid.Bool().Draw(t, "hold") {
		j.steps = append(j.steps, randomStep{key: "hold", hold: "W1"})
		k := rapid.IntRange(0, len(j.steps)-1).Draw(t, "place of the hold")
		hold := j.steps[len(j.steps)-1]
		j.steps = slices.Insert(j.steps[:len(j.steps)-1], k, hold)
		j.head = "holds:\n  W1: {kind: hold, what: Seen., releases: foreman}\n"
	}
	head := "pack: 1\nequipment: {tag: X-1, name: Machine}\njob: {number: \"1\", title: Law, revision: A, issued: 2026-03-02}\nparts:\n  base: {name: Base}\n" + parts.String()
	if dims.Len() > 0 {
		head += "dimensions:\n" + dims.String()
	}
	if len(used) > 0 {
		head += "containers:\n"
		for _, c := range []string{"C1", "C2", "C3", "C4"} {
			if used[c] {
				head += "  " + c + ": {name: Box, kind: box}\n"
			}
		}
	}
	j.head = head + j.head
	return j
}

// load loads a definition given as text.
func load(text string) (*job.Job, error) {
	jb, problems := packs.Load(fstest.MapFS{"law.yaml": {Data: []byte(text)}}, packs.Inputs{Definition: "law.yaml"})
	if problems.Errors() > 0 {
		return jb, problems
	}
	return jb, nil
}

// mustLoad loads a random job; one that is not in order is not looked at.
func mustLoad(t *rapid.T, j *randomJob) *job.Job {
	jb, err := load(j.text())
	if err != nil {
		t.Skip("not in order: ", err)
	}
	return jb
}

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
