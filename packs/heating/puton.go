package heating

import (
	"fmt"
	"math"

	"matchmark/packs/heat"
	"matchmark/packs/job"
	"matchmark/packs/units"
)

// rungs is how many interferences the table for the measured fit has.
const rungs = 5

// putOn reads how a part is put on hot and computes it.
func (r *heatReader) putOn() {
	d, h := r.def.PutOn, r.heat
	if d.At.IsZero() {
		return
	}
	out := &job.HotFit{By: heat.Means(d.By.Value), Coolant: heat.Coolant(d.Chill.Value)}
	h.PutOn = out
	r.at(d.By, d.At, "Source", "Source.Means", "Source.Net", "Fit.Clearance", "Rise")
	out.Clearance = r.clearance(d.Clearance, d.Rise, "put-on")
	given, isGiven := r.celsius(d.HeatTo, "HeatTo")
	oven, hasOven := r.celsius(d.Oven, "Source.Inside", "Source.Film")
	if hasOven && d.By.Written() && out.By != heat.Oven {
		r.hole(d.Oven.At, "heat-oven", h.Mark+" is heated by "+d.By.Value+" and gives the temperature of an oven", "by: oven, or take oven: out")
	}
	out.Oven = oven
	if hasOven && oven > h.Limit.At && h.Limit.At > 0 {
		// Said here, so that it is told without a soak as well.
		r.hole(d.Oven.At, "heat-refused", fmt.Sprintf("%s: an oven of %s is above the %s that the part may have (%s)", h.Mark, r.degreesUp(oven), r.degreesDown(h.Limit.At), h.Limit.Source),
			"set it at the limit or below")
	}
	if h.Limit.NoFlame && out.By == heat.Torch {
		r.hole(d.By.At, "flame", h.Mark+": no flame may touch this part ("+h.Limit.Source+")", "by: oven, or by: induction")
	}
	r.checkMakersRise(given, isGiven)
	if r.holes > 0 {
		return
	}
	if out.Coolant != "" {
		r.chill(out)
		if isGiven && r.holes == 0 {
			r.makersTemperature(out, given, out.SetTo)
		}
	} else {
		r.refit(out, given, isGiven)
	}
	if r.holes > 0 {
		return
	}
	r.soak(out)
	if r.holes == 0 && out.Coolant == "" {
		r.ladder(out)
	}
}

// checkMakersRise sees that a rise and a temperature written side by side are one
// and the same thing.
func (r *heatReader) checkMakersRise(given heat.Celsius, isGiven bool) {
	d := r.def.PutOn
	if !isGiven || !d.Rise.Written() {
		return
	}
	v, ok := r.amount(d.Rise, units.KelvinRise, "Rise")
	if !ok {
		return
	}
	if err := heat.CheckRise(heat.KelvinRise(v), given, r.heat.Air); err != nil {
		r.refused(err, r.heat.Mark)
	}
}

// refit computes a part that is heated, to the temperature that the maker gives if
// he gives one, and put on a shaft as warm as the shop.
func (r *heatReader) refit(out *job.HotFit, given heat.Celsius, isGiven bool) {
	h := r.heat
	need, err := heat.Rise(r.joint(out.Clearance), h.Ring.Material, h.Seat.Material, h.Air)
	// What the part may not have at all is refused below, with the way out.
	if isGiven && err == nil && need.Hub <= h.Limit.At {
		r.makersTemperature(out, given, need.Hub)
	}
	if r.holes > 0 {
		return
	}
	plan, err := heat.Refit{
		Fit: r.joint(out.Clearance), Hub: h.Ring, Shaft: h.Seat,
		Air: heat.Surroundings{Air: h.Air, Film: film}, Limit: h.Limit, To: out.SetTo,
	}.Plan()
	if err != nil {
		r.refused(err, h.Mark)
		return
	}
	out.Plan, out.SetTo = &plan, plan.SetTo
	for _, w := range plan.Warnings {
		r.warned(w)
	}
}

// chill computes a part that is put on a cooled shaft, and the air of the room.
func (r *heatReader) chill(out *job.HotFit) {
	d, h := r.def.PutOn, r.heat
	r.at(d.Chill, d.At, "Coolant", "Shaft.Name")
	got, err := heat.ColdFit{
		Fit: r.joint(out.Clearance), Hub: h.Ring, Shaft: h.Seat, By: out.Coolant, Limit: h.Limit,
		Air: heat.Surroundings{Air: h.Air, Film: film},
	}.Plan()
	if err != nil {
		r.refused(err, h.Mark)
		return
	}
	out.Cold, out.SetTo = &got, got.SetTo
	r.room(out)
}

