package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// checkHeldReading sees that a reading between parts is taken while the parts are held as
// they run: as found before the joint that holds one of them is loosened, as left when it
// is tight. A joint holds a part that lies behind its fasteners. What the author says is
// read otherwise (lost-by: nothing, a state with words) is left to him, unless the words
// themselves want something tight.
func (r *report) checkHeldReading() {
	told := map[source.Pos]bool{} // once for all places
	for _, e := range r.walk.Events {
		d := e.Dim
		if e.Verb != job.DoMeasure && e.Verb != job.DoSet || !asTheyRun(r.job, d) || e.Step.Bench || told[e.At] {
			continue
		}
		for _, p := range walk.HangsOn(d) {
			j := r.holds(p, e)
			if j == nil {
				continue
			}
			told[e.At] = r.readLoose(e, p, j)
			break
		}
	}
}

// wantsTight finds words that want what holds a reading tight: bolts as tight as they are now,
// slide bolts tight.
var wantsTight = phrase.Of(`(?i)\b(?:bolts?|screws?|nuts?|joints?)\b[^,;.]*\btight\b`)

// asTheyRun reports whether a reading is one between parts that are held as they run.
func asTheyRun(j *job.Job, d *job.Dim) bool {
	if d.From.Part == nil || d.To.Part == nil {
		return false
	}
	words := j.InEnglish(d.State.With)
	return d.State == (job.State{}) || wantsTight.MatchString(words) && !readWhileLoose.MatchString(words) && !saysWhen.MatchString(words)
}

// holds is a joint whose fasteners a part lies behind and that is loose when a reading is
// taken, nil if there is none, or the part is off.
func (r *report) holds(p *job.Part, e *walk.Event) *job.Joint {
	if r.walk.On(p, e) == 0 {
		return nil
	}
	for _, q := range p.Behind {
		for _, j := range q.Joints {
			g := r.walk.Grip(job.Fastening{Joint: j}, e)
			if (g.Loosened != nil || g.Fitted != nil) && r.looseBefore(j, e) != nil {
				return j
			}
		}
	}
	return nil
}

// readLoose tells of one reading, and reports whether it did.
func (r *report) readLoose(e *walk.Event, p *job.Part, j *job.Joint) bool {
	loose := r.looseBefore(j, e)
	if e.Verb == job.DoMeasure {
		if loose.Verb != job.DoLoosen {
			return false
		}
		r.problems.WarnWith(e.At, "read-loose", e.Dim.Mark+" is measured at "+e.Step.Name()+", when "+j.Mark+", which holds "+p.Called()+", is loosened: it is no longer as it was found", loose.At, "loosened here",
			"measure: ["+e.Dim.Base+"] above loosen:, there or at a step before", "or say under with: how it is read")
		return true
	}
	tight := r.tightenedLater(j, e)
	if tight == nil {
		return false
	}
	r.problems.WarnWith(e.At, "read-loose", e.Dim.Mark+" is set at "+e.Step.Name()+", and "+j.Mark+", which holds "+p.Called()+", is tightened only at "+tight.Step.Name()+": it will read otherwise then", tight.At, "tightened here",
		"set: ["+e.Dim.Base+"] below tighten:, there or at a step after", "or say under with: how it is read")
	return true
}

// heldReading binds a step that reads between parts to those that loosen, tighten or move
// the fasteners that hold them.
func (b *binder) heldReading() {
	for _, st := range b.walk.Steps {
		for _, d := range slices.Concat(st.Measure, st.Set) {
			if !asTheyRun(b.job, d) || st.Bench {
				continue
			}
			for _, p := range walk.HangsOn(d) {
				for _, q := range p.Behind {
					if len(q.Joints) > 0 {
						b.looks(q, st)
					}
				}
			}
		}
	}
}
