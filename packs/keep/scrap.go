package keep

import "matchmark/packs/job"

// scrapTag is the tag of the bag for parts that steps send to scrap, at once or when the new
// ones have been held against them; nil if none does. In it are those that go there at once, the
// others come later.
func scrapTag(j *job.Job) *job.Tag {
	var t *job.Tag
	for _, s := range j.Sections {
		for _, st := range s.Steps {
			for _, m := range st.Remove {
				if !m.To.Scrap && m.OldOne() == nil {
					continue
				}
				if t == nil {
					t = &job.Tag{At: m.At, Mark: job.ScrapMark, Base: job.ScrapMark, Kind: job.BoxLabel, Scrap: true, Name: "scrap"}
				}
				if m.To.Scrap {
					t.In = append(t.In, m)
				} else {
					t.Later = append(t.Later, m)
				}
			}
		}
	}
	return t
}
