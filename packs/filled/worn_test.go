package filled_test

import (
	"bytes"
	"encoding/csv"
	"fmt"
	"os"
	"strings"
	"testing"

	"matchmark/packs"
	"matchmark/packs/filled"
	"matchmark/packs/job"
)

// boxes are rows of a dimension for all its boxes in their order.
func boxes(t *testing.T, jb *job.Job, mark, side string, values ...string) string {
	t.Helper()
	var rows strings.Builder
	n := 0
	for _, b := range jb.Blanks() {
		if b.Dim.Mark == mark && b.Kind == job.ReadingBlank && (b.When == job.AsLeft) == (side == "left") && n < len(values) {
			fmt.Fprintf(&rows, "%s,\"%s\",%s,%s,L. Again\n", mark, filled.Position(b), side, values[n])
			n++
		}
	}
	if n != len(values) {
		t.Fatalf("%s has %d boxes as %s, not %d", mark, n, side, len(values))
	}
	return rows.String()
}

// TestWornOnOneSide: a limit of one end for an old part leaves the other end, and a spread
// that it does not name, to the limit for new parts. A clearance of 0.029 mm under
// 0.036 to 0.106 mm, old part at most 0.200 mm, came back as an old part that is in limits.
// The limits are those of the starters; in and out is common practice, no source.
func TestWornOnOneSide(t *testing.T) {
	for _, x := range []struct {
		starter, mark, side string
		values              []string
		want                filled.Outcome
		action              string
	}{
		{"triplex-pump", "D18/3", "found", []string{"0.064 mm", "0.036 mm", "0.029 mm", "0.043 mm"}, filled.Out, "look for burrs and for the wrong hand"},
		{"triplex-pump", "D18/3", "found", []string{"0.064 mm", "0.036 mm", "0.143 mm", "0.200 mm"}, filled.OldIn, ""},
		{"triplex-pump", "D18/3", "found", []string{"0.064 mm", "0.201 mm", "0.143 mm", "0.200 mm"}, filled.Out, "renew the crosshead, by R2.1 to R2.3"},
		{"triplex-pump", "D18/3", "found", []string{"0.029 mm", "0.201 mm", "0.143 mm", "0.200 mm"}, filled.Out, "look for burrs and for the wrong hand; renew the crosshead, by R2.1 to R2.3"},
		{"triplex-pump", "D13/1", "left", []string{"44.950 mm", "44.920 mm", "44.900 mm", "44.960 mm", "44.960 mm", "44.960 mm"}, filled.OldIn, ""},
		{"triplex-pump", "D13/1", "left", []string{"44.950 mm", "44.976 mm", "44.900 mm", "44.960 mm", "44.960 mm", "44.960 mm"}, filled.Out, ""},
		{"triplex-pump", "D15/1", "left", []string{"0.05 mm", "0.06 mm"}, filled.Out, "look for dirt behind the shells; still under: as over"},
		{"triplex-pump", "D15/1", "left", []string{"0.14 mm", "0.15 mm"}, filled.OldIn, ""},
		{"triplex-pump", "D15/1", "left", []string{"0.08 mm", "0.12 mm"}, filled.Out, "mean: renew both shells, R4.4; new ones, or spread: tell the engineer"},
		{"bevel-gearbox", "D3", "found", []string{"0.42 mm", "0.25 mm", "0.22 mm", "0.33 mm"}, filled.OldIn, ""},
	} {
		jb := starter(t, x.starter+".yaml")
		r, told := worked(t, jb, boxes(t, jb, x.mark, x.side, x.values...))
		when := job.AsFound
		if x.side == "left" {
			when = job.AsLeft
		}
		v, _ := r.Verdict(dim(t, jb, x.mark), when)
		if told != "" || v.Outcome != x.want || strings.Join(v.Actions, "; ") != x.action {
			t.Errorf("%s as %s %v is judged %d (%s), want %d (%s); told %s", x.mark, x.side, x.values, v.Outcome, strings.Join(v.Actions, "; "), x.want, x.action, told)
		}
		for _, f := range v.Findings {
			if f.Test >= len(v.Limit.Tests) {
				t.Errorf("%s: a finding is of test %d, and the limit that decided has %d", x.mark, f.Test, len(v.Limit.Tests))
			}
		}
	}
}

