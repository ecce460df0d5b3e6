package packs_test

import (
	"fmt"
	"strings"
	"testing"
)

// BenchmarkLoad loads a job whose parts stand behind each other, one step each and one
// row to put it back: what binds the steps must not cost their number squared.
func BenchmarkLoad(b *testing.B) {
	for _, steps := range []int{120, 2000} {
		b.Run(fmt.Sprint(steps, " steps"), func(b *testing.B) {
			var parts, rows strings.Builder
			for i := range steps / 2 {
				behind, after := "", ""
				if i > 0 {
					behind, after = fmt.Sprintf(", behind: [part-%d]", i-1), fmt.Sprintf("off-%d: it is in front", i-1)
				}
				fmt.Fprintf(&parts, "  part-%d: {name: Part %d%s}\n", i, i, behind)
				fmt.Fprintf(&rows, "  - {step: off-%d, after: {%s}, do: Take it off., remove: [part-%d], into: bench}\n", i, after, i)
			}
			text := []byte("pack: 1\nequipment: {tag: X-1, name: Machine}\njob: {number: \"1\", title: Law, revision: A, issued: 2026-03-02}\nparts:\n" + parts.String() + "steps:\n" + rows.String())
			for b.Loop() {
				jb, problems := loadLaw(text)
				if problems.Errors() > 0 || len(jb.Sections) == 0 {
					b.Fatal(problems)
				}
			}
		})
	}
}
