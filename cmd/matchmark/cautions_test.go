package main

import (
	"fmt"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"matchmark/layout"
	"matchmark/layout/sign"
	"matchmark/packs"
	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/templates"
)

// TestCautionsBeforeSteps lists, for each hazard note of the starters, the steps
// before which it stands. A change of the list is a change of what a mechanic is
// warned of, and is to be looked at as such.
func TestCautionsBeforeSteps(t *testing.T) {
	t.Parallel()
	var b strings.Builder
	for _, starter := range starters(t) {
		jb, _ := composed(t, starter, templates.Options{Paper: layout.A4})
		for _, c := range jb.Cautions {
			var steps []string
			for _, st := range c.Steps {
				steps = append(steps, st.No)
			}
			fmt.Fprintf(&b, "%s: %s %s [%s] before %s\n", starter, c.Signal, c.Key, strings.Join(c.Signs, " "), strings.Join(steps, ", "))
		}
		for _, s := range jb.Spared {
			fmt.Fprintf(&b, "%s: %s left out at %s: %s\n", starter, s.Note.Key, s.Step.No, s.Reason)
		}
	}
	expect(t, "golden/cautions.txt", b.String())
}

// TestCautionsStandOnThePageOfTheirStep sees that no note is parted from its step
// by a page, that each step's notes stand above its number, and that each sign is
// drawn.
func TestCautionsStandOnThePageOfTheirStep(t *testing.T) {
	t.Parallel()
	for _, starter := range starters(t) {
		for _, paper := range papers {
			jb, pack := composed(t, starter, templates.Options{Paper: paper})
			for _, s := range jb.Sections {
				for _, st := range s.Steps {
					checkNotesAbove(t, starter+" "+paper.Name, pack, st)
				}
			}
		}
	}
}

func checkNotesAbove(t *testing.T, name string, pack *templates.Pack, st *job.Step) {
	t.Helper()
	for _, f := range pack.Pages.BySheet() {
		// One that waits until the machine has run stands on the close-out sheet.
		if st.Later != "" != (f.Sheet == "close-out") || st.Later == "" && f.Sheet != "traveler" && f.Sheet != "reassembly" {
			continue
		}
		at := slices.IndexFunc(f.Items, func(it layout.Item) bool {
			text, ok := it.Shape.(layout.Text)
			return ok && text.S == st.No && text.Size == layout.StepNo.Size && it.Ref == any(st.At)
		})
		if at < 0 {
			continue
		}
		for _, n := range st.Cautions {
			place := n.At
			if place.IsZero() {
				place = st.At // a built-in note stands nowhere in the file
			}
			first := strings.Fields(n.Hazard)[0]
			above := slices.ContainsFunc(f.Items, func(it layout.Item) bool {
				text, ok := it.Shape.(layout.Text)
				return ok && strings.HasPrefix(text.S, first) && it.Y < f.Items[at].Y && it.Ref == any(place)
			})
			if !above {
				t.Errorf("%s: the note %s does not stand above step %s on its page", name, n.Key, st.No)
			}
		}
		return
	}
	t.Errorf("%s: step %s is on no page", name, st.No)
}

// TestEverySignOfABuiltInNoteIsDrawn names every built-in note in one step and
// looks for its signs on paper, each drawn and with its number in words.
func TestEverySignOfABuiltInNoteIsDrawn(t *testing.T) {
	t.Parallel()
	keys := "lockout, unlocking, confined-space, lifting, rotor-lift, hand-lift, hot-work, heating, induction, cold, springs, pressure, weight, propped, asbestos, lagging, solvent, sharp, pinch, eyes, foreign-material"
	text := "pack: 1\nequipment: {tag: P-1, name: Pump}\njob: {number: \"1\", title: Check, revision: A, issued: 2026-03-02}\npermits: {all: {what: Permit for hot work and entry}}\n" +
		"steps:\n  - {step: s, do: Look., permit: [all], caution: [" + keys + "]}\n"
	jb, problems := packs.Load(fstest.MapFS{"p.yaml": &fstest.MapFile{Data: []byte(text)}}, packs.Inputs{Definition: "p.yaml"})
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	if n := len(strings.Split(keys, ", ")); len(jb.Cautions) != n {
		t.Errorf("%d notes on paper, want %d", len(jb.Cautions), n)
	}
	for _, c := range jb.Cautions {
		if c.At != (source.Pos{}) {
			t.Errorf("%s is not built in", c.Key)
		}
		for _, code := range c.Signs {
			if _, ok := sign.Sign(code, 11, nil); !ok {
				t.Errorf("%s: the sign %s is not drawn", c.Key, code)
			}
		}
	}
}
