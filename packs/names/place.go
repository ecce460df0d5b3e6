package names

import (
	"slices"
	"sort"
	"strconv"
	"strings"
	"unicode/utf8"

	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/source"
)

// A Group is the places that something repeats over, in the order written.
type Group struct {
	Name   string
	At     source.Pos
	Places []job.Place
}

// Most places of one thing, and most things of one job: twenty gates of seven
// pads are 140 places, sixteen cylinders with forty things at each of four valves
// 2,560 things. More is a slip in an each:, and would be thousands of pages.
const (
	maxPlaces = 500
	maxThings = 6000
)

// Over lists the places that each: runs over, crossed when it names several
// groups (cylinder, valve), or the one place that it names (DE). A thing that does
// not repeat gets the zero Place, and so does one that repeats too often.
func (b *Index) Over(each []source.Text) []job.Place {
	out := []job.Place{{}}
	for _, t := range each {
		places, ok := b.group(t.Value)
		if !ok {
			if t.Value == "clock" {
				b.Problems.Add(t.At, "unknown-name", "clock is no group of places: angles round a clock face are positions of one reading", "write: at: clock")
				continue
			}
			near := b.Unknown(t, "group of places or a place", b.placeNames(), "places")
			if places, ok = b.group(near); !ok {
				continue
			}
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
		b.overfull(source.Text{At: b.Def.At}, 1)
	}
	return out
}

// overfull tells of a thing that repeats over too many places, or, once, of a job
// that has too many things.
func (b *Index) overfull(t source.Text, n int) {
	if n > maxPlaces {
		b.Problems.Add(t.At, "too-many", "this makes "+strconv.Itoa(n)+" places of one thing; paper takes "+strconv.Itoa(maxPlaces)+" at most",
			"repeat over fewer groups, or make definitions of their own")
		return
	}
	if !b.Crowded {
		b.Crowded = true
		b.Problems.Add(t.At, "too-many", "with this the job has over "+strconv.Itoa(maxThings)+" things at all their places, too many for one pack",
			"make definitions of their own for parts of the machine")
	}
}

// placeNames lists the groups of places and their places.
func (b *Index) placeNames() []string {
	names := Keys(b.Groups)
	for _, k := range Keys(b.Groups) {
		for _, p := range b.Groups[k].Places {
			names = append(names, p.Label)
		}
	}
	return names
}

// group is all places of a group, or the one place of that name.
func (b *Index) group(name string) ([]job.Place, bool) {
	if g, ok := b.Groups[name]; ok {
		return g.Places, true
	}
	for _, k := range Keys(b.Groups) {
		for i, p := range b.Groups[k].Places {
			if p.Label == name {
				return b.Groups[k].Places[i : i+1], true
			}
		}
	}
	return nil, false
}

// TextAt picks the value that holds at a place: the one for the place itself, one of
// its parts or a group, else that for "others". A value that is not written, or
// not for this place, is a Text that is not written.
func TextAt(p job.Place, v def.Varying) source.Text {
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

// ValueAt is the text of textAt.
func ValueAt(p job.Place, v def.Varying) string { return TextAt(p, v).Value }

// CheckVarying sees that a value that differs by place names only places there
// are, and says something for each of them.
func (b *Index) CheckVarying(v def.Varying, what string, places []job.Place) {
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
			if slices.Contains(b.placeNames(), by.Name.Value) {
				b.Problems.Add(by.Name.At, "unknown-name", source.Quote(by.Name.Value)+" is a place of this job, but none of this repeat", "one of: "+strings.Join(Keys(known), ", "))
				continue
			}
			b.Unknown(by.Name, "place here", KnownTo(b, known), "places")
		}
	}
	for _, p := range places {
		if p.Label != "" && !TextAt(p, v).Written() && what != "" {
			b.Problems.Add(v.At, "place-left-out", what+" is not said for "+p.Label,
				"add "+p.Label+": …, or others: …")
		}
	}
}

// Unknown adds the problem of a name that nothing has, and gives the nearest one, which
// was probably meant; "" when none is near.
func (b *Index) Unknown(t source.Text, what string, known []string, where string) string {
	if !t.Written() { // or could not be read: that has been told where it is missing
		return ""
	}
	key, label, named := Cut(t.Value)
	if b.Chosen.LeftOut[key] != "" {
		b.Problems.Add(t.At, "left-out", source.Quote(t.Value)+" is left out for this machine: "+b.Chosen.LeftOut[key],
			"give what stands here the same fitted: or if: line")
		return ""
	}
	if named { // the place behind the slash is no part of the name
		whole := source.Text{Value: key, At: t.Part(0, utf8.RuneCountInString(key))}
		return slashed(b.Problems.Unknown(whole, what, known, where), label)
	}
	return b.Problems.Unknown(t, what, known, where)
}

// slashed puts a place behind a name.
func slashed(name, label string) string {
	if name == "" {
		return ""
	}
	return name + "/" + label
}

// Meant finds the things of a name; where it has none this is told, and the things of
// the nearest name are given, so that nothing else is said of what would be missing.
func Meant[T any](b *Index, t source.Text, what string, things map[string]T, where string) (T, bool) {
	key, _, _ := Cut(t.Value)
	if all, ok := things[key]; ok {
		return all, true
	}
	near, _, _ := Cut(b.Unknown(t, what, KnownTo(b, things), where))
	all, ok := things[near]
	return all, ok
}

// KnownTo lists what a name could have been, as long as that is told.
func KnownTo[V any](b *Index, m map[string]V) []string {
	if len(b.Problems) >= source.Most {
		return nil
	}
	return Keys(m)
}

// Keys lists the keys of a map, sorted.
func Keys[V any](m map[string]V) []string {
	keys := make([]string, 0, len(m))
	for k := range m {
		keys = append(keys, k)
	}
	sort.Strings(keys)
	return keys
}
