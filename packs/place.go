package packs

import (
	"matchmark/packs/job"
	"sort"
	"strconv"

	"matchmark/packs/def"
	"matchmark/packs/source"
)

// A group is the places that something repeats over, in the order written.
type group struct {
	name   string
	at     source.Pos
	places []job.Place
}

// readPlaces takes over the groups of places and sees that no two places,
// groups or options share a name: a limit that depends on one names it alone.
func (b *builder) readPlaces() {
	b.groups = map[string]*group{}
	seen := map[string]source.Pos{}
	claim := func(t source.Text, what string) {
		if first, ok := seen[t.Value]; ok {
			b.problems = append(b.problems, source.Problem{
				Pos: t.At, Severity: source.Error, Code: "name-twice",
				Message: source.Quote(t.Value) + " names two things; places, groups and options need names of their own",
				Help:    []string{"give this " + what + " another name" + lettered(t.Value)},
				See:     []source.Also{{Pos: first, What: "first used here"}},
			})
			return
		}
		seen[t.Value] = t.At
	}
	for _, dg := range b.def.Places {
		g := &group{name: dg.Name.Value, at: dg.Name.At}
		claim(dg.Name, "group of places")
		if len(dg.Places) == 0 {
			b.problems.Add(dg.Name.At, "no-places", "the group "+source.Quote(g.name)+" has no places",
				g.name+": {DE: {name: drive end}, NDE: {name: non-drive end}}")
		}
		if len(dg.Places) == 1 {
			b.problems.Warn(dg.Name.At, "one-place", "the group "+source.Quote(g.name)+" has one place, so nothing repeats over it", "add the other place, or take each: "+g.name+" out")
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
				name = g.name + " " + p.Key.Value
			}
			g.places = append(g.places, job.Place{Label: p.Key.Value, Keys: []string{p.Key.Value}, Groups: []string{g.name}, Name: name, ViewedFrom: view, CountedFrom: dg.CountedFrom.Value})
		}
		b.groups[g.name] = g
		b.job.Places = append(b.job.Places, g.places...)
	}
	for _, o := range b.def.Options {
		claim(o.Key, "option")
		for _, n := range o.Builds {
			claim(n.Name, "build")
		}
	}
}

// Most places of one thing, and most things of one job: twenty gates of seven
// pads are 140 places, sixteen cylinders with forty things at each of four valves
// 2,560 things. More is a slip in an each:, and would be thousands of pages.
const (
	maxPlaces = 500
	maxThings = 6000
)

// lettered shows how numbers that two groups share are told apart.
func lettered(name string) string {
	if name == "" || name[0] < '0' || name[0] > '9' {
		return ""
	}
	return "; numbers may have letters before them: G1 to G16"
}

// over lists the places that each: runs over, crossed when it names several
// groups (cylinder, valve), or the one place that it names (DE). A thing that does
// not repeat gets the zero Place, and so does one that repeats too often.
func (b *builder) over(each []source.Text) []job.Place {
	out := []job.Place{{}}
	for _, t := range each {
		places, ok := b.group(t.Value)
		if !ok {
			b.unknown(t, "group of places or a place", b.placeNames(), "places")
			continue
		}
		if n := len(out) * len(places); n > maxPlaces || b.things+n > maxThings {
			b.overfull(t, n)
			return []job.Place{{}}
		}
		var next []job.Place
		for _, p := range out {
			for _, q := range places {
				next = append(next, p.Cross(q))
			}
		}
		out = next
	}
	b.things += len(out)
	if len(each) == 0 && b.things > maxThings {
		b.overfull(source.Text{At: b.def.At}, 1)
	}
	return out
}

// overfull tells of a thing that repeats over too many places, or, once, of a job
// that has too many things.
func (b *builder) overfull(t source.Text, n int) {
	if n > maxPlaces {
		b.problems.Add(t.At, "too-many", "this makes "+strconv.Itoa(n)+" places of one thing; paper takes "+strconv.Itoa(maxPlaces)+" at most",
			"repeat over fewer groups, or make definitions of their own")
		return
	}
	if !b.crowded {
		b.crowded = true
		b.problems.Add(t.At, "too-many", "with this the job has over "+strconv.Itoa(maxThings)+" things at all their places, too many for one pack",
			"make definitions of their own for parts of the machine")
	}
}

// placeNames lists the groups of places and their places.
func (b *builder) placeNames() []string {
	names := mapKeys(b.groups)
	for _, k := range mapKeys(b.groups) {
		for _, p := range b.groups[k].places {
			names = append(names, p.Label)
		}
	}
	return names
}

// group is all places of a group, or the one place of that name.
func (b *builder) group(name string) ([]job.Place, bool) {
	if g, ok := b.groups[name]; ok {
		return g.places, true
	}
	for _, k := range mapKeys(b.groups) {
		for i, p := range b.groups[k].places {
			if p.Label == name {
				return b.groups[k].places[i : i+1], true
			}
		}
	}
	return nil, false
}

// textAt picks the value that holds at a place: the one for the place itself, one of
// its parts or a group, else that for "others". A value that is not written, or
// not for this place, is a Text that is not written.
func textAt(p job.Place, v def.Varying) source.Text {
	if len(v.By) == 0 {
		return v.One
	}
	names := append([]string{p.Label}, p.Keys...)
	names = append(names, p.Groups...)
	names = append(names, "others")
	for _, n := range names {
		for _, by := range v.By {
			if by.Name.Value == n && n != "" {
				return by.Value
			}
		}
	}
	return source.Text{}
}

// valueAt is the text of textAt.
func valueAt(p job.Place, v def.Varying) string { return textAt(p, v).Value }

// checkVarying sees that a value that differs by place names only places there
// are, and says something for each of them.
func (b *builder) checkVarying(v def.Varying, what string, places []job.Place) {
	if len(v.By) == 0 {
		return
	}
	known := map[string]bool{"others": true}
	for _, p := range places {
		known[p.Label] = true
		for _, k := range p.Keys {
			known[k] = true
		}
		for _, g := range p.Groups {
			known[g] = true
		}
	}
	for _, by := range v.By {
		if !known[by.Name.Value] {
			b.unknown(by.Name, "place here", knownTo(b, known), "places")
		}
	}
	for _, p := range places {
		if p.Label != "" && !textAt(p, v).Written() && what != "" {
			b.problems.Add(v.At, "place-left-out", what+" is not said for "+p.Label,
				"add "+p.Label+": …, or others: …")
		}
	}
}

// unknown adds the problem of a name that nothing has, with the nearest one.
func (b *builder) unknown(t source.Text, what string, known []string, where string) {
	if key, _, _ := cut(t.Value); b.chosen.LeftOut[key] != "" {
		b.problems.Add(t.At, "left-out", source.Quote(t.Value)+" is left out for this machine: "+b.chosen.LeftOut[key],
			"give what stands here the same fitted: or if: line")
		return
	}
	b.problems.Unknown(t, what, known, where)
}

// knownTo lists what a name could have been, as long as that is told.
func knownTo[V any](b *builder, m map[string]V) []string {
	if len(b.problems) >= source.Most {
		return nil
	}
	return mapKeys(m)
}

// mapKeys lists the keys of a map, sorted.
func mapKeys[V any](m map[string]V) []string {
	keys := make([]string, 0, len(m))
	for k := range m {
		keys = append(keys, k)
	}
	sort.Strings(keys)
	return keys
}
