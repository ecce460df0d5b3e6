package heat

// How long a hub off its shaft takes to get warm through: in an oven, on an
// induction heater, or by a torch. The finite volumes of net.go with no
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
				"the skin passes %v (%v) when the coldest place of the hub has %v",
				s.Limit.At, s.Limit.Source, Celsius(b.coldest()))
		}
		if pulls := b.cracks(); s.Hub.Material.Brittle && pulls > s.Hub.mayPull() {
			return Soaked{}, s.tooQuick(pulls)
		}
		if now := b.coldest(); now >= float64(s.To) {
			at := from + (b.clock-from)*share(was, now, float64(s.To))
			return Soaked{After: Second(at), Skin: Celsius(b.skin()), Into: Joule(b.heat() - b.started), Assumptions: s.assumptions()}, nil
		}
	}
	return Soaked{}, refuse("Source.Net", "use more power, or a hotter oven",
		"the hub is not at %v after %v: it loses as much as it gets", s.To, minutes(longestSoak))
}

// tooQuick refuses a heater that may crack a brittle hub.
func (s *Soak) tooQuick(pulls MPa) error {
	field, slower := "Source.Net", "less power"
	if s.Source.Means == Oven {
		field, slower = "Source.Inside", "a cooler oven that is turned up slowly"
	}
	return refuseAs("thermal-shock", field, slower+", or the tensile strength of its grade from the drawing",
		"the heat pulls the coldest place of a hub of %v with %v, and it may have %v, a third of its strength (thermal shock)",
		s.Hub.Material.Name, up(pulls), down(s.Hub.mayPull()))
}

// assumptions says how the heat gets in.
func (s *Soak) assumptions() []Assumption {
	if s.Source.Means == Oven {
		return []Assumption{assume("oven", "the moving air of the oven gives %v to the skin, the faces and the bore", s.Source.Film)}
	}
	return []Assumption{assume("net-power", "%v go into the hub itself, not what the heater takes", s.Source.Net)}
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
		return refuse("To", "give the temperature that it must get", "the hub starts at %v, which is not below %v",
			s.Hub.Start, s.To)
	}
	if s.To > s.Limit.At {
		return refuse("To", "cool the shaft instead, or use a press", "the hub must have %v and may have %v (%v)",
			up(s.To), down(s.Limit.At), s.Limit.Source)
	}
	if err := s.Hub.Material.covers("Limit.At", s.Limit.At); err != nil {
		return err
	}
	return firstOf(s.Source.checkSoak(s.To, s.Limit), s.Hub.checkShock(s.Source.Means))
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
			return refuse("Source.Inside", "set the oven above it", "an oven of %v never brings a hub to %v",
				s.Inside, to)
		}
		if s.Inside > limit.At {
			return refuse("Source.Inside", "set it at the limit or below", "an oven of %v is above the limit of %v (%v)",
				s.Inside, limit.At, limit.Source)
		}
		return nil
	}
	return refuse("Source.Means", `write "torch", "induction" or "oven"`, "%q is no way of heating known here", string(s.Means))
}
