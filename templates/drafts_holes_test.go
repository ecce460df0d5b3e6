package templates_test

import (
	"testing"
	"testing/fstest"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/templates"
)

// Drafts that could not be set at all: a set whose words are still empty, and one that is judged by a
// reading which has no limit yet.
func TestDraftsWithHolesInSetsAreSet(t *testing.T) {
	t.Parallel()
	const head = "pack: 1\nequipment: {tag: X-1, name: Machine}\njob: {number: WO-1, title: Law, revision: A, issued: 2026-03-02}\n" +
		"parts: {cover: {name: Cover, set: S1}, jaw: {name: Jaw, set: S1}}\ncontainers: {C1: {name: Cover, kind: box}}\n"
	const steps = "      - {step: on, do: Cover on., fit: [cover, jaw], from: C1}\n"
	for name, text := range map[string]string{
		"a set without words": head + "sets: {S1: {what: }}\nsteps:\n  - section: A\n    steps:\n      - {step: a, do: Cover off., remove: [cover, jaw], into: C1}\n" + steps,
		"a reading without a limit": head + "sets: {S1: {what: Cover and jaw, judged-by: [D1]}}\ndimensions:\n  D1: {what: Gap, kind: gap, from: {cover: face}, to: {jaw: face}, source: sheet 1}\n" +
			"steps:\n  - section: A\n    steps:\n      - {step: a, do: Cover off., measure: [D1], judge: [S1], remove: [cover, jaw], into: C1}\n" + steps,
	} {
		jb, problems := packs.Load(fstest.MapFS{"a.yaml": {Data: []byte(text)}}, packs.Inputs{Definition: "a.yaml"})
		if jb == nil {
			t.Fatalf("%s: %v", name, problems)
		}
		pack, _ := templates.Compose(jb, templates.Options{Paper: layout.A4, Draft: true}, pdf.NewFaces(), problems)
		if pack == nil || pack.Pages == nil || len(pack.Pages.Pages) == 0 {
			t.Errorf("%s: no page is set", name)
		}
	}
}
