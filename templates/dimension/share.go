package dimension

import "matchmark/packs/job"

// shareKey tells what is set in several widths, in a frame of its own or beside another,
// with the box for the reason or without: their heads, boxes and verdicts are the same.
type shareKey struct {
	first, last *job.Dim
	n           int
	back        bool
	sides       int
	copied      bool
	note        string
}

func (k content) shareKey() shareKey {
	e := k.entries[0]
	return shareKey{e.d, k.entries[len(k.entries)-1].d, len(k.entries), k.back, len(e.sides), len(e.sides) > 0 && e.sides[0].Copied, k.note}
}

// share gives the content what other settings of it have in common with this one, and the
// boxes and verdicts of each of its places. done is called when it is set.
func (k *content) share() (done func()) {
	whole := k.shareKey()
	value, wholeDone := k.Shared(whole, func() any { return newTried() })
	k.tried = value.(tried)
	value, placesDone := k.Shared(placeKey{k.d().Base, k.back, whole.sides, whole.copied}, func() any { return newTried() })
	places := value.(tried)
	k.tried.tables, k.tried.boxes, k.tried.verdicts, k.tried.byHand, k.tried.leaves = places.tables, places.boxes, places.verdicts, places.byHand, places.leaves
	k.tried.worded = places.worded
	k.tried.places, k.tried.packs = map[placesKey]sized{}, map[placesKey]sized{} // hang on the span, and have the box for the reason
	k.tried.rows, k.tried.lists, k.tried.judged = map[way][]inWidth{}, map[rowsKey][]sized{}, map[headKey]sized{}
	return func() {
		placesDone()
		wholeDone()
	}
}

// placeKey tells a dimension at any of its like places.
type placeKey struct {
	base   string
	back   bool
	sides  int
	copied bool
}
