package step

import (
	"slices"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/jointsheet"
)

// told are the fastenings of a step in those that are told at once: neighbours of one joint at
// several places, of which the same is said.
func told(c *block.Composer, fs []job.Fastening, verb string, tight bool) [][]job.Fastening {
	blind := c.Blind()
	words := func(f job.Fastening) []layout.Run {
		runs := slices.Clone(fastenWords(blind, verb, []job.Fastening{f}, tight))
		return slices.DeleteFunc(runs, func(r layout.Run) bool { return r.Text == f.Joint.Mark })
	}
	var out [][]job.Fastening
	for _, f := range fs {
		n := len(out) - 1
		if n >= 0 && sameJoint(c, out[n][0], f) && slices.Equal(words(out[n][0]), words(f)) {
			out[n] = append(out[n], f)
			continue
		}
		out = append(out, []job.Fastening{f})
	}
	return out
}

// sameJoint reports whether two fastenings are of one joint at two places, of which all that is
// pointed to stands on the same pages.
func sameJoint(c *block.Composer, a, b job.Fastening) bool {
	if a.Joint == nil || b.Joint == nil || a.Joint.Base != b.Joint.Base || a.Joint == b.Joint || len(a.Joint.Says)+len(b.Joint.Says) > 0 {
		return false
	}
	return jointsheet.SamePages(c, a.Joint, b.Joint)
}

// joinedLine is what is said of a joint at several places, once, with a box to tick for each
// place under its mark: behind it, or below where that is lower.
func joinedLine(c *block.Composer, st *job.Step, fs []job.Fastening, runs []layout.Run, tick string, width layout.Mm) layout.Block {
	at := fs[0].At
	var ticks []layout.Block
	for _, f := range fs {
		ticks = append(ticks, turned(placeTick(c, f, tick), st, f))
	}
	below := layout.Above(1, c.Para(width, runs, layout.ParaOpts{Ref: at}), block.FlowMiddle(ticks, width))
	row := layout.Middle(layout.GapX, ticks...)
	room := width - row.W - textGap
	if room < leastShare {
		return below
	}
	line := c.Para(room, runs, layout.ParaOpts{Ref: at})
	line.W = room
	if beside := layout.Beside(textGap, line, row); len(line.Misfits()) == 0 && beside.H < below.H-0.5 {
		return beside
	}
	return below
}

// placeTick is the box to tick of a joint at one of several places, its mark behind the box
// that is its own.
func placeTick(c *block.Composer, f job.Fastening, tick string) layout.Block {
	return c.Tick(layout.Sub, strings.TrimSpace(f.Joint.Mark+" "+tick), f.At)
}

// joinedStages is a joint at several places that is tightened in stages: what is said of it
// once, and a row of boxes to tick for each place behind its mark.
func joinedStages(c *block.Composer, st *job.Step, fs []job.Fastening, runs []layout.Run, width layout.Mm) layout.Block {
	rows := []layout.Block{c.Para(width, runs, layout.ParaOpts{Ref: fs[0].At})}
	var places []layout.Block
	for _, f := range fs {
		row := []layout.Block{c.Words(layout.SubBold, f.Joint.Mark), c.Words(layout.Sub, c.W.Step.Stages)}
		places = append(places, turned(block.FlowMiddle(append(row, jointsheet.Ticks(c, f.Joint, f.At)...), width), st, f))
	}
	return layout.Above(1, append(rows, block.FlowRow(places, width))...)
}
