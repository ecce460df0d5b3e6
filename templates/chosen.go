package templates

import (
	"strings"

	"matchmark/layout"
)

// chosen names what this machine has of each option: the pack prints only that.
func (c *composer) chosen() layout.Block {
	if len(c.Job.Choices) == 0 {
		return layout.Block{}
	}
	w := c.W
	var runs []layout.Run
	for i, x := range c.Job.Choices {
		state := w.Front.Fitted
		switch {
		case x.Build != "" && x.Serial != "":
			state = w.Front.BuildBySerial.With(strings.ReplaceAll(x.Build, "-", " "), x.Means, x.Serial)
		case x.Build != "":
			state = w.Front.BuildSaid.With(strings.ReplaceAll(x.Build, "-", " "), x.Means)
		case !x.Fitted:
			state = w.Front.NotFitted
		}
		if i > 0 {
			runs = append(runs, layout.T(layout.Body, " · "))
		}
		runs = append(runs, layout.Run{Text: x.What + c.W.Common.Colon, Style: layout.Body, Ref: x.At}, layout.Run{Text: state, Style: layout.Strong, Ref: x.At})
	}
	runs = append(runs, layout.T(layout.Sub, "  "+w.Front.OnlyThis))
	if list := c.Job.NotHere; len(list) > 0 {
		runs = append(runs, layout.T(layout.Sub, " "+w.Front.NotHere.With(strings.Join(list, ", "))))
	}
	return layout.Above(1, c.Heading(w.Front.ThisMachine), c.Para(c.Span, runs, layout.ParaOpts{Ref: c.Job.Choices[0].At}))
}
