package heat

import (
	"errors"
	"math"
)

// A Refusal is a computation that was not done because its answer could not be
// trusted. Field names the input as the struct spells it, with a dot between
// levels, as in Hub.Outside; a caller that knows the file puts the place on it.
type Refusal struct {
	Field   string
	Code    string // fixed, for a refusal that a sheet words by itself; often empty
	Why     string // what is wrong, with the value as it was given; metric
	Instead string // what to give or do instead; metric
	// Changes are what would have to be otherwise for heat to do, each by itself.
	Changes []Change

	why, instead saying
}

// A Change is an input of a pull that would have to be otherwise: Code is
// "interference", "ceiling" or "power". Must is rounded to the side on which it
// does; NaN where no value of this one does by itself.
type Change struct {
	Code     string
	Is, Must Number
	Unit     string // mm, °C or W
}

// Error says what is wrong and then what to do.
func (r *Refusal) Error() string {
	if r.Instead == "" {
		return r.Why
	}
	return r.Why + ": " + r.Instead
}

// In writes the refusal in the units of a job.
func (r *Refusal) In(u Units) *Refusal {
	out := *r
	out.Why, out.Instead = r.why.in(u), r.instead.in(u)
	return &out
}

// refuse builds a refusal; why may hold figures, and instead is a string or a
// saying.
func refuse(field string, instead any, why string, args ...any) error {
	r := &Refusal{Field: field, why: say(why, args...)}
	switch v := instead.(type) {
	case saying:
		r.instead = v
	case string:
		r.instead = say(v)
	}
	return r.In(Units{})
}

// refuseAs is refuse with a code.
func refuseAs(code, field string, instead any, why string, args ...any) error {
	err := refuse(field, instead, why, args...)
	err.(*Refusal).Code = code
	return err
}

// within puts the name of the struct in front of the field that a part of it
// refused.
func within(outer string, err error) error {
	var r *Refusal
	if errors.As(err, &r) {
		out := *r
		out.Field = outer + "." + r.Field
		return &out
	}
	return err
}

// positive refuses a value that is missing, not a number, or not above zero.
func positive(field, what string, v float64, unit string) error {
	switch {
	case v == 0:
		return refuse(field, "give "+what+" in "+unit, "%v is missing", what)
	case v < 0 || math.IsNaN(v) || math.IsInf(v, 0):
		return refuse(field, "give a figure above zero, in "+unit, "%v is %v %v", what, v, unit)
	}
	return nil
}

// notNegative refuses a value below zero or not a number; zero has a meaning.
func notNegative(field, what string, v float64, unit string) error {
	if v < 0 || math.IsNaN(v) || math.IsInf(v, 0) {
		return refuse(field, "give zero or more, in "+unit, "%v is %v %v", what, v, unit)
	}
	return nil
}

// largest is the greatest length that is computed with: beyond it the unit has
// slipped. smallest is the least that a joint is cut from.
const (
	largest  Mm = 20000
	smallest Mm = 1
)

// check refuses lengths that no machine part has; zero is for others to judge.
func (m Mm) check(field, what string) error {
	if m != 0 && (m < smallest || m > largest) {
		return refuse(field, "look for a slip of the decimal point or of the unit", "%v is %v, and %v to %v are computed", what, m, smallest, largest)
	}
	return nil
}

// temperature refuses what no metal part in a shop can have.
func temperature(field, what string, t Celsius) error {
	if !(t > -273.15) || math.IsInf(float64(t), 0) {
		return refuse(field, "give degrees Celsius", "%v is at %v °C", what, float64(t))
	}
	return nil
}

// firstOf returns the first error there is.
func firstOf(errs ...error) error {
	for _, err := range errs {
		if err != nil {
			return err
		}
	}
	return nil
}
