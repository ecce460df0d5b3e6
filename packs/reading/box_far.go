package reading

import (
	"math/big"

	"matchmark/packs/units"
)

// limitEnds is what of the limits of a single reading has one end alone.
type limitEnds struct {
	above bool         // a least value and no largest
	most  units.Number // the largest that a reading may have which has no least value
	below bool         // there is such a one
}

// take adds the tests of a limit.
func (e *limitEnds) take(l *Limit) {
	for i := range l.Tests {
		t := &l.Tests[i]
		low, high, known := t.Limits()
		if t.Group == Spread || t.Group == Sum || !known {
			continue // tell nothing of a single reading
		}
		switch {
		case low != nil && high == nil:
			e.above = true
		case low == nil && high != nil:
			e.below = true
			if n := high.Number.Abs(); n.Cmp(e.most) > 0 {
				e.most = n
			}
		}
	}
}

// reach is the largest value that the box has to hold, which is large by its limits: more where
// a reading that is no length and no temperature has one end alone. A vibration
// that may be 2.8 mm/s is 11.2 on a bad machine, an insulation of at least 1 MΩ 1000 on a dry one.
func (e *limitEnds) reach(large units.Number, u units.Unit, hint Hint) units.Number {
	switch u.Dimension() {
	case units.Length, units.Temperature, units.Rise:
		return large
	}
	if !e.above && !e.below {
		return large
	}
	if high, err := hinted(hint.High, u); err == nil && high != nil {
		if n := high.Number.Abs(); n.Cmp(large) > 0 {
			return n
		}
		return large
	}
	if n := e.most.Mul(units.Exact(big.NewRat(10, 1), 0)); e.below && n.Cmp(large) > 0 {
		return n
	}
	return large
}
