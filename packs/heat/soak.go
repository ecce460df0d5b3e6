package heat

import "fmt"

// How long a hub off its shaft takes to get warm through: in an oven, on an
// induction heater, or by a torch. The finite volumes of chain.go with no
// shaft; the oven's air reaches skin, faces and bore. Refused: an oven that is
// not hotter than the hub must get, no heat, a skin that passes its limit first.

// A Soak is a hub alone to be warmed until its coldest place is at To. Bore is
// its joint diameter.
type Soak struct {
	Bore   Mm
	Hub    Hub
	Source Source
	Air    Surroundings // not used for an oven
	To     Celsius
	Limit  Limit // of the skin
}

// A Soaked is the time in the heater.
type Soaked struct {
	After Second
	Skin  Celsius // by then
	Into  Joule   // heat the hub took, less what it lost

	Assumptions []Assumption
}

// Plan computes the time in the heater.
func (s Soak) Plan() (Soaked, error) {
	if err := s.check(); err != nil {
		return Soaked{}, err
	}
	air := s.Air
	if s.Source.Means == Oven {
		air = Surroundings{Air: s.Source.Inside, Film: s.Source.Film}
	}
	// The contact plays no part without a shaft.
	b := newBodies(&s.Hub, nil, Fit{Diameter: s.Bore}, Contact{Perfect: true}, air, usualGrid)
	b.putPower(float64(s.Source.Net), s.Source.Depth.metres())
	clock := newStepper(b, usualGrid)
	for b.clock < longestSoak {
		was, from := b.coldest(), b.clock
		if !clock.step() {
			return Soaked{}, errDiverged()
		}
		// Looked at before the target: a hub that gets there with a burnt skin
		// has not got there.
		if b.skin() > float64(s.Limit.At) {
			return Soaked{}, refuse("Source.Net", "use less power, or an oven",
				"the skin passes %.0f °C (%s) when the coldest place of the hub has %.0f °C",
				float64(s.Limit.At), s.Limit.Source, b.coldest())
		}
		if now := b.coldest(); now >= float64(s.To) {
			at := from + (b.clock-from)*share(was, now, float64(s.To))
			return Soaked{After: Second(at), Skin: Celsius(b.skin()), Into: Joule(b.heat() - b.started), Assumptions: s.assumptions()}, nil
		}
	}
	return Soaked{}, refuse("Source.Net", "use more power, or a hotter oven",
		"the hub is not at %.0f °C after %d hours: it loses as much as it gets", float64(s.To), longestSoak/3600)
}

// assumptions says how the heat gets in.
func (s *Soak) assumptions() []Assumption {
	if s.Source.Means == Oven {
		return []Assumption{{"oven", fmt.Sprintf("the moving air of the oven gives %.0f W/m²K to the skin, the faces and the bore", float64(s.Source.Film))}}
	}
	return []Assumption{{"net-power", fmt.Sprintf("%.1f kW go into the hub itself, not what the heater takes", float64(s.Source.Net)/1000)}}
}

// coldest is the lowest temperature of the rings of a hub alone.
func (b *bodies) coldest() float64 {
	least := b.rings.t[0]
	for _, t := range b.rings.t {
		least = min(least, t)
	}
	return least
}

func (s *Soak) check() error {
	err := firstOf(
		positive("Bore", "the bore of the hub", float64(s.Bore), "mm"),
		within("Hub", s.Hub.check(s.Bore)),
		within("Air", s.Air.check()),
		temperature("To", "the hub when warm", s.To),
		s.Limit.check("Limit", "the hub"),
	)
	if err != nil {
		return err
	}
	if s.To <= s.Hub.Start {
		return refuse("To", "give the temperature that it must get", "the hub starts at %.0f °C, which is not below %.0f °C",
			float64(s.Hub.Start), float64(s.To))
	}
	if s.To > s.Limit.At {
		return refuse("To", "cool the shaft instead, or use a press", "the hub must have %.0f °C and may have %.0f °C (%s)",
			float64(s.To), float64(s.Limit.At), s.Limit.Source)
	}
	if err := s.Hub.Material.covers("Limit.At", s.Limit.At); err != nil {
		return err
	}
	return s.Source.checkSoak(s.To, s.Limit)
}

func (s *Source) checkSoak(to Celsius, limit Limit) error {
	switch s.Means {
	case Torch, Induction:
		return firstOf(
			s.checkFlame(limit),
			positive("Source.Net", "the net power", float64(s.Net), "W"),
			notNegative("Source.Depth", "the depth of induction heating", float64(s.Depth), "mm"),
		)
	case Oven:
		if s.Net != 0 || s.Depth != 0 {
			return refuse("Source.Net", "leave power and depth out; give its temperature and film",
				"an oven heats by its air, not by a net power")
		}
		if err := positive("Source.Film", "the film of the oven's air", float64(s.Film), "W/m²K"); err != nil {
			return err
		}
		if s.Inside <= to {
			return refuse("Source.Inside", "set it 10 to 20 °C above", "an oven of %.0f °C never brings a hub to %.0f °C",
				float64(s.Inside), float64(to))
		}
		if s.Inside > limit.At {
			return refuse("Source.Inside", "set it at the limit or below", "an oven of %.0f °C is above the limit of %.0f °C (%s)",
				float64(s.Inside), float64(limit.At), limit.Source)
		}
		return nil
	}
	return refuse("Source.Means", `write "torch", "induction" or "oven"`, "%q is no way of heating known here", string(s.Means))
}
