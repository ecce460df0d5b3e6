package main

import (
	"os"
	"strings"
	"testing"

	"matchmark/layout"
)

// The names of those who had decided on a tilt or on a friction, a shield where nothing
// stood beside the hub, the planner, and what a matched set is, were asked for and then
// stood on no sheet.
func TestWhoAnswersStandsOnPaper(t *testing.T) {
	t.Parallel()
	plain := func(s string) string {
		return strings.ToLower(strings.NewReplacer(" ", "", "\n", "", "\u00a0", "", "\u00ad", "", "-", "").Replace(s))
	}
	asked := map[string]int{}
	for _, file := range []string{goodDir + "/agitator.yaml", goodDir + "/field-water-turbine.yaml", startersDir + "/exhaust-fan.yaml"} {
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		jb, pack := fresh(t, string(data))(layout.A4)
		var text strings.Builder
		for _, f := range pack.Pages.Pages {
			text.WriteString(plain(layout.Readable(f)))
		}
		want := func(what, words string) {
			asked[what]++
			if words != "" && !strings.Contains(text.String(), plain(words)) {
				t.Errorf("%s: %s is on no sheet: %q", file, what, words)
			}
		}
		want("planner", jb.Order.Planner)
		for _, s := range jb.Sets {
			want("set", s.What)
			want("set", s.Why)
		}
		for _, l := range jb.Lifts {
			if l.Plan.DecidedBy != "" {
				want("lift", l.Plan.DecidedBy+": "+l.Plan.Reason)
			}
		}
		for _, h := range jb.Heats {
			if x := h.Fit.Friction; x.By != "" {
				want("friction", x.By+": "+x.Reason)
			}
			if h.Pull != nil {
				want("shield", h.Pull.Shield)
			}
		}
	}
	for _, what := range []string{"planner", "set", "lift", "friction", "shield"} {
		if asked[what] == 0 {
			t.Errorf("no definition has a %s", what)
		}
	}
}
