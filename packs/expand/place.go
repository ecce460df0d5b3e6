package expand

import (
	"matchmark/packs/job"
	"matchmark/packs/names"
	"matchmark/packs/source"
)

// readPlaces takes over the groups of places and sees that no two places,
// groups or options share a name: a limit that depends on one names it alone.
func (b *builder) readPlaces() {
	b.Groups = map[string]*names.Group{}
	seen := map[string]source.Pos{}
	claim := func(t source.Text, what string) {
		if first, ok := seen[t.Value]; ok {
			b.Problems = append(b.Problems, source.Problem{
				Pos: t.At, Severity: source.Error, Code: "name-twice",
				Message: source.Quote(t.Value) + " names two things; places, groups and options need names of their own",
				Help:    []string{"give this " + what + " another name" + lettered(t.Value)},
				See:     []source.Also{{Pos: first, What: "first used here"}},
			})
			return
		}
		seen[t.Value] = t.At
	}
	for _, dg := range b.Def.Places {
		g := &names.Group{Name: dg.Name.Value, At: dg.Name.At}
		claim(dg.Name, "group of places")
		if len(dg.Places) == 0 {
			b.Problems.Add(dg.Name.At, "no-places", "the group "+source.Quote(g.Name)+" has no places",
				"for example "+g.Name+": {DE: {name: drive end}, NDE: {name: non-drive end}}")
		}
		if len(dg.Places) == 1 {
			b.Problems.Warn(dg.Name.At, "one-place", "the group "+source.Quote(g.Name)+" has one place, so nothing repeats over it", "add the other place, or take each: "+g.Name+" out")
		}
		for i, p := range dg.Places {
			// Of a range that another group has too one is told.
			if i == 0 || p.Key.At != dg.Places[i-1].Key.At || seen[dg.Places[i-1].Key.Value] == p.Key.At {
				claim(p.Key, "place")
			}
			view := p.ViewedFrom.Value
			if view == "" {
				view = dg.ViewedFrom.Value
			}
			name := p.Name.Value
			if name == "" {
				name = g.Name + " " + p.Key.Value
			}
			g.Places = append(g.Places, job.Place{At: p.Key.At, Label: p.Key.Value, Keys: []string{p.Key.Value}, Groups: []string{g.Name}, Name: name, ViewedFrom: view, CountedFrom: dg.CountedFrom.Value})
		}
		b.Groups[g.Name] = g
		b.Job.Places = append(b.Job.Places, g.Places...)
	}
	for _, o := range b.Def.Options {
		claim(o.Key, "option")
		for _, n := range o.Builds {
			claim(n.Name, "build")
		}
	}
}

// lettered shows how numbers that two groups share are told apart.
func lettered(name string) string {
	if name == "" || name[0] < '0' || name[0] > '9' {
		return ""
	}
	return "; numbers may have letters before them: G1 to G16"
}
