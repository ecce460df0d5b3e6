package packs

import (
	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/lift"
	"matchmark/packs/source"
	"matchmark/packs/units"
	"strings"
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
	site := &b.job.Site
	*site = job.Site{Company: s.Company.Value, Paper: s.Paper.Value, Gloves: s.Gloves.Value == "yes", Roles: texts(s.Roles)}
	site.Heavy, site.FireWatch = plainQuantity(usualHeavy), plainQuantity(usualFireWatch)
	if s.Heavy.Written() {
		if q, ok := b.quantity(s.Heavy, usualHeavy); ok {
			if q.Unit.Dimension() != units.Mass || q.Number.Sign() <= 0 {
				b.problems.Add(s.Heavy.At, "not-a-mass", source.Quote(s.Heavy.Value)+" is not a mass", "heavy: 25 kg")
			} else {
				site.Heavy = q
			}
		}
	}
	if s.FireWatch.Written() {
		if q, ok := b.quantity(s.FireWatch, usualFireWatch); ok {
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
	q, ok := b.quantity(t, "75 %")
	if !ok {
		return
	}
	share, _ := q.Number.Rat().Float64()
	if q.Unit != units.Percent || share <= 0 || share > 100 {
		b.problems.Add(t.At, "not-a-share", source.Quote(t.Value)+" is no share of what a crane may lift", "critical-lift: 75 %")
		return
	}
	b.job.Site.Critical = lift.Ratio(share / 100)
}

// readFireWatch refuses a fire watch under the least that the rule asks for.
func (b *builder) readFireWatch(t source.Text, q units.Quantity, into *units.Quantity) {
	over, err := q.Cmp(plainQuantity(leastFireWatch))
	switch {
	case err != nil:
		b.problems.Add(t.At, "not-a-time", source.Quote(t.Value)+" is not a time", "fire-watch: 60 min")
	case over < 0:
		b.problems.Add(t.At, "short-watch", "a fire watch of "+t.Value+" is shorter than the 30 min that 29 CFR 1910.252(a)(2)(iii) asks for", "fire-watch: 60 min")
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

// checkRoles sees that who releases and who checks are roles of the site, where
// it has said which it has.
func (b *builder) checkRoles() {
	if len(b.job.Site.Roles) == 0 {
		return
	}
	known := map[string]bool{}
	for _, r := range b.job.Site.Roles {
		known[r] = true
	}
	see := func(t source.Text) {
		if t.Value == "" || known[t.Value] {
			return
		}
		help := "roles of the site: " + strings.Join(b.job.Site.Roles, ", ")
		if near := source.Nearest(t.Value, b.job.Site.Roles); near != "" {
			help = "did you mean " + near + "?"
		}
		b.problems.Warn(t.At, "unknown-role", source.Quote(t.Value)+" is not a role of this site", help)
	}
	for _, h := range b.def.Holds {
		see(h.Releases)
	}
	for _, s := range b.def.Sections {
		for _, st := range s.Steps {
			see(st.Check)
			if _, none := noneBecause(st.BackCheck); !none {
				see(st.BackCheck)
			}
		}
	}
}
