// Package fit gives the limits of a size written by designation ("Ø130 m6"), the
// clearance or interference of a fit ("120 H7/r6"), and what an interference does
// to hub and shaft: pressure, stresses, the force and torque it holds and the
// force that pulls it apart.
//
// Designations follow ISO 286-1 and -2: sizes to 3150 mm, grades IT1 to IT18,
// shaft letters a to zc and hole letters A to ZC. The tables are typed in
// (iso286_table.go), because the formulas of the standard do not reproduce its
// own tables; the tests prove them against a second table, against the laws the
// standard builds on, and against values read elsewhere. What the standard does
// not define (t at 20 mm, J9, i7, anything over 3150 mm) is refused with the
// reason and with what it does define.
//
// Sizes and deviations are whole nanometres (Nanometre), so that limits are
// exact: 130.015 is 130.015. Thousandths of a micrometre are needed because the
// symmetric zones of the finest grades end in quarter micrometres (js2 at 5 mm is
// ±0.75 µm).
//
// Interference fits use the thick-ring equations of Lamé in plane stress: elastic,
// equal lengths, ends not counted; where the joint works warm or turns, its service is
// told. Figures are for planning; a competent person decides what a joint may carry.
// Friction for holding and for pulling are two different inputs, because the safe side
// of one is the unsafe side of the other, and somebody stands behind both.
//
// The package keeps no state and imports nothing of this module.
package fit
