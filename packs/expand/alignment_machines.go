package expand

import (
	"slices"
	"strings"
	"unicode"

	"matchmark/packs/job"
	"matchmark/packs/names"
	"matchmark/packs/source"
)

// machineNamed is what the paper calls a machine of an alignment. Who writes the key of a part
// instead of its name, as input-shaft, means that part; of several like ones its place is told
// with it: motor/P1.
func (b *builder) machineNamed(t source.Text) string {
	if p := b.machineByKey(t); p != nil {
		if name := []rune(p.Name); len(name) > 1 {
			if !unicode.IsUpper(name[1]) {
				name[0] = unicode.ToLower(name[0])
			}
			return p.Place.Mark(string(name))
		}
	}
	return t.Value
}

// machineByKey is the part that a machine of an alignment is called by with its key and its
// place, nil where it is called by other words. A key that is one plain word may be the name.
func (b *builder) machineByKey(t source.Text) *job.Part {
	key, _, placed := names.Cut(t.Value)
	for _, p := range b.Parts[key] {
		if (placed || strings.Contains(key, "-")) && p.Place.Mark(key) == t.Value {
			return p
		}
	}
	return nil
}

// machines finds the parts that the two machines of an alignment are. Of several parts that are
// called alike the one counts that a dial of the alignment is read on; where that does not tell
// them apart there is none.
func (r *alignReader) machines() {
	for _, t := range []source.Text{r.d.Movable, r.d.Stationary} {
		p := r.b.machineByKey(t)
		if p == nil {
			p = r.onlyOne(r.b.partsNamed(t.Value))
		}
		if p != nil && !slices.Contains(r.a.Machines, p) {
			r.a.Machines = append(r.a.Machines, p)
		}
	}
}

// partsNamed lists the parts that have a text as their key or their name.
func (b *builder) partsNamed(text string) []*job.Part {
	var out []*job.Part
	for _, p := range b.Job.Parts {
		if p.Place.Mark(p.Key) == text || strings.EqualFold(p.Name, text) {
			out = append(out, p)
		}
	}
	return out
}

// onlyOne is the one of some parts on which a dial of the alignment is read, or the only one.
func (r *alignReader) onlyOne(list []*job.Part) *job.Part {
	if len(list) > 1 {
		list = slices.DeleteFunc(list, func(p *job.Part) bool {
			for _, d := range r.a.Read {
				if d.From.Part == p || d.To.Part == p || d.Of.Part == p {
					return false
				}
			}
			return true
		})
	}
	if len(list) != 1 {
		return nil
	}
	return list[0]
}

// seenFromMovable reports whether a reading is seen from the movable machine, by its name, by
// its key or as the paper calls it.
func (r *alignReader) seenFromMovable(d *job.Dim) bool {
	name, _, _ := names.Cut(r.a.Movable)
	return d.ViewedFrom != "" && slices.ContainsFunc([]string{name, r.a.Movable, r.d.Movable.Value}, func(n string) bool { return strings.Contains(d.ViewedFrom, n) })
}
