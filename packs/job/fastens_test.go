package job

import "testing"

// The screw of a screw coupling sleeve is no screw: check asked in which joint it is tightened.
// Names as the trade has them; common practice, no source.
func TestFastens(t *testing.T) {
	for name, want := range map[string]bool{
		"Lock nut": true, "Baffle screw M8 x 20": true, "Flange bolt 3/4 in": true, "Set screws and clamp": true,
		"Long screw M10 x 80": true, "Stud, upper": true, "Bolt long": true, "Stud bolt": true, "Nuts": true,
		"Screw socket head M8": true, "Bolt hex M16 x 60": true, "Bolts inboard": true, "Bolts drive end": true, "Nuts self-locking M12": true,
		"Bolts stainless M8": true, "Bolts galvanised": true, "Bolts plus washers": true, "Bolts half-inch": true, "Bolts pump side": true, "Nuts locking M12": true,
		"Bolts coupling end M12": true, "Bolt pump side": true, "Bolts cover": true, "Screw plug": false, "Screw pump": false, "Screw compressor": false, "Screw shaft": false, "Nut lock": false, "Bolt locking plate": false,
		"Screw coupling sleeve": false, "Screw conveyor": false, "Bolt cover": false, "Nut lock plate": false,
		"Tab washer of the input nut": false, "Nut washer": false, "Key": false,
	} {
		if got := (&Part{Name: name}).Fastens(); got != want {
			t.Errorf("%s fastens: %v, want %v", name, got, want)
		}
	}
}
