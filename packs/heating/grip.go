package heating

import (
	"fmt"

	"matchmark/packs/fit"
	"matchmark/packs/heat"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// grip works out what the joint holds where it works, and what it takes to pull it
// cold.
func (r *heatReader) grip() {
	d, f := r.def.Grip, &r.heat.Fit
	f.AtWork, f.Torque = r.atWork(), r.torque()
	if d.At.IsZero() {
		r.checkGripGiven()
		return
	}
	rule := map[string]fit.SmoothingRule{"none": fit.NoLoss, "0.8": fit.LossEight, "0.4": fit.LossFour}[d.Smoothing.Value]
	f.Holding, f.Pulling, f.Smoothing = ratio(d.Holding), ratio(d.Pulling), rule
	f.Friction = fit.Claim{By: d.DecidedBy.Value, Reason: d.Because.Value}
	r.at(d.Holding, d.At, "Holding")
	r.at(d.Pulling, d.At, "Pulling")
	r.at(d.Smoothing, d.At, "Smoothing")
	in := fit.Press{
		Joint: fit.Mm(f.Diameter), HubOutside: fit.Mm(r.heat.Ring.Outside), ShaftBore: fit.Mm(r.heat.Seat.Bore), Length: fit.Mm(r.heat.Ring.Length),
		Hub: r.elastic(r.heat.Ring.Material, r.yield), Shaft: r.elastic(r.heat.Seat.Material, r.shaftYield),
		Least: fit.Micron(f.Least * 1000), Greatest: fit.Micron(f.Greatest * 1000),
		Holding: f.Holding, Pulling: f.Pulling, Friction: f.Friction,
		Smoothing: fit.Smoothing{Rule: rule, HubRz: r.rough(d.HubRough, "Smoothing.HubRz"), ShaftRz: r.rough(d.ShaftRough, "Smoothing.ShaftRz")},
		Seat:      fit.Seat(r.seat), Service: f.AtWork, Torque: f.Torque,
	}
	if f.Basis == heat.Measured {
		in.Least, in.Greatest = fit.Micron(f.Counted*1000), fit.Micron(f.Counted*1000)
	}
	if r.holes > 0 {
		return
	}
	out, err := in.Solve()
	if err != nil {
		r.refused(err, r.heat.Mark)
		return
	}
	if err := in.Backed(); err != nil {
		r.hole(d.At, "friction-unbacked", r.heat.Mark+": nobody stands behind the frictions "+d.Holding.Value+" and "+d.Pulling.Value+": they were not measured on this joint",
			"decided-by: and because: within grip:, with who answers for them and why they fit this joint")
	}
	f.Grip = &out
	r.checkWall(out)
	r.checkShaft(out)
	r.checkHold(out)
}

// checkGripGiven sees that what needs the frictions of a joint has them.
func (r *heatReader) checkGripGiven() {
	const help = "grip: with holding:, pulling:, smoothing:, decided-by: and because:"
	if p := r.def.Pull; !p.At.IsZero() && p.Puller.Value != "none" {
		r.hole(p.At, "no-grip-given", r.heat.Mark+" is pulled, and the friction that the puller is chosen for is not said", help)
	}
	if w := r.def.AtWork; !w.At.IsZero() {
		r.hole(w.At, "no-grip-given", r.heat.Mark+" says where the joint works, and no friction by which what it holds there is worked out", help)
	}
}

func (r *heatReader) rough(t source.Text, field string) fit.Micron {
	v, _ := r.amount(t, units.Micrometre, field)
	return fit.Micron(v)
}

// atWork reads where the joint works; nil where that is not told.
func (r *heatReader) atWork() *fit.Service {
	d := r.def.AtWork
	if d.At.IsZero() {
		return nil
	}
	r.at(source.Text{}, d.At, "Service")
	degrees := func(t source.Text, field string) fit.Celsius {
		v, _ := r.celsius(t, "Service."+field)
		return fit.Celsius(v)
	}
	rise := func(t source.Text, field string) fit.KelvinRise {
		v, _ := r.amount(t, units.KelvinRise, "Service."+field)
		return fit.KelvinRise(v)
	}
	out := &fit.Service{
		Coldest: degrees(d.Coldest, "Coldest"), Hottest: degrees(d.Hottest, "Hottest"),
		HubOver: rise(d.HubOver, "HubOver"), ShaftOver: rise(d.ShaftOver, "ShaftOver"), Speed: fit.PerMinute(ratio(d.RPM)),
	}
	r.at(d.RPM, d.At, "Service.Speed")
	return out
}

// torque reads what the shaft carries under the heated part.
func (r *heatReader) torque() fit.NewtonMetre {
	v, _ := r.amount(r.def.Shaft.Torque, units.NewtonMetre, "Torque")
	return fit.NewtonMetre(v)
}

// elastic is what the pressure needs to know of a material. Its expansion is the mean
// over the temperatures of the work, or about that of a workshop.
func (r *heatReader) elastic(m heat.Material, yield heat.MPa) fit.Elastic {
	from, to := heat.Celsius(20), heat.Celsius(30)
	if w := r.heat.Fit.AtWork; w != nil {
		from, to = heat.Celsius(w.Coldest)-heat.Celsius(w.ShaftOver), heat.Celsius(w.Hottest)+heat.Celsius(w.HubOver)
	}
	out := fit.Elastic{E: fit.GPa(m.Young / 1000), Poisson: fit.Ratio(m.Poisson), Yield: fit.MPa(yield), Density: fit.KgPerM3(m.Density)}
	if m.Name != "" {
		out.Alpha = fit.PerKelvin(m.Alpha(from, to))
	}
	return out
}

// fullUse is the share of yield that satisfactory fits typically reach at the bore
// of the hub (Bloch, Improving Machinery Reliability, p. 217).
const fullUse = 0.8

// checkWall sees that the fit does not stretch its hub beyond its yield, cold or where
// it works.
func (r *heatReader) checkWall(out fit.Pressed) {
	use, says := float64(out.Tightest.HubUse), "the fit alone"
	if w := out.AtWork; w != nil && float64(w.Tightest.HubUse) > use {
		use, says = float64(w.Tightest.HubUse), "the fit where it works"
	}
	says = fmt.Sprintf("%s: %s brings the bore of the hub to %s of its yield stress", r.heat.Mark, says, percentUp(use))
	switch {
	case use > 1:
		r.hole(r.place("Hub.Outside"), "thin-hub", says+": its wall is too thin for this fit",
			"put outside: or yield: right", "or count with measured sizes, in sizes:")
	case use > fullUse:
		r.b.Problems.Warn(r.place("Hub.Outside"), "thin-hub", says+", and about 80 % is what good fits reach", "put outside: or yield: right, or count with measured sizes")
	}
}

// checkShaft sees that fit, speed and torque together do not take the shaft beyond its
// yield.
func (r *heatReader) checkShaft(out fit.Pressed) {
	use := float64(out.Tightest.ShaftUse)
	if w := out.AtWork; w != nil {
		use = max(use, float64(w.Tightest.ShaftUse))
	}
	if use > 1 {
		r.hole(r.place("Shaft.Yield"), "shaft-yields", r.heat.Mark+": fit, speed and torque bring the shaft to "+percentUp(use)+" of its yield stress",
			"put yield:, bore: or torque: of the shaft right", "or count with measured sizes, in sizes:")
	}
}

// checkHold tells that nothing can be said of what a joint holds, where its author told
// for what it is reckoned: where it works, or the torque that it carries.
func (r *heatReader) checkHold(out fit.Pressed) {
	f := r.heat.Fit
	if f.AtWork == nil && f.Torque == 0 || out.Unbacked.Told() {
		return
	}
	switch {
	case out.HoldRefused.Told():
		r.b.Problems.Warn(r.place("Service"), "holds-not", r.heat.Mark+": what the joint surely holds cannot be given: "+out.HoldRefused.String(),
			"put the temperatures, the speed or the fit right", "or count with measured sizes, in sizes:")
	case f.Torque > out.Hold.Torque:
		r.b.Problems.Warn(r.place("Torque"), "holds-not", fmt.Sprintf("%s: the joint surely holds %s, and the shaft carries %s: what more there is goes through a key, or it slips",
			r.heat.Mark, r.torqueDown(out.Hold.Torque), r.torqueUp(f.Torque)), "say in note: what carries the rest, or count with measured sizes, in sizes:")
	}
}
