package filled

import (
	"slices"
	"sort"

	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// A History is what was read at earlier outages, oldest first.
type History struct{ Past []*Result }

// NewHistory works the files of earlier outages through, each an outage of its own.
func NewHistory(j *job.Job, files []*File) *History {
	h := &History{}
	for _, f := range files {
		v, _ := Merge([]*File{f})
		h.Past = append(h.Past, Work(j, v))
	}
	sort.SliceStable(h.Past, func(i, k int) bool { return h.Past[i].Values.On() < h.Past[k].Values.On() })
	return h
}

// Before leaves out the outages that were typed after the readings of this one, and its own
// files: what was read then is not what was read last. Each is told. The day is that of the
// typing, and papers of two outages may be typed on one day: what was typed on the same day stays
// an earlier outage. Nothing is left out where a day is not known; nil if none is left. It may be
// asked of a nil History.
func (h *History) Before(now *Values) (*History, source.Problems) {
	var told source.Problems
	if h == nil {
		return nil, nil
	}
	day, out := now.On(), &History{}
	for _, r := range h.Past {
		f, on := r.Values.Files[0], r.Values.On()
		switch {
		case slices.ContainsFunc(now.Files, func(own *File) bool { return own.Name == f.Name }):
			told.Warn(source.Pos{File: f.Name}, "not-earlier", "these are readings of this outage: as an earlier outage they are left out", "the readings of the outage before")
		case day != "" && on > day:
			told.Warn(f.OnAt, "not-earlier", "this was typed on "+on+", and the readings of this outage on "+day+": as an earlier outage it is left out", "the readings of the outage before, or the day put right")
		default:
			out.Past = append(out.Past, r)
		}
	}
	if len(out.Past) == 0 {
		return nil, told
	}
	return out, told
}

// A Before is what a dimension was read as at an earlier outage.
type Before struct {
	When     job.When
	On       string // the day, as 2026-03-14
	Readings []*units.Quantity
	Hours    *units.Quantity
}

// Last is what a dimension was left at last time, or found at where it was not set; it
// may be asked of a nil History.
func (h *History) Last(d *job.Dim) (Before, bool) {
	if h == nil {
		return Before{}, false
	}
	for i := len(h.Past) - 1; i >= 0; i-- {
		for _, when := range []job.When{job.AsLeft, job.AsFound} {
			if b, there := before(h.Past[i], d, when); there {
				return b, true
			}
		}
	}
	return Before{}, false
}

// before is what was read at one outage.
func before(r *Result, d *job.Dim, when job.When) (Before, bool) {
	if !r.reads(d, when) {
		return Before{}, false
	}
	t := r.readings(d, when)
	for _, q := range t.readings {
		if q != nil {
			return Before{When: when, On: r.Values.On(), Readings: t.readings, Hours: r.Values.Hours}, true
		}
	}
	return Before{}, false
}

// A Wear is how far one reading went since it was left last, and how fast.
type Wear struct {
	From, To Before
	Change   units.Quantity  // as found now less as left then
	Hours    *units.Quantity // between the two; nil if they are not told
	Rate     *units.Quantity // of change in 1000 h
}

// Change is how far one reading of a dimension went between the last outage and this
// one: as found now less as left then.
func (h *History) Change(now *Result, d *job.Dim, n int) (Wear, bool) {
	last, there := h.Last(d)
	this, read := before(now, d, job.AsFound)
	if !there || !read || n >= len(last.Readings) || n >= len(this.Readings) || last.Readings[n] == nil || this.Readings[n] == nil {
		return Wear{}, false
	}
	change, err := this.Readings[n].Sub(*last.Readings[n])
	if err != nil {
		return Wear{}, false
	}
	w := Wear{From: last, To: this, Change: change}
	if last.Hours == nil || this.Hours == nil {
		return w, true
	}
	if ran := this.Hours.Number.Sub(last.Hours.Number); ran.Sign() > 0 {
		w.Hours = &units.Quantity{Number: ran, Unit: units.Hour}
		w.Rate = &units.Quantity{Number: change.Number.Mul(units.Whole(1000)).Quo(ran), Unit: change.Unit}
	}
	return w, true
}

// A Point is one reading of a history, in its unit.
type Point struct {
	On      string
	Hours   *units.Quantity
	When    job.When
	Reading units.Quantity
}

// Points are all readings of one box, outage by outage, as found before as left, and
// how many outages they are of.
func (h *History) Points(now *Result, d *job.Dim, n int) (points []Point, outages int) {
	all := []*Result{now}
	if h != nil {
		all = append(append([]*Result{}, h.Past...), now)
	}
	for _, r := range all {
		some := false
		for _, when := range []job.When{job.AsFound, job.AsLeft} {
			b, there := before(r, d, when)
			if !there || n >= len(b.Readings) || b.Readings[n] == nil {
				continue
			}
			points = append(points, Point{On: b.On, Hours: b.Hours, When: when, Reading: *b.Readings[n]})
			some = true
		}
		if some {
			outages++
		}
	}
	return points, outages
}
