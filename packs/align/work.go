package align

import (
	"fmt"

	"matchmark/packs/units"
)

// A Result is an alignment worked out.
type Result struct {
	Rungs  []Rung
	Values []units.Number // of each rung, exact, in the unit of the dials
	Moves  []Move         // of each plane of feet
	Checks []Check        // of each dial
	// Offset and Slope are how the shaft stands at the dial's plane against its target:
	// Slope is what it goes up or right on a length of 1.
	OffsetUp, OffsetRight units.Number
	SlopeUp, SlopeRight   units.Number
}

// A Move is what one plane of feet is raised (+) or lowered by, and moved right (+) or
// left.
type Move struct {
	Foot      string
	Up, Right units.Number
}

// A Check is whether the readings of one dial agree among themselves.
type Check struct {
	Dial Dial
	// Sum is top and bottom less left and right: 0 for a dial that ran true, whatever the
	// sag of the bracket. Face dials of shafts that float do not close.
	Sum units.Number
	// Steps is how many of the dial's smallest steps that is, rounded up.
	Steps int64
}

// dialNames and clockNames name a reading in a field.
var dialNames = map[Dial]string{Rim: "rim", Face: "face", FaceOther: "faceother", OnStationary: "onstationary", OnMovable: "onmovable"}
var clockNames = map[Clock]string{Top: "top", Right: "right", Bottom: "bottom", Left: "left"}

// Field is the path of a reading in a Refusal: "readings.rim.bottom".
func (r Reading) Field() string { return "readings." + dialNames[r.Dial] + "." + clockNames[r.At] }

// Work works the alignment out. Readings are as the dial showed them, with their signs;
// the top, where the dial is zeroed, is 0. The error is Refusals.
func (s Setup) Work(readings map[Reading]units.Quantity) (Result, error) {
	f, rs := s.read()
	values := map[Reading]units.Number{}
	for _, d := range s.Dials() {
		for _, at := range []Clock{Top, Right, Bottom, Left} {
			r := Reading{d, at}
			q, there := readings[r]
			if !there {
				rs.add(r.Field(), "read it, or turn the shafts to it again", "the %s dial is not read at the %s", dialNames[d], clockNames[at])
				continue
			}
			values[r] = rs.length(r.Field(), "reading", &q, s.Unit)
		}
	}
	if len(rs.Refusals) > 0 {
		return Result{}, rs.Err()
	}
	res := Result{Rungs: f.ladder()}
	for _, r := range res.Rungs {
		res.Values = append(res.Values, r.value(values, res.Values))
	}
	res.moves(f)
	for _, d := range s.Dials() {
		res.Checks = append(res.Checks, s.closes(d, values))
	}
	return res, nil
}

// value adds up one line.
func (r Rung) value(readings map[Reading]units.Number, above []units.Number) units.Number {
	var sum units.Number
	for _, t := range r.Terms {
		n := one
		switch {
		case t.Reading != nil:
			n = readings[*t.Reading]
		case t.Rung >= 0:
			n = above[t.Rung]
		}
		sum = sum.Add(n.Mul(t.Times).Quo(t.Over))
	}
	return units.Exact(sum.Rat(), 0)
}

// moves collects the moves, and how the shaft stands against its target: the line through
// what the first and the last feet still want.
func (res *Result) moves(f frame) {
	res.Moves = make([]Move, len(f.at))
	for i, r := range res.Rungs {
		switch r.Code {
		case MoveUp:
			res.Moves[r.Foot].Foot, res.Moves[r.Foot].Up = f.s.Feet[r.Foot].Name, res.Values[i]
		case MoveRight:
			res.Moves[r.Foot].Right = res.Values[i]
		}
	}
	last := len(f.at) - 1
	line := func(near, far units.Number) (offset, slope units.Number) {
		slope = near.Sub(far).Quo(f.at[last].Sub(f.at[0]))
		return near.Neg().Sub(slope.Mul(f.at[0])), slope
	}
	res.OffsetUp, res.SlopeUp = line(res.Moves[0].Up, res.Moves[last].Up)
	res.OffsetRight, res.SlopeRight = line(res.Moves[0].Right, res.Moves[last].Right)
}

// closes looks whether top and bottom add up to left and right.
func (s Setup) closes(d Dial, v map[Reading]units.Number) Check {
	sum := v[Reading{d, Top}].Add(v[Reading{d, Bottom}]).Sub(v[Reading{d, Left}]).Sub(v[Reading{d, Right}])
	steps := sum.Abs().Quo(s.Reads.Number).Round(0, units.Up).Rat()
	return Check{Dial: d, Sum: units.Exact(sum.Rat(), 0), Steps: steps.Num().Int64()}
}

// OffsetOf gives the offset that a rim dial's run-out shows when it comes from two shafts
// side by side: half of what the dial goes from its least to its most.
func OffsetOf(runout units.Quantity) units.Quantity {
	return units.Quantity{Number: units.Exact(runout.Number.Quo(two).Rat(), runout.Number.Decimals()), Unit: runout.Unit}
}

// CorrectSag takes the sag of the bracket out of a reading of a dial that was zeroed at
// the top: 2 s at the bottom, s at the sides.
func CorrectSag(reading, sag units.Quantity, at Clock) (units.Quantity, error) {
	times := map[Clock]int64{Top: 0, Right: 1, Bottom: 2, Left: 1}
	n, known := times[at]
	switch {
	case !known:
		return reading, Refusal{Field: "at", Message: fmt.Sprintf("place %d is no place of a dial", at), Help: "write top, right, bottom or left"}
	case sag.Number.Sign() < 0:
		return reading, Refusal{Field: "sag", Message: "a sag of " + sag.Text(), Help: "write how much the bracket bends, without a sign"}
	}
	return reading.Add(units.Quantity{Number: units.Whole(n).Mul(sag.Number), Unit: sag.Unit})
}
