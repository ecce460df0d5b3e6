package fit

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"
)

const (
	psi  = 0.006894757293168 // MPa; NIST SP 811, from exact factors
	inch = 25.4              // mm, exact
	lbf  = 4.4482216152605   // N; NIST SP 811
)

var (
	steel  = Elastic{E: 210, Poisson: 0.3, Alpha: 11.5e-6, Density: 7850}
	iron   = Elastic{E: 70, Poisson: 0.25, Alpha: 10.4e-6, Density: 7200}
	backed = Claim{"the engineer", "test of the like joint"}
)

// blochFit is the worked example of Bloch: interference 0.0015 of the diameter,
// d/D 0.68, E 30e6 psi, 4 in shaft, 3.5 in long.
func blochFit() Press {
	return Press{
		Joint: 4 * inch, HubOutside: 4 * inch / 0.68, Length: 3.5 * inch,
		Hub: Elastic{E: 30e6 * psi / 1000, Poisson: 0.3}, Shaft: Elastic{E: 30e6 * psi / 1000, Poisson: 0.3},
		Least: 0.0015 * 4 * inch * 1000, Greatest: 0.0015 * 4 * inch * 1000,
		Holding: 0.12, Pulling: 0.24, Friction: backed, Smoothing: Smoothing{Rule: NoLoss},
	}
}

// discFit is the hollow steel shaft in a cast-iron disc of the press-fit slides, at
// a pressure of 21.72 MPa.
func discFit() Press {
	return Press{
		Joint: 100, HubOutside: 250, ShaftBore: 50, Length: 100,
		Hub: iron, Shaft: steel,
		Least: 2 * 32.4, Greatest: 2 * 32.4,
		Holding: 0.15, Pulling: 0.24, Friction: backed, Smoothing: Smoothing{Rule: NoLoss},
		Service: &Service{Coldest: 20, Hottest: 20},
	}
}

func solve(t *testing.T, in Press) Pressed {
	t.Helper()
	out, err := in.Solve()
	if err != nil {
		t.Fatal(err)
	}
	return out
}

func TestPressAgainstOutsideValues(t *testing.T) {
	bloch, disc := solve(t, blochFit()), solve(t, discFit())
	atDisc := discFit().grip(21.72, 0.15) // at exactly the printed pressure
	rings := Press{
		Joint: 150, HubOutside: 300, ShaftBore: 100, Length: 100,
		Hub: Elastic{E: 200, Poisson: 0.28}, Shaft: Elastic{E: 200, Poisson: 0.28},
		Least: 50, Greatest: 50, Holding: 0.1, Pulling: 0.2, Smoothing: Smoothing{Rule: NoLoss},
	}
	planeStress := float64(solve(t, rings).Tightest.Pressure)
	warm := Measured{Bore: 100, Seat: 100.0115, BoreAt: 20, SeatAt: 30, HubAlpha: 11.5e-6, ShaftAlpha: 11.5e-6}
	warmGap, _, err := warm.Interference()
	if err != nil {
		t.Fatal(err)
	}
	cold, _ := at20("bore", 250, 21, 23.1e-6)

	at12000 := blochFit().grip(12000*psi, 0.24)
	got := map[string]float64{
		"F094": float64(bloch.Tightest.Pressure) / psi,
		"F095": 0.0015 * 12000 * psi / float64(bloch.Tightest.Pressure),
		// The pressure that carries the torque: torque is linear in pressure.
		"F096": 125664 * lbf * inch / 1000 / float64(blochFit().grip(1, 0.12).Torque) / psi,
		"F097": float64(TorqueAt(10000*psi, 4*inch, 0)) / (lbf * inch / 1000),
		"F098": float64(at12000.Axial) / lbf,
		"F099": 30 * float64(disc.Tightest.Pressure) / float64(disc.Tightest.HubHoop),
		"F100": 0.0324 * 21.72 / float64(disc.Tightest.Pressure),
		"F101": float64(atDisc.Axial) / 1000,
		"F102": float64(atDisc.Torque) / 1000,
		"F103": planeStress,
		"F104": planeStress / (1 - 0.28*0.28), // the exercise computed in plane strain
		"F112": 100 + float64(warmGap)/1000,
		"F113": float64(250-cold) * 1000,
	}
	used := 0
	for _, r := range outside(t, "press-fit.txt", "check") {
		v, ok := got[r.fields[number]]
		if !ok {
			t.Errorf("line %d is not used: %s", r.line, r.blame())
			continue
		}
		used++
		r.within(t, v, num(t, r.fields[expected]))
	}
	if used != len(got) {
		t.Errorf("%d outside values used, want %d", used, len(got))
	}
}

