// Package shim makes up a thickness from what there is: leaves, several of them in
// one pack, or a graded set of which one is picked.
//
// Packs lists every thickness that can be made within a range, each by the fewest
// leaves; Rows turns the list into a table that a person with a pen uses without
// any arithmetic: worked out from … to …, take this pack. Numbers are exact, with
// the decimals as typed; there is no float in the package.
//
// Refused: leaves without a thickness, a range that holds none or too many packs
// for paper.
package shim
