package expand

import (
	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/lift"
	"matchmark/packs/names"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// What holds where no site file says otherwise. 25 kg is the mass above which
// handling by one person is to be looked at closely (ISO 11228-1, from memory);
// 60 min is the fire watch of NFPA 51B since 2019 (from memory), and 30 min the
// least of 29 CFR 1910.252(a)(2)(iii)(B).
const (
	usualHeavy     = "25 kg"
	usualFireWatch = "60 min"
	leastFireWatch = "30 min"
)

// readSite takes over a site file; an empty one leaves what is usual.
func (b *builder) readSite(s *def.SiteFile) {
	site := &b.Job.Site
	*site = job.Site{Company: s.Company.Value, Paper: s.Paper.Value, Gloves: s.Gloves.Value == "yes", Roles: names.Texts(s.Roles)}
	site.Heavy, site.FireWatch = plainQuantity(usualHeavy), plainQuantity(usualFireWatch)
	if s.Heavy.Written() {
		if q, ok := b.Quantity(s.Heavy, usualHeavy); ok {
			if q.Unit.Dimension() != units.Mass || q.Number.Sign() <= 0 {
				b.Problems.Add(s.Heavy.At, "not-a-mass", source.Quote(s.Heavy.Value)+" is not a mass", "heavy: 25 kg")
			} else {
				site.Heavy = q
			}
		}
	}
	if s.FireWatch.Written() {
		if q, ok := b.Quantity(s.FireWatch, usualFireWatch); ok {
			b.readFireWatch(s.FireWatch, q, &site.FireWatch)
		}
	}
	site.Critical = usualCritical
	if s.Critical.Written() {
		b.readCritical(s.Critical)
	}
}

// usualCritical is the share of the crane's rating from which a lift is critical:
// 29 CFR 1926.751 and others name 75 %.
const usualCritical lift.Ratio = 0.75

// readCritical reads the site's threshold of a critical lift.
func (b *builder) readCritical(t source.Text) {
	q, ok := b.Quantity(t, "75 %")
	if !ok {
		return
	}
	share, _ := q.Number.Rat().Float64()
	if q.Unit != units.Percent || share <= 0 || share > 100 {
		b.Problems.Add(t.At, "not-a-share", source.Quote(t.Value)+" is no share of what a crane may lift", "critical-lift: 75 %")
		return
	}
	b.Job.Site.Critical = lift.Ratio(share / 100)
}

// readFireWatch refuses a fire watch under the least that the rule asks for.
func (b *builder) readFireWatch(t source.Text, q units.Quantity, into *units.Quantity) {
	over, err := q.Cmp(plainQuantity(leastFireWatch))
	switch {
	case err != nil:
		b.Problems.Add(t.At, "not-a-time", source.Quote(t.Value)+" is not a time", "fire-watch: 60 min")
	case over < 0:
		b.Problems.Add(t.At, "short-watch", "a fire watch of "+t.Value+" is shorter than the 30 min that 29 CFR 1910.252(a)(2)(iii) asks for", "fire-watch: 60 min")
	default:
		*into = q
	}
}

// plainQuantity reads a quantity that stands in the program.
func plainQuantity(s string) units.Quantity {
	q, err := units.ParseQuantity(s)
	if err != nil {
		panic(err)
	}
	return q
}
