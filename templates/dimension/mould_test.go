package dimension

import (
	"os"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/words"
)

// TestMould: readings that are set as those of a like place stand as they do where all ways are
// tried for them.
func TestMould(t *testing.T) {
	cast := 0
	for _, from := range [][2]string{{"../../packs/starters", "triplex-pump.yaml"}, {"../../packs/starters", "storm-pump.yaml"}, {"../../testdata/good", "screw-blower.yaml"}, {"../../testdata/good", "field-diesel-engine.yaml"}, {"../../testdata/good", "vertical-motor.yaml"}, {"../../testdata/good", "decanter.yaml"}} {
		jb, _ := packs.Load(os.DirFS(from[0]), packs.Inputs{Definition: from[1]})
		setter := layout.NewSetter(pdf.NewFaces(), layout.Pen{})
		fresh := func() *block.Composer {
			return &block.Composer{Setter: setter, Job: jb, W: words.English, Span: 180, Kept: block.NewKept()}
		}
		all := fresh()
		for _, st := range jb.Steps() {
			for kind, ds := range map[Kind][]*job.Dim{Found: st.Measure, Left: st.Set} {
				for n := 1; n <= len(ds); n++ {
					s := setOf{ds[:n], kind, st.At, false}
					if key, ok := mouldOf(all, s, membersOf(all, s), reasonOf(all, Written(s.ds, kind), st.At)); ok {
						if _, known := all.Chosen(key); known {
							cast++
						}
					}
					got, at := blocks(all, s)
					want, where := blocks(fresh(), s)
					if dumped(got) != dumped(want) || at != where {
						t.Errorf("%s, step %s, %d readings: set as at a like place\n%s\nwant\n%s", from[1], st.No, n, dumped(got), dumped(want))
					}
				}
			}
		}
	}
	if cast < 5 {
		t.Errorf("%d steps were set as like ones, which tells nothing", cast)
	}
}

// dumped are blocks as text, one below the other.
func dumped(bs []layout.Block) string {
	return layout.Dump(layout.Frame{Items: layout.Above(1, bs...).Items()})
}
