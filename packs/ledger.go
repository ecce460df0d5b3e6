package packs

import (
	"matchmark/packs/job"
	"matchmark/packs/source"
	"strconv"
)

// A ledger follows every piece and every joint through the order of work, as a
// storekeeper would who stands beside the machine, and speaks when a step wants
// what cannot be: a piece that is off already, a joint that is tight.
type ledger struct {
	b      *builder
	pieces map[*job.Part]*account
	joints []*grip
	in     map[*job.Container]int // pieces that lie in it
	sites  map[source.Pos]bool    // places where a move on the wrong site was told
}

// An account is where the pieces of one part are.
type account struct {
	on  int       // in the machine
	now int       // in it for now, to be taken out again
	out *job.Move // the last one that fitted some for now
	off map[*job.Move]int
}

// A grip is how tight a joint or part is.
type grip struct {
	job.Fastening
	loosened *job.Step // nil while it is tight
	at       source.Pos
	fitted   *job.Move // a fastener put back since it was last tightened
	trial    *job.Step // that last tightened it, while a fastener was on for now
}

// keepLedger walks through the order of work and proves that every piece that is
// taken is there, that all that came off is back at the end, and that what was
// loosened or fitted for now is tight or out again.
func (b *builder) keepLedger() {
	l := &ledger{b: b, pieces: map[*job.Part]*account{}, in: map[*job.Container]int{}, sites: map[source.Pos]bool{}}
	for _, p := range b.job.Parts {
		a := &account{on: p.Count, off: map[*job.Move]int{}}
		if p.Aid {
			a.on = 0
		}
		l.pieces[p] = a
	}
	for _, j := range b.job.Joints {
		l.joints = append(l.joints, &grip{Fastening: job.Fastening{Joint: j, At: j.At}})
	}
	for _, s := range b.job.Sections {
		for _, st := range s.Steps {
			l.step(st)
		}
	}
	l.close()
}

// step books one step: what comes out and off first, then what goes on.
func (l *ledger) step(st *job.Step) {
	for _, f := range st.Loosen {
		l.loosen(st, f)
	}
	for _, m := range st.TakeOut {
		l.takeOut(m)
	}
	for _, m := range st.Remove {
		l.remove(m)
	}
	for _, m := range st.Fit {
		l.fit(m)
	}
	for _, m := range st.ForNow {
		l.forNow(m)
	}
	for _, p := range st.LeftOut {
		l.leaveOut(st, p)
	}
	for i, f := range st.Tighten {
		l.tighten(st, f)
		if f.Joint != nil && l.onForNow(f) {
			st.Tighten[i].Final, st.Tighten[i].On = l.b.lastTorque(f.Joint, st), l.piecesForNow(f)
		}
	}
	for _, c := range st.Empty {
		l.empty(st, c)
	}
}

func (l *ledger) remove(m *job.Move) {
	p, a := m.Part, l.pieces[m.Part]
	l.sited(m, "comes off")
	switch {
	case a.on == 0:
		l.b.problems.AddWith(m.At, "removed-twice", p.Called()+" is taken off by two steps", p.Off[0].At, "taken off here first", "take it out of one of them")
		return
	case a.on < m.N:
		l.b.problems.AddWith(m.At, "removed-twice", "only "+strconv.Itoa(a.on)+" of "+strconv.Itoa(p.Count)+" "+p.Called()+" are still on, not "+strconv.Itoa(m.N), p.Off[0].At, "the others come off here",
			"remove: [{"+p.Key+": "+strconv.Itoa(a.on)+"}]")
	}
	n := min(m.N, a.on)
	a.on -= n
	a.off[m] = n
	if c := m.To.Container; c != nil {
		l.in[c] += n
	}
}

func (l *ledger) fit(m *job.Move) {
	a := l.pieces[m.Part]
	l.sited(m, "goes back")
	if a.now > 0 {
		l.b.problems.AddWith(m.At, "still-in", m.Part.Called()+" goes back, and is still in for now", a.out.At, "fitted for now here", "take-out-again: ["+m.Part.Key+"] before it goes back for good")
	}
	if a.off[m.Undo] < m.N {
		if m.Undo.Step.Index > m.Step.Index {
			l.b.problems.AddWith(m.At, "back-before-off", m.Part.Name+" is put back at "+m.Step.Name()+" before it comes off at "+m.Undo.Step.Name(), m.Undo.At, "comes off here",
				"move the step that fits it below the step that removes it")
		}
		return
	}
	a.off[m.Undo] -= m.N
	a.on += m.N
	if c := m.From.Container; c != nil {
		l.in[c] -= m.N
	}
	for _, g := range l.joints {
		for _, p := range g.Parts() {
			if p == m.Part {
				g.fitted = m
			}
		}
	}
}

