package liftsheet

import (
	"os"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/templates/block"
	"matchmark/templates/words"
)

// A cover that hung taut in the slings of its lift was said to have no lift sheet, and the sheet
// stood ten pages on.
func TestGearOfALiftNamesItsSheet(t *testing.T) {
	t.Parallel()
	jb, _ := packs.Load(os.DirFS("../../testdata/good"), packs.Inputs{Definition: "guide-vanes.yaml"})
	c := block.New(pdf.NewFaces(), layout.Pen{}, jb, words.English, 180)
	named, routine := 0, 0
	for _, st := range jb.Steps() {
		if st.OnHook == "" {
			continue
		}
		said := ""
		for _, it := range Lines(c, st, 180)[0].Items() {
			if text, ok := it.Shape.(layout.Text); ok {
				said += text.S + " "
			}
		}
		said = strings.Join(strings.Fields(said), " ")
		sheet := strings.Contains(said, "Lift sheet L")
		if sheet == strings.Contains(said, "No lift sheet") || sheet != strings.Contains(st.OnHook, "slings of L") {
			t.Errorf("%s, hangs on the %s: %s", st.Name(), st.OnHook, said)
		}
		if sheet {
			named++
		} else {
			routine++
		}
	}
	if named != 4 || routine != 2 {
		t.Errorf("%d loads hang in the gear of a lift and %d in none, want 4 and 2", named, routine)
	}
}

// The line of a step told of a trial lift and a wait where its load is drawn off hot and grips
// again meanwhile: such a lift has none, and one that is put on hot has it cold.
func TestTheLineOfAHotLoadTellsOfNoWait(t *testing.T) {
	t.Parallel()
	jb, _ := packs.Load(os.DirFS("../../testdata/good"), packs.Inputs{Definition: "vertical-motor.yaml"})
	c := block.New(pdf.NewFaces(), layout.Pen{}, jb, words.English, 180)
	off, on, cold := 0, 0, 0
	for _, l := range jb.Lifts {
		for _, st := range l.Steps {
			if l.Result == nil || len(l.Reasons(nil)) > 0 || st.OnHook != "" {
				continue
			}
			line := stepLine(c, l, st)
			drawn, waits, first := strings.Contains(line, "no trial lift"), strings.Contains(line, "look, wait"), strings.Contains(line, "cold, before the heat")
			h := l.HotLoad(st)
			switch {
			case h != nil && l.DrawnHot(st):
				off++
				if !drawn || waits || first {
					t.Errorf("drawn off hot at %s: %s", st.Name(), line)
				}
			case h != nil:
				on++
				if drawn || waits || !first {
					t.Errorf("put on hot at %s: %s", st.Name(), line)
				}
			default:
				cold++
				if drawn || !waits || first {
					t.Errorf("cold at %s: %s", st.Name(), line)
				}
			}
		}
	}
	if off == 0 || on == 0 || cold == 0 {
		t.Errorf("%d loads drawn off hot, %d put on hot, %d cold: some of each are looked at", off, on, cold)
	}
}
