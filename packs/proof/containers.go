package proof

import (
	"slices"
	"strconv"

	"matchmark/packs/job"
	"matchmark/packs/walk"
)

// containers sees that every container is filled by a step and emptied by one, and
// that those which must be empty at a step are.
func (r *report) containers() {
	for _, e := range r.walk.Events {
		if e.Verb == job.DoEmpty && !e.At.IsZero() { // else no author asks for it
			r.empty(e)
		}
	}
	for _, c := range r.job.Containers {
		in, out := job.Pieces(c.In), job.Pieces(c.Out)
		if in > 0 && c.In[0].Step.Section.Unreversed {
			continue // spoken of at the section
		}
		switch {
		case in == 0:
			r.problems.Add(c.At, "never-filled", "nothing goes into "+c.Mark, "name it in the into: of a step, or take it out")
		case out == 0:
			r.problems.Add(c.At, "never-emptied", "nothing comes out of "+c.Mark+" again", "put its parts back with fit:, or reverse: the section")
		case out < in:
			r.problems.Add(c.At, "never-emptied", strconv.Itoa(in)+" pieces go into "+c.Mark+" and "+strconv.Itoa(out)+" come out again", "put its parts back with fit:, or reverse: the section")
		}
	}
}

// empty sees that a container that must be empty now is.
func (r *report) empty(e *walk.Event) {
	c, n := e.In, r.walk.Pieces(e.In, e)
	switch first := r.filled(c); {
	case n > 0:
		see := c.In[0].At
		for _, m := range c.Out {
			if m.Step.Index > e.Step.Index {
				see = m.At
			}
		}
		lie := strconv.Itoa(n) + " pieces are"
		if n == 1 {
			lie = "1 piece is"
		}
		r.problems.AddWith(e.At, "not-empty", c.Mark+" must be empty at "+e.Step.Name()+", but "+lie+" still in it", see, "the pieces", "move the step below the one that empties it, or take it out of empty:")
	case first != nil && first.Step.Index > e.Step.Index:
		r.problems.AddWith(e.At, "not-filled-yet", c.Mark+" must be empty at "+e.Step.Name()+", where nothing has gone into it yet", first.At, "filled here", "move the step below the one that empties it")
	}
}

// filled is the first removal that goes into a container.
func (r *report) filled(c *job.Container) *job.Move {
	var first *job.Move
	for _, m := range c.In {
		if first == nil || m.Step.Index < first.Step.Index {
			first = m
		}
	}
	return first
}

// containers binds the step at which a container must be empty to those that move
// parts into it and out of it.
func (b *binder) containers() {
	for _, st := range b.walk.Steps {
		for _, e := range st.Empty {
			b.changes(e.In, st, job.Bind{Kind: job.BoundEmpty, In: e.In})
		}
	}
	for _, c := range b.job.Containers {
		for _, m := range slices.Concat(c.In, c.Out) {
			b.looks(c, m.Step)
		}
	}
}
