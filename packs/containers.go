package packs

import (
	"matchmark/packs/job"
	"slices"
	"strings"

	"matchmark/packs/def"
	"matchmark/packs/source"
)

// squared prints a load to the square as it is read on a drawing.
var squared = strings.NewReplacer("/m2", "/m²", "/ft2", "/ft²")

// cut parts a written name from the place after its slash.
func cut(s string) (key, rest string, named bool) { return strings.Cut(s, "/") }

// readContainers repeats containers, takes over lay-down spots and big parts.
func (b *builder) readContainers() {
	b.containers = map[string][]*job.Container{}
	for _, dc := range b.def.Containers {
		places := b.over(dc.Each)
		b.checkVarying(dc.Name, "the name", places)
		b.checkVarying(dc.Keep, "", places)
		for _, pl := range places {
			c := &job.Container{
				At: dc.Mark.At, Mark: pl.Mark(dc.Mark.Value), Base: dc.Mark.Value, Place: pl,
				Name: valueAt(pl, dc.Name), Kind: dc.Kind.Value, Keep: valueAt(pl, dc.Keep),
			}
			for _, p := range dc.Pockets {
				c.Pockets = append(c.Pockets, p.Value)
			}
			b.containers[c.Base] = append(b.containers[c.Base], c)
			b.job.Containers = append(b.job.Containers, c)
		}
	}
	b.spots = map[string]*job.Spot{}
	for _, ds := range b.def.LayDown {
		s := &job.Spot{At: ds.Mark.At, Mark: ds.Mark.Value, What: ds.What.Value, Floor: ds.Floor.Value, Support: ds.Support.Value}
		s.Floor = squared.Replace(s.Floor)
		b.spots[s.Mark] = s
		b.job.Spots = append(b.job.Spots, s)
	}
	b.bigs = map[string]*def.BigPart{}
	for _, db := range b.def.BigParts {
		if _, ok := b.parts[db.Part.Value]; !ok {
			b.unknown(db.Part, "part", knownTo(b, b.parts), "parts")
			continue
		}
		if first, ok := b.bigs[db.Part.Value]; ok {
			b.problems = append(b.problems, source.Problem{
				Pos: db.Part.At, Severity: source.Error, Code: "two-tags",
				Message: source.Quote(db.Part.Value) + " has two tags, " + first.Mark.Value + " and " + db.Mark.Value,
				Help:    []string{"keep one of them"},
				See:     []source.Also{{Pos: first.Part.At, What: "its first tag"}},
			})
			continue
		}
		b.bigs[db.Part.Value] = db
		for _, p := range b.parts[db.Part.Value] {
			b.job.Bigs = append(b.job.Bigs, &job.Big{
				At: db.Mark.At, Mark: p.Place.Mark(db.Mark.Value), Base: db.Mark.Value, Part: p, Repeats: len(db.Each) > 0,
				Keep: valueAt(p.Place, db.Keep), Support: valueAt(p.Place, db.Support),
			})
		}
	}
}

// whereAt resolves where parts go: a container with or without place and pocket
// (C4, C4/DE, C4/springs, C4/DE/springs), a lay-down spot, the bench or scrap. A
// group of places instead of a pocket (C1/valve) is the pocket that is called as the
// place that the parts come from.
func (b *builder) whereAt(t source.Text, from job.Place) (job.Where, bool) {
	switch t.Value {
	case "bench":
		return job.Where{Bench: true}, true
	case "scrap":
		return job.Where{Scrap: true}, true
	case "":
		return job.Where{}, false
	}
	if s, ok := b.spots[t.Value]; ok {
		return job.Where{Spot: s}, true
	}
	key, rest, named := cut(t.Value)
	all, ok := b.containers[key]
	if !ok {
		known := append(mapKeys(b.containers), mapKeys(b.spots)...)
		b.unknown(t, "container, lay-down spot, bench or scrap", append(known, "bench", "scrap"), "containers")
		return job.Where{}, false
	}
	label, pocket := "", ""
	if named {
		label, pocket, _ = cut(rest)
		if label != "" && !hasPlace(all, label) {
			label, pocket = "", rest // the place is left out: C4/springs
		}
	}
	found := pick(b, t, "container", all, func(c *job.Container) job.Place { return c.Place }, from, label, label != "")
	if len(found) == 0 {
		return job.Where{}, false
	}
	if len(found) > 1 {
		b.problems.Add(t.At, "which-place", t.Value+" stands at several places: "+found[0].Mark+", "+found[1].Mark, "name the place: "+found[0].Mark)
		return job.Where{}, false
	}
	if i := slices.Index(from.Groups, pocket); i >= 0 && !slices.Contains(found[0].Pockets, pocket) {
		pocket = from.Keys[i]
	}
	if pocket != "" && !slices.Contains(found[0].Pockets, pocket) {
		b.unknown(source.Text{Value: pocket, At: t.At}, "pocket of "+key, found[0].Pockets, "pockets: of "+key)
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
