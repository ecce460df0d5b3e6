package step

import (
	"os"
	"slices"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/templates/words"
)

// The boxes that ask whether a bolt moved stood below the lines of the locks: who ticked no
// there went back to the disc with belt and breaker free.
func TestDoneAgainBeforeTheLocksAreOff(t *testing.T) {
	t.Parallel()
	// The gearbox takes its locks off in its last step; here the step before it does both.
	written, err := os.ReadFile("../../packs/starters/bevel-gearbox.yaml")
	if err != nil {
		t.Fatal(err)
	}
	text, _, _ := strings.Cut(string(written), "      - step: let-go\n")
	text += "        hand-back: [again]\n        unlock: [belt, heater, motor]\n"
	c := composerOf(t, text)
	tested := 0
	for _, st := range c.Job.Steps() {
		if st.Until == nil || len(st.Unlock) == 0 {
			continue
		}
		tested++
		all := printedOf(c, st)
		tight, again, off := strings.Index(all, "tighten"), strings.Index(all, words.English.Step.Again), strings.Index(all, "take the lock off")
		if tight < 0 || again < tight || off < again {
			t.Errorf("%s: tightened at %d, asked again at %d, locks off at %d of\n%s", st.Name(), tight, again, off, all)
		}
		// The gap of the disc counts when no bolt moves any more: its boxes stood above the tries.
		if read := strings.Index(all, "D31"); read < again || off < read {
			t.Errorf("%s: asked again at %d, D31 read at %d, locks off at %d of\n%s", st.Name(), again, read, off, all)
		}
	}
	if tested == 0 {
		t.Error("no step is done again before locks come off")
	}
}

// With D1, on which the tries hang, and D2 in one verb, the tries stood above the boxes of both,
// and said that the boxes above are for the last one.
func TestTriesStandBetweenWhatIsReadInThemAndWhatIsReadOnce(t *testing.T) {
	t.Parallel()
	for _, set := range []string{"[D1, D2]", "[D2, D1]"} {
		c := composerOf(t, strings.Replace(playAgain, "SET", set, 1))
		for _, st := range c.Job.Steps() {
			if st.Until == nil {
				continue
			}
			all := printedOf(c, st)
			tried, again, last, once := strings.Index(all, "Play in front"), strings.Index(all, words.English.Step.Again), strings.Index(all, words.English.Step.BoxesLast), strings.Index(all, "Play behind")
			if tried < 0 || again < tried || last < again || once < last {
				t.Errorf("set: %s: D1 at %d, done again at %d, its last line at %d, D2 at %d of\n%s", set, tried, again, last, once, all)
			}
			if n := strings.Count(all, words.English.Step.Again); n != 1 {
				t.Errorf("set: %s: asked %d times whether it is done again", set, n)
			}
		}
	}
}

const playAgain = `
pack: 1
equipment: {tag: PU-2, name: Rinse pump}
job: {number: WO-31, revision: A, issued: 2026-03-02, title: Seal change}
parts: {plunger: {name: Plunger}, sleeve: {name: Sleeve}, bolt: {name: Bolt, count: 4}}
dimensions:
  D1: {what: Play in front, kind: clearance, from: {plunger: track}, to: {sleeve: bore}, left: 0.05 to 0.12 mm, source: sheet 2}
  D2: {what: Play behind, kind: clearance, from: {plunger: back}, to: {sleeve: back}, left: 0.05 to 0.12 mm, source: sheet 2}
containers: {C1: {name: Bolts, kind: crate}}
steps:
  - {step: out, do: Take the bolts out., remove: [bolt], into: C1}
  - step: in
    do: Put all back and read.
    fit: [bolt]
    until: D1 is in limits
    tries: 3
    still-out: tell the engineer
    set: SET
`

// A step that was done again had boxes for what ends it alone: which leaves went in for the
// second try, and that the joint was tight again, was written nowhere.
func TestFurtherTriesHaveTheirBoxes(t *testing.T) {
	t.Parallel()
	tested := 0
	for _, starter := range []string{"bevel-gearbox.yaml", "triplex-pump.yaml"} {
		c, steps := stepsOfStarter(starter)
		for _, st := range steps {
			for i, a := range st.EachTry {
				tested++
				var name string
				switch {
				case a.Dim != nil:
					name = a.Dim.Mark
				case a.Joint != nil:
					name = a.Joint.Mark
				default:
					name = a.Words
				}
				for no := range st.Tries {
					own := a.Dim != nil && (slices.Contains(st.Set, a.Dim) || slices.Contains(st.Measure, a.Dim))
					want := no > 0 && !own || own && (no < st.Tries-1 || st.Until.Dim != nil)
					if got := strings.Contains(said(tryBlock(c, st, no, 160)), name); got != want {
						t.Errorf("%s: try %d names %s, number %d of what it does: %v, want %v", st.Name(), no+1, name, i+1, got, want)
					}
				}
			}
		}
	}
	if tested == 0 {
		t.Error("no step says what a further try does")
	}
}

// said is the text of a block.
func said(b layout.Block) string {
	var out []string
	for _, item := range b.Items() {
		if text, ok := item.Shape.(layout.Text); ok {
			out = append(out, text.S)
		}
	}
	return strings.ReplaceAll(strings.Join(out, " "), "\u00a0", " ")
}
