package main

import (
	"bytes"
	"fmt"
	"testing"
	"testing/fstest"

	"matchmark/packs"
)

// TestOutsideRatios: how fine the instrument has to be, as check says it. Ten steps in the
// tolerance are the rule of ten (1:10 text of a GB/T 3177 summary: 0.1 mm is read to
// 0.01 mm), four are the least of ANSI/NCSL Z540.3 5.3 where nothing else is known
// (Castrup, Risk analysis methods for complying with Z540.3).
func TestOutsideRatios(t *testing.T) {
	t.Parallel()
	for reads, want := range map[string]string{"0.01 mm": "", "0.011 mm": "[coarse]", "0.025 mm": "[coarse]", "0.026 mm": "[too-coarse]"} {
		text := fmt.Sprintf(`pack: 1
equipment: {tag: PU-2, name: Rinse pump}
job: {number: WO-31, revision: A, issued: 2026-03-02, title: Seal change}
parts: {shaft: {name: Shaft}, cover: {name: Cover}}
instruments: {gauge: {name: Depth gauge, range: 0 to 50 mm, reads: %s}}
dimensions:
  D1: {what: Gap behind the cover, kind: gap, from: {shaft: end face}, to: {cover: inner face}, by: gauge, left: 20.00 +/- 0.05 mm, source: seal sheet 2}
steps:
  - {step: gap, do: Measure the gap., measure: [D1]}
`, reads)
		job, problems := proof(fstest.MapFS{"p.yaml": {Data: []byte(text)}}, packs.Inputs{Definition: "p.yaml"})
		var out bytes.Buffer
		report(&out, problems, job.Files)
		for _, code := range []string{"[coarse]", "[too-coarse]"} {
			if got := bytes.Contains(out.Bytes(), []byte(code)); got != (code == want) {
				t.Errorf("an instrument that reads to %s: want %q, check says\n%s", reads, want, out.String())
			}
		}
	}
}
