package jointsheet

import (
	"slices"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/joint"
	"matchmark/templates/block"
)

// eachTime gives the joints of a group once for each step that tightens them, with the
// number of the step behind the name of their place: the ticks of a trial fitting cannot
// say that a joint is tight in the end. Where it is only held for now, with less,
// it has its own (heldTables).
func eachTime(jb *job.Job, g []*job.Joint) []*job.Joint {
	var out []*job.Joint
	for _, j := range g {
		tight, _ := turnedAt(jb, []*job.Joint{j})
		tight = slices.DeleteFunc(slices.Clone(tight), func(st *job.Step) bool {
			return slices.ContainsFunc(st.Tighten, func(f job.Fastening) bool { return f.Joint == j && f.Held != nil })
		})
		if len(tight) < 2 {
			out = append(out, triedAgain(j, tight))
			continue
		}
		for _, st := range tight {
			once := *triedAgain(j, []*job.Step{st})
			once.Place.Name = strings.TrimPrefix(j.Place.Name+" · "+st.No, " · ")
			out = append(out, &once)
		}
	}
	return out
}

// triedAgain is a joint with the last round once more for each further try of the step that
// tightens it over and over, until no bolt moves: in one row of ticks nobody sees which
// round they are of. They stand before what comes again hours later.
func triedAgain(j *job.Joint, at []*job.Step) *job.Joint {
	if len(at) != 1 || !goesRoundAgain(at[0]) {
		return j
	}
	rounds := roundsOf(j)
	later := slices.IndexFunc(rounds, func(r joint.Round) bool { return r.Kind == joint.AgainAfter || r.Kind == joint.AgainRunning })
	if later < 0 {
		later = len(rounds)
	}
	if later == 0 || rounds[later-1].Setting == nil {
		return j // turned on by an angle or slackened: done again it is not the same again
	}
	var tries []joint.Round
	for n := 1; n < at[0].Tries; n++ {
		tries = append(tries, joint.Round{Stage: -1, Kind: joint.FurtherTry, Setting: rounds[later-1].Setting, Repeat: n})
	}
	more := *j
	more.Rounds = slices.Insert(slices.Clone(rounds), later, tries...)
	return &more
}

// goesRoundAgain reports whether a further try of a step is one more round of its joints: it
// ends with what is asked in words, not with a reading, which something else may set, and
// says nothing else that a try does. The joints that it does say have their ticks there.
func goesRoundAgain(st *job.Step) bool {
	return st.Until != nil && st.Until.Dim == nil && len(st.EachTry) == 0
}

// sameRounds reports whether joints have one number of rounds, which is not so where the step of
// one place alone goes round again: one table for all places asks of each what it asks of the first.
func sameRounds(g []*job.Joint) bool {
	return !slices.ContainsFunc(g, func(j *job.Joint) bool { return len(roundsOf(j)) != len(roundsOf(g[0])) })
}

// againAt says in which steps a further try tightens some joints once more, where each
// try has its tick; empty for none.
func againAt(c *block.Composer, g []*job.Joint) string {
	var at []string
	for _, st := range c.Job.Steps() {
		if slices.ContainsFunc(st.EachTry, func(a job.TryAct) bool { return a.Joint != nil && slices.Contains(g, a.Joint) }) {
			at = append(at, c.W.Common.StepPage.With(st.No, c.Page("step "+st.No)))
		}
	}
	if len(at) == 0 {
		return ""
	}
	return c.W.Tightening.AgainAt.With(strings.Join(at, ", "))
}

// TurnAnchor is the name by which the page is found on which a step turns a joint.
func TurnAnchor(j *job.Joint, st *job.Step) string { return "turn " + j.Mark + " " + st.No }

// turnedRefs lists steps that turn joints of a group, with the pages on which they do.
func turnedRefs(c *block.Composer, g []*job.Joint, list []*job.Step) string {
	var out []string
	for _, st := range list {
		page := ""
		for _, j := range g {
			if page == "" && (turns(st.Tighten, []*job.Joint{j}) || turns(st.Loosen, []*job.Joint{j})) {
				page = c.PageOr(TurnAnchor(j, st), "step "+st.No)
			}
		}
		out = append(out, c.W.Common.StepPage.With(st.No, page))
	}
	return strings.Join(out, ", ")
}

// turnedAt are the steps that tighten some joints, and those that loosen them, in their
// order.
func turnedAt(jb *job.Job, g []*job.Joint) (tight, loose []*job.Step) {
	for _, st := range jb.Steps() {
		if turns(st.Tighten, g) {
			tight = append(tight, st)
		}
		if turns(st.Loosen, g) {
			loose = append(loose, st)
		}
	}
	return tight, loose
}
