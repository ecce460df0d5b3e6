package filled_test

import (
	"math/big"
	"os"
	"strings"
	"testing"
	"testing/fstest"

	"matchmark/packs"
	"matchmark/packs/filled"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/packs/units"
)

// worked reads the rows of a file, below the head of all, and works them out.
func worked(t *testing.T, jb *job.Job, rows string) (*filled.Result, string) {
	t.Helper()
	f := filled.Read("x.csv", []byte(head+rows), jb)
	v, _ := filled.Merge([]*filled.File{f})
	r := filled.Work(jb, v)
	var told []string
	for _, p := range append(append(f.Told[:0:0], f.Told...), r.Problems...) {
		told = append(told, p.Code)
	}
	return r, strings.Join(told, " ")
}

// TestStampedNumber: the number etched on the pinion of the gearbox, in hundredths, and
// the size typed beside it agree, or neither is taken.
func TestStampedNumber(t *testing.T) {
	jb := starter(t, "bevel-gearbox.yaml")
	d9 := dim(t, jb, "D9")
	r, told := worked(t, jb, "D9,(number on the part),found,7,\nD9,,found,0.07 mm,\n")
	if q := r.Readings(d9, job.AsFound)[0]; told != "" || q == nil || q.Text() != "0.07 mm" {
		t.Errorf("7 × 0.01 mm is %v, told %s", q, told)
	}
	r, told = worked(t, jb, "D9,(number on the part),found,-7,\nD9,,found,0.07 mm,\n")
	if q := r.Readings(d9, job.AsFound)[0]; told != "number-size" || q != nil {
		t.Errorf("a number that does not make its size gives %v, told %s", q, told)
	}
}

// TestAnswers: a box that is ticked takes its own answers and no others.
func TestAnswers(t *testing.T) {
	jb := starter(t, "triplex-pump.yaml")
	for _, b := range jb.Blanks() {
		if b.Box.Form != reading.Ticks || b.When != job.AsFound {
			continue
		}
		answers := b.Dim.Found
		if b.Dim.Left != nil {
			answers = b.Dim.Left
		}
		for _, a := range answers.Answers() {
			r, told := worked(t, jb, b.Dim.Mark+",\""+filled.Position(b)+"\",found,"+strings.ToUpper(a.Typed())+",\n")
			if got := r.Typed(b.Key()); told != "" || got != a.Typed() {
				t.Errorf("%s: %q is read as %q, told %s", b.Key(), a.Typed(), got, told)
			}
			v, _ := r.Verdict(b.Dim, job.AsFound)
			if one := b.Dim.Positions.Boxes() == 1; one && a.Right == (v.Outcome == filled.Out) {
				t.Errorf("%s: %q is judged %d", b.Key(), a.Typed(), v.Outcome)
			}
		}
		if _, told := worked(t, jb, b.Dim.Mark+",\""+filled.Position(b)+"\",found,perhaps,\n"); told != "not-an-answer" {
			t.Errorf("%s takes \"perhaps\": %s", b.Key(), told)
		}
		return
	}
	t.Error("nothing is ticked on the triplex pump")
}

// TestChangeOfShims: a gap goes back as it was found, but for what the new shims change, by
// hand: 0.62 as found, less the new pack of 1.90, plus the old one of 2.05, is 0.77 mm.
func TestChangeOfShims(t *testing.T) {
	jb, problems := packs.Load(os.DirFS("../../testdata/good"), packs.Inputs{Definition: "shim-change.yaml"})
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	const rows = "D8,,found,0.62 mm,\nD11,,found,2.05 mm,\nD12,,left,1.90 mm,\n"
	r, told := worked(t, jb, rows)
	a, known := r.Advise(dim(t, jb, "D8"))
	if told != "" || !known || a.Expected || a.Target.Text() != "0.77 mm" || a.Low.Text() != "0.72 mm" || a.High.Text() != "0.82 mm" {
		t.Errorf("the gap is worked out as %+v, told %q", a, told)
	}
	for _, x := range []struct {
		left string
		want filled.Outcome
	}{{"0.72", filled.In}, {"0.82", filled.In}, {"0.71", filled.Out}, {"0.83", filled.Out}} {
		r, _ := worked(t, jb, rows+"D8,,left,"+x.left+" mm,\n")
		if v, _ := r.Verdict(dim(t, jb, "D8"), job.AsLeft); v.Outcome != x.want {
			t.Errorf("%s mm is judged %d, want %d", x.left, v.Outcome, x.want)
		}
	}
}

