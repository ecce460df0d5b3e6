package step

import "testing"

// A cap that was bolted on for a reading had no place from which to fetch it, and none to lay it
// back: what is not off, or lies nowhere, has none.
func TestWhatIsOnForAWhileHasItsPlaces(t *testing.T) {
	t.Parallel()
	said := saidIn(t, `
pack: 1
equipment: {tag: FN-11, name: Fan}
job: {number: WO-1, title: Fan, revision: A, issued: 2026-03-02}
parts: {cap: {name: Cap}, bolt: {name: Bolt, count: 4}, jack: {name: Jack, aid: yes}}
containers: {C1: {name: Cap, kind: box, pockets: [S]}, C2: {name: Bolts, kind: bag}}
steps:
  - section: Apart
    steps:
    - {step: off, do: "Take the cap off.", remove: [cap, bolt], into: {cap: C1/S, bolt: C2}}
    - {step: try, do: "Cap on, read, cap off.", fit-for-now: [cap, bolt, jack], take-out-again: [jack, bolt, cap]}
    - {step: on, do: "Cap on.", fit: [cap, bolt]}
    - {step: jacked, do: "Jack it.", fit-for-now: [jack], take-out-again: [jack]}
`)
	inTurn(t, "try", said["try"], "for a while", "from", "C1/S", "1 Cap", "from", "C2", "4 Bolt", "1 Jack", "take out again", "1 Jack", "into", "C2", "4 Bolt", "into", "C1/S", "1 Cap")
	inTurn(t, "jacked", said["jacked"], "for a while 1 Jack", "take out again 1 Jack")
}
