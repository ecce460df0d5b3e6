// Package liftsheet sets the lift sheets, and the lines of a step that point to
// them. What a lift needs is worked out by package lift; here it is worded.
package liftsheet
