package align

// Soft foot: what a foot springs up by when its bolt alone is slackened
//
// Each foot is slackened by itself, the others tight, and a dial on it tells what it rises.
// A rise over the limit is a soft foot. Two soft feet across a diagonal are a machine that
// rocks on the other two. The limit is the source's: 0.05 mm (0.002 in) is common, and
// API RP 686 has it (from memory).

import (
	"fmt"

	"matchmark/packs/units"
)

// A FootRise is what one foot rises when its bolt alone is slackened.
type FootRise struct {
	Name string
	Rise units.Quantity
}

// SoftFeet is what SoftFoot found.
type SoftFeet struct {
	Over     []int // the feet over the limit, from 0, in the order given
	Worst    int   // the foot that rises most
	Diagonal bool  // of four: the two that rise most stand across a diagonal, and both are over
}

// SoftFoot looks at the feet, in the order that one walks round the machine. The error is
// Refusals.
func SoftFoot(feet []FootRise, limit units.Quantity, source string) (SoftFeet, error) {
	var rs reasons
	if source == "" {
		rs.add("limit.source", "name the maker's sheet or the standard", "the limit of %s has no source", limit.Text())
	}
	most := rs.positive("limit", "limit of the soft foot", &limit, limit.Unit)
	if limit.Unit.Dimension() != units.Length {
		rs.add("limit", "write it like 0.05 mm", "%s is no length", limit.Text())
	}
	if len(feet) < 3 {
		rs.add("feet", "read each foot", "%d feet are read", len(feet))
	}
	var rise []units.Number
	for i, f := range feet {
		n := rs.length(fmt.Sprintf("feet[%d].rise", i), "rise of "+f.Name, &f.Rise, limit.Unit)
		if n.Sign() < 0 {
			rs.add(fmt.Sprintf("feet[%d].rise", i), "set the dial to zero with the bolt tight", "%s goes down by %s when it is slackened", f.Name, f.Rise.Text())
		}
		rise = append(rise, n)
	}
	if len(rs.Refusals) > 0 {
		return SoftFeet{}, rs.Err()
	}
	var out SoftFeet
	for i, n := range rise {
		if n.Cmp(most) > 0 {
			out.Over = append(out.Over, i)
		}
		if n.Cmp(rise[out.Worst]) > 0 {
			out.Worst = i
		}
	}
	if len(feet) == 4 {
		across := (out.Worst + 2) % 4
		second := true
		for i, n := range rise {
			if i != out.Worst && i != across && n.Cmp(rise[across]) >= 0 {
				second = false
			}
		}
		out.Diagonal = second && rise[across].Cmp(most) > 0
	}
	return out, nil
}
