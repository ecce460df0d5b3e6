package expand

import (
	"strconv"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/names"
	"matchmark/packs/source"
)

// withoutBlanks is the name of an instrument as it is meant: dial/1 of dial / 1.
func withoutBlanks(t source.Text) source.Text {
	if key, rest, named := names.Cut(t.Value); named {
		t.Value = strings.TrimSpace(key) + "/" + strings.TrimSpace(rest)
	}
	return t
}

// pieceOf reads which of several instruments alike a reading is taken with: 2 of dial/2; 0
// where the name stands alone.
func (b *builder) pieceOf(t source.Text, in *job.Instrument) int {
	key, rest, named := names.Cut(t.Value)
	if in == nil || !named {
		return 0
	}
	n, ok := names.WholeNumber(source.Text{Value: rest, At: t.At})
	if ok && rest == strconv.Itoa(n) && n >= 1 && n <= in.Count && in.Count > 1 {
		return n
	}
	if in.Count < 2 {
		b.Problems.Add(t.At, "which-instrument", source.Quote(t.Value)+" is one of several, and "+source.Quote(in.Name)+" is used alone",
			"by: "+key, "or count: 2 at the instrument, if two are used at once")
		return 0
	}
	b.Problems.Add(t.At, "which-instrument", source.Quote(t.Value)+" is none of the "+strconv.Itoa(in.Count)+" of "+source.Quote(in.Name)+", which go by number",
		"by: "+key+"/1, to by: "+key+"/"+strconv.Itoa(in.Count), "or by: "+key+", for all of them at once")
	return 0
}
