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
	lines := []layout.Block{c.Heading(w.Front.ThisMachine)}
	for _, x := range c.Job.Choices {
		state := w.Front.Fitted
		switch {
		case x.Build != "" && x.Serial != "":
			state = w.Front.BuildBySerial.With(strings.ReplaceAll(x.Build, "-", " "), x.Means, x.Serial)
		case x.Build != "":
			state = w.Front.BuildSaid.With(strings.ReplaceAll(x.Build, "-", " "), x.Means)
		case !x.Fitted:
			state = w.Front.NotFitted
		}
		runs := []layout.Run{layout.T(layout.Body, x.What+": "), layout.T(layout.Strong, state)}
		lines = append(lines, c.Para(c.Span, runs, layout.ParaOpts{Ref: x.At}))
	}
	lines = append(lines, c.Para(c.Span, []layout.Run{layout.T(layout.Sub, w.Front.OnlyThis)}, layout.ParaOpts{}))
	return layout.Above(1, lines...)
}
