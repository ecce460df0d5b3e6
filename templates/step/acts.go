package step

import (
	"slices"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/alignsheet"
	"matchmark/templates/block"
	"matchmark/templates/dimension"
	"matchmark/templates/heatsheet"
	"matchmark/templates/jointsheet"
	"matchmark/templates/liftsheet"
)

// A run is what one or more verbs of a step print: lines, which stand beside the boxes
// for initials or below each other, or blocks with boxes of their own. A step prints
// its runs in the order in which its author wrote the verbs, for the mechanic works
// down the page.
type run struct {
	lines  func(width layout.Mm) []layout.Block
	blocks []layout.Block
	reason bool                                 // the last block is the row that asks why readings were not taken
	at     int                                  // the place of its verb in the order of the step
	last   bool                                 // a reading that this step takes away for good is among the blocks
	until  int                                  // the place of the act that takes it away
	ruled  bool                                 // the lines are the rows of a ruled table
	guards bool                                 // the lines are boxes to tick, each with its own words
	parted []func() [2]run                      // ways to part that table: what stands above, and the rest
	ticks  bool                                 // the blocks are boxes to tick in a row
	noted  func(*block.Composer) []layout.Block // sets the blocks in another width
}

// runs are all runs of a step in the order of its acts. What stands in the head of the
// step, the hold that ends it and the containers that must be empty are not among them.
// The box for readings that were not taken may stand elsewhere.
func runs(c *block.Composer, st *job.Step, elsewhere bool) []run {
	var out []run
	order, away := orderOf(st)
	at := 0
	again := againAt(st, order)
	tried, after := setInTwo(st, order)
	noted := noted(c, st)
	note := func(now bool) {
		if now && len(noted) > 0 {
			out = append(out, run{at: at, blocks: noted, ticks: (st.Undoes != nil || st.Back) && len(st.Marks) == 0})
			noted = nil
		}
	}
	if len(st.Align) > 0 {
		out = append(out, run{lines: func(width layout.Mm) []layout.Block { return alignsheet.Lines(c, st, width) }})
	}
	for i, v := range order {
		at = i
		back := st.Undoes != nil || st.Back
		if i == again {
			out = append(out, run{at: at, blocks: []layout.Block{loopBlock(c, st)}})
		}
		note(!back && (v == job.DoRemove || (v == job.DoFitForNow && away) || (v == job.DoMark && len(st.Marks) > 0) || (v == job.DoStack && len(st.Stacks) > 0)))
		if v == job.DoTighten {
			orders, all := jointOrders(c, st)
			if len(orders) > 0 {
				out = append(out, run{at: at, blocks: orders})
			}
			if all {
				continue
			}
		}
		if v == job.DoSet && len(after) > 0 {
			out = append(out, setRun(c, st, tried, at, elsewhere), run{at: at, blocks: []layout.Block{loopBlock(c, st)}}, setRun(c, st, after, at, elsewhere))
			again = -1
			continue
		}
		if r := runOf(c, st, v, elsewhere); r.lines != nil || len(r.blocks) > 0 {
			r.at = at
			if r.last {
				r.until = lostAt(st, order)
			}
			out = append(out, r)
		}
		note(back && v == job.DoFit && len(st.Fit) > 0)
		if blocks := laid(c, st); laysAt(v, st) && len(blocks) > 0 {
			out = append(out, run{at: at, blocks: blocks, ticks: true})
		}
	}
	at = len(order)
	note(true)
	if again == len(order) {
		out = append(out, run{at: at, blocks: []layout.Block{loopBlock(c, st)}})
	}
	return out
}

// orderOf is the order in which the acts of a step are printed, and whether what comes off is
// put away later than its verb stands.
func orderOf(st *job.Step) ([]job.Verb, bool) {
	order, away := putAway(st)
	return withLeftBehind(st, withClosing(st, order)), away
}

// putAway is the order of a step in print, and whether it differs from that of its verbs:
// where all that comes off goes on again for a reading, as a cap for the strip below it, what
// it goes into stands below its coming out, for it is not put away before, and below what is
// read there when it is out, as the strip on the pin.
func putAway(st *job.Step) ([]job.Verb, bool) {
	order := st.VerbOrder()
	off, out := slices.Index(order, job.DoRemove), slices.Index(order, job.DoTakeOut)
	if len(st.Remove) == 0 || len(st.TakeOut) == 0 || out < off {
		return order, false
	}
	for _, m := range st.Remove {
		if !slices.ContainsFunc(st.ForNow, func(x *job.Move) bool { return x.Part == m.Part }) {
			return order, false
		}
	}
	if out+1 < len(order) && order[out+1] == job.DoMeasure {
		out++
	}
	return slices.Insert(slices.Delete(order, off, off+1), out, job.DoRemove), true
}

// lostAt is the place, in the order of a step, of the last act that takes away a reading
// that is measured at it.
func lostAt(st *job.Step, order []job.Verb) int {
	at := 0
	for _, d := range st.Measure {
		if d.LastChance == st {
			at = max(at, slices.Index(order, d.LostVerb))
		}
	}
	return at
}