// sited sees that a part that belongs to an assembly is moved where that assembly
// is: on the bench when it has come off, else in the machine.
func (l *ledger) sited(m *job.Move, verb string) {
	var away *job.Part
	for up := m.Part.Of; up != nil; up = up.Of {
		if l.pieces[up].on == 0 {
			away = up
		}
	}
	if l.sites[m.At] {
		return // the row that undoes it goes wrong with it
	}
	l.sites[m.At] = (away == nil) == m.Step.Bench
	switch {
	case away == nil && m.Step.Bench:
		what := m.Part.Name + " " + verb + " on the bench"
		if m.Part.Of == nil {
			l.b.problems.Add(m.At, "not-on-bench", what+", but it belongs to no assembly that could be there", "take where: bench out, or write of: at the part")
			return
		}
		l.b.problems.AddWith(m.At, "not-on-bench", what+", but "+m.Part.Of.Called()+" is in the machine then", l.b.movedAt(m.Part.Of, m.Part.Of.At), "the assembly",
			"take where: bench out, or move the step")
	case away != nil && !m.Step.Bench:
		l.b.problems.AddWith(m.At, "on-bench", m.Part.Name+" "+verb+" in the machine, but "+away.Called()+" is off it then", away.Off[0].At, "comes off here",
			"where: bench, or move the step")
	}
}

// movedAt is where a part comes off, or its own place if it never does.
func (b *builder) movedAt(p *job.Part, own source.Pos) source.Pos {
	if len(p.Off) > 0 {
		return p.Off[0].At
	}
	return own
}

func (l *ledger) forNow(m *job.Move) {
	p, a := m.Part, l.pieces[m.Part]
	free := p.Count - a.on - a.now
	if free < m.N {
		l.b.problems.Add(m.At, "for-now", strconv.Itoa(m.N)+" of "+p.Called()+" are fitted for now, but "+strconv.Itoa(free)+" are off", "aid: yes at the part if it is no part of the machine", "else remove: ["+p.Key+"] at an earlier step")
		return
	}
	a.now += m.N
	a.out = m
}

func (l *ledger) takeOut(m *job.Move) {
	a := l.pieces[m.Part]
	if a.now < m.N {
		l.b.problems.Add(m.At, "not-in", strconv.Itoa(m.N)+" of "+m.Part.Called()+" are taken out again, but "+strconv.Itoa(a.now)+" are in for now", "fit-for-now: [{"+m.Part.Key+": "+strconv.Itoa(m.N)+"}] at an earlier step")
		return
	}
	a.now -= m.N
}

// leaveOut sees that a part that is left out is off, and goes back later.
func (l *ledger) leaveOut(st *job.Step, p *job.Part) {
	at := st.At
	if ds := l.b.stepDefs[st]; ds != nil {
		for _, t := range ds.LeftOut {
			if key, _, _ := cut(t.Value); key == p.Key {
				at = t.At
			}
		}
	}
	later := false
	for _, m := range p.Back {
		later = later || m.Step.Index > st.Index
	}
	switch {
	case l.pieces[p].on == p.Count:
		l.b.problems.Add(at, "not-off", p.Called()+" is left out, but it is in the machine then", "take it out of leave-out:, or remove it at an earlier step")
	case !later:
		l.b.problems.Add(at, "left-out", p.Called()+" is left out for now, and no later step puts it back", "fit: ["+p.Key+"] at a later step")
	}
}

// grip finds how tight a thing is; a part that is loosened by its name is known
// from then on.
func (l *ledger) grip(f job.Fastening) *grip {
	for _, g := range l.joints {
		if g.Same(f) {
			return g
		}
	}
	g := &grip{Fastening: f}
	l.joints = append(l.joints, g)
	return g
}

func (l *ledger) loosen(st *job.Step, f job.Fastening) {
	g := l.grip(f)
	if g.loosened != nil {
		l.b.problems.AddWith(f.At, "loosened-twice", f.Mark()+" is loosened by two steps and not tightened between them", g.at, "loosened here first", "take it out of one of them")
		return
	}
	g.loosened, g.at = st, f.At
}

func (l *ledger) tighten(st *job.Step, f job.Fastening) {
	g := l.grip(f)
	if g.loosened == nil && g.fitted == nil && !l.putOn(st, f) {
		l.b.problems.Add(f.At, "never-loosened", f.Mark()+" is tightened at "+st.Name()+", but it is tight then", "loosen: ["+f.Mark()+"] at an earlier step, or take it out")
	}
	g.loosened, g.fitted = nil, nil
	if g.trial = nil; f.Joint != nil && l.onForNow(f) {
		g.trial = st
	}
}

