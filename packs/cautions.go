package packs

import (
	"matchmark/packs/hazard"
	"matchmark/packs/job"
)

// readCautions takes over the hazard notes of the definition. One with the key of
// a built-in note stands in its place; what it leaves out is taken from it.
func (b *builder) readCautions() {
	b.cautions = map[string]*job.Caution{}
	for _, c := range hazard.Notes(b.job.Site) {
		b.cautions[c.Key] = c
	}
	for _, dc := range b.def.Cautions {
		c := &job.Caution{
			At: dc.Key.At, Key: dc.Key.Value, Signal: dc.Signal.Value, Signs: texts(dc.Signs),
			Hazard: dc.Hazard.Value, Result: dc.Result.Value, Avoid: dc.Avoid.Value, Rule: dc.Rule.Value,
		}
		if old := b.cautions[c.Key]; old != nil {
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
		b.cautions[c.Key] = c
		b.job.Cautions = append(b.job.Cautions, c)
	}
	for _, k := range mapKeys(b.cautions) {
		b.job.Notes = append(b.job.Notes, b.cautions[k])
	}
}
