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
