package heat

import (
	"math"
	"os"
	"strconv"
	"strings"
	"testing"
)

// A row is one check of testdata/outside: inputs are in the test that asks for
// it, expected values and their source in the file.
type row struct {
	what, inputs, expected, unit, tolerance, source, place, known string
}

// rows reads a file of outside values by number.
func rows(t *testing.T, file string) map[string]row {
	t.Helper()
	data, err := os.ReadFile("../../testdata/outside/" + file)
	if err != nil {
		t.Fatal(err)
	}
	all := map[string]row{}
	for _, l := range strings.Split(string(data), "\n") {
		f := strings.Split(l, " | ")
		if f[0] != "check" {
			continue
		}
		if len(f) != 10 {
			t.Fatalf("%s: %q has %d fields", file, f[1], len(f))
		}
		all[f[1]] = row{f[2], f[3], f[4], f[5], f[6], f[7], f[8], f[9]}
	}
	return all
}

// agree compares the values got with those expected, a/b/c in the file, each
// within the tolerance of the file.
func agree(t *testing.T, all map[string]row, number string, got ...float64) {
	t.Helper()
	r, ok := all[number]
	if !ok {
		t.Fatalf("no row %s", number)
	}
	delete(all, number)
	want := strings.Split(r.expected, "/")
	if len(want) != len(got) {
		t.Fatalf("%s expects %d values, the test has %d", number, len(want), len(got))
	}
	tol := parse(t, r.tolerance)
	for i, w := range want {
		if x := parse(t, w); !(math.Abs(got[i]-x) <= tol) {
			t.Errorf("%s %s (%s): got %.6g %s, want %.6g ± %g; source: %s, %s; %s",
				number, r.what, r.inputs, got[i], r.unit, x, tol, r.source, r.place, r.known)
		}
	}
}

// printed is one of the values that a row expects.
func printed(t *testing.T, r row, i int) float64 {
	t.Helper()
	return parse(t, strings.Split(r.expected, "/")[i])
}

// allAsked fails when a row of the file was not compared.
func allAsked(t *testing.T, all map[string]row) {
	t.Helper()
	for number := range all {
		t.Errorf("row %s was not checked", number)
	}
}

func parse(t *testing.T, s string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(strings.TrimSpace(s), 64)
	if err != nil {
		t.Fatal(err)
	}
	return x
}

// flat is a steel with constant properties, for comparison with formulas.
func flat(k, rho, c, alpha float64) Material {
	return Material{
		Name: "flat steel", Density: KgPerM3(rho), Specific: Curve{c}, Conducts: Curve{k},
		Elongation: flatExpansion(alpha), Young: 200e3, Poisson: 0.3, From: -100, To: 2000, Source: "test",
	}
}

func named(t *testing.T, name string) Material {
	t.Helper()
	m, err := MaterialNamed(name)
	if err != nil {
		t.Fatal(err)
	}
	return m
}

func near(t *testing.T, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s: got %.6g, want %.6g ± %g", what, got, want, tol)
	}
}

func TestStaticFiguresAgreeWithTheirSources(t *testing.T) {
	t.Parallel()
	all := rows(t, "heat-static.txt")
	fahrenheit := func(r KelvinRise) float64 { return float64(r) * 1.8 }

	// Bloch counts in mils per inch and per °F: 1000 mm stand for 1000 in.
	steel := flat(50, 7850, 480, 6.3e-6*1.8)
	bloch := func(clearance Mm) float64 {
		f, err := Rise(Fit{Diameter: 1000, Interference: 1.5, Basis: Greatest, Clearance: clearance}, steel, steel, 20)
		if err != nil {
			t.Fatal(err)
		}
		return fahrenheit(f.Rise)
	}
	agree(t, all, "F092", bloch(0))
	agree(t, all, "F093", bloch(0.5))

	din := flat(50, 7850, 480, 12e-6)
	f, err := Rise(Fit{Diameter: 150, Interference: 0.125, Basis: Greatest, Clearance: usualClearance(150)}, din, din, 20)
	if err != nil {
		t.Fatal(err)
	}
	agree(t, all, "F114", float64(f.Rise))

	en := named(t, "carbon steel")
	agree(t, all, "F105", en.strain(100))
	agree(t, all, "F106", en.strain(200))
	agree(t, all, "F107", en.strain(300))
	agree(t, all, "F108", en.Specific.at(200))
	agree(t, all, "F109", en.Specific.at(20))
	agree(t, all, "F110", en.Conducts.at(200))
	q, err := Energy(en, 100, 20, 200)
	if err != nil {
		t.Fatal(err)
	}
	agree(t, all, "F111", float64(q)/1e6)

	agree(t, all, "F115", levelled(t, Contact{Perfect: true})*1e6)
	agree(t, all, "F116", levelled(t, Contact{Touching: 2000})*1e6)

	shrinks := func(material string) float64 {
		c, err := chill(Fit{Diameter: 100, Interference: 0.05, Basis: Measured, Clearance: 0.1}, din, named(t, material), LiquidNitrogen, 20)
		if err != nil {
			t.Fatal(err)
		}
		return float64(c.Contraction) // of 100 mm: percent
	}
	agree(t, all, "F117", shrinks("carbon steel"))
	agree(t, all, "F118", shrinks("stainless steel 304"))
	agree(t, all, "F119", shrinks("aluminium 2024"))

	ceilingsAgree(t, all)
	allAsked(t, all)
}

