package step

import "testing"

// What is left out for a while goes in at the next step that fits it: not at one above, where it
// was on once already, nor at the last of several.
func TestWhatIsLeftOutGoesInAtTheNextStep(t *testing.T) {
	t.Parallel()
	said := saidIn(t, `
pack: 1
equipment: {tag: FN-11, name: Fan}
job: {number: WO-1, title: Fan, revision: A, issued: 2026-03-02}
parts: {cap: {name: Cap}, shim: {name: Shim}}
containers: {C1: {name: Cap and shim, kind: box}}
steps:
  - section: Work
    steps:
    - {step: off, do: Take cap and shim off., remove: [cap, shim], into: C1}
    - {step: trial, do: Try them., fit: [cap, shim], from: C1}
    - {step: again, do: Take both off again., remove: [cap, shim], into: C1}
    - {step: bare, do: Cap on without the shim., fit: [cap], from: C1, leave-out: [shim]}
    - {step: apart, do: Cap off., remove: [cap], into: C1}
    - {step: home, do: Both on., fit: [cap, shim], from: C1}
`)
	inTurn(t, "bare", said["bare"], "Shim", "LEFT OUT for a while, goes in at 1.6")
}
