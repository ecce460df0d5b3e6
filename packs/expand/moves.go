package expand

import (
	"slices"
	"strconv"
	"strings"

	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/names"
	"matchmark/packs/source"
)

// resolveRemoved ties the removed parts of a step to where they go. Whether so
// many pieces are there to be removed is for the ledger, which knows the order.
func (b *builder) resolveRemoved(st *job.Step, ds *def.Step) {
	for _, c := range ds.Remove {
		for _, p := range b.PartsAt(c.Part, st.Place) {
			if b.isAid(c.Part, p, "take-out-again: ["+p.Key+"]") {
				continue
			}
			m := &job.Move{At: c.Part.At, Step: st, Part: p, N: b.pieces(c, p)}
			to := b.into(ds.Into, p)
			if !to.Written() {
				at := ds.Into.At
				if at.IsZero() {
					at = c.Part.At
				}
				b.Problems.Add(at, "goes-nowhere", p.Name+" comes off and goes nowhere", b.placesFor())
			} else if w, ok := b.WhereAt(to, p.Place.Or(st.Place)); ok {
				m.To = w
				if w.Container != nil {
					w.Container.In = append(w.Container.In, m)
				}
			}
			p.Off = append(p.Off, m)
			st.Remove = append(st.Remove, m)
		}
	}
	for _, f := range ds.Into.For {
		if !lists(ds.Remove, f.Name.Value) && !removes(st, f.Name.Value) {
			b.Problems.Add(f.Name.At, "not-removed", source.Quote(f.Name.Value)+" is not among the parts this step removes", "add it to remove:, or take it out of into:")
		}
	}
	if ds.Into.To.Written() && len(ds.Remove) == 0 {
		b.Problems.Add(ds.Into.At, "not-removed", "into: says where parts go, but this step removes none", "for example remove: [lock-nut], or take into: out")
	}
}

// into finds where a part goes: its own entry, else the one place for all.
func (b *builder) into(in def.Into, p *job.Part) source.Text {
	for _, f := range in.For {
		if f.Name.Value == p.Key || f.Name.Value == p.Place.Mark(p.Key) {
			return f.Value
		}
	}
	return in.To
}

// removes reports whether a step takes off a part of that name.
func removes(st *job.Step, name string) bool {
	return slices.ContainsFunc(st.Remove, func(m *job.Move) bool { return m.Part.Key == name || m.Part.Place.Mark(m.Part.Key) == name })
}

func lists(list []def.Count, key string) bool {
	for _, c := range list {
		if c.Part.Value == key {
			return true
		}
		if k, _, _ := names.Cut(key); c.Part.Value == k {
			return true
		}
	}
	return false
}

// pieces is how many pieces of a part a step means: all, unless it says.
func (b *builder) pieces(c def.Count, p *job.Part) int {
	n, ok := names.WholeNumber(c.N)
	if !ok {
		return p.Count
	}
	if n > p.Count {
		b.Problems.Add(c.N.At, "count", "there are "+strconv.Itoa(p.Count)+" pieces of "+p.Key+", not "+c.N.Value,
			"put the count right here or at the part")
		return p.Count
	}
	return n
}

// resolveFitted takes over the parts that a step puts back; where they come from
// is known when all removals are.
func (b *builder) resolveFitted(st *job.Step, ds *def.Step) {
	for _, m := range b.listed(ds.Fit, st) {
		if !b.isAid(source.Text{At: m.At}, m.Part, "fit-for-now: ["+m.Part.Key+"], and take-out-again: at a later step") {
			st.Fit = append(st.Fit, m)
		}
	}
	st.ForNow = b.listed(ds.ForNow, st)
	st.TakeOut = b.listed(ds.TakeOut, st)
	for _, t := range ds.LeftOut {
		for _, p := range b.PartsAt(t, st.Place) {
			st.LeftOut = append(st.LeftOut, job.LeftOut{At: t.At, Part: p})
		}
	}
	for _, t := range ds.From {
		st.From = append(st.From, b.fetches(t, st)...)
	}
	if len(ds.From) > 0 && len(ds.Fit) == 0 {
		b.Problems.Add(ds.From[0].At, "not-fitted", "from: says where parts come from, but this step fits none", "for example fit: [lock-nut], or take from: out")
	}
}

// fetches resolves where fitted parts come from. A group of places behind a container
// (C1/valve) is its pockets of the places that the parts of the step have.
func (b *builder) fetches(t source.Text, st *job.Step) []job.Fetch {
	var out []job.Fetch
	if i := strings.LastIndexByte(t.Value, '/'); i >= 0 {
		for _, m := range st.Fit {
			if p := m.Part.Place; slices.Contains(p.Groups, t.Value[i+1:]) {
				if w, ok := b.WhereAt(t, p.Or(st.Place)); ok && !slices.ContainsFunc(out, func(f job.Fetch) bool { return f.From == w }) {
					out = append(out, job.Fetch{Text: t, From: w})
				}
			}
		}
	}
	if len(out) > 0 {
		return out
	}
	if w, ok := b.WhereAt(t, st.Place); ok {
		out = append(out, job.Fetch{Text: t, From: w})
	}
	return out
}

// isAid reports, and tells as a problem, that a part which is no part of the
// machine is taken off or put back for good.
func (b *builder) isAid(t source.Text, p *job.Part, help string) bool {
	if p.Aid {
		b.Problems.Add(t.At, "aid", p.Called()+" is no part of the machine: it only goes in for a while", help)
	}
	return p.Aid
}

// listed makes a move of each part in a list, without a place yet.
func (b *builder) listed(list []def.Count, st *job.Step) []*job.Move {
	var out []*job.Move
	for _, c := range list {
		for _, p := range b.PartsAt(c.Part, st.Place) {
			out = append(out, &job.Move{At: c.Part.At, Step: st, Part: p, N: b.pieces(c, p)})
		}
	}
	return out
}

// placesFor says what may stand behind into:, with the containers that there are.
func (b *builder) placesFor() string {
	known := append(names.Keys(b.Containers), names.Keys(b.Spots)...)
	if len(known) == 0 || len(known) > 20 {
		return "into: a container (as C2), a lay-down spot (as Y1), bench or scrap"
	}
	return "into: one of " + strings.Join(append(known, "bench"), ", ") + " or scrap"
}
