package expand

import (
	"strings"

	"matchmark/packs/joint"
	"matchmark/packs/reading"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// tightness reads how tight a joint becomes: a torque, or the pressure or force of a
// tensioner, with its tolerance or from a least to a greatest, and behind it in a
// bracket the same in another unit. It gives the text for paper and the setting for
// the calculation, which is that of what stands first.
func (b *builder) tightness(t source.Text, example string) (string, *joint.Setting) {
	if !t.Written() {
		return "", nil
	}
	if bare, other, ok := strings.Cut(strings.TrimSuffix(t.Value, ")"), " ("); ok {
		return b.tightnessTwice(t, bare, other, example)
	}
	st, fault := reading.ParseStage(t.Value)
	if fault == nil && st.Kind == reading.Tighten && st.Value.Unit.Dimension() != units.Ratio {
		return stagePrint(st), stageSetting(st)
	}
	if _, ok := b.Quantity(t, example); ok {
		b.Problems.Add(t.At, "not-a-torque", source.Quote(t.Value)+" is not a torque", "write … N·m, or … lb-ft")
	}
	return "", nil
}

// tightnessTwice reads a torque told in two units, which must be the same.
func (b *builder) tightnessTwice(t source.Text, bare, other, example string) (string, *joint.Setting) {
	line, before := t.Value, ""
	if !strings.Contains(bare, " to ") && !strings.Contains(bare, "+/-") {
		before = "about " // makes a limit of one number
		line = before + line
	}
	if _, fault := reading.Parse(line); fault != nil {
		fault.Offset = max(fault.Offset-len(before), 0)
		for i := range fault.Help {
			fault.Help[i] = strings.TrimPrefix(fault.Help[i], before)
		}
		b.Fault(t, fault)
		return "", nil
	}
	at := len([]rune(bare)) + len(" (")
	one, set := b.tightness(source.Text{Value: bare, At: t.Part(0, len([]rune(bare)))}, example)
	two, _ := b.tightness(source.Text{Value: other, At: t.Part(at, len([]rune(other)))}, example)
	if one == "" || two == "" {
		return "", nil
	}
	return one + " (" + two + ")", set
}

// stagePrint is how tight a stage is, as it stands on paper.
func stagePrint(st *reading.Stage) string {
	switch {
	case st.High != nil:
		return st.Value.Number.Print() + "–" + st.High.Print()
	case st.Within != nil:
		return st.Value.Number.Print() + " ± " + units.Quantity{Number: *st.Within, Unit: st.Value.Unit}.Print()
	}
	return st.Value.Print()
}

// stageSetting is how tight a stage is, for the calculation.
func stageSetting(st *reading.Stage) *joint.Setting {
	set := joint.Exactly(st.Value)
	switch {
	case st.High != nil:
		set = joint.Between(st.Value, *st.High)
	case st.Within != nil:
		set = joint.PlusMinus(st.Value, *st.Within)
	}
	return &set
}

// stageKinds are the stages of a tightening as the calculation knows them.
var stageKinds = map[reading.StageKind]joint.StageKind{
	reading.Tighten: joint.Tighten, reading.ByHand: joint.ByHand, reading.SlackenAll: joint.SlackenAll, reading.BackOff: joint.BackOff,
	reading.Turn: joint.Turn, reading.AgainAfter: joint.AgainAfter, reading.LastRound: joint.LastRound, reading.AgainRunning: joint.AgainRunning,
}

// stageOf is one stage for the calculation.
func stageOf(st *reading.Stage) joint.Stage {
	out := joint.Stage{Kind: stageKinds[st.Kind]}
	value := st.Value
	switch st.Kind {
	case reading.Tighten:
		out.Setting = stageSetting(st)
	case reading.Turn, reading.BackOff:
		out.Angle = &value
	case reading.AgainAfter:
		out.Hours = &value
	}
	return out
}
