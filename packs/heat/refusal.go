package heat

import (
	"errors"
	"fmt"
	"math"
)

// A Refusal is a computation that was not done because its answer could not be
// trusted. Field names the input as the struct spells it, with a dot between
// levels, as in Hub.Outside; a caller that knows the file puts the place on it.
type Refusal struct {
	Field   string
	Why     string // what is wrong, with the value as it was given
	Instead string // what to give or do instead
}

// Error says what is wrong and then what to do.
func (r *Refusal) Error() string {
	if r.Instead == "" {
		return r.Why
	}
	return r.Why + ": " + r.Instead
}

// refuse builds a refusal; why may hold formatting verbs.
func refuse(field, instead, why string, args ...any) error {
	return &Refusal{Field: field, Why: fmt.Sprintf(why, args...), Instead: instead}
}

// within puts the name of the struct in front of the field that a part of it
// refused.
func within(outer string, err error) error {
	var r *Refusal
	if errors.As(err, &r) {
		return &Refusal{Field: outer + "." + r.Field, Why: r.Why, Instead: r.Instead}
	}
	return err
}

// positive refuses a value that is missing, not a number, or not above zero.
func positive(field, what string, v float64, unit string) error {
	switch {
	case v == 0:
		return refuse(field, "give "+what+" in "+unit, "%s is missing", what)
	case v < 0 || math.IsNaN(v) || math.IsInf(v, 0):
		return refuse(field, "give a figure above zero, in "+unit, "%s is %v %s", what, v, unit)
	}
	return nil
}

// notNegative refuses a value below zero or not a number; zero has a meaning.
func notNegative(field, what string, v float64, unit string) error {
	if v < 0 || math.IsNaN(v) || math.IsInf(v, 0) {
		return refuse(field, "give zero or more, in "+unit, "%s is %v %s", what, v, unit)
	}
	return nil
}

// temperature refuses what no metal part in a shop can have.
func temperature(field, what string, t Celsius) error {
	if !(t > -273.15) || math.IsInf(float64(t), 0) {
		return refuse(field, "give degrees Celsius", "%s is %v °C", what, float64(t))
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
