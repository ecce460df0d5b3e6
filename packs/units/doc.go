// Package units holds quantities exactly as a planner typed them: a Number keeps
// its digits (80.00 is not 80), an inch fraction keeps its denominator, and every
// value is a rational, never a binary fraction, so that 120.061 - 120.011 is
// 0.050 and not 0.0500000000000034.
//
// A Unit knows its Dimension and its exact factor. A temperature (°C, °F) and a
// rise of temperature (C rise, F rise, K) are two dimensions: 60 °C is 140 °F,
// but 60 C rise is 108 F rise. Nothing converts one into the other.
//
// What is refused, each with the words to write instead: a leading zero (012),
// blanks, underscores, commas and apostrophes inside a number (1_000, 0,05,
// 1 000), powers (1e3), a number without a digit on both sides of its point,
// more than MaxFigures figures, a fraction with nothing or zero below the stroke,
// and a quantity with no unit. A fault carries the place of the offending runes
// in the text, counted in runes from 0.
//
// The package imports nothing but the standard library and keeps no state.
package units
