package proof

import (
	"slices"
	"strings"
	"unicode/utf8"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
)

// What the author tells the mechanic in words and what the keys say must be the
// same: a thread the wrong way round breaks studs, an old seal goes back as new.

var leftHand = phrase.Of(`(?i)\bleft[- ]?hand(?:ed)?(?:[- ](lay|laid|wound|winding|grooves?|grooved|drum|ropes?|helix|spiral|twist|side|end|gear|pinion|wheel|worm|rotation|bearings?|pump|motor|fan|casing|housing|covers?|cap|door|panel|half|flange|foot|feet|corner|row|cylinder|valve|column|rail|wall|face|edge|one)\b)?`)

// atLeftHand is a place, or a hand.
var atLeftHand = phrase.Of(`(?i)\b(?:at|on|to|with|in) (?:the|your|its) left[- ]hand(?:$|[.,;:)]| (?:and|of|while)\b)`)

// saysLeftHand reports whether words tell of a left-hand thread; a rope has a left-hand lay,
// a drum left-hand grooves and a machine a left-hand side, a left-hand bearing and a left-hand pump.
func saysLeftHand(words string) bool {
	words = atLeftHand.ReplaceAllString(words, "")
	for _, m := range leftHand.FindAllStringSubmatch(words, -1) {
		if m[1] == "" {
			return true
		}
	}
	return false
}

// checkWords compares the words of each step with the keys of the parts it moves.
func (r *report) checkWords() {
	for _, s := range r.job.Sections {
		for _, st := range s.Steps {
			r.checkHand(st)
			r.checkBoxes(st)
			r.checkNamedJoints(st)
			r.checkSpring(st)
			for _, m := range st.Fit {
				if m.Part.Renew == "" && !m.New && callsNew(r.job.InEnglish(st.Do), r.job.InEnglish(m.Part.Name)) && !fitsNew(st, m.Part.Name) {
					r.problems.AddWith(st.At, "not-new", "the words of "+st.Name()+" speak of a new "+lowerName(m.Part.Name)+", but the part is not renewed", m.Part.At, "the part",
						"renew: always at the part, or take the word out")
				}
			}
		}
	}
}

// measures finds a step that tells somebody to measure; "measured" tells of what was.
var measures = phrase.Of(`(?i)\bmeasure\b`)

// checkBoxes sees that a step whose words say to measure has a box to write it in. A
// generated row has those of the step that it undoes, a heat its log, a loop the boxes
// of its tries.
func (r *report) checkBoxes(st *job.Step) {
	if st.Undoes != nil || st.Until != nil || len(st.Measure)+len(st.Set)+len(st.Recall)+len(st.Heats) > 0 || !measures.MatchString(r.job.InEnglish(st.Do)) {
		return
	}
	r.problems.Warn(st.At, "no-box", "the words of "+st.Name()+" say to measure, and it has no box to write it in", "for example measure: [D1], or set: [D1]", "or say in other words what is looked at")
}

// namesJoint finds the mark of a joint in words.
var namesJoint = phrase.Of(`\bJ\d+\b`)

// checkNamedJoints sees that a joint which the words of a step name is loosened or tightened
// there: as words alone it has no line with its torque, and nothing to tick.
func (r *report) checkNamedJoints(st *job.Step) {
	grips := append(slices.Clone(st.Loosen), st.Tighten...)
	for _, mark := range namesJoint.FindAllString(r.job.InEnglish(st.Do), -1) {
		i := slices.IndexFunc(r.job.Joints, func(j *job.Joint) bool { return j.Base == mark })
		if i < 0 || slices.ContainsFunc(grips, func(f job.Fastening) bool { return f.Joint != nil && sharesParts(f.Joint, r.job.Joints[i]) }) {
			continue
		}
		at, key := st.At, "tighten: ["+mark+"]"
		if st.Undoes != nil {
			at, key = st.Undoes.PutBack.At, "loosen: ["+mark+"] at the step that it undoes"
		}
		r.problems.WarnWith(at, "joint-in-words", "the words of "+st.Name()+" name "+mark+", and the step neither loosens nor tightens it", r.job.Joints[i].At, "the joint",
			key+", and fit-for-now: its fasteners if they come out again", "or take the mark out of the words")
		return
	}
}

// sharesParts reports whether two joints have a fastener in common, as one that is tightened
// in stages and again later.
func sharesParts(a, b *job.Joint) bool {
	return a.Base == b.Base || slices.ContainsFunc(a.Parts, func(p *job.Part) bool { return slices.Contains(b.Parts, p) })
}

// saysForce finds a force with its unit in words, or that a spring has none.
var saysForce = phrase.Of(`\d\s*(?:k?N|daN|kgf?|lbf?)\b|(?i)\b(?:is|are|lies?) (?:loose|slack|free)\b`)

