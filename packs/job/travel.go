package job

import (
	"math/big"
	"slices"

	"matchmark/packs/thread"
	"matchmark/packs/units"
)

// Travel is what one turn of a part with a thread, and one flat of it, moves it, in the
// unit of a reading: to hundredths of a millimetre or thousandths of an inch, a whole
// turn one figure finer. What is not known is nil.
func (p *Part) Travel(unit units.Unit) (perTurn, perFlat *units.Quantity) {
	if p.Thread == nil {
		return nil, nil
	}
	perTurn = travel(p.Thread.Lead(), 3, unit)
	if flat, err := p.Thread.PerFlat(p.Flats); p.Flats > 0 && err == nil {
		perFlat = travel(flat, 2, unit)
	}
	return perTurn, perFlat
}

func travel(mm thread.Mm, decimals int, unit units.Unit) *units.Quantity {
	q := units.Quantity{Number: units.Exact(new(big.Rat).SetFloat64(float64(mm)), 0), Unit: units.Millimetre}
	if in, err := q.Convert(units.Inch); err == nil && (unit == units.Inch || unit == units.Mil || unit == units.Foot) {
		q, decimals = in, decimals+1
	}
	q = q.Round(decimals, units.Nearest)
	return &q
}

// toldIn is what an author writes that a turn or a flat moves, in the unit of the reading beside
// which it is told: in his own figures where that is his unit, else as a thread tells it.
func toldIn(unit units.Unit, q *units.Quantity, decimals int) *units.Quantity {
	if q == nil || q.Unit == unit || unit.Dimension() != units.Length {
		return q
	}
	told, err := q.Convert(unit)
	if err != nil {
		return nil
	}
	if unit == units.Inch || unit == units.Mil || unit == units.Foot {
		decimals++
	}
	told = told.Round(decimals, units.Nearest)
	return &told
}

// alongThread are the kinds of a size between two faces that grows or shrinks by the travel of
// a thread when one of the two is its own.
var alongThread = []string{"stand-off", "gap", "clearance", "clearance-below", "depth", "length", "float"}

// Threaded reports whether the thread of the adjuster of a dimension tells what a turn does to
// it: only where the reading is taken to a face of the adjuster itself, along its axis. The sag
// of a belt, or what a lever passes on, goes by another ratio, which moves: of the part says.
func (d *Dim) Threaded() bool {
	p := d.Adjuster
	switch {
	case p == nil || p.Thread == nil:
		return false
	case d.Kind == "threads":
		return d.Of.Part == p || d.From.Part == p || d.To.Part == p
	case !slices.Contains(alongThread, d.Kind):
		return false
	case d.Of.Part == p:
		return d.Kind != "length" // a part is no longer for being turned
	}
	return (d.From.Part == p) != (d.To.Part == p)
}

// TellTravel tells what a turn and a flat of the adjuster of a dimension move it, in the unit
// of its box: that of a dimension which is worked out is known last. Nothing is told where
// neither its thread nor its maker says it of this reading.
func (d *Dim) TellTravel() {
	if d.Adjuster == nil {
		return
	}
	d.PerTurn, d.PerFlat = nil, nil
	if m := d.Adjuster.Movement; d.Threaded() {
		d.PerTurn, d.PerFlat = d.Adjuster.Travel(d.Box.Unit)
	} else if unit := d.Box.Unit; m != nil && (unit.Dimension() == units.Length || unit == units.None && d.Wrote.Formula.Written()) {
		d.PerTurn, d.PerFlat = toldIn(unit, m.PerTurn, 3), toldIn(unit, m.PerFlat, 2)
	}
	if d.BackOff == nil || d.PerTurn == nil {
		return
	}
	for _, q := range []*units.Quantity{d.BackOff.Low, d.BackOff.High} {
		if q == nil {
			continue
		}
		if told, err := q.Convert(d.PerTurn.Unit); err == nil {
			*q = told.Round(d.PerTurn.Number.Decimals(), units.Nearest)
		}
	}
}
