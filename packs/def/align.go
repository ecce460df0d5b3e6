package def

import "matchmark/packs/source"

// An Alignment is one coupling that is aligned with dials.
type Alignment struct {
	Mark                                     source.Text
	What                                     source.Text
	Movable, Stationary                      source.Text
	Method                                   source.Text // rim and face, reverse dials
	Reads                                    source.Text
	DialsOn, FaceDiameter, FaceBack, TwoFace source.Text // of rim and face
	Span                                     source.Text // of reverse dials
	Sag, SagOther                            source.Text
	Feet                                     []*Feet
	Target                                   AlignTarget
	Growth                                   Growth
	Limits                                   AlignLimits
	SoftFoot                                 SoftFoot
	Read                                     AlignRead
	Tries, Note                              source.Text
	Applies
}

// Feet are one plane of feet of the movable machine.
type Feet struct {
	At       source.Pos
	Name, Is source.Text // Is: how far from the dial
}

// An AlignTarget is where the cold shaft is meant to stand at each plane of feet.
type AlignTarget struct {
	At        source.Pos
	Up, Right []source.Text
	Source    source.Text
}

// A Growth is what the shafts rise from cold to running.
type Growth struct {
	At         source.Pos
	Stationary []*Support
	Movable    []source.Text
	Source     source.Text
}

// A Support is one support of the stationary machine.
type Support struct {
	At       source.Pos
	Is, Rise source.Text
}

// AlignLimits are how near the shafts must be, by speed.
type AlignLimits struct {
	At                 source.Pos
	Speed, Where, Over source.Text
	Rows               []*AlignRow
	Source             source.Text
}

// An AlignRow holds up to a speed.
type AlignRow struct {
	At                  source.Pos
	UpTo, Offset, Angle source.Text
}

// A SoftFoot is how far a foot may spring up.
type SoftFoot struct {
	At            source.Pos
	Limit, Source source.Text
}

// An AlignRead names the dimensions that the readings of the dials are written in.
type AlignRead struct {
	At                             source.Pos
	Rim, Face, Stationary, Movable source.Text
}
