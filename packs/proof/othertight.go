package proof

import (
	"slices"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
)

// tightAt finds words that want the other place tight for a reading: side R tight on its
// shims, line 2 is tight, the right side bolted up tight, both sides tight.
var tightAt = phrase.Of(`(?i)\b(\pL+) ([\pL\d-]+) (?:is |are )?(?:(?:bolted |screwed )(?:up |down |on )?)?tight\b`)

// checkOtherTight sees that a reading whose words want another place tight is taken when the
// part like its own is on there, and what holds it is tight: the gap of one cover tells the
// shims only while the cover across sits on its own.
func (r *report) checkOtherTight() {
	told := map[source.Pos]bool{} // once for all places
	for _, e := range r.walk.Events {
		if e.Verb != job.DoMeasure && e.Verb != job.DoSet || told[e.At] {
			continue
		}
		for _, x := range atOther(r.job, e.Dim) {
			why := ""
			if r.walk.On(x.part, e) == 0 {
				why = x.part.Called() + " is off at " + e.Step.Name()
			} else if j := r.holds(x.part, e); j != nil {
				why = j.Mark + ", which holds " + x.part.Called() + ", is loose at " + e.Step.Name()
			}
			if why != "" {
				told[e.At] = true
				r.problems.WarnWith(e.At, "not-as-told", e.Dim.Mark+" is to be read with "+source.Quote(x.words)+", and "+why, x.part.At, "the part", "read it at a step below the one that puts it on and tightens it")
				break
			}
		}
	}
}

// An other is a part at another place that a reading wants tight, and the words for it.
type other struct {
	part  *job.Part
	words string
}

// atOther lists the parts like those between which a reading lies, at the places that its
// words want tight.
func atOther(j *job.Job, d *job.Dim) []other {
	words := j.InEnglish(d.State.With)
	if words == "" || saysWhen.MatchString(words) {
		return nil
	}
	var out []other
	for _, m := range tightAt.FindAllStringSubmatch(words, -1) {
		for _, p := range d.FaceParts() {
			for _, q := range j.Parts {
				if q != p && q.Key == p.Key && standsAt(j, q.Place, m[1], m[2]) {
					out = append(out, other{q, m[0]})
				}
			}
		}
	}
	return out
}

// standsAt reports whether two words call a place: R of a group side in either order, by its name,
// or all of the group, as both sides.
func standsAt(j *job.Job, p job.Place, a, b string) bool {
	if p.Label != "" && strings.EqualFold(j.InEnglish(p.Name), a+" "+b) {
		return true
	}
	for i, k := range p.Keys {
		if i >= len(p.Groups) {
			continue
		}
		g := p.Groups[i]
		switch {
		case strings.EqualFold(g, a) && strings.EqualFold(k, b), strings.EqualFold(k, a) && strings.EqualFold(g, b),
			allOf[strings.ToLower(a)] && strings.EqualFold(g, strings.TrimSuffix(b, "s")):
			return true
		}
	}
	return false
}

// allOf are words for all places of a group.
var allOf = map[string]bool{"both": true, "all": true}

// otherTight binds a step that reads to those that move or tighten what its words want tight
// at another place.
func (b *binder) otherTight() {
	for _, st := range b.walk.Steps {
		for _, d := range slices.Concat(st.Measure, st.Set) {
			for _, x := range atOther(b.job, d) {
				b.looks(standing{x.part}, st)
				for _, q := range x.part.Behind {
					if len(q.Joints) > 0 {
						b.looks(q, st)
					}
				}
			}
		}
	}
}
