// Package block sets what the blocks of several sheets are made of: lists with
// boxes, hazard notes, rows that flow, and the words for steps, pages and parts.
// A Composer has what they all need: the job, the words, the width of the sheet,
// and the pages on which things stood in the pass before.
package block
