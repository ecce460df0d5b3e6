package templates_test

import (
	"path/filepath"
	"reflect"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/templates"
)

// setAnew gives a job of which every text with a page number is set again when that number
// changes: a file that may hold one of the runes that stand for figures until then.
func setAnew(j *job.Job) *job.Job {
	anew := *j
	anew.Files = source.Files{"": []byte(`"\U000F0000"`)}
	return &anew
}

// samePack tells the first page that is not the same in two packs, or what else is not.
func samePack(a, b *templates.Pack) string {
	if len(a.Pages.Pages) != len(b.Pages.Pages) {
		return "the number of pages"
	}
	for i, f := range a.Pages.Pages {
		g := b.Pages.Pages[i]
		if layout.Dump(f) != layout.Dump(g) || !slices.Equal(f.Links, g.Links) {
			return layout.Readable(f) + "\nis elsewhere\n" + layout.Readable(g)
		}
	}
	if !reflect.DeepEqual(a.Pages.Outline, b.Pages.Outline) {
		return "the outline"
	}
	return ""
}

func mustBeAsSetAnew(t interface{ Fatal(...any) }, j *job.Job, paper layout.Paper) {
	kept, told := templates.Compose(j, templates.Options{Paper: paper}, pdf.NewFaces(), nil)
	isAsSetAnew(t, j, paper, kept, told)
}

// isAsSetAnew holds a pack and what does not fit against the same set anew.
func isAsSetAnew(t interface{ Fatal(...any) }, j *job.Job, paper layout.Paper, kept *templates.Pack, told source.Problems) {
	anew, again := templates.Compose(setAnew(j), templates.Options{Paper: paper}, pdf.NewFaces(), nil)
	if what := samePack(kept, anew); what != "" {
		t.Fatal("a page number that is put in later changes " + what)
	}
	if !reflect.DeepEqual(told, again) {
		t.Fatal("a page number that is put in later changes what is told", told, again)
	}
}

// What is kept from pass to pass, with its page numbers put in at the end, is what is set
// anew in each: otherwise a joint that is told once for all places is told three times.
func TestPageNumbersPutInLater(t *testing.T) {
	for _, file := range definitions(t) {
		t.Run(filepath.Base(file), func(t *testing.T) {
			t.Parallel()
			x := onA4(t, file)
			isAsSetAnew(t, x.jb, layout.A4, x.pack, x.misfits)
		})
	}
	mustBeAsSetAnew(t, loadIn(t, "triplex-pump.yaml", "pl"), layout.Letter)
	t.Run("random", func(t *testing.T) {
		many(t, 15, func(t *rapid.T) {
			j, err := loadText(definition(t))
			if err != nil {
				t.Skip(err)
			}
			mustBeAsSetAnew(t, j, layout.A4)
		})
	})
}
