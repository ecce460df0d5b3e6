package job

import (
	"testing"

	"matchmark/packs/heat"
)

// A hub that comes off hot within a larger part hangs in the lift of that part; one that comes off
// beside it, or cold, does not. Who is busy at a flame is common practice, no source.
func TestHotLoads(t *testing.T) {
	t.Parallel()
	whole := &Part{Name: "rotor"}
	hub, other := &Part{Name: "hub", Of: whole}, &Part{Name: "cover"}
	h := &Heat{Hub: hub, Pull: &HotPull{By: heat.Torch}}
	off := &Step{Remove: []*Move{{Part: hub}}, Heats: []*Heat{h}}
	h.PulledAt = off
	for _, x := range []struct {
		name  string
		parts []*Part
		hangs bool
	}{{"the hub", []*Part{hub}, true}, {"what it is a part of", []*Part{whole}, true}, {"another", []*Part{other}, false}} {
		l := &Lift{Parts: x.parts}
		off.Lifts = []*Lift{l}
		want := 3
		if x.hangs {
			want = 4
		}
		if got, _ := h.Hands(); l.DrawnHot(off) != x.hangs || (h.HangsIn(off) == l) != x.hangs || got != want {
			t.Errorf("%s in the lift: drawn off hot on it %t, %d people, want %t, %d", x.name, l.DrawnHot(off), got, x.hangs, want)
		}
	}
	off.Lifts = nil
	if h.OnHook(off) {
		t.Error("a hub in no lift hangs on a hook")
	}
	if off.OnHook = "hook of the crane"; !h.OnHook(off) || h.HangsIn(off) != nil {
		t.Error("a hub on a hook without a lift sheet does not hang there hot")
	}
	h.Limit.At = 200
	if got := h.Hottest(off); got != 200 {
		t.Errorf("drawn off it comes to %v, want what its sheet never lets it pass, 200", got)
	}
	on := &Step{Fit: []*Move{{Part: hub}}, Heats: []*Heat{h}}
	h.PutOn = &HotFit{SetTo: 150, Ladder: []HeatRung{{SetTo: 160}, {SetTo: 190, TooHot: true}}}
	if got := h.Hottest(on); got != 160 {
		t.Errorf("put on it comes to %v, want the hottest of its table that may be set, 160", got)
	}
	if got, _ := (&Heat{Hub: hub, Pull: &HotPull{By: heat.Induction}, PulledAt: off}).Hands(); got != 0 {
		t.Errorf("without a flame %d people are asked for", got)
	}
}
