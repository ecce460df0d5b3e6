// Package revise holds two revisions of a job against each other and says in a planner's
// words what differs: steps, readings, containers and what each tag that hangs is worth.
//
// A step is the same in both when its key, its section and its place are; a reading, a
// container or a tag when its mark is. What a step is numbered is told apart from what it
// says, for a step put in above it moves all numbers below. A mark that stands for another
// thing in the new revision is told as such: its tag has to come off.
package revise
