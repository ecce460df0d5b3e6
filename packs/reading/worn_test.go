package reading_test

import (
	"fmt"
	"testing"

	"pgregory.net/rapid"

	"matchmark/packs/reading"
	"matchmark/packs/units"
)

// TestWhole: "old part at most 0.200 mm" was printed of a clearance that 0.036 mm holds for an
// old part as well. Common practice, no source.
func TestWhole(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		worn string
		news []string
		want string
		rest bool
	}{
		{"at most 0.200 mm", []string{"0.036 to 0.106 mm"}, "0.036 to 0.200 mm", false},
		{"at least 44.900 mm", []string{"44.950 +0.025/-0.000 mm"}, "44.900 to 44.975 mm", false},
		{"at most 0.200 mm", []string{"at most 0.106 mm"}, "at most 0.200 mm", false},
		{"at most 0.031 in", []string{"at least 0.015 in"}, "0.015 to 0.031 in", false},
		{"0.000 to 0.200 mm", []string{"0.036 to 0.106 mm"}, "0.000 to 0.200 mm", false},
		{"mean at most 1.60 mm", []string{"mean 1.10 to 1.40 mm and spread at most 0.10 mm"}, "mean 1.10 to 1.60 mm and spread at most 0.10 mm", false},
		{"at most 0.80 mm", []string{"0.30 to 0.40 mm (0.012 to 0.015 in)"}, "0.30 to 0.80 mm", false},
		{"at most 0.80 mm (0.031 in)", []string{"0.30 to 0.40 mm (0.012 to 0.015 in)"}, "0.30 to 0.80 mm (0.012 to 0.031 in)", false},
		{"at most 0.80 mm (0.031 in)", []string{"0.30 to 0.40 mm"}, "0.30 to 0.80 mm (at most 0.031 in)", false},
		{"at most 0.200 mm (0.008 in)", []string{"0.036 to 0.106 mm"}, "0.036 to 0.200 mm (at most 0.008 in)", false},
		{"at least 44.900 mm (1.768 in)", []string{"44.950 +0.025/-0.000 mm"}, "44.900 to 44.975 mm (at least 1.768 in)", false},
		{"at least 59.9 mm", []string{"60.000 to 60.010 mm"}, "59.900 to 60.010 mm", false},
		{"at most 0.2 mm", []string{"0.036 to 0.106 mm"}, "0.036 to 0.200 mm", false},
		{"at most 0.200 mm", []string{"0.04 to 0.11 mm"}, "0.040 to 0.200 mm", false},
		{"at most 0.25 mm", []string{"0.1 to 0.2 mm"}, "0.10 to 0.25 mm", false},
		{"at most 1/8 in", []string{"at least 0.015 in"}, "0.015 to 1/8 in", false},
		{"at most 0.18 mm", []string{"mean 0.07 to 0.12 mm and spread at most 0.03 mm"}, "at most 0.18 mm and mean at least 0.07 mm and spread at most 0.03 mm", false},
		{"at most 0.200 mm (0.008 in)", []string{"0.03 to 0.10 mm (0.0012 to 0.0039 in)"}, "0.030 to 0.200 mm (0.0012 to 0.008 in)", false},
		{"at most 0.031 in (0.79 mm)", []string{"0.30 to 0.40 mm"}, "at most 0.031 in (0.79 mm) and at least 0.30 mm", false},
		{"at most 0.50 mm", []string{"D1 to 0.30 mm"}, "at most 0.50 mm", true},
		{"at most 0.50 mm", []string{"as found +/- 0.10 mm"}, "at most 0.50 mm", true},
		{"at most 2 x D1", []string{"0.10 mm to D1"}, "at most 2 x D1 and at least 0.10 mm", false},
		{"at most 0.50 mm", []string{"0.10 to 0.30 mm", "0.10 to 0.40 mm"}, "0.10 to 0.50 mm", false},
		{"at most 0.50 mm", []string{"0.10 to 0.30 mm", "0.20 to 0.40 mm"}, "at most 0.50 mm", true},
		{"at most 0.05 mm", []string{"0.10 to 0.30 mm"}, "at most 0.05 mm", true},
	} {
		var news []*reading.Limit
		for _, n := range c.news {
			news = append(news, limit(t, n))
		}
		whole, rest := reading.Whole(limit(t, c.worn), news)
		if whole.Text() != c.want || rest != c.rest {
			t.Errorf("%s beside %v is %q (%v), want %q (%v)", c.worn, c.news, whole.Text(), rest, c.want, c.rest)
		}
	}
}

// What is printed of an old part is what it is judged by: out is below the low end of a new one,
// or above the end of an old one, whatever stands between.
func TestWholeJudgesAsItReads(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		low := rapid.IntRange(0, 50).Draw(t, "low")
		high := low + rapid.IntRange(1, 50).Draw(t, "width")
		worn := high + rapid.IntRange(0, 50).Draw(t, "wear")
		at := rapid.IntRange(0, 200).Draw(t, "reading")
		mm := func(n int) string { return fmt.Sprintf("%d.%02d", n/100, n%100) }
		whole, rest := reading.Whole(limit(t, "at most "+mm(worn)+" mm"), []*reading.Limit{limit(t, mm(low)+" to "+mm(high)+" mm")})
		printed := limit(t, whole.Text())
		q, err := units.ParseQuantity(mm(at) + " mm")
		if err != nil {
			t.Fatal(err)
		}
		for _, l := range []*reading.Limit{whole, printed} {
			v := l.Judge([]*units.Quantity{&q}, reading.Env{}).Verdict
			if out := at < low || at > worn; rest || (v == reading.In) == out {
				t.Fatalf("%s mm by %s is judged %d", mm(at), l.Text(), v)
			}
		}
	})
}

// limit reads one line.
func limit(t interface{ Fatal(...any) }, line string) *reading.Limit {
	l, err := reading.Parse(line)
	if err != nil {
		t.Fatal(line, err)
	}
	return l
}
