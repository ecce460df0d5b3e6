package templates

import (
	"testing"

	"matchmark/packs/job"
	"matchmark/packs/units"
)

// A job over several shifts had no line for who takes over a lock, and none for a permit
// that is given for a day.
func TestLocksAreTakenOver(t *testing.T) {
	for _, x := range []struct {
		hours int64
		want  int
	}{{0, 0}, {1, 0}, {12, 0}, {13, 1}, {24, 1}, {25, 2}, {400, mostChanges}} {
		if got := changes(&job.Job{Hours: units.Whole(x.hours)}); got != x.want {
			t.Errorf("%d h: %d rows for the next shift, want %d", x.hours, got, x.want)
		}
	}
}
