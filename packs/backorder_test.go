package packs_test

import (
	"fmt"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// TestBackOrder: parts that come off one after the other by their after: lines, and
// go back in any order. What came off before a part goes back after it; an after: line
// of the put-back that says otherwise is the author's word and stands.
func TestBackOrder(t *testing.T) {
	t.Parallel()
	done, not := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(2, 5).Draw(t, "parts")
		after := make([][]bool, n) // by what the lines say of two steps themselves
		back := rapid.Permutation(indexes(n)).Draw(t, "order back")
		place := make([]int, n)
		for k, i := range back {
			place[i] = k
		}
		said := map[[2]int]bool{} // the first goes back after the second, as the author says
		var parts, off, on strings.Builder
		for i := range n {
			fmt.Fprintf(&parts, "  part-%d: {name: Part %d}\n", i, i)
			after[i] = make([]bool, n)
			lines := []string{"start: so it is"}
			for k := range i {
				if after[i][k] = rapid.IntRange(0, 1).Draw(t, "after") == 0; after[i][k] {
					lines = append(lines, fmt.Sprintf("off-%d: so it is", k))
				}
			}
			fmt.Fprintf(&off, "      - {step: off-%d, after: {%s}, do: Take it off., remove: [part-%d], into: bench}\n", i, strings.Join(lines, ", "), i)
		}
		for k, i := range back {
			lines := []string{"start: so it is"}
			for _, j := range back[:k] {
				if rapid.IntRange(0, 5).Draw(t, "said") == 0 {
					said[[2]int{i, j}] = true
					lines = append(lines, fmt.Sprintf("on-%d: it goes in over it", j))
				}
			}
			fmt.Fprintf(&on, "      - {step: on-%d, after: {%s}, do: Put it on., fit: [part-%d]}\n", i, strings.Join(lines, ", "), i)
		}
		text := "pack: 1\nequipment: {tag: X-1, name: Machine}\njob: {number: \"1\", title: Law, revision: A, issued: 2026-03-02}\nparts:\n" + parts.String() +
			"steps:\n  - section: Off\n    steps:\n      - {step: start, after: {}, do: Lock it.}\n" + off.String() + "  - section: Back\n    steps:\n" + on.String()
		wrong := ""
		for i := range n {
			for k := range i {
				if after[i][k] && place[k] < place[i] && !said[[2]int{i, k}] {
					wrong = fmt.Sprintf("part %d goes back before part %d", k, i)
				}
			}
		}
		_, err := load(text)
		if (err != nil) != (wrong != "") {
			t.Fatalf("check says %v, and by hand: %q\n%s", err, wrong, text)
		}
		if wrong == "" {
			done++
		} else {
			not++
		}
	})
	if done < 10 || not < 10 {
		t.Errorf("only %d orders that can be done and %d that cannot were tried", done, not)
	}
}

func indexes(n int) []int {
	out := make([]int, n)
	for i := range out {
		out[i] = i
	}
	return out
}

// A step without places that comes after one at several reaches at each of them what is there:
// with both covers off the bearing of one end was told to go back before the cover of the other.
func TestBackOrderAtSeveralPlaces(t *testing.T) {
	t.Parallel()
	const head = `
pack: 1
equipment: {tag: FN-11, name: Fan}
job: {number: WO-1, title: t, revision: A, issued: 2026-03-02}
places: {end: {DE: {name: drive end}, NDE: {name: non-drive end}}}
parts: {cover: {name: Cover, each: end}, bearing: {name: Bearing, each: end}, rod: {name: Rod}}
containers: {C1: {name: Covers, kind: box, each: end}, C2: {name: Bearings, kind: box, each: end}, C3: {name: Rod, kind: box}}
steps:
  - section: Off
    steps:
    - {step: cover, each: end, after: {}, do: Take the cover off., remove: [cover], into: C1}
    - {step: bearings, after: {%s: it is in front}, do: Take both bearings and the rod off., remove: [bearing, rod], into: {bearing: C2, rod: C3}}
  - section: Back
    steps:
%s`
	line := map[string]string{
		"b/DE": "fit: [bearing/DE]", "b/NDE": "fit: [bearing/NDE]", "c/DE": "fit: [cover/DE]", "c/NDE": "fit: [cover/NDE]", "rod": "fit: [rod]",
	}
	rapid.Check(t, func(t *rapid.T) {
		order := rapid.Permutation([]string{"b/DE", "b/NDE", "c/DE", "c/NDE", "rod"}).Draw(t, "order")
		after := rapid.SampledFrom([]string{"cover", "cover/DE"}).Draw(t, "after")
		at := map[string]int{}
		var steps strings.Builder
		for i, k := range order {
			at[k] = i
			fmt.Fprintf(&steps, "    - {step: s%d, after: {bearings: they are off}, do: Put it on., %s}\n", i, line[k])
		}
		// By hand: of both covers each is in front of its own bearing and of the rod; of one that
		// is named alone the author means all that the step does.
		wrong := at["b/DE"] > at["c/DE"] || at["rod"] > at["c/DE"] || after == "cover" && (at["b/NDE"] > at["c/NDE"] || at["rod"] > at["c/NDE"]) ||
			after == "cover/DE" && at["b/NDE"] > at["c/DE"]
		text := fmt.Sprintf(head, after, steps.String())
		if _, err := load(text); (err != nil) != wrong {
			t.Fatalf("check says %v, and by hand wrong: %v\n%s", err, wrong, text)
		}
	})
}
