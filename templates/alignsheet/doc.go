// Package alignsheet sets the alignment sheet: how the dials are set up, soft foot, a
// table of the sets of readings with the lines that lead to what each foot is moved by,
// a box a set, and a worked example; and the line of a step that points to it.
package alignsheet
