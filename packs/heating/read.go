package heating

import (
	"errors"
	"slices"
	"strings"

	"matchmark/packs/def"
	"matchmark/packs/fit"
	"matchmark/packs/heat"
	"matchmark/packs/job"
	"matchmark/packs/names"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// A heatReader turns one heat as written into the inputs of the calculations, and
// their refusals into problems at the keys that they speak of.
type heatReader struct {
	b    *names.Index
	def  *def.Heat
	heat *job.Heat
	// places tells where each field of a calculation was written.
	places map[string]source.Pos
	// holes counts inputs that could not be read: with one nothing is computed.
	holes int

	yield, shaftYield heat.MPa
	seat              heat.Seat
	known             *plans
}

// hole reports what is wrong with an input.
func (r *heatReader) hole(at source.Pos, code, message string, help ...string) {
	r.holes++
	r.because(code, message, nil)
	r.b.Problems.Add(at, code, message, help...)
}

// because books a reason for the paper, once.
func (r *heatReader) because(code, why string, in source.Sentence) {
	why = strings.TrimPrefix(strings.TrimPrefix(why, r.heat.Mark+": "), r.heat.Mark+" ")
	if !slices.ContainsFunc(r.heat.Because, func(p source.Problem) bool { return p.Message == why }) {
		r.heat.Because = append(r.heat.Because, source.Problem{Code: code, Message: why, Sentence: in})
	}
}

// at notes where the fields of a calculation come from.
func (r *heatReader) at(t source.Text, fallback source.Pos, fields ...string) {
	at := t.At
	if at.IsZero() {
		at = fallback
	}
	for _, f := range fields {
		r.places[f] = at
	}
}

// refused turns the refusal of a calculation into a problem.
func (r *heatReader) refused(err error, what string) {
	var no *heat.Refusal
	var wrong *fit.FieldError
	switch {
	case errors.As(err, &no):
		english := no.In(r.units())
		r.holes++
		r.because("heat-refused", what+": "+english.Why, refusal("", no, r.units()))
		r.b.Problems.Add(r.place(no.Field), "heat-refused", what+": "+english.Why, english.Instead)
		r.b.Problems.Says(refusal(r.heat.Mark, no, r.units()))
	case errors.As(err, &wrong):
		r.hole(r.place(wrong.Field), "heat-refused", what+": "+wrong.Problem)
	}
}

// units are those in which the author writes, for the messages of the calculation.
func (r *heatReader) units() heat.Units {
	return heat.Units{Inch: r.heat.Inch, Fahrenheit: r.heat.Fahrenheit}
}

// place is where a field was written: the nearest that is known of Fit.Diameter,
// Fit, and the heat itself.
func (r *heatReader) place(field string) source.Pos {
	for f := field; f != ""; {
		if at, ok := r.places[f]; ok {
			return at
		}
		i := strings.LastIndexByte(f, '.')
		if i < 0 {
			break
		}
		f = f[:i]
	}
	return r.heat.At
}

// written says in which units an amount is written. Nobody is offered a number: what
// has to be measured or looked up is not to be copied from a message.
var written = map[units.Dimension]string{
	units.Length: "in mm or in", units.Temperature: "in °C or °F", units.Rise: "as a rise, in C rise or F rise", units.Force: "in kN or lbf",
	units.Pressure: "in MPa or psi", units.Torque: "in N·m or lb-ft", units.Time: "in s or min", units.Power: "in kW", units.Mass: "in kg or lb",
	units.Volume: "in m3 or l",
}

// amount reads a quantity in the given unit, or one that converts to it.
func (r *heatReader) amount(t source.Text, in units.Unit, fields ...string) (float64, bool) {
	r.at(t, r.heat.At, fields...)
	if !t.Written() {
		return 0, false
	}
	q, ok := r.b.Quantity(t, "a number "+written[in.Dimension()])
	if !ok {
		r.holes++
		r.because("not-a-number", source.Quote(t.Value)+" is not an amount", nil)
		return 0, false
	}
	same, err := q.Convert(in)
	if err != nil {
		f := err.(*units.Fault)
		help := f.Help
		if len(help) == 0 {
			help = []string{"write it " + written[in.Dimension()]}
		}
		r.hole(t.At, "heat-unit", f.Message, help...)
		return 0, false
	}
	switch q.Unit {
	case units.Inch, units.Mil, units.Foot:
		r.heat.Inch = true
	case units.Fahrenheit, units.FahrenheitRise:
		r.heat.Fahrenheit = true
	}
	v, _ := same.Number.Rat().Float64()
	return v, true
}

func (r *heatReader) mm(t source.Text, fields ...string) heat.Mm {
	v, _ := r.amount(t, units.Millimetre, fields...)
	return heat.Mm(v)
}

func (r *heatReader) celsius(t source.Text, fields ...string) (heat.Celsius, bool) {
	v, ok := r.amount(t, units.Celsius, fields...)
	return heat.Celsius(v), ok
}

// parts reads hub and shaft: which parts, of what, how large.
func (r *heatReader) parts() {
	d, pl := r.def, r.heat.Place
	one := func(t source.Text) *job.Part {
		if !t.Written() {
			return nil
		}
		found := r.b.PartsAt(t, pl)
		if len(found) > 1 {
			r.hole(t.At, "which-place", source.Quote(t.Value)+" stands at several places", "name the place: "+found[0].Place.Mark(found[0].Key), "or give "+r.heat.Base+" the same each:")
		}
		if len(found) != 1 {
			return nil
		}
		return found[0]
	}
	r.heat.Hub, r.heat.Shaft = one(d.Hub.Part), one(d.Shaft.Part)
	r.heat.Ring = heat.Hub{
		Outside: r.mm(names.TextAt(pl, d.Hub.Outside), "Hub.Outside", "HubOutside"),
		Length:  r.mm(names.TextAt(pl, d.Hub.Length), "Hub.Length", "Length"),
	}
	r.heat.Seat = heat.Shaft{
		Bore:   r.mm(names.TextAt(pl, d.Shaft.Bore), "Shaft.Bore", "ShaftBore"),
		Behind: r.mm(names.TextAt(pl, d.Shaft.Behind), "Shaft.Behind"),
		Front:  r.mm(names.TextAt(pl, d.Shaft.Front), "Shaft.Front"),
	}
	r.heat.Ring.Material = r.material(d.Hub.Material, "Hub.Material", "Hub")
	r.heat.Seat.Material = r.material(d.Shaft.Material, "Shaft.Material", "Shaft")
	if v, ok := r.amount(d.Hub.Yield, units.Megapascal, "Yield", "Hub.Yield"); ok {
		r.yield = heat.MPa(v)
	}
	if v, ok := r.amount(d.Hub.Strength, units.Megapascal, "Hub.Strength"); ok {
		r.heat.Ring.Strength = heat.MPa(v)
	}
	if v, ok := r.amount(d.Shaft.Yield, units.Megapascal, "Shaft.Yield"); ok {
		r.shaftYield = heat.MPa(v)
	}
	r.seat = heat.Seat(d.SeatForm.Value)
	r.at(d.SeatForm, r.heat.At, "Seat", "Fit.Seat")
}

func (r *heatReader) material(t source.Text, fields ...string) heat.Material {
	r.at(t, r.heat.At, fields...)
	if !t.Written() {
		return heat.Material{} // the reader of the file has said so
	}
	m, err := heat.MaterialNamed(t.Value)
	if err != nil {
		r.places["Material"] = t.At
		r.refused(err, r.heat.Mark)
	}
	return m
}

// temperatures reads how warm the parts are at the start and how hot the heated
// one may get.
func (r *heatReader) temperatures() {
	d := r.def
	if air, ok := r.celsius(d.Air, "Air", "Hub.Start", "Shaft.Start"); ok {
		r.heat.Air = air
	}
	r.heat.Ring.Start, r.heat.Seat.Start = r.heat.Air, r.heat.Air
	at := d.Hub.At
	if at.IsZero() {
		at = r.heat.At
	}
	r.heat.Limit = r.limit(d.Hub.Kind, d.Hub.AtMost, d.Hub.Source, at, "the heated part", "Skin", "Limit")
	r.heat.LimitFrom = d.Hub.Source.Value
	r.checkFlame()
	// Above what is common for its material, a site value is worth a second look.
	for _, m := range materialKinds {
		c, err := heat.CeilingFor(m.kind)
		if err == nil && !d.Hub.Kind.Written() && strings.HasPrefix(r.heat.Ring.Material.Name, m.material) {
			r.checkCeiling(d.Hub.AtMost, r.heat.Limit.At, c)
		}
	}
}

// materialKinds are the kinds of part whose highest temperature is that of their
// material.
var materialKinds = []struct{ material, kind string }{
	{"carbon steel", "plain carbon steel hub"},
	{"grey cast iron", "grey cast iron hub"},
	{"aluminium 2", "aluminium part"},
}

// checkCeiling warns of a site value above what is common for a kind of part.
func (r *heatReader) checkCeiling(t source.Text, at heat.Celsius, c heat.Ceiling) {
	if at > c.Limit.At && c.Limit.At > 0 {
		r.b.Problems.Warn(t.At, "above-ceiling", r.heat.Mark+": "+source.Quote(t.Value)+" is above the "+r.degrees(c.Limit.At)+" of the kind "+source.Quote(c.Part)+" ("+c.Limit.Source+")",
			"lower it, or keep it if the maker of the part allows it in writing")
	}
}

// limit is the highest temperature of a part: that of its kind, or the site's own.
func (r *heatReader) limit(kind, atMost, from source.Text, at source.Pos, what string, fields ...string) heat.Limit {
	var out heat.Limit
	r.at(kind, at, fields...)
	ceiling := heat.Ceiling{}
	if kind.Written() {
		var err error
		if ceiling, err = heat.CeilingFor(kind.Value); err != nil {
			r.places["Part"] = kind.At
			r.refused(err, r.heat.Mark)
		}
		out = ceiling.Limit
	}
	var own []string
	for _, f := range fields {
		own = append(own, f+".At", f+".Source", f)
	}
	switch {
	case atMost.Written():
		v, ok := r.celsius(atMost, own...)
		if !ok {
			break
		}
		out.At, out.Source = v, from.Value
		r.checkCeiling(atMost, v, ceiling)
		if !from.Written() {
			r.hole(atMost.At, "no-source", r.heat.Mark+": nobody stands behind the "+source.Quote(atMost.Value)+" of "+what, "source: maker's sheet 7, or the site rule")
		}
	case !kind.Written():
		r.hole(at, "no-ceiling", r.heat.Mark+" does not say how hot "+what+" may get",
			"at-most: with source:, from the maker's sheet or the site rule", "or kind: plain carbon steel hub, rolling bearing, bearing cover …")
	case from.Written():
		r.hole(from.At, "no-ceiling", r.heat.Mark+" has a source for how hot "+what+" may get, and no temperature", "at-most: what that source says, or take source: out")
	}
	return out
}

// coolestFlame is the lowest highest temperature that is common for a part which
// a flame may touch; below it the kind of part has to be said.
const coolestFlame heat.Celsius = 150

// checkFlame sees that a torch is not set on a part which is likely to be one that
// no flame may touch.
func (r *heatReader) checkFlame() {
	l, d := r.heat.Limit, r.def
	if l.At > 0 && l.At <= coolestFlame && !d.Hub.Kind.Written() && (d.Pull.By.Value == "torch" || d.PutOn.By.Value == "torch") {
		r.hole(d.Hub.AtMost.At, "flame", r.heat.Mark+": a part that may have only "+r.degrees(l.At)+" is seldom one that a flame may touch, and its kind is not said",
			"kind: grey cast iron hub, or what it is", "or heat it by induction")
	}
}
