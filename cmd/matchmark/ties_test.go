package main

import (
	"slices"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates"
)

// A tag and the paper are tied in four ways, so that one may fail: the mark on the
// line of the step that fills it, the mark on the row that empties it, the stub on
// the register, and the list of what must be empty.
func TestTagAndPaperAreTiedFourWays(t *testing.T) {
	t.Parallel()
	for _, starter := range starters(t) {
		jb, pack := composed(t, starter, templates.Options{Paper: layout.A4})
		items := stepItems(jb, pack)
		for _, tag := range jb.Tags {
			if tag.Spare {
				continue
			}
			for _, m := range tag.In {
				if tag.Part == nil && !onStep(items[m.Step], tag.Mark) {
					t.Errorf("%s: step %s does not name %s, which it fills", starter, m.Step.No, tag.Mark)
				}
			}
			for _, m := range tag.Out {
				if tag.Part == nil && !onStep(items[m.Step], tag.Mark) {
					t.Errorf("%s: row %s does not name %s, which it empties", starter, m.Step.No, tag.Mark)
				}
			}
			if !onRegister(pack, tag) {
				t.Errorf("%s: the register has no line with a tick for the stub of %s", starter, tag.Mark)
			}
			if tag.Kind == job.HangTag && texts(pack.Tags, tag.Code) < 2 {
				t.Errorf("%s: the code of %s is not on tag and stub in words", starter, tag.Mark)
			}
		}
		for _, c := range jb.Containers {
			if len(c.Out) > 0 && !mustBeEmpty(jb, pack, c) {
				t.Errorf("%s: no step says that %s must be empty", starter, c.Mark)
			}
		}
	}
}

// onStep reports whether a mark stands on the pages of work below the number of a step
// and above the next one.
func onStep(items []layout.Item, mark string) bool {
	return slices.ContainsFunc(items, func(it layout.Item) bool {
		text, ok := it.Shape.(layout.Text)
		return ok && text.S == mark
	})
}

// onRegister reports whether the register has the mark of a tag and a tick box
// on its card.
func onRegister(pack *templates.Pack, tag *job.Tag) bool {
	for _, f := range pack.Pages.BySheet() {
		if f.Sheet != "register" {
			continue
		}
		in := false // the card of the tag
		for _, it := range f.Items {
			if text, ok := it.Shape.(layout.Text); ok && text.Face == layout.Bold && text.Size == layout.Limit.Size {
				in = text.S == tag.Mark
			}
			if in && it.Role == layout.RoleTick {
				return true
			}
		}
	}
	return false
}

// texts counts how often a text is printed in the typeface of codes, in one line or
// several.
func texts(doc *layout.Doc, want string) int {
	n := 0
	for _, f := range doc.BySheet() {
		all := ""
		for _, it := range f.Items {
			if text, ok := it.Shape.(layout.Text); ok && text.Face == layout.Mono {
				all += " " + text.S
			}
		}
		n += strings.Count(all, " "+want)
	}
	return n
}

// mustBeEmpty reports whether a step lists a container as empty, in its data and,
// with a box to tick, on paper.
func mustBeEmpty(jb *job.Job, pack *templates.Pack, c *job.Container) bool {
	for _, s := range jb.Sections {
		for _, st := range s.Steps {
			if !slices.ContainsFunc(st.Empty, func(x job.Emptied) bool { return x.In == c }) {
				continue
			}
			return slices.ContainsFunc(pack.Pages.Pages, func(f layout.Frame) bool {
				for i, it := range f.Items {
					text, ok := it.Shape.(layout.Text)
					if ok && text.S == c.Mark && i > 0 && f.Items[i-1].Role == layout.RoleTick && it.Ref == any(c.At) {
						return true
					}
				}
				return false
			})
		}
	}
	return false
}
