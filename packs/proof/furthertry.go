package proof

import (
	"slices"
	"strings"
	"unicode"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// A further try begins with the machine as the step leaves it and must leave it so again:
// what it takes off is on then and goes back in it, what it reads and tightens is there. Its
// words are read for what comes off and what goes back; of words that can mean several parts
// nothing is told.
var goesBack = phrase.Of(`(?i)\b(?:back|on|in|fit|refit|tight|again|home|down|together|shut)\b`)

// A try is one further try as far as it has been walked.
type try struct {
	*report
	step *job.Step
	end  int // the place in the order of events at which the step is done
	off  []takenOff
}

// A takenOff is what the words of a try take off.
type takenOff struct {
	act   job.TryAct
	word  string // by which it is called
	parts []*job.Part
}

// checkTries walks a further try of each step that is done again.
func (r *report) checkTries() {
	told := map[source.Pos]bool{} // once for all places
	for _, st := range r.walk.Steps {
		if st.Until == nil || len(st.EachTry) == 0 || told[st.At] {
			continue
		}
		before := len(r.problems)
		t := &try{report: r, step: st, end: r.walk.End(st)}
		for i, a := range st.EachTry {
			switch {
			case a.Joint != nil:
				t.tighten(a)
			case a.Dim != nil:
				t.read(a, st.EachTry[i+1:])
			default:
				t.words(a)
			}
		}
		for _, x := range t.off {
			t.tell(x.act, x.parts[0].Called()+" comes off and goes back by nothing that stands below", x.parts[0].At, "the part",
				"the joint that holds it, by its mark, behind "+source.Quote(x.act.Words), "or in words: "+x.word+" back")
		}
		told[st.At] = len(r.problems) > before
	}
}

// tell warns of what a further try cannot do.
func (t *try) tell(a job.TryAct, what string, see source.Pos, here string, help ...string) {
	t.problems.WarnWith(a.At, "not-in-this-try", "in a further try of "+t.step.Name()+" "+what, see, here, help...)
}

// words walks what the words of a try take off and put back.
func (t *try) words(a job.TryAct) {
	text := t.job.InEnglish(a.Words)
	for _, m := range offIn(text) {
		parts := t.meant(m, text)
		in := slices.DeleteFunc(slices.Clone(parts), func(p *job.Part) bool { return t.on(p) == 0 || t.isOff(p) != nil })
		switch {
		case len(parts) == 0:
		case len(in) == 0:
			t.tell(a, parts[0].Called()+" comes off, and is off then", parts[0].At, "the part", "take "+source.Quote(a.Words)+" out, or put the part on in the step")
		case slices.ContainsFunc(in, func(p *job.Part) bool { return p.Key != in[0].Key }):
		default:
			t.inFront(a, in[0])
			t.off = append(t.off, takenOff{a, m[2], in})
		}
	}
	if all := saysOff.FindAllStringIndex(text, -1); len(all) > 0 {
		text = text[all[len(all)-1][1]:] // off and on again
	}
	if !goesBack.MatchString(text) {
		return
	}
	t.off = slices.DeleteFunc(t.off, func(x takenOff) bool {
		return x.act.At == a.At || strings.Contains(strings.ToLower(text), strings.ToLower(x.word)) || !t.speaksOfPart(text)
	})
}

// andBefore finds the word that stands before "and" with the one before that: cover of cover and
// shims off.
var andBefore = phrase.Of(`(?i)(?:\b(\pL+) )?\b(\pL+?)s? $`)

// offIn finds what a text says to come off, as saysOff does, both of two that "and" joins.
func offIn(text string) [][]string {
	var out [][]string
	for _, at := range saysOff.FindAllStringSubmatchIndex(text, -1) {
		before := ""
		if at[2] >= 0 {
			before = text[at[2]:at[3]]
		}
		if strings.EqualFold(before, "and") {
			if m := andBefore.FindStringSubmatch(text[:at[2]]); m != nil {
				out = append(out, m)
			}
		}
		out = append(out, []string{text[at[0]:at[1]], before, text[at[4]:at[5]]})
	}
	return out
}

// meant lists the parts that what saysOff finds in a try can mean: those whose whole name the text says, if
// it says any. What is no part of the machine, as a timber, comes and goes.
func (t *try) meant(m []string, text string) []*job.Part {
	parts := t.calledJust(m[1], m[2], t.step.Place)
	whole := slices.DeleteFunc(slices.Clone(parts), func(p *job.Part) bool {
		return !strings.Contains(strings.ToLower(text), strings.ToLower(t.job.InEnglish(p.Name)))
	})
	if len(whole) > 0 {
		return whole
	}
	return parts
}

// speaksOfPart reports whether a text speaks of a part: what it says of that is not said of another.
func (t *try) speaksOfPart(text string) bool {
	return slices.ContainsFunc(strings.FieldsFunc(text, func(r rune) bool { return !unicode.IsLetter(r) }), func(w string) bool {
		return len(t.calledBy(w, t.step.Place)) > 0
	})
}

// on is how many pieces of a part are in the machine at the step or when it is done.
func (t *try) on(p *job.Part) int { return t.walk.StandsAt(p, t.step) }

// isOff is what took a part, or an assembly that it belongs to, off in this try.
func (t *try) isOff(p *job.Part) *takenOff {
	i := slices.IndexFunc(t.off, func(x takenOff) bool {
		return slices.ContainsFunc(x.parts, func(q *job.Part) bool { return p == q || p.Within(q) })
	})
	if i < 0 {
		return nil
	}
	return &t.off[i]
}

// inFront tells of a part that comes off while another stands in front of it. What fastens it
// comes out with it.
func (t *try) inFront(a job.TryAct, p *job.Part) {
	for _, q := range t.walk.InFront(p, t.end) {
		if t.isOff(q) == nil && len(q.Joints) == 0 && !q.Fastens() {
			t.tell(a, p.Called()+" comes off, while "+q.Called()+" is in front of it", q.At, "in front", source.Quote(job.LastWord(q.Name)+" off")+" above it", "or do the step before that goes on")
			return
		}
	}
}

// tighten walks a joint that is tightened: its fasteners are in, and what they hold is on again.
func (t *try) tighten(a job.TryAct) {
	for _, p := range a.Joint.Parts {
		if !t.inPlaceWithin(p, t.step) && t.on(p) == 0 {
			t.tell(a, a.Joint.Mark+" is tightened, and "+p.Called()+" is off then", p.At, "the fastener", "take it out, or put the part on in the step")
			return
		}
	}
	t.off = slices.DeleteFunc(t.off, func(x takenOff) bool {
		return slices.ContainsFunc(x.parts, func(p *job.Part) bool { return t.shutIn(p, a.Joint) })
	})
}

// shutIn reports whether a part is in its place when a joint is tight: what the joint can hold, its
// fasteners, and a pack of shims behind what it holds.
func (t *try) shutIn(p *job.Part, j *job.Joint) bool {
	return slices.Contains(j.Parts, p) || t.held(p, j) || t.isPack(p) && slices.ContainsFunc(p.Behind, func(q *job.Part) bool { return t.held(q, j) })
}

// isPack reports whether a part is a pack of shims.
func (t *try) isPack(p *job.Part) bool {
	return slices.ContainsFunc(t.job.Dims, func(d *job.Dim) bool { return d.Shims != nil && d.Shims.Part == p })
}

// held reports whether a joint can hold a part: one of its fasteners is in front of the part, or
// it is not said of any fastener whether it is.
func (t *try) held(p *job.Part, j *job.Joint) bool {
	holds := func(p *job.Part) bool {
		return slices.ContainsFunc(p.Behind, func(q *job.Part) bool { return slices.Contains(j.Parts, q) })
	}
	said := slices.ContainsFunc(p.Behind, func(q *job.Part) bool { return len(q.Joints) > 0 })
	return holds(p) || !said && !slices.ContainsFunc(t.job.Parts, holds)
}

// read walks a reading: its faces are there, and a pack of shims is out.
func (t *try) read(a job.TryAct, later []job.TryAct) {
	for _, p := range walk.HangsOn(a.Dim) {
		if x := t.isOff(p); x != nil {
			t.tell(a, a.Dim.Mark+" is read, and "+p.Called()+" has come off before ("+source.Quote(x.act.Words)+")", x.act.At, "comes off here", "read it above that, or below what puts it back")
			return
		}
		if !t.step.Bench && t.on(p) == 0 && !t.inPlaceWithin(p, t.step) {
			t.tell(a, a.Dim.Mark+" is read, and "+p.Called()+" is off then", p.At, "the part", "take it out, or read it where that is on")
			return
		}
	}
	if a.Dim.Shims == nil || a.Dim.Shims.Part == nil {
		return
	}
	pack := a.Dim.Shims.Part
	for _, q := range t.walk.InFront(pack, t.end) {
		for _, b := range later {
			if t.isOff(q) == nil && t.takesOff(b, q) {
				t.tell(a, a.Dim.Mark+" is made up, and "+q.Called()+", which it lies behind, comes off after that", b.At, "comes off here", a.Dim.Mark+" below "+source.Quote(b.Words))
				return
			}
		}
	}
}

// takesOff reports whether the words of a try take a part off.
func (t *try) takesOff(a job.TryAct, p *job.Part) bool {
	text := t.job.InEnglish(a.Words)
	return slices.ContainsFunc(offIn(text), func(m []string) bool { return slices.Contains(t.meant(m, text), p) })
}

// tries binds a step that is done again to those that move what its further tries read, tighten
// and take off, and what stands in front of that.
func (b *binder) tries() {
	r := &report{walk: b.walk, job: b.job}
	for _, st := range b.walk.Steps {
		if st.Until == nil {
			continue
		}
		t := &try{report: r, step: st}
		for _, a := range st.EachTry {
			var parts []*job.Part
			switch {
			case a.Joint != nil:
				parts = a.Joint.Parts
			case a.Dim != nil:
				parts = walk.HangsOn(a.Dim)
			default:
				text := b.job.InEnglish(a.Words)
				for _, m := range offIn(text) {
					for _, p := range t.meant(m, text) {
						parts = append(append(parts, p), p.Behind...)
					}
				}
			}
			for _, p := range parts {
				b.looks(standing{p}, st)
			}
		}
	}
}
