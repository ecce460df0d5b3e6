package templates

import (
	"slices"

	"matchmark/layout"
)

// signatures sets the register of who signs: name, initials and signature, so that
// initials in a box can be read years later. The roles that the work names are
// printed, the others left to write in.
func signatures(c *composer) []layout.Piece {
	w := c.w
	g := c.grid(column{w.roleName, 48}, column{w.printedName, 0}, column{w.initials, 24}, column{w.signature, 50})
	var rows []layout.Row
	for _, role := range c.roles() {
		rows = append(rows, g.row(nil, g.text(0, layout.Body, role, nil)))
	}
	return c.listSheet(w.signaturesRule, g, append(rows, g.blank(max(signers-len(rows), spareRows))...))
}

// signers is how many people a sheet of signatures has room for.
const signers = 14

// roles are those who release, those who check as well and those of the site, each
// once.
func (c *composer) roles() []string {
	var out []string
	add := func(role string) {
		if role != "" && !slices.Contains(out, role) {
			out = append(out, role)
		}
	}
	for _, h := range c.job.Holds {
		add(h.Releases)
	}
	for _, s := range c.job.Sections {
		for _, st := range s.Steps {
			add(st.Check)
		}
	}
	for _, role := range c.job.Site.Roles {
		add(role)
	}
	return out
}