// jointOrders are the drawings of the joints that a step tightens, in the column of the
// boxes; whether the lines of what is tightened all stand beside them.
func jointOrders(c *block.Composer, st *job.Step) (out []layout.Block, all bool) {
	lines := func(width layout.Mm) []layout.Block { return tightenLines(c, st, width) }
	width := c.Span - block.NumberWidth
	rows, all := jointsheet.Orders(c, st, width, lines, stagesApart(c, st))
	if all {
		alone, _ := jointsheet.Orders(c, st, width, nil, nil)
		below := linesBelow(c, []run{{lines: lines}})
		if layout.Above(1, alone...).H+Height(below) < layout.Above(1, rows...).H {
			rows, all = alone, false
		}
	}
	for _, b := range rows {
		out = append(out, b.At(block.NumberWidth, 0))
	}
	return out, all
}

// runOf is what a step prints for one verb, empty if it does not use it.
func runOf(c *block.Composer, st *job.Step, v job.Verb, elsewhere bool) run {
	var blocks []layout.Block
	last, row := false, false
	switch v {
	case job.DoMeasure:
		blocks, row = dimension.Blocks(c, st.Measure, dimension.Found, st.At, elsewhere)
		for _, d := range st.Measure {
			last = last || d.LastChance == st
		}
	case job.DoSet:
		blocks, row = dimension.Blocks(c, st.Set, dimension.Left, st.At, elsewhere)
	case job.DoRecall:
		blocks, row = dimension.Blocks(c, st.Recall, dimension.Recall, st.At, elsewhere)
	case job.DoJudge:
		blocks = judged(c, st)
	default:
		return linesOf(c, st, v)
	}
	return run{blocks: blocks, last: last, reason: row}
}

// linesOf are the lines of a step for one verb.
func linesOf(c *block.Composer, st *job.Step, v job.Verb) run {
	lines := func(of func(*block.Composer, *job.Step, layout.Mm) []layout.Block) run {
		return inWidths(func(width layout.Mm) []layout.Block { return of(c, st, width) })
	}
	var r run
	switch v {
	case job.DoPermit, job.DoLock, job.DoUnlock, job.DoUnlockForNow, job.DoLockAgain, job.DoSee, job.DoHandBack, job.DoCountAll, job.DoOpen, job.DoClose:
		r = lines(guardLines[v])
		r.guards = v != job.DoUnlockForNow || len(st.OpenMeanwhile)+len(st.OffMeanwhile) == 0
	case job.DoCountTools:
		r = lines(toolLines)
	case doLeftBehind:
		r = lines(outLines(st.LeftBehind))
		r.guards = true
	case doFromUnder:
		r = lines(outLines(st.FromUnder))
		r.guards = true
	case doSeeClean, doShut:
		r = lines(func(c *block.Composer, st *job.Step, width layout.Mm) []layout.Block {
			return coveredLines(c, st, v, width)
		})
	case job.DoLoosen:
		r = lines(loosenLines)
	case job.DoTighten:
		r = lines(tightenLines)
	case job.DoTakeOut, job.DoFitForNow, job.DoLeaveOut:
		r = lines(func(c *block.Composer, st *job.Step, width layout.Mm) []layout.Block {
			return forNowLines(c, st, v, width)
		})
	case job.DoHeat:
		r = lines(heatsheet.Lines)
	case job.DoLift:
		r = lines(liftsheet.Lines)
	case job.DoRemove:
		r = removalRun(c, st)
	case job.DoFit:
		r = fitRun(c, st)
	default:
		return run{}
	}
	if len(r.lines(c.Span)) == 0 {
		return run{}
	}
	return r
}

// inWidths is a run of lines, of which several widths are tried, each more than once; they are
// not written to.
func inWidths(of func(width layout.Mm) []layout.Block) run {
	set := map[layout.Mm][]layout.Block{}
	return run{lines: func(width layout.Mm) []layout.Block {
		lines, known := set[width]
		if !known {
			lines = slices.Clip(of(width))
			set[width] = lines
		}
		return lines
	}}
}

// inRow counts the runs at the head of a step that are lines: they stand in its row.
func inRow(rs []run) int {
	n := 0
	for n < len(rs) && rs[n].lines != nil {
		n++
	}
	return n
}

// fewReadings is up to how many readings share the box in the row of their step for why
// one was not taken. What is worked out from others by hand is left empty for their reason.
const fewReadings = 4

// taken is how many of some readings are taken, not worked out by hand.
func taken(dims []*job.Dim) (n int) {
	for _, d := range dims {
		if d.Formula == nil {
			n++
		}
	}
	return n
}

// reasonHasRoom reports whether the row of a step has room for the box for readings not taken:
// below initials and time, where nothing else stands.
func reasonHasRoom(st *job.Step) bool {
	n := 0
	for _, r := range readingsOf(st) {
		n += taken(dimension.Written(r.dims, r.kind))
	}
	return st.Check == "" && !st.Photo && n <= fewReadings
}

// asksReason reports whether readings of a step need that room.
func asksReason(c *block.Composer, st *job.Step) bool {
	return slices.ContainsFunc(readingsOf(st), func(r readings) bool { return dimension.AsksReason(c, r.dims, r.kind, st.At) })
}

// readings are those that a step takes at one of their uses.
type readings struct {
	dims []*job.Dim
	kind dimension.Kind
}

func readingsOf(st *job.Step) []readings {
	out := []readings{{st.Measure, dimension.Found}, {st.Recall, dimension.Recall}}
	order, _ := orderOf(st)
	tried, after := setInTwo(st, order)
	out = append(out, readings{tried, dimension.Left})
	if len(after) > 0 {
		out = append(out, readings{after, dimension.Left})
	}
	return out
}
