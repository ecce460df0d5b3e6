package proof

import (
	"slices"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
)

// The words of a step are done from the first to the last. Where they turn round what its keys
// say, a part is lifted on its bolts, or measured when it is off. What is looked for is English.
var (
	slackens = way{"loosen", "is slackened", []string{"slacken", "loosen", "undo", "unscrew", "unbolt", "take", "draw", "remove", "knock"}, []string{"out", "off", "loose"}}
	drawsUp  = way{"tighten", "is tightened", []string{"tighten", "torque"}, []string{"tight"}}
	measured = phrase.Words(`measure|read|try|gauge|feel`)
	// notInTurn are words of a sentence by which it is not done where it stands.
	notInTurn = phrase.Of(`(?i)\b(?:first|before|beforehand|already|after|when|once|until|till|again|still|not|never|no|if|bench|stays?|leave|by hand|stop button|for size)\b`)
	// heading are words of a sentence that tells beforehand what the next ones do.
	heading = phrase.Of(`(?i)\bto (?:take|lift|draw|pull|remove|slide|get)\b|\b(?:as follows|like this)\b`)
	// pushedTo are words of a sentence in which what is pulled stays on.
	pushedTo = phrase.Of(`(?i)\b(?:against|to and fro|its (?:stop|float|play)|back and forth|(?:weight|hold|care|load) of|by \d+(?: mm)?)\b`)
	triesIt  = phrase.Of(`(?i)\b(?:press(?:es)? (?:the |its |every )?start\b|try (?:to start|the start|it)\b)`)
	locksIt  = phrase.Of(`(?i)\b(?:lock|rack|isolat\w+|chain|shut|close[sd]?\b|pull the fuse|(?:open|pull) (?:the |its |both )?(?:main |[\w-]+ )?(?:breakers?|switch|isolator|disconnector|fuses?)|disconnect|(?:the |both |all )?(?:main )?fuses? out|(?:switch|handle|lever|breaker) to off|turn (?:it )?to off|switch(?:ed)? (?:it |the [\w-]+ )?off)`)
)

// checkBackwards warns of a step whose words take a part off before its fasteners are slack, put
// it on when they are tight, measure what they have taken off already, or try the start before
// anything is locked.
func (r *report) checkBackwards() {
	s := newSpeaker(r)
	told := map[source.Pos]bool{} // once for all places
	for _, st := range r.walk.Steps {
		if st.Undoes != nil || told[st.At] {
			continue
		}
		does := s.liftedOnBolts(st)
		if does == "" {
			does = s.tightBefore(st)
		}
		if does == "" {
			does = s.measuredOff(st)
		}
		if does == "" && len(st.Lock) > 0 {
			does = triedUnlocked(r.job.InEnglish(st.Do))
		}
		if does != "" {
			told[st.At] = true
			r.problems.Warn(st.At, "said-backwards", "the words of "+st.Name()+" "+does, "write first what is done first", "or say in the same sentence when it is done: the bolts are out before")
		}
	}
}

// at is where the words of a step say first that a part is moved in some way, with the sign that
// ends the clause; -1 where they do not. Of a clause that says it is done at another time nothing
// is told.
func (s *speaker) at(st *job.Step, p *job.Part, way way) (first, end int) {
	word, _ := s.called(p)
	if word == "" || !s.alone(p, word) {
		return -1, -1
	}
	said := s.said(st)
	for i, w := range said {
		if same(w, word) && s.movedBy(said, i, way) {
			end = i
			for end < len(said) && len(said[end]) > 1 {
				end++
			}
			return i, end
		}
	}
	return -1, -1
}

// liftedOnBolts says what a step takes off before its fasteners are slack, by its words.
func (s *speaker) liftedOnBolts(st *job.Step) string {
	for _, m := range st.Remove {
		off, end := s.at(st, m.Part, takes)
		if off < 0 || m.Part.Fastens() || s.heads(st, end) || s.staysOn(st, off) {
			continue
		}
		for _, f := range m.Part.Behind {
			if !f.Fastens() || !job.AnyOf(st.Remove, f) && !loosens(st, f) {
				continue
			}
			if slack, _ := s.at(st, f, slackens); slack > end && !s.speaksBefore(st, f, off) && s.inTurn(st, off, slack) {
				return "take " + m.Part.Called() + " off, and slacken " + f.Called() + " only then"
			}
		}
	}
	return ""
}

