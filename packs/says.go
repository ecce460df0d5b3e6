package packs

import (
	"matchmark/packs/job"
	"strconv"

	"matchmark/packs/def"
	"matchmark/packs/reading"
	"matchmark/packs/units"
)

// readSays takes over what sources say that differ, of limits and of torques, and sees
// that one of them is used and, of a limit, that it is the one printed.
func (b *builder) readSays() {
	for _, dd := range b.def.Dimensions {
		for _, d := range b.dims[dd.Mark.Value] {
			d.Says = b.sayings(dd.Says)
		}
		b.oneUsed(dd.Mark.Value, dd.Says)
		for i := range dd.Says {
			if dd.Says[i].Used.Written() {
				b.checkUsed(dd, dd.Says[i])
			}
		}
	}
	for _, dj := range b.def.Joints {
		for _, j := range b.joints[dj.Mark.Value] {
			j.Says = b.sayings(dj.Says)
		}
		b.oneUsed(dj.Mark.Value, dj.Says)
	}
}

// sayings takes over what some sources say.
func (b *builder) sayings(list []def.Says) []job.Saying {
	var out []job.Saying
	for _, ds := range list {
		s := job.Saying{Source: ds.Source.Value, Text: ds.Text.Value, Note: ds.Note.Value, Used: ds.Used.Written()}
		if s.Used && ds.Used.Value != "yes" {
			s.Hold = b.holds[ds.Used.Value]
		}
		out = append(out, s)
	}
	return out
}

// oneUsed sees that one of the sources is used, and that its hold is known.
func (b *builder) oneUsed(mark string, list []def.Says) {
	used := 0
	for _, ds := range list {
		t := ds.Used
		if !t.Written() {
			continue
		}
		used++
		if _, ok := b.holds[t.Value]; !ok && t.Value != "yes" {
			b.unknown(t, "hold or witness point", knownTo(b, b.holds), "holds")
		}
	}
	switch {
	case len(list) > 0 && used == 0:
		b.problems.Add(list[0].At, "none-used", "the sources of "+mark+" differ, and it is not said which one is used", "used: yes, or the hold at which it is chosen: used: W1")
	case used > 1:
		b.problems.Add(list[0].At, "two-used", strconv.Itoa(used)+" of the sources of "+mark+" are used; a limit has one", "keep used: at one of them")
	}
}

// checkUsed sees that the source that is used says what the limit says, as far as
// both can be compared.
func (b *builder) checkUsed(dd *def.Dimension, ds def.Says) {
	if len(dd.Left.By) > 0 || !dd.Left.Written() {
		return
	}
	said, fault := reading.Parse(ds.Text.Value)
	left, other := reading.Parse(dd.Left.One.Value)
	if fault != nil || other != nil || len(said.Tests) != len(left.Tests) {
		return
	}
	for i := range said.Tests {
		low, high, ok := said.Tests[i].Limits()
		l, h, known := left.Tests[i].Limits()
		if ok && known && (differ(low, l) || differ(high, h)) {
			b.problems.Add(ds.Text.At, "used-differs", "the source that is used says "+said.Text()+", but left: is "+left.Text(), "put one of them right")
			return
		}
	}
}

// differ reports whether two ends are told in one unit and are not the same.
func differ(a, b *units.Quantity) bool {
	if a == nil || b == nil {
		return a != b
	}
	return a.Unit == b.Unit && a.Number.Cmp(b.Number) != 0
}
