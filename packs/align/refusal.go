package align

import (
	"matchmark/packs/refused"
	"matchmark/packs/units"
)

// A Refusal says why an alignment cannot be worked out, and what to write instead. Its
// field is the path of the input in the words of Setup: "facediameter", "feet[1].at",
// "readings.rim.bottom".
type Refusal = refused.Reason

// Refusals is every reason found.
type Refusals = refused.List[Refusal]

// reasons are the refusals met while a setup is read.
type reasons struct{ Refusals }

func (rs *reasons) add(field, help, message string, args ...any) {
	rs.Refusals = append(rs.Refusals, refused.Of(field, help, message, args...))
}

// length reads a length in the unit of the dials; nil is missing.
func (rs *reasons) length(field, what string, q *units.Quantity, unit units.Unit) units.Number {
	if q == nil {
		rs.add(field, "measure it", "the %s is not told", what)
		return units.Number{}
	}
	c, err := q.Convert(unit)
	if err != nil {
		rs.add(field, "write it in mm or in", "the %s: %s", what, err.Error())
		return units.Number{}
	}
	return units.Exact(c.Number.Rat(), 0)
}

// positive reads a length that is more than nothing.
func (rs *reasons) positive(field, what string, q *units.Quantity, unit units.Unit) units.Number {
	before := len(rs.Refusals)
	n := rs.length(field, what, q, unit)
	if len(rs.Refusals) == before && n.Sign() <= 0 {
		rs.add(field, "measure it", "the %s is %s", what, q.Text())
	}
	return n
}
