package templates

import (
	"math"

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

// people is how many the step takes that takes the most.
func people(j *job.Job) int {
	n := 1
	for _, st := range j.Steps() {
		n = max(n, st.People)
	}
	return n
}
