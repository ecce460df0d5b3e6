package packs

// ScrapMark is the mark of the bag for parts that do not go back. They are kept
// with a tag until the new parts have been compared with them.
const ScrapMark = "SCRAP"

// scrapTag is the tag of the bag for parts that steps send to scrap, nil if none
// does.
func (b *builder) scrapTag() *Tag {
	var t *Tag
	for _, s := range b.job.Sections {
		for _, st := range s.Steps {
			for _, m := range st.Remove {
				if !m.To.Scrap {
					continue
				}
				if t == nil {
					t = &Tag{At: m.At, Mark: ScrapMark, Base: ScrapMark, Kind: BoxLabel, Scrap: true, Name: "scrap"}
				}
				t.In = append(t.In, m)
			}
		}
	}
	return t
}