func TestStressesOfLame(t *testing.T) {
	// Equilibrium and yield at the hub's bore from first principles: von Mises of
	// hoop and radial stress in plane stress, and the ring's mean hoop force.
	out := solve(t, discFit()).Tightest
	hoop, p := float64(out.HubHoop), float64(out.Pressure)
	if mises := math.Sqrt(hoop*hoop + hoop*p + p*p); math.Abs(mises-float64(out.HubEquivalent)) > 1e-9*mises {
		t.Errorf("equivalent stress %g MPa, want %g from hoop and radial stress", out.HubEquivalent, mises)
	}
	if want := -2 * p * 100 * 100 / (100*100 - 50*50); math.Abs(float64(out.ShaftHoop)-want) > 1e-9 {
		t.Errorf("hoop stress at the shaft's bore %g MPa, want %g", out.ShaftHoop, want)
	}
	solid := discFit()
	solid.ShaftBore = 0
	if s := solve(t, solid).Tightest; s.ShaftHoop != -s.Pressure {
		t.Errorf("a solid shaft has hoop stress %g MPa, want minus the pressure %g", s.ShaftHoop, s.Pressure)
	}
}

func TestSmoothingAndHolding(t *testing.T) {
	in := discFit()
	in.Least, in.Smoothing = 40, Smoothing{LossEight, 10, 6}
	out := solve(t, in)
	if got := float64(out.Loosest.Interference); math.Abs(got-(40-0.8*16)) > 1e-9 {
		t.Errorf("interference left %g µm, want %g (DIN 7190:2001: 0.8 of 16 µm lost)", got, 40-0.8*16)
	}
	if out.Tightest.Interference != in.Greatest {
		t.Errorf("smoothing took from the greatest interference too: %g µm", out.Tightest.Interference)
	}
	in.Smoothing.Rule = LossFour
	if got := float64(solve(t, in).Loosest.Interference); math.Abs(got-(40-0.4*16)) > 1e-9 {
		t.Errorf("interference left %g µm, want %g (DIN 7190-1:2017)", got, 40-0.4*16)
	}
	for name, change := range map[string]func(*Press){
		"loose":             func(p *Press) { p.Least = -5 },
		"smoothed away":     func(p *Press) { p.Least, p.Smoothing = 12, Smoothing{LossEight, 10, 6} },
		"yields when least": func(p *Press) { p.Hub.Yield = 20 },
	} {
		in := discFit()
		change(&in)
		out := solve(t, in)
		if !out.HoldRefused.Told() || out.Hold != (Grip{}) {
			t.Errorf("%s: a holding force %g N is given", name, out.Hold.Axial)
		}
		if out.Pull.Axial <= 0 {
			t.Errorf("%s: no force to pull it apart", name)
		}
	}
	sound := discFit()
	sound.Hub.Yield, sound.Shaft.Yield = 200, 300
	if out := solve(t, sound); out.HoldRefused.Told() || out.Tightest.HubUse <= 0 || out.Tightest.ShaftUse <= 0 {
		t.Errorf("a sound joint: refused %q, use %g and %g", out.HoldRefused.String(), out.Tightest.HubUse, out.Tightest.ShaftUse)
	}
	if out := solve(t, discFit()); len(out.Working) != 5 || out.Hold.Axial >= out.Pull.Axial {
		t.Errorf("%d lines of working, want 5; holds %g N, pulls %g N", len(out.Working), out.Hold.Axial, out.Pull.Axial)
	}
}

