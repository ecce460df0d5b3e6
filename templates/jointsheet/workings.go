package jointsheet

import (
	"regexp"
	"slices"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/joint"
	"matchmark/packs/units"
	"matchmark/templates/block"
	"matchmark/templates/figure"
)

// workings list how the figures of all joints were worked out: each formula once, then the
// numbers of each joint, those that have the same numbers together.
func workings(c *block.Composer, gs [][]*job.Joint) []layout.Piece {
	type line struct {
		figures string
		marks   []string
	}
	var formulas []string
	lines := map[string][]line{}
	for _, g := range gs {
		if g[0].Result == nil {
			continue
		}
		told := g[0].Result.Told()
		for _, x := range g[0].Result.Workings {
			var terms []string
			for _, f := range x.Figures {
				terms = append(terms, term(c, told, f))
			}
			formula := pointsForPaper(c.W.Said(x.Formula))
			figures := strings.Join(terms, ", ") + " (" + c.W.Said(x.Source) + ")"
			if lines[formula] == nil {
				formulas = append(formulas, formula)
			}
			same := slices.IndexFunc(lines[formula], func(l line) bool { return l.figures == figures })
			if same < 0 {
				same = len(lines[formula])
				lines[formula] = append(lines[formula], line{figures: figures})
			}
			lines[formula][same].marks = append(lines[formula][same].marks, marksOf(g))
		}
	}
	var out []layout.Piece
	for i, formula := range formulas {
		var runs []layout.Run
		if i == 0 {
			runs = append(runs, layout.T(layout.SubBold, c.W.Tightening.WorkedOut))
		}
		runs = append(runs, layout.T(layout.Sub, formula))
		for k, l := range lines[formula] {
			end := map[bool]string{true: ".", false: strings.TrimSuffix(c.W.Common.Semicolon, " ")}[k == len(lines[formula])-1]
			runs = append(runs, layout.T(layout.SubBold, "  "+strings.Join(l.marks, ", ")+c.W.Common.Colon), layout.T(layout.Sub, l.figures+end))
		}
		b := c.Para(c.Span, runs, layout.ParaOpts{Hang: 4, Role: block.RoleWorking})
		out = append(out, layout.Piece{Block: b, Gap: map[bool]layout.Mm{true: 4, false: 0.6}[i == 0]})
	}
	return out
}

// term is a figure of a working, and behind it what is told above of the same, rounded.
func term(c *block.Composer, told []joint.Told, f joint.Figure) string {
	text := strings.TrimSpace(c.W.Said(f.Symbol) + " = " + figure.FourFigures(float64(f.Value)) + figure.NBSP + f.Unit)
	for _, t := range told {
		if t.Code != f.Told {
			continue
		}
		x, _ := t.Value.Number.Rat().Float64()
		switch {
		case t.Value.Unit.Print() == f.Unit && figure.FourFigures(x) == figure.FourFigures(float64(f.Value)):
		case t.How == units.Up:
			return c.W.Common.RoundedUp.With(text, figure.Quantity(t.Value))
		case t.How == units.Down:
			return c.W.Common.RoundedDown.With(text, figure.Quantity(t.Value))
		}
	}
	return text
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
		for _, text := range assumed(c, g[0]) {
			if of[text] == nil {
				said = append(said, text)
			}
			of[text] = append(of[text], g[0].Base)
		}
	}
	for i, text := range said {
		if len(of[text]) < worked {
			said[i] = strings.Join(of[text], ", ") + c.W.Common.Colon + text
		}
	}
	var runs []layout.Run
	if worked > 0 {
		runs = []layout.Run{layout.T(layout.SubBold, c.W.Tightening.Assumptions), layout.T(layout.Sub, strings.Join(said, c.W.Common.Semicolon)+". "+c.W.Tightening.Planning+" ")}
	}
	for _, g := range gs {
		if k := boltsOf(gs, g); k != nil {
			runs = append(runs, layout.T(layout.SubBold, marksOf(g)+c.W.Common.Colon), layout.T(layout.Sub, c.W.Tightening.SameBolts.With(marksOf(k))+" "))
		}
	}
	if not := notWorked(gs); len(not) > 0 {
		runs = append(runs, layout.T(layout.SubBold, strings.Join(not, ", ")+c.W.Common.Colon), layout.T(layout.Sub, c.W.Tightening.NotWorked))
	}
	if not := notHere(c.Job); len(not) > 0 {
		runs = append(runs, layout.T(layout.SubBold, " "+strings.Join(not, ", ")+c.W.Common.Colon), layout.T(layout.Sub, c.W.Tightening.NotHere))
	}
	return c.Para(c.Span, runs, layout.ParaOpts{Ref: gs[0][0].At, Role: block.RoleWorking})
}

// notHere lists the marks of joints that are left out for this machine.
func notHere(jb *job.Job) []string {
	return slices.DeleteFunc(slices.Clone(jb.NotHere), func(mark string) bool { return mark[0] != 'J' })
}

// assumed is what the figures of a joint are counted with, in words.
func assumed(c *block.Composer, j *job.Joint) []string {
	w := c.W.Tightening
	var out []string
	for _, a := range j.Result.Assumes {
		out = append(out, w.Assumes[a])
	}
	if s := j.Spec.Scatter; s != nil {
		if j.Result.Pull == nil {
			out = append(out, w.WrenchFeels)
		}
		out = append(out, w.ScatterBy.With(c.W.Said(s.Source)))
	}
	return out
}

// notWorked are the marks of the joints of which it is not worked out what the torque does.
func notWorked(gs [][]*job.Joint) []string {
	var out []string
	for _, g := range gs {
		if g[0].Result == nil && boltsOf(gs, g) == nil {
			out = append(out, marksOf(g))
		}
	}
	return out
}

// boltsOf is the group that has the same fasteners as one of which nothing is worked out, with
// the same on their threads, is tightened to the same torque, and is worked out; nil where
// there is none. One that tells no torque is like no other.
func boltsOf(gs [][]*job.Joint, g []*job.Joint) []*job.Joint {
	j := g[0]
	if j.Result != nil || j.Torque == "" || len(j.Parts) == 0 {
		return nil
	}
	for _, k := range gs {
		if k[0].Result != nil && k[0].Torque == j.Torque && slices.Equal(k[0].Parts, j.Parts) && lubricantOf(gs, k[0]) == lubricantOf(gs, j) {
			return k
		}
	}
	return nil
}

// asIn is a lubricant that is told at another joint: as in J1.
var asIn = regexp.MustCompile(`(?i)^(?:as (?:in|for|at)|wie (?:in|bei)|como en|comme (?:en|à|pour|dans)|jak (?:w|dla|przy)) (J[0-9]+)\.?$`)

// lubricantOf is what is on the threads of a joint, looked up where it is told at another.
func lubricantOf(gs [][]*job.Joint, j *job.Joint) string {
	text := j.Lubricant
	for range gs { // a ring of joints that tell each other's ends
		m := asIn.FindStringSubmatch(text)
		if m == nil {
			return text
		}
		i := slices.IndexFunc(gs, func(g []*job.Joint) bool { return g[0].Base == m[1] })
		if i < 0 {
			return text
		}
		text = gs[i][0].Lubricant
	}
	return text
}

// marksOf is how a group of joints is named in its heading.
func marksOf(g []*job.Joint) string {
	if len(g) == 1 {
		return g[0].Mark
	}
	return g[0].Base
}
