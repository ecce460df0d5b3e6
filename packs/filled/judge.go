package filled

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/packs/units"
)

// An Outcome is what follows from the readings of one dimension at one time.
type Outcome uint8

const (
	// Empty has no reading at all.
	Empty Outcome = iota
	// NotTaken was left empty with a reason.
	NotTaken
	// Recorded has no limit at this time.
	Recorded
	// Open cannot be judged yet: Why says what is missing.
	Open
	// In is within its limits.
	In
	// OldIn is out of the limits for a new part and within those for an old one.
	OldIn
	// Mend is out for an old part too, and can be mended.
	Mend
	// Out is out of limits.
	Out
)

// A Verdict is the outcome of one dimension at one time with what it rests on.
type Verdict struct {
	Dim      *job.Dim
	When     job.When
	Outcome  Outcome
	Limit    *reading.Limit    // that decided
	Findings []reading.Finding // of those out of it, or those that cannot be judged
	Actions  []string          // what the definition says to do, none if it says nothing
	Why      string            // of Open and NotTaken
	Tags     []*job.Tag        // of the parts that it is read on

	each []Outcome // of each box; nil where all are as the whole
}

// Bad reports whether somebody has to do something about it.
func (v Verdict) Bad() bool { return v.Outcome == Out || v.Outcome == Mend }

// SetLater is the step at which a reading that was found out is set, or taken again with a
// new part, later on the job: its limit holds there. Nil where the job does not, so that what
// was found stays unless somebody decides otherwise.
func (v Verdict) SetLater() *job.Step {
	if v.When != job.AsFound || v.Outcome != Out || v.Dim.WatchedOnly() {
		return nil
	}
	return v.Dim.LeftAt
}

// judge sets the readings of a dimension against what holds at that time: as found
// against the limit for closing, or for old parts, as far as that is known then.
func (r *Result) judge(d *job.Dim, when job.When) Verdict {
	t := r.readings(d, when)
	v := Verdict{Dim: d, When: when, Outcome: Recorded}
	if !t.any() {
		v.Outcome, v.Why = Empty, t.notTaken
		if t.notTaken != "" {
			v.Outcome = NotTaken
		}
		return v
	}
	if d.Box.Form == reading.Ticks || d.Box.Form == reading.Line {
		r.judgeAnswers(&v, t)
		return v
	}
	limits := r.limitsAt(d, when)
	if len(limits) == 0 {
		return v
	}
	j, each := r.against(d, when, limits)
	v.each = each
	v.settle(j, limits[0], Out)
	if v.Outcome == Open && when == job.AsFound && d.FoundIsRecorded() && len(limits[0].Marks()) > 0 {
		return Verdict{Dim: d, When: when, Outcome: Recorded} // only recorded, and what its limit takes may be read for closing alone
	}
	if len(v.Findings) > 0 {
		v.Limit = limitAt(limits, max(v.Findings[0].Position, 0))
	}
	if d.WatchedOnly() || v.Outcome != Out && !r.beyondWear(&v, limits) {
		v.finish(d, r)
		return v
	}
	for _, old := range []struct {
		limit *reading.Limit
		in    Outcome
	}{{d.Reuse, OldIn}, {d.Repair, Mend}} {
		if old.limit == nil {
			continue
		}
		out := v
		worn, boxes, kept := r.againstOld(d, when, old.limit, limits, j)
		v.settle(worn, old.limit, Out)
		v.old(boxes, old.in)
		if each = boxes; len(kept) > 0 && v.Outcome == Out {
			v.Limit, v.Findings = out.Limit, still(j.Findings, kept, boxes)
		}
		if v.Outcome == In {
			v.Outcome = old.in
		}
		if v.Outcome == Mend {
			v.Limit, v.Findings = out.Limit, out.Findings
		}
		if v.Outcome != Out {
			break
		}
	}
	if v.Outcome == Out {
		v.blame(each)
	}
	v.finish(d, r)
	return v
}

// any reports whether anything was written.
func (t *taken) any() bool {
	for i := range t.readings {
		if t.readings[i] != nil || t.answers[i] != "" {
			return true
		}
	}
	return false
}

