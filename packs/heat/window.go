package heat

import (
	"math"
	"strings"
)

// The window: from the moment the heat is off to the moment the joint grips again.
//
// Two runs are told, and each keeps its own figures. In the first the heat goes off
// when the hub is free: it is judged. In the second it stays on until the crayon on the
// skin melts or the longest time is over, which gains time for drawing.

// A Workable is the shortest time from heat off to off the seat that a crew can work
// with, and why: a value of the site.
type Workable struct {
	Time   Second
	Reason string
}

// UsualWorkable is taken where the site gives none, and told among the assumptions.
// Common practice, no source: the log is read, the torches are laid down, and a loaded
// puller is worked over the length of the seat.
func UsualWorkable() Workable {
	return Workable{60, "time to lay the torches down and to work a loaded puller over the length of the seat; common practice, no source"}
}

func (w Workable) check() error {
	if w.Time == 0 && w.Reason == "" {
		return nil
	}
	if err := positive("Workable.Time", "the time from heat off to off the seat", float64(w.Time), "seconds"); err != nil {
		return err
	}
	if strings.TrimSpace(w.Reason) == "" {
		return refuse("Workable.Reason", "say who takes that time, and why it is enough",
			"the %v from heat off to off the seat have no reason", w.Time)
	}
	return nil
}

// workable is the site's value, or the usual one.
func (p *Pull) workable() Workable {
	if p.Workable.Time == 0 {
		return UsualWorkable()
	}
	return p.Workable
}

// Short tells whether the hub grips again sooner than the crew can work, with the heat off
// when it is free. Of a window under a minute what is told must be longer than the work: one of
// 13 s is told as 10 s, and leaves nothing where drawing takes 10 s.
func (p *Plan) Short() bool {
	if p.Endless || p.Stays >= 60 {
		return !p.Endless && p.Stays < p.Workable.Time
	}
	return p.Stays.Told() <= p.Workable.Time
}

// Told is a length of time rounded down as it is told, so that nobody counts on more: to full
// seconds, from ten on to five of them, from a minute on to half a minute, from ten minutes on to
// full ones, from two hours on to a tenth of an hour.
func (s Second) Told() Second {
	step := Second(1)
	switch {
	case s >= 7200:
		step = 360
	case s >= 600:
		step = 60
	case s >= 60:
		step = 30
	case s >= 10:
		step = 5
	}
	return Second(math.Floor(float64(s/step))) * step
}

// shortWindow warns of a window that is too short, with what lengthens it.
func (p *Pull) shortWindow(plan *Plan) Warning {
	more := []any{say("more clearance")}
	if plan.Hottest < p.Hub.Material.To {
		more = append(more, say("a higher ceiling than %v, if the maker allows it", p.Skin.At))
	}
	if p.Fit.Basis == Greatest {
		more = append(more, say("a fit that is measured, where it is less than the greatest"))
	}
	more = append(more, say("a cooled shaft"), say("another way of drawing it"))
	kept := say("")
	if plan.HeatOn >= 1 && (plan.LooseEndless || plan.Loose > plan.Stays) {
		kept = say("; another run, with the heat kept on for %v more until the skin is at %v: it grips again %v after it came free", down(plan.HeatOn), down(p.stop()), down(plan.Loose))
	}
	if told := plan.Stays.Told(); told == plan.Workable.Time { // the same figure twice, and no reason to see
		return warn("window", "Fit.Clearance", "heat off, the hub grips again after %v, just as long as drawing it takes, with nothing to spare (%v)%v. What makes it longer: %v",
			down(told), plan.Workable.Reason, kept, orElse(more...))
	}
	return warn("window", "Fit.Clearance", "heat off, the hub grips again after %v, and drawing it takes %v (%v)%v. What makes it longer: %v",
		down(plan.Stays.Told()), up(plan.Workable.Time), plan.Workable.Reason, kept, orElse(more...))
}

// orElse joins ways by a comma and an or.
func orElse(ways ...any) saying {
	return say(strings.TrimSuffix(strings.Repeat("%v, or ", len(ways)), ", or "), ways...)
}
