// Package dimension sets the block of a dimension: its mark and picture, what is
// measured in which state, its limit, the boxes to write in with the verdict, what
// is worked out by hand line by line, shims and adjusters, and the sheets of those
// with many boxes.
package dimension
