package templates

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/step"
)

// isolations sets the list of points where the machine is cut off: what is
// locked, how it was proved, by whom, and who unlocked it.
func isolations(c *composer) []layout.Piece {
	if len(c.Job.Isolations) == 0 {
		return nil
	}
	w := c.W
	number := layout.Mm(9)
	for _, x := range c.Job.Isolations {
		if len(x.Periods) > 1 {
			number = 12 // room for: again
		}
	}
	g := c.Grid(block.Col(w.Common.Number, number), block.Col(w.Isolations.Point, 0), block.Col(w.Isolations.Proved, 20.4), block.Col(w.Isolations.LockNumber, 22), block.Col(w.Isolations.LockedBy, 29), block.Col(w.Isolations.UnlockedBy, 29))
	var rows []layout.Row
	for _, x := range c.Job.Isolations {
		told := []string{x.Energy, x.State}
		if x.Proved != "" {
			told = append(told, w.Isolations.ProvedBy.With(x.Proved))
		}
		facts := strings.Join(slices.DeleteFunc(told, func(t string) bool { return t == "" }), " · ")
		proved := g.Text(2, layout.Caption, w.Common.Initials, x.At)
		for i, p := range periods(x) {
			on, off := c.lockTimes(p)
			no := strconv.Itoa(x.No)
			point := g.About(1, x.Point, facts, x.At)
			if i > 0 {
				no = w.Isolations.NumberAgain.With(no)
				point = g.About(1, x.Point, "", x.At) // what it is stands in the row above
			}
			row := g.Row(x.At, g.Text(0, layout.Strong, no, x.At), point, proved, layout.Block{},
				g.Text(4, layout.Caption, on, x.At), g.Text(5, layout.Caption, off, x.At))
			row.Anchor = step.LockAnchor(x, i)
			rows = append(rows, row)
		}
	}
	out := c.ListSheet(w.Isolations.Rule, g, append(rows, g.Blank(blanks(len(rows), 6, 1, usualSpares)+tried(c.Job))...))
	changes, planned := changes(c.Job)
	taken := w.Isolations.TakenOver
	if planned > changes {
		taken = w.Isolations.TakenOverMore
	}
	over := c.Grid(block.Col(w.Handover.Shift, 25), block.Col(taken, 0), block.Col(w.Isolations.HandsOver, 36), block.Col(w.Isolations.TakesOver, 36), block.Col(w.Isolations.Renewed, 44))
	if changes > 0 {
		out = append(out, over.Under(over.Blank(changes))...)
	}
	return out
}

// periods are the times that an isolation is locked, one where no step locks it.
func periods(x *job.Isolation) []job.LockPeriod {
	if len(x.Periods) == 0 {
		return []job.LockPeriod{{}}
	}
	return x.Periods
}

// lockTimes says at which steps a lock goes on and comes off.
func (c *composer) lockTimes(p job.LockPeriod) (on, off string) {
	if p.Locked != nil {
		sentence := c.W.Isolations.LockedAt
		if p.Again {
			sentence = c.W.Isolations.LockedAgainAt
		}
		on = sentence.With(c.StepRef(p.Locked))
	}
	if p.Unlocked != nil {
		sentence := c.W.Isolations.UnlockedAt
		if p.ForNow {
			sentence = c.W.Isolations.UnlockedForNowAt
		}
		off = sentence.With(c.StepRef(p.Unlocked))
	}
	return on, off
}

// mostChanges is how many rows there are for taking over the locks, at the most: a long job
// goes on on copies of the page, and the head of the rows says so.
const mostChanges = 2

// changes is how many rows there are for the locks that go to the next shift and a permit of the
// day that is renewed, and how often that is planned in shifts of twelve hours; none for a job
// within one, or where nobody has said how long it takes: the log of handing over has room for it.
func changes(j *job.Job) (rows, planned int) {
	const shift = 12
	h, _ := j.Hours.Rat().Float64()
	planned = max(0, int(math.Ceil(h/shift))-1)
	return min(planned, mostChanges), planned
}

// usualSpares is how many empty rows the list has for what is found on the day, at the most.
const usualSpares = 4

// tried is how many rows a trial may take that has to be made again, besides those for what is
// found on the day: a lock that is off for now and on again within one step, once more; one from
// step to step, once more for each further try of the steps that do it.
func tried(j *job.Job) int {
	n := 0
	for _, x := range j.Isolations {
		told := map[*job.Step]bool{} // a step between two trials is done again with one of them
		for i := 1; i < len(x.Periods); i++ {
			off, on := x.Periods[i-1], x.Periods[i]
			if off.Unlocked == nil || !on.Again { // whichever verb took it off
				continue
			}
			further := 0
			if off.Unlocked == on.Locked {
				further = 1
			}
			for _, st := range []*job.Step{off.Unlocked, on.Locked} {
				if !told[st] {
					further = max(further, st.Tries-1)
				}
				told[st] = true
			}
			n += further
		}
	}
	return n
}
