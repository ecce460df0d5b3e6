package expand

import (
	"slices"
	"strconv"

	"matchmark/packs/def"
	"matchmark/packs/fit"
	"matchmark/packs/job"
	"matchmark/packs/names"
	"matchmark/packs/source"
	"matchmark/packs/thread"
	"matchmark/packs/units"
)

// readParts repeats every part over its places and reads its thread, mass and
// count.
func (b *builder) readParts() {
	b.Parts = map[string][]*job.Part{}
	for _, dp := range b.Def.Parts {
		places := b.Over(dp.Each)
		b.CheckVarying(dp.Name, "the name", places)
		b.CheckVarying(dp.Count, "how many there are", places)
		b.CheckVarying(dp.Hand, "the hand of the thread", places)
		b.CheckVarying(dp.Mass, "the mass", places)
		b.CheckVarying(dp.Thread, "", places)
		b.CheckVarying(dp.Fit, "the fit", places)
		for _, pl := range places {
			p := &job.Part{At: dp.Key.At, Key: dp.Key.Value, Place: pl, Name: names.ValueAt(pl, dp.Name), Count: 1, Note: dp.Note.Value, Renew: dp.Renew.Value, Holds: dp.Holds.Value, Aid: dp.Aid.Value == "yes", Guard: dp.Guard.Value == "yes"}
			if p.Name == "" {
				p.Name = p.Key
			}
			if p.Abroad = !b.Job.HasEnglish(p.Name); !p.Abroad {
				p.English = b.Job.InEnglish(p.Name)
			}
			if n, ok := names.WholeNumber(names.TextAt(pl, dp.Count)); ok {
				p.Count = n
			}
			b.readThread(p, dp)
			b.readFit(p, names.TextAt(pl, dp.Fit))
			b.readMovement(p, dp)
			b.readShims(p, dp)
			b.readMass(p, names.TextAt(pl, dp.Mass))
			if dp.Set.Written() {
				p.Set = b.SetAt(dp.Set, pl)
				if p.Set != nil {
					p.Set.Members = append(p.Set.Members, p)
				}
			}
			b.Parts[p.Key] = append(b.Parts[p.Key], p)
			b.Job.Parts = append(b.Job.Parts, p)
		}
	}
	for _, same := range b.Parts {
		left := slices.ContainsFunc(same, func(p *job.Part) bool { return p.Left })
		for _, p := range same {
			p.Handed = left
		}
	}
	b.readAssemblies()
	b.readBehind()
}

// readAssemblies ties each part to the assembly that it belongs to.
func (b *builder) readAssemblies() {
	for _, dp := range b.Def.Parts {
		if !dp.Of.Written() {
			continue
		}
		for _, p := range b.Parts[dp.Key.Value] {
			if up := b.PartsAt(dp.Of, p.Place); len(up) == 1 {
				p.Of = up[0]
			} else if len(up) > 1 {
				b.Problems.Add(dp.Of.At, "which-place", source.Quote(dp.Of.Value)+" stands at several places; "+p.Key+" can belong to one",
					"give "+p.Key+" the same each: as "+dp.Of.Value)
			}
		}
	}
	b.cutRings()
	for _, p := range b.Job.Parts {
		levels := 0
		for q := p.Of; q != nil; q = q.Of {
			if levels++; levels > maxNested {
				b.Problems.Add(p.At, "too-many", source.Quote(p.Key)+" stands inside more than "+strconv.Itoa(maxNested)+" assemblies, each a part of the next",
					"a machine has about five: are the of: lines one chain by mistake?")
				p.Of = nil
				break
			}
		}
	}
}

// cutRings reports each part that is a part of itself in the end, and takes it out of
// its assembly.
func (b *builder) cutRings() {
	walked := map[*job.Part]int{} // by the number of the part from which it was reached first
	for i, p := range b.Job.Parts {
		for q := p; q != nil; q = q.Of {
			from, known := walked[q]
			if known && from == i {
				b.Problems.Add(q.At, "part-of-itself", source.Quote(q.Key)+" ends up being a part of itself", "follow the of: lines and cut the ring")
				q.Of = nil
			}
			if known {
				break
			}
			walked[q] = i
		}
	}
}

// maxNested is how many assemblies may stand inside one another. Every step with a part
// has to do with all that it is inside of.
const maxNested = 40

func (b *builder) readThread(p *job.Part, dp *def.Part) {
	p.Left = names.ValueAt(p.Place, dp.Hand) == "left"
	t := names.TextAt(p.Place, dp.Thread)
	if !t.Written() {
		return
	}
	th, err := thread.Parse(t.Value)
	if err != nil {
		b.Problems.Add(t.At, "thread", err.Error(), "write it as M90x2, M24 or 3/4-10 UNC")
		return
	}
	p.Thread = &th
	if n, ok := names.WholeNumber(dp.Flats); ok {
		if _, err := th.PerFlat(n); err != nil {
			b.Problems.Add(dp.Flats.At, "flats", err.Error(), "for example flats: 6")
		}
		p.Flats = n
	}
}

// readFit reads how a part sits: whoever takes it off has to know a press fit beforehand.
func (b *builder) readFit(p *job.Part, t source.Text) {
	if !t.Written() {
		return
	}
	f, err := fit.ParseFit(t.Value)
	if err != nil {
		b.Problems.Add(t.At, "fit", err.Error(), "fit: the diameter, then the letters and grades of bore and seat, as the drawing has them")
		return
	}
	p.Fit = f.String()
}

func (b *builder) readMass(p *job.Part, t source.Text) {
	if !t.Written() {
		return
	}
	if q, ok := b.Quantity(t, "… kg"); ok {
		if q.Unit.Dimension() != units.Mass {
			b.Problems.Add(t.At, "not-a-mass", source.Quote(t.Value)+" is not a mass", "write … kg, or … lb")
			return
		}
		p.Mass = &q
	}
}

// readBehind ties each part to those that it is behind.
func (b *builder) readBehind() {
	for _, dp := range b.Def.Parts {
		for _, p := range b.Parts[dp.Key.Value] {
			for _, t := range dp.Behind {
				for _, q := range b.PartsAt(t, p.Place) {
					if p == q {
						b.Problems.Add(t.At, "behind-itself", p.Called()+" cannot be behind itself", "name the part in front of it")
						continue
					}
					p.Behind = append(p.Behind, q)
					b.checkRing(t, p, q)
				}
			}
		}
	}
}

// checkRing sees that of two parts each is not behind the other: neither could come
// off first.
func (b *builder) checkRing(t source.Text, p, q *job.Part) {
	seen := map[*job.Part]bool{}
	var leads func(x *job.Part) bool
	leads = func(x *job.Part) bool {
		if x == p {
			return true
		}
		if seen[x] {
			return false
		}
		seen[x] = true
		return slices.ContainsFunc(x.Behind, leads)
	}
	if leads(q) {
		b.Problems.Add(t.At, "behind-itself", p.Called()+" is behind "+q.Called()+", and that is behind it: neither can come off first", "take one of the two out of behind:")
	}
}
