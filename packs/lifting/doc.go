// Package lifting reads the gear, the cranes and the lifts of a definition and works
// every lift out. A refusal of the calculation becomes a problem at the key that
// it speaks of.
//
// What is written and what is worked out stand in one room: every input of a plan
// has a key and a place of its own, and what a rig passes over is told here.
package lifting
