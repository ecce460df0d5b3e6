package filled

import (
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/packs/units"
)

// When a reading reaches its limit
//
//	t = (end − found) h / (found − left)
//
// end: that end of the limit toward which the reading goes; left: as left at the last
// outage; found: as found now; h: running hours between. A straight line through two
// readings, rounded down to 100 h: a planning figure, no promise (common practice, no
// source). Refused: a reading that was not left last time, for its part may have been
// renewed since; one that stands still, goes away from the end, or is out already; no
// running hours; a limit that hangs on other readings.

// LimitRange are the ends of the limit of one reading of a dimension, and in the place of
// each that of the limit for an old part if it has one; nil where there is no end, or it
// hangs on other readings.
func LimitRange(d *job.Dim, n int) (low, high *units.Quantity) {
	limits := d.LeftLimits()
	if d.WatchedOnly() {
		if limits = d.FoundBy; len(limits) == 0 {
			limits = []*reading.Limit{d.Found}
		}
	}
	var both []*reading.Limit
	if len(limits) > 0 {
		both = append(both, limitAt(limits, n))
	}
	if d.Reuse != nil {
		both = append(both, d.Reuse)
	}
	for _, l := range both {
		for _, t := range l.Tests {
			from, to, ok := t.Limits()
			if t.Group != reading.Each || !ok {
				continue
			}
			if from != nil {
				low = from
			}
			if to != nil {
				high = to
			}
		}
	}
	return low, high
}

// Reaches is after how many running hours a reading that goes on as it went since the
// last outage is at its limit; false where that cannot be told.
func (l Line) Reaches() (units.Quantity, bool) {
	if l.Wear == nil || l.Wear.Rate == nil || l.Wear.From.When != job.AsLeft || l.Found == nil {
		return units.Quantity{}, false
	}
	low, high := LimitRange(l.Dim, l.N)
	end, change := high, l.Wear.Change.Number
	if change.Sign() < 0 {
		end = low
	}
	if end == nil || change.Sign() == 0 {
		return units.Quantity{}, false
	}
	room, err := end.Sub(*l.Found)
	if err != nil || room.Number.Sign() != change.Sign() {
		return units.Quantity{}, false
	}
	hundred := units.Whole(100)
	hours := room.Number.Mul(l.Wear.Hours.Number).Quo(change).Quo(hundred).Round(0, units.Down).Mul(hundred)
	return units.Quantity{Number: hours, Unit: units.Hour}, true
}
