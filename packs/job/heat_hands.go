package job

// Hands is the least number of people at a part that is drawn off by a flame, and who they are:
// nobody heats, draws and reads the watch at once, and whoever watches for fire or drives the
// crane does nothing else while the heat is on. Zero where no flame draws it off. Common practice,
// no source; the person in charge, a signaller and a second torch may take more.
func (h *Heat) Hands() (least int, who string) {
	switch {
	case h.Pull == nil || !h.Flame(h.PulledAt):
		return 0, ""
	case h.OnHook(h.PulledAt):
		return 4, "one at the torches, one at the puller, one at the watch, the log and the fire watch, one at the crane"
	}
	return 3, "one at the torches, one at the puller, one at the watch, the log and the fire watch"
}

// Apart is how many people are at a part that is drawn off by a flame where nobody does two things:
// one each at the torches, the puller, the log, the fire watch and, where the part hangs on a
// hook, the crane. Common practice, no source.
func (h *Heat) Apart() int {
	if h.OnHook(h.PulledAt) {
		return 5
	}
	return 4
}

// OnHook reports whether the part hangs on a hook, hot, as a step draws it off or puts it on: in a
// lift with its sheet or without.
func (h *Heat) OnHook(st *Step) bool {
	if st == nil {
		return false
	}
	off, on := h.MovedBy(st)
	hot := off && h.Pull != nil || on && h.PutOn != nil && h.PutOn.Heated()
	return hot && (st.OnHook != "" || h.HangsIn(st) != nil)
}

// HangsIn is the lift by a hook in which the part hangs hot at a step, nil if none.
func (h *Heat) HangsIn(st *Step) *Lift {
	if st == nil {
		return nil
	}
	for _, l := range st.Lifts {
		if !l.ByHand && l.HotLoad(st) == h {
			return l
		}
	}
	return nil
}
