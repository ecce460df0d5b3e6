package plan

import (
	"errors"

	"matchmark/packs/align"
	"matchmark/packs/job"
	"matchmark/packs/units"
)

// alignments works every alignment out as far as it can be without readings: the lines
// of its ladder, its target, the limits of its speed, and an example.
func (p *planner) alignments() {
	for _, a := range p.job.Alignments {
		if len(a.Steps) == 0 {
			p.problems.Warn(a.At, "never-aligned", a.Mark+" is aligned at no step", "align: ["+a.Mark+"] at the step that does it")
		}
		if !a.Hole {
			p.alignment(a)
		}
	}
}

func (p *planner) alignment(a *job.Alignment) {
	if a.Growth != nil {
		target, err := a.Growth.Target(a.Setup)
		if p.misaligned(a, err) {
			return
		}
		a.Setup.Target = target
	}
	ladder, err := a.Setup.Ladder()
	if p.misaligned(a, err) {
		return
	}
	ex := &job.AlignExample{Readings: exampleReadings(a.Setup)}
	if ex.Result, err = a.Setup.Work(ex.Readings); p.misaligned(a, err) {
		return
	}
	if a.Limits != nil {
		j, err := a.Setup.Judge(ex.Result, *a.Limits)
		if p.misaligned(a, err) {
			return
		}
		if ladder, err = a.Setup.LadderTo(*a.Limits); p.misaligned(a, err) {
			return
		}
		a.Row, ex.Result = &j.Row, ex.Result.Extended(ladder)
	} else {
		p.problems.Warn(a.At, "no-align-limits", a.Mark+" does not say how near is near enough", "for example limits: {speed: …, at: … mm, over: … mm, rows: [{up-to: …, offset: … mm, angle: … mm}], source: maker's sheet 2}")
	}
	if a.SoftFoot != nil {
		var feet []align.FootRise
		for _, f := range []string{"1", "2", "3", "4"} {
			feet = append(feet, align.FootRise{Name: f, Rise: units.Quantity{Number: units.Whole(0), Unit: a.SoftFoot.Unit}})
		}
		if _, err := align.SoftFoot(feet, *a.SoftFoot, a.SoftFootSource); p.misaligned(a, err) {
			return
		}
	}
	a.Ladder, a.Example = ladder, ex
}

// exampleSteps are the readings of an example, in steps of the dial: made up so that
// every sign is met and top and bottom add up to left and right.
var exampleSteps = map[align.Dial][4]int64{
	align.Rim: {0, -6, -26, -20}, align.Face: {0, 3, 8, 5}, align.FaceOther: {0, -1, -4, -3},
	align.OnStationary: {0, -6, -26, -20}, align.OnMovable: {0, 12, 30, 18},
}

// exampleReadings are the readings of the example of a setup.
func exampleReadings(s align.Setup) map[align.Reading]units.Quantity {
	out := map[align.Reading]units.Quantity{}
	for _, d := range s.Dials() {
		for i, at := range []align.Clock{align.Top, align.Right, align.Bottom, align.Left} {
			n := s.Reads.Number.Mul(units.Whole(exampleSteps[d][i]))
			out[align.Reading{Dial: d, At: at}] = units.Quantity{Number: units.Exact(n.Rat(), s.Reads.Number.Decimals()), Unit: s.Unit}
		}
	}
	return out
}

// misaligned turns the reasons why an alignment cannot be worked out into problems.
func (p *planner) misaligned(a *job.Alignment, err error) bool {
	var rs align.Refusals
	if !errors.As(err, &rs) {
		return false
	}
	for _, no := range rs {
		p.problems.Add(a.Wrote.Place(no.Field, a.At), "align-refused", a.Mark+": "+no.Message, no.Help)
	}
	return true
}
