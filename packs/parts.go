package packs

import (
	"matchmark/packs/def"
	"matchmark/packs/thread"
	"matchmark/packs/units"
)

// readParts repeats every part over its places and reads its thread, mass and
// count.
func (b *builder) readParts() {
	b.parts = map[string][]*Part{}
	for _, dp := range b.def.Parts {
		places := b.over(dp.Each)
		b.checkVarying(dp.Name, "the name", places)
		for _, pl := range places {
			p := &Part{At: dp.Key.At, Key: dp.Key.Value, Place: pl, Name: pl.value(dp.Name), Count: 1, Renew: dp.Renew.Value}
			if p.Name == "" {
				p.Name = p.Key
			}
			b.readCount(p, pl.at(dp.Count))
			b.readThread(p, dp)
			b.readMass(p, pl.at(dp.Mass))
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
				b.problems.Add(dp.Of.At, "which-place", quote(dp.Of.Value)+" stands at several places; "+p.Key+" can belong to one",
					"give "+p.Key+" the same each: as "+dp.Of.Value)
			}
		}
	}
	for _, p := range b.job.Parts {
		seen := map[*Part]bool{}
		for q := p; q != nil; q = q.Of {
			if seen[q] {
				b.problems.Add(p.At, "part-of-itself", quote(p.Key)+" ends up being a part of itself", "follow the of: lines and cut the ring")
				p.Of = nil
				break
			}
			seen[q] = true
		}
	}
}

func (b *builder) readCount(p *Part, t def.Text) {
	if !t.Written() {
		return
	}
	n, ok := b.wholeNumber(t)
	if ok && n < 1 {
		b.problems.Add(t.At, "count", "count "+t.Value+": a part that is there has at least one piece", "count: 8")
		return
	}
	if ok {
		p.Count = n
	}
}

// wholeNumber reads a count of pieces, at most 9999.
func (b *builder) wholeNumber(t def.Text) (int, bool) {
	n := 0
	for _, r := range t.Value {
		if r < '0' || r > '9' || n > 999 {
			b.problems.Add(t.At, "not-a-count", quote(t.Value)+" is not a whole number of pieces", "write 8")
			return 0, false
		}
		n = 10*n + int(r-'0')
	}
	if t.Value == "" || (len(t.Value) > 1 && t.Value[0] == '0') {
		b.problems.Add(t.At, "not-a-count", quote(t.Value)+" is not a whole number of pieces", "write 8")
		return 0, false
	}
	return n, true
}

func (b *builder) readThread(p *Part, dp *def.Part) {
	hand := p.Place.at(dp.Hand)
	if hand.Written() && hand.Value != "left" && hand.Value != "right" {
		b.problems.Add(hand.At, "hand", quote(hand.Value)+" is no hand of a thread", "write left or right")
	}
	p.Left = hand.Value == "left"
	t := p.Place.at(dp.Thread)
	if !t.Written() {
		return
	}
	th, err := thread.Parse(t.Value)
	if err != nil {
		b.problems.Add(t.At, "thread", err.Error(), "write it as M90x2, M24 or 3/4-10 UNC")
		return
	}
	p.Thread = &th
	if dp.Flats.Written() {
		if n, ok := b.wholeNumber(dp.Flats); ok {
			if _, err := th.PerFlat(n); err != nil {
				b.problems.Add(dp.Flats.At, "flats", err.Error(), "flats: 6")
			}
			p.Flats = n
		}
	}
}

func (b *builder) readMass(p *Part, t def.Text) {
	if !t.Written() {
		return
	}
	if q, ok := b.quantity(t, "36 kg"); ok {
		if q.Unit.Dimension() != units.Mass {
			b.problems.Add(t.At, "not-a-mass", quote(t.Value)+" is not a mass", "write 36 kg, or 79 lb")
			return
		}
		p.Mass = &q
	}
}

// quantity reads a number with its unit.
func (b *builder) quantity(t def.Text, example string) (units.Quantity, bool) {
	q, err := units.ParseQuantity(t.Value)
	if err != nil {
		b.problems.Add(t.At, "quantity", err.Error(), "write it as "+example)
		return units.Quantity{}, false
	}
	return q, true
}

// partsAt resolves the name of a part, with or without its place (lock-nut,
// lock-nut/DE), as seen from a place: the part of the same place, or all of them
// where no place is given.
func (b *builder) partsAt(t def.Text, from Place) []*Part {
	key, label, named := cut(t.Value)
	all, ok := b.parts[key]
	if !ok {
		b.unknown(t, "part", mapKeys(b.parts), "parts")
		return nil
	}
	return pick(b, t, "part", all, func(p *Part) Place { return p.Place }, from, label, named)
}

// pick keeps those of a name's things that stand at the place named after the
// slash, or that agree with the place it is named from.
func pick[T any](b *builder, t def.Text, what string, all []T, place func(T) Place, from Place, label string, named bool) []T {
	var out []T
	for _, x := range all {
		p := place(x)
		switch {
		case named && p.Label == label, !named && p.agrees(from):
			out = append(out, x)
		}
	}
	if len(out) == 0 {
		var labels []string
		for _, x := range all {
			labels = append(labels, place(x).Label)
		}
		b.unknown(def.Text{Value: label, At: t.At}, "place of this "+what, labels, "it")
	}
	return out
}
