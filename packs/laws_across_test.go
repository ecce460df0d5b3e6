package packs_test

import (
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// acrossHead is a housing with a cover on each side; the gap of the left one is read with the
// right one tight.
const acrossHead = `pack: 1
equipment: {tag: P-9, name: Sump pump}
job: {number: WO-90, title: Seal change, revision: A, issued: 2026-03-02}
places:
  side:
    L: {name: left side, viewed-from: the motor}
    R: {name: right side, viewed-from: the motor}
parts:
  housing: {name: Pump housing}
  cover: {name: Gland cover, each: side, mass: 6 kg, behind: [cover-bolt]}
  cover-bolt: {name: Cover bolt M12, each: side, count: 4}
instruments:
  feeler: {name: Feeler gauge, range: 0.02 to 2.00 mm, reads: 0.01 mm}
dimensions:
  D1: {what: Gap under the left cover, kind: gap, from: {cover/L: flange}, to: {housing: joint}, with: side R tight, by: feeler, found: not taken, left: record to 0.01 mm, lost-by: nothing}
containers:
  C1: {name: Cover bolts, kind: box, each: side, keep: dry}
lay-down:
  Y1: {what: Bench, floor: 5 kN/m2}
big:
  B1: {part: cover, each: side}
joints:
  J1: {what: Cover bolts, parts: [cover-bolt], each: side, torque: 60 N·m, source: sheet 2}
tools:
  wrench: {what: Torque wrench, size: 20 to 100 N·m}
steps:
  - section: Open
    steps:
      - {step: covers, each: side, do: Take it off., loosen: [J1], remove: [cover-bolt, cover], into: {cover-bolt: C1, cover: Y1}}
  - section: Close
    steps:
`

// TestGapsAcross: in any order of the steps it is told that the gap is read while the cover
// across is off or loose, and that it is read while its own is off, and of no other order.
func TestGapsAcross(t *testing.T) {
	t.Parallel()
	steps := map[string]string{
		"on":    "{step: on, each: R, do: Put it on., fit: [cover, cover-bolt]}",
		"tight": "{step: tight, each: R, do: Tighten it., tighten: [J1]}",
		"left":  "{step: left, each: L, do: Put it on., fit: [cover, cover-bolt], tighten: [J1]}",
		"bare":  "{step: gap, do: Read it., set: [D1]}",
		"tried": "{step: gap, do: Read it., fit-for-now: [cover/L, {cover-bolt/L: 2}], set: [D1], take-out-again: [{cover-bolt/L: 2}, cover/L]}",
	}
	met := map[bool]int{}
	rapid.Check(t, func(t *rapid.T) {
		gap := rapid.SampledFrom([]string{"bare", "tried"}).Draw(t, "how")
		order := rapid.Permutation([]string{"on", "tight", "left", gap}).Draw(t, "order")
		at := func(key string) int { return slices.Index(order, key) }
		if at("on") > at("tight") || gap == "tried" && at("left") < at(gap) {
			t.Skip("told by other laws")
		}
		text := acrossHead
		for _, key := range order {
			text += "      - " + steps[key] + "\n"
		}
		codes := codesTold(text)
		told := strings.Join(codes, " ")
		for code, want := range map[string]bool{"not-as-told": at(gap) < at("tight"), "read-apart": gap == "bare" && at(gap) < at("left")} {
			met[want]++
			if got := slices.Contains(codes, code); got != want {
				t.Fatalf("%v: %s told %t, want %t: %s\n%s", order, code, got, want, told, text)
			}
		}
	})
	if met[true] == 0 || met[false] == 0 {
		t.Errorf("only one kind of order was met: %v", met)
	}
}
