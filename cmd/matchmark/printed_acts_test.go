package main

import (
	"strings"
	"testing"
)

// endsJob is a small job at two ends: a nut with another hand at one of them, a washer
// that is always renewed and kept until then, a cap with a tag at a lay-down spot.
const endsJob = `pack: 1
equipment: {tag: X-1, name: Fan}
job: {number: "3", title: Ends, revision: A, issued: 2026-03-02}
places:
  end:
    DE: {name: drive end, viewed-from: the motor}
    NDE: {name: non-drive end, viewed-from: the open end}
parts:
  nut: {name: Lock nut, each: end, thread: M90x2, hand: {DE: right, NDE: left}}
  washer: {name: Tab washer, each: end, renew: always}
  cap: {name: Cap, each: end, mass: 9 kg}
lay-down:
  Y1: {what: Timbers by the gate, floor: 5 kN/m2}
big:
  B1: {part: cap, each: end}
containers:
  C1: {name: Nut and washer, kind: box, each: end}
holds:
  W1: {kind: hold, what: The shaft is still., releases: foreman}
  W2: {kind: witness, what: The nut is off., releases: owner}
steps:
  - {section: Safe, steps: [{step: still, do: See that the shaft is still., hold: W1}]}
  - section: Ends
    each: end
    steps:
      - step: nut
        do: Take the nut and its washer off.
        missed: {NDE: left-hand thread}
        remove: [nut, washer]
        into: C1
      - step: cap
        do: Lift the cap away.
        remove: [cap]
        into: Y1
  - {section: Look, steps: [{step: look, do: Show the owner., hold: W2}]}
  - reverse: [Ends]
`

// Which way a nut comes off was left to whoever knows that one end is left-hand; at the
// other end nothing said that it is not. A left-hand thread is turned clockwise to come
// off: common practice, no source.
func TestNutSaysWhichWayItTurns(t *testing.T) {
	sheets := sheetsOf(t, endsJob)
	off, back := sheets["traveler"], sheets["reassembly"]
	wantAll(t, "the drive end", between(off, "Ends, drive end", "Ends, non-drive end"), "Lock nut: right-hand thread, off: counterclockwise, seen from the motor")
	wantAll(t, "the other end", between(off, "Ends, non-drive end", "Go on"), "Lock nut: left-hand thread, off: clockwise, seen from the open end")
	wantAll(t, "the put-back", back, "Lock nut: right-hand thread, on: clockwise, seen from the motor", "Lock nut: left-hand thread, on: counterclockwise, seen from the open end")
	// Seen from one side alone, one of the two nuts turns the other way: nobody is told
	// a side that is not sure.
	one := strings.ReplaceAll(endsJob, "viewed-from: the open end", "viewed-from: the motor")
	wantAll(t, "two ends seen from one side", sheetsOf(t, one)["traveler"], "left-hand thread, off: clockwise, looking at it")
}

// Old washers that were kept until the new ones are on came out of their box as good as
// the rest: nothing said that they are scrap then.
func TestOldPiecesAreCalledScrap(t *testing.T) {
	jb, pack := loaded(t, endsJob)
	sheets := sheetsOf(t, endsJob)
	wantAll(t, "the row", sheets["traveler"], "old Tab washer: kept until the new at R2.2 p. ", "old Tab washer: kept until the new at R1.2 p. ")
	wantAll(t, "the row that puts back", sheets["reassembly"], "new, from stores: Tab washer; count the old against the new, then the old to SCRAP")
	wantAll(t, "the register", sheets["register"], "old Tab washer: kept until the new at")
	wantAll(t, "the tag", tagText(pack, jb, "C1/DE"), "Tab washer (old")
}

// The step that takes a part to its spot named neither its tag nor where the spot is.
func TestBigPartsNameTagAndSpot(t *testing.T) {
	sheets := sheetsOf(t, endsJob)
	wantAll(t, "the traveler", sheets["traveler"], "into Y1 Timbers by the gate: 1 Cap · tag B1/DE", "1 Cap · tag B1/NDE")
	wantAll(t, "the register", sheets["register"], "Y1 Timbers by the gate")
}

// A witness stops nothing, and its box asked who released it. What is easily missed
// stood on a black field like an order.
func TestWitnessAndEasilyMissed(t *testing.T) {
	sheets := sheetsOf(t, endsJob)
	wantAll(t, "the hold", between(sheets["traveler"], "HOLD W1", "▶"), "released by: name and signature")
	witness := between(sheets["traveler"], "WITNESS W2", "Deviation")
	wantAll(t, "the witness point", witness, "seen by: name and signature")
	wantNone(t, "the witness point", witness, "released")
	wantAll(t, "the step", sheets["traveler"], "easily missed: left-hand thread")
}
