// Package filled takes what comes back on paper and works it out.
//
// Write lists every box that a pack has to be filled by hand as one row of a CSV file
// (RFC 4180), Read takes the file back with the values typed into it, strictly: a value
// is read with its unit by the reader of limits, and one that may have been misread is
// refused with its row and column. Merge joins the files of one job. Work judges the
// values, works ladders, shims, adjusters and alignments through with them, and lists
// what is out and what is missing. Compare sets them beside those of earlier outages.
//
// Nothing is invented: a box without a value stays empty, what hangs on it is not
// worked out, and a verdict that rests on a missing reading is none. Nothing is lost:
// a value for which the job has no box is told and kept. Dates come from the files; the
// package knows no clock, no disk and no paper.
package filled
