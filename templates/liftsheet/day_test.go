package liftsheet

import (
	"os"
	"slices"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/packs/job"
	"matchmark/packs/units"
	"matchmark/templates/block"
	"matchmark/templates/words"
)

// A lift with stops on the way in or at the trial lift alone lost "clear of what it sat on":
// nobody looked on the way out whether it hung on a dowel.
func TestUsualStopGoingUp(t *testing.T) {
	c := &block.Composer{W: words.English}
	for _, x := range []struct {
		name string
		l    job.Lift
		want bool
	}{
		{"none of its own", job.Lift{}, true},
		{"stops-in alone", job.Lift{StopsIn: []string{"dowels in line"}}, true},
		{"trial-stops alone", job.Lift{TrialStops: []string{"joint open"}}, true},
		{"stops", job.Lift{Stops: []string{"clear of the studs"}}, false},
	} {
		got := slices.ContainsFunc(stopPoints(c, &x.l), func(p stopPoint) bool { return p.text == words.English.Lift.StopLiftOff })
		if got != x.want {
			t.Errorf("%s: the usual stop going up stands %t, want %t", x.name, got, x.want)
		}
	}
}

// A lift whose crew named nobody in charge had no box for who was.
func TestWhoSigns(t *testing.T) {
	w := words.English
	for _, x := range []struct{ crew, want []string }{
		{nil, []string{"person in charge", "crane driver", "rigger"}},
		{[]string{"hoist driver", "one at each end"}, []string{"person in charge", "hoist driver", "one at each end"}},
		{[]string{"hoist driver", "The person in charge of the lift"}, []string{"hoist driver", "The person in charge of the lift"}},
	} {
		if got := Roles(w, &job.Lift{Crew: x.crew}); !slices.Equal(got, x.want) {
			t.Errorf("crew %q: %q sign, want %q", x.crew, got, x.want)
		}
	}
}

// Two on tag lines had one cell to sign in.
func TestEachOfACrewSigns(t *testing.T) {
	l := &job.Lift{Crew: []string{"person in charge", "two on tag lines", "one at each ring"}}
	want := []string{"person in charge: name and signature", "two on tag lines 1/2: name and signature", "two on tag lines 2/2: name and signature", "one at each ring: names and signatures of all"}
	if got := signHeads(words.English, l); !slices.Equal(got, want) {
		t.Errorf("%q sign, want %q", got, want)
	}
}

// Two brackets hung on the hook as "Bearing bracket, Bearing bracket".
func TestHeavyPartsHaveTheirPlace(t *testing.T) {
	mass := units.Quantity{Number: units.Whole(118), Unit: units.Kilogram}
	bracket := func(at string) *job.Move {
		return &job.Move{Part: &job.Part{Name: "Bearing bracket", Mass: &mass, Place: job.Place{Label: at}}}
	}
	heavy := units.Quantity{Number: units.Whole(25), Unit: units.Kilogram}
	c := &block.Composer{W: words.English, Job: &job.Job{Site: job.Site{Heavy: heavy}}}
	both := &job.Step{Fit: []*job.Move{bracket("DE"), bracket("NDE")}}
	one := &job.Step{Remove: []*job.Move{bracket("DE")}, Place: job.Place{Label: "DE"}}
	for st, want := range map[*job.Step]string{both: "Bearing bracket DE 118 kg, Bearing bracket NDE 118 kg", one: "Bearing bracket 118 kg"} {
		if got := strings.ReplaceAll(heavyParts(c, st), "\u00a0", " "); got != want {
			t.Errorf("on the hook: %q, want %q", got, want)
		}
	}
}

// A runner drawn off hot on the hook was to hang a minute at its trial lift, while its heat sheet
// said that it grips again after 30 s: no trial lift there, and a look where it is clear. Put back
// hot it has its trial lift cold, and goes home without a stop above its seat.
func TestNoTrialWaitWhereItGripsAgain(t *testing.T) {
	c := &block.Composer{W: words.English}
	hub := &job.Part{Name: "runner"}
	h := &job.Heat{Hub: hub, Pull: &job.HotPull{}, PutOn: &job.HotFit{}}
	off, on := &job.Step{Remove: []*job.Move{{Part: hub}}, Heats: []*job.Heat{h}}, &job.Step{Index: 1, Fit: []*job.Move{{Part: hub}}, Heats: []*job.Heat{h}}
	cold := &job.Step{Index: 2, Remove: []*job.Move{{Part: hub}}}
	l := &job.Lift{Parts: []*job.Part{hub}, Steps: []*job.Step{off, on, cold}}
	w := words.English.Lift
	trial := w.StopTrial.With(l.Print(l.Trial.Size()))
	for _, x := range []struct {
		text          string
		off, on, cold bool
	}{
		{trial, false, true, true}, {w.StopDrawnHot, true, false, false}, {w.StopPutOnHot, false, true, false}, {w.StopHotClear, true, false, false}, {w.StopSlack, true, true, true}, {w.StopSeat, true, false, true},
	} {
		i := slices.IndexFunc(stopPoints(c, l), func(p stopPoint) bool { return p.text == x.text })
		if i < 0 {
			t.Errorf("no stop: %s", x.text)
			continue
		}
		p := stopPoints(c, l)[i]
		if p.met(off) != x.off || p.met(on) != x.on || p.met(cold) != x.cold {
			t.Errorf("met drawn off hot %t, put on hot %t, cold %t, want %t %t %t: %s", p.met(off), p.met(on), p.met(cold), x.off, x.on, x.cold, x.text)
		}
	}
	l.Steps = l.Steps[:1]
	if slices.ContainsFunc(stopPoints(c, l), func(p stopPoint) bool { return p.text == trial }) {
		t.Error("a lift that draws its load off hot alone has a trial lift")
	}
}

// What is read at a trial lift has no box where the load is drawn off hot and has none.
func TestNoBoxesOfATrialThatIsNotMade(t *testing.T) {
	t.Parallel()
	jb, _ := packs.Load(os.DirFS("../../testdata/good"), packs.Inputs{Definition: "vertical-motor.yaml"})
	c := block.New(pdf.NewFaces(), layout.Pen{}, jb, words.English, 180)
	i := slices.IndexFunc(jb.Lifts, func(l *job.Lift) bool { return l.Result != nil && slices.ContainsFunc(l.Steps, l.DrawnHot) })
	l := jb.Lifts[i]
	cols, _ := trialColumns(c, l)
	trial := 0
	for _, x := range cols {
		if x.trial {
			trial++
		}
	}
	struck := 0
	for _, p := range dayTable(c, l, &layout.Block{}, 1, cols) {
		for _, it := range p.Block.Items() {
			if text, ok := it.Shape.(layout.Text); ok && text.S == "—" {
				struck++
			}
		}
	}
	drawn := 0
	for _, st := range l.Steps {
		if l.DrawnHot(st) || slices.Contains(st.GoesOn, l) {
			drawn++
		}
	}
	if trial == 0 || drawn == len(l.Steps) || struck != trial*drawn {
		t.Errorf("%d cells are struck, want those of %d readings at %d of %d steps", struck, trial, drawn, len(l.Steps))
	}
}
