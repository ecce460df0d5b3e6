package heat

import "strings"

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

// Short tells whether the hub grips again sooner than the crew can work: with the heat
// off when it is free.
func (p *Plan) Short() bool { return !p.Endless && p.Stays < p.Workable.Time }

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
	return warn("window", "Fit.Clearance", "heat off, the hub grips again after %v, and drawing it takes %v (%v)%v. What makes it longer: %v",
		down(plan.Stays), up(plan.Workable.Time), plan.Workable.Reason, kept, orElse(more...))
}

// orElse joins ways by a comma and an or.
func orElse(ways ...any) saying {
	return say(strings.TrimSuffix(strings.Repeat("%v, or ", len(ways)), ", or "), ways...)
}
