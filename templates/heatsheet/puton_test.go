package heatsheet

import (
	"testing"

	"matchmark/packs/job"
)

// A seat that is measured again just before the part goes on is copied as left, and one that is
// measured after that is not.
func TestWhatIsPutOnIsWhatWasLeft(t *testing.T) {
	on := &job.Step{Index: 5}
	for _, c := range []struct {
		left *job.Step
		want bool
	}{{nil, false}, {&job.Step{Index: 4}, true}, {on, true}, {&job.Step{Index: 6}, false}} {
		if got := leftBy(&job.Dim{LeftAt: c.left}, on); got != c.want {
			t.Errorf("left at %v: %v", c.left, got)
		}
	}
}
