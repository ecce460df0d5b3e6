// Package lift computes a planned lift: what the load weighs and where its
// centre of gravity lies, what each sling leg carries, whether the load hangs
// level, what to shorten if it does not, and how far each piece of gear is used.
//
// Compute takes a Plan and gives a Result that carries its own working. Weigh
// adds up a body of revolution from its sections. Carry does the same for people
// who lift by hand, LayDown for the floor that the load is set down on, Haul for a
// tackle of blocks. MaterialNamed looks a density up in a table with its source.
//
// # Frame and units
//
// All points stand in the load's own frame: x and y lie in plan when the load
// is level, z is up, millimetres. The author chooses the origin. Masses, sling
// ratings and leg tensions are in kilograms, as riggers' charts and tags give
// them; a tension of 1 kg is the weight of 1 kg at standard gravity (see
// Kg.Newton). Angles are in degrees and, unless a name says otherwise, FROM THE
// HORIZONTAL.
//
// # What is exact
//
// The load is rigid, the legs are straight and do not stretch, the hook is one
// point that plumbs itself over the centre of gravity. Within this, all forces
// are solved in three dimensions: legs of different length, picks at different
// levels, a load that hangs out of level. Four legs on a rigid load cannot be
// solved by statics alone; see Sharing.
//
// # What is refused
//
// A missing mass or centre of gravity, a centre of gravity outside the picks or
// above a line of two picks, a leg that hangs slack, legs that do not meet, a leg
// flatter than 30° from horizontal, gear of another rating basis, a side pull
// on gear that takes none: each comes back as a Refusal that names the field.
// Nothing is guessed, clamped or left at a silent default. What the figures do not
// need, and the lift does, stands in Result.Unanswered: a lifting point or a
// spreader whose rating is not known, a centre of gravity said to be exact. A lift
// with any of it is not to be made.
//
// # Rounding
//
// Results are exact; words and figures of workings are rounded to one side: loads,
// shares used, tilts and heights needed up, what may be carried and room left down.
// Kg, Mm, Degree and Ratio have a method for each side, Figure has Text.
//
// The figures are planning figures. A competent person, the site's lift rules
// and the local code decide.
package lift
