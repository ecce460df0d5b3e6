package filled_test

import (
	"math/big"
	"strings"
	"testing"

	"matchmark/packs/filled"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/packs/units"
)

// dim is a dimension of a job by its mark.
func dim(t *testing.T, jb *job.Job, mark string) *job.Dim {
	t.Helper()
	for _, d := range jb.Dims {
		if d.Mark == mark {
			return d
		}
	}
	t.Fatalf("there is no %s", mark)
	return nil
}

// TestStormPumpByHand works the filled storm pump of testdata through. The readings were
// made up for this test; each verdict is worked by hand from the limit that is printed
// beside the box, as said behind it. Those marked A7 are the verdicts of the
// demonstration's own filled sheet, to which its single readings were chosen.
func TestStormPumpByHand(t *testing.T) {
	jb := stormPump(t)
	r, told := come(t, jb, "storm-pump.csv")
	for _, p := range told {
		t.Errorf("%s", p.Message)
	}
	for _, x := range []struct {
		mark  string
		when  job.When
		want  filled.Outcome
		value string // of the first box, or of what is worked out; empty for none
	}{
		{"D1", job.AsFound, filled.Recorded, "0.00"},          // the bracket sags in it: judged on the alignment sheet
		{"D2", job.AsFound, filled.In, "0.00"},                // 0.02 − 0.00 = 0.02, at most 0.05
		{"D3", job.AsFound, filled.Open, "8.20"},              // 8.20, 8.25, 8.30 in 8.00 to 8.50, the fourth is not typed
		{"D4", job.AsFound, filled.Recorded, "2.35"},          // to be left as found, so nothing to judge yet
		{"D4", job.AsLeft, filled.In, "2.40"},                 // A7: 2.35 − 0.20 = 2.15 to 2.55
		{"D5", job.AsFound, filled.In, "0.085"},               // 0.050 to 0.120
		{"D7/DE", job.AsFound, filled.Out, "61.2"},            // A7: the fourth is 58.9, under 59.5: renew all six
		{"D7/NDE", job.AsFound, filled.In, "61.5"},            // the least is 60.9
		{"D9", job.AsFound, filled.In, "12.40"},               // 13.10 − 12.40 = 0.70, at most 1.50
		{"D10", job.AsFound, filled.In, "7.10"},               // 6.00 to 8.00
		{"D11", job.AsFound, filled.Recorded, "3.40"},         // half of the travel that is read later
		{"D12/DE-DIS", job.AsFound, filled.Recorded, "0.85"},  // A7: 0.50 + 0.25 + 0.10
		{"D12/DE-SUC", job.AsFound, filled.Recorded, "0.80"},  // A7: 0.50 + 0.25 + 0.05
		{"D12/NDE-DIS", job.AsFound, filled.Recorded, "0.60"}, // A7: 0.50 + 0.10
		{"D12/NDE-SUC", job.AsFound, filled.Recorded, "0.65"}, // A7: 0.50 + 0.10 + 0.05
		{"D13", job.AsFound, filled.In, "168"},                // hub 168 of 200 °C, cover 61 of 100 °C
		{"D14", job.AsFound, filled.In, "0.0500"},             // A7: 480.244 ÷ 4 − 480.044 ÷ 4 = 120.061 − 120.011
		{"D15/DE", job.AsFound, filled.In, "130.028"},         // 130.015 to 130.040 (m6)
		{"D16/DE", job.AsFound, filled.In, "230.012"},         // 230.000 to 230.046 (H7)
		{"D16/NDE", job.AsFound, filled.Out, "240.010"},       // A7: 240.058 at 90°, plane A, over 240.046: HOLD
		{"D20/DE", job.AsFound, filled.Out, "1.4600"},         // A7: 1262.100 ÷ 3 − 1257.720 ÷ 3 = 420.700 − 419.240, over 1.40
		{"D20/NDE", job.AsFound, filled.OldIn, "1.1200"},      // A7: 420.360 − 419.240, over the new 0.82, not over the old 1.40
		{"D21", job.AsFound, filled.Open, "0.010"},            // the fifth is not typed
		{"D22/NDE", job.AsFound, filled.Recorded, "0.30"},     // 0.20 + 0.10; its target is worked out in putting back
		{"D23", job.AsFound, filled.In, "3/16"},               // 5/32 to 7/32 in, the third stands at its end
		{"D24", job.AsLeft, filled.NotTaken, ""},              // the reason is typed
		{"D32/NDE", job.AsFound, filled.In, "0.35"},           // at most 0.50
	} {
		d := dim(t, jb, x.mark)
		v, there := r.Verdict(d, x.when)
		if !there || v.Outcome != x.want {
			t.Errorf("%s at %d is judged %d, want %d", x.mark, x.when, v.Outcome, x.want)
		}
		if got := units.Pointed(r.Typed(job.BlankKey(x.mark, x.when, d.ReadingKind(), 0))); got != x.value {
			t.Errorf("%s holds %q, want %q", x.mark, got, x.value)
		}
	}
	// By the definition the ring is measured again when it is renewed and the gland is set at the
	// last run; springs and bores are not read again.
	for mark, at := range map[string]string{"D7/DE": "", "D16/NDE": "", "D20/DE": "R1.1", "D34": "R10.4", "D20/NDE": "", "D5": ""} {
		v, _ := r.Verdict(dim(t, jb, mark), job.AsFound)
		got := ""
		if st := v.SetLater(); st != nil {
			got = st.No
		}
		if got != at {
			t.Errorf("%s was found out and is set at %q, want %q", mark, got, at)
		}
	}
	actions(t, jb, r)
	targets(t, jb, r)
	feet(t, r)
	if got := len(r.Missing); got != 2+49 {
		t.Errorf("%d boxes are missing; two as found (D3 at 270°, D21 at the NDE end) and 49 as left are not typed", got)
	}
	if day := r.Values.Day; len(day) != 1 || day[0].Mark != "X51" || !strings.HasPrefix(day[0].Text, "crack") {
		t.Errorf("found on the day: %v", day)
	}
}

