package def

import "matchmark/packs/source"

// A Section is a run of steps under one heading, or an order to put earlier
// sections back (Reverse).
type Section struct {
	At      source.Pos
	Name    Varying
	Each    []source.Text
	Steps   []*Step
	Reverse []source.Text
	Use     *Use // of another file, whose sections stand here; nil when they do
	Applies
}

// A Step is one act at the machine.
type Step struct {
	At      source.Pos
	Key     source.Text
	After   After
	Do      Varying
	Where   source.Text // bench, or at the machine
	Each    []source.Text
	Measure []source.Text
	Set     []source.Text
	Remove  []Count
	Fit     []Count
	Into    Into
	From    []source.Text
	ForNow  []Count       // fitted for now, to be taken out again
	TakeOut []Count       // taken out again
	LeftOut []source.Text // parts that are left out here and fitted later
	Loosen  []source.Text
	Tighten []source.Text
	Open    []source.Text
	Close   []source.Text
	Empty   []source.Text // containers that must be empty after this step
	Lift    []source.Text // lifts that are made
	SetDown []source.Text // lifts whose load stands again
	// UnderLoad is what is put under a load that hangs.
	UnderLoad source.Text
	Seen      []source.Text // what is looked at and found so, a box to tick each
	Hold      source.Text
	Heat      []source.Text
	Align     []source.Text // alignments that are made
	Caution   []source.Text
	// MatchMarks are the marks made across joints, Stacks the orders written
	// down before they come apart.
	MatchMarks []MatchMark
	Stacks     []source.Text
	Judge      []source.Text // matched sets that go back or are renewed as a whole
	Missed     Varying
	Back       Varying
	// What the generated put-back row has of its own, or "none, because ...".
	BackMissed              Varying
	BackSeen                []source.Text // done on the way back without a reading
	BackCaution, BackPermit []source.Text
	BackHold, BackCheck     source.Text
	BackHours, BackPeople   source.Text // how long it takes, and how many
	// NoCaution are the built-in cautions left out, each with the reason.
	NoCaution []Named
	WayRound  []WayRound
	Photo     source.Text
	Check     source.Text // who checks as well
	Hours     source.Text
	People    source.Text // how many it takes
	OnHook    source.Text // what a heavy part hangs on, without a lift sheet
	Note      Varying
	Lock      []source.Text // isolations
	Unlock    []source.Text
	// UnlockForNow and LockAgain are the isolations of a test in mid-job.
	UnlockForNow, LockAgain []source.Text
	Permit                  []source.Text // papers that must be there
	HandBack                []source.Text // permits that end here
	ToolCount               source.Text   // yes: tools are counted
	CountAll                source.Text   // yes: every container is counted
	Otherwise               Varying       // what is done instead where the step does not apply
	Applies
	Branching
}

// After says which steps must come before, each with its reason. An After that
// is written but empty says that nothing has to.
type After struct {
	At    source.Pos
	Steps []Named // Value: the reason, possibly not written
}

// Into says where removed parts go: one place for all (To), or one for each.
type Into struct {
	At  source.Pos
	To  source.Text
	For []Named
}

// A MatchMark is a part that gets a mark across its joint, with the part on the other side of
// that joint, if it is written: {motor-hub: fan-hub}.
type MatchMark struct{ Part, On source.Text }

// A WayRound says which side of a part faces what: {part: seal, mark: lip,
// faces: oil}.
type WayRound struct{ Part, Mark, Faces source.Text }
