// Package joint computes a bolted joint and says in which order it is tightened.
//
// Compute takes a Spec: the thread, the property class or grade, how tight (a torque, a
// tensioner's pressure or force, or a wanted preload), the friction with its source, the
// scatter, the stages. It gives a Result with stress area, proof load, preload and its
// band, torque, stress as a share of the proof stress, one Round for each time the
// pattern is gone round, cautions as codes, and its working. Result.Told has the figures
// ready for paper in two units.
//
// Layout places the bolts of a circle, a rectangle, an oval, a split line or a list, and
// its Pattern has the order: crosswise, from the middle outward, or in turn. Loosening is
// the order backward.
//
// # Units and rounding
//
// What a planner wrote comes in as units.Quantity, exact. Inside, forces are newtons,
// torques newton metres, stresses MPa, lengths millimetres. Result.Told rounds once, to
// three figures, each in its safe direction: preload, clamping force, torque to set and
// proof load down; stress, and its share of proof, up; an area to the nearest.
//
// # What is refused
//
// A thread without a stress area, a class or grade that its standard does not give for
// the thread, friction that nobody stated or without its source, a torque or a pull that
// takes the bolt over its proof stress, a pressure without the tensioner's area, stages
// that contradict the torque: each comes back as a Refusal that names the field. Nothing
// is defaulted.
//
// # What is not in it
//
// Tension only: the twist of the shank while a nut is turned, bending, what a gasket
// creeps and what a bolt loses when its neighbour is tightened are not counted, and
// Result.Assumes says so. The figures are planning figures; the maker's sheet rules.
package joint
