package main

import (
	"bytes"
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"
	"testing/fstest"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/templates"
	catalogue "matchmark/templates/words"
)

// A whole is a random definition in the making: up to 400 steps, 200 containers, places
// crossed up to 12 by 4, grids of readings, long words, and words of other languages.
type whole struct {
	*rand.Rand
	out            strings.Builder
	each           []string
	parts          int
	at             []string // each: of every part, "" for none
	kept           []bool   // a container is made for it, else it goes to the bench
	measured       []bool
	long           bool // words that are longer than a column
	small, foreign bool
}

// wholeDefinition writes one. It is mostly without a mistake, for what is refused is
// never composed; a slip is put in now and then.
func wholeDefinition(seed uint64) string {
	w := &whole{Rand: rand.New(rand.NewPCG(seed, 7))}
	w.small, w.long, w.foreign = w.IntN(4) > 0, w.IntN(4) == 0, w.IntN(4) == 0
	w.writef("pack: 1\nequipment: {tag: %s, name: %q}\njob: {number: WO-%d, revision: %c, issued: 2026-03-02, title: %q}\n",
		[]string{"PU-2", "K-101/A", "11-MBA-10-AA001"}[w.IntN(3)], w.words(3), w.IntN(1e6), 'A'+rune(w.IntN(26)), w.words(4))
	w.places()
	w.things()
	w.work()
	text := w.out.String()
	if w.IntN(8) == 0 { // a slip
		i := w.IntN(len(text))
		text = text[:i] + []string{"", "x", ",", "/DE", "\u200b", "0"}[w.IntN(6)] + text[min(len(text), i+w.IntN(3)):]
	}
	return text
}

func (w *whole) writef(format string, a ...any) { fmt.Fprintf(&w.out, format, a...) }

// words are so many words of a sentence.
func (w *whole) words(n int) string {
	lists := [][]string{strings.Fields("bearing cover of the lower intermediate shaft with its seal ring and both lock nuts at the open end")}
	if w.long {
		lists = append(lists, []string{"Kurbelwellenhauptlagerdeckelschraube", "electrohydraulically", "counter-rotating", "8×M24×2.0", "nitrile/graphite/steel"})
	}
	if w.foreign {
		lists = append(lists, strings.Fields("крышка подшипника уплотнение Lagerdeckel Gehäuse étanchéité øvre ζεύξη półpanewka çelik"))
	}
	var out []string
	for range 1 + w.IntN(n) {
		list := lists[w.IntN(len(lists))]
		out = append(out, list[w.IntN(len(list))])
	}
	return strings.Join(out, " ")
}

func (w *whole) places() {
	w.each = []string{""}
	if w.IntN(3) == 0 {
		return
	}
	w.writef("places:\n  end:\n    DE: {name: %q}\n    NDE: {name: %q}\n", w.words(2), w.words(2))
	w.each = append(w.each, "end")
	if w.IntN(2) == 0 {
		w.writef("  valve: {names: 1 to %d}\n", 2+w.IntN(11))
		w.each = append(w.each, "valve")
		if w.small {
			w.each = append(w.each, "[valve, end]")
		}
		if w.small && w.IntN(3) == 0 {
			w.writef("  bolt:\n    A: {name: bolt A}\n    B: {name: bolt B}\n    C: {name: bolt C}\n    D: {name: bolt D}\n")
			w.each = append(w.each, "[valve, bolt]")
		}
	}
}

func (w *whole) things() {
	w.parts = 1 + w.IntN(8)
	if !w.small {
		w.parts = 20 + w.IntN(180)
	}
	w.writef("instruments: {gauge: {name: Depth gauge, range: 0 to 150 mm, reads: 0.02 mm}}\nparts:\n  frame: {name: Frame}\n")
	for i := range w.parts {
		each := ""
		if w.IntN(3) == 0 || w.small {
			each = w.each[w.IntN(len(w.each))]
		}
		w.at = append(w.at, each)
		w.kept = append(w.kept, w.IntN(4) > 0)
		w.measured = append(w.measured, i < 40 && w.IntN(3) == 0)
		w.writef("  p%d: {name: %q%s%s}\n", i, w.words(3), eachOf(each), []string{"", ", count: 8", ", renew: always"}[w.IntN(3)])
	}
	w.writef("dimensions:\n  D41: {what: Length of the frame, of: {frame: length}, by: gauge, left: 10.0 to 12.0 mm, source: sheet 1}\n")
	for i, m := range w.measured {
		if m {
			grid := []string{"", ", at: {across: [0-180°, 90-270°]}", ", at: {plane: [A, B, C, D], across: [0-180°, 45-225°, 90-270°, 135-315°, at the key]}", ", at: {around: [top, right, bottom, left, at the key]}"}[w.IntN(4)]
			w.writef("  D%d: {what: %q, from: {p%d: outer face}, to: {frame: end face}%s, by: gauge%s, left: %s, source: %q}\n", i+1, w.words(5), i, eachOf(w.at[i]), grid,
				[]string{"0.30 to 0.60 mm", "as found +/- 0.10 mm", "at least 12.00 mm", "8.0 +0.5/-0.0 mm"}[w.IntN(4)], w.words(3))
		}
	}
	w.writef("containers:\n")
	for i, k := range w.kept {
		if k {
			w.writef("  C%d: {name: %q, kind: %s%s%s}\n", i+1, w.words(3), []string{"bag", "box", "tray"}[w.IntN(3)], eachOf(w.at[i]), []string{"", ", keep: oiled", ", keep: dry and upright"}[w.IntN(3)])
		}
	}
	w.writef("  C999: {name: Frame, kind: box}\n")
}

