package expand

import (
	"slices"

	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/source"
)

// verbsOf lists the verbs of a step in the order in which they stand in the file.
func verbsOf(ds *def.Step) []job.Verb {
	type written struct {
		verb job.Verb
		at   source.Pos
	}
	var all []written
	add := func(v job.Verb, list []source.Text) {
		if len(list) > 0 {
			all = append(all, written{v, list[0].At})
		}
	}
	parts := func(v job.Verb, list []def.Count) {
		if len(list) > 0 {
			all = append(all, written{v, list[0].Part.At})
		}
	}
	flag := func(v job.Verb, t source.Text) {
		if t.Value == "yes" {
			all = append(all, written{v, t.At})
		}
	}
	add(job.DoLock, ds.Lock)
	add(job.DoUnlock, ds.Unlock)
	add(job.DoUnlockForNow, ds.UnlockForNow)
	add(job.DoLockAgain, ds.LockAgain)
	if len(ds.MatchMarks) > 0 {
		all = append(all, written{job.DoMark, ds.MatchMarks[0].Part.At})
	}
	add(job.DoStack, ds.Stacks)
	add(job.DoMeasure, ds.Measure)
	add(job.DoJudge, ds.Judge)
	add(job.DoSee, ds.Seen)
	add(job.DoOpen, ds.Open)
	add(job.DoLoosen, ds.Loosen)
	add(job.DoHeat, ds.Heat)
	add(job.DoLift, ds.Lift)
	if len(ds.Lift) == 0 && ds.OnHook.Value != "" {
		all = append(all, written{job.DoLift, ds.OnHook.At})
	}
	add(job.DoLeaveOut, ds.LeftOut)
	add(job.DoTighten, ds.Tighten)
	add(job.DoSet, ds.Set)
	add(job.DoClose, ds.Close)
	add(job.DoHandBack, ds.HandBack)
	parts(job.DoTakeOut, ds.TakeOut)
	parts(job.DoRemove, ds.Remove)
	parts(job.DoFit, ds.Fit)
	parts(job.DoFitForNow, ds.ForNow)
	flag(job.DoCountTools, ds.ToolCount)
	flag(job.DoCountAll, ds.CountAll)
	slices.SortStableFunc(all, func(a, b written) int {
		switch {
		case a.at.Before(b.at):
			return -1
		case b.at.Before(a.at):
			return 1
		}
		return 0
	})
	out := make([]job.Verb, len(all))
	for i, w := range all {
		out[i] = w.verb
	}
	return out
}
