package choose

import (
	"strconv"
	"strings"

	"matchmark/packs/phrase"
	"matchmark/packs/source"
)

// A serialRange is the machines of one build, by their serial numbers: letters
// that are the same for all, and numbers from low to high, either of which may
// be open (0 and the largest).
type serialRange struct {
	letters   string
	low, high uint64
}

var (
	serialUpTo = phrase.Of(`^serials? up to (\S+)$`)
	serialFrom = phrase.Of(`^serials? from (\S+)$`)
	serialSpan = phrase.Of(`^serials? (\S+) to (\S+)$`)
	serialForm = phrase.Of(`^(.*?)0*(\d{1,18})$`)
)

// cutSerial parts a serial number into what stands before its last digits, and
// their number.
func cutSerial(s string) (letters string, n uint64, ok bool) {
	m := serialForm.FindStringSubmatch(s)
	if m == nil {
		return "", 0, false
	}
	n, err := strconv.ParseUint(m[2], 10, 64)
	return m[1], n, err == nil
}

// readSerials reads which serial numbers a build has; said is false where its
// text speaks of none.
func (b *chooser) readSerials(t source.Text) (r serialRange, said bool) {
	if !strings.HasPrefix(t.Value, "serial") {
		return r, false
	}
	r.high = ^uint64(0)
	var ok, same bool
	switch {
	case serialUpTo.MatchString(t.Value):
		r.letters, r.high, ok = cutSerial(serialUpTo.FindStringSubmatch(t.Value)[1])
	case serialFrom.MatchString(t.Value):
		r.letters, r.low, ok = cutSerial(serialFrom.FindStringSubmatch(t.Value)[1])
	case serialSpan.MatchString(t.Value):
		m := serialSpan.FindStringSubmatch(t.Value)
		var other string
		r.letters, r.low, ok = cutSerial(m[1])
		other, r.high, same = cutSerial(m[2])
		ok = ok && same && other == r.letters
		if ok && r.low > r.high {
			b.problems.Add(t.At, "serials", source.Quote(t.Value)+" runs backward", "write the smaller number first")
			return r, true
		}
	}
	if !ok {
		b.problems.Add(t.At, "serials", source.Quote(t.Value)+" tells no range of serial numbers", "serials up to 880, serials from 881, or serials 600 to 880")
	}
	return r, ok
}

// overlaps reports whether a machine could be of both ranges.
func (r serialRange) overlaps(q serialRange) bool {
	return r.letters == q.letters && r.low <= q.high && q.low <= r.high
}
