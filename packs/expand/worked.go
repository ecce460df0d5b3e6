package expand

import (
	"matchmark/packs/job"
	"matchmark/packs/names"
	"matchmark/packs/reading"
)

// readFormulas reads what dimensions are worked out from, and finds the readings
// that their formulas and limits name.
func (b *builder) readFormulas() {
	for _, d := range b.Job.Dims {
		if t := d.Wrote.Formula; t.Written() {
			v, fault := reading.ParseFormula(t.Value)
			if fault != nil {
				b.Fault(t, fault)
			} else {
				d.Formula = v
			}
		}
		for _, m := range d.Marks() {
			if d.Ref(m) != nil {
				continue
			}
			var dims []*job.Dim
			key, label, named := names.Cut(string(m))
			for _, e := range b.Dims[key] {
				if named && e.Place.Label == label || !named && e.Place.Agrees(d.Place) {
					dims = append(dims, e)
				}
			}
			d.Refs = append(d.Refs, job.Ref{Mark: m, Dims: dims})
		}
	}
}
