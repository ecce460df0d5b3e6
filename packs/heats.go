package packs

import (
	"matchmark/packs/def"
	"matchmark/packs/fit"
	"matchmark/packs/heat"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// A Heat is one joint that is opened by heat, at one place: to draw a hub off, to
// put it on, or both. What could not be computed is nil; a problem tells why.
type Heat struct {
	At          source.Pos
	Mark        string // H1/DE
	Base        string
	Place       Place
	What        string
	Hub, Shaft  *Part
	Ring        heat.Hub
	Seat        heat.Shaft
	Limit       heat.Limit // of the heated part
	Fit         HeatFit
	Neighbours  []HeatNeighbour // the nearest first
	NothingNear string
	Air         heat.Celsius // parts and air when the heat goes on
	FireWatch   units.Quantity
	// Inch and Fahrenheit tell that the author writes in these, and paper as well.
	Inch, Fahrenheit bool
	Note             string
	Pull             *HotPull
	PutOn            *HotFit
	PulledAt         *Step
	PutOnAt          *Step
}

// A HeatFit is how tight the joint is, on the diameter at 20 °C.
type HeatFit struct {
	Designation     string // as on a drawing, empty when only sizes are given
	Diameter        heat.Mm
	Least, Greatest heat.Mm
	Counted         heat.Mm // the interference that the sheet is worked out for
	Basis           heat.Basis
	Bore, Seat      *Dim // that read them on this job, nil when none do

	Grip             *fit.Pressed // nil when no friction is given
	Holding, Pulling fit.Ratio
	Smoothing        fit.SmoothingRule
}

// A HeatNeighbour is a part that must stay cool.
type HeatNeighbour struct {
	heat.Neighbour
	KeptCool, MeasuredWith string
}

// A HotPull is how a hub is drawn off.
type HotPull struct {
	By        heat.Means
	Clearance heat.Mm
	Longest   heat.Second
	Puller    string
	PullsWith heat.Newton // zero when not said
	Short     bool        // the puller alone would not move it cold
	Shield    string
	IfStuck   string
	Plan      *heat.Plan
}

// A HotFit is how a part is put on.
type HotFit struct {
	By        heat.Means
	Clearance heat.Mm
	SetTo     heat.Celsius // what it is heated to
	Given     bool         // SetTo is what the maker gives, not what was worked out
	Plan      *heat.Refitted
	Oven      heat.Celsius  // zero when not said
	Soak      *heat.Soaked  // nil when the heater is not told
	Chill     *heat.Chilled // nil when the shaft is not cooled
	Coolant   heat.Coolant
	Room      *heat.Air // of the room the coolant is used in
	Ladder    []HeatRung
}

// A HeatRung says what an interference, as measured, is heated to.
type HeatRung struct {
	UpTo  heat.Mm
	SetTo heat.Celsius
	// TooHot says that the part may not be heated as far as that.
	TooHot bool
}

// film is what hub and shaft lose to the air of a shop, draught and radiation
// together, and ovenFilm what the air of an oven gives: both from memory, and
// printed among the assumptions.
const (
	film     heat.Conductance = 12
	ovenFilm heat.Conductance = 20
)

// readHeats repeats every heat over its places and computes it.
func (b *builder) readHeats() {
	b.heats = map[string][]*Heat{}
	for _, dh := range b.def.Heats {
		places := b.over(dh.Each)
		b.checkVarying(dh.What, "what is heated", places)
		b.checkVarying(dh.Hub.Outside, "the outside diameter", places)
		b.checkVarying(dh.Hub.Length, "the length of the fit", places)
		b.checkVarying(dh.Shaft.Behind, "how far the shaft runs on", places)
		for _, v := range []def.Varying{dh.Fit, dh.Interference, dh.Diameter, dh.Shaft.Bore, dh.Shaft.Front} {
			b.checkVarying(v, "", places)
		}
		for _, pl := range places {
			h := b.readHeat(dh, pl)
			b.heats[h.Base] = append(b.heats[h.Base], h)
			b.job.Heats = append(b.job.Heats, h)
		}
	}
}

// readHeat reads and computes one heat at one place.
func (b *builder) readHeat(dh *def.Heat, pl Place) *Heat {
	h := &Heat{
		At: dh.Mark.At, Mark: pl.mark(dh.Mark.Value), Base: dh.Mark.Value, Place: pl, What: pl.value(dh.What),
		NothingNear: dh.NothingNear.Value, Note: dh.Note.Value, Air: 20,
	}
	r := &heatReader{b: b, def: dh, heat: h, places: map[string]source.Pos{}}
	r.parts()
	r.temperatures()
	r.fit()
	r.neighbours()
	r.fireWatch()
	r.words()
	if dh.Pull.At.IsZero() && dh.PutOn.At.IsZero() {
		b.problems.Add(h.At, "heat-does-nothing", h.Mark+" says neither how it is drawn off nor how it is put on",
			"pull: {by: torch, …} for a hub that comes off", "put-on: {by: oven, …} for one that goes on")
	}
	r.grip()
	r.pull()
	r.putOn()
	return h
}

// heatsAt resolves the mark of a heat in a step's list: H1, H1/DE.
func (b *builder) heatsAt(t def.Text, from Place) []*Heat {
	key, label, named := cut(t.Value)
	all, ok := b.heats[key]
	if !ok {
		b.unknown(t, "heat", mapKeys(b.heats), "heats")
		return nil
	}
	return pick(b, t, "heat", all, func(h *Heat) Place { return h.Place }, from, label, named)
}
