package jointsheet

import (
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/joint"
	"matchmark/packs/units"
	"matchmark/templates/block"
	"matchmark/templates/figure"
)

// told are the figures of a joint for paper, by what they are.
type told map[joint.ToldCode]string

// toldOf lists the figures of a joint, each in two units where there are two.
func toldOf(j *job.Joint) told {
	out := told{}
	if j.Result == nil {
		return out
	}
	for _, t := range j.Result.Told() {
		out[t.Code] = figure.Quantity(t.Value)
		if t.Other != nil {
			out[t.Code] += " (" + figure.Quantity(*t.Other) + ")"
		}
	}
	return out
}

// A saying is a line of what is known of a joint: its torque, sentences that run on in one
// paragraph, a caution, from where its drawing is seen.
type saying struct {
	runs  []layout.Run
	runOn bool
}

// sayings are what is known of the bolts, and what the torque does to one.
func sayings(c *block.Composer, j *job.Joint) []saying {
	var out []saying
	tight, bolts := torqueLines(c, j), boltLines(c, j)
	if j.Result == nil {
		text := strings.Join(bolts, " ")
		if len(tight) == 0 && text == "" {
			return nil
		}
		if len(tight) > 0 && text != "" {
			text = " · " + text
		}
		return []saying{{runs: []layout.Run{layout.T(layout.Limit, strings.Join(tight, " · ")), layout.T(layout.Body, text)}}}
	}
	for _, t := range tight {
		out = append(out, saying{runs: []layout.Run{layout.T(layout.Limit, t)}})
	}
	for _, t := range append(bolts, resultLines(c, j)...) {
		out = append(out, saying{[]layout.Run{layout.T(layout.Body, t)}, true})
	}
	for _, x := range j.Result.Cautions {
		out = append(out, saying{runs: []layout.Run{{Text: c.W.Tightening.LookAt, Style: layout.SubBold, Deco: layout.Inverse}, layout.T(layout.Strong, "  "+block.Capital(x.In(c.W))+".")}})
	}
	return out
}

// said sets sayings in a width, those that run on in one paragraph.
func said(c *block.Composer, j *job.Joint, list []saying, width layout.Mm) layout.Block {
	var out []layout.Block
	var runs []layout.Run
	for i, x := range list {
		if len(runs) > 0 {
			runs = append(runs, layout.T(layout.Body, " "))
		}
		runs = append(runs, x.runs...)
		if i+1 < len(list) && x.runOn && list[i+1].runOn {
			continue
		}
		out, runs = append(out, c.Para(width, runs, layout.ParaOpts{Ref: j.At})), nil
	}
	return layout.Above(0.5, out...)
}

// besideOrder sets sayings beside a drawing, the last of them below it: as many as make it
// lowest.
func besideOrder(c *block.Composer, j *job.Joint, pic layout.Block, list []saying) layout.Block {
	const gap, below layout.Mm = 5, 0.8
	var best layout.Block
	width := c.Span - gap - pic.W
	for n := len(list); n > 0; n-- {
		b := layout.Above(below, layout.Beside(gap, pic, said(c, j, list[:n], width)), said(c, j, list[n:], c.Span))
		if best.Empty() || b.H < best.H {
			best = b
		}
	}
	if best.Empty() {
		return pic
	}
	return best
}

// inBoth is a torque in both units, as it is set: one figure to the nearest, of a range the lower
// end up, the upper one down.
func inBoth(text string, s *joint.Setting) string {
	if s == nil || strings.Contains(text, "(") {
		return text
	}
	aim, ok := joint.OtherTorque(s.High)
	high, _ := joint.OtherTorqueMost(s.High)
	low, _ := joint.OtherTorqueLeast(s.Low)
	switch {
	case !ok:
		return text
	case s.Low.Number.Cmp(s.High.Number) == 0:
		return text + " (" + aim.Print() + ")"
	case low.Number.Cmp(high.Number) >= 0:
		return text // the range is narrower than three figures tell
	}
	return text + " (" + low.Number.Print() + "–" + high.Print() + ")"
}

// finalTorque says how tight a joint becomes at last.
func finalTorque(c *block.Composer, j *job.Joint) []string {
	w := c.W
	var out []string
	if j.Torque != "" && j.Wanted == "" {
		text := w.Tightening.Torque.With(inBoth(j.Torque, j.Spec.Torque))
		if j.Spec.Torque != nil && j.Spec.Torque.Low.Unit.Dimension() != units.Torque {
			text = block.Capital(j.Torque)
		}
		if turn := LastTurn(c, j); turn != "" {
			text = w.Tightening.ThenTurned.With(text, turn)
		}
		if j.Source != "" {
			text += " · " + w.Common.Source.With(j.Source)
		}
		out = append(out, text)
	}
	if j.NoValue != "" {
		out = append(out, block.Capital(j.NoValue))
	}
	if t, ok := toldOf(j)[joint.ToldTorque]; ok {
		out = append(out, w.Tightening.WrenchFor.With(t, j.Wanted))
	}
	if j.Source != "" && (j.Torque == "" || j.Wanted != "") {
		out = append(out, w.Common.Source.With(j.Source))
	}
	return out
}