func TestJointsThatAreRefused(t *testing.T) {
	nan := math.NaN()
	for _, c := range []struct {
		field  string
		change func(*Press)
	}{
		{"Joint", func(p *Press) { p.Joint = 0 }},
		{"Joint", func(p *Press) { p.Joint = Mm(nan) }},
		{"Joint", func(p *Press) { p.Joint, p.HubOutside = 3200, 4000 }},
		{"HubOutside", func(p *Press) { p.HubOutside = p.Joint }},
		{"HubOutside", func(p *Press) { p.HubOutside = Mm(math.Inf(1)) }},
		{"ShaftBore", func(p *Press) { p.ShaftBore = p.Joint }},
		{"ShaftBore", func(p *Press) { p.ShaftBore = -1 }},
		{"Length", func(p *Press) { p.Length = 0 }},
		{"Length", func(p *Press) { p.Length = 1001 }},
		{"Hub.E", func(p *Press) { p.Hub.E = 210000 }},
		{"Hub.Poisson", func(p *Press) { p.Hub.Poisson = 0.5 }},
		{"Shaft.E", func(p *Press) { p.Shaft.E = 0 }},
		{"Shaft.Poisson", func(p *Press) { p.Shaft.Poisson = Ratio(nan) }},
		{"Shaft.Yield", func(p *Press) { p.Shaft.Yield = -1 }},
		{"Greatest", func(p *Press) { p.Greatest = 0 }},
		{"Greatest", func(p *Press) { p.Greatest = 501 }},
		{"Least", func(p *Press) { p.Least = p.Greatest + 1 }},
		{"Least", func(p *Press) { p.Least = -501 }},
		{"Least", func(p *Press) { p.Least = Micron(nan) }},
		{"Holding", func(p *Press) { p.Holding = 0 }},
		{"Pulling", func(p *Press) { p.Pulling = 1 }},
		{"Pulling", func(p *Press) { p.Pulling = p.Holding }},
		{"Seat", func(p *Press) { p.Seat = Taper }},
		{"Seat", func(p *Press) { p.Seat = ShrinkDisc }},
		{"Seat", func(p *Press) { p.Seat = "conical" }},
		{"Torque", func(p *Press) { p.Torque = -1 }},
		{"Hub.Alpha", func(p *Press) { p.Hub.Alpha = 0 }},
		{"Shaft.Alpha", func(p *Press) { p.Shaft.Alpha = 11.5 }},
		{"Shaft.Density", func(p *Press) { p.Service.Speed, p.Shaft.Density = 1500, 0 }},
		{"Service.Coldest", func(p *Press) { p.Service.Coldest = 30 }},
		{"Service.Coldest", func(p *Press) { p.Service.Coldest = -40 }},
		{"Service.Hottest", func(p *Press) { p.Service.Hottest = 160 }},
		{"Service.Hottest", func(p *Press) { p.Service.Hottest, p.Service.HubOver = 90, 20 }},
		{"Service.HubOver", func(p *Press) { p.Service.HubOver = KelvinRise(nan) }},
		{"Service.ShaftOver", func(p *Press) { p.Service.ShaftOver = 50 }},
		{"Service.Speed", func(p *Press) { p.Service.Speed = -1 }},
		{"Smoothing.Rule", func(p *Press) { p.Smoothing = Smoothing{} }},
		{"Smoothing.Rule", func(p *Press) { p.Smoothing.Rule = 9 }},
		{"Smoothing.HubRz", func(p *Press) { p.Smoothing = Smoothing{LossFour, 0, 6} }},
		{"Smoothing.ShaftRz", func(p *Press) { p.Smoothing = Smoothing{LossFour, 6, 200} }},
	} {
		in := discFit()
		c.change(&in)
		_, err := in.Solve()
		var field *FieldError
		if !errors.As(err, &field) || field.Field != c.field || field.Error() == "" {
			t.Errorf("got %v (%+v), want a refusal of %s", err, field, c.field)
		}
	}
}

