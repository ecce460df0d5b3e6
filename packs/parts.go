package packs

import (
	"matchmark/packs/job"
	"matchmark/packs/source"
	"strconv"

	"matchmark/packs/def"
	"matchmark/packs/thread"
	"matchmark/packs/units"
)

// readParts repeats every part over its places and reads its thread, mass and
// count.
func (b *builder) readParts() {
	b.parts = map[string][]*job.Part{}
	for _, dp := range b.def.Parts {
		places := b.over(dp.Each)
		b.checkVarying(dp.Name, "the name", places)
		b.checkVarying(dp.Count, "how many there are", places)
		b.checkVarying(dp.Hand, "the hand of the thread", places)
		b.checkVarying(dp.Mass, "the mass", places)
		b.checkVarying(dp.Thread, "", places)
		for _, pl := range places {
			p := &job.Part{At: dp.Key.At, Key: dp.Key.Value, Place: pl, Name: valueAt(pl, dp.Name), Count: 1, Renew: dp.Renew.Value, Holds: dp.Holds.Value, Aid: dp.Aid.Value == "yes", Guard: dp.Guard.Value == "yes"}
			if p.Name == "" {
				p.Name = p.Key
			}
			if n, ok := wholeNumber(textAt(pl, dp.Count)); ok {
				p.Count = n
			}
			b.readThread(p, dp)
			b.readMovement(p, dp)
			b.readShims(p, dp)
			b.readMass(p, textAt(pl, dp.Mass))
			if dp.Set.Written() {
				p.Set = b.setAt(dp.Set, pl)
				if p.Set != nil {
					p.Set.Members = append(p.Set.Members, p)
				}
			}
			b.parts[p.Key] = append(b.parts[p.Key], p)
			b.job.Parts = append(b.job.Parts, p)
		}
	}
	b.readAssemblies()
}

// readAssemblies ties each part to the assembly that it belongs to.
func (b *builder) readAssemblies() {
	for _, dp := range b.def.Parts {
		if !dp.Of.Written() {
			continue
		}
		for _, p := range b.parts[dp.Key.Value] {
			if up := b.partsAt(dp.Of, p.Place); len(up) == 1 {
				p.Of = up[0]
			} else if len(up) > 1 {
				b.problems.Add(dp.Of.At, "which-place", source.Quote(dp.Of.Value)+" stands at several places; "+p.Key+" can belong to one",
					"give "+p.Key+" the same each: as "+dp.Of.Value)
			}
		}
	}
	for _, p := range b.job.Parts {
		seen := map[*job.Part]bool{}
		for q := p; q != nil; q = q.Of {
			if seen[q] {
				b.problems.Add(p.At, "part-of-itself", source.Quote(p.Key)+" ends up being a part of itself", "follow the of: lines and cut the ring")
				p.Of = nil
				break
			}
			seen[q] = true
		}
	}
}

// wholeNumber is a count of pieces, which the reader has found to be a whole number
// from 1 up; what it could not read counts as left out.
func wholeNumber(t source.Text) (int, bool) {
	n, err := strconv.Atoi(t.Value)
	return n, err == nil
}

func (b *builder) readThread(p *job.Part, dp *def.Part) {
	p.Left = valueAt(p.Place, dp.Hand) == "left"
	t := textAt(p.Place, dp.Thread)
	if !t.Written() {
		return
	}
	th, err := thread.Parse(t.Value)
	if err != nil {
		b.problems.Add(t.At, "thread", err.Error(), "write it as M90x2, M24 or 3/4-10 UNC")
		return
	}
	p.Thread = &th
	if n, ok := wholeNumber(dp.Flats); ok {
		if _, err := th.PerFlat(n); err != nil {
			b.problems.Add(dp.Flats.At, "flats", err.Error(), "flats: 6")
		}
		p.Flats = n
	}
}

func (b *builder) readMass(p *job.Part, t source.Text) {
	if !t.Written() {
		return
	}
	if q, ok := b.quantity(t, "36 kg"); ok {
		if q.Unit.Dimension() != units.Mass {
			b.problems.Add(t.At, "not-a-mass", source.Quote(t.Value)+" is not a mass", "write 36 kg, or 79 lb")
			return
		}
		p.Mass = &q
	}
}

// quantity reads a number with its unit.
func (b *builder) quantity(t source.Text, example string) (units.Quantity, bool) {
	q, err := units.ParseQuantity(t.Value)
	if err != nil {
		b.fault(t, err, "write it as "+example)
		return units.Quantity{}, false
	}
	return q, true
}

// partsAt resolves the name of a part, with or without its place (lock-nut,
// lock-nut/DE), as seen from a place: the part of the same place, or all of them
// where no place is given.
func (b *builder) partsAt(t source.Text, from job.Place) []*job.Part {
	key, label, named := cut(t.Value)
	all, ok := b.parts[key]
	if !ok {
		b.unknown(t, "part", knownTo(b, b.parts), "parts")
		return nil
	}
	return pick(b, t, "part", all, func(p *job.Part) job.Place { return p.Place }, from, label, named)
}

// pick keeps those of a name's things that stand at the place named after the
// slash, or that agree with the place it is named from.
func pick[T any](b *builder, t source.Text, what string, all []T, place func(T) job.Place, from job.Place, label string, named bool) []T {
	var out []T
	for _, x := range all {
		p := place(x)
		switch {
		case named && p.Label == label, !named && p.Agrees(from):
			out = append(out, x)
		}
	}
	if b.tally != nil && len(out) > 0 {
		b.tally.found[t.At] = true
	}
	if len(out) == 0 {
		m := missing{name: t, what: what, from: from}
		for _, x := range all {
			m.labels = append(m.labels, place(x).Label)
		}
		if b.tally != nil && !named && atOnePlace(what) {
			b.tally.missing = append(b.tally.missing, m)
		} else {
			b.noSuchPlace(m)
		}
	}
	return out
}
