package packs

import "matchmark/packs/source"

// checkMoves sees that all that comes off goes back or is renewed, and that every
// container is filled and emptied.
func (b *builder) checkMoves() {
	for _, p := range b.job.Parts {
		switch {
		case p.Off != nil && p.Back == nil && !p.Off.To.Scrap:
			b.problems.Add(p.Off.At, "never-back", p.Name+" ("+p.Place.mark(p.Key)+") comes off at "+p.Off.Step.name()+" and never goes back",
				"fit: ["+p.Key+"] at a later step", "or reverse: its section", "or into: scrap if it is done with")
		case p.Off != nil && p.Back != nil && p.Back.Step.Index < p.Off.Step.Index:
			b.problems = append(b.problems, source.Problem{
				Pos: p.Back.At, Severity: source.Error, Code: "back-before-off",
				Message: p.Name + " is put back at " + p.Back.Step.name() + " before it comes off at " + p.Off.Step.name(),
				Help:    []string{"move the step that fits it below the step that removes it"},
				See:     []source.Also{{Pos: p.Off.At, What: "comes off here"}},
			})
		case p.Off != nil && p.Back != nil && p.Back.N != p.Off.N && p.Renew != "always":
			b.problems = append(b.problems, source.Problem{
				Pos: p.Back.At, Severity: source.Error, Code: "count-differs",
				Message: count(p.Off.N) + " of " + p.Name + " come off and " + count(p.Back.N) + " go back",
				Help:    []string{"make the two counts the same"},
				See:     []source.Also{{Pos: p.Off.At, What: "comes off here"}},
			})
		}
	}
	for _, c := range b.job.Containers {
		switch {
		case len(c.In) == 0:
			b.problems.Add(c.At, "never-filled", "nothing goes into "+c.Mark, "name it in the into: of a step, or take it out")
		case len(c.Out) == 0 && !allRenewed(c.In):
			b.problems.Add(c.At, "never-emptied", "nothing comes out of "+c.Mark+" again", "put its parts back with fit:, or reverse: the section")
		}
	}
}

func allRenewed(ms []*Move) bool {
	for _, m := range ms {
		if m.Part.Renew != "always" {
			return false
		}
	}
	return true
}
