package step

import (
	"slices"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// turning says of parts whose hand of thread matters which way they are turned to come
// off, or to go on, and from where that is seen.
func turning(c *block.Composer, parts []*job.Part, off bool) []layout.Run {
	w := c.W
	var said []string
	for _, p := range parts {
		if !p.Handed {
			continue
		}
		hand, sentence := w.Step.RightHand, w.Step.TurnedOff
		if p.Left {
			hand = w.Step.LeftHand
		}
		if !off {
			sentence = w.Step.TurnedOn
		}
		sense := w.Step.Counterclockwise
		if p.Left == off { // left-hand comes off clockwise, right-hand goes on so
			sense = w.Step.Clockwise
		}
		from := w.Step.FacingIt
		if seen := c.Job.TurnedFrom(p); seen != "" {
			from = c.W.Common.SeenFrom.With(seen)
		}
		if text := w.Step.Turned.With(p.Name, hand, sentence.With(sense), from); !slices.Contains(said, text) {
			said = append(said, text)
		}
	}
	var runs []layout.Run
	for _, text := range said {
		runs = append(runs, layout.T(layout.Body, " · "), layout.T(layout.Strong, text))
	}
	return runs
}

// untold are the parts of some moves of which the line of what their own step loosens or
// tightens does not tell already which way they are turned.
func untold(ms []*job.Move) []*job.Part {
	var out []*job.Part
	for _, m := range ms {
		told := func(f job.Fastening) bool { return slices.Contains(f.Parts(), m.Part) }
		if m.Step == nil || !slices.ContainsFunc(m.Step.Loosen, told) && !slices.ContainsFunc(m.Step.Tighten, told) {
			out = append(out, m.Part)
		}
	}
	return out
}

// tagRuns name the tags that hang on the big parts among some moves, and what those weigh
// that one may lift alone: heavier ones stand in the line of their lift.
func tagRuns(c *block.Composer, ms []*job.Move) []layout.Run {
	var runs []layout.Run
	for _, m := range ms {
		if b := c.Job.TagOf(m.Part); b != nil {
			runs = append(runs, layout.T(layout.Body, " · "+c.W.Step.BigTag+" "), layout.Run{Text: b.Mark, Style: layout.Strong, Deco: layout.Boxed})
			if m.N == 1 && byHand(c, m.Part) {
				runs = append(runs, layout.T(layout.Body, " "+m.Part.Mass.Print()))
			}
		}
	}
	return runs
}

// byHand reports whether what a part weighs is known, and no more than one may lift alone
// on this site.
func byHand(c *block.Composer, p *job.Part) bool {
	may, _ := c.Job.Site.OneLifts(p.Mass)
	return may
}
