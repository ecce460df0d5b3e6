package heat

// The gate of a pull: what the skin must have passed at two times. It is read off the
// least power that frees, where the skin is hottest along the hub, so that a pull which
// passes it anywhere has at least that power.

// A Pace is a skin temperature that must be passed by a time.
type Pace struct {
	By   Second
	Skin Celsius
}

// clockTimes are the times a mechanic can read off a watch, in seconds.
var clockTimes = []Second{5, 10, 15, 20, 30, 45, 60, 90, 120, 180, 240, 300, 420, 600, 900, 1200, 1800}

// keptOfSkin is what the gate is set above the skin of the least power, as a share of
// its rise over the start: more than the grid is off a fine mesh, two hundredths at the
// most. A power just under the least would else pass it.
const keptOfSkin = 0.02

// pace reads the skin of the least power at two clock times: the last before
// three quarters of its time to free, and the last before half of that. A hub
// that is free within seconds has none.
func (s *search) pace(least trial) []Pace {
	second := lastBefore(Second(0.75 * least.at))
	first := lastBefore(second / 2)
	if first == 0 {
		return nil
	}
	gate := func(by Second) Pace {
		skin, start := skinAt(least.skin, by), s.pull.Hub.Start
		return Pace{by, min(skin+keptOfSkin*(skin-start), s.pull.stop())}
	}
	return []Pace{gate(first), gate(second)}
}

func lastBefore(limit Second) Second {
	var last Second
	for _, t := range clockTimes {
		if t <= limit {
			last = t
		}
	}
	return last
}

// skinAt reads the skin between two moments.
func skinAt(course []Moment, at Second) Celsius {
	for i := 1; i < len(course); i++ {
		if course[i].At >= at {
			a, b := course[i-1], course[i]
			return a.Skin + Celsius(float64((at-a.At)/(b.At-a.At)))*(b.Skin-a.Skin)
		}
	}
	return course[len(course)-1].Skin
}
