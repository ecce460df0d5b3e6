// Package source knows places in files and what is wrong there: the bytes of
// the files as read (Files), a place in one of them (Pos), a thing a planner
// has to look at (Problem), and how a list of them is written for a person
// (Problems.Write).
//
// Lines and columns count from 1, columns in runes (Unicode code points), not
// in bytes. A line ends at a line feed, a carriage return or both; a byte order
// mark at the start of a file belongs to no line. Lines is the one place where
// this is decided, so that a problem and the line shown below it always agree.
//
// A file above MaxSize is a problem and is not read whole; so is a file that
// cannot be read at all, with a code of its own.
//
// The package imports nothing of this module and keeps no state.
package source
