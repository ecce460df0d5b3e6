package lift

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"matchmark/packs/units"
)

// A lift written in pounds and inches is told in pounds and inches, and both numbers
// of a pair lie on the safe side: 1 t of rating is 2204 lb, 1 t of load 2205 lb
// (0.45359237 kg and 25.4 mm, NIST SP 811, appendix B.8).
func TestWordsInTheUnitsOfTheLift(t *testing.T) {
	t.Parallel()
	us := Units{Pounds: true, Inches: true, Fahrenheit: true}
	for _, c := range []struct {
		w    Words
		want string
	}{
		{Kg(1000).Down(), "2204 lb"}, {Kg(1000).Up(), "2205 lb"}, {Kg(20).Up(), "44.1 lb"}, {Kg(20).Down(), "44.0 lb"}, {Kg(1451.49558).Given(), "3200 lb"},
		{Mm(100).Up(), "4.0 in"}, {Mm(100).Down(), "3.9 in"}, {Mm(100).Size(), "3.9 in"}, {Mm(358.775).Given(), "14.125 in"}, {Mm(-100).Down(), "-4.0 in"},
		{Celsius(93.4).Down(), "200 °F"}, {Celsius(-40).Up(), "-40 °F"}, {Kilopascal(10).Up(), "209 lb/ft2"}, {Kg(math.Inf(1)).Up(), "no number"},
	} {
		if got := c.w.In(us); got != c.want {
			t.Errorf("got %q, want %q", got, c.want)
		}
	}
	if got := Kg(1000).Down().In(Units{Pounds: true, Paper: true}); got != "2204\u00a0lb" {
		t.Errorf("on paper: %q", got)
	}
	if got := Mm(0.004).Given().String(); got != "0.004 mm" {
		t.Errorf("what was given is quoted as %q", got)
	}
}

// In every unit a load is not under what it is, and what is left not over it.
func TestWordsAreOnTheirSideInEveryUnit(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		x := rapid.Float64Range(-5e4, 5e5).Draw(t, "amount")
		u := Units{Pounds: rapid.Bool().Draw(t, "pounds"), Inches: rapid.Bool().Draw(t, "inches"), Fahrenheit: rapid.Bool().Draw(t, "fahrenheit")}
		scale := func(is bool, f float64) float64 {
			if is {
				return f
			}
			return 1
		}
		kg, mm, kpa := scale(u.Pounds, 1/0.45359237), scale(u.Inches, 1/25.4), scale(u.Pounds, 1000/(4.4482216152605/(0.3048*0.3048)))
		for _, c := range []struct {
			up, down Words
			exact    float64
			step     float64
		}{
			{Kg(x).Up(), Kg(x).Down(), x * kg, 1}, {Mm(x).Up(), Mm(x).Down(), x * mm, 1}, {Kilopascal(x).Up(), Kilopascal(x).Up(), x * kpa, 1},
		} {
			slack := 1e-10*math.Abs(c.exact) + 1e-7 // what is held for dust
			up, down := printedNumber(t, c.up.In(u)), printedNumber(t, c.down.In(u))
			if up < c.exact-slack || up > c.exact+c.step+slack || c.up != c.down && (down > c.exact+slack || down < c.exact-c.step-slack) {
				t.Fatalf("%g is told as %s and %s", c.exact, c.up.In(u), c.down.In(u))
			}
		}
	})
}

// A refusal and a caution of a lift in pounds speak of pounds: on paper stood "carries
// 1134 kg" for a sling that the planner had written in pounds.
func TestMessagesSpeakTheUnitsOfTheLift(t *testing.T) {
	t.Parallel()
	us := Units{Pounds: true, Inches: true}
	p := good()
	p.Legs[0].Sling.Rated = 10
	r := compute(t, p)
	seen := 0
	for _, c := range r.Cautions {
		if c.In(Units{}) != c.Message {
			t.Errorf("%q and %q", c.In(Units{}), c.Message)
		}
		if text := c.In(us); strings.Contains(text, units.Kilogram.Text()) || strings.Contains(text, " mm") {
			t.Errorf("in pounds: %s", text)
		}
		if c.Code == Overloaded {
			seen++
		}
	}
	for path, change := range omissions(full()) {
		q := full()
		change(&q)
		r, err := Compute(q)
		var all Refusals
		if err != nil {
			all = err.(Refusals)
		} else {
			all = r.Unanswered
		}
		for _, no := range all {
			seen++
			if text := no.In(us); strings.Contains(text, " kg") || strings.Contains(text, " mm") || text == "" {
				t.Errorf("without %s, in pounds: %s", path, text)
			}
		}
	}
	if seen < 20 {
		t.Errorf("only %d messages", seen)
	}
}
