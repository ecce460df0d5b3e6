package dimension

import (
	"matchmark/layout"
	"matchmark/packs/job"
)

// tried keeps what is the same in several ways to set a content, while they are tried.
// The nil one keeps nothing. Who takes blocks from it must not write to them.
type tried struct {
	boxes map[boxesKey][]layout.Block
	heads map[headKey]layout.Block
}

type boxesKey struct {
	d     *job.Dim
	cols  int
	width layout.Mm
}

type headKey struct {
	limitInHead bool
	width       layout.Mm
}

func newTried() *tried {
	return &tried{map[boxesKey][]layout.Block{}, map[headKey]layout.Block{}}
}

func (t *tried) boxesOnce(key boxesKey, set func() []layout.Block) []layout.Block {
	if t == nil {
		return set()
	}
	b, known := t.boxes[key]
	if !known {
		b = set()
		t.boxes[key] = b[:len(b):len(b)]
	}
	return b[:len(b):len(b)]
}

func (t *tried) headOnce(key headKey, set func() layout.Block) layout.Block {
	if t == nil {
		return set()
	}
	b, known := t.heads[key]
	if !known {
		b = set()
		t.heads[key] = b
	}
	return b
}
