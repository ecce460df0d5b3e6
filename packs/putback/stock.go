package putback

import (
	"slices"
	"strconv"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/source"
)

// A stock is what is off the machine and not booked back yet: the pieces left of
// each removal.
type stock map[*job.Move]int

// stockOf counts all that the written steps take off.
func (b *undoer) stockOf() stock {
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
func (b *undoer) bookFitted(s stock) {
	for _, sec := range b.job.Sections {
		for _, st := range sec.Steps {
			var all []*job.Move
			var from []job.Fetch
			if len(st.Fit) > 0 {
				from = st.From
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
			if m := off.PutBack(); m != nil && s[off] > 0 {
				b.problems.AddWith(m.At, "count-differs", strconv.Itoa(off.N)+" of "+p.Name+" come off together and "+strconv.Itoa(off.N-s[off])+" go back", off.At, "comes off here", "make the two counts the same")
			}
		}
	}
}

// checkFrom sees that something of what a step fits does lie where it says.
func (b *undoer) checkFrom(st *job.Step, f job.Fetch) {
	for _, m := range st.Fit {
		if m.From == f.From || m.Part.Aid {
			return
		}
	}
	var lies []string // where its parts do lie
	for _, m := range st.Fit {
		if w := m.From.Mark(); w != "" && !slices.Contains(lies, w) {
			lies = append(lies, w)
		}
	}
	help := "name where its parts went when they came off"
	if len(lies) > 0 {
		help += ": " + strings.Join(lies, ", ")
	}
	b.problems.Add(f.Text.At, "from-elsewhere", "nothing that this step fits lies in "+f.Text.Value, help)
}

// draw takes the pieces of a move out of the stock. When they lie in several
// places the move is split, one for each.
func (b *undoer) draw(m *job.Move, s stock, from []job.Fetch) []*job.Move {
	if p := m.Part; p.Added() && len(p.Off) == 0 && job.Pieces(p.Back)+m.N <= p.Count {
		m.From = job.Where{Scrap: true} // from no place of this job
		p.Back = append(p.Back, m)
		return []*job.Move{m}
	}
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
func fetched(w job.Where, from []job.Fetch, off []*job.Move, s stock) bool {
	any := false
	for _, f := range from {
		if f.From == w {
			return true
		}
		for _, m := range off {
			any = any || s[m] > 0 && m.To == f.From
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
func (b *undoer) tooMany(m *job.Move, left int) {
	p := m.Part
	name := p.Name + " (" + p.Place.Mark(p.Key) + ")"
	pr := source.Problem{Pos: m.At, Severity: source.Error}
	switch {
	case len(p.Off) == 0 && !p.Added():
		pr.Code, pr.Message = "never-off", name+" is fitted, but it never comes off: it would be there twice"
		pr.Help = []string{"remove: [" + p.Key + "] at an earlier step", "or renew: added at the part, if the machine has none yet"}
	case len(p.Back) > 0 && left == 0:
		pr.Code, pr.Message = "fitted-twice", name+" is put back by two steps"
		pr.Help = []string{"take it out of one of them"}
		pr.See = []source.Also{{Pos: p.Back[0].At, What: "put back here first"}}
	case len(p.Off) == 0:
		pr.Code, pr.Message = "count-differs", strconv.Itoa(p.Count)+" of "+p.Name+" are added and more go on"
		pr.Help = []string{"make the two counts the same"}
		pr.See = []source.Also{{Pos: p.At, What: "the part"}}
	default:
		pr.Code, pr.Message = "count-differs", strconv.Itoa(left)+" of "+p.Name+" are off and "+strconv.Itoa(m.N)+" go back"
		pr.Help = []string{"make the two counts the same: {" + p.Key + ": " + strconv.Itoa(left) + "}"}
		pr.See = []source.Also{{Pos: p.Off[0].At, What: "comes off here"}}
	}
	b.problems = append(b.problems, pr)
}
