package job

import (
	"slices"

	"matchmark/packs/reading"
)

// TakesApart reports whether the formula of a dimension takes one of two readings from the
// other, whichever way round, alone or as the mean or the largest of several: a clearance or
// an interference. It is false where both are added, or both taken off.
func (d *Dim) TakesApart(p, q *Dim) bool {
	if d.Formula == nil {
		return false
	}
	added, taken := d.signs(d.Formula, false, nil, nil)
	return slices.Contains(added, p) && slices.Contains(taken, q) || slices.Contains(added, q) && slices.Contains(taken, p)
}

// signs sorts the readings of a value by whether they are added or taken off.
func (d *Dim) signs(v *reading.Value, minus bool, added, taken []*Dim) (plus, less []*Dim) {
	for _, t := range v.Terms {
		off := t.Minus != minus
		if t.Item.Value != nil {
			added, taken = d.signs(t.Item.Value, off, added, taken)
		}
		for _, m := range t.Item.Marks {
			if off {
				taken = append(taken, d.Ref(m)...)
			} else {
				added = append(added, d.Ref(m)...)
			}
		}
	}
	return added, taken
}
