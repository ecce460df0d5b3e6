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

// factLines say what is known of the bolts, and what the torque does to one.
func factLines(c *block.Composer, j *job.Joint, width layout.Mm) []layout.Block {
	var out []layout.Block
	line := func(runs ...layout.Run) {
		if len(runs) > 0 && runs[0].Text != "" {
			out = append(out, c.Para(width, runs, layout.ParaOpts{Ref: j.At}))
		}
	}
	tight, bolts := torqueLines(c, j), strings.Join(boltLines(c, j), " ")
	if j.Result == nil {
		runs := []layout.Run{layout.T(layout.Limit, strings.Join(tight, " · "))}
		if len(tight) == 0 {
			runs = nil
		} else if bolts != "" {
			bolts = " · " + bolts
		}
		line(append(runs, layout.T(layout.Body, bolts))...)
		return out
	}
	for _, t := range tight {
		line(layout.T(layout.Limit, t))
	}
	line(layout.T(layout.Body, strings.TrimSpace(bolts+" "+strings.Join(resultLines(c, j), " "))))
	for _, x := range j.Result.Cautions {
		line(layout.Run{Text: c.W.Tightening.LookAt, Style: layout.SubBold, Deco: layout.Inverse}, layout.T(layout.Strong, "  "+block.Capital(x.In(c.W))+"."))
	}
	return out
}

// inBoth is a torque in both units, as it is set.
func inBoth(text string, s *joint.Setting) string {
	if s == nil || strings.Contains(text, "(") {
		return text
	}
	low, ok := joint.OtherTorque(s.Low)
	high, ok2 := joint.OtherTorque(s.High)
	switch {
	case !ok || !ok2:
		return text
	case s.Low.Number.Cmp(s.High.Number) == 0:
		return text + " (" + low.Print() + ")"
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
		out = append(out, w.Tightening.ForNow+": "+inBoth(settingPrint(s), s))
	}
	if q := j.Spec.BreaksLoose; q != nil {
		s := joint.Exactly(*q)
		out = append(out, w.Tightening.BreaksLoose+" "+inBoth(q.Print(), &s))
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
		rub = append(rub, w.Tightening.Lubricant+": "+j.Lubricant)
	}
	if f := s.Friction; f != nil && j.Result != nil && j.Result.NutFactor > 0 {
		rub = append(rub, w.Tightening.NutFactor.With(figure.FourFigures(float64(j.Result.NutFactor)), f.Source))
	}
	if len(rub) > 0 {
		out = append(out, strings.Join(rub, "; ")+".")
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
		out = append(out, w.Tightening.NewAlways+": "+strings.Join(fresh, ", ")+".")
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
