package packs

import (
	"matchmark/packs/def"
	"matchmark/packs/heat"
	"matchmark/packs/job"
	"matchmark/packs/source"
)

// film is what hub and shaft lose to the air of a shop, draught and radiation
// together, and ovenFilm what the air of an oven gives: both from memory, and
// printed among the assumptions.
const (
	film     heat.Conductance = 12
	ovenFilm heat.Conductance = 20
)

// readHeats repeats every heat over its places and computes it.
func (b *builder) readHeats() {
	b.heats = map[string][]*job.Heat{}
	for _, dh := range b.def.Heats {
		places := b.over(dh.Each)
		b.checkVarying(dh.What, "what is heated", places)
		b.checkVarying(dh.Hub.Outside, "the outside diameter", places)
		b.checkVarying(dh.Hub.Length, "the length of the fit", places)
		b.checkVarying(dh.Shaft.Behind, "how far the shaft runs on", places)
		for _, v := range []def.Varying{dh.Fit, dh.Interference, dh.Diameter, dh.Shaft.Bore, dh.Shaft.Front} {
			b.checkVarying(v, "", places)
		}
		for _, pl := range places {
			h := b.readHeat(dh, pl)
			b.heats[h.Base] = append(b.heats[h.Base], h)
			b.job.Heats = append(b.job.Heats, h)
		}
	}
}

// readHeat reads and computes one heat at one place.
func (b *builder) readHeat(dh *def.Heat, pl job.Place) *job.Heat {
	h := &job.Heat{
		At: dh.Mark.At, Mark: pl.Mark(dh.Mark.Value), Base: dh.Mark.Value, Place: pl, What: valueAt(pl, dh.What),
		NothingNear: dh.NothingNear.Value, Note: dh.Note.Value, Air: 20,
	}
	r := &heatReader{b: b, def: dh, heat: h, places: map[string]source.Pos{}}
	r.parts()
	r.temperatures()
	r.fit()
	r.neighbours()
	r.fireWatch()
	r.words()
	if dh.Pull.At.IsZero() && dh.PutOn.At.IsZero() {
		b.problems.Add(h.At, "heat-does-nothing", h.Mark+" says neither how it is drawn off nor how it is put on",
			"pull: {by: torch, …} for a hub that comes off", "put-on: {by: oven, …} for one that goes on")
	}
	r.grip()
	r.pull()
	r.putOn()
	return h
}

// heatsAt resolves the mark of a heat in a step's list: H1, H1/DE.
func (b *builder) heatsAt(t source.Text, from job.Place) []*job.Heat {
	key, label, named := cut(t.Value)
	all, ok := b.heats[key]
	if !ok {
		b.unknown(t, "heat", mapKeys(b.heats), "heats")
		return nil
	}
	return pick(b, t, "heat", all, func(h *job.Heat) job.Place { return h.Place }, from, label, named)
}
