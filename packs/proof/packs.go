package proof

import "matchmark/packs/job"

// checkPacks sees that a pack of shims is measured before it goes back: the leaves are
// measured one by one, and none is reached when the part that presses on them is on. A
// step that is done over and over takes the pack out again for each try.
func (r *report) checkPacks() {
	told := map[string]bool{} // once for all places
	for _, e := range r.walk.Events {
		if e.Verb != job.DoSet || e.Step.Until != nil || told[e.Dim.Base] {
			continue
		}
		p := packOf(e.Dim)
		if p == nil {
			continue
		}
		if tried, fitted := r.walk.Now(p, e); tried > 0 {
			told[e.Dim.Base] = true
			r.problems.WarnWith(e.At, "pack-closed", e.Dim.Mark+" is set at "+e.Step.Name()+", when "+p.Called()+" is in for now: it is out of reach then", fitted.At, "fitted for now here",
				"set: ["+e.Dim.Base+"] above fit-for-now:, there or at a step above it")
			continue
		}
		if e.Dim.Shims == nil || r.walk.On(p, e) == 0 {
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

// packOf is the pack of shims that a reading is the thickness of, nil if it is of none.
func packOf(d *job.Dim) *job.Part {
	if d.Shims != nil {
		return d.Shims.Part
	}
	if p := d.Of.Part; p != nil && p.Shims != nil && d.Kind == "thickness" {
		return p
	}
	return nil
}
