package layout

import "testing"

// Where a page must end within one of two groups it ends within the one that is not dear: a
// step with a load on the hook was parted, its words on one page and its ticks on the next.
func TestDearGroupsStayWhole(t *testing.T) {
	t.Parallel()
	for _, x := range []struct {
		dear bool
		want int // pieces on the first page: the fuller one is taken where nothing else decides
	}{{false, 4}, {true, 2}} {
		ps := []Piece{named("", 10), named("", 60), named("", 60), named("", 60), named("", 60), named("", 10)}
		ps[1].Group, ps[2].Group, ps[3].Group, ps[4].Group = 1, 1, 2, 2
		ps[2].KeepNext = true // no page may end between the two groups
		ps[3].Dear, ps[4].Dear = x.dear, x.dear
		got := breakPages(flow{ps, func(int) Mm { return 200 }, func(int) bool { return false }}, func(int, Mm) {})
		if len(got) != 2 || got[0].to != x.want {
			t.Errorf("second group dear %t: pages %+v, the first should hold %d pieces of six", x.dear, got, x.want)
		}
	}
}

// One of two like steps stood on the page after the one with what is done at both, though the two
// go onto one page. A page more is never taken for it.
func TestLedPiecesBeginNoPage(t *testing.T) {
	t.Parallel()
	for _, x := range []struct {
		name  string
		third Mm // the height of the piece that is led
		want  int
	}{{"both go onto the second page", 60, 1}, {"they take a page more there", 110, 3}} {
		ps := []Piece{named("", 60), named("", 20), named("", 60), named("", x.third), named("", 30)}
		ps[1].KeepNext = true
		ps[2].Group, ps[3].Group = 1, 2
		ps[3].Led = true
		got := breakPages(flow{ps, func(int) Mm { return 180 }, func(int) bool { return false }}, func(int, Mm) {})
		if len(got) != 2 || got[0].to != x.want {
			t.Errorf("%s: pages %+v, the first should hold %d pieces of five", x.name, got, x.want)
		}
	}
}
