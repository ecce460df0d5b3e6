package proof

import (
	"matchmark/packs/job"
	"matchmark/packs/units"
)

// checkShares sees that two readings that are each set to a share of one whole, as the
// float of a rotor to either side, do not come to more than that whole.
func (r *report) checkShares() {
	type share struct {
		dim     *job.Dim
		percent units.Number
	}
	parts := map[*job.Dim][]share{}
	var wholes []*job.Dim // in the order of the job
	for _, d := range r.job.Dims {
		for _, l := range d.LeftWork.Limits {
			if l.Limit != d.Left || l.At == nil || len(l.At.Uses) != 1 || len(l.At.Uses[0].Dims) != 1 {
				continue
			}
			if n, ok := l.Test.At.Share(); ok {
				whole := l.At.Uses[0].Dims[0]
				if parts[whole] == nil {
					wholes = append(wholes, whole)
				}
				parts[whole] = append(parts[whole], share{d, n})
			}
		}
	}
	for _, whole := range wholes {
		two := parts[whole]
		if len(two) != 2 || two[0].dim.Base == two[1].dim.Base || two[0].dim.Kind != two[1].dim.Kind {
			continue // the same rule at two places, or more than the two sides of one thing
		}
		a, b := two[0], two[1]
		if sum := a.percent.Add(b.percent); a.percent.Cmp(b.percent) != 0 && sum.Cmp(units.Whole(100)) > 0 {
			r.problems.WarnWith(b.dim.LimitPos(), "no-split", a.dim.Mark+" is "+a.percent.Text()+" % of "+whole.Mark+" and "+b.dim.Mark+" "+b.percent.Text()+" %: together "+sum.Text()+" %, more than the whole",
				a.dim.LimitPos(), "the other share", "let the two come to 100 %")
		}
	}
}
