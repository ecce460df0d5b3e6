package filled

import (
	"cmp"

	"matchmark/packs/job"
	"matchmark/packs/reading"
)

// Old and mended parts
//
// The limit for an old part says how far wear may have gone, on the side that wears. An
// end that it does not name is not given up: of "0.036 to 0.106 mm, old part at most
// 0.200 mm" a clearance of 0.010 mm is as tight for an old part as for a new one, and of
// "at least 44.900 mm" a plunger over its size does not go in either. The same holds for
// a spread, where the limit for an old part names none. Who gives the other end up writes
// it: 0.000 to 0.200 mm. Such an end is put into the limit where it is a size (reading.Whole);
// what is kept here is one that hangs on other readings. And an end that new parts have none on holds for all: of "at least
// 0.015 in, old part at most 0.031 in" 0.040 in is worn out. (Common practice, no source.)

// against the limit of an old or a mended part: what it says of the readings, and of what
// is out by the limit for new parts that which it does not answer.
func (r *Result) againstOld(d *job.Dim, when job.When, old *reading.Limit, news []*reading.Limit, out reading.Judgement) (j reading.Judgement, each []Outcome, kept []reading.Finding) {
	j, each = r.against(d, when, []*reading.Limit{old})
	for _, f := range out.Findings {
		l := limitAt(news, max(f.Position, 0))
		if !outOf(f) || f.Test >= len(l.Tests) || old.EndsOn(l.Tests[f.Test].Group, f.Verdict) {
			continue
		}
		kept = append(kept, f)
		j.Verdict = worse(j.Verdict, f.Verdict)
		for i := range each {
			if f.Position < 0 || f.Position == i {
				each[i] = Out
			}
		}
	}
	return j, each, kept
}

// beyondWear reports whether readings that the limit for new parts lets pass are out by that
// for old ones, or mended ones where there is none, at an end that new parts have not; it
// makes those out.
func (r *Result) beyondWear(v *Verdict, news []*reading.Limit) bool {
	old := cmp.Or(v.Dim.Reuse, v.Dim.Repair)
	if old == nil {
		return false
	}
	j, _ := r.against(v.Dim, v.When, []*reading.Limit{old})
	beyond := false
	for _, f := range j.Findings {
		if !outOf(f) || limitAt(news, max(f.Position, 0)).EndsOn(old.Tests[f.Test].Group, f.Verdict) {
			continue
		}
		beyond = true
		for i := range v.each {
			if f.Position < 0 || f.Position == i {
				v.each[i] = Out
			}
		}
	}
	if beyond {
		v.Outcome = Out
	}
	return beyond
}

// outOf reports whether a finding is out of its limit.
func outOf(f reading.Finding) bool {
	return f.Verdict != reading.In && f.Verdict != reading.NoVerdict
}

// still are those findings by the limit for new parts that an old one has to answer for:
// those that its own limit left standing, and of the boxes that are out by that as well.
func still(out []reading.Finding, kept []reading.Finding, each []Outcome) []reading.Finding {
	same := func(a, b reading.Finding) bool { return a.Test == b.Test && a.Position == b.Position }
	var list []reading.Finding
	for _, f := range out {
		stands := f.Position >= 0 && f.Position < len(each) && each[f.Position] == Out
		for _, k := range kept {
			stands = stands || same(f, k)
		}
		if outOf(f) && stands {
			list = append(list, f)
		}
	}
	return list
}

// old takes over what the limit of an old part says of each box: one that is out by the
// limit for new parts and within this is as in says.
func (v *Verdict) old(each []Outcome, in Outcome) {
	for i, o := range v.each {
		if o != Out {
			continue
		}
		if v.each[i] = each[i]; each[i] == In {
			v.each[i] = in
		}
	}
}

// blame sees that of readings which are out together one at least is: those that are not
// as the limit of an old part has them.
func (v *Verdict) blame(each []Outcome) {
	for _, o := range v.each {
		if o == Out {
			return
		}
	}
	for i, o := range each {
		if o == Out {
			v.each[i] = Out
		}
	}
}

// boxOutcomes are what findings say of each of n boxes; what is said of all together
// holds for each.
func boxOutcomes(findings []reading.Finding, l *reading.Limit, n int) []Outcome {
	out := make([]Outcome, n)
	for i := range out {
		var own []reading.Finding
		for _, f := range findings {
			if f.Position < 0 || f.Position == i {
				own = append(own, f)
			}
		}
		out[i] = In
		for _, f := range own {
			switch {
			case outOf(f):
				out[i] = Out
			case f.Verdict == reading.NoVerdict && out[i] == In:
				out[i] = Open
			}
		}
		if out[i] == Open && onlyAbout(reading.Judgement{Findings: own}, l) {
			out[i] = Recorded
		}
	}
	return out
}