// lockNut is a lock nut that sets its stand-off.
const lockNut = `
pack: 1
equipment: {tag: FN-11, name: Fan}
job: {number: WO-1, title: Nut, revision: A, issued: 2026-03-02}
parts: {shaft: {name: Shaft}, nut: {name: Lock nut, thread: M90x2, flats: 6}}
containers: {C2: {name: Lock nut, kind: bag, keep: oiled}}
dimensions:
  D7: {what: Lock nut stand-off, kind: stand-off, from: {nut: face}, to: {shaft: end}, nominal: 25.00 mm, left: as found +/- 0.20 mm, adjust: nut, source: maker's sheet 4}
steps:
  - {step: nut, do: Measure the stand-off. Take the nut off., measure: [D7], remove: [nut], into: C2, back: Run the nut up to its found stand-off.}
`

// TestFlatsToGo: a lock nut M90x2 with six flats moves its stand-off 2 ÷ 6 = 0.33 mm a
// flat; left 0.30 mm too far it has 0.9 flats to go, and found where it belongs none.
func TestFlatsToGo(t *testing.T) {
	jb, problems := packs.Load(fstest.MapFS{"nut.yaml": {Data: []byte(lockNut)}}, packs.Inputs{Definition: "nut.yaml"})
	if problems.Errors() > 0 {
		t.Fatal(problems)
	}
	d := dim(t, jb, "D7")
	r, _ := worked(t, jb, "D7,,found,25.30 mm,\nD7,,left,25.60 mm,\n")
	a, known := r.Advise(d)
	if !known || a.ToGo == nil || a.ToGo.Text() != "-0.30 mm" || !a.Flats || a.Turns == nil || a.When != job.AsLeft {
		t.Fatalf("%+v", a)
	}
	flats := new(big.Rat).Quo(big.NewRat(30, 100), d.PerFlat.Number.Abs().Rat())
	if a.Turns.Rat().Cmp(flats) != 0 || a.Turns.Round(1, units.Nearest).Text() != "0.9" {
		t.Errorf("%s flats to go, want %s", a.Turns.Text(), flats.FloatString(3))
	}
	v, _ := r.Verdict(d, job.AsLeft)
	if v.Outcome != filled.Out {
		t.Errorf("0.30 mm off as found ± 0.20 mm is judged %d", v.Outcome)
	}
	r, _ = worked(t, jb, "D7,,found,25.30 mm,\n")
	if a, known := r.Advise(d); !known || a.ToGo != nil || a.Target.Text() != "25.30 mm" {
		t.Errorf("a nut that was not turned has %+v to go", a)
	}
}

// TestWarmPart: a reading of a warm part is judged as it would be at 20 °C or 68 °F: less
// its growth for each degree over.
func TestWarmPart(t *testing.T) {
	tried := 0
	for _, name := range []string{"inch-blower.yaml", "every-arrangement.yaml"} {
		jb, problems := packs.Load(os.DirFS("../../testdata/good"), packs.Inputs{Definition: name})
		if problems.Errors() > 0 {
			t.Fatal(problems)
		}
		for _, b := range jb.Blanks() {
			d := b.Dim
			if d.Warm == nil || b.Kind != job.ReadingBlank || b.When != job.AsFound || d.In != nil || d.Box.Form != reading.Digits {
				continue
			}
			size := units.Quantity{Number: units.Whole(1).Round(d.Box.After, units.Nearest), Unit: d.Box.Unit}
			if low, _ := d.Expected(); low != nil {
				size.Number = low.Round(d.Box.After, units.Nearest)
			}
			r, told := worked(t, jb, d.Mark+",\""+filled.Position(b)+"\",found,"+size.Text()+",B. Hale\n"+d.Mark+",(part at),found,"+d.Warm.At.Number.Add(units.Whole(12)).Text()+" "+d.Warm.At.Unit.Text()+",\n")
			want := new(big.Rat).Sub(size.Number.Rat(), new(big.Rat).Mul(big.NewRat(12, 1), d.Warm.PerDegree.Number.Rat()))
			got := r.Readings(d, job.AsFound)[b.N]
			if told != "" || got == nil || got.Number.Rat().Cmp(want) != 0 {
				t.Errorf("%s: %s at 12 degrees over is %v, want %s; told %s", b.Key(), size.Text(), got, want.FloatString(6), told)
			}
			tried++
		}
	}
	if tried == 0 {
		t.Error("no reading of a warm part was tried")
	}
}
