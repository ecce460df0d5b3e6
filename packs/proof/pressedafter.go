package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// movesHome finds a part that words move in its place, with no verb of the definition: it is
// pressed home, tapped up to its shoulder, drawn on. Pushed and turned is what is gauged.
var movesHome = phrase.Of(`(?i)(?:^|[.;:,] ?|\b(?:and|then) )(?:press|drive|tap|knock|draw|hammer) (?:the |each |both |its )?(?:[\pL-]+ ){0,2}?(?:(\pL+) )??(\pL+?)s? (?:(?:fully|hard|right|further|\d[\d.,]* mm) )?(?:home|up|down|against|to (?:its|the) (?:shoulder|stop|collar|seat|mark)|onto|into|(?:on|in)(?:$|[.;:,!]| (?:fully|hard|until|with|by|over|again|and|to|as far)\b))`)

// drawsLine finds a line that is drawn with a pen or a scriber.
var drawsLine = phrase.Of(`(?i)\bdraw (?:the |each |both |a )?(?:[\w-]+ )?(?:lines?|marks?|circle|outline|sketch)\b`)

// checkPressedAfter warns of a part that a step moves in its place by its words alone, below the
// step that has set a reading of it: the reading tells of where it stood.
func (r *report) checkPressedAfter() {
	told := map[source.Pos]bool{} // once for all places
	for _, st := range r.walk.Steps {
		if told[st.At] || st.Until != nil {
			continue
		}
		for _, p := range r.movedHome(st) {
			if d := r.setBefore(p, st); d != nil {
				told[st.At] = true
				set := r.walk.Set(d)
				r.problems.WarnWith(st.At, "pressed-after", "the words of "+st.Name()+" move "+p.Called()+", and "+set.Step.Name()+" has set "+d.Mark+" on it: it will read otherwise then", set.At, "set here",
					"set: ["+d.Base+"] at "+st.No+" or below it", "or say it in other words, if it does not move there")
				break
			}
		}
	}
}

// movedHome lists the parts that the words of a step move in their place, whose keys move and
// turn nothing.
func (r *report) movedHome(st *job.Step) []*job.Part {
	var out []*job.Part
	if r.walk.Find(st, func(e *walk.Event) bool { return len(workedOn(e)) > 0 || e.Heat != nil || e.Lift != nil }) != nil {
		return nil // what else it does may be what the reading was for
	}
	for _, m := range movesHome.FindAllStringSubmatch(r.job.InEnglish(st.Do), -1) {
		if drawsLine.MatchString(m[0]) {
			continue
		}
		for _, p := range r.calledJust(m[1], m[2], st.Place) {
			if len(p.Back) > 0 && r.walk.StandsAt(p, st) == p.Count {
				out = append(out, p)
			}
		}
	}
	return out
}

// setBefore is a reading of a part that stands in the machine, set above a step since the part
// went back; nil for none.
func (r *report) setBefore(p *job.Part, st *job.Step) *job.Dim {
	for _, d := range r.job.Dims {
		set := r.walk.Set(d)
		if set == nil || set.Step.Index >= st.Index || d.Formula != nil || d.LostByNothing || !isTouched(d) || !slices.Contains(d.FaceParts(), p) {
			continue
		}
		if back := r.wentBack(p, set); back != nil {
			return d
		}
	}
	return nil
}

// pressedAfter binds a step that moves a part by its words to those that set a reading of it.
func (b *binder) pressedAfter() {
	r := &report{walk: b.walk, job: b.job}
	for _, st := range b.walk.Steps {
		for _, p := range r.movedHome(st) {
			for _, d := range b.job.Dims {
				if d.LeftAt != nil && d.LeftAt.Index > st.Index && isTouched(d) && slices.Contains(d.FaceParts(), p) {
					b.before(st, d.LeftAt, job.Bind{Kind: job.BoundPart, Part: p})
				}
			}
		}
	}
}
