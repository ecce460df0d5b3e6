package job

import (
	"math/big"

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

// TellTravel tells again what the adjuster of a dimension moves, in the unit of its box:
// that of a dimension which is worked out is known last.
func (d *Dim) TellTravel() {
	if d.Adjuster == nil || d.Adjuster.Thread == nil {
		return
	}
	d.PerTurn, d.PerFlat = d.Adjuster.Travel(d.Box.Unit)
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
