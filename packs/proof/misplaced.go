package proof

import (
	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
)

// A deed is a verb with the English words by which a mechanic is told of it: those that
// can mean nothing else, and all by which a step may tell of it.
type deed struct {
	key         string
	keyed       func(*job.Job) bool // whether a step that tells of it has the key; nil if it may go without
	done        func(*job.Step) bool
	plain, told *phrase.Pattern
}

func words(list string) *phrase.Pattern { return phrase.Of(`(?i)\b(` + list + `)`) }

// deeds are the verbs that words tell well enough to be looked for. What is measured is
// told in too many words; a step that says measure and has no box is told by the law of
// the words.
var deeds = []deed{
	{"loosen", nil, func(s *job.Step) bool { return len(s.Loosen) > 0 }, words("slacken|loosen"), words(`slack|loos|unscrew|undo|back|knock|take|draw|\w+ (off|out)\b`)},
	{"tighten", nil, func(s *job.Step) bool { return len(s.Tighten) > 0 }, words("tighten|torque"), words(`tight|torque|run|draw|bend|\d+ ?(N|lb)|round|up\b|on\b|in\b|home`)},
	{"match-marks", nil, func(s *job.Step) bool { return len(s.Marks) > 0 }, words("mark|punch|chalk|scribe"), words("mark|punch|chalk|scribe|number|paint|line")},
	{"match-marks", func(*job.Job) bool { return true }, func(s *job.Step) bool { return len(s.Marks)+len(s.Meet) > 0 },
		phrase.Of(`(?i)(?:^|[.;:,]\s*|\b(?:and|then|both|first)\s+)match[- ]?mark\s`), words("mark|punch|chalk|scribe|number|paint|line")},
	{"tool-count", func(j *job.Job) bool { return len(j.Openings) > 0 }, func(s *job.Step) bool { return s.ToolCount }, words("count tools|tools? count|count the tools|tools and"), words("tools?|count")},
	{"count-all", func(j *job.Job) bool { return len(j.Containers) > 0 }, func(s *job.Step) bool { return s.CountAll }, words("count with|count every|every container"), words("count|container")},
	{"lock", func(j *job.Job) bool { return len(j.Isolations) > 0 }, func(s *job.Step) bool { return len(s.Lock) > 0 }, words(`lock out|lock the (\w+ ){1,3}out\b|lock (the )?(breaker|isolator|disconnect|switch|battery|supply)|isolate|rack(ed)? (it |(the )?breaker ([\w-]+ )?)?out\b`), words("lock|isolate|rack|tag|close|blank|cut|pin|open")},
	{"unlock", func(j *job.Job) bool { return len(j.Isolations) > 0 }, func(s *job.Step) bool { return len(s.Unlock)+len(s.UnlockForNow) > 0 }, words(`locks? (and tags? )?off\b|tags? and locks? off\b`), words("locks?|unlock|open|blank|tags?")},
}

// checkMisplaced warns of a verb that stands at one step, whose words do not tell of it,
// while the step beside it tells of it and has nothing of the kind.
func (r *report) checkMisplaced() {
	told := map[source.Pos]bool{} // once for all places
	for i, st := range r.walk.Steps {
		for _, d := range deeds {
			if st.Undoes != nil || told[st.At] || !d.done(st) || d.told.MatchString(r.job.InEnglish(st.Do)) {
				continue
			}
			for _, k := range []int{i - 1, i + 1} {
				if k < 0 || k >= len(r.walk.Steps) {
					continue
				}
				t := r.walk.Steps[k]
				if t.Undoes != nil || t.At == st.At || d.done(t) || t.Back != st.Back || !d.plain.MatchString(r.job.InEnglish(t.Do)) {
					continue
				}
				told[st.At] = true
				r.problems.WarnWith(st.At, "said-elsewhere", d.key+": stands at "+st.Name()+", whose words do not tell of it; those of "+t.Name()+" do", t.At, "told here",
					d.key+": at "+t.No, "or say at "+st.No+" what is done")
				break
			}
		}
	}
}

// checkSaidNotDone warns of a step whose words tell of something that has a key of its own,
// and that has not got it: what is written in words alone is proved by nothing.
func (r *report) checkSaidNotDone() {
	for _, d := range deeds {
		if d.keyed == nil || !d.keyed(r.job) {
			continue
		}
		for _, st := range r.walk.Steps {
			if st.Undoes == nil && !d.done(st) && !st.Locks() && d.plain.MatchString(r.job.InEnglish(st.Do)) {
				r.problems.Warn(st.At, "said-not-done", "the words of "+st.Name()+" tell of "+d.key+":, and the step has no such key", d.key+": at this step", "or say it in other words")
			}
		}
	}
}
