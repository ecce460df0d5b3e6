package packs

import (
	"matchmark/packs/def"
	"matchmark/packs/source"
)

// putBack makes the rows that undo earlier sections, where the author placed a
// reverse: line, or at the end where none is written. Rows and places come in
// reverse order; what another step puts back or sets by itself is left to it.
func (b *builder) putBack() {
	b.bookFitted()
	used := map[string]source.Pos{}
	var out []*Section
	reversed := false
	for _, s := range b.job.Sections {
		ds := b.sectionDefs[s]
		if len(ds.Reverse) == 0 {
			out = append(out, s)
			continue
		}
		reversed = true
		for _, t := range ds.Reverse {
			out = append(out, b.reverseNamed(t, used, out)...)
		}
	}
	if !reversed {
		for i := len(b.job.Sections) - 1; i >= 0; i-- {
			if back := b.undo(b.job.Sections[i], b.def.At); back != nil {
				out = append(out, back)
			}
		}
	}
	b.job.Sections = out
}

// bookFitted fills in where the parts come from that a written step puts back.
func (b *builder) bookFitted() {
	for _, s := range b.job.Sections {
		for _, st := range s.Steps {
			for _, m := range st.Fit {
				m.comesFrom()
			}
		}
	}
}

// reverseNamed undoes the sections of one name, last place first.
func (b *builder) reverseNamed(t def.Text, used map[string]source.Pos, before []*Section) []*Section {
	sections, ok := b.named[t.Value]
	if !ok {
		b.unknown(t, "section", mapKeys(b.named), "steps")
		return nil
	}
	if first, ok := used[t.Value]; ok {
		b.problems = append(b.problems, source.Problem{
			Pos: t.At, Severity: source.Error, Code: "reversed-twice",
			Message: "the section " + quote(t.Value) + " is put back twice",
			Help:    []string{"keep one of the two"},
			See:     []source.Also{{Pos: first, What: "put back here first"}},
		})
		return nil
	}
	used[t.Value] = t.At
	var out []*Section
	for i := len(sections) - 1; i >= 0; i-- {
		if !containsSection(before, sections[i]) {
			b.problems.Add(t.At, "reversed-early", "the section "+quote(t.Value)+" is put back before it is taken apart",
				"move the reverse: line below the section")
			return out
		}
		if s := b.undo(sections[i], t.At); s != nil {
			out = append(out, s)
		}
	}
	return out
}

func containsSection(list []*Section, s *Section) bool {
	for _, x := range list {
		if x == s {
			return true
		}
	}
	return false
}

// undo is the section that puts a section back, nil if nothing has to be.
func (b *builder) undo(s *Section, at source.Pos) *Section {
	back := &Section{At: at, Name: s.Name, Place: s.Place, Back: true}
	for i := len(s.Steps) - 1; i >= 0; i-- {
		if row := b.undoStep(s.Steps[i], back); row != nil {
			back.Steps = append(back.Steps, row)
		}
	}
	if len(back.Steps) == 0 {
		return nil
	}
	b.sectionDefs[back] = &def.Section{At: at}
	return back
}

// undoStep is the row that undoes one step: fit what it removed, set what it
// measured.
func (b *builder) undoStep(st *Step, in *Section) *Step {
	ds := b.stepDefs[st]
	row := &Step{
		At: st.At, Key: st.Key, Place: st.Place, Section: in, Back: true, Undoes: st,
		Do: st.Place.value(ds.Back), Missed: st.Missed,
	}
	for i := len(st.Remove) - 1; i >= 0; i-- {
		m := st.Remove[i]
		if m.Part.Back != nil || m.To.Scrap && m.Part.Renew == "" {
			continue
		}
		fit := &Move{At: m.At, Step: row, Part: m.Part, N: m.N}
		m.Part.Back = fit
		fit.comesFrom()
		row.Fit = append(row.Fit, fit)
	}
	for _, d := range st.Measure {
		switch {
		case d.Left == nil:
			row.Recall = append(row.Recall, d)
		case d.LeftAt == nil:
			d.LeftAt = row
			row.Set = append(row.Set, d)
		}
	}
	closeAgain(st, row)
	if len(row.Fit) == 0 && len(row.Set) == 0 && len(row.Recall) == 0 && len(row.Close) == 0 && row.Do == "" {
		return nil
	}
	for _, t := range ds.BackCaution {
		if c, ok := b.cautions[t.Value]; ok {
			c.Steps = append(c.Steps, row)
			row.Cautions = append(row.Cautions, c)
		} else {
			b.unknown(t, "caution", mapKeys(b.cautions), "cautions")
		}
	}
	return row
}
