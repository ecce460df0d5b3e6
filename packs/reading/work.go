package reading

import (
	"errors"
	"math/big"
	"strconv"

	"matchmark/packs/units"
)

// An Env is what is known when a limit is judged: what was read elsewhere, and
// what was found here. A reading that was not taken is nil.
type Env struct {
	// Readings gives the readings of another mark in the order of its boxes; none
	// if there are none yet. It may be nil.
	Readings func(Mark) []*units.Quantity
	// Found are the readings of this dimension as found, in the order of its boxes.
	Found []*units.Quantity
}

// A place in the readings at which a value is worked out.
type worker struct {
	env      Env
	group    Group
	position int // of the box, from 0
	boxes    int // how many there are
}

// Work works the value out exactly, for a dimension of one box. The error tells
// which reading is missing, or why the sum makes no sense.
func (v *Value) Work(env Env) (units.Quantity, error) {
	return (&worker{env: env, boxes: 1}).value(v)
}

// WorkAt works the value out exactly for one box of several, counted from 0.
func (v *Value) WorkAt(env Env, position, boxes int) (units.Quantity, error) {
	return (&worker{env: env, position: position, boxes: boxes}).value(v)
}

// EndsAt works out the two ends of a test for one box of several, counted from 0; nil
// where it has none.
func (t *Test) EndsAt(env Env, position, boxes int) (low, high *units.Quantity, err error) {
	return t.ends(&worker{env: env, group: t.Group, position: position, boxes: boxes})
}

// Together gives the mean, the spread or the sum of readings. The error tells which is
// not taken.
func Together(g Group, readings []*units.Quantity) (units.Quantity, error) {
	return combine(readings, ofGroup[g])
}

// value adds up the terms.
func (w *worker) value(v *Value) (units.Quantity, error) {
	var total units.Quantity
	for i := range v.Terms {
		t := &v.Terms[i]
		q, err := w.term(t)
		switch {
		case err != nil:
			return q, err
		case i == 0:
			total = q
		case t.Minus:
			total, err = total.Sub(q)
		case total.Unit.Dimension() == units.Rise && q.Unit.Dimension() == units.Temperature:
			total, err = q.Add(total)
		default:
			total, err = total.Add(q)
		}
		if err != nil {
			return total, err
		}
	}
	return total, nil
}

// term works out one summand without its sign.
func (w *worker) term(t *Term) (units.Quantity, error) {
	q, err := w.item(&t.Item)
	if err != nil || t.By == ByNothing {
		return q, err
	}
	if q.Unit.Dimension() == units.Temperature {
		return q, errors.New("a share of a temperature has no sense: " + q.Text() + "; take it of a difference")
	}
	return quantity(t.multiply(q.Number), q.Unit), nil
}

// item works out what stands behind a factor.
func (w *worker) item(it *Item) (units.Quantity, error) {
	switch it.Kind {
	case Size:
		return it.Size, nil
	case Reading:
		return w.reading(it.Marks[0])
	case Found:
		return w.found()
	case Bracket:
		return w.value(it.Value)
	case Rate:
		of, err := w.item(it.Of)
		if err != nil {
			return of, err
		}
		if it.PerMark != "" {
			return w.perReading(it, of)
		}
		if of, err = of.Convert(it.PerUnit); err != nil {
			return of, err
		}
		return quantity(it.Size.Number.Mul(of.Number), it.Size.Unit), nil
	}
	var all []*units.Quantity
	for _, m := range it.Marks {
		readings, err := w.all(m)
		if err != nil {
			return units.Quantity{}, err
		}
		all = append(all, readings...)
	}
	return combine(all, groupOf[it.Kind])
}

// perReading takes the size of a rate as often as its reading goes into a quantity.
func (w *worker) perReading(it *Item, of units.Quantity) (units.Quantity, error) {
	per, err := w.reading(it.PerMark)
	if err != nil {
		return per, err
	}
	if of, err = of.Convert(per.Unit); err != nil {
		return of, err
	}
	if per.Number.Sign() <= 0 {
		return per, errors.New(string(it.PerMark) + " is " + per.Text() + ": nothing is for each of that")
	}
	return quantity(it.Size.Number.Mul(of.Number.Quo(per.Number)), it.Size.Unit), nil
}

