package main

import (
	"maps"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"sync"
	"testing"
	"unicode"
	"unicode/utf8"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates"
)

// TestMarksWhereTheyBelong reads the text of the paper (pdftotext) and looks for
// every mark of the job on every sheet that its users go by.
func TestMarksWhereTheyBelong(t *testing.T) {
	longTest(t)
	t.Parallel()
	for _, starter := range starters(t) {
		for _, paper := range papers {
			t.Run(starter+" "+paper.Name, func(t *testing.T) {
				t.Parallel()
				jb, pack := composed(t, starter, templates.Options{Paper: paper})
				sheets := sheetTexts(t, pack.Pages)
				need := marksNeeded(jb)
				if len(need) < 30 {
					t.Errorf("only %d marks are looked for", len(need))
				}
				for _, n := range need {
					if !names(sheets[n.sheet], n.mark) {
						t.Errorf("%s is not on the %s: %s", n.mark, n.sheet, n.why)
					}
				}
			})
		}
	}
}

var sheetTextsRead sync.Map // from *layout.Doc to its texts

// sheetTexts joins the text of the pages of each sheet, as it is read back from paper, once for
// all tests.
func sheetTexts(t *testing.T, doc *layout.Doc) map[string]string {
	t.Helper()
	if out, known := sheetTextsRead.Load(doc); known {
		return out.(map[string]string)
	}
	out := map[string]string{}
	one := *doc
	one.Pages, one.Outline = doc.BySheet(), nil
	for i, text := range words(t, painted(t, &one), len(one.Pages)) {
		out[one.Pages[i].Sheet] += text + "\n"
	}
	sheetTextsRead.Store(doc, out)
	return out
}

// names reports whether a mark stands in a text by itself: C2 is not found in C21,
// nor C2/DE in C2/DE/screws.
func names(text, mark string) bool {
	part := func(r rune) bool { return r == '/' || unicode.IsLetter(r) || unicode.IsNumber(r) }
	for from := 0; ; {
		i := strings.Index(text[from:], mark)
		if i < 0 {
			return false
		}
		before, _ := utf8.DecodeLastRuneInString(text[:from+i])
		after, _ := utf8.DecodeRuneInString(text[from+i+len(mark):])
		if !part(before) && !part(after) {
			return true
		}
		from += i + 1
	}
}

// TestNamesTellsMarksApart: a mark is found by itself alone, at the ends of a text as well.
func TestNamesTellsMarksApart(t *testing.T) {
	t.Parallel()
	for text, want := range map[string]bool{
		"C2": true, "C2.": true, "(C2)": true, "into C2\nC21": true, "C21 C2": true, "p.\u00a0C2": true,
		"": false, "C": false, "C21": false, "C2/DE": false, "1/C2": false, "AC2": false, "C2ü": false, "éC2": false, "C2²": false,
	} {
		if names(text, "C2") != want {
			t.Errorf("C2 stands in %q: %v, want %v", text, !want, want)
		}
	}
}

// A needed mark has to stand on a sheet, and why.
type needed struct{ mark, sheet, why string }

// marksNeeded lists what has to be found where: on the sheets of work at the steps
// that deal with a thing, on the register whatever has a tag.
func marksNeeded(jb *job.Job) []needed {
	var out []needed
	at := func(mark string, st *job.Step, why string) {
		if st != nil {
			sheet := "traveler"
			if st.Section.Back {
				sheet = "reassembly"
			}
			if st.Later != "" {
				sheet = "close-out"
			}
			out = append(out, needed{mark, sheet, why + " at " + st.No})
		}
	}
	for _, d := range jb.Dims {
		mark := d.Mark
		if d.In != nil {
			mark = d.In.Mark // several places in one block
		}
		at(mark, d.FoundAt, "is measured")
		at(mark, d.LeftAt, "is set")
	}
	for _, s := range jb.Sections {
		for _, st := range s.Steps {
			for _, d := range st.Recall {
				at(d.Mark, st, "is compared")
			}
			for _, m := range st.Remove {
				at(whereMark(m.To), st, "takes "+m.Part.Name)
				if m.Part.Set != nil {
					at(m.Part.Set.Mark, st, m.Part.Name+" belongs to it")
				}
			}
			for _, m := range st.Fit {
				if !m.New {
					at(whereMark(m.From), st, "gives "+m.Part.Name+" back")
				}
			}
			if st.Hold != nil {
				at(st.Hold.Mark, st, "holds the work")
			}
		}
	}
	for _, tag := range jb.Tags {
		out = append(out, needed{tag.Mark, "register", "has a tag"})
		for _, s := range tag.Sets {
			out = append(out, needed{s.Mark, "register", "its parts are in " + tag.Mark})
		}
	}
	return out
}

