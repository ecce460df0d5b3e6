package fit

import "fmt"

// Fit is a bore and a shaft of one nominal size.
type Fit struct {
	Hole, Shaft Zone
}

// String writes the fit as on a drawing: "Ø120 H7/r6".
func (f Fit) String() string {
	return fmt.Sprintf("%s/%s%d", f.Hole, f.Shaft.Letter, f.Shaft.Grade)
}

// LeastClearance is the smallest bore less the greatest shaft; below zero it is an
// interference.
func (f Fit) LeastClearance() Nanometre { return f.Hole.Min() - f.Shaft.Max() }

// GreatestClearance is the greatest bore less the smallest shaft; below zero even
// the loosest pair is tight.
func (f Fit) GreatestClearance() Nanometre { return f.Hole.Max() - f.Shaft.Min() }

// LeastInterference is the smallest shaft less the greatest bore; below zero the
// loosest pair has clearance.
func (f Fit) LeastInterference() Nanometre { return -f.GreatestClearance() }

// GreatestInterference is the greatest shaft less the smallest bore; below zero the
// tightest pair still has clearance.
func (f Fit) GreatestInterference() Nanometre { return -f.LeastClearance() }

// Kind says what the limits allow: "clearance" (never tight), "interference" (never
// loose) or "transition" (either). Limits that just touch count as clearance when
// the greatest interference is zero, as ISO 286-1 3.3 has it.
func (f Fit) Kind() string {
	switch {
	case f.GreatestInterference() <= 0:
		return "clearance"
	case f.LeastInterference() >= 0:
		return "interference"
	}
	return "transition"
}
