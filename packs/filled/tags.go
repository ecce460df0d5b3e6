package filled

import "matchmark/packs/job"

// tags are those of the parts that a dimension is read on, or that its inputs are.
func (r *Result) tags(d *job.Dim) []*job.Tag {
	parts := partsOf(d)
	if len(parts) == 0 {
		for _, ref := range d.Refs {
			for _, x := range ref.Dims {
				parts = append(parts, partsOf(x)...)
			}
		}
	}
	var out []*job.Tag
	seen := map[*job.Tag]bool{}
	for _, p := range parts {
		if t := r.tagOf(p); t != nil && !seen[t] {
			seen[t] = true
			out = append(out, t)
		}
	}
	return out
}

func partsOf(d *job.Dim) []*job.Part {
	var out []*job.Part
	for _, p := range []*job.Part{d.Of.Part, d.From.Part, d.To.Part, d.Stamped.Part} {
		if p != nil {
			out = append(out, p)
		}
	}
	if d.Shims != nil {
		out = append(out, d.Shims.Part)
	}
	return out
}

// tagOf is the tag that hangs on a part, or on what it lies in, or on the assembly that
// it came off with; nil if it has none.
func (r *Result) tagOf(p *job.Part) *job.Tag {
	for ; p != nil; p = p.Of {
		for _, t := range r.Job.Tags {
			if t.Part == p {
				return t
			}
		}
		for _, t := range r.Job.Tags {
			for _, m := range t.In {
				if m.Part == p && !t.Scrap {
					return t
				}
			}
		}
	}
	return nil
}
