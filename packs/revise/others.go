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
	add := func(kind, mark, what string, at source.Pos, says any) {
		var l lines
		l.tell("", says)
		name := mark
		if what != mark {
			name += " " + what
		}
		id := kind + " " + mark
		if seen[id]++; seen[id] > 1 {
			id += " " + strconv.Itoa(seen[id]) // two tools of one name
		}
		out = append(out, thing{id: id, name: name, lines: l, at: at})
	}
	for _, x := range j.Lifts {
		add("lift", x.Mark, x.What, x.At, *x)
	}
	for _, x := range j.Heats {
		add("heat", x.Mark, x.What, x.At, *x)
	}
	for _, x := range j.Joints {
		add("joint", x.Mark, x.What, x.At, *x)
	}
	for _, x := range j.Alignments {
		add("alignment", x.Mark, x.What, x.At, *x)
	}
	for _, x := range j.Holds {
		add("hold", x.Mark, x.What, x.At, *x)
	}
	for _, x := range j.Sets {
		add("set", x.Mark, x.What, x.At, *x)
	}
	for _, x := range j.Spots {
		add("spot", x.Mark, x.What, x.At, *x)
	}
	for _, x := range j.Cautions {
		add("caution", x.Key, x.Hazard, x.At, *x)
		out[len(out)-1].name = x.Hazard
	}
	for _, x := range j.Isolations {
		add("isolation", x.Key, x.Point, x.At, *x)
		out[len(out)-1].name = x.Point
	}
	for _, x := range j.Permits {
		add("permit", x.Key, x.What, x.At, *x)
		out[len(out)-1].name = x.What
	}
	for _, x := range j.Openings {
		add("opening", x.Place.Mark(x.Key), x.What, x.At, *x)
		out[len(out)-1].name = x.Place.Mark(x.What)
	}
	for _, x := range slices.Concat(j.Supplies.Tools, j.Supplies.Spares, j.Supplies.Consumables) {
		add("fetched", x.What, x.What, x.At, *x)
	}
	for _, x := range j.Supplies.Instruments {
		add("instrument", x.Key, x.Name, x.At, *x.Instrument)
		out[len(out)-1].name = x.Name
	}
	return out
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
