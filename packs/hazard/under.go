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
	if st.UnderLoad.Value == "" || !st.LoadAbove() || !bare.Builtin || !under.Builtin {
		return
	}
	if i := slices.Index(st.Said, bare); i >= 0 {
		st.Said[i] = under
	}
	if i := slices.Index(st.Cautions, bare); i >= 0 {
		st.Cautions = slices.Delete(slices.Clone(st.Cautions), i, i+1)
		bare.Steps = slices.DeleteFunc(bare.Steps, func(s *job.Step) bool { return s == st })
	}
	if !slices.Contains(st.Cautions, under) {
		st.Cautions, under.Steps = append(st.Cautions, under), append(under.Steps, st)
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
