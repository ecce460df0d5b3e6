package job

// Why words a bind for a message.
func (b *Bind) Why() string {
	switch b.Kind {
	case BoundHold:
		return "a hold stands between them"
	case BoundPart:
		return "both move or measure " + b.Part.Called()
	case BoundJoint:
		return "both loosen or tighten " + b.Part.Called()
	case BoundLost:
		return "it measures " + b.Dim.Mark + ", which this step destroys"
	case BoundReading:
		return "it takes the reading " + b.Dim.Mark
	case BoundLock:
		return "an isolation is locked or unlocked there"
	case BoundHanging:
		return "a load is left hanging there"
	case BoundTools:
		return "the tools are counted there"
	case BoundOpening:
		return "it opens " + b.Opening.Mark()
	case BoundEmpty:
		return "it moves parts of " + b.In.Mark
	}
	return b.Reason
}

// A BindKind is why one step must come before another.
type BindKind int

const (
	// BoundAfter: the author wrote it in an after: line.
	BoundAfter BindKind = iota
	// BoundBelow: the author wrote no after: line, so the step follows the one above.
	BoundBelow
	// BoundHold: a hold or witness point stands at one of the two.
	BoundHold
	// BoundPart: both touch the same part, and one of them moves it.
	BoundPart
	// BoundJoint: both loosen or tighten the same joint, or its fasteners.
	BoundJoint
	// BoundLost: the later step destroys a dimension that the earlier one measures.
	BoundLost
	// BoundReading: the later step needs a reading that the earlier one takes.
	BoundReading
	// BoundLock: an isolation is locked or unlocked at one of the two.
	BoundLock
	// BoundHanging: a load is left hanging, or let down again, at one of the two.
	BoundHanging
	// BoundTools: tools are counted at one of the two, and the other opens something
	// or moves parts.
	BoundTools
	// BoundOpening: the earlier step opens what the later one closes.
	BoundOpening
	// BoundEmpty: a container must be empty at the later step, and the earlier one
	// moves parts into or out of it.
	BoundEmpty
)

// A Bind is one reason why a step comes after another.
type Bind struct {
	Kind    BindKind
	Before  *Step
	Reason  string     // as written in the after: line
	Part    *Part      // for BoundPart and BoundJoint
	Dim     *Dim       // for BoundLost and BoundReading
	In      *Container // for BoundEmpty
	Opening *Opening   // for BoundOpening
}

// A Free says between which steps a step may be done; nil means the start or the
// end of the job.
type Free struct{ After, Before *Step }
