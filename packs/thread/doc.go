// Package thread reads a screw thread as it is written on a drawing ("M90x2",
// "3/4-10 UNC", "Tr 40x14 (P7) LH") and gives what a mechanic needs of it: pitch,
// lead, how far one turn or one flat of the nut moves it, pitch and minor diameter,
// and the stress area that a bolt is tightened by.
//
// It knows ISO metric threads, coarse and fine (ISO 261), unified threads (UNC, UNF,
// 8-UN) and metric trapezoidal threads (ISO 2902, and those of large bearing lock
// nuts). A pitch that the standard does not pair with the diameter is refused with
// the known ones listed, because a wrong pitch moves every stand-off set by turns.
// Two ways lead past the tables, and both leave Listed false: the finer metric
// pitches that ISO 261 permits, and unified threads written as special (UN, UNS).
// Pipe and Whitworth threads are refused.
//
// Lengths are millimetres, also of unified threads (25.4 mm to the inch, exactly).
// The package keeps no state and imports nothing of this module.
package thread