func TestMeasuredSizesThatAreRefused(t *testing.T) {
	sound := Measured{Bore: 120.010, Seat: 120.060, BoreAt: 20, SeatAt: 20, HubAlpha: 11.5e-6, ShaftAlpha: 11.5e-6}
	if d, steps, err := sound.Interference(); err != nil || math.Abs(float64(d)-50) > 1e-6 || len(steps) != 3 {
		t.Errorf("at 20 °C: %g µm, %d lines, %v; want 50 µm and 3 lines", d, len(steps), err)
	}
	for _, c := range []struct {
		field  string
		change func(*Measured)
	}{
		{"Bore", func(m *Measured) { m.Bore = 0 }},
		{"Seat", func(m *Measured) { m.Seat = 3200 }},
		{"Seat", func(m *Measured) { m.Seat = 121.060 }},
		{"Seat", func(m *Measured) { m.Seat = 102.060 }},
		{"BoreAt", func(m *Measured) { m.BoreAt = 101 }},
		{"SeatAt", func(m *Measured) { m.SeatAt = Celsius(math.NaN()) }},
		{"HubAlpha", func(m *Measured) { m.HubAlpha = 11.5 }},
		{"ShaftAlpha", func(m *Measured) { m.ShaftAlpha = 0 }},
	} {
		m := sound
		c.change(&m)
		_, _, err := m.Interference()
		var field *FieldError
		if !errors.As(err, &field) || field.Field != c.field {
			t.Errorf("got %v, want a refusal of %s", err, c.field)
		}
	}
}

// TestPressLaws draws joints and checks what must hold for every elastic ring:
// twice the interference is twice the pressure; a bored shaft and a thinner hub
// press less; the force is linear in friction; the torque is force times radius.
func TestPressLaws(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		joint := rapid.Float64Range(10, 1000).Draw(t, "joint")
		in := Press{
			Joint: Mm(joint), HubOutside: Mm(joint * rapid.Float64Range(1.1, 5).Draw(t, "hub over joint")),
			ShaftBore: Mm(joint * rapid.Float64Range(0, 0.9).Draw(t, "bore over joint")), Length: Mm(joint),
			Hub: Elastic{E: 110, Poisson: 0.25, Alpha: 18e-6}, Shaft: steel,
			Holding: 0.1, Pulling: 0.2, Friction: backed, Smoothing: Smoothing{Rule: NoLoss},
			Service: &Service{Coldest: 20, Hottest: 20},
		}
		in.Greatest = Micron(joint * rapid.Float64Range(0.1, 2.4).Draw(t, "per mille"))
		in.Least = in.Greatest / 2
		out, err := in.Solve()
		if err != nil {
			t.Fatal(err)
		}
		near := func(what string, a, b float64) {
			if math.Abs(a-b) > 1e-9*math.Abs(b) {
				t.Fatalf("%s: %g against %g", what, a, b)
			}
		}
		near("twice the interference", float64(out.Tightest.Pressure), 2*float64(out.Loosest.Pressure))
		near("twice interference and friction", float64(out.Pull.Axial), 4*float64(out.Hold.Axial))
		near("torque", float64(out.Pull.Torque), float64(out.Pull.Axial)*joint/2000)

		bored, thin := in, in
		bored.ShaftBore = in.ShaftBore + 0.5*(in.Joint-in.ShaftBore)
		thin.HubOutside = in.Joint + 0.5*(in.HubOutside-in.Joint)
		for name, other := range map[string]Press{"bored shaft": bored, "thinner hub": thin} {
			got, err := other.Solve()
			if err != nil {
				t.Fatal(err)
			}
			if got.Tightest.Pressure >= out.Tightest.Pressure {
				t.Fatalf("%s presses with %g MPa, the fuller one with %g", name, got.Tightest.Pressure, out.Tightest.Pressure)
			}
		}
	})
}
