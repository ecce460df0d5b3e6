package filled_test

import (
	"bytes"
	"strings"
	"testing"

	"matchmark/packs/filled"
)

// TestMachine: the readings of a sister machine have the marks of this one, and were taken for
// it. A file says of which machine it is, and another one's is told; an older file says nothing
// and is read.
func TestMachine(t *testing.T) {
	jb := stormPump(t)
	jb.Equipment.Tag, jb.Equipment.Serial = "SP-2 E5", "007731"
	var blank bytes.Buffer
	if err := filled.WriteBlank(&blank, jb, nil); err != nil {
		t.Fatal(err)
	}
	own := filled.Read("own.csv", blank.Bytes(), jb)
	if own.Machine != "SP-2 E5" || own.Serial != "007731" || own.Other || len(own.Told) > 0 || len(own.Unsaid(jb)) > 0 {
		t.Errorf("its own file says %q, %q, other %v, and tells %v", own.Machine, own.Serial, own.Other, own.Told)
	}
	const value = "D4,,left,2.35 mm,\n"
	for _, x := range []struct {
		name, rows  string
		other, left bool // of another machine; it does not say of which
	}{
		{"the same", "machine,,,tag SP-2 E5,\nserial number,,,no. 007731,\n", false, false},
		{"typed again by hand", "Machine,,,sp-2e5,\nserial number,,,007731,\n", false, false},
		{"a sister machine", "machine,,,tag SP-3,\nserial number,,,no. 007732,\n", true, false},
		{"a sister machine without its number", "machine,,,tag SP-3,\n", true, false},
		{"another machine at the same place", "machine,,,tag SP-2 E5,\nserial number,,,no. 8100,\n", true, false},
		{"an older file", "job,,,WO-1001,\n", false, true},
		{"an older file of nothing", "", false, true},
		{"an older file of this job", "job,,," + jb.Order.Number + ",\n", false, false},
	} {
		f := filled.Read("x.csv", []byte(head+x.rows+value), jb)
		told := strings.Contains(f.Told.Error(), "[other-machine]")
		if f.Other != x.other || told != x.other || len(f.Entries) != 1 {
			t.Errorf("%s: other %v, told %v, %d values; want %v", x.name, f.Other, f.Told, len(f.Entries), x.other)
		}
		if unsaid := f.Unsaid(jb); (len(unsaid) == 1 && unsaid[0].Code == "machine-unsaid") != x.left {
			t.Errorf("%s: %v, want a line: %v", x.name, unsaid, x.left)
		}
	}
}