// torqueLines say how tight a joint becomes, at last and for now, and how hard it must
// be to loosen.
func torqueLines(c *block.Composer, j *job.Joint) []string {
	w, out := c.W, finalTorque(c, j)
	if s := j.Spec.ForNow; s != nil {
		out = append(out, w.Tightening.ForNow+w.Common.Colon+inBoth(settingPrint(s), s))
	}
	if q := j.Spec.BreaksLoose; q != nil {
		text := q.Print()
		if least, ok := joint.OtherTorqueLeast(*q); ok {
			text += " (" + least.Print() + ")"
		}
		out = append(out, w.Tightening.BreaksLoose+" "+text)
	}
	return out
}

// settingPrint is a setting as it stands on paper.
func settingPrint(s *joint.Setting) string {
	if s.Low.Number.Cmp(s.High.Number) == 0 {
		return s.Low.Print()
	}
	return s.Low.Number.Print() + "–" + s.High.Print()
}

// boltLines say what thread, of what, with what on it.
func boltLines(c *block.Composer, j *job.Joint) []string {
	w, s := c.W, j.Spec
	var out []string
	var bolt []string
	if s.Thread != nil {
		bolt = append(bolt, s.Thread.String())
	}
	if r := j.Result; r != nil && r.Strength.Class != "" {
		class := w.Tightening.Class
		if strings.HasPrefix(r.Strength.Class, "grade") {
			class = w.Tightening.Grade
		}
		bolt = append(bolt, class.With(r.Strength.Class, r.Strength.Source))
	} else if p := s.Proof; p != nil {
		bolt = append(bolt, w.Tightening.Proof.With(p.Stress.Print(), p.Source))
	}
	if load, ok := toldOf(j)[joint.ToldProofLoad]; ok {
		bolt = append(bolt, w.Tightening.HoldsThat.With(load))
	}
	if len(bolt) > 0 {
		out = append(out, strings.Join(bolt, ", ")+".")
	}
	var rub []string
	if j.Lubricant != "" {
		rub = append(rub, w.Tightening.Lubricant+w.Common.Colon+j.Lubricant)
	}
	if f := s.Friction; f != nil && j.Result != nil && j.Result.NutFactor > 0 {
		rub = append(rub, w.Tightening.NutFactor.With(figure.FourFigures(float64(j.Result.NutFactor)), f.Source))
	}
	if len(rub) > 0 {
		out = append(out, strings.Join(rub, w.Common.Semicolon)+".")
	}
	if t := s.Tensioner; t != nil && t.Retained != nil {
		out = append(out, w.Tightening.TensionerIs.With(t.Area.Print(), t.Retained.Print(), t.Source))
	}
	if j.Plan != nil {
		out = append(out, w.Tightening.PlanIs.With(j.Plan.Name, w.Said(j.Plan.Source)))
	}
	if j.Pattern != "" {
		out = append(out, block.Capital(w.Step.InOrder.With(j.Pattern))+".")
	}
	var fresh []string
	for _, p := range j.Parts {
		if comesNew(j, p) {
			fresh = append(fresh, p.Name)
		}
	}
	if len(fresh) > 0 {
		out = append(out, w.Tightening.NewAlways+w.Common.Colon+strings.Join(fresh, ", ")+".")
	}
	return out
}

// comesNew reports whether a new fastener goes on where its joint is tightened, each
// time: old ones that only hold for a while do not count.
func comesNew(j *job.Joint, p *job.Part) bool {
	if p.Renew != "always" {
		return false
	}
	for _, m := range p.Back {
		if !m.New || m.Step == nil {
			continue
		}
		for _, f := range m.Step.Tighten {
			if f.Joint == j && f.Final == nil {
				return true
			}
		}
	}
	return false
}

// resultLines say in plain words what the torque does to one bolt.
func resultLines(c *block.Composer, j *job.Joint) []string {
	w, t := c.W, toldOf(j)
	var out []string
	add := func(code joint.ToldCode, text string) {
		if _, ok := t[code]; ok {
			out = append(out, text)
		}
	}
	// The pull is worked out from the torque: after a last turn it is more.
	if LastTurn(c, j) != "" {
		out = append(out, j.Torque+":")
	}
	add(joint.ToldPull, w.Tightening.ToldPull.With(t[joint.ToldPull]))
	add(joint.ToldPreload, w.Tightening.Presses.With(t[joint.ToldPreload]))
	if s := j.Spec.Scatter; s != nil {
		add(joint.ToldPreloadLow, w.Tightening.Scatter.With(t[joint.ToldPreloadLow], t[joint.ToldPreloadHigh], s.Percent.Print()))
	}
	if j.Count() > 1 {
		add(joint.ToldClamp, w.Tightening.Together.With(c.W.Pieces(j.Count()), t[joint.ToldClamp]))
	}
	add(joint.ToldShare, w.Tightening.Share.With(t[joint.ToldShare], t[joint.ToldStress], t[joint.ToldProofStress]))
	add(joint.ToldShareHigh, w.Tightening.ShareHigh.With(t[joint.ToldShareHigh]))
	return out
}
