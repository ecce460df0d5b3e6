package heatsheet

import (
	"os"
	"slices"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/words"
)

// A hot pull on a hook told nobody who reads the watch while one heats and one pulls, and let the
// hook take "one sling". Common practice, no source, for who does what; EN 1492, from memory, for
// the slings.
func TestHandsAndSlingsOfAHotPull(t *testing.T) {
	t.Parallel()
	w := words.English.HeatPull
	for _, x := range []struct {
		file       string
		least      int
		crane, hot bool // a box for the driver; the line of slings
	}{
		{"guide-vanes.yaml", 4, true, true},
		{"vertical-motor.yaml", 4, false, true}, // the driver signs on the lift sheet
		{"heat-coupling.yaml", 3, false, false},
	} {
		jb, _ := packs.Load(os.DirFS("../../testdata/good"), packs.Inputs{Definition: x.file})
		c := block.New(pdf.NewFaces(), layout.Pen{}, jb, words.English, 180)
		i := slices.IndexFunc(jb.Heats, func(h *job.Heat) bool { return h.Pull != nil })
		h := jb.Heats[i]
		said := ""
		for _, p := range sheetOf(c, h).pullPieces() {
			for _, it := range p.Block.Items() {
				if text, ok := it.Shape.(layout.Text); ok {
					said += text.S + " "
				}
			}
		}
		if least, _ := h.Hands(); least != x.least {
			t.Errorf("%s: %d people at the least, want %d", x.file, least, x.least)
		}
		for name, want := range map[string]bool{w.HandTorch: true, w.HandPull: true, w.HandWatch: true, w.HandCrane: x.crane, w.HandSignal: x.crane, "no web sling": x.hot} {
			if strings.Contains(said, name) != want {
				t.Errorf("%s: %q stands there %t, want %t", x.file, name, !want, want)
			}
		}
	}
}

// What is told of slings stands once on a sheet: at the pull where the part hangs on the hook
// then, else where it is put on.
func TestSlingsAreToldOnce(t *testing.T) {
	t.Parallel()
	for _, x := range []struct{ off, on string }{{"hook", "hook"}, {"hook", ""}, {"", "hook"}, {"", ""}} {
		c := stormPump(180)
		h := c.Job.Heats[0]
		h.PulledAt.OnHook, h.PutOnAt.OnHook = x.off, x.on
		want := 0
		if x.off+x.on != "" {
			want = 1
		}
		said := strings.Join(wordsOf(sheetOf(c, h).pieces()), " ")
		if got := strings.Count(said, "no web sling"); got != want {
			t.Errorf("drawn off on the hook %q, put on by the hook %q: slings are told %d times, want %d", x.off, x.on, got, want)
		}
	}
}

// A step that takes more people than a part on a hook needs has as many on its heat sheet, and two
// boxes for the torches where nobody does two things; the sheet told four beside a step of six.
// Without its step it has the least. Common practice, no source.
func TestAsManyHandsAsTheStepTakes(t *testing.T) {
	t.Parallel()
	w := words.English.HeatPull
	for people, want := range map[int]struct {
		told    string
		torches int
	}{0: {"4", 1}, 4: {"4", 1}, 5: {"5", 1}, 6: {"6", 2}} {
		c := stormPump(180)
		h := c.Job.Heats[0]
		h.PulledAt.OnHook, h.PulledAt.People = "hall crane", people
		said := wordsOf(sheetOf(c, h).handPieces())
		torches := 0
		for _, text := range said {
			if text == w.HandTorch {
				torches++
			}
		}
		if !strings.Contains(strings.Join(said, " "), w.Hands.With(want.told)) || torches != want.torches {
			t.Errorf("%d people: %d boxes for the torches, want %d, in %q", people, torches, want.torches, said)
		}
	}
	c := stormPump(180)
	c.Job.Heats[0].PulledAt = nil
	if said := strings.Join(wordsOf(sheetOf(c, c.Job.Heats[0]).handPieces()), " "); !strings.Contains(said, w.Hands.With("3")) {
		t.Errorf("a heat without its step tells %q", said)
	}
}
