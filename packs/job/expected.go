package job

import (
	"matchmark/packs/reading"
	"matchmark/packs/units"
)

// Expected gives the least and the most that a reading should be, by its limits and its
// nominal size; nil where nothing says it.
func (d *Dim) Expected() (low, high *units.Number) {
	take := func(q *units.Quantity, is **units.Number, sign int) {
		if q == nil {
			return
		}
		c, err := q.Convert(d.Box.Unit)
		if err == nil && (*is == nil || c.Number.Cmp(**is) == sign) {
			*is = &c.Number
		}
	}
	atMost := false // a limit that has no lower end
	for _, l := range d.Limits() {
		for i := range l.Tests {
			t := &l.Tests[i]
			if t.Group == reading.Spread || t.Group == reading.Sum {
				continue
			}
			from, to, ok := t.Limits()
			if about := t.About(); about != nil {
				from, to, ok = about, about, true
			}
			if !ok {
				return nil, nil
			}
			atMost = atMost || from == nil
			take(from, &low, -1)
			take(to, &high, 1)
		}
	}
	if nominal := d.Hint.Nominal; nominal != nil {
		take(nominal, &low, -1)
		take(nominal, &high, 1)
		atMost = false
	}
	if atMost {
		low = nil
	}
	return low, high
}
