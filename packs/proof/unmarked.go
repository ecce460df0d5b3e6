package proof

import (
	"slices"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
)

// What goes back by a mark needs a mark: whoever has not made one before the parts came
// off stands at the put-back row and guesses.
var (
	goesByMark = phrase.Of(`(?i)\b(?:match|punch|chalk|paint|scribe|witness)(?:ed)?[- ](?:marks?|lines?)\b|\b(?:to|by|on|with) (?:its|their|the|your) marks?\b|` +
		`\bmarks? (?:are |is |stand |stands )?(?:in line|lined up|together|meets?|matched|matching|opposite|on the same side)\b|\blines? (?:whole|unbroken|meets?)\b`)
	// A mark is made by a verb at the head of a clause, as in: chalk the top; or is done with,
	// as in: both halves marked. The paint and the lock numbers are no marks.
	makesMark = phrase.Of(`(?i)(?:^|[.;:,]\s*|\b(?:and|then|or|to|first|both|must)\s+)(?:re-?)?(?:mark|match-mark|punch|cent(?:re|er)-punch|chalk|scribe|paint|stamp|number|etch|scratch)\b|` +
		`\b(?:match-)?(?:mark|punch|chalk|scribe|paint|stamp|number|etch|scratch)e?d\b|\b(?:make|put|set|draw|strike|give)\b[^.;]*\b(?:marks?|line)\b`)
	// carriesMark tells that the mark of an old piece comes onto the new one.
	carriesMark = phrase.Of(`(?i)\b(?:transfer|copy|copied|carr(?:y|ied)|tak(?:e|en)|bring|brought|hold|held|lay|laid)\w*\b[^.;]*\b(?:marks?|lines?|old)\b|\bmarks?\b[^.;]*\b(?:transferred|copied|carried|taken|brought)\b|\b(?:from|of|by|like|against) the old\b`)
	// bearsMark is a name or a remark that tells of a mark that is there.
	bearsMark = phrase.Of(`(?i)\b(?:(?:match-?|witness )?marks?|(?:match-)?marked|numbered|stamped|punched|etched|scribed)\b`)
	// What is filled goes to the mark of its glass or stick.
	filledToMark = phrase.Of(`(?i)\b(?:fill|refill|top up|pour)\b[^.;,]*,? (?:up )?to (?:its|their|the) marks?\b`)
	// Marks that are there before anybody works at the machine.
	marksOfMaker = phrase.Of(`(?i)\b(?:maker|makers|factory|cast|stamps?|stamped|etched|tooth|teeth|timing)\b`)
)

// checkUnmarked warns of a put-back row whose words go by a mark, where nothing tells that
// what it moves has one.
func (r *report) checkUnmarked() {
	s := newSpeaker(r)
	told := map[source.Pos]bool{} // once for all places
	for _, st := range r.walk.Steps {
		words := r.job.InEnglish(st.Do)
		words = filledToMark.ReplaceAllString(words, "")
		by := goesByMark.FindString(words)
		if !st.Back || by == "" || marksOfMaker.MatchString(words) {
			continue
		}
		at := st.At
		if st.Undoes != nil {
			at = st.Undoes.PutBack.At
		}
		if told[at] || s.hasMark(st) || s.markedInWords(st) {
			continue
		}
		told[at] = true
		if len(st.Fit) == 0 {
			r.problems.Warn(at, "unmarked", "the words of "+st.Name()+" go by a mark ("+source.Quote(by)+"), and no step above makes one on what they speak of",
				"match-marks: at a step above, with the parts that are lined up", "or say whose mark it is, as: the maker's mark")
			continue
		}
		p := st.Fit[0].Part
		r.problems.WarnWith(at, "unmarked", "the words of "+st.Name()+" go by a mark ("+source.Quote(by)+"), and no step above makes one on what it puts back", p.At, "the part",
			"match-marks: ["+p.Key+"] at a step above the one that takes it off", "or say whose mark it is, as: the maker's mark")
	}
}

// hasMark reports whether a part that a step puts back, or one that it goes on with, has a
// mark of its own: it gets one, a side of it faces something, or its name, its set or its
// remark tells of one.
func (s *speaker) hasMark(st *job.Step) bool {
	if len(st.WayRound) > 0 || s.job.InEnglish(st.Note) != "" && bearsMark.MatchString(st.Note) {
		return true
	}
	if len(st.Fit) == 0 && slices.ContainsFunc(s.job.Parts, func(p *job.Part) bool {
		word, _ := s.called(p)
		return word != "" && (p.Marked != nil || len(p.WayRound) > 0) && s.says(st, word)
	}) {
		return true // it lines up what stays on
	}
	return slices.ContainsFunc(st.Fit, func(m *job.Move) bool {
		for p := m.Part; p != nil; p = p.Of {
			if s.marked(p, st) || p.Set != nil || len(p.WayRound) > 0 || bearsMark.MatchString(p.Name) {
				return true
			}
		}
		return slices.ContainsFunc(s.job.Parts, func(q *job.Part) bool { return s.marked(q, st) && q.Within(m.Part) })
	})
}

