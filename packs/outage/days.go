package outage

import (
	"fmt"
	"math/big"
	"time"

	"matchmark/packs/job"
	"matchmark/packs/units"
)

// When a hold is due: the hours planned until its step is done, one step after another,
// divided by the hours worked on a day, counted from the day on which the job begins. A
// day of ten hours that is full ends on that day, so that hour 10 is on the first and hour
// 10.5 on the second. Where no start or no length of a day is told the hours stand
// alone, and where a step before it has none, it is later than that.

// due tells when a hold is due, and a text by which such are sorted: days first.
func due(j *job.Job, h *job.Hold) (by, order string) {
	hours, all := until(j, h.Step)
	later := ""
	if !all {
		later = " or later"
	}
	first, err := time.Parse(time.DateOnly, j.Order.Starts)
	switch {
	case err != nil && hours.Sign() == 0:
		return "no hours planned", "2"
	case err != nil || j.Order.HoursADay == 0:
		v, _ := hours.Rat().Float64()
		return "at " + hours.Text() + " h" + later, fmt.Sprintf("1%012.3f", v)
	}
	day := first.AddDate(0, 0, fullDays(hours, j.Order.HoursADay)).Format(time.DateOnly)
	return day + later, "0" + day
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
