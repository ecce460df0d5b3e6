// Package pdf measures text for package layout and paints its documents as PDF
// files.
//
// Faces holds the typeface: widths and coverage, read from the fonts' own tables.
// Write paints a document: fonts embedded as subsets, text in the order in which
// it is read, an outline with its targets, title and language set, printing
// without scaling asked for. The same document gives the same bytes.
//
// The PDF library cuts the fonts and stores the pictures (store.go), for each document; of
// those written together, one that needs nothing else of a font, or of the pictures, than one
// before it shares that one's.
// What the library gets wrong is kept away from it or put right here, each in a file of its
// own: text it would panic on (guard.go), drawing (content.go), and the file around the pages:
// links, outline, document information, catalogue and cross references (finish.go). The
// structure of the document, for readers that speak it or set it anew, is made here alone
// (tags.go).
//
// Refused with an error: text that is not well-formed or reaches beyond the
// basic plane, lengths that are no numbers, a language tag or date in a wrong
// form, a picture the library cannot read. A sign that the face lacks is the
// business of layout, which replaces it and tells.
package pdf
