package main

import (
	"io"
	"os"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/templates"
)

// starterInputs are the inputs of the pack that the benchmarks print.
var starterInputs = packs.Inputs{Definition: "exhaust-fan.yaml"}

// BenchmarkCheck is check of one definition, both papers composed.
func BenchmarkCheck(b *testing.B) {
	files := os.DirFS(startersDir)
	b.ReportAllocs()
	for b.Loop() {
		if _, problems := proof(files, starterInputs); problems.Errors() > 0 {
			b.Fatal(problems)
		}
	}
}

// BenchmarkPack reads, composes and paints a pack and its tags, and reports the
// time by page.
func BenchmarkPack(b *testing.B) {
	files := os.DirFS(startersDir)
	pages := 0
	b.ReportAllocs()
	for b.Loop() {
		jb, problems := packs.Load(files, starterInputs)
		if problems.Errors() > 0 {
			b.Fatal(problems)
		}
		pack, _ := templates.Compose(jb, templates.Options{Paper: layout.A4}, pdf.NewFaces(), problems)
		for _, doc := range []*layout.Doc{pack.Pages, pack.Tags} {
			if err := pdf.Write(io.Discard, doc); err != nil {
				b.Fatal(err)
			}
			pages += len(doc.Pages)
		}
	}
	b.ReportMetric(float64(b.Elapsed().Microseconds())/float64(pages), "µs/page")
}
