package layout

import (
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
	return s.cuts.keep(key, func() cutRun { return s.cutNow(r) })
}

func (s *Setter) cutNow(r Run) (k cutRun) {
	r.Text = s.Decimals(r.Text)
	k.text, k.misfits = s.clean(r)
	if r.Deco == Plain {
		body := strings.TrimLeftFunc(k.text, onlyParts)
		k.lead, k.text = k.text[:len(k.text)-len(body)], body
	}
	c := cutter{s: s, frags: s.cutting[:0]}
	c.cut(r, k.text)
	k.text, k.frags = c.text, slices.Clone(c.frags)
	s.cutting = c.frags
	return k
}

// mostKept bounds what a setter keeps of a kind: a job with more different texts is so large
// that memory is dearer than time.
const mostKept = 1 << 12

// A memory keeps what was made under a key. When half of what it may hold is new, what has
// not been asked for since the last time is forgotten: a large job asks for the texts of its
// nearest steps again and again, and hardly for earlier ones.
// Its maps hold where things are: as they grow they are copied over and over.
type memory[K comparable, V any] struct{ fresh, old map[K]*V }

// known gives what is kept under a key, nil where that is nothing.
func (m *memory[K, V]) known(key K) *V {
	v := m.fresh[key]
	if v == nil {
		if v = m.old[key]; v != nil {
			m.add(key, v)
		}
	}
	return v
}

// keep gives what is kept under a key, made now if it is not.
func (m *memory[K, V]) keep(key K, make func() V) V {
	v := m.known(key)
	if v == nil {
		made := make()
		v = &made
		m.add(key, v)
	}
	return *v
}

func (m *memory[K, V]) add(key K, v *V) {
	if len(m.fresh) >= mostKept/2 {
		m.fresh, m.old = m.old, m.fresh
		clear(m.fresh) // it keeps its room
	}
	if m.fresh == nil {
		m.fresh = map[K]*V{}
	}
	m.fresh[key] = v
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
