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
