package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
)

// sentTo lists the readings that send somebody to a hold: when they are out, or by a state that
// their limit asks for or lets choose.
func (r *report) sentTo(h *job.Hold) []*job.Dim {
	mark := sentMark(h)
	var out []*job.Dim
	for _, d := range r.job.Dims {
		if d.Merged == nil && slices.ContainsFunc(append(whenOut(d), d.States()...), mark.MatchString) {
			out = append(out, d)
		}
	}
	return out
}

// sentEarlyTo lists those of them that are read before the hold: a state that is agreed there is
// read behind it.
func (r *report) sentEarlyTo(h *job.Hold) []*job.Dim {
	mark, done := sentMark(h), doneAt(h)
	return slices.DeleteFunc(r.sentTo(h), func(d *job.Dim) bool {
		return !slices.ContainsFunc(whenOut(d), mark.MatchString) &&
			!slices.ContainsFunc(d.States(), func(s string) bool { return mark.MatchString(s) && !done.MatchString(r.job.InEnglish(s)) })
	})
}

// sends says how a reading sends to a hold.
func sends(d *job.Dim, h *job.Hold) string {
	if slices.ContainsFunc(whenOut(d), sentMark(h).MatchString) {
		return "sends to it when it is out"
	}
	return "sends to it by its limit"
}

func sentMark(h *job.Hold) *phrase.Pattern { return phrase.Of(`\bat ` + phrase.Quoted(h.Mark) + `\b`) }

// whenOut are the words for what is done when a dimension is out.
func whenOut(d *job.Dim) []string { return []string{d.Over, d.Under, d.Out, d.FoundOut} }
