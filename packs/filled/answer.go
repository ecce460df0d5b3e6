package filled

import (
	"matchmark/packs/job"
	"matchmark/packs/reading"
)

// answerOutcomes are what the verdict on an answer makes of its box.
var answerOutcomes = map[reading.Verdict]Outcome{reading.NoVerdict: Open, reading.In: In, reading.Out: Out}

// judgeAnswers judges what is ticked or said, not measured.
func (r *Result) judgeAnswers(v *Verdict, t *taken) {
	l := v.Dim.Left
	if v.When == job.AsFound && (v.Dim.WatchedOnly() || l == nil) {
		l = v.Dim.Found
	}
	if l == nil || v.When == job.AsFound && l.NeedsFound() {
		return
	}
	found := r.readings(v.Dim, job.AsFound).answers
	sum, judged := reading.In, false
	v.each = make([]Outcome, len(t.answers))
	for i, a := range t.answers {
		was := ""
		if i < len(found) {
			was = found[i]
		}
		one := l.JudgeAnswer(a, was)
		if one == reading.NoVerdict && (l.Kind == reading.Words || l.Kind == reading.YesOrNo || l.Kind == reading.Tick || l.Kind == reading.Record) {
			v.each[i] = Recorded
			continue
		}
		judged = true
		v.each[i] = answerOutcomes[one]
		sum = worse(sum, one)
		if one != reading.In {
			v.Findings = append(v.Findings, reading.Finding{Position: i, Verdict: one})
		}
	}
	switch {
	case !judged:
	case sum == reading.In:
		v.Outcome, v.Limit = In, l
	case sum == reading.NoVerdict:
		v.Outcome, v.Limit = Open, l
	default:
		v.Outcome, v.Limit = Out, l
		v.finish(v.Dim, r)
	}
}
