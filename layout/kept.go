package layout

import (
	"hash/maphash"
	"math"
	"slices"
	"strings"
)

// The same few hundred words are set thousands of times in a pack: captions, marks and
// sentences at every place, in every way that is tried, in each pass over the pages. So
// a setter keeps what it has made of one run, without its note of where it came from.

// setKey is all that the setting of one run hangs on. Lengths stand as their bits: a key
// without floating point is hashed in one go.
type setKey struct {
	text, role  string
	size, lead  uint64
	width, hang uint64
	notch       [2]uint64
	how         how
}

// how are the small choices of a run, in one number.
type how uint64

func howOf(st Style, deco Deco, align Align, line bool) how {
	h := how(st.Face) | how(st.Ink)<<8 | how(deco)<<16 | how(align)<<24
	if line {
		h |= 1 << 32
	}
	return h
}

func bits[F ~float64](x F) uint64 { return math.Float64bits(float64(x)) }

func keyOf(r Run, role string, o ParaOpts, line bool, width Mm) setKey {
	return setKey{r.Text, role, bits(r.Style.Size), bits(r.Style.Lead), bits(width), bits(o.Hang), [2]uint64{bits(o.NotchW), bits(o.NotchH)},
		howOf(r.Style, r.Deco, o.Align, line)}
}

// A cutRun is a run that was cut into fragments by itself: lead are the signs it begins with
// that only part, for what they do hangs on the run before. Its misfits have no ref.
type cutRun struct {
	lead, text string
	frags      []fragment
	misfits    []Misfit
}

// cutKey is all that the cutting of a run hangs on.
type cutKey struct {
	text       string
	size, lead uint64
	how        how
}

// cutOf cuts a run, or gives it as it was cut before: a paragraph is set in many widths.
func (s *Setter) cutOf(r Run) cutRun {
	key := cutKey{r.Text, bits(r.Style.Size), bits(r.Style.Lead), howOf(r.Style, r.Deco, Left, false)}
	return s.cuts.keep(key, func() cutRun {
		k := s.cutNow(r)
		k.frags = slices.Clone(k.frags)
		return k
	})
}

// cutNow cuts a run; the next one to be cut takes its room.
func (s *Setter) cutNow(r Run) (k cutRun) {
	r.Text = s.Decimals(r.Text)
	k.text, k.misfits = s.clean(r)
	if r.Deco == Plain {
		body := strings.TrimLeftFunc(k.text, onlyParts)
		k.lead, k.text = k.text[:len(k.text)-len(body)], body
	}
	c := cutter{s: s, frags: s.cutting[:0]}
	c.cut(r, k.text)
	k.text, k.frags = c.text, c.frags
	s.cutting = c.frags
	return k
}

// mostKept bounds what a setter keeps of a kind: a job with more different texts is so large
// that memory is dearer than time.
const mostKept = 1 << 12

// A memory keeps what was made under a key. When half of what it may hold is new, what has
// not been asked for since the last time is forgotten: a large job asks for the texts of its
// nearest steps again and again, and hardly for earlier ones.
// Its maps hold where things are: as they grow they are copied over and over. A thing is found
// by the sum of its key, of which a map makes less than of all that stands in the key.
type memory[K summed, V any] struct{ fresh, old map[uint64]*remembered[K, V] }

type remembered[K summed, V any] struct {
	key   K
	value V
	next  *remembered[K, V] // another one with the same sum
}

// A summed key has a sum, alike for keys that are alike and for few others.
type summed interface {
	comparable
	sum() uint64
}

// keep gives what is kept under a key, made now if it is not.
func (m *memory[K, V]) keep(key K, make func() V) V {
	sum := key.sum()
	r := m.fresh[sum].find(key)
	if r == nil {
		if r = m.old[sum].find(key); r != nil {
			m.add(sum, &remembered[K, V]{key: key, value: r.value})
			return r.value
		}
		r = &remembered[K, V]{key: key, value: make()}
		m.add(sum, r)
	}
	return r.value
}

func (r *remembered[K, V]) find(key K) *remembered[K, V] {
	for r != nil && r.key != key {
		r = r.next
	}
	return r
}

func (m *memory[K, V]) add(sum uint64, r *remembered[K, V]) {
	if len(m.fresh) >= mostKept/2 {
		m.fresh, m.old = m.old, m.fresh
		clear(m.fresh) // it keeps its room
	}
	if m.fresh == nil {
		m.fresh = map[uint64]*remembered[K, V]{}
	}
	r.next = m.fresh[sum]
	m.fresh[sum] = r
}

// summing is where all sums begin: another in each run, for they order nothing.
var summing = maphash.MakeSeed()

// sumOf is the sum of a text and numbers.
func sumOf(text string, numbers ...uint64) uint64 {
	sum := maphash.String(summing, text)
	for _, n := range numbers {
		sum = (sum ^ n) * 0x9E3779B97F4A7C15 // odd, with ones and zeros in no order
		sum ^= sum >> 32
	}
	return sum
}

func (k setKey) sum() uint64 { return sumOf(k.text, k.size, k.width, uint64(k.how)) }

func (k cutKey) sum() uint64 { return sumOf(k.text, k.size, uint64(k.how)) }

func (k boxKey) sum() uint64 {
	return sumOf(k.caption, maphash.Comparable(summing, k.ref), k.w, k.h)
}

func (n Number) sum() uint64 {
	return sumOf(n.Caption, maphash.Comparable(summing, n.Ref), uint64(n.Before), uint64(n.After))
}

// once sets a single run, or gives it as it was set before; runs of several are always
// set.
func (s *Setter) once(line bool, width Mm, runs []Run, o ParaOpts, set func([]Run, ParaOpts) Block) Block {
	if len(runs) != 1 {
		return set(runs, o)
	}
	r := runs[0]
	ref, role := refOr(r.Ref, o.Ref), r.Role
	if role == "" {
		role = o.Role
	}
	return s.kept.keep(keyOf(r, role, o, line, width), func() Block {
		r.Ref, r.Role, o.Ref = nil, role, nil
		return set([]Run{r}, o)
	}).Tagged(ref)
}
