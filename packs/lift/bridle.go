package lift

// What is computed: a bridle of one to four legs on one hook, and the same legs on
// the ends of a spreader bar. The formulas stand in tension.go, rest.go,
// level.go and fourlegs.go.
// Refused: legs that do not meet, a slack leg among two or three, a leg flatter
// than 30° from horizontal.

// flattest: ASME B30.9 and B30.26 ask for no less than 30° from horizontal (as
// quoted by a riggers' training firm); EN 13414-1:2003 table 4 ends at the same
// angle, 60° from vertical. Under caution: the US Navy advises against less than
// 45°. aim is common practice.
const (
	flattest     Degree = 30
	cautionAngle Degree = 45
	aimAngle     Degree = 60
)

// bridle is the frame of legs to one hook.
type bridle struct {
	picks   []vec
	names   []string
	field   string // of the legs
	lengths []float64
	weight  float64
	sharing Sharing
	skew    float64
}

func (b bridle) sloping() []float64 { return b.lengths }

// hang finds how the load comes to rest with its legs longer by the given amounts.
func (b bridle) hang(g vec, longer []float64) (resting, *Refusal) {
	if no := standing(b.picks, g); no != nil {
		return resting{}, no
	}
	lengths := make([]float64, len(b.lengths))
	for i, l := range b.lengths {
		lengths[i] = l
		if longer != nil {
			lengths[i] += longer[i]
		}
	}
	r, ok := rest(b.picks, lengths, g)
	if !ok {
		return resting{}, b.unmet(lengths)
	}
	return r, nil
}

func (b bridle) lean(g vec, longer []float64) (vec, *Refusal) {
	r, no := b.hang(g, longer)
	return r.up, no
}

func (b bridle) at(g vec, longer []float64) (state, *Refusal) {
	r, no := b.hang(g, longer)
	if no != nil {
		return state{}, no
	}
	s := state{hook: r.hook, up: r.up, hooks: []float64{b.weight}}
	even, tension := r.t, r.t
	if len(b.picks) == 4 {
		var no *Refusal
		if tension, even, no = b.share(r); no != nil {
			return state{}, no
		}
		s.uneven = b.sharing != TwoCarry && r.slackest() > lengthSlack
	} else if no := b.slackLeg(r); no != nil {
		return state{}, no
	}
	for i, p := range b.picks {
		l := line{top: r.hook, bottom: p, tension: tension[i] * b.weight, slack: r.slack[i], angle: 90 - angleBetween(r.us[i], r.up)}
		if len(b.picks) == 4 && even != nil {
			l.even = even[i] * b.weight
		}
		if l.angle < flattest-angleSlack {
			return state{}, refuse(b.field, "lift the hook or use longer legs; 60° is the aim", "leg %q stands %s from horizontal, under 30°", b.names[i], l.angle.Down())
		}
		s.press = max(s.press, l.tension*r.us[i].across(r.up).size())
		s.lines = append(s.lines, l)
	}
	return s, nil
}

// share gives the tension of each of four legs by the plan's sharing, and the
// even split where the layout has one.
func (b bridle) share(r resting) (tension, even []float64, no *Refusal) {
	low, high := extremes(r.t, r.us)
	tension = make([]float64, 4)
	for i := range tension {
		tension[i] = max(low[i], high[i])
	}
	even, ok := evenShares(b.picks, r)
	if b.sharing == TwoCarry {
		return tension, even, nil
	}
	if !ok {
		return nil, nil, refuse("sharing", "let two legs carry", "the four picks are no four-cornered layout around the centre of gravity, so there is no even split to start from")
	}
	factor := 4.0 / 3
	if b.sharing == Skew {
		factor = b.skew
	}
	for i := range tension {
		// Statics bound every leg, so a convention above that bound is cut to it. Where
		// a leg hangs slack by the stated lengths they leave one answer, and no
		// convention takes a load away from a leg that carries.
		tension[i] = min(even[i]*factor, tension[i])
		if r.slackest() > lengthSlack {
			tension[i] = max(tension[i], r.t[i])
		}
	}
	return tension, even, nil
}

// slackLeg refuses one to three legs of which one carries nothing.
func (b bridle) slackLeg(r resting) *Refusal {
	for i, t := range r.t {
		if t > weightless {
			continue
		}
		return refuse(b.field, "look at the lengths and at the centre of gravity, or leave the leg out",
			"leg %q hangs slack, by %s", b.names[i], Mm(r.slack[i]).Up())
	}
	return nil
}

// unmet says why legs of these lengths hold no load.
func (b bridle) unmet(lengths []float64) *Refusal {
	for i, p := range b.picks {
		for j := i + 1; j < len(b.picks); j++ {
			s := b.picks[j].sub(p).size()
			if lengths[i]+lengths[j] <= s {
				return refuse(b.field, "use longer legs", "legs %q and %q are %s together and their picks %s apart, so they do not meet", b.names[i], b.names[j], Mm(lengths[i]+lengths[j]).Down(), Mm(s).Up())
			}
		}
	}
	return refuse(b.field, "look at the lengths", "legs of these lengths hold the load in no position")
}
