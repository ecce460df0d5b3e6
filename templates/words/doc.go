// Package words is the catalogue of all fixed words on paper: one struct a sheet,
// and Common for what several sheets share. A language is one value of Catalogue,
// English in the files en*.go; another stands beside it in files of its own.
//
// A field is named for what it means, not for how it reads: two words that are
// alike in English and mean different things have a field each. A word with holes
// is a Sentence.
package words
