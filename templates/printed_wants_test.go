package templates_test

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"matchmark/packs/job"
)

// A want is a text that has to be read in a place of the paper, or, if it must not, one
// that belongs to another place.
type want struct {
	where string // as a message names it
	text  string // what is read there, squeezed
	want  string
	why   string
	not   bool
}

// miss words what is wrong, empty if nothing is.
func (w want) miss() string {
	found := strings.Contains(w.text, squeeze(w.want))
	switch {
	case w.want == "" || found != w.not:
		return ""
	case w.not:
		return w.where + " says " + strconv.Quote(w.want) + ", which is " + w.why
	}
	return w.where + " does not say " + strconv.Quote(w.want) + ": " + w.why
}

// wants gathers what must be read.
type wants struct {
	p     *paper
	list  []want
	tight map[string]string // what has been squeezed
}

// squeezed squeezes a text once.
func (w *wants) squeezed(text string) string {
	s, ok := w.tight[text]
	if !ok {
		s = squeeze(text)
		w.tight[text] = s
	}
	return s
}

func (w *wants) add(where, text, what, why string) {
	w.list = append(w.list, want{where: where, text: w.squeezed(text), want: what, why: why})
}

func (w *wants) never(where, text, what, why string) {
	w.list = append(w.list, want{where: where, text: w.squeezed(text), want: what, why: why, not: true})
}

// allWants lists everything that a job holds with where it belongs.
func allWants(jb *job.Job, p *paper) []want {
	w := &wants{p: p, tight: map[string]string{}}
	w.frontSheet(jb)
	for _, s := range jb.Sections {
		for _, st := range s.Steps {
			if st.Later != "" && st.Undoes == nil {
				w.add("the close-out", p.sheets["close-out"], st.Do, "what waits")
			}
			w.step(jb, st)
		}
	}
	for _, d := range jb.Dims {
		w.listed(d)
	}
	w.lists(jb)
	w.safety(jb)
	return w.list
}

func (w *wants) frontSheet(jb *job.Job) {
	e, o := jb.Equipment, jb.Order
	for _, x := range []string{e.Tag, e.Name, e.Serial, e.Maker, e.Type, e.Location, o.Number, o.Title, o.Revision, o.Issued, o.Scope} {
		w.add("the front sheet", w.p.sheets["front"], x, "of the machine or the job")
	}
}

// step asks for all that one step says, does and moves.
func (w *wants) step(jb *job.Job, st *job.Step) {
	text := w.p.steps[st.No]
	all, where := text.above+text.text, "step "+st.No
	own := func(what, why string) { w.add(where, all, what, why) }
	own(st.Do, "what is done")
	if st.Missed != "" {
		own("easily missed: "+st.Missed, "what is easily missed")
	}
	for _, x := range st.Seen {
		own("seen: "+x.What, "what is seen to be so")
	}
	own(st.Note, "the remark") // was read and printed nowhere
	own(st.Check, "who checks as well")
	own(strings.TrimRight(st.OnHook, ". "), "what it hangs on")
	own(st.Otherwise, "what is done otherwise")
	own(st.StillOut, "what is done after the last try")
	for _, a := range st.EachTry {
		own(a.Words, "what a further try does")
	}
	for _, d := range st.After {
		own(d.Reason, "why it comes after "+d.Step.No)
	}
	for _, x := range st.Without {
		if x.Guard == job.GuardCaution && len(st.Spares()) == 0 {
			continue // all of them stand there
		}
		if x.Guard == job.GuardPermit {
			for _, p := range st.SparePermits() {
				own(p.What, "which permit is not asked for")
			}
		}
		own(x.Reason, "why a guard is left out")
	}
	w.moves(jb, st, own)
	w.acts(jb, st, own)
	note := own
	if st.Table { // once above the table
		note = func(what, why string) { w.add(where, text.notes, what, why) }
	}
	for _, c := range st.Cautions {
		n := filled(jb, c)
		note(n.Hazard, "a hazard")
		avoid := cmp.Or(n.Short, n.Avoid)
		if first, _, more := strings.Cut(avoid, ". "); more && saidBefore(st, c) {
			avoid = first + "." // a note that comes again may be cut to its first sentence
		}
		note(avoid, "how to keep clear of it")
	}
	if st.Table {
		w.tableRow(st, text)
		return
	}
	for _, d := range st.Measure {
		w.boxes(d, st, text, false)
	}
	for _, d := range st.Set {
		w.boxes(d, st, text, true)
	}
	for _, d := range st.Recall {
		own(d.Mark, "looked up")
		own(d.What, "looked up")
	}
}

// filled is a hazard note as it is printed: in those of the program stand the fire watch
// and the heavy mass of the site.
func filled(jb *job.Job, n *job.Caution) job.Caution {
	out := *n
	if n.Builtin {
		fill := strings.NewReplacer("{watch}", jb.Site.FireWatch.Print(), "{heavy}", jb.Site.Heavy.Print())
		for _, text := range []*string{&out.Hazard, &out.Result, &out.Short, &out.Avoid} {
			*text = fill.Replace(*text)
		}
	}
	return out
}

// saidBefore reports whether a note stands before an earlier step of the same section.
func saidBefore(st *job.Step, n *job.Caution) bool {
	for _, s := range st.Section.Steps {
		if s == st {
			return false
		}
		if waits := s.Later != "" && s.Undoes == nil; !waits && slices.Contains(s.Cautions, n) {
			return true
		}
	}
	return false
}
