package joint

// Stages of a tightening, and the times that the fasteners are gone round
//
//	share  = middle of the stage / middle of the last torque
//	stress = share of the stress at the last torque (F is proportional to T)
//	travel = lead × angle/360
//
// Source: geometry of the thread. Refused: stages that do not rise, that end below the
// torque, that begin with an angle, that repeat what has not been done.

import (
	"fmt"

	"matchmark/packs/thread"
	"matchmark/packs/units"
)

// rounds turns the stages into rounds and sees that they agree with the torque.
func (a *account) rounds() {
	if len(a.s.Stages) == 0 {
		if set := a.lastSetting(); set != nil {
			a.r.Rounds = []Round{{Stage: -1, Kind: Tighten, Setting: set, Share: 1, Stress: a.r.Share}}
		}
		return
	}
	w := &walk{a: a, last: a.lastSetting()}
	for i, st := range a.s.Stages {
		w.stage(i, st)
	}
	w.end()
}

// lastSetting is what the joint ends at: the torque as written or worked out.
func (a *account) lastSetting() *Setting {
	if a.s.Torque != nil {
		return a.s.Torque
	}
	return a.r.Torque
}

// walk goes through the stages.
type walk struct {
	a      *account
	last   *Setting // the torque of the joint
	now    *Setting // what they are tightened to now; nil loose, or by hand
	field  string   // of the stage at hand
	snug   bool     // run down by hand or more
	angle  bool     // turned on by an angle since
	repeat int
	most   *Setting // the highest setting, and its field
	mostAt string
}

func (w *walk) stage(i int, st Stage) {
	w.field = fmt.Sprintf("stages[%d]", i)
	r := Round{Stage: i, Kind: st.Kind, Repeat: w.repeat}
	fine := false
	switch st.Kind {
	case Tighten:
		fine = w.tighten(st, &r)
	case ByHand:
		fine = w.byHand()
	case Turn, BackOff:
		fine = w.turn(st, &r)
	case SlackenAll:
		fine = w.slacken()
		r.Way = Backward
	case LastRound, AgainAfter, AgainRunning:
		fine = w.again(st, &r)
	default:
		w.refuse("", "stage %d is of no kind known here", i+1)
	}
	if fine {
		w.a.r.Rounds = append(w.a.r.Rounds, r)
	}
}

func (w *walk) refuse(help, message string, args ...any) { w.a.refuse(w.field, help, message, args...) }

// tighten reads a stage that goes to a setting.
func (w *walk) tighten(st Stage, r *Round) bool {
	if st.Setting == nil {
		w.refuse("write it like 30 N·m", "a stage of tightening without a torque")
		return false
	}
	set := w.resolve(*st.Setting)
	if set == nil {
		return false
	}
	switch dim := w.a.setting(w.field, set); {
	case dim == units.NoDimension:
		return false
	case w.last != nil && dim != w.last.Low.Unit.Dimension():
		w.refuse("write both as one kind, or leave torque out", "a stage is %s, a %s, and the joint ends at %s", set.Text(), dim, w.last.Text())
		return false
	case w.now != nil && less(*set, *w.now):
		w.refuse("stages rise; write slacken all between them if they are meant to begin again", "%s comes after %s", set.Text(), w.now.Text())
		return false
	}
	r.Setting = set
	if w.last != nil {
		r.Share = Ratio(base(set.aim(), w.last.Low.Unit) / base(w.last.aim(), w.last.Low.Unit))
		if top := base(w.last.High, w.last.Low.Unit); top > 0 && !w.angle {
			r.Stress = w.a.r.Share * Ratio(base(set.High, w.last.Low.Unit)/top)
		}
	}
	w.now, w.snug, w.angle = set, true, false
	if w.most == nil || less(*w.most, *set) {
		w.most, w.mostAt = set, w.field
	}
	return true
}