// marked reports whether a part bears a mark when a step puts it back. The mark of an old piece
// is none on the new one that goes back in its place: that is marked after the old one is off.
func (s *speaker) marked(p *job.Part, st *job.Step) bool {
	if p.Marked == nil || p.AcrossIsNew(st) {
		return false
	}
	off := takenOffAt(st)
	return off == nil || !st.Renews(p) || slices.ContainsFunc(s.walk.Steps[off.Index+1:st.Index+1], func(t *job.Step) bool { return slices.Contains(t.Marks, p) })
}

// markedInWords reports whether a step makes a mark in its words in time for one that puts back.
func (s *speaker) markedInWords(st *job.Step) bool { return len(s.marking(st)) > 0 }

// marking lists the steps that make a mark in their words, not below the one that takes off
// what a step puts back, and speak of something that the step speaks of or moves, or of
// everything.
func (s *speaker) marking(st *job.Step) []*job.Step {
	about := slices.DeleteFunc(slices.Clone(s.said(st)), func(w string) bool { return len(w) < 4 || goesByMark.MatchString(w) || bearsMark.MatchString(w) })
	for _, m := range st.Fit {
		word, others := s.called(m.Part)
		about = append(append(about, word), others...)
	}
	off := takenOffAt(st)
	onNew := off != nil && len(st.Fit) > 0 && !slices.ContainsFunc(st.Fit, func(m *job.Move) bool { return !st.Renews(m.Part) && !s.meetsNew(m.Part, st) })
	var out []*job.Step
	for _, t := range s.walk.Steps[:st.Index+1] {
		if !onNew && (t == st || off != nil && t.Index > off.Index || t.Undoes == st.Undoes && t.Back) || onNew && t.Index <= off.Index {
			continue // the mark of an old piece is none on a new one, and one that is made when it is off is none on an old one
		}
		text := s.job.InEnglish(t.Do) + " " + s.job.InEnglish(t.Note)
		if !s.makesMark(text) && !(onNew && carriesMark.MatchString(text)) {
			continue
		}
		if t == st {
			return append(out, t)
		}
		if t == st.Undoes || strings.Contains(text, "everything") || slices.ContainsFunc(s.said(t), func(w string) bool {
			return !makesMark.MatchString(w) && slices.ContainsFunc(about, func(a string) bool { return a != "" && (same(w, a) || same(a, w)) })
		}) {
			out = append(out, t)
		}
	}
	return out
}

// meetsNew reports whether what a part is marked with across a joint is a new piece at a step.
func (s *speaker) meetsNew(p *job.Part, st *job.Step) bool {
	return p.AcrossIsNew(st) || slices.ContainsFunc(s.job.Parts, func(q *job.Part) bool {
		return q.Across == p && q.Marked != nil && q.RenewedSince(q.Marked, st)
	})
}

// makesMark reports whether a text speaks of making a mark; it is asked of each step for many
// later ones.
func (s *speaker) makesMark(text string) bool {
	makes, known := s.marks[text]
	if !known {
		makes = makesMark.MatchString(text)
		s.marks[text] = makes
	}
	return makes
}

// takenOffAt is the last step that takes off what a step puts back: a mark made below it is
// too late. It is nil for what was not taken off.
func takenOffAt(st *job.Step) *job.Step {
	off := st.Undoes
	for _, m := range st.Fit {
		if u := m.Undo; u != nil && u.Step != nil && (off == nil || u.Step.Index > off.Index) {
			off = u.Step
		}
	}
	return off
}

// unmarked binds a step that makes the one mark by which parts go back to the step that takes
// them off.
func (b *binder) unmarked() {
	s := newSpeaker(&report{walk: b.walk, job: b.job})
	for _, st := range b.walk.Steps {
		if !st.Back || !goesByMark.MatchString(s.job.InEnglish(st.Do)) || s.hasMark(st) {
			continue
		}
		if by, off := s.marking(st), takenOffAt(st); len(by) == 1 && off != nil && by[0].Index <= off.Index && len(st.Fit) > 0 {
			b.before(by[0], off, job.Bind{Kind: job.BoundPart, Part: st.Fit[0].Part})
		}
	}
}
