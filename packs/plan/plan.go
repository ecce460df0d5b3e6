// Package plan works out what the sheets print besides what is written: the boxes of
// readings that are made of others, the sums by hand, the packs of shims.
package plan

import (
	"matchmark/packs/job"
	"matchmark/packs/source"
)

// A planner holds what is known while a job is worked out.
type planner struct {
	job      *job.Job
	problems source.Problems
}

// Boxes sizes the boxes of readings that are worked out from others, and sees that
// what decides a step can be looked at in the way that is asked.
func Boxes(j *job.Job) source.Problems {
	p := &planner{job: j}
	p.formulas()
	p.conditions()
	return p.problems
}

// Work writes the sums that are done by hand at each step, in the order of work, and
// the tables of shims that go with them.
func Work(j *job.Job) source.Problems {
	p := &planner{job: j}
	p.workOut()
	p.roundShims()
	return p.problems
}
