package block

import (
	"matchmark/layout"
	"matchmark/layout/sign"
	"matchmark/packs/job"
	"matchmark/templates/words"
)

// signalPlate is the signal word of a note, white on black.
func (c *Composer) signalPlate(n *job.Caution, high layout.Mm) layout.Block {
	return c.SignalPlate(n.Signal, high, noteRef(n))
}

// SignalPlate is a signal word in a panel of a height, white on black; all but NOTICE carry
// the alert triangle, as ANSI Z535.6 has it. The panels of a job are all as wide as that of
// its longest word: a hazard must not look smaller because its word is shorter.
func (c *Composer) SignalPlate(signal string, high layout.Mm, ref layout.Ref) layout.Block {
	return c.Fixed(plateKey{c.W, signal, high, ref}, func() layout.Block {
		return sign.Panel(c.Setter, c.W.Cautions.Signal[signal], alerts(signal), high, c.plateWidth(high), ref)
	})
}

// A plateKey tells a panel: there are a few, and each stands on many pages.
type plateKey struct {
	words  *words.Catalogue
	signal string
	high   layout.Mm
	ref    layout.Ref
}

// plateWidth is the width of the widest panel of a height.
func (c *Composer) plateWidth(high layout.Mm) layout.Mm {
	width := layout.Mm(0)
	for _, n := range c.Job.Notes {
		if len(n.Steps) == 0 {
			continue // printed nowhere
		}
		width = max(width, sign.PanelWidth(c.Setter, c.W.Cautions.Signal[n.Signal], alerts(n.Signal), high))
	}
	return width
}

// alerts reports whether a signal word warns of injury.
func alerts(signal string) bool { return signal != "notice" }
