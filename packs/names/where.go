package names

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/source"
)

// WhereAt resolves where parts go: a container with or without place and pocket
// (C4, C4/DE, C4/springs, C4/DE/springs), a lay-down spot, the bench or scrap. A
// group of places instead of a pocket (C1/valve) is the pocket that is called as the
// place that the parts come from.
func (b *Index) WhereAt(t source.Text, from job.Place) (job.Where, bool) {
	switch t.Value {
	case "bench":
		return job.Where{Bench: true}, true
	case "scrap":
		return job.Where{Scrap: true}, true
	case "":
		return job.Where{}, false
	}
	if s, ok := b.Spots[t.Value]; ok {
		return job.Where{Spot: s}, true
	}
	key, rest, named := Cut(t.Value)
	all, ok := b.Containers[key]
	if !ok {
		known := append(Keys(b.Containers), Keys(b.Spots)...)
		near := b.Unknown(t, "container, lay-down spot, bench or scrap", append(known, "bench", "scrap"), "containers")
		if near == "" {
			return job.Where{}, false
		}
		return b.WhereAt(source.Text{Value: near, At: t.At}, from)
	}
	label, pocket := "", ""
	if named {
		label, pocket, _ = Cut(rest)
		if label != "" && !hasPlace(all, label) {
			label, pocket = "", rest // the place is left out: C4/springs
		}
	}
	found := Pick(b, t, "container", all, func(c *job.Container) job.Place { return c.Place }, from, label, label != "")
	if len(found) == 0 {
		return job.Where{}, false
	}
	if len(found) > 1 {
		b.Problems.Add(t.At, "which-place", t.Value+" stands at several places: "+found[0].Mark+", "+found[1].Mark, "name the place: "+found[0].Mark)
		return job.Where{}, false
	}
	if i := slices.Index(from.Groups, pocket); i >= 0 && !slices.Contains(found[0].Pockets, pocket) {
		pocket = from.Keys[i]
	}
	if pocket != "" && !slices.Contains(found[0].Pockets, pocket) {
		b.Unknown(source.Text{Value: pocket, At: t.At}, "pocket of "+key, found[0].Pockets, "pockets: of "+key)
		return job.Where{}, false
	}
	return job.Where{Container: found[0], Pocket: pocket}, true
}

func hasPlace(cs []*job.Container, label string) bool {
	for _, c := range cs {
		if c.Place.Label == label {
			return true
		}
	}
	return false
}
