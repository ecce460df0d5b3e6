package job

import (
	"matchmark/packs/shim"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// A ShimStock is what a part that is made up of shims is made from.
type ShimStock struct {
	Stock     shim.Stock
	Low, High *units.Quantity // from where to where a pack can be needed, nil if not said
	Round     shim.Rounding
	At        source.Pos // of the line that lists them
}

// A Shimmed is a reading that is the thickness of a pack of shims.
type Shimmed struct {
	Part           *Part
	Stock          *ShimStock
	Step, Thickest units.Quantity // of the decimals of the leaves, and of a whole pack
	Rows           []shim.Row     // what is worked out from … to …, and its pack; only if it is worked out
}
