package align_test

import (
	"testing"

	"pgregory.net/rapid"

	"matchmark/packs/align"
	"matchmark/packs/units"
)

// shafts are two straight shafts: the movable one stands off by up and right at the dial's
// plane and climbs by slopes on a length of 1. Dials are worked out from where each touches,
// with no formula of the package: distance of a point on the rim from the other axis.
type shafts struct{ up, right, slopeUp, slopeRight units.Number }

// rim gives what a dial shows at a place x when it is zeroed at the top: + where the rim it
// touches is farther out from the axis that the bracket turns about.
func (s shafts) rim(x, sag units.Number, onStationary bool) [4]string {
	up, right := s.up.Add(s.slopeUp.Mul(x)), s.right.Add(s.slopeRight.Mul(x))
	if onStationary { // the stationary rim seen from the movable axis
		up, right = up.Neg(), right.Neg()
	}
	two := units.Whole(2)
	// How far out the rim is at top, right, bottom, left, less the top; the bracket hangs
	// away from the rim at the bottom.
	return [4]string{"0", right.Sub(up).Sub(sag).Text(), up.Neg().Sub(up).Sub(two.Mul(sag)).Text(), right.Neg().Sub(up).Sub(sag).Text()}
}

// face gives what a face dial on the side toward the other hub shows on a circle of
// diameter d, with the shafts drifting apart by float on each quarter turn: + where the gap
// is smaller. An axis that climbs closes the gap at the top.
func (s shafts) face(d, float units.Number, back bool) [4]string {
	r := d.Quo(units.Whole(2))
	u, v := s.slopeUp.Mul(r), s.slopeRight.Mul(r)
	if back {
		u, v = u.Neg(), v.Neg()
	}
	at := func(n units.Number, quarter int64) string {
		return n.Sub(u).Add(float.Mul(units.Whole(quarter))).Text()
	}
	return [4]string{"0", at(v, 1), at(u.Neg(), 2), at(v.Neg(), 3)}
}

func drawn(t *rapid.T, name string, most int) units.Number {
	n := int64(rapid.IntRange(-most, most).Draw(t, name))
	return units.Whole(n).Quo(units.Whole(1000))
}

// After the moves the shafts are in line at every foot, whichever way the dials are set up.
func TestMovesBringTheShaftsInLine(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		sh := shafts{drawn(t, "up", 900), drawn(t, "right", 900), drawn(t, "slope up", 2), drawn(t, "slope right", 2)}
		sag := drawn(t, "sag", 200).Abs()
		zero := units.Whole(0)
		mm := func(n units.Number) *units.Quantity { return &units.Quantity{Number: n, Unit: units.Millimetre} }
		s := align.Setup{Unit: units.Millimetre, Reads: q(t, "0.01 mm"), Sag: mm(sag), SagOther: mm(sag)}
		for _, x := range []int64{250, 700, 1100} {
			s.Feet = append(s.Feet, align.Foot{Name: "feet", At: mm(units.Whole(x))})
		}
		var r turned
		if rapid.Bool().Draw(t, "reverse") {
			s.Method, s.Span = align.ReverseDials, q(t, "400 mm")
			r = turned{align.OnStationary: sh.rim(zero, sag, true), align.OnMovable: sh.rim(units.Whole(400), sag, false)}
		} else {
			s.Method, s.FaceDiameter = align.RimFace, q(t, "200 mm")
			s.DialsOn = rapid.SampledFrom([]align.Hub{align.Stationary, align.Movable}).Draw(t, "dials on")
			s.FaceBack = rapid.Bool().Draw(t, "back")
			s.TwoFaceDials = rapid.Bool().Draw(t, "two face dials")
			d := units.Whole(200)
			r = turned{align.Rim: sh.rim(zero, sag, s.DialsOn == align.Stationary), align.Face: sh.face(d, zero, s.FaceBack)}
			if s.TwoFaceDials {
				float := drawn(t, "float", 100)
				r[align.Face] = sh.face(d, float, s.FaceBack)
				other := shafts{slopeUp: sh.slopeUp.Neg(), slopeRight: sh.slopeRight.Neg()}
				r[align.FaceOther] = other.face(d, float, s.FaceBack)
			}
		}
		readings := map[align.Reading]units.Quantity{}
		for dial, four := range r {
			for i, at := range []align.Clock{align.Top, align.Right, align.Bottom, align.Left} {
				readings[align.Reading{Dial: dial, At: at}] = units.Quantity{Number: exact(t, four[i]), Unit: units.Millimetre}
			}
		}
		res := work(t, s, readings)
		for i, foot := range s.Feet {
			up := sh.up.Add(sh.slopeUp.Mul(foot.At.Number)).Add(res.Moves[i].Up)
			right := sh.right.Add(sh.slopeRight.Mul(foot.At.Number)).Add(res.Moves[i].Right)
			if up.Sign() != 0 || right.Sign() != 0 {
				t.Fatalf("%+v: the feet at %s still stand %s high and %s right", sh, foot.At.Text(), up.Text(), right.Text())
			}
		}
		if res.OffsetUp.Cmp(sh.up) != 0 || res.SlopeRight.Cmp(sh.slopeRight) != 0 {
			t.Fatalf("offset %s, slope %s; want %s, %s", res.OffsetUp.Text(), res.SlopeRight.Text(), sh.up.Text(), sh.slopeRight.Text())
		}
		for _, c := range res.Checks {
			if c.Dial != align.Face && c.Dial != align.FaceOther && c.Sum.Sign() != 0 {
				t.Fatalf("dial %d does not close: %s", c.Dial, c.Sum.Text())
			}
		}
	})
}

// exact reads back the text of a worked number.
func exact(t tester, s string) units.Number {
	t.Helper()
	n, err := units.ParseNumber(s)
	if err != nil {
		t.Fatalf("%s: %v", s, err)
	}
	return n
}
