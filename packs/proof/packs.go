package proof

import "matchmark/packs/job"

// checkPacks sees that a pack of shims is measured before it goes back: the leaves are
// measured one by one, and none is reached when the part that presses on them is on. A
// step that is done over and over takes the pack out again for each try.
func (r *report) checkPacks() {
	told := map[string]bool{} // once for all places
	for _, e := range r.walk.Events {
		if e.Verb != job.DoSet || e.Dim.Shims == nil || e.Step.Until != nil || told[e.Dim.Base] {
			continue
		}
		p := e.Dim.Shims.Part
		if p == nil || r.walk.On(p, e) == 0 {
			continue
		}
		told[e.Dim.Base] = true
		at, see := e.At, p.At
		for _, m := range p.Back {
			if back := r.walk.Moved(m); back != nil && back.Index < e.Index {
				see = m.At
			}
		}
		help := "write set: above fit: there, a step is done in the order in which it is written"
		if e.Step.Undoes != nil {
			help = "write remove: above measure: at " + e.Step.Undoes.Name() + ": the put-back row turns them round"
		}
		r.problems.WarnWith(at, "pack-closed", e.Dim.Mark+" is set at "+e.Step.Name()+", when "+p.Called()+" is back: it is out of reach then", see, "it goes back here", help)
	}
}
