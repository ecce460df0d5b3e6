package packs

import (
	"regexp"
	"slices"
	"strings"

	"matchmark/packs/def"
	"matchmark/packs/fit"
	"matchmark/packs/reading"
)

// limits reads what a dimension must be: one line, or one for each of its
// positions where the map names those. Then the first stands for all of them.
func (b *builder) limits(d *Dim, v def.Varying) (one *reading.Limit, by []*reading.Limit) {
	names := d.Positions.Names()
	if !namesPositions(v, names) {
		return b.limit(d, d.Place.at(v)), nil
	}
	for _, n := range names {
		t := named(v, n)
		if !t.Written() {
			b.problems.Add(v.At, "place-left-out", d.Mark+": what is right at "+n+" is not said", "add "+n+": …, or others: …")
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
func namesPositions(v def.Varying, names []string) bool {
	return slices.ContainsFunc(v.By, func(n def.Named) bool { return slices.Contains(names, n.Name.Value) })
}

// named is the entry of a map for a name, else that for all others.
func named(v def.Varying, name string) def.Text {
	for _, want := range []string{name, "others"} {
		for _, by := range v.By {
			if by.Name.Value == want {
				return by.Value
			}
		}
	}
	return def.Text{}
}

// checkLimitNames sees that a map of limits names only places there are, or only
// positions there are.
func (b *builder) checkLimitNames(v def.Varying, places []Place, at Positions) {
	names := at.Names()
	if !namesPositions(v, names) {
		b.checkVarying(v, "", places)
		return
	}
	for _, by := range v.By {
		if by.Name.Value != "others" && !slices.Contains(names, by.Name.Value) {
			b.unknown(by.Name, "position here", names, "at")
		}
	}
}

// sized finds a limit that is written by letter and grade, as a drawing has it:
// Ø130 m6, 120 H7. A fit with its slash is caught too, to be refused in the words
// of fits.
var sized = regexp.MustCompile(`^(?:[Øø⌀]|dia\.)? *\d+(?:[.,]\d+)? *(?:mm)? *[A-Za-z]{1,2} ?\d{1,2}(?: ?[/-] ?[A-Za-z]{1,2} ?\d{1,2})?$`)

// limit reads one line in the language of limits, nil when none is written or it
// can't be read. A size by letter and grade becomes its two limits.
func (b *builder) limit(d *Dim, t def.Text) *reading.Limit {
	if !t.Written() {
		return nil
	}
	line, zone := t.Value, ""
	if sized.MatchString(strings.TrimSpace(line)) {
		z, err := fit.Parse(line)
		if err != nil {
			b.problems.Add(t.At, "fit", err.Error(), "left: Ø130 m6, or the limits in numbers: left: 130.015 to 130.040 mm")
			return nil
		}
		line, zone = limitsOf(z), z.String()
	}
	l, fault := reading.Parse(line)
	if fault != nil {
		b.fault(t, fault)
		return nil
	}
	if zone != "" {
		d.zones[l] = zone
	}
	return l
}

// limitsOf writes the two limits of a toleranced size as a line, with as many
// decimals as the finer of them needs.
func limitsOf(z fit.Zone) string {
	low, high := z.Min().Decimal(), z.Max().Decimal()
	for len(low)-strings.Index(low, ".") < len(high)-strings.Index(high, ".") {
		low += "0"
	}
	for len(high)-strings.Index(high, ".") < len(low)-strings.Index(low, ".") {
		high += "0"
	}
	return low + " to " + high + " mm"
}
