package heat

import "math"

// What would have to change for heat to free a hub that it does not free.
//
// Each change is looked for by itself, all else as given: the greatest interference
// that the best power opens, and the lowest ceiling under which a power opens the
// interference given. Power is no way out where the best of all powers was tried, and
// the refusal says so.

// stepOfCeiling is how finely a ceiling is looked for, in kelvin.
const stepOfCeiling = 5

// tooTight refuses a fit that would need a hub hotter than its limit even if
// the shaft stayed cold.
func (p *Pull) tooTight(s *search, hub Celsius) error {
	return p.noHeat(s, trial{}, say("even on a shaft that stays cold that needs a hub of %v", up(hub)))
}

// noPower refuses a fit that no power frees.
func (p *Pull) noPower(s *search, best trial) error {
	end := say("in %v", p.Longest)
	switch {
	case best.tooHot:
		end = say("before the skin passes %v", p.stop())
	case best.cracks > 0:
		end = say("before heat and fit pull its bore with %v, a third of its strength (thermal shock)", down(p.Hub.mayPull()))
	}
	return p.noHeat(s, best, say("the most that any power opens is %v, with %v net, %v",
		down(fine(best.opening*1000)), Watt(best.power), end))
}

// noHeat names interference, ceiling and power, and which of them would have to be
// otherwise.
func (p *Pull) noHeat(s *search, best trial, because saying) error {
	must, best := p.mustInterference(s, best)
	ceiling, reached := p.mustCeiling(best.power)
	changes := []Change{
		{"interference", Number(p.Fit.Interference), Number(must), "mm"},
		{"ceiling", Number(p.Skin.At), Number(math.NaN()), "°C"},
		{"power", Number(best.power), Number(math.NaN()), "W"},
	}
	var ways []any
	if must > 0 {
		ways = append(ways, say("an interference of %v or less", down(fine(must))))
	} else {
		changes[0].Must = Number(math.NaN())
	}
	if reached {
		changes[1].Must = Number(ceiling)
		ways = append(ways, say("a ceiling of %v or more, if the maker allows it", up(ceiling)))
	}
	if best.cracks > 0 && p.Hub.Strength == 0 {
		ways = append(ways, say("a tensile strength of its grade that is given and greater"))
	}
	would := say("neither a looser fit nor a higher ceiling would do, and more or less power does not help")
	if len(ways) > 0 {
		would = say("it would take %v; more or less power does not help", orElse(ways...))
	}
	err := refuseAs("no-heat", "Fit.Interference", say("%v. Or %v", would, p.otherWays()),
		"no heat opens the hub by the %v of interference and the %v of clearance under a ceiling of %v (%v): %v",
		up(fine(p.Fit.Interference)), up(fine(p.Fit.Clearance)), down(p.Skin.At), p.Skin.Source, because)
	err.(*Refusal).Changes = changes
	return err
}

// mustInterference is the greatest interference, on full micrometres down, that the
// best power opens under the ceiling as it is, and that trial; zero when there is none.
func (p *Pull) mustInterference(s *search, best trial) (Mm, trial) {
	if best.power == 0 {
		_, best = s.firstThatFrees()
	}
	try := Mm(best.opening*1000) - p.Fit.Clearance
	// A looser fit parts sooner, so that the opening found is about enough; the last
	// micrometres are tried.
	for range 8 {
		try = Mm(math.Floor(float64(try)*1000+1e-6) / 1000)
		if try <= 0 {
			return 0, best
		}
		q := *p
		q.Fit.Interference = try
		t := search{pull: &q, grid: s.grid}
		if t.try(best.power).frees {
			return try, best
		}
		try -= max(0.001, p.Fit.Interference/100)
	}
	return 0, best
}

// mustCeiling is the lowest ceiling, on full 5 °C, under which a power opens the fit
// as it is; not reached when there is none within the data of the materials. It is
// looked for about the best power under the ceiling as it is.
func (p *Pull) mustCeiling(power float64) (Celsius, bool) {
	frees := func(at Celsius) bool {
		q := *p
		q.Skin.At = at
		s := search{pull: &q, grid: usualGrid}
		return s.best(power/3, power*3, 8).frees
	}
	low := Celsius(stepOfCeiling * math.Floor(float64(p.Skin.At)/stepOfCeiling))
	high := Celsius(stepOfCeiling * math.Floor(float64(min(p.Hub.Material.To, p.Shaft.Material.To))/stepOfCeiling))
	if high <= p.Skin.At || !frees(high) {
		return 0, false
	}
	for high-low > stepOfCeiling {
		mid := low + stepOfCeiling*Celsius(math.Ceil(float64(high-low)/2/stepOfCeiling))
		if mid >= high {
			break
		}
		if frees(mid) {
			high = mid
		} else {
			low = mid
		}
	}
	return high, true
}
