package joint

// Torque and preload
//
//	T = K d F                                          by a nut factor
//	T = F (l/2π + 1.1547 μt d2/2 + μb Db/2)            by coefficients of friction
//
//	T    torque, N·m (d, l, d2, Db in mm are turned into m)
//	F    preload, N
//	K    nut factor
//	d    nominal diameter
//	l    lead: the rise of one turn
//	d2   pitch diameter
//	μt   friction in the thread; 1.1547 = 1/cos 30°, half the thread angle of 60°
//	μb   friction under the turned face
//	Db   mean diameter of that face = (Do + dh)/2, outer diameter and hole
//
// The second form gives K = T/(d F). Sources: the nut factor, any machinery handbook; the
// second form, ISO 16047 and VDI 2230 (both from memory). Valid for 60° threads turned
// slowly at room temperature. Refused: friction not told, or without its source.

import (
	"math"

	"matchmark/packs/units"
)

// Friction says how torque turns into preload: a nut factor, or two coefficients with the
// face that is turned. Source says where it comes from and may not be empty.
type Friction struct {
	NutFactor *units.Number

	Thread, Bearing *units.Number   // μ in the thread and under the turned face
	Face, Hole      *units.Quantity // outer diameter of the face, and the hole in it

	Source string
}

// Both kinds of coefficient and the nut factor lie within these; outside them a point has
// slipped. Published nut factors go from 0.10 (oiled steel) to 0.50 (stainless).
const leastFriction, mostFriction = 0.02, 1.0

// nutFactor works the friction out as a nut factor.
func (a *account) nutFactor() {
	f := a.s.Friction
	switch {
	case f == nil || f.NutFactor == nil && f.Thread == nil && f.Bearing == nil:
		a.refuse("friction", "write the nut factor and where it comes from, for example 0.16, data sheet of the paste",
			"the friction is not known, and without it a torque gives no preload")
		return
	case f.Source == "":
		a.refuse("friction.source", "name the data sheet, the standard or the test", "the friction has no source")
	}
	if f.NutFactor != nil {
		if f.Thread != nil || f.Bearing != nil {
			a.refuse("friction.nutfactor", "keep one of them", "friction is told twice, by a nut factor and by coefficients")
		}
		a.frictionInRange("friction.nutfactor", "nut factor", f.NutFactor)
		a.r.NutFactor = ratio(*f.NutFactor)
		return
	}
	a.byCoefficients(f)
}

// frictionInRange refuses a coefficient that is not told or cannot be one.
func (a *account) frictionInRange(field, what string, n *units.Number) {
	switch {
	case n == nil:
		a.refuse(field, "write all of them, or a nut factor", "the %s is not told", what)
	case ratio(*n) < leastFriction || ratio(*n) > mostFriction:
		a.refuse(field, "write it like 0.16", "%s %s cannot be: it lies from %g to %g", what, n.Text(), leastFriction, mostFriction)
	}
}

// byCoefficients works out the nut factor from friction in the thread and under the face.
func (a *account) byCoefficients(f *Friction) {
	a.frictionInRange("friction.thread", "friction in the thread", f.Thread)
	a.frictionInRange("friction.bearing", "friction under the turned face", f.Bearing)
	if a.s.Thread == nil {
		return
	}
	face, ok := a.length("friction.face", "outer diameter of the turned face", f.Face)
	hole, ok2 := a.length("friction.hole", "hole in the turned face", f.Hole)
	if !ok || !ok2 || len(a.refusals.Refusals) > 0 {
		return
	}
	t := *a.s.Thread
	if hole >= face || face < float64(t.Diameter) {
		a.refuse("friction.face", "write the flats of the nut, or the washer's face", "a face of %s with a hole of %s cannot bear on %s", f.Face.Text(), f.Hole.Text(), t)
		return
	}
	mut, mub := float64(ratio(*f.Thread)), float64(ratio(*f.Bearing))
	d, lead, d2, db := float64(t.Diameter), float64(t.Lead()), float64(t.PitchDiameter()), (face+hole)/2
	k := (lead/(2*math.Pi) + mut*d2/(2*math.Cos(math.Pi/6)) + mub*db/2) / d
	a.r.NutFactor = Ratio(k)
	a.work("nut factor", "K = (l/2π + 1.1547 μt d2/2 + μb Db/2)/d", "ISO 16047",
		fig("l", lead, "mm"), fig("μt", mut, ""), fig("d2", d2, "mm"), fig("μb", mub, ""), fig("Db", db, "mm"), fig("d", d, "mm"), fig("K", k, ""))
}

// torqueFor gives the torque that a preload needs, in N·m.
func (a *account) torqueFor(f Newton) NewtonMetre {
	return NewtonMetre(float64(a.r.NutFactor) * float64(a.s.Thread.Diameter) / 1000 * float64(f))
}

// preloadAt gives the preload that a torque makes.
func (a *account) preloadAt(t NewtonMetre) Newton {
	return Newton(float64(t) / (float64(a.r.NutFactor) * float64(a.s.Thread.Diameter) / 1000))
}

// length reads a length that has to be there, in mm.
func (a *account) length(field, what string, q *units.Quantity) (float64, bool) {
	switch {
	case q == nil:
		a.refuse(field, "write it like 24 mm", "the %s is not told", what)
		return 0, false
	case q.Unit.Dimension() != units.Length || q.Number.Sign() <= 0:
		a.refuse(field, "write it like 24 mm", "%s is no length", q.Text())
		return 0, false
	}
	mm := float64(millimetres(*q))
	return mm, !math.IsNaN(mm)
}
