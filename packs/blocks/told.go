package blocks

import (
	"maps"
	"slices"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/reading"
)

// mostTold is how many texts that differ by place one heading takes; dimensions with
// more are printed each for itself.
const mostTold = 4

// tellAll makes the texts of a merged dimension say what its dimensions say: what is
// alike once, what differs with its places before it. It reports whether that can be
// told in one heading.
func tellAll(m *job.Dim, ds []*job.Dim) bool {
	ok := true
	tell := func(to *string, of func(*job.Dim) string) {
		text, fits := byPlace(ds, of)
		*to, ok = text, ok && fits
	}
	tell(&m.What, func(d *job.Dim) string { return d.What })
	tell(&m.State.With, func(d *job.Dim) string { return d.State.With })
	tell(&m.State.Pushed, func(d *job.Dim) string { return d.State.Pushed })
	tell(&m.State.Load, func(d *job.Dim) string { return d.State.Load })
	tell(&m.State.Plane, func(d *job.Dim) string { return d.State.Plane })
	tell(&m.ViewedFrom, func(d *job.Dim) string { return d.ViewedFrom })
	tell(&m.Over, func(d *job.Dim) string { return d.Over })
	tell(&m.Under, func(d *job.Dim) string { return d.Under })
	tell(&m.Out, func(d *job.Dim) string { return d.Out })
	tell(&m.FoundOut, func(d *job.Dim) string { return d.FoundOut })
	tell(&m.Source, func(d *job.Dim) string { return d.Source })
	m.Zones = map[*reading.Limit]string{}
	for _, d := range ds {
		maps.Copy(m.Zones, d.Zones)
		m.Critical = m.Critical || d.Critical
		ok = ok && warmth(d) == warmth(m) && d.NotSourced() == ds[0].NotSourced()
	}
	return ok
}

// warmth is the correction of a warm reading as text, for comparing.
func warmth(d *job.Dim) string {
	if d.Warm == nil {
		return ""
	}
	return d.Warm.Material + d.Warm.PerDegree.Text()
}

// byPlace is the text that all dimensions have, or each text with the places that have
// it: inlet: grind; outlet: renew.
func byPlace(ds []*job.Dim, of func(*job.Dim) string) (text string, fits bool) {
	var texts []string
	for _, d := range ds {
		if s := of(d); !slices.Contains(texts, s) {
			texts = append(texts, s)
		}
	}
	if len(texts) == 1 {
		return texts[0], true
	}
	name := nameBy(ds, of)
	var out []string
	for _, s := range texts {
		var at []string
		for _, d := range ds {
			if n := name(d); of(d) == s && !slices.Contains(at, n) {
				at = append(at, n)
			}
		}
		if s != "" {
			out = append(out, strings.Join(at, ", ")+": "+s)
		}
	}
	return strings.Join(out, "; "), len(texts) <= mostTold
}

// nameBy gives the shortest names of places that tell the texts apart: those of one
// group of places where the text goes by it, or the whole places.
func nameBy(ds []*job.Dim, of func(*job.Dim) string) func(*job.Dim) string {
	for i := range ds[0].Place.Keys {
		texts, one := map[string]string{}, true
		for _, d := range ds {
			key := d.Place.Keys[i]
			if s, known := texts[key]; known && s != of(d) {
				one = false
			}
			texts[key] = of(d)
		}
		if one {
			return func(d *job.Dim) string { return d.Place.Keys[i] }
		}
	}
	return func(d *job.Dim) string { return d.Place.Label }
}
