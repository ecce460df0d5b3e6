package keep

import (
	"encoding/csv"
	"io"
	"matchmark/packs/job"
	"strconv"
	"strings"
)

// WriteRegister writes one line a tag as CSV (RFC 4180, UTF-8, a header line),
// for the storeroom's own lists. The key is the text of the tag's QR code.
func WriteRegister(w io.Writer, j *job.Job) error {
	out := csv.NewWriter(w)
	out.UseCRLF = true
	out.Write([]string{"key", "mark", "n", "of", "name", "place", "pieces", "contents", "off at", "back at", "keep", "matched set", "job", "revision", "machine", "pack"})
	for _, t := range j.Tags {
		n, of := strconv.Itoa(t.N), strconv.Itoa(t.Of)
		if t.Spare {
			n, of = "", ""
		}
		out.Write([]string{
			t.Code, t.Mark, n, of, t.Name, t.PlaceName, strconv.Itoa(job.Pieces(t.In)), contents(t.In),
			stepNos(t.In), stepNos(t.Out), t.Keep, setMarks(t.Sets), j.Order.Number, j.Order.Revision, j.Equipment.Tag, j.Digest,
		})
	}
	out.Flush()
	return out.Error()
}

func contents(ms []*job.Move) string {
	var out []string
	for _, x := range job.Contents(ms) {
		out = append(out, strconv.Itoa(x.N)+" "+x.Name)
	}
	return strings.Join(out, "; ")
}

// stepNos lists the steps of some moves, each once.
func stepNos(ms []*job.Move) string {
	var out []string
	for _, m := range ms {
		if len(out) == 0 || out[len(out)-1] != m.Step.No {
			out = append(out, m.Step.No)
		}
	}
	return strings.Join(out, "; ")
}

func setMarks(ss []*job.Set) string {
	var out []string
	for _, s := range ss {
		out = append(out, s.Mark)
	}
	return strings.Join(out, "; ")
}
