package templates

import (
	"slices"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/liftsheet"
)

// signatures sets the register of who signs: name, initials and signature, so that
// initials in a box can be read years later. The roles that the work names are
// printed, the others left to write in.
func signatures(c *composer) []layout.Piece {
	w := c.W
	g := c.Grid(block.Col(w.Common.Role, 48), block.Col(w.Signatures.PrintedName, 0), block.Col(w.Common.Initials, 24), block.Col(w.Signatures.Signature, 50))
	var rows []layout.Row
	for _, r := range c.roles() {
		rows = append(rows, g.Row(r.at, g.Text(0, layout.Body, r.name, r.at)))
	}
	return c.ListSheet(w.Signatures.Rule, g, append(rows, g.Blank(max(leastFree, people(c.Job)))...))
}

// leastFree is how many rows are free at the least: one relieves the mechanic, one comes along.
const leastFree = 2

// A role is who signs, and the place in the file that names it first.
type role struct {
	name string
	at   layout.Ref
}

// calledFor reports whether a hazard note stands before a step.
func (c *composer) calledFor(key string) bool {
	return slices.ContainsFunc(c.Job.Cautions, func(n *job.Caution) bool { return n.Key == key && len(n.Steps) > 0 })
}

// roles are those who release, those who check as well, those who sign on the sheets of
// lifts, permits and hot work, who stands outside an enclosed space, those of the site, and the mechanic, each once.
func (c *composer) roles() []role {
	var out []role
	add := func(name string, at layout.Ref) {
		if name != "" && !slices.ContainsFunc(out, func(r role) bool { return r.name == name }) {
			out = append(out, role{name, at})
		}
	}
	for _, h := range c.Job.Holds {
		add(h.Releases, h.At)
	}
	for _, s := range c.Job.Sections {
		for _, st := range s.Steps {
			add(st.Check, st.At)
		}
	}
	w := c.W
	for _, l := range c.Job.Lifts {
		if l.ByHand {
			add(w.Lift.InCharge, nil) // his signature stands on the lift sheet, the others are mechanics
			continue
		}
		for _, name := range liftsheet.Roles(w, l) {
			post := job.PostOf(name)
			if !post.Told {
				add(w.Signatures.EachSigns.With(name), nil)
				continue
			}
			for _, one := range post.Each() {
				add(one, nil)
			}
		}
	}
	if c.calledFor(job.HotWork) || slices.ContainsFunc(c.Job.Permits, func(p *job.Permit) bool { hot, _ := p.Allows(job.ForHotWork); return hot }) {
		add(w.Signatures.FireWatch, nil)
	}
	if c.calledFor(job.ConfinedSpace) || slices.ContainsFunc(c.Job.Permits, c.Job.IsEntry) {
		add(w.Signatures.Attendant, nil)
	}
	if len(c.Job.Permits) > 0 {
		add(w.Signatures.PermitHolder, nil)
	}
	for _, name := range c.Job.Site.Roles {
		add(name, nil)
	}
	add(w.Signatures.Mechanic, nil)
	return out
}
