package proof

import (
	"slices"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// The state in which a reading is taken is told in words: cap bolted down on its dowels,
// both covers tight, dowels out. Whoever reads them does it without a row, a count or a
// torque, unless a step says so. Only words that cannot mean anything else are read: a
// part by the last word of its name, and what is said right behind it.
var (
	saysOn  = phrase.Of(`(?i)\b(\pL+?)s? (?:are |is )?(?:still )?(?:(?:bolted|screwed) (?:on|down|up|tight)|tight)\b`)
	saysOff = phrase.Of(`(?i)\b(?:(\pL+) )?(\pL+?)s? (?:are |is )?(?:still |taken )?(?:off|out)\b`)
	joined  = phrase.Of(`(?i)^(?:and|or) `) // of two parts that must be off the second is told
	// What stands of as found and as left apart cannot be held to one of the two.
	saysWhen = phrase.Of(`(?i)as found|as left|in putting back|in taking`)
)

// checkState sees that what a reading is to be taken with is in the machine then, and tight
// where it must be, and that what must be off is off.
func (r *report) checkState() {
	for _, d := range r.job.Dims {
		words := r.job.InEnglish(d.State.With)
		if words == "" || saysWhen.MatchString(words) {
			continue
		}
		for _, e := range []*walk.Event{r.walk.Measured(d), r.walk.Set(d)} {
			if e != nil {
				r.stateOn(d, e, words)
				r.stateOff(d, e, words)
			}
		}
	}
}

// stateOn tells of a reading whose words want something tight that is off all through its
// step: what goes on for the reading alone may be off again when it is read, as a strip in
// a bearing.
func (r *report) stateOn(d *job.Dim, e *walk.Event, words string) {
	for _, m := range saysOn.FindAllStringSubmatch(words, -1) {
		parts := r.calledBy(m[1], d.Place)
		if len(parts) == 0 {
			continue
		}
		if !slices.ContainsFunc(parts, func(p *job.Part) bool { return r.inPlaceWithin(p, e.Step) }) {
			p := parts[0]
			r.problems.WarnWith(e.At, "not-as-told", d.Mark+" is to be read with "+source.Quote(m[0])+", and "+p.Called()+" is off at "+e.Step.Name(), p.At, "the part",
				"fit-for-now: ["+p.Key+", and its fasteners] and tighten: above the reading, take-out-again: below it", "or read it while it is on")
			return
		}
		if jt := looseForNow(e.Step, parts); jt != nil {
			r.problems.WarnWith(e.At, "not-as-told", d.Mark+" is to be read with "+source.Quote(m[0])+", and "+jt.Mark+" is not tightened at "+e.Step.Name()+", which puts its fasteners on for now", jt.At, "the joint",
				"tighten: ["+jt.Base+"] above the reading")
			return
		}
	}
}

// looseForNow is a joint whose fasteners a step puts on for now, with one of some parts, and
// does not tighten; nil if there is none.
func looseForNow(st *job.Step, parts []*job.Part) *job.Joint {
	if !slices.ContainsFunc(st.ForNow, func(m *job.Move) bool { return slices.Contains(parts, m.Part) }) {
		return nil
	}
	for _, m := range st.ForNow {
		if len(m.Part.Joints) > 0 && !slices.ContainsFunc(st.Tighten, func(f job.Fastening) bool { return slices.Contains(f.Parts(), m.Part) }) {
			return m.Part.Joints[0]
		}
	}
	return nil
}

// inPlaceWithin reports whether any piece of a part is in the machine at some time of a step.
func (r *report) inPlaceWithin(p *job.Part, st *job.Step) bool {
	return slices.ContainsFunc(r.walk.Events[r.walk.Start(st):r.walk.End(st)], func(e *walk.Event) bool {
		return inPlace(r.walk, p, e) || e.Move != nil && e.Move.Part == p
	})
}

// stateOff tells of a reading whose words want something off that is on then. What its step
// takes off it takes off before.
func (r *report) stateOff(d *job.Dim, e *walk.Event, words string) {
	for _, m := range saysOff.FindAllStringSubmatch(words, -1) {
		parts := slices.DeleteFunc(r.calledJust(m[1], m[2], d.Place), func(p *job.Part) bool { return len(p.Off) == 0 })
		off := func(p *job.Part) bool {
			return r.walk.On(p, e) < p.Count || job.AnyOf(e.Step.Remove, p)
		}
		if len(parts) == 0 || slices.ContainsFunc(parts, off) {
			continue
		}
		p := parts[0]
		r.problems.WarnWith(e.At, "not-as-told", d.Mark+" is to be read with "+source.Quote(joined.ReplaceAllString(m[0], ""))+", and "+p.Called()+" is on at "+e.Step.Name(), p.Off[0].At, "comes off here",
			"read it while it is off")
		return
	}
}

// calledBy lists the parts whose name ends with a word, before what it is part of: the cap
// is the bracket cap, never the bolt of the cap.
func (r *report) calledBy(word string, at job.Place) []*job.Part {
	var out []*job.Part
	for _, p := range r.job.Parts {
		if !p.Aid && p.Place.Agrees(at) && isOne(r.calledLast(p), word) {
			out = append(out, p)
		}
	}
	return out
}

// calledLast is the last word of the name of a part, kept for the many words that are looked
// for among all parts.
func (r *report) calledLast(p *job.Part) string {
	last, kept := r.lasts[p]
	if !kept {
		if r.lasts == nil {
			r.lasts = make(map[*job.Part]string, len(r.job.Parts))
		}
		last = job.LastWord(r.job.InEnglish(p.Name))
		r.lasts[p] = last
	}
	return last
}

// isOne reports whether two words are the same, whether of one or of several.
func isOne(a, b string) bool {
	return strings.EqualFold(strings.TrimSuffix(a, "s"), strings.TrimSuffix(b, "s"))
}

// calledJust lists the parts that a word names, of those that end with it and with the word
// before it the ones that end with both: bracket dowels are not the taper dowels.
func (r *report) calledJust(before, word string, at job.Place) []*job.Part {
	parts := r.calledBy(word, at)
	just := slices.DeleteFunc(slices.Clone(parts), func(p *job.Part) bool {
		words := strings.Fields(r.job.InEnglish(p.Name))
		i := slices.IndexFunc(words, func(w string) bool { return strings.EqualFold(w, before) })
		return i < 0 || i+1 >= len(words) || !isOne(words[i+1], word)
	})
	if len(just) > 0 {
		return just
	}
	return parts
}

// state binds a step that reads to those that move what the words of the reading want on or
// off.
func (b *binder) state() {
	r := &report{walk: b.walk, job: b.job}
	for _, st := range b.walk.Steps {
		for _, d := range slices.Concat(st.Measure, st.Set) {
			words := b.job.InEnglish(d.State.With)
			if saysWhen.MatchString(words) {
				continue
			}
			for _, m := range saysOn.FindAllStringSubmatch(words, -1) {
				for _, p := range r.calledBy(m[1], d.Place) {
					b.looks(standing{p}, st)
				}
			}
			for _, m := range saysOff.FindAllStringSubmatch(words, -1) {
				for _, p := range r.calledJust(m[1], m[2], d.Place) {
					b.looks(standing{p}, st)
				}
			}
		}
	}
}
