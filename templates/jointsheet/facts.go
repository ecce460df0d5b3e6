package jointsheet

import (
	"regexp"
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
	line := func(st layout.Style, text string) {
		if text != "" {
			out = append(out, c.Para(width, []layout.Run{layout.T(st, text)}, layout.ParaOpts{Ref: j.At}))
		}
	}
	for _, t := range torqueLines(c, j) {
		line(layout.Limit, t)
	}
	line(layout.Body, strings.Join(boltLines(c, j), " "))
	if j.Result == nil {
		line(layout.Sub, c.W.Tightening.NotWorked)
	} else {
		line(layout.Body, strings.Join(resultLines(c, j), " "))
		for _, x := range j.Result.Cautions {
			runs := []layout.Run{{Text: c.W.Tightening.LookAt, Style: layout.SubBold, Deco: layout.Inverse}, layout.T(layout.Strong, "  "+block.Capital(x.In(c.W))+".")}
			out = append(out, c.Para(width, runs, layout.ParaOpts{Ref: j.At}))
		}
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
	add(joint.ToldPull, w.Tightening.ToldPull.With(t[joint.ToldPull]))
	add(joint.ToldPreload, w.Tightening.Presses.With(t[joint.ToldPreload]))
	if s := j.Spec.Scatter; s != nil {
		words := w.Tightening.Scatter
		if j.Result.Pull != nil {
			words = w.Tightening.ScatterPull
		}
		add(joint.ToldPreloadLow, words.With(t[joint.ToldPreloadLow], t[joint.ToldPreloadHigh], s.Percent.Print(), c.W.Said(s.Source)))
	}
	if j.Count() > 1 {
		add(joint.ToldClamp, w.Tightening.Together.With(c.W.Pieces(j.Count()), t[joint.ToldClamp]))
	}
	add(joint.ToldShare, w.Tightening.Share.With(t[joint.ToldShare], t[joint.ToldStress], t[joint.ToldProofStress]))
	add(joint.ToldShareHigh, w.Tightening.ShareHigh.With(t[joint.ToldShareHigh]))
	return out
}

// workings list how it was worked out.
func workings(c *block.Composer, j *job.Joint) []layout.Block {
	if j.Result == nil {
		return nil
	}
	w := c.W
	small := func(name, text string) layout.Block {
		return c.Para(c.Span, []layout.Run{layout.T(layout.SubBold, name), layout.T(layout.Sub, text)}, layout.ParaOpts{Ref: j.At, Role: "working"})
	}
	var lines []string
	for _, x := range j.Result.Workings {
		var terms []string
		for _, f := range x.Figures {
			terms = append(terms, strings.TrimSpace(c.W.Said(f.Symbol)+" = "+figure.FourFigures(float64(f.Value))+figure.NBSP+f.Unit))
		}
		lines = append(lines, pointsForPaper(c.W.Said(x.Formula))+": "+strings.Join(terms, ", ")+" ("+c.W.Said(x.Source)+")")
	}
	return []layout.Block{small(w.Tightening.WorkedOut, strings.Join(lines, "; ")+".")}
}

// pointsForPaper puts the decimal mark into each number of a formula, which has points
// alone.
func pointsForPaper(formula string) string {
	return decimalPoint.ReplaceAllString(formula, "${1}"+string(layout.DecimalMark)+"${2}")
}

var decimalPoint = regexp.MustCompile(`([0-9])\.([0-9])`)

// countedWith says what the workings of all joints were counted with: of what is counted
// with for some of them alone, for which.
func countedWith(c *block.Composer, gs [][]*job.Joint) layout.Block {
	var said []string
	of := map[string][]string{}
	worked := 0
	for _, g := range gs {
		if g[0].Result == nil {
			continue
		}
		worked++
		for _, a := range g[0].Result.Assumes {
			text := c.W.Tightening.Assumes[a]
			if of[text] == nil {
				said = append(said, text)
			}
			of[text] = append(of[text], g[0].Base)
		}
	}
	if worked == 0 {
		return layout.Block{}
	}
	for i, text := range said {
		if len(of[text]) < worked {
			said[i] = strings.Join(of[text], ", ") + ": " + text
		}
	}
	runs := []layout.Run{layout.T(layout.SubBold, c.W.Tightening.Assumptions), layout.T(layout.Sub, strings.Join(said, "; ")+". "+c.W.Tightening.Planning)}
	return c.Para(c.Span, runs, layout.ParaOpts{Ref: gs[0][0].At, Role: "working"})
}
