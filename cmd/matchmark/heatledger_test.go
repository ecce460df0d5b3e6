package main

import (
	"fmt"
	"math"
	"reflect"

	"matchmark/packs/fit"
	"matchmark/packs/heat"
	"matchmark/packs/job"
	"matchmark/packs/units"
)

// heatSides are the sides of the figures of a heat by the struct and the field in which
// they stand; what is not named is printed as it was written, to the nearest. Common
// practice, no source: what is needed, loads or is reached up, what is held, is left or
// lasts down. The step is what the paper rounds to, in the unit of the field.
var heatSides = map[string]side{
	"Plan.Stays": atMost, "Plan.Loose": atMost, "Plan.HeatOn": atMost, "Plan.Levels": atMost, "Plan.Free": atLeast,
	"Plan.Skin": atLeast, "Plan.Bore": atLeast, "Plan.Seat": atLeast, "Plan.Into": atLeast,
	"Band.Least": atLeast, "Band.Most": atMost, "Band.LeastFree": atLeast, "Band.MostFree": atLeast, "Pace.Skin": atLeast,
	"Free.Opening": atLeast, "Free.Rise": atLeast, "Free.Hub": atLeast, "Wall.Difference": atLeast, "Wall.AtBore": atLeast, "Wall.AtSkin": atLeast, "Wall.Use": atLeast,
	"Warmed.Greatest": atLeast, "Warmed.IfStuck": atLeast, "Warmed.At": atLeast, "Warmed.IfStuckAt": atLeast,
	"Refitted.SetTo": atLeast, "Refitted.Room": atMost, "Refitted.Carry": atMost, "Refitted.Grips": atMost, "Refitted.GripsSoonest": atMost,
	"ColdFitted.SetTo": atLeast, "ColdFitted.Room": atMost, "ColdFitted.Carry": atMost, "ColdFitted.Grips": atMost, "ColdFitted.GripsSoonest": atMost,
	"Chilled.Shaft": atMost, "Chilled.Contraction": atMost, "Soaked.After": atLeast,
	"HotFit.SetTo": atLeast, "HotFit.Oven": atMost, "HotPull.PullsWith": atMost, "HotPull.Longest": atMost, "HeatRung.UpTo": atMost, "HeatRung.SetTo": atLeast, "Workable.Time": atLeast,
	"HeatFit.Least": atMost, "HeatFit.Greatest": atLeast, "HeatFit.Counted": atLeast, "HeatFit.Torque": atLeast, "Limit.At": atMost,
	"Contact.Pressure": atLeast, "Contact.HubEquivalent": atLeast, "Contact.ShaftEquivalent": atLeast, "Contact.HubUse": atLeast, "Contact.ShaftUse": atLeast,
	"Contact.Interference": atMost, "Air.Oxygen": atMost, "Air.Carbonic": atLeast, "Air.MostIce": atMost, "Air.MostNitrogen": atMost,
	"Hold.Axial": atMost, "Hold.Torque": atMost, "Pull.Axial": atLeast,
}

// A heatLedger books the figures of one heat by the unit in which they are printed.
type heatLedger struct {
	h   *job.Heat
	out map[string][]exact
}

func heatExacts(h *job.Heat) map[string][]exact {
	b := heatLedger{h, map[string][]exact{}}
	b.walk("heat", "Heat", "", reflect.ValueOf(*h))
	if h.LimitKnown() {
		c := heat.InCelsius
		if h.Fahrenheit {
			c = heat.InFahrenheit
		}
		b.book("crayon", eitherSide, h.Limit.Crayon(c))
	}
	b.book("cool enough to touch", eitherSide, heat.Celsius(40))
	for _, c := range heat.TemperColours() {
		b.book("colour", atMost, c.From)
	}
	if p := h.Pull; p != nil && p.Plan != nil {
		b.book("loose, the heat off", atMost, p.Plan.Loose-p.Plan.HeatOn)
		for _, w := range append(p.Plan.Working, p.Plan.Need.Working) {
			b.terms(w)
		}
	}
	if p := h.PutOn; p != nil && p.Plan != nil {
		b.terms(p.Plan.Need.Working)
	}
	if p := h.PutOn; p != nil && p.Cold != nil {
		b.terms(p.Cold.Working)
	}
	return b.out
}

