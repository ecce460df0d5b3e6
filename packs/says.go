package packs

import (
	"strconv"

	"matchmark/packs/def"
	"matchmark/packs/reading"
	"matchmark/packs/units"
)

// readSays takes over what sources say that differ, and sees that one of them is
// used and is the limit that is printed.
func (b *builder) readSays() {
	for _, dd := range b.def.Dimensions {
		if len(dd.Says) == 0 {
			continue
		}
		var out []Saying
		used := 0
		for _, ds := range dd.Says {
			s := Saying{Source: ds.Source.Value, Text: ds.Text.Value, Note: ds.Note.Value, Used: ds.Used.Written()}
			if t := ds.Used; t.Written() && t.Value != "yes" {
				h, ok := b.holds[t.Value]
				if !ok {
					b.unknown(t, "hold or witness point", knownTo(b, b.holds), "holds")
				}
				s.Hold = h
			}
			if s.Used {
				used++
				b.checkUsed(dd, ds)
			}
			out = append(out, s)
		}
		switch {
		case used == 0:
			b.problems.Add(dd.Says[0].At, "none-used", "the sources of "+dd.Mark.Value+" differ, and it is not said which one is used", "used: yes, or the hold at which it is chosen: used: W1")
		case used > 1:
			b.problems.Add(dd.Says[0].At, "two-used", strconv.Itoa(used)+" of the sources of "+dd.Mark.Value+" are used; a limit has one", "keep used: at one of them")
		}
		for _, d := range b.dims[dd.Mark.Value] {
			d.Says = out
		}
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
