package def

import "matchmark/packs/source"

// What is worked out, shimmed, turned and done again.

// Worked says how a reading comes about that is more than one number off a scale.
type Worked struct {
	Formula   Varying     // how it is worked out from others
	StampedOn Face        // where the number stands
	OneIs     source.Text // quantity that one of the number stands for
	Shims     source.Text // part that it is the thickness of
	BackOff   source.Text // "1/6 turn", "2 flats", "15°"
}

// Adjusting says how a part sets a dimension.
type Adjusting struct {
	Shims      *Shims
	LeaveAlone source.Text // why it is not turned
}

// Shims are leaves, or a graded set, to make up a thickness from.
type Shims struct {
	At     source.Pos
	Leaves source.Text // "0.05 and 0.10 and 4 x 0.50 mm"
	Pick   source.Text // "2.00 or 2.05 mm"
	Most   source.Text // leaves in one pack
	Range  source.Text // quantity to quantity
	Round  source.Text // nearest, up, down
}

// Branching says when a step is done again, or later.
type Branching struct {
	Until    source.Text // condition
	Tries    source.Text
	EachTry  []source.Text // marks, or words
	StillOut source.Text
	AsTable  source.Text
	Later    source.Text
}
