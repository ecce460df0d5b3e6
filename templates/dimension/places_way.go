package dimension

// A placesWay is one of the ways to set a table of like places.
type placesWay struct {
	across bool // the boxes of all sides in one row, or a row a side
	groups bool // what is worked out from all readings in columns of its own
	aside  bool // what stands behind the boxes beside all rows of its place, not behind the last
	whole  bool // the heads of the columns in one line, or as wide as their boxes
}

// placesWays are all of them. Only where a place has several rows anything stands beside all.
func (k content) placesWays() []placesWay {
	var out []placesWay
	for _, whole := range []bool{false, true} {
		for _, groups := range []bool{true, false} {
			out = append(out, placesWay{true, groups, false, whole}, placesWay{false, groups, false, whole})
			if len(k.entries[0].sides) > 1 {
				out = append(out, placesWay{false, groups, true, whole})
			}
		}
	}
	return out
}