// putOn reports whether a fastener of it was put back, or fitted for now, by this
// step or one before.
func (l *ledger) putOn(st *job.Step, f job.Fastening) bool {
	for _, p := range f.Parts() {
		if l.pieces[p].now > 0 {
			return true
		}
		for _, m := range p.Back {
			if m.Step.Index <= st.Index {
				return true
			}
		}
	}
	return false
}

// empty sees that a container that must be empty now is.
func (l *ledger) empty(st *job.Step, c *job.Container) {
	at := st.At
	if ds := l.b.stepDefs[st]; ds != nil {
		for _, t := range ds.Empty {
			if key, _, _ := cut(t.Value); key == c.Base {
				at = t.At
			}
		}
	}
	switch first := c.First(); {
	case l.in[c] > 0:
		see := c.In[0].At
		for _, m := range c.Out {
			if m.Step.Index > st.Index {
				see = m.At
			}
		}
		l.b.problems.AddWith(at, "not-empty", c.Mark+" must be empty at "+st.Name()+", but "+pieceWord(l.in[c])+" still in it", see, "the pieces", "move the step below the one that empties it, or take it out of empty:")
	case first != nil && first.Step.Index > st.Index:
		l.b.problems.AddWith(at, "not-filled-yet", c.Mark+" must be empty at "+st.Name()+", where nothing has gone into it yet", first.At, "filled here", "move the step below the one that empties it")
	}
}

func pieceWord(n int) string {
	if n == 1 {
		return "1 piece is"
	}
	return strconv.Itoa(n) + " pieces are"
}

// close sees what stands open at the end.
func (l *ledger) close() {
	for _, p := range l.b.job.Parts {
		l.closeAccount(p, l.pieces[p])
	}
	for _, g := range l.joints {
		switch {
		case g.loosened != nil && !l.b.unreversed[g.loosened.Section]:
			l.b.problems.Add(g.at, "never-tightened", g.Mark()+" is loosened at "+g.loosened.Name()+" and never tightened", "tighten: ["+g.Mark()+"] at a later step", "or reverse: its section")
		case g.fitted != nil && g.Joint != nil && (g.trial == nil || l.b.lastTorque(g.Joint, g.trial) == nil):
			l.b.problems.AddWith(g.At, "never-tightened", "a fastener of "+g.Mark()+" goes back at "+g.fitted.Step.Name()+", and "+g.Mark()+" is not tightened after it", g.fitted.At, "goes back here",
				"tighten: ["+g.Joint.Base+"] at that step or later")
		}
	}
}

func (l *ledger) closeAccount(p *job.Part, a *account) {
	if a.now > 0 {
		l.b.problems.Add(a.out.At, "still-in", strconv.Itoa(a.now)+" of "+p.Called()+" are fitted for now at "+a.out.Step.Name()+" and never taken out again", "take-out-again: [{"+p.Key+": "+strconv.Itoa(a.now)+"}] at a later step")
	}
	for _, off := range p.Off {
		left := a.off[off]
		switch {
		case left == 0, off.To.Scrap && p.Renew == "never", l.b.unreversed[off.Step.Section]:
		case off.To.Scrap && !p.ComesNew():
			l.b.problems.Add(off.At, "nothing-new", p.Called()+" is scrapped at "+off.Step.Name()+" and no new one goes on", "renew: always at the part", "or renew: never if it is gone for good")
		case left < off.N && back(off) == nil:
			// Fewer came off than this step says: spoken of already.
		case left < off.N:
			l.b.problems.AddWith(off.At, "count-differs", strconv.Itoa(off.N)+" of "+p.Name+" come off and "+strconv.Itoa(off.N-left)+" go back", back(off).At, "put back here", "make the two counts the same")
		case back(off) == nil:
			l.b.problems.Add(off.At, "never-back", p.Called()+" comes off at "+off.Step.Name()+" and never goes back", "fit: ["+p.Key+"] at a later step", "or reverse: its section", "or into: scrap if it is done with")
		}
	}
}

// back is a move that puts back what another took off, nil if there is none.
func back(off *job.Move) *job.Move {
	for _, m := range off.Part.Back {
		if m.Undo == off {
			return m
		}
	}
	return nil
}

// warning2 is a warning at a step with a part that matters.
func warning2(st *job.Step, code, message string, p *job.Part, help ...string) source.Problem {
	return source.Problem{Pos: st.At, Severity: source.Warning, Code: code, Message: message, Help: help, See: []source.Also{{Pos: p.At, What: "the part"}}}
}
