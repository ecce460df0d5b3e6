package main

import (
	"path/filepath"
	"slices"
	"testing"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/templates"
)

// TestActsInOrder: a step prints what it does in the order of its acts, for a mechanic
// works down the page. On paper the parts of a step stood above the boxes of the
// readings that are gone once the parts are off, and joints were ticked tight above the
// reading that has to come first.
func TestActsInOrder(t *testing.T) {
	t.Parallel()
	looked := 0
	for _, path := range ownWith(t, 40) {
		jb, pack := composedFile(t, path, templates.Options{Paper: layout.A4})
		looked += actsInOrder(t, filepath.Base(path), jb, pack)
	}
	if looked < 1000 {
		t.Errorf("only %d acts were found on paper", looked)
	}
}

// actsInOrder looks at all steps of a pack and counts the acts that it found.
func actsInOrder(t *testing.T, name string, jb *job.Job, pack *templates.Pack) int {
	looked := 0
	for st, items := range stepItems(jb, pack) {
		if !st.Table {
			looked += stepInOrder(t, name, st, items)
		}
	}
	return looked
}

// stepItems are the items of the sheets of work from the number of each step to that of
// the next one printed, in the order in which they are read.
func stepItems(jb *job.Job, pack *templates.Pack) map[*job.Step][]layout.Item {
	steps := map[string]*job.Step{}
	for _, s := range jb.Sections {
		for _, st := range s.Steps {
			steps[st.No] = st
		}
	}
	out := map[*job.Step][]layout.Item{}
	var now *job.Step
	for _, f := range pack.Pages.BySheet() {
		if f.Sheet != "traveler" && f.Sheet != "reassembly" {
			continue
		}
		for _, it := range f.Items {
			text, ok := it.Shape.(layout.Text)
			if st := steps[text.S]; ok && text.Size == layout.StepNo.Size && st != nil && it.Ref == any(st.At) && out[st] == nil {
				now = st
			}
			if now != nil {
				out[now] = append(out[now], it)
			}
		}
	}
	return out
}

// stepInOrder looks at one step: the first item of each act, known by where the act or
// its dimension stands in the file, comes after that of the act before.
func stepInOrder(t *testing.T, name string, st *job.Step, items []layout.Item) int {
	looked, last, verb := 0, -1, job.Verb(-1)
	fitted, away := map[*job.Container]int{}, map[*job.Part]int{}
	for _, a := range st.Acts() {
		at := actRef(a)
		if at == st.At || shared(st, a, at) {
			continue // told by nothing from the words of the step, or from another act
		}
		first := -1
		for i, it := range items {
			if it.Ref == layout.Ref(at) {
				first = i
				break
			}
		}
		if first < 0 {
			continue // one of several parts in one line
		}
		looked++
		if a.Verb == job.DoEmpty {
			// Ticked in the row of what comes out of it last, before that is measured or tightened.
			if from, known := fitted[a.In]; known && first < from {
				t.Errorf("%s step %s: a container is ticked as empty above what comes out of it", name, st.No)
			}
			continue
		}
		if a.Verb == job.DoRemove && slices.ContainsFunc(st.TakeOut, func(m *job.Move) bool { return m.Part == a.Move.Part }) {
			away[a.Move.Part] = first // goes on again for a reading, and is put away after it
			continue
		}
		if a.Verb == job.DoTakeOut {
			if from, known := away[a.Move.Part]; known && from < first {
				t.Errorf("%s step %s: what %s goes into stands above its coming out", name, st.No, a.Move.Part.Called())
			}
		}
		if a.Verb == job.DoFit && a.Move != nil && a.Move.From.Container != nil {
			fitted[a.Move.From.Container] = first
		}
		if first < last && a.Verb != verb {
			t.Errorf("%s step %s: what verb %d does stands above what verb %d does", name, st.No, a.Verb, verb)
		}
		last, verb = max(first, last), a.Verb
	}
	return looked
}

// shared reports whether an act under another verb stands at the same place of the file.
func shared(st *job.Step, a job.Act, at source.Pos) bool {
	for _, b := range st.Acts() {
		if b.Verb != a.Verb && actRef(b) == at {
			return true
		}
	}
	return false
}

// actRef is where the thing of an act stands in the file, as its items have it.
func actRef(a job.Act) source.Pos {
	switch {
	case a.Dim != nil:
		return a.Dim.At
	case a.Move != nil:
		return a.Move.At
	case a.Heat != nil:
		return a.Heat.At
	case a.Hold != nil:
		return a.Hold.At
	case a.In != nil:
		return a.In.At
	case a.Verb == job.DoLoosen || a.Verb == job.DoTighten:
		return a.Grip.At
	}
	return a.At
}