// groupOf maps the words for several marks to the same of several boxes.
var groupOf = map[ItemKind]combination{MeanOf: meanOf, LargestOf: largestOf, SmallestOf: smallestOf, SpreadOf: spreadOf, SumOf: sumOf}

// all gives every reading of a mark; each must have been taken.
func (w *worker) all(m Mark) ([]*units.Quantity, error) {
	var out []*units.Quantity
	if w.env.Readings != nil {
		out = w.env.Readings(m)
	}
	if len(out) == 0 {
		return nil, errors.New(string(m) + " is not yet read")
	}
	for i, q := range out {
		if q == nil {
			return nil, errors.New(string(m) + ": reading " + strconv.Itoa(i+1) + " of " + strconv.Itoa(len(out)) + " is not taken")
		}
	}
	return out, nil
}

// reading gives the one reading of a mark that belongs to this box: its only one,
// or the one at the same position when it has as many boxes.
func (w *worker) reading(m Mark) (units.Quantity, error) {
	all, err := w.all(m)
	switch {
	case err != nil:
		return units.Quantity{}, err
	case len(all) == 1:
		return *all[0], nil
	case w.group == Each && len(all) == w.boxes:
		return *all[w.position], nil
	}
	return units.Quantity{}, errors.New(string(m) + " has " + strconv.Itoa(len(all)) + " readings: write mean of " + string(m) + ", or largest or smallest of it")
}

// found gives what was found in this box, or for a test of all boxes the same of
// the readings found.
func (w *worker) found() (units.Quantity, error) {
	if len(w.env.Found) == 0 {
		return units.Quantity{}, errors.New("nothing was written as found")
	}
	if w.group != Each {
		return combine(w.env.Found, ofGroup[w.group])
	}
	switch {
	case len(w.env.Found) != w.boxes:
		return units.Quantity{}, errors.New(strconv.Itoa(len(w.env.Found)) + " readings as found, " + strconv.Itoa(w.boxes) + " now")
	case w.env.Found[w.position] == nil:
		return units.Quantity{}, errors.New("as found: reading " + strconv.Itoa(w.position+1) + " of " + strconv.Itoa(w.boxes) + " is not taken")
	}
	return *w.env.Found[w.position], nil
}

// A combination makes one quantity of several.
type combination uint8

const (
	meanOf combination = iota
	largestOf
	smallestOf
	spreadOf
	sumOf
)

// ofGroup tells how a group of readings is combined.
var ofGroup = map[Group]combination{Mean: meanOf, Spread: spreadOf, Sum: sumOf}

// combine works in the unit of the first quantity.
func combine(all []*units.Quantity, how combination) (units.Quantity, error) {
	for i, q := range all {
		if q == nil {
			return units.Quantity{}, errors.New("reading " + strconv.Itoa(i+1) + " of " + strconv.Itoa(len(all)) + " is not taken")
		}
	}
	if len(all) == 0 {
		return units.Quantity{}, errors.New("nothing is read yet")
	}
	unit := all[0].Unit
	large, small := *all[0], *all[0]
	total := new(big.Rat)
	decimals := 0
	for _, q := range all {
		same, err := q.Convert(unit)
		if err != nil {
			return units.Quantity{}, err
		}
		if same.Number.Cmp(large.Number) > 0 {
			large = same
		}
		if same.Number.Cmp(small.Number) < 0 {
			small = same
		}
		total.Add(total, same.Number.Rat())
		decimals = max(decimals, same.Number.Decimals())
	}
	switch how {
	case largestOf:
		return large, nil
	case smallestOf:
		return small, nil
	case spreadOf:
		return large.Sub(small)
	case sumOf:
		if unit.Dimension() == units.Temperature {
			return units.Quantity{}, errors.New("temperatures have no sum")
		}
		return quantity(units.Exact(total, decimals), unit), nil
	}
	total.Quo(total, new(big.Rat).SetInt64(int64(len(all))))
	return quantity(units.Exact(total, decimals), unit), nil
}
