package expand

import (
	"strings"

	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/names"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// readMovement takes over what a part that is turned, or shims, move, and whether it is left
// alone. Of a part with a thread it is for the readings that are not of its own faces.
func (b *builder) readMovement(p *job.Part, dp *def.Part) {
	p.LeaveAlone = dp.LeaveAlone.Value
	t := dp.Moves
	if !t.Written() {
		return
	}
	if p.Flats == 0 && dp.Flats.Written() {
		p.Flats, _ = names.WholeNumber(dp.Flats)
	}
	turns, gives, ok := strings.Cut(t.Value, " gives ")
	q, err := units.ParseQuantity(gives)
	if thick, fault := units.ParseQuantity(turns); ok && p.Thread == nil && fault == nil && err == nil && moveLike(thick) && (moveLike(q) || moveLike(units.Quantity{Number: q.Number.Neg(), Unit: q.Unit})) {
		p.Movement = &job.Movement{Thick: &thick, Gives: &q}
		return
	}
	n, what, fine := turnsOf(turns)
	if !ok || !fine || err != nil || q.Number.Sign() <= 0 || n.Sign() <= 0 || q.Unit.Dimension() != units.Length {
		b.Problems.Add(t.At, "movement", source.Quote(t.Value)+" does not say what one turn moves", "for example moves: 1 turn gives … mm", "or 1 flat gives … mm", "or, of shims, … mm gives … mm")
		return
	}
	one := units.Quantity{Number: units.Exact(q.Number.Quo(n).Rat(), q.Number.Decimals()), Unit: q.Unit}
	if what == "flat" {
		p.Movement = &job.Movement{PerFlat: &one}
		return
	}
	p.Movement = &job.Movement{PerTurn: &one}
	if p.Flats > 0 {
		p.Movement.PerFlat = flatOf(one, p.Flats)
	}
}

// flatOf is what one of so many flats moves: exactly, or, where no decimals tell a third, as
// finely as of a thread.
func flatOf(turn units.Quantity, flats int) *units.Quantity {
	q := units.Quantity{Number: turn.Number.Quo(units.Whole(int64(flats))), Unit: turn.Unit}
	if _, exact := q.Number.Rat().FloatPrec(); !exact {
		decimals := 2
		if turn.Unit == units.Inch {
			decimals = 3
		}
		q = q.Round(max(decimals, turn.Number.Decimals()), units.Nearest)
	}
	return &q
}

// moveLike reports whether a quantity is a length that something can move.
func moveLike(q units.Quantity) bool {
	return q.Unit.Dimension() == units.Length && q.Number.Sign() > 0
}

// turnsOf reads how far something is turned: 1 turn, 1/6 turn, 2 flats.
func turnsOf(text string) (n units.Number, what string, ok bool) {
	n, width, fault := units.LeadingNumber(text)
	if fault != nil {
		return n, "", false
	}
	what = strings.TrimSuffix(strings.TrimSpace(string([]rune(text)[width:])), "s")
	return n, what, what == "turn" || what == "flat"
}

// readAdjuster finds what sets a dimension, and works out what one turn and one
// flat of it moves.
func (b *builder) readAdjuster(d *job.Dim, dd *def.Dimension, pl job.Place) {
	if !dd.Adjust.Written() {
		if dd.BackOff.Written() {
			b.Problems.Add(dd.BackOff.At, "no-adjuster", d.Mark+" says how far to back off, but not what", "for example adjust: lock-nut")
		}
		return
	}
	found := b.PartsAt(dd.Adjust, pl)
	if len(found) != 1 {
		return
	}
	d.Adjuster = found[0]
	d.TellTravel()
	if dd.BackOff.Written() {
		b.readBackOff(d, dd.BackOff)
	}
}

// readBackOff reads how far an adjuster is turned back, and works out what that
// moves.
func (b *builder) readBackOff(d *job.Dim, t source.Text) {
	bo := &job.BackOff{Text: t.Value}
	low, high, ranged := strings.Cut(t.Value, " to ")
	if ranged { // the word or sign stands once, behind the second
		_, width, _ := units.LeadingNumber(high)
		low += string([]rune(high)[width:])
	}
	for i, text := range []string{low, high} {
		if i == 1 && !ranged {
			break
		}
		moved, ok := movedBy(d, text)
		if !ok {
			b.Problems.Add(t.At, "back-off", source.Quote(t.Value)+" does not say how far to turn back", "for example back-off: 1/6 turn", "or 2 flats, or 10 to 20°")
			return
		}
		if i == 0 {
			bo.Low = moved
		} else {
			bo.High = moved
		}
	}
	d.BackOff = bo
}

// movedBy works out what a turn of the adjuster by so much moves; nil where it is not
// known.
func movedBy(d *job.Dim, text string) (*units.Quantity, bool) {
	var share units.Number // of a turn
	if q, err := units.ParseQuantity(text); err == nil && q.Unit == units.Degree {
		share = q.Number.Quo(units.Whole(360))
	} else {
		n, what, ok := turnsOf(text)
		switch {
		case !ok:
			return nil, false
		case what == "turn":
			share = n
		case d.Adjuster.Flats > 0:
			share = n.Quo(units.Whole(int64(d.Adjuster.Flats)))
		case d.PerFlat != nil:
			return &units.Quantity{Number: d.PerFlat.Number.Mul(n), Unit: d.PerFlat.Unit}, n.Sign() > 0
		default:
			return nil, n.Sign() > 0
		}
	}
	if share.Sign() <= 0 {
		return nil, false
	}
	if d.PerTurn == nil {
		return nil, true
	}
	q := units.Quantity{Number: share.Mul(d.PerTurn.Number), Unit: d.PerTurn.Unit}.Round(d.PerTurn.Number.Decimals(), units.Nearest)
	return &q, true
}
