package templates

import (
	"matchmark/packs/job"
	"strings"

	"matchmark/layout"
)

// gather sets the lists of what is fetched before the work: instruments, tools,
// spares and consumables, with boxes for what was issued, used and returned.
func gather(c *composer) []layout.Piece {
	w, s := c.w, c.job.Supplies
	out := c.instrumentList(s.Instruments)
	for _, l := range []struct {
		title string
		list  []*job.Supply
	}{{w.Gather.Tools, s.Tools}, {w.Gather.Spares, s.Spares}, {w.Gather.Consumables, s.Consumables}} {
		if len(l.list) > 0 {
			out = append(out, c.supplyList(l.title, l.list)...)
		}
	}
	if len(out) == 0 {
		return nil
	}
	return append([]layout.Piece{c.ruleLine(w.Gather.Rule)}, out...)
}

// instrumentList has a box for the number of each instrument and for the day on
// which its calibration is due.
func (c *composer) instrumentList(list []*job.InstrumentUse) []layout.Piece {
	if len(list) == 0 {
		return nil
	}
	w := c.w
	g := c.grid(col(w.Gather.Instruments, 0), col(w.Common.InstrumentNo, 30), col(w.Gather.CalDue, 30), col(w.Gather.Issued, 18), col(w.Gather.Returned, 18))
	var rows []layout.Row
	for _, in := range list {
		facts := []string{}
		if in.Low != nil {
			facts = append(facts, in.Low.Print()+" – "+in.High.Print())
		}
		if in.Reads != nil {
			facts = append(facts, w.Gather.Reads.With(in.Reads.Print()))
		}
		if len(in.Dims) > 0 {
			facts = append(facts, strings.Join(baseMarks(in.Dims), ", "))
		}
		what := g.about(0, in.Name, strings.Join(facts, " · "), in.At)
		rows = append(rows, g.row(in.At, what, g.text(1, layout.Body, in.Number, in.At)))
	}
	return g.under(append(rows, g.blank(1)...))
}

// baseMarks are the marks of dimensions without their places, each once.
func baseMarks(ds []*job.Dim) []string {
	var out []string
	for _, d := range ds {
		if len(out) == 0 || out[len(out)-1] != d.Base {
			out = append(out, d.Base)
		}
	}
	return out
}

// supplyList is one of the lists of tools, spares and consumables.
func (c *composer) supplyList(title string, list []*job.Supply) []layout.Piece {
	w := c.w
	g := c.grid(col(title, 0), col(w.Gather.HowMuch, 24), col(w.Gather.Issued, 18), col(w.Gather.Used, 18), col(w.Gather.Returned, 18))
	var rows []layout.Row
	for _, s := range list {
		var facts []string
		add := func(text string) {
			if text != "" {
				facts = append(facts, text)
			}
		}
		add(s.Size)
		if s.Must {
			add(w.Gather.AlwaysRenewed)
		}
		if len(s.Steps) > 0 {
			add(w.Gather.UsedAt.With(c.stepRefs(s.Steps)))
		}
		add(s.Note)
		what := g.about(0, s.What, strings.Join(facts, " · "), s.At)
		rows = append(rows, g.row(s.At, what, g.text(1, layout.Body, s.Count, s.At)))
	}
	return g.under(append(rows, g.blank(1)...))
}

// stepRef is a step with its page: 3.2 p. 9.
func (c *composer) stepRef(st *job.Step) string {
	return c.w.Common.StepPage.With(st.No, c.page("step "+st.No))
}

func (c *composer) stepRefs(list []*job.Step) string {
	var out []string
	for _, st := range list {
		out = append(out, c.stepRef(st))
	}
	return strings.Join(out, ", ")
}
