package heating

import (
	"fmt"
	"sort"
	"strconv"

	"matchmark/packs/def"
	"matchmark/packs/fit"
	"matchmark/packs/heat"
	"matchmark/packs/job"
	"matchmark/packs/names"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// fit reads how tight the joint is: by designation, by limits of interference, or
// from sizes measured earlier, which count before the other two.
func (r *heatReader) fit() {
	d, pl, f := r.def, r.heat.Place, &r.heat.Fit
	designation, limits, diameter := names.TextAt(pl, d.Fit), names.TextAt(pl, d.Interference), names.TextAt(pl, d.Diameter)
	r.at(designation, r.heat.At, "Fit")
	switch {
	case designation.Written() && limits.Written():
		r.hole(limits.At, "fit-twice", r.heat.Mark+" gives its fit and its interference", "keep one of the two")
	case designation.Written():
		r.designation(designation)
	case limits.Written():
		r.at(limits, r.heat.At, "Fit", "Fit.Interference", "Greatest", "Least")
		low, high, err := units.ParseRange(limits.Value)
		if err != nil {
			r.holes++
			r.because("not-a-range", source.Quote(limits.Value)+" is no range of interference", nil)
			r.b.Fault(limits, err, intoRange)
			break
		}
		if _, err := low.Convert(units.Millimetre); err != nil {
			r.hole(limits.At, "heat-unit", err.Error(), intoRange)
			break
		}
		f.Least, f.Greatest = inMm(low), inMm(high)
	}
	if v := r.mm(diameter, "Fit.Diameter", "Joint"); v > 0 {
		if f.Diameter > 0 && f.Diameter != v {
			r.hole(diameter.At, "fit-twice", r.heat.Mark+" gives another diameter than its fit "+f.Designation, "take diameter: out")
		}
		f.Diameter = v
	}
	f.Counted, f.Basis = f.Greatest, heat.Greatest
	if !d.Sizes.At.IsZero() {
		r.sizes()
	}
	switch {
	case r.holes > 0:
	case f.Greatest == 0 && f.Basis != heat.Measured:
		r.hole(r.heat.At, "no-fit", r.heat.Mark+" does not say how tight the joint is, and it cannot be guessed",
			"fit: its designation from the drawing, diameter, bore and seat", "or sizes: bore and seat as measured", "or interference: its least to its greatest, with diameter:")
	case f.Diameter == 0:
		r.hole(r.place("Fit"), "no-fit", r.heat.Mark+" gives an interference and not the diameter it is on", "diameter: that of the joint")
	case f.Counted <= 0:
		r.hole(r.place("Fit"), "no-grip", fmt.Sprintf("%s: the tightest pair still has %s of clearance: heat does not free this fit", r.heat.Mark, r.fine(-f.Counted)),
			"look for rust, a key or a set screw instead of heating", "or put the fit right")
	}
	r.read()
}

// intoRange says how limits of an interference are written.
const intoRange = "write its least and its greatest, in mm or in, with to between them"

// inMm gives a length in millimetres.
func inMm(q units.Quantity) heat.Mm {
	mm, _ := q.Convert(units.Millimetre)
	v, _ := mm.Number.Rat().Float64()
	return heat.Mm(v)
}

// designation reads a fit as it stands on a drawing.
func (r *heatReader) designation(t source.Text) {
	r.at(t, r.heat.At, "Fit", "Fit.Interference", "Fit.Diameter", "Joint", "Greatest", "Least")
	got, err := fit.ParseFit(t.Value)
	if err != nil {
		r.hole(t.At, "fit", err.Error(), "fit: the diameter, then the letters and grades of bore and seat, as the drawing has them")
		return
	}
	f := &r.heat.Fit
	f.Designation = got.String()
	if hub := r.heat.Hub; hub != nil && hub.Fit != "" && hub.Fit != f.Designation {
		r.hole(t.At, "fit-twice", r.heat.Mark+" gives the fit "+f.Designation+", and its part "+hub.Called()+" sits with "+hub.Fit, "write the one of the drawing at both")
	}
	f.Diameter = heat.Mm(got.Hole.Nominal.Mm())
	f.Least, f.Greatest = heat.Mm(got.LeastInterference().Mm()), heat.Mm(got.GreatestInterference().Mm())
}

// sizes works out the interference from a bore and a seat as measured.
func (r *heatReader) sizes() {
	d, f := r.def.Sizes, &r.heat.Fit
	m := fit.Measured{
		Bore: fit.Mm(r.mm(d.Bore, "Bore")), Seat: fit.Mm(r.mm(d.Seat, "Seat")),
		BoreAt: 20, SeatAt: 20,
		HubAlpha: alpha(r.heat.Ring.Material), ShaftAlpha: alpha(r.heat.Seat.Material),
	}
	r.at(d.Bore, d.At, "Fit", "Fit.Interference", "Fit.Diameter", "HubAlpha", "ShaftAlpha")
	if v, ok := r.celsius(d.BoreAt, "BoreAt"); ok {
		m.BoreAt = fit.Celsius(v)
	}
	if v, ok := r.celsius(d.SeatAt, "SeatAt"); ok {
		m.SeatAt = fit.Celsius(v)
	}
	if r.holes > 0 {
		return
	}
	found, _, err := m.Interference()
	if err != nil {
		r.refused(err, r.heat.Mark)
		return
	}
	got := heat.Mm(found / 1000)
	if f.Greatest > 0 && (got > f.Greatest+1e-6 || got < f.Least-1e-6) {
		r.b.Problems.Warn(d.Seat.At, "outside-fit", fmt.Sprintf("%s: the sizes give %s of interference, and the fit %s to %s",
			r.heat.Mark, r.fine(got), r.fine(f.Least), r.fine(f.Greatest)), "measure again, or put the fit right")
	}
	if f.Diameter == 0 {
		f.Diameter = heat.Mm(m.Seat)
	}
	f.Counted, f.Basis = got, heat.Measured
	if f.Greatest == 0 {
		f.Least, f.Greatest = got, got
	}
}

// alpha is the mean expansion of a material about the temperature of a workshop.
func alpha(m heat.Material) fit.PerKelvin {
	if m.Name == "" {
		return 0
	}
	return fit.PerKelvin(m.Alpha(20, 30))
}

// read finds the dimensions that read bore and seat on this job.
func (r *heatReader) read() {
	one := func(t source.Text) *job.Dim {
		if !t.Written() {
			return nil
		}
		found := r.b.DimsAt(t, r.heat.Place)
		if len(found) > 1 {
			r.b.Problems.Add(t.At, "which-place", source.Quote(t.Value)+" stands at several places", "name the place: "+found[0].Mark)
		}
		if len(found) != 1 {
			return nil
		}
		return found[0]
	}
	r.heat.Fit.Bore, r.heat.Fit.Seat = one(r.def.Read.Bore), one(r.def.Read.Seat)
}

// ratio reads a plain number, which the reader of the file has seen to be one.
func ratio(t source.Text) fit.Ratio {
	v, _ := strconv.ParseFloat(t.Value, 64)
	return fit.Ratio(v)
}

// neighbours reads what must stay cool, the nearest first.
func (r *heatReader) neighbours() {
	d, h := r.def, r.heat
	for _, dn := range d.Neighbours {
		n := job.HeatNeighbour{KeptCool: dn.KeptCool.Value, MeasuredWith: dn.MeasuredWith.Value, LimitFrom: dn.Source.Value}
		n.Name = dn.What.Value
		n.Distance = r.mm(dn.Away)
		n.Limit = r.limit(dn.Kind, dn.AtMost, dn.Source, dn.At, "the "+n.Name, n.Name)
		h.Neighbours = append(h.Neighbours, n)
	}
	at := map[string]*def.Neighbour{}
	for _, dn := range d.Neighbours {
		at[dn.What.Value] = dn
	}
	sort.SliceStable(h.Neighbours, func(i, k int) bool { return h.Neighbours[i].Distance < h.Neighbours[k].Distance })
	for i, n := range h.Neighbours {
		dn, field := at[n.Name], "Neighbours."+strconv.Itoa(i)
		r.at(dn.What, dn.At, field)
		r.at(dn.Away, dn.At, field+".Distance")
		limit := dn.AtMost
		if !limit.Written() {
			limit = dn.Kind
		}
		r.at(limit, dn.At, field+".Limit")
	}
	switch {
	case len(h.Neighbours) == 0 && h.NothingNear == "":
		r.b.Problems.Add(h.At, "no-neighbour", h.Mark+" does not say what beside it must stay cool",
			"neighbours: a list, of each what it is, how far away, and its kind", "or nothing-near: why nothing there has to be protected")
	case len(h.Neighbours) > 0 && h.NothingNear != "":
		r.b.Problems.Add(d.NothingNear.At, "no-neighbour", h.Mark+" has neighbours and says that nothing is near", "take nothing-near: out")
	}
}
