package layout

import "testing"

// Where as many pages are taken either way, the last line of the work stands below the rest of
// it, though the pages are less even then, and a list begins the next one: a single line of work
// had a page of work for itself.
func TestNoPageOfWorkForALine(t *testing.T) {
	t.Parallel()
	for _, x := range []struct {
		work bool
		want int // pieces on the first page
	}{{false, 1}, {true, 2}} {
		ps := []Piece{named("", 130), named("", 10), named("", 125), named("", 130)}
		got := breakPages(flow{ps, func(int) Mm { return 150 }, func(i int) bool { return x.work && i < 2 }}, func(int, Mm) {})
		if len(got) != 3 || got[0].to != x.want {
			t.Errorf("sheet of work %t: pages %+v, the first should hold %d pieces of four", x.work, got, x.want)
		}
	}
}
