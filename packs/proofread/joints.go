package proofread

import (
	"errors"
	"math/big"
	"strings"

	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/joint"
	"matchmark/packs/names"
	"matchmark/packs/reading"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// checkJoints sees that what is written of the tightening of each joint goes together:
// one way to say how tight, stages that rise to the torque, and a torque that thread and
// class can carry.
func (b *proofreader) checkJoints() {
	for _, dj := range b.Def.Joints {
		if t := dj.NoValue; t.Written() && dj.Torque.Written() {
			b.Problems.Add(t.At, "value-twice", dj.Mark.Value+" has a torque, and says that there is none", "take one of the two out")
		}
		for _, j := range b.Joints[dj.Mark.Value] {
			t := names.TextAt(j.Place, dj.Torque)
			torques := b.settings(t)
			if b.checkStages(dj, j, torques) || b.checkClass(dj, j, t, torques) {
				break // told once for all places
			}
		}
	}
}

// settings reads how tight a joint becomes: the torque, and the same in another unit
// behind it in a bracket; none where it cannot be read, which has been told.
func (b *proofreader) settings(t source.Text) []joint.Setting {
	var out []joint.Setting
	for _, text := range strings.Split(strings.TrimSuffix(t.Value, ")"), " (") {
		if low, high, err := units.ParseRange(text); err == nil {
			out = append(out, joint.Between(low, high))
		} else if q, err := units.ParseQuantity(text); err == nil && q.Unit.Dimension() == units.Torque {
			out = append(out, joint.Exactly(q))
		}
	}
	return out
}

// settingOf is how tight a stage goes; ok is false of a stage that goes by an angle or
// by hand.
func settingOf(t source.Text) (joint.Setting, *reading.Stage, bool) {
	st, fault := reading.ParseStage(t.Value)
	switch {
	case fault != nil: // told where it is read
		return joint.Setting{}, &reading.Stage{Kind: reading.ByHand}, false
	case st.Kind != reading.Tighten:
		return joint.Setting{}, st, false
	case st.High != nil:
		return joint.Between(st.Value, *st.High), st, true
	case st.Within != nil:
		return joint.PlusMinus(st.Value, *st.Within), st, true
	}
	return joint.Exactly(st.Value), st, true
}

// checkStages sees that the stages rise, are in the unit of the torque, and end at it.
func (b *proofreader) checkStages(dj *def.Joint, j *job.Joint, torques []joint.Setting) bool {
	var last joint.Setting // so far
	var at source.Text
	begun := false
	for _, t := range dj.Stages {
		set, st, ok := settingOf(t)
		if st.Kind == reading.SlackenAll || st.Kind == reading.BackOff {
			begun = false // they begin again from below
		}
		if !ok {
			continue
		}
		if begun && b.falls(j, last, set, t) {
			return true
		}
		if len(torques) > 0 && !inUnitOf(set, torques) {
			b.Problems.AddWith(t.At, "two-units", j.Mark+": the stage "+set.Text()+" and the torque "+torques[0].Text()+" are in two units", names.TextAt(j.Place, dj.Torque).At, "the torque",
				"write the stages in "+torques[0].High.Unit.Text())
			return true
		}
		last, at, begun = set, t, true
	}
	if at.Written() && len(torques) > 0 && !meets(last, torques) {
		b.Problems.AddWith(at.At, "last-stage", j.Mark+": the stages end at "+last.Text()+", and the torque is "+torques[0].Text(), names.TextAt(j.Place, dj.Torque).At, "the torque",
			"let the last stage be the torque")
		return true
	}
	return false
}

// falls tells of a stage that is below the one before, or in another unit.
func (b *proofreader) falls(j *job.Joint, last, set joint.Setting, t source.Text) bool {
	switch {
	case last.High.Unit != set.High.Unit:
		b.Problems.Add(t.At, "two-units", j.Mark+": the stages "+last.Text()+" and "+set.Text()+" are in two units", "write both in "+last.High.Unit.Text())
	case set.High.Number.Cmp(last.High.Number) < 0:
		b.Problems.Add(t.At, "stages-fall", j.Mark+": the stage "+set.Text()+" comes after "+last.Text()+"; stages rise", "put them in their order", "or slacken all between them, if they are meant to begin again")
	default:
		return false
	}
	return true
}

// inUnitOf reports whether a stage is in the unit of one of the torques, which are one
// torque in one unit or two.
func inUnitOf(set joint.Setting, torques []joint.Setting) bool {
	for _, t := range torques {
		if t.High.Unit == set.High.Unit {
			return true
		}
	}
	return false
}

// meets reports whether the last stage is the torque, or lies within it.
func meets(last joint.Setting, torques []joint.Setting) bool {
	for _, t := range torques {
		if t.High.Unit == last.High.Unit && last.Low.Number.Cmp(t.Low.Number) >= 0 && last.High.Number.Cmp(t.High.Number) <= 0 {
			return true
		}
		if t.Low.Number.Cmp(t.High.Number) == 0 && t.High.Unit == last.High.Unit && last.Low.Number.Cmp(t.Low.Number) <= 0 && last.High.Number.Cmp(t.High.Number) >= 0 {
			return true // 90 lb-ft, and the last stage 90 +/- 10 lb-ft
		}
	}
	return false
}

// dryFactor is a nut factor that plain steel, dry, does not exceed by much; oil makes
// it smaller and the bolt tighter. A torque that is too much even so is too much. Any
// machinery handbook has 0.20 for plain dry steel.
var dryFactor = units.Exact(big.NewRat(1, 5), 2)

// checkClass sees that the torque is no more than the fasteners can carry, where their
// thread and class are known.
func (b *proofreader) checkClass(dj *def.Joint, j *job.Joint, t source.Text, torques []joint.Setting) bool {
	if j.Class == "" {
		return false
	}
	for _, p := range j.Parts {
		if p.Thread == nil {
			continue
		}
		if _, err := joint.StrengthOf(*p.Thread, j.Class); err != nil {
			message := err.Error()
			if r := (joint.Refusal{}); errors.As(err, &r) {
				message = r.Message
			}
			help := "take class: out; for this thread no class is known"
			if known := joint.Classes(*p.Thread); len(known) > 0 {
				help = "known for it are " + strings.Join(known, ", ")
			}
			b.Problems.AddWith(dj.Class.At, "class", j.Mark+": "+message, p.At, "the thread", help)
			return true
		}
		if len(torques) == 0 {
			return false
		}
		r, _ := joint.Compute(joint.Spec{Thread: p.Thread, Class: j.Class, Count: p.Count, Torque: &torques[0], Friction: &joint.Friction{NutFactor: &dryFactor, Source: "plain steel, dry"}})
		if r.Share > 1 {
			b.Problems.AddWith(t.At, "over-proof", j.Mark+": "+torques[0].High.Text()+" takes "+p.Thread.String()+", "+j.Class+", to "+r.Share.Percent()+" of its proof stress even on dry threads (nut factor 0.20)", p.At, "the thread",
				"look torque, thread and class up again")
			return true
		}
	}
	return false
}
