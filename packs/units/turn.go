package units

// What is counted on a nut or a ring, and turns of a screw.
//
// A turn is an angle of 360°, so that 1/6 turn and 60° are the same, and its share is
// typed as a fraction: 1/12 turn. A flat of a nut and a notch of a ring are counted: how
// much of a turn one of them is hangs on the part (6 flats to a hexagon), so they do not
// convert into turns, nor into each other.

// Counted reports whether a reading in the unit is a whole number: pieces, flats and
// notches.
func (u Unit) Counted() bool { return u == Pieces || u == Flat || u == Notch }

// named gives the unit as it stands behind a number: 1/12 turn, 1 turn, 2 turns, 0 turns.
func (u Unit) named(n Number, text string) string {
	if many := manyOf[u]; many != "" && (n.Sign() == 0 || n.Abs().Cmp(Whole(1)) > 0) {
		return many
	}
	return text
}

// manyOf are the words for more than one.
var manyOf = map[Unit]string{Turn: "turns", Flat: "flats", Notch: "notches"}
