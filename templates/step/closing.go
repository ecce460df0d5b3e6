package step

import (
	"slices"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// Verbs of print alone: where what covers an opening goes on at the step that closes it, it is
// seen clean before that, and closed when all of it is on and tight.
const (
	doSeeClean job.Verb = -1 - iota
	doShut
	doFromUnder  // what was put under a load comes out, before a step lets it down that does not make its lift
	doLeftBehind // what was put under a load comes out, when the load stands elsewhere and is seen to
)

// withClosing puts the two verbs of print into the order of a step that covers what it closes.
func withClosing(st *job.Step, order []job.Verb) []job.Verb {
	covers := func(o *job.Opening) bool { return o.CoveredBy(st) }
	if !slices.ContainsFunc(st.Close, covers) && len(st.Shut) == 0 {
		return order
	}
	clean, shut := len(order), 0
	for i, v := range order {
		switch {
		case v == job.DoLift && len(st.Lifts) > 0, v == job.DoHeat && len(st.Heats) > 0, v == job.DoFit && (len(st.Fit) > 0 || len(st.Lifts) == 0):
			clean = min(clean, i)
			shut = i + 1
		case v == job.DoTighten && len(st.Tighten) > 0:
			shut = i + 1
		case v == job.DoClose && len(st.Close) > 0:
			clean, shut = min(clean, i), max(shut, i+1)
		}
	}
	order = slices.Insert(slices.Clone(order), shut, doShut)
	return slices.Insert(order, clean, doSeeClean)
}

// withLeftBehind puts what was put under a load that is carried away below all that is done and
// seen while it hangs: ticked in order, nobody's hands go under it.
func withLeftBehind(st *job.Step, order []job.Verb) []job.Verb {
	if len(st.FromUnder) > 0 && len(st.GoesOn) == 0 {
		order = slices.Insert(slices.Clone(order), 0, doFromUnder)
	}
	if len(st.LeftBehind) == 0 {
		return order
	}
	at := 0
	for i, v := range order {
		if v == job.DoLift || len(st.GoesOn) == 0 && slices.Contains(underHook, v) || v == job.DoRemove && len(st.Remove) > 0 || v == job.DoTakeOut && len(st.TakeOut) > 0 || v == job.DoSee && len(st.Seen) > 0 {
			at = i + 1
		}
	}
	return slices.Insert(slices.Clone(order), at, doLeftBehind)
}

// underHook is what is done to a load of no lift while it hangs.
var underHook = []job.Verb{job.DoHeat, job.DoLoosen, job.DoRemove, job.DoFit, job.DoTighten, job.DoMeasure, job.DoSet}

// outLines are the box to tick for what comes out from under a load.
func outLines(list []string) func(*block.Composer, *job.Step, layout.Mm) []layout.Block {
	return func(c *block.Composer, st *job.Step, width layout.Mm) []layout.Block {
		return []layout.Block{guardTick(c, st, c.W.Guard.FromUnder.With(strings.Join(list, c.W.Common.Semicolon)), width)}
	}
}

// closeLines are the boxes to tick for the openings that a step closes without a cover.
func closeLines(c *block.Composer, st *job.Step, width layout.Mm) []layout.Block {
	list := slices.DeleteFunc(slices.Clone(st.Close), func(o *job.Opening) bool { return o.CoveredBy(st) })
	return closedAt(list, guardTicks(c, st, width, list, func(o *job.Opening) string {
		return c.W.Step.CloseLine.With(openingName(o), c.Page("opening "+o.Mark()))
	}))
}

// ClosedAnchor is the name by which the page is found of the tick that an opening is closed: a
// step may go on, on the page after that on which it begins.
func ClosedAnchor(o *job.Opening) string { return "closed " + o.Mark() }

// closedAt names the ticks of openings that are closed.
func closedAt(list []*job.Opening, ticks []layout.Block) []layout.Block {
	for i, o := range list {
		ticks[i] = ticks[i].Anchored(ClosedAnchor(o))
	}
	return ticks
}

// coveredLines are the boxes to tick for those that it covers: seen clean before, or closed, which
// what hangs over them does only where it comes to stand.
func coveredLines(c *block.Composer, st *job.Step, v job.Verb, width layout.Mm) []layout.Block {
	list := slices.DeleteFunc(slices.Clone(st.Close), func(o *job.Opening) bool {
		return !o.CoveredBy(st) || v == doShut && o.ShutAt != nil
	})
	if v == doShut {
		list = append(list, st.Shut...)
	}
	ticks := guardTicks(c, st, width, list, func(o *job.Opening) string {
		if v == doSeeClean {
			return c.W.Step.CleanLine.With(openingName(o))
		}
		return c.W.Step.ShutLine.With(openingName(o), c.Page("opening "+o.Mark()))
	})
	if v == doSeeClean {
		return ticks
	}
	return closedAt(list, ticks)
}
