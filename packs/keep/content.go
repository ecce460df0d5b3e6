package keep

import (
	"slices"
	"strconv"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/units"
)

// Content is all that a tag says of what it hangs on, as one text.
func Content(t *job.Tag) string { return strings.Join(Says(t), "\n") }

// Says is all that a tag says of what it hangs on, a line each: what and how many, where
// from, how it is kept. Left out is what moves when other things change, as the numbers
// of steps and n of N. A tag that says the same as before stays true.
func Says(t *job.Tag) []string {
	var out []string
	add := func(what, text string) {
		if text != "" {
			out = append(out, what+" "+text)
		}
	}
	add("name", t.Name)
	add("pocket", t.Pocket)
	add("place", t.PlaceName)
	if c := t.Container; c != nil {
		add("in", c.Name)
		if t.Pocket == "" {
			add("bags", strings.Join(c.Pockets, ", "))
		}
	}
	if t.Part != nil {
		add("part", t.Part.Place.Mark(t.Part.Key))
	}
	for _, x := range job.Contents(t.In) {
		add("pieces", strconv.Itoa(x.N)+" "+x.Name)
	}
	for _, x := range job.Contents(t.Later) {
		add("later", strconv.Itoa(x.N)+" "+x.Name)
	}
	for _, x := range job.Contents(t.Out) {
		add("out", strconv.Itoa(x.N)+" "+x.Name)
	}
	for _, m := range t.In {
		if m.To.Spot != nil && t.Part != nil {
			add("lies", m.To.Spot.Mark+" "+m.To.Spot.What)
		}
		for _, r := range m.Part.WayRound {
			add("way", r.Part.Name+" "+r.Mark+" "+r.Faces)
		}
		add("missed", m.Missed)
		if m.OldOne() != nil {
			add("renewed", m.Part.Name)
		}
	}
	for _, s := range t.Sets {
		add("set", s.Mark)
	}
	add("keep", t.Keep)
	add("note", t.Note)
	add("support", t.Support)
	if t.Mass != nil && t.MassAtLeast {
		add("mass at least", units.Pointed(t.Mass.Print()))
	} else if t.Mass != nil {
		add("mass", units.Pointed(t.Mass.Print()))
	}
	// Steps that change places fill a container in another order: that is no change.
	slices.Sort(out)
	return slices.Compact(out)
}
