package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// The watch of real hot work was left off the list where a hot pull on the same permit came
// below it: somebody has to stay after every flame, 29 CFR 1910.252(a)(2)(iii)(B). Only a step
// that makes ready for the pull has no flame of its own.
func TestEachFlameHasItsWatch(t *testing.T) {
	t.Parallel()
	data, err := os.ReadFile(filepath.Join(goodDir, "heat-coupling.yaml"))
	if err != nil {
		t.Fatal(err)
	}
	text := string(data)
	ready := "      - step: pull\n"
	for _, c := range []struct {
		name, step string
		rows       bool
	}{
		{"makes ready for the pull", "permit: [hot-work], do: 'Lay the blankets out, as sheet H1 says.'", false},
		{"welds before the pull, as its caution says", "permit: [hot-work], caution: [hot-work], do: Mend the torn bracket.", true},
		{"welds on a part of the pull, as its caution says", "permit: [hot-work], caution: [hot-work], do: Mend the bracket for H1.", true},
		{"welds on a part of the pull, as its words say", "permit: [hot-work], do: Weld the eye on for the puller of H1.", true},
		{"has nothing to do with the pull", "permit: [hot-work], do: Mend the torn bracket.", true},
	} {
		more := strings.Replace(text, ready, "      - {step: before, after: {shield: it is clear of oil then}, "+c.step+"}\n"+ready, 1)
		more = strings.Replace(more, "after: {shield: \"nothing", "after: {before: it is ready, shield: \"nothing", 1)
		list := between(sheetsOf(t, more)["cautions"], "Fire watch after", "Cautions in full")
		if got := strings.Contains(list, "1.3"); got != c.rows {
			t.Errorf("a step that %s has a watch of its own: %v, want %v:\n%s", c.name, got, c.rows, list)
		}
	}
}
