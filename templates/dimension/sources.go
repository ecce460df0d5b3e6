package dimension

import (
	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// SourcesDiffer tell what the sources say that differ, the one used first in sight.
func SourcesDiffer(c *block.Composer, d *job.Dim, width layout.Mm) []layout.Block {
	if len(d.Says) == 0 {
		return nil
	}
	w := c.W
	runs := []layout.Run{{Text: w.Dimension.SourcesDiffer, Style: layout.SubBold, Deco: layout.Boxed}}
	for _, s := range d.Says {
		text := "  " + s.Source + c.W.Common.Colon + s.Text
		if s.Note != "" {
			text += " (" + s.Note + ")"
		}
		runs = append(runs, layout.T(layout.Sub, text))
		if !s.Used {
			continue
		}
		used := w.Dimension.Used
		if s.Hold != nil {
			used += ", " + w.Dimension.ChosenAt.With(s.Hold.Mark)
		}
		runs = append(runs, layout.T(layout.Sub, " "), layout.Run{Text: used, Style: layout.SubBold, Deco: layout.Inverse})
	}
	return []layout.Block{c.Para(width, runs, layout.ParaOpts{Ref: d.At})}
}
