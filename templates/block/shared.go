package block

import "slices"

// A thing is set in several widths, and with or without a box more, before it is known how
// it stands on the page. What is the same in all of these is kept between them, with the
// page numbers in it.

// mostShared is for how many things this is kept at a time: those of one step.
const mostShared = 64

type shared struct {
	value any
	asked []asked
}

// NewPass forgets what was shared in the pass before, whose page numbers were others.
func (c *Composer) NewPass() {
	if c.Kept != nil {
		c.Kept.shared = nil
	}
}

// Shared gives what is shared by all that is set under a key, fresh if it is the first.
// Who has set something with it calls done, so that it is set again when a page number in
// what it shares is another one; of two things the one that was begun later is done first.
func (c *Composer) Shared(key any, fresh func() any) (value any, done func()) {
	k := c.Kept
	if k == nil {
		return fresh(), func() {}
	}
	outer := k.asked
	k.asked = nil
	at := keptKey{key, c.Later == nil}
	s := k.shared[at]
	if s == nil {
		s = &shared{value: fresh()}
		if len(k.shared) == 0 || len(k.shared) >= mostShared {
			k.shared = map[keptKey]*shared{}
		}
		k.shared[at] = s
	}
	return s.value, func() {
		s.asked = appendNew(s.asked, k.asked)
		k.asked = appendNew(outer, s.asked)
	}
}

// appendNew appends what is not in the list.
func appendNew(list, more []asked) []asked {
	n := len(list)
	for _, a := range more {
		if !slices.Contains(list[:n], a) {
			list = append(list, a)
		}
	}
	return list
}
