package templates

import (
	"testing"

	"matchmark/packs/job"
)

// A row was parted while a bearing of 100 °C was in hand: what puts a hot part in its place is
// dear, what only warms one or takes one off is not.
func TestAHotPartIsNotLeftInHand(t *testing.T) {
	t.Parallel()
	hot, other := &job.Caution{Key: "heating"}, &job.Caution{Key: "pinch"}
	on := []*job.Move{{Part: &job.Part{}}}
	for _, x := range []struct {
		what string
		step job.Step
		want bool
	}{
		{"put on hot", job.Step{Cautions: []*job.Caution{other, hot}, Fit: on}, true},
		{"put on cold", job.Step{Cautions: []*job.Caution{other}, Fit: on}, false},
		{"drawn off hot", job.Step{Cautions: []*job.Caution{hot}, Remove: on}, false},
	} {
		if got := hotInHand(&x.step); got != x.want {
			t.Errorf("%s: %t, want %t", x.what, got, x.want)
		}
	}
}
