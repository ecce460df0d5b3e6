package heat

import (
	"fmt"
	"math"
)

// A Pull is a hub to be drawn off its shaft by heat.
type Pull struct {
	Fit     Fit
	Hub     Hub
	Shaft   Shaft
	Contact Contact
	Source  Source
	Air     Surroundings
	Skin    Limit // of the outer face of the hub
	// Crayon is the scale of the crayon on the skin: when it melts the heat goes off.
	// Empty when there is none: then it goes off at the limit itself.
	Crayon Crayon
	// Neighbours are the parts to protect, the nearest first; none when nothing is
	// near.
	Neighbours []Neighbour
	// Longest is how long the crew will heat before giving up. Slow heat grows
	// the shaft as well: a quarter of an hour is long.
	Longest Second
	// ColdPull is the force that draws the hub off cold, with the high friction
	// for sizing a puller; it is only quoted when heat does not do. Zero when
	// not known.
	ColdPull Newton
	// ColdHoop is the hoop tension of the cold fit at the bore of the hub, for
	// judging the wall; zero when not known.
	ColdHoop MPa
	// Yield is the yield stress of the hub; zero when not known: then nothing is
	// said of yielding.
	Yield MPa
	// Workable is how long the crew takes from heat off to off the seat; the zero
	// value takes UsualWorkable.
	Workable Workable
}

// A Plan is a hot pull computed in time. All times count from the moment the
// heat goes on. For the paper, temperatures and powers that must be reached are
// rounded up; limits, windows and clearances down.
type Plan struct {
	Need   Free // what must be opened, with the whole shaft at its start
	Band   Band // of net power that works
	Net    Watt // the power the rest is computed for
	Course []Moment

	Parts Second // the opening reaches the interference: contact is lost
	Free  Second // it reaches interference and clearance: heat off, draw it
	// Stays is how long the opening stays above the interference after that, with
	// the heat off at Free; Endless says that it was still free when the computation
	// stopped, ten minutes later at the least.
	Stays    Second
	Endless  bool
	Workable Workable // what Stays is judged by: see Short

	Skin, Bore, Seat Celsius // when it comes free
	Hottest          Celsius // the skin over the whole pull
	// Levels is what the opening levels off at with this power, by the formula
	// for a solid shaft of the material of the hub; zero for any other.
	Levels Mm
	Wall   Wall
	// HeatOn is how long the heat may stay on after Free, until the crayon
	// on it melts, to gain time for drawing; Loose how long the opening is then above the
	// interference in all, from Free on, and LooseEndless that it still was at the
	// end. This is another run than that of Stays.
	HeatOn, Loose Second
	LooseEndless  bool
	Neighbours    []Warmed // in the order given
	Into          Joule    // heat put in until it is free
	Crayon        Celsius  // at which the heat goes off; the limit when there is no crayon

	Assumptions []Assumption
	Warnings    []Warning
	Working     []Working
}

// A Moment is the state of the pull at one time: the skin where it is hottest along
// the hub, bore, shaft and opening where the opening lags.
type Moment struct {
	At               Second
	Skin, Bore, Seat Celsius // outer face, bore of the hub, mean of the shaft under it
	Along            Celsius // shaft at the nearest neighbour; the far end without one
	Opening          Mm      // less the reserve for the error of the computation
	Heating          bool
}

// A Wall is the hub at its greatest temperature difference.
type Wall struct {
	At         Second
	Difference KelvinRise // skin over bore
	AtBore     MPa        // stress from it at the bore, tension positive
	AtSkin     MPa
	// Use is the greatest stress of heat and fit together over the yield stress of
	// the hub, and UsedAt when; zero when the yield stress is not given.
	Use    Number
	UsedAt Second
}

// A Warmed is a neighbour and how warm the shaft gets where it sits.
type Warmed struct {
	Neighbour
	Greatest Celsius // with the hub drawn off at once
	At       Second
	// IfStuck is the greatest when the hub is heated to its skin limit or for
	// the longest time, does not move, and cools on the shaft.
	IfStuck   Celsius
	IfStuckAt Second
}

func (p *Pull) check() error {
	if err := within("Fit", p.Fit.check()); err != nil {
		return err
	}
	err := firstOf(
		within("Hub", p.Hub.check(p.Fit.Diameter)),
		within("Shaft", p.Shaft.check(p.Fit.Diameter)),
		within("Contact", p.Contact.check()),
		within("Air", p.Air.check()),
		p.Skin.check("Skin", "the hub skin"),
		p.Source.checkPull(p.Skin),
		p.checkLongest(),
		p.Workable.check(),
		notNegative("ColdPull", "the cold pulling force", float64(p.ColdPull), "N"),
		notNegative("ColdHoop", "the stress of the cold fit", float64(p.ColdHoop), "MPa"),
		notNegative("Yield", "the yield stress of the hub", float64(p.Yield), "MPa"),
	)
	if err != nil {
		return err
	}
	if p.stop() <= p.Hub.Start {
		return refuse("Skin.At", "give the temperature that the skin must never pass",
			"a skin limit of %v leaves no heat for a hub that starts at %v", p.Skin.At, p.Hub.Start)
	}
	// The shaft stays below the skin, so the skin limit bounds both.
	if err := firstOf(p.Hub.Material.covers("Skin.At", p.Skin.At), p.Shaft.Material.covers("Skin.At", p.Skin.At)); err != nil {
		return err
	}
	if err := p.checkShock(); err != nil {
		return err
	}
	return p.checkNeighbours()
}

