package step

import (
	"strconv"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// forNowLines are the lines of what is on for a while under one verb: fitted for now and
// taken out again, with the place that it comes from or goes to again, each with a box to tick, since what is left inside runs with the machine;
// left out.
func forNowLines(c *block.Composer, st *job.Step, v job.Verb, width layout.Mm) []layout.Block {
	line := func(verb, done, at string, ms []*job.Move) []layout.Block {
		if len(ms) == 0 {
			return nil
		}
		runs := append([]layout.Run{{Text: verb, Style: layout.SubBold, Deco: layout.Inverse}}, keptRuns(c, at, st, ms)...)
		return []layout.Block{tickLine(c, runs, done, ms[0].At, width)}
	}
	switch v {
	case job.DoTakeOut:
		return line(c.W.Step.TakeOut, c.W.Step.IsOut, c.W.Common.Into, st.TakeOut)
	case job.DoFitForNow:
		return line(c.W.Step.ForNow, c.W.Step.IsIn, c.W.Common.From, st.ForNow)
	}
	var out []layout.Block
	for _, l := range st.LeftOut {
		p := l.Part
		later := ""
		for _, m := range p.Back {
			if m.Step.Index > st.Index && later == "" {
				later = m.Step.No
			}
		}
		runs := []layout.Run{layout.T(layout.Body, strconv.Itoa(p.Count)+"\u00a0"+p.Name+"  "), {Text: c.W.Step.LeftOut.With(later), Style: layout.SubBold, Deco: layout.Inverse}}
		out = append(out, c.Para(width, runs, layout.ParaOpts{Ref: st.At}))
	}
	return out
}

// keptRuns are the parts of some moves, those that came off above behind the places where they
// lie meanwhile.
func keptRuns(c *block.Composer, verb string, st *job.Step, ms []*job.Move) []layout.Run {
	var runs []layout.Run
	for i, g := range groupByPlace(ms, func(m *job.Move) job.Where { return m.Part.KeptAt(st) }) {
		sep := "  "
		if i > 0 {
			sep = " · "
		}
		if g.where.Mark() != "" {
			runs = append(runs, layout.T(layout.Body, sep+verb+" "), layout.Run{Text: g.where.Mark(), Style: layout.Strong, Deco: layout.Boxed})
			sep = " "
		}
		runs = append(runs, layout.T(layout.Body, sep+block.PartList(g.moves, nil)))
	}
	return runs
}
