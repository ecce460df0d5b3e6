package expand

import (
	"errors"
	"math/big"

	"matchmark/packs/def"
	"matchmark/packs/fit"
	"matchmark/packs/job"
	"matchmark/packs/names"
	"matchmark/packs/reading"
	"matchmark/packs/units"
)

// readWarm works out what a warm part is too large for each degree, from the size
// that its limits or its nominal size tell.
func (b *builder) readWarm(d *job.Dim, dd *def.Dimension) {
	if !dd.Warm.Written() {
		return
	}
	e, err := fit.ExpansionOf(dd.Warm.Value)
	if err != nil {
		b.Problems.Add(dd.Warm.At, "warm", err.Error(), "for example warm: steel")
		return
	}
	size, ok := b.aboutSize(d, dd)
	if !ok {
		b.Problems.Add(dd.Warm.At, "warm", d.Mark+": a correction to 20 °C needs the size of the part, and neither a limit nor nominal: tells it", "for example nominal: … mm")
		return
	}
	mm, err := size.Convert(units.Millimetre)
	if err != nil {
		b.Problems.Add(dd.Warm.At, "warm", d.Mark+" is read in "+size.Unit.Text()+"; only a length grows with the temperature", "take out warm:")
		return
	}
	long, _ := mm.Number.Rat().Float64()
	per, err := e.PerDegree(fit.Mm(long))
	if err != nil {
		var f *fit.FieldError
		errors.As(err, &f)
		b.Problems.Add(dd.Warm.At, "warm", d.Mark+": "+f.Problem, "take out warm:")
		return
	}
	d.Warm = &job.Warm{Material: e.Material, Source: e.Source, At: units.Quantity{Number: units.Whole(20), Unit: units.Celsius}}
	growth := units.Quantity{Number: units.Exact(new(big.Rat).SetFloat64(float64(per)), 0), Unit: units.Millimetre}
	if inches(d.Box.Unit) {
		// A degree Fahrenheit is 5/9 of a degree Celsius.
		d.Warm.At = units.Quantity{Number: units.Whole(68), Unit: units.Fahrenheit}
		growth.Number = growth.Number.Mul(units.Whole(5)).Quo(units.Whole(9))
	}
	if growth, err = growth.Convert(size.Unit); err == nil {
		d.Warm.PerDegree = threeFigures(growth)
	}
}

// inches reports whether a unit belongs to a shop that reads °F.
func inches(u units.Unit) bool { return u == units.Inch || u == units.Mil || u == units.Foot }

// aboutSize is the size of the part, near enough for its expansion: the nominal size,
// else an end of a limit.
func (b *builder) aboutSize(d *job.Dim, dd *def.Dimension) (units.Quantity, bool) {
	if t := names.TextAt(d.Place, dd.Nominal); t.Written() {
		q, err := units.ParseQuantity(t.Value)
		return q, err == nil
	}
	for _, l := range d.Limits() {
		for _, t := range l.Tests {
			low, high, ok := t.Limits()
			switch {
			case !ok || t.Group == reading.Spread || t.Group == reading.Sum:
			case low != nil:
				return *low, true
			case high != nil:
				return *high, true
			}
		}
	}
	return units.Quantity{}, false
}

// threeFigures rounds a small number to three figures: 0.00149 mm.
func threeFigures(q units.Quantity) units.Quantity {
	decimals := 2
	for limit := units.Whole(1); q.Number.Abs().Cmp(limit) < 0 && decimals < units.MaxFigures; decimals++ {
		limit = limit.Quo(units.Whole(10))
	}
	return q.Round(decimals, units.Nearest)
}
