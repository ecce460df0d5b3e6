package align

import (
	"fmt"

	"matchmark/packs/units"
)

// A Method is how the dials are set up.
type Method uint8

// The methods.
const (
	// RimFace has one bracket, one dial on the rim of the other hub and one on its face.
	RimFace Method = iota + 1
	// ReverseDials has a bracket on each hub, with a dial on the rim of the other.
	ReverseDials
)

// A Hub is one of the two.
type Hub uint8

// The hubs.
const (
	Stationary Hub = iota + 1
	Movable
)

// A Setup is one coupling with its dials and the movable machine's feet.
type Setup struct {
	Method Method
	Unit   units.Unit      // of the dials: mm, µm, in or mil
	Reads  *units.Quantity // the smallest step of the dials, which results are told to

	// Of RimFace:
	DialsOn      Hub             // the hub that both dials touch; the bracket is on the other
	FaceBack     bool            // the face dial touches the side away from the other hub
	FaceDiameter *units.Quantity // of the circle that the face dial runs on
	TwoFaceDials bool            // a second one opposite takes the float of the shafts out

	// Of ReverseDials: from the dial on the stationary hub to that on the movable one.
	Span *units.Quantity

	// Sag of the bracket with its dial: of the rim dial, or of the dial on the stationary
	// hub. SagOther is that of the dial on the movable hub in ReverseDials.
	Sag, SagOther *units.Quantity

	Feet []Foot // planes of feet of the movable machine, the nearest first

	Target *Target // where the cold shaft is meant to stand; nil is in line
}

// A Foot is one plane of feet of the movable machine.
type Foot struct {
	Name string
	At   *units.Quantity // from the dial's plane, see the package's signs
}

// A Target is how high and how far right the movable shaft is meant to stand at each
// plane of feet, in the order of Setup.Feet: the maker's figures, or those of Growth.
// Right may be empty, which is in line.
type Target struct {
	Up, Right []units.Quantity
	Source    string
}

// A Dial is one of the dials.
type Dial uint8

// The dials. FaceOther is the second face dial, half a turn from the first.
const (
	Rim Dial = iota + 1
	Face
	FaceOther
	OnStationary
	OnMovable
)

// A Clock is where a dial stands when it is read.
type Clock uint8

// The places, as one looks from the movable machine toward the stationary one.
const (
	Top Clock = iota + 1
	Right
	Bottom
	Left
)

// A Reading names one reading.
type Reading struct {
	Dial Dial
	At   Clock
}

// Dials lists the dials of the setup.
func (s Setup) Dials() []Dial {
	switch {
	case s.Method == ReverseDials:
		return []Dial{OnStationary, OnMovable}
	case s.TwoFaceDials:
		return []Dial{Rim, Face, FaceOther}
	}
	return []Dial{Rim, Face}
}

// Told rounds a result to what the dials read, to the nearest: a shim can go either way.
func (s Setup) Told(n units.Number) units.Quantity {
	decimals := 0
	if s.Reads != nil && s.Reads.Unit == s.Unit {
		decimals = s.Reads.Number.Decimals()
	}
	return units.Quantity{Number: n.Round(decimals, units.Nearest), Unit: s.Unit}
}

// frame is a setup with its lengths in the unit of the dials.
type frame struct {
	s             Setup
	face, span    units.Number
	sag, sagOther units.Number
	at            []units.Number
	up, right     []units.Number // targets at the feet
}

// read takes the setup in and refuses what is missing.
func (s Setup) read() (frame, reasons) {
	var rs reasons
	f := frame{s: s}
	if s.Unit.Dimension() != units.Length {
		rs.add("unit", "write mm, µm, in or mil", "the unit of the dials is not told")
		return f, rs
	}
	if s.Reads == nil || s.Reads.Unit != s.Unit || s.Reads.Number.Sign() <= 0 {
		rs.add("reads", "write it in "+s.Unit.Text(), "what the dials read is not told in %s", s.Unit.Text())
	}
	switch s.Method {
	case RimFace:
		if s.DialsOn != Stationary && s.DialsOn != Movable {
			rs.add("dialson", "write stationary or movable; it turns the signs round", "which hub the dials touch is not told")
		}
		f.face = rs.positive("facediameter", "diameter that the face dial runs on", s.FaceDiameter, s.Unit)
	case ReverseDials:
		f.span = rs.positive("span", "distance between the two dials", s.Span, s.Unit)
		f.sagOther = rs.sag("sagother", s.SagOther, s.Unit)
	default:
		rs.add("method", "write rim and face, or reverse dials", "how the dials are set up is not told")
	}
	f.sag = rs.sag("sag", s.Sag, s.Unit)
	f.feet(&rs)
	f.targets(&rs)
	return f, rs
}

// sag reads what a bracket bends.
func (rs *reasons) sag(field string, q *units.Quantity, unit units.Unit) units.Number {
	if q == nil {
		rs.add(field, "try the bracket on a stiff pipe; write 0 with the unit of the dials if it does not sag", "the sag of the bracket is not told")
		return units.Number{}
	}
	n := rs.length(field, "sag", q, unit)
	if n.Sign() < 0 {
		rs.add(field, "write how much the bracket bends; half of what the dial reads at the bottom, without the sign", "a sag of %s", q.Text())
	}
	return n
}

// feet reads where the feet are.
func (f *frame) feet(rs *reasons) {
	if len(f.s.Feet) < 2 {
		rs.add("feet", "write the front and the rear feet with their distances", "%d planes of feet", len(f.s.Feet))
	}
	for i, foot := range f.s.Feet {
		field := fmt.Sprintf("feet[%d].at", i)
		before := len(rs.Refusals)
		n := rs.length(field, "distance to "+foot.Name, foot.At, f.s.Unit)
		if len(rs.Refusals) == before && i > 0 && n.Cmp(f.at[i-1]) <= 0 {
			rs.add(field, "write the nearest first", "%s is no farther than %s", foot.Name, f.s.Feet[i-1].Name)
		}
		f.at = append(f.at, n)
	}
}

// targets reads where the shaft is meant to stand at the feet.
func (f *frame) targets(rs *reasons) {
	f.up, f.right = make([]units.Number, len(f.s.Feet)), make([]units.Number, len(f.s.Feet))
	t := f.s.Target
	if t == nil {
		return
	}
	if t.Source == "" {
		rs.add("target.source", "name the maker's sheet, or how it was worked out", "the target has no source")
	}
	for _, side := range []struct {
		field string
		list  []units.Quantity
		out   []units.Number
	}{{"target.up", t.Up, f.up}, {"target.right", t.Right, f.right}} {
		if len(side.list) != 0 && len(side.list) != len(f.s.Feet) {
			rs.add(side.field, "write one for each plane of feet", "%d targets for %d planes of feet", len(side.list), len(f.s.Feet))
			continue
		}
		for i, q := range side.list {
			side.out[i] = rs.length(fmt.Sprintf("%s[%d]", side.field, i), "target", &q, f.s.Unit)
		}
	}
}