// actions holds what is to be done against the definition, and the tags against where
// the parts went.
func actions(t *testing.T, jb *job.Job, r *filled.Result) {
	for _, x := range []struct{ mark, action, tags string }{
		{"D7/DE", "renew all six", "C4/DE/S"},           // the springs lie in a pocket of C4
		{"D16/NDE", "tick HOLD", "B5/NDE"},              // the bracket has a tag of its own
		{"D20/DE", "renew the casing ring", "B7/DE B3"}, // the ring, and the impeller it runs on
	} {
		v, _ := r.Verdict(dim(t, jb, x.mark), job.AsFound)
		var tags []string
		for _, tag := range v.Tags {
			tags = append(tags, tag.Mark)
		}
		if !strings.Contains(strings.Join(v.Actions, "; "), x.action) || strings.Join(tags, " ") != x.tags {
			t.Errorf("%s: %q on %v, want %q on %s", x.mark, strings.Join(v.Actions, "; "), tags, x.action, x.tags)
		}
	}
}

// targets holds what is worked out against the same sums in rational numbers.
func targets(t *testing.T, jb *job.Job, r *filled.Result) {
	rat := func(s string) *big.Rat {
		v, _ := new(big.Rat).SetString(s)
		return v
	}
	// D22 = 12.430 − 12.160 + 0.08, the pack of 0.20 and 0.15 (A7).
	d22 := new(big.Rat).Add(new(big.Rat).Sub(rat("12.43"), rat("12.16")), rat("0.08"))
	a, known := r.Advise(dim(t, jb, "D22/NDE"))
	if !known || a.Target == nil || a.Target.Number.Rat().Cmp(d22) != 0 || a.Expected {
		t.Errorf("D22: %+v, want %s", a, d22.FloatString(2))
	}
	if a.Pack == nil || a.Pack.Thickness.Text() != "0.35" || len(a.Pack.Leaves) != 2 || a.Pack.Leaves[0].Thickness.Text() != "0.20" || a.Pack.Leaves[1].Thickness.Text() != "0.15" {
		t.Errorf("D22: the pack is %+v", a.Pack)
	}
	// D11 = 7.10 ÷ 2 = 3.55, 3.30 to 3.80 (A7); D10 is read once more before it is set.
	a, known = r.Advise(dim(t, jb, "D11"))
	if !known || !a.Expected || a.Target == nil || a.Target.Number.Rat().Cmp(rat("3.55")) != 0 || a.Low.Number.Rat().Cmp(rat("3.30")) != 0 || a.High.Number.Rat().Cmp(rat("3.80")) != 0 {
		t.Errorf("D11: %+v", a)
	}
	// D12/DE-DIS is left as found: 0.80 to 0.90.
	a, _ = r.Advise(dim(t, jb, "D12/DE-DIS"))
	if a.Target == nil || a.Low.Number.Rat().Cmp(rat("0.80")) != 0 || a.High.Number.Rat().Cmp(rat("0.90")) != 0 {
		t.Errorf("D12/DE-DIS: %+v", a)
	}
}