// limitsAt are the limits that hold for a dimension at a time, none where it is only
// recorded then.
func (r *Result) limitsAt(d *job.Dim, when job.When) []*reading.Limit {
	switch {
	case when == job.AsFound && d.WatchedOnly():
		if len(d.FoundBy) > 0 {
			return d.FoundBy
		}
		return []*reading.Limit{d.Found}
	case !d.Judged():
		return nil
	case when == job.AsFound && (d.Left.NeedsFound() || d.FoundWork.Late != nil):
		return nil
	}
	return d.LeftLimits()
}

// against judges the readings by one limit, or by one for each name of the positions;
// each is what that says of each box.
func (r *Result) against(d *job.Dim, when job.When, limits []*reading.Limit) (all reading.Judgement, each []Outcome) {
	t := r.readings(d, when)
	found := r.readings(d, job.AsFound).readings
	each = make([]Outcome, len(t.readings))
	all.Verdict = reading.In
	for k, l := range limits {
		var own, ownFound []*units.Quantity
		var at []int
		for i := k; i < len(t.readings); i += len(limits) {
			own, at = append(own, t.readings[i]), append(at, i)
			each[i] = Recorded
			if i < len(found) {
				ownFound = append(ownFound, found[i])
			}
		}
		if l.Kind == reading.Record {
			continue // this position is only recorded
		}
		env := r.env(d, laddersOf(working(d, when), l)...)
		env.Found = ownFound
		j := l.Judge(own, env)
		for i, o := range boxOutcomes(j.Findings, l, len(own)) {
			each[at[i]] = o
		}
		for _, f := range j.Findings {
			if f.Position >= 0 && f.Position < len(at) {
				f.Position = at[f.Position]
			}
			all.Findings = append(all.Findings, f)
		}
		all.Verdict = worse(all.Verdict, j.Verdict)
	}
	return all, each
}

// laddersOf are the ladders that work a limit out.
func laddersOf(w job.Working, l *reading.Limit) []*job.Ladder {
	var out []*job.Ladder
	for _, x := range w.Limits {
		if x.Limit == l {
			out = append(out, x.At, x.Low, x.High)
		}
	}
	return out
}

// worse joins two verdicts: what is out weighs more than what is not known, and that
// more than what is in.
func worse(a, b reading.Verdict) reading.Verdict {
	switch {
	case a == b || b == reading.In:
		return a
	case a == reading.In:
		return b
	case a == reading.NoVerdict:
		return b
	case b == reading.NoVerdict:
		return a
	}
	return reading.Out
}

// settle takes over a judgement; bad is the outcome of one that is out.
func (v *Verdict) settle(j reading.Judgement, l *reading.Limit, bad Outcome) {
	v.Limit, v.Findings, v.Why = l, nil, ""
	switch j.Verdict {
	case reading.In:
		v.Outcome = In
		return
	case reading.NoVerdict:
		v.Outcome = Open
	default:
		v.Outcome = bad
	}
	for _, f := range j.Findings {
		if f.Verdict == reading.In || v.Outcome == bad && f.Verdict == reading.NoVerdict {
			continue
		}
		v.Findings = append(v.Findings, f)
		if v.Why == "" {
			v.Why = f.Why
		}
	}
	if v.Outcome == Open && j.Verdict == reading.NoVerdict && onlyAbout(j, l) {
		v.Outcome = Recorded // the source gives no tolerance: judged and signed by a person
	}
}

// onlyAbout reports whether nothing but a missing tolerance keeps a limit from a verdict.
func onlyAbout(j reading.Judgement, l *reading.Limit) bool {
	for _, f := range j.Findings {
		if f.Verdict == reading.NoVerdict && (f.Value == nil || f.Test >= len(l.Tests) || l.Tests[f.Test].Rule != reading.About) {
			return false
		}
	}
	return true
}

// finish says what to do about a verdict that is bad, and on which tags.
func (v *Verdict) finish(d *job.Dim, r *Result) {
	if !v.Bad() {
		return
	}
	var under, over bool
	for _, f := range v.Findings {
		under = under || f.Verdict == reading.Under
		over = over || f.Verdict == reading.Over
	}
	add := func(text string) {
		if text != "" && !slices.Contains(v.Actions, text) {
			v.Actions = append(v.Actions, text)
		}
	}
	if v.When == job.AsFound && d.FoundOut != "" {
		add(d.FoundOut)
	} else {
		if under {
			add(d.Under)
		}
		if over {
			add(d.Over)
		}
		if len(v.Actions) == 0 || d.Out != "" {
			add(d.Out)
		}
	}
	v.Tags = r.tags(d)
}
