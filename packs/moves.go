package packs

import (
	"matchmark/packs/job"
	"strconv"

	"matchmark/packs/def"
	"matchmark/packs/source"
)

// resolveRemoved ties the removed parts of a step to where they go. Whether so
// many pieces are there to be removed is for the ledger, which knows the order.
func (b *builder) resolveRemoved(st *job.Step, ds *def.Step) {
	for _, c := range ds.Remove {
		for _, p := range b.partsAt(c.Part, st.Place) {
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
				b.problems.Add(at, "goes-nowhere", p.Name+" comes off and goes nowhere", "into: C2, a lay-down spot (Y1), bench or scrap")
			} else if w, ok := b.whereAt(to, p.Place.Or(st.Place)); ok {
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
		if !names(ds.Remove, f.Name.Value) {
			b.problems.Add(f.Name.At, "not-removed", source.Quote(f.Name.Value)+" is not among the parts this step removes", "add it to remove:, or take it out of into:")
		}
	}
	if ds.Into.To.Written() && len(ds.Remove) == 0 {
		b.problems.Add(ds.Into.At, "not-removed", "into: says where parts go, but this step removes none", "remove: [lock-nut], or take into: out")
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
func (b *builder) pieces(c def.Count, p *job.Part) int {
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
		st.LeftOut = append(st.LeftOut, b.partsAt(t, st.Place)...)
	}
	if len(ds.From) > 0 && len(ds.Fit) == 0 {
		b.problems.Add(ds.From[0].At, "not-fitted", "from: says where parts come from, but this step fits none", "fit: [lock-nut], or take from: out")
	}
}

// isAid reports, and tells as a problem, that a part which is no part of the
// machine is taken off or put back for good.
func (b *builder) isAid(t source.Text, p *job.Part, help string) bool {
	if p.Aid {
		b.problems.Add(t.At, "aid", p.Called()+" is no part of the machine: it only goes in for a while", help)
	}
	return p.Aid
}

// listed makes a move of each part in a list, without a place yet.
func (b *builder) listed(list []def.Count, st *job.Step) []*job.Move {
	var out []*job.Move
	for _, c := range list {
		for _, p := range b.partsAt(c.Part, st.Place) {
			out = append(out, &job.Move{At: c.Part.At, Step: st, Part: p, N: b.pieces(c, p)})
		}
	}
	return out
}

// A stock is what is off the machine and not booked back yet: the pieces left of
// each removal.
type stock map[*job.Move]int

// stockOf counts all that the written steps take off.
func (b *builder) stockOf() stock {
	s := stock{}
	for _, p := range b.job.Parts {
		for _, m := range p.Off {
			s[m] = m.N
		}
	}
	return s
}

// bookFitted says of every part that a written step puts back where it comes
// from, and takes it out of the stock; the rest is put back by generated rows.
func (b *builder) bookFitted(s stock) {
	for _, sec := range b.job.Sections {
		for _, st := range sec.Steps {
			var all []*job.Move
			var from []fetch
			if len(st.Fit) > 0 {
				from = b.from(st)
			}
			for _, m := range st.Fit {
				all = append(all, b.draw(m, s, from)...)
			}
			st.Fit = all
			for _, f := range from {
				b.checkFrom(st, f)
			}
		}
	}
	for _, p := range b.job.Parts {
		for _, off := range p.Off {
			if m := back(off); m != nil && s[off] > 0 {
				b.problems.AddWith(m.At, "count-differs", strconv.Itoa(off.N)+" of "+p.Name+" come off together and "+strconv.Itoa(off.N-s[off])+" go back", off.At, "comes off here", "make the two counts the same")
			}
		}
	}
}

// A fetch is one place that a step says its parts come from.
type fetch struct {
	text  source.Text
	where job.Where
}

// from resolves the places that a step fetches its parts from.
func (b *builder) from(st *job.Step) []fetch {
	var out []fetch
	for _, t := range b.stepDefs[st].From {
		if w, ok := b.whereAt(t, st.Place); ok {
			out = append(out, fetch{t, w})
		}
	}
	return out
}

// checkFrom sees that something of what a step fits does lie where it says.
func (b *builder) checkFrom(st *job.Step, f fetch) {
	for _, m := range st.Fit {
		if m.From == f.where || m.Part.Aid {
			return
		}
	}
	b.problems.Add(f.text.At, "from-elsewhere", "nothing that this step fits lies in "+f.text.Value, "name where its parts went when they came off")
}

// draw takes the pieces of a move out of the stock. When they lie in several
// places the move is split, one for each.
func (b *builder) draw(m *job.Move, s stock, from []fetch) []*job.Move {
	var lots []*job.Move
	total := 0
	for _, off := range m.Part.Off {
		if s[off] == 0 || len(from) > 0 && !fetched(off.To, from, m.Part.Off, s) {
			continue
		}
		lots = append(lots, off)
		total += s[off]
	}
	switch {
	case total < m.N:
		b.tooMany(m, total)
		return nil
	case total > m.N && severalPlaces(lots):
		b.problems = append(b.problems, source.Problem{
			Pos: m.At, Severity: source.Error, Code: "from-which",
			Message: m.Part.Name + " lies in " + lots[0].To.Mark() + " and in " + lots[1].To.Mark() + "; this step does not say which pieces it takes",
			Help:    []string{"from: [" + lots[1].To.Mark() + "]"},
			See:     []source.Also{{Pos: lots[0].At, What: "some came off here"}, {Pos: lots[1].At, What: "some came off here"}},
		})
		return nil
	}
	var out []*job.Move
	for left, i := m.N, 0; left > 0; i++ {
		n := min(left, s[lots[i]])
		part := *m
		part.N = n
		part.ComesFrom(lots[i])
		s[lots[i]] -= n
		left -= n
		out = append(out, &part)
		m.Part.Back = append(m.Part.Back, &part)
	}
	return out
}

// fetched reports whether a place is among those named. A part of which nothing
// lies in any of them is fetched from where it is: checkFrom speaks of the place.
func fetched(w job.Where, from []fetch, off []*job.Move, s stock) bool {
	any := false
	for _, f := range from {
		if f.where == w {
			return true
		}
		for _, m := range off {
			any = any || s[m] > 0 && m.To == f.where
		}
	}
	return !any
}

func severalPlaces(lots []*job.Move) bool {
	for _, m := range lots {
		if m.To != lots[0].To {
			return true
		}
	}
	return false
}

// tooMany is the problem of a step that fits more pieces than are off.
func (b *builder) tooMany(m *job.Move, left int) {
	p := m.Part
	name := p.Name + " (" + p.Place.Mark(p.Key) + ")"
	pr := source.Problem{Pos: m.At, Severity: source.Error}
	switch {
	case len(p.Off) == 0:
		pr.Code, pr.Message = "never-off", name+" is fitted, but it never comes off: it would be there twice"
		pr.Help = []string{"remove: [" + p.Key + "] at an earlier step"}
	case len(p.Back) > 0 && left == 0:
		pr.Code, pr.Message = "fitted-twice", name+" is put back by two steps"
		pr.Help = []string{"take it out of one of them"}
		pr.See = []source.Also{{Pos: p.Back[0].At, What: "put back here first"}}
	default:
		pr.Code, pr.Message = "count-differs", strconv.Itoa(left)+" of "+p.Name+" are off and "+strconv.Itoa(m.N)+" go back"
		pr.Help = []string{"make the two counts the same: {" + p.Key + ": " + strconv.Itoa(left) + "}"}
		pr.See = []source.Also{{Pos: p.Off[0].At, What: "comes off here"}}
	}
	b.problems = append(b.problems, pr)
}