// feet works the moves of A1 by hand: F = bf B/D − br/2, of a published sheet for rim and
// face with the dials on the stationary hub, the sag of 0.03 mm put right twice at the
// bottom: br = 0.10 + 0.06 = 0.16, bf = 0.02, D = 200, B = 520 and 1430. Sideways
// half the rim 0.06 − 0.04 and the face 0.01 − 0.01.
func feet(t *testing.T, r *filled.Result) {
	if len(r.Moves) != 1 || r.Moves[0].Why != "" || len(r.Moves[0].Moves) != 2 || r.Moves[0].Verdict == nil || !r.Moves[0].Verdict.In() {
		t.Fatalf("the moves at the feet: %+v", r.Moves)
	}
	for i, want := range []struct{ up, right string }{
		{"-0.028", "-0.01"}, // 0.02 × 2.6 − 0.08, 0 × 2.6 − 0.01
		{"0.063", "-0.01"},  // 0.02 × 7.15 − 0.08, 0 × 7.15 − 0.01
	} {
		if m := r.Moves[0].Moves[i]; m.Up.Text() != want.up || m.Right.Text() != want.right {
			t.Errorf("foot %s is moved %s and %s, want %s and %s", m.Foot, m.Up.Text(), m.Right.Text(), want.up, want.right)
		}
	}
	for _, c := range r.Moves[0].Checks {
		// rim 0.00 + 0.10 = 0.04 + 0.06, face 0.00 + 0.02 = 0.01 + 0.01
		if c.Steps != 0 {
			t.Errorf("the readings of dial %d do not close: %d steps", c.Dial, c.Steps)
		}
	}
}

// TestASecondSumIsTold: what a person worked out wrongly on paper is told, and what the
// readings make is used.
func TestASecondSumIsTold(t *testing.T) {
	jb := stormPump(t)
	r, told := come(t, jb, "bad.csv")
	found := false
	for _, p := range told {
		found = found || p.Code == "sum-differs" && strings.Contains(p.Message, "1.5600 mm") && strings.Contains(p.Message, "1.4600 mm")
	}
	if got := r.Typed(job.BlankKey("D20/DE", job.AsFound, job.ResultBlank, 0)); !found || units.Pointed(got) != "1.4600" {
		t.Errorf("D20/DE holds %q, told %v", got, found)
	}
	// A leaf that was refused leaves its pack without a sum: 0.25 alone is not the pack.
	if q := r.Readings(dim(t, jb, "D12/DE-DIS"), job.AsFound)[0]; q != nil {
		t.Errorf("D12/DE-DIS is %s, made of one leaf of two", q.Text())
	}
}

