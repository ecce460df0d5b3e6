package packs

import (
	"matchmark/packs/job"
	"strconv"
	"strings"

	"matchmark/packs/def"
	"matchmark/packs/source"
)

// putBack makes the rows that undo earlier sections, where the author placed a
// reverse: line, or at the end where none is written. Rows and places come in
// reverse order; what another step puts back or sets by itself is left to it.
func (b *builder) putBack() {
	u := undoing{b.stockOf(), b.tightened()}
	b.bookFitted(u.stock)
	used := map[string]source.Pos{}
	var out []*job.Section
	reversed := false
	for _, s := range b.job.Sections {
		ds := b.sectionDefs[s]
		if len(ds.Reverse) == 0 {
			out = append(out, s)
			continue
		}
		reversed = true
		for _, t := range ds.Reverse {
			out = append(out, b.reverseNamed(t, used, out, u)...)
		}
	}
	if reversed {
		b.checkReversed(used, u)
	}
	if !reversed {
		for i := len(b.job.Sections) - 1; i >= 0; i-- {
			if back := b.undo(b.job.Sections[i], b.def.At, u); back != nil {
				out = append(out, back)
			}
		}
	}
	b.job.Sections = out
	b.tightenFitted()
}

// undoing is what is left to be undone: the pieces off the machine, and what no
// written step tightens.
type undoing struct {
	stock stock
	tight []job.Fastening
}

