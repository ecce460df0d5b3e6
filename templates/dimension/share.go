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

// share gives the content what other settings of it have in common with this one. done is
// called when it is set.
func (k *content) share() (done func()) {
	e := k.entries[0]
	key := shareKey{e.d, k.entries[len(k.entries)-1].d, len(k.entries), k.back, len(e.sides), e.sides[0].Copied, k.note}
	value, done := k.Shared(key, func() any { return newTried() })
	k.tried = value.(tried)
	k.tried.places = map[placesKey]sized{} // hang on the span, and have the box for the reason
	k.tried.rows = map[rowsKey]sized{}
	return done
}
