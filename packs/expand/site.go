package expand

import (
	"matchmark/packs/def"
	"matchmark/packs/heat"
	"matchmark/packs/job"
	"matchmark/packs/lift"
	"matchmark/packs/names"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// usualHeavy is the mass above which handling by one person is to be looked at
// closely (ISO 11228-1, from memory), where no site file says otherwise.
var usualHeavy = units.Quantity{Number: units.Whole(25), Unit: units.Kilogram}

// readSite takes over a site file; an empty one leaves what is usual.
func (b *builder) readSite(s *def.SiteFile) {
	site := &b.Job.Site
	*site = job.Site{Company: s.Company.Value, Paper: s.Paper.Value, Gloves: s.Gloves.Value == "yes", Comma: s.Decimal.Value == "comma", Point: s.Decimal.Value == "point", Roles: names.Texts(s.Roles), Logo: b.Logo, LogoAt: s.Logo.At}
	site.Heavy, site.FireWatch = usualHeavy, names.UsualFireWatch
	if s.Heavy.Written() {
		if q, ok := b.Quantity(s.Heavy, "25 kg"); ok {
			if q.Unit.Dimension() != units.Mass || q.Number.Sign() <= 0 {
				b.Problems.Add(s.Heavy.At, "not-a-mass", source.Quote(s.Heavy.Value)+" is not a mass", "for example heavy: 25 kg")
			} else {
				site.Heavy = q
			}
		}
	}
	if s.FireWatch.Written() {
		b.FireWatch(s.FireWatch, &site.FireWatch)
	}
	b.readWorkable(s)
	b.readStocks(s)
	site.Critical = usualCritical
	if s.Critical.Written() {
		b.readCritical(s.Critical)
	}
}

// readWorkable reads the shortest time from heat off to off the seat that a crew of the
// site works with, and its reason.
func (b *builder) readWorkable(s *def.SiteFile) {
	switch {
	case s.Workable.Written() && !s.WorkableBecause.Written():
		b.Problems.Add(s.Workable.At, "workable", "the site gives "+s.Workable.Value+" from heat off until a hub is off its seat, and no reason", "workable-because: why it takes that time")
	case s.WorkableBecause.Written() && !s.Workable.Written():
		b.Problems.Add(s.WorkableBecause.At, "workable", "the site says why drawing a hub takes its time, and not how long", "workable: the time from heat off until a hub is off its seat")
	case s.Workable.Written():
		q, ok := b.Quantity(s.Workable, "a number in s or min")
		if !ok {
			return
		}
		same, err := q.Convert(units.Second)
		if err != nil || q.Number.Sign() <= 0 {
			b.Problems.Add(s.Workable.At, "not-a-time", source.Quote(s.Workable.Value)+" is not a time", "write it in s or min")
			return
		}
		v, _ := same.Number.Rat().Float64()
		b.Job.Site.Workable = heat.Workable{Time: heat.Second(v), Reason: s.WorkableBecause.Value}
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
		b.Problems.Add(t.At, "not-a-share", source.Quote(t.Value)+" is no share of what a crane may lift", "for example critical-lift: 75 %")
		return
	}
	b.Job.Site.Critical = lift.Ratio(share / 100)
}
