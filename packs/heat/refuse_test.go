package heat

import (
	"math"
	"strings"
	"testing"
)

func TestPullsThatCannotBeAreRefused(t *testing.T) {
	t.Parallel()
	for name, c := range map[string]struct {
		change func(*Pull)
		field  string
		says   string
	}{
		"no diameter":                 {func(p *Pull) { p.Fit.Diameter = 0 }, "Fit.Diameter", "the joint diameter is missing"},
		"no interference":             {func(p *Pull) { p.Fit.Interference = 0 }, "Fit.Interference", "120 H7/r6"},
		"a clearance fit":             {func(p *Pull) { p.Fit.Interference = -0.01 }, "Fit.Interference", "is a clearance"},
		"micrometres typed as mm":     {func(p *Pull) { p.Fit.Interference = 76 }, "Fit.Interference", "76 µm is 0.076 mm"},
		"clearance not a number":      {func(p *Pull) { p.Fit.Clearance = Mm(math.NaN()) }, "Fit.Clearance", "zero or more"},
		"basis not said":              {func(p *Pull) { p.Fit.Basis = "" }, "Fit.Basis", "measured"},
		"no hub outside":              {func(p *Pull) { p.Hub.Outside = 0 }, "Hub.Outside", "outside diameter of the hub is missing"},
		"hub thinner than its fit":    {func(p *Pull) { p.Hub.Outside = 118 }, "Hub.Outside", "no wall"},
		"hub a thin sleeve":           {func(p *Pull) { p.Hub.Outside = 122 }, "Hub.Outside", "too thin"},
		"no length":                   {func(p *Pull) { p.Hub.Length = 0 }, "Hub.Length", "length of the fit is missing"},
		"hub material not given":      {func(p *Pull) { p.Hub.Material = Material{} }, "Hub.Material.Name", "cannot be guessed"},
		"material without heat":       {func(p *Pull) { p.Shaft.Material.Specific = Curve{} }, "Shaft.Material.Specific", "specific heat"},
		"expansion in wrong unit":     {func(p *Pull) { p.Hub.Material.Elongation = flatExpansion(11.5) }, "Hub.Material.Elongation", "not that of a metal"},
		"shaft bored away":            {func(p *Pull) { p.Shaft.Bore = 120 }, "Shaft.Bore", "leaves nothing"},
		"joint not said":              {func(p *Pull) { p.Contact = Contact{} }, "Contact.Touching", "missing"},
		"joint said twice":            {func(p *Pull) { p.Contact = Contact{Perfect: true, Touching: 1000} }, "Contact.Touching", "perfect"},
		"open joint tighter":          {func(p *Pull) { p.Contact = Contact{Touching: 1000, Open: 2000} }, "Contact.Open", "carries less"},
		"no heater":                   {func(p *Pull) { p.Source.Means = "" }, "Source.Means", "torch"},
		"an oven for a pull":          {func(p *Pull) { p.Source.Means = Oven }, "Source.Means", "warms hub and shaft alike"},
		"a flame on a hardened hub":   {func(p *Pull) { p.Skin.NoFlame = true }, "Source.Means", "no flame may touch"},
		"no skin limit":               {func(p *Pull) { p.Skin = Limit{} }, "Skin", "its source"},
		"limit without source":        {func(p *Pull) { p.Skin.Source = " " }, "Skin.Source", "has no source"},
		"limit below the start":       {func(p *Pull) { p.Skin.At = 15 }, "Skin.At", "leaves no heat for a hub that starts at 20 °C"},
		"limit beyond the data":       {func(p *Pull) { p.Skin.At = 700 }, "Skin.At", "-20 °C to 600 °C"},
		"no longest time":             {func(p *Pull) { p.Longest = 0 }, "Longest", "missing"},
		"neighbour without limit":     {func(p *Pull) { p.Neighbours[0].Limit = Limit{} }, "Neighbours.0.Limit", "missing"},
		"neighbour off the shaft":     {func(p *Pull) { p.Neighbours[0].Distance = 700 }, "Shaft.Behind", "no shaft is given"},
		"neighbour limit too low":     {func(p *Pull) { p.Neighbours[0].Limit.At = 20 }, "Neighbours.0.Limit.At", "not above the shaft"},
		"shaft hotter than its data":  {func(p *Pull) { p.Shaft.Start = 650 }, "Shaft.Start", "-20 °C to 600 °C"},
		"hub free as it stands":       {func(p *Pull) { p.Hub.Start = 150 }, "Hub.Start", "already free"},
		"ceiling below the rise":      {func(p *Pull) { p.Skin.At = 80 }, "Fit.Interference", "370 kN"},
		"ceiling that no power meets": {func(p *Pull) { p.Skin.At = 120 }, "Fit.Interference", "no heat opens the hub"},
		"too little power":            {func(p *Pull) { p.Source.Net = 8e3 }, "Source.Net", "the shaft grows as fast"},
		"too much power":              {func(p *Pull) { p.Source.Net = 90e3 }, "Source.Net", "bring the skin to 200 °C"},
		"conductance absurd":          {func(p *Pull) { p.Hub.Material.Conducts = Curve{math.NaN()} }, "Hub.Material.Conducts", "conductivity"},
	} {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			p := stormPump(t)
			c.change(&p)
			_, err := p.Plan()
			refusedAt(t, err, c.field, c.says)
		})
	}
}

