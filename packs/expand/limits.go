package expand

import (
	"slices"
	"strings"

	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/names"
	"matchmark/packs/reading"
	"matchmark/packs/source"
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
	if b.angleMeant(v, places, known) {
		return
	}
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

// angleMeant tells of a map of limits that names neither places nor positions, where
// the positions are there to be named: top, at a clock face, is 0°.
func (b *builder) angleMeant(v def.Varying, places []job.Place, positions []string) bool {
	if len(v.By) == 0 || len(positions) < 2 || namesPositions(v, positions) {
		return false
	}
	for _, by := range v.By {
		for _, pl := range places {
			if by.Name.Value == pl.Label || slices.Contains(pl.Keys, by.Name.Value) || slices.Contains(pl.Groups, by.Name.Value) {
				return false
			}
		}
	}
	for _, by := range v.By {
		if by.Name.Value != "others" {
			b.Problems.Add(by.Name.At, "unknown-name", source.Quote(by.Name.Value)+" is not a position here: this reading is taken at "+strings.Join(positions, ", "), "name those, and others: for the rest")
			return true
		}
	}
	return false
}
