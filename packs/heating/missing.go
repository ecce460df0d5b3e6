package heating

import (
	"matchmark/packs/def"
	"matchmark/packs/source"
)

// missing books what is not written at all, and has been told by the reader of the file,
// as a reason on paper: nothing is worked out without it.
func (r *heatReader) missing() {
	d := r.def
	lacks := func(what string, written bool) {
		if !written {
			r.holes++
			r.because("missing-key", what+" is not written", source.NotWritten(what))
		}
	}
	text := func(what string, t source.Text) { lacks(what, t.Written()) }
	varying := func(what string, v def.Varying) { lacks(what, !v.At.IsZero()) }
	text("what the hub is made of", d.Hub.Material)
	varying("the outside diameter of the hub", d.Hub.Outside)
	varying("the length of the fit", d.Hub.Length)
	text("what the shaft is made of", d.Shaft.Material)
	varying("how far the shaft runs on behind the hub", d.Shaft.Behind)
	if !d.Sizes.At.IsZero() {
		text("the measured bore", d.Sizes.Bore)
		text("the measured seat", d.Sizes.Seat)
	}
	for _, n := range d.Neighbours {
		text("what sits beside the hub", n.What)
		text("how far it is away", n.Away)
	}
	if g := d.Grip; !g.At.IsZero() {
		text("the friction for holding", g.Holding)
		text("the friction for pulling", g.Pulling)
		text("how much of the roughness is pressed flat", g.Smoothing)
	}
	if w := d.AtWork; !w.At.IsZero() {
		text("the coldest that the joint works at", w.Coldest)
		text("the hottest that the joint works at", w.Hottest)
	}
	if p := d.Pull; !p.At.IsZero() {
		text("what heats the hub for drawing it off", p.By)
		text("how long it is heated before giving up", p.Longest)
		text("what draws it", p.Puller)
	}
	if !d.PutOn.At.IsZero() {
		text("what heats the part for putting it on", d.PutOn.By)
	}
}
