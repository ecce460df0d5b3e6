package plan

import (
	"errors"
	"fmt"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/joint"
	"matchmark/packs/source"
)

// leastDrawn is the number of fasteners from which on a joint that is worked out is
// asked for its layout: of three there is one order.
const leastDrawn = 4

// joints works every joint out: the order of its fasteners, the rounds of its
// tightening, and where enough is written what a torque does to a bolt.
func (p *planner) joints() {
	for _, j := range p.job.Joints {
		p.pattern(j)
		if j.Hole {
			continue
		}
		res, err := joint.Compute(j.Spec)
		j.Rounds = res.Rounds
		told := p.refused(j, "", err)
		if !j.Asked || told {
			continue
		}
		j.Result = &res
		if j.Torque == "" && res.Torque != nil {
			j.Torque = res.Torque.Low.Print() // worked out from the preload that is wanted
		}
		for _, c := range res.Cautions {
			if help, ok := lookAtJoint[c.Code]; ok {
				p.problems.Warn(j.Wrote.Place(c.Field, j.At), "look-at-joint", j.Base+": "+c.Message, help)
				p.problems.Says(caution{j.Base, c})
			}
		}
		if j.Layout == nil && j.Wrote["layout"].IsZero() && j.Spec.Count >= leastDrawn {
			p.problems.Warn(j.At, "no-layout", fmt.Sprintf("%s has %d fasteners and no layout: its order is not drawn", j.Base, j.Spec.Count), "for example layout: {circle: … mm, order: crosswise}")
		}
	}
}

// lookAtJoint are the cautions that check tells of, with what to do about them. The
// others ask for nothing and are printed on the sheet alone.
var lookAtJoint = map[joint.CautionCode]string{
	joint.NearProof:        "70 to 75 % is usual for joints that are opened again",
	joint.ScatterOverProof: "tighten less, lubricate better, or measure the stretch",
	joint.NoScatter:        "scatter: lubricated, or {percent: … %, source: …}",
	joint.NoRetained:       "retained: … %, from the sheet of the tensioner",
	joint.Unlisted:         "look the thread up on the bolt",
	joint.BreaksLooseHigh:  "a fastener that was tightened with less cannot hold so much; look both up",
	joint.ForNowHigh:       "what holds for a while is less than the last torque; look both up",
	joint.TorqueAfterAngle: "repeat it before the angle, or leave it out",
}

// refused turns the reasons why a joint cannot be worked out into problems. Of a joint
// that does not ask for it only its stages are looked at.
func (p *planner) refused(j *job.Joint, under string, err error) bool {
	var rs joint.Refusals
	if !errors.As(err, &rs) {
		return false
	}
	told := false
	for _, no := range rs {
		own := strings.HasPrefix(no.Field, "stages") || no.Field == "fornow" || no.Field == "breaksloose"
		if !j.Asked && under == "" && !own {
			continue
		}
		told = true
		var help []string
		if no.Help != "" {
			help = []string{no.Help}
		}
		p.problems.Add(j.Wrote.Place(under+no.Field, j.At), "joint-refused", j.Base+": "+no.Message, help...)
	}
	return told
}

// pattern lays the fasteners out.
func (p *planner) pattern(j *job.Joint) {
	if j.Layout == nil {
		return
	}
	order, err := j.Layout.Pattern()
	if p.refused(j, "layout.", err) {
		return
	}
	if n := len(order.Places); n != j.Spec.Count {
		fasteners := j.At
		if len(j.Parts) > 0 {
			fasteners = j.Parts[0].At
		}
		p.problems.AddWith(j.Wrote.Place("layout", j.At), "joint-count", fmt.Sprintf("%s has %d fasteners, and its layout has %d places", j.Base, j.Spec.Count, n), fasteners, "the fasteners", "count them on the joint; the count of the parts and the layout must agree")
		return
	}
	j.Order = &order
}

// A caution is what the calculation of a joint says, for paper in another language.
type caution struct {
	mark string
	of   joint.Caution
}

// In implements source.Sentence.
func (c caution) In(t source.Tongue) string {
	text := c.of.In(t)
	if text == c.of.In(nil) {
		return ""
	}
	return source.About(t, c.mark, text)
}
