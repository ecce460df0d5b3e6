package align

import "matchmark/packs/units"

// The lines that set moves against limits, below those of Ladder
//
//	angle on L   a = (near - far) L/(xf - xn)     near, far: what the first and the last
//	                                              feet still want, xn and xf where they are
//	offset at x  o = -near + a (x - xn)/L
//
// With rim and face the offset at the dial's plane and the angle on the face dial's diameter
// are the lines y0, z0 and f, g themselves, if the shafts are to stand in line: no line is added.
//
// The same as Judge works out: the shaft lies where its feet still want to go, the other
// way. Derived from a straight shaft.

// The lines of a verdict.
const (
	AngleUp       RungCode = MoveRight + 1 + iota // how far the shafts come apart in height on the source's length
	AngleRight                                    // sideways
	OffsetAtUp                                    // how far beside each other they lie where the source judges it, in height
	OffsetAtRight                                 // sideways
)

// LadderTo gives the lines of Ladder, and below them those that set the moves against
// limits, where those of Ladder do not say it. The error is Refusals.
func (s Setup) LadderTo(l Limits) ([]Rung, error) {
	f, rs := s.read()
	at := rs.length("limits.at", "place where the offset is judged", l.At, s.Unit)
	over := rs.positive("limits.over", "length that the angle is told on", l.Over, s.Unit)
	if len(rs.Refusals) > 0 {
		return nil, rs.Err()
	}
	w := &lines{rungs: f.ladder()}
	if f.saysItself(at, over) {
		return w.rungs, nil
	}
	last := len(f.at) - 1
	between := f.at[last].Sub(f.at[0])
	for _, way := range []struct{ move, angle, offset RungCode }{{MoveUp, AngleUp, OffsetAtUp}, {MoveRight, AngleRight, OffsetAtRight}} {
		near, far := w.find(way.move, 0), w.find(way.move, last)
		angle := w.add(Rung{Code: way.angle, Foot: -1, Terms: []Term{ofRung(near, over, between), ofRung(far, over.Neg(), between)}})
		w.add(Rung{Code: way.offset, Foot: -1, Terms: []Term{ofRung(near, one.Neg(), one), ofRung(angle, at.Sub(f.at[0]), over)}})
	}
	return w.rungs, nil
}

// saysItself reports whether the readings of rim and face are what the limits judge, so that
// working them back from the moves would end where it began: the offset is judged at the dial's
// plane, the angle on the diameter of the face dial, and the shafts are to stand in line.
func (f frame) saysItself(at, over units.Number) bool {
	if f.s.Method != RimFace || at.Sign() != 0 || over.Cmp(f.face) != 0 {
		return false
	}
	for _, n := range append(append([]units.Number{}, f.up...), f.right...) {
		if n.Sign() != 0 {
			return false
		}
	}
	return true
}

// find is the line of a code for a foot.
func (l *lines) find(code RungCode, foot int) int {
	for i, r := range l.rungs {
		if r.Code == code && r.Foot == foot {
			return i
		}
	}
	return -1
}

// Extended is a result with the lines of a longer ladder worked out as well: those of
// LadderTo begin with those of Ladder.
func (res Result) Extended(ladder []Rung) Result {
	out := res
	out.Rungs = ladder
	out.Values = append(res.Values[:0:0], res.Values...)
	for _, r := range ladder[min(len(res.Values), len(ladder)):] {
		out.Values = append(out.Values, r.value(nil, out.Values))
	}
	return out
}
