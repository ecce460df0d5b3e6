package main

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// worst are the definitions that cost the most for their size, none of them longer
// than a planner with a script would write: assemblies inside assemblies, very many
// parts of one, one cover off and on again, everything at very many places, very many
// heats, and a long job with a mistake in it.
func worst() []struct{ name, text string } {
	return []struct{ name, text string }{
		{"assemblies nested 600 deep", nestedAssemblies(600)},
		{"2000 parts of one assembly", partsOfOne(2000)},
		{"one cover off and on 2000 times", offAndOn(2000)},
		{"each over 200 places", overPlaces(200)},
		{"80 heats", manyHeats(80)},
		{"2000 steps, 5000 after", longJob(2000)},
		{"1 MB with one mistake", megabyte()},
	}
}

const worstHead = "pack: 1\nequipment: {tag: X-1, name: Machine}\njob: {number: \"1\", title: Law, revision: A, issued: 2026-03-02}\n"

func nestedAssemblies(n int) string {
	return worstHead + "parts:\n  a0: {name: Assembly}\n" + lines(n, "", func(i int) string { return fmt.Sprintf("  a%d: {name: Assembly %d, of: a%d}\n", i+1, i+1, i) }) +
		"steps:\n  - {step: s, do: Take it off., remove: [a0], into: bench}\n" +
		lines(n, "", func(i int) string {
			return fmt.Sprintf("  - {step: s%d, do: Take it off., remove: [a%d], into: bench, where: bench}\n", i, i+1)
		})
}

func partsOfOne(n int) string {
	return worstHead + "parts:\n  a: {name: Assembly}\n" + lines(n, "  p%[1]d: {name: Part %[1]d, of: a}\n") +
		"steps:\n  - {step: s, do: Take it off., remove: [a], into: bench}\n" +
		lines(n, "  - {step: s%[1]d, do: Take it off., remove: [p%[1]d], into: bench, where: bench}\n")
}

func offAndOn(n int) string {
	return worstHead + "parts:\n  c: {name: Cover}\nsteps:\n" +
		lines(n, "  - {step: o%[1]d, do: Take it off., remove: [c], into: bench}\n  - {step: f%[1]d, do: Put it on., fit: [c]}\n")
}

func overPlaces(n int) string {
	return worstHead + fmt.Sprintf("places:\n  v: {names: 1 to %d}\n", n) +
		"parts:\n" + lines(10, "  p%[1]d: {name: Part %[1]d, each: v}\n") +
		"dimensions:\n" + lines(4, "  D1%d: {what: Gap, each: v, from: {p0: face}, to: {p1: face}, left: 0.30 to 0.60 mm, source: sheet}\n") +
		"containers:\n  C1: {name: Parts, kind: bag, each: v}\nsteps:\n  - section: Strip it\n    each: v\n    steps:\n" +
		lines(4, "", func(i int) string {
			return fmt.Sprintf("      - {step: s%d, do: Take it off., measure: [D1%d], remove: [p%d], into: C1}\n", i, i, 9-i)
		}) +
		lines(6, "", func(i int) string {
			return fmt.Sprintf("      - {step: t%d, do: Take it off., remove: [p%d], into: C1}\n", i, 5-i)
		})
}

func manyHeats(n int) string {
	data, err := os.ReadFile(filepath.Join(testdata, "good", "heat-coupling.yaml"))
	if err != nil {
		panic(err)
	}
	text := string(data)
	for _, p := range [][2]string{
		{"parts:\n", fmt.Sprintf("places: {pump: {names: 1 to %d}}\nparts:\n", n)},
		{"name: Pump shaft", "name: Pump shaft, each: pump"}, {"name: Coupling hub,", "name: Coupling hub, each: pump,"}, {"name: Key 32 x 18 x 140", "name: Key 32 x 18 x 140, each: pump"},
		{"what: Hub face to shaft end\n", "what: Hub face to shaft end\n    each: pump\n"}, {"what: Bore of the coupling hub\n", "what: Bore of the coupling hub\n    each: pump\n"},
		{"what: Seat of the coupling hub\n", "what: Seat of the coupling hub\n    each: pump\n"}, {"what: Coupling hub\n", "what: Coupling hub\n    each: pump\n"},
		{"name: Hub and key,", "name: Hub and key, each: pump,"}, {"- section: Hub off\n", "- section: Hub off\n    each: pump\n"},
	} {
		if !strings.Contains(text, p[0]) {
			panic("the heat of the coupling has no " + p[0])
		}
		text = strings.Replace(text, p[0], p[1], 1)
	}
	return text
}

// longJob has n steps with two or three after: each, half of them that take off.
func longJob(n int) string {
	return worstHead + "parts:\n" + lines(n/2, "  p%[1]d: {name: Part %[1]d}\n") + "steps:\n" +
		lines(n/2, "", func(i int) string {
			return fmt.Sprintf("  - {step: s%d, after: {%s}, do: Take it off., remove: [p%d], into: bench}\n", i, afterThose(i, "s%d: it is in front", 1, 2, 5), i)
		}) +
		lines(n/2, "", func(i int) string {
			return fmt.Sprintf("  - {step: t%d, after: {%s}, do: Put it back., fit: [p%d]}\n", i, afterThose(n/2-i, "s%d: it is off", 1, 3), n/2-1-i)
		})
}

func afterThose(i int, format string, back ...int) string {
	var out []string
	for _, b := range back {
		if i >= b {
			out = append(out, fmt.Sprintf(format, i-b))
		}
	}
	return strings.Join(out, ", ")
}

// megabyte is a definition of 1 MB with one key spelt wrong in its middle.
func megabyte() string {
	text := worstHead + "parts:\n" + lines(3000, "  p%[1]d: {name: Part %[1]d}\n") + "steps:\n"
	words := strings.Repeat("Look at the face of it and wipe it clean. ", 5)
	for i := range 3000 {
		key := "do"
		if i == 1500 {
			key = "doo"
		}
		text += fmt.Sprintf("  - {step: s%d, %s: \"%s\", remove: [p%d], into: bench}\n", i, key, words, i)
	}
	return text
}

// lines repeats a line with its number, or what a function makes of it.
func lines(n int, format string, of ...func(int) string) string {
	var b strings.Builder
	for i := range n {
		if len(of) > 0 {
			b.WriteString(of[0](i))
			continue
		}
		fmt.Fprintf(&b, format, i)
	}
	return b.String()
}

// BenchmarkWorst is check of each.
func BenchmarkWorst(b *testing.B) {
	for _, w := range worst() {
		b.Run(strings.ReplaceAll(w.name, " ", "-"), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				run([]string{"check", "-"}, strings.NewReader(w.text), &strings.Builder{}, &strings.Builder{})
			}
		})
	}
}
