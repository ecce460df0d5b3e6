package heat

import "math"

// A shaft cooled for its hub, in time: how long it may hang in the air, and how long
// until it grips.
//
// The finite volumes of net.go, with a shaft that has the mean expansion down to its
// coolant (chill.go), which hurries it: it has shrunk by more than the straight line
// says on the way back. Metal takes less heat the colder it is, about a quarter less in
// the mean down to 80 K (from memory). Half of what it takes in the shop lets the shaft
// warm sooner, all of it lets the hub cool sooner: both are followed, and the shorter
// time is told. The air gives the cold shaft twice what it gives a warm part, for frost
// and for the draught of cold air. No shaft beyond the fit is counted, which would
// bring more cold.
//
// So all three times are least times. Refused: what chill refuses, and a hub that
// would pass its limit.

// A ColdFit is a hub to be slid on a cooled shaft. The start temperatures are those of
// the parts as they lie in the shop.
type ColdFit struct {
	Fit   Fit
	Hub   Hub
	Shaft Shaft
	Air   Surroundings
	By    Coolant
	Limit Limit // of the hub, where it must be heated besides
}

// A ColdFitted is a cold fit computed.
type ColdFitted struct {
	Chilled
	SetTo Celsius // of the hub: that of the shop, or up to the next full 5 °C
	Room  Mm      // clearance at the moment the shaft is out
	// Carry is how long the shaft, and a hub that is heated, may hang in the air
	// until half of the room is gone.
	Carry Second
	// Grips is how long after sliding on it grips when the shaft hangs centred in
	// the air of the gap; GripsSoonest when it touches all round from the start.
	Grips, GripsSoonest Second
	Assumptions         []Assumption
}

// The least share of the heat capacity, and of the film, that a cold shaft is counted
// with.
const (
	coldHeat = 0.5
	coldFilm = 2
)

// Plan computes the cold fit, or refuses it.
func (c ColdFit) Plan() (ColdFitted, error) {
	if err := within("Fit", c.Fit.check()); err != nil {
		return ColdFitted{}, err
	}
	err := firstOf(
		within("Hub", c.Hub.check(c.Fit.Diameter)),
		within("Shaft", c.Shaft.check(c.Fit.Diameter)),
		within("Air", c.Air.check()),
		c.Limit.check("Limit", "the hub"),
		positive("Fit.Clearance", "the clearance for sliding the hub on", float64(c.Fit.Clearance), "mm"),
		positive("Air.Film", "the loss to the air", float64(c.Air.Film), "W/m²K"),
	)
	if err != nil {
		return ColdFitted{}, err
	}
	chilled, err := chill(c.Fit, c.Hub.Material, c.Shaft.Material, c.By, c.Hub.Start)
	if err != nil {
		return ColdFitted{}, err
	}
	out := ColdFitted{Chilled: chilled, SetTo: c.Hub.Start, Assumptions: c.assumptions()}
	if chilled.HubHeated {
		out.SetTo = Celsius(5 * math.Ceil(float64(chilled.Hub)/5-1e-9))
	}
	if out.SetTo > c.Limit.At {
		return ColdFitted{}, refuse("Limit.At", "less clearance, a colder coolant, or a hydraulic press",
			"even on a shaft cooled in %v the hub needs %v, and may have %v (%v)", string(c.By), up(out.SetTo), down(c.Limit.At), c.Limit.Source)
	}
	if err := c.Hub.Material.covers("Limit.At", out.SetTo); err != nil {
		return ColdFitted{}, err
	}
	return out, c.inTime(&out)
}

// cold is the shaft as it comes out of its coolant.
func (c *ColdFit) cold(contraction Mm, heats float64) Shaft {
	s := c.Shaft
	s.Behind, s.Front, s.Start = 0, 0, c.By.reaches()
	shrinks := float64(contraction / c.Fit.Diameter)
	s.Material.Elongation = flatExpansion(shrinks / float64(sizedAt-s.Start))
	for i := range s.Material.Specific {
		s.Material.Specific[i] *= heats
	}
	return s
}

