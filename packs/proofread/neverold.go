package proofread

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/source"
)

// checkNeverOld sees that a limit for an old part is one of a part that can go back: of one that
// is always renewed the paper would ask whether the old one does.
func (b *proofreader) checkNeverOld(d *job.Dim, reuse source.Text) {
	parts := slices.DeleteFunc([]*job.Part{d.Of.Part, d.From.Part, d.To.Part}, func(p *job.Part) bool { return p == nil })
	old := func(p *job.Part) bool { return p.Renew != "always" }
	if !reuse.Written() || len(parts) == 0 || slices.ContainsFunc(parts, old) {
		return
	}
	b.Problems.AddWith(reuse.At, "never-old", d.Base+" has a limit for an old part, "+source.Quote(reuse.Value)+", and "+parts[0].Called()+" is always renewed: no old one goes back", parts[0].At, "the part",
		"take reuse: out", "or, if it tells how the old one ran: a dimension of its own with found: "+reuse.Value+" and no left:", "or renew: as set, at the part")
}