func (b heatLedger) terms(w heat.Working) {
	for _, x := range w.Terms {
		to := map[units.Rounding]side{units.Up: atLeast, units.Down: atMost, units.Nearest: eitherSide}[x.Toward]
		b.add("working "+x.Symbol, x.Unit, float64(x.Value), to)
	}
}

func (b heatLedger) add(path, unit string, v float64, s side) {
	b.out[unit] = append(b.out[unit], exact{path, v, s})
}

// book adds one figure in the unit of its kind. The factors are those of NIST SP 811,
// appendix B.8.
func (b heatLedger) book(path string, s side, v any) {
	inch, fahrenheit := b.h.Inch, b.h.Fahrenheit
	either := func(metric, other string, use bool, v, w float64) {
		if use {
			b.add(path, other, w, s)
		} else {
			b.add(path, metric, v, s)
		}
	}
	switch x := v.(type) {
	case heat.Mm:
		either("mm", "in", inch, float64(x), float64(x)/25.4)
	case fit.Micron:
		either("mm", "in", inch, float64(x)/1000, float64(x)/25400)
	case heat.Celsius:
		either("°C", "°F", fahrenheit, float64(x), float64(x)*9/5+32)
	case fit.Celsius:
		either("°C", "°F", fahrenheit, float64(x), float64(x)*9/5+32)
	case heat.KelvinRise:
		either("°C", "°F", fahrenheit, float64(x), float64(x)*9/5)
	case heat.Newton:
		either("kN", "lbf", inch, float64(x)/1000, float64(x)/4.4482216152605)
	case fit.Newton:
		either("kN", "lbf", inch, float64(x)/1000, float64(x)/4.4482216152605)
	case fit.NewtonMetre:
		either("N·m", "lb-ft", inch, float64(x), float64(x)/1.3558179483314)
	case heat.MPa:
		either("MPa", "psi", inch, math.Abs(float64(x)), math.Abs(float64(x))/0.006894757293168)
	case fit.MPa:
		either("MPa", "psi", inch, math.Abs(float64(x)), math.Abs(float64(x))/0.006894757293168)
	case heat.Watt:
		b.add(path, "kW", float64(x)/1000, s)
	case heat.Second:
		b.add(path, "s", float64(x), s)
	case heat.Joule:
		b.add(path, "MJ", float64(x)/1e6, s)
	case heat.Percent:
		b.add(path, "%", float64(x), s)
	case heat.Number:
		b.add(path, "%", 100*float64(x), s)
	case fit.Ratio:
		b.add(path, "%", 100*float64(x), s)
	}
}

// walk books every figure within a value; owner is the struct in which a field stands.
func (b heatLedger) walk(path, owner, name string, v reflect.Value) {
	switch v.Kind() {
	case reflect.Pointer:
		// Not into the machine: parts, steps and dimensions have figures of their own.
		if _, own := map[string]bool{"Plan": true, "Refitted": true, "ColdFitted": true, "Pressed": true, "Work": true, "Service": true, "HotPull": true, "HotFit": true, "Soaked": true, "Air": true}[v.Type().Elem().Name()]; own && !v.IsNil() {
			b.walk(path, owner, name, v.Elem())
		}
	case reflect.Struct:
		switch v.Type().Name() {
		case "Material", "Working", "Moment", "Pos", "Place":
			return
		}
		in := v.Type().Name()
		if in == "Grip" {
			in = name
		}
		for i := range v.NumField() {
			if f := v.Type().Field(i); f.IsExported() {
				b.walk(path+"."+f.Name, in, f.Name, v.Field(i))
			}
		}
	case reflect.Slice:
		for i := range v.Len() {
			b.walk(fmt.Sprintf("%s[%d]", path, i), owner, name, v.Index(i))
		}
	case reflect.Float64:
		s, ok := heatSides[owner+"."+name]
		if !ok {
			s = eitherSide
		}
		b.book(path, s, v.Interface())
	}
}
