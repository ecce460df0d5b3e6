package job

import (
	"matchmark/packs/fit"
	"matchmark/packs/heat"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// MovedBy tells what a step does with the heated part: by what it removes or fits,
// else by what the heat is for.
func (h *Heat) MovedBy(st *Step) (off, on bool) {
	for _, m := range st.Remove {
		if m.Part == h.Hub {
			return true, false
		}
	}
	for _, m := range st.Fit {
		if m.Part == h.Hub {
			return false, true
		}
	}
	return h.Pull != nil && h.PutOn == nil, h.PutOn != nil && h.Pull == nil
}

func (h *Heat) PartName() string {
	if h.Hub == nil {
		return "the part"
	}
	return h.Hub.Name
}

// way is how a step heats the part.
func (h *Heat) way(st *Step) heat.Means {
	switch {
	case h.PulledAt == st && h.Pull != nil:
		return h.Pull.By
	case h.PutOnAt == st && h.PutOn != nil && h.PutOn.Heated():
		return h.PutOn.By
	}
	return ""
}

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
	LimitFrom   string     // the author's own source of it; "" where it is that of its kind
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
	// Because says what keeps the heat from being worked out; the sheet of a draft
	// prints it in place of the figures.
	Because []source.Problem
}

// Known reports whether it is known how hot the part is made: worked out, or given by
// its maker.
func (f *HotFit) Known() bool { return f.Plan != nil || f.Cold != nil || f.Given }

// Heated reports whether the part is heated: not where its shaft is cooled far enough.
func (f *HotFit) Heated() bool { return f.Cold == nil || f.Cold.HubHeated }

// LimitKnown reports whether it is known how hot the part may get.
func (h *Heat) LimitKnown() bool { return h.Limit.Source != "" && h.Limit.At > 0 }

// Known reports whether it is known how tight the joint is.
func (f *HeatFit) Known() bool { return f.Counted > 0 && f.Diameter > 0 }

// Flame reports whether a flame heats the part at a step, or at any of its steps where
// none is asked for.
func (h *Heat) Flame(st *Step) bool {
	if st != nil {
		return h.way(st) == heat.Torch
	}
	return h.Pull != nil && h.Pull.By == heat.Torch || h.PutOn != nil && h.PutOn.By == heat.Torch
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
	AtWork           *fit.Service // where it works; nil when not told
	Torque           fit.NewtonMetre
	Friction         fit.Claim // who answers for both frictions, and why
}

// A HeatNeighbour is a part that must stay cool.
type HeatNeighbour struct {
	heat.Neighbour
	KeptCool, MeasuredWith string
	LimitFrom              string // as of Heat
}

// A HotPull is how a hub is drawn off.
type HotPull struct {
	By        heat.Means
	Clearance heat.Mm
	Longest   heat.Second
	Workable  heat.Workable // zero where the time of the site counts, or the usual one
	Puller    string
	NoPuller  bool        // it is drawn off by hand
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
	Oven      heat.Celsius     // zero when not said
	Soak      *heat.Soaked     // nil when the heater is not told
	Cold      *heat.ColdFitted // nil when the shaft is not cooled
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
