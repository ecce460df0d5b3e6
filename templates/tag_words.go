package templates

import (
	"slices"
	"strconv"
	"strings"

	"matchmark/packs/job"
)

// numbered is "3 of 18", or that the tag is a spare.
func (c *composer) numbered(t *job.Tag) string {
	if t.Spare {
		return c.W.Tag.Spare
	}
	return c.W.Common.PieceOf.With(strconv.Itoa(t.N), strconv.Itoa(t.Of))
}

// tagName is what a tag is hung on.
func (c *composer) tagName(t *job.Tag) string {
	if t.Scrap {
		return c.W.Tag.ScrapBag
	}
	if t.Pocket != "" {
		return c.W.Tag.BagIn.With(t.Container.Name, t.Pocket)
	}
	return t.Name
}

// liesAt is the lay-down spot that a big part is taken to, nil if to none.
func liesAt(t *job.Tag) *job.Spot {
	for _, m := range t.In {
		if t.Part != nil && m.To.Spot != nil {
			return m.To.Spot
		}
	}
	return nil
}

// waysRound says which side of the parts in a container faces what.
func (c *composer) waysRound(t *job.Tag) []string {
	var out []string
	for _, m := range t.In {
		for _, r := range m.Part.WayRound {
			text := c.W.Tag.SideFaces.With(r.Mark, r.Faces)
			if t.Part == nil {
				text = r.Part.Name + c.W.Common.Colon + text // one of several in a container
			}
			if !slices.Contains(out, text) {
				out = append(out, text)
			}
		}
	}
	return out
}

// bagsInside names the bags that lie in a container and have tags of their own.
func (c *composer) bagsInside(t *job.Tag) string {
	if t.Container == nil || t.Pocket != "" || len(t.Container.Pockets) == 0 {
		return ""
	}
	return c.W.Tag.BagsInside.With(strings.Join(countedOn(t.Container.Pockets), ", "))
}

// countedOn are names with those that count on one by one as one: 1–16.
func countedOn(names []string) []string {
	var out []string
	for i := 0; i < len(names); {
		end := i + 1
		for end < len(names) && follows(names[end-1], names[end]) {
			end++
		}
		if end-i > 2 {
			out = append(out, names[i]+"–"+names[end-1])
		} else {
			out = append(out, names[i:end]...)
		}
		i = end
	}
	return out
}

// follows reports whether a name is the number after another.
func follows(one, next string) bool {
	n, err := strconv.Atoi(one)
	return err == nil && next == strconv.Itoa(n+1)
}

// inIt is how many pieces are in a container, without those in the bags inside it;
// of one that holds nothing but bags, how many of these.
func (c *composer) inIt(t *job.Tag) string {
	if n := bagsOnly(t); n > 0 {
		return c.W.Tag.Bags.With(strconv.Itoa(n))
	}
	return c.W.Pieces(job.Pieces(t.All()))
}

// bagsOnly is the number of bags in a container that holds nothing but bags, which
// are counted by themselves; 0 for any other.
func bagsOnly(t *job.Tag) int {
	if len(t.In) > 0 || t.Container == nil || t.Pocket != "" {
		return 0
	}
	return len(t.Container.Pockets)
}

// missedOf are the easily missed things of the steps that fill a container, where
// they name what is in it.
func missedOf(t *job.Tag) []string {
	var out []string
	for _, m := range t.In {
		if s := m.Missed; s != "" && !slices.Contains(out, s) {
			out = append(out, s)
		}
	}
	return out
}
