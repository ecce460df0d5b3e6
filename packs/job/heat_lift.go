package job

import "matchmark/packs/heat"

// HotLoad is the heat of a step whose part hangs in a lift, hot, as it is drawn off or put on;
// nil where none does.
func (l *Lift) HotLoad(st *Step) *Heat {
	for _, h := range st.Heats {
		off, on := h.MovedBy(st)
		if h.Hub != nil && (off && h.Pull != nil || on && h.PutOn != nil && h.PutOn.Heated()) && l.hangs(h.Hub) {
			return h
		}
	}
	return nil
}

// DrawnHot reports whether a step draws the load of a lift off hot, on the hook: what is free
// grips again while somebody waits.
func (l *Lift) DrawnHot(st *Step) bool {
	h := l.HotLoad(st)
	if h == nil {
		return false
	}
	off, _ := h.MovedBy(st)
	return off
}

// putOnHot reports whether a step puts the load of a lift on hot, on the hook.
func (l *Lift) putOnHot(st *Step) bool { return l.HotLoad(st) != nil && !l.DrawnHot(st) }

// hangs reports whether a part hangs in a lift, by itself or within another.
func (l *Lift) hangs(p *Part) bool {
	for _, q := range l.Parts {
		if p == q || p.Within(q) {
			return true
		}
	}
	return false
}

// Hottest is how hot the part gets at a step at most: what its sheet never lets it pass where it
// is drawn off, and what it is heated to where it is put on; 0 where that is not known.
func (h *Heat) Hottest(st *Step) heat.Celsius {
	if _, on := h.MovedBy(st); on && h.PutOn != nil {
		if t := h.PutOn.Hottest(); t > 0 {
			return t
		}
	}
	return h.Limit.At
}

// Hottest is how hot a part that is put on may be, by whatever its sheet tells to set; 0 where
// that is not worked out.
func (f *HotFit) Hottest() heat.Celsius {
	hottest := max(f.SetTo, f.Oven)
	if f.Plan != nil {
		hottest = max(hottest, f.Plan.Need.Hub)
	}
	for _, r := range f.Ladder {
		if !r.TooHot {
			hottest = max(hottest, r.SetTo)
		}
	}
	return hottest
}
