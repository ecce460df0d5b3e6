package step

import (
	"slices"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/words"
)

// Text is what a step says. A put-back row whose author wrote no back: line
// is worded from what it fits and sets.
func Text(c *block.Composer, st *job.Step) string {
	if st.Do != "" {
		return block.Together(st.Do)
	}
	var out []string
	if len(st.Fit) > 0 {
		out = append(out, c.W.Step.PutBack.With(block.PartList(st.Fit, nil)))
	}
	if len(st.Set) > 0 {
		out = append(out, c.W.Step.SetAgain.With(dimMarks(st.Set)))
	}
	if len(st.Close) > 0 {
		out = append(out, c.W.Step.Close.With(openingNames(st.Close)))
	}
	if len(out) == 0 {
		for _, l := range st.Lifts {
			out = append(out, c.W.Guard.Lower.With(l.What))
		}
	}
	if len(out) == 0 && len(st.Tighten) > 0 {
		out = append(out, c.W.Step.TightenAll.With(fasteningNames(st.Tighten)))
	}
	if len(out) == 0 && len(st.Recall) == 0 && len(st.Seen) > 0 {
		for _, x := range st.Seen {
			out = append(out, x.What)
		}
		return strings.Join(out, ", ")
	}
	switch {
	case len(out) > 0:
		return strings.Join(out, " ")
	case len(st.Recall) > 0:
		return c.W.Step.LookUp.With(dimMarks(st.Recall))
	}
	return words.Untold // of a draft
}

// fasteningNames are joints by their marks, under which they stand below, and parts by
// their names.
func fasteningNames(all []job.Fastening) string {
	var out []string
	for _, f := range all {
		name := f.Name()
		if f.Joint != nil {
			name = f.Mark()
		}
		out = append(out, name)
	}
	return strings.Join(out, ", ")
}

// second is what a step says in the second language of the paper.
func second(c *block.Composer, st *job.Step) []layout.Run {
	if c.Other == nil {
		return nil
	}
	return c.Under(Text(c, st), func(s *block.Second) string {
		o := s.Step(st)
		if o == nil {
			return ""
		}
		return Text(s.Composer, o)
	})
}

// remark is the author's remark on a step, in both languages.
func remark(c *block.Composer, st *job.Step) []layout.Run {
	text := block.Together(st.Note)
	return append([]layout.Run{layout.T(layout.Body, text)}, c.Under(text, func(s *block.Second) string {
		if o := s.Step(st); o != nil {
			return block.Together(o.Note)
		}
		return ""
	})...)
}

// note is the small line under a step: what it comes after and why, where it
// may be moved, what a row undoes, the old part that is not to be mixed up.
func note(c *block.Composer, st *job.Step) string {
	var out []string
	if st.Undoes != nil {
		out = append(out, c.W.Step.Undoes.With(st.Undoes.No, c.Page("step "+st.Undoes.No)))
	}
	out = append(out, afterWords(c, st)...)
	if free := freeToldOnce(st); free != nil {
		out = append(out, FreeWords(c, free))
	}
	if st.TakesTime() {
		out = append(out, c.W.Step.HoursPlanned.With(st.Hours.Print()))
	}
	return strings.Join(out, " · ")
}

// afterWords are what a step comes after, the steps of one reason together: three times
// beside each other the same reason says no more than once.
func afterWords(c *block.Composer, st *job.Step) []string {
	var out []string
	told := map[string]bool{}
	for i, d := range st.After {
		if d.Reason != "" && told[d.Reason] {
			continue
		}
		told[d.Reason] = true
		nos := []string{d.Step.No}
		for _, x := range st.After[i+1:] {
			if d.Reason != "" && x.Reason == d.Reason {
				nos = append(nos, x.Step.No)
			}
		}
		s := c.W.Step.After.With(strings.Join(nos, ", "))
		if d.Reason != "" {
			s += c.W.Common.Colon + d.Reason
		}
		out = append(out, s)
	}
	return out
}

// freeToldOnce is where a step may be moved, without the step that it may not pass where
// that has just been named with its reason, and something stands at the other end.
func freeToldOnce(st *job.Step) *job.Free {
	f := st.Free
	if f == nil || f.After == nil || f.Before == nil || !slices.ContainsFunc(st.After, func(d job.Dep) bool { return d.Step == f.After }) {
		return f
	}
	return &job.Free{Before: f.Before, BeforeBind: f.BeforeBind}
}

// FreeWords says between which steps a step may be done, and what stands at each end.
func FreeWords(c *block.Composer, f *job.Free) string {
	end := func(st *job.Step, b *job.Bind) string {
		if b == nil {
			return st.No
		}
		if why := c.Why(b); why != "" && b.Kind != job.BoundAfter {
			return st.No + " (" + why + ")"
		}
		return st.No
	}
	switch {
	case f.After != nil && f.Before != nil:
		return c.W.Step.AnyTimeBetween.With(end(f.After, f.AfterBind), end(f.Before, f.BeforeBind))
	case f.Before != nil:
		return c.W.Step.AnyTimeBefore.With(end(f.Before, f.BeforeBind))
	case f.After != nil:
		return c.W.Step.AnyTimeAfter.With(end(f.After, f.AfterBind))
	}
	return c.W.Step.AnyTimeAtAll
}

func dimMarks(ds []*job.Dim) string {
	var out []string
	for _, d := range ds {
		out = append(out, d.Mark)
	}
	return strings.Join(out, ", ")
}

// stepWords are the words of a step, what is easily missed, its small line, and the readings
// that are gone after it.
type stepWords struct {
	runs  []layout.Run
	gone  gone
	takes bool // some are
}

func wordsOfStep(c *block.Composer, st *job.Step) (w stepWords) {
	runs := append(state(c, st), layout.T(layout.Body, Text(c, st)))
	runs = append(runs, second(c, st)...)
	if st.Missed != "" {
		runs = append(runs, layout.T(layout.Body, "  "), missed(c, st))
	}
	if text := note(c, st); text != "" {
		runs = append(runs, layout.T(layout.Sub, "   "+text))
	}
	if w.gone, w.takes = goneAfter(c, st); w.takes {
		runs = append(runs, layout.T(layout.Body, "  "))
	}
	w.runs = slices.Clip(runs)
	return w
}

// in are the words in a width.
func (w stepWords) in(width layout.Mm) []layout.Run {
	if !w.takes {
		return w.runs
	}
	return append(w.runs, w.gone.in(width))
}
