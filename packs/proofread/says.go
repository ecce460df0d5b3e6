package proofread

import (
	"strconv"

	"matchmark/packs/def"
	"matchmark/packs/names"
	"matchmark/packs/reading"
	"matchmark/packs/units"
)

// checkSays sees that of sources that differ one is used and, of a limit, that it is
// the one printed.
func (b *proofreader) checkSays() {
	for _, dd := range b.Def.Dimensions {
		b.oneUsed(dd.Mark.Value, dd.Says)
		for i := range dd.Says {
			if dd.Says[i].Used.Written() {
				b.checkUsed(dd, dd.Says[i])
			}
		}
	}
	for _, dj := range b.Def.Joints {
		b.oneUsed(dj.Mark.Value, dj.Says)
	}
}

// oneUsed sees that one of the sources is used, and that its hold is known.
func (b *proofreader) oneUsed(mark string, list []def.Says) {
	used := 0
	for _, ds := range list {
		t := ds.Used
		if !t.Written() {
			continue
		}
		used++
		if _, ok := b.Holds[t.Value]; !ok && t.Value != "yes" {
			b.Unknown(t, "hold or witness point", names.KnownTo(b.Index, b.Holds), "holds")
		}
	}
	switch {
	case len(list) > 0 && used == 0:
		b.Problems.Add(list[0].At, "none-used", "the sources of "+mark+" differ, and it is not said which one is used", "used: yes, or the hold at which it is chosen: used: W1")
	case used > 1:
		b.Problems.Add(list[0].At, "two-used", strconv.Itoa(used)+" of the sources of "+mark+" are used; a limit has one", "keep used: at one of them")
	}
}

// checkUsed sees that the source that is used says what the limit says, as far as
// both can be compared.
func (b *proofreader) checkUsed(dd *def.Dimension, ds def.Says) {
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
			b.Problems.Add(ds.Text.At, "used-differs", "the source that is used says "+said.Text()+", but left: is "+left.Text(), "put one of them right")
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
