package main

import (
	"fmt"
	"math"
)

// An amount is a number with its unit as it stands on paper.
type amount struct {
	text, unit  string
	value, step float64
}

// A side is the side to which a figure of a lift is printed.
type side int

const (
	atLeast    side = iota // loads, shares used, tilts, heights needed
	atMost                 // ratings, what is left, angles of legs
	eitherSide             // places and lengths that are made
)

// An exact is one figure of a lift or a heat as it was worked out, in the unit in which it is
// printed.
type exact struct {
	path  string
	value float64
	side  side
}

// standsFor reports whether an amount on paper stands for one of some figures, on its safe
// side, and names those that are near.
func standsFor(a amount, known []exact) (good bool, near string) {
	for _, x := range known {
		off, slack := a.value-x.value, 1e-9*math.Abs(x.value)+1e-7
		if math.Abs(off) > a.step+slack {
			continue
		}
		near += fmt.Sprintf(" %s %.6f", x.path, x.value)
		switch x.side {
		case atLeast:
			good = good || off >= -slack
		case atMost:
			good = good || off <= slack
		default:
			good = good || math.Abs(off) <= a.step/2+slack
		}
	}
	return good, near
}
