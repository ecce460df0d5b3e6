package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/walk"
)

// forLifting finds the words by which a permit is known as one for lifts.
var forLifting = phrase.Of(`(?i)lift|hoist|crane|rigging`)

// forOther are the words of a permit for hot work or for going in, and forAll, when these are
// taken out, those of one for all work, of which such words tell what it allows as well.
var (
	forOther     = phrase.Of(`(?i)\bhot[- ]?work|\bflame|\bentry|\bconfined`)
	workOfOthers = phrase.Of(`(?i)\bhot[- ]?work\w*|\b(flame|entry|confined)\w*([- ]\pL+)?[- ]work\w*|\bwork\w* (in|inside|with) ((a|the|any) )?(confined|flame)\w*`)
	forAll       = phrase.Of(`(?i)\b(work|general|dismantl\w*|cranes?|cranage|PTW)\b`)
)

// isForLifting reports whether a permit is one for lifts: by what its author says of it, else by
// its key or its words.
func (r *report) isForLifting(p *job.Permit) bool {
	if allows, said := p.Allows(job.ForLifting); said {
		return allows
	}
	return forLifting.MatchString(p.Key + " " + r.job.InEnglish(p.What))
}

// checkLiftPermit sees that where some lifts of a job are made on a permit, all are: a
// permit that says it is for lifting, and that most of its steps ask for because they lift.
// The same load goes both ways on it.
// That of an entry or of hot work beside a lift is none. What people lift by hand needs
// none, and a step may say that it goes without.
func (r *report) checkLiftPermit() {
	for _, p := range r.job.Permits {
		asked := r.walk.AskedFor(p)
		var lifting []*job.Step
		for _, e := range asked {
			if r.hoists(e.Step) != nil {
				lifting = append(lifting, e.Step)
			}
		}
		if !r.isForLifting(p) || len(lifting) == 0 || 2*len(lifting) <= len(asked) {
			continue
		}
		for _, st := range r.walk.Steps {
			l := r.hoists(st)
			if l == nil || r.goesOnPermit(st) || len(lifting) == 1 && l != r.hoists(lifting[0]) {
				continue // one alone may be the critical one
			}
			r.problems.AddWith(st.At, "no-lift-permit", "step "+st.Name()+" makes the lift "+l.Mark+" without a permit; other lifts are made on the permit "+p.Key, lifting[0].At, "asked for here", "permit: ["+p.Key+"] at this step")
		}
	}
}

// goesOnPermit reports whether a step asks for a permit, or says that it goes without.
func (r *report) goesOnPermit(st *job.Step) bool {
	return r.walk.Find(st, func(e *walk.Event) bool { return e.Verb == job.DoPermit && !r.isForOther(e.Permit) }) != nil ||
		slices.ContainsFunc(st.Without, func(w job.Without) bool { return w.Guard == job.GuardPermit })
}

// isForOther reports whether a permit is one for hot work or an entry alone: nobody lifts on it.
func (r *report) isForOther(p *job.Permit) bool {
	if _, said := p.Allows(job.ForLifting); said {
		return !r.isForLifting(p)
	}
	words := p.Key + " " + r.job.InEnglish(p.What)
	return forOther.MatchString(words) && !r.isForLifting(p) && !forAll.MatchString(workOfOthers.ReplaceAllString(words, ""))
}

// hoists is the first lift that a step makes with a hook, nil if it makes none.
func (r *report) hoists(st *job.Step) *job.Lift {
	if e := r.walk.Find(st, func(e *walk.Event) bool { return e.Verb == job.DoLift && !e.Lift.ByHand }); e != nil {
		return e.Lift
	}
	return nil
}