// checkReversed sees that where one section is put back by a reverse: line, every
// section with several things left to be put back is. A single thing is told at
// its own place.
func (b *builder) checkReversed(used map[string]source.Pos, u undoing) {
	b.unreversed = map[*job.Section]bool{}
	told := map[string]bool{}
	for _, s := range b.job.Sections {
		ds := b.sectionDefs[s]
		name := ds.Name.One.Value
		if _, ok := used[name]; ok || len(ds.Reverse) > 0 {
			continue
		}
		what := leftIn(s, u)
		if len(what) < 2 {
			continue
		}
		b.unreversed[s] = true
		if !told[name] {
			told[name] = true
			b.problems.Add(ds.At, "not-reversed", "the section "+source.Quote(s.Name)+" is put back by no reverse: line: "+strings.Join(what[:min(len(what), 3)], ", ")+more(len(what)-3),
				"reverse: ["+s.Name+"], or write the steps that put it back")
		}
	}
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

// reverseNamed undoes the sections of one name, last place first.
func (b *builder) reverseNamed(t source.Text, used map[string]source.Pos, before []*job.Section, u undoing) []*job.Section {
	sections, ok := b.named[t.Value]
	if !ok {
		b.unknown(t, "section", knownTo(b, b.named), "steps")
		return nil
	}
	if first, ok := used[t.Value]; ok {
		b.problems = append(b.problems, source.Problem{
			Pos: t.At, Severity: source.Error, Code: "reversed-twice",
			Message: "the section " + source.Quote(t.Value) + " is put back twice",
			Help:    []string{"keep one of the two"},
			See:     []source.Also{{Pos: first, What: "put back here first"}},
		})
		return nil
	}
	used[t.Value] = t.At
	var out []*job.Section
	for i := len(sections) - 1; i >= 0; i-- {
		if !containsSection(before, sections[i]) {
			b.problems.Add(t.At, "reversed-early", "the section "+source.Quote(t.Value)+" is put back before it is taken apart",
				"move the reverse: line below the section")
			return out
		}
		if s := b.undo(sections[i], t.At, u); s != nil {
			out = append(out, s)
		}
	}
	return out
}

func containsSection(list []*job.Section, s *job.Section) bool {
	for _, x := range list {
		if x == s {
			return true
		}
	}
	return false
}

// undo is the section that puts a section back, nil if nothing has to be.
func (b *builder) undo(s *job.Section, at source.Pos, u undoing) *job.Section {
	back := &job.Section{At: at, Name: s.Name, Place: s.Place, Back: true}
	for i := len(s.Steps) - 1; i >= 0; i-- {
		if row := b.undoStep(s.Steps[i], back, u); row != nil {
			back.Steps = append(back.Steps, row)
		}
	}
	if len(back.Steps) == 0 {
		return nil
	}
	b.sectionDefs[back] = &def.Section{At: at}
	return back
}

// undoStep is the row that undoes one step: fit what it removed, tighten what it
// loosened, set what it measured.
func (b *builder) undoStep(st *job.Step, in *job.Section, u undoing) *job.Step {
	ds := b.stepDefs[st]
	row := &job.Step{
		At: st.At, Key: st.Key, Place: st.Place, Section: in, Back: true, Undoes: st,
		Do: valueAt(st.Place, ds.Back), Missed: st.Missed, Bench: st.Bench,
	}
	b.undoMoves(st, row, u)
	for _, d := range st.Measure {
		switch {
		case d.Left == nil:
			if !d.WatchedOnly() {
				row.Recall = append(row.Recall, d)
			}
		case d.LeftAt == nil:
			d.LeftAt = row
			row.Set = append(row.Set, d)
		}
	}
	closeAgain(st, row)
	heatAgain(st, row)
	liftBack(st, row)
	if len(row.Fit) == 0 && len(row.Set) == 0 && len(row.Recall) == 0 && len(row.Close) == 0 && len(row.Tighten) == 0 && row.Do == "" {
		return nil
	}
	for _, t := range ds.BackCaution {
		if c, ok := b.cautions[t.Value]; ok {
			c.Steps = append(c.Steps, row)
			row.Cautions = append(row.Cautions, c)
		} else {
			b.unknown(t, "caution", knownTo(b, b.cautions), "cautions")
		}
	}
	return row
}

// undoMoves fits what a step removed and no written step fits, and tightens what
// it loosened, last first. A part that is scrapped for good stays away.
func (b *builder) undoMoves(st, row *job.Step, u undoing) {
	for i := len(st.Remove) - 1; i >= 0; i-- {
		off := st.Remove[i]
		if u.stock[off] == 0 || off.To.Scrap && !off.Part.ComesNew() {
			continue
		}
		fit := &job.Move{At: off.At, Step: row, Part: off.Part, N: u.stock[off]}
		fit.ComesFrom(off)
		u.stock[off] = 0
		off.Part.Back = append(off.Part.Back, fit)
		row.Fit = append(row.Fit, fit)
	}
	if len(row.Fit) > 0 {
		row.People, row.OnHook = st.People, st.OnHook
	}
	for i := len(st.Loosen) - 1; i >= 0; i-- {
		if f := st.Loosen[i]; !has(u.tight, f) {
			row.Tighten = append(row.Tighten, f)
		}
	}
}

func has(list []job.Fastening, f job.Fastening) bool {
	for _, g := range list {
		if f.Same(g) {
			return true
		}
	}
	return false
}

// tightened lists what written steps tighten.
func (b *builder) tightened() []job.Fastening {
	var out []job.Fastening
	for _, s := range b.job.Sections {
		for _, st := range s.Steps {
			out = append(out, st.Tighten...)
		}
	}
	return out
}

// tightenFitted lets the generated row that puts the last fastener of a joint back
// tighten it, where no step loosens or tightens that joint by name.
func (b *builder) tightenFitted() {
	told := map[*job.Joint]bool{}
	place := map[*job.Step]int{}
	for _, s := range b.job.Sections {
		for _, st := range s.Steps {
			place[st] = len(place)
			for _, f := range append(append([]job.Fastening{}, st.Loosen...), st.Tighten...) {
				told[f.Joint] = true
			}
		}
	}
	for _, j := range b.job.Joints {
		var last *job.Move
		for _, p := range j.Parts {
			for _, m := range p.Back {
				if last == nil || place[m.Step] > place[last.Step] {
					last = m
				}
			}
		}
		if last != nil && !told[j] && last.Step.Undoes != nil {
			last.Step.Tighten = append(last.Step.Tighten, job.Fastening{At: last.At, Joint: j})
		}
	}
}
