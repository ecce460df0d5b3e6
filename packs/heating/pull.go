package heating

import (
	"fmt"
	"strconv"

	"matchmark/packs/heat"
	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// pull reads how a hub is drawn off and computes it in time.
func (r *heatReader) pull() {
	d := r.def.Pull
	if d.At.IsZero() {
		return
	}
	out := &job.HotPull{By: heat.Means(d.By.Value), Puller: d.Puller.Value, Shield: d.Shield.Value, IfStuck: d.IfStuck.Value}
	r.heat.Pull = out
	if v, ok := r.amount(d.Longest, units.Second, "Longest"); ok {
		out.Longest = heat.Second(v)
	}
	r.workable(d, out)
	r.puller(d, out)
	source := heat.Source{Means: out.By}
	if v, ok := r.amount(d.Net, units.Watt, "Source.Net"); ok {
		source.Net = heat.Watt(v)
	}
	source.Depth = r.mm(d.Depth, "Source.Depth")
	r.at(d.By, d.At, "Source", "Source.Means")
	if d.Depth.Written() && out.By == heat.Torch {
		r.hole(d.Depth.At, "heat-depth", r.heat.Mark+": a torch heats the outer face and has no depth", "take depth: out, or by: induction")
	}
	out.Clearance = r.clearance(d.Clearance, d.Rise, "pull")
	if out.By == heat.Torch && len(r.heat.Neighbours) > 0 && out.Shield == "" {
		r.b.Problems.Add(d.At, "no-shield", r.heat.Mark+": a flame beside "+r.heat.Neighbours[0].Name+" needs a shield between the two",
			"for example shield: split aluminium sheet and mineral wool")
	}
	if r.holes > 0 {
		return
	}
	r.plan(out, source)
}

// clearance is how much looser than free a hub must be: as written, or what the
// rise of the maker gives.
func (r *heatReader) clearance(written, rise source.Text, what string) heat.Mm {
	h := r.heat
	switch {
	case written.Written() && rise.Written():
		r.hole(rise.At, "fit-twice", h.Mark+" gives its clearance and the rise that makes it", "keep one of the two")
	case written.Written():
		return r.mm(written, "Fit.Clearance")
	case rise.Written():
		v, ok := r.amount(rise, units.KelvinRise, "Fit.Clearance", "Rise")
		if !ok || r.holes > 0 {
			return 0
		}
		f := heat.Fit{Diameter: h.Fit.Diameter, Interference: h.Fit.Counted, Basis: h.Fit.Basis}
		got, err := heat.ClearanceAt(f, h.Ring.Material, h.Seat.Material, heat.KelvinRise(v), h.Air)
		if err != nil {
			r.refused(err, h.Mark)
		}
		return got
	default:
		r.hole(h.At, "no-clearance", h.Mark+" does not say how much looser than free the hub must be; a thousandth of the diameter is usual (DIN 7190)",
			"clearance: in "+what+":, what lets it slide without force", "or rise: how much hotter than the shaft, if the maker gives that")
	}
	return 0
}

// plan computes a pull. The joint is taken to conduct without hindrance until it
// is as open as needed: the shaft then warms most, and what frees all the same
// frees in any state of the surfaces.
func (r *heatReader) plan(out *job.HotPull, source heat.Source) {
	h := r.heat
	in := heat.Pull{
		Fit: r.joint(out.Clearance), Hub: h.Ring, Shaft: h.Seat,
		Contact: heat.Contact{Perfect: true, TouchUntil: out.Clearance},
		Source:  source, Air: heat.Surroundings{Air: h.Air, Film: film},
		Skin: h.Limit, Crayon: r.crayon(), Longest: out.Longest, Yield: r.yield, Workable: out.Workable,
	}
	for _, n := range h.Neighbours {
		in.Neighbours = append(in.Neighbours, n.Neighbour)
	}
	if g := h.Fit.Grip; g != nil {
		in.ColdPull, in.ColdHoop = heat.Newton(g.Pull.Axial), heat.MPa(g.Tightest.HubHoop)
	}
	plan, err := r.known.plan(in)
	if err == errTooMany {
		r.b.Problems.Add(r.def.Pull.At, "too-many", h.Mark+" is the "+strconv.Itoa(maxPlans+1)+"th hot pull of this job that is like no other; "+strconv.Itoa(maxPlans)+" are worked out",
			"make a definition of its own for part of the machine; heats that are alike at all places count once")
		return
	}
	if err != nil {
		r.refused(err, h.Mark)
		return
	}
	out.Plan = &plan
	for _, w := range plan.Warnings {
		r.warned(w)
	}
}

// crayon is the scale of the crayon on the skin.
func (r *heatReader) crayon() heat.Crayon {
	if r.heat.Fahrenheit {
		return heat.InFahrenheit
	}
	return heat.InCelsius
}

func (r *heatReader) joint(clearance heat.Mm) heat.Fit {
	f := r.heat.Fit
	return heat.Fit{Diameter: f.Diameter, Interference: f.Counted, Basis: f.Basis, Clearance: clearance, Seat: r.seat}
}

// warned tells a warning of the calculation. What the sheet tells the crew in any
// case (a short window, a narrow band: both are why a puller must be named) is not
// told again.
func (r *heatReader) warned(w heat.Warning) {
	says := r.heat.Mark + ": " + w.In(r.units()).Says
	before := len(r.b.Problems)
	defer func() {
		if len(r.b.Problems) > before {
			r.b.Problems.Says(warning(r.heat.Mark, w, r.units()))
		}
	}()
	switch w.Code {
	case "neighbour-hot":
		r.b.Problems.Add(r.place(w.Field), "neighbour-hot", says, "take it off first, or cool the shaft between them")
	case "neighbour-stuck":
		for i, n := range r.heat.Neighbours {
			if w.Field == fmt.Sprintf("Neighbours.%d", i) && n.KeptCool != "" {
				return
			}
		}
		r.b.Problems.Warn(r.place(w.Field), "neighbour-stuck", says, "for example kept-cool: wet cloth on the cover")
	case "window":
		r.b.Problems.Warn(r.place(w.Field), "short-window", says, "more clearance, a higher ceiling if the maker allows it, the fit measured, the shaft cooled, or another way to draw it")
	case "thermal-shock":
		r.b.Problems.Warn(r.place(w.Field), "thermal-shock", says, "by: induction, slowly, or by: oven")
	case "yields":
		r.b.Problems.Warn(r.place(w.Field), "hub-yields", says, "lower at-most: or net:, or put yield: right")
	case "seconds":
		r.b.Problems.Warn(r.place(w.Field), "too-quick", says, "by: induction, with net: of a small heater")
	}
}
