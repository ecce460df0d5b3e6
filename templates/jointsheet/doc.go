// Package jointsheet sets the tightening sheet: for each joint its order drawn to
// scale, what the torque does to a bolt, a tick a fastener and round; and the lines of
// a step that point to it.
package jointsheet
