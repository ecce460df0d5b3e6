// Package heatsheet sets the sheets of what is drawn off or put on hot, and the
// lines of a step that point to them. What happens in time is worked out by package
// heat; here it is worded.
package heatsheet