// resolve turns per cent of the last torque into a torque.
func (w *walk) resolve(s Setting) *Setting {
	if s.Low.Unit != units.Percent {
		return &s
	}
	if w.last == nil {
		w.refuse("write torque: as well", "%s of a torque that is not told", s.Text())
		return nil
	}
	of := w.last.aim()
	part := func(q units.Quantity) units.Quantity {
		n := of.Number.Mul(q.Number).Quo(units.Whole(100))
		return units.Quantity{Number: units.Exact(n.Rat(), of.Number.Decimals()), Unit: of.Unit}
	}
	out := Setting{Low: part(s.Low), High: part(s.High)}
	if s.Aim != nil {
		aim := part(*s.Aim)
		out.Aim = &aim
	}
	// All of it is the torque with its own tolerance.
	if s.Low.Number.Cmp(units.Whole(100)) == 0 && s.High.Number.Cmp(units.Whole(100)) == 0 {
		out = *w.last
	}
	return &out
}

// less reports whether one setting is below another, both of one dimension.
func less(s, t Setting) bool {
	c, err := s.aim().Cmp(t.aim())
	return err == nil && c < 0
}

func (w *walk) byHand() bool {
	if w.now != nil || w.snug {
		w.refuse("by hand comes first, or after slacken all", "by hand after they were tightened")
		return false
	}
	w.snug = true
	return true
}

// turn reads a stage by an angle.
func (w *walk) turn(st Stage, r *Round) bool {
	q := st.Angle
	switch {
	case q == nil || q.Unit.Dimension() != units.Angle || q.Number.Sign() <= 0:
		w.refuse("write turn 60°", "an angle is missing")
		return false
	case !w.snug:
		w.refuse("write a torque or by hand before it", "%s counts from nothing: no stage before it says where the turning begins", q.Text())
		return false
	}
	degrees := base(*q, units.Degree)
	if degrees > 1080 {
		w.refuse("write it like 60°", "%s is more than three turns", q.Text())
		return false
	}
	r.Angle = Degree(degrees)
	if t := w.a.s.Thread; t != nil {
		r.Travel = t.Travel(thread.Turns(degrees / 360))
	}
	w.angle = st.Kind == Turn
	return true
}

func (w *walk) slacken() bool {
	if !w.snug {
		w.refuse("take it out", "slacken all, and nothing has been tightened")
		return false
	}
	w.now, w.snug, w.angle = nil, false, false
	w.repeat++
	return true
}

// again reads a stage that repeats the last setting.
func (w *walk) again(st Stage, r *Round) bool {
	if w.now == nil {
		w.refuse("write the torque before it", "nothing has been tightened that could be gone round again")
		return false
	}
	if h := st.Hours; st.Kind == AgainAfter && (h == nil || h.Unit.Dimension() != units.Time || h.Number.Sign() <= 0) {
		w.refuse("write again after 24 h", "again after how long?")
		return false
	}
	if w.angle {
		w.a.caution(TorqueAfterAngle, w.field, "%s comes again after an angle: it will not move a bolt that the angle took further", *w.now)
	}
	r.Setting, r.Share = w.now, 1
	if w.last != nil {
		r.Share = Ratio(base(w.now.aim(), w.last.Low.Unit) / base(w.last.aim(), w.last.Low.Unit))
	}
	if st.Kind == LastRound {
		r.Way = Around
	}
	return true
}

// end sees that the stages end at the torque.
func (w *walk) end() {
	if len(w.a.refusals.Refusals) > 0 && w.now == nil {
		return
	}
	w.field = "stages"
	switch {
	case !w.snug:
		w.refuse("write what follows it", "the stages end with all slack")
	case w.last != nil && w.most != nil && w.now != nil && (less(*w.now, *w.last) || less(*w.last, *w.most)):
		w.refuse("let the last stage be the torque", "the stages end at %s and the torque is %s", w.most.Text(), w.last.Text())
	}
	if w.angle {
		w.a.caution(AngleGoverns, "stages", "the last tightening is by angle: the preload is more than that of the torque, and is not worked out")
	}
}
