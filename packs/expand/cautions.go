package expand

import (
	"matchmark/packs/hazard"
	"matchmark/packs/job"
	"matchmark/packs/names"
)

// readCautions takes over the hazard notes of the definition. One with the key of
// a built-in note stands in its place; what it leaves out is taken from it.
func (b *builder) readCautions() {
	b.Cautions = map[string]*job.Caution{}
	for _, c := range hazard.Notes() {
		b.Cautions[c.Key] = c
	}
	for _, dc := range b.Def.Cautions {
		c := &job.Caution{
			At: dc.Key.At, Key: dc.Key.Value, Signal: dc.Signal.Value, Signs: names.Texts(dc.Signs),
			Hazard: dc.Hazard.Value, Result: dc.Result.Value, Avoid: dc.Avoid.Value, Rule: dc.Rule.Value,
		}
		if old := b.Cautions[c.Key]; old != nil {
			if len(c.Signs) == 0 {
				c.Signs = old.Signs
			}
			if c.Result == "" {
				c.Result = old.Result
			}
			if c.Rule == "" {
				c.Rule = old.Rule
			}
		}
		b.Cautions[c.Key] = c
		b.Job.Cautions = append(b.Job.Cautions, c)
	}
	for _, k := range names.Keys(b.Cautions) {
		b.Job.Notes = append(b.Job.Notes, b.Cautions[k])
	}
}
