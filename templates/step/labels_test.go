package step

import (
	"slices"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/words"
)

// starterSteps calls for each step of a starter, with its items as printed.
func starterSteps(starter string, see func(st *job.Step, items []layout.Item)) {
	c, all := stepsOfStarter(starter)
	for _, st := range all {
		var items []layout.Item
		for _, p := range Pieces(c, st) {
			items = append(items, p.Block.Items()...)
		}
		see(st, items)
	}
}

// plain is what a text item says, empty for another.
func plain(it layout.Item) string {
	text, _ := it.Shape.(layout.Text)
	return strings.ReplaceAll(text.S, "\u00a0", " ")
}

// The line of a lift that goes on ran on behind what is taken from under its load: one tick
// stood for both.
func TestLiftThatGoesOnHasItsLine(t *testing.T) {
	t.Parallel()
	seen := 0
	starterSteps("storm-pump.yaml", func(st *job.Step, items []layout.Item) {
		if len(st.FromUnder) == 0 || len(st.GoesOn) == 0 {
			return
		}
		seen++
		out, on := -1.0, -1.0
		for _, it := range items {
			switch text := plain(it); {
			case strings.HasPrefix(text, "out again:"):
				out = float64(it.X)
			case strings.HasPrefix(text, st.GoesOn[0].Mark+" goes on from"):
				on = float64(it.X)
			}
		}
		if out < 0 || on < 0 || on > out-5 {
			t.Errorf("%s: taken out at %.1f mm, the lift goes on at %.1f mm: it does not begin a line before the tick", st.Name(), out, on)
		}
	})
	if seen == 0 {
		t.Error("no lift goes on")
	}
}

// Ticked in order, blocks were pulled from under 145 kg on the hook: their box stood above the line
// of the lift that carried the cover away, and above what is seen on the way.
func TestBlocksComeOutWhenTheLoadStands(t *testing.T) {
	t.Parallel()
	seen := 0
	starterSteps("bevel-gearbox.yaml", func(st *job.Step, items []layout.Item) {
		if len(st.LeftBehind) == 0 {
			return
		}
		seen++
		out, before := -1, -1 // items are set down the page
		for i, it := range items {
			switch text := plain(it); {
			case strings.HasPrefix(text, "out again:"):
				out = i
			case strings.HasPrefix(text, "seen:"), strings.HasPrefix(text, st.GoesOn[0].Mark+" goes on from"):
				before = i
			}
		}
		if before < 0 || out <= before {
			t.Errorf("%s: the blocks come out at item %d, the load is seen to stand at item %d", st.Name(), out, before)
		}
	})
	if seen == 0 {
		t.Error("nothing was put under a load that is carried away")
	}
}

// A joint at several places had its mark before its box and "tight" behind it: the word stood
// nearer to the next mark than the box to its own.
func TestTickOfAPlaceHasItsMarkBehindIt(t *testing.T) {
	t.Parallel()
	c, all := stepsOfStarter("triplex-pump.yaml")
	alike := map[string][]*job.Step{}
	for _, st := range all {
		if len(st.Tighten) > 1 && st.Tighten[0].Joint != nil && st.Tighten[0].Joint.Base == "J4" {
			alike[st.Key] = append(alike[st.Key], st)
		}
	}
	seen := 0
	for _, steps := range alike {
		if len(steps) < 2 {
			continue
		}
		said := map[string]bool{}
		for _, p := range InOne(c, steps) {
			for _, it := range p.Block.Items() {
				said[plain(it)] = true
			}
		}
		for _, st := range steps {
			for _, f := range st.Tighten {
				seen++
				if want := f.Joint.Mark + " " + words.English.Step.IsTight; !said[want] {
					t.Errorf("%s: no box says %q", st.Name(), want)
				}
			}
		}
	}
	if seen == 0 {
		t.Error("no like steps tighten a joint at several places")
	}
}

// Two rules told which of several tries is written into the boxes of the step.
func TestOneRuleForTheBoxesOfTries(t *testing.T) {
	t.Parallel()
	seen := 0
	for _, starter := range []string{"bevel-gearbox.yaml", "triplex-pump.yaml"} {
		starterSteps(starter, func(st *job.Step, items []layout.Item) {
			if st.Until == nil || st.Tries < 2 || len(st.Measure)+len(st.Set) == 0 {
				return
			}
			seen++
			var said []string
			for _, it := range items {
				said = append(said, plain(it))
			}
			if all := strings.Join(said, " "); strings.Count(all, "The boxes above are for the last try") != 1 {
				t.Errorf("%s: the rule for its boxes does not stand once in %q", st.Name(), all)
			}
		})
	}
	if seen == 0 {
		t.Error("no step has tries")
	}
}

// The frame of a question lay on the rule above the step.
func TestFrameOfAQuestionStandsClear(t *testing.T) {
	t.Parallel()
	const least layout.Mm = 1
	c := block.New(pdf.NewFaces(), layout.Pen{}, &job.Job{}, words.English, 180)
	frames := 0
	for _, it := range decision(c, &job.Step{}, "was a nut turned?", nil, "do this step", "leave it out", 120).Items() {
		if r, ok := it.Shape.(layout.Rect); ok && r.Dash > 0 {
			if frames++; it.Y < least {
				t.Errorf("the frame begins %.1f mm below the rule, want %.1f", it.Y, least)
			}
		}
	}
	if frames != 1 {
		t.Errorf("%d frames, want 1", frames)
	}
}

// Two parts of two sets each printed every set twice.
func TestMatchedSetsStandOnce(t *testing.T) {
	t.Parallel()
	part := func(set string) *job.Move { return &job.Move{Part: &job.Part{Set: &job.Set{Mark: set}}} }
	got := setMarks([]*job.Move{part("S5/DE"), part("S5/NDE"), part("S5/DE"), part("S5/NDE")})
	if want := []string{"S5/DE", "S5/NDE"}; !slices.Equal(got, want) {
		t.Errorf("matched sets %q, want %q", got, want)
	}
}
