package packs_test

import (
	"fmt"
	"slices"
	"strings"

	"pgregory.net/rapid"

	"matchmark/packs/job"
)

// The random jobs of laws_test.go: parts in assemblies, partial removals into several
// places, readings between parts, reasons between steps, holds.

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
	jb, problems := loadLaw(text)
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
