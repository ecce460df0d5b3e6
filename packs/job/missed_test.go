package job

import "testing"

// A missedRow is a sentence of what is easily missed and what of it the tag of a part says.
type missedRow struct {
	part      *Part
	says, tag string
}

func onTags(t *testing.T, parts []*Part, rows []missedRow) {
	t.Helper()
	for _, row := range rows {
		off := &Step{Missed: row.says}
		if got := (&Move{Part: row.part, Step: off}).MissedBack(parts); got != row.tag {
			t.Errorf("%q on the tag of %s: %q, want %q", row.says, row.part.Name, got, row.tag)
		}
	}
}

// The tag of a seal ring said that it is easily missed, and not that its lip is inward: what
// stands behind the comma named no part and stood on no tag.
func TestMissedGoesOnWithItsPart(t *testing.T) {
	t.Parallel()
	ring, nut, screw := &Part{Name: "Seal ring"}, &Part{Name: "Lock nut", Left: true}, &Part{Name: "Screw of the cover M8"}
	parts := []*Part{ring, nut, screw, {Name: "Case"}}
	onTags(t, parts, []missedRow{
		{ring, "seal ring, lip inward", "seal ring, lip inward"},
		{ring, "seal ring, lip inward, nut to the mark", "seal ring, lip inward"},
		{nut, "seal ring, lip inward, nut to the mark", "nut to the mark"},
		{nut, "ring lip inward, nut tab in its slot, chamfer outward", "nut tab in its slot, chamfer outward"},
		{screw, "long screw, on the left", "long screw, on the left"}, // the is in its name, and names no part
		// A part of the machine is named that is not moved beside it.
		{ring, "seal ring, leaf on the case", "seal ring"},
		// The thread is that of the part that has one.
		{ring, "third seal ring, left-hand", "third seal ring"},
		{nut, "third seal ring, left-hand", "left-hand"},
		{nut, "left-hand, two turns", "left-hand, two turns"},
		// At the head of a sentence it is said of none.
		{ring, "lip inward, nut to the mark", ""},
		{ring, "", ""},
	})
}

// Tags told of parts that lay elsewhere: that of the copper ring of the magnet on its plug,
// that of the inspection screws of the LONG screw of the baffle. No tag told of the leaf that
// sticks to the housing.
func TestMissedIsOfThePartNamedBest(t *testing.T) {
	t.Parallel()
	plug, ring := &Part{Name: "Oil drain plug with its magnet"}, &Part{Name: "Copper ring of the drain plug"}
	long, short, baffle := &Part{Name: "LONG baffle screw M8 x 45"}, &Part{Name: "Inspection screw M8"}, &Part{Name: "Breather baffle"}
	shims, lower := &Part{Name: "Cover shims", Shims: &ShimStock{}}, &Part{Name: "Lower housing"}
	parts := []*Part{plug, ring, long, short, baffle, shims, lower}
	onTags(t, parts, []missedRow{
		{plug, "magnet on the drain plug", "magnet on the drain plug"},
		{ring, "magnet on the drain plug", ""},
		{ring, "ring of the drain plug", "ring of the drain plug"},
		{long, "LONG screw", "LONG screw"},
		{short, "LONG screw", ""},
		{short, "eight screws", "eight screws"},
		{baffle, "baffle, LONG screw", "baffle"},
		{long, "baffle, LONG screw", "LONG screw"},
		{shims, "a leaf sticking to the housing", "a leaf sticking to the housing"},
		{shims, "all leaves, clean", "all leaves, clean"},
	})
}

// The tag of the packing rings did not tell of the joint of a ring: the word that says what
// Packing ring 12.5 mm is was taken to be mm, and the lantern ring was named better.
func TestMissedOfAPartWithItsSize(t *testing.T) {
	t.Parallel()
	packing, lantern := &Part{Name: "Packing ring 12.5 mm"}, &Part{Name: "Lantern ring"}
	gasket, cover := &Part{Name: "Joint gasket, 0.40 mm thick"}, &Part{Name: "Gasket of the cover"}
	pin, rod := &Part{Name: "Crosshead pin 3/4 in"}, &Part{Name: "Rod pin"}
	stud, bolt := &Part{Name: "Stud M16 x 90 mm"}, &Part{Name: "DN 50 flange"}
	parts := []*Part{packing, lantern, gasket, cover, pin, rod, stud, bolt}
	onTags(t, parts, []missedRow{
		{packing, "ring joints 90° apart", "ring joints 90° apart"},
		{lantern, "ring joints 90° apart", "ring joints 90° apart"},
		{packing, "lantern ring", ""},
		{lantern, "packing ring", ""},
		{pin, "pin, flat upward", "pin, flat upward"},
		{rod, "pin, flat upward", "pin, flat upward"},
		{stud, "stud, long end in", "stud, long end in"},
		{bolt, "flange, vent upward", "flange, vent upward"},
		{stud, "1 mm under the face", ""}, // a unit names no part
	})
}
