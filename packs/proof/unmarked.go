package proof

import (
	"regexp"
	"slices"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/source"
)

// What goes back by a mark needs a mark: whoever has not made one before the parts came
// off stands at the put-back row and guesses.
var (
	goesByMark = regexp.MustCompile(`(?i)\b(?:match|punch|chalk|paint|scribe|witness)(?:ed)?[- ](?:marks?|lines?)\b|\b(?:to|by|on|with) (?:its|their|the|your) marks?\b|` +
		`\bmarks? (?:are |is |stand |stands )?(?:in line|lined up|together|meets?|matched|matching|opposite|on the same side)\b|\blines? (?:whole|unbroken|meets?)\b`)
	makesMark = regexp.MustCompile(`(?i)\b(?:mark|match-mark|punch|chalk|scribe|paint|stamp|number|etch|scratch)(?:e?d|s|es)?\b`)
	// Marks that are there before anybody works at the machine.
	marksOfMaker = regexp.MustCompile(`(?i)\b(?:maker|factory|cast|stamp|stamped|etched|tooth|teeth|timing|numbers?)`)
)

// checkUnmarked warns of a put-back row whose words go by a mark, where nothing tells that
// what it moves has one.
func (r *report) checkUnmarked() {
	s := &speaker{r, map[*job.Step][]string{}}
	told := map[source.Pos]bool{} // once for all places
	for _, st := range r.walk.Steps {
		words := r.job.InEnglish(st.Do)
		by := goesByMark.FindString(words)
		if !st.Back || by == "" || marksOfMaker.MatchString(words) || len(st.Fit) == 0 {
			continue
		}
		at := st.At
		if st.Undoes != nil {
			at = st.Undoes.PutBack.At
		}
		if told[at] || r.hasMark(st) || s.markedInWords(st) {
			continue
		}
		told[at] = true
		p := st.Fit[0].Part
		r.problems.WarnWith(at, "unmarked", "the words of "+st.Name()+" go by a mark ("+source.Quote(by)+"), and no step above makes one on what it puts back", p.At, "the part",
			"match-marks: ["+p.Key+"] at a step above the one that takes it off", "or say whose mark it is, as: the maker's mark")
	}
}

// hasMark reports whether a part that a step puts back, or one that it goes on with, has a
// mark of its own: it gets one, a side of it faces something, or its name, its set or its
// remark tells of one.
func (r *report) hasMark(st *job.Step) bool {
	if len(st.WayRound) > 0 || r.job.InEnglish(st.Note) != "" && makesMark.MatchString(st.Note) {
		return true
	}
	return slices.ContainsFunc(st.Fit, func(m *job.Move) bool {
		for p := m.Part; p != nil; p = p.Of {
			if p.Marked != nil || p.Set != nil || len(p.WayRound) > 0 || makesMark.MatchString(p.Name) {
				return true
			}
		}
		return slices.ContainsFunc(r.job.Parts, func(q *job.Part) bool { return q.Marked != nil && q.Within(m.Part) })
	})
}

// markedInWords reports whether a step above makes a mark in its words, and speaks of
// something that the step speaks of or moves, or of everything.
func (s *speaker) markedInWords(st *job.Step) bool {
	about := slices.DeleteFunc(slices.Clone(s.said(st)), func(w string) bool { return len(w) < 4 })
	for _, m := range st.Fit {
		word, others := s.called(m.Part)
		about = append(append(about, word), others...)
	}
	for _, t := range s.walk.Steps[:st.Index] {
		text := s.job.InEnglish(t.Do) + " " + s.job.InEnglish(t.Note)
		if !makesMark.MatchString(text) || t.Undoes == st.Undoes && t.Back {
			continue
		}
		if t == st.Undoes || strings.Contains(text, "everything") || slices.ContainsFunc(s.said(t), func(w string) bool {
			return !makesMark.MatchString(w) && slices.ContainsFunc(about, func(a string) bool { return a != "" && (same(w, a) || same(a, w)) })
		}) {
			return true
		}
	}
	return false
}