// room computes what the coolant does to the air of the room it is used in.
func (r *heatReader) room(out *job.HotFit) {
	d, h := r.def.PutOn, r.heat
	if !d.Room.Written() || !d.Coolant.Written() {
		r.hole(d.Chill.At, "no-room", h.Mark+" does not say how much "+d.Chill.Value+" comes into how large a room, so that nobody can tell whether the air stays fit to breathe",
			"coolant: the kilograms of dry ice, or the litres of nitrogen", "room: its free volume, in m3")
		return
	}
	volume, _ := r.amount(d.Room, units.CubicMetre, "Room")
	var nitrogen heat.Litre
	var ice heat.Kg
	if out.Coolant == heat.LiquidNitrogen {
		v, _ := r.amount(d.Coolant, units.Litre, "Nitrogen")
		nitrogen = heat.Litre(v)
	} else {
		v, _ := r.amount(d.Coolant, units.Kilogram, "Ice", "Nitrogen")
		ice = heat.Kg(v)
	}
	if r.holes > 0 {
		return
	}
	air, err := heat.RoomAfter(heat.M3(volume), nitrogen, ice)
	if err != nil {
		r.refused(err, h.Mark)
		return
	}
	out.Room = &air
	for _, w := range air.Warnings {
		switch w.Code {
		case "oxygen", "carbonic-short":
			r.b.Problems.Add(d.Coolant.At, "room-air", h.Mark+": "+w.Says, "bring less, or give the larger room, or the open air, that it is done in")
			r.b.Problems.Says(warning(h.Mark, w, r.units()))
		case "carbonic-shift":
			r.b.Problems.Warn(d.Coolant.At, "room-air", h.Mark+": "+w.Says, "bring less, or give the larger room that it is done in")
			r.b.Problems.Says(warning(h.Mark, w, r.units()))
		}
	}
}

// makersTemperature takes the temperature that the maker gives, if it opens the
// joint and the part may have it.
func (r *heatReader) makersTemperature(out *job.HotFit, given, need heat.Celsius) {
	h, at := r.heat, r.def.PutOn.HeatTo.At
	switch {
	case given > h.Limit.At:
		r.hole(at, "heat-to", fmt.Sprintf("%s: %s is above the %s that the part may have (%s)", h.Mark, r.degreesUp(given), r.degreesDown(h.Limit.At), h.Limit.Source),
			"lower it, or put the limit right")
	case given < need:
		r.hole(at, "heat-to", fmt.Sprintf("%s: %s does not open the joint by %s and %s of clearance; that takes %s",
			h.Mark, r.degreesDown(given), r.fine(h.Fit.Counted), r.fine(out.Clearance), r.degreesUp(need)),
			"raise it, or lower the clearance", "or count with measured sizes, in sizes:")
	default:
		out.SetTo, out.Given = given, true
	}
}

// soak computes how long the part stays in its heater, where the heater is told.
func (r *heatReader) soak(out *job.HotFit) {
	d, h := r.def.PutOn, r.heat
	if r.holes > 0 || out.SetTo <= h.Air {
		return
	}
	source := heat.Source{Means: out.By}
	switch {
	case out.By == heat.Oven && out.Oven > 0:
		source.Inside, source.Film = out.Oven, ovenFilm
	case out.By != heat.Oven && d.Net.Written():
		v, ok := r.amount(d.Net, units.Watt, "Source.Net")
		if !ok {
			return
		}
		source.Net = heat.Watt(v)
	default:
		return
	}
	got, err := heat.Soak{
		Bore: h.Fit.Diameter, Hub: h.Ring, Source: source, To: out.SetTo, Limit: h.Limit,
		Air: heat.Surroundings{Air: h.Air, Film: film},
	}.Plan()
	if err != nil {
		r.refused(err, h.Mark)
		return
	}
	out.Soak = &got
	if out.Plan != nil {
		out.Plan.Assumptions = append(out.Plan.Assumptions, got.Assumptions...)
	}
}

// ladder is the table for the interference as measured on the day: the lowest
// rung is the least that the fit allows, the highest the greatest.
func (r *heatReader) ladder(out *job.HotFit) {
	f, h := r.heat.Fit, r.heat
	least := max(f.Least, 0)
	if f.Greatest <= least || f.Bore == nil || f.Seat == nil {
		return
	}
	for i := 1; i <= rungs; i++ {
		upTo := least + (f.Greatest-least)*heat.Mm(i)/rungs
		// Up, so that a reading on the rung is always covered.
		upTo = heat.Mm(math.Ceil(float64(upTo)*1000-1e-6) / 1000)
		joint := r.joint(out.Clearance)
		joint.Interference = upTo
		free, err := heat.Rise(joint, h.Ring.Material, h.Seat.Material, h.Air)
		if err != nil {
			r.refused(err, h.Mark)
			return
		}
		set := heat.Celsius(5 * math.Ceil(float64(free.Hub)/5-1e-9))
		out.Ladder = append(out.Ladder, job.HeatRung{UpTo: upTo, SetTo: set, TooHot: set > h.Limit.At})
	}
}
