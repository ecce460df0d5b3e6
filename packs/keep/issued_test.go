package keep

import (
	"bytes"
	"encoding/csv"
	"testing"

	"matchmark/packs/job"
)

// What the storeroom gives out had no list of its own, and a part number 00123 came back from
// a spreadsheet as 123.
func TestIssued(t *testing.T) {
	t.Parallel()
	st := &job.Step{No: "3.10"}
	j := &job.Job{Equipment: job.Equipment{Tag: "P-1"}, Order: job.Order{Number: "00123", Revision: "A"}}
	j.Supplies.Instruments = []*job.InstrumentUse{{Instrument: &job.Instrument{Name: "Feeler gauge", Number: "0042"}}}
	j.Supplies.Spares = []*job.Supply{{What: "=O-ring", Count: "2", Must: true, Steps: []*job.Step{st}}}
	var b bytes.Buffer
	if err := WriteIssued(&b, j, true); err != nil {
		t.Fatal(err)
	}
	if !bytes.HasPrefix(b.Bytes(), []byte(utf8Mark)) || !bytes.HasSuffix(b.Bytes(), []byte("\r\n")) {
		t.Errorf("no mark of UTF-8, or no line end of RFC 4180: %q", b.String())
	}
	rows, err := csv.NewReader(bytes.NewReader(bytes.TrimPrefix(b.Bytes(), []byte(utf8Mark)))).ReadAll()
	if err != nil || len(rows) != 1+Issued(j) || len(rows) != 3 {
		t.Fatalf("%d rows, %v", len(rows), err)
	}
	at := map[string]int{}
	for i, head := range rows[0] {
		at[head] = i
	}
	for head, want := range map[string][2]string{
		"kind": {"instrument", "spare"}, "number": {"'0042", ""}, "what": {"Feeler gauge", "'=O-ring"}, "how much": {"'1", "'2"},
		"always renewed": {"no", "yes"}, "for steps": {"", "'3.10"}, "job": {"'00123", "'00123"}, "issued": {"", ""}, "used": {"", ""}, "returned": {"", ""},
	} {
		i, known := at[head]
		if !known {
			t.Errorf("no column %s", head)
			continue
		}
		if got := [2]string{rows[1][i], rows[2][i]}; got != want {
			t.Errorf("%s: %q, want %q", head, got, want)
		}
	}
}
