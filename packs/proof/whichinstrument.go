package proof

import (
	"strconv"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/units"
)

// checkWhichInstrument sees that of instruments alike at one step it is said which takes
// which reading: of several dial gauges that stand on a coupling at once one is at the rim
// and one at the face, and on paper both are "Dial gauge". Each reading is told once.
func (r *report) checkWhichInstrument() {
	told := map[string]bool{}
	for _, s := range r.job.Sections {
		for _, st := range s.Steps {
			for _, list := range [][]*job.Dim{st.Measure, st.Set} {
				for i, d := range list {
					for _, other := range list[:i] {
						r.whichInstrument(other, d, st, told)
					}
				}
			}
		}
	}
}

// alike reports whether nothing on the gather list tells two instruments apart: neither
// name nor number, range nor smallest reading.
func alike(a, b *job.Instrument) bool {
	same := func(x, y *units.Quantity) bool {
		if x == nil || y == nil {
			return x == y
		}
		return x.Text() == y.Text()
	}
	return strings.EqualFold(a.Name, b.Name) && a.Number == b.Number && same(a.Low, b.Low) && same(a.High, b.High) && same(a.Reads, b.Reads)
}

// whichInstrument holds two readings of one step against each other.
func (r *report) whichInstrument(a, d *job.Dim, st *job.Step, told map[string]bool) {
	if a.By == nil || d.By == nil || a.Base == d.Base || told[a.Base+" "+d.Base] {
		return
	}
	switch both := a.Base + " and " + d.Base + " are read at " + st.Name(); {
	case a.By == d.By && d.By.Count > 1:
		if a.ByPiece > 0 && d.ByPiece > 0 {
			return
		}
		at, mark := d.Wrote.By, d.Base
		if d.ByPiece > 0 {
			at, mark = a.Wrote.By, a.Base
		}
		told[a.Base+" "+d.Base] = true
		r.problems.WarnWith(at.At, "which-instrument", both+" with "+d.By.Name+", of which there are "+strconv.Itoa(d.By.Count)+": it is not said which of them reads "+mark, d.By.At, "the instrument",
			"by: "+d.By.Key+"/1 at "+a.Base+", and by: "+d.By.Key+"/2 at "+d.Base, "or by: "+d.By.Key+"/1 at both, where one of them reads both in turn", "or take count: out, if one is used at a time")
	case a.By != d.By && alike(a.By, d.By):
		told[a.Base+" "+d.Base] = true
		r.problems.WarnWith(d.Wrote.By.At, "which-instrument", both+" with two instruments that are both called "+d.By.Name+": nobody can tell them apart on paper", d.By.At, "the instrument",
			"give "+d.By.Key+" a name of its own, or number: of each", "or one of them with count: 2, and by: "+a.By.Key+"/1, by: "+a.By.Key+"/2")
	}
}
