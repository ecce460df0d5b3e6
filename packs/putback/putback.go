// Package putback makes the rows that put a machine together again: the walk of
// taking it apart, undone. It says of every part that goes back how it came off
// and where it lies, and gives all steps their printed numbers.
package putback

import (
	"slices"
	"strconv"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/source"
)

// An undoer holds what is known while rows are made.
type undoer struct {
	job      *job.Job
	problems source.Problems
	undoing
	stages map[*job.Lift]bool // lifts that come down by the stops of their way up
}

// undoing is what is left to be undone: the pieces off the machine, and what no
// written step tightens.
type undoing struct {
	stock stock
	tight []job.Fastening
}

// Rows makes the rows that undo earlier sections, where the author placed a
// reverse: line, or at the end where none is written. Rows and places come in
// reverse order; what another step puts back or sets by itself is left to it.
// Steps are numbered afterwards, in the order of work.
func Rows(j *job.Job) source.Problems {
	b := &undoer{job: j}
	b.undoing = undoing{b.stockOf(), b.tightened()}
	b.bookFitted(b.stock)
	b.stages = b.inStages()
	used := map[string]source.Pos{}
	var out []*job.Section
	reversed := false
	for _, s := range j.Sections {
		if len(s.Reverse) == 0 {
			out = append(out, s)
			continue
		}
		reversed = true
		for _, r := range s.Reverse {
			out = append(out, b.reverse(r, used, out)...)
		}
	}
	if reversed {
		b.checkReversed(used)
	} else {
		for i := len(j.Sections) - 1; i >= 0; i-- {
			if back := b.undo(j.Sections[i], j.At); back != nil {
				out = append(out, back)
			}
		}
	}
	j.Sections = out
	b.tightenFitted()
	remarked(j)
	number(j)
	sortByOrder(j)
	return b.problems
}

// checkReversed sees that where one section is put back by a reverse: line, every
// section with several things left to be put back is. A single thing, and what is one at
// several places, is told at its own place.
func (b *undoer) checkReversed(used map[string]source.Pos) {
	told := map[string]bool{}
	for _, s := range b.job.Sections {
		if _, ok := used[s.Title]; ok || len(s.Reverse) > 0 {
			continue
		}
		what := leftIn(s, b.undoing)
		if oneThing(what) {
			continue
		}
		s.Unreversed = true
		if !told[s.Title] {
			told[s.Title] = true
			b.problems.Add(s.At, "not-reversed", "the section "+source.Quote(s.Name)+" is put back by no reverse: line: "+strings.Join(what[:min(len(what), 3)], ", ")+more(len(what)-3),
				"reverse: ["+s.Name+"], or write the steps that put it back")
		}
	}
}

// oneThing reports whether nothing is left, or one thing, as D4/DE and D4/NDE are.
func oneThing(what []string) bool {
	base := func(x string) string { b, _, _ := strings.Cut(strings.Fields(x)[0], "/"); return b }
	return len(what) < 2 || strings.Contains(strings.Fields(what[0])[0], "/") &&
		!slices.ContainsFunc(what, func(x string) bool { return base(x) != base(what[0]) })
}

// more counts what a message leaves out.
func more(n int) string {
	if n <= 0 {
		return ""
	}
	return " and " + strconv.Itoa(n) + " more"
}

// leftIn lists what of a section no written step puts back, sets or tightens.
func leftIn(s *job.Section, u undoing) []string {
	var out []string
	for _, st := range s.Steps {
		for _, m := range st.Remove {
			if u.stock[m] > 0 && (!m.To.Scrap || m.Part.ComesNew()) {
				out = append(out, m.Part.Called()+" stays off")
			}
		}
		for _, f := range st.Loosen {
			if !has(u.tight, f) {
				out = append(out, f.Mark()+" stays loose")
			}
		}
		for _, d := range st.Measure {
			if d.Left != nil && d.LeftAt == nil {
				out = append(out, d.Mark+" is not set")
			}
		}
	}
	return out
}

// reverse undoes the sections of one name, last place first.
func (b *undoer) reverse(r job.Reversal, used map[string]source.Pos, before []*job.Section) []*job.Section {
	if len(r.Sections) == 0 {
		return nil // no section has that name, which has been told
	}
	if first, ok := used[r.Name]; ok {
		b.problems.AddWith(r.At, "reversed-twice", "the section "+source.Quote(r.Name)+" is put back twice", first, "put back here first", "keep one of the two")
		return nil
	}
	used[r.Name] = r.At
	var out []*job.Section
	for _, s := range slices.Backward(r.Sections) {
		if !slices.Contains(before, s) {
			b.problems.Add(r.At, "reversed-early", "the section "+source.Quote(r.Name)+" is put back before it is taken apart",
				"move the reverse: line below the section")
			return out
		}
		if back := b.undo(s, r.At); back != nil {
			out = append(out, back)
		}
	}
	return out
}
