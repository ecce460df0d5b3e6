package pdf

import (
	"bytes"
	"errors"
	"math"
	"reflect"
	"testing"

	"matchmark/layout"
)

// attachedSample is the sample document with files inside: one of every byte, one empty.
func attachedSample() *layout.Doc {
	every := make([]byte, 256)
	for i := range every {
		every[i] = byte(i)
	}
	d := *sample(layout.A4)
	d.Date = "2026-03-02"
	d.Attached = []layout.Attachment{
		{Name: "fan (old) – Lüfter.yaml", What: "the definition", Type: "text/plain", Origin: true, Data: every},
		{Name: "empty.yaml", What: "the job", Type: "application/yaml", Data: nil},
		{Name: "long.csv", What: "a list", Type: "text/csv", Data: bytes.Repeat([]byte("endobj\nstream\n>>"), 5000)},
	}
	return &d
}

func TestAttachedComesBack(t *testing.T) {
	t.Parallel()
	d := attachedSample()
	var out bytes.Buffer
	if err := Write(&out, d); err != nil {
		t.Fatal(err)
	}
	got, err := Attached(out.Bytes())
	if err != nil || len(got) != len(d.Attached) {
		t.Fatalf("%d files come back: %v", len(got), err)
	}
	for _, a := range d.Attached {
		found := false
		for _, b := range got {
			if b.Name == a.Name {
				found = b.What == a.What && b.Type == a.Type && b.Origin == a.Origin && bytes.Equal(b.Data, a.Data)
			}
		}
		if !found {
			t.Errorf("%s does not come back as it was", a.Name)
		}
	}
}

// TestAttachedNames: a name with a folder in it would be written outside of the folder
// that a planner unpacks into.
func TestAttachedNames(t *testing.T) {
	t.Parallel()
	for _, name := range []string{"", "..", "../fan.yaml", "/etc/fan.yaml", "a\\b", "c:fan.yaml", "a\x00b"} {
		d := *sample(layout.A4)
		d.Attached = []layout.Attachment{{Name: name, Type: "text/plain"}}
		if err := Write(&bytes.Buffer{}, &d); err == nil {
			t.Errorf("%q is attached", name)
		}
	}
}

// TestForeignFiles: a file that is cut short, damaged or of another program is refused,
// never read wrong.
func TestForeignFiles(t *testing.T) {
	t.Parallel()
	var out bytes.Buffer
	if err := Write(&out, attachedSample()); err != nil {
		t.Fatal(err)
	}
	whole, err := Attached(out.Bytes())
	if err != nil {
		t.Fatal(err)
	}
	data := out.Bytes()
	for cut := 2; cut < 40; cut++ { // the last sign is the end of a line
		if _, err := Attached(data[:len(data)-cut]); !errors.Is(err, ErrForeign) {
			t.Errorf("the last %d bytes cut off: %v", cut, err)
		}
	}
	for i := 0; i < len(data); i += 1 + len(data)/600 {
		if _, err := Attached(data[:i]); !errors.Is(err, ErrForeign) {
			t.Errorf("cut off at %d: %v", i, err)
		}
		damaged := bytes.Clone(data)
		damaged[i] ^= 0x15
		if got, err := Attached(damaged); err == nil && len(got) == len(whole) {
			for k := range got {
				if !bytes.Equal(got[k].Data, whole[k].Data) {
					t.Errorf("a byte changed at %d: %s comes back changed", i, got[k].Name)
				}
			}
		}
	}
}

func FuzzAttached(f *testing.F) {
	var out bytes.Buffer
	if err := Write(&out, attachedSample()); err != nil {
		f.Fatal(err)
	}
	f.Add(out.Bytes()[max(0, out.Len()-6000):])
	f.Add([]byte("%PDF-1.7\nxref\n0 1\n0000000000 65535 f \ntrailer\n<</Root 1 0 R>>\nstartxref\n9\n%%EOF\n"))
	f.Fuzz(func(t *testing.T, data []byte) {
		got, err := Attached(data)
		if err != nil && got != nil {
			t.Errorf("both %d files and %v", len(got), err)
		}
		for _, a := range got {
			if !plainName(a.Name) {
				t.Errorf("a file is called %q", a.Name)
			}
		}
	})
}

// The primaries of a profile add up to its white, D50: X 0.9642, Y 1, Z 0.8249
// (ICC.1:2001-04, 6.1.3 and annex A); the tables of ASTM E308 have Z 0.8252.
func TestPrimariesMakeWhite(t *testing.T) {
	t.Parallel()
	for _, c := range []struct{ sum, want float64 }{
		{redX + greenX + blueX, 0.9642}, {redY + greenY + blueY, 1}, {redZ + greenZ + blueZ, 0.8249},
	} {
		if math.Abs(c.sum-c.want) > 0.0005 {
			t.Errorf("the primaries add up to %.4f, white is %.4f", c.sum, c.want)
		}
	}
	if p := sRGB(); len(p)%4 != 0 || int(p[2])<<8|int(p[3]) != len(p) || !reflect.DeepEqual(p, sRGB()) {
		t.Errorf("a profile of %d bytes says it has %d", len(p), int(p[2])<<8|int(p[3]))
	}
}
