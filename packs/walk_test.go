package packs_test

import (
	"os"
	"testing"

	"pgregory.net/rapid"

	"matchmark/packs/job"
	"matchmark/packs/walk"
)

// The laws of the walk itself: pieces are neither made nor lost at any event, and when
// all is undone the machine is as it was.

// failer is what a test and a random test have in common.
type failer interface {
	Helper()
	Errorf(string, ...any)
}

// conserved counts the pieces of every part at every event, by what the acts say, and
// compares with what the walk says of the machine and of the containers.
func conserved(t failer, jb *job.Job) *walk.Walk {
	t.Helper()
	w := walk.Of(jb)
	off, now, in := map[*job.Part]int{}, map[*job.Part]int{}, map[*job.Container]int{}
	same := func(at *walk.Event) {
		for _, p := range jb.Parts {
			on := p.Count - off[p]
			if p.Aid {
				on = 0
			}
			if n, _ := w.Now(p, at); w.On(p, at) != on || n != now[p] {
				t.Errorf("before event %d at %s: %d of %s are on and %d for now; the acts say %d and %d", at.Index, at.Step.Name(), w.On(p, at), p.Called(), n, on, now[p])
			}
			if off[p] < 0 || now[p] < 0 || off[p] > p.Count {
				t.Errorf("before event %d: %d of %s are off, of %d", at.Index, off[p], p.Called(), p.Count)
			}
		}
		for _, c := range jb.Containers {
			if got := w.Pieces(c, at); got != in[c] || got < 0 {
				t.Errorf("before event %d: %d pieces lie in %s, the acts say %d", at.Index, got, c.Mark, in[c])
			}
		}
	}
	for _, e := range w.Events {
		same(e)
		switch m := e.Move; e.Verb {
		case job.DoRemove:
			off[m.Part] += m.N
			if m.To.Container != nil {
				in[m.To.Container] += m.N
			}
		case job.DoFit:
			off[m.Part] -= m.N
			if m.From.Container != nil {
				in[m.From.Container] -= m.N
			}
		case job.DoFitForNow:
			now[m.Part] += m.N
		case job.DoTakeOut:
			now[m.Part] -= m.N
		}
	}
	return w
}

// asItWas sees that the machine of a job is whole again when all is done.
func asItWas(t failer, w *walk.Walk) {
	t.Helper()
	for _, p := range w.Job.Parts {
		gone := 0 // scrapped for good
		for _, m := range p.Off {
			if m.To.Scrap && !p.ComesNew() {
				gone += m.N
			}
		}
		want := p.Count - gone
		if p.Aid {
			want = 0
		}
		if now, _ := w.NowAtEnd(p); w.OnAtEnd(p) != want || now != 0 {
			t.Errorf("%d of %s are on at the end and %d for now, want %d and none", w.OnAtEnd(p), p.Called(), now, want)
		}
	}
	for _, g := range w.GripsAtEnd() {
		if g.Loosened != nil {
			t.Errorf("%s is loose at the end", g.Of.Mark())
		}
	}
	end := &walk.Event{Index: len(w.Events)}
	for _, c := range w.Job.Containers {
		if n := w.Pieces(c, end); n != 0 {
			t.Errorf("%d pieces lie in %s at the end", n, c.Mark)
		}
	}
	for _, o := range w.Job.Openings {
		if w.Open(o, end) != nil {
			t.Errorf("%s is open at the end", o.Mark())
		}
	}
	for _, x := range w.Job.Isolations {
		if w.Locked(x, end) != nil {
			t.Errorf("%s is locked at the end", x.Key)
		}
	}
}

func TestPiecesAreConserved(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		asItWas(t, conserved(t, mustLoad(t, drawJob(t, true))))
	})
	for _, file := range orderFiles(t) {
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		jb, problems := loadLaw(data)
		if len(problems) > 0 {
			t.Fatal(file, problems)
		}
		asItWas(t, conserved(t, jb))
	}
}

// TestPilesComeBack: the same of piles, whose joints are loosened and tightened.
func TestPilesComeBack(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		p := drawPile(t)
		jb, err := p.told(t)
		if err != nil {
			t.Fatalf("%v\n%s", err, p.text())
		}
		asItWas(t, conserved(t, jb))
	})
}
