// Package draw makes scale drawings as blocks of layout: a scene in the units of
// the thing drawn, fitted to a rectangle of paper with one scale both ways, and
// the parts that drawings of machines are made of: outlines, centre lines,
// hatching, arrows, dimension lines; rings and clock faces with write-in boxes at
// their positions; simple charts.
//
// In a scene x runs to the right and y upward, as on a drawing board; angles on a
// clock face are degrees from the top, clockwise. Line weights and type are in
// millimetres and points of paper and do not scale. A drawing is never too large
// for its place, because the scale is chosen to fit; labels keep their size and
// may reach beyond the view, which the block then grows to hold.
package draw
