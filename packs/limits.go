package packs

import (
	"matchmark/packs/job"
	"matchmark/packs/source"
	"regexp"
	"slices"
	"strings"

	"matchmark/packs/def"
	"matchmark/packs/fit"
	"matchmark/packs/reading"
)

// limits reads what a dimension must be: one line, or one for each of its
// positions where the map names those. Then the first stands for all of them.
func (b *builder) limits(d *job.Dim, v def.Varying) (one *reading.Limit, by []*reading.Limit) {
	names := d.Positions.Names()
	if !namesPositions(v, names) {
		return b.limit(d, textAt(d.Place, v)), nil
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
func named(v def.Varying, name string) source.Text {
	for _, want := range []string{name, "others"} {
		for _, by := range v.By {
			if by.Name.Value == want {
				return by.Value
			}
		}
	}
	return source.Text{}
}

// checkLimitNames sees that a map of limits names only places there are, or only
// positions there are, and where what is not empty, all of them.
func (b *builder) checkLimitNames(v def.Varying, what string, places []job.Place, at job.Positions) {
	names := at.Names()
	if !namesPositions(v, names) {
		b.checkVarying(v, what, places)
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

// limit reads one limit of a dimension, nil when none is written or it can't be
// read.
func (b *builder) limit(d *job.Dim, t source.Text) *reading.Limit {
	if !t.Written() || t.Value == notTaken {
		return nil
	}
	l, zone := b.line(t)
	if zone != "" {
		d.Zones[l] = zone
	}
	return l
}

// line reads a line in the language of limits. A size by letter and grade becomes
// its two limits; zone is then how it stands on a drawing. What can't be read is nil
// and a problem.
func (b *builder) line(t source.Text) (l *reading.Limit, zone string) {
	text := t.Value
	if sized.MatchString(strings.TrimSpace(text)) {
		z, err := fit.Parse(text)
		if err != nil {
			b.problems.Add(t.At, "fit", err.Error(), "left: Ø130 m6, or the limits in numbers: left: 130.015 to 130.040 mm")
			return nil, ""
		}
		text, zone = limitsOf(z), z.String()
	}
	l, fault := reading.Parse(text)
	if fault != nil {
		b.fault(t, fault)
		return nil, ""
	}
	return l, zone
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

// A written limit is one with the line it was read from.
type written struct {
	limit *reading.Limit
	text  source.Text
}

// linesOf lists the limits of a dimension with the lines they were read from, one of
// each position where they differ by those.
func linesOf(d *job.Dim, dd *def.Dimension) []written {
	var out []written
	add := func(l *reading.Limit, by []*reading.Limit, v def.Varying) {
		if len(by) == 0 {
			out = append(out, written{l, textAt(d.Place, v)})
			return
		}
		for i, n := range d.Positions.Names() {
			out = append(out, written{by[i], named(v, n)})
		}
	}
	add(d.Found, d.FoundBy, dd.Found)
	add(d.Left, d.LeftBy, dd.Left)
	add(d.Reuse, nil, dd.Reuse)
	add(d.Repair, nil, dd.Repair)
	return slices.DeleteFunc(out, func(w written) bool { return w.limit == nil })
}
