package filled

import (
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/packs/shim"
	"matchmark/packs/units"
)

// An Advice is what is worked out for setting a dimension of one box again.
type Advice struct {
	Target    *units.Quantity // nil where nothing but the ends is worked out
	Low, High *units.Quantity
	// Expected tells that a reading which it takes is read again in putting back and is
	// not there yet: what was found stands in for it.
	Expected bool
	Pack     *shim.Pack // the leaves that make the target up
	NoPack   bool       // the target lies outside the table of packs

	// From what was read last to the target, with its sign; nil where there is nothing
	// to turn or nothing read. When says when that was.
	ToGo  *units.Quantity
	When  job.When
	Turns *units.Number // of the adjuster, flats where Flats is set
	Flats bool
	Shims *units.Quantity // to add, where shims move it
}

// Advise works out what a dimension has to be set to; false where nothing is known. It
// may be asked of a nil Result.
func (r *Result) Advise(d *job.Dim) (Advice, bool) {
	if r == nil || d.Left == nil || d.Left.Kind != reading.Measured || d.Positions.Boxes() != 1 || len(d.LeftBy) > 0 || len(d.Merged) > 0 || !r.reads(d, job.AsLeft) {
		return Advice{}, false
	}
	ladders := laddersOf(d.LeftWork, d.Left)
	env := r.env(d, ladders...)
	if a, known := r.advise(d, env); known {
		return a, true
	}
	env.Readings = func(m reading.Mark) []*units.Quantity { return r.foundOf(ladders, m) }
	a, known := r.advise(d, env)
	a.Expected = true
	return a, known
}

// foundOf gives the readings of a mark as found, for those that ladders take.
func (r *Result) foundOf(ladders []*job.Ladder, m reading.Mark) []*units.Quantity {
	for _, l := range ladders {
		if l == nil {
			continue
		}
		uses := append([]job.Use{}, l.Uses...)
		for i := range uses {
			uses[i].Left = false
		}
		if out := r.of(uses, m); out != nil {
			return out
		}
	}
	return nil
}

// advise works the limits of a dimension out from what is known.
func (r *Result) advise(d *job.Dim, env reading.Env) (Advice, bool) {
	var a Advice
	known := false
	for i := range d.Left.Tests {
		t := &d.Left.Tests[i]
		if t.Group != reading.Each || !worked(t) {
			continue
		}
		low, high, err := t.EndsAt(env, 0, 1)
		if err != nil {
			continue
		}
		a.Low, a.High, known = low, high, true
		if t.Rule != reading.Nominal {
			continue
		}
		if at, err := t.At.WorkAt(env, 0, 1); err == nil {
			a.Target = &at
			r.pack(d, t, &a)
			r.toGo(d, &a)
		}
	}
	return a, known
}

// worked reports whether the ends of a test hang on readings.
func worked(t *reading.Test) bool {
	for _, v := range []*reading.Value{t.At, t.Low, t.High} {
		if v != nil && (len(v.Marks()) > 0 || v.NeedsFound()) {
			return true
		}
	}
	return false
}

// pack finds the pack of the table for the target.
func (r *Result) pack(d *job.Dim, t *reading.Test, a *Advice) {
	if d.Shims == nil || len(d.Shims.Rows) == 0 || t.At.JustFound() {
		return
	}
	decimals := 0
	for _, l := range d.LeftWork.Limits {
		if l.Test == t && l.At != nil {
			decimals = l.At.Result().After
		}
	}
	at := a.Target.Number.Round(decimals, units.Nearest)
	for i := range d.Shims.Rows {
		if row := &d.Shims.Rows[i]; at.Cmp(row.From) >= 0 && at.Cmp(row.To) <= 0 {
			a.Pack = &row.Pack
			return
		}
	}
	a.NoPack = true
}

// toGo is how far the adjuster has to bring a dimension from where it was read last.
func (r *Result) toGo(d *job.Dim, a *Advice) {
	if d.Adjuster == nil || d.Adjuster.LeaveAlone != "" {
		return
	}
	a.When = job.AsLeft
	from := r.readings(d, job.AsLeft).readings[0]
	if from == nil && r.reads(d, job.AsFound) {
		a.When, from = job.AsFound, r.readings(d, job.AsFound).readings[0]
	}
	if from == nil {
		return
	}
	togo, err := a.Target.Sub(*from)
	if err != nil || togo.Number.Sign() == 0 {
		return
	}
	a.ToGo = &togo
	one, flats := d.PerFlat, true
	if one == nil {
		one, flats = d.PerTurn, false
	}
	if one != nil && one.Unit == togo.Unit && one.Number.Sign() != 0 {
		n := togo.Number.Abs().Quo(one.Number.Abs())
		a.Turns, a.Flats = &n, flats
	}
	if m := d.Adjuster.Movement; m != nil && m.Thick != nil && m.Gives.Unit == togo.Unit && m.Gives.Number.Sign() != 0 {
		a.Shims = &units.Quantity{Number: togo.Number.Quo(m.Gives.Number).Mul(m.Thick.Number), Unit: m.Thick.Unit}
	}
}
