package jointsheet

import (
	"slices"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/joint"
	"matchmark/templates/block"
)

// A joint that is held for a while with less than at last, for a reading or a trial, has ticks
// of its own above those of the tightening that stays, each time: a bolt that was left out of
// either round is seen on the sheet.

// Held reports whether the ticks of a fastening that is held for a while stand on the sheet:
// where fewer of its fasteners are on than the joint has, the step alone has its tick.
func Held(f job.Fastening) bool {
	return f.Joint != nil && f.Held != nil && f.On == f.Joint.Count()
}

// HeldAt is the page of those ticks, in a few words.
func HeldAt(c *block.Composer, j *job.Joint) string {
	return c.W.Tightening.TicksAt.With(c.Page(heldAnchor(j)))
}

// heldAnchor is the name by which the page of the first of those ticks is found.
func heldAnchor(j *job.Joint) string { return "held " + j.Mark }

// heldTables are those ticks of the joints of a group, a table each time.
func heldTables(c *block.Composer, g []*job.Joint) []layout.Block {
	var held []*job.Joint
	for _, st := range c.Job.Steps() {
		for _, f := range st.Tighten {
			if !Held(f) || !slices.Contains(g, f.Joint) {
				continue
			}
			once := *f.Joint
			once.Place.Name = strings.TrimPrefix(once.Place.Name+" · "+st.No+", "+c.W.Step.ForNow, " · ")
			once.Rounds = []joint.Round{{Stage: -1, Kind: joint.Tighten, Setting: f.Held}}
			held = append(held, &once)
		}
	}
	if len(held) > 1 {
		if few := fewTable(c, held); !few.Empty() {
			return []layout.Block{heldAt(few, held...)}
		}
	}
	var out []layout.Block
	anchored := map[string]bool{}
	for _, j := range held {
		tables := ticks(c, j)
		tables[0] = layout.Above(1, placeLabel(c, j), tables[0])
		if !anchored[j.Mark] {
			tables[0] = heldAt(tables[0], j)
		}
		anchored[j.Mark] = true
		out = append(out, tables...)
	}
	return out
}

// heldAt names a block for each of some joints.
func heldAt(b layout.Block, joints ...*job.Joint) layout.Block {
	seen := map[string]bool{}
	for _, j := range joints {
		if !seen[j.Mark] {
			b = b.Anchored(heldAnchor(j))
		}
		seen[j.Mark] = true
	}
	return b
}

// placeLabel is what stands above the ticks of a joint at one place, or at one time.
func placeLabel(c *block.Composer, j *job.Joint) layout.Block {
	mark := c.Line(0, []layout.Run{{Text: j.Mark, Style: layout.Strong, Deco: layout.Boxed}}, layout.ParaOpts{Ref: j.At})
	return layout.Middle(2, mark, c.Words(layout.Strong, j.Place.Name))
}
