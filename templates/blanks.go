package templates

import (
	"math"
	"slices"

	"matchmark/packs/job"
)

// How many empty rows a sheet has for what nobody planned: by the size of the job, for a
// short job writes few and a long one has room on the foot of every page of work as well.

// blanks is one row for every so many things, within bounds.
func blanks(things, each, least, most int) int {
	return min(max(things/each, least), most)
}

// shifts is how many times a job is handed over, as planned in shifts of twelve hours; the
// most where nobody has said how long it takes.
func shifts(j *job.Job) int {
	const shift, least = 12, 2
	h, _ := j.Hours.Rat().Float64()
	if h <= 0 {
		return handovers
	}
	return min(max(int(math.Ceil(h/shift)), least), handovers)
}

// people is how many the step takes that takes the most, besides those who have rows of their
// own: whom its lifts name, the mechanic, and on hot work the fire watch.
func people(j *job.Job) int {
	n := 0
	for _, st := range j.Steps() {
		free := st.People - 1
		for _, l := range slices.Concat(st.Lifts, st.Hangs) {
			for _, name := range l.Crew {
				if post := job.PostOf(name); post.Told && !l.ByHand {
					free -= len(post.Each())
				}
			}
		}
		if slices.ContainsFunc(j.Cautions, func(n *job.Caution) bool { return n.Key == job.HotWork && slices.Contains(n.Steps, st) }) {
			free--
		}
		n = max(n, free)
	}
	return n
}
