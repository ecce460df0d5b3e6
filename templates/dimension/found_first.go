package dimension

import (
	"matchmark/layout"
	"matchmark/packs/job"
)

// foundFirst are the pieces of a limit and the boxes behind them, of a reading whose ends are
// worked out from the value found with that value before them: it is copied, then reckoned with.
func (k content) foundFirst(e entry, limit, boxes []layout.Block, before bool, width layout.Mm) (first, rest []layout.Block) {
	if e.d.Positions.Kind != job.Single || !e.sides[0].Copied || !needsFound(e.d) {
		return limit, boxes
	}
	text := len(limit) - len(k.limitOf(e.d, before).boxesIn(width))
	if text == len(limit) {
		return limit, boxes
	}
	first = append(limit[:text:text], boxes[0])
	return append(first, limit[text:]...), boxes[1:]
}
