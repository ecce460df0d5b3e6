package main

import (
	"slices"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates"
)

// TestStopsAreMet: a cover was signed for "at 25 mm: clear of both dowels" as it came down,
// and the rows stood in the order of lifting, so that nobody could tick them in turn on the
// way back. Each stop of a lift's own is open in the movements that meet it and in no other;
// what is put back has stops of its own for the way in.
func TestStopsAreMet(t *testing.T) {
	t.Parallel()
	for _, name := range starters(t) {
		j, pack := composed(t, name, templates.Options{Paper: layout.A4})
		text := strings.Join(strings.Fields(sheetTexts(t, pack.Pages)["lifts"]), " ")
		for _, l := range j.Lifts {
			for _, st := range l.Steps {
				in := slices.ContainsFunc(st.Fit, func(m *job.Move) bool { return l.Carries(m.Part) })
				if in && len(l.StopsIn) == 0 {
					t.Errorf("%s: %s comes down at %s and no stop is told for it", name, l.Mark, st.No)
				}
				for _, stop := range slices.Concat(l.TrialStops, l.Stops) {
					if in && slices.Contains(l.StopsAt(st), stop) {
						t.Errorf("%s: %s at %s comes down and is to stop for %q", name, l.Mark, st.No, stop)
					}
				}
				for _, stop := range l.StopsIn {
					if !in && slices.Contains(l.StopsAt(st), stop) {
						t.Errorf("%s: %s at %s does not come down and is to stop for %q", name, l.Mark, st.No, stop)
					}
				}
			}
			for _, x := range l.OwnStops() {
				struck := 0
				for _, st := range l.Steps {
					if !l.MeetsOwn(st, x) {
						struck++
					}
				}
				words := strings.Join(strings.Fields(x.Text), " ")
				if !strings.Contains(text, words+strings.Repeat(" —", struck)) || strings.Contains(text, words+strings.Repeat(" —", struck+1)) {
					t.Errorf("%s: %s: %q is not struck %d times", name, l.Mark, x.Text, struck)
				}
			}
		}
	}
}
