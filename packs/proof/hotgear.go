package proof

import (
	"matchmark/packs/lift"
	"matchmark/packs/source"
)

// checkHotGear sees that slings and gear that hang on a part which comes off or goes on hot are
// said to come to the hottest that the part may get there: by that figure their rating is judged.
func (r *report) checkHotGear() {
	told := map[source.Pos]bool{} // once for all places, and for both ways
	for _, l := range r.job.Lifts {
		for _, st := range l.Steps {
			h := l.HotLoad(st)
			if h == nil || l.ByHand || !l.Computed() || told[l.At] {
				continue
			}
			hottest := lift.Celsius(h.Hottest(st))
			if hottest <= 0 || !h.LimitKnown() {
				continue // told by the heat already
			}
			comes := "does not say how hot its slings and gear come to"
			if t := l.Plan.Temperatures; t != nil {
				if t.High >= hottest {
					continue
				}
				comes = "has slings and gear that come to " + t.High.Down().In(l.Units())
			}
			told[l.At] = true
			as := hottest.Up().In(l.Units())
			r.problems.AddWith(st.At, "hot-gear", l.Mark+" "+comes+", and "+h.PartName()+" hangs on them at "+st.Name()+" with up to "+as, l.At, "the lift",
				"temperatures: … to "+as+" at "+l.Mark+", and gear that holds a rating there: chain with its hooks and links, or what has temperatures: of its maker",
				"or a lower at-most: of the hub at "+h.Base+", if that still frees it")
		}
	}
}