// whereMark is the mark of where a part is kept; the bench has a word.
func whereMark(w job.Where) string {
	switch {
	case w.Container != nil && w.Pocket != "":
		return w.Container.Mark + "/" + w.Pocket
	case w.Container != nil:
		return w.Container.Mark
	case w.Spot != nil:
		return w.Spot.Mark
	case w.Bench:
		return "bench"
	}
	return job.ScrapMark
}

// TestNoMarkIsLost: each mark that stands in a definition at the head of a thing
// stands somewhere in the pack.
func TestNoMarkIsLost(t *testing.T) {
	longTest(t)
	t.Parallel()
	for _, starter := range starters(t) {
		t.Run(starter, func(t *testing.T) {
			t.Parallel()
			data, err := os.ReadFile(filepath.Join(startersDir, starter))
			if err != nil {
				t.Fatal(err)
			}
			jb, pack := composed(t, starter, templates.Options{Paper: layout.A4})
			all := strings.Join(slices.Sorted(maps.Values(sheetTexts(t, pack.Pages))), "\n")
			marks := regexp.MustCompile(`(?m)^  ([DCBYLHJWSKO][1-9]\d*):(?:.*\n(?:    .*\n)*)`).FindAllStringSubmatch(string(data), -1)
			if len(marks) < 10 {
				t.Fatalf("only %d marks are defined", len(marks))
			}
			for _, m := range marks {
				if otherBuild(jb, m[0]) {
					continue
				}
				if !regexp.MustCompile(`(^|[^\pL\pN])` + m[1] + `($|[^\pL\pN])`).MatchString(all) {
					t.Errorf("%s is nowhere in the pack", m[1])
				}
			}
		})
	}
}

// otherBuild reports whether an entry is for another build than the one that the
// job chose.
func otherBuild(jb *job.Job, entry string) bool {
	m := regexp.MustCompile(`\bif: ([\w-]+)`).FindStringSubmatch(entry)
	if m == nil {
		return false
	}
	for _, c := range jb.Choices {
		if c.Build == m[1] {
			return false
		}
	}
	return true
}

// TestTagsSayWhatTheyHoldAndWhere reads the text of each label by itself: mark and
// place, n of N, pieces, the steps, and every matched set of its parts.
func TestTagsSayWhatTheyHoldAndWhere(t *testing.T) {
	longTest(t)
	t.Parallel()
	for _, starter := range starters(t) {
		t.Run(starter, func(t *testing.T) {
			t.Parallel()
			jb, pack := composed(t, starter, templates.Options{Paper: layout.A4})
			pages := placedWords(t, painted(t, pack.Tags))
			byCode := map[string]string{}
			for i, f := range pack.Tags.Pages {
				for _, a := range labels(f) {
					byCode[codeIn(f, a)] = textWithin(pages[i], a)
				}
			}
			for _, tag := range jb.Tags {
				checkTag(t, tag, byCode[tag.Code])
			}
		})
	}
}

func checkTag(t *testing.T, tag *job.Tag, text string) {
	t.Helper()
	flat := strings.Join(strings.Fields(text), " ")
	want := []string{tag.Base, tag.Detail}
	if !tag.Spare {
		want = append(want, tag.Name, strconv.Itoa(tag.N)+" of "+strconv.Itoa(tag.Of), tag.Keep)
		if n := job.Pieces(tag.All()); n > 0 || tag.Container == nil || len(tag.Container.Pockets) == 0 {
			want = append(want, strconv.Itoa(n)+" piece")
		} else {
			want = append(want, " bag") // how many are in its bags, or in which bag
		}
	}
	switch {
	case tag.Spare:
	case tag.Scrap:
		want = append(want, "register no.") // all that goes to scrap has no room on a label
	default:
		for _, m := range append(append([]*job.Move{}, tag.In...), tag.Out...) {
			want = append(want, m.Step.No)
		}
		for _, m := range tag.In {
			if !strings.Contains(flat, "register no.") { // more kinds than the label has lines
				want = append(want, strings.Fields(m.Part.Name)...) // a line may end in a name, the code's text stands beside it
			}
			if m.Part.Set != nil {
				want = append(want, m.Part.Set.Mark)
			}
		}
	}
	for _, w := range want {
		if !strings.Contains(flat, strings.Join(strings.Fields(w), " ")) {
			t.Errorf("the tag of %s does not say %q: %s", tag.Mark, w, flat)
		}
	}
}

// codeIn is the text of the code of a label.
func codeIn(f layout.Frame, a area) string {
	for _, it := range f.Items {
		if m, ok := it.Shape.(layout.Modules); ok && a.holds(it) {
			return m.Content()
		}
	}
	return ""
}

// textWithin is the text of the words of a page whose middle lies in an area.
func textWithin(page []word, a area) string {
	var out []string
	for _, w := range page {
		if w.x >= a[0] && w.x <= a[2] && w.y >= a[1] && w.y <= a[3] {
			out = append(out, w.text)
		}
	}
	return strings.Join(out, " ")
}
