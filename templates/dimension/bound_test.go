package dimension

import (
	"testing"

	"matchmark/layout"
)

// TestLeastRows: no rows of any dimension, set in any way and width, alone or with the one
// behind it as a like place, are lower than what is said to be the least; else a way would
// be left out that is lower.
func TestLeastRows(t *testing.T) {
	for _, name := range []string{"storm-pump.yaml", "triplex-pump.yaml", "bevel-gearbox.yaml", "exhaust-fan.yaml"} {
		jb, c := starter(name, 180)
		rows := 0
		for i, d := range jb.Dims {
			if d.Sheet {
				continue
			}
			k := content{Composer: c, entries: []entry{{d, sidesOf(c, d, Left)}}, back: true, tried: newTried()}
			if i+1 < len(jb.Dims) && jb.Dims[i+1].Base == d.Base {
				next := jb.Dims[i+1]
				k.entries = append(k.entries, entry{next, sidesOf(c, next, Left)})
			}
			for _, w := range k.ways() {
				for _, width := range []layout.Mm{60, 95, 140, 180} {
					rows++
					if r := k.rows(w, width); r.h < k.leastRows(w, width) {
						t.Errorf("%s %s: rows of %v are lower than the least, %v", name, d.Mark, r.h, k.leastRows(w, width))
					}
				}
			}
		}
		if rows == 0 {
			t.Errorf("%s: no rows", name)
		}
	}
}