// TestReportByBox: the report says of each reading how it stands. What was in the limits
// for new parts stood as an old part where another was one; a reading whose own limit was
// not known, or that is only recorded, stood as in; one not taken stood as missing.
func TestReportByBox(t *testing.T) {
	for _, x := range []struct {
		starter, mark, side string
		rows                []string
		want                string
	}{
		{"triplex-pump", "D13/1", "left", []string{"44.950 mm", "44.920 mm", "44.900 mm", "44.976 mm", "44.960 mm", "44.880 mm"}, "in, old part in, old part in, out, in, out"},
		{"triplex-pump", "D18/3", "found", []string{"0.064 mm", "0.036 mm", "0.029 mm", "0.143 mm"}, "in, in, out, old part in"},
		{"triplex-pump", "D13/1", "left", []string{"44.950 mm", "44.920 mm", "\"not taken, because it is worn through\"", "44.960 mm", "44.960 mm"}, "in, old part in, not taken, in, in, "},
		{"bevel-gearbox", "D3", "found", []string{"0.42 mm", "0.25 mm", "0.22 mm", "0.33 mm"}, "old part in, in, in, in"},
		{"storm-pump", "D13", "found", []string{"206 °C", "104 °C", "85 °C"}, "out, recorded, in"},
		{"storm-pump", "D23", "found", []string{"3/16 in", "1/4 in"}, "in, out, "},
	} {
		jb := starter(t, x.starter+".yaml")
		r, told := worked(t, jb, boxes(t, jb, x.mark, x.side, x.rows...))
		var out bytes.Buffer
		if err := filled.WriteReport(&out, r, nil); err != nil {
			t.Fatal(err)
		}
		rows, err := csv.NewReader(&out).ReadAll()
		if err != nil {
			t.Fatal(err)
		}
		col := 7
		if x.side == "left" {
			col = 9
		}
		var got []string
		for _, row := range rows {
			if row[0] == x.mark {
				got = append(got, row[col])
			}
		}
		if s := strings.Join(got, ", "); told != "" || s != x.want {
			t.Errorf("%s as %s %v: the report says %q, want %q; told %s", x.mark, x.side, x.rows, s, x.want, told)
		}
	}
}

// TestLimitRangeOfWorn: a reading that wears goes to the end for old parts, one that goes the
// other way to that for new ones; the other way had no end.
func TestLimitRangeOfWorn(t *testing.T) {
	for _, x := range []struct{ starter, mark, low, high string }{
		{"triplex-pump", "D18/1", "0.036 mm", "0.200 mm"},
		{"triplex-pump", "D13/1", "44.900 mm", "44.975 mm"},
		{"storm-pump", "D20/DE", "0.70 mm", "1.40 mm"},
		{"triplex-pump", "D24", "0.10 mm", "0.25 mm"},
	} {
		low, high := filled.LimitRange(dim(t, starter(t, x.starter+".yaml"), x.mark), 0)
		if low == nil || high == nil || low.Text() != x.low || high.Text() != x.high {
			t.Errorf("%s goes from %v to %v, want %s to %s", x.mark, low, high, x.low, x.high)
		}
	}
}

// TestRecordedAndWorkedOutLater: a pack of shims that is only recorded as found stood as open for
// good, where the size that it is made up to is worked out for closing; and a report told twice
// what to do where it is the same as found and as left.
func TestRecordedAndWorkedOutLater(t *testing.T) {
	jb, problems := packs.Load(os.DirFS("../../testdata/good"), packs.Inputs{Definition: "extruder-gearbox.yaml"})
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	r, told := worked(t, jb, boxes(t, jb, "D5", "found", "minus 0.07 mm")+boxes(t, jb, "D5", "left", "minus 0.07 mm"))
	var out bytes.Buffer
	if err := filled.WriteReport(&out, r, nil); err != nil || told != "" {
		t.Fatal(err, told)
	}
	if n := strings.Count(out.String(), "shift the rim on its hub"); n != 1 {
		t.Errorf("the report says %d times what to do", n)
	}
	r, told = worked(t, jb, "D16/A,(sum of leaves),found,1.150 mm,\n")
	if v, there := r.Verdict(dim(t, jb, "D16/A"), job.AsFound); !there || v.Outcome != filled.Recorded {
		t.Errorf("the pack as found is judged %d, want recorded; told %s", v.Outcome, told)
	}
}
