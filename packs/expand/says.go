package expand

import (
	"matchmark/packs/def"
	"matchmark/packs/job"
)

// readSays takes over what sources say that differ, of limits and of torques, and sees
// that one of them is used and, of a limit, that it is the one printed.
func (b *builder) readSays() {
	for _, dd := range b.Def.Dimensions {
		for _, d := range b.Dims[dd.Mark.Value] {
			d.Says = b.sayings(dd.Says)
		}
	}
	for _, dj := range b.Def.Joints {
		for _, j := range b.Joints[dj.Mark.Value] {
			j.Says = b.sayings(dj.Says)
		}
	}
}

// sayings takes over what some sources say.
func (b *builder) sayings(list []def.Says) []job.Saying {
	var out []job.Saying
	for _, ds := range list {
		s := job.Saying{Source: ds.Source.Value, Text: ds.Text.Value, Note: ds.Note.Value, Used: ds.Used.Written()}
		if s.Used && ds.Used.Value != "yes" {
			s.Hold = b.Holds[ds.Used.Value]
		}
		out = append(out, s)
	}
	return out
}
