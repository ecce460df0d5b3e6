package heat

import (
	"math"
	"testing"
)

func ovenJob(t *testing.T) Soak {
	return Soak{
		Bore: 120, Hub: Hub{Outside: 210, Length: 150, Material: flat(50, 7850, 480, 12e-6), Start: 20},
		Source: Source{Means: Oven, Inside: 170, Film: 20},
		To:     150, Limit: Limit{At: 200, Source: "site"},
	}
}

// A hub in an oven is one lump: t = m c/(h A) ln(150/20). Incropera, lumped
// capacity, section 5.1; Bi of the wall is 0.02.
func TestAnOvenWarmsAHubLikeALump(t *testing.T) {
	t.Parallel()
	got, err := ovenJob(t).Plan()
	if err != nil {
		t.Fatal(err)
	}
	section := math.Pi / 4 * (0.21*0.21 - 0.12*0.12)
	area := math.Pi*(0.21+0.12)*0.15 + 2*section
	want := 7850 * 480 * section * 0.15 / (20 * area) * math.Log(150.0/20)
	near(t, "time in the oven", float64(got.After), want, 0.02*want)
	near(t, "heat", float64(got.Into), 7850*480*section*0.15*130, 7850*480*section*0.15)
}

// With a net power and no losses the mean rises by P t/(m c); the coldest place
// lags behind it, the skin runs ahead.
func TestInductionWarmsAHubByItsPower(t *testing.T) {
	t.Parallel()
	s := ovenJob(t)
	s.Source = Source{Means: Induction, Net: 5000, Depth: 5}
	s.Air = Surroundings{20, 0}
	got, err := s.Plan()
	if err != nil {
		t.Fatal(err)
	}
	mass := 7850 * math.Pi / 4 * (0.21*0.21 - 0.12*0.12) * 0.15
	near(t, "heat", float64(got.Into), 5000*float64(got.After), 0.01*5000*float64(got.After))
	if mean := 20 + float64(got.Into)/(mass*480); mean < 150 || mean > float64(got.Skin) {
		t.Errorf("mean %.1f °C, skin %.1f °C", mean, float64(got.Skin))
	}
	// Heat set deep leaves the skin cooler than heat on the face.
	s.Source.Depth = 0
	face, err := s.Plan()
	if err != nil {
		t.Fatal(err)
	}
	if face.Skin <= got.Skin {
		t.Errorf("skin %.1f °C with heat on the face, %.1f °C with heat below it", float64(face.Skin), float64(got.Skin))
	}
}

func TestHeatersThatCannotDoItAreRefused(t *testing.T) {
	t.Parallel()
	for name, c := range map[string]struct {
		change func(*Soak)
		field  string
		says   string
	}{
		"oven too cold":       {func(s *Soak) { s.Source.Inside = 150 }, "Source.Inside", "never brings"},
		"oven above limit":    {func(s *Soak) { s.Source.Inside = 210 }, "Source.Inside", "above the limit"},
		"oven without film":   {func(s *Soak) { s.Source.Film = 0 }, "Source.Film", "missing"},
		"oven with a power":   {func(s *Soak) { s.Source.Net = 1000 }, "Source.Net", "not by a net power"},
		"torch without power": {func(s *Soak) { s.Source = Source{Means: Torch} }, "Source.Net", "missing"},
		"torch too strong":    {func(s *Soak) { s.Source = Source{Means: Torch, Net: 60e3}; s.To = 190 }, "Source.Net", "use less power"},
		"torch too weak":      {func(s *Soak) { s.Source = Source{Means: Torch, Net: 100}; s.Air = Surroundings{20, 12} }, "Source.Net", "as much as it gets"},
		"above its limit":     {func(s *Soak) { s.To = 210 }, "To", "may have"},
		"already warm":        {func(s *Soak) { s.To = 20 }, "To", "starts at"},
		"no bore":             {func(s *Soak) { s.Bore = 0 }, "Bore", "missing"},
		"unknown heater":      {func(s *Soak) { s.Source.Means = "steam" }, "Source.Means", "steam"},
	} {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			s := ovenJob(t)
			c.change(&s)
			_, err := s.Plan()
			refusedAt(t, err, c.field, c.says)
		})
	}
}
