package expand

import (
	"strings"

	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/names"
	"matchmark/packs/source"
)

// squared prints a load to the square as it is read on a drawing.
var squared = strings.NewReplacer("/m2", "/m²", "/ft2", "/ft²")

// pockets are those that one word names: of a group of places one for each of them.
func (b *builder) pockets(word string) []string {
	g := b.Groups[word]
	if g == nil {
		return []string{word}
	}
	var out []string
	for _, p := range g.Places {
		out = append(out, p.Label)
	}
	return out
}

// readContainers repeats containers, takes over lay-down spots and big parts.
func (b *builder) readContainers() {
	b.Containers = map[string][]*job.Container{}
	for _, dc := range b.Def.Containers {
		places := b.Over(dc.Each)
		b.CheckVarying(dc.Name, "the name", places)
		b.CheckVarying(dc.Keep, "", places)
		b.CheckVarying(dc.Note, "", places)
		for _, pl := range places {
			c := &job.Container{
				At: dc.Mark.At, Mark: pl.Mark(dc.Mark.Value), Base: dc.Mark.Value, Place: pl,
				Name: names.ValueAt(pl, dc.Name), Kind: dc.Kind.Value, Keep: names.ValueAt(pl, dc.Keep),
				Note: names.ValueAt(pl, dc.Note),
			}
			for _, p := range dc.Pockets {
				c.Pockets = append(c.Pockets, b.pockets(p.Value)...)
			}
			b.Containers[c.Base] = append(b.Containers[c.Base], c)
			b.Job.Containers = append(b.Job.Containers, c)
		}
	}
	b.Spots = map[string]*job.Spot{}
	for _, ds := range b.Def.LayDown {
		s := &job.Spot{At: ds.Mark.At, Mark: ds.Mark.Value, What: ds.What.Value, Floor: ds.Floor.Value, Support: ds.Support.Value}
		s.Floor = squared.Replace(s.Floor)
		b.Spots[s.Mark] = s
		b.Job.Spots = append(b.Job.Spots, s)
	}
	b.bigs = map[string]*def.BigPart{}
	for _, db := range b.Def.BigParts {
		if _, ok := b.Parts[db.Part.Value]; !ok {
			b.Unknown(db.Part, "part", names.KnownTo(b.Index, b.Parts), "parts")
			continue
		}
		if first, ok := b.bigs[db.Part.Value]; ok {
			b.Problems = append(b.Problems, source.Problem{
				Pos: db.Part.At, Severity: source.Error, Code: "two-tags",
				Message: source.Quote(db.Part.Value) + " has two tags, " + first.Mark.Value + " and " + db.Mark.Value,
				Help:    []string{"keep one of them"},
				See:     []source.Also{{Pos: first.Part.At, What: "its first tag"}},
			})
			continue
		}
		b.bigs[db.Part.Value] = db
		for _, p := range b.Parts[db.Part.Value] {
			b.Job.Bigs = append(b.Job.Bigs, &job.Big{
				At: db.Mark.At, Mark: p.Place.Mark(db.Mark.Value), Base: db.Mark.Value, Part: p, Repeats: len(db.Each) > 0,
				Keep: names.ValueAt(p.Place, db.Keep), Support: names.ValueAt(p.Place, db.Support),
			})
		}
	}
}
