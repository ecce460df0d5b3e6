package codes

// storeCodes are the problems of tags, their keys and what they are printed on.
var storeCodes = []Entry{
	{"label-length", "A measure of a stock of labels is no length in millimetres.", "Write one number and mm, as 2.5 mm."},
	{"label-number", "How many labels or dots there are is no whole number from 1.", "Write a whole number, as 2."},
	{"long-number", "A job number or a machine's tag has over 20 signs, or a revision over 4: the heads of pages and the labels have no room for it.", "Write it without what all numbers of the plant have in common."},
	{"same-key", "Two tags have marks that differ only in capitals or in signs that a scanner and a voice leave out.", "Give one of the two places or pockets another name."},
	{"stock", "Labels of this stock cannot be: they lie on each other, go beyond the page, or have their hole at the edge.", "Measure the sheet again; label:, pitch: and first: go from edge to edge."},
	{"two-sides", "A size of a stock of labels is not two lengths.", "Write both, across and down: 99.1 x 67.7 mm."},
}
