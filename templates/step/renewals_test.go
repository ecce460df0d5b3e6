package step

import (
	"slices"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/words"
)

// "Seat: renew if so decided at 9.11, Plate: renew if so decided at 9.11" stood in one line: the
// same was said for each part, and the commas did not tell where one ended.
func TestRenewalsSayEachTimeOnce(t *testing.T) {
	t.Parallel()
	move := func(name, renew string) *job.Move { return &job.Move{Part: &job.Part{Name: name, Renew: renew}} }
	for _, x := range []struct {
		name  string
		moves []*job.Move
		want  []string
	}{
		{"one kind has no name", []*job.Move{move("Seat", "if worn"), move("Seat", "if worn")}, []string{"renew if worn"}},
		{"one of several has its name", []*job.Move{move("Seat", "if worn"), move("Spring", "")}, []string{"Seat: renew if worn"}},
		{"parts of one condition share it", []*job.Move{move("Seat", "if worn"), move("Cage", "if bent"), move("Plate", "if worn")}, []string{"Seat, Plate: renew if worn", "Cage: renew if bent"}},
		{"always new and never are told elsewhere", []*job.Move{move("Ring", "always"), move("Wedge", "never"), move("Cage", "if bent")}, []string{"Cage: renew if bent"}},
	} {
		c := block.New(pdf.NewFaces(), layout.Pen{}, &job.Job{}, words.English, 180)
		if got := renewals(c, x.moves); !slices.Equal(got, x.want) {
			t.Errorf("%s: %q, want %q", x.name, got, x.want)
		}
	}
}
