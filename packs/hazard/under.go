package hazard

import (
	"slices"

	"matchmark/packs/job"
)

// The two notes of a load that hangs: at a step that says nothing of what stands under it no
// hand goes in at all, and the note speaks of nothing that is not on the paper.
const hanging, propUnder = "hanging", "hanging-propped"

// sayUnder puts the note that speaks of what stands under the load in place of the other one,
// at a step that says what that is. What an author wrote of the hazard stays.
func sayUnder(notes map[string]*job.Caution, st *job.Step) {
	bare, under := notes[hanging], notes[propUnder]
	switch {
	case !bare.Builtin || !under.Builtin:
	case st.UnderLoad.Value == "" && slices.Contains(st.Cautions, under): // an author names the one that speaks of nothing here
		swap(st, under, bare)
	case st.UnderLoad.Value != "" && st.LoadAbove():
		swap(st, bare, under)
	}
}

// swap puts one note at a step in place of another.
func swap(st *job.Step, from, to *job.Caution) {
	if i := slices.Index(st.Said, from); i >= 0 {
		st.Said[i] = to
	}
	if i := slices.Index(st.Cautions, from); i >= 0 {
		st.Cautions = slices.Delete(slices.Clone(st.Cautions), i, i+1)
		from.Steps = slices.DeleteFunc(from.Steps, func(s *job.Step) bool { return s == st })
	}
	if !slices.Contains(st.Cautions, to) {
		st.Cautions, to.Steps = append(st.Cautions, to), append(to.Steps, st)
	}
}

// tellOnce lets the text in full of the note that speaks of what stands under the load serve for
// both, where both come.
func tellOnce(notes map[string]*job.Caution) {
	bare, under := notes[hanging], notes[propUnder]
	if bare.Builtin && under.Builtin && len(bare.Steps) > 0 && len(under.Steps) > 0 {
		bare.FullIn = under
	}
}
