package walk

import "matchmark/packs/job"

// apply changes the state of the machine by one event.
func (w *Walk) apply(e *Event) {
	switch e.Verb {
	case job.DoRemove:
		w.remove(e)
	case job.DoFit:
		w.fit(e)
	case job.DoFitForNow:
		w.fitForNow(e)
	case job.DoTakeOut:
		w.takeOut(e)
	case job.DoLoosen:
		w.loosen(e)
	case job.DoTighten:
		w.tighten(e)
	case job.DoLock, job.DoUnlock, job.DoUnlockForNow, job.DoLockAgain:
		w.lock(e)
	case job.DoOpen, job.DoClose:
		w.open(e)
	}
}

func (w *Walk) lock(e *Event) {
	l := w.locks[e.Lock]
	if l == nil {
		l = &timeline[*Event]{}
		w.locks[e.Lock] = l
	}
	if e.Verb == job.DoLock || e.Verb == job.DoLockAgain {
		l.change(e.Index, e)
	} else {
		l.change(e.Index, nil)
	}
}

func (w *Walk) open(e *Event) {
	l := w.openings[e.Opening]
	if l == nil {
		l = &timeline[*Event]{}
		w.openings[e.Opening] = l
	}
	if e.Verb == job.DoOpen {
		l.change(e.Index, e)
	} else {
		l.change(e.Index, nil)
	}
}

func (w *Walk) remove(e *Event) {
	m, l := e.Move, w.parts[e.Move.Part]
	p := l.last()
	e.Had = p.on
	n := min(m.N, p.on)
	p.on -= n
	l.change(e.Index, p)
	w.off[m] = n
	w.hold(m.To.Container, e, n)
}

func (w *Walk) fit(e *Event) {
	m, l := e.Move, w.parts[e.Move.Part]
	p := l.last()
	if m.Undo == nil { // added: it comes from outside
		e.Had = m.N
	} else if e.Had = w.off[m.Undo]; e.Had < m.N {
		return
	} else {
		w.off[m.Undo] -= m.N
	}
	p.on += m.N
	l.change(e.Index, p)
	w.hold(m.From.Container, e, -m.N)
	for _, jt := range m.Part.Joints {
		w.fitted(grip{joint: jt}, e)
	}
	w.fitted(grip{part: m.Part}, e)
}

// fitted notes that a fastener of something has been put back.
func (w *Walk) fitted(g grip, e *Event) {
	if l := w.grips[g]; l != nil {
		now := l.last()
		now.Fitted = e
		l.change(e.Index, now)
	}
}

func (w *Walk) fitForNow(e *Event) {
	l := w.parts[e.Move.Part]
	p := l.last()
	e.Had = e.Move.Part.Count - p.on - p.now
	if e.Had < e.Move.N {
		return
	}
	p.now += e.Move.N
	p.out = e
	l.change(e.Index, p)
}

func (w *Walk) takeOut(e *Event) {
	l := w.parts[e.Move.Part]
	p := l.last()
	e.Had = p.now
	if e.Had < e.Move.N {
		return
	}
	p.now -= e.Move.N
	l.change(e.Index, p)
}

// hold changes how many pieces lie in a container.
func (w *Walk) hold(c *job.Container, e *Event, n int) {
	if c == nil {
		return
	}
	l := w.containers[c]
	if l == nil {
		l = &timeline[int]{}
		w.containers[c] = l
	}
	l.change(e.Index, l.last()+n)
}

// gripLine is the timeline of a joint or a part; a part that is loosened by its
// name is known from then on.
func (w *Walk) gripLine(f job.Fastening) *timeline[Grip] {
	g := grip{joint: f.Joint, part: f.Part}
	l := w.grips[g]
	if l == nil {
		l = &timeline[Grip]{start: Grip{Of: f}}
		w.grips[g] = l
	}
	return l
}

func (w *Walk) loosen(e *Event) {
	l := w.gripLine(e.Grip)
	now := l.last()
	now.Known = true
	if now.Loosened == nil {
		now.Loosened = e
	}
	l.change(e.Index, now)
}

func (w *Walk) tighten(e *Event) {
	l := w.gripLine(e.Grip)
	now := l.last()
	now.Known, now.Loosened, now.Fitted, now.Trial = true, nil, nil, nil
	if e.Grip.Joint != nil && w.ForNow(e.Grip, e) > 0 {
		now.Trial = e
	}
	l.change(e.Index, now)
}