// checkSpring sees that a step which lets a spring go says how hard it pushes: the note
// before it forbids to turn a nut before that is known, and what is measured on the bench
// comes too late. It may have been read by an earlier step.
func (r *report) checkSpring(st *job.Step) {
	words := []string{r.job.InEnglish(st.Do), r.job.InEnglish(st.Note)}
	for _, a := range st.After {
		words = append(words, r.job.InEnglish(a.Reason))
	}
	if st.Undoes != nil || !r.job.HasEnglish(st.Do) || saysForce.MatchString(strings.Join(words, " ")) {
		return
	}
	parts := turnedOff(st)
	i := slices.IndexFunc(parts, func(p *job.Part) bool { return p.Holds == "spring" })
	if i < 0 || slices.ContainsFunc(r.job.Dims, func(d *job.Dim) bool {
		return d.Kind == "force" && d.FoundAt != nil && d.FoundAt.Index < st.Index && d.Place.Agrees(st.Place)
	}) {
		return
	}
	r.problems.WarnWith(st.At, "spring-untold", st.Name()+" lets go "+parts[i].Called()+", which holds back a spring, and does not say how hard it pushes", parts[i].At, "the part",
		"in its words: with how many newtons the spring pushes, and after how many millimetres it is free")
}

// turnedOff lists the parts that a step takes off or loosens.
func turnedOff(st *job.Step) []*job.Part {
	var out []*job.Part
	for _, m := range st.Remove {
		out = append(out, m.Part)
	}
	for _, f := range st.Loosen {
		out = append(out, f.Parts()...)
	}
	return out
}

// checkHand sees that a left-hand thread is told where it is turned, and that
// what is told to be one is one.
func (r *report) checkHand(st *job.Step) {
	if st.Undoes != nil && st.Undoes.Mirror.Missed.At.IsZero() {
		return // speaks as the step that it undoes
	}
	var left *job.Part
	moved := false // something with a thread
	for _, p := range turned(st) {
		moved = moved || p.Thread != nil || p.Fastens()
		if p.Left {
			left = p
		}
	}
	says := saysLeftHand(r.job.InEnglish(st.Do)) || saysLeftHand(r.job.InEnglish(st.Missed))
	switch {
	case left != nil && !says && !r.job.HasEnglish(st.Do): // it may say so in its own language
	case left != nil && !says && st.Undoes != nil:
		r.problems.WarnWith(st.Undoes.Mirror.Missed.At, "hand-not-said", left.Called()+" has a left-hand thread, and the put-back row "+st.Name()+" does not say so", left.At, "the part",
			"back-missed: left-hand thread")
	case left != nil && !says:
		r.problems.WarnWith(st.At, "hand-not-said", left.Called()+" has a left-hand thread, and "+st.Name()+" does not say so", left.At, "the part",
			"missed: left-hand thread")
	case says && left == nil && moved:
		p := turned(st)[0]
		r.problems.WarnWith(st.At, "hand-not-kept", st.Name()+" speaks of a left-hand thread, but none of its parts has one", p.At, "the part",
			"hand: left at the part, or take the words out")
	}
}

// turned lists the parts that a step moves, loosens or tightens.
func turned(st *job.Step) []*job.Part {
	var out []*job.Part
	for _, m := range append(append([]*job.Move{}, st.Remove...), st.Fit...) {
		out = append(out, m.Part)
	}
	for _, f := range append(append([]job.Fastening{}, st.Loosen...), st.Tighten...) {
		out = append(out, f.Parts()...)
	}
	return out
}

// callsNew reports whether a text speaks of a new part of that name: the word new,
// and within three words the last word of the name. What stands behind a comma or a
// full stop is another part: on a new O-ring, then the plate.
func callsNew(text, name string) bool {
	for _, clause := range strings.FieldsFunc(strings.ToLower(text), func(r rune) bool { return strings.ContainsRune(",.;:()", r) }) {
		if newWithin(strings.Fields(clause), name) {
			return true
		}
	}
	return false
}

// newWithin is callsNew for the words between two commas.
func newWithin(words []string, name string) bool {
	parts := strings.Fields(strings.ToLower(name))
	if len(parts) == 0 {
		return false
	}
	last := parts[len(parts)-1]
	for i, w := range words {
		if w != "new" {
			continue
		}
		for _, v := range words[i+1 : min(i+4, len(words))] {
			if v == last || v == last+"s" {
				return true
			}
		}
	}
	return false
}

// fitsNew reports whether a step fits a new part that is called by the same word:
// the words may be about that one.
func fitsNew(st *job.Step, name string) bool {
	word := strings.ToLower(name[strings.LastIndex(name, " ")+1:])
	return slices.ContainsFunc(st.Fit, func(m *job.Move) bool { return m.New && strings.Contains(strings.ToLower(m.Part.Name), word) })
}

// lowerName is a name within a sentence.
func lowerName(name string) string {
	_, size := utf8.DecodeRuneInString(name)
	return strings.ToLower(name[:size]) + name[size:]
}
