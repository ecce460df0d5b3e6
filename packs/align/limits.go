package align

// How near is near enough
//
//	offset  at a stated distance from the dial's plane: |o + k x|
//	angle   |k| on a stated length
//	o, k    offset and slope at the dial's plane against the target
//
// The limits are those of a source that the planner names, one row a speed; none are built
// in. Refused: no source, no row for the speed.

import (
	"fmt"
	"strconv"

	"matchmark/packs/units"
)

// Limits are what a source allows at each speed.
type Limits struct {
	Source string
	Speed  int             // of the coupling, rpm
	At     *units.Quantity // where the offset is judged, from the dial's plane: often the middle of the coupling
	Over   *units.Quantity // the length that the angles are told on: 100 mm, or 1 in
	Rows   []LimitRow      // rising in speed
}

// A LimitRow holds up to a speed.
type LimitRow struct {
	UpTo          int // rpm
	Offset, Angle units.Quantity
}

// A Judgement is how the shaft stands against the limits of its speed.
type Judgement struct {
	Row                       LimitRow
	OffsetUp, OffsetRight     units.Number // where the source judges it
	AngleUp, AngleRight       units.Number // on the source's length
	OffsetIn, AngleIn         bool
	OffsetLimit, AngleAllowed units.Number // in the unit of the dials
}

// In reports whether all of it is in the limits; their ends belong to them.
func (j Judgement) In() bool { return j.OffsetIn && j.AngleIn }

// Judge sets a result against the limits. The error is Refusals.
func (s Setup) Judge(res Result, l Limits) (Judgement, error) {
	var rs reasons
	at := rs.length("limits.at", "place where the offset is judged", l.At, s.Unit)
	over := rs.positive("limits.over", "length that the angle is told on", l.Over, s.Unit)
	if l.Source == "" {
		rs.add("limits.source", "name the maker's sheet or the standard", "the limits have no source")
	}
	row, ok := l.row(&rs)
	if !ok || len(rs.Refusals) > 0 {
		return Judgement{}, rs.Err()
	}
	j := Judgement{Row: row}
	j.OffsetLimit = rs.positive("limits.offset", "offset allowed", &row.Offset, s.Unit)
	j.AngleAllowed = rs.positive("limits.angle", "angle allowed", &row.Angle, s.Unit)
	if len(rs.Refusals) > 0 {
		return Judgement{}, rs.Err()
	}
	j.OffsetUp = res.OffsetUp.Add(res.SlopeUp.Mul(at))
	j.OffsetRight = res.OffsetRight.Add(res.SlopeRight.Mul(at))
	j.AngleUp, j.AngleRight = res.SlopeUp.Mul(over), res.SlopeRight.Mul(over)
	in := func(limit units.Number, both ...units.Number) bool {
		for _, n := range both {
			if n.Abs().Cmp(limit) > 0 {
				return false
			}
		}
		return true
	}
	j.OffsetIn = in(j.OffsetLimit, j.OffsetUp, j.OffsetRight)
	j.AngleIn = in(j.AngleAllowed, j.AngleUp, j.AngleRight)
	return j, nil
}

// row finds the row of the speed.
func (l Limits) row(rs *reasons) (LimitRow, bool) {
	if l.Speed <= 0 {
		rs.add("limits.speed", "write the speed of the coupling, as 1480", "the speed is %d rpm", l.Speed)
		return LimitRow{}, false
	}
	for i, r := range l.Rows {
		if i > 0 && r.UpTo <= l.Rows[i-1].UpTo {
			rs.add(fmt.Sprintf("limits.rows[%d].upto", i), "write the slowest first", "up to %d rpm comes after up to %d rpm", r.UpTo, l.Rows[i-1].UpTo)
			return LimitRow{}, false
		}
	}
	for _, r := range l.Rows {
		if l.Speed <= r.UpTo {
			return r, true
		}
	}
	most := "no speed"
	if len(l.Rows) > 0 {
		most = strconv.Itoa(l.Rows[len(l.Rows)-1].UpTo) + " rpm"
	}
	rs.add("limits.rows", "take the limits from a source that goes as high", "the limits go to %s and the coupling runs at %d rpm", most, l.Speed)
	return LimitRow{}, false
}
