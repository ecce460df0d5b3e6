package main

import (
	"fmt"
	"strings"
	"testing"
	"testing/fstest"

	"matchmark/packs"
)

// usualJob is a job with n places of six steps, three dimensions and two containers each:
// with 20 it is what an outage has of one machine.
func usualJob(n int) string {
	return worstHead + fmt.Sprintf("places:\n  v: {names: 1 to %d}\n", n) + `instruments: {gauge: {name: Depth gauge, range: 0 to 150 mm, reads: 0.02 mm}}
parts:
  a: {name: Cover, each: v}
  b: {name: Bearing, each: v}
  c: {name: Shaft, each: v}
dimensions:
  D1: {what: Gap at the bearing, each: v, from: {b: outer face}, to: {c: end face}, by: gauge, left: 0.30 to 0.60 mm, source: sheet 1}
  D2: {what: Stand-off of the bearing, each: v, from: {b: outer face}, to: {c: end face}, by: gauge, left: as found +/- 0.10 mm, source: sheet 2}
  D3: {what: Depth of the seat, each: v, from: {b: inner face}, to: {c: end face}, by: gauge, left: at least 12.00 mm, source: sheet 3}
containers:
  C1: {name: Cover, kind: box, each: v}
  C2: {name: Bearing, kind: box, each: v}
steps:
  - section: Taking apart
    each: v
    steps:
      - {step: cover, do: Take the cover off and look at it., remove: [a], into: C1}
      - {step: gaps, do: Measure the gap and the seat of the bearing., measure: [D1, D2, D3]}
      - {step: bearing, do: Take the bearing off., remove: [b], into: C2}
  - section: Putting together
    each: v
    steps:
      - {step: bearing-on, do: Put the bearing on., fit: [b], from: C2}
      - {step: set, do: Set the gap., set: [D1, D2, D3]}
      - {step: cover-on, do: Put the cover on., fit: [a], from: C1}
`
}

// TestUsualJob: the job that is timed has no error, and is as large as is said.
func TestUsualJob(t *testing.T) {
	jb, problems := loadText(usualJob(20))
	steps := 0
	for _, s := range jb.Sections {
		steps += len(s.Steps)
	}
	if problems.Errors() > 0 || steps != 120 || len(jb.Dims) != 60 || len(jb.Tags) < 40 {
		t.Errorf("%d steps, %d dimensions, %d tags: %.900v", steps, len(jb.Dims), len(jb.Tags), problems)
	}
}

// BenchmarkUsual is check of a job of 120 steps, 60 dimensions and 40 tags, and of one
// ten times as large.
func BenchmarkUsual(b *testing.B) {
	for _, n := range []int{20, 200} {
		text := usualJob(n)
		b.Run(fmt.Sprintf("%d-steps", 6*n), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				run([]string{"check", "-"}, strings.NewReader(text), &strings.Builder{}, &strings.Builder{})
			}
		})
	}
}

// TestLongSection: a section of very many steps is printed; it stood in one band of the
// sheet of all steps, which was higher than a page, and the job was refused.
func TestLongSection(t *testing.T) {
	const n = 150
	text := worstHead + "parts:\n" + lines(n, "  p%[1]d: {name: Part %[1]d}\n") + "steps:\n  - section: One\n    steps:\n" +
		lines(n, "      - {step: s%[1]d, do: Take part %[1]d off and write where the other end of its long cable goes., remove: [p%[1]d], into: bench}\n")
	files := fstest.MapFS{"x.yaml": {Data: []byte(text)}}
	_, problems := proof(files, packs.Inputs{Definition: "x.yaml"})
	for _, p := range problems {
		if strings.HasPrefix(p.Code, "too-") {
			t.Errorf("%s %s", p.Pos, p.Message)
		}
	}
}
