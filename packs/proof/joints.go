package proof

import (
	"slices"
	"strconv"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// checkJoints sees that no joint is tightened while some of its fasteners are out, for
// then it holds nothing; that what is tightened by its name says how tight; and that the
// screws of a cover belong to a joint.
func (r *report) checkJoints() {
	told := map[source.Pos]bool{} // once for all places
	for _, e := range r.walk.Events {
		switch {
		case e.Verb == job.DoTighten && e.Grip.Joint != nil:
			if !told[e.At] {
				told[e.At] = r.fastenersOut(e)
			}
		case e.Verb == job.DoTighten && e.Grip.Part != nil:
			p := e.Grip.Part
			if r.adjusts(p) || told[p.At] {
				continue
			}
			told[p.At] = true
			help := []string{"tighten: [" + markOf(p) + "]"}
			if len(p.Joints) == 0 {
				help = []string{"J1: {what: " + p.Name + ", parts: [" + p.Key + "], torque: … N·m} under joints:, and tighten: [J1]", "or no-value: in place of the torque, with how tight"}
			}
			r.problems.WarnWith(e.At, "no-torque", p.Called()+" is tightened at "+e.Step.Name()+" by its name, and nothing says how tight", p.At, "the part", help...)
		}
	}
	for _, j := range r.job.Joints {
		r.jointSpread(j)
	}
	for _, st := range r.walk.Steps {
		if !told[st.At] {
			told[st.At] = true
			r.coverScrews(st)
		}
	}
}

// markOf is the joint of a part as a step names it.
func markOf(p *job.Part) string {
	if len(p.Joints) == 0 {
		return p.Key
	}
	return p.Joints[0].Base
}

// fastenersOut tells of a joint that is tightened while some fasteners of it are off the
// machine and go back later. On for now, fewer may do; those that never go back are
// told by the law of the pieces.
func (r *report) fastenersOut(e *walk.Event) bool {
	if r.walk.ForNow(e.Grip, e) > 0 || !slices.ContainsFunc(e.Grip.Parts(), func(p *job.Part) bool { return r.walk.On(p, e) > 0 }) {
		return false // one of which none is in is told where they go back
	}
	for _, p := range e.Grip.Parts() {
		out := r.walk.OnAtEnd(p) - r.walk.On(p, e)
		if out <= 0 {
			continue
		}
		see := p.At
		for _, m := range p.Off {
			if off := r.walk.Moved(m); off != nil && off.Index < e.Index {
				see = m.At
			}
		}
		r.problems.AddWith(e.At, "fasteners-out", e.Grip.Mark()+" is tightened at "+e.Step.Name()+", while "+strconv.Itoa(out)+" of "+strconv.Itoa(p.Count)+" of "+p.Called()+" are out: it holds nothing", see, "they come off here",
			"fit: ["+p.Key+"] above it, in the step or before")
		return true
	}
	return false
}

// covers are the words by which what closes something is called.
var covers = phrase.Of(`(?i)\b(covers?|caps?|lids?|bonnets?)\b`)

// coverScrews warns of a cover or a cap that comes off with screws of which none belongs
// to a joint: whoever puts it back is told nothing of how tight they become. Where one
// does, the others may be of something else.
func (r *report) coverScrews(st *job.Step) {
	var cover *job.Move
	var screws []string
	at := source.Pos{}
	for _, m := range st.Remove {
		switch p := m.Part; {
		case p.Fastens() && len(p.Joints) > 0:
			return
		case p.Fastens() && !p.Aid && !r.adjusts(p) && len(p.Back) > 0:
			if at.IsZero() {
				at = p.At
			}
			screws = append(screws, p.Key)
		case !p.Fastens() && cover == nil && covers.MatchString(r.job.InEnglish(p.Name)):
			cover = m
		}
	}
	if cover == nil || len(screws) == 0 || slices.ContainsFunc(st.Loosen, func(f job.Fastening) bool { return f.Joint != nil }) {
		return
	}
	list := strings.Join(screws, ", ")
	r.problems.WarnWith(cover.At, "no-joint", cover.Part.Called()+" comes off with screws ("+list+") that belong to no joint: nothing says how tight they become", at, "the first of them",
		"J1: {what: Screws of the cover, parts: ["+list+"], torque: … N·m} under joints:", "or for example no-value: spanner tight, in place of the torque")
}

// jointSpread warns of a joint that does not repeat and whose fasteners stand at several
// places that are put together one after the other: it is tightened once, at the last.
func (r *report) jointSpread(j *job.Joint) {
	if j.Place.Label != "" {
		return
	}
	for i, p := range j.Parts {
		for _, q := range j.Parts[:i] {
			if p.Key != q.Key || len(p.Back) == 0 || len(q.Back) == 0 || p.Back[0].Step.Section == q.Back[0].Step.Section {
				continue
			}
			r.problems.WarnWith(j.At, "joint-spread", j.Mark+" holds "+q.Called()+" and "+p.Called()+", which go back at "+q.Back[0].Step.Name()+" and "+p.Back[0].Step.Name()+": it is tightened once, at the last of them", p.At, "the part",
				"each: "+strings.Join(p.Place.Groups, ", ")+" makes a joint of each place")
			return
		}
	}
}

// adjusts reports whether a part sets a dimension: then that says how far it is turned.
func (r *report) adjusts(p *job.Part) bool {
	for _, d := range r.job.Dims {
		if d.Adjuster == p {
			return true
		}
	}
	return false
}
