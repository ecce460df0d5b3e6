// Package align works out the alignment of a coupling: from dial readings to what each
// foot of the movable machine is raised and moved by.
//
// Setup.Ladder gives the lines of the working before anything is read, so that a sheet can
// print them with boxes; Setup.Work fills them in and gives the moves. Both go through the
// same lines. Readings of slackened feet go to SoftFoot; Growth turns heat into a target offset.
//
// # Signs, used everywhere
//
//	along    from the plane of the dial, toward the feet of the movable machine, positive.
//	         In reverse dials it is the plane of the dial on the stationary hub
//	up       positive: the movable shaft stands high; a move of + raises the foot
//	right    positive, looking along the shaft from the movable machine toward the
//	         stationary one: the movable shaft stands right; a move of + goes right
//	dial     positive when its stem is pushed in; zeroed at the top
//	gap      a face dial on the side that looks at the other hub reads + where the gap is
//	         smaller; on the back of that face its sign is turned round, and Setup.FaceBack
//	         says so
//	sag      how much the bracket bends, positive: a dial zeroed at the top reads 2 s too
//	         low at the bottom and s at the sides
//
// # Numbers
//
// All values are exact: readings and distances as typed, and every line is a sum of them
// with factors. Nothing is rounded but by Setup.Told, to what the dial reads.
//
// # What is refused
//
// A missing reading, distance or sag (write 0 if the bracket was tried and does not sag),
// feet that lie at one place, limits without a source or not told for the speed. Limits are
// the source's: none are built in.
package align
