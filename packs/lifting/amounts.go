package lifting

import (
	"strconv"

	"matchmark/packs/lift"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// written says in which units an amount is written. Nobody is offered a number: what
// has to be weighed, measured or looked up is not to be copied from a message.
var written = map[units.Dimension]string{
	units.Mass: "in kg, t or lb", units.Length: "in mm, m, in or ft", units.Angle: "in degrees, as °", units.Ratio: "in %",
	units.Force: "in N, kN or lbf", units.Pressure: "in kN/m2 or lb/ft2", units.Torque: "in N·m or lb-ft",
}

// lacks books something that is not written at all, and has been told by the reader of
// the file, as a reason on paper.
func (r *liftReader) lacks(what string) {
	r.hole = true
	r.l.Because = append(r.l.Because, source.Problem{Code: "missing-key", Message: what + " is not written", Sentence: source.NotWritten(what)})
}

// amount reads a quantity of one dimension in a unit; what is not written is 0.
func (r *liftReader) amount(field string, t source.Text, dim units.Dimension, u units.Unit) float64 {
	if !t.Written() {
		return 0
	}
	r.at[field] = t.At
	q, ok := r.b.Quantity(t, "a number "+written[dim])
	if !ok {
		r.hole = true
		return 0
	}
	if q.Unit.Dimension() != dim {
		r.b.Problems.Add(t.At, "wrong-quantity", source.Quote(t.Value)+" is no "+dim.String(), "write it "+written[dim])
		r.hole = true
		return 0
	}
	switch q.Unit {
	case units.Inch, units.Foot:
		r.l.InchesUsed = true
	case units.Pound:
		r.pounds = true
	}
	converted, err := q.Convert(u)
	if err != nil {
		r.hole = true
		return 0
	}
	x, _ := converted.Number.Rat().Float64()
	return x
}

func (r *liftReader) kg(field string, t source.Text) lift.Kg {
	return lift.Kg(r.amount(field, t, units.Mass, units.Kilogram))
}

func (r *liftReader) mm(field string, t source.Text) lift.Mm {
	return lift.Mm(r.amount(field, t, units.Length, units.Millimetre))
}

func (r *liftReader) angle(field string, t source.Text) lift.Degree {
	return lift.Degree(r.amount(field, t, units.Angle, units.Degree))
}

func (r *liftReader) share(field string, t source.Text) lift.Ratio {
	return lift.Ratio(r.amount(field, t, units.Ratio, units.Percent) / 100)
}

// moment reads a bending moment.
func (r *liftReader) moment(field string, t source.Text) lift.NewtonMetre {
	return lift.NewtonMetre(r.amount(field, t, units.Torque, units.NewtonMetre))
}

// force reads a force, as the mass whose weight it is.
func (r *liftReader) force(field string, t source.Text) lift.Kg {
	return lift.Kg(r.amount(field, t, units.Force, units.Newton)) / lift.Kg(lift.Kg(1).Newton())
}

// number reads a bare number; what is not written is 0.
func (r *liftReader) number(field string, t source.Text) float64 {
	if !t.Written() {
		return 0
	}
	r.at[field] = t.At
	n, err := units.ParseNumber(t.Value)
	if err != nil {
		r.b.Fault(t, err)
		r.hole = true
		return 0
	}
	x, _ := n.Rat().Float64()
	return x
}

// point reads three lengths. What says what stands there, for a place that has to be
// known.
func (r *liftReader) point(field string, list []source.Text, what string) lift.Point {
	if len(list) > 0 {
		if _, known := r.at[field]; !known {
			r.at[field] = list[0].At
		}
	}
	if len(list) != 3 {
		if len(list) > 0 {
			r.b.Problems.Add(list[0].At, "three-lengths", "a point takes three lengths, along x, y and z; here stand "+strconv.Itoa(len(list)), "write all three: [x, y, z]")
		}
		if len(list) == 0 && what != "" {
			r.lacks(what)
		}
		r.hole = r.hole || len(list) > 0
		return lift.Point{}
	}
	return lift.Point{
		X: r.mm(field+".x", list[0]), Y: r.mm(field+".y", list[1]), Z: r.mm(field+".z", list[2]),
	}
}

// threeOrOne reads three lengths, or one that stands for all.
func (r *liftReader) threeOrOne(field string, list []source.Text) lift.Point {
	if len(list) == 1 {
		x := r.mm(field, list[0])
		return lift.Point{X: x, Y: x, Z: x}
	}
	return r.point(field, list, "")
}