// ceilingsAgree compares the highest temperatures with their sources.
func ceilingsAgree(t *testing.T, all map[string]row) {
	t.Helper()
	hub, err := CeilingFor("Coupling hub")
	if err != nil {
		t.Fatal(err)
	}
	agree(t, all, "F120", float64(hub.Limit.At))
	bearing, err := CeilingFor("rolling bearing")
	if err != nil {
		t.Fatal(err)
	}
	// 125 °C at most, of which the lower figure of common use is taken, and 80 to 90 K
	// over the shaft, which open the seat of a bearing at its tightest, 130 m6 with a
	// bore at its least: 40 + 25 µm.
	r := all["RG189"]
	ceiling, rises, _ := strings.Cut(r.expected, "/")
	if most := Celsius(parse(t, ceiling)); bearing.Limit.At > most || bearing.Limit.At < most-5 || !bearing.Limit.NoFlame {
		t.Errorf("rolling bearing: %v, no flame %v; the source says %v: %s", bearing.Limit.At, bearing.Limit.NoFlame, most, r.source)
	}
	for _, rise := range strings.Split(rises, "-") {
		over := KelvinRise(parse(t, rise))
		got, err := ClearanceAt(Fit{Diameter: 130, Interference: 0.065, Basis: Greatest}, named(t, "carbon steel, cautious"), named(t, "carbon steel, cautious"), over, 20)
		if err != nil || got < 0.05 || 20+Celsius(over) > bearing.Limit.At {
			t.Errorf("%v K over the shaft leave %v mm for a bearing: %v; source: %s", over, got, err, r.source)
		}
	}
	delete(all, "RG189")
}

// levelled heats the hub of rows F115 and F116 with 20 kW until the opening has
// settled, and returns it in metres. Nothing is lost, nothing runs away.
func levelled(t *testing.T, c Contact) float64 {
	t.Helper()
	m := flat(48, 7850, 480, 12e-6)
	b := newBodies(&Hub{Outside: 300, Length: 150, Material: m, Start: 20}, &Shaft{Material: m, Start: 20}, Fit{Diameter: 150, Interference: 1, Basis: Measured, Clearance: 0},
		c, Surroundings{20, 0}, grid{hub: 40, shaft: 40, along: 1, step: 0.0005, growth: 1.05})
	b.putPower(20e3, 0)
	clock := newStepper(b, grid{step: 0.0005, growth: 1.05})
	// Fo = 1 on the outer radius, where 99 % stands at 0.33.
	for b.clock < 0.15*0.15*7850*480/48 {
		if !clock.step() {
			t.Fatal("no solution")
		}
	}
	return b.opening()
}

func TestGasAgreesWithItsSources(t *testing.T) {
	t.Parallel()
	all := rows(t, "heat-gas.txt")
	air := func(room M3, nitrogen Litre, ice Kg) Air {
		a, err := RoomAfter(room, nitrogen, ice)
		if err != nil {
			t.Fatal(err)
		}
		return a
	}
	agree(t, all, "RG177", float64(air(30, 5, 0).Oxygen))
	agree(t, all, "RG178", float64(air(50, 25, 0).Oxygen))
	agree(t, all, "RG179", float64(air(100, 0, 1).Carbonic)) // percent of 100 m³
	agree(t, all, "RG180", float64(air(50, 0, 1).MostIce))
	// Litres of gas for one of liquid, and the share by which the source is sure of it.
	r := all["RG176"]
	liquid, _, _ := strings.Cut(r.expected, " ")
	if want, off := parse(t, liquid), parse(t, strings.TrimSuffix(r.tolerance, "%"))/100; nitrogenGas*1000 < want || nitrogenGas*1000 > want*(1+off) {
		t.Errorf("nitrogen gas %.0f per litre, want %v and not above %.1f %% more; source: %s", nitrogenGas*1000, want, 100*off, r.source)
	}
	r = all["RG171"]
	if low, _, _ := strings.Cut(r.expected, "-"); float64(leastOxygen) != parse(t, low) {
		t.Errorf("least oxygen %v, want %s; source: %s", leastOxygen, low, r.source)
	}
	// Recommended limits for a shift and for 15 minutes, then those of the law, then the
	// one that is dangerous to life, which stands in the words of the comment alone.
	r = all["RG173"]
	var ppm []float64
	for _, f := range strings.FieldsFunc(r.expected, func(c rune) bool { return c == '/' || c == ';' }) {
		ppm = append(ppm, parse(t, f))
	}
	if len(ppm) != 4 || float64(longCarbonic)*1e4 != min(ppm[0], ppm[2]) || float64(shortCarbonic)*1e4 != ppm[1] || ppm[3] <= ppm[1] || ppm[2] != ppm[0] {
		t.Errorf("carbon dioxide limits %v and %v %%, the source has %v ppm: %s", longCarbonic, shortCarbonic, ppm, r.source)
	}
	for _, k := range []string{"RG176", "RG171", "RG173"} {
		delete(all, k)
	}
	allAsked(t, all)

	// The warning must stand on the proper side of each limit.
	for _, c := range []struct {
		nitrogen Litre
		ice      Kg
		warnings int
	}{{2, 0, 1}, {6, 0, 2}, {0, 0.2, 1}, {0, 1, 2}, {0, 3, 2}, {6, 3, 3}} {
		if got := air(50, c.nitrogen, c.ice); len(got.Warnings) != c.warnings {
			t.Errorf("%v l and %v kg in 50 m³: %d warnings, want %d", c.nitrogen, c.ice, len(got.Warnings), c.warnings)
		}
	}
}

// usualClearance is the allowance of common practice, a thousandth of the diameter
// (DIN 7190, from memory).
func usualClearance(diameter Mm) Mm { return diameter / 1000 }
