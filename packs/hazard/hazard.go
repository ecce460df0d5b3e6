// Package hazard puts the usual hazard notes before the steps that call for them:
// by what a step does, and by words that its text uses.
package hazard

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
)

// A builtin is a hazard note that the program brings along, with what makes it
// stand before a step: what the step does (does), or words that its text uses.
type builtin struct {
	job.Caution
	offOnly bool            // only before steps that take apart
	words   *phrase.Pattern // in the text of the step; nil if none tell it
	unlike  *phrase.Pattern // in a clause of that text that speaks of something else
	does    func(*job.Job, *job.Step) bool
}

// Notes are the notes that the program brings along.
func Notes() []*job.Caution {
	var out []*job.Caution
	for _, n := range builtins {
		c := n.Caution
		c.Builtin = true
		out = append(out, &c)
	}
	return out
}

// Attach puts before each step, besides the notes that it names, those
// that what it does calls for; then it sorts them, the worst first.
func Attach(j *job.Job) source.Problems {
	var problems source.Problems
	notes := map[string]*job.Caution{}
	for _, c := range j.Notes {
		notes[c.Key] = c
	}
	said := map[string][]bool{} // which notes the words of a step call for; at like places they are the same
	for _, s := range j.Sections {
		for _, st := range s.Steps {
			spared := spared(j, st, &problems)
			text := j.InEnglish(st.Do)
			if said[text] == nil {
				said[text] = calledFor(text)
			}
			for i, n := range builtins {
				c := notes[n.Key]
				if said[text][i] && !slices.Contains(st.Said, c) {
					st.Said = append(st.Said, c)
				}
				if n.meets(j, st, said[text][i]) && !slices.Contains(st.Cautions, c) && !spared[n.Key] {
					c.Steps = append(c.Steps, st)
					st.Cautions = append(st.Cautions, c)
				}
			}
			sayUnder(notes, st)
			slices.SortStableFunc(st.Cautions, func(x, y *job.Caution) int { return rank(x) - rank(y) })
		}
	}
	tellOnce(notes)
	for _, n := range builtins {
		if c := notes[n.Key]; c.Builtin && len(c.Steps) > 0 {
			j.Cautions = append(j.Cautions, c)
		}
	}
	slices.SortStableFunc(j.Cautions, func(x, y *job.Caution) int { return rank(x) - rank(y) })
	for _, c := range j.Cautions {
		slices.SortStableFunc(c.Steps, func(x, y *job.Step) int { return x.Index - y.Index })
	}
	return problems
}

// rank orders signal words, the worst first.
func rank(c *job.Caution) int {
	return slices.Index([]string{"danger", "warning", "caution", "notice"}, c.Signal)
}

// calledFor tells for each built-in note whether a text says what it warns of.
func calledFor(text string) []bool {
	out := make([]bool, len(builtins))
	for i, n := range builtins {
		out[i] = n.words != nil && n.words.MatchString(text) && (n.unlike == nil || n.words.MatchString(n.besides(text)))
	}
	return out
}

// meets reports whether a step says or does what a built-in note warns of.
func (n *builtin) meets(j *job.Job, st *job.Step, said bool) bool {
	if n.offOnly && st.Back {
		return false
	}
	return said || n.does != nil && n.does(j, st)
}

// kept are the notes that no author can leave out.
var kept = []string{"lockout", "unlocking", job.ConfinedSpace, hanging, propUnder, "lifting", "propped", job.HotWork, "heating"}

// spared reads which built-in notes the author leaves out of a step, and why.
func spared(j *job.Job, st *job.Step, problems *source.Problems) map[string]bool {
	from := st
	if st.Undoes != nil {
		from = st.Undoes
	}
	out := map[string]bool{}
	for _, n := range from.NoCaution {
		if slices.Contains(kept, n.Caution.Key) {
			problems.Add(n.At, "caution-kept", "the caution "+source.Quote(n.Caution.Key)+" cannot be left out",
				"word the step otherwise if it does nothing of the kind: it stands by what the step says or does")
			continue
		}
		out[n.Caution.Key] = true
		if from == st {
			j.Spared = append(j.Spared, &job.Spared{At: n.At, Note: n.Caution, Step: st, Reason: n.Reason})
		}
	}
	return out
}

// onHook reports whether a step makes a lift with a crane, or moves a part that is
// too heavy to be lifted by hand without saying how many people it takes.
func onHook(j *job.Job, st *job.Step) bool {
	hook := func(l *job.Lift) bool { return !l.ByHand }
	return slices.ContainsFunc(st.Lifts, hook) || st.OnHook != "" || st.People < 2 && len(st.Lifts) == 0 && movesHeavy(j, st)
}

// heldForBolts reports whether a heavy part hangs on the hook while its bolts go out or in:
// hands are at it as long as that takes.
func heldForBolts(j *job.Job, st *job.Step) bool {
	return st.OnHook != "" && len(st.Loosen)+len(st.Tighten) > 0 && movesHeavy(j, st)
}

// byHand reports whether a step has several people lift a part: one that is heavy, or whose
// mass nobody told, for why else would it take two.
func byHand(j *job.Job, st *job.Step) bool {
	hand := func(l *job.Lift) bool { return l.ByHand }
	return slices.ContainsFunc(st.Lifts, hand) || st.OnHook == "" && st.People >= 2 && len(st.Lifts) == 0 && (movesHeavy(j, st) || movesUnweighed(j, st))
}

// movesUnweighed reports whether a step takes off or puts back a part, no fastener, of
// which no mass is told.
func movesUnweighed(j *job.Job, st *job.Step) bool {
	return slices.ContainsFunc(slices.Concat(st.Remove, st.Fit), func(m *job.Move) bool {
		return !m.Part.Fastens() && len(m.Part.Joints) == 0 && m.Part.Weighs(j.Parts) == nil
	})
}

// takesOff reports whether a step takes off a part with such a name.
func takesOff(j *job.Job, st *job.Step, name *phrase.Pattern) bool {
	return slices.ContainsFunc(st.Remove, func(m *job.Move) bool { return name.MatchString(j.InEnglish(m.Part.Name)) })
}

// movesHeavy reports whether a step takes off or puts back a part above the site's
// heavy mass.
func movesHeavy(j *job.Job, st *job.Step) bool {
	return slices.ContainsFunc(append(slices.Clone(st.Remove), st.Fit...), func(m *job.Move) bool {
		may, known := j.Site.OneLifts(m.Part.Weighs(j.Parts))
		return known && !may
	})
}

// frees reports whether a step takes off, slackens or puts back a part that holds
// back a spring, pressure or a weight. There is no pressure yet in putting back.
func frees(j *job.Job, st *job.Step, what string) bool {
	moved := func(m *job.Move) bool { return m.Part.Holds == what }
	if slices.ContainsFunc(st.Remove, moved) || what != "pressure" && slices.ContainsFunc(st.Fit, moved) {
		return true
	}
	return slices.ContainsFunc(st.Loosen, func(f job.Fastening) bool {
		if f.Joint == nil {
			return f.Part.Holds == what
		}
		return slices.ContainsFunc(f.Joint.Parts, func(p *job.Part) bool { return p.Holds == what })
	})
}
