package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// checkBenchRead sees that what is read on the bench is off the machine then, by itself or
// with the assembly that it belongs to: the bores of a block that stays on its bed were to
// be read on the bench, where no opening is looked after.
func (r *report) checkBenchRead() {
	told := map[source.Pos]bool{} // once for all places
	for _, e := range r.walk.Events {
		if e.Verb != job.DoMeasure && e.Verb != job.DoSet || !e.Step.Bench || told[e.At] {
			continue
		}
		if p := r.readInMachine(e); p != nil {
			told[e.At] = true
			r.problems.WarnWith(e.At, "read-in-machine", e.Dim.Mark+" is read on the bench at "+e.Step.Name()+", and "+p.Called()+" is in the machine then", p.At, "the part",
				"read it at a step without where: bench", "or write of: the part that is on the bench")
		}
	}
}

// readInMachine is a part that a reading is taken of and that is in the machine, nil if
// there is none.
func (r *report) readInMachine(e *walk.Event) *job.Part {
	for _, f := range []job.Face{e.Dim.Of, e.Dim.From, e.Dim.To} {
		if p := f.Part; p != nil && inPlace(r.walk, p, e) && r.walk.Away(p, e) == nil {
			return p
		}
	}
	return nil
}

// benchRead binds a step that reads on the bench to those that move what it reads, and the
// assemblies that this belongs to.
func (b *binder) benchRead() {
	for _, st := range b.walk.Steps {
		if !st.Bench {
			continue
		}
		for _, d := range slices.Concat(st.Measure, st.Set) {
			for _, face := range d.FaceParts() {
				for p := face; p != nil; p = p.Of {
					b.looks(p, st)
				}
			}
		}
	}
}
