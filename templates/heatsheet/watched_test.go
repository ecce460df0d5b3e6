package heatsheet

import (
	"slices"
	"testing"

	"matchmark/packs/heat"
	"matchmark/packs/job"
)

// A seal, a bearing or a sensor beside a part that is put on hot: where the part is hotter than it
// stands, how it is watched is printed and has its box; nothing was said of it but its words.
func TestNeighboursOfAHotFitAreWatched(t *testing.T) {
	t.Parallel()
	at := func(name string, most heat.Celsius, source string) job.HeatNeighbour {
		return job.HeatNeighbour{Neighbour: heat.Neighbour{Name: name, Limit: heat.Limit{At: most, Source: source}}}
	}
	beside := []job.HeatNeighbour{at("seal", 100, "sheet 1"), at("cover", 150, "sheet 1"), at("sensor", 0, "")}
	for _, x := range []struct {
		name string
		fit  job.HotFit
		want []string
	}{
		{"hotter than the seal stands", job.HotFit{SetTo: 120}, []string{"seal", "sensor"}},
		{"an oven hotter than the cover stands", job.HotFit{SetTo: 120, Oven: 170}, []string{"seal", "cover", "sensor"}},
		{"just as hot as the seal stands", job.HotFit{SetTo: 100}, []string{"sensor"}},
		{"by the table of interferences, hotter than the seal stands", job.HotFit{Ladder: []job.HeatRung{{SetTo: 90}, {SetTo: 140}, {SetTo: 300, TooHot: true}}}, []string{"seal", "sensor"}},
		{"a table no row of which is hotter than the seal stands", job.HotFit{Ladder: []job.HeatRung{{SetTo: 90}, {SetTo: 300, TooHot: true}}}, []string{"sensor"}},
		{"not worked out", job.HotFit{}, []string{"seal", "cover", "sensor"}},
		{"the shaft is cooled alone", job.HotFit{SetTo: 20, Cold: &heat.ColdFitted{}}, nil},
		{"shaft cooled and part heated", job.HotFit{SetTo: 120, Cold: &heat.ColdFitted{Chilled: heat.Chilled{HubHeated: true}}}, []string{"seal", "sensor"}},
	} {
		s := sheet{h: &job.Heat{Neighbours: beside, PutOn: &x.fit}}
		var got []string
		for _, n := range s.watched() {
			got = append(got, n.Name)
		}
		if !slices.Equal(got, x.want) {
			t.Errorf("%s: %q are watched, want %q", x.name, got, x.want)
		}
	}
}
