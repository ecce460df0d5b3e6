package job

// Hands is the least number of people at a part that is drawn off by a flame, and who they are:
// nobody heats, draws and reads the watch at once, and whoever watches for fire or drives the
// crane does nothing else while the heat is on. Zero where no flame draws it off. Common practice,
// no source; the person in charge, a signaller and a second torch may take more.
func (h *Heat) Hands() (least int, who string) {
	switch {
	case h.Pull == nil || !h.Flame(h.PulledAt):
		return 0, ""
	case h.OnHook():
		return 4, "one at the torches, one at the puller, one at the watch, the log and the fire watch, one at the crane"
	}
	return 3, "one at the torches, one at the puller, one at the watch, the log and the fire watch"
}

// OnHook reports whether the part hangs on a hook as it is drawn off, in a lift with its sheet or
// without.
func (h *Heat) OnHook() bool {
	st := h.PulledAt
	if st == nil || h.Pull == nil {
		return false
	}
	return st.OnHook != "" || h.HangsIn() != nil
}

// HangsIn is the lift by a hook in which the part hangs as it is drawn off, nil if none.
func (h *Heat) HangsIn() *Lift {
	if h.PulledAt == nil {
		return nil
	}
	for _, l := range h.PulledAt.Lifts {
		if !l.ByHand && l.HotLoad(h.PulledAt) == h {
			return l
		}
	}
	return nil
}