// inTime follows shaft and hub in the air, and on each other.
func (c *ColdFit) inTime(out *ColdFitted) error {
	hot := c.Hub
	hot.Start = out.SetTo
	d := c.Fit.Diameter.metres()
	grown, shrunk := d*hot.Material.strain(float64(hot.Start)), out.Contraction.metres()
	out.Room = Mm((grown+shrunk)*1000) - c.Fit.Interference
	if err := c.carry(out, &hot, grown, shrunk); err != nil {
		return err
	}
	return c.grips(out, &hot)
}

// carry follows hub and shaft hanging in the air. Each may lose a half of what may be
// lost together, which is half of the room; where one of them never changes as much,
// the other may lose the rest.
func (c *ColdFit) carry(out *ColdFitted, hot *Hub, grown, shrunk float64) error {
	d, half := c.Fit.Diameter.metres(), out.Room.metres()/2
	cools := max(0, grown-d*hot.Material.strain(float64(c.Air.Air)))
	hubMay, shaftMay := half/2, half/2
	switch {
	case cools <= half/2:
		hubMay, shaftMay = math.Inf(1), half-cools
	case shrunk <= half/2:
		hubMay, shaftMay = half-shrunk, math.Inf(1)
	}
	first := Second(math.Inf(1))
	if !math.IsInf(hubMay, 1) {
		at, err := coolsTo(newBodies(hot, nil, c.Fit, Contact{Perfect: true}, c.Air, usualGrid), grown-hubMay)
		if err != nil {
			return err
		}
		first = at
	}
	if !math.IsInf(shaftMay, 1) {
		cold, air := c.cold(out.Contraction, coldHeat), c.Air
		air.Film *= coldFilm
		bar := Hub{Outside: c.Fit.Diameter, Length: c.Hub.Length, Material: cold.Material, Start: cold.Start}
		alone := newBodies(&bar, nil, Fit{Diameter: cold.Bore}, Contact{Perfect: true}, air, usualGrid)
		at, err := until(alone, func() float64 { return -d * alone.meanStrain(alone.t, 0, alone.nHub) }, shrunk-shaftMay)
		if err != nil {
			return err
		}
		first = min(first, at)
	}
	out.Carry = first
	return nil
}

// grips follows the joint until it grips, touching and centred, with the least and with
// the whole heat capacity of the shaft.
func (c *ColdFit) grips(out *ColdFitted, hot *Hub) error {
	mark := c.Fit.Interference.metres()
	for i, heats := range []float64{coldHeat, 1} {
		cold := c.cold(out.Contraction, heats)
		for _, way := range []struct {
			touches Mm
			grips   *Second
		}{{0, &out.Grips}, {out.Room, &out.GripsSoonest}} {
			at, err := coolsTo(newBodies(hot, &cold, c.Fit, Contact{Perfect: true, TouchUntil: way.touches}, c.Air, usualGrid), mark)
			if err != nil {
				return err
			}
			if i == 0 || at < *way.grips {
				*way.grips = at
			}
		}
	}
	out.GripsSoonest = out.GripsSoonest.atTheEnds(endsGrip)
	return nil
}

func (c *ColdFit) assumptions() []Assumption {
	list := []Assumption{
		assume("cold-through", "the shaft is cold through when it leaves its coolant, where that has stopped boiling"),
		assume("cold-heat", "the cold shaft takes between half and all of the heat that it takes warm, whichever grips sooner, and the air gives it %v, twice as much as a warm part", coldFilm*c.Air.Film),
		assume("grip", "the times to grip lie between a shaft that touches all round and one that hangs centred in its gap; the shorter is told a fifth shorter, for the ends of a short hub cool first"),
	}
	list = append(list, ofMaterials(&c.Hub.Material, &c.Shaft.Material)...)
	return append(list, assumePlanning())
}
