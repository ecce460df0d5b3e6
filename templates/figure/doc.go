// Package figure writes the figures of a heat as they are printed: in the units
// that the author of the definition uses, rounded to what can be read at the
// machine, and where rounding has a safe side, to that side.
package figure
