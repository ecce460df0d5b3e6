package revise

import (
	"slices"
	"strconv"

	"matchmark/packs/job"
	"matchmark/packs/source"
)

// others lists what stands on sheets of its own, with what it says: lifts, heats, joints,
// alignments, holds, hazard notes, isolations, permits, openings, matched sets, lay-down
// spots, and what is fetched.
func others(j *job.Job) []thing {
	var out []thing
	seen := map[string]int{}
	add := func(kind, key, name string, at source.Pos, says any) {
		var l lines
		l.tell("", says)
		id := kind + " " + key
		if seen[id]++; seen[id] > 1 {
			id += " " + strconv.Itoa(seen[id]) // two tools of one name
		}
		out = append(out, thing{id: id, name: name, lines: l, at: at})
	}
	for _, x := range j.Lifts {
		add("lift", x.Mark, marked(x.Mark, x.What), x.At, *x)
	}
	for _, x := range j.Heats {
		add("heat", x.Mark, marked(x.Mark, x.What), x.At, *x)
	}
	for _, x := range j.Joints {
		add("joint", x.Mark, marked(x.Mark, x.What), x.At, *x)
	}
	for _, x := range j.Alignments {
		add("alignment", x.Mark, marked(x.Mark, x.What), x.At, *x)
	}
	for _, x := range j.Holds {
		add("hold", x.Mark, marked(x.Mark, x.What), x.At, *x)
	}
	for _, x := range j.Sets {
		add("set", x.Mark, marked(x.Mark, x.What), x.At, *x)
	}
	for _, x := range j.Spots {
		add("spot", x.Mark, marked(x.Mark, x.What), x.At, *x)
	}
	for _, x := range j.Cautions {
		add("caution", x.Key, x.Hazard, x.At, *x)
	}
	for _, x := range j.Isolations {
		add("isolation", x.Key, x.Point, x.At, *x)
	}
	for _, x := range j.Permits {
		add("permit", x.Key, x.What, x.At, *x)
	}
	for _, x := range j.Openings {
		add("opening", x.Place.Mark(x.Key), x.Place.Mark(x.What), x.At, *x)
	}
	for _, x := range slices.Concat(j.Supplies.Tools, j.Supplies.Spares, j.Supplies.Consumables) {
		add("fetched", x.What, x.What, x.At, *x)
	}
	for _, x := range j.Supplies.Instruments {
		add("instrument", x.Key, x.Name, x.At, *x.Instrument)
	}
	return out
}

// marked is a thing by its mark and what it is, once where the two are one.
func marked(mark, what string) string {
	if what == mark {
		return mark
	}
	return mark + " " + what
}

// gone are the names of what the new revision has no more.
func gone(old, now []thing) []string {
	var out []string
	for _, t := range old {
		if !slices.ContainsFunc(now, func(x thing) bool { return x.id == t.id }) {
			out = append(out, t.name)
		}
	}
	return out
}