// TestLookedAgain: a value that may have been misread is taken when somebody has read it
// again.
func TestLookedAgain(t *testing.T) {
	jb := stormPump(t)
	text := "mark,position,side,value,looked again\ntyped by,,,A. Penn,\ntyped on,,,14 Mar 2026,\nD7/DE,no. 2,found,6.1 mm,B. Hale\n"
	f := filled.Read("x.csv", []byte(text), jb)
	if len(f.Told) > 0 || len(f.Entries) != 1 || f.Entries[0].Looked != "B. Hale" {
		t.Fatalf("%v, %+v", f.Told, f.Entries)
	}
}

// TestHistoryByHand: wear since the last outage, worked by hand from the files.
func TestHistoryByHand(t *testing.T) {
	jb := stormPump(t)
	now, _ := come(t, jb, "storm-pump.csv")
	var files []*filled.File
	for _, name := range []string{"storm-pump-2024.csv", "storm-pump-2018.csv", "storm-pump-2021.csv"} {
		past, _ := come(t, jb, name)
		files = append(files, past.Values.Files...)
	}
	h := filled.NewHistory(jb, files)
	for _, x := range []struct{ mark, last, on, change, rate string }{
		{"D20/DE", "1.2300", "2024-03-15", "0.2300", "0.023958"}, // 420.480 − 419.250; 1.46 − 1.23 = 0.23 in 41200 − 31600 = 9600 h
		{"D5", "0.075", "2024-03-15", "0.010", "0.00104"},        // 0.010 ÷ 9.6
		{"D4", "2.40", "2024-03-15", "−0.05", "−0.0052"},         // −0.05 ÷ 9.6 = −0.00521
	} {
		for _, l := range now.Lines(h) {
			last, change, rate := units.Pointed(l.Last), units.Pointed(filled.ChangeText(l)), units.Pointed(filled.RateText(l))
			if l.Dim.Mark == x.mark && (last != x.last || l.LastOn != x.on || change != x.change || rate != x.rate) {
				t.Errorf("%s: last %s on %s, change %s, %s in 1000 h; want %+v", x.mark, last, l.LastOn, change, rate, x)
			}
		}
	}
	for _, l := range now.Lines(h) {
		hours, known := l.Reaches()
		switch l.Dim.Mark {
		case "D5": // 0.120 − 0.085 = 0.035, at 0.010 in 9600 h
			if !known || hours.Text() != "33600 h" {
				t.Errorf("D5 reaches its limit in %s, %v; want 33600 h", hours.Text(), known)
			}
		case "D20/DE", "D7/DE": // out already; springs that may have been renewed since
			if known {
				t.Errorf("%s reaches its limit in %s", l.Dim.Mark, hours.Text())
			}
		}
	}
	points, outages := h.Points(now, dim(t, jb, "D5"), 0)
	if outages != 4 || len(points) != 4 || points[0].On != "2018-04-20" || points[3].Reading.Text() != "0.085 mm" {
		t.Errorf("D5 has %d points of %d outages: %v", len(points), outages, points)
	}
	if _, outages := h.Points(now, dim(t, jb, "D10"), 0); outages != 1 {
		t.Errorf("D10 was read at %d outages, want 1", outages)
	}
}

// TestNothingIsJudgedByHalf: a limit of the mean with one reading missing is no verdict.
func TestNothingIsJudgedByHalf(t *testing.T) {
	jb := stormPump(t)
	text := "mark,position,side,value\ntyped by,,,A. Penn\ntyped on,,,2026-03-14\nD2,no. 1: 0°,found,0.00 mm\nD2,no. 2: 90°,found,0.10 mm\n"
	v, _ := filled.Merge([]*filled.File{filled.Read("x.csv", []byte(text), jb)})
	r := filled.Work(jb, v)
	got, _ := r.Verdict(dim(t, jb, "D2"), job.AsFound)
	if got.Outcome != filled.Open || got.Why == "" {
		t.Errorf("the spread of two readings of four is judged %d", got.Outcome)
	}
	if spread := r.Typed(job.BlankKey("D2", job.AsFound, job.GroupBlank, int(reading.Spread))); spread != "" {
		t.Errorf("the spread of two readings of four is %s", spread)
	}
}
