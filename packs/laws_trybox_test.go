package packs_test

import (
	"strings"
	"testing"
)

// "The new pack measured and written beside D20" was a tick on the paper of each further try,
// and what went in the second time stood nowhere. Words that only tell what is done have no
// need of a box, nor those beside the reading that they speak of. Common practice, no source.
func TestWhatAFurtherTryReadsHasABox(t *testing.T) {
	t.Parallel()
	for each, want := range map[string]bool{
		`[cover off, "shims changed, the new pack measured", cover on]`:     true,
		`[cover off, "shims changed, written beside D1", cover on]`:         true,
		`[cover off, "pack as D1", cover on]`:                               true,
		`[cover off, shims changed, D1, cover on]`:                          false,
		`[cover off, "shims changed, the new pack measured", D1, cover on]`: false,
		`[cover off, "pack as D1", D1, cover on]`:                           false,
		`[cover off, shims changed, cover on]`:                              false,
		`[cover off, "as on drawing D77", cover on]`:                        false, // no reading of this job
	} {
		text := lawHead + `parts: {shaft: {name: Input shaft}, shims: {name: Cover shims}}
dimensions:
  D1: {what: Pack under the cover, kind: thickness, of: {shims: pack}, found: not taken, left: 1.20 to 1.60 mm, nominal: 1.40 mm, source: s}
  D2: {what: Turning torque, kind: force, of: {shaft: end}, found: not taken, left: 3.0 to 5.0 N·m, nominal: 4.0 N·m, source: s}
steps:
  - section: Work
    steps:
      - {step: pack, do: Lay the pack in., set: [D1]}
      - {step: torque, do: Turn the shaft., set: [D2], until: D2 is in limits, tries: 3, each-try: EACH, still-out: tell the engineer}
`
		if told := toldOf(strings.Replace(text, "EACH", each, 1), "no-box"); len(told) > 0 != want {
			t.Errorf("%s: told %v, want %v", each, told, want)
		}
	}
}
