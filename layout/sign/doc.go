// Package sign draws safety signs and the alert symbol as blocks of layout, from
// paths of our own, black and white, so that a grey photocopy shows all of them.
//
// The numbers are those of ISO 7010 and the frames follow its shapes: a triangle
// warns (W), a full disc commands (M), a ring with a bar forbids (P). The
// standard's colours (yellow, blue, red) are left away; its pictograms are drawn
// anew in plain strokes and are not facsimiles. A printed pack therefore always
// prints the number of a sign beside it, and a site's own signs stand above ours.
//
// A signal-word panel is a word in white on black. The alert triangle stands
// before the words that warn of injury and never before NOTICE (ANSI Z535.6).
package sign
