package heatsheet

import (
	"testing"

	"matchmark/packs/heat"
	"matchmark/packs/job"
	"matchmark/templates/figure"
)

// "When the crayon melts, after 1:45" could be read as hours, and was rounded up: nobody heats
// longer than is safe.
func TestLongestHasItsUnit(t *testing.T) {
	pull := &job.HotPull{Plan: &heat.Plan{}}
	pull.Plan.Band.LeastFree = 104.6
	s := sheet{h: &job.Heat{Pull: pull}}
	if got, want := s.longest(), "1:44"+figure.NBSP+"min"; got != want {
		t.Errorf("heated for %q at most, want %q", got, want)
	}
}