// tightBefore says what a step puts on when its fasteners are tight, by its words.
func (s *speaker) tightBefore(st *job.Step) string {
	for _, m := range st.Fit {
		on, _ := s.at(st, m.Part, puts)
		if on < 0 || m.Part.Fastens() {
			continue
		}
		for _, f := range m.Part.Behind {
			if tight, end := s.at(st, f, drawsUp); f.Fastens() && job.AnyOf(st.Fit, f) && tight >= 0 && on > end && s.inTurn(st, tight, on) {
				return "tighten " + f.Called() + ", and put " + m.Part.Called() + " on only then"
			}
		}
	}
	return ""
}

// measuredOff says what a step measures when its words have taken it off: of a step all of whose
// readings are lost by it.
func (s *speaker) measuredOff(st *job.Step) string {
	words := s.job.InEnglish(st.Do)
	if len(st.Measure) == 0 || len(measured.FindAllString(words, -1)) != 1 || slices.ContainsFunc(st.Measure, func(d *job.Dim) bool { return !slices.Contains(d.LostAt, st) }) {
		return ""
	}
	said := s.said(st)
	read := slices.IndexFunc(said, measured.MatchString)
	for _, m := range st.Remove {
		off, end := s.at(st, m.Part, takes)
		if off < 0 || read < end || s.heads(st, end) || s.staysOn(st, off) || !s.inTurn(st, off, read) {
			continue
		}
		for _, d := range st.Measure {
			if slices.Contains(d.FaceParts(), m.Part) {
				return "take " + m.Part.Called() + " off, and measure " + d.Mark + " on it only then"
			}
		}
	}
	return ""
}

// heads reports whether what ends at some sign is a heading of what stands behind it: take the
// cover off: slacken the nuts.
func (s *speaker) heads(st *job.Step, end int) bool {
	said := s.said(st)
	return end < len(said) && said[end] == ":"
}

// staysOn reports whether the sentence at some word only moves a part within its play.
func (s *speaker) staysOn(st *job.Step, at int) bool { return pushedTo.MatchString(s.sentence(st, at)) }

// inTurn reports whether the sentences at some words of a step are done where they stand.
func (s *speaker) inTurn(st *job.Step, at ...int) bool {
	return !slices.ContainsFunc(at, func(i int) bool {
		sentence := s.sentence(st, i)
		return notInTurn.MatchString(sentence) || heading.MatchString(sentence)
	})
}

// sentence is the one at some word of a step.
func (s *speaker) sentence(st *job.Step, at int) string {
	said := s.said(st)
	stop := func(w string) bool { return w == "." || w == ";" || w == ":" }
	from, to := at, at
	for from > 0 && !stop(said[from-1]) {
		from--
	}
	for to < len(said) && !stop(said[to]) {
		to++
	}
	return strings.Join(said[from:to], " ")
}

// speaksBefore reports whether the words of a step name a part before some place.
func (s *speaker) speaksBefore(st *job.Step, p *job.Part, at int) bool {
	word, _ := s.called(p)
	return slices.ContainsFunc(s.said(st)[:at], func(w string) bool { return same(w, word) })
}

// loosens reports whether a step loosens a part, by itself or by its joint.
func loosens(st *job.Step, p *job.Part) bool {
	return slices.ContainsFunc(st.Loosen, func(f job.Fastening) bool { return slices.Contains(f.Parts(), p) })
}

// triedUnlocked says that words try the start before anything is locked, empty where they do not.
func triedUnlocked(words string) string {
	words = noAnswer.ReplaceAllString(words, "")
	tries, locks := triesIt.FindAllStringIndex(words, -1), locksIt.FindAllStringIndex(words, -1)
	if len(tries) == 0 || len(locks) == 0 || tries[len(tries)-1][0] > locks[0][0] {
		return ""
	}
	for _, at := range [][]int{tries[len(tries)-1], locks[0]} {
		if notInTurn.MatchString(clause.FindString(words[:at[0]]) + words[at[0]:at[1]] + toEnd.FindString(words[at[1]:])) {
			return ""
		}
	}
	return "try the start, and lock the machine only then"
}

// noAnswer is what the start gives that is tried behind the locks, toEnd the rest of a sentence.
var (
	noAnswer = phrase.Of(`(?i)\(?\b(?:no answer|nothing (?:turns|starts|runs|moves|happens))\b\)?`)
	toEnd    = phrase.Of(`^[^.;:!?]*`)
)
