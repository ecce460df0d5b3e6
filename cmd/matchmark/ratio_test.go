package main

import (
	"fmt"
	"strings"
	"testing"
	"testing/fstest"

	"matchmark/packs"
)

// usualJob is a job of so many machines, 16 at most, of twenty places each with six steps, three
// dimensions and two containers: one is what an outage has of a machine.
func usualJob(machines int) string {
	each := func(format string) string {
		return lines(machines, "", func(m int) string {
			return strings.NewReplacer("{m}", fmt.Sprint(m), "{letter}", string(rune('A'+m)),
				"{1}", fmt.Sprint(3*m+1), "{2}", fmt.Sprint(3*m+2), "{3}", fmt.Sprint(3*m+3), "{cover}", fmt.Sprint(2*m+1), "{bearing}", fmt.Sprint(2*m+2)).Replace(format)
		})
	}
	return worstHead + "places:\n" + each("  v{m}: {names: {letter}1 to {letter}20}\n") +
		"instruments: {gauge: {name: Depth gauge, range: 0 to 150 mm, reads: 0.02 mm}}\nparts:\n" +
		each(`  a{m}: {name: "Cover {m}", each: v{m}}
  b{m}: {name: "Bearing {m}", each: v{m}}
  c{m}: {name: "Shaft {m}", each: v{m}}
`) + "dimensions:\n" + each(`  D{1}: {what: "Gap at the bearing {m}", each: v{m}, from: {b{m}: outer face}, to: {c{m}: end face}, by: gauge, left: 0.30 to 0.60 mm, source: sheet 1}
  D{2}: {what: "Stand-off of the bearing {m}", each: v{m}, from: {b{m}: outer face}, to: {c{m}: end face}, by: gauge, left: as found +/- 0.10 mm, source: sheet 2}
  D{3}: {what: "Depth of the seat {m}", each: v{m}, from: {b{m}: inner face}, to: {c{m}: end face}, by: gauge, left: at least 12.00 mm, source: sheet 3}
`) + "containers:\n" + each(`  C{cover}: {name: "Cover {m}", kind: box, each: v{m}}
  C{bearing}: {name: "Bearing {m}", kind: box, each: v{m}}
`) + "steps:\n" + each(`  - section: Taking apart {m}
    steps:
      - {step: cover{m}, each: v{m}, do: Take the cover off and look at it., remove: [a{m}], into: C{cover}}
      - {step: gaps{m}, each: v{m}, do: Measure the gap and the seat of the bearing., measure: [D{1}, D{2}, D{3}]}
      - {step: bearing{m}, each: v{m}, do: Take the bearing off., remove: [b{m}], into: C{bearing}}
`) + each(`  - section: Putting together {m}
    steps:
      - {step: bearing-on{m}, each: v{m}, do: Put the bearing on., fit: [b{m}], from: C{bearing}}
      - {step: set{m}, each: v{m}, do: Set the gap., set: [D{1}, D{2}, D{3}]}
      - {step: cover-on{m}, each: v{m}, do: Put the cover on., fit: [a{m}], from: C{cover}}
`)
}

// TestUsualJob: the jobs that are timed are printed without an error, and are as large as is
// said.
func TestUsualJob(t *testing.T) {
	for _, machines := range []int{1, 10} {
		if machines > 1 {
			longTest(t)
		}
		jb, problems := proof(fstest.MapFS{"x.yaml": {Data: []byte(usualJob(machines))}}, packs.Inputs{Definition: "x.yaml"})
		steps := 0
		for _, s := range jb.Sections {
			steps += len(s.Steps)
		}
		if problems.Errors() > 0 || steps != 120*machines || len(jb.Dims) != 60*machines || len(jb.Tags) < 40*machines {
			t.Errorf("%d steps, %d dimensions, %d tags: %.900v", steps, len(jb.Dims), len(jb.Tags), problems)
		}
	}
}

// BenchmarkUsual is check and print of a job of 120 steps, 60 dimensions and 40 tags, and of
// one ten times as large, which is to cost twelve times as much at the most.
func BenchmarkUsual(b *testing.B) {
	for _, machines := range []int{1, 10} {
		text := usualJob(machines)
		for _, args := range [][]string{{"check", "-"}, {"print", "-", "--replace", "--out", b.TempDir()}} {
			b.Run(fmt.Sprintf("%d-steps/%s", 120*machines, args[0]), func(b *testing.B) {
				b.ReportAllocs()
				for b.Loop() {
					if code := run(args, strings.NewReader(text), &strings.Builder{}, &strings.Builder{}); code != exitDone {
						b.Fatal(code)
					}
				}
			})
		}
	}
}

// TestLongLists: a section of very many steps is printed, and so are very many sections.
// The one stood in one band of the sheet of all steps, the others in one block of the front
// sheet, both higher than a page, and the job was refused.
func TestLongLists(t *testing.T) {
	steps := "parts:\n" + lines(150, "  p%[1]d: {name: Part %[1]d}\n") + "steps:\n  - section: One\n    steps:\n" +
		lines(150, "      - {step: s%[1]d, do: Take part %[1]d off and write where the other end of its long cable goes., remove: [p%[1]d], into: bench}\n")
	sections := "steps:\n" + lines(300, "  - {section: Station %[1]d of the line, steps: [{step: s%[1]d, do: Wipe the rail clean with a dry rag.}]}\n")
	for _, text := range []string{steps, sections} {
		files := fstest.MapFS{"x.yaml": {Data: []byte(worstHead + text)}}
		_, problems := proof(files, packs.Inputs{Definition: "x.yaml"})
		for _, p := range problems {
			if strings.HasPrefix(p.Code, "too-") {
				t.Errorf("%s %s", p.Pos, p.Message)
			}
		}
	}
}