// checkLongest refuses hours of heating: the shaft has then long grown as well.
func (p *Pull) checkLongest() error {
	if err := positive("Longest", "the longest time of heating", float64(p.Longest), "seconds"); err != nil {
		return err
	}
	if p.Longest > longestPull {
		return refuse("Longest", "give the time after which the crew stops and takes another way",
			"%v of heating are no hot pull: the shaft grows as far as the hub", minutes(p.Longest))
	}
	return nil
}

// longestPull bounds the time of heating: two hours, far beyond any pull; common
// practice, no source.
const longestPull Second = 2 * 3600

func (s *Source) checkPull(skin Limit) error {
	switch s.Means {
	case Torch, Induction:
	case Oven:
		return refuse("Source.Means", "heat the hub with torches or induction while the shaft stays cold",
			"an oven warms hub and shaft alike, and the hub never comes free")
	default:
		return refuse("Source.Means", `write "torch" or "induction"`, "%q is no way of heating known here", string(s.Means))
	}
	return firstOf(
		s.checkFlame(skin),
		notNegative("Source.Net", "the net power", float64(s.Net), "W"),
		notNegative("Source.Depth", "the depth of induction heating", float64(s.Depth), "mm"),
	)
}

// checkFlame refuses a torch on a part that no flame may touch.
func (s *Source) checkFlame(skin Limit) error {
	if s.Means == Torch && skin.NoFlame {
		return refuse("Source.Means", "use induction, hot oil or an oven, or a hydraulic or mechanical puller",
			"no flame may touch this part (%v)", skin.Source)
	}
	return nil
}

// neighbourField is how a refusal or warning names a neighbour: Neighbours.0.
func neighbourField(i int) string { return fmt.Sprintf("Neighbours.%d", i) }

func (p *Pull) checkNeighbours() error {
	for i := range p.Neighbours {
		n := &p.Neighbours[i]
		if err := p.checkNeighbour(n, neighbourField(i)); err != nil {
			return err
		}
		if i > 0 && n.Distance < p.Neighbours[i-1].Distance {
			return refuse(neighbourField(i)+".Distance", "give the nearest first",
				"%v is nearer than %v before it", n.name(), p.Neighbours[i-1].name())
		}
	}
	return nil
}

func (p *Pull) checkNeighbour(n *Neighbour, field string) error {
	err := firstOf(
		notNegative(field+".Distance", "the distance of the neighbour", float64(n.Distance), "mm"),
		n.Limit.check(field+".Limit", "the neighbour"),
	)
	if err != nil {
		return err
	}
	if n.Distance > p.Shaft.Behind || p.Shaft.Behind == 0 {
		return refuse("Shaft.Behind", "give the length of shaft behind the hub, past the neighbour",
			"%v sits %v behind the hub, where no shaft is given", n.name(), n.Distance)
	}
	if n.Limit.At <= p.Shaft.Start {
		return refuse(field+".Limit.At", "give the temperature it must not pass",
			"the limit of %v for %v is not above the shaft, which starts at %v", n.Limit.At, n.name(), p.Shaft.Start)
	}
	return nil
}

func (n *Neighbour) name() string {
	if n.Name == "" {
		return "the neighbour"
	}
	return n.Name
}

// Plan computes the pull in time. It refuses a pull that heat cannot free
// within the skin limit, a net power outside the band that works, and inputs
// that are missing or cannot be; the refusal says how else to get the hub off.
func (p Pull) Plan() (Plan, error) { return p.plan(usualGrid) }

func (p *Pull) plan(g grid) (Plan, error) {
	if err := p.check(); err != nil {
		return Plan{}, err
	}
	need, err := rise(p.Fit, &p.Hub.Material, p.Shaft.Material.strain(float64(p.Shaft.Start)), p.Shaft.Start)
	if err != nil {
		return Plan{}, err
	}
	s := search{pull: p, grid: g}
	if need.Hub >= p.stop() {
		return Plan{}, p.tooTight(&s, need.Hub)
	}
	if at := p.startOpening(); at >= p.Fit.opening() {
		return Plan{}, refuse("Hub.Start", "measure both at one temperature",
			"at their temperatures the hub is already free by %v", fine(at-p.Fit.Interference))
	}
	band, err := s.band()
	if err != nil {
		return Plan{}, err
	}
	plan := Plan{Need: need, Band: band, Crayon: p.Skin.crayon(p.Crayon), Workable: p.workable()}
	if plan.Net, err = p.choose(&s, band); err != nil {
		return Plan{}, err
	}
	if err := p.follow(&plan, g); err != nil {
		return Plan{}, err
	}
	plan.Assumptions = p.assumptions()
	plan.Warnings = p.warnings(&plan)
	plan.Working = append(plan.Working, need.Working)
	if p.levelsApply() {
		plan.Working = append(plan.Working, p.ceilingWorking(&plan))
	}
	return plan, nil
}

// choose takes the power that was given, or the middle of the band as powers
// go: as many times the least as the most is of it.
func (p *Pull) choose(s *search, b Band) (Watt, error) {
	w := p.Source.Net
	switch {
	case w == 0:
		return Watt(math.Sqrt(float64(b.Least * b.Most))), nil
	case w < b.Least:
		return 0, p.tooSlow(s.try(float64(w)), b)
	case w > b.Most:
		return 0, p.tooFast(s.try(float64(w)), b)
	}
	return w, nil
}

// startOpening is the opening that the start temperatures make.
func (p *Pull) startOpening() Mm {
	h := p.Hub.Material.strain(float64(p.Hub.Start))
	s := p.Shaft.Material.strain(float64(p.Shaft.Start))
	return p.Fit.Diameter * Mm(h-s)
}
