package packs

import (
	"strconv"

	"matchmark/packs/def"
	"matchmark/packs/source"
)

// resolveRemoved ties the removed parts of a step to where they go.
func (b *builder) resolveRemoved(st *Step, ds *def.Step) {
	for _, c := range ds.Remove {
		for _, p := range b.partsAt(c.Part, st.Place) {
			m := &Move{At: c.Part.At, Step: st, Part: p, N: b.pieces(c, p)}
			if p.Off != nil {
				b.problems = append(b.problems, source.Problem{
					Pos: c.Part.At, Severity: source.Error, Code: "removed-twice",
					Message: p.Name + " (" + p.Place.mark(p.Key) + ") is taken off by two steps",
					Help:    []string{"take it out of one of them"},
					See:     []source.Also{{Pos: p.Off.At, What: "taken off here first"}},
				})
				continue
			}
			to := b.into(ds.Into, p)
			if !to.Written() {
				at := ds.Into.At
				if at.IsZero() {
					at = c.Part.At
				}
				b.problems.Add(at, "goes-nowhere", p.Name+" comes off and goes nowhere", "into: C2, a lay-down spot (Y1), bench or scrap")
			} else if w, ok := b.whereAt(to, p.Place.or(st.Place)); ok {
				m.To = w
				if w.Container != nil {
					w.Container.In = append(w.Container.In, m)
				}
			}
			p.Off = m
			st.Remove = append(st.Remove, m)
		}
	}
	for _, f := range ds.Into.For {
		if !names(ds.Remove, f.Name.Value) {
			b.problems.Add(f.Name.At, "not-removed", quote(f.Name.Value)+" is not among the parts this step removes", "add it to remove:, or take it out of into:")
		}
	}
}

// or is p, or q where p is no place at all.
func (p Place) or(q Place) Place {
	if p.Label == "" {
		return q
	}
	return p
}

// into finds where a part goes: its own entry, else the one place for all.
func (b *builder) into(in def.Into, p *Part) def.Text {
	for _, f := range in.For {
		if f.Name.Value == p.Key || f.Name.Value == p.Place.mark(p.Key) {
			return f.Value
		}
	}
	return in.To
}

func names(list []def.Count, key string) bool {
	for _, c := range list {
		if c.Part.Value == key {
			return true
		}
		if k, _, _ := cut(key); c.Part.Value == k {
			return true
		}
	}
	return false
}

// pieces is how many pieces of a part a step means: all, unless it says.
func (b *builder) pieces(c def.Count, p *Part) int {
	n, ok := wholeNumber(c.N)
	if !ok {
		return p.Count
	}
	if n > p.Count {
		b.problems.Add(c.N.At, "count", "there are "+strconv.Itoa(p.Count)+" pieces of "+p.Key+", not "+c.N.Value,
			"put the count right here or at the part")
		return p.Count
	}
	return n
}

// resolveFitted ties the parts that a step puts back to where they come from.
func (b *builder) resolveFitted(st *Step, ds *def.Step) {
	for _, c := range ds.Fit {
		for _, p := range b.partsAt(c.Part, st.Place) {
			m := &Move{At: c.Part.At, Step: st, Part: p, N: b.pieces(c, p)}
			if p.Back != nil {
				b.problems = append(b.problems, source.Problem{
					Pos: c.Part.At, Severity: source.Error, Code: "fitted-twice",
					Message: p.Name + " (" + p.Place.mark(p.Key) + ") is put back by two steps",
					Help:    []string{"take it out of one of them"},
					See:     []source.Also{{Pos: p.Back.At, What: "put back here first"}},
				})
				continue
			}
			p.Back = m
			st.Fit = append(st.Fit, m)
		}
	}
}

// comesFrom fills in where a part put back comes from, and books it out there.
func (m *Move) comesFrom() {
	p := m.Part
	m.New = p.Renew == "always"
	if p.Off == nil {
		return
	}
	m.From = p.Off.To
	if c := m.From.Container; c != nil && !m.New {
		c.Out = append(c.Out, m)
	}
}
