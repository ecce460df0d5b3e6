// Package templates words and arranges a job on paper. Compose sets every sheet
// of the pack and every tag as frames of placed items; what does not fit comes
// back as a problem at the line of the definition that it came from.
//
// One file makes one printed sheet. A template decides wording and order and
// computes nothing: numbers come from package packs, places on the page from
// package layout. All fixed words stand in one catalogue, package words.
package templates
