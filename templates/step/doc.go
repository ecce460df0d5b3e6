// Package step sets one step of work, on the traveler and on the reassembly sheet:
// its cautions, what to do, what goes where, what guards it, what is loosened and
// tightened, its dimensions, and the hold that ends it.
package step
