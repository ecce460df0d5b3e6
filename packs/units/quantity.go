package units

// A Quantity is a number with its unit. Its zero value is the bare number 0.
type Quantity struct {
	Number Number
	Unit   Unit
}

// Text writes the quantity as it is typed: 36 kg, 60 C rise, 20°.
func (q Quantity) Text() string {
	return join(q.Number.Text(), q.Unit.named(q.Number, q.Unit.Text()), " ")
}

// Print writes the quantity for paper, with a no-break space before the unit, a true
// minus sign and the decimal mark.
func (q Quantity) Print() string {
	return join(q.Number.Print(), q.Unit.named(q.Number, q.Unit.Print()), "\u00a0")
}

// join puts a unit behind a number; the degree of angle stands close.
func join(number, unit, blank string) string {
	if unit == "" || unit == "°" {
		return number + unit
	}
	return number + blank + unit
}

// Convert gives the same quantity in another unit, exactly; the result has as
// many decimals as that takes, and wants rounding before it is printed. Between
// dimensions there is no conversion, nor between a temperature and a rise: the
// error, a *Fault without a place, says which two were meant to be the same.
func (q Quantity) Convert(to Unit) (Quantity, error) {
	if q.Unit == to {
		return q, nil
	}
	from, want := q.Unit.Dimension(), to.Dimension()
	if from != want {
		f := &Fault{Code: "dimension", Message: q.Text() + " is a " + from.String() + ", not a " + want.String()}
		if from == Temperature && want == Rise {
			f.Help = []string{Quantity{q.Number, q.Unit.RiseUnit()}.Text() + ", if a difference is meant"}
		}
		return Quantity{}, f
	}
	return Quantity{Number{val: to.fromBase(q.Unit.toBase(q.Number.Rat()))}, to}, nil
}

// Round rounds the number to so many decimals.
func (q Quantity) Round(decimals int, how Rounding) Quantity {
	return Quantity{q.Number.Round(decimals, how), q.Unit}
}

// Cmp compares two quantities of one dimension, whatever their units: -1 when q
// is the smaller, +1 when it is the larger. The error is that of Convert.
func (q Quantity) Cmp(r Quantity) (int, error) {
	same, err := r.Convert(q.Unit)
	if err != nil {
		return 0, err
	}
	return q.Number.Cmp(same.Number), nil
}

// Add gives q + r in the unit of q. Two temperatures have no sum.
func (q Quantity) Add(r Quantity) (Quantity, error) { return q.sum(r, Number.Add) }

// Sub gives q - r in the unit of q; of two temperatures the rise from r to q.
func (q Quantity) Sub(r Quantity) (Quantity, error) {
	if q.Unit.Dimension() == Temperature && r.Unit.Dimension() == Temperature {
		same, err := r.Convert(q.Unit)
		return Quantity{q.Number.Sub(same.Number), q.Unit.RiseUnit()}, err
	}
	return q.sum(r, Number.Sub)
}

func (q Quantity) sum(r Quantity, op func(Number, Number) Number) (Quantity, error) {
	same, err := r.Convert(q.Unit.RiseUnit())
	if err != nil {
		return Quantity{}, err
	}
	return Quantity{op(q.Number, same.Number), q.Unit}, nil
}
