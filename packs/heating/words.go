package heating

import (
	"strings"

	"matchmark/packs/source"
)

// fireWatch reads how long the fire watch stays, where it is not as on the site.
func (r *heatReader) fireWatch() {
	r.heat.FireWatch = r.b.Job.Site.FireWatch
	if t := r.def.FireWatch; t.Written() {
		r.b.FireWatch(t, &r.heat.FireWatch)
	}
}

// words sees that no text of a heat asks for asbestos.
func (r *heatReader) words() {
	d := r.def
	all := []source.Text{d.Note, d.NothingNear, d.Pull.Shield, d.Pull.IfStuck, d.Pull.Puller}
	for _, n := range d.Neighbours {
		all = append(all, n.What, n.KeptCool)
	}
	for _, t := range all {
		if strings.Contains(strings.ToLower(t.Value), "asbestos") {
			r.b.Problems.Add(t.At, "asbestos", r.heat.Mark+": asbestos is never used as a shield or a cloth",
				"use aluminium or steel sheet, mineral wool, calcium silicate board or a vermiculite cloth",
				"old cloth of unknown make counts as asbestos until it is tested")
		}
	}
}
