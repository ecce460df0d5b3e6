package heat

// A Hub is the outer part: a plain ring as long as the fit.
type Hub struct {
	Outside  Mm // diameter
	Length   Mm // of the fit
	Material Material
	Start    Celsius // temperature when the heat goes on
	// Strength is the tensile strength of a hub of a brittle material, from its
	// drawing; zero counts with the weakest grade that is cast. Not used otherwise.
	Strength MPa
}

// A Shaft is the inner part. It runs on from both faces of the hub with the
// diameter of the seat: Behind toward the machine and the neighbour, Front to
// its end. Heat runs away along both.
type Shaft struct {
	Bore     Mm // zero for a solid shaft
	Behind   Mm
	Front    Mm // zero when the hub ends flush
	Material Material
	Start    Celsius
}

// A Contact is how well heat crosses the joint.
type Contact struct {
	// Perfect says that the joint is no hindrance while the parts touch. It
	// warms the shaft most, and so is the cautious choice for a pull.
	Perfect bool
	// Touching is the conductance while they touch, when not Perfect; to be
	// measured.
	Touching Conductance
	// TouchUntil is the clearance up to which the joint is taken as still
	// touching after the opening has reached the interference: form errors, the
	// sag of the hub, a key. Zero parts them at the interference.
	TouchUntil Mm
	// Open is the conductance after that. Zero computes the film of air in the
	// gap as it widens.
	Open Conductance
}

// A Means is what heats the hub.
type Means string

// Torch puts its net power on the outer face; Induction into a depth below it;
// Oven surrounds the part with hot air.
const (
	Torch     Means = "torch"
	Induction Means = "induction"
	Oven      Means = "oven"
)

// A Source is the heater.
type Source struct {
	Means Means
	// Net is the heat that enters the hub, not what the burner or the coil
	// takes. Zero leaves the choice to the plan.
	Net Watt
	// Depth is how deep induction heats: the depth at which the power per
	// volume has fallen to a seventh (e²). Zero puts all of it on the face,
	// which gives the hottest skin.
	Depth Mm
	// Inside is the temperature of an oven, and Film what its air carries to
	// the part.
	Inside Celsius
	Film   Conductance
}

// Surroundings is the air about hub and shaft; Film counts draught and
// radiation together, 5 to 25 W/m²K in a shop, from memory.
type Surroundings struct {
	Air  Celsius
	Film Conductance
}

// A Neighbour is a part on the shaft that must not get hot: a bearing, a seal.
type Neighbour struct {
	Name     string
	Distance Mm // from the near face of the hub
	Limit    Limit
}

func (h *Hub) check(diameter Mm) error {
	err := firstOf(
		positive("Outside", "the outside diameter of the hub", float64(h.Outside), "mm"),
		positive("Length", "the length of the fit", float64(h.Length), "mm"),
		within("Material", h.Material.check()),
		temperature("Start", "the hub", h.Start),
		notNegative("Strength", "the tensile strength of the hub", float64(h.Strength), "MPa"),
		h.Outside.check("Outside", "the outside diameter of the hub"),
		h.Length.check("Length", "the length of the fit"),
	)
	if err != nil {
		return err
	}
	if h.Outside <= diameter {
		return refuse("Outside", "the outside must be larger than the bore; a sleeve of a millimetre is no hub",
			"a hub of %v outside has no wall on a bore of %v", h.Outside, diameter)
	}
	// A wall of under a fiftieth of the bore is a sleeve: it would be burnt
	// through before anybody could read a thermometer.
	if h.Outside < diameter*1.04 {
		return refuse("Outside", "slit or cut a thin sleeve off, or warm it with hot air",
			"a wall of %v on a bore of %v is too thin for this way of heating", (h.Outside-diameter)/2, diameter)
	}
	return h.Material.covers("Start", h.Start)
}

func (s *Shaft) check(diameter Mm) error {
	err := firstOf(
		notNegative("Bore", "the bore of the shaft", float64(s.Bore), "mm"),
		notNegative("Behind", "the shaft behind the hub", float64(s.Behind), "mm"),
		notNegative("Front", "the shaft in front of the hub", float64(s.Front), "mm"),
		s.Behind.check("Behind", "the shaft behind the hub"),
		s.Front.check("Front", "the shaft in front of the hub"),
		within("Material", s.Material.check()),
		temperature("Start", "the shaft", s.Start),
	)
	if err != nil {
		return err
	}
	if s.Bore >= diameter {
		return refuse("Bore", "the bore of a hollow shaft is smaller than its seat",
			"a bore of %v leaves nothing of a seat of %v", s.Bore, diameter)
	}
	return s.Material.covers("Start", s.Start)
}

func (c *Contact) check() error {
	err := firstOf(
		notNegative("Touching", "the conductance of the joint", float64(c.Touching), "W/m²K"),
		notNegative("TouchUntil", "the clearance up to which the parts touch", float64(c.TouchUntil), "mm"),
		notNegative("Open", "the conductance of the open joint", float64(c.Open), "W/m²K"),
	)
	switch {
	case err != nil:
		return err
	case c.Perfect && c.Touching != 0:
		return refuse("Touching", "leave one of the two out",
			"the joint is called perfect and has %v as well", c.Touching)
	case !c.Perfect && c.Touching == 0:
		return refuse("Touching", "give what was measured, or take perfect contact, the cautious choice for a pull",
			"how well heat crosses the joint is missing")
	case !c.Perfect && c.Open > c.Touching:
		return refuse("Open", "an open joint carries less heat than a closed one",
			"the open joint is given %v, the closed one %v", c.Open, c.Touching)
	}
	return nil
}

func (a *Surroundings) check() error {
	return firstOf(temperature("Air", "the air", a.Air),
		notNegative("Film", "the loss to the air", float64(a.Film), "W/m²K"))
}
