package proofread

import (
	"strings"

	"matchmark/packs/names"
	"matchmark/packs/nearest"
	"matchmark/packs/source"
)

// checkRoles sees that who releases and who checks are roles of the site, where
// it has said which it has.
func (b *proofreader) checkRoles() {
	if len(b.Job.Site.Roles) == 0 {
		return
	}
	known := map[string]bool{}
	for _, r := range b.Job.Site.Roles {
		known[r] = true
	}
	see := func(t source.Text) {
		if t.Value == "" || known[t.Value] {
			return
		}
		help := "roles of the site: " + strings.Join(b.Job.Site.Roles, ", ")
		if near := nearest.Word(t.Value, b.Job.Site.Roles); near != "" {
			help = "did you mean " + near + "?"
		}
		b.Problems.Warn(t.At, "unknown-role", source.Quote(t.Value)+" is not a role of this site", help)
	}
	for _, h := range b.Def.Holds {
		see(h.Releases)
	}
	for _, s := range b.Def.Sections {
		for _, st := range s.Steps {
			see(st.Check)
			if _, none := names.NoneBecause(st.BackCheck); !none {
				see(st.BackCheck)
			}
		}
	}
}