// A hollow shaft can be cooled from its bore, and the refusal says so.
func TestTheWayOutFitsTheJoint(t *testing.T) {
	t.Parallel()
	p := stormPump(t)
	p.Skin.At, p.Shaft.Bore = 80, 60
	_, err := p.Plan()
	refusedAt(t, err, "Fit.Interference", "cool the shaft from its bore")
	p.Fit.Basis, p.ColdPull = Measured, 0
	_, err = p.Plan()
	refusedAt(t, err, "Fit.Interference", "hydraulic or mechanical puller, or cut it off")
}

func TestWarningsSpeakWhenTheyMust(t *testing.T) {
	t.Parallel()
	for name, c := range map[string]struct {
		change func(*Pull)
		field  string
	}{
		"window too short":     {func(p *Pull) { p.Fit.Clearance = 0 }, "Fit.Clearance"},
		"bearing gets too hot": {func(p *Pull) { p.Neighbours[0].Limit.At = 21 }, "Neighbours.0"},
		"bearing, if stuck":    {func(p *Pull) { p.Neighbours[0].Limit.At = 30 }, "Neighbours.0"},
		"band too narrow":      {func(p *Pull) { p.Fit.Clearance, p.Contact.TouchUntil = 0.033, 0.033 }, "Source.Net"},
		"too quick to be watched": {func(p *Pull) {
			p.Fit.Diameter, p.Hub.Outside, p.Fit.Interference, p.Fit.Clearance = 20, 30, 0.01, 0.005
		}, "Source.Net"},
	} {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			p := stormPump(t)
			c.change(&p)
			found := false
			for _, w := range planned(t, p).Warnings {
				found = found || w.Field == c.field
			}
			if !found {
				t.Errorf("no warning at %s", c.field)
			}
		})
	}
	p := stormPump(t)
	p.Hub.Material = named(t, "carbon steel")
	p.Shaft.Material = p.Hub.Material
	p.Contact = Contact{Touching: 3000}
	p.Fit.Clearance = 0.060
	if w := planned(t, p).Warnings; len(w) > 0 {
		t.Errorf("a sound plan warns: %v", w)
	}
}

func TestUnknownNamesListTheKnownOnes(t *testing.T) {
	t.Parallel()
	_, err := MaterialNamed("mild steel")
	refusedAt(t, err, "Material", "carbon steel, cautious")
	_, err = MaterialNamed("")
	refusedAt(t, err, "Material", "cannot be guessed")
	_, err = CeilingFor("brass thing")
	refusedAt(t, err, "Part", "rolling bearing")
	for _, m := range Materials() {
		if err := m.check(); err != nil || m.Source == "" {
			t.Errorf("%s: %v, source %q", m.Name, err, m.Source)
		}
	}
	for _, c := range Ceilings() {
		if err := c.Limit.check("Limit", c.Part); err != nil {
			t.Error(err)
		}
	}
}

