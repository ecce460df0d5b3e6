package main

import (
	"io"
	"os"
	"strings"
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

// BenchmarkStages is each stage of a print by itself: reading and deciding the job,
// setting it on paper, painting it, and making the codes.
func BenchmarkStages(b *testing.B) {
	for _, starter := range []string{"exhaust-fan.yaml", "storm-pump.yaml"} {
		in := packs.Inputs{Definition: starter}
		files := os.DirFS(startersDir)
		jb, problems := packs.Load(files, in)
		if problems.Errors() > 0 {
			b.Fatal(problems)
		}
		compose := func() *templates.Pack {
			pack, _ := templates.Compose(jb, templates.Options{Paper: layout.A4}, pdf.NewFaces(), problems)
			return pack
		}
		stage := func(name string, do func()) {
			b.Run(strings.TrimSuffix(starter, ".yaml")+"/"+name, func(b *testing.B) {
				b.ReportAllocs()
				for b.Loop() {
					do()
				}
			})
		}
		stage("load", func() { packs.Load(files, in) })
		stage("compose", func() { compose() })
		pack := compose()
		paint := func(doc *layout.Doc) {
			if err := pdf.Write(io.Discard, doc); err != nil {
				b.Fatal(err)
			}
		}
		stage("paint-pack", func() { paint(pack.Pages) }) // its codes are made once, in the first round
		stage("paint-tags", func() { paint(pack.Tags) })
		stage("compose-and-paint-tags", func() { paint(compose().Tags) })
	}
}
