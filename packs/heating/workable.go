package heating

import (
	"matchmark/packs/def"
	"matchmark/packs/heat"
	"matchmark/packs/job"
	"matchmark/packs/units"
)

// workable reads how long it takes to draw the part off once the heat is off: as written
// at the pull, which somebody must give a reason for, else that of the site.
func (r *heatReader) workable(d def.HeatPull, out *job.HotPull) {
	site := r.b.Job.Site.Workable
	out.Workable = site
	switch {
	case !d.Workable.Written() && d.WorkableBecause.Written():
		r.hole(d.WorkableBecause.At, "workable", r.heat.Mark+" says why it is drawn off so soon, and not how soon", "workable: the time from heat off until it is off its seat")
	case d.Workable.Written() && !d.WorkableBecause.Written():
		r.hole(d.Workable.At, "workable", r.heat.Mark+" is drawn off within "+d.Workable.Value+", and nothing says how", "workable-because: what stands ready, and who tried it")
	case d.Workable.Written():
		if v, ok := r.amount(d.Workable, units.Second, "Workable.Time"); ok {
			out.Workable = heat.Workable{Time: heat.Second(v), Reason: d.WorkableBecause.Value}
		}
	}
}

// puller reads what draws the part, and what it is good for. A hub that is drawn off by
// hand has none.
func (r *heatReader) puller(d def.HeatPull, out *job.HotPull) {
	out.NoPuller = d.Puller.Value == "none"
	if out.NoPuller {
		out.Puller = ""
	}
	v, ok := r.amount(d.PullsWith, units.Newton)
	if !ok {
		return
	}
	if out.NoPuller {
		r.hole(d.PullsWith.At, "no-puller", r.heat.Mark+" has no puller, and says what it is good for", "puller: what draws it, or take pulls-with: out")
		return
	}
	out.PullsWith = heat.Newton(v)
	if g := r.heat.Fit.Grip; g != nil {
		out.Short = out.PullsWith < heat.Newton(g.Pull.Axial)
	}
}
