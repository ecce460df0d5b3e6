package joint

import "matchmark/packs/units"

// A Scatter says how far the preload of one bolt can lie from the figure worked out: so
// many per cent to either side.
type Scatter struct {
	Percent units.Number
	Source  string
}

// scatterRow is one way of tightening with the scatter of its preload.
type scatterRow struct {
	condition string
	percent   int64
}

// scatterSource is where the table comes from.
const scatterSource = "NASA NSTS 08307, as quoted in Machinery's Handbook"

// scatterTable is the scatter of preload by torque wrench. Read as quoted; the standard
// itself has not been looked at.
var scatterTable = []scatterRow{{"lubricated", 25}, {"cadmium plated", 30}, {"dry", 35}}

// ScatterOf gives the published scatter of a torque wrench on threads that are
// "lubricated", "cadmium plated" or "dry"; ok is false for any other word.
func ScatterOf(condition string) (s Scatter, ok bool) {
	for _, r := range scatterTable {
		if r.condition == condition {
			return Scatter{units.Whole(r.percent), scatterSource}, true
		}
	}
	return Scatter{}, false
}

// A DryTorque is what a published rule takes off a torque that is told for clean dry
// threads, and how near the torque has to be kept.
type DryTorque struct {
	Condition string
	Off       units.Number // per cent taken off
	Within    units.Number // per cent to either side
	Source    string
}

// dryTorqueTable is read in the general torque limits of the manual named.
var dryTorqueTable = []struct {
	condition string
	off       int64
}{{"dry", 0}, {"engine oil", 10}, {"new plated", 20}}

// DryTorqueFor gives the rule for threads that are "dry", under "engine oil" or "new
// plated", where the manual of the machine gives dry torques and says no more; ok is
// false for any other word.
func DryTorqueFor(condition string) (d DryTorque, ok bool) {
	for _, r := range dryTorqueTable {
		if r.condition == condition {
			return DryTorque{r.condition, units.Whole(r.off), units.Whole(10), "US Army TB 9-2320-279-13&P-2, torque limits"}, true
		}
	}
	return DryTorque{}, false
}

// Torque takes off what the rule takes off, exactly, and gives the range that it allows.
func (d DryTorque) Torque(dry units.Quantity) Setting {
	hundred := units.Whole(100)
	part := func(n units.Number, percent units.Number) units.Number { return n.Mul(percent).Quo(hundred) }
	n := part(dry.Number, hundred.Sub(d.Off))
	off := part(n, d.Within)
	q := func(n units.Number) units.Quantity { return units.Quantity{Number: n, Unit: dry.Unit} }
	aim := q(n)
	return Setting{Low: q(n.Sub(off)), Aim: &aim, High: q(n.Add(off))}
}
