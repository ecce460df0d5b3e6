package outage

import (
	"fmt"
	"math/big"
	"time"

	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// When a hold is due: the hours planned until its step is done, one step after another,
// divided by the hours worked on a day, counted from the day on which the job begins. A
// day of ten hours that is full ends on that day, so that hour 10 is on the first and hour
// 10.5 on the second. Where no start or no length of a day is told the hours stand
// alone, and where a step before it has none, it is later than that.

// due tells when a hold is due, and a text by which such are sorted: days first.
func due(j *job.Job, h *job.Hold) Need {
	hours, all := until(j, h.Step)
	first, err := time.Parse(time.DateOnly, j.Order.Starts)
	of := func(order, certain, later, text, paper string) Need {
		if !all {
			certain = later
		}
		return Need{By: fmt.Sprintf(certain, text), ByIn: source.Fixed("", certain, paper), order: order}
	}
	switch {
	case err != nil && hours.Sign() == 0:
		return Need{By: "no hours planned", ByIn: source.Fixed("", "no hours planned"), order: "2"}
	case err != nil || j.Order.HoursADay == 0:
		v, _ := hours.Rat().Float64()
		return of(fmt.Sprintf("1%012.3f", v), "at %s h", "at %s h or later", hours.Text(), hours.Print())
	}
	day := first.AddDate(0, 0, fullDays(hours, j.Order.HoursADay)).Format(time.DateOnly)
	if all {
		return Need{By: day, order: "0" + day}
	}
	return Need{By: day + " or later", ByIn: source.Fixed("", "%s or later", day), order: "0" + day}
}

// fullDays is how many whole days lie behind when so many hours are done.
func fullDays(hours units.Number, aDay int) int {
	days := new(big.Rat).Quo(hours.Rat(), new(big.Rat).SetInt64(int64(aDay)))
	n := new(big.Int).Div(days.Num(), days.Denom())
	if days.IsInt() && n.Sign() > 0 {
		n.Sub(n, big.NewInt(1))
	}
	return int(min(n.Int64(), 3650))
}

// until adds up the hours planned until a step is done; all tells that every step so far
// has its hours.
func until(j *job.Job, last *job.Step) (sum units.Number, all bool) {
	sum, all = units.Whole(0), true
	for _, s := range j.Sections {
		for _, st := range s.Steps {
			if st.Hours != nil {
				sum = sum.Add(*st.Hours)
			} else {
				all = false
			}
			if st == last {
				return sum, all
			}
		}
	}
	return sum, false
}
