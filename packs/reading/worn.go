package reading

import "matchmark/packs/units"

// Old and mended parts
//
// The limit for an old part says how far wear may have gone, on the side that wears. An
// end that it does not name is not given up: of "0.036 to 0.106 mm, old part at most
// 0.200 mm" a clearance of 0.010 mm is as tight for an old part as for a new one. (Common
// practice, no source.)

// Whole is a limit for old or mended parts with the ends that those for new parts have and
// it does not name, as it is printed and judged by. rest reports that such an end is left
// out, because it hangs on other readings or differs by position: it holds all the same.
// worn itself is given back where nothing is to be added, and is never altered.
func Whole(worn *Limit, news []*Limit) (whole *Limit, rest bool) {
	if worn == nil || len(worn.Tests) == 0 {
		return worn, false
	}
	var first *Limit
	for i, n := range news {
		w, left := worn.with(n)
		if rest = rest || left; i == 0 {
			first = w
		} else if !Same(first, w) {
			return worn, true
		}
	}
	if first == nil {
		return worn, false
	}
	return first, rest
}

// with adds the ends of one limit for new parts that are sizes of their own.
func (l *Limit) with(n *Limit) (whole *Limit, rest bool) {
	out := *l
	out.Tests = append([]Test{}, l.Tests...)
	added := false
	for i := range n.Tests {
		t := &n.Tests[i]
		for _, side := range []Verdict{Under, Over} {
			if !t.hasEnd(side) || l.EndsOn(t.Group, side) {
				continue
			}
			end, ok := t.oneEnd(side)
			if !ok || !out.join(end) {
				rest = true
				continue
			}
			added = true
		}
	}
	if !added {
		return l, rest
	}
	return &out, rest
}

// EndsOn reports whether a limit has an end on the side on which a group of readings is
// out: for a spread one of its own, for sizes one of each reading or of their mean.
func (l *Limit) EndsOn(g Group, side Verdict) bool {
	size := func(g Group) bool { return g == Each || g == Mean }
	for i := range l.Tests {
		if t := &l.Tests[i]; (t.Group == g || size(t.Group) && size(g)) && (t.hasEnd(side) || t.Rule == About) {
			return true
		}
	}
	return false
}

// hasEnd reports whether a test has an end on a side.
func (t *Test) hasEnd(side Verdict) bool {
	switch t.Rule {
	case AtLeast:
		return side == Under
	case AtMost:
		return side == Over
	}
	return t.Rule != About
}

// oneEnd is a test of one end of this one, false where that is no size of its own.
func (t *Test) oneEnd(side Verdict) (Test, bool) {
	end := Test{Group: t.Group, Rule: AtLeast, Unit: t.Unit, place: t.place, width: t.width}
	from, by, to := t.Low, t.Lower, &end.Low
	if side == Over {
		end.Rule, from, by, to = AtMost, t.High, t.Upper, &end.High
	}
	if from == nil {
		from = t.At
	} else {
		by = units.Number{}
	}
	if !from.constant() {
		return Test{}, false
	}
	*to = one(from.sum().Add(by), t.Unit)
	if t.Other == nil {
		return end, true
	}
	other, ok := t.Other.oneEnd(side)
	end.Other = &other
	return end, ok
}

// join puts one end into a limit: to the test that has the other end of the same readings in
// the same unit, where both are printed as fine as the finer of them, a bracket as in its source;
// else beside the tests. It refuses an end that lies beyond the other one.
func (l *Limit) join(end Test) bool {
	for i := range l.Tests {
		t := &l.Tests[i]
		if t.Group != end.Group || !opposite(t, &end) {
			continue
		}
		if !t.clear(&end) {
			return false
		}
		// Of a worn limit in one unit alone the range is in that unit; that of new parts has both.
		if t.Unit != end.Unit || t.Other != nil && end.Other != nil && (t.Other.Unit != end.Other.Unit || !opposite(t.Other, end.Other)) {
			break
		}
		*t = t.closed(&end)
		t.Low, t.High = asFine(t.Low, t.High), asFine(t.High, t.Low)
		return true
	}
	l.Tests = append(l.Tests, end)
	return true
}

// opposite reports whether of two tests one has the low and the other the high end alone.
func opposite(a, b *Test) bool {
	return a.Rule == AtMost && b.Rule == AtLeast || a.Rule == AtLeast && b.Rule == AtMost
}

// clear reports whether the low end of two lies below the high one, as far as both are sizes of
// their own.
func (t *Test) clear(end *Test) bool {
	ends := func(t *Test) *units.Quantity {
		low, high, ok := t.Limits()
		switch {
		case !ok:
			return nil
		case low != nil:
			return low
		}
		return high
	}
	a, b := ends(t), ends(end)
	if a == nil || b == nil {
		return true
	}
	if t.Rule == AtMost {
		a, b = b, a
	}
	c, err := a.Cmp(*b)
	return err == nil && c <= 0
}

// closed is a range of two ends. A bracket that one end alone has stays that of one end.
func (t *Test) closed(end *Test) Test {
	out := *t
	out.Rule = Range
	if end.Low != nil {
		out.Low = end.Low
	} else {
		out.High = end.High
	}
	if t.Other != nil && end.Other != nil {
		other := t.Other.closed(end.Other)
		out.Other = &other
	}
	return out
}

// asFine is a size of its own with the decimals of another one, where it has fewer; a fraction of
// an inch, and what hangs on other readings, stays as it is.
func asFine(v, other *Value) *Value {
	if !v.plain() || !other.plain() {
		return v
	}
	n, o := v.sum(), other.sum()
	if n.Denominator() != 0 || o.Denominator() != 0 || n.Decimals() >= o.Decimals() {
		return v
	}
	return one(units.Exact(n.Rat(), o.Decimals()), v.Terms[0].Item.Size.Unit)
}
