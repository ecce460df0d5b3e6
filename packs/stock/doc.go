// Package stock knows what tags and labels are printed on: pages that hold several in a
// grid, and rolls that carry one after the other. A stock is plain data; its name is its
// measures. The built-in ones are cut from plain or synthetic sheets of A4 or Letter, or
// come on rolls; a site describes its own in the site file.
//
// All lengths are millimetres. The package knows no paper, no YAML and no job.
package stock
