package lift

import "math"

// Compute works a plan out. The error is Refusals: what is wrong with the plan as
// written, all of it, or the one reason why its statics have no answer. Overloads,
// a short headroom and a tilt beyond the allowed are no errors: they stand in the
// result as cautions, with Stop set.
func Compute(p Plan) (*Result, error) {
	if rs := p.check(); len(rs) > 0 {
		return nil, rs.Err()
	}
	p.inBaskets()
	s, no := p.settle()
	if no != nil {
		return nil, Refusals{*no}
	}
	if no := p.tooCalm(s.gross); no != nil {
		return nil, Refusals{*no}
	}
	states, no := s.states(p.Load.CoGTolerance)
	if no != nil {
		return nil, Refusals{*no}
	}
	a := account{p: &p, s: s, states: states, r: &Result{Gross: Kg(s.gross), Bail: Mm(s.bail)}}
	dyn, from := p.dynamic(s.gross)
	a.r.Dynamic = Ratio(dyn)
	a.legs()
	a.tilt()
	a.turn()
	if no := a.components(); no != nil {
		return nil, Refusals{*no}
	}
	if no := a.cranes(); no != nil {
		return nil, Refusals{*no}
	}
	a.headroom()
	a.weakest()
	a.heat()
	a.looks()
	a.scene()
	a.cautions()
	a.working(from)
	return a.r, nil
}

// account turns the states of a settled plan into a Result.
type account struct {
	p      *Plan
	s      settled
	states []state
	turned []turned         // with centre and legs off as far as they may be
	rooms  []HeadroomResult // of two hooks
	r      *Result
}

// leg gives the input behind line i, its path, and whether it is one above a
// spreader.
func (a *account) leg(i int) (Leg, string, int, bool) {
	n := len(a.p.TopLegs)
	if i < n {
		return a.p.TopLegs[i], "toplegs", i, true
	}
	return a.p.Legs[i-n], "legs", i - n, false
}

// sloping tells whether the lengths of line i were settled, and not read.
func (a *account) sloping(i int) bool { return i < len(a.s.chosen) }

func (a *account) legs() {
	nominal := a.states[0]
	for i, l := range nominal.lines {
		in, _, _, above := a.leg(i)
		r := LegResult{Name: in.Name, Above: above, Length: in.Length, Angle: l.angle, Flattest: l.angle,
			Tension: Kg(l.tension), Low: Kg(l.tension), High: Kg(l.tension), Even: Kg(l.even), Slack: Mm(l.slack)}
		if a.sloping(i) {
			r.Length, r.Chosen = Mm(a.s.frame.sloping()[i]), a.s.chosen[i]
			if a.s.shorten != nil {
				r.Shorten = Mm(a.s.shorten[i])
			}
		}
		for _, st := range a.states[1:] {
			o := st.lines[i]
			r.Flattest = min(r.Flattest, o.angle)
			r.Low, r.High = min(r.Low, Kg(o.tension)), max(r.High, Kg(o.tension))
		}
		sin, cos := math.Sincos(radians(l.angle))
		r.Vertical, r.Horizontal = Kg(l.tension*sin), Kg(l.tension*cos)
		if l.angle == 90 {
			r.Horizontal = 0
		}
		r.Factor = Ratio(1 / sin)
		r.Design = r.High * Kg(a.r.Dynamic)
		r.From = stand(l.top, a.s.g, nominal.up).point()
		r.To = stand(l.bottom, a.s.g, nominal.up).point()
		a.r.Legs = append(a.r.Legs, r)
	}
	for _, st := range a.states {
		a.r.Press = max(a.r.Press, Kg(st.press))
	}
	// The lowest point of the frame is measured along the plumb line, with the
	// centre of gravity at its own height.
	a.r.HookHeight = Mm(nominal.hook.sub(a.s.g).dot(nominal.up) + a.s.g.z)
}

// sag gives how far end B of the span stands above A, against the level load.
func sag(s *Span, up vec) float64 {
	d := vecOf(s.B).sub(vecOf(s.A))
	return d.dot(up) - d.z
}

// tilt finds how far the load turns, with the centre of gravity and the legs off as
// far as they may be, and keeps apart what each of the two adds.
func (a *account) tilt() {
	up := a.states[0].up
	t := Tilt{Total: angleBetween(up, zUp), AlongX: degrees(math.Asin(-up.x)), AlongY: degrees(math.Asin(-up.y)), Allowed: a.p.maxTilt()}
	a.r.LengthError = a.p.lengthError()
	all, no := a.s.turns(a.p.Load.CoGTolerance, float64(a.r.LengthError))
	a.turned = all
	if no != nil {
		a.caution(TouchyLength, no.Field, true, "with one leg off by %s, %s", a.r.LengthError.Up().Fine(), no.say)
	}
	t.Within, t.Most = t.Total, t.Total
	span := a.p.Load.Span
	for _, x := range all {
		lean := angleBetween(x.up, zUp) + x.extra
		t.Most = max(t.Most, lean)
		if !x.legs {
			t.Within = max(t.Within, lean)
		}
		if !x.centre {
			a.r.ErrorTilt = max(a.r.ErrorTilt, angleBetween(x.up, up)+x.extra)
		}
		if span != nil {
			far := vecOf(span.B).sub(vecOf(span.A)).size()
			t.MostDrop = max(t.MostDrop, Mm(math.Abs(sag(span, x.up))+far*math.Sin(radians(x.extra))))
		}
	}
	if span != nil {
		if d := sag(span, up); math.Abs(d) >= lengthSlack {
			t.Drop, t.Lower = Mm(math.Abs(d)), span.NameA
			if d < 0 {
				t.Lower = span.NameB
			}
		}
	}
	a.r.Tilt = t
	a.touchy()
}

// touchy tells where legs off their lengths leave one of them slack or too flat.
func (a *account) touchy() {
	e := float64(a.r.LengthError)
	for _, off := range offLengths(len(a.s.frame.sloping()), e)[1:] {
		if _, no := a.s.frame.at(a.s.g, off); no != nil {
			a.caution(TouchyLength, no.Field, false, "with one leg off by %s, %s", a.r.LengthError.Up().Fine(), no.say)
			return
		}
	}
}

func (a *account) scene() {
	nominal := a.states[0]
	at := func(v vec) Point { return stand(v, a.s.g, nominal.up).point() }
	d := Scene{Hook: at(nominal.hook), CoG: a.s.g.point()}
	for _, g := range corners(a.s.g, a.p.Load.CoGTolerance)[1:] {
		d.Band = append(d.Band, at(g))
	}
	for _, k := range a.p.Picks {
		d.Picks = append(d.Picks, at(vecOf(k.At)))
	}
	for _, b := range nominal.bar {
		d.Bar = append(d.Bar, at(b))
	}
	for _, o := range a.p.Load.Outline {
		d.Outline = append(d.Outline, at(vecOf(o)))
	}
	if s := a.p.Load.Span; s != nil {
		d.Span = []Point{at(vecOf(s.A)), at(vecOf(s.B))}
	}
	a.r.Drawing = d
}
