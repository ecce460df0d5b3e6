package revise_test

import (
	"strings"
	"testing"

	"matchmark/packs/revise"
)

// fetched is a machine with something in each list of what is fetched.
const fetched = `pack: 1
equipment: {tag: P-1, name: Pump}
job: {number: WO-1, title: Seal, revision: A, issued: 2026-03-02}
parts: {cover: {name: Cover}}
instruments:
  gauge: {name: Depth gauge, range: 0 to 150 mm, reads: 0.01 mm}
dimensions:
  D1: {what: Depth, kind: depth, of: {cover: spigot}, by: gauge, found: record to 0.01 mm}
tools:
  bar: {what: Pry bar, size: 600 mm, count: 1}
spares:
  ring: {what: Spare ring, size: 80 mm, count: 1}
consumables:
  oil: {what: Bearing oil, size: VG 46, count: 6 l}
containers: {C1: {name: Cover, kind: box}}
steps:
  - {step: off, do: Take the cover off and measure it., remove: [cover], into: C1, measure: [D1]}
  - {step: on, do: Put the cover on., fit: [cover]}
`

// What is fetched and is not as it was has its bar; what is fetched no more is named; nothing
// else is.
func TestWhatIsFetchedIsTold(t *testing.T) {
	t.Parallel()
	old, ok := load(fetched)
	if !ok {
		t.Fatal("the definition has problems")
	}
	for _, x := range []struct{ was, is, changed, gone string }{
		{"size: 600 mm", "size: 900 mm", "Pry bar", ""},
		{"size: 80 mm", "size: 90 mm", "Spare ring", ""},
		{"size: VG 46", "size: VG 68", "Bearing oil", ""},
		{"reads: 0.01 mm", "reads: 0.005 mm", "Depth gauge", ""},
		{"tools:\n  bar: {what: Pry bar, size: 600 mm, count: 1}\n", "", "", "Pry bar"},
		{"spares:\n  ring: {what: Spare ring, size: 80 mm, count: 1}\n", "", "", "Spare ring"},
		{"consumables:\n  oil: {what: Bearing oil, size: VG 46, count: 6 l}\n", "", "", "Bearing oil"},
		{"what: Bearing oil", "what: Gear oil", "Gear oil", "Bearing oil"},
	} {
		now, ok := load(strings.Replace(fetched, x.was, x.is, 1))
		if !ok {
			t.Errorf("%q for %q has problems", x.is, x.was)
			continue
		}
		since := revise.Since(old, now)
		var changed []string
		for _, c := range since.Others {
			changed = append(changed, c.Name)
		}
		if strings.Join(changed, ", ") != x.changed {
			t.Errorf("%q for %q: bars beside %q, want %q", x.is, x.was, changed, x.changed)
		}
		if strings.Join(since.Gone, ", ") != x.gone {
			t.Errorf("%q for %q: told as gone %q, want %q", x.is, x.was, since.Gone, x.gone)
		}
	}
}
