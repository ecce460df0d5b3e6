package align

// The lines from readings to moves
//
//	b'     bottom, with the sag put right        b' = b + 2 s
//	y0     how high the movable shaft stands at the dial's plane
//	           dial on the stationary hub        y0 =  b'/2
//	           dial on the movable hub           y0 = -b'/2
//	z0     how far right it stands; the sag falls out
//	           dial on the stationary hub        z0 = (left - right)/2
//	           dial on the movable hub           z0 = (right - left)/2
//	f      face reading at the bottom; with two face dials f = (f1 - f2)/2
//	g      face reading right less left; with two, half the difference of both
//	x, D   distance of the feet, diameter that the face dial runs on
//
//	rim and face    up    = -y0 + f x/D + target        (back of the face: - f x/D)
//	                right = -z0 - g x/D + target        (back of the face: + g x/D)
//	reverse dials   up    = -yS + (yS - yM) x/C + target, C between the dials
//	                right = -zS + (zS - zM) x/C + target
//
// Derived from two straight shafts; the same as F = bf B/D - br/2 (a published sheet for
// rim and face with the dials on the stationary hub) and (S - A) X/C - S (Bloch & Geitner,
// Machinery Component Maintenance and Repair, p. 203). Sag: a pump handbook, Fig 19.
// Valid for small angles, round hubs turned together, feet that bear evenly.

import "matchmark/packs/units"

// A RungCode names what a line gives; the sheet words it.
type RungCode uint8

// The lines.
const (
	TrueBottom  RungCode = iota + 1 // of one dial, with the sag put right
	OffsetUp                        // how high the movable shaft stands at one dial
	OffsetRight                     // how far right
	FaceUp                          // what the face dials read from top to bottom
	FaceRight                       // from left to right
	MoveUp                          // what one foot is raised by
	MoveRight                       // what it is moved right by
)

// A Rung is one line: a sum of terms.
type Rung struct {
	Code  RungCode
	Dial  Dial // of TrueBottom and the offsets
	Foot  int  // of the moves: which of Setup.Feet, else -1
	Terms []Term
}

// A Term is one summand: Times/Over of a reading, of a line above, or of 1 (a constant).
type Term struct {
	Reading     *Reading
	Rung        int // a line above, from 0; -1 for a reading or a constant
	Times, Over units.Number
	Target      bool // a constant that is a target, not a sag
}

var one, two = units.Whole(1), units.Whole(2)

func ofReading(d Dial, at Clock, times units.Number) Term {
	return Term{Reading: &Reading{d, at}, Rung: -1, Times: times, Over: one}
}

func ofRung(i int, times, over units.Number) Term { return Term{Rung: i, Times: times, Over: over} }

func constant(n units.Number) Term { return Term{Rung: -1, Times: n, Over: one} }

// Ladder gives the lines of the working in the order they are worked out, without any
// reading. The error is Refusals.
func (s Setup) Ladder() ([]Rung, error) {
	f, rs := s.read()
	if len(rs.Refusals) > 0 {
		return nil, rs.Err()
	}
	return f.ladder(), nil
}

// ladder builds the lines.
func (f frame) ladder() []Rung {
	l := &lines{}
	if f.s.Method == ReverseDials {
		ys, zs := l.offset(OnStationary, true, f.sag)
		ym, zm := l.offset(OnMovable, false, f.sagOther)
		f.reverse(l, MoveUp, ys, ym, f.up)
		f.reverse(l, MoveRight, zs, zm, f.right)
		return l.rungs
	}
	y0, z0 := l.offset(Rim, f.s.DialsOn == Stationary, f.sag)
	up := l.face(f.s.TwoFaceDials, FaceUp, Bottom, Top)
	right := l.face(f.s.TwoFaceDials, FaceRight, Right, Left)
	f.rimFace(l, MoveUp, y0, up, one, f.up)
	f.rimFace(l, MoveRight, z0, right, one.Neg(), f.right)
	return l.rungs
}

// lines are those written so far.
type lines struct{ rungs []Rung }

func (l *lines) add(r Rung) int {
	l.rungs = append(l.rungs, r)
	return len(l.rungs) - 1
}

// offset writes how high and how far right the movable shaft stands at one dial.
func (l *lines) offset(d Dial, onStationary bool, sag units.Number) (up, right int) {
	b := l.add(Rung{Code: TrueBottom, Dial: d, Foot: -1, Terms: []Term{
		ofReading(d, Bottom, one), ofReading(d, Top, one.Neg()), constant(two.Mul(sag)),
	}})
	sign, left := one, one
	if !onStationary {
		sign, left = one.Neg(), one.Neg()
	}
	up = l.add(Rung{Code: OffsetUp, Dial: d, Foot: -1, Terms: []Term{ofRung(b, sign, two)}})
	half := func(at Clock, times units.Number) Term {
		t := ofReading(d, at, times)
		t.Over = two
		return t
	}
	right = l.add(Rung{Code: OffsetRight, Dial: d, Foot: -1, Terms: []Term{half(Left, left), half(Right, left.Neg())}})
	return up, right
}

// face writes what the face dials read from one place to the one opposite.
func (l *lines) face(pair bool, code RungCode, at, less Clock) int {
	r := Rung{Code: code, Dial: Face, Foot: -1, Terms: []Term{ofReading(Face, at, one), ofReading(Face, less, one.Neg())}}
	if pair {
		// The second dial stands opposite and is read at the same time, so that a float
		// of the shafts shows on both alike and falls out.
		r.Terms = append(r.Terms, ofReading(FaceOther, at, one.Neg()), ofReading(FaceOther, less, one))
		for i := range r.Terms {
			r.Terms[i].Over = two
		}
	}
	return l.add(r)
}

// rimFace writes the moves of all feet in one direction.
func (f frame) rimFace(l *lines, code RungCode, offset, face int, sign units.Number, target []units.Number) {
	if f.s.FaceBack {
		sign = sign.Neg()
	}
	for i, x := range f.at {
		l.add(Rung{Code: code, Foot: i, Terms: withTarget([]Term{ofRung(offset, one.Neg(), one), ofRung(face, sign.Mul(x), f.face)}, target[i])})
	}
}

// reverse writes the moves of all feet in one direction.
func (f frame) reverse(l *lines, code RungCode, atS, atM int, target []units.Number) {
	for i, x := range f.at {
		l.add(Rung{Code: code, Foot: i, Terms: withTarget([]Term{
			ofRung(atS, one.Neg(), one), ofRung(atS, x, f.span), ofRung(atM, x.Neg(), f.span),
		}, target[i])})
	}
}

func withTarget(terms []Term, target units.Number) []Term {
	if target.Sign() == 0 {
		return terms
	}
	t := constant(target)
	t.Target = true
	return append(terms, t)
}
