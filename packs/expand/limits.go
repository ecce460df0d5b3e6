package expand

import (
	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/names"
	"matchmark/packs/reading"
	"matchmark/packs/source"
	"slices"
)

// limits reads what a dimension must be: one line, or one for each of its
// positions where the map names those. Then the first stands for all of them.
func (b *builder) limits(d *job.Dim, v def.Varying) (one *reading.Limit, by []*reading.Limit) {
	at := d.Positions.Names()
	if !namesPositions(v, at) {
		return b.limit(d, names.TextAt(d.Place, v)), nil
	}
	for _, n := range at {
		t := names.Named(v, n)
		if !t.Written() {
			b.Problems.Add(v.At, "place-left-out", d.Mark+": what is right at "+n+" is not said", "add "+n+": …, or others: …")
			return nil, nil
		}
		l := b.limit(d, t)
		if l == nil {
			return nil, nil
		}
		by = append(by, l)
	}
	return by[0], by
}

// namesPositions reports whether a map of limits goes by positions and not by
// places.
func namesPositions(v def.Varying, at []string) bool {
	return slices.ContainsFunc(v.By, func(n def.Named) bool { return slices.Contains(at, n.Name.Value) })
}

// checkLimitNames sees that a map of limits names only places there are, or only
// positions there are, and where what is not empty, all of them.
func (b *builder) checkLimitNames(v def.Varying, what string, places []job.Place, at job.Positions) {
	known := at.Names()
	if !namesPositions(v, known) {
		b.CheckVarying(v, what, places)
		return
	}
	for _, by := range v.By {
		if by.Name.Value != "others" && !slices.Contains(known, by.Name.Value) {
			b.Unknown(by.Name, "position here", known, "at")
		}
	}
}

// limit reads one limit of a dimension, nil when none is written or it can't be
// read.
func (b *builder) limit(d *job.Dim, t source.Text) *reading.Limit {
	if !t.Written() || t.Value == notTaken {
		return nil
	}
	l, zone := b.Line(t)
	if zone != "" {
		d.Zones[l] = zone
	}
	return l
}
