package heatsheet

import (
	"fmt"
	"testing"

	"matchmark/packs/heat"
	"matchmark/packs/job"
)

// A drum that is free after 42 s had a log whose first row was at 1:00.
func TestTheLogSeesTheHubComeFree(t *testing.T) {
	for _, c := range []struct {
		free, least heat.Second
		pace        []heat.Pace
		want        string // the rows down to the first of the long steps
	}{
		{42, 369, []heat.Pace{{By: 120}, {By: 240}}, "[20 40 60]"},
		{57, 153, []heat.Pace{{By: 45}, {By: 90}}, "[15]"},
		{58, 590, nil, "[20 40 60]"},
		{60, 590, nil, "[60]"},
		{4, 369, nil, "[5 60]"},
		{31, 2900, nil, "[15 30 45 300]"},
	} {
		s := sheet{h: &job.Heat{Pull: &job.HotPull{Plan: &heat.Plan{Free: c.free, Band: heat.Band{LeastFree: c.least, Pace: c.pace}}}}}
		var got []int
		for _, at := range s.logTimes() {
			got = append(got, int(at))
			if at >= s.logStep() {
				break
			}
		}
		if fmt.Sprint(got) != c.want {
			t.Errorf("free after %v s: rows at %v, want %v", float64(c.free), got, c.want)
		}
	}
}
