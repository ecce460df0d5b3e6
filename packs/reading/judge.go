package reading

import (
	"errors"
	"strconv"

	"matchmark/packs/units"
)

// A Verdict says how readings stand to a limit.
type Verdict uint8

const (
	// NoVerdict is for a limit that decides nothing, or cannot yet.
	NoVerdict Verdict = iota
	// In is within the limit; its ends belong to it.
	In
	// Under is below the lower end.
	Under
	// Over is above the upper end.
	Over
	// Out is one reading under and another over, or the wrong answer.
	Out
)

// A Finding is the verdict of one test on one reading, or on all together.
type Finding struct {
	Test     int // which test of the limit, from 0
	Position int // which box, from 0; -1 for mean, spread and sum
	Verdict  Verdict
	Value    *units.Quantity // what was judged, in the unit of the reading
	// Low and High are the ends that held, worked out; nil where there is none.
	Low, High *units.Quantity
	Why       string // of NoVerdict: the reason, for a person
}

// A Judgement is the verdict of a whole limit with what it rests on.
type Judgement struct {
	Verdict  Verdict
	Findings []Finding
}

// Judge sets the readings of one dimension, in the order of its boxes, against the
// limit; nil is a reading not taken. All comparisons are exact: nothing is rounded,
// and the ends of a limit are allowed. What cannot be judged is NoVerdict with the
// reason, and then the whole is never In.
func (l *Limit) Judge(readings []*units.Quantity, env Env) Judgement {
	var j Judgement
	if l.Kind != Measured {
		return Judgement{Findings: []Finding{{Position: -1, Why: "nothing to judge in numbers: " + l.Text()}}}
	}
	for i := range l.Tests {
		t := &l.Tests[i]
		w := worker{env: env, group: t.Group, boxes: len(readings)}
		if t.Group != Each {
			f := Finding{Test: i, Position: -1}
			q, err := combine(readings, ofGroup[t.Group])
			f.judge(t, &w, q, err)
			j.Findings = append(j.Findings, f)
			continue
		}
		if len(readings) == 0 {
			j.Findings = append(j.Findings, Finding{Test: i, Position: -1, Why: "nothing is read yet"})
		}
		for w.position = range readings {
			f := Finding{Test: i, Position: w.position}
			if q := readings[w.position]; q != nil {
				f.judge(t, &w, *q, nil)
			} else {
				f.Why = "reading " + strconv.Itoa(w.position+1) + " of " + strconv.Itoa(len(readings)) + " is not taken"
			}
			j.Findings = append(j.Findings, f)
		}
	}
	j.Verdict = total(j.Findings)
	return j
}

// total joins verdicts: what is out weighs more than what is not known, and that
// more than what is in.
func total(findings []Finding) Verdict {
	v := In
	for _, f := range findings {
		switch {
		case f.Verdict == v || v == Out:
		case f.Verdict == In:
		case f.Verdict == NoVerdict:
			if v == In {
				v = NoVerdict
			}
		case v == In || v == NoVerdict:
			v = f.Verdict
		default: // one under, one over
			v = Out
		}
	}
	return v
}

// judge sets one value against the test.
func (f *Finding) judge(t *Test, w *worker, q units.Quantity, err error) {
	if err == nil {
		f.Value = &q
		f.Low, f.High, err = t.ends(w)
	}
	if err == nil && t.Rule == About {
		err = errors.New("the source gives no tolerance")
	}
	if err != nil {
		f.Why = err.Error()
		return
	}
	v := In
	for _, e := range []struct {
		end *units.Quantity
		bad int
		v   Verdict
	}{{f.Low, -1, Under}, {f.High, 1, Over}} {
		if e.end == nil {
			continue
		}
		cmp, err := q.Cmp(*e.end)
		if err != nil {
			f.Why = err.Error()
			return
		}
		if cmp == e.bad {
			v = e.v
		}
	}
	f.Verdict = v
}

// ends works out the two ends of a test; nil where it has none.
func (t *Test) ends(w *worker) (low, high *units.Quantity, err error) {
	work := func(v *Value) *units.Quantity {
		if v == nil || err != nil {
			return nil
		}
		var q units.Quantity
		q, err = w.value(v)
		return &q
	}
	switch at := work(t.At); {
	case err != nil, at == nil:
		low, high = work(t.Low), work(t.High)
		if err == nil && low != nil && high != nil {
			if cmp, e := low.Cmp(*high); e != nil {
				err = e
			} else if cmp > 0 {
				err = errors.New("the lower limit works out as " + low.Text() + ", above the upper one, " + high.Text())
			}
		}
		return low, high, err
	case t.Rule == Nominal:
		l, errLow := at.Add(quantity(t.Lower, t.Unit.RiseUnit()))
		h, errHigh := at.Add(quantity(t.Upper, t.Unit.RiseUnit()))
		return &l, &h, errors.Join(errLow, errHigh)
	default:
		return at, at, nil
	}
}

// JudgeAnswer sets an answer (a phrase as typed in the limit, or none, some, yes,
// no) against a limit that asks for one. found is the answer as found, for "as
// found". Any other answer, and any other kind of limit, is NoVerdict.
func (l *Limit) JudgeAnswer(answer, found string) Verdict {
	if l.Kind == SameAsFound {
		switch {
		case answer == "" || found == "":
			return NoVerdict
		case answer == found:
			return In
		}
		return Out
	}
	if l.Kind == YesOrNo || l.Kind == Tick {
		return NoVerdict // no answer is the wrong one
	}
	for _, a := range l.Answers() {
		switch {
		case a.Typed() != answer:
		case a.Right:
			return In
		default:
			return Out
		}
	}
	return NoVerdict
}
