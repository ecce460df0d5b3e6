package keep

import (
	"strconv"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/source"
)

// Tags numbers everything that gets a tag, n of N: containers in the order
// of their marks, each followed by its pockets, then big parts, then the scrap bag, then
// blank spares. It gives every tag its key, and tells where two would have the same.
func Tags(j *job.Job, spares *Spares) source.Problems {
	for _, c := range j.Containers {
		kind := job.HangTag
		switch c.Kind {
		case "bag":
			kind = job.BagLabel
		case "box":
			kind = job.BoxLabel
		}
		t := &job.Tag{At: c.At, Mark: c.Mark, Base: c.Base, Detail: c.Place.Label, PlaceName: c.Place.Name, Kind: kind, Container: c, Name: c.Name, Keep: c.Keep, Note: c.Note}
		t.In, t.Out = inPocket(c.In, ""), outOf(c.Out, "")
		j.Tags = append(j.Tags, t)
		for _, p := range c.Pockets {
			pt := &job.Tag{
				At: c.At, Mark: c.Mark + "/" + p, Base: c.Base, Detail: strings.TrimPrefix(c.Place.Label+"/"+p, "/"), PlaceName: c.Place.Name,
				Kind: job.BagLabel, Container: c, Pocket: p, Name: p, Keep: c.Keep,
			}
			pt.In, pt.Out = inPocket(c.In, p), outOf(c.Out, p)
			j.Tags = append(j.Tags, pt)
		}
	}
	for _, big := range j.Bigs {
		p := big.Part
		t := &job.Tag{
			At: big.At, Mark: big.Mark, Base: big.Base, Detail: p.Place.Label, PlaceName: p.Place.Name,
			Kind: job.HangTag, Part: p, Name: p.Name, Keep: big.Keep, Support: big.Support,
		}
		t.In, t.Out = p.Off, p.Back
		j.Tags = append(j.Tags, t)
	}
	if t := scrapTag(j); t != nil {
		j.Tags = append(j.Tags, t)
	}
	total := len(j.Tags)
	for i, t := range j.Tags {
		t.N, t.Of, t.Sets = i+1, total, setsOf(t.In)
	}
	weighTags(j)
	blanks(j, spares)
	keyed(j)
	return alike(j)
}

// Spares are how many blank tags of each kind a pack has for what is found on the day,
// by job.TagKind.
type Spares [3]int

// UsualSpares are the blank tags of a pack where nothing else is asked for.
var UsualSpares = Spares{job.HangTag: 4}

// MostSpares is how many blank tags of a kind a pack may have.
const MostSpares = 99

// blanks adds the blank tags, X1 and on; nil stands for the usual ones.
func blanks(j *job.Job, spares *Spares) {
	if spares == nil {
		spares = &UsualSpares
	}
	n := 0
	for kind, count := range spares {
		for range min(count, MostSpares) {
			n++
			mark := "X" + strconv.Itoa(n)
			j.Tags = append(j.Tags, &job.Tag{At: j.Order.At, Mark: mark, Base: mark, Kind: job.TagKind(kind), Spare: true})
		}
	}
}

func inPocket(ms []*job.Move, pocket string) []*job.Move {
	var out []*job.Move
	for _, m := range ms {
		if m.To.Pocket == pocket {
			out = append(out, m)
		}
	}
	return out
}

func outOf(ms []*job.Move, pocket string) []*job.Move {
	var out []*job.Move
	for _, m := range ms {
		if m.From.Pocket == pocket {
			out = append(out, m)
		}
	}
	return out
}

// setsOf lists the matched sets that the parts of some moves belong to, each once.
func setsOf(ms []*job.Move) []*job.Set {
	var out []*job.Set
	for _, m := range ms {
		s := m.Part.Set
		if s == nil {
			continue
		}
		known := false
		for _, x := range out {
			known = known || x == s
		}
		if !known {
			out = append(out, s)
		}
	}
	return out
}