// The rise over the shaft of 134 K that a manual printed as 273.2 °F; 134 K are
// 241.2 F°, and 273.2 °F is the temperature 134 °C (TM 55-2210-223-34, p. 3-247).
func TestARiseIsNotATemperature(t *testing.T) {
	t.Parallel()
	if err := CheckRise(134, 154, 20); err != nil {
		t.Error(err)
	}
	refusedAt(t, CheckRise(134, 134, 20), "Rise", "is the temperature of the hub")
	refusedAt(t, CheckRise(151.8, 154, 20), "Rise", "which is 134 K")
}

func TestColdShaftsAndRoomsAreRefusedWithoutFigures(t *testing.T) {
	t.Parallel()
	p := stormPump(t)
	bronze := named(t, "tin bronze")
	_, err := chill(p.Fit, p.Hub.Material, bronze, DryIce, 20)
	refusedAt(t, err, "Shaft.Name", "is not known")
	_, err = chill(p.Fit, p.Hub.Material, p.Shaft.Material, "snow", 20)
	refusedAt(t, err, "Coolant", "snow")
	_, err = RoomAfter(0, 5, 0)
	refusedAt(t, err, "Room", "missing")
	_, err = RoomAfter(50, 0, 0)
	refusedAt(t, err, "Nitrogen", "missing")
	_, err = RoomAfter(5, 10, 0)
	refusedAt(t, err, "Room", "more than the room")
}

func TestACooledShaftSparesTheHubHeat(t *testing.T) {
	t.Parallel()
	p := stormPump(t)
	c, err := chill(p.Fit, p.Hub.Material, p.Shaft.Material, LiquidNitrogen, 20)
	if err != nil {
		t.Fatal(err)
	}
	// 120 x 8.78e-6 x 213.15 = 0.2246 mm, more than the 0.096 mm needed.
	near(t, "contraction", float64(c.Contraction), 0.2246, 0.0001)
	if c.HubHeated || c.Hub != 20 {
		t.Errorf("hub heated %v to %v", c.HubHeated, c.Hub)
	}
	f := p.Fit
	f.Interference, f.Clearance = 0.25, 0.1
	c, err = chill(f, p.Hub.Material, p.Shaft.Material, LiquidNitrogen, 20)
	if err != nil {
		t.Fatal(err)
	}
	// The rest, 0.1254 mm, by heat: 0.1254/(120 x 11.5e-6) = 90.9 K.
	near(t, "hub", float64(c.Hub), 20+90.9, 0.1)
}

// A window of 13 s was told as 10 s beside 10 s for drawing, and nothing warned.
func TestAWindowNoLongerThanTheWorkIsShort(t *testing.T) {
	for _, c := range []struct {
		stays, work Second
		short       bool
	}{{13.4, 10, true}, {15.2, 10, false}, {9.9, 9, true}, {9.9, 8, false}, {61.7, 60, false}, {59, 60, true}, {59, 54, false}, {59, 55, true}, {70, 75, true}} {
		if got := (&Plan{Stays: c.stays, Workable: Workable{Time: c.work}}).Short(); got != c.short {
			t.Errorf("a window of %v s for %v s of work is short: %v", float64(c.stays), float64(c.work), got)
		}
	}
	if (&Plan{Stays: 10, Endless: true, Workable: Workable{Time: 60}}).Short() {
		t.Error("an endless window is short")
	}
}

// "grips again after 10 s, and drawing it takes 10 s" said two like figures and no fault: that
// nothing is to spare is said where both are told alike, and no figure twice. A window that is
// told as less than the work has both.
func TestAWindowAsLongAsTheWorkSaysSo(t *testing.T) {
	var p Pull
	for _, c := range []struct {
		stays, work Second
		want        string
	}{
		{13.4, 10, "grips again after 10 s, just as long as drawing it takes, with nothing to spare (site)"},
		{9.9, 9, "grips again after 9 s, just as long as drawing it takes, with nothing to spare (site)"},
		{13.4, 11, "grips again after 10 s, and drawing it takes 11 s (site)"},
		{13.4, 10.2, "grips again after 10 s, and drawing it takes 11 s (site)"},
		{59, 60, "grips again after 55 s, and drawing it takes 60 s (site)"},
	} {
		plan := Plan{Stays: c.stays, Workable: Workable{c.work, "site"}}
		if says := p.shortWindow(&plan).Says; !strings.Contains(says, c.want) {
			t.Errorf("%v s for %v s of work: %s", float64(c.stays), float64(c.work), says)
		}
	}
}