// eachOf is the each: of a thing.
func eachOf(each string) string {
	if each == "" {
		return ""
	}
	return ", each: " + each
}

func (w *whole) work() {
	w.writef("steps:\n  - section: %q\n    steps:\n      - {step: look, do: %q, measure: [D41]}\n", w.words(3), "Look at the "+w.words(9)+".")
	for i := range w.parts {
		into := "bench"
		if w.kept[i] {
			into = fmt.Sprintf("C%d", i+1)
		}
		measure := ""
		if w.measured[i] {
			measure = fmt.Sprintf(", measure: [D%d]", i+1)
		}
		w.writef("      - {step: s%d%s, after: {}, do: %q%s, remove: [p%d], into: %s, back: %q}\n", i, eachOf(w.at[i]), "Take off the "+w.words(12)+".", measure, i, into, "Put back the "+w.words(6)+".")
	}
	w.writef("      - {step: last, after: {}, do: Take the frame off., remove: [frame], into: C999}\n  - reverse: [0]\n")
	text := w.out.String()
	name := text[strings.LastIndex(text, "- section: ")+len("- section: "):]
	name = name[:strings.Index(name, "\n")]
	w.out.Reset()
	w.out.WriteString(strings.TrimSuffix(text, "[0]\n") + "[" + name + "]\n")
	for i, m := range w.measured {
		if m {
			w.writef("  - {step: d%d%s, do: Set it., set: [D%d]}\n", i, eachOf(w.at[i]), i+1)
		}
	}
	w.writef("  - {step: length, do: Set the length., set: [D41]}\n")
}

// FuzzWhole: a random definition goes through check and print on both papers: no panic,
// every problem at a line of the file, nothing outside its page, nothing on top of
// anything, every mark on its sheets, the register in order.
func FuzzWhole(f *testing.F) {
	seeds := uint64(10)
	if testing.Short() {
		seeds = 3
	}
	for i := range seeds {
		f.Add(i)
	}
	f.Fuzz(func(t *testing.T, seed uint64) {
		text := wholeDefinition(seed)
		lines := strings.Count(text, "\n") + 1
		language := def.Tongues[seed%uint64(len(def.Tongues))]
		jb, problems := packs.Load(fstest.MapFS{"x.yaml": &fstest.MapFile{Data: []byte(text)}}, packs.Inputs{Definition: "x.yaml", Language: language})
		checkNamed(t, "check", problems, lines)
		for _, paper := range papers {
			pack, misfits := templates.Compose(jb, templates.Options{Paper: paper, Draft: problems.Errors() > 0}, pdf.NewFaces(), problems)
			checkNamed(t, "compose", misfits, lines)
			if problems.Errors() == 0 && misfits.Errors() == 0 {
				checkWhole(t, jb, pack)
			}
			for _, doc := range []*layout.Doc{pack.Pages, pack.Tags} {
				if len(doc.Pages) == 0 {
					continue
				}
				if err := pdf.Write(&bytes.Buffer{}, doc); err != nil {
					t.Errorf("not painted: %v", err)
				}
			}
		}
		if t.Failed() {
			t.Logf("seed %d:\n%.6000s", seed, text)
		}
	})
}

// checkWhole looks at all pages and tags of a pack that may be printed.
func checkWhole(t *testing.T, jb *job.Job, pack *templates.Pack) {
	t.Helper()
	sheets := map[string]string{}
	for _, doc := range []*layout.Doc{pack.Pages, pack.Tags} {
		for i, frame := range doc.Pages {
			checkFrame(t, "a random job", i+1, frame, false)
			if len(doc.Pages) < 80 {
				checkOverlaps(t, "a random job", i+1, frame)
			}
			var on strings.Builder
			for _, it := range frame.Items {
				if s, ok := it.Shape.(layout.Text); ok {
					on.WriteString(s.S + " ")
				}
			}
			for _, p := range frame.Parts {
				sheets[p.Sheet] += on.String()
			}
		}
	}
	in, err := catalogue.In(jb.Language)
	if err != nil {
		t.Fatal(err)
	}
	for _, n := range marksNeeded(jb) {
		if n.mark == catalogue.English.Step.Bench {
			n.mark = in.Step.Bench // no mark but a word
		}
		if !names(sheets[n.sheet], n.mark) {
			t.Errorf("%s is not on the %s: %s", n.mark, n.sheet, n.why)
		}
	}
}

// TestWholesArePrinted: most of the random definitions must come as far as the paper,
// else the law above would say nothing.
func TestWholesArePrinted(t *testing.T) {
	t.Parallel()
	printed, codes := 0, map[string]int{}
	for seed := range uint64(40) {
		_, problems := loadText(wholeDefinition(seed))
		if problems.Errors() == 0 {
			printed++
		}
		for _, p := range problems {
			if p.Severity == source.Error {
				codes[p.Code]++
			}
		}
	}
	if printed < 20 {
		t.Errorf("%d of 40 random definitions have no error; the others: %v", printed, codes)
	}
}
