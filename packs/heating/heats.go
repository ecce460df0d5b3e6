// Package heating reads the heats of a definition and works them out: a hub drawn
// off hot, a part put on. A refusal of the calculation becomes a problem at the
// key that it speaks of.
//
// What is written and what is worked out stand in one room because the one decides
// what the other needs: a heat with a rise has no clearance, a maker's temperature
// takes the place of one worked out.
package heating

import (
	"matchmark/packs/def"
	"matchmark/packs/heat"
	"matchmark/packs/job"
	"matchmark/packs/names"
	"matchmark/packs/source"
)

// Read repeats every heat over its places and computes it.
func Read(b *names.Index) {
	b.Heats = map[string][]*job.Heat{}
	known := &plans{}
	for _, dh := range b.Def.Heats {
		places := b.Over(dh.Each)
		b.CheckVarying(dh.What, "what is heated", places)
		b.CheckVarying(dh.Hub.Outside, "the outside diameter", places)
		b.CheckVarying(dh.Hub.Length, "the length of the fit", places)
		b.CheckVarying(dh.Shaft.Behind, "how far the shaft runs on", places)
		for _, v := range []def.Varying{dh.Fit, dh.Interference, dh.Diameter, dh.Shaft.Bore, dh.Shaft.Front} {
			b.CheckVarying(v, "", places)
		}
		for _, pl := range places {
			h := readHeat(b, dh, pl, known)
			b.Heats[h.Base] = append(b.Heats[h.Base], h)
			b.Job.Heats = append(b.Job.Heats, h)
		}
	}
}

// readHeat reads and computes one heat at one place.
func readHeat(b *names.Index, dh *def.Heat, pl job.Place, known *plans) *job.Heat {
	h := &job.Heat{
		At: dh.Mark.At, Mark: pl.Mark(dh.Mark.Value), Base: dh.Mark.Value, Place: pl, What: names.ValueAt(pl, dh.What),
		NothingNear: dh.NothingNear.Value, Note: dh.Note.Value, Air: 20,
	}
	r := &heatReader{b: b, known: known, def: dh, heat: h, places: map[string]source.Pos{}}
	r.parts()
	r.missing()
	if err := r.seat.Check(); err != nil {
		r.refused(err, h.Mark)
	}
	r.temperatures()
	r.fit()
	r.neighbours()
	r.fireWatch()
	r.words()
	if dh.Pull.At.IsZero() && dh.PutOn.At.IsZero() {
		r.hole(h.At, "heat-does-nothing", h.Mark+" says neither how it is drawn off nor how it is put on",
			"pull: with by: and what else it takes, for a hub that comes off", "put-on: with by:, for one that goes on")
	}
	r.grip()
	r.pull()
	r.putOn()
	return h
}

// film is what hub and shaft lose to the air of a shop, draught and radiation
// together, and ovenFilm what the air of an oven gives: both from memory, and
// printed among the assumptions.
const (
	film     heat.Conductance = 12
	ovenFilm heat.Conductance = 20
)
